package dev.towerscribe.layout;

import java.util.ArrayList;
import java.util.List;

/** Drills for a hole in thin sheet, small to large (common practice, no source). */
final class Drills {
  static final double PILOT_MM = 3.0;

  /** Most that one step may widen a hole: past this a drill grabs in thin sheet. */
  private static final double STEP_MM = 3.0;

  /** Steps come in the sizes of a common drill set. */
  private static final double SET_MM = 0.5;

  private Drills() {}

  static List<Double> upTo(double finalMm) {
    List<Double> drills = new ArrayList<>();
    if (finalMm > PILOT_MM) {
      drills.add(PILOT_MM);
      int steps = (int) Math.ceil((finalMm - PILOT_MM) / STEP_MM - 1e-9);
      for (int i = 1; i < steps; i++) {
        double exact = PILOT_MM + i * (finalMm - PILOT_MM) / steps;
        drills.add(Math.round(exact / SET_MM) * SET_MM);
      }
    }
    drills.add(finalMm);
    return drills;
  }
}
