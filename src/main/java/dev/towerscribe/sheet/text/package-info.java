/**
 * Pages of words: sizes of type, head and foot, tables, columns and the flow of all these over as
 * many pages as they need. The lowest of the rooms of {@code sheet}; the others set their words by
 * it. Lengths are page mm, y up.
 */
package dev.towerscribe.sheet.text;
