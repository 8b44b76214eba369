/**
 * Pages as SVG, one user unit being one millimetre, and the proof that a written file shows what it
 * must. The writer and the proof share no code.
 */
package dev.towerscribe.writer.svg;
