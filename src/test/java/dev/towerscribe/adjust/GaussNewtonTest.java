package dev.towerscribe.adjust;

import static org.assertj.core.api.Assertions.assertThat;
import static org.assertj.core.api.Assertions.assertThatThrownBy;
import static org.assertj.core.api.Assertions.within;

import java.util.Optional;
import org.junit.jupiter.api.Test;

/** The search. Expected values: independent. */
class GaussNewtonTest {
  /** One figure read as {@code read}, of standard deviation one, that is {@code value} there. */
  private static Optional<NormalEquations> equations(double read, double value, double slope) {
    double off = read - value;
    return Optional.of(
        new NormalEquations(
            new double[][] {{slope * slope}}, new double[] {slope * off}, off * off));
  }

  @Test
  void anArcTangentIsFoundFromFarOff() {
    // Undamped, Newton's steps for atan(x) = 0 diverge from beyond 1.39.
    GaussNewton.Solution s =
        GaussNewton.solve(
            x -> equations(0, Math.atan(x[0]), 1 / (1 + x[0] * x[0])), new double[] {20});
    assertThat(s.x()[0]).isCloseTo(0, within(1e-9));
    assertThat(s.squares()).isCloseTo(0, within(1e-18));
  }

  @Test
  void placesThatCannotBeAreLeft() {
    // log x = 1 from 9: a full step would go below nothing, where there is no logarithm.
    GaussNewton.Solution s =
        GaussNewton.solve(
            x -> x[0] <= 0 ? Optional.empty() : equations(1, Math.log(x[0]), 1 / x[0]),
            new double[] {9});
    assertThat(s.x()[0]).isCloseTo(Math.E, within(1e-9));
  }

  @Test
  void aStartWithoutEquationsIsRefused() {
    assertThatThrownBy(() -> GaussNewton.solve(x -> Optional.empty(), new double[] {0}))
        .isInstanceOf(IllegalArgumentException.class);
  }

  @Test
  void nothingToFindIsFound() {
    TestNetwork t = new TestNetwork();
    t.tape(t.known(0, 0, 0), t.known(3, 4, 0), 1, 7.0);
    Adjustment a = t.solve();
    assertThat(a.consistency().squares()).isEqualTo(4);
    assertThat(a.freedom()).isEqualTo(1);
  }

  /** A straight line is home after one step; three small ones prove it, and no more are made. */
  @Test
  void stopsWhenStepsAreSmall() {
    for (double slope : new double[] {0.1, 1, 30}) {
      int[] asked = {0};
      GaussNewton.Solution s =
          GaussNewton.solve(
              x -> {
                asked[0]++;
                return equations(7, slope * x[0], slope);
              },
              new double[] {0});
      assertThat(s.x()[0]).isCloseTo(7 / slope, within(1e-9));
      // The start, at most three steps while the damping fades, and three small ones.
      assertThat(asked[0]).as("slope %s", slope).isLessThanOrEqualTo(7);
    }
  }
}
