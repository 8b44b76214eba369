package dev.towerscribe.sheet.tower;

import dev.towerscribe.drawing.Proof;
import dev.towerscribe.geometry.Box;
import dev.towerscribe.geometry.Edge.Arc;
import dev.towerscribe.geometry.Region;
import dev.towerscribe.geometry.Vec2;
import dev.towerscribe.layout.PlacedHole;
import dev.towerscribe.layout.SideLayout;
import dev.towerscribe.layout.StarterHole;
import dev.towerscribe.model.Crown;
import dev.towerscribe.model.Face;
import dev.towerscribe.model.Landmark;
import dev.towerscribe.model.Side;
import dev.towerscribe.quantity.Tolerances;
import java.util.ArrayList;
import java.util.List;
import java.util.Optional;

/**
 * Where circles must be found in a written sheet, calculated here a second time and apart from
 * {@link SheetFrame}, so that a fault in the one is caught by the other.
 */
final class TowerProofs {
  private TowerProofs() {}

  /**
   * Circles of an underside or topside sheet.
   *
   * @param layout the tower
   * @param face from where it is looked at
   * @param originX page x of the plan's origin
   * @param originY page y of the plan's origin
   * @param window what shows; circles not wholly in it are left out
   */
  static List<Proof> ofTower(
      SideLayout layout, Face face, double originX, double originY, Box window) {
    List<Proof> proofs = new ArrayList<>();
    for (PlacedHole hole : layout.holes()) {
      Vec2 at = place(layout, face, originX, originY, hole.at());
      add(proofs, "hole " + hole.name(), at, hole.diameterMm() / 2, window);
      if (hole.drillsMm().size() > 1) {
        add(proofs, "pilot " + hole.name(), at, hole.drillsMm().get(0) / 2, window);
      }
    }
    int number = 1;
    for (StarterHole starter : layout.starters()) {
      Vec2 at = place(layout, face, originX, originY, starter.at());
      add(proofs, "starter " + number++, at, starter.diameterMm() / 2, window);
    }
    for (Landmark landmark : layout.job().tower().landmarks()) {
      Vec2 at = place(layout, face, originX, originY, landmark.at());
      add(proofs, "landmark " + landmark.name(), at, landmark.diameterMm() / 2, window);
    }
    round(proofs, "final cut", layout, layout.finalCut(), face, originX, originY, window);
    round(proofs, "rough cut", layout, layout.roughCut(), face, originX, originY, window);
    round(proofs, "opening", layout, layout.opening(), face, originX, originY, window);
    return proofs;
  }

  private static void round(
      List<Proof> proofs,
      String name,
      SideLayout layout,
      Region region,
      Face face,
      double originX,
      double originY,
      Box window) {
    if (region.contours().size() != 1) {
      return;
    }
    Optional<Arc> circle = region.contours().get(0).asCircle();
    if (circle.isEmpty()) {
      return;
    }
    Optional<Crown> crown = layout.job().tower().crown();
    double r = circle.get().radius();
    if (crown.isPresent()) {
      if (circle.get().centre().norm() > Tolerances.SAME_POINT_MM) {
        return;
      }
      double dome = crown.get().radiusMm();
      r = dome * Math.asin(r / dome);
    }
    add(proofs, name, place(layout, face, originX, originY, circle.get().centre()), r, window);
  }

  /** Fore runs up the page; inboard runs to the right where left and above, or neither, hold. */
  private static Vec2 place(
      SideLayout layout, Face face, double originX, double originY, Vec2 plan) {
    double fore = plan.x();
    double in = plan.y();
    Optional<Crown> crown = layout.job().tower().crown();
    double r = Math.hypot(fore, in);
    if (crown.isPresent() && r > 0) {
      double dome = crown.get().radiusMm();
      double stretch = dome * Math.asin(r / dome) / r;
      fore *= stretch;
      in *= stretch;
    }
    boolean left = layout.side() == Side.LEFT;
    boolean toTheRight = face == Face.TOPSIDE ? left : !left;
    return new Vec2(toTheRight ? originX + in : originX - in, originY + fore);
  }

  static void add(List<Proof> proofs, String name, Vec2 at, double radius, Box window) {
    if (window.contains(Box.around(at, radius))) {
      proofs.add(new Proof.RoundHole(name, at, radius));
    }
  }
}
