package dev.towerscribe.sheet.worksheet;

import dev.towerscribe.drawing.Align;
import dev.towerscribe.drawing.Item;
import dev.towerscribe.drawing.LayerPen;
import dev.towerscribe.geometry.Vec2;
import dev.towerscribe.model.Side;
import dev.towerscribe.sheet.text.Fragment;
import dev.towerscribe.sheet.worksheet.WorksheetEnd.Point;
import java.util.List;

/**
 * A strut corner from the front and, under it, from below with forward up the page: what somebody
 * sees who stands before the car, and who lies under it. In both, outboard is the same way on the
 * page, and of the two sides one is the mirror of the other.
 *
 * @param side which corner
 * @param widthMm its width
 * @param heightMm its height
 */
record StrutFigure(Side side, double widthMm, double heightMm) implements Fragment {
  /** What shows of the front view: out, then height, mm of the car. */
  private static final double OUT_FROM = 255;

  private static final double OUT_TO = 830;
  private static final double HEIGHT_TO = 850;

  /** What shows of the view from below: fore, mm of the car. */
  private static final double FORE_FROM = -325;

  private static final double FORE_TO = 305;

  private static final double HEAD = 9.0;
  private static final double FLOOR = 8.0;
  private static final double BELOW_RAISE = 6.0;
  private static final double COLUMN_SHARE = 0.27;
  private static final double COLUMN_GAP = 2.0;

  private double columnMm() {
    return COLUMN_SHARE * widthMm;
  }

  private double scale() {
    return Math.min(
        (widthMm - 2 * (columnMm() + COLUMN_GAP)) / (OUT_TO - OUT_FROM),
        (heightMm - 2 * HEAD - 2 * FLOOR) / (HEIGHT_TO + FORE_TO - FORE_FROM));
  }

  /** A view whose y is 0 at a height of the page. */
  private MirrorPen pen(double leftMm, double zeroY, List<Item> out) {
    double middle = (OUT_FROM + OUT_TO) / 2;
    double x = leftMm + widthMm / 2 - MirrorPen.sign(side) * middle * scale();
    return new MirrorPen(new Vec2(x, zeroY), scale(), MirrorPen.sign(side), out);
  }

  @Override
  public void draw(double leftMm, double topMm, List<Item> out) {
    double frontTop = topMm - HEAD;
    double floor = frontTop - HEIGHT_TO * scale();
    MirrorPen front = pen(leftMm, floor, out);
    head("FROM THE FRONT, looking rearward", leftMm, topMm, out);
    StrutView.fromTheFront(front);
    columns(
        new Callouts(front, StrutSample::front, true, 0),
        List.of(Point.TOP, Point.TIE_INNER, Point.ARM_REAR, Point.ARM_FRONT, Point.BALL_JOINT),
        List.of(Point.STRUT_LOWER, Point.KNUCKLE_PIVOT, Point.WHEEL_CENTRE, Point.TIE_OUTER),
        leftMm,
        frontTop,
        floor);

    double belowTop = floor - FLOOR - HEAD;
    double wheelLine = belowTop - FORE_TO * scale();
    MirrorPen below = pen(leftMm, wheelLine, out);
    head("FROM BELOW, lying under it", leftMm, floor - FLOOR, out);
    StrutView.fromBelow(below);
    columns(
        new Callouts(below, StrutSample::below, false, BELOW_RAISE),
        List.of(Point.ARM_FRONT, Point.TOP, Point.TIE_INNER, Point.ARM_REAR),
        List.of(
            Point.STRUT_LOWER,
            Point.KNUCKLE_PIVOT,
            Point.BALL_JOINT,
            Point.WHEEL_CENTRE,
            Point.TIE_OUTER),
        leftMm,
        belowTop,
        topMm - heightMm + FLOOR);
    double foot = wheelLine + FORE_FROM * scale() - FLOOR + 1.2;
    String lines = "Chain line: wheel-centre line, fore 0. Dashed: the spring, above.";
    below.notes().text(leftMm + widthMm / 2, foot, FormPieces.WORDS, Align.MIDDLE, lines);
  }

  private void columns(
      Callouts names,
      List<Point> inboard,
      List<Point> outboard,
      double leftMm,
      double topMm,
      double bottomMm) {
    int sign = MirrorPen.sign(side);
    double middle = leftMm + widthMm / 2;
    double disc = widthMm / 2 - columnMm() + FormPieces.DISC;
    double room = columnMm() - 2 * FormPieces.DISC - 1.5;
    names.column(inboard, middle - sign * disc, -sign, room, topMm, bottomMm);
    names.column(outboard, middle + sign * disc, sign, room, topMm, bottomMm);
    names.targets();
  }

  /** What the view is, with arrows telling which way is which. */
  private void head(String words, double leftMm, double topMm, List<Item> out) {
    LayerPen notes = LayerPen.notes(out);
    double base = topMm - 1.0 - FormPieces.NAME;
    double middle = leftMm + widthMm / 2;
    notes.text(middle, base, FormPieces.WORDS, Align.MIDDLE, words);
    int sign = MirrorPen.sign(side);
    for (int way : new int[] {-sign, sign}) {
      Vec2 tip = new Vec2(middle + way * widthMm / 2, base + FormPieces.NAME / 2);
      MirrorPen.toward(tip, way, way == sign ? "OUTBOARD" : "INBOARD", base, notes);
    }
  }
}
