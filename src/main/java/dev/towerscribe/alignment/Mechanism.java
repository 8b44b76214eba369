package dev.towerscribe.alignment;

import dev.towerscribe.geometry.Vec3;
import dev.towerscribe.model.StrutPoints;
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
 * given arm angle; a given wheel height takes two or three steps of Newton's on the arm angle.
 */
public final class Mechanism {
  private final StrutPoints points;
  private final Linkage linkage;
  private final InitialGuess guess;

  /**
   * The linkage as measured.
   *
   * @param points its points, left side
   */
  public Mechanism(StrutPoints points) {
    this(points, points.strutLower(), points.top().minus(points.strutLower()).unit());
  }

  private Mechanism(StrutPoints points, Vec3 lower, Vec3 upAlongDamper) {
    this.points = points;
    linkage = Linkage.of(points, lower, upAlongDamper);
    guess = new InitialGuess(linkage, points);
  }

  /** What stays the same of it however it moves. */
  Linkage linkage() {
    return linkage;
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
    return linkage.tieLength();
  }

  /**
   * The points it was made from.
   *
   * @return as given, left side
   */
  public StrutPoints points() {
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
    LinkageSolver link =
        new LinkageSolver(linkage).tied(tieInner, tieLengthMm).top(top.x(), top.y(), top.z());
    return pose(link.at(armRadians), link, top, tieInner);
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
    LinkageSolver link =
        new LinkageSolver(linkage).headed(toe.cos(), toe.sin()).top(top.x(), top.y(), top.z());
    return pose(link.at(armRadians), link, top, points.tieInner());
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
    return atHeight(
        wheelZMm, new LinkageSolver(linkage).tied(tieInner, tieLengthMm), top, tieInner);
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
    LinkageSolver link = new LinkageSolver(linkage).headed(toe.cos(), toe.sin());
    return atHeight(wheelZMm, link, top, points.tieInner());
  }

  private Pose atHeight(double wheelZMm, LinkageSolver link, Vec3 top, Vec3 tieInner)
      throws NotReached {
    link.top(top.x(), top.y(), top.z());
    return pose(
        link.toHeight(wheelZMm, guess.at(wheelZMm, top), LinkageSolver.EXACT_MM),
        link,
        top,
        tieInner);
  }

  private Pose pose(NotReached.Reason trouble, LinkageSolver link, Vec3 top, Vec3 tieInner)
      throws NotReached {
    if (trouble != null) {
      throw new NotReached(trouble);
    }
    return link.pose(top, tieInner, points.tyreRadiusMm());
  }

  /**
   * The arm's turn that brings the ball joint somewhere on its circle.
   *
   * @param ballJoint a place of the ball joint
   * @return radians from where it was measured, positive upward
   */
  public double armAngle(Vec3 ballJoint) {
    Vec3 out = ballJoint.minus(linkage.armCentre());
    return Math.atan2(out.dot(linkage.armUp()), out.dot(linkage.armOut()));
  }
}
