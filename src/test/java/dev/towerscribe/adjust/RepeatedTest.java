package dev.towerscribe.adjust;

import static org.assertj.core.api.Assertions.assertThat;
import static org.assertj.core.api.Assertions.assertThatThrownBy;
import static org.assertj.core.api.Assertions.within;

import java.util.List;
import org.junit.jupiter.api.Test;

/** Readings of one thing. */
class RepeatedTest {
  /** Independent, by hand: 1, 2, 6: mean 3, departures -2, -1, 3, their squares 14. */
  @Test
  void figuresOfThreeReadings() {
    Repeated r = new Repeated(List.of(1.0, 2.0, 6.0), 0.5);
    assertThat(r.count()).isEqualTo(3);
    assertThat(r.mean()).isEqualTo(3);
    assertThat(r.meanSd()).isCloseTo(0.5 / Math.sqrt(3), within(1e-15));
    assertThat(r.scatter()).isCloseTo(56, within(1e-12));
    // The textbook's sample deviation: root of 14 / 2.
    assertThat(r.shownSd()).isCloseTo(Math.sqrt(7), within(1e-12));
    assertThat(r.spread()).isEqualTo(5);
    assertThat(r.without(1)).isEqualTo(new Repeated(List.of(1.0, 6.0), 0.5));
    assertThat(r.withSd(2)).isEqualTo(new Repeated(List.of(1.0, 2.0, 6.0), 2));
  }

  @Test
  void oneReadingIsItself() {
    Repeated r = Repeated.once(7, 0.2);
    assertThat(r.mean()).isEqualTo(7);
    assertThat(r.meanSd()).isEqualTo(0.2);
    assertThat(r.scatter()).isZero();
    assertThat(r.spread()).isZero();
    assertThat(r.shownSd()).isNaN();
  }

  @Test
  void nonsenseIsRefused() {
    assertThatThrownBy(() -> new Repeated(List.of(), 1))
        .isInstanceOf(IllegalArgumentException.class);
    assertThatThrownBy(() -> Repeated.once(Double.NaN, 1))
        .isInstanceOf(IllegalArgumentException.class);
    assertThatThrownBy(() -> Repeated.once(1, 0)).isInstanceOf(IllegalArgumentException.class);
  }
}
