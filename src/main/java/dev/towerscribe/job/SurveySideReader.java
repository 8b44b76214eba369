package dev.towerscribe.job;

import dev.towerscribe.model.Side;
import dev.towerscribe.survey.SurveySide;
import java.util.Optional;

/**
 * [left] and [right] of a survey.
 *
 * @param side which of the two
 * @param sds how far one reading of each kind may be off
 * @param names whom a name means
 */
record SurveySideReader(Side side, SurveyUncertainty sds, SurveyNames names) {
  Optional<SurveySide> read(TableReader t) {
    var plots = t.each("floor", 0, "floor plots", this::plot);
    var heights = t.each("height", 0, "heights", this::height);
    var tapes = t.each("tape", 0, "distances", this::tape);
    var tyre = SurveyFigures.optional(t, "tyre_radius", Limits.TYRE_RADIUS, sds.heightMm());
    var camber = SurveyFigures.angles(t, "camber", Limits.WHEEL_ANGLE, sds.angleRad());
    var toe = SurveyFigures.angles(t, "toe", Limits.WHEEL_ANGLE, sds.angleRad());
    var tower = t.optionalTable("tower").flatMap(new SurveyTowerReader(sds)::read);
    return t.closed(() -> new SurveySide(plots, heights, tapes, tyre, camber, toe, tower));
  }

  private Optional<SurveySide.Plot> plot(TableReader f) {
    var point = names.point(f, "point", side);
    double sd = SurveyFigures.sd(f, sds.floorMm());
    var at = SurveyFigures.pairs(f, "at", Limits.VEHICLE, Limits.FLOOR_OUT, sd);
    return f.closed(() -> new SurveySide.Plot(point.get(), at.get().get(0), at.get().get(1)));
  }

  private Optional<SurveySide.Height> height(TableReader h) {
    var point = names.point(h, "point", side);
    double sd = SurveyFigures.sd(h, sds.heightMm());
    var up = SurveyFigures.lengths(h, "up", Limits.POINT_HEIGHT, sd);
    return h.closed(() -> new SurveySide.Height(point.get(), up.get()));
  }

  private Optional<SurveySide.Tape> tape(TableReader l) {
    var from = names.point(l, "from", side);
    var to = names.point(l, "to", side);
    double sd = SurveyFigures.sd(l, sds.tapeMm());
    var length = SurveyFigures.lengths(l, "length", Limits.TAPE, sd);
    if (from.isPresent() && from.equals(to)) {
      l.fault("to", "another point than from", "A tape has two ends: name the other one.");
    }
    return l.closed(() -> new SurveySide.Tape(from.get(), to.get(), length.get()));
  }
}
