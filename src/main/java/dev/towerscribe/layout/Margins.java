package dev.towerscribe.layout;

import dev.towerscribe.finding.Findings;
import dev.towerscribe.geometry.Contour;
import dev.towerscribe.geometry.Region;
import dev.towerscribe.geometry.Vec2;
import dev.towerscribe.model.Bracket;
import dev.towerscribe.model.Tools;
import dev.towerscribe.quantity.Tolerances;

/**
 * What is left at the checks of plate, moving parts, socket and notch: one function for each, from
 * placed geometry (plan, mm) to a length in mm that is held against the check's limit. {@link
 * HoleMargin} does the same for the holes. The findings take their figures from here, and so does
 * the search wherever its bounds do not settle the matter.
 */
public final class Margins {
  /** Least metal between a notch and a bracket's own fastener. Common practice, no source. */
  public static final double FASTENER_GAP_MM = 2.0;

  /** Least metal beside a notch, whatever a job says. Our own choice, no source. */
  public static final double BRACKET_FLOOR_MM = 5.0;

  private Margins() {}

  /**
   * Least metal that must stay across any section of a bracket.
   *
   * @param bracket the bracket
   * @return what the job asks for, mm; never less than {@link #BRACKET_FLOOR_MM}
   */
  public static double leastWidthMm(Bracket bracket) {
    return Math.max(bracket.leastWidthMm(), BRACKET_FLOOR_MM);
  }

  /**
   * How far the plate covers the opening, at the place where it does least.
   *
   * @param plate the plate's outline where it goes
   * @param finished the opening once cut
   * @return mm, negative where the opening shows
   */
  public static double plateCover(Region plate, Region finished) {
    return plate.marginAround(finished);
  }

  /**
   * How far the plate stays from the tower's wall, at the nearest place.
   *
   * @param wall what the wall goes round
   * @param plate the plate's outline where it goes
   * @return mm, negative where they meet
   */
  public static double plateToWall(Region wall, Region plate) {
    return wall.marginAround(plate);
  }

  /**
   * How far what moves with the bearing stays from the finished opening, at the nearest place.
   *
   * @param sweep what moves, the clearance it needs counted in
   * @param finished the opening once cut
   * @param clearanceMm that clearance
   * @return mm, negative where they meet
   */
  public static double aroundSweep(Sweep sweep, Region finished, double clearanceMm) {
    return finished.marginAround(sweep.region()) + clearanceMm;
  }

  /**
   * How far a socket on a bolt stays from a bracket.
   *
   * @param bracket the bracket's metal
   * @param bolt the bolt's hole centre
   * @param tools the socket
   * @return mm, negative where the bracket is in the way
   */
  static double socketToBracket(Region bracket, Vec2 bolt, Tools tools) {
    return -bracket.depth(bolt) - tools.socketMm() / 2;
  }

  /**
   * Metal between a notch and one of the bracket's own fasteners.
   *
   * @param removed what the notch takes
   * @param fastener the fastener
   * @return mm, negative where the notch runs into it
   */
  public static double notchToFastener(Region removed, Bracket.Fastener fastener) {
    return -removed.depth(fastener.at()) - fastener.diameterMm() / 2;
  }

  /**
   * Whether a notch passes its checks.
   *
   * @param notch the notch
   * @return false where too little of the bracket is left, beside it or round a fastener
   */
  public static boolean leavesEnough(Notch notch) {
    return Findings.passes(notch.widthLeftMm(), leastWidthMm(notch.bracket()))
        && notch.bracket().fasteners().stream()
            .allMatch(f -> Findings.passes(notchToFastener(notch.removed(), f), FASTENER_GAP_MM));
  }

  /**
   * Shortest way between two areas; where they meet, minus how deep one reaches into the other, so
   * that meeting never passes a limit of zero.
   *
   * @param region one area
   * @param other outline of the other
   * @return mm
   */
  static double between(Region region, Contour other) {
    Region second = Region.inside(other);
    double gap = region.boundaryGap(second).mm();
    double deepest = Math.max(deepest(region, second), deepest(second, region));
    return gap > 0 && deepest <= 0 ? gap : -Math.max(deepest, Tolerances.SAME_POINT_MM);
  }

  /** How far the second area reaches into the first; not positive when it stays outside. */
  private static double deepest(Region region, Region intruder) {
    return intruder.contours().stream()
        .flatMap(c -> c.flattened(Tolerances.FLATTEN_MM).stream())
        .mapToDouble(region::depth)
        .max()
        .orElse(0.0);
  }
}
