package dev.towerscribe.writer.dxf;

import dev.towerscribe.drawing.Layer;
import dev.towerscribe.drawing.Page;
import dev.towerscribe.geometry.Vec2;
import java.nio.charset.StandardCharsets;
import java.util.Arrays;
import java.util.List;

/** Writes one drawing as DXF at full scale, the same bytes for the same drawing. */
public final class DxfWriter {
  private DxfWriter() {}

  /**
   * Writes a drawing. One unit is one mm, x to the right, y up; the paper's size only sets extents
   * and limits. Layers in use are named after {@link Layer#id()} in capitals; their order is the
   * order of entities.
   *
   * <p>A contour becomes its lines and arcs one after another, a whole circle a CIRCLE. Tints and
   * white areas, which stand for no edge, are left out. A black area becomes a SOLID if it has
   * three or four corners and no white lettering lies on it; otherwise its outline is drawn, so
   * that lettering is legible on any ground.
   *
   * @param page the drawing, without a window and with a true print scale
   * @param version the form
   * @param datum the page point that the file's origin stands for: a part's datum
   * @return the file, ASCII, lines ending in carriage return and line feed
   * @throws IllegalArgumentException if the page has a window or a print scale, which would make
   *     lengths untrue or leave parts out, if a radius or a height of text is not positive, or if a
   *     text has a character that the sheet font cannot write
   */
  public static byte[] write(Page page, DxfVersion version, Vec2 datum) {
    if (!page.scale().isTrue()) {
      throw new IllegalArgumentException("a DXF is not made for a printer's scale");
    }
    if (page.window().isPresent()) {
      throw new IllegalArgumentException("a DXF shows a whole drawing, not a window of it");
    }
    List<Layer> layers =
        Arrays.stream(Layer.values()).filter(layer -> !page.items(layer).isEmpty()).toList();
    DxfFrame frame = new DxfFrame(page, version, datum, layers);
    DxfGroups body = new DxfGroups(version);
    frame.tablesAndBlocks(body);
    body.beginSection("ENTITIES").from(datum);
    DxfPainter painter = new DxfPainter(page.items(), body, frame);
    layers.forEach(layer -> page.items(layer).forEach(item -> item.accept(painter)));
    body.endSection().from(Vec2.ZERO);
    frame.objects(body);
    body.text(0, "EOF");
    // Written last though it stands first: it names the first handle not in use.
    DxfGroups header = new DxfGroups(version);
    frame.header(header);
    return (header.toString() + body).getBytes(StandardCharsets.US_ASCII);
  }
}
