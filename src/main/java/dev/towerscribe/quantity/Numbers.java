package dev.towerscribe.quantity;

import java.math.BigDecimal;
import java.math.MathContext;
import java.math.RoundingMode;

/** Number text that is the same in every locale: a point, no grouping, no negative zero. */
public final class Numbers {
  private static final double QUICK_MOST = 0x1p40;

  /** Well above 2^-13, the largest error of a product below {@link #QUICK_MOST}. */
  private static final double NEAR_HALF = 1e-3;

  private static final double[] POWERS_OF_TEN = {
    1e0, 1e1, 1e2, 1e3, 1e4, 1e5, 1e6, 1e7, 1e8, 1e9, 1e10, 1e11, 1e12
  };

  private Numbers() {}

  /**
   * A number with a fixed count of decimals, halves rounded away from zero.
   *
   * @param value the number; finite
   * @param decimals digits after the point, 0 to 12
   * @return for instance "12.50"
   */
  public static String fixed(double value, int decimals) {
    String quick = quick(value, decimals);
    if (quick != null) {
      return quick;
    }
    BigDecimal rounded = new BigDecimal(value).setScale(decimals, RoundingMode.HALF_UP);
    return rounded.signum() == 0 ? rounded.abs().toPlainString() : rounded.toPlainString();
  }

  /**
   * The same by whole-number arithmetic, several times faster: a pack writes tens of thousands of
   * coordinates. Only where it cannot differ: below 2^40 the product is off by 2^-13 at most, so it
   * settles the rounding unless it lies within {@link #NEAR_HALF} of a half.
   *
   * @return null where the exact way must be taken
   */
  private static String quick(double value, int decimals) {
    if (decimals < 0 || decimals >= POWERS_OF_TEN.length) {
      return null;
    }
    double scaled = Math.abs(value) * POWERS_OF_TEN[decimals];
    if (!(scaled < QUICK_MOST)) {
      return null;
    }
    long whole = (long) scaled;
    double rest = scaled - whole;
    if (Math.abs(rest - 0.5) < NEAR_HALF) {
      return null;
    }
    if (rest > 0.5) {
      whole++;
    }
    String digits = Long.toString(whole);
    StringBuilder text = new StringBuilder(digits.length() + decimals + 3);
    if (value < 0 && whole != 0) {
      text.append('-');
    }
    int before = digits.length() - decimals;
    if (before <= 0) {
      text.append("0.");
      for (int i = before; i < 0; i++) {
        text.append('0');
      }
      return text.append(digits).toString();
    }
    text.append(digits, 0, before);
    if (decimals > 0) {
      text.append('.').append(digits, before, digits.length());
    }
    return text.toString();
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

  /**
   * As {@link #plain}, but always with a decimal point, as job files are written.
   *
   * @param value finite number
   * @param decimals most digits after the point
   * @return the text, such as 8.0
   */
  public static String pointed(double value, int decimals) {
    String text = plain(value, decimals);
    return text.indexOf('.') < 0 ? text + ".0" : text;
  }

  /**
   * A number in full: the fewest digits, from 15 to 17 before trailing zeros are dropped, that read
   * back as the very same double. Unlike the platform's own text it does not change between
   * releases of the platform.
   *
   * @param value the number; finite
   * @return always with a point: "12.5", "100.0", and below 1e-6 or from 1e15 with an exponent,
   *     "6.25E-17"; negative zero is "0.0"
   */
  public static String exact(double value) {
    if (value == 0.0) {
      return "0.0";
    }
    BigDecimal binary = new BigDecimal(value);
    // Any 15 digits survive the way through a double, so fewer need not be tried.
    BigDecimal shortest = binary.round(new MathContext(15, RoundingMode.HALF_EVEN));
    for (int digits = 16; shortest.doubleValue() != value; digits++) {
      shortest = binary.round(new MathContext(digits, RoundingMode.HALF_EVEN));
    }
    shortest = shortest.stripTrailingZeros();
    int exponent = shortest.precision() - shortest.scale() - 1;
    boolean plain = exponent >= -6 && exponent < 15;
    String text = (plain ? shortest : shortest.movePointLeft(exponent)).toPlainString();
    if (text.indexOf('.') < 0) {
      text += ".0";
    }
    return plain ? text : text + "E" + exponent;
  }
}
