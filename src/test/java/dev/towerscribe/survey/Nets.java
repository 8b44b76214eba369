package dev.towerscribe.survey;

import java.util.ArrayList;
import java.util.List;
import java.util.Random;

/** Small networks for tests. */
final class Nets {
  static final double INF = Double.POSITIVE_INFINITY;
  private static final double[] FREE3 = {Network.FREE, Network.FREE, Network.FREE};

  final Network net = new Network();
  final List<Entry> entries = new ArrayList<>();

  int known(double x, double y, double z) {
    return net.node(new double[] {x, y, z}, new double[3], box(-INF), box(INF));
  }

  int free(double... likely) {
    return net.node(FREE3, likely, box(-INF), box(INF));
  }

  int inPlane(double likelyX, double likelyY) {
    double[] given = {Network.FREE, Network.FREE, 0};
    return net.node(given, new double[] {likelyX, likelyY, 0}, box(-INF), box(INF));
  }

  static double[] box(double all) {
    return new double[] {all, all, all};
  }

  void tape(int a, int b, double doubt, Double... lengths) {
    add(Entry.Kind.TAPE, "tape-" + a + "-" + b, new Measure.Distance(a, b), doubt, lengths);
  }

  void coordinate(int node, int axis, double doubt, Double... values) {
    add(
        Entry.Kind.HEIGHT,
        "axis-" + node + "-" + axis,
        new Measure.Coordinate(node, axis, 1),
        doubt,
        values);
  }

  void add(Entry.Kind kind, String id, Measure measure, double doubt, Double... values) {
    entries.add(Entry.of(id, kind, id, measure, new SurveyReading(List.of(values), doubt)));
  }

  Adjustment solve() {
    return Placing.solve(net, entries).adjustment();
  }

  static double gauss(Random random, double sd) {
    return sd * random.nextGaussian();
  }
}
