package dev.towerscribe.sheet.tower;

import dev.towerscribe.geometry.Box;
import dev.towerscribe.model.Print;
import dev.towerscribe.sheet.text.JobInfo;
import java.util.Optional;

/**
 * How the printable part of a page is shared out, from the top: words for side and face, arrows, a
 * band for accepted stops, the drawing with a strip for the upright check bar at its left, and the
 * foot with the level check bar and what to do. All page mm.
 *
 * @param printable paper less its margin
 * @param head side and face
 * @param arrows arrows and the key of tiles
 * @param stops band of accepted stops, if there are any
 * @param strip upright check bar
 * @param drawing where the tower shows
 * @param foot level check bar and notes
 */
record SheetZones(
    Box printable, Box head, Box arrows, Optional<Box> stops, Box strip, Box drawing, Box foot) {
  private static final double HEAD_MM = 25;
  private static final double ARROWS_MM = 12;
  private static final double STRIP_MM = 12;
  private static final double FOOT_MM = 33;
  private static final double GAP_MM = 1.5;

  /** What may be printed on. */
  static Box printable(Print print) {
    return new Box(0, 0, print.paper().widthMm(), print.paper().heightMm())
        .grown(-print.marginMm());
  }

  static SheetZones of(Print print, JobInfo info) {
    Box all = printable(print);
    double y = all.maxY() - HEAD_MM;
    Box head = new Box(all.minX(), y, all.maxX(), all.maxY());
    Box arrows = new Box(all.minX(), y - ARROWS_MM, all.maxX(), y);
    y -= ARROWS_MM;
    Optional<Box> stops = Optional.empty();
    if (!info.acceptedStops().isEmpty()) {
      double height = StopBand.of(info, all.width()).heightMm();
      stops = Optional.of(new Box(all.minX(), y - height, all.maxX(), y));
      y -= height + GAP_MM;
    }
    Box foot = new Box(all.minX(), all.minY(), all.maxX(), all.minY() + FOOT_MM);
    Box drawing = new Box(all.minX() + STRIP_MM, foot.maxY(), all.maxX(), y);
    Box strip = new Box(all.minX(), foot.maxY(), drawing.minX(), y);
    return new SheetZones(all, head, arrows, stops, strip, drawing, foot);
  }
}
