package dev.towerscribe.writer.dxf;

import dev.towerscribe.drawing.Align;
import dev.towerscribe.drawing.Ink;
import dev.towerscribe.drawing.Item;
import dev.towerscribe.drawing.Layer;
import dev.towerscribe.drawing.Page;
import dev.towerscribe.drawing.Pen;
import dev.towerscribe.drawing.Proof;
import dev.towerscribe.geometry.Contour;
import dev.towerscribe.geometry.Edge;
import dev.towerscribe.geometry.Edge.Arc;
import dev.towerscribe.geometry.Edge.Segment;
import dev.towerscribe.geometry.Frame2;
import dev.towerscribe.geometry.PrintScale;
import dev.towerscribe.geometry.Vec2;
import dev.towerscribe.quantity.Angle;
import dev.towerscribe.writer.SamplePages;
import java.util.ArrayList;
import java.util.Collections;
import java.util.List;
import java.util.Optional;
import java.util.Random;

/** Drawings for the tests of DXF. */
final class DxfPages {
  /** Texts that are odd in one way or another, each of characters that the sheet font has. */
  static final List<String> ODD_TEXTS =
      List.of(
          "it's \"quoted\" & <tagged>",
          "\u00D88.4 \u00F8 \u00B0 \u00B1 45\u00B0\u00B10.5\u00B0",
          "back\\slash \\U+00D8 \\P {brace}",
          "100 % %%d %%c %%% 5%\u00B0",
          "\u017Elu\u0165 \u0416\u03A9 \u2192 \u20AC",
          "  spaces  ");

  private DxfPages() {}

  /** A drawing of shapes and no proofs. */
  static Page of(Item... items) {
    return page(List.of(items), List.of());
  }

  static Page page(List<Item> items, List<Proof> proofs) {
    return new Page(
        "drawing",
        "Drawing",
        "d",
        297,
        210,
        true,
        PrintScale.TRUE,
        items,
        Optional.empty(),
        proofs);
  }

  static Item.Text text(double x, double y, Align align, double degrees, String content, Ink ink) {
    return new Item.Text(
        Layer.NOTES, new Vec2(x, y), 3.5, align, Angle.ofDegrees(degrees), content, ink);
  }

  /** Every kind of shape, pen, fill and alignment; upright A4. */
  static Page everything() {
    Page sample = SamplePages.everything(PrintScale.TRUE);
    List<Item> items = new ArrayList<>(sample.items());
    sample.window().ifPresent(window -> items.addAll(window.items()));
    List<Proof> proofs = new ArrayList<>(sample.proofs());
    items.add(new Item.Line(Layer.CHECK_BARS, new Vec2(80, 10), new Vec2(180, 10), Pen.OUTLINE));
    proofs.add(new Proof.Bar("bar of 100 mm", new Vec2(80, 10), new Vec2(180, 10)));
    items.add(text(130, 12, Align.MIDDLE, 0, "ALL LENGTHS IN MM: THIS BAR IS 100 MM", Ink.BLACK));
    items.add(filled(Ink.BLACK, 90, 200, 96, 201, 96, 199));
    items.add(filled(Ink.BLACK, 90, 205, 96, 204, 100, 207, 92, 209));
    items.add(filled(Ink.WHITE, 130, 225, 170, 225, 170, 265, 130, 265));
    items.add(
        new Item.Figure(
            Layer.CUTOUTS,
            List.of(keyhole(new Vec2(25, 262), 1), keyhole(new Vec2(40, 262), -1)),
            Pen.OUTLINE,
            Ink.NONE));
    for (int i = 0; i < ODD_TEXTS.size(); i++) {
      items.add(text(100, 240 - 6 * i, Align.END, 0, ODD_TEXTS.get(i), Ink.BLACK));
    }
    for (int turn = 0; turn < 360; turn += 45) {
      items.add(text(190, 215, Align.START, turn, "    turn " + turn + "\u00B0", Ink.BLACK));
    }
    return new Page(
        sample.fileStem(),
        sample.title(),
        sample.label(),
        sample.widthMm(),
        sample.heightMm(),
        true,
        PrintScale.TRUE,
        items,
        Optional.empty(),
        proofs);
  }

  /** An area without a line of its own: x, y, x, y and so on. */
  static Item filled(Ink fill, double... xy) {
    List<Vec2> points = new ArrayList<>();
    for (int i = 0; i < xy.length; i += 2) {
      points.add(new Vec2(xy[i], xy[i + 1]));
    }
    return new Item.Polyline(Layer.DIMENSIONS, points, true, Pen.NONE, fill);
  }

  /** A round head with a straight shank; seen in a mirror for -1, and so with clockwise arcs. */
  static Contour keyhole(Vec2 at, int hand) {
    double open = Math.asin(2.0 / 5.0);
    Arc head = new Arc(Vec2.ZERO, 5, -Math.PI / 2 + open, 2 * Math.PI - 2 * open);
    Arc foot = new Arc(new Vec2(0, -12), 2, Math.PI, Math.PI);
    List<Edge> edges =
        List.of(
            head,
            new Segment(head.end(), foot.start()),
            foot,
            new Segment(foot.end(), head.start()));
    return Contour.of(edges).mapped(new Frame2(at, new Vec2(hand, 0), new Vec2(0, 1)));
  }

  /** A drawing with arcs, contours and circles at random, also mirrored; each hole to be proved. */
  static Page random(long seed) {
    Random random = new Random(seed);
    List<Item> items = new ArrayList<>();
    List<Proof> proofs = new ArrayList<>();
    for (int i = 0; i < 12; i++) {
      Layer layer = Layer.values()[random.nextInt(Layer.values().length)];
      Pen pen = Pen.values()[1 + random.nextInt(Pen.values().length - 1)];
      Ink fill = Ink.values()[random.nextInt(Ink.values().length)];
      double radius = 0.5 + random.nextDouble() * (random.nextBoolean() ? 6 : 400);
      Vec2 at = point(random);
      double start = random.nextDouble() * 20 - 10;
      switch (random.nextInt(6)) {
        case 0 -> {
          items.add(new Item.Circle(layer, at, radius, pen, fill));
          proofs.add(new Proof.RoundHole("circle " + i, at, radius));
        }
        case 1 -> {
          Vec2 to = point(random);
          items.add(new Item.Line(layer, at, to, pen));
          proofs.add(new Proof.Bar("bar " + i, to, at));
        }
        case 2 -> {
          double sweep = (random.nextDouble() * 2 - 1) * 2 * Math.PI;
          items.add(new Item.ArcLine(layer, new Arc(at, radius, start, sweep), pen));
        }
        case 3 -> {
          Arc half = new Arc(at, radius, start, random.nextBoolean() ? Math.PI : -Math.PI);
          Arc rest = new Arc(at, radius, half.startAngle() + half.sweep(), half.sweep());
          Contour whole = Contour.of(List.of(half, rest));
          items.add(new Item.Figure(layer, List.of(whole), pen, fill));
          proofs.add(new Proof.RoundHole("two halves " + i, at, radius));
        }
        case 4 -> {
          List<Vec2> centres = new ArrayList<>(List.of(at, point(random), point(random)));
          Collections.shuffle(centres, random);
          Contour hull = Contour.hullOfDiscs(centres, radius).mapped(frame(random));
          items.add(
              new Item.Figure(
                  layer, List.of(random.nextBoolean() ? hull : hull.reversed()), pen, fill));
        }
        default -> {
          Contour keyhole = keyhole(at, 1).mapped(frame(random));
          items.add(new Item.Figure(layer, List.of(keyhole), pen, fill));
        }
      }
    }
    return page(items, proofs);
  }

  private static Vec2 point(Random random) {
    return new Vec2(random.nextDouble() * 1000 - 200, random.nextDouble() * 1000 - 200);
  }

  /** A turned, shifted and, half the time, mirrored frame. */
  private static Frame2 frame(Random random) {
    Vec2 x = Vec2.polar(1, new Angle(random.nextDouble() * 7));
    Vec2 y = x.quarterTurn();
    return new Frame2(point(random), x, random.nextBoolean() ? y : y.times(-1));
  }

  /** The same drawing with other proofs. */
  static Page withProofs(Page page, List<Proof> proofs) {
    return SamplePages.withProofs(page, proofs);
  }

  /** A page's file, its origin the paper's lower left corner. */
  static byte[] write(Page page, DxfVersion version) {
    return DxfWriter.write(page, version, Vec2.ZERO);
  }

  /** What is wrong with such a file. */
  static List<String> check(byte[] dxf, Page page, DxfVersion version) {
    return DxfProof.check(dxf, page, version, Vec2.ZERO);
  }
}
