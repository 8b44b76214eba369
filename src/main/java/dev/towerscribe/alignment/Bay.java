package dev.towerscribe.alignment;

import dev.towerscribe.geometry.Vec2;
import dev.towerscribe.geometry.Vec3;
import dev.towerscribe.model.Side;
import dev.towerscribe.model.SideJob;
import dev.towerscribe.model.StrutPoints;
import dev.towerscribe.quantity.Angle;
import java.util.List;
import java.util.stream.DoubleStream;
import java.util.stream.LongStream;
import java.util.stream.Stream;

/**
 * One side of a car on an alignment bay: the ride height held, the toe set by the tie rod, then
 * read. Left-hand signs for both sides.
 */
public final class Bay {
  private final SideJob job;
  private final StrutPoints strut;
  private final Mechanism mechanism;

  private Bay(SideJob job, Mechanism mechanism) {
    this.job = job;
    this.mechanism = mechanism;
    strut = mechanism.points();
  }

  /**
   * The bay for a side whose strut was measured.
   *
   * @param job a side with strut points
   * @return its bay
   * @throws java.util.NoSuchElementException without strut points
   */
  public static Bay of(SideJob job) {
    return new Bay(job, new Mechanism(job.strut().orElseThrow().onLeft(job.side())));
  }

  /** The same with the knuckle's camber bolt turned, which the strut must have. */
  Bay withKnuckle(Angle turn) {
    return new Bay(job, mechanism.withKnuckle(strut.knuckleBolt().orElseThrow().pivot(), turn));
  }

  /** As measured and, where there is a camber bolt, with it at both ends of its range. */
  List<Bay> overKnuckleBolt() {
    return Stream.concat(
            Stream.of(this),
            strut.knuckleBolt().stream()
                .flatMap(bolt -> Stream.of(bolt.from(), bolt.to()))
                .map(this::withKnuckle))
        .toList();
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
    return strut.wheelCentre().z() + strut.rideMm();
  }

  /**
   * Before the work: the original top pivot.
   *
   * @return the pose at ride height with the toe as measured
   * @throws NotReached if the linkage cannot get there
   */
  public Pose before() throws NotReached {
    return mechanism.headedAtHeight(rideZMm(), strut.top(), strut.toe());
  }

  /**
   * With the bearing somewhere in plan.
   *
   * @param bearing bearing centre, plan
   * @return the pose at ride height, toe set
   * @throws NotReached if the linkage cannot get there
   */
  public Pose at(Vec2 bearing) throws NotReached {
    return mechanism.headedAtHeight(rideZMm(), top(bearing), strut.toe());
  }

  /**
   * The top pivot for a bearing.
   *
   * @param bearing bearing centre, plan
   * @return left side, vehicle axes
   */
  public Vec3 top(Vec2 bearing) {
    return TopPivot.moved(strut.top(), job, bearing);
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
    return steps(fromMm, toMm, stepMm).mapToObj(mm -> travel(set, mm)).toList();
  }

  /** One point of that curve. */
  Point travel(Pose set, double travelMm) {
    double height = set.wheelCentre().z() + travelMm;
    return point(
        travelMm, () -> mechanism.tiedAtHeight(height, set.top(), set.tieInner(), set.tieRodMm()));
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
    return steps(fromDegrees, toDegrees, stepDegrees).mapToObj(by -> steer(set, by)).toList();
  }

  private Point steer(Pose set, double degrees) {
    // A left wheel that steers to the left turns toe-out; a right wheel, mirrored here, toe-in.
    double sign = job.side() == Side.LEFT ? -1.0 : 1.0;
    Angle toe = new Angle(set.toe() + sign * Math.toRadians(degrees));
    return point(degrees, () -> mechanism.headedAtHeight(set.wheelCentre().z(), set.top(), toe));
  }

  private static DoubleStream steps(double from, double to, double step) {
    return LongStream.rangeClosed(0, Math.round((to - from) / step))
        .mapToDouble(i -> from + i * step);
  }

  private static Point point(double input, NotReached.Ask<Pose> ask) {
    try {
      return new Point(input, ask.get(), null);
    } catch (NotReached e) {
      return new Point(input, null, e.reason());
    }
  }
}
