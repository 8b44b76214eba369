package dev.towerscribe.sheet.text;

import dev.towerscribe.drawing.Item;
import java.util.ArrayList;
import java.util.List;
import java.util.Optional;
import java.util.stream.IntStream;
import java.util.stream.Stream;

/**
 * Fragments one under the other, in one or more columns, over as many pages as they need. Fragments
 * that belong together stay together unless they are taller than a page.
 */
public final class Flow {
  /** How closely the least height of columns is found, mm. */
  private static final double BALANCE_MM = 0.5;

  /** Empty space between columns and what came before them, mm. */
  private static final double BAND_GAP_MM = 5.0;

  /** Sums of heights may differ by rounding, mm. */
  private static final double ROUNDING_MM = 1e-6;

  /**
   * A block in its place in the order.
   *
   * @param block the block
   * @param gapMm empty space above it, dropped at the top of a column
   * @param keep whether the next block must follow in the same column
   * @param repeat what is drawn again above it at the top of a column
   */
  public record Entry(Fragment block, double gapMm, boolean keep, Optional<Fragment> repeat) {
    /**
     * Blocks without gaps between them, kept together.
     *
     * @param blocks the blocks
     * @param gapMm empty space above the first
     * @param keepLast whether what follows belongs to them
     * @return an entry for each
     */
    static List<Entry> chain(List<? extends Fragment> blocks, double gapMm, boolean keepLast) {
      return IntStream.range(0, blocks.size())
          .mapToObj(
              i ->
                  new Entry(
                      blocks.get(i),
                      i == 0 ? gapMm : 0,
                      i < blocks.size() - 1 || keepLast,
                      Optional.empty()))
          .toList();
    }

    /**
     * Rows under headings that come again at the top of every column.
     *
     * @param headings the headings
     * @param rows the rows
     * @param gapMm empty space above the headings
     * @return an entry for each
     */
    public static List<Entry> rows(Fragment headings, List<? extends Fragment> rows, double gapMm) {
      Entry first = new Entry(headings, gapMm, true, Optional.empty());
      return Stream.concat(
              Stream.of(first),
              rows.stream().map(row -> new Entry(row, 0, false, Optional.of(headings))))
          .toList();
    }
  }

  private record Band(
      int columns, double columnWidthMm, double gutterMm, boolean onNewPage, List<Entry> entries) {}

  private final double leftMm;
  private final double topMm;
  private final double bottomMm;
  private final List<Band> bands = new ArrayList<>();

  private List<List<Item>> pages;
  private double y;

  /**
   * An empty flow.
   *
   * @param leftMm left edge of the columns, page mm
   * @param topMm upper edge of every page's body, page mm
   * @param bottomMm its lower edge
   */
  public Flow(double leftMm, double topMm, double bottomMm) {
    this.leftMm = leftMm;
    this.topMm = topMm;
    this.bottomMm = bottomMm;
  }

  /**
   * Starts columns under whatever came before.
   *
   * @param count how many
   * @param columnWidthMm width of each
   * @param gutterMm empty space between two
   */
  public void columns(int count, double columnWidthMm, double gutterMm) {
    bands.add(new Band(count, columnWidthMm, gutterMm, false, new ArrayList<>()));
  }

  /**
   * Starts columns at the top of a page.
   *
   * @param count how many
   * @param columnWidthMm width of each
   * @param gutterMm empty space between two
   */
  void columnsOnNewPage(int count, double columnWidthMm, double gutterMm) {
    bands.add(new Band(count, columnWidthMm, gutterMm, true, new ArrayList<>()));
  }

  /**
   * Adds blocks to the newest columns.
   *
   * @param entries the blocks in their order
   */
  public void add(List<Entry> entries) {
    bands.get(bands.size() - 1).entries().addAll(entries);
  }

  /**
   * Sets everything.
   *
   * @return each page's shapes, at least one page
   * @throws IllegalArgumentException for a block taller than a page
   */
  public List<List<Item>> pages() {
    pages = new ArrayList<>();
    newPage();
    for (Band band : bands) {
      set(band);
    }
    return pages;
  }

  private void newPage() {
    pages.add(new ArrayList<>());
    y = topMm;
  }

  private boolean fresh() {
    return y == topMm;
  }

  private void set(Band band) {
    int next = 0;
    int size = band.entries().size();
    if (!fresh() && size > 0) {
      if (band.onNewPage()) {
        newPage();
      } else {
        y -= BAND_GAP_MM;
      }
    }
    while (next < size) {
      List<Integer> ends = fill(band, next, y - bottomMm);
      int last = ends.get(ends.size() - 1);
      if (last == next && fresh()) {
        throw new IllegalArgumentException("a block is taller than the page has room for");
      }
      if (last == size && band.columns() > 1) {
        ends = balanced(band, next, y - bottomMm);
      }
      double used = 0;
      int from = next;
      for (int c = 0; c < ends.size(); c++) {
        double x = leftMm + c * (band.columnWidthMm() + band.gutterMm());
        used = Math.max(used, draw(band.entries(), from, ends.get(c), x));
        from = ends.get(c);
      }
      next = last;
      y -= used;
      if (next < size) {
        newPage();
      }
    }
  }

  /** The shortest columns that still hold everything, found by halving. */
  private List<Integer> balanced(Band band, int next, double room) {
    int size = band.entries().size();
    List<Integer> best = fill(band, next, room);
    double holds = room;
    double tooShort = 0;
    while (holds - tooShort > BALANCE_MM) {
      double half = (holds + tooShort) / 2;
      List<Integer> shorter = fill(band, next, half);
      if (shorter.get(shorter.size() - 1) == size) {
        holds = half;
        best = shorter;
      } else {
        tooShort = half;
      }
    }
    return best;
  }

  /** Where each column ends, given its height. */
  private List<Integer> fill(Band band, int next, double height) {
    List<Integer> ends = new ArrayList<>();
    int from = next;
    for (int c = 0; c < band.columns(); c++) {
      from = fillColumn(band.entries(), from, height);
      ends.add(from);
    }
    return ends;
  }

  private int fillColumn(List<Entry> entries, int from, double height) {
    double used = 0;
    int i = from;
    while (i < entries.size()) {
      int end = chainEnd(entries, i);
      double chain = 0;
      for (int k = i; k < end; k++) {
        chain += heightOf(entries, k, k == from);
      }
      if (used + chain <= height + ROUNDING_MM) {
        used += chain;
        i = end;
      } else if (i == from && chain > topMm - bottomMm) {
        // Together they would never fit: as many as there is room for.
        while (used + heightOf(entries, i, i == from) <= height + ROUNDING_MM) {
          used += heightOf(entries, i, i == from);
          i++;
        }
        return i;
      } else {
        return i;
      }
    }
    return i;
  }

  private static int chainEnd(List<Entry> entries, int start) {
    int i = start;
    while (entries.get(i).keep() && i + 1 < entries.size()) {
      i++;
    }
    return i + 1;
  }

  private static double heightOf(List<Entry> entries, int i, boolean first) {
    Entry e = entries.get(i);
    double above = first ? e.repeat().map(Fragment::heightMm).orElse(0.0) : e.gapMm();
    return above + e.block().heightMm();
  }

  private double draw(List<Entry> entries, int from, int to, double x) {
    List<Item> out = pages.get(pages.size() - 1);
    double at = y;
    for (int i = from; i < to; i++) {
      Entry e = entries.get(i);
      if (i == from) {
        if (e.repeat().isPresent()) {
          e.repeat().get().draw(x, at, out);
          at -= e.repeat().get().heightMm();
        }
      } else {
        at -= e.gapMm();
      }
      e.block().draw(x, at, out);
      at -= e.block().heightMm();
    }
    return y - at;
  }
}
