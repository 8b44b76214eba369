package dev.towerscribe.layout;

import dev.towerscribe.geometry.Contour;
import dev.towerscribe.geometry.Edge;
import dev.towerscribe.geometry.Region;
import dev.towerscribe.geometry.Vec2;
import java.util.ArrayList;
import java.util.List;
import java.util.Optional;
import java.util.concurrent.atomic.AtomicReference;
import java.util.function.Predicate;

/**
 * The sections of what a notch leaves of a bracket: straight ways through the metal from a socket's
 * circle to another one or to an edge of the bracket, square to both, or to a corner that points
 * into the metal. A side that the circle crosses is the notch's mouth, not a section.
 *
 * <p>Example: a socket's circle of radius 12 mm whose centre lies 20 mm inside the straight edge of
 * a wide bracket has a section of 8 mm there.
 */
public final class NotchSections {
  private static final double SQUARE = 1e-9;

  private final Contour outline;
  private final List<Vec2> reentrant;

  /**
   * Prepares a bracket.
   *
   * @param outline its edge, plan
   */
  public NotchSections(Contour outline) {
    this.outline = outline;
    reentrant = reentrant(Region.inside(outline).contours().get(0).edges());
  }

  /**
   * A straight way between two circles or from a circle to a point; metal only if it runs through
   * any.
   *
   * @param from centre of a socket's circle
   * @param to where it goes
   * @param radiusFrom the circle's radius, mm
   * @param radiusTo radius of the circle there, mm; 0 at an edge of the bracket
   */
  public record Section(Vec2 from, Vec2 to, double radiusFrom, double radiusTo) {
    /** Parts of its length at which it must meet metal. */
    private static final double[] TRIED = {0.25, 0.5, 0.75};

    /**
     * Its length between the circles.
     *
     * @return mm, negative where they overlap
     */
    public double widthMm() {
      return from.distanceTo(to) - radiusFrom - radiusTo;
    }

    private Vec2 at(double t) {
      double whole = from.distanceTo(to);
      return from.toward(to, (radiusFrom + t * (whole - radiusFrom - radiusTo)) / whole);
    }

    /**
     * The points that tell whether it runs through metal: each of them must.
     *
     * @return three points, plan
     */
    public List<Vec2> tried() {
      return List.of(at(TRIED[0]), at(TRIED[1]), at(TRIED[2]));
    }
  }

  /**
   * The narrowest section.
   *
   * @param widthMm its length
   * @param across where it is, empty where it stands for the whole bracket
   */
  record Narrowest(double widthMm, Optional<Edge.Segment> across) {}

  /**
   * The length that nothing of the bracket is wider than.
   *
   * @return diagonal of its bounds, mm
   */
  public double wholeMm() {
    return Math.hypot(outline.bounds().width(), outline.bounds().height());
  }

  /**
   * Metal left across the narrowest section.
   *
   * @param remaining what the notch leaves
   * @param centres centres of the sockets' circles
   * @param radiusMm their radius
   * @return the narrowest; 0 where nothing remains or the bracket falls into pieces, the whole
   *     bracket's where there is no section
   */
  Narrowest narrowest(Region remaining, List<Vec2> centres, double radiusMm) {
    if (remaining.parts().size() != 1) {
      return new Narrowest(0.0, Optional.empty());
    }
    AtomicReference<Narrowest> least =
        new AtomicReference<>(new Narrowest(wholeMm(), Optional.empty()));
    each(
        centres,
        radiusMm,
        section -> {
          if (section.widthMm() < least.get().widthMm()
              && section.tried().stream().allMatch(remaining::contains)) {
            Edge.Segment across = new Edge.Segment(section.at(0), section.at(1));
            least.set(new Narrowest(section.widthMm(), Optional.of(across)));
          }
          return true;
        });
    return least.get();
  }

  /**
   * Goes through all ways that are sections where they run through metal.
   *
   * @param centres centres of the sockets' circles
   * @param radiusMm their radius
   * @param visit told of each, none of them shorter than nothing; false ends the round
   * @return false if the visit ended it
   */
  public boolean each(List<Vec2> centres, double radiusMm, Predicate<Section> visit) {
    for (int i = 0; i < centres.size(); i++) {
      Vec2 centre = centres.get(i);
      for (Edge edge : outline.edges()) {
        Vec2 foot = edge.nearest(centre);
        if (isSquare(edge, foot) && !told(new Section(centre, foot, radiusMm, 0.0), visit)) {
          return false;
        }
      }
      for (Vec2 corner : reentrant) {
        if (!told(new Section(centre, corner, radiusMm, 0.0), visit)) {
          return false;
        }
      }
      for (Vec2 other : centres.subList(i + 1, centres.size())) {
        if (!told(new Section(centre, other, radiusMm, radiusMm), visit)) {
          return false;
        }
      }
    }
    return true;
  }

  private static boolean told(Section section, Predicate<Section> visit) {
    return !(section.widthMm() > 0) || visit.test(section);
  }

  /** Whether the nearest point of an edge is one where the way to it meets the edge squarely. */
  private static boolean isSquare(Edge edge, Vec2 foot) {
    return edge instanceof Edge.Arc arc && arc.isFullCircle()
        || foot.distanceTo(edge.start()) >= SQUARE && foot.distanceTo(edge.end()) >= SQUARE;
  }

  /** Corners that point into the metal, of edges that have it on their left. */
  private static List<Vec2> reentrant(List<Edge> edges) {
    List<Vec2> corners = new ArrayList<>();
    for (int i = 0; i < edges.size(); i++) {
      Edge before = edges.get((i + edges.size() - 1) % edges.size());
      Edge next = edges.get(i);
      Vec2 in = before.end().minus(before.at(0.999));
      Vec2 out = next.at(0.001).minus(next.start());
      if (edges.size() > 1 && in.cross(out) < 0) {
        corners.add(next.start());
      }
    }
    return corners;
  }
}
