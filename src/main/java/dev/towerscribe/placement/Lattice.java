package dev.towerscribe.placement;

import dev.towerscribe.model.Job;
import dev.towerscribe.model.Mount;
import dev.towerscribe.model.Plate;
import dev.towerscribe.quantity.Angle;
import dev.towerscribe.quantity.LengthUnit;
import java.util.ArrayList;
import java.util.List;

/**
 * The placements that a search looks at: round numbers, since people mark and measure to tenths. A
 * place is four whole numbers: rotation in tenths of a degree, rearward and inboard in tenths of a
 * millimetre (five thousandths of an inch in an inch job), and which setting.
 *
 * @param unit the job's unit
 * @param anglesPerDegree places to a degree
 * @param lengthsPerUnit places to a unit of length
 * @param settings settings looked at, mm, ascending: the marked ones, or else the slot's ends
 */
public record Lattice(
    LengthUnit unit, int anglesPerDegree, int lengthsPerUnit, List<Double> settings) {
  /** Copies the list. */
  public Lattice {
    settings = List.copyOf(settings);
  }

  /**
   * The lattice of a job whose sides share one plate.
   *
   * @param job the job
   * @return tenths, or five thousandths of an inch
   */
  public static Lattice of(Job job) {
    Plate.Slot slot = job.sides().values().iterator().next().plate().slot();
    List<Double> settings = new ArrayList<>(slot.indexMm());
    if (settings.isEmpty()) {
      settings.add(slot.fromMm());
      if (slot.toMm() > slot.fromMm()) {
        settings.add(slot.toMm());
      }
    }
    return new Lattice(job.units(), 10, job.units() == LengthUnit.MM ? 10 : 200, settings);
  }

  /** Degrees of a rotation. */
  double degrees(int rotation) {
    return (double) rotation / anglesPerDegree;
  }

  /** Radians, from the degrees just as a job file's are. */
  double radians(int rotation) {
    return Angle.ofDegrees(degrees(rotation)).radians();
  }

  /** Millimetres of a length, from the job's unit just as a job file's are. */
  double mm(int length) {
    return unit.toMm((double) length / lengthsPerUnit);
  }

  /** Places nearest to a length. */
  int places(double mm) {
    return (int) Math.round(unit.fromMm(mm) * lengthsPerUnit);
  }

  /** The placement of a place. */
  Mount mount(Place p) {
    return new Mount(
        Angle.ofDegrees(degrees(p.rotation())),
        mm(p.rearward()),
        mm(p.inboard()),
        settings.get(p.setting()));
  }

  /**
   * A place of the lattice.
   *
   * @param rotation in steps
   * @param rearward in steps
   * @param inboard in steps
   * @param setting which of the settings
   */
  record Place(int rotation, int rearward, int inboard, int setting) {}
}
