package dev.towerscribe.alignment;

import dev.towerscribe.finding.Finding;
import dev.towerscribe.finding.Severity;
import dev.towerscribe.quantity.Angle;
import dev.towerscribe.quantity.Numbers;
import java.util.ArrayList;
import java.util.Comparator;
import java.util.List;
import java.util.Optional;

/** What the owner wants against what comes out, and one side against the other. */
final class AimFindings {
  private static final String PRACTICE = "common practice, no source";

  /** A bay's reading is no finer. Common practice, no source. */
  private static final double CAMBER_MET_DEG = 0.25;

  /** Greater differences pull a car to one side. Common practice, no source. */
  private static final double CROSS_DEG = 0.5;

  /** A figure at its limit passes: rounding of a computed angle. */
  private static final double PASS_DEG = 1e-9;

  private AimFindings() {}

  /** One side's aims; nothing where the job has none or the linkage gives no figures. */
  static List<Finding> of(SideAlignment side) {
    List<Finding> found = new ArrayList<>();
    if (side.job().aims().isEmpty() || side.at().isEmpty()) {
      return found;
    }
    Goals goals = Goals.of(side.job().aims().get());
    Reading at = side.at().get();
    found.add(caster(side, goals, at));
    found.add(camber(side, goals, at));
    found.addAll(limits(side, goals));
    return found;
  }

  private static String source(boolean given, String key, SideAlignment side) {
    return given
        ? "job: aims." + key
        : "by use " + side.job().aims().orElseThrow().use().word() + "; " + PRACTICE;
  }

  private static Finding caster(SideAlignment side, Goals goals, Reading at) {
    double figure = at.caster().degrees();
    double from = goals.casterFrom().degrees();
    Optional<Double> to = goals.casterTo().map(Angle::degrees);
    boolean less = figure < from - PASS_DEG;
    boolean more = to.isPresent() && figure > to.get() + PASS_DEG;
    String advice =
        less
            ? ". More rotation, more rearward offset or a farther setting gives more."
            : more ? ". Less rotation, less rearward offset or another setting gives less." : ".";
    return new Finding(
        side.side().word() + ".aim-caster",
        less || more ? Severity.CAUTION : Severity.NOTE,
        "caster at the chosen setting",
        figure,
        more ? to.get() : from,
        "deg",
        source(goals.casterGiven(), "caster", side),
        "Caster "
            + Degrees.with(at.caster())
            + plusMinus(side, true)
            + (side.estimate() ? ", estimated" : "")
            + "; wanted "
            + goals.casterWords()
            + advice);
  }

  private static String plusMinus(SideAlignment side, boolean caster) {
    return side.strut()
        .flatMap(
            s -> s.sureAt().map(f -> (caster ? f.caster() : f.camber()).plusMinus(s.plusMinus())))
        .map(radians -> " +/- " + Degrees.with(new Angle(radians)))
        .orElse("");
  }

  private static Finding camber(SideAlignment side, Goals goals, Reading at) {
    Optional<StrutFigures.Reachable> range = side.strut().flatMap(StrutFigures::reachableAt);
    Angle nearest = range.map(r -> r.nearest(goals.camber())).orElse(at.camber());
    double off = Math.abs(nearest.degrees() - goals.camber().degrees());
    boolean met = off <= (range.isPresent() ? PASS_DEG : CAMBER_MET_DEG);
    boolean needsMore = nearest.compareTo(goals.camber()) > 0;
    String got =
        range
            .map(
                r ->
                    "Camber "
                        + Numbers.fixed(r.from().degrees(), 2)
                        + " to "
                        + Degrees.with(r.to())
                        + " by the knuckle bolt")
            .orElse("Camber " + Degrees.with(at.camber()) + plusMinus(side, false));
    String advice =
        met
            ? "."
            : needsMore
                ? ". More inboard offset or less rotation makes it more negative."
                : ". Less inboard offset or more rotation makes it less negative.";
    return new Finding(
        side.side().word() + ".aim-camber",
        met ? Severity.NOTE : Severity.CAUTION,
        range.isPresent() ? "camber nearest to the aim" : "camber at the chosen setting",
        nearest.degrees(),
        goals.camber().degrees(),
        "deg",
        source(goals.camberGiven(), "camber", side),
        got
            + (side.estimate() ? ", estimated" : "")
            + "; wanted "
            + Degrees.plain(goals.camber())
            + " deg"
            + advice);
  }

  /**
   * Each setting past the limit; where none is, the nearest to it. Ids count the settings, so that
   * they are the same in every unit and do not change when one is measured anew.
   */
  private static List<Finding> limits(SideAlignment side, Goals goals) {
    List<SideAlignment.AtSetting> read =
        side.settings().stream().filter(s -> s.reading().isPresent()).toList();
    double limit = goals.camberLimit().degrees();
    List<SideAlignment.AtSetting> past =
        read.stream().filter(s -> camber(s).degrees() < limit - PASS_DEG).toList();
    List<SideAlignment.AtSetting> told =
        past.isEmpty()
            ? read.stream().min(Comparator.comparing(AimFindings::camber)).stream().toList()
            : past;
    return told.stream()
        .map(
            s ->
                new Finding(
                    side.side().word()
                        + ".camber-limit."
                        + Settings.id(side.job().plate().slot(), s.settingMm()),
                    past.isEmpty() ? Severity.NOTE : Severity.CAUTION,
                    "camber at " + Settings.words(side.job().plate().slot(), s.settingMm()),
                    camber(s).degrees(),
                    limit,
                    "deg",
                    source(goals.limitGiven(), "camber_limit", side),
                    past.isEmpty()
                        ? "No setting passes the camber limit."
                        : "Camber "
                            + Degrees.with(camber(s))
                            + " there, past the limit of "
                            + Degrees.plain(goals.camberLimit())
                            + " deg. Do not use this setting, or bring the knuckle bolt back."))
        .toList();
  }

  private static Angle camber(SideAlignment.AtSetting setting) {
    return setting.reading().orElseThrow().camber();
  }

  /** Left against right. */
  static List<Finding> cross(JobAlignment.Cross cross) {
    return List.of(
        cross("caster", "The car pulls to the side with less caster.", cross.caster()),
        cross(
            "camber", "The car pulls to the side with the more positive camber.", cross.camber()));
  }

  private static Finding cross(String figure, String effect, Angle leftMinusRight) {
    double degrees = Math.abs(leftMinusRight.degrees());
    boolean much = degrees > CROSS_DEG + PASS_DEG;
    return new Finding(
        "both.cross-" + figure,
        much ? Severity.CAUTION : Severity.NOTE,
        figure + ", left against right",
        degrees,
        CROSS_DEG,
        "deg",
        PRACTICE,
        "Left minus right: "
            + Degrees.with(leftMinusRight)
            + (much ? ". " + effect + " Look for what differs between both towers." : "."));
  }
}
