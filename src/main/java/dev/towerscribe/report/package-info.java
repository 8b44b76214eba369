/**
 * What the program has to say, before anyone decides how it looks: each subject's results as a
 * sequence of sealed blocks. A screen, a file, a page or a browser is a renderer of the same
 * blocks, so a sentence or a figure is made here once and reads the same wherever it is shown.
 * Nothing in here knows of pixels, fonts, paper or columns of characters, except for the one
 * renderer to plain text.
 */
package dev.towerscribe.report;
