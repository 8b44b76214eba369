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
 * The closed form of {@link Mechanism} for searches, which ask for millions of poses: no object per
 * pose. It gives caster and camber as an alignment bay reads them, and the peak of bump steer from
 * poses at fixed arm angles, where no iteration is needed. {@link Bay} gives the figures that are
 * reported; tests hold this to it.
 *
 * <p>One thread at a time. An answer depends on the question alone, never on the one before.
 */
public final class QuickStrut {
  /** A ride height is met when it is this close, mm; the angles are then right to 1e-9 degrees. */
  private static final double HEIGHT_MM = 1e-8;

  /** How far out the arm's angle is looked at to tell it for other bearings, mm. */
  private static final double GUESS_MM = 20.0;

  /** A change of the arm's angle that no bearing in an opening asks for, as its half's tangent. */
  private static final double FAR = 0.1;

  // Top pivot = base + fore f + in i, vehicle axes.
  private final double baseX;
  private final double baseY;
  private final double baseZ;
  private final Vec3 fore;
  private final Vec3 in;

  private final double rideZ;
  private final double toeSlope;
  private final LinkageSolver link;
  private final double[] guess;

  /** The same linkage with its tie rod as set, for bump steer. */
  private final LinkageSolver tied;

  private final Vec3 tieInner;

  /** Ball joint at the arm angles that give each travel with the original top pivot. */
  private final List<Vec3> balls = new ArrayList<>();

  private final double[] wheelHeights;
  private final double[] slopes;
  private final double lowestZ;
  private final double highestZ;

  private double topX;
  private double topY;
  private double topZ;

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
    this(job, Bay.of(job), droopMm, bumpMm, travels);
  }

  /**
   * Prepares one side with the knuckle's camber bolt turned.
   *
   * @param job a side with strut points and a camber bolt
   * @param turn camber change asked of it
   * @return a strut that reads as {@link Bay} does with the bolt there; of no use for bump steer
   * @throws NotReached if the linkage cannot get there
   */
  public static QuickStrut withKnuckle(SideJob job, Angle turn) throws NotReached {
    return new QuickStrut(job, Bay.of(job).withKnuckle(turn), 0.0, 0.0, 0);
  }

  private QuickStrut(SideJob job, Bay bay, double droopMm, double bumpMm, int travels)
      throws NotReached {
    Mechanism m = bay.mechanism();
    StrutPoints strut = m.points();
    Lean lean = job.tower().lean();
    fore = lean.fore(Side.LEFT);
    in = lean.in(Side.LEFT);
    Vec3 base = bay.top(Vec2.ZERO);
    baseX = base.x();
    baseY = base.y();
    baseZ = base.z();
    rideZ = bay.rideZMm();
    toeSlope = strut.toe().tan();
    link = new LinkageSolver(m.linkage()).headed(strut.toe().cos(), strut.toe().sin());
    tied = new LinkageSolver(m.linkage());
    tieInner = strut.tieInner();
    Pose ride = bay.before();
    guess = guess(Math.tan(m.armAngle(ride.ballJoint()) / 2));
    double droopZ = rideZ - droopMm;
    double bumpZ = rideZ + bumpMm;
    double lowest = rideZ;
    double highest = rideZ;
    double tie = ride.tieRodMm();
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
    wheelHeights = new double[balls.size()];
    slopes = new double[balls.size()];
  }

  /**
   * Tangent of half the arm's angle at ride height as a quadric of the bearing: what it is, how it
   * changes fore and in, and its three second changes. Only where steps begin depends on it.
   */
  private double[] guess(double measured) {
    double d = GUESS_MM;
    double[][] bearings = {{0, 0}, {d, 0}, {-d, 0}, {0, d}, {0, -d}, {d, d}};
    double[] h = new double[bearings.length];
    for (int i = 0; i < h.length; i++) {
      if (!place(bearings[i][0], bearings[i][1], measured)) {
        return new double[] {measured, 0, 0, 0, 0, 0};
      }
      h[i] = link.halfTangent();
    }
    return new double[] {
      h[0],
      (h[1] - h[2]) / (2 * d),
      (h[3] - h[4]) / (2 * d),
      (h[1] - 2 * h[0] + h[2]) / (2 * d * d),
      (h[5] - h[1] - h[3] + h[0]) / (d * d),
      (h[3] - 2 * h[0] + h[4]) / (2 * d * d)
    };
  }

  private boolean place(double foreMm, double inMm, double start) {
    topX = baseX + fore.x() * foreMm + in.x() * inMm;
    topY = baseY + fore.y() * foreMm + in.y() * inMm;
    topZ = baseZ + fore.z() * foreMm + in.z() * inMm;
    return link.top(topX, topY, topZ).toHeight(rideZ, start, HEIGHT_MM) == null;
  }

  /**
   * Sets the top pivot by the bearing, holds the ride height and sets the toe.
   *
   * @param foreMm bearing, plan
   * @param inMm bearing, plan
   * @return false where the linkage cannot get there; the other answers then mean nothing
   */
  public boolean set(double foreMm, double inMm) {
    double alongFore = guess[1] + guess[3] * foreMm + guess[4] * inMm;
    double alongIn = guess[2] + guess[5] * inMm;
    double change = alongFore * foreMm + alongIn * inMm;
    // Far outside the opening the quadric says nothing.
    return place(foreMm, inMm, Math.abs(change) < FAR ? guess[0] + change : guess[0]);
  }

  /**
   * Caster.
   *
   * @return radians, positive with the top rearward
   */
  public double caster() {
    return link.caster();
  }

  /**
   * Camber.
   *
   * @return radians, positive with the wheel's top outward
   */
  public double camber() {
    return link.camber();
  }

  /**
   * Length of the damper between its lower point and the top pivot.
   *
   * @return mm
   */
  public double damperMm() {
    return link.damperMm();
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
    tied.tied(tieInner, Math.sqrt(link.tieSquared(tieInner))).top(topX, topY, topZ);
    // Toe against wheel height at fixed arm angles; the travel's ends fall between two of them.
    double peak = 0.0;
    int n = balls.size();
    for (int i = 0; i < n; i++) {
      Vec3 ball = balls.get(i);
      if (tied.atBall(ball.x(), ball.y(), ball.z()) != null) {
        return Double.POSITIVE_INFINITY;
      }
      wheelHeights[i] = tied.wheelZ();
      slopes[i] = tied.toeSlope() - toeSlope;
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
}
