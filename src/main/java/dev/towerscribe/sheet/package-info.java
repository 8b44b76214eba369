/**
 * A pack, put together from the pages that its rooms make: {@code sheet.text} sets words and
 * tables, {@code sheet.tower} draws the 1:1 sheets, {@code sheet.report} the pages of findings and
 * figures. {@code sheet.shop} (drawings of what is to be made) and {@code sheet.worksheet} (pages
 * to survey a car with) are not part of a pack. A page is made of shapes in millimetres ({@link
 * dev.towerscribe.drawing}); no room knows a file format.
 */
package dev.towerscribe.sheet;
