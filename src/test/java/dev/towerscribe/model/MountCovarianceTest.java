package dev.towerscribe.model;

import static org.assertj.core.api.Assertions.assertThat;
import static org.assertj.core.api.Assertions.assertThatThrownBy;
import static org.assertj.core.api.Assertions.within;

import org.junit.jupiter.api.Test;

/** One standard deviation of a figure that depends on a mount. Expected: independent, by hand. */
class MountCovarianceTest {
  private static final MountCovariance SURE = new MountCovariance(0.04, 0.25, 1.0, 0.06, -0.1, 0.2);

  /** A handful of products and one root, each rounded at 1e-16. */
  private static final double ROUNDING = 1e-14;

  @Test
  void everyTermOfTheQuadraticFormCounts() {
    // Squares: 2 x 2 x 0.04 + 3 x 3 x 0.25 + 0.5 x 0.5 x 1.0 = 0.16 + 2.25 + 0.25 = 2.66.
    // Twice the pairs: 2 x (2 x -3 x 0.06) = -0.72; 2 x (2 x 0.5 x -0.1) = -0.20;
    // 2 x (-3 x 0.5 x 0.2) = -0.60; together -1.52. The variance is 1.14.
    assertThat(SURE.plusMinus(2, -3, 0.5)).isCloseTo(Math.sqrt(1.14), within(ROUNDING));
  }

  @Test
  void oneThingAloneGivesItsOwnDeviation() {
    assertThat(SURE.plusMinus(1, 0, 0)).isCloseTo(0.2, within(ROUNDING));
    assertThat(SURE.plusMinus(0, -1, 0)).isCloseTo(0.5, within(ROUNDING));
    assertThat(SURE.plusMinus(0, 0, 3)).isCloseTo(3.0, within(ROUNDING));
    assertThat(MountCovariance.EXACT.plusMinus(1, 1, 1)).isZero();
  }

  @Test
  void errorsThatCancelLeaveNothing() {
    // Rearward and inboard off by the same 0.3 mm at once: their difference is certain. 0.09 is
    // not a binary fraction, so the sum may come out a hair below zero, which is no deviation.
    MountCovariance together = new MountCovariance(0, 0.09, 0.09, 0, 0, 0.09);
    assertThat(together.plusMinus(0, 1, -1)).isZero();
    assertThat(together.plusMinus(0, 1, 1)).isCloseTo(0.6, within(ROUNDING));
    assertThat(new MountCovariance(0, 1, 1, 0, 0, 1.0000001).plusMinus(0, 1, -1)).isZero();
  }

  @Test
  void varianceIsNeverNegative() {
    assertThatThrownBy(() -> new MountCovariance(-1e-9, 0, 0, 0, 0, 0))
        .isInstanceOf(IllegalArgumentException.class);
    assertThatThrownBy(() -> new MountCovariance(0, -1e-9, 0, 0, 0, 0))
        .isInstanceOf(IllegalArgumentException.class);
    assertThatThrownBy(() -> new MountCovariance(0, 0, -1e-9, 0, 0, 0))
        .isInstanceOf(IllegalArgumentException.class);
    assertThatThrownBy(() -> new MountCovariance(0, 0, 0, Double.NaN, 0, 0))
        .isInstanceOf(IllegalArgumentException.class);
  }
}
