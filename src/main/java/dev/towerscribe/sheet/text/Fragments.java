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
      LayerPen notes = LayerPen.notes(out);
      if (!words.isEmpty()) {
        notes.text(leftMm + indentMm, TextStyle.baseMm(topMm, cap), cap, Align.START, words);
      }
    }
  }

  /** A heading on a pale band. */
  public record Band(List<String> lines, double cap, double widthMm) implements Fragment {
    /** How far the words stand in. */
    public static final double INDENT = 2.0;

    @Override
    public double heightMm() {
      return 1.4 + lines.size() * TextStyle.lineMm(cap);
    }

    @Override
    public void draw(double leftMm, double topMm, List<Item> out) {
      LayerPen notes = LayerPen.notes(out);
      double bottom = topMm - heightMm();
      notes.box(leftMm, bottom, leftMm + widthMm, topMm, Pen.NONE, Ink.PALE);
      double y = topMm - 0.7;
      for (String line : lines) {
        notes.text(leftMm + INDENT, TextStyle.baseMm(y, cap), cap, Align.START, line);
        y -= TextStyle.lineMm(cap);
      }
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
      double y = topMm - 1.0;
      for (String line : lines) {
        notes.text(leftMm, TextStyle.baseMm(y, cap), cap, Align.START, line);
        y -= TextStyle.lineMm(cap);
      }
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
      LayerPen notes = LayerPen.notes(out);
      double cap = first.cap();
      double r = 0.24 * cap;
      Vec2 at = new Vec2(leftMm + 0.4 * cap, TextStyle.baseMm(topMm, cap) + 0.42 * cap);
      notes.dot(at, r);
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

  /** Several blocks as one that is never torn apart. */
  public record Stack(List<Fragment> blocks, double gapMm) implements Fragment {
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

  /** Two blocks side by side. */
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

  /** A warning in a heavy frame: white words on a black bar, then what is to be said. */
  public record Warning(List<String> title, double titleCap, Fragment inside, double widthMm)
      implements Fragment {
    /** Room for what is inside. */
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
      double y = topMm - 1.0;
      for (String line : title) {
        notes.text(in, TextStyle.baseMm(y, titleCap), titleCap, Align.START, line, Ink.WHITE);
        y -= TextStyle.lineMm(titleCap);
      }
      inside.draw(in, topMm - barMm() - PAD + 1.0, out);
    }
  }

  /** Lines of a paragraph. */
  public static List<Fragment> lines(String words, double cap, double widthMm, double indentMm) {
    List<Fragment> blocks = new ArrayList<>();
    for (String line : TextStyle.wrap(words, cap, widthMm - indentMm)) {
      blocks.add(new Words(line, cap, indentMm));
    }
    return blocks;
  }

  /** Lines of a point in a list. */
  public static List<Fragment> dotted(String words, double cap, double widthMm) {
    List<Fragment> blocks = new ArrayList<>(lines(words, cap, widthMm, Dotted.indentMm(cap)));
    if (!blocks.isEmpty()) {
      blocks.set(0, new Dotted((Words) blocks.get(0)));
    }
    return blocks;
  }
}
