package dev.towerscribe.alignment;

import dev.towerscribe.geometry.Vec2;
import dev.towerscribe.geometry.Vec3;
import dev.towerscribe.model.Lean;
import dev.towerscribe.model.Side;
import dev.towerscribe.model.SideJob;
import dev.towerscribe.model.StrutPoints;
import dev.towerscribe.quantity.Angle;
import java.util.ArrayList;
import java.util.List;

/**
 * The closed form of {@link Mechanism} for searches, which ask for millions of poses: plain numbers
 * in fields, no object per pose. It gives caster and camber as an alignment bay reads them, and the
 * peak of bump steer from poses at fixed arm angles, where no iteration is needed. {@link Bay}
 * gives the figures that are told; tests hold this to it.
 *
 * <p>One thread at a time. An answer depends on the question alone, never on the one before.
 */
public final class QuickStrut {
  /** A ride height is met when it is this close, mm; the angles are then right to 1e-9 degrees. */
  private static final double HEIGHT_MM = 1e-8;

  private static final int MOST_STEPS = 30;

  // Top pivot = base + fore f + in i, vehicle axes.
  private final double baseX;
  private final double baseY;
  private final double baseZ;
  private final Vec3 fore;
  private final Vec3 in;

  private final double rideZ;
  private final double headX;
  private final double headY;
  private final double toeSlope;

  private final double axisDistance;
  private final Vec3 tieOuter;
  private final Vec3 wheel;
  private final Vec3 spin;
  private final Vec3 tieInner;
  private final double tieSign;
  private final Vec3 armCentre;
  private final Vec3 armOut;
  private final Vec3 armUp;

  private final double startAngle;
  private final double startSlope;

  /** Ball joint at the arm angles that give each travel with the original top pivot. */
  private final double[] travelX;

  private final double[] travelY;
  private final double[] travelZ;
  private final double[] wheelHeights;
  private final double[] slopes;
  private final double lowestZ;
  private final double highestZ;

  // The pose: ball joint, top pivot, axes along and square to the line between them, the turn.
  private double topX;
  private double topY;
  private double topZ;
  private double ballX;
  private double ballY;
  private double ballZ;
  private double c1x;
  private double c1y;
  private double c1z;
  private double c2x;
  private double c2y;
  private double c2z;
  private double c3x;
  private double c3y;
  private double c3z;
  private double along;
  private double aside;
  private double cosTurn;
  private double sinTurn;

  /**
   * Prepares one side.
   *
   * @param job a side with strut points
   * @param droopMm how far down the wheel goes from ride height, not negative
   * @param bumpMm how far up
   * @param travels how many wheel heights bump steer is looked at, at least two
   * @throws NotReached if the linkage as measured cannot get to ride height
   */
  public QuickStrut(SideJob job, double droopMm, double bumpMm, int travels) throws NotReached {
    this(job, Bay.of(job).mechanism(), droopMm, bumpMm, travels);
  }

  /**
   * Prepares one side with the knuckle's camber bolt turned.
   *
   * @param job a side with strut points
   * @param bolt its bolt
   * @param turn camber change asked of it
   * @return a strut that reads as {@link Bay} does with the bolt there; of no use for bump steer
   * @throws NotReached if the linkage cannot get there
   */
  public static QuickStrut withKnuckle(SideJob job, StrutPoints.KnuckleBolt bolt, Angle turn)
      throws NotReached {
    return new QuickStrut(job, Bay.of(job).turned(bolt, turn), 0.0, 0.0, 0);
  }

  private QuickStrut(SideJob job, Mechanism m, double droopMm, double bumpMm, int travels)
      throws NotReached {
    StrutPoints strut = job.strut().orElseThrow();
    Bay bay = Bay.of(job);
    Hardpoints points = m.points();
    Lean lean = job.tower().lean();
    fore = lean.fore(Side.LEFT);
    in = lean.in(Side.LEFT);
    Vec3 base = bay.top(Vec2.ZERO);
    baseX = base.x();
    baseY = base.y();
    baseZ = base.z();
    rideZ = bay.rideZMm();
    headX = strut.toe().cos();
    headY = -strut.toe().sin();
    toeSlope = strut.toe().tan();
    axisDistance = m.axisDistance;
    tieOuter = m.tieOuter;
    wheel = m.wheelCentre;
    spin = m.spin;
    tieInner = points.tieInner();
    tieSign = m.tieSign;
    armCentre = m.armCentre;
    armOut = m.armOut;
    armUp = m.armUp;
    Pose ride = m.headedAtHeight(rideZ, points.top(), strut.toe());
    startAngle = m.armAngle(ride.ballJoint());
    topX = ride.top().x();
    topY = ride.top().y();
    topZ = ride.top().z();
    double step = 1e-5;
    startSlope = (headedHeight(startAngle + step) - headedHeight(startAngle - step)) / (2 * step);
    double droopZ = rideZ - droopMm;
    double bumpZ = rideZ + bumpMm;
    double lowest = rideZ;
    double highest = rideZ;
    List<Vec3> balls = new ArrayList<>();
    double tie = ride.tieOuter().minus(ride.tieInner()).norm();
    for (int i = 0; i < travels; i++) {
      double z = droopZ + (bumpZ - droopZ) * i / (travels - 1);
      try {
        balls.add(m.tiedAtHeight(z, ride.top(), ride.tieInner(), tie).ballJoint());
        lowest = Math.min(lowest, z);
        highest = Math.max(highest, z);
      } catch (NotReached e) {
        // Past the end of the linkage's travel there is no toe to look at.
        continue;
      }
    }
    lowestZ = lowest;
    highestZ = highest;
    travelX = balls.stream().mapToDouble(Vec3::x).toArray();
    travelY = balls.stream().mapToDouble(Vec3::y).toArray();
    travelZ = balls.stream().mapToDouble(Vec3::z).toArray();
    wheelHeights = new double[travelX.length];
    slopes = new double[travelX.length];
  }

  private double headedHeight(double angle) {
    placeBall(angle);
    return link() && turnToToe() ? wheelZ() : Double.NaN;
  }

  private void placeBall(double angle) {
    double c = Math.cos(angle);
    double s = Math.sin(angle);
    ballX = armCentre.x() + armOut.x() * c + armUp.x() * s;
    ballY = armCentre.y() + armOut.y() * c + armUp.y() * s;
    ballZ = armCentre.z() + armOut.z() * c + armUp.z() * s;
  }

  /**
   * Sets the top pivot by the bearing, holds the ride height and sets the toe.
   *
   * @param foreMm bearing, plan
   * @param inMm bearing, plan
   * @return false where the linkage cannot get there; the other answers then mean nothing
   */
  public boolean set(double foreMm, double inMm) {
    topX = baseX + fore.x() * foreMm + in.x() * inMm;
    topY = baseY + fore.y() * foreMm + in.y() * inMm;
    topZ = baseZ + fore.z() * foreMm + in.z() * inMm;
    double angle = startAngle;
    double slope = startSlope;
    double error = headedHeight(angle) - rideZ;
    for (int step = 0; Math.abs(error) > HEIGHT_MM; step++) {
      double next = angle - error / slope;
      if (step == MOST_STEPS || !(Math.abs(next) < Math.PI / 2)) {
        return false;
      }
      double errorNext = headedHeight(next) - rideZ;
      if (next != angle && errorNext != error) {
        slope = (errorNext - error) / (next - angle);
      }
      angle = next;
      error = errorNext;
    }
    return error == error;
  }

  /**
   * Caster.
   *
   * @return radians, positive with the top rearward
   */
  public double caster() {
    return Math.atan2(ballX - topX, topZ - ballZ);
  }

  /**
   * Camber.
   *
   * @return radians, positive with the wheel's top outward
   */
  public double camber() {
    double x2 = second(spin);
    double x3 = spin.z();
    double z =
        c1z * first(spin)
            + c2z * (x2 * cosTurn - x3 * sinTurn)
            + c3z * (x2 * sinTurn + x3 * cosTurn);
    return -Math.asin(Math.max(-1.0, Math.min(1.0, z)));
  }

  /**
   * Peak bump steer: the largest change of toe over the travel with the tie rod as it was set.
   *
   * @return radians, not negative; infinite where the linkage does not reach travel that it reaches
   *     with the original top pivot
   */
  public double bumpSteer() {
    if (!(highestZ > lowestZ)) {
      return 0.0;
    }
    double x2 = second(tieOuter);
    double x3 = tieOuter.z();
    double f = first(tieOuter);
    double tx = ballX + c1x * f + c2x * turned2(x2, x3) + c3x * turned3(x2, x3) - tieInner.x();
    double ty = ballY + c1y * f + c2y * turned2(x2, x3) + c3y * turned3(x2, x3) - tieInner.y();
    double tz = ballZ + c1z * f + c2z * turned2(x2, x3) + c3z * turned3(x2, x3) - tieInner.z();
    double lengthSquared = tx * tx + ty * ty + tz * tz;
    // Toe against wheel height at fixed arm angles; the travel's ends fall between two of them.
    double peak = 0.0;
    int n = travelX.length;
    for (int i = 0; i < n; i++) {
      ballX = travelX[i];
      ballY = travelY[i];
      ballZ = travelZ[i];
      if (!link() || !turnByTie(lengthSquared)) {
        return Double.POSITIVE_INFINITY;
      }
      wheelHeights[i] = wheelZ();
      slopes[i] = spinSlope() - toeSlope;
      if (wheelHeights[i] >= lowestZ && wheelHeights[i] <= highestZ) {
        peak = Math.max(peak, Math.abs(slopes[i]));
      }
    }
    if (n > 2) {
      peak = Math.max(peak, Math.abs(through(lowestZ, 0)));
      peak = Math.max(peak, Math.abs(through(highestZ, n - 3)));
    }
    // d toe = d slope / (1 + slope^2)
    return peak / (1 + toeSlope * toeSlope);
  }

  /** The parabola through three neighbouring points of toe against wheel height. */
  private double through(double z, int i) {
    double z0 = wheelHeights[i];
    double z1 = wheelHeights[i + 1];
    double z2 = wheelHeights[i + 2];
    return slopes[i] * (z - z1) * (z - z2) / ((z0 - z1) * (z0 - z2))
        + slopes[i + 1] * (z - z0) * (z - z2) / ((z1 - z0) * (z1 - z2))
        + slopes[i + 2] * (z - z0) * (z - z1) / ((z2 - z0) * (z2 - z1));
  }

  private double first(Vec3 v) {
    return along * v.x() + aside * v.y();
  }

  private double second(Vec3 v) {
    return along * v.y() - aside * v.x();
  }

  private double turned2(double x2, double x3) {
    return x2 * cosTurn - x3 * sinTurn;
  }

  private double turned3(double x2, double x3) {
    return x2 * sinTurn + x3 * cosTurn;
  }

  /** Places the line from ball joint to top pivot; false where they are too close. */
  private boolean link() {
    double lx = topX - ballX;
    double ly = topY - ballY;
    double lz = topZ - ballZ;
    double squared = lx * lx + ly * ly + lz * lz;
    double alongAxis = squared - axisDistance * axisDistance;
    if (!(alongAxis > 0)) {
      return false;
    }
    double inverse = 1 / Math.sqrt(squared);
    along = Math.sqrt(alongAxis) * inverse;
    aside = axisDistance * inverse;
    c1x = lx * inverse;
    c1y = ly * inverse;
    c1z = lz * inverse;
    // Any two directions square to the line and to each other serve: the turn is reckoned from
    // them, and its branch is told by its derivative. These take no root; the line points upward.
    if (!(c1z > -0.5)) {
      return false;
    }
    double k = -1 / (1 + c1z);
    c3x = c1x * c1y * k;
    c2x = 1 + c1x * c1x * k;
    c2y = c3x;
    c2z = -c1x;
    c3y = 1 + c1y * c1y * k;
    c3z = -c1y;
    return true;
  }

  private boolean turnToToe() {
    double m1 = headX * c1x + headY * c1y;
    double m2 = headX * c2x + headY * c2y;
    double m3 = headX * c3x + headY * c3y;
    double x2 = second(spin);
    double x3 = spin.z();
    return turn(x2 * m2 + x3 * m3, x2 * m3 - x3 * m2, -first(spin) * m1, -1.0);
  }

  private boolean turnByTie(double lengthSquared) {
    double x2 = second(tieOuter);
    double x3 = tieOuter.z();
    double f = first(tieOuter);
    double qx = ballX + c1x * f - tieInner.x();
    double qy = ballY + c1y * f - tieInner.y();
    double qz = ballZ + c1z * f - tieInner.z();
    double q2 = qx * c2x + qy * c2y + qz * c2z;
    double q3 = qx * c3x + qy * c3y + qz * c3z;
    double c = (lengthSquared - (qx * qx + qy * qy + qz * qz) - x2 * x2 - x3 * x3) / 2;
    return turn(x2 * q2 + x3 * q3, x2 * q3 - x3 * q2, c, tieSign);
  }

  /** A cos u + B sin u = C on the branch where the left side grows (+1) or falls (-1) with u. */
  private boolean turn(double a, double b, double c, double sign) {
    double squared = a * a + b * b;
    double left = squared - c * c;
    if (!(left >= 0) || squared == 0.0) {
      return false;
    }
    double derivative = sign * Math.sqrt(left);
    double inverse = 1 / squared;
    cosTurn = (a * c + b * derivative) * inverse;
    sinTurn = (b * c - a * derivative) * inverse;
    return true;
  }

  private double wheelZ() {
    double x2 = second(wheel);
    double x3 = wheel.z();
    return ballZ + c1z * first(wheel) + c2z * turned2(x2, x3) + c3z * turned3(x2, x3);
  }

  /** Tangent of the wheel's toe. */
  private double spinSlope() {
    double f = first(spin);
    double x2 = second(spin);
    double s2 = turned2(x2, spin.z());
    double s3 = turned3(x2, spin.z());
    return (c1x * f + c2x * s2 + c3x * s3) / (c1y * f + c2y * s2 + c3y * s3);
  }
}
