package dev.towerscribe.sheet.worksheet;

import dev.towerscribe.drawing.Align;
import dev.towerscribe.drawing.Ink;
import dev.towerscribe.drawing.Item;
import dev.towerscribe.drawing.LayerPen;
import dev.towerscribe.drawing.Lettering;
import dev.towerscribe.drawing.Pen;
import dev.towerscribe.drawing.TextBlock;
import dev.towerscribe.geometry.Box;
import dev.towerscribe.geometry.Vec2;
import dev.towerscribe.sheet.text.Fragment;
import dev.towerscribe.sheet.text.TextStyle;
import java.util.ArrayList;
import java.util.Collections;
import java.util.List;
import java.util.stream.IntStream;

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

  /** How far a disc reaches from its middle. */
  static final double DISC = 3.7;

  /** How far from a disc's middle a line keeps clear of what stands in it. */
  static final double DISC_CLEAR = DISC + 0.8;

  /** Least clear width of a box to write in. */
  private static final double LEAST_WIDE = 22.0;

  /** Least clear height of a box to write in. */
  private static final double LEAST_HIGH = 8.0;

  /** Empty space between two boxes. */
  private static final double GAP = 1.6;

  /** What letters reach above the base line, in heights of a capital, and a hair. */
  private static final double ABOVE = 1.09;

  /** Room over and under the words of a row. */
  private static final double AIR = 1.9;

  private static final double TICK = 5.5;

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
      return new Says(rows(words, cap, widthMm - GAP), widthMm, Align.START);
    }

    /** A few small words just before what they name. */
    static Says before(String words, double widthMm) {
      return new Says(List.of(new TextBlock.Row(words, WORDS)), widthMm, Align.END);
    }

    /** Another text under this one. */
    Says then(String words, double cap) {
      List<TextBlock.Row> rows = new ArrayList<>(lines);
      rows.addAll(rows(words, cap, widthMm - GAP));
      return new Says(rows, widthMm, align);
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
        Box room = new Box(x, topMm - heightMm, x + cell.widthMm(), topMm);
        if (cell instanceof Says says) {
          double at =
              switch (says.align()) {
                case START -> x;
                case MIDDLE -> x + says.widthMm() / 2;
                case END -> x + says.widthMm() - GAP;
              };
          words(says.lines(), at, middle, says.align(), notes);
        } else if (cell instanceof Blank) {
          notes.frame(room.grown(-GAP / 2), Pen.OUTLINE);
        } else if (cell instanceof Shade shade) {
          notes.box(x, topMm - heightMm, x + shade.reachMm(), topMm, Pen.NONE, Ink.PALE);
        } else if (cell instanceof Tick tick) {
          tick(tick.word(), x, middle, notes);
        } else if (cell instanceof Disc disc) {
          disc(disc.sign(), new Vec2(x + DISC, middle), out);
        } else if (cell instanceof Rule) {
          double base = room.minY() + GAP;
          notes.line(x, base, room.maxX() - GAP, base, Pen.OUTLINE);
        }
        x += cell.widthMm();
      }
    }
  }

  /** One text, broken to a width. */
  static List<TextBlock.Row> rows(String words, double cap, double widthMm) {
    return TextStyle.wrap(words, cap, widthMm).stream()
        .map(line -> new TextBlock.Row(line, cap))
        .toList();
  }

  /** Lines one under the other, their middle at a height. */
  static void words(
      List<TextBlock.Row> lines, double x, double middle, Align align, LayerPen notes) {
    double y = middle + stackMm(lines) / 2;
    for (int i = 0; i < lines.size(); i++) {
      y -= dropMm(lines, i);
      notes.text(x, y, lines.get(i).capMm(), align, lines.get(i).words());
    }
  }

  /**
   * From a line's base line up to the one before it, where the upper line's tails just clear the
   * lower line's letters; of the first line to the top of its capitals.
   */
  private static double dropMm(List<TextBlock.Row> lines, int i) {
    double cap = lines.get(i).capMm();
    return i == 0 ? cap : Lettering.descentMm(lines.get(i - 1).capMm()) + ABOVE * cap;
  }

  /** From the top of the first line's capitals to the last base line. */
  static double stackMm(List<TextBlock.Row> lines) {
    return IntStream.range(0, lines.size()).mapToDouble(i -> dropMm(lines, i)).sum();
  }

  /** A square to tick; x is its left edge. */
  private static void tick(String word, double x, double middle, LayerPen notes) {
    double low = middle - TICK / 2;
    double left = x + Pen.OUTLINE.widthMm() / 2;
    notes.box(left, low, left + TICK, low + TICK, Pen.OUTLINE, Ink.NONE);
    notes.text(left + TICK + 1.5, middle - WORDS / 2, WORDS, Align.START, word);
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

  /** Boxes side by side, after other cells. */
  static List<Cell> boxes(int count, double widthMm, Cell... before) {
    List<Cell> cells = new ArrayList<>(List.of(before));
    cells.addAll(Collections.nCopies(count, new Blank(widthMm)));
    return cells;
  }

  /** A row as high as its words need, and no lower than asked for. */
  static Row row(List<? extends Cell> cells, double leastMm) {
    return new Row(List.copyOf(cells), Math.max(leastMm, wordsMm(cells) + AIR));
  }

  /** Height of the tallest words of a row. */
  private static double wordsMm(List<? extends Cell> cells) {
    return cells.stream()
        .mapToDouble(c -> c instanceof Says says ? stackMm(says.lines()) : 0)
        .max()
        .orElse(0);
  }

  /** A row of small words over columns: as wide as the cells under them. */
  static Row headings(List<String> words, List<Cell> under) {
    List<Cell> cells = new ArrayList<>();
    for (int i = 0; i < under.size(); i++) {
      double wide = under.get(i).widthMm();
      boolean overBox = under.get(i) instanceof Blank;
      var lines = rows(words.get(i), WORDS, wide - (overBox ? 0.5 : GAP));
      cells.add(new Says(lines, wide, overBox ? Align.MIDDLE : Align.START));
    }
    return new Row(cells, wordsMm(cells) + 2.8);
  }
}
