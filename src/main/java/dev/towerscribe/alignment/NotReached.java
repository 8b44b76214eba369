package dev.towerscribe.alignment;

/**
 * A place that the linkage cannot take. Carries no stack trace: searches meet it often, and the
 * reason is all there is to know.
 */
public final class NotReached extends Exception {
  private static final long serialVersionUID = 1L;

  /** What stands in the way. */
  public enum Reason {
    /** The top pivot is nearer to the ball joint than the ball joint is to the damper's axis. */
    TOP_TOO_CLOSE("the top pivot is too close to the ball joint"),
    /** The tie rod is too short or too long to close the linkage. */
    TIE_ROD("the tie rod does not reach"),
    /** The wheel's toe cannot be set by turning it about the steering axis. */
    TOE("no tie rod length gives that toe"),
    /** The arm's circle does not go to that height. */
    ARM("the arm does not reach that wheel height");

    private final String words;

    Reason(String words) {
      this.words = words;
    }

    /**
     * The reason in words.
     *
     * @return a clause without a full stop
     */
    public String words() {
      return words;
    }
  }

  private final Reason reason;

  NotReached(Reason reason) {
    super(reason.words(), null, false, false);
    this.reason = reason;
  }

  /**
   * What stands in the way.
   *
   * @return the reason
   */
  public Reason reason() {
    return reason;
  }
}
