package dev.towerscribe.adjust;

import static org.assertj.core.api.Assertions.assertThat;
import static org.assertj.core.api.Assertions.within;

import dev.towerscribe.adjust.DataSnooping.SetAside;
import dev.towerscribe.adjust.DataSnooping.Undecided;
import java.util.List;
import org.junit.jupiter.api.Test;

/** Readings that cannot be right, in small levelling nets. Expected values: independent. */
class DataSnoopingTest {
  private final TestNetwork t = new TestNetwork();
  private final int mark = t.benchmark();

  private DataSnooping search(int most, Undecided undecided) {
    return new DataSnooping(
        t.observations, (left, x) -> Adjustment.solve(t.net, left, x), most, undecided);
  }

  private Adjustment start() {
    return t.solve(new double[t.net.unknowns()]);
  }

  @Test
  void goodReadingsStay() {
    t.height(mark, 1, 10.0);
    t.height(mark, 1, 11.0);
    t.height(mark, 1, 12.0);
    DataSnooping s = search(20, Undecided.LEFT_OUT);
    Adjustment first = start();
    assertThat(s.run(first)).isSameAs(first);
    assertThat(s.setAside(first)).isEmpty();
  }

  @Test
  void aSlipIsNamedWithWhatTheRestMakeOfIt() {
    t.height(mark, 1, 10.0);
    t.height(mark, 1, 10.0);
    t.height(mark, 1, 10.0);
    final Observation off = t.height(mark, 1, 16.0);
    DataSnooping s = search(20, Undecided.LEFT_OUT);
    Adjustment last = s.run(start());
    assertThat(last.x()[0]).isCloseTo(10, within(1e-9));
    assertThat(last.observations()).doesNotContain(off);
    SetAside slip = s.setAside(last).get(0);
    assertThat(slip.observation()).isEqualTo(off);
    assertThat(slip.number()).isEmpty();
    assertThat(slip.rivals()).isEmpty();
    // By hand: 6 from the mean of three, whose variance is 1/3: 6 over the root of 1 + 1/3.
    assertThat(slip.excess()).isCloseTo(6, within(1e-9));
    assertThat(slip.sd()).isCloseTo(Math.sqrt(4 / 3.0), within(1e-9));
    assertThat(slip.deviations()).isCloseTo(6 / Math.sqrt(4 / 3.0), within(1e-9));
  }

  @Test
  void justPastTheLimitAndJustWithin() {
    // A reading against two others: its distance from their mean has the variance 1 + 1/2.
    double limit = DataSnooping.LEAST_LIMIT * Math.sqrt(1.5);
    for (double share : new double[] {0.999, 1.001}) {
      TestNetwork n = new TestNetwork();
      int p = n.benchmark();
      n.height(p, 1, 0.0);
      n.height(p, 1, 0.0);
      n.height(p, 1, limit * share);
      DataSnooping s =
          new DataSnooping(
              n.observations,
              (left, x) -> Adjustment.solve(n.net, left, x),
              20,
              Undecided.LEFT_OUT);
      assertThat(s.setAside(s.run(n.solve(0)))).hasSize(share > 1 ? 1 : 0);
    }
  }

  @Test
  void ofTwoReadingsNothingTellsWhichIsWrong() {
    Observation a = t.height(mark, 1, 0.0);
    Observation b = t.height(mark, 1, 8.0);
    DataSnooping out = search(20, Undecided.LEFT_OUT);
    SetAside slip = out.setAside(out.run(start())).get(0);
    assertThat(slip.observation()).isEqualTo(a);
    assertThat(slip.rivals()).containsExactly(b);
    assertThat(out.undecided()).isEmpty();

    DataSnooping kept = search(20, Undecided.KEPT);
    Adjustment all = start();
    assertThat(kept.run(all)).isSameAs(all);
    assertThat(kept.setAside(all)).isEmpty();
    SetAside open = kept.undecided().orElseThrow();
    assertThat(open.rivals()).containsExactly(b);
    assertThat(open.excess()).isCloseTo(-8, within(1e-9));
    // 8 over the root of 1 + 1.
    assertThat(open.deviations()).isCloseTo(-8 / Math.sqrt(2), within(1e-9));
  }

  @Test
  void oneOfSeveralReadingsOfAThingIsLeftOutAlone() {
    t.height(mark, 1, 10.0, 10.5, 18.0, 9.5);
    t.height(mark, 0.5, 10.0);
    DataSnooping s = search(20, Undecided.LEFT_OUT);
    Adjustment last = s.run(start());
    SetAside slip = s.setAside(last).get(0);
    assertThat(slip.number()).contains(3);
    assertThat(last.observations().get(0).numbers()).containsExactly(1, 2, 4);
    // By hand: weights 3 and 4 of the mean 10 and of 10: 10, variance 1/7; 8 over root of 8/7.
    assertThat(slip.excess()).isCloseTo(8, within(1e-9));
    assertThat(slip.sd()).isCloseTo(Math.sqrt(8 / 7.0), within(1e-9));
  }

  @Test
  void twoReadingsThatContradictEachOtherAreKeptWithALargerDeviation() {
    t.height(mark, 1, 10.0, 19.0);
    DataSnooping s = search(20, Undecided.LEFT_OUT);
    Adjustment last = s.run(start());
    assertThat(s.setAside(last)).isEmpty();
    assertThat(s.scattered()).hasSize(1);
    assertThat(s.scattered().get(0).observation().reading().sd()).isEqualTo(1);
    // Root of 2 x 4.5 squared over one.
    assertThat(s.scattered().get(0).widenedSd()).isCloseTo(Math.sqrt(40.5), within(1e-9));
    assertThat(last.x()[0]).isCloseTo(14.5, within(1e-9));
    assertThat(last.covariance().sd(0)).isCloseTo(4.5, within(1e-9));
  }

  @Test
  void noMoreAreLeftOutThanAllowed() {
    for (double value : new double[] {0, 0, 0, 0, 0, 30, 60}) {
      t.height(mark, 1, value);
    }
    DataSnooping one = search(1, Undecided.LEFT_OUT);
    assertThat(one.setAside(one.run(start())))
        .extracting(s -> s.observation().reading().mean())
        .containsExactly(60.0);
    DataSnooping two = search(2, Undecided.LEFT_OUT);
    assertThat(two.setAside(two.run(start())))
        .extracting(s -> s.observation().reading().mean())
        .containsExactly(60.0, 30.0);
  }

  /**
   * Independent, by hand: of 100 readings asked one passes with 0.05 / 100, two-sided: 3.481
   * standard deviations in any table of the normal distribution.
   */
  @Test
  void theLimitRisesWithTheReadings() {
    assertThat(DataSnooping.limit(List.of())).isEqualTo(DataSnooping.LEAST_LIMIT);
    for (int i = 0; i < 49; i++) {
      t.height(mark, 1, 0.0);
    }
    assertThat(DataSnooping.limit(t.observations)).isEqualTo(DataSnooping.LEAST_LIMIT);
    for (int i = 0; i < 51; i++) {
      t.height(mark, 1, 0.0);
    }
    assertThat(DataSnooping.limit(t.observations)).isCloseTo(3.481, within(5e-4));
    // Repeated readings are asked one by one and as a whole: three more, of 103.
    t.height(mark, 1, 0.0, 0.0);
    assertThat(DataSnooping.limit(t.observations)).isGreaterThan(3.4885);
  }
}
