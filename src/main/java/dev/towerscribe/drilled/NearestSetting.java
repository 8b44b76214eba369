package dev.towerscribe.drilled;

import dev.towerscribe.alignment.AxisEstimate;
import dev.towerscribe.alignment.Bay;
import dev.towerscribe.alignment.NotReached;
import dev.towerscribe.alignment.Reading;
import dev.towerscribe.geometry.Vec2;
import dev.towerscribe.model.Plate;
import dev.towerscribe.model.SideJob;
import dev.towerscribe.quantity.Angle;
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
  /** Places looked at along the slot, and steps that narrow the best one down afterward. */
  private static final int PLACES = 64;

  private static final int NARROWING = 60;
  private static final double GOLDEN = (Math.sqrt(5) - 1) / 2;

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
    double step = (slot.toMm() - slot.fromMm()) / PLACES;
    Setting best = at(drilled, drilled.mount().settingMm(), wanted).orElse(null);
    for (int i = 0; i <= PLACES; i++) {
      best = nearer(best, at(drilled, slot.fromMm() + i * step, wanted));
    }
    if (best == null) {
      return Optional.empty();
    }
    double low = Math.max(slot.fromMm(), best.settingMm() - step);
    double high = Math.min(slot.toMm(), best.settingMm() + step);
    for (int i = 0; i < NARROWING; i++) {
      double first = high - GOLDEN * (high - low);
      double second = low + GOLDEN * (high - low);
      Optional<Setting> one = at(drilled, first, wanted);
      Optional<Setting> two = at(drilled, second, wanted);
      if (away(one) < away(two)) {
        high = second;
      } else {
        low = first;
      }
      best = nearer(nearer(best, one), two);
    }
    Setting mark = null;
    for (double s : slot.indexMm()) {
      mark = nearer(mark, at(drilled, s, wanted));
    }
    return Optional.of(new NearestSetting(best, Optional.ofNullable(mark)));
  }

  private static double away(Optional<Setting> s) {
    return s.map(x -> x.away().radians()).orElse(Double.POSITIVE_INFINITY);
  }

  private static Setting nearer(Setting best, Optional<Setting> other) {
    boolean better =
        other.isPresent() && (best == null || other.get().away().radians() < best.away().radians());
    return better ? other.get() : best;
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
    try {
      return Optional.of(Reading.of(Bay.of(job).at(bearing)));
    } catch (NotReached e) {
      return Optional.empty();
    }
  }
}
