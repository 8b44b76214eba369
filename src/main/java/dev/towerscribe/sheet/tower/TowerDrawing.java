package dev.towerscribe.sheet.tower;

import dev.towerscribe.drawing.Layer;
import dev.towerscribe.drawing.LayerPen;
import dev.towerscribe.drawing.Pen;
import dev.towerscribe.geometry.Contour;
import dev.towerscribe.geometry.Region;
import dev.towerscribe.geometry.Vec2;
import dev.towerscribe.layout.PlacedHole;
import dev.towerscribe.layout.SideLayout;
import dev.towerscribe.layout.StarterHole;
import dev.towerscribe.model.Bracket;
import dev.towerscribe.model.Face;
import dev.towerscribe.model.KeepOut;
import dev.towerscribe.model.Landmark;
import dev.towerscribe.model.Straightedge;
import dev.towerscribe.model.Tower;
import dev.towerscribe.quantity.Angle;
import java.util.List;

/**
 * The lines of an underside or topside sheet; its words are {@link TowerLabels}.
 *
 * @param layout the tower
 * @param frame plan to page
 * @param canvas what is drawn on
 */
record TowerDrawing(SideLayout layout, SheetFrame frame, SheetCanvas canvas) {
  /** How far a hole's cross reaches past the final circle. */
  static final double CROSS_PAST_MM = 5.0;

  private static final double PUNCH_MM = 0.3;
  private static final double LANDMARK_CROSS_MM = 3.0;
  private static final double WASTE_SPACING_MM = 4.0;
  private static final double KEEP_OUT_SPACING_MM = 1.5;
  private static final Angle WASTE_HATCH = Angle.ofDegrees(45);
  private static final Angle KEEP_OUT_HATCH = Angle.ofDegrees(135);

  /** All lines; what lettering must keep clear of is told to the placer on the way. */
  void draw() {
    Tower tower = layout.job().tower();
    waste();
    outline(Layer.PLATE, layout.plateOutline(), Pen.HIDDEN, 0.3);
    tower.boltingFace().ifPresent(c -> outline(Layer.LAND, Region.inside(c), Pen.THIN, 0.3));
    tower.wall().ifPresent(c -> outline(Layer.LAND, Region.inside(c), Pen.OUTLINE, 0.3));
    outline(Layer.MARK, layout.mark(), Pen.THIN, 0.5);
    outline(Layer.OPENING, layout.opening(), Pen.THIN, 1.5);
    tower.lip().ifPresent(l -> outline(Layer.OPENING, Region.inside(l.flat()), Pen.HIDDEN, 0.5));
    outline(Layer.ROUGH_CUT, layout.roughCut(), Pen.ROUGH_CUT, 3.0);
    Region cut = frame.region(layout.finalCut());
    canvas.on(Layer.FINAL_CUT).outline(cut, Pen.FINAL_CUT);
    canvas.bar(cut);
    tower.keepOuts().forEach(this::keepOut);
    if (frame.face() == Face.TOPSIDE) {
      tower.brackets().forEach(this::bracket);
    }
    centreLines();
    tower.landmarks().forEach(this::landmark);
    layout.starters().forEach(this::starter);
    layout.holes().forEach(this::hole);
  }

  /** What is taken from the tower: inside the final cut, outside the opening as found. */
  private void waste() {
    Region cut = frame.region(layout.finalCut());
    Region opening = frame.region(layout.opening());
    canvas.on(Layer.WASTE).hatch(cut, opening, WASTE_HATCH, WASTE_SPACING_MM, Pen.HATCH);
  }

  private void outline(Layer layer, Region plan, Pen pen, double costPerMm) {
    if (!plan.isEmpty()) {
      canvas.outline(layer, frame.region(plan), pen, costPerMm);
    }
  }

  private void keepOut(KeepOut keepOut) {
    Region region = frame.region(barred(keepOut));
    LayerPen pen = canvas.on(Layer.KEEP_OUTS);
    pen.hatch(region, Region.EMPTY, KEEP_OUT_HATCH, KEEP_OUT_SPACING_MM, Pen.THIN);
    pen.outline(region, Pen.OUTLINE);
    for (Contour c : region.contours()) {
      canvas.placer().keepClear(c.flattened(0.1), true);
      c.asCircle().ifPresent(a -> canvas.placer().keepClear(a.centre(), a.radius()));
    }
  }

  /** A keep-out with its margin. */
  static Region barred(KeepOut keepOut) {
    return keepOut
        .outline()
        .asCircle()
        .map(a -> Region.inside(Contour.circle(a.centre(), a.radius() + keepOut.marginMm())))
        .orElseGet(() -> Region.inside(keepOut.outline()).grown(keepOut.marginMm()));
  }

  private void bracket(Bracket bracket) {
    outline(Layer.BRACKETS, Region.inside(bracket.outline()), Pen.HIDDEN, 0.5);
    for (Bracket.Fastener fastener : bracket.fasteners()) {
      Vec2 at = frame.point(fastener.at());
      canvas.on(Layer.BRACKETS).circle(at, fastener.diameterMm() / 2, Pen.HIDDEN);
      canvas.placer().keepClear(at, fastener.diameterMm() / 2);
    }
  }

  /** The slot's centre line, the strut rod centre as found and the line along the car. */
  private void centreLines() {
    canvas.path(slotLine(), Pen.CENTRE, 0.8);
    for (Straightedge edge : layout.job().tower().straightedges()) {
      canvas.path(straightedge(edge), Pen.CENTRE, 0.8);
    }
    canvas.foreAft(frame.origin().x(), 1.5);
    Vec2 arm = new Vec2(LANDMARK_CROSS_MM * 2, 0);
    Vec2 from = frame.origin().minus(arm);
    Vec2 to = frame.origin().plus(arm);
    canvas.on(Layer.CENTRE_LINES).line(from, to, Pen.FINE);
    canvas.placer().keepClear(from, to);
  }

  /** The slot's centre line across the whole plate, page mm. */
  List<Vec2> slotLine() {
    Vec2 direction = layout.plateFrame().xAxis();
    Vec2 middle = layout.plateFrame().origin();
    double reach =
        layout.plateOutline().contours().stream()
            .flatMap(c -> c.flattened(0.5).stream())
            .mapToDouble(p -> Math.abs(p.minus(middle).dot(direction)))
            .max()
            .orElse(0);
    return frame.path(middle.minus(direction.times(reach)), middle.plus(direction.times(reach)));
  }

  /** A straightedge's line between its two points, page mm. */
  List<Vec2> straightedge(Straightedge edge) {
    return frame.path(edge.from(), edge.to());
  }

  private void landmark(Landmark landmark) {
    Vec2 at = frame.point(landmark.at());
    double radius = landmark.diameterMm() / 2;
    canvas.on(Layer.LANDMARKS).circle(at, radius, Pen.OUTLINE);
    canvas.cross(Layer.LANDMARKS, at, radius + LANDMARK_CROSS_MM, Pen.FINE);
    canvas.placer().keepClear(at, radius + 0.5);
  }

  private void starter(StarterHole starter) {
    Vec2 at = frame.point(starter.at());
    double radius = starter.diameterMm() / 2;
    canvas.on(Layer.STARTER_HOLES).circle(at, radius, Pen.OUTLINE);
    canvas.on(Layer.STARTER_HOLES).dot(at, PUNCH_MM);
    canvas.cross(Layer.STARTER_HOLES, at, radius + 1.5, Pen.FINE);
    canvas.placer().keepClear(at, radius + 0.5);
  }

  private void hole(PlacedHole hole) {
    Vec2 at = frame.point(hole.at());
    double radius = hole.diameterMm() / 2;
    LayerPen pen = canvas.on(Layer.HOLES);
    pen.circle(at, radius, Pen.OUTLINE);
    if (hole.drillsMm().size() > 1) {
      pen.circle(at, hole.drillsMm().get(0) / 2, Pen.FINE);
    }
    pen.dot(at, PUNCH_MM);
    canvas.cross(Layer.HOLES, at, radius + CROSS_PAST_MM, Pen.FINE);
    canvas.placer().keepClear(at, radius + 1.0);
    if (frame.face() == Face.TOPSIDE) {
      canvas.ring(Layer.HOLES, at, hole.bolt().seatRadiusMm(), Pen.THIN, 1.0);
      canvas.ring(Layer.HOLES, at, layout.job().tools().reachRadiusMm(), Pen.HIDDEN, 1.0);
    }
  }
}
