package dev.towerscribe.sheet.text;

import dev.towerscribe.drawing.Item;
import dev.towerscribe.drawing.Page;
import dev.towerscribe.geometry.PrintScale;
import dev.towerscribe.model.Print;
import dev.towerscribe.model.Side;
import dev.towerscribe.quantity.Lengths;
import dev.towerscribe.report.Block;
import dev.towerscribe.report.Phrases;
import java.util.ArrayList;
import java.util.List;
import java.util.Optional;
import java.util.function.Function;

/**
 * A page of words and tables, continued on further pages as it needs. Nothing is lettered smaller
 * than 2.5 mm and nothing leaves the margins.
 */
public final class TextPage {
  private static final double PARAGRAPH_GAP = 2.0;
  private static final double POINT_GAP = 1.6;
  private static final double HEADING_GAP = 6.0;
  private static final double GUTTER = 8.0;

  private final PageFrame head;
  private final Flow flow;
  private double columnMm;

  /**
   * An empty page.
   *
   * @param head what stands round its body
   */
  public TextPage(PageFrame head) {
    this.head = head;
    this.flow = new Flow(head.leftMm(), head.bodyTopMm(), head.bodyBottomMm());
    columns(1);
  }

  /**
   * An empty page of a pack, with the bar that tells of accepted stops.
   *
   * @param print paper and margin
   * @param info the job
   * @param side the tower or wheel it is about, if it is about one
   * @param title the page's title
   * @return the page
   */
  public static TextPage of(Print print, JobInfo info, Optional<Side> side, String title) {
    return new TextPage(new PageHead(print, info, side, title, true));
  }

  /**
   * The airiest way to set a page that needs no more paper than another: a last page of a few lines
   * is one more to print and to lose.
   *
   * @param ways the airiest first, at least one
   * @param set sets it one way
   * @param <W> what is set differently
   * @return the pages
   */
  public static <W> List<Page> fewest(List<W> ways, Function<W, List<Page>> set) {
    List<Page> best = List.of();
    for (W way : ways) {
      List<Page> pages = set.apply(way);
      if (best.isEmpty() || pages.size() < best.size()) {
        best = pages;
      }
    }
    return best;
  }

  /**
   * Width of the columns now being filled.
   *
   * @return mm
   */
  public double columnMm() {
    return columnMm;
  }

  /**
   * Height of an empty page's body.
   *
   * @return mm
   */
  public double bodyMm() {
    return head.bodyTopMm() - head.bodyBottomMm();
  }

  /**
   * Goes on in so many columns of equal height.
   *
   * @param count how many
   * @return this page
   */
  public TextPage columns(int count) {
    columnMm = (head.widthMm() - GUTTER * (count - 1)) / count;
    flow.columns(count, columnMm, GUTTER);
    return this;
  }

  /**
   * Goes on at the top of the next page in so many columns of equal height.
   *
   * @param count how many
   * @return this page
   */
  public TextPage columnsOnNewPage(int count) {
    columnMm = (head.widthMm() - GUTTER * (count - 1)) / count;
    flow.columnsOnNewPage(count, columnMm, GUTTER);
    return this;
  }

  /**
   * A heading on a pale band, kept with what follows.
   *
   * @param words the heading
   * @return this page
   */
  public TextPage band(String words) {
    return add(Fragments.Band.of(words, TextStyle.HEADING, columnMm), HEADING_GAP, true);
  }

  /**
   * A paragraph.
   *
   * @param words its words
   * @param cap height of capitals, mm
   * @return this page
   */
  public TextPage paragraph(String words, double cap) {
    return chain(Fragments.lines(words, cap, columnMm, 0), PARAGRAPH_GAP, false);
  }

  /**
   * A paragraph kept with what follows.
   *
   * @param words its words
   * @param cap height of capitals, mm
   * @return this page
   */
  public TextPage lead(String words, double cap) {
    return chain(Fragments.lines(words, cap, columnMm, 0), PARAGRAPH_GAP, true);
  }

  /**
   * A point of a list.
   *
   * @param words its words
   * @param cap height of capitals, mm
   * @return this page
   */
  public TextPage point(String words, double cap) {
    return chain(Fragments.dotted(words, cap, columnMm), POINT_GAP, false);
  }

  /**
   * A heading under a heavy line with its points, all in one column.
   *
   * @param heading the heading
   * @param points each a sentence or more
   * @param cap height of the points' capitals, mm
   * @return this page
   */
  public TextPage section(String heading, List<String> points, double cap) {
    double large = cap * 1.15;
    List<String> lines = TextStyle.wrap(heading, large, columnMm);
    add(new Fragments.Heading(lines, large, columnMm), 1.5 * large, true);
    for (int i = 0; i < points.size(); i++) {
      boolean last = i == points.size() - 1;
      chain(Fragments.dotted(points.get(i), cap, columnMm), POINT_GAP, !last);
    }
    return this;
  }

  /**
   * A numbered step with a box to tick.
   *
   * @param number its number
   * @param todo what to do, few words
   * @param details more about it, each a paragraph
   * @param gapMm empty space above it
   * @param keep whether what follows belongs to it
   * @return this page
   */
  public TextPage step(int number, String todo, List<String> details, double gapMm, boolean keep) {
    double indent = Fragments.Step.INDENT;
    List<Fragment> all =
        new ArrayList<>(Fragments.lines(todo, TextStyle.HEADING, columnMm, indent));
    all.set(0, new Fragments.Step(number, (Fragments.Words) all.get(0)));
    details.forEach(d -> all.addAll(Fragments.lines(d, TextStyle.BODY, columnMm, indent)));
    return chain(all, gapMm, keep);
  }

  /**
   * A table; its headings come again on every page.
   *
   * @param table the table
   * @param gapMm empty space above it
   * @return this page
   */
  public TextPage table(Table table, double gapMm) {
    return rows(table.head(), table.body(), gapMm);
  }

  /**
   * Rows under headings that come again on every page.
   *
   * @param headings the headings
   * @param rows the rows
   * @param gapMm empty space above the headings
   * @return this page
   */
  public TextPage rows(Fragment headings, List<? extends Fragment> rows, double gapMm) {
    flow.add(Flow.Entry.rows(headings, rows, gapMm));
    return this;
  }

  /**
   * Blocks of a report.
   *
   * @param blocks the blocks
   * @param lengths the unit of their figures
   * @param style how airy they are set
   * @return this page
   */
  public TextPage blocks(List<? extends Block> blocks, Lengths lengths, BlockSetter.Style style) {
    blocks.forEach(b -> flow.add(BlockSetter.entries(b, lengths, style, columnMm)));
    return this;
  }

  /**
   * Any piece.
   *
   * @param block the piece
   * @param gapMm empty space above it
   * @param keep whether what follows belongs to it
   * @return this page
   */
  public TextPage add(Fragment block, double gapMm, boolean keep) {
    return chain(List.of(block), gapMm, keep);
  }

  /**
   * Pieces without gaps between them, kept together.
   *
   * @param blocks the pieces
   * @param gapMm empty space above the first
   * @param keepLast whether what follows belongs to them
   * @return this page
   */
  public TextPage chain(List<Fragment> blocks, double gapMm, boolean keepLast) {
    flow.add(Flow.Entry.chain(blocks, gapMm, keepLast));
    return this;
  }

  /**
   * The pages about one side of the car, numbered from 1.
   *
   * @param side the side
   * @param stem last part of the file names, before the number
   * @param outline outline entry after the side's word: "tower, findings"
   * @param label last part of the short label, before the number
   * @return at least one page
   */
  public List<Page> pages(Side side, String stem, String outline, String label) {
    String word = Phrases.capital(side.word());
    String shortLabel = "%s-%s-".formatted(word.substring(0, 1), label);
    return pages("%s-%s".formatted(side.word(), stem), word + " " + outline, shortLabel, false);
  }

  /**
   * The pages.
   *
   * @param fileStem stem of the file names; pages are numbered after it unless {@code single}
   * @param outline outline entry, without number
   * @param label short label; numbered likewise
   * @param single whether the first page goes without a number
   * @return at least one page
   */
  public List<Page> pages(String fileStem, String outline, String label, boolean single) {
    List<List<Item>> bodies = flow.pages();
    List<Page> pages = new ArrayList<>();
    for (int i = 0; i < bodies.size(); i++) {
      int number = i + 1;
      List<Item> items = new ArrayList<>(bodies.get(i));
      head.draw(number, bodies.size(), items);
      boolean plain = single && i == 0;
      pages.add(
          new Page(
              plain ? fileStem : fileStem + "-" + number,
              bodies.size() == 1 ? outline : outline + " " + number,
              plain ? label : label + number,
              head.paperWidthMm(),
              head.paperHeightMm(),
              false,
              PrintScale.TRUE,
              items,
              Optional.empty(),
              List.of()));
    }
    return pages;
  }
}
