/**
 * The full-scale sheets of a tower that are laid on the metal, from above and from below, its notch
 * drawing, the page that a printer is measured by, and the small figures of a whole tower. Only
 * {@code SheetFrame} knows which way a sheet looks at the plan.
 */
package dev.towerscribe.sheet.tower;
