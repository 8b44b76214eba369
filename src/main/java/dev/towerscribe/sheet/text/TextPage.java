package dev.towerscribe.sheet.text;

import dev.towerscribe.drawing.Item;
import dev.towerscribe.drawing.Page;
import dev.towerscribe.geometry.PrintScale;
import dev.towerscribe.quantity.Lengths;
import dev.towerscribe.report.Block;
import java.util.ArrayList;
import java.util.List;
import java.util.Optional;

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

  public TextPage(PageFrame head) {
    this.head = head;
    this.flow = new Flow(head.leftMm(), head.bodyTopMm(), head.bodyBottomMm());
    columns(1);
  }

  /** Width of the columns now being filled. */
  public double columnMm() {
    return columnMm;
  }

  /** Goes on in so many columns of equal height. */
  public TextPage columns(int count) {
    columnMm = (head.widthMm() - GUTTER * (count - 1)) / count;
    flow.columns(count, columnMm, GUTTER);
    return this;
  }

  /** A heading, kept with what follows. */
  TextPage heading(String words, double cap) {
    return add(
        new Fragments.Heading(TextStyle.wrap(words, cap, columnMm), cap, columnMm),
        1.5 * cap,
        true);
  }

  /** A heading on a pale band, kept with what follows. */
  public TextPage band(String words) {
    double cap = TextStyle.HEADING;
    List<String> lines = TextStyle.wrap(words, cap, columnMm - 2 * Fragments.Band.INDENT);
    return add(new Fragments.Band(lines, cap, columnMm), HEADING_GAP, true);
  }

  /** A paragraph. */
  public TextPage paragraph(String words, double cap) {
    return chain(Fragments.lines(words, cap, columnMm, 0), PARAGRAPH_GAP, false);
  }

  /** A paragraph kept with what follows. */
  public TextPage lead(String words, double cap) {
    return chain(Fragments.lines(words, cap, columnMm, 0), PARAGRAPH_GAP, true);
  }

  /** A point of a list. */
  public TextPage point(String words, double cap) {
    return chain(Fragments.dotted(words, cap, columnMm), POINT_GAP, false);
  }

  /** A heading with its points, all in one column. */
  public TextPage section(String heading, List<String> points, double cap) {
    heading(heading, cap * 1.15);
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
   */
  public TextPage step(int number, String todo, List<String> details, double gapMm, boolean keep) {
    List<Fragment> all =
        new ArrayList<>(Fragments.lines(todo, TextStyle.HEADING, columnMm, Fragments.Step.INDENT));
    all.set(0, new Fragments.Step(number, (Fragments.Words) all.get(0)));
    for (String detail : details) {
      all.addAll(Fragments.lines(detail, TextStyle.BODY, columnMm, Fragments.Step.INDENT));
    }
    return chain(all, gapMm, keep);
  }

  /** A table; its headings come again on every page. */
  public TextPage table(Table table, double gapMm) {
    Fragment headings = table.head();
    flow.add(new Flow.Entry(headings, gapMm, true, Optional.empty()));
    for (int i = 0; i < table.rows().size(); i++) {
      flow.add(new Flow.Entry(table.row(i), 0, false, Optional.of(headings)));
    }
    return this;
  }

  /** Rows under headings that come again on every page. */
  public TextPage rows(Fragment headings, List<? extends Fragment> rows, double gapMm) {
    flow.add(new Flow.Entry(headings, gapMm, true, Optional.empty()));
    for (Fragment row : rows) {
      flow.add(new Flow.Entry(row, 0, false, Optional.of(headings)));
    }
    return this;
  }

  /** Blocks of a report. */
  public TextPage blocks(List<? extends Block> blocks, Lengths lengths, BlockSetter.Style style) {
    for (Block block : blocks) {
      BlockSetter.entries(block, lengths, style, columnMm).forEach(flow::add);
    }
    return this;
  }

  /** Any piece. */
  public TextPage add(Fragment block, double gapMm, boolean keep) {
    flow.add(new Flow.Entry(block, gapMm, keep, Optional.empty()));
    return this;
  }

  /** Fragments without gaps between them, kept together. */
  public TextPage chain(List<Fragment> blocks, double gapMm, boolean keepLast) {
    for (int i = 0; i < blocks.size(); i++) {
      boolean last = i == blocks.size() - 1;
      add(blocks.get(i), i == 0 ? gapMm : 0, !last || keepLast);
    }
    return this;
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
