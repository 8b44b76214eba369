package dev.towerscribe.sheet.worksheet;

/**
 * A point of a strut corner that a survey takes, in the order of the worksheet and of the survey
 * file.
 */
public enum WorksheetPoint implements WorksheetEnd {
  /** The original top pivot. */
  TOP("top", "top pivot", "middle of its bearing or rubber"),
  /** The lower ball joint. */
  BALL_JOINT("ball_joint", "lower ball joint", "middle of its ball"),
  /** The lower arm's front inner pivot. */
  ARM_FRONT("arm_front", "lower arm, front bush", "middle of the bush, on its bolt"),
  /** The lower arm's rear inner pivot. */
  ARM_REAR("arm_rear", "lower arm, rear bush", "middle of the bush, on its bolt"),
  /** A point of the damper's axis, fixed in the upright. */
  STRUT_LOWER("strut_lower", "strut tube, low", "centre line, above knuckle"),
  /** The tie rod's inner end. */
  TIE_INNER("tie_inner", "tie rod, inner ball", "middle of its ball, in the boot"),
  /** The tie rod's outer end. */
  TIE_OUTER("tie_outer", "tie rod, outer ball", "middle of its ball"),
  /** The wheel's centre. */
  WHEEL_CENTRE("wheel_centre", "wheel centre", "hub, halfway across the tyre"),
  /** The bolt that the strut turns about at the knuckle, where a camber bolt is fitted. */
  KNUCKLE_PIVOT("knuckle_pivot", "knuckle pivot", "only with a camber bolt: the bolt that stays");

  private final String key;
  private final String words;
  private final String where;

  WorksheetPoint(String key, String words, String where) {
    this.key = key;
    this.words = words;
    this.where = where;
  }

  @Override
  public String key() {
    return key;
  }

  @Override
  public String sign() {
    return Integer.toString(ordinal() + 1);
  }

  @Override
  public String words() {
    return words;
  }

  /**
   * The very place on the part.
   *
   * @return a few words
   */
  public String where() {
    return where;
  }

  /**
   * Whether a car may do without it.
   *
   * @return true for the knuckle's pivot
   */
  public boolean isOptional() {
    return this == KNUCKLE_PIVOT;
  }
}
