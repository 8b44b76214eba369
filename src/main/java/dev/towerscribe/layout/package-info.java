/**
 * Where everything goes on a tower: hole centres, cut lines, sweeps, notches, and the checks of
 * each. Every calculation returns what it went through, and reports and drawings print those same
 * figures. Plan coordinates (fore, in) throughout; see {@link dev.towerscribe.model}.
 */
package dev.towerscribe.layout;
