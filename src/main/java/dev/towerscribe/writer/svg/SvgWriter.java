package dev.towerscribe.writer.svg;

import dev.towerscribe.drawing.Page;
import java.nio.charset.StandardCharsets;

/** Writes one page as SVG at full scale, the same bytes for the same page. */
public final class SvgWriter {
  private SvgWriter() {}

  /**
   * Writes a page. Width and height are stated in mm and one user unit is one mm; every layer in
   * use is a group named after it, lowest first.
   *
   * @param page the page
   * @return the file, UTF-8
   * @throws IllegalArgumentException if a text has a character that the sheet font cannot write
   */
  public static byte[] write(Page page) {
    return ("<?xml version=\"1.0\" encoding=\"UTF-8\"?>\n" + SvgPainter.paint(page))
        .getBytes(StandardCharsets.UTF_8);
  }
}
