/**
 * Drilled holes as measured: where they lie by least squares from caliper readings ({@link
 * dev.towerscribe.drilled.Network}), how they fit the plan, whether the plate goes on with its
 * bolts, how far it can still move, the least enlargement where it does not, and all of it together
 * ({@link dev.towerscribe.drilled.Drilled}). Every +/- is one standard deviation.
 *
 * <p>Points are plan points (fore, in) of one tower, mm. A turn is positive from fore toward in, as
 * a mount's rotation is. A plate's pattern is given by its holes' planned places in plan, never in
 * the plate's own frame, which may be of the other hand: so the move that takes the plan to what
 * was drilled is a turn and a shift, near to none.
 */
package dev.towerscribe.drilled;
