package dev.towerscribe.record;

import dev.towerscribe.model.Side;
import dev.towerscribe.quantity.Lengths;
import dev.towerscribe.quantity.Lengths.Fineness;
import dev.towerscribe.quantity.Numbers;
import java.util.Comparator;
import java.util.List;
import java.util.Map;
import java.util.Optional;
import java.util.Set;

/** What a cause with a figure would be, in words; never that it is so. */
final class CauseWords {
  private final Lengths lengths;
  private final List<Predictor> acting;
  private final String where;

  /**
   * Words for a cause.
   *
   * @param lengths how lengths are told
   * @param predictors of all the wheels looked at
   * @param acting the wheels it acts on: told where they are not all
   */
  CauseWords(Lengths lengths, Map<Side, Predictor> predictors, Set<Side> acting) {
    this.lengths = lengths;
    this.acting = acting.stream().map(predictors::get).toList();
    boolean told = acting.size() < predictors.size();
    where = told ? "on the " + acting.iterator().next().word() + ", " : "";
  }

  private String length(double mm) {
    return length(lengths, mm);
  }

  /** A length without its sign, finer where it would read as nothing: "4.3 mm", "0.17 in". */
  static String length(Lengths lengths, double mm) {
    boolean small = lengths.unit().fromMm(Math.abs(mm)) < (lengths.metric() ? 0.1 : 0.01);
    return lengths.with(Math.abs(mm), small ? Fineness.CALIPER : Fineness.TAPE);
  }

  static String degrees(double radians) {
    return Lengths.degrees(Math.abs(radians)) + " deg";
  }

  /** The figure with its unit and sign. */
  static String figure(Lengths lengths, Cause cause, double value) {
    String sign = value < 0 ? "-" : "+";
    return switch (cause.kind()) {
      case LENGTH -> sign + length(lengths, value);
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
          "a tie rod %s %s than the toe asked for takes"
              .formatted(length(value), more ? "longer" : "shorter");
      case ROTATION ->
          "the plate turned %s %s toward the rear than planned"
              .formatted(degrees(value), more ? "more" : "less");
      case REARWARD -> plate(value, more ? "rearward" : "forward");
      case INBOARD -> plate(value, more ? "inboard" : "outboard");
      case POINTS_ALONG ->
          points(value, more ? "forward" : "rearward", more ? "rearward" : "forward");
      case POINTS_ACROSS ->
          points(value, more ? "inboard" : "outboard", more ? "outboard" : "inboard");
      case CAMBER_FOUND ->
          "a camber as found %s more %s than the job gives"
              .formatted(degrees(value), more ? "positive" : "negative");
      case CASTER_SWING ->
          "a bay that reads caster %s %s by its swing"
              .formatted(percent(value), more ? "high" : "low");
      case SUBFRAME -> subframe(value) + ", before the work and after it";
      case SUBFRAME_SINCE -> subframe(value) + " since the car came";
    };
  }

  private String ride(double value) {
    return "a wheel centre %s %s in the body than stated"
        .formatted(length(value), value >= 0 ? "higher" : "lower");
  }

  private String plate(double value, String way) {
    return "the plate %s farther %s than planned".formatted(length(value), way);
  }

  private String points(double value, String way, String other) {
    return ("a top pivot that really lies %s farther %s than the job has it, or a ball joint as"
            + " much farther %s")
        .formatted(length(value), way, other);
  }

  private String subframe(double value) {
    return "a subframe %s to the car's %s".formatted(length(value), value >= 0 ? "left" : "right");
  }

  private String setting(double value) {
    if (acting.size() != 1) {
      return "the bearings %s farther %s in their slots than stated"
          .formatted(length(value), value >= 0 ? "on" : "back");
    }
    double stated = acting.get(0).settingMm();
    return "the bearing at setting %s, not %s".formatted(plain(stated + value), plain(stated));
  }

  private String plain(double mm) {
    return lengths.plain(mm, Fineness.TAPE) + " " + lengths.unit().symbol();
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
          .map(mm -> "the mark at " + plain(mm) + " fits as well as these figures can tell");
    }
    return Optional.empty();
  }
}
