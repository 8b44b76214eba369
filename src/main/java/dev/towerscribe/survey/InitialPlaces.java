package dev.towerscribe.survey;

import dev.towerscribe.adjust.Adjustment;
import dev.towerscribe.adjust.GaussNewton.Solution;
import dev.towerscribe.adjust.Measure;
import dev.towerscribe.adjust.Network;
import dev.towerscribe.adjust.Observation;
import dev.towerscribe.adjust.Repeated;
import java.util.ArrayList;
import java.util.Comparator;
import java.util.HashSet;
import java.util.LinkedHashSet;
import java.util.List;
import java.util.Set;
import java.util.TreeSet;
import java.util.stream.IntStream;

/**
 * First places of a network's points: the point with most ties to known ones is placed by those
 * ties, then the next, until all are. Which of several places a point has that its ties leave open
 * is decided by where such a point can be: above the floor, on its side, nearest to where it mostly
 * is.
 */
final class InitialPlaces {
  /** Places whose squares differ by less cannot be told apart by fit this early. */
  private static final double ALIKE = 25;

  /** Where to look along an open axis: so much of the mean distance to either side. */
  private static final double REACH = 0.6;

  /** A coordinate where such a point cannot be weighs more than any way to where it mostly is. */
  private static final double IMPLAUSIBLE_MM = 1e6;

  private final Network net;
  private final List<Plausible> plausible;
  private final List<Observation> observations;
  private final double[] x;
  private final boolean[] placed;
  private final Set<Integer> loose = new TreeSet<>();

  InitialPlaces(Network net, List<Plausible> plausible, List<Observation> observations) {
    this.net = net;
    this.plausible = plausible;
    this.observations = observations;
    x = new double[net.unknowns()];
    placed = new boolean[net.nodes().size()];
    for (Observation o : observations) {
      if (o.measure() instanceof Measure.Size s) {
        x[net.unknownOfSize(s.size())] = o.reading().mean();
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
  static Set<Integer> neighbours(List<Observation> observations, int node) {
    Set<Integer> found = new LinkedHashSet<>();
    for (Observation o : observations) {
      if (o.measure() instanceof Measure.Distance d && d.endsAt(node)) {
        found.add(d.otherEnd(node));
      }
    }
    return found;
  }

  /** The unplaced point with most ties, the first of equals; -1 when all are placed. */
  private int next() {
    return IntStream.range(0, placed.length)
        .filter(i -> !placed[i])
        .reduce((best, i) -> ties(i) > ties(best) ? i : best)
        .orElse(-1);
  }

  /** Coordinates given or read, and placed points that a distance goes to. */
  private int ties(int node) {
    Set<Integer> axes = new HashSet<>();
    for (Observation o : observations) {
      if (o.measure() instanceof Measure.Coordinate c && c.node() == node) {
        axes.add(c.axis());
      }
    }
    int[] unknown = net.unknownsOf(node);
    for (int axis = 0; axis < Network.AXES; axis++) {
      if (unknown[axis] == Network.NONE) {
        axes.add(axis);
      }
    }
    long distances = neighbours(observations, node).stream().filter(n -> placed[n]).count();
    return axes.size() + (int) distances;
  }

  private void place(int node) {
    if (ties(node) < Network.AXES) {
      loose.add(node);
    }
    Plausible where = plausible.get(node);
    Alone alone = new Alone(net, node);
    double[] first = where.likely().clone();
    for (Observation o : observations) {
      if (o.measure() instanceof Measure.Coordinate c && c.node() == node) {
        alone.coordinate(c, o.reading());
        first[c.axis()] = c.sign() * o.reading().mean();
      } else if (o.measure() instanceof Measure.Distance d
          && d.endsAt(node)
          && placed[d.otherEnd(node)]) {
        double length = o.reading().mean() - d.radiiAt(net, x);
        alone.distance(net.place(x, d.otherEnd(node)), length, o.reading().meanSd());
      }
    }
    net.put(x, node, alone.best(first, where));
    placed[node] = true;
  }

  /** One point among fixed ones. */
  private static final class Alone {
    private final Network net = new Network();
    private final int node;
    private final List<double[]> around = new ArrayList<>();
    private final List<Observation> ties = new ArrayList<>();
    private final boolean[] said = new boolean[Network.AXES];
    private double lengths;

    Alone(Network of, int point) {
      node = net.node(of.nodes().get(point).given());
    }

    void coordinate(Measure.Coordinate c, Repeated reading) {
      said[c.axis()] = true;
      ties.add(
          Observation.of(ties.size(), new Measure.Coordinate(node, c.axis(), c.sign()), reading));
    }

    void distance(double[] from, double length, double sd) {
      around.add(from);
      lengths += length;
      ties.add(
          Observation.of(
              ties.size(), new Measure.Distance(net.node(from), node), Repeated.once(length, sd)));
    }

    /** Where it fits and can be, looked for from a first place and all round. */
    double[] best(double[] first, Plausible where) {
      List<Solution> found = starts(first).stream().map(this::search).toList();
      double least = found.stream().mapToDouble(Solution::squares).min().orElseThrow();
      return found.stream()
          .filter(s -> s.squares() <= least + ALIKE)
          .map(s -> net.place(s.x(), node))
          .min(
              Comparator.comparingDouble(
                  at -> IMPLAUSIBLE_MM * where.outside(at) + Measure.distance(at, where.likely())))
          .orElseThrow();
    }

    private Solution search(double[] at) {
      double[] x = new double[net.unknowns()];
      net.put(x, node, at);
      return Adjustment.search(net, ties, x);
    }

    /** The first place, and the eight corners round the middle of those it is tied to. */
    private List<double[]> starts(double[] first) {
      List<double[]> starts = new ArrayList<>(List.of(first));
      double reach = REACH * lengths / around.size();
      for (int corner = 0; !around.isEmpty() && corner < 1 << Network.AXES; corner++) {
        double[] at = first.clone();
        for (int axis = 0; axis < Network.AXES; axis++) {
          if (!said[axis]) {
            int way = axis;
            double middle = around.stream().mapToDouble(p -> p[way]).average().orElseThrow();
            at[axis] = middle + ((corner >> axis & 1) == 0 ? reach : -reach);
          }
        }
        starts.add(at);
      }
      return starts;
    }
  }
}
