/**
 * Advisory strength figures for a plate bolted to a tower: what each bolt would have to hold at
 * full bump, against published proof loads, and how hard the plate presses compared with the old
 * mount.
 *
 * <p>Never a certification. The model is small on purpose (rigid plate, elastic bolts, one load
 * along the strut), every intermediate is named in {@link dev.towerscribe.strength.StrengthReport},
 * and everything that was assumed is said there in words. The tower's own sheet, its welds and the
 * plate are not judged.
 *
 * <p>Forces N, lengths mm, moments N mm, stresses MPa (N/mm2). In the plane: (fore, in) of the
 * plan, the same for both towers. Normal to it: positive along the tower's upward normal.
 */
package dev.towerscribe.strength;
