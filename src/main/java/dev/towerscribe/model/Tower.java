package dev.towerscribe.model;

import dev.towerscribe.geometry.Contour;
import dev.towerscribe.quantity.Require;
import java.util.List;
import java.util.Optional;

/**
 * One strut tower as found.
 *
 * @param sheetMm thickness of its metal
 * @param opening the hole in it, plan
 * @param mark the ring the old mount left, plan; goes round the opening
 * @param lean how its top departs from level
 * @param crown the dome of its top, if it is not flat
 * @param pivotHeightMm original top pivot above the plane, along the normal
 * @param boltingFace edge of the flat, sound metal, if measured
 * @param wall what the plate must stay inside, if there is one
 * @param landmarks what a sheet is laid against, at least one
 * @param straightedges straight lines a sheet is laid along
 * @param keepOuts where nothing may go
 * @param brackets what stands over the tower
 */
public record Tower(
    double sheetMm,
    Contour opening,
    Contour mark,
    Lean lean,
    Optional<Crown> crown,
    double pivotHeightMm,
    Optional<Contour> boltingFace,
    Optional<Contour> wall,
    List<Landmark> landmarks,
    List<Straightedge> straightedges,
    List<KeepOut> keepOuts,
    List<Bracket> brackets) {
  /** Checks the figures and copies the lists. */
  public Tower {
    Require.positive("sheet", sheetMm);
    Require.finite("pivot height", pivotHeightMm);
    landmarks = List.copyOf(landmarks);
    straightedges = List.copyOf(straightedges);
    keepOuts = List.copyOf(keepOuts);
    brackets = List.copyOf(brackets);
    if (landmarks.isEmpty()) {
      throw new IllegalArgumentException("a tower needs a landmark to lay its sheets against");
    }
  }

  /**
   * The same tower with another hole and ring.
   *
   * @param hole the hole in it, plan
   * @param ring the ring the old mount left, plan
   * @return the changed tower
   */
  public Tower withOpening(Contour hole, Contour ring) {
    return new Tower(
        sheetMm,
        hole,
        ring,
        lean,
        crown,
        pivotHeightMm,
        boltingFace,
        wall,
        landmarks,
        straightedges,
        keepOuts,
        brackets);
  }

  /**
   * The same tower with another top.
   *
   * @param level how its top departs from level
   * @param dome the dome of its top, if it is not flat
   * @return the changed tower
   */
  public Tower withTop(Lean level, Optional<Crown> dome) {
    return new Tower(
        sheetMm,
        opening,
        mark,
        level,
        dome,
        pivotHeightMm,
        boltingFace,
        wall,
        landmarks,
        straightedges,
        keepOuts,
        brackets);
  }

  /**
   * The same tower with other bounds.
   *
   * @param face edge of the flat, sound metal, if measured
   * @param around what the plate must stay inside, if there is one
   * @return the changed tower
   */
  public Tower withBounds(Optional<Contour> face, Optional<Contour> around) {
    return new Tower(
        sheetMm,
        opening,
        mark,
        lean,
        crown,
        pivotHeightMm,
        face,
        around,
        landmarks,
        straightedges,
        keepOuts,
        brackets);
  }

  /**
   * The same tower with other marks to lay a sheet against.
   *
   * @param marks at least one
   * @param lines straight lines a sheet is laid along
   * @return the changed tower
   */
  public Tower withLandmarks(List<Landmark> marks, List<Straightedge> lines) {
    return new Tower(
        sheetMm,
        opening,
        mark,
        lean,
        crown,
        pivotHeightMm,
        boltingFace,
        wall,
        marks,
        lines,
        keepOuts,
        brackets);
  }

  /**
   * The same tower with other things in the way.
   *
   * @param areas where nothing may go
   * @param over what stands over the tower
   * @return the changed tower
   */
  public Tower withObstacles(List<KeepOut> areas, List<Bracket> over) {
    return new Tower(
        sheetMm,
        opening,
        mark,
        lean,
        crown,
        pivotHeightMm,
        boltingFace,
        wall,
        landmarks,
        straightedges,
        areas,
        over);
  }
}
