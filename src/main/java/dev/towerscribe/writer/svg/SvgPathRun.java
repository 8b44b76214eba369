package dev.towerscribe.writer.svg;

import dev.towerscribe.geometry.Vec2;
import java.util.ArrayList;
import java.util.List;

/** One run of a path, from one "move to" up to the next, in the path's own user units. */
final class SvgPathRun {
  /** Points taken along each curve or arc. */
  private static final int SAMPLES = 16;

  /** Pairs of ends of its straight stretches. */
  final List<Vec2> straights = new ArrayList<>();

  private final List<Vec2> points = new ArrayList<>();
  private boolean curved;

  private SvgPathRun(Vec2 start) {
    points.add(start);
  }

  /** The outline's points if it is closed and nowhere straight; else none. */
  List<Vec2> roundOutline() {
    boolean ends = last().equals(points.get(0));
    return curved && straights.isEmpty() && ends ? points.subList(0, points.size() - 1) : List.of();
  }

  private Vec2 last() {
    return points.get(points.size() - 1);
  }

  private void lineTo(Vec2 p) {
    straights.add(last());
    straights.add(p);
    points.add(p);
  }

  private void close() {
    if (!last().equals(points.get(0))) {
      lineTo(points.get(0));
    }
  }

  private void curveTo(Vec2 p1, Vec2 p2, Vec2 p3) {
    curved = true;
    Vec2 p0 = last();
    for (int i = 1; i < SAMPLES; i++) {
      double t = (double) i / SAMPLES;
      Vec2 a = p0.toward(p1, t);
      Vec2 b = p1.toward(p2, t);
      Vec2 c = p2.toward(p3, t);
      points.add(a.toward(b, t).toward(b.toward(c, t), t));
    }
    points.add(p3);
  }

  /** An arc given by its ends, as SVG 2 tells how to find its centre (appendix B.2.4). */
  private void arcTo(double rx, double ry, double turn, boolean large, boolean sweep, Vec2 to) {
    Vec2 from = last();
    double rX = Math.abs(rx);
    double rY = Math.abs(ry);
    if (rX == 0 || rY == 0 || from.equals(to)) {
      lineTo(to);
      return;
    }
    curved = true;
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
    for (int i = 1; i < SAMPLES; i++) {
      double angle = begin + through * i / SAMPLES;
      double x = rX * Math.cos(angle);
      double y = rY * Math.sin(angle);
      points.add(new Vec2(cx + cos * x - sin * y, cy + sin * x + cos * y));
    }
    points.add(to);
  }

  /** Reads path data; capital letters mean places, small ones steps from where the path is. */
  static List<SvgPathRun> parse(String data) throws SvgUnreadable {
    List<SvgPathRun> runs = new ArrayList<>();
    SvgScan scan = new SvgScan(data);
    char command = 0;
    Vec2 at = Vec2.ZERO;
    SvgPathRun run = null;
    boolean closed = true;
    while (scan.hasMore()) {
      if (!scan.atNumber()) {
        command = scan.letter();
      } else if (command == 'M' || command == 'm') {
        command = command == 'M' ? 'L' : 'l';
      } else if (command == 0 || command == 'Z' || command == 'z') {
        throw new SvgUnreadable("a path with a number out of place");
      }
      Vec2 origin = Character.isLowerCase(command) ? at : Vec2.ZERO;
      char kind = Character.toUpperCase(command);
      if (kind == 'M') {
        at = point(scan, origin);
        run = new SvgPathRun(at);
        runs.add(run);
        closed = false;
        continue;
      }
      if (run == null) {
        throw new SvgUnreadable("a path that does not begin");
      }
      if (closed) {
        run = new SvgPathRun(at);
        runs.add(run);
        closed = false;
      }
      switch (kind) {
        case 'L' -> run.lineTo(point(scan, origin));
        case 'H' -> run.lineTo(new Vec2(origin.x() + scan.number(), at.y()));
        case 'V' -> run.lineTo(new Vec2(at.x(), origin.y() + scan.number()));
        case 'C' -> {
          Vec2 p1 = point(scan, origin);
          Vec2 p2 = point(scan, origin);
          run.curveTo(p1, p2, point(scan, origin));
        }
        case 'A' -> {
          double rx = scan.number();
          double ry = scan.number();
          double turn = scan.number();
          boolean large = scan.flag();
          boolean sweep = scan.flag();
          run.arcTo(rx, ry, turn, large, sweep, point(scan, origin));
        }
        case 'Z' -> {
          run.close();
          closed = true;
        }
        default -> throw new SvgUnreadable("the path command " + command);
      }
      at = run.last();
    }
    return runs;
  }

  private static Vec2 point(SvgScan scan, Vec2 origin) throws SvgUnreadable {
    double x = scan.number();
    double y = scan.number();
    return new Vec2(origin.x() + x, origin.y() + y);
  }
}
