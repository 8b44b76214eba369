package dev.towerscribe.sheet.text;

import dev.towerscribe.drawing.Align;
import dev.towerscribe.drawing.Ink;
import dev.towerscribe.drawing.Item;
import dev.towerscribe.drawing.LayerPen;
import dev.towerscribe.drawing.Pen;
import dev.towerscribe.geometry.Vec2;
import java.util.ArrayList;
import java.util.List;

/** The small pieces that text pages are made of. */
public final class Fragments {
  /** Empty space between a frame and what is in it. */
  private static final double PAD = 3.0;

  private Fragments() {}

  /** A line of text, set in by some millimetres. */
  record Words(String words, double cap, double indentMm) implements Fragment {
    @Override
    public double heightMm() {
      return TextStyle.lineMm(cap);
    }

    @Override
    public void draw(double leftMm, double topMm, List<Item> out) {
      TextStyle.lines(LayerPen.notes(out), leftMm + indentMm, topMm, cap, List.of(words));
    }
  }

  /**
   * A heading on a pale band.
   *
   * @param lines its words, broken to the width
   * @param cap height of capitals, mm
   * @param widthMm width of the band
   */
  public record Band(List<String> lines, double cap, double widthMm) implements Fragment {
    /** How far the words stand in. */
    public static final double INDENT = 2.0;

    /**
     * A band, its words broken to its width.
     *
     * @param words the heading
     * @param cap height of capitals, mm
     * @param widthMm width of the band
     * @return the band
     */
    public static Band of(String words, double cap, double widthMm) {
      return new Band(TextStyle.wrap(words, cap, widthMm - 2 * INDENT), cap, widthMm);
    }

    @Override
    public double heightMm() {
      return 1.4 + lines.size() * TextStyle.lineMm(cap);
    }

    @Override
    public void draw(double leftMm, double topMm, List<Item> out) {
      LayerPen notes = LayerPen.notes(out);
      double bottom = topMm - heightMm();
      notes.box(leftMm, bottom, leftMm + widthMm, topMm, Pen.NONE, Ink.PALE);
      TextStyle.lines(notes, leftMm + INDENT, topMm - 0.7, cap, lines);
    }
  }

  /** A heading under a heavy line. */
  record Heading(List<String> lines, double cap, double widthMm) implements Fragment {
    @Override
    public double heightMm() {
      return 1.0 + lines.size() * TextStyle.lineMm(cap);
    }

    @Override
    public void draw(double leftMm, double topMm, List<Item> out) {
      LayerPen notes = LayerPen.notes(out);
      notes.box(leftMm, topMm - 0.9, leftMm + widthMm, topMm, Pen.NONE, Ink.BLACK);
      TextStyle.lines(notes, leftMm, topMm - 1.0, cap, lines);
    }
  }

  /** The first line of a point in a list, with its dot. */
  record Dotted(Words first) implements Fragment {
    /** How far the words stand in. */
    static double indentMm(double cap) {
      return 1.4 * cap;
    }

    @Override
    public double heightMm() {
      return first.heightMm();
    }

    @Override
    public void draw(double leftMm, double topMm, List<Item> out) {
      double cap = first.cap();
      Vec2 at = new Vec2(leftMm + 0.4 * cap, TextStyle.baseMm(topMm, cap) + 0.42 * cap);
      LayerPen.notes(out).dot(at, 0.24 * cap);
      first.draw(leftMm, topMm, out);
    }
  }

  /** The first line of a step: a box to tick and its number. */
  record Step(int number, Words first) implements Fragment {
    /** How far the words stand in. */
    static final double INDENT = 17.0;

    private static final double TICK = 5.5;

    @Override
    public double heightMm() {
      return first.heightMm();
    }

    @Override
    public void draw(double leftMm, double topMm, List<Item> out) {
      LayerPen notes = LayerPen.notes(out);
      double base = TextStyle.baseMm(topMm, first.cap());
      double low = base + first.cap() / 2 - TICK / 2;
      double x = leftMm + 0.3;
      notes.box(x, low, x + TICK, low + TICK, Pen.OUTLINE, Ink.NONE);
      notes.text(leftMm + INDENT - 2.5, base, first.cap(), Align.END, Integer.toString(number));
      first.draw(leftMm, topMm, out);
    }
  }

  /**
   * Several blocks as one that is never torn apart.
   *
   * @param blocks the blocks, downward
   * @param gapMm empty space between two
   */
  public record Stack(List<Fragment> blocks, double gapMm) implements Fragment {
    /** Copies the list. */
    public Stack {
      blocks = List.copyOf(blocks);
    }

    @Override
    public double heightMm() {
      return blocks.stream().mapToDouble(Fragment::heightMm).sum()
          + gapMm * Math.max(0, blocks.size() - 1);
    }

    @Override
    public void draw(double leftMm, double topMm, List<Item> out) {
      double y = topMm;
      for (Fragment block : blocks) {
        block.draw(leftMm, y, out);
        y -= block.heightMm() + gapMm;
      }
    }
  }

  /**
   * Two blocks side by side.
   *
   * @param left the left one
   * @param right the right one
   * @param rightAtMm from left edge to left edge
   */
  public record Beside(Fragment left, Fragment right, double rightAtMm) implements Fragment {
    @Override
    public double heightMm() {
      return Math.max(left.heightMm(), right.heightMm());
    }

    @Override
    public void draw(double leftMm, double topMm, List<Item> out) {
      left.draw(leftMm, topMm, out);
      right.draw(leftMm + rightAtMm, topMm, out);
    }
  }

  /**
   * A warning in a heavy frame: white words on a black bar, then what is to be said.
   *
   * @param title words on the bar, broken to {@link #insideMm}
   * @param titleCap height of their capitals, mm
   * @param inside what is to be said
   * @param widthMm width of the frame
   */
  public record Warning(List<String> title, double titleCap, Fragment inside, double widthMm)
      implements Fragment {
    /**
     * A warning, its title broken to its width.
     *
     * @param title words on the bar
     * @param titleCap height of their capitals, mm
     * @param inside what is to be said
     * @param widthMm width of the frame
     * @return the warning
     */
    public static Warning of(String title, double titleCap, Fragment inside, double widthMm) {
      List<String> lines = TextStyle.wrap(title, titleCap, insideMm(widthMm));
      return new Warning(lines, titleCap, inside, widthMm);
    }

    /**
     * Room for what is inside.
     *
     * @param widthMm width of the frame
     * @return width of what it holds, mm
     */
    public static double insideMm(double widthMm) {
      return widthMm - 2 * (PAD + Pen.HEAVY.widthMm());
    }

    private double barMm() {
      return title.size() * TextStyle.lineMm(titleCap) + 2.0;
    }

    @Override
    public double heightMm() {
      return barMm() + inside.heightMm() + 2 * PAD;
    }

    @Override
    public void draw(double leftMm, double topMm, List<Item> out) {
      LayerPen notes = LayerPen.notes(out);
      double half = Pen.HEAVY.widthMm() / 2;
      double right = leftMm + widthMm;
      notes.box(
          leftMm + half,
          topMm - heightMm() + half,
          right - half,
          topMm - half,
          Pen.HEAVY,
          Ink.NONE);
      notes.box(leftMm, topMm - barMm(), right, topMm, Pen.NONE, Ink.BLACK);
      double in = leftMm + PAD + Pen.HEAVY.widthMm();
      TextStyle.lines(notes, in, topMm - 1.0, titleCap, title, Ink.WHITE);
      inside.draw(in, topMm - barMm() - PAD + 1.0, out);
    }
  }

  /**
   * Lines of a paragraph.
   *
   * @param words its words
   * @param cap height of capitals, mm
   * @param widthMm width of the column
   * @param indentMm how far its lines stand in
   * @return a piece for each line
   */
  public static List<Fragment> lines(String words, double cap, double widthMm, double indentMm) {
    return TextStyle.wrap(words, cap, widthMm - indentMm).stream()
        .<Fragment>map(line -> new Words(line, cap, indentMm))
        .toList();
  }

  /**
   * A paragraph as one piece.
   *
   * @param words its words
   * @param cap height of capitals, mm
   * @param widthMm width of the column
   * @return the piece
   */
  public static Stack paragraph(String words, double cap, double widthMm) {
    return new Stack(lines(words, cap, widthMm, 0), 0);
  }

  /**
   * Points of a list as one piece.
   *
   * @param points each a sentence or more
   * @param cap height of capitals, mm
   * @param widthMm width of the column
   * @param gapMm empty space between two
   * @return the piece
   */
  public static Stack points(List<String> points, double cap, double widthMm, double gapMm) {
    return new Stack(
        points.stream().<Fragment>map(p -> new Stack(dotted(p, cap, widthMm), 0)).toList(), gapMm);
  }

  /**
   * Lines of a point in a list.
   *
   * @param words its words
   * @param cap height of capitals, mm
   * @param widthMm width of the column
   * @return a piece for each line, the first with the dot
   */
  public static List<Fragment> dotted(String words, double cap, double widthMm) {
    List<Fragment> blocks = new ArrayList<>(lines(words, cap, widthMm, Dotted.indentMm(cap)));
    if (!blocks.isEmpty()) {
      blocks.set(0, new Dotted((Words) blocks.get(0)));
    }
    return blocks;
  }
}
