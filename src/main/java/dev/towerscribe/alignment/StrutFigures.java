package dev.towerscribe.alignment;

import dev.towerscribe.model.PlusMinus;
import dev.towerscribe.quantity.Angle;
import java.util.Optional;

/**
 * What only a strut with measured points gives.
 *
 * @param before curves before the work, where the linkage gets to ride height
 * @param at curves at the chosen setting, likewise
 * @param reachableBefore camber over the knuckle bolt's range before the work, if there is a bolt
 * @param reachableAt the same at the chosen setting
 * @param sureBefore figures before the work with their derivatives
 * @param sureAt figures at the chosen setting with their derivatives
 * @param plusMinus how far the points and the camber may be off
 */
public record StrutFigures(
    Optional<Curves> before,
    Optional<Curves> at,
    Optional<Reachable> reachableBefore,
    Optional<Reachable> reachableAt,
    Optional<Sensitivity.Figures> sureBefore,
    Optional<Sensitivity.Figures> sureAt,
    PlusMinus plusMinus) {
  /**
   * A range of camber.
   *
   * @param from most negative
   * @param to least negative
   */
  public record Reachable(Angle from, Angle to) {
    /**
     * The camber of the range next to one wanted.
     *
     * @param wanted camber
     * @return itself if it is in the range, or else the nearer end
     */
    public Angle nearest(Angle wanted) {
      return wanted.compareTo(from) < 0 ? from : wanted.compareTo(to) > 0 ? to : wanted;
    }
  }
}
