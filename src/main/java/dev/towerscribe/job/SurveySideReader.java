package dev.towerscribe.job;

import dev.towerscribe.model.Side;
import dev.towerscribe.survey.SurveyPoint;
import dev.towerscribe.survey.SurveyReading;
import dev.towerscribe.survey.SurveySide;
import dev.towerscribe.survey.SurveyTower;
import java.util.ArrayList;
import java.util.List;
import java.util.Optional;

/** [left] and [right] of a survey. */
final class SurveySideReader {
  private SurveySideReader() {}

  static Optional<SurveySide> read(
      TableReader t, Side side, SurveyDoubts doubts, SurveyNames names) {
    List<SurveySide.Plot> plots = new ArrayList<>();
    for (TableReader f : t.tables("floor", 0, "floor plots")) {
      plot(f, side, doubts, names).ifPresent(plots::add);
    }
    List<SurveySide.Height> heights = new ArrayList<>();
    for (TableReader h : t.tables("height", 0, "heights")) {
      height(h, side, doubts, names).ifPresent(heights::add);
    }
    List<SurveySide.Tape> tapes = new ArrayList<>();
    for (TableReader l : t.tables("tape", 0, "distances")) {
      tape(l, side, doubts, names).ifPresent(tapes::add);
    }
    Optional<SurveyReading> tyre =
        SurveyFigures.optional(t, "tyre_radius", Limits.TYRE_RADIUS, doubts.heightMm());
    Optional<SurveyReading> camber =
        SurveyFigures.angles(t, "camber", Limits.WHEEL_ANGLE, doubts.angleRad());
    Optional<SurveyReading> toe =
        SurveyFigures.angles(t, "toe", Limits.WHEEL_ANGLE, doubts.angleRad());
    Optional<SurveyTower> tower =
        t.optionalTable("tower").flatMap(w -> SurveyTowerReader.read(w, doubts));
    t.close();
    return t.sound()
        ? Optional.of(new SurveySide(plots, heights, tapes, tyre, camber, toe, tower))
        : Optional.empty();
  }

  private static Optional<SurveySide.Plot> plot(
      TableReader f, Side side, SurveyDoubts doubts, SurveyNames names) {
    Optional<SurveyPoint> point = names.point(f, "point", side);
    double doubt = SurveyFigures.doubt(f, doubts.floorMm());
    Optional<List<SurveyReading>> at =
        SurveyFigures.pairs(f, "at", Limits.VEHICLE, SurveyLimits.OUT, doubt);
    f.close();
    return f.sound()
        ? Optional.of(new SurveySide.Plot(point.get(), at.get().get(0), at.get().get(1)))
        : Optional.empty();
  }

  private static Optional<SurveySide.Height> height(
      TableReader h, Side side, SurveyDoubts doubts, SurveyNames names) {
    Optional<SurveyPoint> point = names.point(h, "point", side);
    double doubt = SurveyFigures.doubt(h, doubts.heightMm());
    Optional<SurveyReading> up = SurveyFigures.lengths(h, "up", SurveyLimits.HEIGHT, doubt);
    h.close();
    return h.sound() ? Optional.of(new SurveySide.Height(point.get(), up.get())) : Optional.empty();
  }

  private static Optional<SurveySide.Tape> tape(
      TableReader l, Side side, SurveyDoubts doubts, SurveyNames names) {
    Optional<SurveyPoint> from = names.point(l, "from", side);
    Optional<SurveyPoint> to = names.point(l, "to", side);
    double doubt = SurveyFigures.doubt(l, doubts.tapeMm());
    Optional<SurveyReading> length = SurveyFigures.lengths(l, "length", SurveyLimits.TAPE, doubt);
    if (from.isPresent() && from.equals(to)) {
      l.fault("to", "another point than from", "A tape has two ends: name the other one.");
    }
    l.close();
    return l.sound()
        ? Optional.of(new SurveySide.Tape(from.get(), to.get(), length.get()))
        : Optional.empty();
  }
}
