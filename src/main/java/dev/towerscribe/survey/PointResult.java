package dev.towerscribe.survey;

import dev.towerscribe.geometry.Vec3;

/**
 * A point of the car.
 *
 * @param point which
 * @param at its place: a station's in vehicle axes, a side's point as if on the left
 * @param spread its covariance in the same axes, at the uncertainties stated or widened
 * @param found whether the readings fix it; if not, place and covariance hold in part only
 * @param given whether its place was given and not looked for
 */
public record PointResult(
    SurveyPoint point, Vec3 at, PointCovariance spread, boolean found, boolean given) {}
