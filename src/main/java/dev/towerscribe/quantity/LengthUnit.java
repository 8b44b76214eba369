package dev.towerscribe.quantity;

/** The length unit a job file is written in. Inside the program every length is millimetres. */
public enum LengthUnit {
  /** Millimetre. */
  MM("mm", 1.0),
  /** Inch: 25.4 mm exactly (ISO 80000-3). */
  INCH("in", 25.4);

  private final String symbol;
  private final double mmPerUnit;

  LengthUnit(String symbol, double mmPerUnit) {
    this.symbol = symbol;
    this.mmPerUnit = mmPerUnit;
  }

  /**
   * The word used in job files and on sheets.
   *
   * @return "mm" or "in"
   */
  public String symbol() {
    return symbol;
  }

  /**
   * Converts a length in this unit.
   *
   * @param value length in this unit
   * @return the length in mm
   */
  public double toMm(double value) {
    return value * mmPerUnit;
  }

  /**
   * Converts a length to this unit.
   *
   * @param mm length in mm
   * @return the length in this unit
   */
  public double fromMm(double mm) {
    return mm / mmPerUnit;
  }
}
