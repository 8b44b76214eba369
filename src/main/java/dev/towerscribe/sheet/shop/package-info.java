/**
 * Drawings for whoever makes the parts or machines the towers: views with dimensions, tables, a
 * title block and a frame, on paper at a standard scale and at 1:1 for machines.
 */
package dev.towerscribe.sheet.shop;
