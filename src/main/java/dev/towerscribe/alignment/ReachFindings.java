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
                    id(job, "reach-setting." + Numbers.plain(settingMm, 2)),
                    Severity.CAUTION,
                    "setting " + Numbers.plain(settingMm, 2) + " mm, " + points(reason),
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
    Optional<String> failed = Optional.empty();
    for (int sign = -1; sign <= 1; sign += 2) {
      double most = sign < 0 ? limits.droopMm() : limits.bumpMm();
      for (int mm = 1; mm <= Math.ceil(most) && failed.isEmpty(); mm++) {
        double travel = sign * Math.min(mm, most);
        try {
          bay.mechanism()
              .tiedAtHeight(set.wheelCentre().z() + travel, set.top(), set.tieInner(), tie);
        } catch (NotReached e) {
          String at =
              Numbers.plain(Math.abs(travel), 1) + " mm of " + (sign < 0 ? "droop" : "bump");
          failed = Optional.of(at);
          list.add(
              new Finding(
                  id(job, "reach-travel"),
                  Severity.CAUTION,
                  "wheel travel, " + points(e.reason()),
                  Math.abs(travel),
                  most,
                  "mm",
                  "job: strut.bump, strut.droop",
                  "At "
                      + at
                      + " "
                      + e.reason().words()
                      + ". Check "
                      + points(e.reason())
                      + ", or the travel that the job gives."));
        }
      }
    }
    if (failed.isEmpty()) {
      list.add(
          new Finding(
              id(job, "reach-travel"),
              Severity.NOTE,
              "wheel travel",
              limits.bumpMm() + limits.droopMm(),
              limits.bumpMm() + limits.droopMm(),
              "mm",
              "job: strut.bump, strut.droop",
              "The linkage closes from full droop to full bump."));
    }
  }

  private void steer(Bay bay, Pose set, StrutPoints.Limits limits) {
    double most = limits.steer().degrees();
    for (int sign = -1; sign <= 1; sign += 2) {
      for (int degrees = 1; degrees <= Math.ceil(most); degrees++) {
        double toe = set.toe() + sign * Math.toRadians(Math.min(degrees, most));
        try {
          bay.mechanism().headedAtHeight(set.wheelCentre().z(), set.top(), new Angle(toe));
        } catch (NotReached e) {
          list.add(
              new Finding(
                  id(job, "reach-steer"),
                  Severity.CAUTION,
                  "steer, " + points(e.reason()),
                  Math.min(degrees, most),
                  most,
                  "deg",
                  "job: strut.steer",
                  "With the wheel turned "
                      + Numbers.plain(Math.min(degrees, most), 1)
                      + " deg "
                      + (sign < 0 ? "out" : "in")
                      + " at the front "
                      + e.reason().words()
                      + ". Check "
                      + points(e.reason())
                      + "."));
          return;
        }
      }
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
