/**
 * What an alignment bay read, beside what was predicted: the differences, what would explain them,
 * and the text of the record that keeps both with the job. Angles in radians and lengths in mm, as
 * everywhere; the record's text alone is in degrees and the job's unit.
 */
package dev.towerscribe.record;
