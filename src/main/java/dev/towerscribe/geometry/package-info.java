/**
 * Plane and space geometry: immutable points, exact boundaries of straight lines and circular arcs,
 * and what can be done with them. Lengths mm. Knows nothing of cars. The only user of JTS.
 */
package dev.towerscribe.geometry;
