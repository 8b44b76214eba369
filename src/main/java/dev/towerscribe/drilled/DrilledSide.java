package dev.towerscribe.drilled;

import dev.towerscribe.adjust.Repeated;
import dev.towerscribe.finding.Finding;
import dev.towerscribe.geometry.Vec2;
import dev.towerscribe.layout.SideLayout;
import dev.towerscribe.model.Mount;
import dev.towerscribe.model.MountCovariance;
import dev.towerscribe.model.Side;
import java.util.List;
import java.util.Optional;

/**
 * One tower as it was drilled.
 *
 * @param planned the tower as planned
 * @param readings what calipers said
 * @param network where the holes were found
 * @param holes the found holes against the plan, in the plate's order
 * @param fit whether the plate goes on; absent where a hole was not found
 * @param edges metal between each hole and the cut
 * @param spans every pair of found holes
 * @param asDrilled where the plate now goes; absent where nothing ties the holes to the tower, or
 *     too few were found to say
 * @param findings everything to be said of it, most serious first
 */
public record DrilledSide(
    SideLayout planned,
    SideReadings readings,
    HoleNetwork network,
    List<Hole> holes,
    Optional<PlateFit> fit,
    List<EdgeMetal> edges,
    List<SpanFound> spans,
    Optional<AsDrilled> asDrilled,
    List<Finding> findings) {
  /** Copies the lists. */
  public DrilledSide {
    holes = List.copyOf(holes);
    edges = List.copyOf(edges);
    spans = List.copyOf(spans);
    findings = List.copyOf(findings);
  }

  /** The same with its findings. */
  DrilledSide with(List<Finding> found) {
    return new DrilledSide(planned, readings, network, holes, fit, edges, spans, asDrilled, found);
  }

  /**
   * A hole against the plan.
   *
   * @param found where it is
   * @param error found less planned, (fore, in); absent where nothing ties the holes to the tower
   * @param left the same once the planned pattern is laid on the holes as well as it goes; absent
   *     for a hole alone
   */
  public record Hole(HoleNetwork.Found found, Optional<Vec2> error, Optional<Vec2> left) {}

  /**
   * Metal between a hole and the edge of the opening.
   *
   * @param hole its name
   * @param toPlannedMm from the hole's edge to the finished cut as planned; absent where nothing
   *     ties the holes to the tower
   * @param toPlannedSdMm its +/-, from the hole's place and size alone
   * @param toCut from the hole's edge to the edge as cut, where that was read
   * @param limitMm least metal from the hole's edge: the edge rule less the hole's radius
   * @param source which rule gives the limit
   */
  public record EdgeMetal(
      String hole,
      Optional<Double> toPlannedMm,
      double toPlannedSdMm,
      Optional<Repeated> toCut,
      double limitMm,
      String source) {}

  /**
   * Two holes, centre to centre.
   *
   * @param from one's name
   * @param to the other's
   * @param plannedMm as planned
   * @param foundMm as drilled
   * @param sdMm its +/-
   * @param toleranceMm by how much it may be off before the two bolts bind, with both holes as
   *     drilled
   */
  public record SpanFound(
      String from, String to, double plannedMm, double foundMm, double sdMm, double toleranceMm) {
    /**
     * How far off it is.
     *
     * @return found less planned, mm
     */
    public double errorMm() {
      return foundMm - plannedMm;
    }
  }

  /**
   * Where the plate now goes, in the middle of its play: the planned pattern laid on the holes as
   * well as it goes, all holes alike.
   *
   * @param mount rotation and offset; the setting as planned
   * @param sure covariance of these
   */
  public record AsDrilled(Mount mount, MountCovariance sure) {
    /**
     * How sure the rotation is.
     *
     * @return one standard deviation, radians
     */
    public double rotationSd() {
      return sure.plusMinus(1, 0, 0);
    }

    /**
     * How sure the rearward offset is.
     *
     * @return one standard deviation, mm
     */
    public double rearwardSdMm() {
      return sure.plusMinus(0, 1, 0);
    }

    /**
     * How sure the inboard offset is.
     *
     * @return one standard deviation, mm
     */
    public double inboardSdMm() {
      return sure.plusMinus(0, 0, 1);
    }
  }

  /**
   * Which tower.
   *
   * @return side
   */
  public Side side() {
    return planned.side();
  }
}
