package dev.towerscribe.alignment;

import dev.towerscribe.model.Plate;
import java.util.List;
import java.util.stream.Stream;

/** The settings at which an alignment is read, and how findings name them: by their number. */
final class SlotSettings {
  private SlotSettings() {}

  /** The index marks and both ends of the slot, ascending, each once, mm. */
  static List<Double> of(Plate.Slot slot) {
    // Adding zero turns a negative zero into a plain one.
    return Stream.concat(slot.indexMm().stream(), Stream.of(slot.fromMm(), slot.toMm()))
        .map(s -> s + 0.0)
        .distinct()
        .sorted()
        .toList();
  }

  /** The part of an id: "setting-3" for the third of them. */
  static String id(Plate.Slot slot, double settingMm) {
    return "setting-" + number(slot, settingMm);
  }

  /**
   * The words for it: "setting 3 of 4".
   *
   * @param slot the slot
   * @param settingMm one of its settings
   * @return words without a length, which a finding could not give in the job's unit
   */
  static String words(Plate.Slot slot, double settingMm) {
    return "setting " + number(slot, settingMm) + " of " + of(slot).size();
  }

  private static int number(Plate.Slot slot, double settingMm) {
    return of(slot).indexOf(settingMm + 0.0) + 1;
  }
}
