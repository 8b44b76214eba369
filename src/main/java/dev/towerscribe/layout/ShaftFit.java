package dev.towerscribe.layout;

import dev.towerscribe.geometry.Depths;
import dev.towerscribe.model.SideJob;

/** The part of {@link TowerFit} about the shaft and the finished opening. */
final class ShaftFit {
  private static final double UNSURE_MM = FitScratch.UNSURE_MM;

  private final Depths finished;
  private final boolean simple;
  private final double slotFrom;
  private final double slotTo;
  private final Sweeps.Shaft shaft;
  private final ShaftModel.Known moving;

  /**
   * Prepares.
   *
   * @param job the side
   * @param finished its finished opening
   * @param simple whether that has one boundary only
   * @param moving what is known of its shaft over travel and steer
   */
  ShaftFit(SideJob job, Depths finished, boolean simple, ShaftModel.Known moving) {
    this.finished = finished;
    this.simple = simple;
    this.moving = moving;
    slotFrom = job.plate().bearingXMm() + job.plate().slot().fromMm();
    slotTo = job.plate().bearingXMm() + job.plate().slot().toMm();
    shaft = Sweeps.shaft(job);
  }

  /** Whether the opening holds the shaft as it was measured; false if it surely does not. */
  boolean asMeasured(double sin, double cos, double rearward, double inboard, FitScratch s) {
    double fromX = -rearward - slotFrom * sin;
    double fromY = inboard + slotFrom * cos;
    double toX = -rearward - slotTo * sin;
    double toY = inboard + slotTo * cos;
    double radius = shaft.radius(fromX, fromY, toX, toY);
    double ax = shaft.throughX(fromX);
    double ay = shaft.throughY(fromY);
    double bx = shaft.throughX(toX);
    double by = shaft.throughY(toY);
    double atA = finished.at(ax, ay) - radius;
    double atB = finished.at(bx, by) - radius;
    if (!s.notes(Math.min(atA, atB), 0.0)) {
      return false;
    }
    if (finished.isDisc()) {
      // Inside a disc what lies between two points is no nearer to its edge than the nearer one.
      return true;
    }
    return simple ? s.notes(alongLine(ax, ay, bx, by, radius), 0.0) : s.doubt();
  }

  /** The same over travel and steer. */
  boolean moving(double sin, double cos, double rearward, double inboard, FitScratch s) {
    if (!moving.moves()) {
      return true;
    }
    if (moving.model().isEmpty() || !simple) {
      return unsureShaft(s);
    }
    ShaftModel model = moving.model().get();
    int n = model.rays() + 2;
    s.rays(n);
    double middle = (slotFrom + slotTo) / 2;
    double most = model.centres(sin, cos, rearward, inboard, middle, s.rayX, s.rayY, s.terms);
    if (Double.isNaN(most)) {
      return unsureShaft(s);
    }
    double fromX = -rearward - slotFrom * sin;
    double fromY = inboard + slotFrom * cos;
    double toX = -rearward - slotTo * sin;
    double toY = inboard + slotTo * cos;
    s.rayX[n - 2] = shaft.throughX(fromX);
    s.rayY[n - 2] = shaft.throughY(fromY);
    s.rayX[n - 1] = shaft.throughX(toX);
    s.rayY[n - 1] = shaft.throughY(toY);
    double slant = Math.max(shaft.slant(fromX, fromY, toX, toY), Math.atan(Math.sqrt(most)));
    double radius = shaft.widened(slant);
    double least = Double.POSITIVE_INFINITY;
    for (int i = 0; i < n; i++) {
      least = Math.min(least, finished.at(s.rayX[i], s.rayY[i]));
      if (least < radius - model.errorMm()) {
        return false;
      }
    }
    if (least < radius + model.errorMm()) {
      return unsureShaft(s);
    }
    if (finished.isDisc()) {
      return true;
    }
    int corners = s.hull(n);
    for (int i = 0; i < corners; i++) {
      int a = s.hull[i];
      int b = s.hull[(i + 1) % corners];
      double along =
          alongLine(s.rayX[a], s.rayY[a], s.rayX[b], s.rayY[b], radius + model.errorMm());
      if (along <= 0) {
        return unsureShaft(s);
      }
    }
    return true;
  }

  private static boolean unsureShaft(FitScratch s) {
    s.unsureShaft = true;
    return true;
  }

  /**
   * Whether the depth along a line stays above a limit: positive if so, negative if not, 0 if too
   * close to say. Depth changes no faster than way.
   */
  private double alongLine(double ax, double ay, double bx, double by, double limit) {
    double half = Math.hypot(bx - ax, by - ay) / 2;
    double mx = (ax + bx) / 2;
    double my = (ay + by) / 2;
    double over = finished.at(mx, my) - limit;
    if (over < -UNSURE_MM) {
      return -1.0;
    }
    if (over > half + UNSURE_MM) {
      return 1.0;
    }
    if (half < FitScratch.LEAST_PIECE_MM) {
      return 0.0;
    }
    double first = alongLine(ax, ay, mx, my, limit);
    return first < 0 ? first : Math.min(first, alongLine(mx, my, bx, by, limit));
  }
}
