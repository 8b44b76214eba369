package dev.towerscribe.sheet.text;

import dev.towerscribe.drawing.Item;
import java.util.List;

/** What stands round a page's body: its head and its foot. */
public interface PageFrame {
  /**
   * Width of the paper.
   *
   * @return mm
   */
  double paperWidthMm();

  /**
   * Height of the paper.
   *
   * @return mm
   */
  double paperHeightMm();

  /**
   * Left edge of the body.
   *
   * @return page mm
   */
  double leftMm();

  /**
   * Width of the body.
   *
   * @return mm
   */
  double widthMm();

  /**
   * Upper edge of the body.
   *
   * @return page mm
   */
  double bodyTopMm();

  /**
   * Lower edge of the body.
   *
   * @return page mm
   */
  double bodyBottomMm();

  /**
   * Draws head and foot.
   *
   * @param number which page, from 1
   * @param count how many pages there are
   * @param out where the shapes go
   */
  void draw(int number, int count, List<Item> out);
}
