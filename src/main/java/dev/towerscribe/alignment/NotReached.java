package dev.towerscribe.alignment;

import java.util.Optional;

/**
 * A place that the linkage cannot take. Carries no stack trace: searches meet it often, and the
 * reason is all there is to know.
 */
public final class NotReached extends Exception {
  private static final long serialVersionUID = 1L;

  /** What stands in the way. */
  public enum Reason {
    /** The top pivot is nearer to the ball joint than the ball joint is to the damper's axis. */
    TOP_TOO_CLOSE("the top pivot is too close to the ball joint", "top, ball_joint, strut_lower"),
    /** The tie rod is too short or too long to close the linkage. */
    TIE_ROD("the tie rod does not reach", "tie_inner, tie_outer"),
    /** The wheel's toe cannot be set by turning it about the steering axis. */
    TOE("no tie rod length gives that toe", "top, ball_joint, wheel_centre"),
    /** The arm's circle does not go to that height. */
    ARM("the arm does not reach that wheel height", "arm_front, arm_rear, ball_joint");

    private final String words;
    private final String points;

    Reason(String words, String points) {
      this.words = words;
      this.points = points;
    }

    /**
     * The reason in words.
     *
     * @return a clause without a full stop
     */
    public String words() {
      return words;
    }

    /**
     * The points that it speaks of.
     *
     * @return the job's names of them
     */
    public String points() {
      return points;
    }
  }

  /**
   * Something that may meet a place out of reach.
   *
   * @param <T> what it gives
   */
  public interface Ask<T> {
    /**
     * Gives it.
     *
     * @return what was asked for
     * @throws NotReached if the linkage cannot get there
     */
    T get() throws NotReached;
  }

  private final Reason reason;

  NotReached(Reason reason) {
    super(reason.words(), null, false, false);
    this.reason = reason;
  }

  /**
   * Asks without a care for the reason.
   *
   * @param ask what is asked
   * @return its answer, or nothing where the linkage cannot get there
   * @param <T> what it gives
   */
  public static <T> Optional<T> ifReached(Ask<T> ask) {
    try {
      return Optional.of(ask.get());
    } catch (NotReached e) {
      return Optional.empty();
    }
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
