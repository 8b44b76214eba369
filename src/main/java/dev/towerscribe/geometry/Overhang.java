package dev.towerscribe.geometry;

import dev.towerscribe.quantity.Tolerances;
import java.util.ArrayList;
import java.util.List;

/**
 * How far one region sticks out of another at most: the greatest distance, over the points of the
 * one, from the other. As a rule it is found on the boundary; where the one covers a hole or a bay
 * of the other it may be found inside, so a found value is proved by growing the other by it.
 *
 * <p>Right to {@link Tolerances#SAME_POINT_MM}. Example: a disc of radius 3 about (9,0) sticks 2 mm
 * out of a disc of radius 10 about (0,0), at (12,0). A disc of radius 1 that covers a hole of
 * radius 0.5 sticks out by 0.5, at the hole's centre, where no boundary is.
 */
final class Overhang {
  /** Spacing of the first look along the boundary, mm; the peak is then closed in on. */
  private static final double STEP_MM = 0.5;

  /** Shrink of a golden section search at each look. */
  private static final double GOLDEN = (Math.sqrt(5) - 1) / 2;

  /** The proof's room, mm: what the boundary search can miss by at a flat peak. */
  private static final double PROOF_MM = Tolerances.SAME_POINT_MM;

  private Overhang() {}

  /**
   * The greatest distance.
   *
   * @param outer what should hold the other
   * @param inner what sticks out
   * @param always whether to prove the value even where nothing on the boundary sticks out
   * @return mm, not negative
   */
  static double mm(Boundaries outer, Boundaries inner, boolean always) {
    double onBoundary = 0.0;
    for (Contour contour : inner.contours()) {
      for (Edge edge : contour.edges()) {
        onBoundary = Math.max(onBoundary, along(edge, outer, onBoundary));
      }
    }
    if (onBoundary == 0.0 && !always) {
      return 0.0;
    }
    double low = onBoundary + PROOF_MM;
    if (heldBy(outer, inner, low)) {
      return onBoundary;
    }
    double high = Math.max(1.0, 2 * low);
    while (!heldBy(outer, inner, high)) {
      low = high;
      high *= 2;
    }
    while (high - low > PROOF_MM) {
      double middle = (low + high) / 2;
      if (heldBy(outer, inner, middle)) {
        high = middle;
      } else {
        low = middle;
      }
    }
    return (low + high) / 2;
  }

  private static boolean heldBy(Boundaries outer, Boundaries inner, double mm) {
    List<Contour> grown = Offsets.grown(outer, mm);
    return Overlay.minus(inner, () -> grown).isEmpty();
  }

  private static double out(Vec2 p, Boundaries outer) {
    return Math.max(0.0, -outer.depth(p));
  }

  /** The greatest distance along one edge, or less than the best so far if it cannot beat that. */
  private static double along(Edge edge, Boundaries outer, double best) {
    double length = edge.length();
    if (out(edge.at(0.5), outer) + length / 2 <= best) {
      return 0.0;
    }
    int steps = Math.max(2, (int) Math.ceil(length / STEP_MM));
    List<Double> values = new ArrayList<>(steps + 1);
    double greatest = 0.0;
    for (int i = 0; i <= steps; i++) {
      double value = out(edge.at((double) i / steps), outer);
      values.add(value);
      greatest = Math.max(greatest, value);
    }
    double floor = Math.max(best, greatest);
    for (int i = 0; i <= steps; i++) {
      double left = values.get(Math.max(0, i - 1));
      double right = values.get(Math.min(steps, i + 1));
      double value = values.get(i);
      // A peak by this sample is at most one step higher, for distance grows no faster than way.
      boolean peak =
          value > 0 && value >= left && value >= right && (value > left || value > right);
      if (peak && value + length / steps > floor) {
        double from = Math.max(0.0, (i - 1.0) / steps);
        double to = Math.min(1.0, (i + 1.0) / steps);
        greatest = Math.max(greatest, golden(edge, outer, from, to));
      }
    }
    return greatest;
  }

  private static double golden(Edge edge, Boundaries outer, double from, double to) {
    double a = from;
    double b = to;
    double p = b - GOLDEN * (b - a);
    double q = a + GOLDEN * (b - a);
    double atP = out(edge.at(p), outer);
    double atQ = out(edge.at(q), outer);
    double greatest = Math.max(atP, atQ);
    while ((b - a) * edge.length() > Tolerances.COMPUTED_MM) {
      if (atP >= atQ) {
        b = q;
        q = p;
        atQ = atP;
        p = b - GOLDEN * (b - a);
        atP = out(edge.at(p), outer);
        greatest = Math.max(greatest, atP);
      } else {
        a = p;
        p = q;
        atP = atQ;
        q = a + GOLDEN * (b - a);
        atQ = out(edge.at(q), outer);
        greatest = Math.max(greatest, atQ);
      }
    }
    return greatest;
  }
}
