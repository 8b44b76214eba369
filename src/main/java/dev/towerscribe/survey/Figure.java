package dev.towerscribe.survey;

/**
 * A figure and how far it may be off.
 *
 * @param value mm, or radians for an angle
 * @param sd one standard deviation, in the same unit
 */
public record Figure(double value, double sd) {}
