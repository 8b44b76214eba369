package dev.towerscribe.record;

import dev.towerscribe.adjust.Propagation;
import dev.towerscribe.alignment.Sensitivity;
import dev.towerscribe.model.Job;
import dev.towerscribe.model.Side;
import dev.towerscribe.model.SideJob;
import dev.towerscribe.model.StrutPoints;
import dev.towerscribe.quantity.Angle;
import java.util.ArrayList;
import java.util.List;
import java.util.Map;
import java.util.Optional;
import java.util.stream.IntStream;

/**
 * All figures of a visit with the covariance of their differences. Predictions share the errors of
 * the points: before and after always, left and right where one side's points are the other's
 * mirror image. So a change is surer than either of its ends.
 */
final class Comparison {
  /**
   * What is judged: a figure, or the difference of two.
   *
   * @param of index of the figure
   * @param less index of what is taken off it; negative for none
   * @param side which wheel; empty for left minus right
   * @param stage when
   */
  record Judged(int of, int less, Optional<Side> side, ReadingStage stage) {}

  private final Job job;
  private final Map<Side, MountAsMade> made;
  private final List<FigureRow> rows;
  private final double[][] covariance;

  Comparison(Job job, Map<Side, MountAsMade> made, List<FigureRow> rows) {
    this.job = job;
    this.made = made;
    this.rows = List.copyOf(rows);
    int n = rows.size();
    covariance = new double[n][n];
    for (int i = 0; i < n; i++) {
      for (int j = 0; j <= i; j++) {
        double ofPrediction = predicted(rows.get(i), rows.get(j));
        double ofReading = i == j ? rows.get(i).uncertainty() * rows.get(i).uncertainty() : 0.0;
        covariance[i][j] = ofPrediction + ofReading;
        covariance[j][i] = covariance[i][j];
      }
    }
  }

  List<FigureRow> rows() {
    return rows;
  }

  /** The part of it that belongs to some figures alone. */
  Comparison only(Side side) {
    return new Comparison(job, made, rows.stream().filter(r -> r.side() == side).toList());
  }

  double[] differences() {
    return rows.stream().mapToDouble(FigureRow::difference).toArray();
  }

  double[][] covariance() {
    return covariance;
  }

  /** Covariance of two predictions, radians squared. */
  private double predicted(FigureRow a, FigureRow b) {
    double sum = 0.0;
    if (a.side() == b.side() && a.stage() == b.stage()) {
      sum += a.byRide() * b.byRide();
    }
    if (a.sure().isEmpty() || b.sure().isEmpty()) {
      return sum;
    }
    Sensitivity.Figure f = a.sure().get();
    Sensitivity.Figure g = b.sure().get();
    if (a.side() == b.side() || sharePoints()) {
      sum += f.covariance(g, strut(a.side()).orElseThrow().plusMinus());
    }
    if (a.side() == b.side()) {
      List<List<Double>> ofChoices = made.get(a.side()).covariance();
      for (int i = 0; i < ofChoices.size(); i++) {
        for (int j = 0; j < ofChoices.size(); j++) {
          sum += f.byChoice()[i] * ofChoices.get(i).get(j) * g.byChoice()[j];
        }
      }
    }
    return sum;
  }

  private boolean sharePoints() {
    Optional<StrutPoints> left = strut(Side.LEFT);
    return left.isPresent() && left.map(StrutPoints::mirrored).equals(strut(Side.RIGHT));
  }

  private Optional<StrutPoints> strut(Side side) {
    return Optional.ofNullable(job.sides().get(side)).flatMap(SideJob::strut);
  }

  /** Every figure, then what the work changed, then left minus right. */
  List<Judged> judged() {
    List<Judged> all = new ArrayList<>();
    for (int i = 0; i < rows.size(); i++) {
      all.add(new Judged(i, -1, Optional.of(rows.get(i).side()), rows.get(i).stage()));
    }
    for (int i = 0; i < rows.size(); i++) {
      FigureRow after = rows.get(i);
      int before = index(after.side(), ReadingStage.BEFORE, after.figure());
      if (after.stage() == ReadingStage.AFTER && before >= 0 && after.figure().changesByTheWork()) {
        all.add(new Judged(i, before, Optional.of(after.side()), ReadingStage.CHANGE));
      }
    }
    for (int i = 0; i < rows.size(); i++) {
      FigureRow left = rows.get(i);
      int right = index(Side.RIGHT, left.stage(), left.figure());
      if (left.side() == Side.LEFT && right >= 0 && left.figure().changesByTheWork()) {
        all.add(new Judged(i, right, Optional.empty(), left.stage()));
      }
    }
    return all;
  }

  private int index(Side side, ReadingStage stage, BayFigure figure) {
    return IntStream.range(0, rows.size())
        .filter(i -> rows.get(i).is(side, stage, figure))
        .findFirst()
        .orElse(-1);
  }

  /** A figure's difference among others. */
  static double of(Judged judged, double[] differences) {
    return differences[judged.of()] - (judged.less() < 0 ? 0.0 : differences[judged.less()]);
  }

  /** Its standard deviation, radians. */
  double sd(Judged judged) {
    double[] by = new double[rows.size()];
    by[judged.of()] = 1;
    if (judged.less() >= 0) {
      by[judged.less()] = -1;
    }
    return Propagation.sd(by, covariance);
  }

  /** As said to people. */
  Compared compared(Judged judged) {
    FigureRow row = rows.get(judged.of());
    Optional<FigureRow> less =
        judged.less() < 0 ? Optional.empty() : Optional.of(rows.get(judged.less()));
    double uncertainty =
        Math.hypot(row.uncertainty(), less.map(FigureRow::uncertainty).orElse(0.0));
    double sd = sd(judged);
    boolean known = row.sure().isPresent() || row.figure() == BayFigure.TOE;
    // What is not the readings' is the prediction's; rounding may take it a shade below nothing.
    double plusMinus = Propagation.root(sd * sd - uncertainty * uncertainty);
    return new Compared(
        judged.side(),
        judged.stage(),
        row.figure(),
        new Angle(row.predicted() - less.map(FigureRow::predicted).orElse(0.0)),
        known ? Optional.of(new Angle(plusMinus)) : Optional.empty(),
        new Angle(row.measured() - less.map(FigureRow::measured).orElse(0.0)),
        new Angle(uncertainty),
        new Angle(sd));
  }
}
