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
  record RoundHole(String name, Vec2 centre, double radiusMm) implements Proof {
    /**
     * How far a circle is from being this one.
     *
     * @param found the circle
     * @return the greater of the ways between the centres and between the radii, mm
     */
    public double offMm(RoundHole found) {
      return Math.max(found.centre.distanceTo(centre), Math.abs(found.radiusMm - radiusMm));
    }
  }

  /**
   * A check bar, a straight line between its end ticks.
   *
   * @param name what it is
   * @param from one end
   * @param to other end
   */
  record Bar(String name, Vec2 from, Vec2 to) implements Proof {
    /**
     * How far a line is from being this one, either way round.
     *
     * @param found the line
     * @return the greater of the ways between the ends, mm
     */
    public double offMm(Bar found) {
      return Math.min(
          Math.max(found.from.distanceTo(from), found.to.distanceTo(to)),
          Math.max(found.to.distanceTo(from), found.from.distanceTo(to)));
    }
  }
}
