package dev.towerscribe.sheet.worksheet;

import dev.towerscribe.drawing.Align;
import dev.towerscribe.drawing.Ink;
import dev.towerscribe.drawing.Item;
import dev.towerscribe.drawing.LayerPen;
import dev.towerscribe.drawing.Pen;
import dev.towerscribe.geometry.Box;
import dev.towerscribe.geometry.Vec2;
import dev.towerscribe.model.Side;
import dev.towerscribe.sheet.text.Fragment;
import java.util.List;

/**
 * A tower top from above, forward up the page, and beside it how its lean, its crown and the
 * pivot's height are read. Of the two sides one is the mirror of the other.
 *
 * @param side which tower
 * @param widthMm its width
 * @param heightMm its height
 */
record TowerFigure(Side side, double widthMm, double heightMm) implements Fragment {
  /** Half of what shows of the tower, mm of the car. */
  private static final double HALF = 104;

  /** Room for words over and under the plan. */
  private static final double HEAD = 15.0;

  private static final double FOOT = 1.0;
  private static final double SECTION_SHARE = 0.4;
  private static final double GUTTER = 5.0;

  /** Places of the landmarks drawn: in and fore, mm of the tower. */
  private static final List<Vec2> LANDMARKS =
      List.of(new Vec2(-66, 58), new Vec2(-58, -72), new Vec2(50, -66));

  private static final List<String> TITLES =
      List.of(
          "Lean, from behind",
          "Lean, from outside",
          "Crown: rock to equal gaps",
          "Pivot height, from the upper face");

  private static final double MARK = 54;
  private static final double OPENING = 33;
  private static final double STRUT_ROD = 9;

  /** Half the height of each small figure. */
  private double halfMm() {
    return heightMm / 8;
  }

  /** How far each small figure reaches to either side. */
  private double reachMm() {
    return widthMm * SECTION_SHARE * 0.3;
  }

  private double planMm() {
    return widthMm * (1 - SECTION_SHARE) - GUTTER;
  }

  private double scale() {
    return Math.min(planMm(), heightMm - HEAD - FOOT) / (2 * HALF);
  }

  /** Where the strut rod stands, page mm. */
  private Vec2 strutRod(double leftMm, double topMm) {
    int sign = MirrorPen.sign(side);
    double middle = leftMm + widthMm / 2;
    return new Vec2(middle - sign * (widthMm / 2 - planMm() / 2), topMm - HEAD - HALF * scale());
  }

  @Override
  public void draw(double leftMm, double topMm, List<Item> out) {
    LayerPen notes = LayerPen.notes(out);
    MirrorPen pen = new MirrorPen(strutRod(leftMm, topMm), scale(), MirrorPen.sign(side), out);
    plan(pen);
    double wide = widthMm * SECTION_SHARE;
    double middle = leftMm + widthMm / 2 + MirrorPen.sign(side) * (widthMm / 2 - wide / 2);
    double each = heightMm / 4;
    for (int i = 0; i < 4; i++) {
      Vec2 at = new Vec2(middle, topMm - (i + 0.5) * each);
      if (i > 0) {
        double y = topMm - i * each;
        notes.line(middle - wide / 2, y, middle + wide / 2, y, Pen.FINE);
      }
      MirrorPen small = new MirrorPen(at, 1.0, MirrorPen.sign(side), out);
      title(small, halfMm() - 1.6 - FormPieces.WORDS, TITLES.get(i));
      switch (i) {
        case 0 -> lean(small, "INNER end lower: inboard +", "in", "out");
        case 1 -> lean(small, "REAR end lower: rearward +", "rear", "front");
        case 2 -> crown(small);
        default -> pivot(small);
      }
    }
  }

  private void plan(MirrorPen pen) {
    double s = pen.scale();
    pen.rounded(Box.around(Vec2.ZERO, 98), 22, Pen.OUTLINE, Ink.NONE);
    pen.circle(Vec2.ZERO, MARK, Pen.HIDDEN, Ink.NONE);
    pen.circle(Vec2.ZERO, OPENING, Pen.FINAL_CUT, Ink.NONE);
    pen.circle(Vec2.ZERO, STRUT_ROD, Pen.OUTLINE, Ink.PALE);
    pen.line(-18, 0, 18, 0, Pen.FINE);
    pen.line(0, -18, 0, 18, Pen.FINE);
    for (int i = 0; i < LANDMARKS.size(); i++) {
      Vec2 at = LANDMARKS.get(i);
      pen.circle(at, 6.5, Pen.OUTLINE, Ink.NONE);
      Vec2 below = at.plus(new Vec2(0, -6.5 - FormPieces.DISC_CLEAR / s));
      FormPieces.disc(Integer.toString(i + 1), pen.at(below), pen.out());
    }
    pen.line(84, -88, 84, 88, Pen.CENTRE);
    // From the strut rod: fore and in.
    pen.arrow(0, 60, 0, 92, Pen.EDGE);
    pen.words(5, 72, Align.START, "fore +");
    pen.arrow(58, 0, 80, 0, Pen.EDGE);
    pen.words(70, 3.0 / s * 0.6, Align.MIDDLE, "in +");
    pen.words(0, -MARK - 6.0 / s, Align.MIDDLE, "mark");
    pen.words(0, -(MARK + OPENING) / 2 - 1.6 / s, Align.MIDDLE, "opening");
    pen.words(0, -27.5, Align.MIDDLE, "rod");
    pen.words(81, 56, Align.END, "line");
    Vec2 top = pen.at(0, HALF);
    double base = top.y() + HEAD - 1 - FormPieces.WORDS;
    pen.notes().text(top.x(), base, FormPieces.WORDS, Align.MIDDLE, "FROM ABOVE: FORWARD is up");
    double low = top.y() + 1.5;
    for (int way : new int[] {-1, 1}) {
      String word = way < 0 ? "OUTBOARD" : "INBOARD";
      double edge = pen.at(way * planMm() / 2 / s, HALF).x();
      Vec2 tip = new Vec2(edge, low + FormPieces.WORDS / 2);
      MirrorPen.toward(tip, way * pen.sign(), word, low, pen.notes());
    }
  }

  private static void title(MirrorPen pen, double y, String words) {
    pen.words(0, y, Align.MIDDLE, words);
  }

  private void lean(MirrorPen pen, String rule, String low, String high) {
    double reach = reachMm();
    double drop = Math.min(3.4, halfMm() * 0.28);
    double y = 0.6;
    pen.bar(new Vec2(-reach, y + drop), new Vec2(reach, y - drop), 1.2, Pen.OUTLINE, Ink.PALE);
    pen.line(-reach, y - drop - 1.2, reach - 2, y - drop - 1.2, Pen.FINE);
    pen.words(-reach - 1.5, y + drop - 1.4, Align.END, high);
    pen.words(reach + 1.5, y - drop - 1.4, Align.START, low);
    title(pen, -halfMm() + 2.0, rule);
  }

  private void crown(MirrorPen pen) {
    double half = halfMm();
    double reach = reachMm();
    double y = -half + 8.4;
    double rise = half - 5.6;
    double[][] skin = new double[21][];
    for (int i = 0; i <= 20; i++) {
      double x = reach * (i - 10) / 10.0;
      skin[i] = new double[] {x, y + rise * (1 - (x / reach) * (x / reach)) * 0.62};
    }
    pen.chain(Pen.EDGE, skin);
    double bar = y + rise * 0.62 + 0.9;
    pen.bar(new Vec2(-reach, bar), new Vec2(reach, bar), 1.2, Pen.OUTLINE, Ink.PALE);
    pen.line(reach + 1.6, y, reach + 1.6, bar - 0.6, Pen.FINE);
    pen.words(reach + 3, (y + bar) / 2 - FormPieces.WORDS / 2, Align.START, "rise");
    pen.line(-reach, y - 1.5, reach, y - 1.5, Pen.FINE);
    for (double x : new double[] {-reach, reach}) {
      pen.line(x, y - 2.6, x, y - 0.4, Pen.FINE);
    }
    title(pen, -half + 1.6, "across");
  }

  private void pivot(MirrorPen pen) {
    double reach = reachMm();
    double face = -halfMm() + 6.5;
    double up = face + Math.min(7.0, halfMm() - 3.5);
    pen.bar(new Vec2(-reach, face - 0.7), new Vec2(-6, face - 0.7), 1.4, Pen.OUTLINE, Ink.PALE);
    pen.bar(new Vec2(6, face - 0.7), new Vec2(reach, face - 0.7), 1.4, Pen.OUTLINE, Ink.PALE);
    pen.chain(Pen.OUTLINE, new double[][] {{-11, face}, {-7, up + 2}, {7, up + 2}, {11, face}});
    pen.circle(new Vec2(0, up), 2.0);
    pen.circle(new Vec2(0, up), 0.6, Pen.NONE, Ink.BLACK);
    pen.line(3, up, reach * 0.75, up, Pen.FINE);
    pen.arrow(reach * 0.65, face, reach * 0.65, up, Pen.FINE);
    pen.words(reach * 0.65 + 1.5, (face + up) / 2 - FormPieces.WORDS / 2, Align.START, "up +");
    pen.words(-reach, face - 6.2, Align.START, "sheet");
  }
}
