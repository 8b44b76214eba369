package dev.towerscribe.drilled;

import static org.assertj.core.api.Assertions.assertThat;
import static org.assertj.core.api.Assertions.assertThatThrownBy;
import static org.assertj.core.api.Assertions.within;

import dev.towerscribe.geometry.Vec2;
import dev.towerscribe.model.Mount;
import dev.towerscribe.model.MountCovariance;
import dev.towerscribe.quantity.Angle;
import java.util.ArrayList;
import java.util.List;
import java.util.SplittableRandom;
import java.util.function.Function;
import org.junit.jupiter.api.Test;

/** The rigid fit of measured to planned places. */
class RigidFitTest {
  private static final List<Vec2> UMEYAMA_A =
      List.of(new Vec2(0, 0), new Vec2(1, 0), new Vec2(0, 2));
  private static final List<Vec2> UMEYAMA_B =
      List.of(new Vec2(0, 0), new Vec2(-1, 0), new Vec2(0, 2));

  private static List<Vec2> random(SplittableRandom random, int n, double size) {
    List<Vec2> points = new ArrayList<>();
    for (int i = 0; i < n; i++) {
      points.add(new Vec2(random.nextDouble(-size, size), random.nextDouble(-size, size)));
    }
    return points;
  }

  private static List<Vec2> sum(List<Vec2> a, List<Vec2> b) {
    List<Vec2> sum = new ArrayList<>();
    for (int i = 0; i < a.size(); i++) {
      sum.add(a.get(i).plus(b.get(i)));
    }
    return sum;
  }

  /** Symmetric and positive definite: a random square times its transpose, and some more. */
  private static double[][] covariance(SplittableRandom random, int size, double scale) {
    double[][] a = new double[size][size];
    for (double[] row : a) {
      for (int k = 0; k < size; k++) {
        row[k] = random.nextDouble(-1, 1);
      }
    }
    double[][] c = new double[size][size];
    for (int i = 0; i < size; i++) {
      for (int k = 0; k < size; k++) {
        for (int l = 0; l < size; l++) {
          c[i][k] += scale * a[i][l] * a[k][l];
        }
      }
      c[i][i] += 0.5 * scale;
    }
    return c;
  }

  private static double[][] diagonal(int size, double variance) {
    double[][] c = new double[size][size];
    for (int i = 0; i < size; i++) {
      c[i][i] = variance;
    }
    return c;
  }

  @Test
  void umeyamasPoints() {
    RigidFit fit = RigidFit.plain(UMEYAMA_A, UMEYAMA_B);
    // published points: Umeyama, Least-squares estimation of transformation parameters between two
    // point patterns, IEEE PAMI 13 (1991). Its own result has a scale, which a plate has not; the
    // rigid figures are computed from the same points, to as many digits as on record.
    assertThat(fit.move().turn().degrees()).isCloseTo(-33.690, within(5e-4));
    assertThat(fit.move().shift().x()).isCloseTo(-0.98048, within(5e-6));
    assertThat(fit.move().shift().y()).isCloseTo(0.29686, within(1e-5));
    assertThat(fit.meanSquareMm2()).isCloseTo(0.61975, within(5e-6));
    // The second pattern is the first flipped.
    assertThat(fit.mirroredMeanSquareMm2()).isCloseTo(0, within(1e-15));
    assertThat(fit.looksFlipped(0.1)).isTrue();
    assertThat(fit.looksFlipped(0.5)).isFalse();
  }

  @Test
  void aMovedPatternIsFound() {
    SplittableRandom random = new SplittableRandom(81);
    for (int i = 0; i < 50; i++) {
      List<Vec2> planned = random(random, 2 + i % 5, 90);
      RigidMove move =
          new RigidMove(new Angle(random.nextDouble(-3.1, 3.1)), random(random, 1, 400).get(0));
      List<Vec2> measured = planned.stream().map(move::of).toList();
      RigidFit fit = RigidFit.plain(planned, measured);
      assertThat(fit.turnKnown()).isTrue();
      assertThat(fit.move().turn().radians()).isCloseTo(move.turn().radians(), within(1e-12));
      assertThat(fit.move().shift().distanceTo(move.shift())).isLessThan(1e-10);
      for (Vec2 r : fit.residuals()) {
        assertThat(r.norm()).isLessThan(1e-10);
      }
    }
  }

  @Test
  void noOtherMoveFitsBetter() {
    SplittableRandom random = new SplittableRandom(82);
    for (int i = 0; i < 50; i++) {
      List<Vec2> planned = random(random, 3 + i % 4, 90);
      List<Vec2> measured = sum(planned, random(random, planned.size(), 3));
      double[][] c = covariance(random, 2 * planned.size(), 0.04);
      RigidFit plain = RigidFit.plain(planned, measured);
      RigidFit weighted = RigidFit.weighted(planned, measured, c);
      // independent: the sums themselves, at moves beside the one found, a parabola's step away.
      double least = squares(planned, measured, plain.move(), null);
      double leastWeighted = squares(planned, measured, weighted.move(), c);
      assertThat(weighted.chiSquare().orElseThrow())
          .isCloseTo(leastWeighted, within(1e-8 * leastWeighted));
      for (double[] d :
          new double[][] {
            {1e-4, 0, 0}, {-1e-4, 0, 0}, {0, 0.01, 0}, {0, -0.01, 0}, {0, 0, 0.01}, {0, 0, -0.01}
          }) {
        assertThat(squares(planned, measured, beside(plain.move(), d), null)).isGreaterThan(least);
        assertThat(squares(planned, measured, beside(weighted.move(), d), c))
            .isGreaterThan(leastWeighted);
      }
    }
  }

  private static RigidMove beside(RigidMove move, double[] by) {
    return new RigidMove(
        new Angle(move.turn().radians() + by[0]), move.shift().plus(new Vec2(by[1], by[2])));
  }

  /** Weighted sum of squares by Gauss elimination; all alike without a covariance. */
  private static double squares(
      List<Vec2> planned, List<Vec2> measured, RigidMove move, double[][] covariance) {
    int n = 2 * planned.size();
    double[] r = new double[n];
    for (int i = 0; i < planned.size(); i++) {
      Vec2 off = measured.get(i).minus(move.of(planned.get(i)));
      r[2 * i] = off.x();
      r[2 * i + 1] = off.y();
    }
    double[] w = covariance == null ? r.clone() : solved(covariance, r);
    double sum = 0;
    for (int i = 0; i < n; i++) {
      sum += r[i] * w[i];
    }
    return sum;
  }

  private static double[] solved(double[][] matrix, double[] right) {
    int n = right.length;
    double[][] m = new double[n][];
    for (int i = 0; i < n; i++) {
      m[i] = matrix[i].clone();
    }
    double[] b = right.clone();
    for (int i = 0; i < n; i++) {
      for (int k = i + 1; k < n; k++) {
        double f = m[k][i] / m[i][i];
        for (int l = i; l < n; l++) {
          m[k][l] -= f * m[i][l];
        }
        b[k] -= f * b[i];
      }
    }
    for (int i = n - 1; i >= 0; i--) {
      for (int l = i + 1; l < n; l++) {
        b[i] -= m[i][l] * b[l];
      }
      b[i] /= m[i][i];
    }
    return b;
  }

  @Test
  void equalWeightsGiveThePlainFit() {
    SplittableRandom random = new SplittableRandom(83);
    List<Vec2> planned = random(random, 5, 90);
    List<Vec2> measured = sum(planned, random(random, 5, 2));
    RigidFit plain = RigidFit.plain(planned, measured);
    RigidFit weighted = RigidFit.weighted(planned, measured, diagonal(10, 0.09));
    assertThat(weighted.move().turn().radians())
        .isCloseTo(plain.move().turn().radians(), within(1e-12));
    assertThat(weighted.move().shift().distanceTo(plain.move().shift())).isLessThan(1e-9);
    assertThat(weighted.chiSquare().orElseThrow())
        .isCloseTo(plain.meanSquareMm2() * 5 / 0.09, within(1e-6));
  }

  @Test
  void aPlaceThatIsHardlyKnownHardlyCounts() {
    SplittableRandom random = new SplittableRandom(84);
    List<Vec2> planned = random(random, 4, 90);
    List<Vec2> measured = sum(planned, random(random, 4, 2));
    double[][] c = diagonal(8, 1e-4);
    c[6][6] = 1e8;
    c[7][7] = 1e8;
    RigidFit weighted = RigidFit.weighted(planned, measured, c);
    RigidFit without = RigidFit.plain(planned.subList(0, 3), measured.subList(0, 3));
    // The weight left is 1e-12 of the others'.
    assertThat(weighted.move().turn().radians())
        .isCloseTo(without.move().turn().radians(), within(1e-11));
    assertThat(weighted.move().shift().distanceTo(without.move().shift())).isLessThan(1e-9);
  }

  @Test
  void howSureItIsAgainstMovingEachCoordinate() {
    SplittableRandom random = new SplittableRandom(85);
    List<Vec2> planned = random(random, 4, 90);
    RigidMove move = new RigidMove(new Angle(0.4), new Vec2(7, -12));
    List<Vec2> measured = planned.stream().map(move::of).toList();
    double[][] c = covariance(random, 8, 0.01);
    Mount mount = new Mount(Angle.ofDegrees(40), 12, -5, 3);
    check(
        m -> RigidFit.weighted(planned, m, c).move(),
        RigidFit.weighted(planned, measured, c).mountCovariance(mount).orElseThrow(),
        measured,
        c,
        mount);
    // The plain fit's holds for places that do not fit exactly as well, singular or not.
    List<Vec2> off = sum(measured, random(random, 4, 3));
    double[][] singular = diagonal(8, 0);
    singular[0][0] = 0.04;
    singular[5][5] = 0.01;
    singular[0][5] = singular[5][0] = 0.02;
    for (double[][] some : List.of(c, singular)) {
      check(
          m -> RigidFit.plain(planned, m).move(),
          RigidFit.plain(planned, off, some).mountCovariance(mount).orElseThrow(),
          off,
          some,
          mount);
    }
  }

  /** independent: the mount's derivatives by finite differences, and D C D'. */
  private static void check(
      Function<List<Vec2>, RigidMove> fit,
      MountCovariance found,
      List<Vec2> measured,
      double[][] c,
      Mount mount) {
    int n = 2 * measured.size();
    double h = 1e-4;
    double[][] d = new double[3][n];
    for (int k = 0; k < n; k++) {
      Mount up = fit.apply(nudged(measured, k, h)).of(mount);
      Mount down = fit.apply(nudged(measured, k, -h)).of(mount);
      d[0][k] = (up.rotation().radians() - down.rotation().radians()) / (2 * h);
      d[1][k] = (up.rearwardMm() - down.rearwardMm()) / (2 * h);
      d[2][k] = (up.inboardMm() - down.inboardMm()) / (2 * h);
    }
    double[][] expected = new double[3][3];
    for (int a = 0; a < 3; a++) {
      for (int b = 0; b < 3; b++) {
        for (int i = 0; i < n; i++) {
          for (int k = 0; k < n; k++) {
            expected[a][b] += d[a][i] * c[i][k] * d[b][k];
          }
        }
      }
    }
    // Central differences of this step are good to some 1e-8 of the derivative.
    assertThat(found.rotation()).isCloseTo(expected[0][0], within(1e-6 * expected[0][0]));
    assertThat(found.rearward()).isCloseTo(expected[1][1], within(1e-6 * expected[1][1]));
    assertThat(found.inboard()).isCloseTo(expected[2][2], within(1e-6 * expected[2][2]));
    double scale = Math.sqrt(expected[0][0] * expected[1][1]);
    assertThat(found.rotationRearward()).isCloseTo(expected[0][1], within(1e-6 * scale));
    assertThat(found.rotationInboard()).isCloseTo(expected[0][2], within(1e-6 * scale));
    assertThat(found.rearwardInboard()).isCloseTo(expected[1][2], within(1e-6 * expected[1][1]));
    assertThat(found.plusMinus(1, 0, 0)).isCloseTo(Math.sqrt(expected[0][0]), within(1e-9));
    double mixed =
        expected[0][0]
            + expected[1][1]
            + expected[2][2]
            + 2 * (expected[0][1] + expected[0][2] + expected[1][2]);
    assertThat(found.plusMinus(1, 1, 1)).isCloseTo(Math.sqrt(mixed), within(1e-6));
  }

  private static List<Vec2> nudged(List<Vec2> points, int coordinate, double by) {
    List<Vec2> all = new ArrayList<>(points);
    Vec2 add = coordinate % 2 == 0 ? new Vec2(by, 0) : new Vec2(0, by);
    all.set(coordinate / 2, points.get(coordinate / 2).plus(add));
    return all;
  }

  @Test
  void aTurnedOverPlateIsToldFromBadDrilling() {
    SplittableRandom random = new SplittableRandom(86);
    List<Vec2> planned = random(random, 5, 90);
    List<Vec2> over = planned.stream().map(p -> new Vec2(p.x(), -p.y())).toList();
    List<Vec2> noise = random(random, 5, 0.5);
    assertThat(RigidFit.plain(planned, sum(over, noise)).looksFlipped(0.3)).isTrue();
    assertThat(RigidFit.plain(planned, sum(planned, noise)).looksFlipped(0.3)).isFalse();
    assertThat(RigidFit.plain(planned, random(random, 5, 90)).looksFlipped(0.3)).isFalse();
    // A line is its own mirror image, and so are two holes.
    List<Vec2> line = List.of(new Vec2(0, 0), new Vec2(10, 5), new Vec2(40, 20));
    List<Vec2> lineOver = line.stream().map(p -> new Vec2(p.x(), -p.y())).toList();
    assertThat(RigidFit.plain(line, lineOver).looksFlipped(0.01)).isFalse();
  }

  @Test
  void whereNoTurnIsSaidThereIsNone() {
    Vec2 p = new Vec2(5, 6);
    RigidFit one = RigidFit.plain(List.of(p), List.of(new Vec2(7, 9)));
    assertThat(one.turnKnown()).isFalse();
    assertThat(one.move()).isEqualTo(new RigidMove(Angle.ZERO, new Vec2(2, 3)));
    assertThat(one.covarianceAt(p)).isEmpty();
    assertThat(RigidFit.plain(List.of(p, p), List.of(p, new Vec2(1, 1))).turnKnown()).isFalse();
    assertThatThrownBy(() -> RigidFit.weighted(List.of(p), List.of(p), diagonal(2, 1)))
        .isInstanceOf(IllegalArgumentException.class)
        .hasMessageContaining("turn");
  }

  @Test
  void nonsenseIsRefused() {
    List<Vec2> a = UMEYAMA_A;
    assertThatThrownBy(() -> RigidFit.plain(a, a.subList(0, 2)))
        .isInstanceOf(IllegalArgumentException.class);
    assertThatThrownBy(() -> RigidFit.weighted(a, a, diagonal(5, 1)))
        .isInstanceOf(IllegalArgumentException.class);
    assertThatThrownBy(() -> RigidFit.weighted(a, a, diagonal(6, 0)))
        .isInstanceOf(IllegalArgumentException.class)
        .hasMessageContaining("positive definite");
    double[][] lopsided = diagonal(6, 1);
    lopsided[0][1] = 0.3;
    assertThatThrownBy(() -> RigidFit.weighted(a, a, lopsided))
        .isInstanceOf(IllegalArgumentException.class);
  }
}
