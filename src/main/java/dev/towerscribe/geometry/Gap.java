package dev.towerscribe.geometry;

/**
 * The shortest way between two things.
 *
 * @param mm its length, not negative
 * @param from its end on the first thing
 * @param to its end on the second thing
 */
public record Gap(double mm, Vec2 from, Vec2 to) {}
