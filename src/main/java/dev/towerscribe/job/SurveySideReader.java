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
      TableReader t, Side side, SurveyDoubts doubts, SurveyNames names) {
    List<SurveySide.Plot> plots =
        t.each("floor", 0, "floor plots", f -> plot(f, side, doubts, names));
    List<SurveySide.Height> heights =
        t.each("height", 0, "heights", h -> height(h, side, doubts, names));
    List<SurveySide.Tape> tapes = t.each("tape", 0, "distances", l -> tape(l, side, doubts, names));
    Optional<Repeated> tyre =
        SurveyFigures.optional(t, "tyre_radius", Limits.TYRE_RADIUS, doubts.heightMm());
    Optional<Repeated> camber =
        SurveyFigures.angles(t, "camber", Limits.WHEEL_ANGLE, doubts.angleRad());
    Optional<Repeated> toe = SurveyFigures.angles(t, "toe", Limits.WHEEL_ANGLE, doubts.angleRad());
    Optional<SurveyTower> tower =
        t.optionalTable("tower").flatMap(w -> SurveyTowerReader.read(w, doubts));
    return t.closed(() -> new SurveySide(plots, heights, tapes, tyre, camber, toe, tower));
  }

  private static Optional<SurveySide.Plot> plot(
      TableReader f, Side side, SurveyDoubts doubts, SurveyNames names) {
    Optional<SurveyPoint> point = names.point(f, "point", side);
    double doubt = SurveyFigures.doubt(f, doubts.floorMm());
    Optional<List<Repeated>> at =
        SurveyFigures.pairs(f, "at", Limits.VEHICLE, SurveyLimits.OUT, doubt);
    return f.closed(() -> new SurveySide.Plot(point.get(), at.get().get(0), at.get().get(1)));
  }

  private static Optional<SurveySide.Height> height(
      TableReader h, Side side, SurveyDoubts doubts, SurveyNames names) {
    Optional<SurveyPoint> point = names.point(h, "point", side);
    double doubt = SurveyFigures.doubt(h, doubts.heightMm());
    Optional<Repeated> up = SurveyFigures.lengths(h, "up", SurveyLimits.HEIGHT, doubt);
    return h.closed(() -> new SurveySide.Height(point.get(), up.get()));
  }

  private static Optional<SurveySide.Tape> tape(
      TableReader l, Side side, SurveyDoubts doubts, SurveyNames names) {
    Optional<SurveyPoint> from = names.point(l, "from", side);
    Optional<SurveyPoint> to = names.point(l, "to", side);
    double doubt = SurveyFigures.doubt(l, doubts.tapeMm());
    Optional<Repeated> length = SurveyFigures.lengths(l, "length", SurveyLimits.TAPE, doubt);
    if (from.isPresent() && from.equals(to)) {
      l.fault("to", "another point than from", "A tape has two ends: name the other one.");
    }
    return l.closed(() -> new SurveySide.Tape(from.get(), to.get(), length.get()));
  }
}
