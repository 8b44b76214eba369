package dev.towerscribe.drilled;

import dev.towerscribe.alignment.AxisEstimate;
import dev.towerscribe.alignment.Bay;
import dev.towerscribe.alignment.NotReached;
import dev.towerscribe.alignment.Reading;
import dev.towerscribe.geometry.Vec2;
import dev.towerscribe.model.Plate;
import dev.towerscribe.model.SideJob;
import dev.towerscribe.quantity.Angle;
import java.util.Comparator;
import java.util.Optional;

/**
 * Where along its slot a plate that sits elsewhere than planned comes nearest to the caster and
 * camber that were planned. A degree of either counts alike: our own choice, no source. One
 * adjuster cannot in general meet both.
 *
 * @param anywhere of all settings from one end of the slot to the other
 * @param atMark of the slot's marks; empty without marks that are reached
 */
public record NearestSetting(Setting anywhere, Optional<Setting> atMark) {
  /**
   * A setting and what comes of it.
   *
   * @param settingMm where along the slot
   * @param caster caster there
   * @param camber camber there
   * @param away root of the sum of squares of both differences from what was planned
   */
  public record Setting(double settingMm, Angle caster, Angle camber, Angle away) {}

  /** The nearest setting of a side, drilled, to what was wanted; empty where none is reached. */
  static Optional<NearestSetting> of(SideJob drilled, Reading wanted) {
    Plate.Slot slot = drilled.plate().slot();
    Optional<Setting> anywhere =
        Narrowed.best(
            slot.fromMm(),
            slot.toMm(),
            drilled.mount().settingMm(),
            mm -> at(drilled, mm, wanted),
            s -> s.map(x -> x.away().radians()).orElse(Double.POSITIVE_INFINITY));
    Optional<Setting> mark =
        slot.indexMm().stream()
            .flatMap(mm -> at(drilled, mm, wanted).stream())
            .min(Comparator.comparing(Setting::away));
    return anywhere.map(best -> new NearestSetting(best, mark));
  }

  private static Optional<Setting> at(SideJob job, double settingMm, Reading wanted) {
    return reading(job, job.bearing(settingMm))
        .map(
            r ->
                new Setting(
                    settingMm,
                    r.caster(),
                    r.camber(),
                    new Angle(
                        Math.hypot(
                            r.caster().radians() - wanted.caster().radians(),
                            r.camber().radians() - wanted.camber().radians()))));
  }

  private static Optional<Reading> reading(SideJob job, Vec2 bearing) {
    if (job.strut().isEmpty()) {
      return job.axis().map(axis -> Reading.of(AxisEstimate.at(axis, job, bearing)));
    }
    return NotReached.ifReached(() -> Reading.of(Bay.of(job).at(bearing)));
  }
}
