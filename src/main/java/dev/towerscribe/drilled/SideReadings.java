package dev.towerscribe.drilled;

import dev.towerscribe.adjust.Repeated;
import dev.towerscribe.model.Side;
import java.util.List;
import java.util.Optional;

/**
 * What calipers said of one tower after drilling. Every bolt of the plate has its hole's size.
 *
 * @param side which tower
 * @param holes sizes as drilled, in the plate's order
 * @param spans distances between holes and landmarks, perhaps none
 * @param edges metal between holes and the edge as cut, perhaps none
 */
public record SideReadings(
    Side side, List<HoleSize> holes, List<SpanReading> spans, List<EdgeGap> edges) {
  /** Copies the lists. */
  public SideReadings {
    holes = List.copyOf(holes);
    spans = List.copyOf(spans);
    edges = List.copyOf(edges);
  }

  /**
   * What was read across a hole.
   *
   * @param hole its bolt's name
   * @return its diameter; empty if the plate has no such bolt
   */
  public Optional<Repeated> diameter(String hole) {
    return holes.stream().filter(h -> h.name().equals(hole)).map(HoleSize::diameter).findFirst();
  }

  /**
   * A hole's size as drilled.
   *
   * @param name its bolt's name
   * @param diameter what was read
   */
  public record HoleSize(String name, Repeated diameter) {}

  /**
   * The least metal from a hole's edge to the edge of the opening as cut.
   *
   * @param hole its bolt's name
   * @param gap what was read
   */
  public record EdgeGap(String hole, Repeated gap) {}
}
