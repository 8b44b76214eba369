package dev.towerscribe.sheet.worksheet;

import static dev.towerscribe.sheet.worksheet.WorksheetPoint.ARM_FRONT;
import static dev.towerscribe.sheet.worksheet.WorksheetPoint.ARM_REAR;
import static dev.towerscribe.sheet.worksheet.WorksheetPoint.BALL_JOINT;
import static dev.towerscribe.sheet.worksheet.WorksheetPoint.KNUCKLE_PIVOT;
import static dev.towerscribe.sheet.worksheet.WorksheetPoint.STRUT_LOWER;
import static dev.towerscribe.sheet.worksheet.WorksheetPoint.TIE_INNER;
import static dev.towerscribe.sheet.worksheet.WorksheetPoint.TIE_OUTER;
import static dev.towerscribe.sheet.worksheet.WorksheetPoint.TOP;
import static dev.towerscribe.sheet.worksheet.WorksheetPoint.WHEEL_CENTRE;

import dev.towerscribe.drawing.Align;
import dev.towerscribe.drawing.Item;
import dev.towerscribe.drawing.LayerPen;
import dev.towerscribe.drawing.Pen;
import dev.towerscribe.geometry.Vec2;
import dev.towerscribe.model.Side;
import dev.towerscribe.sheet.text.Fragment;
import java.util.List;

/**
 * A strut corner from the front and, under it, from below with forward up the page: what somebody
 * sees who stands before the car, and who lies under it. In both, outboard is the same way on the
 * page, and of the two sides one is the mirror of the other.
 */
final class StrutFigure implements Fragment {
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

  private final Side side;
  private final double widthMm;
  private final double heightMm;
  private final double columnMm;
  private final double scale;

  StrutFigure(Side side, double widthMm, double heightMm) {
    this.side = side;
    this.widthMm = widthMm;
    this.heightMm = heightMm;
    this.columnMm = COLUMN_SHARE * widthMm;
    double high = HEIGHT_TO + FORE_TO - FORE_FROM;
    this.scale =
        Math.min(
            (widthMm - 2 * (columnMm + COLUMN_GAP)) / (OUT_TO - OUT_FROM),
            (heightMm - 2 * HEAD - 2 * FLOOR) / high);
  }

  @Override
  public double heightMm() {
    return heightMm;
  }

  /** Page x of out = 0. */
  private double originX(double leftMm) {
    double middle = (OUT_FROM + OUT_TO) / 2;
    return leftMm + widthMm / 2 - MirrorPen.sign(side) * middle * scale;
  }

  @Override
  public void draw(double leftMm, double topMm, List<Item> out) {
    LayerPen notes = LayerPen.notes(out);
    double frontTop = topMm - HEAD;
    double floor = frontTop - HEIGHT_TO * scale;
    MirrorPen front =
        new MirrorPen(new Vec2(originX(leftMm), floor), scale, MirrorPen.sign(side), out);
    head("FROM THE FRONT, looking rearward", leftMm, topMm, out);
    FrontView.draw(front);
    columns(
        new Callouts(front, StrutSample::front, true, FormPieces.NAME, 0),
        List.of(TOP, TIE_INNER, ARM_REAR, ARM_FRONT, BALL_JOINT),
        List.of(STRUT_LOWER, KNUCKLE_PIVOT, WHEEL_CENTRE, TIE_OUTER),
        leftMm,
        frontTop,
        floor);

    double belowTop = floor - FLOOR - HEAD;
    double wheelLine = belowTop - FORE_TO * scale;
    MirrorPen below =
        new MirrorPen(new Vec2(originX(leftMm), wheelLine), scale, MirrorPen.sign(side), out);
    head("FROM BELOW, lying under it", leftMm, floor - FLOOR, out);
    BelowView.draw(below);
    columns(
        new Callouts(below, StrutSample::below, false, FormPieces.NAME, BELOW_RAISE),
        List.of(ARM_FRONT, TOP, TIE_INNER, ARM_REAR),
        List.of(STRUT_LOWER, KNUCKLE_PIVOT, BALL_JOINT, WHEEL_CENTRE, TIE_OUTER),
        leftMm,
        belowTop,
        topMm - heightMm + FLOOR);
    notes.text(
        leftMm + widthMm / 2,
        wheelLine + FORE_FROM * scale - FLOOR + 1.2,
        FormPieces.WORDS,
        Align.MIDDLE,
        "Chain line: wheel-centre line, fore 0. Dashed: the spring, above.");
  }

  private void columns(
      Callouts names,
      List<WorksheetPoint> inboard,
      List<WorksheetPoint> outboard,
      double leftMm,
      double topMm,
      double bottomMm) {
    int sign = MirrorPen.sign(side);
    double middle = leftMm + widthMm / 2;
    double disc = widthMm / 2 - columnMm + FormPieces.discMm();
    double room = columnMm - 2 * FormPieces.discMm() - 1.5;
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
    double y = base + FormPieces.NAME / 2;
    String in = "INBOARD";
    String outward = "OUTBOARD";
    double arrow = 9.0;
    for (int way : new int[] {-sign, sign}) {
      double edge = middle + way * widthMm / 2;
      MirrorPen.arrow(new Vec2(edge - way * arrow, y), new Vec2(edge, y), Pen.EDGE, out);
      String word = way == sign ? outward : in;
      notes.text(
          edge - way * (arrow + 1.5),
          base,
          FormPieces.WORDS,
          way < 0 ? Align.START : Align.END,
          word);
    }
  }
}
