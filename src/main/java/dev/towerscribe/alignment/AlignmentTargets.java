package dev.towerscribe.alignment;

import dev.towerscribe.finding.Sources;
import dev.towerscribe.model.Aims;
import dev.towerscribe.model.SideJob;
import dev.towerscribe.quantity.Angle;
import dev.towerscribe.quantity.Lengths;
import java.util.Optional;

/**
 * What is aimed at, nothing left open: what the job does not say follows from what the car is for.
 * The caster windows by use are common practice, no source; the camber aims and their limit are our
 * own choice.
 *
 * @param casterFrom least caster wanted
 * @param casterTo most caster wanted, if there is a most
 * @param camber camber wanted
 * @param camberLimit most negative camber allowed
 * @param casterSource where the caster window comes from: the job's key, or the car's use
 * @param camberSource where the camber comes from
 * @param limitSource where the limit comes from
 */
public record AlignmentTargets(
    Angle casterFrom,
    Optional<Angle> casterTo,
    Angle camber,
    Angle camberLimit,
    String casterSource,
    String camberSource,
    String limitSource) {
  /** A bay's reading is no finer, degrees. Common practice, no source. */
  public static final double CAMBER_MET_DEG = 0.25;

  /** Greater differences of both sides pull a car to one. Common practice, no source. */
  public static final double CROSS_DEG = 0.5;

  /** No car is set up so on purpose: one side was measured wrong. Common practice, no source. */
  public static final double CROSS_STOP_DEG = 1.5;

  /** A figure at its limit passes: rounding of an angle, degrees. */
  public static final double PASS_DEG = 1e-9;

  /** Our own choice, no source. */
  private static final Angle LIMIT = Angle.ofDegrees(-3.2);

  /**
   * Fills in what a job leaves open.
   *
   * @param aims as the job gives them
   * @return the targets
   */
  public static AlignmentTargets of(Aims aims) {
    boolean both = aims.use() == Aims.Use.ROAD_AND_TRACK;
    double from = aims.use() == Aims.Use.ROAD ? 4.0 : 5.5;
    Optional<Angle> to = both ? Optional.of(Angle.ofDegrees(6.0)) : Optional.empty();
    double camber =
        switch (aims.use()) {
          case ROAD -> -1.8;
          case ROAD_AND_TRACK -> -2.4;
          case TRACK -> -2.75;
        };
    boolean casterGiven = aims.casterFrom().isPresent();
    Angle camberAim = aims.camber().orElse(Angle.ofDegrees(camber));
    // An aim of the job's own past the usual limit moves the limit with it.
    Angle usual = camberAim.compareTo(LIMIT) < 0 ? camberAim : LIMIT;
    return new AlignmentTargets(
        aims.casterFrom().orElse(Angle.ofDegrees(from)),
        casterGiven ? aims.casterTo() : to,
        camberAim,
        aims.camberLimit().orElse(usual),
        source(aims, "caster", casterGiven, Sources.PRACTICE),
        source(aims, "camber", aims.camber().isPresent(), Sources.OWN_CHOICE),
        source(aims, "camber_limit", aims.camberLimit().isPresent(), Sources.OWN_CHOICE));
  }

  private static String source(Aims aims, String key, boolean given, String byUse) {
    return given ? "job: aims." + key : "by use %s; %s".formatted(aims.use().word(), byUse);
  }

  /**
   * A side's targets.
   *
   * @param job the side
   * @return its own; those of a road and track car where the job says nothing
   */
  public static AlignmentTargets of(SideJob job) {
    Optional<Angle> open = Optional.empty();
    return of(job.aims().orElse(new Aims(Aims.Use.ROAD_AND_TRACK, open, open, open, open)));
  }

  /**
   * Whether a caster is outside the window.
   *
   * @param caster a caster
   * @return the end of the window that it misses; empty where it misses none
   */
  public Optional<Angle> missedBy(Angle caster) {
    return caster.degrees() < casterFrom.degrees() - PASS_DEG
        ? Optional.of(casterFrom)
        : casterTo.filter(to -> caster.degrees() > to.degrees() + PASS_DEG);
  }

  /**
   * Whether a camber is past the limit.
   *
   * @param angle a camber
   * @return true if it is more negative
   */
  public boolean pastLimit(Angle angle) {
    return angle.degrees() < camberLimit.degrees() - PASS_DEG;
  }

  /**
   * The caster window in words.
   *
   * @return for instance "5.5 to 6 deg" or "at least 4 deg"
   */
  public String casterWords() {
    String from = Lengths.plainDegrees(casterFrom);
    return casterTo
        .map(to -> from + " to " + Lengths.plainDegrees(to) + " deg")
        .orElse("at least " + from + " deg");
  }
}
