/**
 * Pages as PDF, drawn at full scale (one unit of the file is 1/72 inch, with no unit of its own),
 * and the proof that a written file shows what it must. The writer and the proof share no code.
 */
package dev.towerscribe.writer.pdf;
