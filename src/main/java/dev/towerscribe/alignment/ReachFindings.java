package dev.towerscribe.alignment;

import dev.towerscribe.finding.About;
import dev.towerscribe.finding.Findings;
import dev.towerscribe.finding.Severity;
import dev.towerscribe.finding.Sources;
import dev.towerscribe.model.SideJob;
import dev.towerscribe.model.StrutPoints;
import dev.towerscribe.quantity.Angle;
import dev.towerscribe.quantity.Numbers;
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
  private final Findings findings;

  ReachFindings(SideJob job, Findings findings) {
    this.job = job;
    this.findings = findings;
  }

  /** Points that make no linkage; false if there are none such. */
  boolean pointFaults() {
    List<PointFault> faults = PointFault.in(job);
    for (PointFault f : faults) {
      findings.add(
          "strut-points." + f.points().replaceAll("[^a-z]+", "-"),
          Severity.STOP,
          About.mm("strut: " + f.points(), f.figureMm(), f.leastMm(), Sources.PRACTICE),
          f.say());
    }
    return !faults.isEmpty();
  }

  /** That the figures are an estimate. */
  void estimate() {
    findings.add(
        "alignment-estimate",
        Severity.NOTE,
        About.words("steering axis", "job: axis"),
        "Caster, camber and inclination are estimated from the measured steering axis alone: what"
            + " the arm and the tie rod add is left out. Measure the strut's points for more.");
  }

  /** At ride height with the top pivot where the work leaves it, or found it. */
  Optional<Pose> atRide(String check, String where, NotReached.Ask<Pose> ask) {
    try {
      return Optional.of(ask.get());
    } catch (NotReached e) {
      double ride = job.strut().orElseThrow().rideMm();
      findings.add(
          "reach-" + check,
          Severity.STOP,
          About.mm("%s, %s".formatted(where, points(e.reason())), ride, 0, SOURCE),
          "At ride height %s. Measure these points again: %s."
              .formatted(e.reason().words(), points(e.reason())));
      return Optional.empty();
    }
  }

  /** At ride height at another setting. */
  Optional<Pose> atSetting(double settingMm, NotReached.Ask<Pose> ask) {
    try {
      return Optional.of(ask.get());
    } catch (NotReached e) {
      String setting = SlotSettings.words(job.plate().slot(), settingMm);
      findings.add(
          "reach-" + SlotSettings.id(job.plate().slot(), settingMm),
          Severity.CAUTION,
          About.mm("%s, %s".formatted(setting, points(e.reason())), settingMm, settingMm, SOURCE),
          """
          With the bearing there %s at ride height. Do not use this setting before it is \
          understood: check %s.\
          """
              .formatted(e.reason().words(), points(e.reason())));
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
        String points = points(failure.get().reason());
        findings.add(
            "reach-travel",
            Severity.CAUTION,
            About.mm("wheel travel, " + points, failure.get().at(), most, TRAVEL),
            "Before full %s %s. Check %s, or the travel that the job gives."
                .formatted(sign < 0 ? "droop" : "bump", failure.get().reason().words(), points));
        return;
      }
    }
    double whole = limits.bumpMm() + limits.droopMm();
    findings.add(
        "reach-travel",
        Severity.NOTE,
        About.mm("wheel travel", whole, whole, TRAVEL),
        "The linkage closes from full droop to full bump.");
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
        double at = failure.get().at();
        String points = points(failure.get().reason());
        findings.add(
            "reach-steer",
            Severity.CAUTION,
            new About("steer, " + points, at, most, "deg", "job: strut.steer"),
            "With the wheel turned %s deg %s at the front %s. Check %s."
                .formatted(
                    Numbers.plain(at, 1),
                    sign < 0 ? "out" : "in",
                    failure.get().reason().words(),
                    points));
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
      Optional<Failure> failure = failure(next, away);
      if (failure.isPresent()) {
        for (double by = Math.min(reached + 1, next); by < next; by++) {
          Optional<Failure> first = failure(by, away);
          if (first.isPresent()) {
            return first;
          }
        }
        return failure;
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
