package dev.towerscribe.sheet.worksheet;

import dev.towerscribe.drawing.Align;
import dev.towerscribe.drawing.Ink;
import dev.towerscribe.drawing.Pen;
import dev.towerscribe.geometry.Vec2;

/**
 * The sample strut corner from below, forward up the page: x outward from the car's middle plane, y
 * forward of the line through the wheel centres. For the left side, outboard is at the right, as it
 * is for somebody who looks up.
 */
final class BelowView {
  private BelowView() {}

  private static Vec2 at(WorksheetPoint point) {
    return StrutSample.below(point);
  }

  static void draw(MirrorPen pen) {
    tyre(pen);
    hidden(pen);
    FrontView.rack(pen, at(WorksheetPoint.TIE_INNER), at(WorksheetPoint.TIE_OUTER));
    knuckle(pen);
    arm(pen);
    lines(pen);
  }

  private static void tyre(MirrorPen pen) {
    Vec2 w = at(WorksheetPoint.WHEEL_CENTRE);
    double half = StrutSample.HALF_TYRE_MM;
    pen.rounded(
        w.x() - half,
        -StrutSample.TYRE_MM,
        w.x() + half,
        StrutSample.TYRE_MM,
        34,
        Pen.THIN,
        Ink.PALE);
    pen.rounded(w.x() - 80, -205, w.x() + 80, 205, 8, Pen.THIN, Ink.WHITE);
  }

  /** What lies above: spring and tower opening, dashed. */
  private static void hidden(MirrorPen pen) {
    Vec2 top = at(WorksheetPoint.TOP);
    pen.circle(top, 62, Pen.HIDDEN, Ink.NONE);
    Vec2 low = at(WorksheetPoint.STRUT_LOWER);
    pen.circle(low, 25, Pen.OUTLINE, Ink.WHITE);
  }

  private static void knuckle(MirrorPen pen) {
    Vec2 out = at(WorksheetPoint.TIE_OUTER);
    pen.closed(
        Pen.OUTLINE,
        Ink.WHITE,
        new double[][] {
          {out.x() - 12, out.y()},
          {out.x() + 12, out.y() - 4},
          {690, -44},
          {690, 44},
          {640, 40},
          {604, 22},
          {604, -28},
          {636, -40}
        });
    pen.closed(
        Pen.OUTLINE, Ink.WHITE, new double[][] {{690, -58}, {742, -58}, {742, 58}, {690, 58}});
    pen.circle(out, 15, Pen.OUTLINE, Ink.WHITE);
    Vec2 pivot = at(WorksheetPoint.KNUCKLE_PIVOT);
    pen.line(pivot.x(), pivot.y() - 30, pivot.x(), pivot.y() + 36, Pen.HIDDEN);
  }

  private static void arm(MirrorPen pen) {
    Vec2 ball = at(WorksheetPoint.BALL_JOINT);
    Vec2 front = at(WorksheetPoint.ARM_FRONT);
    Vec2 rear = at(WorksheetPoint.ARM_REAR);
    // The rear leg runs back from the front one.
    pen.bar(new Vec2(500, 14), rear, 40, Pen.OUTLINE, Ink.WHITE);
    pen.bar(front, ball, 34, Pen.OUTLINE, Ink.WHITE);
    pen.circle(ball, 19, Pen.OUTLINE, Ink.WHITE);
    pen.bar(
        new Vec2(front.x(), front.y() - 26),
        new Vec2(front.x(), front.y() + 26),
        34,
        Pen.OUTLINE,
        Ink.WHITE);
    pen.bar(
        new Vec2(rear.x(), rear.y() - 26),
        new Vec2(rear.x(), rear.y() + 26),
        34,
        Pen.OUTLINE,
        Ink.WHITE);
  }

  private static void lines(MirrorPen pen) {
    pen.line(255, 0, 830, 0, Pen.CENTRE);
    // The arrow says which way is forward; the words stand clear of the figure.
    pen.arrow(560, 170, 560, 285, Pen.EDGE);
    pen.words(545, 215, FormPieces.WORDS, Align.END, "FORWARD");
  }
}
