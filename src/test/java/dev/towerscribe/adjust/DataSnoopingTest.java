package dev.towerscribe.adjust;

import static org.assertj.core.api.Assertions.assertThat;
import static org.assertj.core.api.Assertions.within;

import dev.towerscribe.adjust.DataSnooping.SetAside;
import dev.towerscribe.adjust.DataSnooping.Undecided;
import java.util.ArrayList;
import java.util.List;
import java.util.Optional;
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

  private SetAside only(DataSnooping s) {
    List<SetAside> all = s.setAside(s.run(start()));
    assertThat(all).hasSize(1);
    return all.get(0);
  }

  /**
   * By hand, in twos: A = 0 and B = 16 of 2, C of 6. Weights 1, 1, 1/9 (times 1/4): the mean is m =
   * (16 + C / 9) 9/19. The squares of A's and B's deviations differ by 0.8 (C - 8): up to C = 15.5
   * by less than six, so that nothing tells which of them is wrong, as A and B hide in each other
   * by (1/W) / (1 - 1/W) = 9/10.
   */
  @Test
  void aRivalExplainsNearlyAsMuch() {
    for (double c : new double[] {15.4, 15.6}) {
      TestNetwork n = new TestNetwork();
      int p = n.benchmark();
      final Observation a = n.height(p, 2, 0.0);
      final Observation b = n.height(p, 2, 16.0);
      n.height(p, 6, c);
      DataSnooping s =
          new DataSnooping(
              n.observations, (left, x) -> Adjustment.solve(n.net, left, x), 1, Undecided.LEFT_OUT);
      SetAside out = s.setAside(s.run(n.solve(0))).get(0);
      assertThat(out.observation()).isEqualTo(a);
      assertThat(out.rivals()).isEqualTo(c < 15.5 ? List.of(b) : List.of());
    }
  }

  /**
   * By hand, in twos: A = 0 and B = 16 of 2, C = 8 between them. A and B deviate alike and hide in
   * each other by 1 / (1 + 1/t2), t being C's deviation over theirs: with 0.9 by 0.448, with 1.1 by
   * 0.548. Past a half, nothing tells which is wrong.
   */
  @Test
  void aRivalHidesInTheOther() {
    for (double third : new double[] {0.9, 1.1}) {
      TestNetwork n = new TestNetwork();
      int p = n.benchmark();
      n.height(p, 2, 0.0);
      n.height(p, 2, 16.0);
      n.height(p, 2 * third, 8.0);
      DataSnooping s =
          new DataSnooping(
              n.observations, (left, x) -> Adjustment.solve(n.net, left, x), 1, Undecided.LEFT_OUT);
      SetAside out = s.setAside(s.run(n.solve(0))).get(0);
      assertThat(out.rivals()).hasSize(third > 1 ? 1 : 0);
    }
  }

  /**
   * By hand, in twos: A reads 0 and 6 (of 2 each), B 8.4 (of 1). Weights 1, 1, 4: m = 6.6; the
   * first reading deviates by root(1.2) 3.3 = 3.61, all of A and B by root(12) 0.9 = 3.12, which is
   * within the limit: so one reading is left out, but B, that hides in it by root(4/10) = 0.63,
   * explains as much but for 3.3.
   */
  @Test
  void oneReadingMayHaveARival() {
    Observation a = t.height(mark, 2, 0.0, 6.0);
    Observation b = t.height(mark, 1, 8.4);
    SetAside out = only(search(1, Undecided.LEFT_OUT));
    assertThat(out.observation()).isEqualTo(a);
    assertThat(out.number()).contains(1);
    assertThat(out.rivals()).containsExactly(b);
  }

  /**
   * By hand, in twos: A reads 0 and 7.6 (of 2 each), B 13.4 (of 2 root 2). Weights 1, 1, 1/2: m =
   * 5.72; the first reading deviates by 2.86 / root(0.6) = 3.69, B by 3.84 root(0.625) = 3.04; but
   * it hides in it by root(1/6) = 0.41 only. The second, that hides by 2/3, deviates by 1.2.
   */
  @Test
  void oneReadingIsToldFromTheRest() {
    t.height(mark, 2, 0.0, 7.6);
    t.height(mark, 2 * Math.sqrt(2), 13.4);
    DataSnooping s = search(1, Undecided.LEFT_OUT);
    SetAside out = only(s);
    assertThat(out.number()).contains(1);
    assertThat(out.rivals()).isEmpty();
    assertThat(s.scattered()).isEmpty();
    assertThat(s.limit()).isEqualTo(DataSnooping.LEAST_LIMIT);
  }

  /**
   * By hand: A reads a and b, three others 0. Weights 2 of 5: m = (a + b) / 5; all of A deviate by
   * root(2 / 0.6) (0.3 x 9) = 4.93. Of 6.6 the single reading deviates by 4.8 / root(0.8) = 5.37,
   * whose square is 4.5 more: all of A goes. Of 7 it is 5.81, 9.5 more: the reading alone.
   */
  @Test
  void allReadingsGoWhereThatIsNearlyAsLikely() {
    for (double first : new double[] {6.6, 7}) {
      TestNetwork n = new TestNetwork();
      int p = n.benchmark();
      n.height(p, 1, first, 9 - first);
      for (int i = 0; i < 3; i++) {
        n.height(p, 1, 0.0);
      }
      DataSnooping s =
          new DataSnooping(
              n.observations, (left, x) -> Adjustment.solve(n.net, left, x), 1, Undecided.LEFT_OUT);
      SetAside out = s.setAside(s.run(n.solve(0))).get(0);
      assertThat(out.observation().number()).isZero();
      assertThat(out.number()).isEqualTo(first < 7 ? Optional.empty() : Optional.of(1));
    }
  }

  /** What was widened counts among those that were left out. */
  @Test
  void widenedReadingsCountAsOneOfThoseAllowed() {
    t.height(mark, 2, 0.0, 18.0);
    int other = t.benchmark();
    for (double value : new double[] {0, 0, 0, 5}) {
      t.height(other, 1, value);
    }
    DataSnooping one = search(1, Undecided.LEFT_OUT);
    assertThat(one.setAside(one.run(start()))).isEmpty();
    assertThat(one.scattered()).hasSize(1);
    DataSnooping two = search(2, Undecided.LEFT_OUT);
    assertThat(two.setAside(two.run(start()))).hasSize(1);
    assertThat(two.scattered()).hasSize(1);
  }

  /** More suspects than are tried: the worst of them are. */
  @Test
  void aCoarseSlipIsFoundAmongMany() {
    for (int i = 0; i < 19; i++) {
      t.height(mark, 1, 0.0);
    }
    Observation slip = t.height(mark, 1, 100.0);
    SetAside out = only(search(20, Undecided.LEFT_OUT));
    assertThat(out.observation()).isEqualTo(slip);
    assertThat(out.rivals()).isEmpty();
  }

  /**
   * By hand: without either of A and B nothing is left but the 8 that two heights of another mark,
   * 4 apart, are off: so nothing tells which is wrong, and the first is named.
   */
  @Test
  void ofTwoCoarselyApartNothingTellsWhichIsWrong() {
    final Observation a = t.height(mark, 1, 0.0);
    final Observation b = t.height(mark, 1, 32.0);
    int other = t.benchmark();
    t.height(other, 1, 0.0);
    t.height(other, 1, 4.0);
    SetAside out = only(search(20, Undecided.LEFT_OUT));
    assertThat(out.observation()).isEqualTo(a);
    assertThat(out.rivals()).containsExactly(b);
  }

  /**
   * By hand: A reads 0 and 4, whose own scatter is 8; B reads 32. Without B the 8 are left, without
   * A nothing: but A's own scatter is not B's fault, and either may be wrong.
   */
  @Test
  void scatterOfItsOwnDoesNotAccuse() {
    Observation a = t.height(mark, 1, 0.0, 4.0);
    Observation b = t.height(mark, 1, 32.0);
    SetAside out = only(search(1, Undecided.LEFT_OUT));
    assertThat(out.number()).isEmpty();
    List<Observation> both = new ArrayList<>(out.rivals());
    both.add(out.observation());
    assertThat(both).containsExactlyInAnyOrder(a, b);
  }

  /**
   * A height to 10 mm and one to 310 mm, 5000 apart: without the finer one the mark were known no
   * better than 300 mm, which is open. So the coarser one is wrong, and alone so.
   */
  @Test
  void whatFixesAPointAloneIsNotAccused() {
    t.height(mark, 10, 0.0);
    Observation coarse = t.height(mark, 310, 5000.0);
    SetAside out = only(search(20, Undecided.LEFT_OUT));
    assertThat(out.observation()).isEqualTo(coarse);
    assertThat(out.rivals()).isEmpty();
  }

  /**
   * By hand, from the origin: 5-12-13 and 3-4-5 in multiples give distances of 26, 60, 60 and 90,
   * the last of which was read as 30. So coarse a slip moves the point, and along straight lines
   * the second deviates most; but only without the last do all others fit.
   */
  @Test
  void aCoarseSlipThatPointsAtItsNeighbourIsTraced() {
    int p = t.inPlane();
    t.height(mark, 1, 0.0);
    t.tape(t.known(10, -24, 0), p, 1, 26.0);
    final Observation second = t.tape(t.known(-48, 36, 0), p, 1, 60.0);
    t.tape(t.known(-48, -36, 0), p, 1, 60.0);
    final Observation slip = t.tape(t.known(54, -72, 0), p, 1, 30.0);
    Adjustment first = start();
    assertThat(deviations(first, second)).isGreaterThan(deviations(first, slip) + 1);
    SetAside out = only(search(20, Undecided.LEFT_OUT));
    assertThat(out.observation()).isEqualTo(slip);
    assertThat(out.excess()).isCloseTo(-60, within(1e-9));
    assertThat(out.rivals()).isEmpty();
  }

  private static double deviations(Adjustment a, Observation o) {
    double off = o.reading().mean() - a.calculated(o);
    return Math.abs(off) * Math.sqrt(o.weight() / a.redundancy(o));
  }
}
