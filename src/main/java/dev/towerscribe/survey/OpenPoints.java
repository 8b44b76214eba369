package dev.towerscribe.survey;

import dev.towerscribe.finding.Severity;
import dev.towerscribe.quantity.Numbers;
import java.util.ArrayList;
import java.util.Arrays;
import java.util.LinkedHashMap;
import java.util.List;
import java.util.Map;
import java.util.stream.IntStream;
import java.util.stream.Stream;
import org.hipparchus.linear.Array2DRowRealMatrix;
import org.hipparchus.linear.EigenDecompositionSymmetric;

/**
 * Names the points that the readings do not fix, with the directions that stay open: from the null
 * space of the normal matrix, looked at point by point.
 */
final class OpenPoints {
  /** Past this a point is of no use to a job, mm; a job file takes no more. */
  static final double USELESS_MM = 50;

  /** Past this a point deserves another reading, mm. Common practice, no source. */
  private static final double POOR_MM = 5;

  /** The least of a point's share in an open direction, squared, that is not rounding. */
  private static final double SHARE = 1e-6;

  /** A direction within some 18 degrees of an axis goes by that axis. */
  private static final double NEAR_AXIS = 0.95;

  /** So many names are said; more are counted. */
  private static final int MOST_NAMES = 8;

  private final Labelled labelled;
  private final Adjustment adjustment;
  private final double widened;
  private final Found found;

  OpenPoints(Labelled labelled, Adjustment adjustment, double widened, Found found) {
    this.labelled = labelled;
    this.adjustment = adjustment;
    this.widened = widened;
    this.found = found;
  }

  /** Whether the readings fix a point well enough to be used. */
  static boolean isFound(Adjustment a, int node, double widened) {
    if (open(a, node).length > 0) {
      return false;
    }
    for (int unknown : a.net().nodes().get(node).unknown()) {
      if (unknown != Network.NONE && sd(a, unknown) * widened > USELESS_MM) {
        return false;
      }
    }
    return true;
  }

  private static double sd(Adjustment a, int unknown) {
    return Math.sqrt(Math.max(0, a.covariance(unknown, unknown)));
  }

  /** Unit vectors of the directions in which a point is open: none, one, two or three. */
  private static double[][] open(Adjustment a, int node) {
    int[] unknown = a.net().nodes().get(node).unknown();
    double[][] share = new double[Network.AXES][Network.AXES];
    for (double[] v : a.unfixed()) {
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
    return IntStream.range(0, Network.AXES)
        .filter(k -> eigen.getEigenvalues()[k] > SHARE)
        .mapToObj(k -> eigen.getEigenvector(k).toArray())
        .toArray(double[][]::new);
  }

  void report() {
    // Points with the same lack are told together.
    Map<List<String>, List<Labelled.Label>> lacking = new LinkedHashMap<>();
    for (int node = 0; node < labelled.labels().size(); node++) {
      Labelled.Label label = labelled.labels().get(node);
      double[][] open = open(adjustment, node);
      if (open.length > 0) {
        List<String> key = List.of(label.side(), "" + label.needed(), lack(open, label.side()));
        lacking.computeIfAbsent(key, k -> new ArrayList<>()).add(label);
      } else {
        poor(node, label);
      }
    }
    lacking.forEach((key, labels) -> tell(labels, key.get(2)));
  }

  private void tell(List<Labelled.Label> labels, String lack) {
    List<String> names = labels.stream().map(Labelled.Label::name).toList();
    int more = names.size() - MOST_NAMES;
    List<String> said =
        more > 0
            ? Stream.concat(names.stream().limit(MOST_NAMES), Stream.of(more + " more")).toList()
            : names;
    boolean one = names.size() == 1;
    Labelled.Label first = labels.get(0);
    found.add(
        first.needed() ? Severity.STOP : Severity.CAUTION,
        Found.and(said),
        Found.Size.none(),
        Found.and(said)
            + ": nothing fixes "
            + (one ? "its " : "their ")
            + lack
            + ". Take a reading that does"
            + (first.needed() ? "; accepted, " + (one ? "it is" : "they are") + " left out." : "."),
        first.side(),
        "unfixed",
        one ? first.name() : first.name() + " and " + (names.size() - 1) + " more");
  }

  /** What is open, to be read after "nothing fixes its". */
  private String lack(double[][] open, String side) {
    List<String> places = labelled.axes().places();
    if (open.length == Network.AXES) {
      return "place";
    }
    boolean plane = open.length == 2;
    double[] one = plane ? cross(open[0], open[1]) : open[0];
    for (int axis = 0; axis < Network.AXES; axis++) {
      if (Math.abs(one[axis]) > NEAR_AXIS) {
        int main = axis;
        return plane
            ? String.join(
                " nor its ",
                IntStream.range(0, Network.AXES)
                    .filter(a -> a != main)
                    .mapToObj(places::get)
                    .toList())
            : places.get(axis);
      }
    }
    return (plane ? "place square to the line " : "place along the line ") + words(one, side);
  }

  private String words(double[] direction, String side) {
    double[] d = direction.clone();
    if (labelled.axes().outward() && side.equals("right")) {
      d[1] = -d[1];
    }
    // The sign means nothing: the greatest component is told as positive.
    int main =
        IntStream.range(0, Network.AXES)
            .reduce(0, (a, b) -> Math.abs(d[b]) > Math.abs(d[a]) + 1e-9 ? b : a);
    double sign = Math.signum(d[main]);
    return "("
        + String.join(
            ", ",
            IntStream.range(0, labelled.axes().ways().size())
                .mapToObj(a -> Numbers.fixed(sign * d[a], 2) + " " + labelled.axes().ways().get(a))
                .toList())
        + ")";
  }

  private static double[] cross(double[] a, double[] b) {
    return new double[] {
      a[1] * b[2] - a[2] * b[1], a[2] * b[0] - a[0] * b[2], a[0] * b[1] - a[1] * b[0]
    };
  }

  private void poor(int node, Labelled.Label label) {
    int[] unknown = adjustment.net().nodes().get(node).unknown();
    double[] sd =
        Arrays.stream(unknown)
            .mapToDouble(u -> u == Network.NONE ? 0 : widened * sd(adjustment, u))
            .toArray();
    int worst = IntStream.range(0, sd.length).reduce(0, (a, b) -> sd[b] > sd[a] ? b : a);
    if (sd[worst] <= POOR_MM) {
      return;
    }
    boolean useless = sd[worst] > USELESS_MM;
    boolean stop = useless && label.needed();
    found.add(
        stop ? Severity.STOP : Severity.CAUTION,
        label.name(),
        Found.Size.mm(sd[worst], useless ? USELESS_MM : POOR_MM, Found.PRACTICE),
        label.name()
            + ": its "
            + labelled.axes().places().get(worst)
            + " is known to +/- "
            + found.length(sd[worst])
            + " only. Take a reading along that direction"
            + (stop ? "; accepted, it is left out." : "."),
        label.side(),
        "poor",
        label.name());
  }
}
