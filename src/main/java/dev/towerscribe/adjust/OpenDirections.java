package dev.towerscribe.adjust;

import dev.towerscribe.quantity.Numbers;
import java.util.ArrayList;
import java.util.List;
import java.util.stream.Collectors;
import java.util.stream.IntStream;
import org.hipparchus.geometry.euclidean.threed.Vector3D;
import org.hipparchus.linear.Array2DRowRealMatrix;
import org.hipparchus.linear.EigenDecompositionSymmetric;

/**
 * In which directions the observations leave a point open: its share in the null space of the
 * normal matrix.
 *
 * @param ways unit vectors, square to each other: none for a point that is fixed, three for one
 *     that may be anywhere
 */
public record OpenDirections(List<double[]> ways) {
  /** The least of a point's share in an open direction, squared, that is not rounding. */
  private static final double SHARE = 1e-6;

  /** A direction within some 18 degrees of an axis goes by that axis. */
  private static final double NEAR_AXIS = 0.95;

  /** Components whose sizes differ by no more are alike. */
  private static final double SAME = 1e-9;

  /**
   * Looks at a point.
   *
   * @param a a solved network
   * @param node the point
   * @return its open directions
   */
  public static OpenDirections of(Adjustment a, int node) {
    int[] unknown = a.net().unknownsOf(node);
    double[][] share = new double[Network.AXES][Network.AXES];
    for (double[] v : a.covariance().open()) {
      for (int i = 0; i < Network.AXES; i++) {
        for (int j = 0; j < Network.AXES; j++) {
          if (unknown[i] != Network.NONE && unknown[j] != Network.NONE) {
            share[i][j] += v[unknown[i]] * v[unknown[j]];
          }
        }
      }
    }
    EigenDecompositionSymmetric eigen =
        new EigenDecompositionSymmetric(new Array2DRowRealMatrix(share, false));
    List<double[]> ways = new ArrayList<>();
    for (int k = 0; k < Network.AXES; k++) {
      if (eigen.getEigenvalue(k) > SHARE) {
        ways.add(eigen.getEigenvector(k).toArray());
      }
    }
    return new OpenDirections(ways);
  }

  /**
   * Whether the point is fixed.
   *
   * @return true if no direction is open
   */
  public boolean isEmpty() {
    return ways.isEmpty();
  }

  /**
   * What is open, to be read after "nothing fixes its".
   *
   * @param axes how coordinates are spoken of
   * @param mirrored whether the second axis is told the other way round: outward on the right
   * @return for instance "height", "place forward nor its height", "place along the line (0.71
   *     forward, 0.71 up)"; of more than one direction the one left is told
   */
  public String words(Axes axes, boolean mirrored) {
    if (ways.size() == Network.AXES) {
      return "place";
    }
    boolean plane = ways.size() == 2;
    double[] one = plane ? square(ways.get(0), ways.get(1)) : ways.get(0);
    int main = greatest(one);
    if (Math.abs(one[main]) <= NEAR_AXIS) {
      return (plane ? "place square to the line " : "place along the line ")
          + line(axes, one, mirrored);
    }
    return plane
        ? String.join(
            " nor its ",
            IntStream.range(0, Network.AXES)
                .filter(a -> a != main)
                .mapToObj(axes.places()::get)
                .toList())
        : axes.places().get(main);
  }

  private static String line(Axes axes, double[] direction, boolean mirrored) {
    double[] d = direction.clone();
    d[1] = mirrored ? -d[1] : d[1];
    // The sign means nothing: the greatest component is told as positive.
    double sign = Math.signum(d[greatest(d)]);
    return IntStream.range(0, axes.ways().size())
        .mapToObj(a -> Numbers.fixed(sign * d[a], 2) + " " + axes.ways().get(a))
        .collect(Collectors.joining(", ", "(", ")"));
  }

  /** The first of the components of greatest size. */
  private static int greatest(double[] d) {
    return IntStream.range(0, Network.AXES)
        .reduce(0, (a, b) -> Math.abs(d[b]) > Math.abs(d[a]) + SAME ? b : a);
  }

  private static double[] square(double[] a, double[] b) {
    return new Vector3D(a).crossProduct(new Vector3D(b)).toArray();
  }
}
