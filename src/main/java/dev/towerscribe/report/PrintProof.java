package dev.towerscribe.report;

import dev.towerscribe.geometry.PrintReading;
import dev.towerscribe.geometry.PrintScale;
import dev.towerscribe.model.PrinterFigures;
import dev.towerscribe.quantity.Angle;
import dev.towerscribe.quantity.LengthUnit;
import java.util.List;
import java.util.Optional;

/**
 * What came of measuring a print.
 *
 * @param reading what the calipers read
 * @param units the unit of the readings
 * @param old what the measured page was drawn for: the job's figures, or a true printer
 * @param figures what the next print is to be drawn for
 * @param notes what should be looked at, in sentences
 */
public record PrintProof(
    PrintReading reading,
    LengthUnit units,
    PrintScale old,
    PrinterFigures figures,
    List<String> notes) {
  /**
   * Works out the printer. The page was drawn by the inverse of the old map and came out as
   * measured, so the printer does the old map and then what was measured.
   *
   * @param reading what the calipers read
   * @param units their unit
   * @param old what the page was drawn for
   * @param notes what should be looked at
   * @return the proof
   */
  public static PrintProof of(
      PrintReading reading, LengthUnit units, PrintScale old, List<String> notes) {
    PrintScale printer = reading.map().after(old);
    // Where nothing was said of skew before and nothing was read now, nothing is said of it.
    Optional<Angle> skew =
        reading.farEndsMm().isPresent() || !old.isSquare()
            ? Optional.of(printer.skew())
            : Optional.empty();
    return new PrintProof(
        reading,
        units,
        old,
        new PrinterFigures(printer.across(), printer.along(), skew),
        List.copyOf(notes));
  }
}
