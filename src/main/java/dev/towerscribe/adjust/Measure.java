package dev.towerscribe.adjust;

import java.util.Arrays;
import org.hipparchus.util.MathArrays;

/** What a reading is of: a function of a network's unknowns, with its exact derivatives. */
public sealed interface Measure {
  /**
   * What would be read without any error.
   *
   * @param net the network
   * @param x its unknowns
   * @return mm
   */
  double value(Network net, double[] x);

  /**
   * Derivatives of that.
   *
   * @param net the network
   * @param x its unknowns
   * @return by the unknowns that it depends on
   */
  Row row(Network net, double[] x);

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
      return sign * net.place(x, node)[axis];
    }

    @Override
    public Row row(Network net, double[] x) {
      int unknown = net.unknownsOf(node)[axis];
      return unknown == Network.NONE ? new Row(new int[0], new double[0]) : Row.of(unknown, sign);
    }
  }

  /**
   * The distance of two points, with the radii of the holes round them as the edges say.
   *
   * @param from one point
   * @param to another
   * @param edges what it was taken between
   * @param fromSize the size round the one; not looked at between centres
   * @param toSize the size round the other
   */
  record Distance(int from, int to, Edges edges, int fromSize, int toSize) implements Measure {
    /** Nearer than this two points have no direction, mm. */
    private static final double COINCIDENT_MM = 1e-9;

    /**
     * Between centres.
     *
     * @param from one point
     * @param to another
     */
    public Distance(int from, int to) {
      this(from, to, Edges.CENTRES, 0, 0);
    }

    @Override
    public double value(Network net, double[] x) {
      return distance(net.place(x, from), net.place(x, to)) + radiiAt(net, x);
    }

    /**
     * What the radii add.
     *
     * @param net the network
     * @param x its unknowns
     * @return mm, negative between near edges
     */
    public double radiiAt(Network net, double[] x) {
      return edges == Edges.CENTRES
          ? 0
          : edges.radii() * (x[net.unknownOfSize(fromSize)] + x[net.unknownOfSize(toSize)]) / 2;
    }

    /**
     * The other end.
     *
     * @param node one end
     * @return the other's number
     */
    public int otherEnd(int node) {
      return node == from ? to : from;
    }

    /**
     * Whether a point is one of the ends.
     *
     * @param node a point
     * @return true if so
     */
    public boolean endsAt(int node) {
      return node == from || node == to;
    }

    private double[] difference(Network net, double[] x) {
      return MathArrays.ebeSubtract(net.place(x, to), net.place(x, from));
    }

    @Override
    public Row row(Network net, double[] x) {
      double[] d = difference(net, x);
      double length = distance(net.place(x, from), net.place(x, to));
      if (length < COINCIDENT_MM) {
        // No direction is right; any lets the two come apart.
        d = new double[] {1, 0, 0};
        length = 1;
      }
      int[] at = new int[2 * Network.AXES + 2];
      double[] by = new double[at.length];
      int count = 0;
      int[] a = net.unknownsOf(from);
      int[] b = net.unknownsOf(to);
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
      if (edges != Edges.CENTRES) {
        for (int size : new int[] {fromSize, toSize}) {
          at[count] = net.unknownOfSize(size);
          by[count++] = edges.radii() / 2.0;
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
      return Row.of(net.unknownOfSize(size), 1);
    }
  }

  /**
   * Distance of two places.
   *
   * @param a three coordinates
   * @param b three coordinates
   * @return not negative
   */
  static double distance(double[] a, double[] b) {
    return MathArrays.distance(a, b);
  }
}
