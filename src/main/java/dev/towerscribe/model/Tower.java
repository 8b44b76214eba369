package dev.towerscribe.model;

import dev.towerscribe.geometry.Contour;
import dev.towerscribe.quantity.Require;
import java.util.List;
import java.util.Optional;

/**
 * One strut tower as found.
 *
 * @param sheetMm thickness of its metal; of the upper sheet where there are two
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
 * @param lip the opening's edge, where it was pressed out of the flat
 * @param secondSkin a second sheet under the upper one, if there is one
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
    List<Bracket> brackets,
    Optional<Lip> lip,
    Optional<SecondSkin> secondSkin) {
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
   * From the upper face to the lower one.
   *
   * @return mm, both sheets and the gap between them counted in
   */
  public double throughMm() {
    return sheetMm + secondSkin.map(s -> s.apartMm() + s.sheetMm()).orElse(0.0);
  }
}
