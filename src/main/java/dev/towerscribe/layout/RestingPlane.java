package dev.towerscribe.layout;

import dev.towerscribe.geometry.Contour;
import dev.towerscribe.geometry.Edge;
import dev.towerscribe.geometry.Region;
import dev.towerscribe.geometry.Vec2;
import dev.towerscribe.model.Crown;
import dev.towerscribe.model.Lip;
import dev.towerscribe.model.Seat;
import dev.towerscribe.model.SideJob;
import dev.towerscribe.model.Tower;
import dev.towerscribe.quantity.Tolerances;
import java.util.ArrayList;
import java.util.Comparator;
import java.util.List;
import java.util.Optional;

/**
 * The plane of a flat plate's face where the plate rests on its tower, drawn down by its bolts. On
 * top of a dome it rests on the rim of the finished opening, under one with its own rim; what is
 * left of a lip that stands toward it holds it off. It comes to rest where the point that the bolts
 * draw at, the middle of them all, can sink no further: on three contacts round that point, which
 * on a round rim about the dome's middle are any three.
 *
 * <p>Heights are taken from the face that the plate lies against where a flat top would have it,
 * along the tower's normal, positive upward. A plane that tips is a little longer than its plan; at
 * the few milliradians a dome gives, by less than a hundredth of a millimetre
 * (docs/mathematics.md).
 *
 * @param surface the tower's face that it rests against
 * @param heightMm its height over the plan's origin
 * @param perFore how much higher it lies for each mm forward
 * @param perIn how much higher it lies for each mm inboard
 * @param contacts three places where it touches, plan; empty where it lies flat all over, or where
 *     the bolts draw beside everything that could hold it
 */
public record RestingPlane(
    Surface surface, double heightMm, double perFore, double perIn, List<Vec2> contacts) {
  /** Between two places the dome stands h^2 / 8R above them: 0.0002 mm at a radius of 200 mm. */
  private static final double STEP_MM = 0.5;

  /** Copies the list. */
  public RestingPlane {
    contacts = List.copyOf(contacts);
  }

  /**
   * The face of a tower that a plate lies against.
   *
   * @param seat which face
   * @param radiusMm radius of its dome; infinite for a flat one
   * @param lipFlat inside this what is left of a lip stands toward the plate, if one does
   * @param lipMm how far
   */
  public record Surface(Seat seat, double radiusMm, Optional<Region> lipFlat, double lipMm) {
    static Surface of(SideJob job) {
      Tower tower = job.tower();
      Seat seat = job.seating().seat();
      // The lower face of a dome is a sphere about the same middle.
      double through = seat == Seat.ON_TOP ? 0.0 : tower.throughMm();
      double radius = tower.crown().map(Crown::radiusMm).orElse(Double.POSITIVE_INFINITY) - through;
      Optional<Lip> lip = tower.lip().filter(l -> l.facesPlate(seat));
      return new Surface(
          seat, radius, lip.map(l -> Region.inside(l.flat())), lip.map(Lip::heightMm).orElse(0.0));
    }

    private double domeMm(Vec2 plan) {
      double r = Math.min(plan.norm(), radiusMm);
      // r^2 / (R + sqrt(R^2 - r^2)) is R - sqrt(R^2 - r^2) without the loss of digits.
      return Double.isInfinite(radiusMm)
          ? 0.0
          : -r * r / (radiusMm + Math.sqrt(radiusMm * radiusMm - r * r));
    }

    private boolean isOnLip(Vec2 plan) {
      return lipFlat.map(f -> f.depth(plan) > Tolerances.SAME_POINT_MM).orElse(false);
    }

    /** Height of the metal that the plate could touch. */
    private double heightMm(Vec2 plan) {
      double lip = isOnLip(plan) ? lipMm : 0.0;
      return domeMm(plan) + (seat == Seat.ON_TOP ? lip : -lip);
    }

    private boolean isFlat() {
      return Double.isInfinite(radiusMm) && lipFlat.isEmpty();
    }
  }

  /**
   * Where a side's plate rests.
   *
   * @param job a side, its plate where it goes, nothing of it past the dome's edge
   * @param finished its opening once cut
   * @param holes where its bolts draw, at least one
   * @return the plane
   */
  public static RestingPlane of(SideJob job, Region finished, List<PlacedHole> holes) {
    Vec2 middle =
        holes.stream().map(PlacedHole::at).reduce(Vec2.ZERO, Vec2::plus).times(1.0 / holes.size());
    Region plate = Region.inside(job.plate().outline()).mapped(PlateFrames.toPlan(job));
    return drawnDown(Surface.of(job), finished, plate, middle);
  }

  /**
   * How far a plate lies off a flat top where the strut rod stands: over the plan's origin, its own
   * middle there and drawn down there. It does not change as the plate is moved, so that a search
   * and a check count with one height; a plate a few millimetres aside tips by hundredths of a
   * millimetre across its slot, which is let be.
   *
   * @param job a side, wherever its plate goes
   * @param finished its opening once cut
   * @return mm along the tower's normal, negative below
   */
  public static double overOriginMm(SideJob job, Region finished) {
    Region plate = Region.inside(job.plate().outline());
    return drawnDown(Surface.of(job), finished, plate, Vec2.ZERO).heightMm();
  }

  /**
   * How far the metal at the rim of the finished opening lies off a flat top where the strut rod
   * stands, whichever face the plate lies against.
   *
   * @param job a side
   * @param finished its opening once cut
   * @return mm along the tower's normal, negative on a dome
   */
  static double rimOverOriginMm(SideJob job, Region finished) {
    double radius = job.tower().crown().map(Crown::radiusMm).orElse(Double.POSITIVE_INFINITY);
    Surface bare = new Surface(Seat.ON_TOP, radius, Optional.empty(), 0.0);
    return drawnDown(bare, finished, Region.EMPTY, Vec2.ZERO).heightMm();
  }

  private static RestingPlane drawnDown(
      Surface surface, Region finished, Region plate, Vec2 point) {
    List<Vec2> places = new ArrayList<>();
    if (!surface.isFlat()) {
      outline(finished, places);
      if (surface.seat() == Seat.UNDERNEATH) {
        outline(plate, places);
      }
    }
    // Under the tower the same question is asked upside down.
    double up = surface.seat() == Seat.ON_TOP ? 1.0 : -1.0;
    return contacts(places, point, p -> up * surface.heightMm(p))
        .map(three -> through(surface, three))
        .orElseGet(
            () ->
                new RestingPlane(
                    surface,
                    up * places.stream().mapToDouble(p -> up * surface.heightMm(p)).max().orElse(0),
                    0.0,
                    0.0,
                    List.of()));
  }

  /** On a straight edge the dome is highest between the corners, so those do not do. */
  private static void outline(Region region, List<Vec2> places) {
    for (Contour contour : region.contours()) {
      for (Edge edge : contour.edges()) {
        int steps = (int) Math.ceil(edge.length() / STEP_MM);
        for (int i = 0; i < steps; i++) {
          places.add(edge.at((double) i / steps));
        }
      }
    }
  }

  private static RestingPlane through(Surface surface, List<Vec2> three) {
    Vec2 a = three.get(0);
    Vec2 ab = three.get(1).minus(a);
    Vec2 ac = three.get(2).minus(a);
    double height = surface.heightMm(a);
    double rise1 = surface.heightMm(three.get(1)) - height;
    double rise2 = surface.heightMm(three.get(2)) - height;
    double twice = ab.cross(ac);
    double perFore = (rise1 * ac.y() - rise2 * ab.y()) / twice;
    double perIn = (ab.x() * rise2 - ac.x() * rise1) / twice;
    double origin = height - perFore * a.x() - perIn * a.y();
    return new RestingPlane(surface, origin, perFore, perIn, three);
  }

  /**
   * Height of the plate's face.
   *
   * @param plan where
   * @return mm above the tower's face as a flat top would have it; negative below
   */
  public double at(Vec2 plan) {
    return heightMm + perFore * plan.x() + perIn * plan.y();
  }

  /**
   * The gap between plate and tower.
   *
   * @param plan where, outside a lip's flat line
   * @return mm along the normal, not negative but for rounding
   */
  public double gapMm(Vec2 plan) {
    double over = at(plan) - surface.domeMm(plan);
    return surface.seat() == Seat.ON_TOP ? over : -over;
  }

  /**
   * Whether what is left of a lip holds the plate off.
   *
   * @return true if the plate touches it at one of its contacts
   */
  public boolean onLip() {
    return contacts.stream().anyMatch(surface::isOnLip);
  }

  /** A height over the plan, mm. */
  private interface Height {
    double at(Vec2 plan);
  }

  /**
   * The three places that carry a plane which is drawn down at a point and must stay above every
   * place: the facet of their upper hull over that point. From any three round the point it goes on
   * to higher places, one exchanged for the other, until none stands above the plane; the plane's
   * height at the point only grows, so no three come twice.
   *
   * @return empty where the point does not lie among the places
   */
  private static Optional<List<Vec2>> contacts(List<Vec2> places, Vec2 point, Height height) {
    List<Vec2> round =
        places.stream().sorted(Comparator.comparingDouble(p -> angle(p.minus(point)))).toList();
    Optional<Vec2[]> start = around(round, point);
    if (start.isEmpty()) {
      return Optional.empty();
    }
    Vec2[] three = start.get();
    for (int turn = 0; turn < places.size(); turn++) {
      Vec2 highest = null;
      double most = Tolerances.COMPUTED_MM;
      double[] weights = new double[3];
      for (Vec2 p : round) {
        weights(three, p, weights);
        double over = height.at(p);
        for (int i = 0; i < 3; i++) {
          over -= weights[i] * height.at(three[i]);
        }
        if (over > most) {
          most = over;
          highest = p;
        }
      }
      if (highest == null) {
        break;
      }
      exchange(three, highest, point);
    }
    return Optional.of(List.of(three));
  }

  private static double angle(Vec2 v) {
    return Math.atan2(v.y(), v.x());
  }

  /** Any three places with the point among them. */
  private static Optional<Vec2[]> around(List<Vec2> round, Vec2 point) {
    if (round.size() < 3) {
      return Optional.empty();
    }
    Vec2 first = round.get(0);
    double from = angle(first.minus(point));
    Vec2 before = null;
    for (Vec2 p : round) {
      double on = angle(p.minus(point)) - from;
      if (on < Math.PI) {
        before = p;
      } else {
        Vec2[] three = {first, before, p};
        return holds(three, point) ? Optional.of(three) : Optional.empty();
      }
    }
    return Optional.empty();
  }

  private static boolean holds(Vec2[] three, Vec2 point) {
    double[] weights = new double[3];
    return weights(three, point, weights) && least(weights) > -Tolerances.COMPUTED_MM;
  }

  private static double least(double[] weights) {
    return Math.min(weights[0], Math.min(weights[1], weights[2]));
  }

  /** Puts a place in for the one of the three whose leaving keeps the point among them. */
  private static void exchange(Vec2[] three, Vec2 in, Vec2 point) {
    int out = 0;
    double best = Double.NEGATIVE_INFINITY;
    double[] weights = new double[3];
    for (int i = 0; i < 3; i++) {
      Vec2[] tried = three.clone();
      tried[i] = in;
      if (weights(tried, point, weights) && least(weights) > best) {
        best = least(weights);
        out = i;
      }
    }
    three[out] = in;
  }

  /**
   * A point as the weighted mean of three places.
   *
   * @return false where they lie on one line
   */
  private static boolean weights(Vec2[] three, Vec2 point, double[] weights) {
    Vec2 ab = three[1].minus(three[0]);
    Vec2 ac = three[2].minus(three[0]);
    Vec2 ap = point.minus(three[0]);
    double twice = ab.cross(ac);
    weights[1] = ap.cross(ac) / twice;
    weights[2] = ab.cross(ap) / twice;
    weights[0] = 1 - weights[1] - weights[2];
    return Math.abs(twice) > Tolerances.SAME_POINT_MM;
  }
}
