/**
 * From readings as taken, tape, plumb bob, calipers, rule and angle finder, to the points and tower
 * figures of a job with their standard deviations: weighted least squares, one network for the car
 * and one for each tower. Finds readings that cannot be right, readings that nothing checks, and
 * points that nothing fixes. Car points are in vehicle axes inside a network and written as on the
 * left in results.
 */
package dev.towerscribe.survey;
