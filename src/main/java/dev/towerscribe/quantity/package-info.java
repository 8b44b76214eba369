/**
 * Angles, length units, named tolerances and number formatting. Lengths are millimetres and angles
 * are radians everywhere inside the program; other units exist only at its edges (files, screens).
 */
package dev.towerscribe.quantity;
