package dev.towerscribe.strength;

import dev.towerscribe.geometry.Contour;
import dev.towerscribe.geometry.Region;
import dev.towerscribe.geometry.Vec2;
import dev.towerscribe.geometry.Vec3;
import dev.towerscribe.layout.PlacedHole;
import dev.towerscribe.layout.SideLayout;
import dev.towerscribe.model.Seat;
import dev.towerscribe.model.SideJob;
import java.util.ArrayList;
import java.util.List;
import java.util.Optional;

/** Works out the advisory figures of one tower. */
public final class Strength {
  private Strength() {}

  /**
   * Works the figures out.
   *
   * @param layout the tower, laid out
   * @param input loads, direction, bolts
   * @return the report
   * @throws IllegalArgumentException if the bolts make no group or the friction is not believable
   */
  public static StrengthReport of(SideLayout layout, StrengthInput input) {
    SideJob job = layout.job();
    Vec3 toward = input.toward().unit();
    PlaneForce force =
        PlaneForce.of(input.loads().cornerN(), toward, job.tower().lean(), layout.side());
    // Heights count from the upper face; a plate underneath meets the tower a sheet lower.
    double below = input.seat() == Seat.UNDERNEATH ? job.tower().throughMm() : 0.0;
    double height = job.bearingHeightMm() + below;
    BoltGroup group = BoltGroup.of(layout.holes().stream().map(PlacedHole::at).toList());
    List<BoltGroup.InPlane> inPlane = group.inPlane(force.inPlaneN(), layout.bearing());
    Vec2 tipping = group.tippingNmm(force, layout.bearing(), height);
    BoltGroup.Axial axial = group.axial(force.normalN(), tipping);
    List<BoltFigures> bolts = new ArrayList<>();
    for (int i = 0; i < layout.holes().size(); i++) {
      bolts.add(bolt(layout.holes().get(i), inPlane.get(i), axial.sharesN().get(i), input));
    }
    return new StrengthReport(
        layout.side(),
        input,
        toward,
        force,
        layout.bearing(),
        height,
        group,
        group.inPlaneMomentNmm(force.inPlaneN(), layout.bearing()),
        tipping,
        axial.uncarriedNmm(),
        bolts,
        Pressure.of(
            force.normalN(),
            layout.mark().minus(layout.opening()),
            layout.plateOutline(),
            job.tower().boltingFace().map(Region::inside),
            layout.finalCut().union(layout.opening()),
            layout.holes().stream().map(Strength::hole).toList()),
        Assumptions.of(layout, input, group, bolts));
  }

  private static Region hole(PlacedHole hole) {
    return Region.inside(Contour.circle(hole.at(), hole.diameterMm() / 2));
  }

  private static BoltFigures bolt(
      PlacedHole hole, BoltGroup.InPlane share, double axialN, StrengthInput input) {
    double pull = input.seat().pullN(axialN);
    double outer = Math.max(hole.bolt().washerMm(), hole.bolt().flatsMm());
    double seat = Math.PI / 4 * (outer * outer - hole.diameterMm() * hole.diameterMm());
    return new BoltFigures(
        hole.name(),
        hole.bolt().thread(),
        hole.at(),
        share,
        axialN,
        pull,
        seat > 0 ? Optional.of(pull / seat) : Optional.empty(),
        BoltStrength.find(hole.bolt().thread(), input.propertyClass()),
        Tightening.of(
            hole.bolt().thread(), input.propertyClass(), input.friction(), hole.diameterMm()));
  }
}
