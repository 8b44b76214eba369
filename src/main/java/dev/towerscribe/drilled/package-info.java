/**
 * Drilled holes: caliper readings to their places by weighted least squares ({@link
 * dev.towerscribe.drilled.Network}), to whether the plate goes on, and to what the tower now really
 * has ({@link dev.towerscribe.drilled.Drilled}). Places are plan points (fore, in), mm; every +/-
 * is one standard deviation. Hipparchus for its matrices.
 */
package dev.towerscribe.drilled;
