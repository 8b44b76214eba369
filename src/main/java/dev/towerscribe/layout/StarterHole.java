package dev.towerscribe.layout;

import dev.towerscribe.geometry.Region;
import dev.towerscribe.geometry.Vec2;
import dev.towerscribe.quantity.Angle;
import java.util.ArrayList;
import java.util.List;

/**
 * A hole for a saw blade, wholly inside the waste.
 *
 * @param at centre, plan
 * @param diameterMm its drill
 */
public record StarterHole(Vec2 at, double diameterMm) {
  /** Gap between a starter hole and the rough cut, and between it and the old opening's edge. */
  private static final double GAP_MM = 1.0;

  private static final int COUNT = 4;

  /**
   * Starter holes beside the rough cut, wholly inside the waste: four, on the diagonals between
   * forward and inboard, fewer where the waste is too narrow (common practice, no source).
   *
   * @param rough inside of the rough cut
   * @param opening the opening as found
   * @param diameterMm the drill
   * @return the holes, perhaps none
   */
  static List<StarterHole> in(Region rough, Region opening, double diameterMm) {
    List<StarterHole> holes = new ArrayList<>();
    if (rough.isEmpty()) {
      return holes;
    }
    Vec2 middle = opening.bounds().centre();
    double need = diameterMm / 2 + GAP_MM;
    // Centres lie on the line a drill's radius inside the rough cut.
    Region track = rough.inset(need);
    if (track.isEmpty() || !track.contains(middle)) {
      return holes;
    }
    for (int i = 0; i < COUNT; i++) {
      Angle direction = Angle.ofDegrees(45 + 90.0 * i);
      Vec2 at = outward(track, middle, direction);
      if (-opening.depth(at) >= need) {
        holes.add(new StarterHole(at, diameterMm));
      }
    }
    return holes;
  }

  /** The first crossing of a ray with a boundary, by halving between inside and far outside. */
  private static Vec2 outward(Region region, Vec2 from, Angle direction) {
    double inside = 0.0;
    double outside = region.bounds().width() + region.bounds().height();
    while (outside - inside > 1e-12 * outside) {
      double half = (inside + outside) / 2;
      if (half == inside || half == outside) {
        break;
      }
      if (region.contains(from.plus(Vec2.polar(half, direction)))) {
        inside = half;
      } else {
        outside = half;
      }
    }
    return from.plus(Vec2.polar(inside, direction));
  }
}
