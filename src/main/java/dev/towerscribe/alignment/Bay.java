package dev.towerscribe.alignment;

import dev.towerscribe.geometry.Vec2;
import dev.towerscribe.geometry.Vec3;
import dev.towerscribe.model.Side;
import dev.towerscribe.model.SideJob;
import dev.towerscribe.model.StrutPoints;
import dev.towerscribe.quantity.Angle;
import java.util.ArrayList;
import java.util.List;

/**
 * One side of a car on an alignment bay: the ride height held, the toe set by the tie rod, then
 * read. Left-hand signs for both sides.
 */
public final class Bay {
  private final SideJob job;
  private final StrutPoints strut;
  private final Mechanism mechanism;
  private final double rideZMm;

  private Bay(SideJob job, StrutPoints strut) {
    this.job = job;
    this.strut = strut;
    this.mechanism = new Mechanism(Hardpoints.of(strut, job.side()));
    this.rideZMm = strut.wheelCentre().z() + strut.rideMm();
  }

  /**
   * The bay for a side whose strut was measured.
   *
   * @param job a side with strut points
   * @return its bay
   * @throws java.util.NoSuchElementException without strut points
   */
  public static Bay of(SideJob job) {
    return new Bay(job, job.strut().orElseThrow());
  }

  /**
   * The linkage.
   *
   * @return mechanism, left side
   */
  public Mechanism mechanism() {
    return mechanism;
  }

  /**
   * Height of the wheel centre at the ride height asked for.
   *
   * @return mm, vehicle Z
   */
  public double rideZMm() {
    return rideZMm;
  }

  /**
   * Before the work: the original top pivot.
   *
   * @return the pose at ride height with the toe as measured
   * @throws NotReached if the linkage cannot get there
   */
  public Pose before() throws NotReached {
    return mechanism.headedAtHeight(rideZMm, mechanism.points().top(), strut.toe());
  }

  /**
   * With the bearing somewhere in plan.
   *
   * @param bearing bearing centre, plan
   * @return the pose at ride height, toe set
   * @throws NotReached if the linkage cannot get there
   */
  public Pose at(Vec2 bearing) throws NotReached {
    return mechanism.headedAtHeight(rideZMm, top(bearing), strut.toe());
  }

  /**
   * The top pivot for a bearing.
   *
   * @param bearing bearing centre, plan
   * @return left side, vehicle axes
   */
  public Vec3 top(Vec2 bearing) {
    return TopPivot.moved(mechanism.points().top(), job, bearing);
  }

  /**
   * With the knuckle's camber bolt turned as well.
   *
   * @param bearing bearing centre, plan
   * @param bolt the bolt
   * @param turn camber change asked of it
   * @return the pose at ride height, toe set
   * @throws NotReached if the linkage cannot get there
   */
  public Pose at(Vec2 bearing, StrutPoints.KnuckleBolt bolt, Angle turn) throws NotReached {
    return turned(bolt, turn).headedAtHeight(rideZMm, top(bearing), strut.toe());
  }

  /**
   * Before the work, with the knuckle's camber bolt turned.
   *
   * @param bolt the bolt
   * @param turn camber change asked of it
   * @return the pose at ride height, toe set
   * @throws NotReached if the linkage cannot get there
   */
  public Pose before(StrutPoints.KnuckleBolt bolt, Angle turn) throws NotReached {
    return turned(bolt, turn).headedAtHeight(rideZMm, mechanism.points().top(), strut.toe());
  }

  /** The linkage as measured and, where there is a camber bolt, at both ends of its range. */
  List<Mechanism> overKnuckleBolt() {
    List<Mechanism> all = new ArrayList<>(List.of(mechanism));
    strut
        .knuckleBolt()
        .ifPresent(
            bolt -> {
              all.add(turned(bolt, bolt.from()));
              all.add(turned(bolt, bolt.to()));
            });
    return all;
  }

  /** The linkage with the knuckle's camber bolt turned. */
  Mechanism turned(StrutPoints.KnuckleBolt bolt, Angle turn) {
    Vec3 pivot = job.side() == Side.LEFT ? bolt.pivot() : bolt.pivot().mirroredAcross();
    return mechanism.withKnuckle(pivot, turn);
  }

  /** How far the wheel goes from ride height. */
  StrutPoints.Limits limits() {
    return strut.limits();
  }

  /** The toe that the bay sets, positive for toe-in. */
  Angle toe() {
    return strut.toe();
  }

  /**
   * A point of a curve.
   *
   * @param input travel in mm, or steer angle in degrees
   * @param pose the pose there; null where the linkage does not reach
   * @param reason why not; null where it does
   */
  public record Point(double input, Pose pose, NotReached.Reason reason) {
    /**
     * Whether the linkage reaches it.
     *
     * @return true if there is a pose
     */
    public boolean reached() {
      return pose != null;
    }
  }

  /**
   * Bump and droop with the tie rod as set at ride height.
   *
   * @param set the pose at ride height
   * @param fromMm lowest wheel travel, negative is droop
   * @param toMm highest
   * @param stepMm step, positive
   * @return the curve
   */
  public List<Point> travel(Pose set, double fromMm, double toMm, double stepMm) {
    List<Point> curve = new ArrayList<>();
    double tie = set.tieOuter().minus(set.tieInner()).norm();
    long steps = Math.round((toMm - fromMm) / stepMm);
    for (long i = 0; i <= steps; i++) {
      curve.add(travel(set, tie, fromMm + i * stepMm));
    }
    return curve;
  }

  /** One point of that curve. */
  Point travel(Pose set, double travelMm) {
    return travel(set, set.tieOuter().minus(set.tieInner()).norm(), travelMm);
  }

  private Point travel(Pose set, double tie, double travelMm) {
    double height = set.wheelCentre().z() + travelMm;
    return point(travelMm, () -> mechanism.tiedAtHeight(height, set.top(), set.tieInner(), tie));
  }

  private static Point point(double input, NotReached.Ask<Pose> ask) {
    try {
      return new Point(input, ask.get(), null);
    } catch (NotReached e) {
      return new Point(input, null, e.reason());
    }
  }

  /**
   * Steer at ride height: the wheel's own heading, positive to the left of the car.
   *
   * @param set the pose at ride height
   * @param fromDegrees least steer
   * @param toDegrees greatest
   * @param stepDegrees step, positive
   * @return the curve
   */
  public List<Point> steer(Pose set, double fromDegrees, double toDegrees, double stepDegrees) {
    List<Point> curve = new ArrayList<>();
    long steps = Math.round((toDegrees - fromDegrees) / stepDegrees);
    // A left wheel that steers to the left turns toe-out; a right wheel, mirrored here, toe-in.
    double sign = job.side() == Side.LEFT ? -1.0 : 1.0;
    for (long i = 0; i <= steps; i++) {
      double steer = fromDegrees + i * stepDegrees;
      Angle toe = new Angle(set.toe() + sign * Math.toRadians(steer));
      curve.add(
          point(steer, () -> mechanism.headedAtHeight(set.wheelCentre().z(), set.top(), toe)));
    }
    return curve;
  }
}
