package dev.towerscribe.geometry;

import dev.towerscribe.quantity.Angle;

/** A round widening of a hole at one of a flat solid's faces, about the hole's own axis. */
public sealed interface Recess {
  /**
   * Which face it opens in.
   *
   * @return true for the upper face (z = thickness), false for the lower (z = 0)
   */
  boolean fromTop();

  /**
   * Diameter where it opens in the face.
   *
   * @return mm
   */
  double diameterMm();

  /**
   * How far below its face the plain hole begins.
   *
   * @param holeMm diameter of the plain hole
   * @return mm
   */
  double depthMm(double holeMm);

  /**
   * Metal it takes beyond the plain hole.
   *
   * @param holeMm diameter of the plain hole
   * @return mm3
   */
  double volumeMm3(double holeMm);

  /**
   * A flat-bottomed widening.
   *
   * @param diameterMm its diameter, more than the hole's
   * @param depthMm its depth, positive
   * @param fromTop which face it opens in
   */
  record Counterbore(double diameterMm, double depthMm, boolean fromTop) implements Recess {
    /** Checks the figures. */
    public Counterbore {
      if (!(diameterMm > 0 && depthMm > 0)
          || Double.isInfinite(diameterMm)
          || Double.isInfinite(depthMm)) {
        throw new IllegalArgumentException("not a counterbore: " + diameterMm + ", " + depthMm);
      }
    }

    @Override
    public double depthMm(double holeMm) {
      return depthMm;
    }

    @Override
    public double volumeMm3(double holeMm) {
      return Math.PI / 4 * (diameterMm * diameterMm - holeMm * holeMm) * depthMm;
    }
  }

  /**
   * A conical widening.
   *
   * @param diameterMm its diameter in the face, more than the hole's
   * @param included angle between opposite sides of the cone, above 0 and below 180 degrees
   * @param fromTop which face it opens in
   */
  record Countersink(double diameterMm, Angle included, boolean fromTop) implements Recess {
    /** Checks the figures. */
    public Countersink {
      double half = included.radians() / 2;
      if (!(diameterMm > 0 && half > 0 && half < Math.PI / 2) || Double.isInfinite(diameterMm)) {
        throw new IllegalArgumentException("not a countersink: " + diameterMm + ", " + included);
      }
    }

    @Override
    public double depthMm(double holeMm) {
      return (diameterMm - holeMm) / 2 / Math.tan(included.radians() / 2);
    }

    @Override
    public double volumeMm3(double holeMm) {
      double big = diameterMm / 2;
      double small = holeMm / 2;
      double cone = Math.PI / 3 * (big * big + big * small + small * small);
      return (cone - Math.PI * small * small) * depthMm(holeMm);
    }
  }
}
