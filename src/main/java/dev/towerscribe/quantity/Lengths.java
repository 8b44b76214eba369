package dev.towerscribe.quantity;

/**
 * Figures as people read them: lengths in one unit, areas, and angles in degrees. Every screen,
 * sheet and report takes its number text from here, so that one length never reads two ways.
 *
 * <p>Example: in inches a length of 25.4 mm is "1.000 in" to calipers and "1.00 in" to a tape.
 *
 * @param unit the unit lengths are shown in; angles do not depend on it
 */
public record Lengths(LengthUnit unit) {
  /** How fine a length is shown: decimals of a millimetre and of an inch. */
  public enum Fineness {
    /** What a tape or a straightedge can tell. */
    TAPE(1, 2),
    /** Where something lies on a car or a plan. */
    PLACE(1, 3),
    /** What calipers in common use show. */
    CALIPER(2, 3),
    /** A size on a drawing. */
    DRAWING(2, 4),
    /** A limit of size: a grade as narrow as H7 must not be rounded up. */
    LIMIT(3, 5),
    /** An area in square millimetres or square inches. */
    AREA(0, 3);

    private final int mmDecimals;
    private final int inchDecimals;

    Fineness(int mmDecimals, int inchDecimals) {
      this.mmDecimals = mmDecimals;
      this.inchDecimals = inchDecimals;
    }

    private int decimals(LengthUnit unit) {
      return unit == LengthUnit.MM ? mmDecimals : inchDecimals;
    }
  }

  /** Heads a column of standard deviations, or stands before one. */
  public static final String LIKELY = "likely, 2 in 3";

  /**
   * How near a figure is, to be read after it.
   *
   * @param amount one standard deviation with its unit
   * @return for instance " (likely, 2 in 3, within 0.27 deg)", a space before it
   */
  public static String likelyWithin(String amount) {
    return " (%s, within %s)".formatted(LIKELY, amount);
  }

  /**
   * The formatter of a unit.
   *
   * @param unit the unit lengths are shown in
   * @return its formatter
   */
  public static Lengths in(LengthUnit unit) {
    return new Lengths(unit);
  }

  /**
   * Whether lengths show in millimetres.
   *
   * @return false for inches
   */
  public boolean metric() {
    return unit == LengthUnit.MM;
  }

  /**
   * The same figures in the other unit.
   *
   * @return inches for millimetres, millimetres for inches
   */
  public Lengths other() {
    return new Lengths(metric() ? LengthUnit.INCH : LengthUnit.MM);
  }

  /**
   * The least difference that shows.
   *
   * @param fineness how many decimals
   * @return one of the last decimal, mm
   */
  public double stepMm(Fineness fineness) {
    return unit.toMm(Math.pow(10, -fineness.decimals(unit)));
  }

  /**
   * A length as calipers show it, without its unit.
   *
   * @param mm the length in mm; finite, any sign
   * @return for instance "12.50" or "0.492"
   */
  public String figure(double mm) {
    return figure(mm, Fineness.CALIPER);
  }

  /**
   * A length without its unit.
   *
   * @param mm the length in mm; finite, any sign
   * @param fineness how many decimals
   * @return for instance "12.5"
   */
  public String figure(double mm, Fineness fineness) {
    return Numbers.fixed(unit.fromMm(mm), fineness.decimals(unit));
  }

  /**
   * A length as calipers show it, with its unit.
   *
   * @param mm the length in mm; finite, any sign
   * @return for instance "12.50 mm"
   */
  public String with(double mm) {
    return with(mm, Fineness.CALIPER);
  }

  /**
   * A length with its unit.
   *
   * @param mm the length in mm; finite, any sign
   * @param fineness how many decimals
   * @return for instance "12.5 mm"
   */
  public String with(double mm, Fineness fineness) {
    return figure(mm, fineness) + " " + unit.symbol();
  }

  /**
   * A length in both units, this one first.
   *
   * @param mm the length in mm; finite, any sign
   * @return for instance "25.40 mm (1.000 in)"
   */
  public String both(double mm) {
    return with(mm) + " (" + other().with(mm) + ")";
  }

  /**
   * A length with its unit, and in millimetres as well where the unit is another.
   *
   * @param mm the length in mm; finite, any sign
   * @param fineness how many decimals
   * @return for instance "0.492 in (12.5 mm)", or "12.5 mm"
   */
  public String withMm(double mm, Fineness fineness) {
    return metric()
        ? with(mm, fineness)
        : with(mm, fineness) + " (" + other().with(mm, fineness) + ")";
  }

  /**
   * The least and the most of a length, with the unit.
   *
   * @param leastMm the least in mm; finite, any sign
   * @param mostMm the most in mm
   * @param fineness how many decimals
   * @return for instance "12.5 to 14.0 mm"
   */
  public String range(double leastMm, double mostMm, Fineness fineness) {
    return figure(leastMm, fineness) + " to " + with(mostMm, fineness);
  }

  /**
   * A figure with a unit of any kind, as findings carry them.
   *
   * @param value the figure; finite
   * @param symbol "mm" for a length, which is told in this unit; empty for a bare number; else what
   *     is set after the figure
   * @return for instance "12.50 mm", "3" or "1.25 deg"
   */
  public String amount(double value, String symbol) {
    return switch (symbol) {
      case "mm" -> with(value);
      case "" -> Numbers.plain(value, 2);
      default -> Numbers.fixed(value, 2) + " " + symbol;
    };
  }

  /**
   * A nominal figure, zeros at its end dropped, without its unit.
   *
   * @param mm the length in mm; finite, any sign
   * @param fineness the most decimals
   * @return for instance "6.5"
   */
  public String plain(double mm, Fineness fineness) {
    return Numbers.plain(unit.fromMm(mm), fineness.decimals(unit));
  }

  /**
   * A nominal size such as a drill's, zeros at its end dropped, with its unit.
   *
   * @param mm the length in mm; finite, any sign
   * @return for instance "6.5 mm"
   */
  public String size(double mm) {
    return plain(mm, Fineness.CALIPER) + " " + unit.symbol();
  }

  /**
   * An area in the square of the unit, without it.
   *
   * @param mm2 the area in square millimetres; finite
   * @return for instance "645" or "1.000"
   */
  public String area(double mm2) {
    return figure(unit.fromMm(mm2), Fineness.AREA);
  }

  /**
   * An angle to a hundredth of a degree, which is what an alignment bay shows, without its unit.
   *
   * @param angle any angle
   * @return for instance "5.20"
   */
  public static String degrees(Angle angle) {
    return degrees(angle.radians());
  }

  /**
   * An angle to a hundredth of a degree, without its unit.
   *
   * @param radians the angle in radians; finite
   * @return for instance "5.20"
   */
  public static String degrees(double radians) {
    return Numbers.fixed(Math.toDegrees(radians), 2);
  }

  /**
   * A small change of an angle to a thousandth of a degree, without its unit.
   *
   * @param radians the angle in radians; finite
   * @return for instance "-0.012"
   */
  public static String fineDegrees(double radians) {
    return Numbers.fixed(Math.toDegrees(radians), 3);
  }

  /**
   * An angle to a hundredth of a degree, with its unit.
   *
   * @param angle any angle
   * @return for instance "5.20 deg"
   */
  public static String withDegrees(Angle angle) {
    return degrees(angle) + " deg";
  }

  /**
   * A nominal angle to a hundredth of a degree at most, zeros at its end dropped, without its unit.
   *
   * @param angle any angle
   * @return for instance "5.2"
   */
  public static String plainDegrees(Angle angle) {
    return Numbers.plain(angle.degrees(), 2);
  }
}
