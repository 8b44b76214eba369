package dev.towerscribe.record;

/** What can be other than the job and the visit have it, one thing at a time. */
enum CauseParameter {
  /** Wheel centre's height over the body, mm up. */
  RIDE(0.01),
  /** Bearing along the slot, mm. */
  SETTING(0.01),
  /** Tie rod's length over the one that gives the toe asked for, mm. */
  TIE_ROD(0.01),
  /** Plate's rotation, radians. */
  ROTATION(1e-5),
  /** Plate's offset rearward, mm. */
  REARWARD(0.01),
  /** Plate's offset inboard, mm. */
  INBOARD(0.01),
  /** Original top pivot, mm forward of where the job has it. */
  TOP_FORWARD(0.01),
  /** Original top pivot, mm inboard of where the job has it. */
  TOP_INBOARD(0.01),
  /** Camber as found, radians over what the job has. */
  CAMBER_FOUND(1e-5),
  /** Caster as read over caster as it is, less one. */
  CASTER_SCALE(1e-4),
  /** Subframe with arms and rack, mm toward the car's left. */
  SUBFRAME(0.01);

  private final double step;

  CauseParameter(double step) {
    this.step = step;
  }

  /**
   * Half the step that derivatives are taken over: figures bend by so little over it that a
   * derivative is good to some 1e-5 of itself, and change by so much that rounding is as small.
   */
  double step() {
    return step;
  }
}
