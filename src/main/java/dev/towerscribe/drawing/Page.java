package dev.towerscribe.drawing;

import dev.towerscribe.geometry.Box;
import dev.towerscribe.geometry.PrintScale;
import dev.towerscribe.geometry.Vec2;
import java.util.List;
import java.util.Optional;

/**
 * One printed page.
 *
 * @param fileStem name for a file of its own, without ending: "left-underside"
 * @param title outline entry: "Left tower, underside"
 * @param label short page label: "L-under"
 * @param widthMm paper width
 * @param heightMm paper height
 * @param fullScale whether lengths on it are to be cut by (such a page also becomes an SVG)
 * @param scale the printer's scale, undone when drawing
 * @param items shapes, in any order; layers decide what lies on top
 * @param window shapes shown only within a box, for tiles of a larger drawing
 * @param proofs what must be found in the written file
 */
public record Page(
    String fileStem,
    String title,
    String label,
    double widthMm,
    double heightMm,
    boolean fullScale,
    PrintScale scale,
    List<Item> items,
    Optional<Window> window,
    List<Proof> proofs) {
  /**
   * Part of a larger drawing.
   *
   * @param box what shows, page mm
   * @param items its shapes, page mm; cut off at the box
   */
  public record Window(Box box, List<Item> items) {
    /** Copies the list. */
    public Window {
      items = List.copyOf(items);
    }
  }

  /** Copies the lists. */
  public Page {
    items = List.copyOf(items);
    proofs = List.copyOf(proofs);
    if (!fileStem.matches("[a-z0-9-]+")) {
      throw new IllegalArgumentException("not a file stem: " + fileStem);
    }
  }

  /**
   * The page's centre, about which a print scale is undone.
   *
   * @return page mm
   */
  public Vec2 centre() {
    return new Vec2(widthMm / 2, heightMm / 2);
  }

  /**
   * Shapes that stand for one thing.
   *
   * @param layer what they stand for
   * @return those of the page itself, in their order
   */
  public List<Item> items(Layer layer) {
    return items.stream().filter(item -> item.layer() == layer).toList();
  }

  /**
   * Shapes of the window that stand for one thing.
   *
   * @param layer what they stand for
   * @return in their order; none without a window
   */
  public List<Item> windowItems(Layer layer) {
    return window.stream()
        .flatMap(w -> w.items().stream())
        .filter(item -> item.layer() == layer)
        .toList();
  }
}
