package dev.towerscribe.sheet.worksheet;

import dev.towerscribe.drawing.Align;
import dev.towerscribe.drawing.Ink;
import dev.towerscribe.drawing.Item;
import dev.towerscribe.drawing.LayerPen;
import dev.towerscribe.drawing.Lettering;
import dev.towerscribe.drawing.Pen;
import dev.towerscribe.drawing.TextBlock;
import dev.towerscribe.geometry.Vec2;
import dev.towerscribe.sheet.text.Fragment;
import dev.towerscribe.sheet.text.TextStyle;
import java.util.ArrayList;
import java.util.Collections;
import java.util.List;

/**
 * Pieces of a form that is filled in by hand, lying under a car, with oily fingers: boxes to write
 * in, squares to tick, and large lettering. Heights of capitals and lengths in mm.
 */
final class FormPieces {
  /** Running words; nothing on a form is lettered smaller. */
  static final double WORDS = 3.5;

  /** Names of points. */
  static final double NAME = 4.5;

  /** Headings. */
  static final double HEADING = 4.5;

  /** Least clear width of a box to write in. */
  static final double LEAST_WIDE = 22.0;

  /** Least clear height of a box to write in. */
  static final double LEAST_HIGH = 8.0;

  /** Empty space between two boxes. */
  private static final double GAP = 1.6;

  /** What letters reach above the base line, in heights of a capital, and a hair. */
  private static final double ABOVE = 1.09;

  /** Room over and under the words of a row. */
  private static final double AIR = 1.9;

  private static final double TICK = 5.5;
  private static final double DISC = 3.7;

  private FormPieces() {}

  /** What stands in one place of a row. */
  sealed interface Cell {
    /** Its share of the row, mm. */
    double widthMm();
  }

  /**
   * Words, in the middle of the row's height.
   *
   * @param lines from the top
   * @param widthMm room
   * @param align where in it
   */
  record Says(List<TextBlock.Row> lines, double widthMm, Align align) implements Cell {
    Says {
      lines = List.copyOf(lines);
    }

    /** One text, broken to the room. */
    static Says wrapped(String words, double cap, double widthMm) {
      List<TextBlock.Row> rows = new ArrayList<>();
      for (String line : TextStyle.wrap(words, cap, widthMm - GAP)) {
        rows.add(new TextBlock.Row(line, cap));
      }
      return new Says(rows, widthMm, Align.START);
    }

    /** Another text under this one. */
    Says then(String words, double cap) {
      List<TextBlock.Row> rows = new ArrayList<>(lines);
      rows.addAll(wrapped(words, cap, widthMm).lines());
      return new Says(rows, widthMm, align);
    }

    double heightMm() {
      return stackMm(lines);
    }
  }

  /** A box to write in; the gap round it belongs to its width. */
  record Blank(double widthMm) implements Cell {
    /** Wide enough for the least clear width, its lines and the gap. */
    static final double LEAST = LEAST_WIDE + GAP + 2 * Pen.OUTLINE.widthMm();
  }

  /** Empty room. */
  record Gap(double widthMm) implements Cell {}

  /**
   * A pale ground under the cells that follow, to tell a row of two lines from the next; takes no
   * room itself.
   */
  record Shade(double reachMm) implements Cell {
    @Override
    public double widthMm() {
      return 0;
    }
  }

  /** A square to tick, with a word after it. */
  record Tick(String word, double widthMm) implements Cell {}

  /** A point's number or a mark's letter, white in a black disc. */
  record Disc(String sign, double widthMm) implements Cell {}

  /** A name to be given by hand: a line to write on. */
  record Rule(double widthMm) implements Cell {}

  /** A row: cells side by side. */
  record Row(List<Cell> cells, double heightMm) implements Fragment {
    /** Height of a row whose boxes have the least clear height. */
    static final double LEAST = LEAST_HIGH + GAP + 2 * Pen.OUTLINE.widthMm();

    Row {
      cells = List.copyOf(cells);
    }

    @Override
    public void draw(double leftMm, double topMm, List<Item> out) {
      LayerPen notes = LayerPen.notes(out);
      double x = leftMm;
      double middle = topMm - heightMm / 2;
      for (Cell cell : cells) {
        if (cell instanceof Says says) {
          words(says, x, middle, out);
        } else if (cell instanceof Blank blank) {
          notes.box(
              x + GAP / 2,
              topMm - heightMm + GAP / 2,
              x + blank.widthMm() - GAP / 2,
              topMm - GAP / 2,
              Pen.OUTLINE,
              Ink.NONE);
        } else if (cell instanceof Shade shade) {
          notes.box(x, topMm - heightMm, x + shade.reachMm(), topMm, Pen.NONE, Ink.PALE);
        } else if (cell instanceof Tick tick) {
          tick(tick.word(), x, middle, out);
        } else if (cell instanceof Disc disc) {
          disc(disc.sign(), new Vec2(x + DISC, middle), out);
        } else if (cell instanceof Rule rule) {
          double base = topMm - heightMm + GAP;
          notes.line(x, base, x + rule.widthMm() - GAP, base, Pen.OUTLINE);
        }
        x += cell.widthMm();
      }
    }
  }

  private static void words(Says says, double x, double middle, List<Item> out) {
    LayerPen notes = LayerPen.notes(out);
    double at =
        switch (says.align()) {
          case START -> x;
          case MIDDLE -> x + says.widthMm() / 2;
          case END -> x + says.widthMm() - GAP;
        };
    double y = middle + says.heightMm() / 2;
    for (int i = 0; i < says.lines().size(); i++) {
      TextBlock.Row line = says.lines().get(i);
      y -= i == 0 ? line.capMm() : stepMm(says.lines().get(i - 1), line);
      if (!line.words().isEmpty()) {
        notes.text(at, y, line.capMm(), says.align(), line.words());
      }
    }
  }

  /** From one base line to the next: the upper line's tails just clear the lower line's letters. */
  static double stepMm(TextBlock.Row upper, TextBlock.Row lower) {
    return Lettering.descentMm(upper.capMm()) + ABOVE * lower.capMm();
  }

  /** From the top of the first line's capitals to the last base line. */
  static double stackMm(List<TextBlock.Row> lines) {
    double high = 0;
    for (int i = 0; i < lines.size(); i++) {
      high += i == 0 ? lines.get(i).capMm() : stepMm(lines.get(i - 1), lines.get(i));
    }
    return high;
  }

  /** A square to tick; x is its left edge. */
  static void tick(String word, double x, double middle, List<Item> out) {
    LayerPen notes = LayerPen.notes(out);
    double low = middle - TICK / 2;
    double left = x + Pen.OUTLINE.widthMm() / 2;
    notes.box(left, low, left + TICK, low + TICK, Pen.OUTLINE, Ink.NONE);
    if (!word.isEmpty()) {
      notes.text(left + TICK + 1.5, middle - WORDS / 2, WORDS, Align.START, word);
    }
  }

  /** Room that a square and its word take. */
  static double tickMm(String word) {
    return TICK + 1.5 + Lettering.width(word, WORDS) + 2.5;
  }

  /** White letters in a black disc. */
  static void disc(String sign, Vec2 at, List<Item> out) {
    LayerPen notes = LayerPen.notes(out);
    notes.dot(at, DISC);
    notes.text(at.x(), at.y() - NAME / 2, NAME, Align.MIDDLE, sign, Ink.WHITE);
  }

  /** How far from a disc's middle a line keeps clear of what stands in it. */
  static double discClearMm() {
    return DISC + 0.8;
  }

  /** How far a disc reaches from its middle. */
  static double discMm() {
    return DISC;
  }

  /** Boxes side by side, after other cells. */
  static List<Cell> boxes(int count, double widthMm, Cell... before) {
    List<Cell> cells = new ArrayList<>(List.of(before));
    cells.addAll(Collections.nCopies(count, new Blank(widthMm)));
    return cells;
  }

  /** A row as high as its words need, and no lower than asked for. */
  static Row row(List<? extends Cell> cells, double leastMm) {
    double high = leastMm;
    for (Cell cell : cells) {
      if (cell instanceof Says says) {
        high = Math.max(high, says.heightMm() + AIR);
      }
    }
    return new Row(List.copyOf(cells), high);
  }

  /** A row of small words over columns: as wide as the cells under them. */
  static Row headings(List<String> words, List<? extends Cell> under) {
    List<Cell> cells = new ArrayList<>();
    double high = 0;
    for (int i = 0; i < under.size(); i++) {
      double wide = under.get(i).widthMm();
      boolean overBox = under.get(i) instanceof Blank;
      List<TextBlock.Row> rows = new ArrayList<>();
      if (!words.get(i).isEmpty()) {
        for (String line : TextStyle.wrap(words.get(i), WORDS, wide - (overBox ? 0.5 : GAP))) {
          rows.add(new TextBlock.Row(line, WORDS));
        }
      }
      Says says = new Says(rows, wide, overBox ? Align.MIDDLE : Align.START);
      high = Math.max(high, says.heightMm());
      cells.add(says);
    }
    return new Row(cells, high + 2.8);
  }
}
