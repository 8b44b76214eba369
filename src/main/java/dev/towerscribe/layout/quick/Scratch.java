package dev.towerscribe.layout.quick;

/** A thread's own room to calculate in: a placement, and what was found about it. */
public final class Scratch {
  /** The placement: rotation in radians, its sine and cosine, plate centre. */
  double rotation;

  double sin;

  double cos;
  double rearward;
  double inboard;

  /** Hole centres, plan. */
  double[] x = new double[0];

  double[] y = new double[0];

  /** Where ways of the strut rod meet the tower plane. */
  double[] rodX = new double[0];

  double[] rodY = new double[0];

  /** Least slack of the holes, mm. */
  double slack;

  private Barrier barrier = Barrier.STRUT_ROD;
  private int unsure;

  /** Makes one. */
  public Scratch() {}

  /**
   * What stood in the way when the last answer was no.
   *
   * @return the first thing found
   */
  public Barrier barrier() {
    return barrier;
  }

  /**
   * Takes a placement, of which nothing is known yet.
   *
   * @param rotationRad plate's rotation, radians
   * @param rearwardMm plate centre
   * @param inboardMm plate centre
   * @return this
   */
  public Scratch at(double rotationRad, double rearwardMm, double inboardMm) {
    rotation = rotationRad;
    sin = Math.sin(rotationRad);
    cos = Math.cos(rotationRad);
    rearward = rearwardMm;
    inboard = inboardMm;
    unsure = 0;
    return this;
  }

  /** Forgets what was said of another tower. */
  void next() {
    unsure = 0;
  }

  /** Takes note of a check's answer; true if it is no. */
  boolean stops(Barrier what, Answer answer) {
    if (answer == Answer.NO) {
      barrier = what;
    } else if (answer == Answer.UNSURE) {
      unsure |= 1 << what.ordinal();
    }
    return answer == Answer.NO;
  }

  /** Whether a check of that kind must be asked. */
  boolean unsure(Barrier what) {
    return (unsure & 1 << what.ordinal()) != 0;
  }

  /** Yes, unless a check must be asked. */
  Answer answer() {
    return unsure == 0 ? Answer.YES : Answer.UNSURE;
  }

  /** Fore place of the bearing that far along the slot from the plate's centre. */
  double bearingX(double alongMm) {
    return -rearward - alongMm * sin;
  }

  /** In place of the same. */
  double bearingY(double alongMm) {
    return inboard + alongMm * cos;
  }

  void holes(int n) {
    if (x.length != n) {
      x = new double[n];
      y = new double[n];
    }
  }

  void rods(int n) {
    if (rodX.length != n) {
      rodX = new double[n];
      rodY = new double[n];
    }
  }
}
