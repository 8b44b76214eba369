package dev.towerscribe.sheet.shop;

import dev.towerscribe.drawing.Page;
import dev.towerscribe.geometry.Vec2;

/**
 * A drawing at 1:1 for files that machines read.
 *
 * @param page the sheet
 * @param datum the page point where the part's own X and Y are 0: the origin of CAD files
 */
public record MachineSheet(Page page, Vec2 datum) {}
