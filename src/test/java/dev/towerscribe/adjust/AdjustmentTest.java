package dev.towerscribe.adjust;

import static org.assertj.core.api.Assertions.assertThat;
import static org.assertj.core.api.Assertions.within;

import java.util.Random;
import org.junit.jupiter.api.Test;

/** Networks at their least-squares solution. */
class AdjustmentTest {
  /** Half a unit of the last digit that is printed. */
  private static final double LAST_DIGIT = 5.0e-4;

  private static final double ROUNDING = 1e-9;

  /**
   * Published: Ghilani and Wolf, Adjustment Computations, Ex. 14.1, a trilateration in feet without
   * weights. Inputs and results from memory.
   */
  @Test
  void aPublishedTrilateration() {
    TestNetwork t = new TestNetwork();
    int u = t.inPlane();
    t.tape(t.known(865.40, 4527.15, 0), u, 1, 6049.00);
    t.tape(t.known(2432.55, 2047.25, 0), u, 1, 4736.83);
    t.tape(t.known(2865.22, 27.15, 0), u, 1, 5446.49);
    Adjustment a = t.solve(5000, 3000);
    assertThat(a.x()[0]).isCloseTo(6861.317, within(2 * LAST_DIGIT));
    assertThat(a.x()[1]).isCloseTo(3727.819, within(2 * LAST_DIGIT));
    // The book's residuals are calculated less read.
    double[] residuals = {-.037, .077, -.047};
    for (int i = 0; i < 3; i++) {
      Observation o = t.observations.get(i);
      assertThat(a.calculated(o) - o.reading().mean()).isCloseTo(residuals[i], within(LAST_DIGIT));
    }
    double s0 = a.consistency().ratio();
    assertThat(s0).isCloseTo(.098, within(LAST_DIGIT));
    assertThat(s0 * a.covariance().sd(0)).isCloseTo(.078, within(LAST_DIGIT));
    assertThat(s0 * a.covariance().sd(1)).isCloseTo(.154, within(LAST_DIGIT));
  }

  /** Independent: central differences of the values. */
  @Test
  void derivativesAreThoseOfTheValues() {
    Random random = new Random(41);
    double step = 1e-4;
    // Second-order error of a central difference at 100 mm, and rounding of 1e-13 mm over the step.
    double close = 1e-7;
    for (int trial = 0; trial < 300; trial++) {
      TestNetwork t = new TestNetwork();
      int a = t.inSpace();
      int b = t.inPlane();
      int first = t.net.size();
      int second = t.net.size();
      Measure[] measures = {
        new Measure.Distance(a, b),
        new Measure.Distance(b, a, Edges.INSIDE, first, second),
        new Measure.Distance(a, b, Edges.OUTSIDE, second, first),
        new Measure.Coordinate(a, trial % 3, trial % 2 == 0 ? 1 : -1),
        new Measure.Coordinate(b, 2, 1),
        new Measure.Size(second)
      };
      double[] x = new double[t.net.unknowns()];
      for (int i = 0; i < x.length; i++) {
        x[i] = 100 + 900 * (random.nextDouble() - 0.5) + 300 * i;
      }
      for (Measure m : measures) {
        double[] row = new double[x.length];
        Row given = m.row(t.net, x);
        for (int i = 0; i < given.at().length; i++) {
          row[given.at()[i]] += given.by()[i];
        }
        for (int i = 0; i < x.length; i++) {
          double[] more = x.clone();
          double[] less = x.clone();
          more[i] += step;
          less[i] -= step;
          double by = (m.value(t.net, more) - m.value(t.net, less)) / (2 * step);
          assertThat(row[i]).as("%s by %d", m, i).isCloseTo(by, within(close));
        }
      }
    }
  }

  /** Independent, by hand: 3-4-5; holes of 9 and 10 whose centres are 50 apart. */
  @Test
  void edgesAreTheCentresWithTheRadii() {
    TestNetwork t = new TestNetwork();
    int a = t.known(0, 0, 0);
    int b = t.known(30, 40, 0);
    int first = t.net.size();
    int second = t.net.size();
    double[] x = {9, 10};
    assertThat(new Measure.Distance(a, b).value(t.net, x)).isEqualTo(50);
    assertThat(new Measure.Distance(a, b, Edges.INSIDE, first, second).value(t.net, x))
        .isEqualTo(40.5);
    assertThat(new Measure.Distance(a, b, Edges.OUTSIDE, first, second).value(t.net, x))
        .isEqualTo(59.5);
  }

  /** Two places in one have no direction: they are let come apart along the first axis. */
  @Test
  void coincidentPointsComeApart() {
    TestNetwork t = new TestNetwork();
    int a = t.known(7, 8, 9);
    int b = t.inSpace();
    assertThat(new Measure.Distance(a, b).row(t.net, new double[] {7, 8, 9}).by())
        .containsExactly(1, 0, 0);
  }

  /** Independent: mean, variance and chi-square of three readings, as in any textbook. */
  @Test
  void repeatedReadingsAreTheirMean() {
    TestNetwork t = new TestNetwork();
    t.height(t.benchmark(), 0.5, 10.0, 11.0, 12.0);
    Adjustment a = t.solve(0);
    assertThat(a.x()[0]).isCloseTo(11, within(ROUNDING));
    assertThat(a.covariance().sd(0)).isCloseTo(0.5 / Math.sqrt(3), within(ROUNDING));
    assertThat(a.freedom()).isEqualTo(2);
    // (1 + 0 + 1) / 0.25.
    assertThat(a.consistency().squares()).isCloseTo(8, within(ROUNDING));
  }

  /**
   * Independent, worked by hand: heights of two marks, each read to 2 mm, and their difference read
   * to 1 mm along the line they stand on. J'WJ = (1/4 + 1, -1; -1, 1/4 + 1); its determinant is
   * 25/16 - 1 = 9/16, so the covariance is (5/4, 1; 1, 5/4) x 16/9 = (20, 16; 16, 20) / 9.
   */
  @Test
  void aDifferenceTiesTwoHeights() {
    TestNetwork t = new TestNetwork();
    int low = t.benchmark();
    int high = t.benchmark();
    t.height(low, 2, 100.0);
    t.height(high, 2, 109.0);
    final Observation difference = t.tape(low, high, 1, 10.0);
    Adjustment a = t.solve(100, 109);
    double[][] c = a.covariance().matrix();
    assertThat(c[0][0]).isCloseTo(20 / 9.0, within(ROUNDING));
    assertThat(c[1][1]).isCloseTo(20 / 9.0, within(ROUNDING));
    assertThat(c[0][1]).isCloseTo(16 / 9.0, within(ROUNDING));
    // Of the difference 20 + 20 - 2 x 16 = 8, of the sum 20 + 20 + 2 x 16 = 72, over nine.
    assertThat(a.calculatedVariance(difference)).isCloseTo(8 / 9.0, within(ROUNDING));
    assertThat(a.covariance().sd(new Row(new int[] {0, 1}, new double[] {1, 1})))
        .isCloseTo(Math.sqrt(8), within(ROUNDING));
    // Redundancies: 1 - 20/9/4 = 4/9 each, 1 - 8/9 = 1/9: together one reading to spare.
    assertThat(a.redundancy(t.observations.get(0))).isCloseTo(4 / 9.0, within(ROUNDING));
    assertThat(a.redundancy(difference)).isCloseTo(1 / 9.0, within(ROUNDING));
    assertThat(a.isChecked(difference)).isTrue();
    assertThat(a.freedom()).isEqualTo(1);
    // The misclosure of 1 mm is shared 4 : 1 : 4 by variances: 1/81 (16/4 + 1/1 + 16/4) = 1/9.
    assertThat(a.x()[0]).isCloseTo(100 - 4 / 9.0, within(ROUNDING));
    assertThat(a.x()[1]).isCloseTo(109 + 4 / 9.0, within(ROUNDING));
    assertThat(a.consistency().squares()).isCloseTo(1 / 9.0, within(ROUNDING));
  }

  /** Unknowns that nothing fixes take no reading away from the freedom. */
  @Test
  void freedomCountsWhatWasFixed() {
    TestNetwork t = new TestNetwork();
    int p = t.inPlane();
    t.read(new Measure.Coordinate(p, 0, 1), 1, 5.0, 6.0);
    Adjustment a = t.solve(0, 77);
    assertThat(a.freedom()).isEqualTo(1);
    assertThat(a.covariance().open()).hasSize(1);
    // What is open stays where the search began.
    assertThat(a.x()[1]).isEqualTo(77);
  }

  @Test
  void anObservationWithNothingToCheckItIsUnchecked() {
    TestNetwork t = new TestNetwork();
    int p = t.benchmark();
    Observation fine = t.height(p, 0.1, 10.0);
    // By hand: its redundancy is 0.01 / (0.01 + 0.49) = 0.02, which is not more than 0.02.
    t.height(p, 0.7, 10.0);
    assertThat(t.solve(10).redundancy(fine)).isCloseTo(.02, within(ROUNDING));
    // With 0.01 / (0.01 + 0.36) = 0.027 it is.
    t.observations.remove(1);
    t.height(p, 0.6, 10.0);
    assertThat(t.solve(10).isChecked(fine)).isTrue();
    t.observations.remove(1);
    t.height(p, 0.8, 10.0);
    assertThat(t.solve(10).isChecked(fine)).isFalse();
  }

  /** Independent, by hand: 2-3-6 makes 7. */
  @Test
  void endsOfADistance() {
    Measure.Distance d = new Measure.Distance(3, 5);
    assertThat(d.otherEnd(3)).isEqualTo(5);
    assertThat(d.otherEnd(5)).isEqualTo(3);
    assertThat(d.endsAt(3)).isTrue();
    assertThat(d.endsAt(5)).isTrue();
    assertThat(d.endsAt(4)).isFalse();
    assertThat(Measure.distance(new double[] {1, 1, 1}, new double[] {3, 4, 7})).isEqualTo(7);
    assertThat(Edges.INSIDE.word()).isEqualTo("inside");
  }

  @Test
  void whatIsGivenStaysWhereAPointIsPut() {
    TestNetwork t = new TestNetwork();
    int given = t.known(1, 2, 3);
    int p = t.inPlane();
    assertThat(t.net.nodes()).hasSize(2);
    assertThat(t.net.nodes().get(given).isGiven()).isTrue();
    // One coordinate given is not all of them.
    assertThat(t.net.nodes().get(p).isGiven()).isFalse();
    double[] x = new double[2];
    t.net.put(x, given, new double[] {7, 8, 9});
    assertThat(x).containsExactly(0, 0);
    t.net.put(x, p, new double[] {7, 8, 9});
    assertThat(t.net.place(x, p)).containsExactly(7, 8, 0);
    assertThat(t.net.place(x, given)).containsExactly(1, 2, 3);
  }

  /**
   * Independent, worked by hand: heights of two marks, each read twice to 2 mm, a difference read
   * once to 1 mm, and a third mark that nothing was read of. Five readings, two unknowns fixed of
   * three: three to spare, not two.
   */
  @Test
  void aMarkThatNothingFixesCostsNoReading() {
    TestNetwork t = new TestNetwork();
    int low = t.benchmark();
    int high = t.benchmark();
    t.benchmark();
    t.height(low, 2, 100.0, 102.0);
    t.height(high, 2, 110.0, 110.0);
    t.tape(low, high, 1, 9.0);
    Adjustment a = t.solve(100, 110, 0);
    assertThat(a.covariance().open()).hasSize(1);
    assertThat(a.freedom()).isEqualTo(3);
    // Of the readings only 100 and 102 do not fit: twice (1 / 2) squared.
    assertThat(a.consistency().squares()).isCloseTo(.5, within(ROUNDING));
    assertThat(a.consistency().ratio()).isCloseTo(Math.sqrt(.5 / 3), within(ROUNDING));
    // J'WJ of the two: (1/2 + 1, -1; -1, 3/2), determinant 5/4; the inverse (6 4; 4 6) / 5.
    double[][] c = a.covariance().of(0, 1);
    assertThat(c[0][0]).isCloseTo(1.2, within(ROUNDING));
    assertThat(c[0][1]).isCloseTo(.8, within(ROUNDING));
  }
}
