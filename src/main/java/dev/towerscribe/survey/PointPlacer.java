package dev.towerscribe.survey;

import dev.towerscribe.adjust.Adjustment;
import dev.towerscribe.adjust.Consistency;
import dev.towerscribe.adjust.GaussNewton.Solution;
import dev.towerscribe.adjust.Measure;
import dev.towerscribe.adjust.Network;
import dev.towerscribe.adjust.Observation;
import java.util.ArrayList;
import java.util.Arrays;
import java.util.List;
import java.util.Map;
import java.util.SplittableRandom;
import java.util.TreeMap;
import java.util.stream.IntStream;
import org.hipparchus.linear.Array2DRowRealMatrix;
import org.hipparchus.linear.ArrayRealVector;
import org.hipparchus.linear.EigenDecompositionSymmetric;
import org.hipparchus.linear.RealMatrix;
import org.hipparchus.linear.RealVector;

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
    images.forEach(
        (node, other) -> {
          double[] there = net.place(other.x(), node);
          if (other.squares() - best.squares() < ALIKE
              && Measure.distance(there, net.place(best.x(), node)) > APART_MM
              && implausible(other.x()) <= implausible(best.x())) {
            twins.add(new Twin(node, there));
          }
        });
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
    return IntStream.range(0, net.nodes().size())
        .map(node -> plausible.get(node).outside(net.place(x, node)))
        .sum();
  }

  private List<Integer> reflectable() {
    return IntStream.range(0, net.nodes().size())
        .filter(node -> openAxes(node).length > 0)
        .filter(node -> !InitialPlaces.neighbours(observations, node).isEmpty())
        .boxed()
        .toList();
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
    RealVector middle = new ArrayRealVector(Network.AXES);
    for (double[] p : around) {
      middle = middle.add(new ArrayRealVector(p).mapDivide(around.size()));
    }
    RealVector normal = flattest(around, middle, axes);
    RealVector at = new ArrayRealVector(net.place(solution.x(), node));
    double off = at.subtract(middle).dotProduct(normal);
    if (Math.abs(2 * off) < APART_MM / 2) {
      return solution;
    }
    double[] start = solution.x().clone();
    net.put(start, node, at.subtract(normal.mapMultiply(2 * off)).toArray());
    return search(start);
  }

  /** The direction within the open axes in which the neighbours spread least. */
  private static RealVector flattest(List<double[]> around, RealVector middle, int[] axes) {
    RealMatrix spread = new Array2DRowRealMatrix(axes.length, axes.length);
    for (double[] p : around) {
      RealVector off = new ArrayRealVector(p).subtract(middle);
      RealVector open =
          new ArrayRealVector(Arrays.stream(axes).mapToDouble(off::getEntry).toArray());
      spread = spread.add(open.outerProduct(open));
    }
    EigenDecompositionSymmetric eigen = new EigenDecompositionSymmetric(spread);
    double[] values = eigen.getEigenvalues();
    int least =
        IntStream.range(0, values.length).reduce(0, (a, b) -> values[b] < values[a] ? b : a);
    RealVector normal = new ArrayRealVector(Network.AXES);
    for (int i = 0; i < axes.length; i++) {
      normal.setEntry(axes[i], eigen.getEigenvector(least).getEntry(i));
    }
    return normal;
  }
}
