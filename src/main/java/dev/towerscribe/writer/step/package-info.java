/**
 * Flat parts as solids in STEP files (ISO 10303-21, schema of application protocol 214), lengths in
 * mm, and the proof that a written file holds the very part. The writer and the proof share no code
 * but points and vectors.
 */
package dev.towerscribe.writer.step;
