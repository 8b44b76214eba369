package dev.towerscribe.drawing;

import static org.assertj.core.api.Assertions.assertThat;

import dev.towerscribe.geometry.Contour;
import dev.towerscribe.geometry.PrintScale;
import dev.towerscribe.geometry.Vec2;
import dev.towerscribe.writer.pdf.PdfProof;
import dev.towerscribe.writer.pdf.PdfWriter;
import dev.towerscribe.writer.svg.SvgWriter;
import java.io.IOException;
import java.nio.charset.StandardCharsets;
import java.nio.file.Files;
import java.nio.file.Path;
import java.util.ArrayList;
import java.util.List;
import java.util.Optional;
import org.junit.jupiter.api.Test;

/** Writes dimensioned plates to {@code target/dimensions}, to be looked at by eye. */
class DimensionPicturesTest {
  @Test
  void writesPlatesToLookAt() throws IOException {
    List<Page> pages = new ArrayList<>();
    pages.add(page("kinds", everyKind()));
    int[] holes = {4, 8, 12, 16, 22, 30};
    for (int i = 0; i < holes.length; i++) {
      pages.add(
          page(
              "strewn-" + i,
              CrowdedPlates.random(100 + i, holes[i], CrowdedPlates.frame(0, false))));
    }
    pages.add(page("turned", CrowdedPlates.random(100, 9, CrowdedPlates.frame(33, false))));
    pages.add(page("mirrored", CrowdedPlates.random(100, 9, CrowdedPlates.frame(90, true))));
    Path folder = Files.createDirectories(Path.of("target", "dimensions"));
    byte[] bytes = PdfWriter.write("Plates to look at", pages);
    Files.write(folder.resolve("plates.pdf"), bytes);
    assertThat(PdfProof.check(bytes, pages)).isEmpty();
    for (Page page : pages) {
      byte[] svg = SvgWriter.write(page);
      Files.write(folder.resolve(page.fileStem() + ".svg"), svg);
      String text = new String(svg, StandardCharsets.UTF_8);
      for (Item item : page.items()) {
        if (item instanceof Item.Dimension dimension) {
          assertThat(text).contains(">" + dimension.words().get(0) + "<");
        }
      }
    }
  }

  private static Page page(String stem, CrowdedPlates.Plate plate) {
    List<Item> items = new ArrayList<>(plate.drawn());
    DimensionPlacer.Placement placement = plate.placed();
    items.addAll(placement.placed());
    return new Page(
        stem, stem, stem, 420, 297, true, PrintScale.TRUE, items, Optional.empty(), List.of());
  }

  /** A plain plate with each kind of dimension. */
  private static CrowdedPlates.Plate everyKind() {
    Vec2 o = new Vec2(150, 110);
    List<Vec2> corners =
        List.of(
            o,
            o.plus(new Vec2(120, 0)),
            o.plus(new Vec2(120, 50)),
            o.plus(new Vec2(80, 80)),
            o.plus(new Vec2(0, 80)));
    Contour outline = Contour.polygon(corners);
    List<Item> drawn = new ArrayList<>();
    drawn.add(new Item.Figure(Layer.PLATE, List.of(outline), Pen.FINAL_CUT, Ink.NONE));
    Vec2 hole = o.plus(new Vec2(30, 40));
    drawn.add(new Item.Circle(Layer.HOLES, hole, 4.5, Pen.OUTLINE, Ink.NONE));
    Vec2 big = o.plus(new Vec2(75, 35));
    drawn.add(new Item.Circle(Layer.HOLES, big, 20, Pen.OUTLINE, Ink.NONE));
    for (Vec2 c : List.of(hole, big)) {
      double r = c.equals(hole) ? 6 : 22;
      Vec2 x = new Vec2(r, 0);
      Vec2 y = new Vec2(0, r);
      drawn.add(new Item.Line(Layer.CENTRE_LINES, c.minus(x), c.plus(x), Pen.CENTRE));
      drawn.add(new Item.Line(Layer.CENTRE_LINES, c.minus(y), c.plus(y), Pen.CENTRE));
    }
    List<DimensionRequest> requests =
        List.of(
            DimensionRequest.Linear.horizontal(corners.get(4), hole, true, List.of("30.0")),
            DimensionRequest.Linear.horizontal(hole, big, true, List.of("45.0 \u00B1 0.1")),
            DimensionRequest.Linear.horizontal(
                corners.get(4), corners.get(3), true, List.of("80.00", "[3.150]")),
            DimensionRequest.Linear.horizontal(
                corners.get(0), corners.get(1), false, List.of("120.0")),
            DimensionRequest.Linear.vertical(
                corners.get(0), corners.get(4), false, List.of("80.0")),
            DimensionRequest.Linear.vertical(corners.get(0), hole, false, List.of("40.0")),
            DimensionRequest.Linear.vertical(corners.get(1), corners.get(2), true, List.of("50.0")),
            DimensionRequest.Linear.aligned(
                corners.get(2), corners.get(3), new Vec2(1, 1), List.of("50.0")),
            DimensionRequest.Linear.horizontal(
                new Vec2(corners.get(1).x() - 6, o.y()), corners.get(1), false, List.of("6.0")),
            new DimensionRequest.AngleBetween(
                corners.get(3), corners.get(2), corners.get(4), List.of("143.1\u00B0")),
            new DimensionRequest.Diameter(hole, 4.5, Optional.empty(), List.of("\u23009.00 H13")),
            new DimensionRequest.Diameter(
                big, 20, Optional.of(new Vec2(1, -1)), List.of("\u230040.00", "[\u23001.575]")),
            new DimensionRequest.Radius(
                new dev.towerscribe.geometry.Edge.Arc(big, 20, 1, 1), List.of("R20")));
    return new CrowdedPlates.Plate(CrowdedPlates.AREA, List.of(outline), drawn, requests);
  }
}
