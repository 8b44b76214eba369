package dev.towerscribe.sheet.worksheet;

import dev.towerscribe.drawing.Ink;
import dev.towerscribe.drawing.Pen;
import dev.towerscribe.geometry.Box;
import dev.towerscribe.geometry.Vec2;
import dev.towerscribe.geometry.Vec3;
import dev.towerscribe.sheet.worksheet.WorksheetEnd.Point;

/** The strut corner that the worksheet's figures show: plausible, and of no car. */
final class StrutSample {
  /** Radius of its tyre, mm. */
  static final double TYRE_MM = 290.0;

  /** Half its tyre's width, mm. */
  static final double HALF_TYRE_MM = 100.0;

  private static final double TREAD_ROUND_MM = 34.0;

  private StrutSample() {}

  /** A point of the left side, vehicle axes (X forward, Y left, Z up), mm. */
  static Vec3 at(Point point) {
    return switch (point) {
      case TOP -> new Vec3(-20, 545, 790);
      case BALL_JOINT -> new Vec3(8, 662, 178);
      case ARM_FRONT -> new Vec3(28, 338, 196);
      case ARM_REAR -> new Vec3(-280, 352, 222);
      case STRUT_LOWER -> new Vec3(-3, 590, 424);
      case TIE_INNER -> new Vec3(-125, 318, 268);
      case TIE_OUTER -> new Vec3(-122, 640, 252);
      case WHEEL_CENTRE -> new Vec3(0, 724, 290);
      case KNUCKLE_PIVOT -> new Vec3(-6, 618, 322);
    };
  }

  /** Where a point stands in the front view, figure mm: out and height. */
  static Vec2 front(Point point) {
    Vec3 p = at(point);
    return new Vec2(p.y(), p.z());
  }

  /** Where a point stands in the view from below, figure mm: out and fore. */
  static Vec2 below(Point point) {
    Vec3 p = at(point);
    return new Vec2(p.y(), p.x());
  }

  /** The tyre from below or from above, in the figure that is drawn. */
  static void tyre(MirrorPen pen, Pen line) {
    double out = at(Point.WHEEL_CENTRE).y();
    Box tyre = new Box(out - HALF_TYRE_MM, -TYRE_MM, out + HALF_TYRE_MM, TYRE_MM);
    pen.rounded(tyre, TREAD_ROUND_MM, line, Ink.PALE);
  }
}
