package dev.towerscribe.sheet;

import dev.towerscribe.quantity.LengthUnit;
import dev.towerscribe.quantity.Numbers;

/**
 * Lengths as the text pages print them: mm to two decimals, inches to three, which is what calipers
 * show.
 *
 * @param unit the job's unit, named first
 */
record Lengths(LengthUnit unit) {
  private static int decimals(LengthUnit unit) {
    return unit == LengthUnit.MM ? 2 : 3;
  }

  /** The unit named second. */
  LengthUnit otherUnit() {
    return unit == LengthUnit.MM ? LengthUnit.INCH : LengthUnit.MM;
  }

  /** The figure alone, in the job's unit. */
  String figure(double mm) {
    return Numbers.fixed(unit.fromMm(mm), decimals(unit));
  }

  /** The figure with its unit, in the job's unit. */
  String with(double mm) {
    return figure(mm) + " " + unit.symbol();
  }

  /** The figure with its unit, in the other unit. */
  String inOther(double mm) {
    return Numbers.fixed(otherUnit().fromMm(mm), decimals(otherUnit()))
        + " "
        + otherUnit().symbol();
  }

  /** Both, the job's unit first. */
  String both(double mm) {
    return with(mm) + " (" + inOther(mm) + ")";
  }

  /** A nominal size such as a drill: no trailing zeros, the job's unit. */
  String size(double mm) {
    return Numbers.plain(unit.fromMm(mm), decimals(unit)) + " " + unit.symbol();
  }

  /** A nominal size in the other unit. */
  String sizeInOther(double mm) {
    return Numbers.plain(otherUnit().fromMm(mm), decimals(otherUnit()))
        + " "
        + otherUnit().symbol();
  }
}
