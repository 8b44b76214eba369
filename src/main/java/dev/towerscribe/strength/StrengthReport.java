package dev.towerscribe.strength;

import dev.towerscribe.geometry.Vec2;
import dev.towerscribe.geometry.Vec3;
import dev.towerscribe.model.Side;
import java.util.Comparator;
import java.util.List;
import java.util.Optional;

/**
 * Advisory strength figures of one tower, with every step between.
 *
 * @param side which tower
 * @param input what they rest on
 * @param toward the way the strut pushes, unit vector, vehicle axes
 * @param force the corner load on the plate, split by the plane
 * @param bearing where it acts, plan
 * @param bearingHeightMm how far above the face that plate and tower share, mm
 * @param group the bolts' centroid and second moments
 * @param inPlaneMomentNmm moment of the load's part in the plane about the centroid, N mm
 * @param tippingNmm first moment of the load about the centroid, N mm, (fore, in)
 * @param uncarriedNmm part of it that bolts on one line cannot hold, N mm; zero for other groups
 * @param bolts each bolt's figures, in the plate's order
 * @param pressure pressure before and after; empty where an area is nothing
 * @param assumptions everything taken for granted, a sentence each
 */
public record StrengthReport(
    Side side,
    StrengthInput input,
    Vec3 toward,
    PlaneForce force,
    Vec2 bearing,
    double bearingHeightMm,
    BoltGroup group,
    double inPlaneMomentNmm,
    Vec2 tippingNmm,
    Vec2 uncarriedNmm,
    List<BoltFigures> bolts,
    Optional<Pressure> pressure,
    List<String> assumptions) {
  /** Heads every print of the report. */
  public static final String ADVISORY = "Advisory, not a certification.";

  /** Follows it. */
  public static final String DEFER =
      "The vehicle maker's figures, local law and a licensed engineer's judgement come first. A low"
          + " figure here does not make the work safe.";

  /** Copies the lists. */
  public StrengthReport {
    bolts = List.copyOf(bolts);
    assumptions = List.copyOf(assumptions);
  }

  /**
   * The bolt that uses most of its proof load.
   *
   * @return that bolt, the first of equals; empty unless every bolt has a proof load, for the worst
   *     might be one without
   */
  public Optional<BoltFigures> mostUsed() {
    return bolts.stream().anyMatch(b -> b.use().isEmpty())
        ? Optional.empty()
        : bolts.stream().max(Comparator.comparing(b -> b.use().orElseThrow()));
  }
}
