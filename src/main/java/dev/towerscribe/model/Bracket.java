package dev.towerscribe.model;

import dev.towerscribe.geometry.Contour;
import dev.towerscribe.geometry.Vec2;
import dev.towerscribe.quantity.Require;
import java.util.List;

/**
 * A bracket that stands over the tower top, such as a bonnet hinge's.
 *
 * @param name what a person calls it
 * @param outline its edge in plan
 * @param undersideMm its lower face above the tower plane, not negative
 * @param leastWidthMm metal that must stay across any section, not negative
 * @param fasteners its own fasteners
 */
public record Bracket(
    String name,
    Contour outline,
    double undersideMm,
    double leastWidthMm,
    List<Fastener> fasteners) {
  /**
   * A fastener of the bracket.
   *
   * @param at plan point
   * @param diameterMm room it takes, head or washer, positive
   */
  public record Fastener(Vec2 at, double diameterMm) {
    /** Checks the size. */
    public Fastener {
      Require.positive("bracket fastener diameter", diameterMm);
    }
  }

  /** Checks the figures and copies the list. */
  public Bracket {
    Require.notNegative("bracket underside", undersideMm);
    Require.notNegative("bracket least width", leastWidthMm);
    fasteners = List.copyOf(fasteners);
  }
}
