package dev.towerscribe.adjust;

import static org.assertj.core.api.Assertions.assertThat;
import static org.assertj.core.api.Assertions.within;

import org.junit.jupiter.api.Test;

/** Covariances from normal equations. Expected values: independent, worked by hand. */
class CovarianceTest {
  private static final double ROUNDING = 1e-14;

  @Test
  void inverseOfTwoByTwo() {
    // (2 1; 1 3): the determinant is 5, the inverse (3 -1; -1 2) / 5.
    Covariance c = Covariance.inverse(new double[][] {{2, 1}, {1, 3}});
    assertThat(c.open()).isEmpty();
    assertThat(c.matrix()[0][0]).isCloseTo(.6, within(ROUNDING));
    assertThat(c.matrix()[0][1]).isCloseTo(-.2, within(ROUNDING));
    assertThat(c.matrix()[1][1]).isCloseTo(.4, within(ROUNDING));
    assertThat(c.sd(1)).isCloseTo(Math.sqrt(.4), within(ROUNDING));
    assertThat(c.sd(Network.NONE)).isZero();
    // Of x + 2 y and x: .6 - .4 = .2; of x - y: .6 + .4 + .4 = 1.4.
    Row sum = new Row(new int[] {0, 1}, new double[] {1, 2});
    assertThat(c.of(sum, Row.of(0, 1))).isCloseTo(.2, within(ROUNDING));
    assertThat(c.sd(new Row(new int[] {1, 0}, new double[] {-1, 1})))
        .isCloseTo(Math.sqrt(1.4), within(ROUNDING));
    // The other way round.
    assertThat(c.of(1, 0)[0][0]).isCloseTo(.4, within(ROUNDING));
    assertThat(c.of(1, 0)[0][1]).isCloseTo(-.2, within(ROUNDING));
  }

  @Test
  void sharedErrorsAndFactorsKeepCorrelations() {
    Covariance c = Covariance.inverse(new double[][] {{1, 0}, {0, 1}});
    // One standard deviation moves the unknowns by 2 and -3: 4, -6, 9 on top of 1, 0, 1.
    double[][] sum = c.plus(new double[] {2, -3}).matrix();
    assertThat(sum[0]).containsExactly(5, -6);
    assertThat(sum[1]).containsExactly(-6, 10);
    assertThat(c.plus(new double[] {2, -3}).times(4).matrix()[1]).containsExactly(-24, 40);
    // What it came from is as it was.
    assertThat(c.matrix()[0]).containsExactly(1, 0);
  }

  @Test
  void whatNothingFixesIsOpenAndTheRestKeepsItsOwn() {
    // Only the difference of the two was read, to 2 mm: the mean stays open, and about their middle
    // each has half of it: variance of (d / 2) is 4 / 4 = 1.
    double w = 0.25;
    Covariance c = Covariance.inverse(new double[][] {{w, -w}, {-w, w}});
    assertThat(c.open()).hasSize(1);
    assertThat(Math.abs(c.open().get(0)[0])).isCloseTo(Math.sqrt(.5), within(ROUNDING));
    assertThat(c.open().get(0)[0]).isCloseTo(c.open().get(0)[1], within(ROUNDING));
    assertThat(c.matrix()[0][0]).isCloseTo(1, within(ROUNDING));
    assertThat(c.matrix()[0][1]).isCloseTo(-1, within(ROUNDING));
  }

  @Test
  void openPastThreeHundredMillimetres() {
    assertThat(Covariance.inverse(new double[][] {{1 / (299.0 * 299)}}).open()).isEmpty();
    assertThat(Covariance.inverse(new double[][] {{1 / (301.0 * 301)}}).open()).hasSize(1);
  }

  @Test
  void noUnknownsNoCovariance() {
    Covariance none = Covariance.inverse(new double[0][0]);
    assertThat(none.matrix()).isEmpty();
    assertThat(none.open()).isEmpty();
  }

  @Test
  void covarianceOfTwoFunctionsWithFactors() {
    // Of x + 2 y and 5 x - 3 y over (.6 -.2; -.2 .4): 5 x .6 + 3 x .2 - 10 x .2 - 6 x .4 = -.8.
    Covariance c = Covariance.inverse(new double[][] {{2, 1}, {1, 3}});
    Row sum = new Row(new int[] {0, 1}, new double[] {1, 2});
    Row other = new Row(new int[] {0, 1}, new double[] {5, -3});
    assertThat(c.of(sum, other)).isCloseTo(-.8, within(ROUNDING));
    assertThat(c.of(other, sum)).isCloseTo(-.8, within(ROUNDING));
  }

  @Test
  void threeHundredMillimetresThemselvesAreKnown() {
    double w = 1 / (Covariance.OPEN_MM * Covariance.OPEN_MM);
    assertThat(Covariance.inverse(new double[][] {{w}}).open()).isEmpty();
  }
}
