package dev.towerscribe.sheet.text;

import dev.towerscribe.drawing.Item;
import java.util.List;

/** A piece of a text page that takes a known height of its column and is never torn apart. */
public interface Fragment {
  /**
   * Height it takes.
   *
   * @return mm
   */
  double heightMm();

  /**
   * Draws it.
   *
   * @param leftMm left edge of the column, page mm
   * @param topMm upper edge of the block, page mm
   * @param out where its shapes go
   */
  void draw(double leftMm, double topMm, List<Item> out);
}
