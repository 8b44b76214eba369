/**
 * A page as a list of shapes in millimetres, origin at the lower left corner of the paper, x to the
 * right, y up. Circles and arcs stay what they are until a writer puts them into its format. Layers
 * carry meaning; how a pen looks is said once, here, in the pen itself.
 */
package dev.towerscribe.drawing;
