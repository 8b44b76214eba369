package dev.towerscribe.layout;

import dev.towerscribe.geometry.Region;
import dev.towerscribe.geometry.Vec2;

/**
 * What moves through the opening as the bearing runs from one end of the slot to the other.
 *
 * @param from where the strut rod's axis meets the tower plane with the bearing at the slot's least
 *     setting and the strut as measured, plan
 * @param to the same at its greatest setting
 * @param radiusMm half the moving diameter, widened by the greatest slant, plus the clearance
 * @param region the swept region, plan: over the slot, and where the strut's mechanism is known
 *     over travel and steer too
 * @param leanKnown false when the strut's points are not given and the strut rod was taken along
 *     the plane's normal
 * @param slantDegrees greatest angle between strut rod and normal, degrees
 * @param poses how many places of the strut over travel and steer were counted in; 0 if only the
 *     strut as measured was
 */
public record Sweep(
    Vec2 from,
    Vec2 to,
    double radiusMm,
    Region region,
    boolean leanKnown,
    double slantDegrees,
    int poses) {}
