package dev.towerscribe.record;

import dev.towerscribe.alignment.AlignmentTargets;
import dev.towerscribe.finding.Finding;
import dev.towerscribe.finding.Severity;
import dev.towerscribe.model.Job;
import dev.towerscribe.model.Side;
import dev.towerscribe.model.SideJob;
import dev.towerscribe.quantity.Angle;
import dev.towerscribe.quantity.Numbers;
import java.util.ArrayList;
import java.util.List;
import java.util.Optional;

/** What is to be said of a visit's figures, against the predicted ones and against the aims. */
final class RecordFindings {
  private static final String PRACTICE = "common practice, no source";

  private static final String DEVIATIONS = "2 standard deviations; " + PRACTICE;

  /** A bay's reading is no finer. Common practice, no source. */
  private static final double CAMBER_MET_DEG = 0.25;

  /** Greater differences pull a car to one side. Common practice, no source. */
  private static final double CROSS_DEG = 0.5;

  /** A figure at its limit passes: rounding of an angle. */
  private static final double PASS_DEG = 1e-9;

  private RecordFindings() {}

  static Finding notPredicted(Side side) {
    return words(
        side.word() + ".record-not-predicted",
        Severity.CAUTION,
        "The job gives nothing on this side to predict from: strut points that stand, or a measured"
            + " axis, and the knuckle bolt if it was turned.");
  }

  static Finding notReached(Side side, Stage stage) {
    return words(
        side.word() + ".record-not-reached." + stage.word(),
        Severity.CAUTION,
        "The linkage of the job's points does not reach the ride height or setting of this reading,"
            + " so that nothing is predicted for it: look at both.");
  }

  static Finding estimate(Side side) {
    return words(
        side.word() + ".record-estimate",
        Severity.NOTE,
        "Predicted by an estimate from the measured axis, which has no +/- of its own: what is"
            + " outside may be the estimate's.");
  }

  private static Finding words(String id, Severity severity, String say) {
    return new Finding(id, severity, "prediction", 0, 0, "", PRACTICE, say);
  }

  /** Figures outside two standard deviations, then aims, then left against right. */
  static List<Finding> of(Job job, Visit visit, List<Compared> compared) {
    List<Finding> found = new ArrayList<>();
    compared.stream().filter(c -> !c.within()).map(RecordFindings::outside).forEach(found::add);
    visit.wheels().forEach((side, wheel) -> found.addAll(aims(job.sides().get(side), wheel)));
    if (visit.wheels().size() == Side.values().length) {
      cross(visit, BayFigure.CASTER, "The car pulls to the side with less caster.")
          .ifPresent(found::add);
      cross(visit, BayFigure.CAMBER, "The car pulls to the side with the more positive camber.")
          .ifPresent(found::add);
    }
    return found;
  }

  /** Whether it only says that a compared figure is outside. */
  static boolean isOfAFigure(Finding f) {
    return f.source().equals(DEVIATIONS);
  }

  private static Finding outside(Compared c) {
    return new Finding(
        c.side().map(Side::word).orElse("both")
            + ".record-"
            + c.stage().word()
            + "-"
            + c.figure().word(),
        Severity.CAUTION,
        c.name() + ", measured less predicted",
        Math.abs(c.difference().degrees()),
        Compared.MOST_SD * c.sd().degrees(),
        "deg",
        DEVIATIONS,
        "Measured "
            + with(c.measured())
            + ", predicted "
            + with(c.predicted())
            + ": "
            + Numbers.fixed(c.sds(), 1)
            + " standard deviations apart.");
  }

  private static String with(Angle angle) {
    return Numbers.fixed(angle.degrees(), 2) + " deg";
  }

  private static List<Finding> aims(SideJob job, WheelVisit wheel) {
    List<Finding> found = new ArrayList<>();
    if (job.aims().isEmpty()) {
      return found;
    }
    AlignmentTargets goals = AlignmentTargets.of(job.aims().get());
    wheel.after().of(BayFigure.CASTER).ifPresent(a -> found.add(caster(job, goals, a)));
    wheel.after().of(BayFigure.CAMBER).ifPresent(a -> found.add(camber(job, goals, a)));
    wheel.after().of(BayFigure.CAMBER).ifPresent(a -> found.add(limit(job, goals, a)));
    return found;
  }

  private static String source(boolean given, String key, SideJob job) {
    return given
        ? "job: aims." + key
        : "by use " + job.aims().orElseThrow().use().word() + "; " + PRACTICE;
  }

  private static Finding caster(SideJob job, AlignmentTargets goals, Angle measured) {
    double figure = measured.degrees();
    double from = goals.casterFrom().degrees();
    Optional<Double> to = goals.casterTo().map(Angle::degrees);
    boolean more = to.isPresent() && figure > to.get() + PASS_DEG;
    boolean off = more || figure < from - PASS_DEG;
    return new Finding(
        job.side().word() + ".record-aim-caster",
        off ? Severity.CAUTION : Severity.NOTE,
        "caster as measured after the work",
        figure,
        more ? to.get() : from,
        "deg",
        source(goals.casterGiven(), "caster", job),
        "Caster " + with(measured) + " as measured; wanted " + goals.casterWords() + ".");
  }

  private static Finding camber(SideJob job, AlignmentTargets goals, Angle measured) {
    double off = Math.abs(measured.degrees() - goals.camber().degrees());
    return new Finding(
        job.side().word() + ".record-aim-camber",
        off > CAMBER_MET_DEG + PASS_DEG ? Severity.CAUTION : Severity.NOTE,
        "camber as measured after the work",
        measured.degrees(),
        goals.camber().degrees(),
        "deg",
        source(goals.camberGiven(), "camber", job),
        "Camber "
            + with(measured)
            + " as measured; wanted "
            + Numbers.plain(goals.camber().degrees(), 2)
            + " deg.");
  }

  private static Finding limit(SideJob job, AlignmentTargets goals, Angle measured) {
    boolean past = measured.degrees() < goals.camberLimit().degrees() - PASS_DEG;
    return new Finding(
        job.side().word() + ".record-camber-limit",
        past ? Severity.CAUTION : Severity.NOTE,
        "camber as measured after the work",
        measured.degrees(),
        goals.camberLimit().degrees(),
        "deg",
        source(goals.limitGiven(), "camber_limit", job),
        past
            ? "Camber "
                + with(measured)
                + " is past the limit of "
                + Numbers.plain(goals.camberLimit().degrees(), 2)
                + " deg. Do not leave it so: bring the setting or the knuckle bolt back."
            : "Camber is not past its limit.");
  }

  private static Optional<Finding> cross(Visit visit, BayFigure figure, String effect) {
    Optional<Angle> left = visit.wheels().get(Side.LEFT).after().of(figure);
    Optional<Angle> right = visit.wheels().get(Side.RIGHT).after().of(figure);
    if (left.isEmpty() || right.isEmpty()) {
      return Optional.empty();
    }
    Angle cross = new Angle(left.get().radians() - right.get().radians());
    boolean much = Math.abs(cross.degrees()) > CROSS_DEG + PASS_DEG;
    return Optional.of(
        new Finding(
            "both.record-cross-" + figure.word(),
            much ? Severity.CAUTION : Severity.NOTE,
            figure.word() + " as measured, left against right",
            Math.abs(cross.degrees()),
            CROSS_DEG,
            "deg",
            PRACTICE,
            "Measured "
                + figure.word()
                + ", left minus right: "
                + with(cross)
                + (much ? ". " + effect : ".")));
  }
}
