package dev.towerscribe.quantity;

import java.math.BigDecimal;
import java.math.RoundingMode;

/** Number text that is the same in every locale: a point, no grouping, no negative zero. */
public final class Numbers {
  private Numbers() {}

  /**
   * A number with a fixed count of decimals, halves rounded away from zero.
   *
   * @param value the number; finite
   * @param decimals digits after the point, 0 to 12
   * @return for instance "12.50"
   */
  public static String fixed(double value, int decimals) {
    BigDecimal rounded = new BigDecimal(value).setScale(decimals, RoundingMode.HALF_UP);
    return rounded.signum() == 0 ? rounded.abs().toPlainString() : rounded.toPlainString();
  }

  /**
   * A number with at most that many decimals, trailing zeros dropped.
   *
   * @param value the number; finite
   * @param decimals most digits after the point, 0 to 12
   * @return for instance "12.5"
   */
  public static String plain(double value, int decimals) {
    String text = fixed(value, decimals);
    if (text.indexOf('.') < 0) {
      return text;
    }
    int end = text.length();
    while (text.charAt(end - 1) == '0') {
      end--;
    }
    if (text.charAt(end - 1) == '.') {
      end--;
    }
    return text.substring(0, end);
  }
}
