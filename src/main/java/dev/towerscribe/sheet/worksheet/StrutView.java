package dev.towerscribe.sheet.worksheet;

import dev.towerscribe.drawing.Align;
import dev.towerscribe.drawing.Ink;
import dev.towerscribe.drawing.Pen;
import dev.towerscribe.geometry.Box;
import dev.towerscribe.geometry.Vec2;
import dev.towerscribe.sheet.worksheet.WorksheetEnd.Point;
import java.util.List;
import java.util.function.Function;

/**
 * The sample strut corner from the front or from below, x outward from the car's middle plane. For
 * the left side, outboard is at the right from below too, as it is for somebody who looks up.
 *
 * @param pen what it is drawn with
 * @param place where a point stands in the view
 */
record StrutView(MirrorPen pen, Function<Point, Vec2> place) {
  private static final double SPRING = 62;
  private static final int COILS = 5;

  /** Where both views begin, out. */
  private static final double INNER_END = 255;

  /** From the front: y up from the floor. */
  static void fromTheFront(MirrorPen pen) {
    StrutView view = new StrutView(pen, StrutSample::front);
    view.floor();
    view.tyreCutThrough();
    view.rack();
    pen.circle(view.at(Point.TIE_OUTER), 14);
    view.armFromTheFront();
    view.strut();
    view.knuckleFromTheFront();
    view.tower();
  }

  /** From below: y forward of the line through the wheel centres. */
  static void fromBelow(MirrorPen pen) {
    StrutView view = new StrutView(pen, StrutSample::below);
    view.wheel();
    // What lies above: the spring in the tower's opening, dashed, and the strut tube.
    pen.circle(view.at(Point.TOP), SPRING, Pen.HIDDEN, Ink.NONE);
    pen.circle(view.at(Point.STRUT_LOWER), 25);
    view.rack();
    view.knuckleFromBelow();
    view.armFromBelow();
    pen.line(INNER_END, 0, 830, 0, Pen.CENTRE);
    // The arrow says which way is forward; the words stand clear of the figure.
    pen.arrow(560, 170, 560, 285, Pen.EDGE);
    pen.words(545, 215, Align.END, "FORWARD");
  }

  private Vec2 at(Point point) {
    return place.apply(point);
  }

  private void floor() {
    pen.line(INNER_END, 0, 830, 0, Pen.FINAL_CUT);
    pen.words(265, -6.2 / pen.scale(), Align.START, "FLOOR: height 0");
    // What is read of a point: its height, and how far out it is.
    Vec2 p = at(Point.ARM_FRONT);
    pen.arrow(p.x(), 0, p.x(), p.y() - 24, Pen.FINE);
    pen.words(p.x() + 12, 16, Align.START, "height");
    double level = 14;
    pen.arrow(INNER_END, level, p.x(), level, Pen.FINE);
    pen.words(260, level + 12, Align.START, "out");
  }

  /** Tread and side walls above and below, the wheel's dish between them. */
  private void tyreCutThrough() {
    Vec2 w = at(Point.WHEEL_CENTRE);
    double in = w.x() - StrutSample.HALF_TYRE_MM;
    double out = w.x() + StrutSample.HALF_TYRE_MM;
    double top = w.y() + StrutSample.TYRE_MM;
    double wall = 96;
    double rim = 116;
    pen.rounded(new Box(in, 0, out, wall), 28, Pen.THIN, Ink.PALE);
    pen.rounded(new Box(in, top - wall, out, top), 28, Pen.THIN, Ink.PALE);
    pen.chain(
        Pen.THIN,
        new double[][] {{in + 12, wall}, {in + 22, rim}, {out - 22, rim}, {out - 12, wall}});
    pen.chain(
        Pen.THIN,
        new double[][] {
          {in + 12, top - wall}, {in + 22, top - rim}, {out - 22, top - rim}, {out - 12, top - wall}
        });
    double dish = w.x() + 34;
    pen.chain(
        Pen.THIN,
        new double[][] {{dish + 30, rim}, {dish, 190}, {dish, top - 190}, {dish + 30, top - rim}});
  }

  private void wheel() {
    StrutSample.tyre(pen, Pen.THIN);
    double out = at(Point.WHEEL_CENTRE).x();
    pen.rounded(new Box(out - 80, -205, out + 80, 205), 8, Pen.THIN, Ink.WHITE);
  }

  /** The end of the rack with its boot, and the tie rod. */
  private void rack() {
    Vec2 in = at(Point.TIE_INNER);
    Box boot = new Box(INNER_END, in.y() - 17, in.x() - 12, in.y() + 17);
    pen.closed(Pen.THIN, Ink.NONE, boot.corners());
    pen.bar(in, at(Point.TIE_OUTER), 11);
    pen.circle(in, 13);
  }

  private void armFromTheFront() {
    Vec2 ball = at(Point.BALL_JOINT);
    Vec2 rear = at(Point.ARM_REAR);
    Vec2 front = at(Point.ARM_FRONT);
    pen.bar(rear, ball, 16, Pen.THIN, Ink.WHITE);
    pen.circle(rear, 19, Pen.THIN, Ink.WHITE);
    pen.bar(front, ball, 22);
    pen.circle(front, 21);
  }

  private void armFromBelow() {
    Vec2 ball = at(Point.BALL_JOINT);
    Vec2 front = at(Point.ARM_FRONT);
    Vec2 rear = at(Point.ARM_REAR);
    // The rear leg runs back from the front one.
    pen.bar(new Vec2(500, 14), rear, 40);
    pen.bar(front, ball, 34);
    pen.circle(ball, 19);
    Vec2 half = new Vec2(0, 26);
    for (Vec2 bush : List.of(front, rear)) {
      pen.bar(bush.minus(half), bush.plus(half), 34);
    }
  }

  private void knuckleFromTheFront() {
    Vec2 ball = at(Point.BALL_JOINT);
    pen.closed(
        new double[][] {
          {ball.x() - 14, ball.y() + 14}, {ball.x() + 14, ball.y() + 14}, {690, 240}, {690, 340},
          {652, 372}, {634, 384}, {598, 376}, {606, 312},
          {628, 290}, {640, 250}
        });
    hub(38);
    pen.circle(ball, 17);
    pen.circle(at(Point.TIE_OUTER), 14);
    Vec2 pivot = at(Point.KNUCKLE_PIVOT);
    pen.circle(pivot, 11);
    pen.circle(pivot.plus(new Vec2(-6, 42)), 9, Pen.THIN, Ink.WHITE);
  }

  private void knuckleFromBelow() {
    Vec2 out = at(Point.TIE_OUTER);
    pen.closed(
        new double[][] {
          {out.x() - 12, out.y()}, {out.x() + 12, out.y() - 4}, {690, -44}, {690, 44},
          {640, 40}, {604, 22}, {604, -28}, {636, -40}
        });
    hub(58);
    pen.circle(out, 15);
    Vec2 pivot = at(Point.KNUCKLE_PIVOT);
    pen.line(pivot.x(), pivot.y() - 30, pivot.x(), pivot.y() + 36, Pen.HIDDEN);
  }

  private void hub(double half) {
    double middle = at(Point.WHEEL_CENTRE).y();
    pen.closed(Pen.OUTLINE, Ink.WHITE, new Box(690, middle - half, 742, middle + half).corners());
  }

  /** A place on the damper's axis, so high, and so far across it. */
  private Vec2 onAxis(double height, double across) {
    Vec2 top = at(Point.TOP);
    Vec2 way = top.minus(at(Point.STRUT_LOWER)).unit();
    Vec2 p = top.plus(way.times((height - top.y()) / way.y()));
    return p.plus(way.quarterTurn().times(-across));
  }

  /** A round thing about the damper's axis, from one height to another. */
  private void turned(double from, double to, double diameter) {
    pen.bar(onAxis(from, 0), onAxis(to, 0), diameter);
  }

  private void strut() {
    turned(540, 838, 18);
    turned(336, 560, 48);
    turned(548, 560, 2 * SPRING + 14);
    double low = 562;
    double high = 752;
    double step = (high - low) / COILS;
    for (int i = 0; i < COILS; i++) {
      double y = low + i * step;
      pen.bar(onAxis(y, -SPRING), onAxis(y + step * 0.62, SPRING), 11);
    }
    turned(752, 764, 2 * SPRING + 8);
    // The old mount: rubber and bearing under the tower.
    List<Vec2> mount =
        List.of(onAxis(766, -50), onAxis(766, 50), onAxis(806, 34), onAxis(806, -34));
    pen.closed(Pen.OUTLINE, Ink.PALE, mount);
    // The strut rod's nut, left alone.
    turned(820, 838, 30);
  }

  /**
   * The pressed sheet over the strut, leaning inboard; its opening is where the strut rod comes
   * through.
   */
  private void tower() {
    pen.chain(Pen.EDGE, new double[][] {{404, 610}, {428, 770}, {448, 792}, {508, 804}});
    pen.chain(Pen.EDGE, new double[][] {{576, 814}, {648, 826}, {668, 812}, {690, 742}});
  }
}
