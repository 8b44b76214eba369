package dev.towerscribe.job;

import dev.towerscribe.geometry.Vec3;
import dev.towerscribe.model.Aims;
import dev.towerscribe.model.MeasuredAxis;
import dev.towerscribe.model.Side;
import dev.towerscribe.model.StrutPoint;
import dev.towerscribe.model.StrutPoints;
import dev.towerscribe.quantity.Angle;
import java.util.EnumMap;
import java.util.List;
import java.util.Map;
import java.util.Optional;
import java.util.stream.Stream;

/** [strut], [axis] and [aims]: what the alignment is worked out from. */
final class StrutReader {
  private StrutReader() {}

  /**
   * Reads the strut's points. They are written as on the left side, Y positive, whichever side they
   * are for, and mirrored here for the right.
   */
  static Optional<StrutPoints> strut(TableReader t, Side side) {
    Map<StrutPoint, Vec3> at = new EnumMap<>(StrutPoint.class);
    Stream.of(StrutPoint.values())
        .filter(StrutPoint::isNeeded)
        .forEach(p -> point(t, p.word(), p.isOuter()).ifPresent(v -> at.put(p, v)));
    apart(t, at, StrutPoint.BALL_JOINT, StrutPoint.TOP);
    apart(t, at, StrutPoint.STRUT_LOWER, StrutPoint.TOP);
    apart(t, at, StrutPoint.ARM_REAR, StrutPoint.ARM_FRONT);
    apart(t, at, StrutPoint.TIE_OUTER, StrutPoint.TIE_INNER);
    apart(t, at, StrutPoint.TIE_OUTER, StrutPoint.BALL_JOINT);
    Vec3 top = at.get(StrutPoint.TOP);
    Vec3 ballJoint = at.get(StrutPoint.BALL_JOINT);
    if (top != null && ballJoint != null && top.z() < ballJoint.z()) {
      t.fault("top", "a top pivot above the ball joint", "Check Z: up is positive.");
    }
    var tyre = t.length("tyre_radius", Limits.TYRE_RADIUS);
    var camber = t.angle("camber", Limits.WHEEL_ANGLE);
    var toe = t.angle("toe", Limits.WHEEL_ANGLE, Angle.ZERO);
    var ride = t.length("ride", Limits.RIDE, 0.0);
    var plusMinus = PlusMinusReader.read(t);
    StrutPoints.Limits usual = StrutPoints.Limits.USUAL;
    var bump = t.length("bump", Limits.WHEEL_TRAVEL, usual.bumpMm());
    var droop = t.length("droop", Limits.WHEEL_TRAVEL, usual.droopMm());
    var steer = t.angle("steer", Limits.STEER, usual.steer());
    var knuckle = t.optionalTable("knuckle_bolt").flatMap(StrutReader::knuckleBolt);
    return t.closed(
            () ->
                StrutPoints.of(
                    List.copyOf(at.values()),
                    tyre.get(),
                    camber.get(),
                    toe.get(),
                    ride.get(),
                    plusMinus.get(),
                    knuckle,
                    new StrutPoints.Limits(bump.get(), droop.get(), steer.get(), t.has("droop"))))
        .map(asOnTheLeft -> side == Side.LEFT ? asOnTheLeft : asOnTheLeft.mirrored());
  }

  private static Optional<StrutPoints.KnuckleBolt> knuckleBolt(TableReader k) {
    var pivot = point(k, "pivot", StrutPoint.KNUCKLE_PIVOT.isOuter());
    var from = k.angle("from", Limits.WHEEL_ANGLE);
    var to = k.angle("to", Limits.WHEEL_ANGLE);
    if (from.isPresent() && to.isPresent() && from.get().compareTo(to.get()) > 0) {
      String most = AllowedRange.atMost(to.get().degrees());
      k.fault("from", "at most to, " + most + " deg", "Swap.");
    }
    return k.closed(() -> new StrutPoints.KnuckleBolt(pivot.get(), from.get(), to.get()));
  }

  /** A point; one out by the wheel is never at or across the car's centre plane. */
  private static Optional<Vec3> point(TableReader t, String key, boolean outer) {
    var point = t.point3(key, Limits.VEHICLE);
    if (outer && point.isPresent() && point.get().y() <= 0) {
      return t.fault(
          key,
          "Y positive: left of the car's centre plane",
          "Write both sides as if on the left; Y = 0 is the middle of the car.");
    }
    return point;
  }

  private static void apart(
      TableReader t, Map<StrutPoint, Vec3> at, StrutPoint point, StrutPoint other) {
    if (at.containsKey(point)
        && at.containsKey(other)
        && at.get(point).minus(at.get(other)).norm() < Limits.LEAST_PART_MM) {
      t.lengthFault(
          point.word(),
          "at least %s from %s".formatted(t.atLeast(Limits.LEAST_PART_MM), other.word()),
          "These are two ends of one part: measure both again.");
    }
  }

  /** Reads the steering axis where that is all that was measured. */
  static Optional<MeasuredAxis> axis(TableReader t) {
    var caster = t.angle("caster", Limits.CASTER);
    var inclination = t.angle("inclination", Limits.INCLINATION);
    var length = t.length("length", Limits.AXIS_LENGTH);
    var camber = t.angle("camber", Limits.WHEEL_ANGLE);
    return t.closed(
        () -> new MeasuredAxis(caster.get(), inclination.get(), length.get(), camber.get()));
  }

  /** Reads what the owner wants. */
  static Optional<Aims> aims(TableReader t) {
    var use = t.word("use", Aims.Use.ROAD_AND_TRACK);
    var caster = t.optionalAngles("caster", Limits.CASTER);
    var casterFrom = caster.map(c -> c.get(0));
    var casterTo = caster.map(c -> c.get(1));
    if (caster.isPresent() && casterFrom.get().compareTo(casterTo.get()) > 0) {
      t.fault("caster", "[least, most], the first not above the second", "Swap the two.");
    }
    var camber = t.optionalAngle("camber", Limits.WHEEL_ANGLE);
    var limit = t.optionalAngle("camber_limit", Limits.WHEEL_ANGLE);
    if (camber.isPresent() && limit.isPresent() && limit.get().compareTo(camber.get()) > 0) {
      t.fault(
          "camber_limit",
          "at most camber, " + AllowedRange.atMost(camber.get().degrees()) + " deg",
          "The limit is the most negative camber allowed: it lies at the aim or below.");
    }
    return t.closed(() -> new Aims(use.get(), casterFrom, casterTo, camber, limit));
  }
}
