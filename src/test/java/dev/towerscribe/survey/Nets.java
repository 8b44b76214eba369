package dev.towerscribe.survey;

import dev.towerscribe.adjust.Adjustment;
import dev.towerscribe.adjust.Measure;
import dev.towerscribe.adjust.Network;
import dev.towerscribe.adjust.Repeated;
import java.util.HashSet;
import java.util.List;

/** Small networks for tests. */
final class Nets {
  final NamedNetwork named = new NamedNetwork(NamedNetwork.CAR, new HashSet<>());

  Network net() {
    return named.net();
  }

  int known(double x, double y, double z) {
    return named.point(label(), Plausible.anywhere(0, 0, 0), x, y, z);
  }

  int free(double... likely) {
    return named.point(label(), Plausible.anywhere(likely), Plausible.all(Network.FREE));
  }

  int inPlane(double likelyX, double likelyY) {
    return named.point(
        label(), Plausible.anywhere(likelyX, likelyY, 0), Network.FREE, Network.FREE, 0);
  }

  private NamedNetwork.Label label() {
    return new NamedNetwork.Label("both", "P" + named.labels().size(), false);
  }

  void tape(int a, int b, double sd, Double... lengths) {
    named.read(
        Entry.Kind.TAPE,
        "tape",
        new Measure.Distance(a, b),
        new Repeated(List.of(lengths), sd),
        "both",
        "tape",
        "" + a,
        "" + b);
  }

  Adjustment solve() {
    return PointPlacer.solve(named).adjustment();
  }
}
