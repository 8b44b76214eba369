package dev.towerscribe.model;

import dev.towerscribe.geometry.Contour;
import java.util.List;
import java.util.Optional;

/** A tower like another but for what a test says. */
public final class TowerChange {
  private final Tower base;
  private Contour opening;
  private Contour mark;
  private Lean lean;
  private Optional<Crown> crown;
  private Optional<Contour> boltingFace;
  private Optional<Contour> wall;
  private List<Landmark> landmarks;
  private List<Straightedge> straightedges;
  private List<KeepOut> keepOuts;
  private List<Bracket> brackets;
  private Optional<Lip> lip;
  private Optional<SecondSkin> secondSkin;

  private TowerChange(Tower base) {
    this.base = base;
    withOpening(base.opening(), base.mark());
    withTop(base.lean(), base.crown());
    withBounds(base.boltingFace(), base.wall());
    withLandmarks(base.landmarks(), base.straightedges());
    withObstacles(base.keepOuts(), base.brackets());
    withMetal(base.lip(), base.secondSkin());
  }

  public static TowerChange of(Tower base) {
    return new TowerChange(base);
  }

  /** Another hole, and the ring that the old mount left round it. */
  public TowerChange withOpening(Contour hole, Contour ring) {
    opening = hole;
    mark = ring;
    return this;
  }

  public TowerChange withTop(Lean level, Optional<Crown> dome) {
    lean = level;
    crown = dome;
    return this;
  }

  /** Another edge of the flat, sound metal, and another wall. */
  public TowerChange withBounds(Optional<Contour> face, Optional<Contour> around) {
    boltingFace = face;
    wall = around;
    return this;
  }

  public TowerChange withLandmarks(List<Landmark> marks, List<Straightedge> lines) {
    landmarks = marks;
    straightedges = lines;
    return this;
  }

  public TowerChange withObstacles(List<KeepOut> areas, List<Bracket> over) {
    keepOuts = areas;
    brackets = over;
    return this;
  }

  /** Another edge of the opening, and another sheet under the upper one. */
  public TowerChange withMetal(Optional<Lip> edge, Optional<SecondSkin> below) {
    lip = edge;
    secondSkin = below;
    return this;
  }

  public Tower tower() {
    return new Tower(
        base.sheetMm(),
        opening,
        mark,
        lean,
        crown,
        base.pivotHeightMm(),
        boltingFace,
        wall,
        landmarks,
        straightedges,
        keepOuts,
        brackets,
        lip,
        secondSkin);
  }
}
