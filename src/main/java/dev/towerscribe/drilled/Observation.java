package dev.towerscribe.drilled;

/**
 * One reading as an equation: what it should be, from the unknowns. The unknowns of p points are
 * x0, y0, x1, y1 ... and then their p diameters, all mm.
 *
 * @param words what was read, in words
 * @param kind which equation
 * @param i the point, or one end of the span
 * @param j the other end; the axis of a coordinate (0 fore, 1 in); unused for a diameter
 * @param radii radii that a span has beyond its centres, -1, 0 or 1
 * @param value what was read, mm
 * @param sd its standard deviation, mm
 */
record Observation(String words, Kind kind, int i, int j, double radii, double value, double sd) {
  /** The equations there are. */
  enum Kind {
    SPAN,
    COORDINATE,
    DIAMETER
  }

  static Observation span(String words, int i, int j, double radii, double value, double sd) {
    return new Observation(words, Kind.SPAN, i, j, radii, value, sd);
  }

  static Observation coordinate(String words, int i, int axis, double value, double sd) {
    return new Observation(words, Kind.COORDINATE, i, axis, 0, value, sd);
  }

  static Observation diameter(String words, int i, double value, double sd) {
    return new Observation(words, Kind.DIAMETER, i, 0, 0, value, sd);
  }

  /** Whether it says anything of a point. */
  boolean involves(int point) {
    return i == point || kind == Kind.SPAN && j == point;
  }

  /** What it should read, mm. */
  double expected(double[] x) {
    int points = x.length / 3;
    return switch (kind) {
      case SPAN ->
          Math.hypot(x[2 * j] - x[2 * i], x[2 * j + 1] - x[2 * i + 1])
              + radii * (x[2 * points + i] + x[2 * points + j]) / 2;
      case COORDINATE -> x[2 * i + j];
      case DIAMETER -> x[2 * points + i];
    };
  }

  /** Its derivatives by the unknowns. */
  double[] gradient(double[] x) {
    int points = x.length / 3;
    double[] g = new double[x.length];
    switch (kind) {
      case SPAN -> {
        double dx = x[2 * j] - x[2 * i];
        double dy = x[2 * j + 1] - x[2 * i + 1];
        double d = Math.hypot(dx, dy);
        if (d > 0) {
          g[2 * i] = -dx / d;
          g[2 * i + 1] = -dy / d;
          g[2 * j] = dx / d;
          g[2 * j + 1] = dy / d;
        }
        g[2 * points + i] = radii / 2;
        g[2 * points + j] = radii / 2;
      }
      case COORDINATE -> g[2 * i + j] = 1;
      case DIAMETER -> g[2 * points + i] = 1;
    }
    return g;
  }
}
