package dev.towerscribe.sheet.worksheet;

import dev.towerscribe.drawing.Align;
import dev.towerscribe.drawing.Ink;
import dev.towerscribe.drawing.Pen;
import dev.towerscribe.geometry.Vec2;
import java.util.List;

/**
 * The sample strut corner from the front: x outward from the car's middle plane, y up from the
 * floor.
 */
final class FrontView {
  private static final double SPRING = 62;
  private static final int COILS = 5;

  private FrontView() {}

  private static Vec2 at(WorksheetPoint point) {
    return StrutSample.front(point);
  }

  static void draw(MirrorPen pen) {
    floor(pen);
    tyre(pen);
    rack(pen, at(WorksheetPoint.TIE_INNER), at(WorksheetPoint.TIE_OUTER));
    pen.circle(at(WorksheetPoint.TIE_OUTER), 14, Pen.OUTLINE, Ink.WHITE);
    arm(pen);
    strut(pen);
    knuckle(pen);
    tower(pen);
  }

  private static void floor(MirrorPen pen) {
    pen.line(255, 0, 830, 0, Pen.FINAL_CUT);
    pen.words(265, -6.2 / pen.scale(), FormPieces.WORDS, Align.START, "FLOOR: height 0");
    // What is read of a point: its height, and how far out it is.
    Vec2 p = at(WorksheetPoint.ARM_FRONT);
    pen.arrow(p.x(), 0, p.x(), p.y() - 24, Pen.FINE);
    pen.words(p.x() + 12, 16, FormPieces.WORDS, Align.START, "height");
    double level = 14;
    pen.arrow(255, level, p.x(), level, Pen.FINE);
    pen.words(260, level + 12, FormPieces.WORDS, Align.START, "out");
  }

  private static void tyre(MirrorPen pen) {
    Vec2 w = at(WorksheetPoint.WHEEL_CENTRE);
    double in = w.x() - StrutSample.HALF_TYRE_MM;
    double out = w.x() + StrutSample.HALF_TYRE_MM;
    double top = w.y() + StrutSample.TYRE_MM;
    // Cut through: tread and side walls above and below, the wheel's dish between them.
    pen.rounded(in, 0, out, 96, 28, Pen.THIN, Ink.PALE);
    pen.rounded(in, top - 96, out, top, 28, Pen.THIN, Ink.PALE);
    pen.chain(
        Pen.THIN, new double[][] {{in + 12, 96}, {in + 22, 116}, {out - 22, 116}, {out - 12, 96}});
    pen.chain(
        Pen.THIN,
        new double[][] {
          {in + 12, top - 96}, {in + 22, top - 116}, {out - 22, top - 116}, {out - 12, top - 96}
        });
    double dish = w.x() + 34;
    pen.chain(
        Pen.THIN,
        new double[][] {{dish + 30, 116}, {dish, 190}, {dish, top - 190}, {dish + 30, top - 116}});
  }

  /** The end of the rack with its boot, and the tie rod: alike in both views. */
  static void rack(MirrorPen pen, Vec2 in, Vec2 out) {
    pen.closed(
        Pen.THIN,
        Ink.NONE,
        new double[][] {
          {255, in.y() - 17},
          {in.x() - 12, in.y() - 17},
          {in.x() - 12, in.y() + 17},
          {255, in.y() + 17}
        });
    pen.bar(in, out, 11, Pen.OUTLINE, Ink.WHITE);
    pen.circle(in, 13, Pen.OUTLINE, Ink.WHITE);
  }

  private static void arm(MirrorPen pen) {
    Vec2 ball = at(WorksheetPoint.BALL_JOINT);
    Vec2 rear = at(WorksheetPoint.ARM_REAR);
    Vec2 front = at(WorksheetPoint.ARM_FRONT);
    pen.bar(rear, ball, 16, Pen.THIN, Ink.WHITE);
    pen.circle(rear, 19, Pen.THIN, Ink.WHITE);
    pen.bar(front, ball, 22, Pen.OUTLINE, Ink.WHITE);
    pen.circle(front, 21, Pen.OUTLINE, Ink.WHITE);
  }

  private static void knuckle(MirrorPen pen) {
    Vec2 ball = at(WorksheetPoint.BALL_JOINT);
    Vec2 hub = at(WorksheetPoint.WHEEL_CENTRE);
    pen.closed(
        Pen.OUTLINE,
        Ink.WHITE,
        new double[][] {
          {ball.x() - 14, ball.y() + 14},
          {ball.x() + 14, ball.y() + 14},
          {690, 240},
          {690, 340},
          {652, 372},
          {634, 384},
          {598, 376},
          {606, 312},
          {628, 290},
          {640, 250}
        });
    pen.closed(
        Pen.OUTLINE,
        Ink.WHITE,
        new double[][] {
          {690, hub.y() - 38}, {742, hub.y() - 38}, {742, hub.y() + 38}, {690, hub.y() + 38}
        });
    pen.circle(ball, 17, Pen.OUTLINE, Ink.WHITE);
    Vec2 out = at(WorksheetPoint.TIE_OUTER);
    pen.circle(out, 14, Pen.OUTLINE, Ink.WHITE);
    Vec2 pivot = at(WorksheetPoint.KNUCKLE_PIVOT);
    pen.circle(pivot, 11, Pen.OUTLINE, Ink.WHITE);
    pen.circle(pivot.x() - 6, pivot.y() + 42, 9, Pen.THIN, Ink.WHITE);
  }

  /** A place on the damper's axis, so high, and so far across it. */
  private static Vec2 onAxis(double height, double across) {
    Vec2 top = at(WorksheetPoint.TOP);
    Vec2 way = top.minus(at(WorksheetPoint.STRUT_LOWER)).unit();
    Vec2 p = top.plus(way.times((height - top.y()) / way.y()));
    return p.plus(way.quarterTurn().times(-across));
  }

  private static void strut(MirrorPen pen) {
    pen.bar(onAxis(540, 0), onAxis(838, 0), 18, Pen.OUTLINE, Ink.WHITE);
    pen.bar(onAxis(336, 0), onAxis(560, 0), 48, Pen.OUTLINE, Ink.WHITE);
    pen.bar(onAxis(548, 0), onAxis(560, 0), 2 * SPRING + 14, Pen.OUTLINE, Ink.WHITE);
    double low = 562;
    double high = 752;
    double step = (high - low) / COILS;
    for (int i = 0; i < COILS; i++) {
      double y = low + i * step;
      Vec2 from = onAxis(y, -SPRING);
      Vec2 to = onAxis(y + step * 0.62, SPRING);
      pen.bar(from, to, 11, Pen.OUTLINE, Ink.WHITE);
    }
    pen.bar(onAxis(752, 0), onAxis(764, 0), 2 * SPRING + 8, Pen.OUTLINE, Ink.WHITE);
    // The old mount: rubber and bearing under the tower.
    Vec2 a = onAxis(766, -50);
    Vec2 b = onAxis(766, 50);
    Vec2 c = onAxis(806, 34);
    Vec2 d = onAxis(806, -34);
    pen.closed(Pen.OUTLINE, Ink.PALE, List.of(a, b, c, d));
    // The strut rod's nut, left alone.
    pen.bar(onAxis(820, 0), onAxis(838, 0), 30, Pen.OUTLINE, Ink.WHITE);
  }

  /**
   * The pressed sheet over the strut, leaning inboard; its opening is where the strut rod comes
   * through.
   */
  private static void tower(MirrorPen pen) {
    pen.chain(Pen.EDGE, new double[][] {{404, 610}, {428, 770}, {448, 792}, {508, 804}});
    pen.chain(Pen.EDGE, new double[][] {{576, 814}, {648, 826}, {668, 812}, {690, 742}});
  }
}
