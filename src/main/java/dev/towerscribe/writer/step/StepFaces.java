package dev.towerscribe.writer.step;

import dev.towerscribe.geometry.Vec3;
import dev.towerscribe.quantity.Tolerances;
import java.util.List;

/**
 * What one face adds to the volume inside its shell, in closed form, and whether it fits its edges.
 *
 * <p>By the divergence theorem three times the volume is the integral over all faces of p . n, p
 * the point and n the normal out of the solid. On a plane p . n is one number, and the area comes
 * from the vector area of the loops. On a cylinder or cone with centre line c + v k and radius r(v)
 * = r0 + g v, with e(u) the direction from the axis, p . n dA is r(v) (c . e(u) + r0 - g c . k) du
 * dv; so with G and P the integrals of its two factors, Green's theorem leaves the sum of G dP
 * along the loop. There u stays the same on a straight edge and v on an arc: only straight edges
 * count.
 */
final class StepFaces {
  /** How far directions may be off, 1: some roundings of unit vectors. */
  private static final double DIRECTION = 1e-12;

  private final StepShape.Face face;
  private final double nearMm;
  private final List<String> faults;

  private StepFaces(StepShape.Face face, double nearMm, List<String> faults) {
    this.face = face;
    this.nearMm = nearMm;
    this.faults = faults;
  }

  /**
   * Checks a face and measures it.
   *
   * @param face the face
   * @param nearMm how far vertices may lie off their curves and surfaces
   * @param faults complaints are added here
   * @return its share of three times the volume, mm3
   */
  static double tripleVolume(StepShape.Face face, double nearMm, List<String> faults) {
    StepFaces faces = new StepFaces(face, nearMm, faults);
    for (StepShape.Loop loop : face.loops()) {
      loop.uses().forEach(use -> faces.checkEdge(use.edge()));
    }
    if (face.surface() instanceof StepShape.Plane plane) {
      return faces.level(plane);
    }
    return faces.round((StepShape.Round) face.surface());
  }

  private void fault(boolean holds, String what) {
    if (!holds) {
      faults.add("face #" + face.id() + ": " + what);
    }
  }

  private void checkEdge(StepShape.EdgeCurve edge) {
    boolean fits;
    if (edge.curve() instanceof StepShape.Circle circle) {
      fits = onCircle(circle, edge.start()) && onCircle(circle, edge.end());
    } else {
      StepShape.Line line = (StepShape.Line) edge.curve();
      fits =
          line.direction().cross(edge.start().minus(line.through())).norm() <= nearMm
              && line.direction().cross(edge.end().minus(line.through())).norm() <= nearMm
              && line.direction().dot(edge.end().minus(edge.start())) > nearMm;
    }
    fault(fits, "edge #" + edge.id() + " does not end on its curve, or runs against it");
  }

  private boolean onCircle(StepShape.Circle circle, Vec3 p) {
    return Math.abs(circle.at().along(p)) <= nearMm
        && Math.abs(circle.at().off(p) - circle.radius()) <= nearMm;
  }

  private double level(StepShape.Plane plane) {
    StepShape.Placement at = plane.at();
    Vec3 normal = at.axis().times(face.sense() ? 1 : -1);
    double area = 0;
    for (StepShape.Loop loop : face.loops()) {
      double part = 0;
      for (StepShape.Use use : loop.uses()) {
        Vec3 from = use.from().minus(at.origin());
        Vec3 to = use.to().minus(at.origin());
        boolean fits =
            Math.abs(at.along(use.from())) <= nearMm && Math.abs(at.along(use.to())) <= nearMm;
        if (use.edge().curve() instanceof StepShape.Circle circle) {
          Vec3 centre = circle.at().origin().minus(at.origin());
          double turn = use.edge().turn(circle) * (use.forward() ? 1 : -1);
          double r = circle.radius();
          Vec3 sector = circle.at().axis().times(r * r * turn);
          part += normal.dot(centre.cross(to.minus(from)).plus(sector)) / 2;
          fits &=
              Math.abs(at.along(circle.at().origin())) <= Tolerances.COMPUTED_MM
                  && circle.at().axis().cross(normal).norm() <= DIRECTION;
        } else {
          part += normal.dot(from.cross(to)) / 2;
        }
        fault(fits, "edge #" + use.edge().id() + " leaves the plane");
      }
      fault(loop.outer() == part > 0, "a loop runs the wrong way round");
      area += part;
    }
    fault(area > 0, "its holes are larger than itself");
    return at.origin().dot(normal) * area;
  }

  private double round(StepShape.Round round) {
    StepShape.Placement at = round.at();
    fault(face.loops().size() == 1, "a round face in more than one loop");
    List<StepShape.Use> uses = face.loops().get(0).uses();
    double u = at.angle(uses.get(0).from());
    double begun = u;
    double triple = 0;
    double spread = 0;
    for (StepShape.Use use : uses) {
      if (use.edge().curve() instanceof StepShape.Circle circle) {
        double about = Math.signum(circle.at().axis().dot(at.axis()));
        u += use.edge().turn(circle) * about * (use.forward() ? 1 : -1);
        double along = at.along(circle.at().origin());
        fault(
            at.off(circle.at().origin()) <= Tolerances.COMPUTED_MM
                && circle.at().axis().cross(at.axis()).norm() <= DIRECTION
                && Math.abs(circle.radius() - round.radiusAt(along)) <= Tolerances.COMPUTED_MM,
            "arc #" + use.edge().id() + " leaves the surface");
      } else {
        double v0 = at.along(use.from());
        double v1 = at.along(use.to());
        double apart = Math.IEEEremainder(at.angle(use.to()) - at.angle(use.from()), 2 * Math.PI);
        fault(
            Math.abs(at.off(use.from()) - round.radiusAt(v0)) <= nearMm
                && Math.abs(at.off(use.to()) - round.radiusAt(v1)) <= nearMm
                && Math.abs(apart) * Math.min(at.off(use.from()), at.off(use.to())) <= 2 * nearMm,
            "line #" + use.edge().id() + " leaves the surface");
        triple += alongTurn(round, u) * (heightwise(round, v1) - heightwise(round, v0));
        spread += u * (v1 - v0);
      }
    }
    fault(Math.abs(u - begun) * round.radius() <= 2 * nearMm, "it goes all the way round");
    fault(spread > 0 == face.sense(), "its sense is not the side its loop runs round");
    return triple;
  }

  /** The integral of c . e(u) + r0 - g c . k over the angle. */
  private static double alongTurn(StepShape.Round round, double u) {
    StepShape.Placement at = round.at();
    Vec3 swept = at.reference().times(Math.sin(u)).minus(at.square().times(Math.cos(u)));
    Vec3 centre = at.origin();
    return centre.dot(swept) + (round.radius() - round.gain() * centre.dot(at.axis())) * u;
  }

  /** The integral of the radius along the axis. */
  private static double heightwise(StepShape.Round round, double v) {
    return round.radius() * v + round.gain() * v * v / 2;
  }
}
