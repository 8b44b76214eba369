package dev.towerscribe.sheet.worksheet;

import dev.towerscribe.quantity.LengthUnit;
import dev.towerscribe.quantity.Numbers;
import dev.towerscribe.quantity.Worded;

/**
 * What a reading of each kind may be off, one standard deviation: what the survey file starts from,
 * whose table of uncertainties calls it by its word. From memory of common practice, no source.
 */
public enum WorksheetUncertainty implements Worded {
  /** A tape held between two points. */
  TAPE("tape, point to point", 1.5),
  /** Each figure of a plumb-bob plot. */
  FLOOR("plumb-bob plot, each figure", 1.5),
  /** A height above the floor. */
  HEIGHT("height above the floor", 1.5),
  /** Calipers. */
  CALIPER("calipers", 0.1),
  /** A place on the tower by rule and square; a gap under a straightedge. */
  RULE("rule and square on the tower", 0.5),
  /** An angle finder. */
  ANGLE("angle finder, degrees", 0.2);

  private final String words;
  private final double usual;

  WorksheetUncertainty(String words, double usual) {
    this.words = words;
    this.usual = usual;
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
   * The usual figure; an inch's goes to a thousandth, so that a tape's is not rounded away.
   *
   * @param units the unit of lengths
   * @return a figure in that unit, without it; degrees for the angle finder
   */
  public String usual(LengthUnit units) {
    boolean mm = this == ANGLE || units == LengthUnit.MM;
    return mm ? Numbers.plain(usual, 2) : Numbers.plain(units.fromMm(usual), 3);
  }
}
