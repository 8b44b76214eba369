package dev.towerscribe.sheet.worksheet;

/** What a tape is held to: a point of the strut corner or a mark on floor or body. */
public sealed interface WorksheetEnd permits WorksheetPoint, WorksheetMark {
  /**
   * Its name in the survey file.
   *
   * @return for instance "ball_joint" or "A"
   */
  String key();

  /**
   * Its short name on the worksheet's figures.
   *
   * @return a number for a point, a letter for a mark
   */
  String sign();

  /**
   * What the trade calls it.
   *
   * @return for instance "lower ball joint"
   */
  String words();
}
