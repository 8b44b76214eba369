package dev.towerscribe.record;

import dev.towerscribe.model.Side;
import dev.towerscribe.quantity.LengthUnit;
import dev.towerscribe.quantity.Numbers;
import java.util.Comparator;
import java.util.List;
import java.util.Map;
import java.util.Optional;
import java.util.Set;

/** What a cause with a figure would be, in words; never that it is so. */
final class CauseWords {
  private final LengthUnit unit;
  private final List<Predictor> acting;
  private final String where;

  /**
   * Words for a cause.
   *
   * @param unit the unit that lengths are told in
   * @param predictors of all the wheels looked at
   * @param acting the wheels it acts on: told where they are not all
   */
  CauseWords(LengthUnit unit, Map<Side, Predictor> predictors, Set<Side> acting) {
    this.unit = unit;
    this.acting = acting.stream().map(predictors::get).toList();
    boolean told = acting.size() < predictors.size();
    where = told ? "on the " + acting.iterator().next().word() + ", " : "";
  }

  private String length(double mm) {
    return length(unit, mm);
  }

  /** A length without its sign: "4.3 mm", "0.17 in". */
  static String length(LengthUnit unit, double mm) {
    int decimals = unit == LengthUnit.MM ? 1 : 2;
    double size = unit.fromMm(Math.abs(mm));
    boolean small = size < Math.pow(10, -decimals);
    return Numbers.fixed(size, small ? decimals + 1 : decimals) + " " + unit.symbol();
  }

  static String degrees(double radians) {
    return Numbers.fixed(Math.toDegrees(Math.abs(radians)), 2) + " deg";
  }

  /** The figure with its unit and sign. */
  static String figure(LengthUnit unit, Cause cause, double value) {
    String sign = value < 0 ? "-" : "+";
    return switch (cause.kind()) {
      case LENGTH -> sign + length(unit, value);
      case ANGLE -> sign + degrees(value);
      case RATIO -> sign + percent(value);
    };
  }

  private static String percent(double share) {
    return Numbers.fixed(Math.abs(100 * share), 0) + " %";
  }

  /** "a ride height 4.0 mm higher than read when the car came". */
  String say(Cause cause, double value) {
    return where + bare(cause, value);
  }

  private String bare(Cause cause, double value) {
    boolean more = value >= 0;
    return switch (cause) {
      case RIDE_BEFORE -> ride(value) + " when the car came";
      case RIDE_AFTER -> ride(value) + " when the car left";
      case RIDE -> ride(value) + " both times";
      case SETTING -> setting(value);
      case TIE_RODS ->
          "a tie rod "
              + length(value)
              + (more ? " longer" : " shorter")
              + " than the toe asked for takes";
      case ROTATION ->
          "the plate turned "
              + degrees(value)
              + (more ? " more" : " less")
              + " toward the rear than planned";
      case REARWARD -> plate(value, more ? "rearward" : "forward");
      case INBOARD -> plate(value, more ? "inboard" : "outboard");
      case POINTS_ALONG ->
          points(value, more ? "forward" : "rearward", more ? "rearward" : "forward");
      case POINTS_ACROSS ->
          points(value, more ? "inboard" : "outboard", more ? "outboard" : "inboard");
      case CAMBER_FOUND ->
          "a camber as found "
              + degrees(value)
              + (more ? " more positive" : " more negative")
              + " than the job gives";
      case CASTER_SWING ->
          "a bay that reads caster " + percent(value) + (more ? " high" : " low") + " by its swing";
      case SUBFRAME -> subframe(value) + ", before the work and after it";
      case SUBFRAME_SINCE -> subframe(value) + " since the car came";
    };
  }

  private String ride(double value) {
    return "a wheel centre "
        + length(value)
        + (value >= 0 ? " higher" : " lower")
        + " in the body than stated";
  }

  private String plate(double value, String way) {
    return "the plate " + length(value) + " farther " + way + " than planned";
  }

  private String points(double value, String way, String other) {
    return "a top pivot that really lies "
        + length(value)
        + " farther "
        + way
        + " than the job has it, or a ball joint as much farther "
        + other;
  }

  private String subframe(double value) {
    return "a subframe " + length(value) + " to the car's " + (value >= 0 ? "left" : "right");
  }

  private String setting(double value) {
    if (acting.size() != 1) {
      return "the bearings "
          + length(value)
          + (value >= 0 ? " farther on" : " farther back")
          + " in their slots than stated";
    }
    double stated = acting.get(0).settingMm();
    return "the bearing at setting " + plain(stated + value) + ", not " + plain(stated);
  }

  private String plain(double mm) {
    return Numbers.plain(unit.fromMm(mm), unit == LengthUnit.MM ? 1 : 2) + " " + unit.symbol();
  }

  /** What a value looks like, within two of its standard deviations. */
  Optional<String> hint(Cause cause, double value, double plusMinus) {
    if (acting.size() != 1) {
      return Optional.empty();
    }
    Predictor predictor = acting.get(0);
    double reach = Compared.MOST_SD * plusMinus;
    if (cause == Cause.TIE_RODS) {
      return predictor
          .tieLeftAloneMm()
          .filter(mm -> Math.abs(mm - value) <= reach)
          .map(
              mm ->
                  "left as it came it would be " + length(mm) + (mm >= 0 ? " longer" : " shorter"));
    }
    if (cause == Cause.SETTING) {
      double at = predictor.settingMm() + value;
      return predictor.marksMm().stream()
          .filter(mm -> mm != predictor.settingMm() && Math.abs(mm - at) <= reach)
          .min(Comparator.comparingDouble(mm -> Math.abs(mm - at)))
          .map(mm -> "the mark at " + plain(mm) + " is as near as can be told");
    }
    return Optional.empty();
  }
}
