package dev.towerscribe.record;

import dev.towerscribe.adjust.CorrelatedErrors;
import dev.towerscribe.adjust.GaussNewton;
import dev.towerscribe.adjust.NormalEquations;
import dev.towerscribe.model.Side;
import dev.towerscribe.quantity.Lengths;
import java.util.List;
import java.util.Map;
import java.util.Optional;
import java.util.Set;

/** Fits one cause after the other to the differences of a comparison. */
final class CauseFitter {
  /** A value may run so many times as far as is plausible before it is given up. */
  private static final double FARTHEST = 10;

  /**
   * What the widest believable value must move, in standard deviations of all figures together, for
   * these figures to tell of a cause at all.
   */
  private static final double TELLS_SD = 2.0;

  private final Comparison all;
  private final Map<Side, Predictor> predictors;
  private final Lengths lengths;
  private final CorrelatedErrors errors;
  private final double[] differences;
  private final double chiSquare;

  CauseFitter(Comparison all, Map<Side, Predictor> predictors, Lengths lengths) {
    this.all = all;
    this.predictors = predictors;
    this.lengths = lengths;
    this.errors = new CorrelatedErrors(all.covariance());
    this.differences = all.differences();
    this.chiSquare = errors.squares(differences);
  }

  double chiSquare() {
    return chiSquare;
  }

  /** How far a cause moves every prediction; empty where the linkage cannot get there. */
  private Optional<double[]> shift(Cause cause, Set<Side> acting, double value) {
    double[] shift = new double[differences.length];
    for (int i = 0; i < shift.length; i++) {
      FigureRow row = all.rows().get(i);
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

  /** Of the one figure of a cause; empty where the linkage cannot get there. */
  private Optional<NormalEquations> equations(Cause cause, Set<Side> acting, double value) {
    double h = cause.knob().step();
    Optional<double[]> here = shift(cause, acting, value);
    Optional<double[]> more = shift(cause, acting, value + h);
    Optional<double[]> less = shift(cause, acting, value - h);
    if (here.isEmpty() || more.isEmpty() || less.isEmpty()) {
      return Optional.empty();
    }
    double[][] design = new double[differences.length][1];
    for (int i = 0; i < design.length; i++) {
      design[i][0] = (more.get()[i] - less.get()[i]) / (2 * h);
    }
    return Optional.of(errors.equations(design, less(differences, here.get())));
  }

  /**
   * The value of a cause that leaves least of chi-square.
   *
   * @param cause the cause
   * @param acting the wheels it acts on, alike or, for one across the car, oppositely
   * @return empty where these figures tell nothing of it
   */
  Optional<CauseFit> fit(Cause cause, Set<Side> acting) {
    double[] range = range(cause, acting);
    double widest = Math.max(-range[0], range[1]);
    GaussNewton.Model model =
        x -> Math.abs(x[0]) > FARTHEST * widest ? Optional.empty() : equations(cause, acting, x[0]);
    Optional<NormalEquations> none = model.at(new double[] {0});
    if (none.isEmpty() || information(none.get()) * widest < TELLS_SD) {
      return Optional.empty();
    }
    GaussNewton.Solution found = GaussNewton.solve(model, new double[] {0});
    double value = found.x()[0];
    double sd = 1 / information(found.equations());
    CauseWords words = new CauseWords(lengths, predictors, acting);
    return Optional.of(
        new CauseFit(
            cause,
            List.copyOf(acting),
            value,
            sd,
            range[0],
            range[1],
            found.squares(),
            chiSquare > 0 ? Math.max(0.0, 1 - found.squares() / chiSquare) : 0.0,
            outside(less(differences, shift(cause, acting, value).orElseThrow())),
            words.say(cause, value),
            words.hint(cause, value, sd)));
  }

  /** What one unit of the only unknown moves, in standard deviations of all figures together. */
  private static double information(NormalEquations equations) {
    return Math.sqrt(equations.matrix()[0][0]);
  }

  private static double[] less(double[] a, double[] b) {
    double[] left = a.clone();
    for (int i = 0; i < left.length; i++) {
      left[i] -= b[i];
    }
    return left;
  }

  /** Names of what is outside, given what is left of the differences. */
  private List<String> outside(double[] left) {
    return all.judged().stream()
        .filter(j -> !Compared.isWithin(Math.abs(Comparison.of(j, left)) / all.sd(j)))
        .map(j -> all.compared(j).name())
        .toList();
  }

  /** A cause's range; for the setting what every wheel's slot allows. */
  private double[] range(Cause cause, Set<Side> acting) {
    double[] range = {Double.NEGATIVE_INFINITY, Double.POSITIVE_INFINITY};
    for (Side side : acting) {
      double[] one = predictors.get(side).believed(cause);
      range[0] = Math.max(range[0], one[0]);
      range[1] = Math.min(range[1], one[1]);
    }
    return range;
  }
}
