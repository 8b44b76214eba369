package dev.towerscribe.alignment;

import dev.towerscribe.finding.About;
import dev.towerscribe.finding.Findings;
import dev.towerscribe.finding.Severity;
import dev.towerscribe.finding.Sources;
import dev.towerscribe.model.Plate;
import dev.towerscribe.quantity.Angle;
import dev.towerscribe.quantity.Lengths;
import java.util.Comparator;
import java.util.List;
import java.util.Optional;

/** What the owner wants against what comes out, and one side against the other. */
final class AimFindings {
  private final SideAlignment side;
  private final AlignmentTargets targets;
  private final Findings findings;

  private AimFindings(SideAlignment side, AlignmentTargets targets, Findings findings) {
    this.side = side;
    this.targets = targets;
    this.findings = findings;
  }

  /** One side's aims; nothing where the job has none or the linkage gives no figures. */
  static void add(SideAlignment side, Findings findings) {
    if (side.job().aims().isPresent() && side.at().isPresent()) {
      AlignmentTargets targets = AlignmentTargets.of(side.job().aims().get());
      AimFindings aims = new AimFindings(side, targets, findings);
      aims.caster(side.at().get());
      aims.camber(side.at().get());
      aims.limits();
    }
  }

  private void caster(Reading at) {
    Angle figure = at.caster();
    Optional<Angle> missed = targets.missedBy(figure);
    String advice =
        missed
            .map(
                end ->
                    " "
                        + (figure.compareTo(end) < 0
                            ? findings.advise(
                                "More rotation, more rearward offset or a farther setting gives"
                                    + " more.",
                                "A farther setting gives more.")
                            : findings.advise(
                                "Less rotation, less rearward offset or another setting gives"
                                    + " less.",
                                "Another setting gives less.")))
            .orElse("");
    findings.add(
        "aim-caster",
        missed.isPresent() ? Severity.CAUTION : Severity.NOTE,
        About.degrees(
            "caster at the chosen setting",
            figure.radians(),
            missed.orElse(targets.casterFrom()).radians(),
            targets.casterSource()),
        "Caster %s%s%s; wanted %s.%s"
            .formatted(
                Lengths.withDegrees(figure),
                side.strut().flatMap(StrutFigures::sureAt).map(f -> likely(f.caster())).orElse(""),
                side.estimate() ? ", estimated" : "",
                targets.casterWords(),
                advice));
  }

  private String likely(Sensitivity.Figure figure) {
    double radians = figure.plusMinus(side.strut().orElseThrow().plusMinus());
    return Lengths.likelyWithin(Lengths.withDegrees(new Angle(radians)));
  }

  private void camber(Reading at) {
    Angle wanted = targets.camber();
    Optional<StrutFigures.Reachable> range = side.strut().flatMap(StrutFigures::reachableAt);
    Angle nearest = range.map(r -> r.nearest(wanted)).orElse(at.camber());
    double off = Math.abs(nearest.degrees() - wanted.degrees());
    boolean met =
        off <= (range.isPresent() ? AlignmentTargets.PASS_DEG : AlignmentTargets.CAMBER_MET_DEG);
    String got =
        range
            .map(
                r ->
                    "%s to %s by the knuckle bolt"
                        .formatted(Lengths.degrees(r.from()), Lengths.withDegrees(r.to())))
            .orElseGet(
                () ->
                    Lengths.withDegrees(at.camber())
                        + side.strut()
                            .flatMap(StrutFigures::sureAt)
                            .map(f -> likely(f.camber()))
                            .orElse(""));
    String advice =
        met
            ? ""
            : " "
                + findings.advise(
                    nearest.compareTo(wanted) > 0
                        ? "More inboard offset or less rotation makes it more negative."
                        : "Less inboard offset or more rotation makes it less negative.",
                    "Another setting changes it.");
    findings.add(
        "aim-camber",
        met ? Severity.NOTE : Severity.CAUTION,
        About.degrees(
            range.isPresent() ? "camber nearest to the aim" : "camber at the chosen setting",
            nearest.radians(),
            wanted.radians(),
            targets.camberSource()),
        "Camber %s%s; wanted %s deg.%s"
            .formatted(
                got, side.estimate() ? ", estimated" : "", Lengths.plainDegrees(wanted), advice));
  }

  /**
   * Each setting past the limit; where none is, the nearest to it. Ids count the settings, so that
   * they are the same in every unit and do not change when one is measured anew.
   */
  private void limits() {
    List<SideAlignment.AtSetting> read =
        side.settings().stream().filter(s -> s.reading().isPresent()).toList();
    Angle limit = targets.camberLimit();
    List<SideAlignment.AtSetting> past =
        read.stream().filter(s -> targets.pastLimit(camber(s))).toList();
    List<SideAlignment.AtSetting> told =
        past.isEmpty()
            ? read.stream().min(Comparator.comparing(AimFindings::camber)).stream().toList()
            : past;
    Plate.Slot slot = side.job().plate().slot();
    for (SideAlignment.AtSetting s : told) {
      findings.add(
          "camber-limit." + SlotSettings.id(slot, s.settingMm()),
          past.isEmpty() ? Severity.NOTE : Severity.CAUTION,
          About.degrees(
              "camber at " + SlotSettings.words(slot, s.settingMm()),
              camber(s).radians(),
              limit.radians(),
              targets.limitSource()),
          past.isEmpty()
              ? "No setting passes the camber limit."
              : """
              Camber %s there, past the limit of %s deg. Do not use this setting, or bring the \
              knuckle bolt back.\
              """
                  .formatted(Lengths.withDegrees(camber(s)), Lengths.plainDegrees(limit)));
    }
  }

  private static Angle camber(SideAlignment.AtSetting setting) {
    return setting.reading().orElseThrow().camber();
  }

  /** Left against right. */
  static void cross(JobAlignment.Cross cross, Findings findings) {
    cross("caster", "The car pulls to the side with less caster.", cross.caster(), findings);
    cross(
        "camber",
        "The car pulls to the side with the more positive camber.",
        cross.camber(),
        findings);
  }

  private static void cross(String figure, String effect, Angle leftMinusRight, Findings findings) {
    double degrees = Math.abs(leftMinusRight.degrees());
    boolean much = degrees > AlignmentTargets.CROSS_DEG + AlignmentTargets.PASS_DEG;
    boolean tooMuch = degrees > AlignmentTargets.CROSS_STOP_DEG + AlignmentTargets.PASS_DEG;
    findings.add(
        "cross-" + figure,
        tooMuch ? Severity.STOP : much ? Severity.CAUTION : Severity.NOTE,
        new About(
            figure + ", left against right",
            degrees,
            tooMuch ? AlignmentTargets.CROSS_STOP_DEG : AlignmentTargets.CROSS_DEG,
            "deg",
            Sources.PRACTICE),
        "Left minus right: %s.%s"
            .formatted(
                Lengths.withDegrees(leftMinusRight),
                much ? " " + effect + " Look for what differs between the two towers." : ""));
  }
}
