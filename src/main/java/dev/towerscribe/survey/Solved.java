package dev.towerscribe.survey;

import dev.towerscribe.adjust.Adjustment;
import dev.towerscribe.adjust.DataSnooping;
import java.util.List;

/**
 * What came of a network.
 *
 * @param placed solved without what was set aside
 * @param setAside readings that cannot be right, worst first
 * @param scattered entries whose repeated readings do not agree and nothing tells which is wrong
 * @param limit in standard deviations, past which readings were taken out
 */
record Solved(
    PointPlacer.Placed placed,
    List<DataSnooping.SetAside> setAside,
    List<DataSnooping.Scattered> scattered,
    double limit) {
  /** With so many readings wrong the standard deviations or the units are. */
  private static final int MOST_OUT = 20;

  /**
   * Solves a network and leaves out what cannot be right. A survey has readings enough to do
   * without one: where the culprit cannot be told it is left out, its rivals named.
   */
  static Solved of(NamedNetwork net) {
    DataSnooping snooping =
        new DataSnooping(
            net.observations(),
            (left, before) -> PointPlacer.quick(net, left, before),
            MOST_OUT,
            DataSnooping.Undecided.LEFT_OUT);
    PointPlacer.Placed placed = PointPlacer.solve(net);
    Adjustment last = snooping.run(placed.adjustment());
    while (last != placed.adjustment()) {
      placed = PointPlacer.again(net, last.observations(), last.x());
      last = snooping.run(placed.adjustment());
    }
    return new Solved(placed, snooping.setAside(last), snooping.scattered(), snooping.limit());
  }

  /** At the solution. */
  Adjustment adjustment() {
    return placed.adjustment();
  }
}
