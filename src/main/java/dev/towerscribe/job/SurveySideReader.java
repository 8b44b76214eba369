package dev.towerscribe.job;

import dev.towerscribe.adjust.Repeated;
import dev.towerscribe.model.Side;
import dev.towerscribe.survey.SurveyPoint;
import dev.towerscribe.survey.SurveySide;
import dev.towerscribe.survey.SurveyTower;
import java.util.List;
import java.util.Optional;

/** [left] and [right] of a survey. */
final class SurveySideReader {
  private SurveySideReader() {}

  static Optional<SurveySide> read(
      TableReader t, Side side, SurveyUncertainty sds, SurveyNames names) {
    List<SurveySide.Plot> plots = t.each("floor", 0, "floor plots", f -> plot(f, side, sds, names));
    List<SurveySide.Height> heights =
        t.each("height", 0, "heights", h -> height(h, side, sds, names));
    List<SurveySide.Tape> tapes = t.each("tape", 0, "distances", l -> tape(l, side, sds, names));
    Optional<Repeated> tyre =
        SurveyFigures.optional(t, "tyre_radius", Limits.TYRE_RADIUS, sds.heightMm());
    Optional<Repeated> camber =
        SurveyFigures.angles(t, "camber", Limits.WHEEL_ANGLE, sds.angleRad());
    Optional<Repeated> toe = SurveyFigures.angles(t, "toe", Limits.WHEEL_ANGLE, sds.angleRad());
    Optional<SurveyTower> tower =
        t.optionalTable("tower").flatMap(w -> SurveyTowerReader.read(w, sds));
    return t.closed(() -> new SurveySide(plots, heights, tapes, tyre, camber, toe, tower));
  }

  private static Optional<SurveySide.Plot> plot(
      TableReader f, Side side, SurveyUncertainty sds, SurveyNames names) {
    Optional<SurveyPoint> point = names.point(f, "point", side);
    double sd = SurveyFigures.sd(f, sds.floorMm());
    Optional<List<Repeated>> at =
        SurveyFigures.pairs(f, "at", Limits.VEHICLE, SurveyLimits.OUT, sd);
    return f.closed(() -> new SurveySide.Plot(point.get(), at.get().get(0), at.get().get(1)));
  }

  private static Optional<SurveySide.Height> height(
      TableReader h, Side side, SurveyUncertainty sds, SurveyNames names) {
    Optional<SurveyPoint> point = names.point(h, "point", side);
    double sd = SurveyFigures.sd(h, sds.heightMm());
    Optional<Repeated> up = SurveyFigures.lengths(h, "up", SurveyLimits.HEIGHT, sd);
    return h.closed(() -> new SurveySide.Height(point.get(), up.get()));
  }

  private static Optional<SurveySide.Tape> tape(
      TableReader l, Side side, SurveyUncertainty sds, SurveyNames names) {
    Optional<SurveyPoint> from = names.point(l, "from", side);
    Optional<SurveyPoint> to = names.point(l, "to", side);
    double sd = SurveyFigures.sd(l, sds.tapeMm());
    Optional<Repeated> length = SurveyFigures.lengths(l, "length", SurveyLimits.TAPE, sd);
    if (from.isPresent() && from.equals(to)) {
      l.fault("to", "another point than from", "A tape has two ends: name the other one.");
    }
    return l.closed(() -> new SurveySide.Tape(from.get(), to.get(), length.get()));
  }
}
