/**
 * Whether a plate could stand somewhere, for a search that asks hundreds of thousands of times. The
 * margins are those of {@link dev.towerscribe.layout}: taken as they are where they are cheap,
 * bounded where a bound settles the matter, asked for where it does not. Nothing here says anything
 * of a placement that the checks would not say.
 */
package dev.towerscribe.layout.quick;
