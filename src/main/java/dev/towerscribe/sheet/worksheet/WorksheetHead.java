package dev.towerscribe.sheet.worksheet;

import dev.towerscribe.drawing.Align;
import dev.towerscribe.drawing.Ink;
import dev.towerscribe.drawing.Item;
import dev.towerscribe.drawing.LayerPen;
import dev.towerscribe.drawing.Lettering;
import dev.towerscribe.drawing.Page;
import dev.towerscribe.drawing.Pen;
import dev.towerscribe.model.Side;
import dev.towerscribe.quantity.LengthUnit;
import dev.towerscribe.report.Phrases;
import dev.towerscribe.sheet.text.Fragment;
import dev.towerscribe.sheet.text.Fragments;
import dev.towerscribe.sheet.text.PageFrame;
import dev.towerscribe.sheet.text.TextPage;
import java.util.List;
import java.util.Locale;
import java.util.Optional;

/**
 * Head and foot of a worksheet page. A page of one side of the car carries the side in large
 * letters in that corner of the paper and a black bar all along that edge: left pages at the left,
 * right pages at the right.
 *
 * @param paperWidthMm width of the paper
 * @param paperHeightMm its height
 * @param marginMm what stays blank at its edges
 * @param units the unit that lengths are written in
 * @param side the side the page is for, if it is for one
 * @param title the page's title
 * @param before how many pages of the worksheet come before this one's first
 * @param total how many pages the worksheet has
 */
record WorksheetHead(
    double paperWidthMm,
    double paperHeightMm,
    double marginMm,
    LengthUnit units,
    Optional<Side> side,
    String title,
    int before,
    int total)
    implements PageFrame {
  private static final double SIDE = 12.0;
  private static final double SIDE_PAD = 3.0;
  private static final double TITLE = 6.0;
  private static final double BAND = SIDE + 5.0;
  private static final double EDGE_BAR = 3.0;
  private static final double EDGE_GAP = 3.0;
  private static final double BODY_GAP = 3.0;

  /**
   * The pages of one side of the car.
   *
   * @param page what is on them
   * @param stem last part of their file names and labels
   * @param title outline entry after the side's word: "corner, points"
   */
  List<Page> pages(TextPage page, String stem, String title) {
    String word = side.orElseThrow().word();
    String label = "S-%s-%s".formatted(word.substring(0, 1), stem);
    String outline = Phrases.capital(word) + " " + title;
    return page.pages("survey-%s-%s".formatted(word, stem), outline, label, true);
  }

  private double edgeMm() {
    return side.isPresent() ? EDGE_BAR + EDGE_GAP : 0;
  }

  private boolean isLeft() {
    return side.isPresent() && side.get() == Side.LEFT;
  }

  @Override
  public double leftMm() {
    return marginMm + (isLeft() ? edgeMm() : 0);
  }

  @Override
  public double widthMm() {
    return paperWidthMm - 2 * marginMm - edgeMm();
  }

  private double topMm() {
    return paperHeightMm - marginMm;
  }

  @Override
  public double bodyTopMm() {
    return topMm() - BAND - 1.0 - BODY_GAP;
  }

  private Fragment foot() {
    String unit = units == LengthUnit.INCH ? "inches" : units.symbol();
    String words =
        "%s Lengths in %s. Certifies nothing. Not to scale.".formatted(Phrases.LAW_FIRST, unit);
    return new Fragments.Stack(Fragments.lines(words, FormPieces.WORDS, widthMm(), 0), 0);
  }

  @Override
  public double bodyBottomMm() {
    return marginMm + foot().heightMm() + 1.5;
  }

  @Override
  public void draw(int number, int count, List<Item> out) {
    LayerPen notes = LayerPen.notes(out);
    double left = leftMm();
    double right = left + widthMm();
    if (side.isPresent()) {
      String word = side.get().word().toUpperCase(Locale.ROOT);
      double wide = Lettering.width(word, SIDE) + 2 * SIDE_PAD;
      double from = isLeft() ? marginMm : right + edgeMm() - wide;
      notes.box(from, topMm() - BAND, from + wide, topMm(), Pen.NONE, Ink.BLACK);
      notes.text(
          from + wide / 2, topMm() - BAND / 2 - SIDE / 2, SIDE, Align.MIDDLE, word, Ink.WHITE);
      double bar = isLeft() ? marginMm : right + EDGE_GAP;
      notes.box(bar, marginMm, bar + EDGE_BAR, topMm(), Pen.NONE, Ink.BLACK);
      if (isLeft()) {
        left = from + wide + EDGE_GAP;
      } else {
        right = from - EDGE_GAP;
      }
    }
    String page = "Page " + (before + number) + " of " + total;
    double pageWide = Lettering.width(page, FormPieces.WORDS);
    double base = topMm() - TITLE - 0.6;
    double cap = Lettering.capHeightToFit(title, right - left - pageWide - 4, TITLE);
    notes.text(left, base, cap, Align.START, title);
    notes.text(right, base, FormPieces.WORDS, Align.END, page);
    writeIn(left, right, topMm() - BAND + 0.8, out);
    double rule = topMm() - BAND - 1.0;
    notes.line(left, rule, right, rule, Pen.FINAL_CUT);
    foot().draw(leftMm(), marginMm + foot().heightMm(), out);
  }

  /** Car, date and who, on every page: loose pages get mixed. */
  private static void writeIn(double left, double right, double base, List<Item> out) {
    LayerPen notes = LayerPen.notes(out);
    List<String> words = List.of("Car", "Date", "By");
    List<Double> shares = List.of(0.46, 0.31, 0.23);
    double named =
        words.stream().mapToDouble(w -> Lettering.width(w, FormPieces.WORDS) + 1.5).sum();
    double room = right - left - named - 2 * 2.0;
    double x = left;
    for (int i = 0; i < words.size(); i++) {
      notes.text(x, base + 0.6, FormPieces.WORDS, Align.START, words.get(i));
      x += Lettering.width(words.get(i), FormPieces.WORDS) + 1.5;
      double wide = room * shares.get(i);
      notes.line(x, base, x + wide, base, Pen.OUTLINE);
      x += wide + 2.0;
    }
  }
}
