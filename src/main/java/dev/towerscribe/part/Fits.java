package dev.towerscribe.part;

import dev.towerscribe.model.Fit;
import dev.towerscribe.model.GeneralTolerance;
import dev.towerscribe.model.HoleFit;
import dev.towerscribe.model.Thread;
import dev.towerscribe.quantity.Numbers;

/**
 * Tolerances of sizes from the standards' tables. All holes: least size nominal (lower deviation
 * 0).
 */
public final class Fits {
  private static final double MM_PER_UM = 1e-3;
  private static final String ISO_286 = "ISO 286-2";
  private static final String ISO_2768 = "ISO 2768-1";
  private static final String MEMORY = ", from memory";

  /** Size ranges of ISO 286-2: over the one before, up to and including this, mm. */
  private static final double[] SIZES = {3, 6, 10, 18, 30, 50, 80, 120, 180, 250};

  private static final int[] H7 = {10, 12, 15, 18, 21, 25, 30, 35, 40, 46};
  private static final int[] H12 = {100, 120, 150, 180, 210, 250, 300, 350, 400, 460};
  private static final int[] H13 = {140, 180, 220, 270, 330, 390, 460, 540, 630, 720};
  private static final int[] H14 = {250, 300, 360, 430, 520, 620, 740, 870, 1000, 1150};

  /** H7 and H13 were seen in print from here ... */
  private static final double SEEN_OVER_MM = 6;

  /** ... to here; the rest of their rows, H12 and H14 are from memory. */
  private static final double SEEN_TO_MM = 120;

  /** Size ranges of ISO 2768-1: from 0.5, over the one before, up to and including this, mm. */
  private static final double[] GENERAL = {3, 6, 30, 120, 400, 1000};

  private static final double GENERAL_FROM_MM = 0.5;
  private static final double[] FINE = {0.05, 0.05, 0.1, 0.15, 0.2, 0.3};
  private static final double[] MEDIUM = {0.1, 0.1, 0.2, 0.3, 0.5, 0.8};
  private static final double[] COARSE = {0.2, 0.3, 0.5, 0.8, 1.2, 2.0};

  /** Class m was seen in print up to here; the rest, f and c are from memory. */
  private static final double MEDIUM_SEEN_TO_MM = 400;

  private Fits() {}

  /**
   * A bored hole.
   *
   * @param fit its tolerance
   * @param mm its diameter, above 0 and at most 250
   * @return the deviations
   * @throws IllegalArgumentException for a size out of the table
   */
  public static SizeTolerance hole(HoleFit fit, double mm) {
    return switch (fit) {
      case H7 -> tabled("H7", H7, mm, seen(mm));
      case H13 -> tabled("H13", H13, mm, seen(mm));
    };
  }

  /**
   * A bolt's clearance hole: H12, H13, H14 go with the fine, medium and coarse series of ISO 273;
   * for inch threads the same is assumed of ASME B18.2.8, from memory.
   *
   * @param thread the bolt's size
   * @param fit its series
   * @param mm the hole's diameter, above 0 and at most 250
   * @return the deviations
   * @throws IllegalArgumentException for a size out of the table
   */
  public static SizeTolerance clearance(Thread thread, Fit fit, double mm) {
    boolean metric = thread.name().startsWith("M");
    return switch (fit) {
      case FINE -> tabled("H12", H12, mm, false);
      case MEDIUM -> tabled("H13", H13, mm, metric && seen(mm));
      case COARSE -> tabled("H14", H14, mm, false);
    };
  }

  /**
   * A size without a tolerance of its own.
   *
   * @param general the drawing's class
   * @param mm the size, 0.5 to 1000
   * @return equal deviations either way
   * @throws IllegalArgumentException for a size out of the table
   */
  public static SizeTolerance general(GeneralTolerance general, double mm) {
    if (!(mm >= GENERAL_FROM_MM)) {
      throw new IllegalArgumentException(ISO_2768 + " begins at 0.5 mm, not " + mm);
    }
    int row = row(GENERAL, mm);
    double limit =
        switch (general) {
          case FINE -> FINE[row];
          case MEDIUM -> MEDIUM[row];
          case COARSE -> COARSE[row];
        };
    boolean seen = general == GeneralTolerance.MEDIUM && mm <= MEDIUM_SEEN_TO_MM;
    return new SizeTolerance(
        "+/-" + Numbers.plain(limit, 2),
        -limit,
        limit,
        ISO_2768 + "-" + general.word() + (seen ? "" : MEMORY));
  }

  private static boolean seen(double mm) {
    return mm > SEEN_OVER_MM && mm <= SEEN_TO_MM;
  }

  private static SizeTolerance tabled(String text, int[] um, double mm, boolean seen) {
    if (!(mm > 0)) {
      throw new IllegalArgumentException("not a hole: " + mm);
    }
    double upper = um[row(SIZES, mm)] * MM_PER_UM;
    return new SizeTolerance(text, 0.0, upper, ISO_286 + (seen ? "" : MEMORY));
  }

  private static int row(double[] upTo, double mm) {
    for (int i = 0; i < upTo.length; i++) {
      if (mm <= upTo[i]) {
        return i;
      }
    }
    throw new IllegalArgumentException("the table ends before " + mm + " mm");
  }
}
