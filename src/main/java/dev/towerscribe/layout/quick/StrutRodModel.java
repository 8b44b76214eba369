package dev.towerscribe.layout.quick;

import dev.towerscribe.geometry.Box;
import dev.towerscribe.geometry.Vec2;
import dev.towerscribe.model.Mount;
import dev.towerscribe.model.Plate;
import dev.towerscribe.model.SideJob;
import dev.towerscribe.model.StrutRodReach;
import dev.towerscribe.quantity.Angle;
import java.util.ArrayList;
import java.util.List;
import java.util.Optional;
import java.util.function.Function;
import java.util.stream.IntStream;

/**
 * The ways a strut rod points over travel and steer, as cubics of where its bearing is. A strut
 * takes hundreds of poses to know them, and they change little and smoothly with the bearing; a
 * cubic in both directions is within a few thousandths of a millimetre of them over the whole
 * opening. How near is measured, and figures nearer to their limit than that are left to the
 * checks.
 *
 * <p>The cubics are sums of products of Chebyshev polynomials, whose least-squares fit over
 * Chebyshev's nodes needs no equations to be solved: each coefficient is a weighted sum of the
 * values there.
 */
final class StrutRodModel {
  /** Products of polynomials up to the third degree in both directions together. */
  private static final int TERMS = 10;

  /** One over the mean square of each product over the nodes. */
  private static final double[] WEIGHTS = {1, 2, 2, 2, 4, 2, 2, 4, 4, 2};

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
  private final List<Way> ways;
  private final double heightMm;
  private final double errorMm;

  private StrutRodModel(
      Box bearings, double halfIn, List<Way> ways, double heightMm, double errorMm) {
    this.middleFore = bearings.centre().x();
    this.middleIn = bearings.centre().y();
    this.halfFore = bearings.width() / 2;
    this.halfIn = halfIn;
    this.ways = ways;
    this.heightMm = heightMm;
    this.errorMm = errorMm;
  }

  /**
   * One way of the rod.
   *
   * @param along where its bearing is along the slot, from the slot's middle
   * @param fore coefficients of its cubic, fore for each mm down
   * @param in the same, in
   */
  private record Way(double along, double[] fore, double[] in) {}

  /** What is known of a strut rod: whether it moves at all, and how. */
  record Known(boolean moves, Optional<StrutRodModel> model) {}

  /**
   * Fits a side's strut rod.
   *
   * @param job the side
   * @param rods what gives its ways for a mount
   * @param bearings where bearings may be, plan
   * @return whether it is known to move at all, and the model; without a model the ways must be
   *     asked for each time
   */
  static Known fit(SideJob job, Function<SideJob, Optional<StrutRodReach>> rods, Box bearings) {
    Plate plate = job.plate();
    double slotFrom = plate.bearingXMm() + plate.slot().fromMm();
    double slotTo = plate.bearingXMm() + plate.slot().toMm();
    double halfIn = bearings.height() / 2 + (slotTo - slotFrom) / 2;
    // Inboard offset at which the slot's middle lies over the middle of the bearings.
    double centre = bearings.centre().y() - (slotFrom + slotTo) / 2;
    List<double[]> places = new ArrayList<>();
    for (int i = 0; i < NODES; i++) {
      for (int j = 0; j < NODES; j++) {
        places.add(new double[] {node(i), node(j)});
      }
    }
    places.addAll(List.of(TRIED));
    // Each place takes hundreds of poses; the order of the list is that of the places.
    List<Optional<StrutRodReach>> asked =
        places.parallelStream()
            .map(
                place ->
                    rods.apply(
                        job.with(
                            new Mount(
                                Angle.ZERO,
                                -(bearings.centre().x() + place[0] * bearings.width() / 2),
                                centre + place[1] * halfIn,
                                plate.slot().fromMm()))))
            .toList();
    List<StrutRodReach> reaches = asked.stream().flatMap(Optional::stream).toList();
    int none = places.size() - reaches.size();
    if (none == places.size()) {
      return new Known(false, Optional.empty());
    }
    if (none > 0 || reaches.stream().anyMatch(r -> !alike(r, reaches.get(0)))) {
      return new Known(true, Optional.empty());
    }
    double middle = (slotFrom + slotTo) / 2;
    List<Integer> outer = outermost(reaches, job.bearingOverRimMm());
    List<double[]> terms = places.stream().map(place -> terms(place[0], place[1])).toList();
    List<Way> ways = new ArrayList<>();
    double worst = 0.0;
    for (int ray : outer) {
      double setting = reaches.get(0).rays().get(ray).settingMm();
      Way way =
          new Way(plate.bearingXMm() + setting - middle, new double[TERMS], new double[TERMS]);
      ways.add(way);
      for (int k = 0; k < NODES * NODES; k++) {
        Vec2 perMm = reaches.get(k).rays().get(ray).perMm();
        for (int c = 0; c < TERMS; c++) {
          double weight = WEIGHTS[c] * terms.get(k)[c] / (NODES * NODES);
          way.fore[c] += weight * perMm.x();
          way.in[c] += weight * perMm.y();
        }
      }
      for (int k = 0; k < places.size(); k++) {
        Vec2 perMm = reaches.get(k).rays().get(ray).perMm();
        double fore = value(way.fore, terms.get(k));
        worst = Math.max(worst, perMm.distanceTo(new Vec2(fore, value(way.in, terms.get(k)))));
      }
    }
    double height = job.bearingOverRimMm();
    // The slant widens what moves by less than the tower's sheet and the strut rod's half together.
    double lever = Math.abs(height) + job.tower().throughMm() + plate.movingDiameterMm() / 2;
    double error = LEAST_MM + CAUTION * (worst * lever + bend(reaches, height));
    return new Known(true, Optional.of(new StrutRodModel(bearings, halfIn, ways, height, error)));
  }

  /**
   * The ways that count: those of both ends of the slot that stand out of their fellows', or nearly
   * so, at one of the places at least. What lies inside there lies inside nearby as well.
   */
  private static List<Integer> outermost(List<StrutRodReach> reaches, double heightMm) {
    List<StrutRodReach.Ray> some = reaches.get(0).rays();
    double first = some.get(0).settingMm();
    double last = some.get(some.size() - 1).settingMm();
    boolean[] out = new boolean[some.size()];
    for (StrutRodReach reach : reaches) {
      standingOut(reach.rays(), first, heightMm, out);
      standingOut(reach.rays(), last, heightMm, out);
    }
    return IntStream.range(0, out.length).filter(i -> out[i]).boxed().toList();
  }

  /** Marks the ways of a setting that go as far as any other in one of many directions, nearly. */
  private static void standingOut(
      List<StrutRodReach.Ray> rays, double settingMm, double heightMm, boolean[] out) {
    for (int k = 0; k < DIRECTIONS; k++) {
      Vec2 direction = Vec2.polar(1.0, Angle.ofDegrees(360.0 * k / DIRECTIONS));
      double farthest =
          rays.stream()
              .filter(ray -> ray.settingMm() == settingMm)
              .mapToDouble(ray -> direction.dot(ray.perMm()))
              .max()
              .orElse(Double.NEGATIVE_INFINITY);
      for (int i = 0; i < out.length; i++) {
        double behind = Math.abs(heightMm) * (farthest - direction.dot(rays.get(i).perMm()));
        out[i] |= rays.get(i).settingMm() == settingMm && behind < NEARLY_MM;
      }
    }
  }

  /** How far a way at a setting between lies off the line between those of the ends, at most. */
  private static double bend(List<StrutRodReach> reaches, double heightMm) {
    double most = 0.0;
    for (StrutRodReach reach : reaches) {
      List<StrutRodReach.Ray> rays = reach.rays();
      double from = rays.get(0).settingMm();
      double to = rays.get(rays.size() - 1).settingMm();
      int settings = (int) settings(reach).stream().distinct().count();
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

  private static boolean alike(StrutRodReach a, StrutRodReach b) {
    return settings(a).equals(settings(b));
  }

  private static List<Double> settings(StrutRodReach reach) {
    return reach.rays().stream().map(StrutRodReach.Ray::settingMm).toList();
  }

  /** The polynomials' products at a place, both coordinates from -1 to 1. */
  private static double[] terms(double u, double v) {
    double u2 = 2 * u * u - 1;
    double v2 = 2 * v * v - 1;
    return new double[] {
      1, u, v, u2, u * v, v2, u * (2 * u2 - 1), u2 * v, u * v2, v * (2 * v2 - 1)
    };
  }

  private static double value(double[] coefficients, double[] terms) {
    double sum = 0.0;
    for (int c = 0; c < TERMS; c++) {
      sum += coefficients[c] * terms[c];
    }
    return sum;
  }

  int rays() {
    return ways.size();
  }

  /** How far a centre or the radius may be off, mm. */
  double errorMm() {
    return errorMm;
  }

  /**
   * Where each way meets the tower plane.
   *
   * @param s the placement; takes the places
   * @param middleMm where the slot's middle is along the slot from the plate's centre
   * @return tangent of the greatest slant, squared; NaN where a bearing lies outside the model
   */
  double centres(Scratch s, double middleMm) {
    double[] terms = {};
    double most = 0.0;
    double before = Double.NaN;
    double bearingX = 0.0;
    double bearingY = 0.0;
    for (int ray = 0; ray < ways.size(); ray++) {
      Way way = ways.get(ray);
      if (way.along != before) {
        before = way.along;
        bearingX = s.bearingX(middleMm + before);
        bearingY = s.bearingY(middleMm + before);
        double u = (bearingX - middleFore) / halfFore;
        double v = (bearingY - before - middleIn) / halfIn;
        if (Math.abs(u) > 1 || Math.abs(v) > 1) {
          return Double.NaN;
        }
        terms = terms(u, v);
      }
      double fore = value(way.fore, terms);
      double in = value(way.in, terms);
      most = Math.max(most, fore * fore + in * in);
      s.rodX[ray] = bearingX + fore * heightMm;
      s.rodY[ray] = bearingY + in * heightMm;
    }
    return most;
  }
}
