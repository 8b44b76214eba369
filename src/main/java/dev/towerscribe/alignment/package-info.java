/**
 * The strut mechanism in closed form, and what it says of a wheel: caster, camber, kingpin
 * inclination, toe, scrub radius, trail, over travel and steer, with how sure each is.
 *
 * <p>Everything is calculated on the left side, in vehicle axes (ISO 8855:2011: X forward, Y left,
 * Z up); a right-hand strut is mirrored first, so that every sign means the same on both sides:
 * camber positive when the wheel's top leans outward, toe positive for toe-in, caster positive when
 * the upper pivot is rearward of the lower, kingpin inclination positive when it is inboard.
 */
package dev.towerscribe.alignment;
