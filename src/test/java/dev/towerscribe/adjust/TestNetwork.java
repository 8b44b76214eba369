package dev.towerscribe.adjust;

import java.util.ArrayList;
import java.util.List;

/** A network with its observations, for tests. */
final class TestNetwork {
  final Network net = new Network();
  final List<Observation> observations = new ArrayList<>();

  /** A point of which only the height is to be found. */
  int benchmark() {
    return net.node(0, 0, Network.FREE);
  }

  int known(double x, double y, double z) {
    return net.node(x, y, z);
  }

  int inPlane() {
    return net.node(Network.FREE, Network.FREE, 0);
  }

  int inSpace() {
    return net.node(Network.FREE, Network.FREE, Network.FREE);
  }

  Observation height(int node, double sd, Double... values) {
    return read(new Measure.Coordinate(node, 2, 1), sd, values);
  }

  Observation tape(int from, int to, double sd, Double... values) {
    return read(new Measure.Distance(from, to), sd, values);
  }

  Observation read(Measure measure, double sd, Double... values) {
    observations.add(
        Observation.of(observations.size(), measure, new Repeated(List.of(values), sd)));
    return observations.get(observations.size() - 1);
  }

  Adjustment solve(double... start) {
    return Adjustment.solve(net, observations, start);
  }
}
