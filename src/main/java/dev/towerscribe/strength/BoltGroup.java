package dev.towerscribe.strength;

import dev.towerscribe.geometry.Vec2;
import dev.towerscribe.quantity.Angle;
import dev.towerscribe.quantity.Tolerances;
import java.util.List;

/**
 * Bolts that hold one rigid plate, each as stiff as the others, so that a load is shared by the
 * elastic method (Shigley, Mechanical Engineering Design, ch. 8).
 *
 * @param bolts centres, mm
 * @param centroid their mean
 * @param sumR2Mm2 sum of the squares of their distances from the centroid, mm2
 * @param majorAxis unit vector along which they spread most
 * @param majorMm2 sum of squares of distances along that axis, mm2
 * @param minorMm2 the same square to it; zero if all lie on one line
 */
public record BoltGroup(
    List<Vec2> bolts,
    Vec2 centroid,
    double sumR2Mm2,
    Vec2 majorAxis,
    double majorMm2,
    double minorMm2) {
  /**
   * One bolt's share of a load in the plane.
   *
   * @param directN of the load itself, N
   * @param secondaryN of its moment about the centroid, N
   */
  public record InPlane(Vec2 directN, Vec2 secondaryN) {
    /**
     * Both together.
     *
     * @return vector sum, N
     */
    public Vec2 totalN() {
      return directN.plus(secondaryN);
    }
  }

  /**
   * Shares of a load square to the plane.
   *
   * @param sharesN each bolt's, N, in the load's direction; a negative one goes the other way
   * @param uncarriedNmm part of the moment that bolts on one line cannot hold, N mm, in the same
   *     terms as the moment given; zero for any other group
   */
  public record Axial(List<Double> sharesN, Vec2 uncarriedNmm) {
    /** Copies the list. */
    public Axial {
      sharesN = List.copyOf(sharesN);
    }
  }

  /** Copies the list. */
  public BoltGroup {
    bolts = List.copyOf(bolts);
  }

  /**
   * Works out a group's centroid and second moments.
   *
   * @param bolts centres, at least two, not all in one place
   * @return the group
   * @throws IllegalArgumentException if the bolts make no group
   */
  public static BoltGroup of(List<Vec2> bolts) {
    if (bolts.size() < 2) {
      throw new IllegalArgumentException("a bolt group has at least two bolts");
    }
    Vec2 centroid = Vec2.mean(bolts);
    double xx = 0;
    double xy = 0;
    double yy = 0;
    double farthest = 0;
    for (Vec2 bolt : bolts) {
      Vec2 d = bolt.minus(centroid);
      xx += d.x() * d.x();
      xy += d.x() * d.y();
      yy += d.y() * d.y();
      farthest = Math.max(farthest, d.norm());
    }
    if (farthest <= Tolerances.SAME_POINT_MM) {
      throw new IllegalArgumentException("all bolts of the group are in one place");
    }
    Vec2 major = Vec2.polar(1.0, new Angle(Math.atan2(2 * xy, xx - yy) / 2));
    Vec2 minor = major.quarterTurn();
    double along = 0;
    double across = 0;
    double widest = 0;
    // Projected anew: the lesser eigenvalue would lose its digits where the bolts nearly line up.
    for (Vec2 bolt : bolts) {
      Vec2 d = bolt.minus(centroid);
      along += d.dot(major) * d.dot(major);
      across += d.dot(minor) * d.dot(minor);
      widest = Math.max(widest, Math.abs(d.dot(minor)));
    }
    double minorMm2 = widest <= Tolerances.SAME_POINT_MM ? 0.0 : across;
    return new BoltGroup(bolts, centroid, xx + yy, major, along, minorMm2);
  }

  /**
   * Whether all bolts lie on one line, which leaves them unable to hold a moment about it.
   *
   * @return true if so
   */
  public boolean inLine() {
    return minorMm2 == 0.0;
  }

  /**
   * Moment of a load in the plane about the centroid.
   *
   * @param forceN the load, N
   * @param at a point of its line
   * @return N mm, positive from +x toward +y
   */
  public double inPlaneMomentNmm(Vec2 forceN, Vec2 at) {
    return at.minus(centroid).cross(forceN);
  }

  /**
   * Shares a load in the plane: V/n each, and M r / sum r^2 square to the radius.
   *
   * @param forceN the load on the plate, N
   * @param at a point of its line
   * @return each bolt's share, in the bolts' order; they add up to the load and its moment
   */
  public List<InPlane> inPlane(Vec2 forceN, Vec2 at) {
    Vec2 direct = forceN.times(1.0 / bolts.size());
    double perMm = inPlaneMomentNmm(forceN, at) / sumR2Mm2;
    return bolts.stream()
        .map(b -> new InPlane(direct, b.minus(centroid).quarterTurn().times(perMm)))
        .toList();
  }

  /**
   * First moment about the centroid of a slanting load above the plane: its normal part times its
   * distance in plan, less its part in the plane times its height. The same as that of the normal
   * part where the load's line meets the plane.
   *
   * @param force the load on the plate
   * @param at where it acts, plan
   * @param heightMm how far above the plane, mm, negative below
   * @return N mm, to be shared by {@link #axial}
   */
  public Vec2 tippingNmm(PlaneForce force, Vec2 at, double heightMm) {
    return at.minus(centroid).times(force.normalN()).minus(force.inPlaneN().times(heightMm));
  }

  /**
   * Shares a load square to the plane, linear over the plate, by the group's full second moments:
   * N/n each, and for the moment what its parts along both principal axes ask for.
   *
   * @param forceN the load, N
   * @param momentNmm its first moment about the centroid, N mm
   * @return each bolt's share, in the bolts' order
   */
  public Axial axial(double forceN, Vec2 momentNmm) {
    Vec2 minor = majorAxis.quarterTurn();
    double perMajor = momentNmm.dot(majorAxis) / majorMm2;
    double perMinor = inLine() ? 0.0 : momentNmm.dot(minor) / minorMm2;
    Vec2 gradient = majorAxis.times(perMajor).plus(minor.times(perMinor));
    double even = forceN / bolts.size();
    List<Double> shares = bolts.stream().map(b -> even + b.minus(centroid).dot(gradient)).toList();
    return new Axial(shares, inLine() ? minor.times(momentNmm.dot(minor)) : Vec2.ZERO);
  }
}
