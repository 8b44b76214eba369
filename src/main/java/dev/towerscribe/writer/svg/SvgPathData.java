package dev.towerscribe.writer.svg;

import dev.towerscribe.drawing.TracedPath;
import dev.towerscribe.drawing.Unreadable;
import dev.towerscribe.geometry.Vec2;
import java.util.ArrayList;
import java.util.List;

/** Follows a path's data in the path's own user units. */
final class SvgPathData {
  /** Points taken along each arc. */
  private static final int SAMPLES = 16;

  private SvgPathData() {}

  /** Reads path data; capital letters mean places, small ones steps from where the path is. */
  static TracedPath parse(String data) throws Unreadable {
    TracedPath path = new TracedPath();
    SvgScan scan = new SvgScan(data);
    char command = 0;
    Vec2 at = Vec2.ZERO;
    while (scan.hasMore()) {
      if (!scan.atNumber()) {
        command = scan.letter();
      } else if (command == 'M' || command == 'm') {
        command = command == 'M' ? 'L' : 'l';
      } else if (command == 0 || command == 'Z' || command == 'z') {
        throw new Unreadable("a path with a number out of place");
      }
      Vec2 origin = Character.isLowerCase(command) ? at : Vec2.ZERO;
      switch (Character.toUpperCase(command)) {
        case 'M' -> path.moveTo(point(scan, origin));
        case 'L' -> path.lineTo(point(scan, origin));
        case 'H' -> path.lineTo(new Vec2(origin.x() + scan.number(), at.y()));
        case 'V' -> path.lineTo(new Vec2(at.x(), origin.y() + scan.number()));
        case 'C' -> path.curveTo(point(scan, origin), point(scan, origin), point(scan, origin));
        case 'A' -> arcTo(path, scan, origin);
        case 'Z' -> path.close();
        default -> throw new Unreadable("the path command " + command);
      }
      at = path.at();
    }
    return path;
  }

  /** An arc given by its ends, as SVG 2 tells how to find its centre (appendix B.2.4). */
  private static void arcTo(TracedPath path, SvgScan scan, Vec2 origin) throws Unreadable {
    double rX = Math.abs(scan.number());
    double rY = Math.abs(scan.number());
    double turn = scan.number();
    boolean large = scan.flag();
    boolean sweep = scan.flag();
    Vec2 from = path.at();
    Vec2 to = point(scan, origin);
    if (rX == 0 || rY == 0 || from.equals(to)) {
      path.lineTo(to);
      return;
    }
    double cos = Math.cos(Math.toRadians(turn));
    double sin = Math.sin(Math.toRadians(turn));
    double halfX = (from.x() - to.x()) / 2;
    double halfY = (from.y() - to.y()) / 2;
    double x1 = cos * halfX + sin * halfY;
    double y1 = -sin * halfX + cos * halfY;
    double tooFar = Math.sqrt(x1 * x1 / (rX * rX) + y1 * y1 / (rY * rY));
    if (tooFar > 1) {
      rX *= tooFar;
      rY *= tooFar;
    }
    double below = rX * rX * y1 * y1 + rY * rY * x1 * x1;
    double factor = Math.sqrt(Math.max(0, rX * rX * rY * rY / below - 1));
    if (large == sweep) {
      factor = -factor;
    }
    double cx1 = factor * rX * y1 / rY;
    double cy1 = -factor * rY * x1 / rX;
    double cx = cos * cx1 - sin * cy1 + (from.x() + to.x()) / 2;
    double cy = sin * cx1 + cos * cy1 + (from.y() + to.y()) / 2;
    double begin = Math.atan2((y1 - cy1) / rY, (x1 - cx1) / rX);
    double end = Math.atan2((-y1 - cy1) / rY, (-x1 - cx1) / rX);
    double through = end - begin;
    if (sweep && through < 0) {
      through += 2 * Math.PI;
    } else if (!sweep && through > 0) {
      through -= 2 * Math.PI;
    }
    List<Vec2> points = new ArrayList<>(SAMPLES);
    for (int i = 1; i < SAMPLES; i++) {
      double angle = begin + through * i / SAMPLES;
      double x = rX * Math.cos(angle);
      double y = rY * Math.sin(angle);
      points.add(new Vec2(cx + cos * x - sin * y, cy + sin * x + cos * y));
    }
    points.add(to);
    path.curveThrough(points);
  }

  private static Vec2 point(SvgScan scan, Vec2 origin) throws Unreadable {
    double x = scan.number();
    double y = scan.number();
    return new Vec2(origin.x() + x, origin.y() + y);
  }
}
