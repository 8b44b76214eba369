package dev.towerscribe.geometry;

import dev.towerscribe.quantity.Angle;
import java.util.Optional;

/**
 * What calipers read on a print's two check bars, which share a corner, and between their far ends.
 *
 * @param barAcrossMm nominal length of the bar along the paper's short side, positive
 * @param barAlongMm nominal length of the bar along its long side, positive
 * @param acrossMm reading of the first, positive
 * @param alongMm reading of the second, positive
 * @param farEndsMm reading between their far ends, positive; empty if it was not taken
 * @param uncertaintyMm standard deviation of one reading, not negative
 */
public record PrintReading(
    double barAcrossMm,
    double barAlongMm,
    double acrossMm,
    double alongMm,
    Optional<Double> farEndsMm,
    double uncertaintyMm) {
  /** Of how many standard deviations a departure may be nothing but the reading's own error. */
  public static final double WITHIN = 2.0;

  /** A reading of 100.1 is off by a tenth, whatever doubles make of it. */
  private static final double ROUNDING_MM = 1e-9;

  /**
   * Printed over nominal, along the short side.
   *
   * @return ratio
   */
  public double across() {
    return acrossMm / barAcrossMm;
  }

  /**
   * Printed over nominal, along the long side.
   *
   * @return ratio
   */
  public double along() {
    return alongMm / barAlongMm;
  }

  /**
   * Standard deviation of {@link #across}.
   *
   * @return ratio
   */
  public double acrossUncertainty() {
    return uncertaintyMm / barAcrossMm;
  }

  /**
   * Standard deviation of {@link #along}.
   *
   * @return ratio
   */
  public double alongUncertainty() {
    return uncertaintyMm / barAlongMm;
  }

  /**
   * Whether three such lengths make a triangle at all.
   *
   * @return true also without a reading between the far ends
   */
  public boolean isPossible() {
    return farEndsMm
        .map(d -> d < acrossMm + alongMm && d > Math.abs(acrossMm - alongMm))
        .orElse(true);
  }

  /**
   * How far the printed long side leans toward +across, by the law of cosines: with bars a, b and
   * their far ends d apart, sin(skew) = (a^2 + b^2 - d^2) / (2 a b).
   *
   * @return the lean, or empty without a reading between the far ends
   */
  public Optional<Angle> skew() {
    return farEndsMm.map(d -> new Angle(Math.asin(sine(d))));
  }

  private double sine(double d) {
    return (acrossMm * acrossMm + alongMm * alongMm - d * d) / (2 * acrossMm * alongMm);
  }

  /**
   * Standard deviation of {@link #skew}, by the derivatives of its sine by the three readings.
   *
   * @return an angle, or empty without a reading between the far ends
   */
  public Optional<Angle> skewUncertainty() {
    return farEndsMm.map(
        d -> {
          double s = sine(d);
          double byAcross = 1 / alongMm - s / acrossMm;
          double byAlong = 1 / acrossMm - s / alongMm;
          double byFarEnds = d / (acrossMm * alongMm);
          double sines = Math.hypot(Math.hypot(byAcross, byAlong), byFarEnds) * uncertaintyMm;
          return new Angle(sines / Math.sqrt(1 - s * s));
        });
  }

  /**
   * Whether the skew may be nothing but reading error.
   *
   * @return true within two standard deviations of none, and without a reading for it
   */
  public boolean isSquare() {
    return skew()
        .map(a -> Math.abs(a.radians()) <= WITHIN * skewUncertainty().orElseThrow().radians())
        .orElse(true);
  }

  /**
   * Whether the print is true as far as the readings can tell.
   *
   * @return true if both bars and the way between their far ends are within two standard deviations
   *     of what they should be
   */
  public boolean isTrue() {
    double most = WITHIN * uncertaintyMm + ROUNDING_MM;
    return Math.abs(acrossMm - barAcrossMm) <= most
        && Math.abs(alongMm - barAlongMm) <= most
        && isSquare();
  }

  /**
   * What the print did to the page that was sent to it. A skew within the readings' error is taken
   * for none: most printers are square.
   *
   * @return the printer's map if the page was drawn for a true printer; else what is left of it
   */
  public PrintScale map() {
    return new PrintScale(across(), along(), isSquare() ? Angle.ZERO : skew().orElse(Angle.ZERO));
  }

  /**
   * How far the reading between the far ends may be off while the print still counts as square.
   *
   * @return mm; empty without that reading
   */
  public Optional<Double> farEndsWithinMm() {
    return farEndsMm.map(
        d -> WITHIN * skewUncertainty().orElseThrow().radians() * acrossMm * alongMm / d);
  }
}
