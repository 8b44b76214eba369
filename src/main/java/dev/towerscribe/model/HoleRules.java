package dev.towerscribe.model;

/**
 * How holes are sized and judged.
 *
 * @param fit clearance series
 * @param edgeRule least distances
 */
public record HoleRules(Fit fit, EdgeRule edgeRule) {}
