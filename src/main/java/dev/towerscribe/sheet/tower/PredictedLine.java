package dev.towerscribe.sheet.tower;

import dev.towerscribe.alignment.Reading;
import dev.towerscribe.alignment.Sensitivity;
import dev.towerscribe.alignment.SideAlignment;
import dev.towerscribe.quantity.LengthUnit;
import dev.towerscribe.quantity.Lengths;
import dev.towerscribe.quantity.Numbers;
import java.util.ArrayList;
import java.util.List;
import java.util.Optional;

/**
 * What a full-scale sheet says of the alignment to come, in one line: a sheet found again without
 * its pack still tells what it was cut for.
 */
final class PredictedLine {
  private static final String DEGREE = "\u00b0";

  private PredictedLine() {}

  /**
   * The line, in pieces that may be set on lines of their own.
   *
   * @param side a wheel
   * @param units the job's unit
   * @return for instance "Predicted:", "caster +5.3\u00b0", "(likely, 2 in 3,", "within
   *     0.3\u00b0),", "camber -1.5\u00b0", "at setting 16 mm"; empty where the linkage gives no
   *     figures
   */
  static List<String> words(SideAlignment side, LengthUnit units) {
    if (side.at().isEmpty()) {
      return List.of();
    }
    Reading reading = side.at().get();
    List<String> words = new ArrayList<>();
    words.add(side.estimate() ? "Estimate:" : "Predicted:");
    String caster = "caster " + signed(reading.caster().degrees());
    // In brackets, as everywhere, so that it is not read with the camber that follows.
    likely(side)
        .ifPresentOrElse(
            near ->
                words.addAll(
                    List.of(
                        caster, "(%s,".formatted(Lengths.LIKELY), "within %s),".formatted(near))),
            () -> words.add(caster + ","));
    words.add("camber " + signed(reading.camber().degrees()));
    words.add("at setting " + Lengths.in(units).size(side.job().mount().settingMm()));
    return words;
  }

  /** Camber has next to none: it was measured itself, and only its change is worked out. */
  private static Optional<String> likely(SideAlignment side) {
    Optional<Double> radians =
        side.strut()
            .flatMap(s -> s.sureAt().map(Sensitivity.Figures::caster))
            .map(f -> f.plusMinus(side.strut().orElseThrow().plusMinus()));
    return radians.map(r -> "%s%s".formatted(Numbers.fixed(Math.toDegrees(r), 1), DEGREE));
  }

  private static String signed(double degrees) {
    String text = Numbers.fixed(degrees, 1);
    boolean plus = degrees > 0 && !text.equals("0.0");
    return (plus ? "+" : "") + text + DEGREE;
  }
}
