package dev.towerscribe.writer.svg;

import dev.towerscribe.geometry.Vec2;
import java.util.ArrayList;
import java.util.List;

/** An affine map as SVG writes it: (x, y) to (a x + c y + e, b x + d y + f). */
record SvgTransform(double a, double b, double c, double d, double e, double f) {
  static final SvgTransform NONE = new SvgTransform(1, 0, 0, 1, 0, 0);

  Vec2 map(Vec2 p) {
    return new Vec2(a * p.x() + c * p.y() + e, b * p.x() + d * p.y() + f);
  }

  /** The map that does the other one first. */
  SvgTransform after(SvgTransform o) {
    return new SvgTransform(
        a * o.a + c * o.b,
        b * o.a + d * o.b,
        a * o.c + c * o.d,
        b * o.c + d * o.d,
        a * o.e + c * o.f + e,
        b * o.e + d * o.f + f);
  }

  /** Reads a transform attribute. */
  static SvgTransform parse(String attribute) throws SvgUnreadable {
    SvgTransform whole = NONE;
    SvgScan scan = new SvgScan(attribute);
    while (scan.hasMore()) {
      String name = scan.until('(');
      SvgScan inside = new SvgScan(scan.until(')'));
      List<Double> n = new ArrayList<>();
      while (inside.hasMore()) {
        n.add(inside.number());
      }
      whole = whole.after(one(name, n));
    }
    return whole;
  }

  private static SvgTransform one(String name, List<Double> n) throws SvgUnreadable {
    switch (name + n.size()) {
      case "matrix6":
        return new SvgTransform(n.get(0), n.get(1), n.get(2), n.get(3), n.get(4), n.get(5));
      case "translate1":
        return new SvgTransform(1, 0, 0, 1, n.get(0), 0);
      case "translate2":
        return new SvgTransform(1, 0, 0, 1, n.get(0), n.get(1));
      case "scale1":
        return new SvgTransform(n.get(0), 0, 0, n.get(0), 0, 0);
      case "scale2":
        return new SvgTransform(n.get(0), 0, 0, n.get(1), 0, 0);
      case "rotate1":
        double cos = Math.cos(Math.toRadians(n.get(0)));
        double sin = Math.sin(Math.toRadians(n.get(0)));
        return new SvgTransform(cos, sin, -sin, cos, 0, 0);
      case "rotate3":
        return new SvgTransform(1, 0, 0, 1, n.get(1), n.get(2))
            .after(one("rotate", n.subList(0, 1)))
            .after(new SvgTransform(1, 0, 0, 1, -n.get(1), -n.get(2)));
      default:
        throw new SvgUnreadable("the transform " + name + " of " + n.size() + " numbers");
    }
  }
}
