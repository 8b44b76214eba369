package dev.towerscribe.drilled;

import dev.towerscribe.geometry.Vec2;
import dev.towerscribe.quantity.Angle;
import java.util.Optional;

/**
 * How far a plate that goes on can still be moved before its bolts bind. Where in its play it ends
 * up when the bolts are tightened is up to whoever tightens them.
 */
public final class Play {
  /**
   * The ends of the turn are known to this, radians: a ten-thousandth of a millimetre at a metre.
   */
  public static final double TURN_NEAR = 1e-7;

  /**
   * Steps toward an end at most. Each takes the plate as far as it can certainly go, so that the
   * end is neared by a fixed part of the way or better; where a bolt only grazes, short of it.
   */
  private static final int STEPS = 10_000;

  private final AngleSearch search;
  private final double turn;
  private final double back;
  private final double on;

  private Play(PlateFitSolver mating) {
    search = new AngleSearch(mating.pegs(), AngleSearch.plays(mating.pegs()));
    turn = mating.move().turn().radians();
    on = march(1);
    back = march(-1);
  }

  /**
   * The play of a plate.
   *
   * @param mating a plate that was tried
   * @return its play; empty where it does not go on
   */
  public static Optional<Play> of(PlateFitSolver mating) {
    return mating.goesOn() ? Optional.of(new Play(mating)) : Optional.empty();
  }

  /** Takes certain steps to the end of the turn's play; half a turn at most. */
  private double march(int way) {
    double gone = 0;
    for (int step = 0; step < STEPS; step++) {
      search.look(turn + way * gone);
      double free = search.freeTurn();
      gone += free;
      if (gone >= Math.PI) {
        return Math.PI;
      }
      if (free < TURN_NEAR / 100) {
        break;
      }
    }
    return gone;
  }

  /**
   * How far it turns from its best pose from in toward fore, shifting as need be.
   *
   * @return not negative; half a turn where it goes all the way round
   */
  public Angle turnBack() {
    return new Angle(back);
  }

  /**
   * How far it turns from its best pose from fore toward in, shifting as need be.
   *
   * @return not negative; half a turn where it goes all the way round
   */
  public Angle turnOn() {
    return new Angle(on);
  }

  /**
   * An extreme pose.
   *
   * @param value of the figure that was asked for
   * @param move where the planned pattern goes there
   */
  public record Extreme(double value, RigidMove move) {}

  /**
   * The greatest value over the whole play, turn and shift together, of a figure that depends on
   * the plate's turn and on where one of its points lies. For a small play the poses make a convex
   * set but for second order, so that one peak is sought; the value is that of a pose that goes on.
   *
   * @param perRadian how the figure grows with the turn
   * @param perMm how it grows with the point's place, plan
   * @param planned the point as planned, plan
   * @return the pose, and perRadian times its turn and perMm times the point's place there
   */
  public Extreme greatest(double perRadian, Vec2 perMm, Vec2 planned) {
    return Narrowed.best(
        turn - back, turn + on, turn, t -> at(t, perRadian, perMm, planned), e -> -e.value());
  }

  private Extreme at(double angle, double perRadian, Vec2 perMm, Vec2 planned) {
    Vec2 far = search.look(angle).farthest(perMm, AngleSearch.PROVED_MM);
    RigidMove move = search.move(angle, far);
    return new Extreme(perRadian * angle + perMm.dot(move.of(planned)), move);
  }
}
