package dev.towerscribe.geometry;

import static org.assertj.core.api.Assertions.assertThat;
import static org.assertj.core.api.Assertions.assertThatThrownBy;
import static org.assertj.core.api.Assertions.within;

import dev.towerscribe.quantity.Angle;
import java.util.Optional;
import java.util.Random;
import org.junit.jupiter.api.Test;

class PrintReadingTest {
  private static final double ROUNDING = 1e-12;

  private static PrintReading hundred(double across, double along, Double farEnds) {
    return new PrintReading(100, 100, across, along, Optional.ofNullable(farEnds), 0.05);
  }

  @Test
  void threeReadingsGiveScalesAndSkew() {
    // Independent: a triangle of 101.3, 99.4 and the angle 89.6 between, by the law of cosines:
    // sqrt(101.3^2 + 99.4^2 - 2 * 101.3 * 99.4 cos 89.6) = 141.426...
    double far =
        Math.sqrt(101.3 * 101.3 + 99.4 * 99.4 - 2 * 101.3 * 99.4 * Math.cos(Math.toRadians(89.6)));
    PrintReading r = hundred(101.3, 99.4, far);
    assertThat(r.across()).isCloseTo(1.013, within(ROUNDING));
    assertThat(r.along()).isCloseTo(0.994, within(ROUNDING));
    assertThat(r.skew().orElseThrow().degrees()).isCloseTo(0.4, within(1e-9));
    assertThat(r.isSquare()).isFalse();
    assertThat(r.map().skew().degrees()).isCloseTo(0.4, within(1e-9));
  }

  @Test
  void farEndsFartherApartAreANegativeSkew() {
    assertThat(hundred(100, 100, 142.0).skew().orElseThrow().radians()).isNegative();
    assertThat(hundred(100, 100, 141.0).skew().orElseThrow().radians()).isPositive();
  }

  @Test
  void uncertaintiesAreThoseOfManyReadings() {
    // Independent: the spread over 200 000 readings with normal errors of 0.05 mm.
    Random random = new Random(7);
    double far = Math.sqrt(2 * 170 * 170 - 2 * 170 * 170 * Math.cos(Math.toRadians(89)));
    PrintReading r = new PrintReading(170, 170, 170, 170, Optional.of(far), 0.05);
    int n = 200_000;
    double sum = 0;
    double squares = 0;
    for (int i = 0; i < n; i++) {
      double skew =
          new PrintReading(
                  170,
                  170,
                  170 + 0.05 * random.nextGaussian(),
                  170 + 0.05 * random.nextGaussian(),
                  Optional.of(far + 0.05 * random.nextGaussian()),
                  0.05)
              .skew()
              .orElseThrow()
              .radians();
      sum += skew;
      squares += skew * skew;
    }
    double spread = Math.sqrt(squares / n - sum / n * sum / n);
    // Of so many readings the spread itself is known to 1 / sqrt(2 n), 0.16 per cent.
    assertThat(r.skewUncertainty().orElseThrow().radians() / spread).isCloseTo(1, within(0.01));
    assertThat(r.acrossUncertainty()).isCloseTo(0.05 / 170, within(ROUNDING));
    // Independent: about a square print of equal bars, 2 uncertainty / bar.
    assertThat(hundred(100, 100, 100 * Math.sqrt(2)).skewUncertainty().orElseThrow().radians())
        .isCloseTo(0.001, within(1e-9));
  }

  @Test
  void whatIsWithinTwoDeviationsIsNothing() {
    assertThat(hundred(100.1, 99.9, null).isTrue()).isTrue();
    assertThat(hundred(100.11, 99.9, null).isTrue()).isFalse();
    // Independent: 0.002 rad on bars of 100 is 0.1414 mm between the far ends.
    assertThat(hundred(100, 100, 141.42 + 0.14).isSquare()).isTrue();
    assertThat(hundred(100, 100, 141.42 + 0.15).isSquare()).isFalse();
    assertThat(hundred(100, 100, 141.42 + 0.15).isTrue()).isFalse();
    assertThat(hundred(100.5, 100, 141.8).map().skew()).isEqualTo(Angle.ZERO);
    assertThat(hundred(100, 100, 141.42).farEndsWithinMm().orElseThrow())
        .isCloseTo(0.1414, within(1e-4));
  }

  @Test
  void lengthsOfNoTriangleAreImpossible() {
    assertThat(hundred(100, 99, 199.0).isPossible()).isFalse();
    assertThat(hundred(100, 99, 1.0).isPossible()).isFalse();
    assertThat(hundred(100, 99, 198.9).isPossible()).isTrue();
    assertThat(hundred(100, 99, null).isPossible()).isTrue();
  }

  /** Independent: two by two matrices multiplied out, and a turn that must not show. */
  @Test
  void whatIsDoneAfterAnotherIsTheProductWithoutItsTurn() {
    Random random = new Random(11);
    for (int i = 0; i < 200; i++) {
      PrintScale first = random(random);
      PrintScale then = random(random);
      PrintScale both = then.after(first);
      double[][] a = matrix(first);
      double[][] b = matrix(then);
      double turn = random.nextDouble();
      double[][] r = {
        {Math.cos(turn), -Math.sin(turn)}, {Math.sin(turn), Math.cos(turn)},
      };
      double[][] product = times(r, times(b, a));
      double[][] mine = matrix(both);
      // Lengths and the angle between the columns are what is left when the turn is not.
      for (int c = 0; c < 2; c++) {
        for (int d = 0; d < 2; d++) {
          assertThat(dot(mine, c, d)).isCloseTo(dot(product, c, d), within(ROUNDING));
        }
      }
      assertThat(mine[1][0]).isZero();
    }
  }

  @Test
  void whatIsUndoneComesOutTrue() {
    Random random = new Random(13);
    for (int i = 0; i < 200; i++) {
      PrintScale scale = random(random);
      Vec2 way = new Vec2(200 * random.nextDouble() - 100, 300 * random.nextDouble() - 150);
      double[][] m = matrix(scale);
      Vec2 drawn = scale.undo(way);
      assertThat(m[0][0] * drawn.x() + m[0][1] * drawn.y()).isCloseTo(way.x(), within(1e-12));
      assertThat(m[1][0] * drawn.x() + m[1][1] * drawn.y()).isCloseTo(way.y(), within(1e-12));
      Vec2 centre = new Vec2(105, 148.5);
      assertThat(scale.compensate(centre.plus(way), centre).minus(centre).distanceTo(drawn))
          .isLessThan(1e-12);
    }
  }

  /**
   * Independent, by hand: a point 75 right of and 98.5 below the middle of A4 is drawn at 75 /
   * 0.995 and 98.5 / 1.004 from there; with a lean of 0.4 degrees (75 + 98.5 tan 0.4) / 1.013 and
   * 98.5 / cos 0.4 / 0.994. The same vectors stand in docs/conventions.md.
   */
  @Test
  void theVectorsOfTheConventions() {
    Vec2 centre = new Vec2(105, 148.5);
    Vec2 square = new PrintScale(0.995, 1.004).compensate(new Vec2(180, 50), centre);
    // Nine decimals are given.
    assertThat(square.distanceTo(new Vec2(180.376884422, 50.392430279))).isLessThan(1e-9);
    Vec2 leaning =
        new PrintScale(1.013, 0.994, Angle.ofDegrees(0.4)).compensate(new Vec2(180, 50), centre);
    assertThat(leaning.distanceTo(new Vec2(179.716358240, 49.403017672))).isLessThan(1e-9);
  }

  @Test
  void refusesWhatIsNoPrinter() {
    assertThatThrownBy(() -> new PrintScale(0.89, 1)).isInstanceOf(IllegalArgumentException.class);
    assertThatThrownBy(() -> new PrintScale(1, 1, Angle.ofDegrees(10.1)))
        .isInstanceOf(IllegalArgumentException.class);
  }

  private static PrintScale random(Random random) {
    return new PrintScale(
        0.97 + 0.06 * random.nextDouble(),
        0.97 + 0.06 * random.nextDouble(),
        Angle.ofDegrees(6 * random.nextDouble() - 3));
  }

  private static double[][] matrix(PrintScale s) {
    double g = s.skew().radians();
    return new double[][] {{s.across(), s.along() * Math.sin(g)}, {0, s.along() * Math.cos(g)}};
  }

  private static double[][] times(double[][] a, double[][] b) {
    double[][] c = new double[2][2];
    for (int i = 0; i < 2; i++) {
      for (int j = 0; j < 2; j++) {
        c[i][j] = a[i][0] * b[0][j] + a[i][1] * b[1][j];
      }
    }
    return c;
  }

  private static double dot(double[][] m, int c, int d) {
    return m[0][c] * m[0][d] + m[1][c] * m[1][d];
  }
}
