package dev.towerscribe.layout;

import dev.towerscribe.geometry.Vec2;

/**
 * A hole for a saw blade, wholly inside the waste.
 *
 * @param at centre, plan
 * @param diameterMm its drill
 */
public record StarterHole(Vec2 at, double diameterMm) {}
