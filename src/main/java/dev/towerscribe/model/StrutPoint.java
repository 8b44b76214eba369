package dev.towerscribe.model;

import dev.towerscribe.quantity.Worded;

/** The points that the strut table of a job is made of, and the camber bolt's pivot. */
public enum StrutPoint implements Worded {
  /** Original top pivot. */
  TOP(true),
  /** Lower ball joint. */
  BALL_JOINT(true),
  /** Front inner pivot of the lower arm. */
  ARM_FRONT(false),
  /** Rear inner pivot of the lower arm. */
  ARM_REAR(false),
  /** A point of the damper's axis, fixed in the upright. */
  STRUT_LOWER(true),
  /** Inner tie rod end. */
  TIE_INNER(false),
  /** Outer tie rod end. */
  TIE_OUTER(true),
  /** Wheel centre. */
  WHEEL_CENTRE(true),
  /** Where a camber bolt turns the strut; few cars have one. */
  KNUCKLE_PIVOT(true);

  private final boolean outer;

  StrutPoint(boolean outer) {
    this.outer = outer;
  }

  @Override
  public String word() {
    return Worded.super.word().replace(' ', '_');
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
