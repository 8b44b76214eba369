package dev.towerscribe.sheet.text;

import dev.towerscribe.quantity.LengthUnit;
import dev.towerscribe.quantity.Numbers;

/**
 * Lengths as the text pages print them: mm to two decimals, inches to three, which is what calipers
 * show.
 *
 * @param unit the job's unit, named first
 */
public record Lengths(LengthUnit unit) {
  private static int decimals(LengthUnit unit) {
    return unit == LengthUnit.MM ? 2 : 3;
  }

  /** The unit named second. */
  LengthUnit otherUnit() {
    return unit == LengthUnit.MM ? LengthUnit.INCH : LengthUnit.MM;
  }

  /** The figure alone, in the job's unit. */
  public String figure(double mm) {
    return Numbers.fixed(unit.fromMm(mm), decimals(unit));
  }

  /** The figure with its unit, in the job's unit. */
  public String with(double mm) {
    return figure(mm) + " " + unit.symbol();
  }

  /** The figure with its unit, in the other unit. */
  public String inOther(double mm) {
    return Numbers.fixed(otherUnit().fromMm(mm), decimals(otherUnit()))
        + " "
        + otherUnit().symbol();
  }

  /** Both, the job's unit first. */
  public String both(double mm) {
    return with(mm) + " (" + inOther(mm) + ")";
  }

  /** A nominal size such as a drill: no trailing zeros, the job's unit. */
  public String size(double mm) {
    return Numbers.plain(unit.fromMm(mm), decimals(unit)) + " " + unit.symbol();
  }

  /** A nominal size in the other unit. */
  public String sizeInOther(double mm) {
    return Numbers.plain(otherUnit().fromMm(mm), decimals(otherUnit()))
        + " "
        + otherUnit().symbol();
  }

  /**
   * A finding's figure with its unit.
   *
   * @param value the figure
   * @param unit "mm" for a length, which is told in the job's unit; empty for a bare number; else a
   *     symbol that is set after the figure
   */
  public String amount(double value, String unit) {
    return switch (unit) {
      case "mm" -> with(value);
      case "" -> Numbers.plain(value, 2);
      default -> Numbers.fixed(value, 2) + " " + unit;
    };
  }
}
