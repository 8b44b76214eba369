package dev.towerscribe.drilled;

import dev.towerscribe.adjust.Propagation;
import dev.towerscribe.geometry.Vec2;
import dev.towerscribe.quantity.Tolerances;
import java.util.List;
import java.util.stream.IntStream;

/**
 * Whether a plate goes on a drilled tower with all its bolts, and with how much clearance left.
 *
 * <p>At a turn of the plate, bolt i goes in where the plate's shift lies within its play r of hole
 * less turned place: in a disc. All go in where all discs share a point (Helly 1923: where any
 * three do). The slack at that turn is how deep a point can lie in all of them; the slack of the
 * plate is the greatest over the full circle, found by branch and bound with a proof.
 */
public final class PlateFitSolver {
  /**
   * A bolt is tight when it has no more than this beyond the slack, mm: the size that separates
   * points of a job from rounding.
   */
  public static final double TIGHT_MM = Tolerances.SAME_POINT_MM;

  private final List<BoltPlay> pegs;
  private final double slack;
  private final double bound;
  private final RigidMove move;
  private final double[] margins;
  private final AngleSearch.Sway sway;

  private PlateFitSolver(List<BoltPlay> pegs) {
    this.pegs = pegs;
    AngleSearch search = new AngleSearch(pegs, AngleSearch.plays(pegs)).run(false);
    slack = search.best();
    bound = search.bound();
    sway = search.sway();
    double turn = search.bestTurn();
    DeepestPoint there = search.look(turn);
    move = search.move(turn);
    margins = IntStream.range(0, pegs.size()).mapToDouble(there::margin).toArray();
  }

  /**
   * Tries a plate.
   *
   * @param pegs its bolts, at least one; plan places of holes and pattern
   * @return how it goes on
   * @throws IllegalArgumentException without a bolt
   */
  public static PlateFitSolver of(List<BoltPlay> pegs) {
    if (pegs.isEmpty()) {
      throw new IllegalArgumentException("a plate without a bolt");
    }
    return new PlateFitSolver(List.copyOf(pegs));
  }

  /**
   * The bolts.
   *
   * @return as given
   */
  public List<BoltPlay> pegs() {
    return pegs;
  }

  /**
   * What clearance every bolt has left in the best pose: by so much could every hole lie wrong, or
   * be narrower in radius, and the plate would still go on. Negative: it does not go on, and every
   * hole's play is too small by so much. Counts the holes' places and plays only; see {@link
   * #blocked}.
   *
   * @return mm
   */
  public double slackMm() {
    return slack;
  }

  /**
   * Proved: no pose of the plate, whatever its turn, has more slack.
   *
   * @return mm; at most 1e-9 mm above the slack
   */
  public double slackAtMostMm() {
    return bound;
  }

  /**
   * Bolts that do not go through one of their own two holes, wherever these lie.
   *
   * @return names, in order
   */
  public List<String> blocked() {
    return pegs.stream()
        .filter(p -> !p.entersTower() || !p.entersPlate())
        .map(BoltPlay::name)
        .toList();
  }

  /**
   * Whether the plate goes on.
   *
   * @return true if every bolt goes through; with no slack at all it does, rounding allowed for
   */
  public boolean goesOn() {
    return placesAllow() && blocked().isEmpty();
  }

  /** Whether it goes on as far as the holes' places matter. */
  boolean placesAllow() {
    return slack >= -AngleSearch.PROVED_MM;
  }

  /**
   * The pose with the most slack. One bolt alone leaves the turn free, and so may one that is much
   * tighter than the rest: then the turn is the one nearest in the mean.
   *
   * @return where the planned pattern goes
   */
  public RigidMove move() {
    return move;
  }

  /**
   * What clearance a bolt has left in that pose.
   *
   * @param i the bolt's number in {@link #pegs}
   * @return mm, not less than the slack but for rounding
   */
  public double marginMm(int i) {
    return margins[i];
  }

  /**
   * The bolts that decide: none of them has more clearance left than the slack.
   *
   * @return names, in order; up to four unless holes repeat
   */
  public List<String> tight() {
    return IntStream.range(0, margins.length)
        .filter(i -> margins[i] <= slack + TIGHT_MM)
        .mapToObj(i -> pegs.get(i).name())
        .toList();
  }

  /**
   * How the slack changes when a hole moves.
   *
   * @param i the bolt's number in {@link #pegs}
   * @return mm of slack per mm of the hole's place; zero for a hole that does not decide
   */
  public Vec2 slackByHole(int i) {
    return new Vec2(sway.x()[i], sway.y()[i]);
  }

  /**
   * How the slack changes with a bolt's play.
   *
   * @param i the bolt's number in {@link #pegs}
   * @return mm of slack per mm of play, 0 to 1; together 1
   */
  public double slackByPlay(int i) {
    return sway.play()[i];
  }

  /**
   * How sure the slack is, to first order, from how sure the holes' places are. Where two sets of
   * bolts decide alike the slack has an edge, and this is the figure on one side of it.
   *
   * @param covariance of the measured places x1, y1, x2, y2 and so on, mm2
   * @return one standard deviation, mm
   * @throws IllegalArgumentException if the covariance is of another size
   */
  public double slackPlusMinusMm(double[][] covariance) {
    int size = 2 * pegs.size();
    Propagation.checkSize(covariance, size);
    double[] g = new double[size];
    for (int i = 0; i < pegs.size(); i++) {
      g[2 * i] = sway.x()[i];
      g[2 * i + 1] = sway.y()[i];
    }
    return Propagation.sd(g, covariance);
  }
}
