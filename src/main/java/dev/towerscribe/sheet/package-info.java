/**
 * The pages of a pack: full-scale sheets to lay on the metal, and the text pages that go with them.
 * A page is made of shapes in millimetres ({@link dev.towerscribe.drawing}); nothing here knows a
 * file format.
 */
package dev.towerscribe.sheet;
