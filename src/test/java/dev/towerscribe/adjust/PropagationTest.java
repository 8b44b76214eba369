package dev.towerscribe.adjust;

import static org.assertj.core.api.Assertions.assertThat;
import static org.assertj.core.api.Assertions.assertThatThrownBy;
import static org.assertj.core.api.Assertions.within;

import org.junit.jupiter.api.Test;

/** Errors of what is calculated. Expected values: independent, worked by hand. */
class PropagationTest {
  private static final double[][] C = {{4, 1, -2}, {1, 9, 3}, {-2, 3, 16}};

  @Test
  void varianceOfASum() {
    // 4 + 9 + 16 + 2 (1 - 2 + 3).
    assertThat(Propagation.variance(new double[] {1, 1, 1}, C)).isEqualTo(33);
    // 2 x 4 of the first, 9, and 2 x 2 x -1 x 1: 16 + 9 - 4.
    assertThat(Propagation.variance(new double[] {2, -1, 0}, C)).isEqualTo(21);
    assertThat(Propagation.sd(new double[] {1, 0, 1}, C)).isEqualTo(4);
  }

  @Test
  void covarianceOfTwoFunctions() {
    // Of x + y and y - z: xy - xz + yy - yz = 1 + 2 + 9 - 3 = 9.
    double[][] carried = Propagation.carried(new double[][] {{1, 1, 0}, {0, 1, -1}}, C);
    assertThat(carried[0]).containsExactly(15, 9);
    assertThat(carried[1]).containsExactly(9, 19);
  }

  @Test
  void worstDirectionInAPlane() {
    // An ellipse of axes 5 and 3 turned by 45 degrees: variances (25 + 9) / 2, covariance 8.
    assertThat(Propagation.worstSd(17, 17, 8)).isEqualTo(5);
    assertThat(Propagation.worstSd(17, 17, -8)).isEqualTo(5);
    assertThat(Propagation.worstSd(9, 25, 0)).isEqualTo(5);
    // (10 + 4) / 2 + root of (3 squared + 4 squared) = 12.
    assertThat(Propagation.worstSd(10, 4, 4)).isCloseTo(Math.sqrt(12), within(1e-15));
  }

  @Test
  void roundingBelowNothingIsNothing() {
    assertThat(Propagation.root(-1e-18)).isZero();
    assertThat(Propagation.root(6.25)).isEqualTo(2.5);
  }

  @Test
  void covariancesOfAnotherSizeAreRefused() {
    Propagation.checkSize(C, 3);
    assertThatThrownBy(() -> Propagation.checkSize(C, 2)).hasMessageContaining("2 rows");
    assertThatThrownBy(() -> Propagation.checkSize(new double[][] {{1, 0}, {0}}, 2))
        .isInstanceOf(IllegalArgumentException.class);
  }
}
