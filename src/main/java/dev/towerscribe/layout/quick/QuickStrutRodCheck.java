package dev.towerscribe.layout.quick;

import dev.towerscribe.geometry.Hull;
import dev.towerscribe.geometry.RegionDepths;
import dev.towerscribe.geometry.Vec2;
import dev.towerscribe.layout.StrutRod;
import dev.towerscribe.model.Plate;
import dev.towerscribe.model.SideJob;
import java.util.ArrayList;
import java.util.List;

/** Bounds of {@link dev.towerscribe.layout.Margins#aroundSweep}: the strut rod in the opening. */
final class QuickStrutRodCheck {
  private final RegionDepths finished;
  private final boolean simple;
  private final double slotFrom;
  private final double slotTo;
  private final StrutRod rod;
  private final StrutRodModel.Known moving;

  /**
   * Prepares.
   *
   * @param job the side
   * @param finished its finished opening
   * @param simple whether that has one boundary only
   * @param moving what is known of its strut rod over travel and steer
   */
  QuickStrutRodCheck(
      SideJob job, RegionDepths finished, boolean simple, StrutRodModel.Known moving) {
    this.finished = finished;
    this.simple = simple;
    this.moving = moving;
    Plate plate = job.plate();
    slotFrom = plate.bearingXMm() + plate.slot().fromMm();
    slotTo = plate.bearingXMm() + plate.slot().toMm();
    rod = StrutRod.of(job);
  }

  /** Whether the opening holds the strut rod as it was measured. */
  Answer asMeasured(Scratch s) {
    double ax = rod.throughX(s.bearingX(slotFrom));
    double ay = rod.throughY(s.bearingY(slotFrom));
    double bx = rod.throughX(s.bearingX(slotTo));
    double by = rod.throughY(s.bearingY(slotTo));
    double radius = rod.widened(slant(s));
    Answer ends = Answer.of(Math.min(finished.at(ax, ay), finished.at(bx, by)), radius);
    // Inside a disc what lies between two points is no nearer to its edge than the nearer one.
    if (ends == Answer.NO || finished.isDisc()) {
      return ends;
    }
    return ends.and(simple ? between(ax, ay, bx, by, radius) : Answer.UNSURE);
  }

  private double slant(Scratch s) {
    return rod.slant(
        s.bearingX(slotFrom), s.bearingY(slotFrom), s.bearingX(slotTo), s.bearingY(slotTo));
  }

  /** The same over travel and steer. */
  Answer moving(Scratch s) {
    if (!moving.moves()) {
      return Answer.YES;
    }
    if (moving.model().isEmpty() || !simple) {
      return Answer.UNSURE;
    }
    StrutRodModel model = moving.model().get();
    int n = model.rays() + 2;
    s.rods(n);
    double most = model.centres(s, (slotFrom + slotTo) / 2);
    if (Double.isNaN(most)) {
      return Answer.UNSURE;
    }
    s.rodX[n - 2] = rod.throughX(s.bearingX(slotFrom));
    s.rodY[n - 2] = rod.throughY(s.bearingY(slotFrom));
    s.rodX[n - 1] = rod.throughX(s.bearingX(slotTo));
    s.rodY[n - 1] = rod.throughY(s.bearingY(slotTo));
    double radius = rod.widened(Math.max(slant(s), Math.atan(Math.sqrt(most))));
    double least = Double.POSITIVE_INFINITY;
    for (int i = 0; i < n; i++) {
      least = Math.min(least, finished.at(s.rodX[i], s.rodY[i]));
      if (least < radius - model.errorMm()) {
        return Answer.NO;
      }
    }
    if (least < radius + model.errorMm()) {
      return Answer.UNSURE;
    }
    return finished.isDisc() || aroundHull(s, n, radius + model.errorMm())
        ? Answer.YES
        : Answer.UNSURE;
  }

  /** Whether the depth is surely enough all round the ways' hull. */
  private boolean aroundHull(Scratch s, int n, double limit) {
    List<Vec2> points = new ArrayList<>();
    for (int i = 0; i < n; i++) {
      points.add(new Vec2(s.rodX[i], s.rodY[i]));
    }
    List<Vec2> hull = Hull.of(points);
    for (int i = 0; i < hull.size(); i++) {
      Vec2 a = hull.get(i);
      Vec2 b = hull.get((i + 1) % hull.size());
      if (between(a.x(), a.y(), b.x(), b.y(), limit) != Answer.YES) {
        return false;
      }
    }
    return true;
  }

  private Answer between(double ax, double ay, double bx, double by, double limit) {
    return AlongLine.atLeast(
        t -> finished.at(ax + t * (bx - ax), ay + t * (by - ay)),
        Math.hypot(bx - ax, by - ay),
        limit);
  }
}
