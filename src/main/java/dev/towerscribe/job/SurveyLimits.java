package dev.towerscribe.job;

/** What is believable of a survey's readings. Common practice, no source. */
final class SurveyLimits {
  static final Range TAPE = Range.mm(5, 8000);
  static final Range OUT = Range.mm(-500, 2000);
  static final Range HEIGHT = Range.mm(-500, 3000);
  static final Range STRUT_ROD = Range.mm(3, 60);
  static final Range SPAN = Range.mm(1, 1200);

  /** Less than the first is no tape's, more than the second is no measurement. */
  static final Range SD = Range.mm(0.005, 50);

  static final Range ANGLE_SD = Range.degrees(0.005, 5);

  /** Readings of one thing: nobody takes more. */
  static final int MOST_READINGS = 20;

  private SurveyLimits() {}
}
