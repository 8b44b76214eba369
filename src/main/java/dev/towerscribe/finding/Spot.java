package dev.towerscribe.finding;

import dev.towerscribe.geometry.Vec2;
import dev.towerscribe.quantity.Worded;
import java.util.Objects;
import java.util.Optional;

/**
 * Where a finding is on its tower, and what would have to go where for it to pass. Points are of
 * the plan, (fore, in), mm from the original strut rod centre.
 *
 * <p>Example: a hole whose centre lies 32.1 mm behind an opening that it must keep 36 mm from has
 * {@code from} at its centre, {@code to} on the opening's edge and, where the plate may move, a
 * {@code move} of 3.9 mm to the rear.
 *
 * @param from one end of the distance, on what moves
 * @param to its other end, on what it must keep away from or stay within; the same point where the
 *     finding is about a point alone
 * @param mover what moves
 * @param move how far, every other thing staying where it is: then this very check passes. Empty
 *     where no such way was found
 */
public record Spot(Vec2 from, Vec2 to, Mover mover, Optional<Vec2> move) {
  /** What would have to move. */
  public enum Mover implements Worded {
    /** The plate, with its holes and its bearing, turned no farther. */
    PLATE,
    /** The final cut's edge, all round, to the inside of the mark. */
    CUT,
    /** One hole of the plate, the others staying. */
    HOLE
  }

  /** Checks that nothing is missing. */
  public Spot {
    Objects.requireNonNull(from);
    Objects.requireNonNull(to);
    Objects.requireNonNull(mover);
    Objects.requireNonNull(move);
  }

  /**
   * The same where nothing can move any more.
   *
   * @return the place alone
   */
  public Spot fixed() {
    return new Spot(from, to, mover, Optional.empty());
  }
}
