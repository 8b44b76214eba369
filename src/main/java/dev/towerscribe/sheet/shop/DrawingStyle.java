package dev.towerscribe.sheet.shop;

import dev.towerscribe.model.Paper;
import dev.towerscribe.model.Projection;
import dev.towerscribe.quantity.LengthUnit;

/**
 * How drawings are made.
 *
 * @param paper paper size
 * @param projection how views lie to each other
 * @param unit the unit that counts
 * @param both whether the other unit is shown too
 */
public record DrawingStyle(Paper paper, Projection projection, LengthUnit unit, boolean both) {}
