package dev.towerscribe.sheet.worksheet;

/**
 * What a reading of each kind may be off, one standard deviation: what the survey file starts from.
 * From memory of common practice, no source.
 */
public enum WorksheetUncertainty {
  /** A tape held between two points. */
  TAPE("tape", "tape, point to point", 1.5),
  /** Each figure of a plumb-bob plot. */
  FLOOR("floor", "plumb-bob plot, each figure", 1.5),
  /** A height above the floor. */
  HEIGHT("height", "height above the floor", 1.5),
  /** Calipers. */
  CALIPER("caliper", "calipers", 0.1),
  /** A place on the tower by rule and square; a gap under a straightedge. */
  RULE("rule", "rule and square on the tower", 0.5),
  /** An angle finder. */
  ANGLE("angle", "angle finder, degrees", 0.2);

  private final String key;
  private final String words;
  private final double usual;

  WorksheetUncertainty(String key, String words, double usual) {
    this.key = key;
    this.words = words;
    this.usual = usual;
  }

  /**
   * Its name in the survey file's table of uncertainties.
   *
   * @return for instance "tape"
   */
  public String key() {
    return key;
  }

  /**
   * What it is the uncertainty of.
   *
   * @return a few words
   */
  public String words() {
    return words;
  }

  /**
   * The usual figure.
   *
   * @return mm; degrees for the angle finder
   */
  public double usual() {
    return usual;
  }

  /**
   * Whether it is an angle.
   *
   * @return true for degrees, false for mm
   */
  public boolean isAngle() {
    return this == ANGLE;
  }
}
