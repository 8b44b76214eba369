package dev.towerscribe.sheet.tower;

import dev.towerscribe.drawing.Ink;
import dev.towerscribe.drawing.Item;
import dev.towerscribe.drawing.LabelPlacer;
import dev.towerscribe.drawing.Layer;
import dev.towerscribe.drawing.Pen;
import dev.towerscribe.geometry.Box;
import dev.towerscribe.geometry.Contour;
import dev.towerscribe.geometry.Edge.Segment;
import dev.towerscribe.geometry.Hatch;
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
import dev.towerscribe.quantity.Angle;
import java.util.ArrayList;
import java.util.List;

/** The lines of an underside or topside sheet; its words are {@link TowerLabels}. */
final class TowerDrawing {
  /** How far a hole's cross reaches past the final circle. */
  static final double CROSS_PAST_MM = 5.0;

  private static final double PUNCH_MM = 0.3;
  private static final double LANDMARK_CROSS_MM = 3.0;
  private static final double WASTE_SPACING_MM = 4.0;
  private static final double KEEP_OUT_SPACING_MM = 1.5;
  private static final Angle WASTE_HATCH = Angle.ofDegrees(45);
  private static final Angle KEEP_OUT_HATCH = Angle.ofDegrees(135);

  private final SideLayout layout;
  private final SheetFrame frame;
  private final Box window;
  private final LabelPlacer placer;
  private final List<Item> items = new ArrayList<>();

  TowerDrawing(SideLayout layout, SheetFrame frame, Box window, LabelPlacer placer) {
    this.layout = layout;
    this.frame = frame;
    this.window = window;
    this.placer = placer;
  }

  /** All lines; what lettering must keep clear of is told to the placer on the way. */
  List<Item> drawn() {
    waste();
    edges();
    cuts();
    for (KeepOut keepOut : layout.job().tower().keepOuts()) {
      keepOut(keepOut);
    }
    if (frame.face() == Face.TOPSIDE) {
      layout.job().tower().brackets().forEach(this::bracket);
    }
    centreLines();
    layout.job().tower().landmarks().forEach(this::landmark);
    layout.starters().forEach(this::starter);
    layout.holes().forEach(this::hole);
    return items;
  }

  /** What is taken from the tower: inside the final cut, outside the opening as found. */
  private void waste() {
    Region cut = frame.region(layout.finalCut());
    Region opening = frame.region(layout.opening());
    for (Segment s : Hatch.lines(cut, opening, WASTE_HATCH, WASTE_SPACING_MM)) {
      items.add(new Item.Line(Layer.WASTE, s.start(), s.end(), Pen.HATCH));
    }
  }

  private void edges() {
    outline(Layer.PLATE, layout.plateOutline(), Pen.HIDDEN, 0.3);
    layout
        .job()
        .tower()
        .land()
        .ifPresent(c -> outline(Layer.LAND, Region.inside(c), Pen.THIN, 0.3));
    layout
        .job()
        .tower()
        .wall()
        .ifPresent(c -> outline(Layer.LAND, Region.inside(c), Pen.OUTLINE, 0.3));
    outline(Layer.MARK, layout.mark(), Pen.THIN, 0.5);
    outline(Layer.OPENING, layout.opening(), Pen.THIN, 1.5);
  }

  private void cuts() {
    outline(Layer.ROUGH_CUT, layout.roughCut(), Pen.ROUGH_CUT, 3.0);
    Region cut = frame.region(layout.finalCut());
    items.add(Item.Figure.of(Layer.FINAL_CUT, cut, Pen.FINAL_CUT, Ink.NONE));
    cut.contours().forEach(c -> placer.keepClear(c.flattened(0.05), true));
  }

  private void outline(Layer layer, Region plan, Pen pen, double costPerMm) {
    if (plan.isEmpty()) {
      return;
    }
    Region region = frame.region(plan);
    items.add(Item.Figure.of(layer, region, pen, Ink.NONE));
    region.contours().forEach(c -> placer.avoid(c.flattened(0.05), true, costPerMm));
  }

  private void keepOut(KeepOut keepOut) {
    Region plan = barred(keepOut);
    Region region = frame.region(plan);
    for (Segment s : Hatch.lines(region, Region.EMPTY, KEEP_OUT_HATCH, KEEP_OUT_SPACING_MM)) {
      items.add(new Item.Line(Layer.KEEP_OUTS, s.start(), s.end(), Pen.THIN));
    }
    items.add(Item.Figure.of(Layer.KEEP_OUTS, region, Pen.OUTLINE, Ink.NONE));
    region
        .contours()
        .forEach(
            c -> {
              placer.keepClear(c.flattened(0.1), true);
              c.asCircle().ifPresent(a -> placer.keepClear(a.centre(), a.radius()));
            });
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
      items.add(
          new Item.Circle(Layer.BRACKETS, at, fastener.diameterMm() / 2, Pen.HIDDEN, Ink.NONE));
      placer.keepClear(at, fastener.diameterMm() / 2);
    }
  }

  /** The slot's centre line, the strut rod centre as found and the line along the car. */
  private void centreLines() {
    line(slotLine(), Pen.CENTRE, 0.8);
    for (Straightedge edge : layout.job().tower().straightedges()) {
      line(straightedge(edge), Pen.CENTRE, 0.8);
    }
    double x = frame.origin().x();
    if (x > window.minX() && x < window.maxX()) {
      List<Vec2> along = List.of(new Vec2(x, window.minY()), new Vec2(x, window.maxY()));
      items.add(new Item.Line(Layer.CENTRE_LINES, along.get(0), along.get(1), Pen.OUTLINE));
      placer.avoid(along, false, 1.5);
    }
    Vec2 arm = new Vec2(LANDMARK_CROSS_MM * 2, 0);
    items.add(
        new Item.Line(
            Layer.CENTRE_LINES, frame.origin().minus(arm), frame.origin().plus(arm), Pen.FINE));
    placer.keepClear(List.of(frame.origin().minus(arm), frame.origin().plus(arm)), false);
  }

  private void line(List<Vec2> path, Pen pen, double costPerMm) {
    items.add(new Item.Polyline(Layer.CENTRE_LINES, path, false, pen, Ink.NONE));
    placer.avoid(path, false, costPerMm);
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
    items.add(new Item.Circle(Layer.LANDMARKS, at, radius, Pen.OUTLINE, Ink.NONE));
    cross(Layer.LANDMARKS, at, radius + LANDMARK_CROSS_MM);
    placer.keepClear(at, radius + 0.5);
  }

  private void starter(StarterHole starter) {
    Vec2 at = frame.point(starter.at());
    items.add(
        new Item.Circle(Layer.STARTER_HOLES, at, starter.diameterMm() / 2, Pen.OUTLINE, Ink.NONE));
    items.add(new Item.Circle(Layer.STARTER_HOLES, at, PUNCH_MM, Pen.NONE, Ink.BLACK));
    cross(Layer.STARTER_HOLES, at, starter.diameterMm() / 2 + 1.5);
    placer.keepClear(at, starter.diameterMm() / 2 + 0.5);
  }

  private void hole(PlacedHole hole) {
    Vec2 at = frame.point(hole.at());
    double radius = hole.diameterMm() / 2;
    items.add(new Item.Circle(Layer.HOLES, at, radius, Pen.OUTLINE, Ink.NONE));
    if (hole.drillsMm().size() > 1) {
      items.add(new Item.Circle(Layer.HOLES, at, hole.drillsMm().get(0) / 2, Pen.FINE, Ink.NONE));
    }
    items.add(new Item.Circle(Layer.HOLES, at, PUNCH_MM, Pen.NONE, Ink.BLACK));
    cross(Layer.HOLES, at, radius + CROSS_PAST_MM);
    placer.keepClear(at, radius + 1.0);
    if (frame.face() == Face.TOPSIDE) {
      ring(Layer.HOLES, at, hole.bolt().seatRadiusMm(), Pen.THIN);
      ring(Layer.HOLES, at, layout.job().tools().reachRadiusMm(), Pen.HIDDEN);
    }
  }

  private void ring(Layer layer, Vec2 at, double radius, Pen pen) {
    items.add(new Item.Circle(layer, at, radius, pen, Ink.NONE));
    placer.avoid(Contour.circle(at, radius).flattened(0.05), true, 1.0);
  }

  private void cross(Layer layer, Vec2 at, double reach) {
    for (Vec2 arm : List.of(new Vec2(reach, 0), new Vec2(0, reach))) {
      Vec2 from = at.minus(arm);
      Vec2 to = at.plus(arm);
      items.add(new Item.Line(layer, from, to, Pen.FINE));
      placer.keepClear(List.of(from, to), false);
    }
  }
}
