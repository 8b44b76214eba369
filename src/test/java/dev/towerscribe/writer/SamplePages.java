package dev.towerscribe.writer;

import dev.towerscribe.drawing.Align;
import dev.towerscribe.drawing.DimensionKind;
import dev.towerscribe.drawing.Ink;
import dev.towerscribe.drawing.Item;
import dev.towerscribe.drawing.Layer;
import dev.towerscribe.drawing.Page;
import dev.towerscribe.drawing.Pen;
import dev.towerscribe.drawing.Proof;
import dev.towerscribe.geometry.Box;
import dev.towerscribe.geometry.Contour;
import dev.towerscribe.geometry.Edge.Arc;
import dev.towerscribe.geometry.PrintScale;
import dev.towerscribe.geometry.Vec2;
import dev.towerscribe.quantity.Angle;
import java.util.ArrayList;
import java.util.List;
import java.util.Optional;
import java.util.Random;

/** Pages for the writers' tests: one with every kind of shape, and random ones. */
public final class SamplePages {
  /** Printers to test with: true, and the ways of being wrong. */
  public static final List<PrintScale> SCALES =
      List.of(
          PrintScale.TRUE,
          new PrintScale(1.013, 0.994),
          new PrintScale(0.97, 0.97),
          new PrintScale(1.013, 0.994, Angle.ofDegrees(0.4)),
          new PrintScale(1, 1, Angle.ofDegrees(-3)));

  private SamplePages() {}

  /** One of each part that a dimension may have. */
  private static Item dimension() {
    return new Item.Dimension(
        DimensionKind.LINEAR,
        List.of(new Vec2(20, 45), new Vec2(48, 45)),
        List.of("28.0"),
        List.of(
            new Item.Line(Layer.DIMENSIONS, new Vec2(20, 50), new Vec2(48, 50), Pen.THIN),
            new Item.ArcLine(Layer.DIMENSIONS, new Arc(new Vec2(34, 40), 5, 0, 2), Pen.THIN),
            new Item.Polyline(
                Layer.DIMENSIONS,
                List.of(new Vec2(20, 50), new Vec2(23, 50.5), new Vec2(23, 49.5)),
                true,
                Pen.NONE,
                Ink.BLACK),
            new Item.Text(
                Layer.DIMENSIONS,
                new Vec2(34, 51),
                3.5,
                Align.MIDDLE,
                Angle.ZERO,
                "28.0",
                Ink.BLACK)));
  }

  /** Every kind of shape, pen, fill and alignment, with and without a window. */
  public static Page everything(PrintScale scale) {
    List<Item> items = new ArrayList<>();
    List<Proof> proofs = new ArrayList<>();
    double y = 280;
    for (Pen pen : Pen.values()) {
      items.add(new Item.Line(Layer.NOTES, new Vec2(20, y), new Vec2(80, y), pen));
      items.add(text(new Vec2(84, y - 1), 2.5, Align.START, 0, pen.name()));
      y -= 7;
    }
    items.add(
        new Item.Figure(
            Layer.WASTE,
            List.of(
                Contour.circle(new Vec2(150, 245), 35),
                Contour.circle(new Vec2(150, 245), 25),
                Contour.sweptDisc(new Vec2(140, 240), new Vec2(160, 250), 8)),
            Pen.THIN,
            Ink.PALE));
    items.add(
        new Item.Figure(
            Layer.FINAL_CUT,
            List.of(Contour.sweptDisc(new Vec2(40, 150), new Vec2(60, 190), 14)),
            Pen.FINAL_CUT,
            Ink.NONE));
    items.add(new Item.Circle(Layer.HOLES, new Vec2(50, 170), 4.5, Pen.OUTLINE, Ink.WHITE));
    proofs.add(new Proof.RoundHole("hole A", new Vec2(50, 170), 4.5));
    items.add(new Item.Circle(Layer.HOLES, new Vec2(50, 170), 1.5, Pen.FINE, Ink.NONE));
    items.add(new Item.Circle(Layer.STARTER_HOLES, new Vec2(80, 170), 3, Pen.NONE, Ink.BLACK));
    items.add(new Item.ArcLine(Layer.MARK, new Arc(new Vec2(110, 165), 22, -0.4, 2.9), Pen.CENTRE));
    items.add(
        new Item.ArcLine(Layer.MARK, new Arc(new Vec2(110, 165), 15, 2.0, -4.4), Pen.ROUGH_CUT));
    items.add(
        new Item.Polyline(
            Layer.KEEP_OUTS,
            List.of(
                new Vec2(150, 150),
                new Vec2(190, 190),
                new Vec2(150, 190),
                new Vec2(190, 150),
                new Vec2(170, 200)),
            true,
            Pen.OUTLINE,
            Ink.PALE));
    items.add(
        new Item.Polyline(
            Layer.PLATE,
            List.of(new Vec2(20, 120), new Vec2(40, 140), new Vec2(60, 120)),
            false,
            Pen.HIDDEN,
            Ink.NONE));
    items.add(
        new Item.Polyline(
            Layer.NOTES,
            List.of(new Vec2(70, 110), new Vec2(190, 110), new Vec2(190, 130), new Vec2(70, 130)),
            true,
            Pen.NONE,
            Ink.BLACK));
    items.add(
        new Item.Text(
            Layer.NOTES,
            new Vec2(130, 115),
            10,
            Align.MIDDLE,
            Angle.ZERO,
            "LEFT UNDERSIDE",
            Ink.WHITE));
    items.add(
        text(new Vec2(105, 100), 3.5, Align.START, 0, "start <&'\"> &lt; 12 \u00B1 0.1\u00B0"));
    items.add(text(new Vec2(105, 94), 3.5, Align.MIDDLE, 0, "middle \u00D89 \u2192 \u2265 \u20AC"));
    items.add(text(new Vec2(105, 88), 2.47, Align.END, 0, "end \u017Elu\u0165 \u0416\u03A9\u03B1"));
    items.add(new Item.Line(Layer.CENTRE_LINES, new Vec2(105, 84), new Vec2(105, 106), Pen.FINE));
    items.add(text(new Vec2(20, 60), 5, Align.START, 90, "FORWARD"));
    items.add(text(new Vec2(30, 60), 5, Align.MIDDLE, 180, "OUTBOARD"));
    items.add(text(new Vec2(50, 60), 5, Align.END, 33, "turned"));
    items.add(new Item.Line(Layer.CHECK_BARS, new Vec2(20, 20), new Vec2(170, 20), Pen.OUTLINE));
    proofs.add(new Proof.Bar("bar across", new Vec2(20, 20), new Vec2(170, 20)));
    items.add(new Item.Line(Layer.CHECK_BARS, new Vec2(15, 30), new Vec2(15, 260), Pen.OUTLINE));
    proofs.add(new Proof.Bar("bar along", new Vec2(15, 260), new Vec2(15, 30)));
    items.add(dimension());
    List<Item> windowed = new ArrayList<>();
    windowed.add(new Item.Circle(Layer.OPENING, new Vec2(140, 60), 26, Pen.FINAL_CUT, Ink.PALE));
    windowed.add(new Item.Circle(Layer.HOLES, new Vec2(140, 60), 6, Pen.OUTLINE, Ink.WHITE));
    windowed.add(new Item.Line(Layer.HOLES, new Vec2(60, 30), new Vec2(220, 90), Pen.CENTRE));
    windowed.add(text(new Vec2(150, 72), 6, Align.START, 0, "cut off at the box"));
    proofs.add(new Proof.RoundHole("hole in the window", new Vec2(140, 60), 6));
    items.add(
        new Item.Polyline(
            Layer.NOTES,
            List.of(new Vec2(100, 35), new Vec2(180, 35), new Vec2(180, 80), new Vec2(100, 80)),
            true,
            Pen.FINE,
            Ink.NONE));
    return new Page(
        "every-kind",
        "Every kind of shape",
        "all",
        210,
        297,
        true,
        scale,
        items,
        Optional.of(new Page.Window(new Box(100, 35, 180, 80), windowed)),
        proofs);
  }

  private static Item text(Vec2 at, double height, Align align, double degrees, String content) {
    return new Item.Text(
        Layer.NOTES, at, height, align, Angle.ofDegrees(degrees), content, Ink.BLACK);
  }

  /** A page with circles, lines and figures at random, each of them to be proved. */
  public static Page random(long seed) {
    Random random = new Random(seed);
    double[][] papers = {{210, 297}, {297, 420}, {215.9, 279.4}, {215.9, 355.6}, {279.4, 431.8}};
    double[] paper = papers[random.nextInt(papers.length)];
    PrintScale scale = SCALES.get(random.nextInt(SCALES.size()));
    List<Item> items = new ArrayList<>();
    List<Item> windowed = new ArrayList<>();
    List<Proof> proofs = new ArrayList<>();
    Box window = new Box(30, 40, paper[0] - 25.5, paper[1] - 61.7);
    for (int i = 0; i < 24; i++) {
      List<Item> into = i % 3 == 0 ? windowed : items;
      Layer layer = Layer.values()[random.nextInt(Layer.values().length)];
      Pen pen = Pen.values()[1 + random.nextInt(Pen.values().length - 1)];
      Ink fill = Ink.values()[random.nextInt(Ink.values().length)];
      double radius = 0.5 + random.nextDouble() * (random.nextBoolean() ? 6 : 90);
      Vec2 a = within(random, window);
      Vec2 b = within(random, window);
      switch (random.nextInt(4)) {
        case 0 -> {
          into.add(new Item.Circle(layer, a, radius, pen, fill));
          proofs.add(new Proof.RoundHole("circle " + i, a, radius));
        }
        case 1 -> {
          into.add(new Item.Line(layer, a, b, pen));
          proofs.add(new Proof.Bar("line " + i, b, a));
        }
        case 2 -> {
          Contour ring =
              Contour.of(List.of(new Arc(a, radius, random.nextDouble() * 6, 2 * Math.PI)));
          into.add(
              new Item.Figure(
                  layer, List.of(ring, Contour.sweptDisc(b, a, radius / 2)), pen, fill));
          proofs.add(new Proof.RoundHole("ring " + i, a, radius));
        }
        default -> {
          Arc half = new Arc(a, radius, random.nextDouble() * 6, -Math.PI);
          Arc rest = new Arc(a, radius, half.startAngle() - Math.PI, -Math.PI);
          into.add(new Item.Figure(layer, List.of(Contour.of(List.of(half, rest))), pen, fill));
          proofs.add(new Proof.RoundHole("two halves " + i, a, radius));
        }
      }
    }
    return new Page(
        "random",
        "Random page",
        "r" + seed,
        paper[0],
        paper[1],
        true,
        scale,
        items,
        Optional.of(new Page.Window(window, windowed)),
        proofs);
  }

  private static Vec2 within(Random random, Box box) {
    return new Vec2(
        box.minX() + random.nextDouble() * box.width(),
        box.minY() + random.nextDouble() * box.height());
  }

  /** The same page with other proofs. */
  public static Page withProofs(Page page, List<Proof> proofs) {
    return new Page(
        page.fileStem(),
        page.title(),
        page.label(),
        page.widthMm(),
        page.heightMm(),
        page.fullScale(),
        page.scale(),
        page.items(),
        page.window(),
        proofs);
  }

  /** The same page with other shapes. */
  public static Page withItems(Page page, List<Item> items) {
    return new Page(
        page.fileStem(),
        page.title(),
        page.label(),
        page.widthMm(),
        page.heightMm(),
        page.fullScale(),
        page.scale(),
        items,
        page.window(),
        page.proofs());
  }
}
