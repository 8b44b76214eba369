package dev.towerscribe.model;

import dev.towerscribe.quantity.Worded;

/** The points that the strut table of a job is made of, and the camber bolt's pivot. */
public enum StrutPoint implements Worded {
  /** Original top pivot. */
  TOP("top", true),
  /** Lower ball joint. */
  BALL_JOINT("ball_joint", true),
  /** Front inner pivot of the lower arm. */
  ARM_FRONT("arm_front", false),
  /** Rear inner pivot of the lower arm. */
  ARM_REAR("arm_rear", false),
  /** A point of the damper's axis, fixed in the upright. */
  STRUT_LOWER("strut_lower", true),
  /** Inner tie rod end. */
  TIE_INNER("tie_inner", false),
  /** Outer tie rod end. */
  TIE_OUTER("tie_outer", true),
  /** Wheel centre. */
  WHEEL_CENTRE("wheel_centre", true),
  /** Where a camber bolt turns the strut; few cars have one. */
  KNUCKLE_PIVOT("knuckle_pivot", true);

  private final String word;
  private final boolean outer;

  StrutPoint(String word, boolean outer) {
    this.word = word;
    this.outer = outer;
  }

  @Override
  public String word() {
    return word;
  }

  /**
   * Whether it lies out by the wheel, never at or across the car's middle plane.
   *
   * @return true if so
   */
  public boolean isOuter() {
    return outer;
  }

  /**
   * Whether a job's strut table must have it.
   *
   * @return false for the camber bolt's pivot alone
   */
  public boolean isNeeded() {
    return this != KNUCKLE_PIVOT;
  }
}
