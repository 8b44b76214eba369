package dev.towerscribe.survey;

import dev.towerscribe.adjust.Adjustment;
import dev.towerscribe.adjust.Consistency;
import dev.towerscribe.adjust.GaussNewton.Solution;
import dev.towerscribe.adjust.Measure;
import dev.towerscribe.adjust.Network;
import dev.towerscribe.adjust.Observation;
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
final class PointPlacer {
  /** A place where such a point cannot be must fit so much better: five sd, squared. */
  private static final double PLAUSIBLE = 25;

  /** Two places fit alike if neither is this much worse: four sd, squared. */
  private static final double ALIKE = 16;

  /** Nearer than this two solutions are one, whose +/- tells how poorly it is fixed, mm. */
  private static final double APART_MM = 20;

  /** Past chance: then the start may have been at fault. */
  private static final double POOR_FIT = 1e-6;

  private static final int TRIES = 12;

  private static final double TRY_RANGE_MM = 600;

  /** A move to an image can call for another point's; each makes things better. */
  private static final int MOST_PASSES = 3;

  private final List<Plausible> plausible;
  private final Network net;
  private final List<Observation> observations;
  private final Map<Integer, Solution> images = new TreeMap<>();
  private InitialPlaces starts;

  private PointPlacer(NamedNetwork net, List<Observation> observations) {
    this.plausible = net.plausible();
    this.net = net.net();
    this.observations = observations;
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

  /** Solves a network from nothing. */
  static Placed solve(NamedNetwork net) {
    PointPlacer placing = new PointPlacer(net, net.observations());
    return placing.placed(placing.mirrored(placing.scattered(placing.start())));
  }

  /** Solves what was solved before with some more readings. */
  static Placed again(NamedNetwork net, List<Observation> left, double[] before) {
    PointPlacer placing = new PointPlacer(net, left);
    return placing.placed(placing.mirrored(placing.best(before)));
  }

  /** The same without looking at mirror images. */
  static Adjustment quick(NamedNetwork net, List<Observation> left, double[] before) {
    PointPlacer placing = new PointPlacer(net, left);
    return placing.placed(placing.best(before)).adjustment();
  }

  private Solution search(double[] start) {
    return Adjustment.search(net, observations, start);
  }

  /** From where it was, and from nothing. */
  private Solution best(double[] before) {
    Solution here = search(before);
    Solution fresh = start();
    return better(fresh, here) ? fresh : here;
  }

  private Solution start() {
    starts = new InitialPlaces(net, plausible, observations);
    return search(starts.x());
  }

  /** Tries other places for points that had too few ties to be placed by them. */
  private Solution scattered(Solution first) {
    Solution best = first;
    int freedom = starts.loose().isEmpty() ? 0 : Adjustment.at(net, observations, best).freedom();
    SplittableRandom random = new SplittableRandom(1);
    for (int i = 0; i < TRIES && freedom > 0; i++) {
      if (new Consistency(best.squares(), freedom).chance() > POOR_FIT) {
        break;
      }
      Solution other = search(scattered(best.x(), random));
      best = better(other, best) ? other : best;
    }
    return best;
  }

  private Placed placed(Solution best) {
    List<Twin> twins = new ArrayList<>();
    for (Map.Entry<Integer, Solution> image : images.entrySet()) {
      Solution other = image.getValue();
      double[] there = net.place(other.x(), image.getKey());
      if (other.squares() - best.squares() < ALIKE
          && Measure.distance(there, net.place(best.x(), image.getKey())) > APART_MM
          && implausible(other.x()) <= implausible(best.x())) {
        twins.add(new Twin(image.getKey(), there));
      }
    }
    return new Placed(Adjustment.at(net, observations, best), twins);
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
  private Solution mirrored(Solution solution) {
    Solution best = solution;
    boolean moved = true;
    for (int pass = 0; moved && pass < MOST_PASSES; pass++) {
      moved = false;
      images.clear();
      for (int node : reflectable()) {
        Solution other = reflected(best, node);
        images.put(node, other);
        if (better(other, best)) {
          best = other;
          moved = true;
        }
      }
    }
    return best;
  }

  private boolean better(Solution a, Solution b) {
    // Costs of one and the same place differ by rounding.
    return judged(a) < judged(b) - 1e-6;
  }

  private double judged(Solution s) {
    return s.squares() + PLAUSIBLE * implausible(s.x());
  }

  private int implausible(double[] x) {
    int count = 0;
    for (int node = 0; node < net.nodes().size(); node++) {
      count += plausible.get(node).outside(net.place(x, node));
    }
    return count;
  }

  private List<Integer> reflectable() {
    List<Integer> list = new ArrayList<>();
    for (int node = 0; node < net.nodes().size(); node++) {
      if (openAxes(node).length > 0 && !InitialPlaces.neighbours(observations, node).isEmpty()) {
        list.add(node);
      }
    }
    return list;
  }

  /** Axes in which nothing but distances places a point. */
  private int[] openAxes(int node) {
    boolean[] said = new boolean[Network.AXES];
    for (int axis = 0; axis < Network.AXES; axis++) {
      said[axis] = net.unknownsOf(node)[axis] == Network.NONE;
    }
    for (Observation o : observations) {
      if (o.measure() instanceof Measure.Coordinate c && c.node() == node) {
        said[c.axis()] = true;
      }
    }
    return IntStream.range(0, Network.AXES).filter(a -> !said[a]).toArray();
  }

  /** Solves again from a point's image across the plane that its neighbours lie nearest to. */
  private Solution reflected(Solution solution, int node) {
    int[] axes = openAxes(node);
    List<double[]> around =
        InitialPlaces.neighbours(observations, node).stream()
            .map(n -> net.place(solution.x(), n))
            .toList();
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
    return search(start);
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
}
