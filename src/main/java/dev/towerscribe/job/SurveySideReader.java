package dev.towerscribe.job;

import dev.towerscribe.model.Side;
import dev.towerscribe.survey.SurveySide;
import java.util.Optional;

/** [left] and [right] of a survey. */
final class SurveySideReader {
  private SurveySideReader() {}

  static Optional<SurveySide> read(
      TableReader t, Side side, SurveyUncertainty sds, SurveyNames names) {
    var plots = t.each("floor", 0, "floor plots", f -> plot(f, side, sds, names));
    var heights = t.each("height", 0, "heights", h -> height(h, side, sds, names));
    var tapes = t.each("tape", 0, "distances", l -> tape(l, side, sds, names));
    var tyre = SurveyFigures.optional(t, "tyre_radius", Limits.TYRE_RADIUS, sds.heightMm());
    var camber = SurveyFigures.angles(t, "camber", Limits.WHEEL_ANGLE, sds.angleRad());
    var toe = SurveyFigures.angles(t, "toe", Limits.WHEEL_ANGLE, sds.angleRad());
    var tower = t.optionalTable("tower").flatMap(w -> SurveyTowerReader.read(w, sds));
    return t.closed(() -> new SurveySide(plots, heights, tapes, tyre, camber, toe, tower));
  }

  private static Optional<SurveySide.Plot> plot(
      TableReader f, Side side, SurveyUncertainty sds, SurveyNames names) {
    var point = names.point(f, "point", side);
    double sd = SurveyFigures.sd(f, sds.floorMm());
    var at = SurveyFigures.pairs(f, "at", Limits.VEHICLE, SurveyLimits.OUT, sd);
    return f.closed(() -> new SurveySide.Plot(point.get(), at.get().get(0), at.get().get(1)));
  }

  private static Optional<SurveySide.Height> height(
      TableReader h, Side side, SurveyUncertainty sds, SurveyNames names) {
    var point = names.point(h, "point", side);
    double sd = SurveyFigures.sd(h, sds.heightMm());
    var up = SurveyFigures.lengths(h, "up", SurveyLimits.HEIGHT, sd);
    return h.closed(() -> new SurveySide.Height(point.get(), up.get()));
  }

  private static Optional<SurveySide.Tape> tape(
      TableReader l, Side side, SurveyUncertainty sds, SurveyNames names) {
    var from = names.point(l, "from", side);
    var to = names.point(l, "to", side);
    double sd = SurveyFigures.sd(l, sds.tapeMm());
    var length = SurveyFigures.lengths(l, "length", SurveyLimits.TAPE, sd);
    if (from.isPresent() && from.equals(to)) {
      l.fault("to", "another point than from", "A tape has two ends: name the other one.");
    }
    return l.closed(() -> new SurveySide.Tape(from.get(), to.get(), length.get()));
  }
}
