package dev.towerscribe.model;

import java.util.List;
import java.util.Optional;

/**
 * A bolt size with the standard figures that belong to it.
 *
 * @param name as written: "M8", "5/16"
 * @param nominalMm nominal diameter D
 * @param fineMm clearance hole, fine series
 * @param mediumMm clearance hole, medium series
 * @param coarseMm clearance hole, coarse series
 * @param washerMm outside diameter of the plain washer
 * @param holeSource where the hole figures come from
 * @param washerSource where the washer figure comes from
 */
public record Thread(
    String name,
    double nominalMm,
    double fineMm,
    double mediumMm,
    double coarseMm,
    double washerMm,
    String holeSource,
    String washerSource) {
  private static final String ISO_273 = "ISO 273:1979";
  private static final String ASME = "ASME B18.2.8";
  private static final String ISO_7089 = "ISO 7089:2000";
  private static final String MEMORY = "from memory, measure yours";

  /** Every size the program knows, metric first. */
  public static final List<Thread> KNOWN =
      List.of(
          metric("M5", 5, 5.3, 5.5, 5.8, 10, ISO_7089),
          metric("M6", 6, 6.4, 6.6, 7.0, 12, ISO_7089),
          metric("M8", 8, 8.4, 9.0, 10.0, 16, ISO_7089),
          metric("M10", 10, 10.5, 11.0, 12.0, 20, ISO_7089),
          metric("M12", 12, 13.0, 13.5, 14.5, 24, ISO_7089),
          metric("M14", 14, 15.0, 15.5, 16.5, 28, MEMORY),
          metric("M16", 16, 17.0, 17.5, 18.5, 30, ISO_7089),
          inch("1/4", 0.25, 0.266, 0.281, 0.295, 0.734),
          inch("5/16", 0.3125, 0.328, 0.344, 0.359, 0.875),
          inch("3/8", 0.375, 0.391, 0.406, 0.422, 1.0),
          inch("7/16", 0.4375, 0.453, 0.469, 0.484, 1.25),
          inch("1/2", 0.5, 0.531, 0.562, 0.609, 1.375));

  private static Thread metric(
      String name, double d, double fine, double medium, double coarse, double washer, String w) {
    return new Thread(name, d, fine, medium, coarse, washer, ISO_273, w);
  }

  /** Normal holes are published figures; close and loose ones and the washers are from memory. */
  private static Thread inch(
      String name, double d, double close, double normal, double loose, double washer) {
    double mm = 25.4;
    return new Thread(name, d * mm, close * mm, normal * mm, loose * mm, washer * mm, ASME, MEMORY);
  }

  /**
   * Looks a size up.
   *
   * @param name as written in a job, exactly as in {@link #KNOWN}
   * @return the size, or empty
   */
  public static Optional<Thread> find(String name) {
    return KNOWN.stream().filter(t -> t.name.equals(name)).findFirst();
  }

  /**
   * Clearance hole diameter.
   *
   * @param fit series
   * @return mm
   */
  public double holeMm(Fit fit) {
    return switch (fit) {
      case FINE -> fineMm;
      case MEDIUM -> mediumMm;
      case COARSE -> coarseMm;
    };
  }

  /**
   * Where the hole's figure comes from, with a warning where it is from memory.
   *
   * @param fit series
   * @return citation
   */
  public String holeSource(Fit fit) {
    return holeSource.equals(ASME) && fit != Fit.MEDIUM
        ? ASME + " (" + MEMORY + ")"
        : holeSource + ", " + fit.word();
  }
}
