/**
 * Drawings for whoever makes a part or a fixture: the plate, its slider, a drilling jig, the
 * drilled tower. Frame after ISO 5457, title-block fields after ISO 7200, scales after ISO 5455.
 * The same composition serves paper, at a scale, and files for machines, always at 1:1.
 */
package dev.towerscribe.sheet.shop;
