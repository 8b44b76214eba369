package dev.towerscribe.sheet.tower;

import dev.towerscribe.drawing.Align;
import dev.towerscribe.drawing.Item;
import dev.towerscribe.drawing.Layer;
import dev.towerscribe.drawing.LayerPen;
import dev.towerscribe.drawing.Lettering;
import dev.towerscribe.drawing.Page;
import dev.towerscribe.drawing.Pen;
import dev.towerscribe.drawing.Proof;
import dev.towerscribe.geometry.Box;
import dev.towerscribe.geometry.PrintScale;
import dev.towerscribe.geometry.Vec2;
import dev.towerscribe.model.Print;
import dev.towerscribe.quantity.LengthUnit;
import dev.towerscribe.quantity.Lengths;
import dev.towerscribe.quantity.Lengths.Fineness;
import dev.towerscribe.quantity.Numbers;
import dev.towerscribe.report.Phrases;
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
  private static final double CROSS_ARM_MM = 3;

  /** By how much the bar of the worked example came out short. */
  private static final double EXAMPLE_SHORT_MM = 2.5;

  private static final String READINGS =
      "across: ________   along: ________   cross to cross: ________";

  /** Prints further off than this are refused: printed over nominal, from 1. */
  public static final double REFUSED_PAST = 0.03;

  private final Box all;
  private final PrintScale scale;
  private final Optional<JobInfo> info;
  private final LengthUnit units;
  private final Vec2 corner;
  private final double across;
  private final double along;
  private final Vec2 middle;
  private final List<Item> items = new ArrayList<>();
  private final List<Proof> proofs = new ArrayList<>();
  private final LayerPen notes = LayerPen.notes(items);
  private final LayerPen marks = new LayerPen(Layer.CHECK_BARS, items);

  private RulerPage(Print print, Optional<JobInfo> info) {
    this.all = SheetZones.printable(print);
    this.scale = new PrintScale(print.scaleAcross(), print.scaleAlong(), print.skew());
    this.info = info;
    this.units = info.map(JobInfo::units).orElse(LengthUnit.MM);
    this.corner = new Vec2(all.minX() + BAR_FROM_CORNER_MM, all.minY() + BAR_FROM_CORNER_MM);
    this.across = Bars.on(all).acrossMm();
    this.along = Bars.on(all).alongMm();
    this.middle = new Vec2((corner.x() + all.maxX()) / 2, corner.y() + 14 + CIRCLE_RADIUS_MM);
  }

  /**
   * The page for a paper. Where the job already undoes a print scale, so does this page, and its
   * bars must come out true.
   *
   * @param print paper, margin and the scale found so far
   * @param info the job, or empty for a page that belongs to none
   * @return one full-scale page, file stem "print-check"
   */
  public static Page page(Print print, Optional<JobInfo> info) {
    RulerPage page = new RulerPage(print, info);
    page.bars();
    page.words();
    return new Page(
        "print-check",
        "Print check",
        "check",
        print.paper().widthMm(),
        print.paper().heightMm(),
        true,
        page.scale,
        page.items,
        Optional.empty(),
        page.proofs);
  }

  private void bars() {
    Vec2 right = corner.plus(new Vec2(across, 0));
    Vec2 top = corner.plus(new Vec2(0, along));
    bar(right, false);
    bar(top, true);
    cross(right, "across");
    cross(top, "along");
    proofs.add(new Proof.Bar("bar across", corner, right));
    proofs.add(new Proof.Bar("bar along", corner, top));
    marks.circle(middle, CIRCLE_RADIUS_MM, Pen.OUTLINE);
    proofs.add(new Proof.RoundHole("circle", middle, CIRCLE_RADIUS_MM));
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
      return on(SheetZones.printable(print));
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

  private static double whole(double room) {
    return Math.floor(room / TICK_EVERY_MM) * TICK_EVERY_MM;
  }

  private void bar(Vec2 end, boolean upright) {
    marks.line(corner, end, Pen.OUTLINE);
    Vec2 along = end.minus(corner).unit();
    Vec2 out = upright ? new Vec2(-1, 0) : new Vec2(0, -1);
    int n = (int) Math.round(end.distanceTo(corner) / TICK_EVERY_MM);
    for (int i = 0; i <= n; i++) {
      Vec2 at = corner.plus(along.times(i * TICK_EVERY_MM));
      marks.line(at, at.plus(out.times(i % 5 == 0 ? 4 : 2)), Pen.FINE);
      if (i % 5 == 0 && i > 0) {
        Vec2 label = at.plus(upright ? new Vec2(-4.8, -1.25) : new Vec2(0, -7.5));
        Align align = upright ? Align.END : Align.MIDDLE;
        notes.text(label.x(), label.y(), 2.5, align, Numbers.plain(i * TICK_EVERY_MM, 0));
      }
    }
  }

  private void cross(Vec2 at, String which) {
    marks.cross(at, CROSS_ARM_MM, Pen.FINE);
    for (Vec2 arm : List.of(new Vec2(CROSS_ARM_MM, 0), new Vec2(0, CROSS_ARM_MM))) {
      proofs.add(CheckBars.arm(which, at, arm));
    }
  }

  private void words() {
    double left = corner.x() + 5;
    double room = all.maxX() - left - 1;
    double y = all.maxY() - 17;
    fitted(left, y, room, 16, "PRINT CHECK");
    y -= 13;
    String first = "Print this page first, at 100 %, \u201cactual size\u201d. Not \u201cfit\u201d.";
    fitted(left, y, room, 5, first);
    y -= 4;
    for (String line : steps()) {
      y = paragraph(left, y, room, line);
    }
    for (String line : jobLines()) {
      y -= 6.6;
      notes.text(left + 8, y, 4, Align.START, line);
    }
    y -= 2;
    String refused =
        "5  Off by more than %s %% either way: refused. The printer is set to scale; find out why."
            .formatted(Numbers.plain(100 * REFUSED_PAST, 0));
    y = paragraph(left, y, room, refused);
    fitted(left, y - 11, room, 4, READINGS);
    label();
    notes.text(left, corner.y() + 8.8, 3, Align.START, Phrases.LAW_FIRST);
    info.ifPresent(i -> about(i, left, room));
  }

  private void fitted(double x, double y, double roomMm, double mostMm, String words) {
    notes.text(x, y, Lettering.capHeightToFit(words, roomMm, mostMm), Align.START, words);
  }

  private List<String> steps() {
    Lengths lengths = Lengths.in(units);
    String bars =
        Numbers.plain(units.fromMm(across), 3) + "," + Numbers.plain(units.fromMm(along), 3);
    return List.of(
        ("1  Measure with calipers or a steel rule, from end to end: the bar across, %s; the bar"
                + " along, %s.")
            .formatted(
                lengths.withMm(across, Fineness.PLACE), lengths.withMm(along, Fineness.PLACE)),
        ("2  From cross to cross, corner to corner: %s. Off by more than 1 mm while both bars are"
                + " right: the print is skewed.")
            .formatted(lengths.withMm(Math.hypot(across, along), Fineness.PLACE)),
        "3  The circle: 100.0 mm both ways, between the middles of its line.",
        scale.isTrue() ? notYetScaled(bars) : scaledAlready(bars));
  }

  private String notYetScaled(String bars) {
    String printed = Numbers.fixed(across - EXAMPLE_SHORT_MM, 1);
    return ("4  Not right? Give all three to the program: towerscribe ruler --measured, with --bars"
            + " %s, --job and --write; then print again. By hand, without skew: printed / nominal."
            + " If the bar across measures %s mm: %s / %s = %s, and with the bar along true:")
        .formatted(bars, printed, printed, Numbers.fixed(across, 1), exampleAcross());
  }

  private String exampleAcross() {
    return Numbers.fixed((across - EXAMPLE_SHORT_MM) / across, 4);
  }

  private String scaledAlready(String bars) {
    String advice =
        scale.isSquare()
            ? ": the bars must now be right. If not, multiply each figure by printed / nominal and"
                + " write it into the job file:"
            : (" with a skew of %s\u00b0: the bars and the crosses must now be right. If not, give"
                   + " the readings to: towerscribe ruler --measured, with --bars %s and --job. Now"
                   + " in the job:")
                .formatted(skew(), bars);
    return "4  This page is already drawn for a printer that prints %s across and %s along%s"
        .formatted(Numbers.plain(scale.across(), 4), Numbers.plain(scale.along(), 4), advice);
  }

  private String skew() {
    return Numbers.plain(scale.skew().degrees(), 3);
  }

  /** What stands in the job file, or would after the worked example. */
  private List<String> jobLines() {
    boolean example = scale.isTrue();
    String across = example ? exampleAcross() : Numbers.plain(scale.across(), 4);
    String along = example ? Numbers.fixed(1.0, 4) : Numbers.plain(scale.along(), 4);
    String line = "scale = { across = %s, along = %s }".formatted(across, along);
    return scale.isSquare()
        ? List.of("[print]", line)
        : List.of("[print]", line, "skew = " + skew());
  }

  private void label() {
    marks.cross(middle, 4, Pen.FINE);
    notes.text(middle.x(), middle.y() + 12, 6, Align.MIDDLE, "100 mm circle");
    notes.text(middle.x(), middle.y() - 18, 3.5, Align.MIDDLE, "across:  ________");
    notes.text(middle.x(), middle.y() - 26, 3.5, Align.MIDDLE, "along:  ________");
  }

  private void about(JobInfo job, double left, double room) {
    String date = job.date().map(Object::toString).orElse("________");
    String pack = job.packMark().isEmpty() ? "" : "   Pack " + job.packMark();
    String about = "%s   Date %s%s".formatted(job.title(), date, pack);
    double width = middle.x() + 2 * CIRCLE_RADIUS_MM - left;
    double cap = Math.max(2.5, Lettering.capHeightToFit(about, Math.min(room, width), 3));
    notes.text(left, corner.y() + 4, cap, Align.START, Lettering.shortened(about, cap, room));
  }

  /** A paragraph, all but its first line set in; returns the last base line. */
  private double paragraph(double left, double from, double room, String words) {
    double y = from - 1.3;
    List<String> lines = Lettering.wrap(words, 3.5, room - 5);
    for (int i = 0; i < lines.size(); i++) {
      y -= 5.1;
      notes.text(left + (i == 0 ? 0 : 5), y, 3.5, Align.START, lines.get(i));
    }
    return y;
  }
}
