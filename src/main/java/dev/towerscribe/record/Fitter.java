package dev.towerscribe.record;

import dev.towerscribe.model.Side;
import dev.towerscribe.quantity.LengthUnit;
import java.util.ArrayList;
import java.util.List;
import java.util.Map;
import java.util.Optional;
import java.util.Set;

/** Fits one cause after the other to the differences of a comparison. */
final class Fitter {
  /** Gauss-Newton on one smooth figure: three steps are exact to rounding, more do no harm. */
  private static final int STEPS = 8;

  /** A value may run so many times as far as it may be believed before it is given up. */
  private static final double FARTHEST = 10;

  /**
   * What the widest believable value must move, in standard deviations of all figures together, for
   * these figures to tell of a cause at all.
   */
  private static final double TELLS_SD = 2.0;

  private final Comparison all;
  private final Map<Side, Predictor> predictors;
  private final LengthUnit unit;
  private final Cholesky weights;
  private final double[] differences;
  private final double chiSquare;

  Fitter(Comparison all, Map<Side, Predictor> predictors, LengthUnit unit) {
    this.all = all;
    this.predictors = predictors;
    this.unit = unit;
    this.weights = new Cholesky(all.covariance());
    this.differences = all.differences();
    this.chiSquare = chiSquare(differences);
  }

  double chiSquare() {
    return chiSquare;
  }

  private double chiSquare(double[] v) {
    double[] white = weights.whitened(v);
    return Cholesky.dot(white, white);
  }

  /** How far a cause moves every prediction; empty where the linkage cannot get there. */
  private Optional<double[]> shift(Cause cause, Set<Side> acting, double value) {
    double[] shift = new double[differences.length];
    for (int i = 0; i < shift.length; i++) {
      Row row = all.rows().get(i);
      Predictor predictor = predictors.get(row.side());
      if (!cause.stages().contains(row.stage())
          || !acting.contains(row.side())
          || !predictor.knows(cause.knob())) {
        continue;
      }
      Optional<Map<BayFigure, Double>> there = predictor.at(row.stage(), cause.knob(), value);
      if (there.isEmpty()) {
        return Optional.empty();
      }
      shift[i] = there.get().get(row.figure()) - row.predicted();
    }
    return Optional.of(shift);
  }

  private Optional<double[]> slope(Cause cause, Set<Side> acting, double value) {
    double h = cause.knob().step();
    Optional<double[]> more = shift(cause, acting, value + h);
    Optional<double[]> less = shift(cause, acting, value - h);
    if (more.isEmpty() || less.isEmpty()) {
      return Optional.empty();
    }
    double[] slope = new double[differences.length];
    for (int i = 0; i < slope.length; i++) {
      slope[i] = (more.get()[i] - less.get()[i]) / (2 * h);
    }
    return Optional.of(weights.whitened(slope));
  }

  /**
   * The value of a cause that leaves least of chi-square.
   *
   * @param cause the cause
   * @param acting the wheels it acts on, alike or, for one across the car, oppositely
   * @return empty where these figures tell nothing of it
   */
  Optional<Fit> fit(Cause cause, Set<Side> acting) {
    double[] range = range(cause, acting);
    double widest = Math.max(-range[0], range[1]);
    Optional<double[]> slope = slope(cause, acting, 0.0);
    if (slope.isEmpty() || Math.sqrt(Cholesky.dot(slope.get(), slope.get())) * widest < TELLS_SD) {
      return Optional.empty();
    }
    double value = 0.0;
    double[] left = differences;
    double information = 0.0;
    for (int i = 0; i < STEPS; i++) {
      information = Cholesky.dot(slope.get(), slope.get());
      if (!(information > 0)) {
        return Optional.empty();
      }
      double step = Cholesky.dot(slope.get(), weights.whitened(left)) / information;
      Optional<double[]> there = shift(cause, acting, value + step);
      for (int half = 0; half < STEPS && there.isEmpty(); half++) {
        step /= 2;
        there = shift(cause, acting, value + step);
      }
      slope = slope(cause, acting, value + step);
      if (there.isEmpty() || slope.isEmpty() || Math.abs(value + step) > FARTHEST * widest) {
        break;
      }
      value += step;
      left = less(differences, there.get());
    }
    double chi = chiSquare(left);
    double plusMinus = 1 / Math.sqrt(information);
    CauseWords words = new CauseWords(unit, predictors, acting);
    return Optional.of(
        new Fit(
            cause,
            List.copyOf(acting),
            value,
            plusMinus,
            range[0],
            range[1],
            chi,
            chiSquare > 0 ? Math.max(0.0, 1 - chi / chiSquare) : 0.0,
            outside(left),
            words.say(cause, value),
            words.hint(cause, value, plusMinus)));
  }

  private static double[] less(double[] a, double[] b) {
    double[] c = new double[a.length];
    for (int i = 0; i < c.length; i++) {
      c[i] = a[i] - b[i];
    }
    return c;
  }

  /** Names of what is outside, given what is left of the differences. */
  private List<String> outside(double[] left) {
    List<String> names = new ArrayList<>();
    for (Comparison.Judged judged : all.judged()) {
      if (!Compared.isWithin(Math.abs(Comparison.of(judged, left)) / all.sd(judged))) {
        names.add(all.compared(judged).name());
      }
    }
    return names;
  }

  /** A cause's range; for the setting what every wheel's slot allows. */
  private double[] range(Cause cause, Set<Side> acting) {
    double[] range = {Double.NEGATIVE_INFINITY, Double.POSITIVE_INFINITY};
    for (Side side : acting) {
      Predictor predictor = predictors.get(side);
      double[] one = cause.believed(predictor.slotBackMm(), predictor.slotOnMm());
      range[0] = Math.max(range[0], one[0]);
      range[1] = Math.min(range[1], one[1]);
    }
    return range;
  }
}
