package dev.towerscribe.job;

import dev.towerscribe.geometry.Box;
import dev.towerscribe.geometry.Contour;
import dev.towerscribe.geometry.Polygons;
import dev.towerscribe.geometry.Vec2;
import dev.towerscribe.quantity.Angle;
import dev.towerscribe.quantity.LengthUnit;
import java.util.ArrayList;
import java.util.List;
import java.util.Optional;

/** A shape: a circle, a traced ring of points, or radii at equal steps round a centre. */
final class ShapeReader {
  /** The keys a shape can be given by; each shape has exactly one of them. */
  static final List<String> KINDS = List.of("diameter", "points", "radii");

  /** Those of a thing whose edge nobody takes from a centre. */
  static final List<String> CIRCLE_OR_RING = List.of("diameter", "points");

  /** Fewer clock steps than this round too coarse a corner: 60 degrees. */
  private static final int LEAST_RADII = 6;

  private static final int MOST_RADII = 360;

  private ShapeReader() {}

  /**
   * Reads a shape from the keys of a table.
   *
   * @param t the table
   * @param kinds those of {@link #KINDS} that make sense here
   * @param size the believable diameter, or the longer side of the box round a traced shape
   * @param reach the believable coordinates
   * @param centre where a circle lies without {@code at}; empty if it must be said
   * @return its edge
   */
  static Optional<Contour> read(
      TableReader t,
      List<String> kinds,
      AllowedRange size,
      AllowedRange reach,
      Optional<Vec2> centre) {
    var given = kinds.stream().filter(t::has).toList();
    if (given.size() != 1) {
      t.has("at");
      String limit = "one of " + String.join(", ", kinds);
      return given.isEmpty()
          ? t.missing(kinds.get(0), limit, "Give the shape by one of these keys.")
          : t.fault(
              given.get(1), limit, "The shape is already given by " + given.get(0) + ": keep one.");
    }
    if (given.get(0).equals("points")) {
      return traced(t, size, reach);
    }
    Optional<Vec2> at =
        centre.isPresent() ? t.point("at", reach, centre.get()) : t.point("at", reach);
    if (given.get(0).equals("radii")) {
      AllowedRange radius = AllowedRange.mm(size.least() / 2, size.most() / 2);
      var radii = t.lengths("radii", LEAST_RADII, MOST_RADII, radius);
      return at.flatMap(c -> radii.map(r -> clock(c, r)));
    }
    var diameter = t.length("diameter", size);
    return at.flatMap(c -> diameter.map(d -> Contour.circle(c, d / 2)));
  }

  /** The same of a table that holds a shape and nothing else. */
  static Optional<Contour> whole(
      TableReader t,
      List<String> kinds,
      AllowedRange size,
      AllowedRange reach,
      Optional<Vec2> centre) {
    Optional<Contour> shape = read(t, kinds, size, reach, centre);
    t.close();
    return shape;
  }

  /** Which of {@link #KINDS} a table gives its shape by. */
  static String kindOf(TableReader t) {
    return KINDS.stream().filter(t::has).findFirst().orElse(KINDS.get(0));
  }

  /** A ring of points given as a key's own list. */
  static Optional<Contour> ring(TableReader t, String key, AllowedRange size, AllowedRange reach) {
    var points = t.points(key, reach);
    if (points.isEmpty()) {
      return Optional.empty();
    }
    // In the file's own unit, so that the place named in the reason can be found in the file.
    LengthUnit unit = t.origin(key).unitOrMm();
    var written = points.get().stream().map(p -> p.times(1 / unit.toMm(1.0))).toList();
    var reason = Polygons.fault(written);
    if (reason.isPresent()) {
      return t.fault(
          key,
          "a closed outline that does not cross itself; the last point is not the first again",
          "Here: " + reason.get());
    }
    Contour contour = Contour.polygon(points.get());
    Box box = contour.bounds();
    if (!size.holds(Math.max(box.width(), box.height()))) {
      return t.lengthFault(
          key, size.words(unit) + " across", "The outline's longer side is out of range.");
    }
    return Optional.of(contour);
  }

  private static Optional<Contour> traced(TableReader t, AllowedRange size, AllowedRange reach) {
    if (t.has("at")) {
      t.fault("at", "", "Points carry their own place: drop this key.");
    }
    return ring(t, "points", size, reach);
  }

  /** Point k of n lies at angle 2 pi k / n from forward (+x) toward inboard (+y). */
  private static Contour clock(Vec2 centre, List<Double> radii) {
    List<Vec2> points = new ArrayList<>();
    for (int k = 0; k < radii.size(); k++) {
      Angle angle = new Angle(2 * Math.PI * k / radii.size());
      points.add(centre.plus(Vec2.polar(radii.get(k), angle)));
    }
    return Contour.polygon(points);
  }
}
