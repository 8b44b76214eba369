package dev.towerscribe.drawing;

import dev.towerscribe.geometry.Vec2;

/**
 * Something that must be found in the written file, calculated from the layout and not from the
 * page's items. Page millimetres as they are to come out of the printer (before compensation).
 */
public sealed interface Proof {
  /**
   * What it is, for a message.
   *
   * @return for instance "hole B"
   */
  String name();

  /**
   * A circle.
   *
   * @param name what it is
   * @param centre centre
   * @param radiusMm radius
   */
  record RoundHole(String name, Vec2 centre, double radiusMm) implements Proof {}

  /**
   * A check bar, a straight line between its end ticks.
   *
   * @param name what it is
   * @param from one end
   * @param to other end
   */
  record Bar(String name, Vec2 from, Vec2 to) implements Proof {}
}
