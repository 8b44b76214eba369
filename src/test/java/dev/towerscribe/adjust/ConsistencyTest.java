package dev.towerscribe.adjust;

import static org.assertj.core.api.Assertions.assertThat;
import static org.assertj.core.api.Assertions.within;

import org.junit.jupiter.api.Test;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.CsvSource;

/** The chi-square test. */
class ConsistencyTest {
  /** Published: 5 % and 1 % points of chi-square as in any table, to its last digit. */
  @ParameterizedTest
  @CsvSource({"3.841, 1, .05", "18.307, 10, .05", "6.635, 1, .01", "50.892, 30, .01"})
  void chanceIsThatOfTheTables(double squares, int freedom, double chance) {
    assertThat(new Consistency(squares, freedom).chance()).isCloseTo(chance, within(5e-5));
  }

  /** Published: the 1 % points again, as a ratio. */
  @ParameterizedTest
  @CsvSource({"1, 6.635", "10, 23.209", "30, 50.892"})
  void limitIsTheRatioOfTheOnePercentPoint(int freedom, double squares) {
    assertThat(Consistency.limit(freedom)).isCloseTo(Math.sqrt(squares / freedom), within(5e-4));
  }

  /** Independent, by hand: root of 40 / 10; the 1 % point of ten is 23.209. */
  @Test
  void widensPastOneInAHundredOnly() {
    assertThat(new Consistency(40, 10).ratio()).isCloseTo(2, within(1e-15));
    assertThat(new Consistency(40, 10).widening()).isCloseTo(2, within(1e-15));
    assertThat(new Consistency(23.3, 10).widening()).isCloseTo(Math.sqrt(2.33), within(1e-15));
    assertThat(new Consistency(23.1, 10).widening()).isEqualTo(1);
    // A lucky set of readings is no better than its instruments.
    assertThat(new Consistency(0.1, 10).widening()).isEqualTo(1);
  }

  @Test
  void withoutAnythingToSpareNothingIsSaid() {
    Consistency none = new Consistency(0, 0);
    assertThat(none.ratio()).isZero();
    assertThat(none.chance()).isEqualTo(1);
    assertThat(none.widening()).isEqualTo(1);
  }
}
