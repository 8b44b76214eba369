/**
 * Drawings as DXF in millimetres at 1:1, one drawing unit being one millimetre, and the proof that
 * a written file is sound and shows what it must. Circles, arcs and straight lines stay what they
 * are. The writer and the proof share no code.
 */
package dev.towerscribe.writer.dxf;
