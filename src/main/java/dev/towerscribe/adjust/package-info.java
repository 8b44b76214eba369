/**
 * One estimator for everything that is measured: observations of points and sizes, weighted least
 * squares by damped Gauss-Newton steps, covariances, what the observations leave open, the
 * chi-square test of all of them and data snooping of each.
 *
 * <p>Lengths mm, angles radians; "sd" is one standard deviation. Sources: Ghilani and Wolf,
 * Adjustment Computations; Baarda, A testing procedure for use in geodetic networks, 1968, both
 * from memory. Decompositions and distributions are Hipparchus's.
 */
package dev.towerscribe.adjust;
