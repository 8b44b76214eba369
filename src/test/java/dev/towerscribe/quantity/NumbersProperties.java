package dev.towerscribe.quantity;

import static org.assertj.core.api.Assertions.assertThat;

import java.math.BigDecimal;
import java.math.RoundingMode;
import net.jqwik.api.Example;
import net.jqwik.api.ForAll;
import net.jqwik.api.Property;
import net.jqwik.api.constraints.DoubleRange;
import net.jqwik.api.constraints.IntRange;

class NumbersProperties {
  /** Independent: the exact binary value, rounded by the JDK's decimal arithmetic. */
  private static String exact(double value, int decimals) {
    BigDecimal rounded = new BigDecimal(value).setScale(decimals, RoundingMode.HALF_UP);
    return (rounded.signum() == 0 ? rounded.abs() : rounded).toPlainString();
  }

  @Property(seed = "41", tries = 5000)
  void agreesWithExactArithmetic(
      @ForAll @DoubleRange(min = -1e7, max = 1e7) double value,
      @ForAll @IntRange(max = 12) int decimals) {
    assertThat(Numbers.fixed(value, decimals)).isEqualTo(exact(value, decimals));
    assertThat(Numbers.fixed(value * 1e-7, decimals)).isEqualTo(exact(value * 1e-7, decimals));
    assertThat(Numbers.fixed(value * 1e12, decimals)).isEqualTo(exact(value * 1e12, decimals));
  }

  /** Halves, and the doubles to either side of them, where rounding turns over. */
  @Property(seed = "42", tries = 5000)
  void agreesNextToHalves(
      @ForAll @IntRange(min = -3_000_000, max = 3_000_000) int count,
      @ForAll @IntRange(max = 6) int decimals) {
    double half = (count + 0.5) / Math.pow(10, decimals);
    for (double value : new double[] {half, Math.nextUp(half), Math.nextDown(half)}) {
      assertThat(Numbers.fixed(value, decimals)).isEqualTo(exact(value, decimals));
    }
  }

  @Example
  void looksTheSameEverywhere() {
    // Frozen.
    assertThat(Numbers.fixed(12.5, 2)).isEqualTo("12.50");
    assertThat(Numbers.fixed(-0.004, 2)).isEqualTo("0.00");
    assertThat(Numbers.fixed(-0.0, 0)).isEqualTo("0");
    assertThat(Numbers.fixed(-0.05, 1)).isEqualTo("-0.1");
    assertThat(Numbers.fixed(0.5, 0)).isEqualTo("1");
    assertThat(Numbers.fixed(0.25, 0)).isEqualTo("0");
    assertThat(Numbers.fixed(1234567.891, 1)).isEqualTo("1234567.9");
    assertThat(Numbers.plain(12.50, 6)).isEqualTo("12.5");
    assertThat(Numbers.plain(100, 6)).isEqualTo("100");
    assertThat(Numbers.plain(0.000001, 6)).isEqualTo("0.000001");
    assertThat(Numbers.plain(-0.0000001, 6)).isEqualTo("0");
  }

  @Property(seed = "43", tries = 5000)
  void readsBackTheSame(@ForAll double value) {
    double back = Double.parseDouble(Numbers.exact(value));
    assertThat(back == value).isTrue();
  }

  /**
   * Independent: the decimal itself; any of 15 digits or fewer survives the way through a double.
   */
  @Property(seed = "44", tries = 2000)
  void isNoLongerThanItNeed(
      @ForAll @IntRange(min = -999_999_999) int digits, @ForAll @IntRange(max = 9) int decimals) {
    BigDecimal decimal = BigDecimal.valueOf(digits, decimals).stripTrailingZeros();
    String text = decimal.toPlainString();
    if (digits != 0 && decimal.abs().compareTo(new BigDecimal("0.000001")) >= 0) {
      assertThat(Numbers.exact(decimal.doubleValue()))
          .isEqualTo(text.contains(".") ? text : text + ".0");
    }
  }

  @Example
  void writesInFull() {
    // Frozen, except for the last: independent, the least double is 2^-1074, calculated to 15
    // digits.
    assertThat(Numbers.exact(-0.0)).isEqualTo("0.0");
    assertThat(Numbers.exact(0.1)).isEqualTo("0.1");
    assertThat(Numbers.exact(-100)).isEqualTo("-100.0");
    assertThat(Numbers.exact(0.1 + 0.2)).isEqualTo("0.30000000000000004");
    assertThat(Numbers.exact(0.000001)).isEqualTo("0.000001");
    assertThat(Numbers.exact(2e-9)).isEqualTo("2.0E-9");
    assertThat(Numbers.exact(1e15)).isEqualTo("1.0E15");
    assertThat(Numbers.exact(Double.MIN_VALUE)).isEqualTo("4.94065645841247E-324");
  }
}
