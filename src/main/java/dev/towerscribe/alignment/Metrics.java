package dev.towerscribe.alignment;

/**
 * What a bay reads, and what follows from the points. Angles in radians, lengths in mm; signs as in
 * {@link Pose}.
 *
 * @param caster caster
 * @param camber camber
 * @param inclination kingpin inclination
 * @param toe this wheel's toe
 * @param scrubMm scrub radius
 * @param trailMm mechanical trail
 * @param damperMm damper length
 * @param contactYMm the contact point's distance from the car's centre plane; half the track
 */
public record Metrics(
    double caster,
    double camber,
    double inclination,
    double toe,
    double scrubMm,
    double trailMm,
    double damperMm,
    double contactYMm) {
  /**
   * Reads a pose.
   *
   * @param pose where the upright is
   * @return its metrics
   */
  public static Metrics of(Pose pose) {
    return new Metrics(
        pose.caster(),
        pose.camber(),
        pose.inclination(),
        pose.toe(),
        pose.scrubRadiusMm(),
        pose.trailMm(),
        pose.damperMm(),
        pose.contact().y());
  }
}
