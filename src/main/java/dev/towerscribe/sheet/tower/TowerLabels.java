package dev.towerscribe.sheet.tower;

import dev.towerscribe.drawing.LabelCandidates;
import dev.towerscribe.drawing.LabelPlacer;
import dev.towerscribe.drawing.LabelPlacer.Candidate;
import dev.towerscribe.drawing.LabelPlacer.Further;
import dev.towerscribe.drawing.TextBlock;
import dev.towerscribe.geometry.Box;
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
import dev.towerscribe.model.Lip;
import dev.towerscribe.model.Seat;
import dev.towerscribe.model.Straightedge;
import dev.towerscribe.model.Tower;
import dev.towerscribe.quantity.Lengths;
import dev.towerscribe.quantity.Lengths.Fineness;
import dev.towerscribe.quantity.Numbers;
import dev.towerscribe.quantity.Tolerances;
import java.util.ArrayList;
import java.util.List;
import java.util.Optional;
import java.util.stream.IntStream;
import java.util.stream.Stream;

/**
 * The words of an underside or topside sheet, the most needed placed first.
 *
 * @param layout the tower
 * @param frame plan to page
 * @param canvas where they are placed
 * @param lengths how lengths are written
 * @param predicted what a bay will read: one line in pieces, or nothing
 */
record TowerLabels(
    SideLayout layout,
    SheetFrame frame,
    SheetCanvas canvas,
    Lengths lengths,
    List<String> predicted) {
  private static final double NAME_CAP_MM = 6.0;
  private static final String FINAL_CUT = "FINAL CUT";
  private static final double CUT_CAP_MM = 4.5;
  private static final double NOTE_CAP_MM = 3.5;
  private static final double LEAST_CAP_MM = 2.5;
  private static final double NAME_WIDTH_MM = 62;

  /** A note on the whole sheet should cross no line at all where that can be had. */
  private static final double CLEAR_WORTH = 5;

  /** On a dome a round keep-out is not quite a circle any more. */
  private static final double NEARLY_ROUND_MM = 1.0;

  private static final double POINTS_EVERY_MM = 10;

  /** How much less the other side of a boundary is liked. */
  private static final double OTHER_SIDE_COST = 15;

  /** Less of a line than this need not be named on a tile. */
  private static final double LEAST_SEEN_MM = 30;

  private Box window() {
    return canvas.window();
  }

  private LabelPlacer placer() {
    return canvas.placer();
  }

  /** Places everything; what must not be missing and finds no room, the canvas tells. */
  void place(TowerDrawing drawing) {
    Tower tower = layout.job().tower();
    layout.holes().forEach(this::hole);
    cut(FINAL_CUT, layout.finalCut(), true);
    cut("ROUGH CUT", layout.roughCut(), false);
    tower.landmarks().forEach(this::landmark);
    tower.keepOuts().forEach(this::keepOut);
    waste();
    if (lipInTheWay(tower, frame.face())) {
      boundaryNote(layout.opening(), false, true, "opening as found");
    } else {
      boundaryNote(layout.opening(), false, true, "opening as found:", "fit this edge");
    }
    line(drawing.slotLine(), false, slotWords());
    foreAft();
    for (Straightedge edge : tower.straightedges()) {
      line(drawing.straightedge(edge), false, List.of("straightedge:", edge.name()));
    }
    starters();
    tower.lip().ifPresent(this::lip);
    boundaryNote(layout.mark(), true, false, "old mark");
    bracketsAndRings();
    String lies =
        layout.job().seating().seat() == Seat.ON_TOP ? "plate edge, on top" : "plate edge, below";
    boundaryNote(layout.plateOutline(), false, false, lies);
    tower
        .boltingFace()
        .ifPresent(c -> boundaryNote(Region.inside(c), false, true, "edge of sound metal"));
    tower.wall().ifPresent(c -> boundaryNote(Region.inside(c), false, true, "tower wall"));
    if (window().contains(frame.origin())) {
      TextBlock old = TextBlock.of(LEAST_CAP_MM, "old strut rod centre");
      canvas.soft(LabelCandidates.around(old, frame.origin(), 6.5, Vec2.ZERO));
      prediction();
    }
  }

  private void hole(PlacedHole hole) {
    Vec2 at = frame.point(hole.at());
    double radius = hole.diameterMm() / 2;
    if (!window().contains(Box.around(at, radius))) {
      return;
    }
    String drill = "drill " + lengths.withMm(hole.diameterMm(), Fineness.PLACE);
    TextBlock block = TextBlock.of(NAME_CAP_MM, hole.name()).then(NOTE_CAP_MM, drill);
    double reach = layout.job().tools().reachRadiusMm();
    double clear = frame.face() == Face.TOPSIDE ? Math.max(radius, reach) : radius;
    Vec2 outward = at.minus(frame.origin());
    List<Candidate> candidates = LabelCandidates.around(block, at, clear, outward);
    candidates.addAll(LabelCandidates.around(block, at, radius, outward));
    TextBlock small =
        TextBlock.of(NAME_CAP_MM, hole.name())
            .then(LEAST_CAP_MM, "drill " + lengths.with(hole.diameterMm(), Fineness.PLACE));
    if (!lengths.metric()) {
      small = small.then(LEAST_CAP_MM, lengths.other().with(hole.diameterMm(), Fineness.PLACE));
    }
    candidates.addAll(
        SheetCanvas.dearer(
            LabelCandidates.around(small, at, radius, outward), SheetCanvas.SMALLER_COST));
    canvas.must(hole.name(), candidates, List.of(block, small), edgePoints(at, radius));
  }

  private void keepOut(KeepOut keepOut) {
    Region region = frame.region(TowerDrawing.barred(keepOut));
    Box bounds = region.bounds();
    Vec2 at = bounds.centre();
    if (!window().contains(at)) {
      return;
    }
    Contour outer = region.contours().get(0);
    double reach = outer.flattened(0.05).stream().mapToDouble(at::distanceTo).max().orElse(0);
    List<Candidate> candidates = new ArrayList<>();
    TextBlock tall = TextBlock.wrapped(NOTE_CAP_MM, NAME_WIDTH_MM, "KEEP OUT:", keepOut.name());
    TextBlock wide = TextBlock.wrapped(NOTE_CAP_MM, NAME_WIDTH_MM, "KEEP OUT: " + keepOut.name());
    boolean isRound = Math.abs(bounds.width() - bounds.height()) < NEARLY_ROUND_MM;
    for (TextBlock block : List.of(wide, tall)) {
      candidates.addAll(
          isRound
              ? LabelCandidates.around(block, at, reach, Vec2.ZERO)
              : LabelCandidates.along(block, outer, true, 0.9, 2.5, 4.5, 7));
    }
    canvas.must(
        keepOut.name(), candidates, List.of(tall, tall.atMost(LEAST_CAP_MM)), points(region));
  }

  private void landmark(Landmark landmark) {
    TextBlock block = TextBlock.wrapped(NOTE_CAP_MM, NAME_WIDTH_MM, landmark.name());
    Vec2 at = frame.point(landmark.at());
    double radius = landmark.diameterMm() / 2 + 0.7;
    if (window().contains(Box.around(at, radius))) {
      canvas.must(
          block.lines().get(0).words(),
          LabelCandidates.around(block, at, radius, Vec2.ZERO),
          List.of(block, block.atMost(LEAST_CAP_MM)),
          edgePoints(at, radius));
    }
  }

  /** A cut's name with its radius from the strut rod centre, on one side of its line. */
  private void cut(String name, Region plan, boolean outside) {
    if (!plan.isEmpty()) {
      boundaryNote(plan, outside, true, name, radii(plan));
    }
  }

  /** Radius of a boundary from the original strut rod centre, or least and most. */
  String radii(Region plan) {
    if (plan.contours().size() == 1) {
      var circle = plan.contours().get(0).asCircle();
      if (circle.isPresent() && circle.get().centre().norm() <= Tolerances.SAME_POINT_MM) {
        return "R " + lengths.with(circle.get().radius(), Fineness.PLACE);
      }
    }
    double least =
        plan.contours().stream().mapToDouble(c -> c.distanceTo(Vec2.ZERO)).min().orElseThrow();
    double most =
        plan.contours().stream()
            .flatMap(c -> c.flattened(Tolerances.FLATTEN_MM).stream())
            .mapToDouble(Vec2::norm)
            .max()
            .orElseThrow();
    return "R " + lengths.range(least, most, Fineness.PLACE);
  }

  private void boundaryNote(Region plan, boolean outside, boolean needed, String... words) {
    if (plan.isEmpty()) {
      return;
    }
    TextBlock block = block(needed, words);
    Region region = frame.region(plan);
    List<Candidate> candidates =
        SheetCanvas.along(block, region, outside, 0.9, 2.5, 4.5, 7, 10, 14);
    Further across =
        new Further(
            OTHER_SIDE_COST + LabelCandidates.LEAST_ALONG_COST,
            dearest ->
                SheetCanvas.dearer(
                    SheetCanvas.along(block, region, !outside, 2.5, 7, 12), OTHER_SIDE_COST));
    List<Vec2> points = needed ? points(region) : List.of();
    if (needed && points.size() * POINTS_EVERY_MM >= LEAST_SEEN_MM) {
      canvas.must(words[0], candidates, across, List.of(block, block.atMost(LEAST_CAP_MM)), points);
    } else {
      placer().place(candidates, SheetCanvas.WORTH, across);
    }
  }

  /** The final cut's name is larger than any note. */
  private static TextBlock block(boolean needed, String... words) {
    if (!words[0].endsWith(" CUT")) {
      return TextBlock.of(needed ? NOTE_CAP_MM : 3.0, words);
    }
    double cap = words[0].equals(FINAL_CUT) ? CUT_CAP_MM : NOTE_CAP_MM;
    return TextBlock.of(cap, words[0]).then(NOTE_CAP_MM, words[1]);
  }

  /**
   * Whether paper laid on a face lies over a lip that stands out from it.
   *
   * @param tower the tower
   * @param face the face
   * @return true where the paper must be cut out before it lies flat
   */
  static boolean lipInTheWay(Tower tower, Face face) {
    return tower
        .lip()
        .filter(lip -> (lip.turned() == Lip.Turned.UP) == (face == Face.TOPSIDE))
        .isPresent();
  }

  private void lip(Lip lip) {
    boolean inTheWay = lipInTheWay(layout.job().tower(), frame.face());
    boundaryNote(
        Region.inside(lip.flat()),
        true,
        inTheWay,
        "lip: flat from here",
        inTheWay ? "cut the paper out inside" : "it stands the other way");
  }

  private void waste() {
    if (!layout.finalCut().isEmpty()) {
      TextBlock block = TextBlock.of(3.0, "waste: cut away");
      canvas.soft(
          SheetCanvas.along(block, frame.region(layout.opening()), true, 0.9, 2, 3.5, 5).stream()
              .map(c -> c.pointingTo(Optional.empty()))
              .toList());
    }
  }

  private List<String> slotWords() {
    double fromAcross = layout.job().mount().rotation().degrees();
    double fromLine = 90 - fromAcross;
    return List.of(
        "slot centre line",
        Numbers.fixed(fromLine, 1) + "\u00b0 from the car's centre line",
        Numbers.fixed(fromAcross, 1) + "\u00b0 from straight across");
  }

  private void line(List<Vec2> path, boolean upon, List<String> words) {
    List<Candidate> candidates = new ArrayList<>();
    TextBlock wide = TextBlock.of(NOTE_CAP_MM, words.toArray(String[]::new));
    TextBlock narrow = TextBlock.wrapped(3.0, 33, words.toArray(String[]::new));
    for (TextBlock block : List.of(wide, narrow)) {
      candidates.addAll(LabelCandidates.alongLine(block, path, upon));
    }
    List<Vec2> seen =
        LabelCandidates.even(path, false, POINTS_EVERY_MM).stream()
            .filter(window().grown(-2)::contains)
            .toList();
    if (seen.size() * POINTS_EVERY_MM < LEAST_SEEN_MM) {
      return;
    }
    // An upright note with a leader is easier to read than a steep one in many short lines.
    Further upright =
        new Further(
            LabelCandidates.ANYWHERE_COST,
            dearest -> {
              List<Vec2> some =
                  IntStream.iterate(0, i -> i < seen.size(), i -> i + 2)
                      .mapToObj(seen::get)
                      .toList();
              return canvas.anywhere(wide, some, dearest);
            });
    canvas.must(
        words.get(0), candidates, upright, List.of(narrow, narrow.atMost(LEAST_CAP_MM)), seen);
  }

  private void foreAft() {
    double x = frame.origin().x();
    if (x <= window().minX() || x >= window().maxX()) {
      return;
    }
    Vec2 low = new Vec2(x, window().minY());
    Vec2 high = new Vec2(x, window().maxY());
    Box mark = frame.region(layout.mark()).bounds();
    alongForeAft(
        TextBlock.of(NOTE_CAP_MM, "carry on with", "a straightedge"),
        new Vec2(x, Math.min(high.y(), Math.max(low.y(), mark.maxY()))),
        high,
        List.of(low.toward(high, 0.5), high));
    alongForeAft(
        TextBlock.of(NOTE_CAP_MM, "parallel to the", "car's centre line"),
        low,
        new Vec2(x, Math.min(high.y(), Math.max(low.y(), mark.minY()))),
        List.of(low, low.toward(high, 0.5)));
  }

  /** Best clear of the mark, else on half of the line. */
  private void alongForeAft(TextBlock block, Vec2 low, Vec2 high, List<Vec2> half) {
    for (List<Vec2> path : List.of(List.of(low, high), half)) {
      if (canvas.soft(LabelCandidates.alongLine(block, path, false))) {
        return;
      }
    }
  }

  private void starters() {
    for (int i = 0; i < layout.starters().size(); i++) {
      StarterHole starter = layout.starters().get(i);
      TextBlock block = TextBlock.of(LEAST_CAP_MM, "saw start");
      if (i == 0) {
        block = block.then(LEAST_CAP_MM, lengths.withMm(starter.diameterMm(), Fineness.PLACE));
      }
      Vec2 at = frame.point(starter.at());
      double radius = starter.diameterMm() / 2;
      if (window().contains(Box.around(at, radius))) {
        canvas.soft(LabelCandidates.around(block, at, radius, Vec2.ZERO));
      }
    }
  }

  private void bracketsAndRings() {
    if (frame.face() != Face.TOPSIDE) {
      return;
    }
    for (Bracket bracket : layout.job().tower().brackets()) {
      boundaryNote(Region.inside(bracket.outline()), true, false, "above: " + bracket.name());
    }
    for (PlacedHole hole : layout.holes()) {
      Vec2 at = frame.point(hole.at());
      if (window().contains(at)) {
        ring(at, hole.bolt().seatRadiusMm(), "nut or washer seat");
        ring(at, layout.job().tools().reachRadiusMm(), "socket's room");
        return;
      }
    }
  }

  private void ring(Vec2 at, double radius, String words) {
    TextBlock block = TextBlock.of(LEAST_CAP_MM, words);
    double clear = layout.job().tools().reachRadiusMm() + 2;
    Vec2 inward = at.minus(frame.origin()).times(-1);
    canvas.soft(
        LabelCandidates.around(block, at, clear, inward).stream()
            .map(c -> c.pointingTo(Optional.of(onRing(c.centre(), at, radius))))
            .toList());
  }

  private static Vec2 onRing(Vec2 label, Vec2 centre, double radius) {
    return centre.plus(label.minus(centre).unit().times(radius));
  }

  /** Last of all, where nothing else is: on white paper, if need be across a thin line. */
  private void prediction() {
    if (predicted.isEmpty()) {
      return;
    }
    // On one line, else on two, else caster, how near it is, camber and setting below one another,
    // else every piece.
    int count = predicted.size();
    int camber = count - 2;
    List<TextBlock> blocks =
        Stream.of(
                List.of(0, count),
                List.of(0, count / 2, count),
                List.of(0, 2, camber, count),
                List.of(0, 2, camber, camber + 1, count),
                IntStream.rangeClosed(0, count).boxed().toList())
            .map(
                ends ->
                    IntStream.range(1, ends.size())
                        .mapToObj(i -> predicted.subList(ends.get(i - 1), ends.get(i)))
                        .filter(line -> !line.isEmpty())
                        .map(line -> String.join(" ", line))
                        .toArray(String[]::new))
            .map(lines -> TextBlock.of(NOTE_CAP_MM, lines))
            .toList();
    for (double worth : new double[] {CLEAR_WORTH, SheetCanvas.WORTH}) {
      for (TextBlock block : blocks) {
        if (placer().place(LabelCandidates.freely(block, window()), worth).isPresent()) {
          return;
        }
      }
    }
  }

  private static List<Vec2> edgePoints(Vec2 centre, double radius) {
    return LabelCandidates.even(Contour.circle(centre, radius).flattened(0.05), true, radius);
  }

  private List<Vec2> points(Region region) {
    return SheetCanvas.along(region, POINTS_EVERY_MM).stream()
        .filter(window().grown(-2)::contains)
        .toList();
  }
}
