package dev.towerscribe.survey;

import java.util.ArrayList;
import java.util.Comparator;
import java.util.List;
import java.util.Map;
import java.util.SplittableRandom;
import java.util.TreeMap;
import java.util.stream.IntStream;
import org.hipparchus.linear.Array2DRowRealMatrix;
import org.hipparchus.linear.EigenDecompositionSymmetric;

/**
 * Solves a network without a guess: points are placed one after another from those already placed,
 * the best tied first; then all are solved for together. As distances cannot tell a place from its
 * mirror image, every point is tried at its image too.
 */
final class Placing {
  /** A place that is out of sense must fit so much better to be taken: five doubts, squared. */
  private static final double SENSE = 25;

  /** Two places fit alike if neither is this much worse: four doubts, squared. */
  private static final double ALIKE = 16;

  /** Nearer than this two solutions are one, whose +/- tells how poorly it is fixed, mm. */
  private static final double APART_MM = 20;

  /** Past chance: then the start may have been at fault. */
  private static final double POOR_FIT = 1e-6;

  private static final int TRIES = 12;

  private static final double TRY_RANGE_MM = 600;

  /** A move to an image can call for another point's; each makes things better. */
  private static final int MOST_PASSES = 3;

  private final Network net;
  private final List<Entry> entries;
  private final Map<Integer, Solver.Solution> images = new TreeMap<>();
  private Starts starts;

  private Placing(Network net, List<Entry> entries) {
    this.net = net;
    this.entries = entries;
  }

  /**
   * A solved network.
   *
   * @param adjustment at the best solution found
   * @param twins points that fit about as well elsewhere
   */
  record Placed(Adjustment adjustment, List<Twin> twins) {}

  /**
   * A second place of a point.
   *
   * @param node the point
   * @param at where it would be
   */
  record Twin(int node, double[] at) {}

  static Placed solve(Network net, List<Entry> entries) {
    Placing placing = new Placing(net, entries);
    return placing.placed(placing.mirrored(placing.scattered(placing.start())));
  }

  /** Solves what was solved before with some more readings. */
  static Placed again(Network net, List<Entry> entries, double[] before) {
    Placing placing = new Placing(net, entries);
    return placing.placed(placing.mirrored(placing.best(before)));
  }

  /** The same without looking at mirror images. */
  static Placed quick(Network net, List<Entry> entries, double[] before) {
    Placing placing = new Placing(net, entries);
    return placing.placed(placing.best(before));
  }

  /** From where it was, and from nothing. */
  private Solver.Solution best(double[] before) {
    Solver.Solution here = Solver.solve(net, entries, before);
    Solver.Solution fresh = start();
    return better(fresh, here) ? fresh : here;
  }

  private Solver.Solution start() {
    starts = new Starts(net, entries);
    return Solver.solve(net, entries, starts.x());
  }

  /** Tries other places for points that had too few ties to be placed by them. */
  private Solver.Solution scattered(Solver.Solution first) {
    Solver.Solution best = first;
    int freedom = starts.loose().isEmpty() ? 0 : Adjustment.at(net, entries, best).freedom();
    SplittableRandom random = new SplittableRandom(1);
    for (int i = 0; i < TRIES && freedom > 0; i++) {
      if (ChiSquare.above(best.cost(), freedom) > POOR_FIT) {
        break;
      }
      Solver.Solution other = Solver.solve(net, entries, scattered(best.x(), random));
      best = better(other, best) ? other : best;
    }
    return best;
  }

  private Placed placed(Solver.Solution best) {
    List<Twin> twins = new ArrayList<>();
    for (Map.Entry<Integer, Solver.Solution> image : images.entrySet()) {
      Solver.Solution other = image.getValue();
      double[] there = net.place(other.x(), image.getKey());
      if (other.cost() - best.cost() < ALIKE
          && distance(there, net.place(best.x(), image.getKey())) > APART_MM
          && senseless(other.x()) <= senseless(best.x())) {
        twins.add(new Twin(image.getKey(), there));
      }
    }
    return new Placed(Adjustment.at(net, entries, best), twins);
  }

  private double[] scattered(double[] x, SplittableRandom random) {
    double[] other = x.clone();
    for (int node : starts.loose()) {
      double[] at = net.place(starts.x(), node);
      for (int axis = 0; axis < Network.AXES; axis++) {
        at[axis] += TRY_RANGE_MM * (2 * random.nextDouble() - 1);
      }
      net.put(other, node, at);
    }
    return other;
  }

  /**
   * Moves points to their mirror images as long as that fits better; afterwards {@link #images} has
   * what came of each image of the solution returned.
   */
  private Solver.Solution mirrored(Solver.Solution solution) {
    Solver.Solution best = solution;
    boolean moved = true;
    for (int pass = 0; moved && pass < MOST_PASSES; pass++) {
      moved = false;
      images.clear();
      for (int node : reflectable()) {
        Solver.Solution other = reflected(best, node);
        images.put(node, other);
        if (better(other, best)) {
          best = other;
          moved = true;
        }
      }
    }
    return best;
  }

  private boolean better(Solver.Solution a, Solver.Solution b) {
    // Costs of one and the same place differ by rounding.
    return judged(a) < judged(b) - 1e-6;
  }

  private double judged(Solver.Solution s) {
    return s.cost() + SENSE * senseless(s.x());
  }

  private int senseless(double[] x) {
    int count = 0;
    for (int node = 0; node < net.nodes().size(); node++) {
      count += net.nodes().get(node).senseless(net.place(x, node));
    }
    return count;
  }

  private List<Integer> reflectable() {
    List<Integer> list = new ArrayList<>();
    for (int node = 0; node < net.nodes().size(); node++) {
      if (openAxes(node).length > 0 && Starts.neighbours(entries, node).size() > 0) {
        list.add(node);
      }
    }
    return list;
  }

  /** Axes in which nothing but distances places a point. */
  private int[] openAxes(int node) {
    boolean[] said = new boolean[Network.AXES];
    for (int axis = 0; axis < Network.AXES; axis++) {
      said[axis] = net.nodes().get(node).unknown()[axis] == Network.NONE;
    }
    for (Entry e : entries) {
      if (e.measure() instanceof Measure.Coordinate c && c.node() == node) {
        said[c.axis()] = true;
      }
    }
    return IntStream.range(0, Network.AXES).filter(a -> !said[a]).toArray();
  }

  /** Solves again from a point's image across the plane that its neighbours lie nearest to. */
  private Solver.Solution reflected(Solver.Solution solution, int node) {
    int[] axes = openAxes(node);
    List<double[]> around =
        Starts.neighbours(entries, node).stream().map(n -> net.place(solution.x(), n)).toList();
    double[] middle = new double[Network.AXES];
    for (double[] p : around) {
      for (int axis = 0; axis < Network.AXES; axis++) {
        middle[axis] += p[axis] / around.size();
      }
    }
    double[] normal = flattest(around, middle, axes);
    double[] at = net.place(solution.x(), node);
    double off = 0;
    for (int axis = 0; axis < Network.AXES; axis++) {
      off += (at[axis] - middle[axis]) * normal[axis];
    }
    for (int axis = 0; axis < Network.AXES; axis++) {
      at[axis] -= 2 * off * normal[axis];
    }
    if (Math.abs(2 * off) < APART_MM / 2) {
      return solution;
    }
    double[] start = solution.x().clone();
    net.put(start, node, at);
    return Solver.solve(net, entries, start);
  }

  /** The direction within the open axes in which the neighbours spread least. */
  private static double[] flattest(List<double[]> around, double[] middle, int[] axes) {
    double[][] spread = new double[axes.length][axes.length];
    for (double[] p : around) {
      for (int i = 0; i < axes.length; i++) {
        for (int j = 0; j < axes.length; j++) {
          spread[i][j] += (p[axes[i]] - middle[axes[i]]) * (p[axes[j]] - middle[axes[j]]);
        }
      }
    }
    EigenDecompositionSymmetric eigen =
        new EigenDecompositionSymmetric(new Array2DRowRealMatrix(spread, false));
    double[] values = eigen.getEigenvalues();
    int least =
        IntStream.range(0, values.length)
            .boxed()
            .min(Comparator.comparingDouble(k -> values[k]))
            .orElseThrow();
    double[] normal = new double[Network.AXES];
    for (int i = 0; i < axes.length; i++) {
      normal[axes[i]] = eigen.getEigenvector(least).getEntry(i);
    }
    return normal;
  }

  static double distance(double[] a, double[] b) {
    return Measure.Distance.norm(new double[] {b[0] - a[0], b[1] - a[1], b[2] - a[2]});
  }
}
