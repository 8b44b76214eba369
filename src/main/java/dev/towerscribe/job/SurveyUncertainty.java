package dev.towerscribe.job;

import dev.towerscribe.quantity.Angle;

/**
 * One standard deviation of one reading of each kind; those that are not said are common practice,
 * no source.
 *
 * @param tapeMm of a tape
 * @param floorMm of each coordinate of a floor plot
 * @param heightMm of a height
 * @param caliperMm of calipers
 * @param ruleMm of a place by rule and square, and of a gap
 * @param angleRad of an angle finder
 */
record SurveyUncertainty(
    double tapeMm,
    double floorMm,
    double heightMm,
    double caliperMm,
    double ruleMm,
    double angleRad) {
  static final SurveyUncertainty USUAL =
      new SurveyUncertainty(1.5, 1.5, 1.5, 0.1, 0.5, Math.toRadians(0.2));

  /** Reads the table; what is at fault in it is taken as usual, so that the rest can be read. */
  static SurveyUncertainty read(TableReader t) {
    SurveyUncertainty read =
        new SurveyUncertainty(
            length(t, "tape", USUAL.tapeMm),
            length(t, "floor", USUAL.floorMm),
            length(t, "height", USUAL.heightMm),
            length(t, "caliper", USUAL.caliperMm),
            length(t, "rule", USUAL.ruleMm),
            t.optionalAngle("angle", Limits.SURVEY_ANGLE_SD)
                .map(Angle::radians)
                .orElse(USUAL.angleRad));
    t.close();
    return read;
  }

  private static double length(TableReader t, String key, double otherwiseMm) {
    return t.length(key, Limits.SURVEY_SD, otherwiseMm).orElse(otherwiseMm);
  }
}
