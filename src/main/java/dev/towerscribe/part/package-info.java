/**
 * Parts to be made, resolved from a job that has been laid out: the plate, its slider, the drilling
 * jig. Each with its solid, its features and their tolerances, its mass and what was assumed, for
 * sheets, data and writers alike.
 */
package dev.towerscribe.part;
