package dev.towerscribe.alignment;

import dev.towerscribe.geometry.Vec3;
import dev.towerscribe.quantity.Angle;

/**
 * One strut as a linkage, left side. The upright is rigid and holds the ball joint B, the damper's
 * axis, the outer tie rod end TO, the wheel centre and the wheel's axis. B runs on a circle about
 * the arm's inner axis; the damper's axis slides through the top pivot S; TO keeps its distance
 * from TI.
 *
 * <p>With B and S given, S's place in the upright follows from its distance to B and B's distance e
 * from the damper's axis, t = sqrt(|BS|^2 - e^2); what is left is one turn u about the line BS, and
 * the tie rod (or a toe to be set) makes that A cos u + B sin u = C. No iteration is needed for a
 * given arm angle; a given wheel height takes a few steps of a secant on the arm angle.
 */
public final class Mechanism {
  /** A wheel height is met when it is this close, mm: some roundings of lengths of a metre. */
  private static final double HEIGHT_MM = 2e-12;

  private static final int MOST_STEPS = 60;

  private final Hardpoints points;

  // The upright's points relative to B, in axes (a along the damper upward, f from B square to it,
  // g = a x f); and these axes as measured, in vehicle axes.
  private final Vec3 axisUp;
  private final Vec3 toAxis;
  private final Vec3 across;
  final double axisDistance;
  final Vec3 tieOuter;
  final Vec3 wheelCentre;
  private final Vec3 strutLower;
  final Vec3 spin;
  final double tieSign;
  private final double tieLength;

  // The arm's circle: centre + cos w out + sin w up, w = 0 as measured, growing upward.
  final Vec3 armCentre;
  final Vec3 armOut;
  final Vec3 armUp;

  /**
   * The linkage as measured.
   *
   * @param points its points
   */
  public Mechanism(Hardpoints points) {
    this(points, points.strutLower(), points.top().minus(points.strutLower()).unit());
  }

  private Mechanism(Hardpoints p, Vec3 lower, Vec3 upAlongDamper) {
    points = p;
    Vec3 ball = p.ballJoint();
    axisUp = upAlongDamper;
    Vec3 square = lower.minus(ball).plus(axisUp.times(ball.minus(lower).dot(axisUp)));
    axisDistance = square.norm();
    // A ball joint on the damper's axis leaves the direction free; any one serves.
    toAxis = axisDistance > 1e-9 ? square.times(1 / axisDistance) : anySquareTo(axisUp);
    across = axisUp.cross(toAxis);
    tieOuter = inBody(p.tieOuter().minus(ball));
    wheelCentre = inBody(p.wheelCentre().minus(ball));
    strutLower = inBody(lower.minus(ball));
    spin = inBody(p.spin());
    tieLength = p.tieOuter().minus(p.tieInner()).norm();
    Vec3 axis = p.armFront().minus(p.armRear()).unit();
    armCentre = p.armRear().plus(axis.times(ball.minus(p.armRear()).dot(axis)));
    armOut = ball.minus(armCentre);
    Vec3 up = axis.cross(armOut);
    armUp = up.z() >= 0 ? up : up.times(-1);
    // Of the two ways to close the linkage the one as measured is kept throughout: there the tie
    // rod's equation grows or falls with u.
    Vec3 arm = p.tieOuter().minus(ball);
    Vec3 turned = p.top().minus(ball).unit().cross(arm);
    tieSign = turned.dot(p.tieOuter().minus(p.tieInner())) >= 0 ? 1.0 : -1.0;
  }

  private static Vec3 anySquareTo(Vec3 v) {
    Vec3 other = Math.abs(v.x()) < 0.5 ? new Vec3(1, 0, 0) : new Vec3(0, 1, 0);
    return v.cross(other).unit();
  }

  private Vec3 inBody(Vec3 v) {
    return new Vec3(v.dot(axisUp), v.dot(toAxis), v.dot(across));
  }

  /**
   * The same linkage with the knuckle's camber bolt turned: the damper turns relative to the
   * upright about an axis along X through the bolt's pivot.
   *
   * @param pivot a point of that axis, left side, as measured
   * @param camberChange the upright's camber change when the damper stays where it is; positive
   *     leans the wheel's top outward
   * @return the changed linkage
   */
  public Mechanism withKnuckle(Vec3 pivot, Angle camberChange) {
    // Seen from the upright the damper turns the other way: its top goes inboard (-Y) when the
    // wheel is to lean outward.
    double c = camberChange.cos();
    double s = camberChange.sin();
    Vec3 d = points.strutLower().minus(pivot);
    Vec3 lower = pivot.plus(aboutX(d, c, s));
    return new Mechanism(
        points, lower, aboutX(points.top().minus(points.strutLower()).unit(), c, s));
  }

  private static Vec3 aboutX(Vec3 v, double c, double s) {
    return new Vec3(v.x(), c * v.y() - s * v.z(), s * v.y() + c * v.z());
  }

  /**
   * The tie rod's length as measured.
   *
   * @return mm
   */
  public double tieLengthMm() {
    return tieLength;
  }

  /**
   * The points it was made from.
   *
   * @return hardpoints, left side
   */
  public Hardpoints points() {
    return points;
  }

  /**
   * The pose at an arm angle with the tie rod as long as said.
   *
   * @param armRadians the arm's turn from where it was measured, positive upward
   * @param top top pivot
   * @param tieInner inner tie rod end
   * @param tieLengthMm tie rod's length
   * @return the pose, on the same branch as measured
   * @throws NotReached if the linkage cannot close
   */
  public Pose tied(double armRadians, Vec3 top, Vec3 tieInner, double tieLengthMm)
      throws NotReached {
    Link link = link(ball(armRadians), top);
    link.turnByTie(tieInner, tieLengthMm);
    return link.pose(tieInner);
  }

  /**
   * The pose at an arm angle with the wheel headed as said; the tie rod's inner end stays as
   * measured and its length is whatever that takes.
   *
   * @param armRadians the arm's turn from where it was measured, positive upward
   * @param top top pivot
   * @param toe this wheel's toe, positive for toe-in; minus the steer angle to the left
   * @return the pose
   * @throws NotReached if the linkage cannot close
   */
  public Pose headed(double armRadians, Vec3 top, Angle toe) throws NotReached {
    Link link = link(ball(armRadians), top);
    link.turnToToe(toe);
    return link.pose(points.tieInner());
  }

  /** What fixes the turn about the steering axis. */
  private interface Turn {
    void apply(Link link) throws NotReached;
  }

  /**
   * The pose at a wheel height with the tie rod as long as said: bump and droop.
   *
   * @param wheelZMm height of the wheel centre, vehicle axes
   * @param top top pivot
   * @param tieInner inner tie rod end
   * @param tieLengthMm tie rod's length
   * @return the pose
   * @throws NotReached if the linkage cannot get there
   */
  public Pose tiedAtHeight(double wheelZMm, Vec3 top, Vec3 tieInner, double tieLengthMm)
      throws NotReached {
    return atHeight(wheelZMm, top, link -> link.turnByTie(tieInner, tieLengthMm)).pose(tieInner);
  }

  /**
   * The pose at a wheel height with the wheel headed as said: what an alignment bay sets, by
   * holding the ride height and turning the tie rod's sleeve.
   *
   * @param wheelZMm height of the wheel centre, vehicle axes
   * @param top top pivot
   * @param toe this wheel's toe, positive for toe-in
   * @return the pose; its tie rod length is the distance of its tie rod ends
   * @throws NotReached if the linkage cannot get there
   */
  public Pose headedAtHeight(double wheelZMm, Vec3 top, Angle toe) throws NotReached {
    return atHeight(wheelZMm, top, link -> link.turnToToe(toe)).pose(points.tieInner());
  }

  private Link atHeight(double wheelZMm, Vec3 top, Turn turn) throws NotReached {
    double angle = 0.0;
    Link link = link(ball(angle), top);
    turn.apply(link);
    double error = link.wheelZ() - wheelZMm;
    double slope = armUp.z();
    double before = angle;
    double errorBefore = error;
    for (int step = 0; Math.abs(error) > HEIGHT_MM; step++) {
      if (step == MOST_STEPS || slope == 0.0) {
        throw new NotReached(NotReached.Reason.ARM);
      }
      double next = angle - error / slope;
      if (!(Math.abs(next) < Math.PI / 2)) {
        throw new NotReached(NotReached.Reason.ARM);
      }
      before = angle;
      errorBefore = error;
      angle = next;
      link = link(ball(angle), top);
      turn.apply(link);
      error = link.wheelZ() - wheelZMm;
      if (Math.abs(error) >= Math.abs(errorBefore) && Math.abs(error) < 1e-9) {
        // Rounding is all that is left.
        break;
      }
      slope = angle == before ? slope : (error - errorBefore) / (angle - before);
    }
    return link;
  }

  /**
   * The arm's turn that brings the ball joint somewhere on its circle.
   *
   * @param ballJoint a place of the ball joint
   * @return radians from where it was measured, positive upward
   */
  public double armAngle(Vec3 ballJoint) {
    Vec3 out = ballJoint.minus(armCentre);
    return Math.atan2(out.dot(armUp), out.dot(armOut));
  }

  private Vec3 ball(double armRadians) {
    double c = Math.cos(armRadians);
    double s = Math.sin(armRadians);
    return armCentre.plus(armOut.times(c)).plus(armUp.times(s));
  }

  private Link link(Vec3 ball, Vec3 top) throws NotReached {
    return new Link(ball, top);
  }

  /** B and S placed, the turn about their line still open. */
  private final class Link {
    private final Vec3 ball;
    private final Vec3 top;
    private final Vec3 c1;
    private final Vec3 c2;
    private final Vec3 c3;
    private final double along;
    private final double aside;
    private double cosTurn = 1.0;
    private double sinTurn = 0.0;

    Link(Vec3 ball, Vec3 top) throws NotReached {
      this.ball = ball;
      this.top = top;
      Vec3 line = top.minus(ball);
      double squared = line.dot(line);
      double alongAxis = squared - axisDistance * axisDistance;
      if (!(alongAxis > 0)) {
        throw new NotReached(NotReached.Reason.TOP_TOO_CLOSE);
      }
      double distance = Math.sqrt(squared);
      along = Math.sqrt(alongAxis) / distance;
      aside = axisDistance / distance;
      c1 = line.times(1 / distance);
      // Near the measured place, so that u = 0 there.
      Vec3 near = toAxis.times(along).minus(axisUp.times(aside));
      c2 = near.minus(c1.times(near.dot(c1))).unit();
      c3 = c1.cross(c2);
    }

    /** A body vector's coordinates along the line B-S and square to it. */
    private double first(Vec3 v) {
      return along * v.x() + aside * v.y();
    }

    private double second(Vec3 v) {
      return along * v.y() - aside * v.x();
    }

    private Vec3 map(Vec3 v) {
      double x2 = second(v);
      double x3 = v.z();
      return c1.times(first(v))
          .plus(c2.times(x2 * cosTurn - x3 * sinTurn))
          .plus(c3.times(x2 * sinTurn + x3 * cosTurn));
    }

    double wheelZ() {
      double x2 = second(wheelCentre);
      double x3 = wheelCentre.z();
      return ball.z()
          + c1.z() * first(wheelCentre)
          + c2.z() * (x2 * cosTurn - x3 * sinTurn)
          + c3.z() * (x2 * sinTurn + x3 * cosTurn);
    }

    /** |TO - TI| = L, as A cos u + B sin u = C. */
    void turnByTie(Vec3 tieInner, double length) throws NotReached {
      double x2 = second(tieOuter);
      double x3 = tieOuter.z();
      Vec3 q = ball.plus(c1.times(first(tieOuter))).minus(tieInner);
      double q2 = q.dot(c2);
      double q3 = q.dot(c3);
      solve(
          x2 * q2 + x3 * q3,
          x2 * q3 - x3 * q2,
          (length * length - q.dot(q) - x2 * x2 - x3 * x3) / 2,
          tieSign,
          NotReached.Reason.TIE_ROD);
    }

    /** The wheel's axis square to its heading in plan, as A cos u + B sin u = C. */
    void turnToToe(Angle toe) throws NotReached {
      Vec3 ahead = new Vec3(toe.cos(), -toe.sin(), 0);
      double m1 = ahead.dot(c1);
      double m2 = ahead.dot(c2);
      double m3 = ahead.dot(c3);
      double x2 = second(spin);
      double x3 = spin.z();
      // Turning to the left about an upward axis lessens toe-in on the left side: the falling root.
      solve(x2 * m2 + x3 * m3, x2 * m3 - x3 * m2, -first(spin) * m1, -1.0, NotReached.Reason.TOE);
    }

    private void solve(double a, double b, double c, double sign, NotReached.Reason reason)
        throws NotReached {
      double squared = a * a + b * b;
      double left = squared - c * c;
      if (!(left >= 0) || squared == 0.0) {
        throw new NotReached(reason);
      }
      double derivative = sign * Math.sqrt(left);
      cosTurn = (a * c + b * derivative) / squared;
      sinTurn = (b * c - a * derivative) / squared;
    }

    Pose pose(Vec3 tieInner) {
      return new Pose(
          top,
          ball,
          ball.plus(map(strutLower)),
          tieInner,
          ball.plus(map(tieOuter)),
          ball.plus(map(wheelCentre)),
          map(spin),
          points.tyreRadiusMm());
    }
  }
}
