package dev.towerscribe.record;

import dev.towerscribe.SampleJobs;
import dev.towerscribe.model.Job;
import dev.towerscribe.model.PlusMinus;
import dev.towerscribe.model.Side;
import dev.towerscribe.model.SideJob;
import dev.towerscribe.quantity.Angle;
import java.time.LocalDate;
import java.util.EnumMap;
import java.util.List;
import java.util.Map;
import java.util.Optional;

/** Invented visits of the invented car. */
final class Visits {
  static final List<BayFigure> ALL = List.of(BayFigure.values());
  private static final double SETTING_MM = 16;

  private Visits() {}

  static Job job() {
    return SampleJobs.job(SampleJobs.plainTower(), SampleJobs.plate(true), s -> s);
  }

  /** The same with points measured so well that they bring almost no uncertainty. */
  static Job sureJob() {
    Map<Side, SideJob> sides = new EnumMap<>(Side.class);
    job()
        .sides()
        .forEach(
            (side, s) ->
                sides.put(
                    side, s.withStrut(s.strut().map(p -> p.withPlusMinus(PlusMinus.all(0.01))))));
    return new Job("sure", Optional.empty(), job().units(), sides);
  }

  static WheelVisit wheel(BayReading before, BayReading after) {
    return new WheelVisit(before, after, SETTING_MM, Angle.ZERO);
  }

  static Visit visit(Map<Side, WheelVisit> wheels) {
    return new Visit(
        LocalDate.of(2026, 12, 3), "a visit", Optional.empty(), BayUncertainty.USUAL, wheels);
  }

  static Predictor predictor(Job job, Side side) {
    SideJob s = job.sides().get(side);
    return new Predictor(s, wheel(BayReading.NONE, BayReading.NONE), MountAsMade.planned(s));
  }

  /** What a bay without error would read if one thing were other than stated. */
  static BayReading reading(
      Job job,
      Side side,
      ReadingStage stage,
      CauseParameter knob,
      double by,
      List<BayFigure> figures) {
    Map<BayFigure, Double> read = predictor(job, side).at(stage, knob, by).orElseThrow();
    Map<BayFigure, Angle> angles = new EnumMap<>(BayFigure.class);
    figures.forEach(f -> angles.put(f, new Angle(read.get(f))));
    return new BayReading(angles, Optional.empty());
  }

  /** Both readings of a wheel where a cause is at work. */
  static WheelVisit wheel(Job job, Side side, Cause cause, double by, List<BayFigure> figures) {
    return wheel(
        reading(
            job,
            side,
            ReadingStage.BEFORE,
            cause.knob(),
            at(cause, ReadingStage.BEFORE, by),
            figures),
        reading(
            job,
            side,
            ReadingStage.AFTER,
            cause.knob(),
            at(cause, ReadingStage.AFTER, by),
            figures));
  }

  private static double at(Cause cause, ReadingStage stage, double by) {
    return cause.stages().contains(stage) ? by : 0.0;
  }

  /** A reading that adds to each figure. */
  static BayReading off(BayReading reading, BayFigure figure, double degrees) {
    Map<BayFigure, Angle> angles = new EnumMap<>(BayFigure.class);
    angles.putAll(reading.figures());
    angles.computeIfPresent(figure, (f, a) -> Angle.ofDegrees(a.degrees() + degrees));
    return new BayReading(angles, reading.rideMm());
  }

  static Explanation explanation(Evaluation e, Optional<Side> side) {
    return e.explanations().stream().filter(x -> x.side().equals(side)).findFirst().orElseThrow();
  }
}
