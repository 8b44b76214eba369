package dev.towerscribe.placement;

/**
 * How far a search goes. Rotations past a right angle and offsets past the opening's own size bring
 * nothing that smaller ones do not.
 *
 * @param rotationFrom degrees
 * @param rotationTo degrees
 * @param rearwardFrom mm
 * @param rearwardTo mm
 * @param inboardFrom mm
 * @param inboardTo mm
 */
public record SearchRange(
    double rotationFrom,
    double rotationTo,
    double rearwardFrom,
    double rearwardTo,
    double inboardFrom,
    double inboardTo) {
  /** From straight across to straight back, and 30 mm each way. */
  public static final SearchRange USUAL = new SearchRange(0, 90, -30, 30, -30, 30);
}
