package dev.towerscribe.layout;

import dev.towerscribe.geometry.Box;
import dev.towerscribe.geometry.Vec2;
import dev.towerscribe.model.Mount;
import dev.towerscribe.model.ShaftReach;
import dev.towerscribe.model.SideJob;
import dev.towerscribe.quantity.Angle;
import java.util.ArrayList;
import java.util.List;
import java.util.Optional;
import java.util.function.Function;
import java.util.stream.IntStream;

/**
 * The ways a shaft points over travel and steer, as cubics of where its bearing is. A strut takes
 * hundreds of poses to know them, and they change little and smoothly with the bearing; a cubic in
 * both directions is within a few thousandths of a millimetre of them over the whole opening. How
 * near is measured, and figures nearer to their limit than that are left to the checks.
 */
final class ShaftModel {
  private static final int COEFFICIENTS = 10;

  /** Nodes along each direction: Chebyshev's, which keep the error even over the range. */
  private static final int NODES = 4;

  /** Where the fit is tried that was not fitted, as fractions of the half range. */
  private static final double[][] TRIED = {
    {0.0, 0.0}, {0.9, 0.9}, {0.9, -0.9}, {-0.9, 0.9}, {-0.9, -0.9}, {0.6, 0.0}, {0.0, 0.6}
  };

  /** The error between the places tried may be greater than at them. */
  private static final double CAUTION = 4.0;

  private static final double LEAST_MM = 1e-6;

  /** Directions in which ways are compared, and how near to the farthest one counts, mm. */
  private static final int DIRECTIONS = 72;

  private static final double NEARLY_MM = 0.02;

  private final double middleFore;
  private final double middleIn;
  private final double halfFore;
  private final double halfIn;
  private final double[] along;
  private final double[] coefficients;
  private final double heightMm;
  private final double errorMm;

  private ShaftModel(
      Box bearings,
      double halfIn,
      double[] along,
      double[] coefficients,
      double heightMm,
      double errorMm) {
    this.middleFore = bearings.centre().x();
    this.middleIn = bearings.centre().y();
    this.halfFore = bearings.width() / 2;
    this.halfIn = halfIn;
    this.along = along;
    this.coefficients = coefficients;
    this.heightMm = heightMm;
    this.errorMm = errorMm;
  }

  /** What is known of a shaft. */
  record Known(boolean moves, Optional<ShaftModel> model) {}

  /**
   * Fits a side's shaft.
   *
   * @param job the side
   * @param shaft what gives its ways for a mount
   * @param bearings where bearings may be, plan
   * @return whether it is known to move at all, and the model; without a model the ways must be
   *     asked for each time
   */
  static Known fit(SideJob job, Function<SideJob, Optional<ShaftReach>> shaft, Box bearings) {
    double slotFrom = job.plate().bearingXMm() + job.plate().slot().fromMm();
    double slotTo = job.plate().bearingXMm() + job.plate().slot().toMm();
    double halfIn = bearings.height() / 2 + (slotTo - slotFrom) / 2;
    // Inboard offset at which the slot's middle lies over the middle of the bearings.
    double centre = bearings.centre().y() - (slotFrom + slotTo) / 2;
    List<double[]> places = new ArrayList<>();
    for (int i = 0; i < NODES; i++) {
      for (int j = 0; j < NODES; j++) {
        places.add(new double[] {node(i), node(j)});
      }
    }
    int fitted = places.size();
    places.addAll(List.of(TRIED));
    // Each place takes hundreds of poses; the order of the list is that of the places.
    List<Optional<ShaftReach>> asked =
        places.parallelStream()
            .map(
                place ->
                    shaft.apply(
                        job.with(
                            new Mount(
                                Angle.ZERO,
                                -(bearings.centre().x() + place[0] * bearings.width() / 2),
                                centre + place[1] * halfIn,
                                job.plate().slot().fromMm()))))
            .toList();
    List<ShaftReach> reaches = asked.stream().flatMap(Optional::stream).toList();
    int none = places.size() - reaches.size();
    if (none == places.size()) {
      return new Known(false, Optional.empty());
    }
    if (none > 0 || reaches.stream().anyMatch(r -> !alike(r, reaches.get(0)))) {
      return new Known(true, Optional.empty());
    }
    double[][] inverse = pseudoInverse(places.subList(0, fitted));
    double middle = (slotFrom + slotTo) / 2;
    List<Integer> outer = outermost(reaches, job.plate().bearingHeightMm());
    int rays = outer.size();
    double[] coefficients = new double[2 * COEFFICIENTS * rays];
    double[] along = new double[rays];
    for (int ray = 0; ray < rays; ray++) {
      int source = outer.get(ray);
      along[ray] =
          job.plate().bearingXMm() + reaches.get(0).rays().get(source).settingMm() - middle;
      for (int c = 0; c < COEFFICIENTS; c++) {
        double fore = 0.0;
        double in = 0.0;
        for (int k = 0; k < fitted; k++) {
          Vec2 perMm = reaches.get(k).rays().get(source).perMm();
          fore += inverse[c][k] * perMm.x();
          in += inverse[c][k] * perMm.y();
        }
        coefficients[2 * (COEFFICIENTS * ray + c)] = fore;
        coefficients[2 * (COEFFICIENTS * ray + c) + 1] = in;
      }
    }
    double height = job.plate().bearingHeightMm();
    double worst = 0.0;
    double[] terms = new double[COEFFICIENTS];
    for (int k = 0; k < places.size(); k++) {
      fill(terms, places.get(k)[0], places.get(k)[1]);
      for (int ray = 0; ray < rays; ray++) {
        Vec2 perMm = reaches.get(k).rays().get(outer.get(ray)).perMm();
        double off =
            Math.hypot(
                value(coefficients, terms, ray, 0) - perMm.x(),
                value(coefficients, terms, ray, 1) - perMm.y());
        worst = Math.max(worst, off);
      }
    }
    // The slant widens what moves by less than the tower's sheet and the shaft's half together.
    double lever = Math.abs(height) + job.tower().sheetMm() + job.plate().movingDiameterMm() / 2;
    double error = LEAST_MM + CAUTION * (worst * lever + bend(reaches, height));
    return new Known(
        true, Optional.of(new ShaftModel(bearings, halfIn, along, coefficients, height, error)));
  }

  /**
   * The ways that count: those of both ends of the slot that stand out of their fellows', or nearly
   * so, at one of the places at least. What lies inside there lies inside nearby as well.
   */
  private static List<Integer> outermost(List<ShaftReach> reaches, double heightMm) {
    List<ShaftReach.Ray> some = reaches.get(0).rays();
    double first = some.get(0).settingMm();
    double last = some.get(some.size() - 1).settingMm();
    boolean[] out = new boolean[some.size()];
    for (ShaftReach reach : reaches) {
      standingOut(reach.rays(), first, heightMm, out);
      standingOut(reach.rays(), last, heightMm, out);
    }
    return IntStream.range(0, out.length).filter(i -> out[i]).boxed().toList();
  }

  /** Marks the ways of a setting that go as far as any other in one of many directions, nearly. */
  private static void standingOut(
      List<ShaftReach.Ray> rays, double settingMm, double heightMm, boolean[] out) {
    for (int k = 0; k < DIRECTIONS; k++) {
      Vec2 direction = Vec2.polar(1.0, Angle.ofDegrees(360.0 * k / DIRECTIONS));
      double farthest = Double.NEGATIVE_INFINITY;
      for (ShaftReach.Ray ray : rays) {
        if (ray.settingMm() == settingMm) {
          farthest = Math.max(farthest, direction.dot(ray.perMm()));
        }
      }
      for (int i = 0; i < out.length; i++) {
        double behind = Math.abs(heightMm) * (farthest - direction.dot(rays.get(i).perMm()));
        out[i] |= rays.get(i).settingMm() == settingMm && behind < NEARLY_MM;
      }
    }
  }

  /** How far a way at a setting between lies off the line between those of the ends, at most. */
  private static double bend(List<ShaftReach> reaches, double heightMm) {
    double most = 0.0;
    for (ShaftReach reach : reaches) {
      List<ShaftReach.Ray> rays = reach.rays();
      double from = rays.get(0).settingMm();
      double to = rays.get(rays.size() - 1).settingMm();
      int settings = (int) rays.stream().mapToDouble(ShaftReach.Ray::settingMm).distinct().count();
      int each = rays.size() / settings;
      for (int i = 0; i < rays.size() && to > from; i++) {
        double t = (rays.get(i).settingMm() - from) / (to - from);
        Vec2 low = rays.get(i % each).perMm();
        Vec2 high = rays.get(rays.size() - each + i % each).perMm();
        most = Math.max(most, low.toward(high, t).distanceTo(rays.get(i).perMm()));
      }
    }
    return most * Math.abs(heightMm);
  }

  private static double node(int i) {
    return Math.cos(Math.PI * (2 * i + 1) / (2 * NODES));
  }

  private static boolean alike(ShaftReach a, ShaftReach b) {
    if (a.rays().size() != b.rays().size()) {
      return false;
    }
    for (int i = 0; i < a.rays().size(); i++) {
      if (a.rays().get(i).settingMm() != b.rays().get(i).settingMm()) {
        return false;
      }
    }
    return true;
  }

  private static void fill(double[] t, double u, double v) {
    t[0] = 1;
    t[1] = u;
    t[2] = v;
    t[3] = u * u;
    t[4] = u * v;
    t[5] = v * v;
    t[6] = t[3] * u;
    t[7] = t[3] * v;
    t[8] = u * t[5];
    t[9] = t[5] * v;
  }

  private static double value(double[] coefficients, double[] terms, int ray, int which) {
    double sum = 0.0;
    int at = 2 * COEFFICIENTS * ray + which;
    for (int c = 0; c < COEFFICIENTS; c++) {
      sum += coefficients[at + 2 * c] * terms[c];
    }
    return sum;
  }

  /** Least squares for values at the places: (A'A)^-1 A'. */
  private static double[][] pseudoInverse(List<double[]> places) {
    int n = places.size();
    double[][] a = new double[n][COEFFICIENTS];
    for (int k = 0; k < n; k++) {
      fill(a[k], places.get(k)[0], places.get(k)[1]);
    }
    double[][] m = new double[COEFFICIENTS][COEFFICIENTS + n];
    for (int i = 0; i < COEFFICIENTS; i++) {
      for (int k = 0; k < n; k++) {
        for (int j = 0; j < COEFFICIENTS; j++) {
          m[i][j] += a[k][i] * a[k][j];
        }
        m[i][COEFFICIENTS + k] = a[k][i];
      }
    }
    // The matrix is symmetric and positive: elimination needs no pivoting.
    for (int i = 0; i < COEFFICIENTS; i++) {
      double pivot = m[i][i];
      for (int j = 0; j < COEFFICIENTS + n; j++) {
        m[i][j] /= pivot;
      }
      for (int r = 0; r < COEFFICIENTS; r++) {
        double factor = m[r][i];
        if (r != i && factor != 0.0) {
          for (int j = 0; j < COEFFICIENTS + n; j++) {
            m[r][j] -= factor * m[i][j];
          }
        }
      }
    }
    double[][] inverse = new double[COEFFICIENTS][n];
    for (int i = 0; i < COEFFICIENTS; i++) {
      System.arraycopy(m[i], COEFFICIENTS, inverse[i], 0, n);
    }
    return inverse;
  }

  int rays() {
    return along.length;
  }

  /** How far a centre or the radius may be off, mm. */
  double errorMm() {
    return errorMm;
  }

  /**
   * Where each way meets the tower plane.
   *
   * @param sin of the rotation
   * @param cos of the rotation
   * @param rearward plate centre, mm
   * @param inboard plate centre, mm
   * @param middleMm where the slot's middle is along the slot from the plate's centre
   * @param x takes the centres
   * @param y takes the centres
   * @param terms room for ten figures
   * @return tangent of the greatest slant, squared; NaN where a bearing lies outside the model
   */
  double centres(
      double sin,
      double cos,
      double rearward,
      double inboard,
      double middleMm,
      double[] x,
      double[] y,
      double[] terms) {
    double most = 0.0;
    double before = Double.NaN;
    double bearingX = 0.0;
    double bearingY = 0.0;
    for (int ray = 0; ray < along.length; ray++) {
      if (along[ray] != before) {
        before = along[ray];
        bearingX = -rearward - (middleMm + before) * sin;
        bearingY = inboard + (middleMm + before) * cos;
        double u = (bearingX - middleFore) / halfFore;
        double v = (bearingY - before - middleIn) / halfIn;
        if (Math.abs(u) > 1 || Math.abs(v) > 1) {
          return Double.NaN;
        }
        fill(terms, u, v);
      }
      double fore = value(coefficients, terms, ray, 0);
      double in = value(coefficients, terms, ray, 1);
      most = Math.max(most, fore * fore + in * in);
      x[ray] = bearingX + fore * heightMm;
      y[ray] = bearingY + in * heightMm;
    }
    return most;
  }
}
