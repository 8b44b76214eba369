package dev.towerscribe.survey;

import static org.assertj.core.api.Assertions.assertThat;
import static org.assertj.core.api.Assertions.within;

import java.util.Random;
import org.junit.jupiter.api.Test;

/** The least squares themselves. */
class AdjustmentTest {
  /** Half a unit of the last digit that is printed. */
  private static final double LAST_DIGIT = 5.0e-4;

  /**
   * Published: Ghilani and Wolf, Adjustment Computations, Ex. 14.1, a trilateration in feet without
   * weights. Its inputs are from memory, its results as given in our table of published values.
   */
  @Test
  void aPublishedTrilaterationIsSolvedWithoutAGuess() {
    Nets n = new Nets();
    int a = n.known(865.40, 4527.15, 0);
    int b = n.known(2432.55, 2047.25, 0);
    int c = n.known(2865.22, 27.15, 0);
    // The sketch of the example has the point to the east; its mirror image is to the west.
    int u = n.inPlane(5000, 3000);
    n.tape(a, u, 1, 6049.00);
    n.tape(b, u, 1, 4736.83);
    n.tape(c, u, 1, 5446.49);
    Adjustment solved = n.solve();
    double[] at = n.net.place(solved.x(), u);
    assertThat(at[0]).isCloseTo(6861.317, within(LAST_DIGIT * 2));
    assertThat(at[1]).isCloseTo(3727.819, within(LAST_DIGIT * 2));
    // The book's residuals are computed less read.
    double[] residuals = {-.037, .077, -.047};
    for (int i = 0; i < 3; i++) {
      Entry e = n.entries.get(i);
      double off = e.measure().value(n.net, solved.x()) - e.reading().mean();
      assertThat(off).as(e.id()).isCloseTo(residuals[i], within(LAST_DIGIT));
    }
    double s0 = new Review(solved, Snooping.LEAST_LIMIT).fit().ratio();
    assertThat(s0).isCloseTo(.098, within(LAST_DIGIT));
    assertThat(s0 * Math.sqrt(solved.covariance(0, 0))).isCloseTo(.078, within(LAST_DIGIT));
    assertThat(s0 * Math.sqrt(solved.covariance(1, 1))).isCloseTo(.154, within(LAST_DIGIT));
  }

  /** Independent: central differences of the values. */
  @Test
  void derivativesAreThoseOfTheValues() {
    Random random = new Random(41);
    double step = 1e-4;
    // Second-order error of a central difference at 100 mm, and rounding of 1e-13 mm over the step.
    double close = 1e-7;
    for (int trial = 0; trial < 300; trial++) {
      Nets n = new Nets();
      int a = n.free(0, 0, 0);
      int b = n.inPlane(0, 0);
      int first = n.net.size();
      int second = n.net.size();
      Measure[] measures = {
        new Measure.Distance(a, b),
        new Measure.Distance(b, a, -1, first, second),
        new Measure.Distance(a, b, 1, second, first),
        new Measure.Coordinate(a, trial % 3, trial % 2 == 0 ? 1 : -1),
        new Measure.Coordinate(b, 2, 1),
        new Measure.Size(second)
      };
      double[] x = new double[n.net.unknowns()];
      for (int i = 0; i < x.length; i++) {
        x[i] = 100 + 900 * (random.nextDouble() - 0.5) + 300 * i;
      }
      for (Measure m : measures) {
        double[] row = new double[x.length];
        Measure.Row given = m.row(n.net, x);
        for (int i = 0; i < given.at().length; i++) {
          row[given.at()[i]] += given.by()[i];
        }
        for (int i = 0; i < x.length; i++) {
          double[] more = x.clone();
          double[] less = x.clone();
          more[i] += step;
          less[i] -= step;
          double by = (m.value(n.net, more) - m.value(n.net, less)) / (2 * step);
          assertThat(row[i]).as("%s by %d", m, i).isCloseTo(by, within(close));
        }
      }
    }
  }

  /** Independent: for a mean, covariance and chi-square are those of any textbook. */
  @Test
  void repeatedReadingsAreTheirMean() {
    Nets n = new Nets();
    int p =
        n.net.node(new double[] {0, 0, Network.FREE}, new double[3], Nets.box(-9e9), Nets.box(9e9));
    n.coordinate(p, 2, 0.5, 10.0, 11.0, 12.0);
    Adjustment solved = n.solve();
    assertThat(n.net.place(solved.x(), p)[2]).isCloseTo(11.0, within(1e-9));
    assertThat(solved.covariance(0, 0)).isCloseTo(0.25 / 3, within(1e-12));
    assertThat(solved.freedom()).isEqualTo(2);
    assertThat(solved.squares()).isCloseTo(2 / 0.25, within(1e-9));
  }

  /** Published: 5 % and 1 % points of chi-square as in any table. */
  @Test
  void chiSquareIsThatOfTheTables() {
    assertThat(ChiSquare.above(3.841, 1)).isCloseTo(.05, within(5e-5));
    assertThat(ChiSquare.above(18.307, 10)).isCloseTo(.05, within(5e-5));
    assertThat(ChiSquare.above(50.892, 30)).isCloseTo(.01, within(5e-5));
  }
}
