package dev.towerscribe.alignment;

import dev.towerscribe.model.Aims;
import dev.towerscribe.model.SideJob;
import dev.towerscribe.quantity.Angle;
import dev.towerscribe.quantity.Lengths;
import java.util.Optional;

/**
 * What is aimed at, nothing left open: what the job does not say follows from what the car is for.
 * The figures by use are common practice, no source.
 *
 * @param casterFrom least caster wanted
 * @param casterTo most caster wanted, if there is a most
 * @param camber camber wanted
 * @param camberLimit most negative camber allowed
 * @param casterGiven whether the job gives the caster window itself
 * @param camberGiven whether the job gives the camber itself
 * @param limitGiven whether the job gives the limit itself
 */
public record AlignmentTargets(
    Angle casterFrom,
    Optional<Angle> casterTo,
    Angle camber,
    Angle camberLimit,
    boolean casterGiven,
    boolean camberGiven,
    boolean limitGiven) {
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
        casterGiven,
        aims.camber().isPresent(),
        aims.camberLimit().isPresent());
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
