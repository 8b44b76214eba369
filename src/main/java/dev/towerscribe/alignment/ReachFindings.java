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
import java.util.stream.DoubleStream;

/** Whether the linkage gets where it has to, and what does not reach where it does not. */
final class ReachFindings {
  private static final String SOURCE = "strut points of the job";

  private static final String TRAVEL = "job: strut.bump, strut.droop";

  /** What lies out of reach is a whole end of the travel, so that strides do not step over it. */
  private static final double STRIDE = 5;

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
    return asked(
        ask,
        check,
        Severity.STOP,
        where,
        job.strut().orElseThrow().rideMm(),
        0,
        "At ride height %s. Measure these points again: %s.");
  }

  /** At ride height at another setting. */
  Optional<Pose> atSetting(double settingMm, NotReached.Ask<Pose> ask) {
    return asked(
        ask,
        SlotSettings.id(job.plate().slot(), settingMm),
        Severity.CAUTION,
        SlotSettings.words(job.plate().slot(), settingMm),
        settingMm,
        settingMm,
        "With the bearing there %s at ride height. Do not use this setting before it is"
            + " understood: check %s.");
  }

  private Optional<Pose> asked(
      NotReached.Ask<Pose> ask,
      String check,
      Severity severity,
      String where,
      double mm,
      double limitMm,
      String say) {
    try {
      return Optional.of(ask.get());
    } catch (NotReached e) {
      String points = e.reason().points();
      findings.add(
          "reach-" + check,
          severity,
          About.mm(where + ", " + points, mm, limitMm, SOURCE),
          say.formatted(e.reason().words(), points));
      return Optional.empty();
    }
  }

  /** Over the wheel's travel and steer as the job limits them. */
  void overLimits(Bay bay, Pose set) {
    StrutPoints.Limits limits = job.strut().orElseThrow().limits();
    double z = set.wheelCentre().z();
    Mechanism m = bay.mechanism();
    travel(limits, mm -> m.tiedAtHeight(z + mm, set.top(), set.tieInner(), set.tieRodMm()));
    steer(
        limits.steer().degrees(),
        by -> m.headedAtHeight(z, set.top(), new Angle(set.toe() + Math.toRadians(by))));
  }

  private void travel(StrutPoints.Limits limits, Away away) {
    Optional<Failure> failure =
        firstFailure(-limits.droopMm(), away).or(() -> firstFailure(limits.bumpMm(), away));
    if (failure.isEmpty()) {
      double whole = limits.bumpMm() + limits.droopMm();
      findings.add(
          "reach-travel",
          Severity.NOTE,
          About.mm("wheel travel", whole, whole, TRAVEL),
          "The linkage closes from full droop to full bump.");
      return;
    }
    NotReached.Reason reason = failure.get().reason();
    boolean down = failure.get().by() < 0;
    findings.add(
        "reach-travel",
        Severity.CAUTION,
        About.mm(
            "wheel travel, " + reason.points(),
            Math.abs(failure.get().by()),
            down ? limits.droopMm() : limits.bumpMm(),
            TRAVEL),
        "Before full %s %s. Check %s, or the travel that the job gives."
            .formatted(down ? "droop" : "bump", reason.words(), reason.points()));
  }

  private void steer(double most, Away away) {
    firstFailure(-most, away)
        .or(() -> firstFailure(most, away))
        .ifPresent(
            f -> {
              double at = Math.abs(f.by());
              String points = f.reason().points();
              findings.add(
                  "reach-steer",
                  Severity.CAUTION,
                  new About("steer, " + points, at, most, "deg", "job: strut.steer"),
                  "With the wheel turned %s deg %s at the front %s. Check %s."
                      .formatted(
                          Numbers.plain(at, 1),
                          f.by() < 0 ? "out" : "in",
                          f.reason().words(),
                          points));
            });
  }

  /** A pose asked for by how far it is from ride height or straight ahead. */
  private interface Away {
    Pose pose(double by) throws NotReached;
  }

  private record Failure(double by, NotReached.Reason reason) {}

  /** The first whole mm or degree, or the end, that is not reached; looked for in strides first. */
  private static Optional<Failure> firstFailure(double end, Away away) {
    double most = Math.abs(end);
    double way = Math.signum(end);
    for (double reached = 0; reached < most; reached += STRIDE) {
      double next = Math.min(reached + STRIDE, most);
      Optional<Failure> failure = failure(way * next, away);
      if (failure.isPresent()) {
        return DoubleStream.iterate(Math.min(reached + 1, next), by -> by < next, by -> by + 1)
            .mapToObj(by -> failure(way * by, away))
            .flatMap(Optional::stream)
            .findFirst()
            .or(() -> failure);
      }
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
}
