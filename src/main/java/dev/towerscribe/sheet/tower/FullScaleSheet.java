package dev.towerscribe.sheet.tower;

import dev.towerscribe.drawing.Item;
import dev.towerscribe.drawing.Proof;
import dev.towerscribe.geometry.Box;
import dev.towerscribe.geometry.Vec2;
import java.util.List;

/**
 * One full-scale drawing before it is put on paper, on one page or on several tiles.
 *
 * @param stem file name without tile or ending
 * @param title outline entry
 * @param label short page label
 * @param says words of head and foot
 * @param essentials what must show, with the origin at (0, 0), page directions
 * @param wishes what should show too if all still fits one page, the most wanted first
 * @param others places that joins of tiles stay away from
 * @param largestMm largest thing that some tile must show whole
 * @param lineOffsetMm page x of the fore-aft line from the origin
 * @param painter draws it
 */
record FullScaleSheet(
    String stem,
    String title,
    String label,
    SheetBorder.Says says,
    Box essentials,
    List<Box> wishes,
    List<Vec2> others,
    double largestMm,
    double lineOffsetMm,
    Painter painter) {
  /** What must show with as many wishes as fit a window. */
  Box wished(Box window) {
    Box box = essentials;
    for (Box wish : wishes) {
      Box more = box.union(wish);
      if (more.width() <= window.width() && more.height() <= window.height()) {
        box = more;
      }
    }
    return box;
  }

  /** Draws for one window of one page. */
  interface Painter {
    /**
     * Draws.
     *
     * @param origin page position of the drawing's origin
     * @param window what shows
     * @param joins crosses shared with neighbouring tiles
     * @return the shapes
     */
    Painted paint(Vec2 origin, Box window, List<Join> joins);
  }

  /**
   * A cross that two tiles share.
   *
   * @param name printed beside it on both
   * @param at its place from the drawing's origin
   */
  record Join(String name, Vec2 at) {}

  /**
   * What was drawn.
   *
   * @param items shapes
   * @param proofs what must be found in the file
   * @param unplaced names that should stand on the page and found no room
   */
  record Painted(List<Item> items, List<Proof> proofs, List<String> unplaced) {}
}
