package dev.towerscribe.survey;

import java.util.ArrayList;
import java.util.LinkedHashSet;
import java.util.List;
import java.util.Set;
import java.util.TreeSet;

/**
 * First places of a network's points: the point with most ties to known ones is placed by those
 * ties, then the next, until all are. Which of several places a point has that its ties leave open
 * is decided by sense: above the floor, on its side, nearest to where such a point mostly is.
 */
final class Starts {
  /** Places whose squared doubts differ by less cannot be told apart by fit this early. */
  private static final double ALIKE = 25;

  /** Where to look along an open axis: so much of the mean distance to either side. */
  private static final double REACH = 0.6;

  private static final int STEPS = 60;

  private static final double SMALL_STEP_MM = 1e-4;

  private final Network net;
  private final List<Entry> entries;
  private final double[] x;
  private final boolean[] placed;
  private final Set<Integer> loose = new TreeSet<>();

  Starts(Network net, List<Entry> entries) {
    this.net = net;
    this.entries = entries;
    x = new double[net.unknowns()];
    placed = new boolean[net.nodes().size()];
    for (Entry e : entries) {
      if (e.measure() instanceof Measure.Size s) {
        x[net.unknownOfSize(s.size())] = e.reading().mean();
      }
    }
    for (int i = 0; i < placed.length; i++) {
      placed[i] = net.nodes().get(i).isGiven();
    }
    for (int next = next(); next >= 0; next = next()) {
      place(next);
    }
  }

  /** The places found. */
  double[] x() {
    return x;
  }

  /** Points that had too few ties to be placed by them. */
  Set<Integer> loose() {
    return loose;
  }

  /** The other ends of a point's distances, each once. */
  static Set<Integer> neighbours(List<Entry> entries, int node) {
    Set<Integer> found = new LinkedHashSet<>();
    for (Entry e : entries) {
      if (e.measure() instanceof Measure.Distance d && (d.from() == node || d.to() == node)) {
        found.add(d.from() == node ? d.to() : d.from());
      }
    }
    return found;
  }

  /** The unplaced point with most ties, the first of equals; -1 when all are placed. */
  private int next() {
    int best = -1;
    int most = -1;
    for (int i = 0; i < placed.length; i++) {
      if (!placed[i] && ties(i) > most) {
        best = i;
        most = ties(i);
      }
    }
    return best;
  }

  private int ties(int node) {
    Set<Object> ties = new LinkedHashSet<>();
    for (Entry e : entries) {
      if (e.measure() instanceof Measure.Coordinate c && c.node() == node) {
        ties.add("axis " + c.axis());
      }
    }
    for (int other : neighbours(entries, node)) {
      if (placed[other]) {
        ties.add(other);
      }
    }
    for (int unknown : net.nodes().get(node).unknown()) {
      if (unknown == Network.NONE) {
        ties.add("given " + ties.size());
      }
    }
    return ties.size();
  }

  private record Tie(double[] from, double length, double weight) {}

  private void place(int node) {
    Network.Node n = net.nodes().get(node);
    double[] said = {Network.FREE, Network.FREE, Network.FREE};
    double[] weight = new double[Network.AXES];
    List<Tie> ties = new ArrayList<>();
    for (Entry e : entries) {
      if (e.measure() instanceof Measure.Coordinate c && c.node() == node) {
        double value = c.sign() * e.reading().mean();
        double before = Double.isNaN(said[c.axis()]) ? 0 : said[c.axis()] * weight[c.axis()];
        weight[c.axis()] += e.weight();
        said[c.axis()] = (before + e.weight() * value) / weight[c.axis()];
      } else if (e.measure() instanceof Measure.Distance d
          && (d.from() == node || d.to() == node)
          && placed[d.from() == node ? d.to() : d.from()]) {
        double[] from = net.place(x, d.from() == node ? d.to() : d.from());
        ties.add(new Tie(from, e.reading().mean() - d.radiiAt(net, x), e.weight()));
      }
    }
    for (int axis = 0; axis < Network.AXES; axis++) {
      if (n.unknown()[axis] == Network.NONE) {
        said[axis] = n.given()[axis];
      }
    }
    if (ties(node) < Network.AXES) {
      loose.add(node);
    }
    net.put(x, node, best(n, said, weight, ties));
    placed[node] = true;
  }

  private double[] best(Network.Node n, double[] said, double[] weight, List<Tie> ties) {
    List<double[]> starts = new ArrayList<>();
    starts.add(n.likely().clone());
    if (!ties.isEmpty()) {
      double mean = ties.stream().mapToDouble(Tie::length).average().orElseThrow();
      for (int corner = 0; corner < 1 << Network.AXES; corner++) {
        double[] at = new double[Network.AXES];
        for (int axis = 0; axis < Network.AXES; axis++) {
          for (Tie tie : ties) {
            at[axis] += tie.from[axis] / ties.size();
          }
          at[axis] += (corner >> axis & 1) == 0 ? REACH * mean : -REACH * mean;
        }
        starts.add(at);
      }
    }
    double[] best = null;
    double bestCost = Double.POSITIVE_INFINITY;
    List<double[]> places = new ArrayList<>();
    List<Double> costs = new ArrayList<>();
    for (double[] start : starts) {
      for (int axis = 0; axis < Network.AXES; axis++) {
        start[axis] = Double.isNaN(said[axis]) ? start[axis] : said[axis];
      }
      double[] at = descend(n, start, said, weight, ties);
      double cost = cost(at, said, weight, ties);
      places.add(at);
      costs.add(cost);
      bestCost = Math.min(bestCost, cost);
    }
    double least = Double.POSITIVE_INFINITY;
    for (int i = 0; i < places.size(); i++) {
      if (costs.get(i) <= bestCost + ALIKE) {
        double strange =
            1e6 * n.senseless(places.get(i)) + Placing.distance(places.get(i), n.likely());
        if (strange < least) {
          least = strange;
          best = places.get(i);
        }
      }
    }
    return best;
  }

  private static double cost(double[] at, double[] said, double[] weight, List<Tie> ties) {
    double cost = 0;
    for (int axis = 0; axis < Network.AXES; axis++) {
      if (weight[axis] > 0) {
        cost += weight[axis] * (at[axis] - said[axis]) * (at[axis] - said[axis]);
      }
    }
    for (Tie tie : ties) {
      double off = tie.length - Placing.distance(at, tie.from);
      cost += tie.weight * off * off;
    }
    return cost;
  }

  /** Damped Gauss-Newton for one point among fixed ones. */
  private static double[] descend(
      Network.Node n, double[] start, double[] said, double[] weight, List<Tie> ties) {
    double[] at = start.clone();
    double cost = cost(at, said, weight, ties);
    double damping = 1e-3;
    for (int step = 0; step < STEPS; step++) {
      double[][] normal = new double[Network.AXES][Network.AXES];
      double[] right = new double[Network.AXES];
      for (Tie tie : ties) {
        double length = Math.max(Placing.distance(at, tie.from), 1e-9);
        double[] d = new double[Network.AXES];
        for (int i = 0; i < Network.AXES; i++) {
          d[i] = n.unknown()[i] == Network.NONE ? 0 : (at[i] - tie.from[i]) / length;
        }
        for (int i = 0; i < Network.AXES; i++) {
          right[i] += tie.weight * d[i] * (tie.length - length);
          for (int j = 0; j < Network.AXES; j++) {
            normal[i][j] += tie.weight * d[i] * d[j];
          }
        }
      }
      for (int i = 0; i < Network.AXES; i++) {
        if (weight[i] > 0) {
          normal[i][i] += weight[i];
          right[i] += weight[i] * (said[i] - at[i]);
        }
        normal[i][i] += damping * Math.max(normal[i][i], 1e-2);
      }
      double[] by = Cholesky.solve(normal, right);
      double[] there = {at[0] + by[0], at[1] + by[1], at[2] + by[2]};
      double after = cost(there, said, weight, ties);
      if (after <= cost) {
        at = there;
        cost = after;
        damping = Math.max(damping / 10, 1e-9);
        if (Measure.Distance.norm(by) < SMALL_STEP_MM) {
          break;
        }
      } else {
        damping *= 10;
      }
    }
    return at;
  }
}
