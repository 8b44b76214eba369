/**
 * What is built, valid by construction: tower, plate, bracket, tools, strut points.
 *
 * <h2>Conventions</h2>
 *
 * <ul>
 *   <li>Lengths mm, angles {@link dev.towerscribe.quantity.Angle}.
 *   <li>Vehicle axes (ISO 8855:2011): X forward, Y left, Z up.
 *   <li>Plan of a tower, the same for both sides: a {@link dev.towerscribe.geometry.Vec2} whose x
 *       is <em>fore</em> (positive forward) and whose y is <em>in</em> (positive toward the car's
 *       centre line), origin at the original strut rod centre, in the plane of the tower top. The
 *       left tower's +in is vehicle -Y, the right tower's is +Y.
 *   <li>Plate frame: x along the slot, the way the bearing moves as the setting grows; y to its
 *       left seen from above on the left side. At rotation q, in (fore, in): x axis = (-sin q, cos
 *       q), y axis = (cos q, sin q).
 *   <li>Offset: rearward and inboard are positive; the plate's centre is at (-rearward, +inboard).
 * </ul>
 */
package dev.towerscribe.model;
