package dev.towerscribe.job;

/** What is believable of a survey's readings. Common practice, no source. */
final class SurveyLimits {
  static final AllowedRange TAPE = AllowedRange.mm(5, 8000);
  static final AllowedRange OUT = AllowedRange.mm(-500, 2000);
  static final AllowedRange HEIGHT = AllowedRange.mm(-500, 3000);
  static final AllowedRange STRUT_ROD = AllowedRange.mm(3, 60);
  static final AllowedRange SPAN = AllowedRange.mm(1, 1200);

  /** Less than the first is no tape's, more than the second is no measurement. */
  static final AllowedRange SD = AllowedRange.mm(0.005, 50);

  static final AllowedRange ANGLE_SD = AllowedRange.degrees(0.005, 5);

  /** Readings of one thing: nobody takes more. */
  static final int MOST_READINGS = 20;

  private SurveyLimits() {}
}
