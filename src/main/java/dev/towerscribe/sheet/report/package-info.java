/**
 * Pages of findings and figures with what is drawn beside them: cautions, findings, steps,
 * calipers, alignment, placement, drilled holes, a bay's record, strength.
 */
package dev.towerscribe.sheet.report;
