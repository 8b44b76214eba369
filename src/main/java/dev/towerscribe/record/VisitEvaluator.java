package dev.towerscribe.record;

import dev.towerscribe.alignment.Alignment;
import dev.towerscribe.alignment.Sensitivity;
import dev.towerscribe.finding.Findings;
import dev.towerscribe.model.Job;
import dev.towerscribe.model.Side;
import dev.towerscribe.model.SideJob;
import dev.towerscribe.model.StrutPoints;
import dev.towerscribe.quantity.Lengths;
import java.util.ArrayList;
import java.util.EnumMap;
import java.util.List;
import java.util.Map;
import java.util.Optional;

/** Lays a visit's figures beside the predicted ones and asks what the differences say. */
public final class VisitEvaluator {
  private VisitEvaluator() {}

  /**
   * With the plates where the job plans them.
   *
   * @param job the job
   * @param visit a visit of its car
   * @return the evaluation
   */
  public static Evaluation of(Job job, Visit visit) {
    return of(job, visit, Map.of());
  }

  /**
   * With plates elsewhere than planned.
   *
   * @param job the job
   * @param visit a visit of its car; wheels that are no sides of the job are not predicted
   * @param elsewhere where plates went instead, with how sure that is; sides left out are as
   *     planned
   * @return the evaluation
   */
  public static Evaluation of(Job job, Visit visit, Map<Side, MountAsMade> elsewhere) {
    Map<Side, MountAsMade> made = new EnumMap<>(Side.class);
    Map<Side, Predictor> predictors = new EnumMap<>(Side.class);
    List<FigureRow> rows = new ArrayList<>();
    Lengths lengths = Lengths.in(job.units());
    Findings findings = new Findings("both", lengths);
    RecordFindings says = new RecordFindings(findings);
    for (Map.Entry<Side, WheelVisit> wheel : visit.wheels().entrySet()) {
      Side side = wheel.getKey();
      SideJob sideJob = job.sides().get(side);
      if (sideJob == null || !knowsKnuckle(sideJob, wheel.getValue()) || !stands(sideJob)) {
        says.notPredicted(side);
        continue;
      }
      MountAsMade place = elsewhere.getOrDefault(side, MountAsMade.planned(sideJob));
      made.put(side, place);
      Predictor predictor = new Predictor(sideJob, wheel.getValue(), place);
      predictors.put(side, predictor);
      if (predictor.estimate()) {
        says.estimate(side);
      }
      for (ReadingStage stage : List.of(ReadingStage.BEFORE, ReadingStage.AFTER)) {
        List<FigureRow> some = rows(visit, side, stage, predictor);
        if (some.isEmpty() && !wheel.getValue().at(stage).figures().isEmpty()) {
          says.notReached(side, stage);
        }
        rows.addAll(some);
      }
    }
    Comparison all = new Comparison(job, made, rows);
    List<Compared> compared = all.judged().stream().map(all::compared).toList();
    List<Explanation> explanations = new ArrayList<>();
    for (Side side : Side.values()) {
      Comparison own = all.only(side);
      if (!own.rows().isEmpty()) {
        Map<Side, Predictor> only = Map.of(side, predictors.get(side));
        explanations.add(CauseExplainer.of(Optional.of(side), own, only, lengths));
      }
    }
    if (explanations.size() == Side.values().length) {
      explanations.add(CauseExplainer.of(Optional.empty(), all, predictors, lengths));
    }
    says.of(job, visit, compared);
    return new Evaluation(job, visit, made, compared, explanations, findings.gravestFirst());
  }

  /** Whether the side gives anything to predict from, and its points make a linkage that stands. */
  private static boolean stands(SideJob job) {
    return Alignment.of(job).flatMap(a -> a.before().or(a::at)).isPresent();
  }

  /** A bolt turned that the job has no longer cannot be calculated with. */
  private static boolean knowsKnuckle(SideJob job, WheelVisit wheel) {
    return wheel.knuckle().radians() == 0.0
        || job.strut().flatMap(StrutPoints::knuckleBolt).isPresent();
  }

  private static List<FigureRow> rows(
      Visit visit, Side side, ReadingStage stage, Predictor predictor) {
    Map<BayFigure, Double> predicted = predictor.at(stage).orElse(Map.of());
    Optional<Sensitivity.Figures> sure = predictor.sure(stage);
    BayReading reading = visit.wheels().get(side).at(stage);
    return reading.figures().keySet().stream()
        .filter(predicted::containsKey)
        .map(
            figure ->
                new FigureRow(
                    side,
                    stage,
                    figure,
                    predicted.get(figure),
                    reading.figures().get(figure).radians(),
                    visit.uncertainty().of(figure).radians(),
                    visit.uncertainty().rideMm() * perRide(predictor, stage, figure),
                    sure.flatMap(f -> figure(f, figure)).filter(Sensitivity.Figure::isFinite)))
        .toList();
  }

  /** Radians by mm of ride height. */
  private static double perRide(Predictor predictor, ReadingStage stage, BayFigure figure) {
    double h = CauseParameter.RIDE.step();
    Optional<Map<BayFigure, Double>> up = predictor.at(stage, CauseParameter.RIDE, h);
    Optional<Map<BayFigure, Double>> down = predictor.at(stage, CauseParameter.RIDE, -h);
    return up.flatMap(u -> down.map(d -> (u.get(figure) - d.get(figure)) / (2 * h))).orElse(0.0);
  }

  private static Optional<Sensitivity.Figure> figure(Sensitivity.Figures f, BayFigure figure) {
    return switch (figure) {
      case CASTER -> Optional.of(f.caster());
      case CAMBER -> Optional.of(f.camber());
      case INCLINATION -> Optional.of(f.inclination());
      case TOE -> Optional.empty();
    };
  }
}
