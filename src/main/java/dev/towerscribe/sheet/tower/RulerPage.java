package dev.towerscribe.sheet.tower;

import dev.towerscribe.drawing.Align;
import dev.towerscribe.drawing.Ink;
import dev.towerscribe.drawing.Item;
import dev.towerscribe.drawing.Layer;
import dev.towerscribe.drawing.Lettering;
import dev.towerscribe.drawing.Page;
import dev.towerscribe.drawing.Pen;
import dev.towerscribe.drawing.PrintScale;
import dev.towerscribe.drawing.Proof;
import dev.towerscribe.drawing.TextBlock;
import dev.towerscribe.geometry.Box;
import dev.towerscribe.geometry.Vec2;
import dev.towerscribe.model.Print;
import dev.towerscribe.quantity.LengthUnit;
import dev.towerscribe.quantity.Numbers;
import dev.towerscribe.sheet.text.JobInfo;
import java.util.ArrayList;
import java.util.List;
import java.util.Optional;

/**
 * The page that is printed first of all, to see what a printer does to lengths: bars along both
 * edges, the way across, a 100 mm circle, and what to write into the job file.
 */
public final class RulerPage {
  private static final double BAR_FROM_CORNER_MM = 12;
  private static final double BAR_FROM_END_MM = 5;
  private static final double CIRCLE_RADIUS_MM = 50;
  private static final double TICK_EVERY_MM = 10;

  /** By how much the bar of the worked example came out short. */
  private static final double EXAMPLE_SHORT_MM = 2.5;

  private static final String READINGS =
      "across: ________   along: ________   cross to cross: ________";

  /** Prints further off than this are refused: printed over nominal, from 1. */
  public static final double REFUSED_PAST = 0.03;

  private RulerPage() {}

  /**
   * The page for a paper. Where the job already undoes a print scale, so does this page, and its
   * bars must come out true.
   *
   * @param print paper, margin and the scale found so far
   * @param info the job, or empty for a page that belongs to none
   * @return one full-scale page, file stem "print-check"
   */
  public static Page page(Print print, Optional<JobInfo> info) {
    Box all = printable(print);
    PrintScale scale = new PrintScale(print.scaleAcross(), print.scaleAlong(), print.skew());
    List<Item> items = new ArrayList<>();
    List<Proof> proofs = new ArrayList<>();
    Vec2 corner = new Vec2(all.minX() + BAR_FROM_CORNER_MM, all.minY() + BAR_FROM_CORNER_MM);
    Bars bars = Bars.on(all);
    double across = bars.acrossMm();
    double along = bars.alongMm();
    Vec2 right = corner.plus(new Vec2(across, 0));
    Vec2 top = corner.plus(new Vec2(0, along));
    bar(items, corner, right, false);
    bar(items, corner, top, true);
    cross(items, proofs, right, "across");
    cross(items, proofs, top, "along");
    proofs.add(new Proof.Bar("bar across", corner, right));
    proofs.add(new Proof.Bar("bar along", corner, top));
    Vec2 middle = new Vec2((corner.x() + all.maxX()) / 2, corner.y() + 14 + CIRCLE_RADIUS_MM);
    items.add(new Item.Circle(Layer.CHECK_BARS, middle, CIRCLE_RADIUS_MM, Pen.OUTLINE, Ink.NONE));
    proofs.add(new Proof.RoundHole("circle", middle, CIRCLE_RADIUS_MM));
    words(items, all, corner, across, along, middle, scale, info);
    return new Page(
        "print-check",
        "Print check",
        "check",
        print.paper().widthMm(),
        print.paper().heightMm(),
        true,
        scale,
        items,
        Optional.empty(),
        proofs);
  }

  /**
   * How long its two bars are.
   *
   * @param acrossMm along the paper's short side
   * @param alongMm along its long side
   */
  public record Bars(double acrossMm, double alongMm) {
    /**
     * The bars of the page for a paper.
     *
     * @param print paper and margin
     * @return their nominal lengths, whole tens of mm
     */
    public static Bars of(Print print) {
      return on(printable(print));
    }

    /**
     * The check bars of every 1:1 sheet: 100 mm, or 4 in for a job in inches.
     *
     * @param units the job's unit
     * @return their nominal lengths
     */
    public static Bars ofSheets(LengthUnit units) {
      double length = CheckBars.of(Vec2.ZERO, units).lengthMm();
      return new Bars(length, length);
    }

    private static Bars on(Box all) {
      double shorter = BAR_FROM_CORNER_MM + BAR_FROM_END_MM;
      return new Bars(whole(all.width() - shorter), whole(all.height() - shorter));
    }
  }

  private static Box printable(Print print) {
    return new Box(0, 0, print.paper().widthMm(), print.paper().heightMm())
        .grown(-print.marginMm());
  }

  private static double whole(double room) {
    return Math.floor(room / TICK_EVERY_MM) * TICK_EVERY_MM;
  }

  private static void bar(List<Item> items, Vec2 from, Vec2 to, boolean upright) {
    items.add(new Item.Line(Layer.CHECK_BARS, from, to, Pen.OUTLINE));
    Vec2 along = to.minus(from).unit();
    Vec2 out = upright ? new Vec2(-1, 0) : new Vec2(0, -1);
    int n = (int) Math.round(to.distanceTo(from) / TICK_EVERY_MM);
    for (int i = 0; i <= n; i++) {
      Vec2 at = from.plus(along.times(i * TICK_EVERY_MM));
      double tick = i % 5 == 0 ? 4 : 2;
      items.add(new Item.Line(Layer.CHECK_BARS, at, at.plus(out.times(tick)), Pen.FINE));
      if (i % 5 == 0 && i > 0) {
        String words = Numbers.plain(i * TICK_EVERY_MM, 0);
        items.add(
            SheetBorder.text(
                upright ? at.x() - 4.8 : at.x(),
                upright ? at.y() - 1.25 : at.y() - 7.5,
                2.5,
                upright ? Align.END : Align.MIDDLE,
                words,
                Ink.BLACK));
      }
    }
  }

  private static void cross(List<Item> items, List<Proof> proofs, Vec2 at, String which) {
    for (Vec2 arm : List.of(new Vec2(3, 0), new Vec2(0, 3))) {
      items.add(new Item.Line(Layer.CHECK_BARS, at.minus(arm), at.plus(arm), Pen.FINE));
      proofs.add(new Proof.Bar("diagonal, cross " + which, at.minus(arm), at.plus(arm)));
    }
  }

  private static void words(
      List<Item> items,
      Box all,
      Vec2 corner,
      double across,
      double along,
      Vec2 middle,
      PrintScale scale,
      Optional<JobInfo> info) {
    double left = corner.x() + 5;
    double room = all.maxX() - left - 1;
    double y = all.maxY() - 17;
    String head = "PRINT CHECK";
    items.add(
        SheetBorder.text(
            left, y, Lettering.capHeightToFit(head, room, 16), Align.START, head, Ink.BLACK));
    y -= 13;
    String first = "Print this page first, at 100 %, \u201cactual size\u201d. Not \u201cfit\u201d.";
    double cap = Lettering.capHeightToFit(first, room, 5);
    items.add(SheetBorder.text(left, y, cap, Align.START, first, Ink.BLACK));
    y -= 4;
    LengthUnit units = info.map(JobInfo::units).orElse(LengthUnit.MM);
    double diagonal = Math.hypot(across, along);
    List<String> lines = new ArrayList<>();
    lines.add(
        "1  Measure with calipers or a steel rule, from end to end: the bar across, "
            + Measures.length(across, units)
            + "; the bar along, "
            + Measures.length(along, units)
            + ".");
    lines.add(
        "2  From cross to cross, corner to corner: "
            + Measures.length(diagonal, units)
            + ". Off by more than 1 mm while both bars are right: the print is skewed.");
    lines.add("3  The circle: 100.0 mm both ways, between the middles of its line.");
    if (scale.isTrue()) {
      double printed = across - EXAMPLE_SHORT_MM;
      lines.add(
          "4  Not right? Give all three to the program: towerscribe ruler --measured, with --bars "
              + bars(across, along, units)
              + ", --job and --write; then print again. By hand, without skew: printed / nominal."
              + " If the bar across measures "
              + Numbers.fixed(printed, 1)
              + " mm: "
              + Numbers.fixed(printed, 1)
              + " / "
              + Numbers.fixed(across, 1)
              + " = "
              + Numbers.fixed(printed / across, 4)
              + ", and with the bar along true:");
    } else {
      lines.add(
          "4  This page is already drawn for a printer that prints "
              + Numbers.plain(scale.across(), 4)
              + " across and "
              + Numbers.plain(scale.along(), 4)
              + " along"
              + (scale.isSquare()
                  ? ": the bars must now be right. If not, multiply each figure by"
                      + " printed / nominal and write it into the job file:"
                  : " with a skew of "
                      + skew(scale)
                      + "\u00b0: the bars and the crosses must now be right. If not, give the"
                      + " readings to: towerscribe ruler --measured, with --bars "
                      + bars(across, along, units)
                      + " and --job. Now in the job:"));
    }
    y = paragraphs(items, left, y, room, lines);
    String across4 =
        scale.isTrue()
            ? Numbers.fixed((across - EXAMPLE_SHORT_MM) / across, 4)
            : Numbers.plain(scale.across(), 4);
    String along4 = scale.isTrue() ? Numbers.fixed(1.0, 4) : Numbers.plain(scale.along(), 4);
    List<String> table = new ArrayList<>();
    table.add("[print]");
    table.add("scale = { across = " + across4 + ", along = " + along4 + " }");
    if (!scale.isSquare()) {
      table.add("skew = " + skew(scale));
    }
    for (String line : table) {
      y -= 6.6;
      items.add(SheetBorder.text(left + 8, y, 4, Align.START, line, Ink.BLACK));
    }
    y -= 2;
    y =
        paragraphs(
            items,
            left,
            y,
            room,
            List.of(
                "5  Off by more than "
                    + Numbers.plain(100 * REFUSED_PAST, 0)
                    + " % either way: refused. The printer is set to scale; find out why."));
    y -= 11;
    items.add(
        SheetBorder.text(
            left,
            y,
            Lettering.capHeightToFit(READINGS, room, 4),
            Align.START,
            READINGS,
            Ink.BLACK));
    label(items, middle);
    info.ifPresent(
        i -> {
          String about =
              i.title()
                  + "   Date "
                  + i.date().map(Object::toString).orElse("________")
                  + (i.packMark().isEmpty() ? "" : "   Pack " + i.packMark());
          double width = middle.x() + 2 * CIRCLE_RADIUS_MM - left;
          double small = Math.max(2.5, Lettering.capHeightToFit(about, Math.min(room, width), 3));
          items.add(
              SheetBorder.text(
                  left,
                  corner.y() + 4,
                  small,
                  Align.START,
                  Measures.shortened(about, small, room),
                  Ink.BLACK));
        });
  }

  private static String skew(PrintScale scale) {
    return Numbers.plain(scale.skew().degrees(), 3);
  }

  /** The bars' lengths as the program wants them. */
  private static String bars(double across, double along, LengthUnit units) {
    return Numbers.plain(units.fromMm(across), 3) + "," + Numbers.plain(units.fromMm(along), 3);
  }

  private static void label(List<Item> items, Vec2 middle) {
    for (Vec2 arm : List.of(new Vec2(4, 0), new Vec2(0, 4))) {
      items.add(new Item.Line(Layer.CHECK_BARS, middle.minus(arm), middle.plus(arm), Pen.FINE));
    }
    items.add(
        SheetBorder.text(middle.x(), middle.y() + 12, 6, Align.MIDDLE, "100 mm circle", Ink.BLACK));
    items.add(
        SheetBorder.text(
            middle.x(), middle.y() - 18, 3.5, Align.MIDDLE, "across:  ________", Ink.BLACK));
    items.add(
        SheetBorder.text(
            middle.x(), middle.y() - 26, 3.5, Align.MIDDLE, "along:  ________", Ink.BLACK));
  }

  private static double paragraphs(
      List<Item> items, double left, double from, double room, List<String> lines) {
    double y = from;
    for (String line : lines) {
      TextBlock block = TextBlock.wrapped(3.5, room - 5, line);
      y -= 1.3;
      for (int i = 0; i < block.lines().size(); i++) {
        y -= 5.1;
        items.add(
            SheetBorder.text(
                left + (i == 0 ? 0 : 5),
                y,
                3.5,
                Align.START,
                block.lines().get(i).words(),
                Ink.BLACK));
      }
    }
    return y;
  }
}
