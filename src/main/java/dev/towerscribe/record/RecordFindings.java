package dev.towerscribe.record;

import dev.towerscribe.alignment.AlignmentTargets;
import dev.towerscribe.finding.About;
import dev.towerscribe.finding.Finding;
import dev.towerscribe.finding.Findings;
import dev.towerscribe.finding.Severity;
import dev.towerscribe.finding.Sources;
import dev.towerscribe.model.Job;
import dev.towerscribe.model.Side;
import dev.towerscribe.model.SideJob;
import dev.towerscribe.quantity.Angle;
import dev.towerscribe.quantity.Lengths;
import dev.towerscribe.quantity.Numbers;
import java.util.List;
import java.util.Optional;

/** What is to be said of a visit's figures, against the predicted ones and against the aims. */
final class RecordFindings {
  private static final String DEVIATIONS = "2 standard deviations; " + Sources.PRACTICE;

  private final Findings findings;

  RecordFindings(Findings findings) {
    this.findings = findings;
  }

  void notPredicted(Side side) {
    words(
        side,
        "not-predicted",
        Severity.CAUTION,
        "The job gives nothing on this side to predict from: strut points that stand, or a measured"
            + " axis, and the knuckle bolt if it was turned.");
  }

  void notReached(Side side, ReadingStage stage) {
    words(
        side,
        "not-reached." + stage.word(),
        Severity.CAUTION,
        "The linkage of the job's points does not reach the ride height or setting of this reading,"
            + " so that nothing is predicted for it: look at both.");
  }

  void estimate(Side side) {
    words(
        side,
        "estimate",
        Severity.NOTE,
        "Predicted by an estimate from the measured axis, which has no uncertainty of its own: what"
            + " is outside may be the estimate's.");
  }

  private void words(Side side, String check, Severity severity, String say) {
    findings.add(
        side.word(), "record-" + check, severity, About.words("prediction", Sources.PRACTICE), say);
  }

  /** Figures outside two standard deviations, then aims, then left against right. */
  void of(Job job, Visit visit, List<Compared> compared) {
    compared.stream().filter(c -> !c.within()).forEach(this::outside);
    visit.wheels().forEach((side, wheel) -> aims(job.sides().get(side), wheel));
    if (visit.wheels().size() == Side.values().length) {
      cross(visit, BayFigure.CASTER, "The car pulls to the side with less caster.");
      cross(visit, BayFigure.CAMBER, "The car pulls to the side with the more positive camber.");
    }
  }

  /** Whether it only says that a compared figure is outside. */
  static boolean isOfAFigure(Finding f) {
    return f.source().equals(DEVIATIONS);
  }

  private void outside(Compared c) {
    findings.add(
        c.side().map(Side::word).orElse("both"),
        "record-%s-%s".formatted(c.stage().word(), c.figure().word()),
        Severity.CAUTION,
        new About(
            c.name() + ", measured less predicted",
            Math.abs(c.difference().degrees()),
            Compared.MOST_SD * c.sd().degrees(),
            "deg",
            DEVIATIONS),
        "Measured %s, predicted %s: %s standard deviations apart."
            .formatted(
                Lengths.withDegrees(c.measured()),
                Lengths.withDegrees(c.predicted()),
                Numbers.fixed(c.sds(), 1)));
  }

  private void aims(SideJob job, WheelVisit wheel) {
    if (job.aims().isPresent()) {
      AlignmentTargets goals = AlignmentTargets.of(job.aims().get());
      wheel.after().of(BayFigure.CASTER).ifPresent(a -> caster(job.side(), goals, a));
      wheel.after().of(BayFigure.CAMBER).ifPresent(a -> camber(job.side(), goals, a));
    }
  }

  private void caster(Side side, AlignmentTargets goals, Angle measured) {
    Optional<Angle> missed = goals.missedBy(measured);
    aim(
        side,
        "aim-caster",
        missed.isPresent(),
        BayFigure.CASTER,
        measured,
        missed.orElse(goals.casterFrom()),
        goals.casterSource(),
        "Caster %s as measured; wanted %s."
            .formatted(Lengths.withDegrees(measured), goals.casterWords()));
  }

  private void camber(Side side, AlignmentTargets goals, Angle measured) {
    double off = Math.abs(measured.degrees() - goals.camber().degrees());
    String told = Lengths.withDegrees(measured);
    aim(
        side,
        "aim-camber",
        off > AlignmentTargets.CAMBER_MET_DEG + AlignmentTargets.PASS_DEG,
        BayFigure.CAMBER,
        measured,
        goals.camber(),
        goals.camberSource(),
        "Camber %s as measured; wanted %s deg."
            .formatted(told, Lengths.plainDegrees(goals.camber())));
    boolean past = goals.pastLimit(measured);
    aim(
        side,
        "camber-limit",
        past,
        BayFigure.CAMBER,
        measured,
        goals.camberLimit(),
        goals.limitSource(),
        past
            ? ("Camber %s is past the limit of %s deg. Do not leave it so: bring the setting or the"
                    + " knuckle bolt back.")
                .formatted(told, Lengths.plainDegrees(goals.camberLimit()))
            : "Camber is not past its limit.");
  }

  private void aim(
      Side side,
      String check,
      boolean off,
      BayFigure figure,
      Angle measured,
      Angle limit,
      String source,
      String say) {
    String where = figure.word() + " as measured after the work";
    findings.add(
        side.word(),
        "record-" + check,
        off ? Severity.CAUTION : Severity.NOTE,
        new About(where, measured.degrees(), limit.degrees(), "deg", source),
        say);
  }

  private void cross(Visit visit, BayFigure figure, String effect) {
    Optional<Angle> left = visit.wheels().get(Side.LEFT).after().of(figure);
    Optional<Angle> right = visit.wheels().get(Side.RIGHT).after().of(figure);
    if (left.isEmpty() || right.isEmpty()) {
      return;
    }
    Angle cross = new Angle(left.get().radians() - right.get().radians());
    double size = Math.abs(cross.degrees());
    double most = AlignmentTargets.CROSS_DEG;
    boolean much = size > most + AlignmentTargets.PASS_DEG;
    String where = figure.word() + " as measured, left against right";
    findings.add(
        "both",
        "record-cross-" + figure.word(),
        much ? Severity.CAUTION : Severity.NOTE,
        new About(where, size, most, "deg", Sources.PRACTICE),
        "Measured %s, left minus right: %s%s"
            .formatted(figure.word(), Lengths.withDegrees(cross), much ? ". " + effect : "."));
  }
}
