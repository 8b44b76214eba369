/**
 * The pages to fill in beside the car: which points to tape, from where to where, in figures that
 * are drawn from an invented strut, and what each row is called in the survey file.
 */
package dev.towerscribe.sheet.worksheet;
