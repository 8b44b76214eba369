package dev.towerscribe.sheet.tower;

import dev.towerscribe.drawing.Ink;
import dev.towerscribe.drawing.Item;
import dev.towerscribe.drawing.LabelCandidates;
import dev.towerscribe.drawing.LabelPlacer.Candidate;
import dev.towerscribe.drawing.LabelPlacer.Further;
import dev.towerscribe.drawing.Layer;
import dev.towerscribe.drawing.LayerPen;
import dev.towerscribe.drawing.Pen;
import dev.towerscribe.drawing.Proof;
import dev.towerscribe.drawing.TextBlock;
import dev.towerscribe.geometry.Box;
import dev.towerscribe.geometry.Contour;
import dev.towerscribe.geometry.Edge.Arc;
import dev.towerscribe.geometry.Region;
import dev.towerscribe.geometry.Vec2;
import dev.towerscribe.layout.Margins;
import dev.towerscribe.layout.Notch;
import dev.towerscribe.layout.PlacedHole;
import dev.towerscribe.layout.SideLayout;
import dev.towerscribe.model.Bracket;
import dev.towerscribe.model.Face;
import dev.towerscribe.quantity.Angle;
import dev.towerscribe.quantity.LengthUnit;
import dev.towerscribe.quantity.Lengths;
import dev.towerscribe.quantity.Lengths.Fineness;
import java.util.ArrayList;
import java.util.List;
import java.util.Optional;

/**
 * What is taken from a bracket, at full scale from above. A bracket is flat and lies over the
 * tower, and the socket comes down along the plate's normal, so a domed top flattens nothing here.
 *
 * @param layout the tower
 * @param notch what is taken
 * @param frame plan to page
 * @param canvas what is drawn on
 * @param lengths how lengths are written
 */
record NotchDrawing(
    SideLayout layout, Notch notch, SheetFrame frame, SheetCanvas canvas, Lengths lengths) {
  private static final double CROSS_PAST_MM = 4.0;
  private static final Angle HATCH = Angle.ofDegrees(45);
  private static final double HATCH_SPACING_MM = 2.0;

  private static final double ARROW_MM = 3.5;

  /** Half an arrowhead's width over its length. */
  private static final double ARROW_SLOPE = 0.2;

  /** Places up to this cost are tried before any farther off is thought of. */
  private static final double NEAR_COST = LabelCandidates.ANYWHERE_COST + 8;

  /** Far more than rounding, far less than any cut: where an edge lies on the bracket's own. */
  private static final double ON_EDGE_MM = 1e-3;

  NotchDrawing(SideLayout layout, Notch notch, Vec2 origin, Box window, LengthUnit units) {
    this(layout, notch, frame(layout, origin), new SheetCanvas(window), Lengths.in(units));
  }

  private static SheetFrame frame(SideLayout layout, Vec2 origin) {
    return new SheetFrame(layout.side(), Face.TOPSIDE, Optional.empty(), origin);
  }

  private static List<PlacedHole> bolts(SideLayout layout, Notch notch) {
    return layout.holes().stream().filter(h -> notch.bolts().contains(h.name())).toList();
  }

  /** What must show, with the origin at (0, 0). */
  static Box essentials(SideLayout layout, Notch notch) {
    SheetFrame frame = frame(layout, Vec2.ZERO);
    Box box = frame.contour(notch.bracket().outline()).bounds();
    double reach = layout.job().tools().reachRadiusMm();
    for (PlacedHole bolt : bolts(layout, notch)) {
      box = box.union(Box.around(frame.point(bolt.at()), reach + CROSS_PAST_MM));
    }
    return box;
  }

  /** Where the fore-aft line of the sheet runs: through the first bolt. */
  static double lineX(SideLayout layout, Notch notch) {
    return bolts(layout, notch).stream()
        .findFirst()
        .map(b -> frame(layout, Vec2.ZERO).point(b.at()).x())
        .orElseGet(() -> essentials(layout, notch).centre().x());
  }

  FullScaleSheet.Painted painted(List<FullScaleSheet.Join> joins) {
    double reach = layout.job().tools().reachRadiusMm();
    Region removed = frame.region(notch.removed());
    canvas.on(Layer.WASTE).hatch(removed, Region.EMPTY, HATCH, HATCH_SPACING_MM, Pen.HATCH);
    Contour outline = frame.contour(notch.bracket().outline());
    canvas
        .on(Layer.BRACKETS)
        .out()
        .add(new Item.Figure(Layer.BRACKETS, List.of(outline), Pen.OUTLINE, Ink.NONE));
    canvas.placer().avoid(outline.flattened(0.05), true, 4.0);
    cutLine(removed, outline);
    canvas.bar(removed);
    canvas.foreAft(frame.origin().x() + lineX(layout, notch), 1.0);
    List<PlacedHole> bolts = bolts(layout, notch);
    for (PlacedHole bolt : bolts) {
      ring(Layer.HOLES, frame.point(bolt.at()), reach, Pen.HIDDEN);
    }
    for (Bracket.Fastener fastener : notch.bracket().fasteners()) {
      Vec2 at = frame.point(fastener.at());
      ring(Layer.LANDMARKS, at, fastener.diameterMm() / 2, Pen.OUTLINE);
      canvas.placer().keepClear(at, fastener.diameterMm() / 2);
    }
    notch.narrowest().ifPresent(s -> narrowest(frame.point(s.start()), frame.point(s.end())));
    canvas.joins(joins, frame.origin());
    words(bolts, reach, removed, outline);
    return canvas.painted(proofs(bolts, reach));
  }

  /** Thick where metal is cut; where the notch ends at the bracket's edge nothing is. */
  private void cutLine(Region removed, Contour outline) {
    LayerPen pen = canvas.on(Layer.NOTCH);
    removed.contours().stream()
        .flatMap(c -> c.edges().stream())
        .filter(edge -> outline.distanceTo(edge.at(0.5)) > ON_EDGE_MM)
        .forEach(
            edge -> {
              if (edge instanceof Arc arc && arc.isFullCircle()) {
                pen.circle(arc.centre(), arc.radius(), Pen.FINAL_CUT);
              } else if (edge instanceof Arc arc) {
                pen.out().add(new Item.ArcLine(Layer.NOTCH, arc, Pen.FINAL_CUT));
              } else {
                pen.line(edge.start(), edge.end(), Pen.FINAL_CUT);
              }
            });
  }

  private void ring(Layer layer, Vec2 at, double radius, Pen pen) {
    canvas.ring(layer, at, radius, pen, 0.8);
    canvas.cross(layer, at, radius + CROSS_PAST_MM, Pen.FINE);
  }

  /** Arrows from edge to edge of the metal where least of it is left. */
  private void narrowest(Vec2 from, Vec2 to) {
    LayerPen pen = canvas.on(Layer.BRACKETS);
    pen.line(from, to, Pen.THIN);
    canvas.placer().keepClear(from, to);
    double length = Math.min(ARROW_MM, from.distanceTo(to) / 2);
    for (Vec2[] end : new Vec2[][] {{from, to}, {to, from}}) {
      Vec2 way = end[1].minus(end[0]).unit().times(length);
      Vec2 aside = way.quarterTurn().times(ARROW_SLOPE);
      Vec2 back = end[0].plus(way);
      pen.polygon(List.of(end[0], back.plus(aside), back.minus(aside)), Pen.NONE, Ink.BLACK);
    }
  }

  private void words(List<PlacedHole> bolts, double reach, Region removed, Contour outline) {
    Vec2 middle = outline.bounds().centre();
    for (PlacedHole bolt : bolts) {
      Vec2 at = frame.point(bolt.at());
      TextBlock block =
          TextBlock.of(6, bolt.name())
              .then(3.5, "socket R " + lengths.withMm(reach, Fineness.PLACE));
      place(LabelCandidates.around(block, at, reach, at.minus(middle)), block, at, bolt.name());
    }
    TextBlock cut = TextBlock.of(3.5, "CUT TO THE THICK LINE", "remove the hatched metal");
    Vec2 corner = removed.contours().get(0).flattened(0.05).get(0);
    List<Vec2> ends = new ArrayList<>(SheetCanvas.along(removed, 8));
    ends.removeIf(p -> !canvas.window().contains(p));
    ends.add(corner);
    anywhere(cut, corner, ends, "cut");
    TextBlock left =
        TextBlock.of(
            3.5,
            "least metal left across: " + lengths.withMm(notch.widthLeftMm(), Fineness.PLACE),
            "may not be less than "
                + lengths.withMm(Margins.leastWidthMm(notch.bracket()), Fineness.PLACE));
    Vec2 narrowest =
        notch
            .narrowest()
            .map(s -> frame.point(s.start()).toward(frame.point(s.end()), 0.5))
            .orElse(middle);
    anywhere(left, narrowest, List.of(narrowest), "width left");
    for (Bracket.Fastener fastener : notch.bracket().fasteners()) {
      Vec2 at = frame.point(fastener.at());
      TextBlock block = TextBlock.of(3.5, "match: bracket bolt");
      double radius = fastener.diameterMm() / 2;
      place(LabelCandidates.around(block, at, radius, Vec2.ZERO), block, at, "bracket bolt");
    }
    TextBlock edge = TextBlock.of(3.5, "match: bracket's edge");
    Vec2 onEdge = outline.edges().get(0).at(0.5);
    place(LabelCandidates.along(edge, outline, true, 0.9, 3, 6), edge, onEdge, "bracket's edge");
    double x = frame.origin().x() + lineX(layout, notch);
    List<Vec2> line =
        List.of(new Vec2(x, canvas.window().minY()), new Vec2(x, canvas.window().maxY()));
    TextBlock parallel = TextBlock.of(3.5, "parallel to the", "car's centre line");
    canvas.placer().place(LabelCandidates.alongLine(parallel, line, false));
  }

  private void place(List<Candidate> first, TextBlock block, Vec2 pointer, String what) {
    place(first, LabelCandidates.ANYWHERE_COST, block, pointer, List.of(pointer), what);
  }

  /** A label with a leader to one of several points: those near by are tried first. */
  private void anywhere(TextBlock block, Vec2 pointer, List<Vec2> ends, String what) {
    place(canvas.anywhere(block, ends, NEAR_COST), NEAR_COST, block, pointer, ends, what);
  }

  private void place(
      List<Candidate> first,
      double furtherFrom,
      TextBlock block,
      Vec2 pointer,
      List<Vec2> ends,
      String what) {
    if (canvas.window().contains(pointer)) {
      var further = new Further(furtherFrom, dearest -> canvas.anywhere(block, ends, dearest));
      canvas.must(what, first, further);
    }
  }

  /** Calculated apart from the frame. */
  private List<Proof> proofs(List<PlacedHole> bolts, double reach) {
    TowerProofs proofs =
        new TowerProofs(
            layout.side(),
            Face.TOPSIDE,
            Optional.empty(),
            frame.origin(),
            canvas.window(),
            new ArrayList<>());
    bolts.forEach(bolt -> proofs.circle("socket " + bolt.name(), bolt.at(), reach));
    int number = 1;
    for (Bracket.Fastener fastener : notch.bracket().fasteners()) {
      proofs.circle("bracket bolt " + number++, fastener.at(), fastener.diameterMm() / 2);
    }
    proofs.round("notch", notch.removed());
    return proofs.proofs();
  }
}
