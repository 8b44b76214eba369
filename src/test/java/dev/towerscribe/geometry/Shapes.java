package dev.towerscribe.geometry;

import dev.towerscribe.geometry.Edge.Arc;
import java.util.ArrayList;
import java.util.List;
import java.util.SplittableRandom;

/** Shapes that several tests share. */
final class Shapes {
  private Shapes() {}

  static Contour rectangle(double x0, double y0, double x1, double y1) {
    return Contour.polygon(
        List.of(new Vec2(x0, y0), new Vec2(x1, y0), new Vec2(x1, y1), new Vec2(x0, y1)));
  }

  static Region square(double side) {
    return Region.inside(rectangle(-side / 2, -side / 2, side / 2, side / 2));
  }

  static Region disc(double x, double y, double radius) {
    return Region.inside(Contour.circle(new Vec2(x, y), radius));
  }

  /** Radii at equal steps of the clock, from +x toward +y. */
  static Contour clock(double... radii) {
    List<Vec2> points = new ArrayList<>();
    for (int i = 0; i < radii.length; i++) {
      double a = 2 * Math.PI * i / radii.length;
      points.add(new Vec2(radii[i] * Math.cos(a), radii[i] * Math.sin(a)));
    }
    return Contour.polygon(points);
  }

  static Contour regular(int corners, double radius) {
    double[] radii = new double[corners];
    java.util.Arrays.fill(radii, radius);
    return clock(radii);
  }

  /** A star-shaped polygon, so never self-crossing: radii between 25 and 60 mm, uneven angles. */
  static Contour star(long seed, int corners) {
    SplittableRandom random = new SplittableRandom(seed);
    List<Vec2> points = new ArrayList<>();
    for (int i = 0; i < corners; i++) {
      double a = 2 * Math.PI * (i + 0.8 * random.nextDouble()) / corners;
      double r = 25 + 35 * random.nextDouble();
      points.add(new Vec2(r * Math.cos(a), r * Math.sin(a)));
    }
    return Contour.polygon(points);
  }

  static Region mapped(Region region, double degrees, boolean mirror, double dx, double dy) {
    double a = Math.toRadians(degrees);
    Vec2 x = new Vec2(Math.cos(a), Math.sin(a));
    Vec2 y = mirror ? x.quarterTurn().times(-1) : x.quarterTurn();
    return region.mapped(new Frame2(new Vec2(dx, dy), x, y));
  }

  /** The most by which two edges that should meet miss each other. */
  static double worstJoint(Region region) {
    double worst = 0;
    for (Contour c : region.contours()) {
      for (int i = 0; i < c.edges().size(); i++) {
        Vec2 end = c.edges().get(i).end();
        worst = Math.max(worst, end.distanceTo(c.edges().get((i + 1) % c.edges().size()).start()));
      }
    }
    return worst;
  }

  static long arcs(Region region) {
    return region.contours().stream()
        .flatMap(c -> c.edges().stream())
        .filter(Arc.class::isInstance)
        .count();
  }
}
