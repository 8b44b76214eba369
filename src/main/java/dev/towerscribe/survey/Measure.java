package dev.towerscribe.survey;

import java.util.Arrays;

/** What a reading is of: a function of the unknowns, with its exact derivatives. */
sealed interface Measure {
  /** What would be read without any error, mm. */
  double value(Network net, double[] x);

  /** Its derivatives by the unknowns that it depends on. */
  Row row(Network net, double[] x);

  /**
   * Derivatives that are not zero.
   *
   * @param at numbers of unknowns
   * @param by the derivative by each
   */
  record Row(int[] at, double[] by) {
    double times(double[] vector) {
      double sum = 0;
      for (int i = 0; i < at.length; i++) {
        sum += by[i] * vector[at[i]];
      }
      return sum;
    }
  }

  /**
   * One coordinate of a point.
   *
   * @param node the point
   * @param axis 0, 1 or 2
   * @param sign -1 where it is written the other way round: outward on the right is -Y
   */
  record Coordinate(int node, int axis, int sign) implements Measure {
    @Override
    public double value(Network net, double[] x) {
      return sign * net.coordinate(x, node, axis);
    }

    @Override
    public Row row(Network net, double[] x) {
      int unknown = net.nodes().get(node).unknown()[axis];
      return unknown == Network.NONE
          ? new Row(new int[0], new double[0])
          : new Row(new int[] {unknown}, new double[] {sign});
    }
  }

  /**
   * The distance of two points, with so many times the radii of the holes round them.
   *
   * @param from one point
   * @param to another
   * @param radii -1 between near edges, 1 across far edges, 0 between centres
   * @param fromSize the diameter round the one, or {@link Network#NONE} with no radii
   * @param toSize round the other
   */
  record Distance(int from, int to, int radii, int fromSize, int toSize) implements Measure {
    /** Between centres. */
    Distance(int from, int to) {
      this(from, to, 0, Network.NONE, Network.NONE);
    }

    private static final double COINCIDENT_MM = 1e-9;

    @Override
    public double value(Network net, double[] x) {
      double[] d = difference(net, x);
      return norm(d) + radiiAt(net, x);
    }

    /** What the radii add. */
    double radiiAt(Network net, double[] x) {
      return radii == 0
          ? 0
          : radii * (x[net.unknownOfSize(fromSize)] + x[net.unknownOfSize(toSize)]) / 2;
    }

    private double[] difference(Network net, double[] x) {
      double[] a = net.place(x, from);
      double[] b = net.place(x, to);
      return new double[] {b[0] - a[0], b[1] - a[1], b[2] - a[2]};
    }

    static double norm(double[] d) {
      return Math.sqrt(d[0] * d[0] + d[1] * d[1] + d[2] * d[2]);
    }

    @Override
    public Row row(Network net, double[] x) {
      double[] d = difference(net, x);
      double length = norm(d);
      if (length < COINCIDENT_MM) {
        // No direction is right; any lets the two come apart.
        d = new double[] {1, 0, 0};
        length = 1;
      }
      int[] at = new int[2 * Network.AXES + 2];
      double[] by = new double[at.length];
      int count = 0;
      int[] a = net.nodes().get(from).unknown();
      int[] b = net.nodes().get(to).unknown();
      for (int axis = 0; axis < Network.AXES; axis++) {
        if (a[axis] != Network.NONE) {
          at[count] = a[axis];
          by[count++] = -d[axis] / length;
        }
        if (b[axis] != Network.NONE) {
          at[count] = b[axis];
          by[count++] = d[axis] / length;
        }
      }
      if (radii != 0) {
        for (int size : new int[] {fromSize, toSize}) {
          at[count] = net.unknownOfSize(size);
          by[count++] = radii / 2.0;
        }
      }
      return new Row(Arrays.copyOf(at, count), Arrays.copyOf(by, count));
    }
  }

  /**
   * A diameter.
   *
   * @param size which
   */
  record Size(int size) implements Measure {
    @Override
    public double value(Network net, double[] x) {
      return x[net.unknownOfSize(size)];
    }

    @Override
    public Row row(Network net, double[] x) {
      return new Row(new int[] {net.unknownOfSize(size)}, new double[] {1});
    }
  }
}
