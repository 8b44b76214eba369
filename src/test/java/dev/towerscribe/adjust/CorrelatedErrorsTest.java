package dev.towerscribe.adjust;

import static org.assertj.core.api.Assertions.assertThat;
import static org.assertj.core.api.Assertions.assertThatThrownBy;
import static org.assertj.core.api.Assertions.within;

import java.util.Optional;
import org.junit.jupiter.api.Test;

/** Fits to figures whose errors hang together. Expected values: independent, worked by hand. */
class CorrelatedErrorsTest {
  /** Its inverse is (2 -1; -1 2) / 3. */
  private static final double[][] C = {{2, 1}, {1, 2}};

  private static final double ROUNDING = 1e-14;

  @Test
  void squaresByTheInverse() {
    // (1, 1): 2/3; (1, -1): 2; alike errors of both weigh less than opposite ones.
    CorrelatedErrors e = new CorrelatedErrors(C);
    assertThat(e.squares(new double[] {1, 1})).isCloseTo(2 / 3.0, within(ROUNDING));
    assertThat(e.squares(new double[] {1, -1})).isCloseTo(2, within(ROUNDING));
  }

  @Test
  void meanOfTwoThatHangTogether() {
    // Variances 2 and 4, covariance 1: the inverse is (4 -1; -1 2) / 7, so the mean weighs 3 to 1
    // and has the variance 7 / 4.
    CorrelatedErrors e = new CorrelatedErrors(new double[][] {{2, 1}, {1, 4}});
    double[][] design = {{1}, {1}};
    GaussNewton.Solution s =
        GaussNewton.solve(
            x -> Optional.of(e.equations(design, new double[] {10 - x[0], 14 - x[0]})),
            new double[] {0});
    assertThat(s.x()[0]).isCloseTo(11, within(1e-9));
    assertThat(s.equations().inverse()[0][0]).isCloseTo(7 / 4.0, within(ROUNDING));
    // Left are -1 and 3: (4 + 2 x 3 + 2 x 9) / 7 = 4.
    assertThat(s.squares()).isCloseTo(4, within(1e-9));
  }

  @Test
  void whatIsNoCovarianceIsRefused() {
    assertThatThrownBy(() -> new CorrelatedErrors(new double[][] {{1, 0.5}, {0.4, 1}}))
        .isInstanceOf(IllegalArgumentException.class)
        .hasMessageContaining("not symmetric");
    assertThatThrownBy(() -> new CorrelatedErrors(new double[][] {{1, 1}, {1, 1}}))
        .isInstanceOf(IllegalArgumentException.class)
        .hasMessageContaining("positive definite");
  }

  /** Rounding is a share of the variances: 1e-4 of a million is let pass, of one it is not. */
  @Test
  void roundingLeavesTheHalvesUnalikeByAShare() {
    double[][] large = {{2e6, 1e6 + 1e-4}, {1e6, 2e6}};
    assertThat(new CorrelatedErrors(large).squares(new double[] {1000, 1000}))
        .isCloseTo(2 / 3.0, within(1e-9));
    double[][] exactly = {{1, 1e-9}, {0, 1}};
    assertThat(new CorrelatedErrors(exactly).squares(new double[] {1, 0}))
        .isCloseTo(1, within(ROUNDING));
  }
}
