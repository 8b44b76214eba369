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

  /** Turns looked at for the farthest pose, and steps that narrow it down afterward. */
  private static final int TURNS = 64;

  private static final int NARROWING = 60;
  private static final double GOLDEN = (Math.sqrt(5) - 1) / 2;

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
    double step = (on + back) / TURNS;
    Extreme best = at(turn, perRadian, perMm, planned);
    double centre = turn;
    for (int i = 0; i <= TURNS; i++) {
      double there = turn - back + i * step;
      Extreme e = at(there, perRadian, perMm, planned);
      if (e.value() > best.value()) {
        best = e;
        centre = there;
      }
    }
    double low = Math.max(turn - back, centre - step);
    double high = Math.min(turn + on, centre + step);
    for (int i = 0; i < NARROWING; i++) {
      Extreme one = at(high - GOLDEN * (high - low), perRadian, perMm, planned);
      Extreme two = at(low + GOLDEN * (high - low), perRadian, perMm, planned);
      if (one.value() > two.value()) {
        high = low + GOLDEN * (high - low);
      } else {
        low = high - GOLDEN * (high - low);
      }
      best = one.value() > best.value() ? one : best;
      best = two.value() > best.value() ? two : best;
    }
    return best;
  }

  private Extreme at(double angle, double perRadian, Vec2 perMm, Vec2 planned) {
    Vec2 far = search.look(angle).farthest(perMm, AngleSearch.PROVED_MM);
    RigidMove move = search.move(angle, far);
    return new Extreme(perRadian * angle + perMm.dot(move.of(planned)), move);
  }
}
