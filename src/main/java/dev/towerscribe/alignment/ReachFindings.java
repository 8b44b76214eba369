package dev.towerscribe.alignment;

import dev.towerscribe.finding.Finding;
import dev.towerscribe.finding.Severity;
import dev.towerscribe.model.SideJob;
import dev.towerscribe.model.StrutPoints;
import dev.towerscribe.quantity.Angle;
import dev.towerscribe.quantity.Numbers;
import java.util.ArrayList;
import java.util.List;
import java.util.Optional;

/** Whether the linkage gets where it has to, and what does not reach where it does not. */
final class ReachFindings {
  private static final String SOURCE = "strut points of the job";

  private static final String TRAVEL = "job: strut.bump, strut.droop";

  /** What lies out of reach is a whole end of the travel, so that strides do not step over it. */
  private static final double STRIDE = 5;

  private static final List<Integer> WAYS = List.of(-1, 1);

  private final SideJob job;
  private final List<Finding> list = new ArrayList<>();

  ReachFindings(SideJob job) {
    this.job = job;
  }

  /** A pose asked for. */
  interface Ask {
    Pose pose() throws NotReached;
  }

  List<Finding> findings() {
    return list;
  }

  private static String id(SideJob job, String check) {
    return job.side().word() + "." + check;
  }

  /** Points that make no linkage. */
  static List<Finding> degenerate(SideJob job) {
    List<Finding> found = new ArrayList<>();
    List<Degenerate> troubles = Degenerate.in(job);
    for (int i = 0; i < troubles.size(); i++) {
      Degenerate d = troubles.get(i);
      found.add(
          new Finding(
              id(job, "strut-points." + d.points().replaceAll("[^a-z]+", "-")),
              Severity.STOP,
              "strut: " + d.points(),
              d.figureMm(),
              d.leastMm(),
              "mm",
              "common practice, no source",
              d.say()));
    }
    return found;
  }

  /** That the figures are an estimate. */
  static Finding estimate(SideJob job) {
    return new Finding(
        id(job, "alignment-estimate"),
        Severity.NOTE,
        "steering axis",
        0,
        0,
        "",
        "job: axis",
        "Caster, camber and inclination are estimated from the measured steering axis alone: the"
            + " arm's and the tie rod's part is left out. Measure the strut's points for more.");
  }

  /** At ride height with the top pivot where the work leaves it, or found it. */
  Optional<Pose> atRide(String check, String where, Ask ask) {
    return ask(
        ask,
        reason ->
            list.add(
                new Finding(
                    id(job, "reach-" + check),
                    Severity.STOP,
                    where + ", " + points(reason),
                    job.strut().orElseThrow().rideMm(),
                    0,
                    "mm",
                    SOURCE,
                    "At ride height "
                        + reason.words()
                        + ". Measure these points again: "
                        + points(reason)
                        + ".")));
  }

  /** At ride height at another setting. */
  Optional<Pose> atSetting(double settingMm, Ask ask) {
    return ask(
        ask,
        reason ->
            list.add(
                new Finding(
                    id(job, "reach-" + Settings.id(job.plate().slot(), settingMm)),
                    Severity.CAUTION,
                    Settings.words(job.plate().slot(), settingMm) + ", " + points(reason),
                    settingMm,
                    settingMm,
                    "mm",
                    SOURCE,
                    "With the bearing there "
                        + reason.words()
                        + " at ride height. Do not use this setting before it is understood: check "
                        + points(reason)
                        + ".")));
  }

  private interface Told {
    void about(NotReached.Reason reason);
  }

  private static Optional<Pose> ask(Ask ask, Told told) {
    try {
      return Optional.of(ask.pose());
    } catch (NotReached e) {
      told.about(e.reason());
      return Optional.empty();
    }
  }

  /** Over the wheel's travel and steer as the job limits them. */
  void overLimits(Bay bay, Pose set) {
    StrutPoints.Limits limits = job.strut().orElseThrow().limits();
    travel(bay, set, limits);
    steer(bay, set, limits);
  }

  private void travel(Bay bay, Pose set, StrutPoints.Limits limits) {
    double tie = set.tieOuter().minus(set.tieInner()).norm();
    for (int sign : WAYS) {
      double most = sign < 0 ? limits.droopMm() : limits.bumpMm();
      Optional<Failure> failure =
          firstFailure(
              most,
              mm ->
                  bay.mechanism()
                      .tiedAtHeight(
                          set.wheelCentre().z() + sign * mm, set.top(), set.tieInner(), tie));
      if (failure.isPresent()) {
        tellTravel(failure.get(), most, sign < 0 ? "droop" : "bump");
        return;
      }
    }
    list.add(
        new Finding(
            id(job, "reach-travel"),
            Severity.NOTE,
            "wheel travel",
            limits.bumpMm() + limits.droopMm(),
            limits.bumpMm() + limits.droopMm(),
            "mm",
            TRAVEL,
            "The linkage closes from full droop to full bump."));
  }

  private void tellTravel(Failure failure, double most, String way) {
    String points = points(failure.reason());
    list.add(
        new Finding(
            id(job, "reach-travel"),
            Severity.CAUTION,
            "wheel travel, " + points,
            failure.at(),
            most,
            "mm",
            TRAVEL,
            "Before full "
                + way
                + " "
                + failure.reason().words()
                + ". Check "
                + points
                + ", or the travel that the job gives."));
  }

  private void steer(Bay bay, Pose set, StrutPoints.Limits limits) {
    double most = limits.steer().degrees();
    for (int sign : WAYS) {
      Optional<Failure> failure =
          firstFailure(
              most,
              degrees ->
                  bay.mechanism()
                      .headedAtHeight(
                          set.wheelCentre().z(),
                          set.top(),
                          new Angle(set.toe() + sign * Math.toRadians(degrees))));
      if (failure.isPresent()) {
        String points = points(failure.get().reason());
        list.add(
            new Finding(
                id(job, "reach-steer"),
                Severity.CAUTION,
                "steer, " + points,
                failure.get().at(),
                most,
                "deg",
                "job: strut.steer",
                "With the wheel turned "
                    + Numbers.plain(failure.get().at(), 1)
                    + " deg "
                    + (sign < 0 ? "out" : "in")
                    + " at the front "
                    + failure.get().reason().words()
                    + ". Check "
                    + points
                    + "."));
        return;
      }
    }
  }

  /** A pose asked for by how far it is from ride height or straight ahead. */
  private interface Away {
    Pose pose(double by) throws NotReached;
  }

  private record Failure(double at, NotReached.Reason reason) {}

  /** The first whole mm or degree, or the end, that is not reached; looked for in strides first. */
  private static Optional<Failure> firstFailure(double most, Away away) {
    double reached = 0;
    while (reached < most) {
      double next = Math.min(reached + STRIDE, most);
      if (failure(next, away).isPresent()) {
        for (double by = Math.min(reached + 1, next); by < next; by++) {
          Optional<Failure> first = failure(by, away);
          if (first.isPresent()) {
            return first;
          }
        }
        return failure(next, away);
      }
      reached = next;
    }
    return Optional.empty();
  }

  private static Optional<Failure> failure(double by, Away away) {
    try {
      away.pose(by);
      return Optional.empty();
    } catch (NotReached e) {
      return Optional.of(new Failure(by, e.reason()));
    }
  }

  /** The job's names of the points that a reason speaks of. */
  private static String points(NotReached.Reason reason) {
    return switch (reason) {
      case TOP_TOO_CLOSE -> "top, ball_joint, strut_lower";
      case TIE_ROD -> "tie_inner, tie_outer";
      case TOE -> "top, ball_joint, wheel_centre";
      case ARM -> "arm_front, arm_rear, ball_joint";
    };
  }
}
