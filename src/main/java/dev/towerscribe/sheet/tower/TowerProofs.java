package dev.towerscribe.sheet.tower;

import dev.towerscribe.drawing.Proof;
import dev.towerscribe.geometry.Box;
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
 *
 * @param side which tower
 * @param face from where it is looked at
 * @param crown the dome that the paper follows, if any
 * @param origin page point of the plan's origin
 * @param window what shows; circles not wholly in it are left out
 * @param proofs found so far
 */
record TowerProofs(
    Side side, Face face, Optional<Crown> crown, Vec2 origin, Box window, List<Proof> proofs) {
  /** Circles of an underside or topside sheet. */
  static List<Proof> ofTower(SideLayout layout, Face face, Vec2 origin, Box window) {
    Optional<Crown> crown = layout.job().tower().crown();
    TowerProofs proofs =
        new TowerProofs(layout.side(), face, crown, origin, window, new ArrayList<>());
    for (PlacedHole hole : layout.holes()) {
      proofs.circle("hole " + hole.name(), hole.at(), hole.diameterMm() / 2);
      if (hole.drillsMm().size() > 1) {
        proofs.circle("pilot " + hole.name(), hole.at(), hole.drillsMm().get(0) / 2);
      }
    }
    int number = 1;
    for (StarterHole starter : layout.starters()) {
      proofs.circle("starter " + number++, starter.at(), starter.diameterMm() / 2);
    }
    for (Landmark landmark : layout.job().tower().landmarks()) {
      proofs.circle("landmark " + landmark.name(), landmark.at(), landmark.diameterMm() / 2);
    }
    proofs.round("final cut", layout.finalCut());
    proofs.round("rough cut", layout.roughCut());
    proofs.round("opening", layout.opening());
    return proofs.proofs();
  }

  /** A region, if it is one circle and, on a dome, stays one: then its radius is along the skin. */
  void round(String name, Region region) {
    if (region.contours().size() == 1) {
      region
          .contours()
          .get(0)
          .asCircle()
          .filter(a -> a.radius() > Tolerances.SAME_POINT_MM)
          .filter(a -> crown.isEmpty() || a.centre().norm() <= Tolerances.SAME_POINT_MM)
          .ifPresent(
              a -> circle(name, a.centre(), crown.isEmpty() ? a.radius() : skin(a.radius())));
    }
  }

  /** A circle of the plan whose radius is that of the paper, mm. */
  void circle(String name, Vec2 plan, double radius) {
    Vec2 at = place(plan);
    if (window.contains(Box.around(at, radius))) {
      proofs.add(new Proof.RoundHole(name, at, radius));
    }
  }

  /** Along the dome's skin from its pole, mm. */
  private double skin(double flat) {
    double dome = crown.orElseThrow().radiusMm();
    return dome * Math.asin(flat / dome);
  }

  /** Fore runs up the page; inboard runs to the right where left and above, or neither, hold. */
  private Vec2 place(Vec2 plan) {
    double r = Math.hypot(plan.x(), plan.y());
    double stretch = crown.isPresent() && r > 0 ? skin(r) / r : 1;
    double in = plan.y() * stretch;
    boolean left = side == Side.LEFT;
    boolean toTheRight = face == Face.TOPSIDE ? left : !left;
    return new Vec2(origin.x() + (toTheRight ? in : -in), origin.y() + plan.x() * stretch);
  }
}
