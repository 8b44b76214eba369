package dev.towerscribe.sheet.report;

import dev.towerscribe.drawing.Align;
import dev.towerscribe.drawing.Ink;
import dev.towerscribe.drawing.Item;
import dev.towerscribe.drawing.LabelCandidates;
import dev.towerscribe.drawing.LabelPlacer;
import dev.towerscribe.drawing.LabelPlacer.Further;
import dev.towerscribe.drawing.Layer;
import dev.towerscribe.drawing.LayerPen;
import dev.towerscribe.drawing.Lettering;
import dev.towerscribe.drawing.Pen;
import dev.towerscribe.drawing.TextBlock;
import dev.towerscribe.finding.Finding;
import dev.towerscribe.finding.Severity;
import dev.towerscribe.finding.Spot;
import dev.towerscribe.geometry.Box;
import dev.towerscribe.geometry.Contour;
import dev.towerscribe.geometry.Region;
import dev.towerscribe.geometry.Vec2;
import dev.towerscribe.layout.Notch;
import dev.towerscribe.layout.PlacedHole;
import dev.towerscribe.layout.SideLayout;
import dev.towerscribe.model.Bracket;
import dev.towerscribe.model.Face;
import dev.towerscribe.model.KeepOut;
import dev.towerscribe.model.Landmark;
import dev.towerscribe.model.Plate;
import dev.towerscribe.model.Tower;
import dev.towerscribe.quantity.Angle;
import dev.towerscribe.quantity.Lengths;
import dev.towerscribe.quantity.Numbers;
import dev.towerscribe.report.WayOut;
import dev.towerscribe.sheet.text.Fragment;
import dev.towerscribe.sheet.text.TextStyle;
import dev.towerscribe.sheet.tower.SheetFrame;
import java.util.ArrayList;
import java.util.HashSet;
import java.util.List;
import java.util.Optional;
import java.util.Set;
import java.util.stream.Stream;

/**
 * A tower from above, forward up the page, never at full scale: what is there, what is planned, and
 * each stop at its place with its distance, its limit and an arrow the way that clears it. Across
 * it stands that it is not for cutting.
 */
final class OverviewPicture implements Fragment {
  static final String WARNING = "NOT FOR CUTTING";

  /** How many times smaller than life it is at least: far from full scale, whatever the paper. */
  private static final double LEAST_TIMES = 1.5;

  private static final double BAR = 9.0;
  private static final double BAR_CAP = 5.0;
  private static final double WORDS = TextStyle.SMALL;
  private static final double HEAD = 11.0;
  private static final double AIR = 6.0;

  private static final double STRIPE_EVERY = 12.0;
  private static final double STRIPE_WIDE = 2.0;

  private static final double NUMBER = 3.2;

  /** How far the frame of a stop's words stands off the paper cleared for them. */
  private static final double FRAME = 0.15;

  private static final double NAME = 3.0;
  private static final double SAG_MM = 0.02;

  /** Length of the arrow that shows which way, whatever the amount. */
  private static final double ARROW = 11.0;

  private static final double ARROW_HALF = 1.2;
  private static final double ARROW_HEAD = 4.0;
  private static final double ARROW_HEAD_HALF = 2.4;

  /** How far an arrow stands beside a distance that it would lie upon. */
  private static final double BESIDE = 3.2;

  private static final double DIMENSION_HEAD = 2.2;

  /** What a name that may be left out is worth, and how much a label's crossing a line costs. */
  private static final double WORTH = 25;

  private static final double CROSSING = 0.8;

  private final SideLayout layout;
  private final Lengths lengths;
  private final List<Finding> stops;
  private final double width;
  private final double height;
  private final Box plan;
  private final double times;

  /**
   * A picture.
   *
   * @param layout the tower
   * @param stops its stops in the order of their numbers
   * @param lengths the unit of figures
   * @param widthMm its width
   * @param heightMm its height
   */
  OverviewPicture(
      SideLayout layout, List<Finding> stops, Lengths lengths, double widthMm, double heightMm) {
    this.layout = layout;
    this.stops = List.copyOf(stops);
    this.lengths = lengths;
    width = widthMm;
    height = heightMm;
    plan = extent();
    double fits = Math.max(plan.height() / (width - 2 * AIR), plan.width() / roomMm());
    times = Math.max(LEAST_TIMES, Math.ceil(10 * fits) / 10);
  }

  /** All that is drawn, plan. */
  private Box extent() {
    Tower tower = layout.job().tower();
    Stream<Contour> outlines =
        Stream.of(
                Stream.of(tower.mark(), tower.opening()),
                layout.plateOutline().contours().stream(),
                layout.sweep().region().contours().stream(),
                tower.boltingFace().stream(),
                tower.wall().stream(),
                tower.lip().map(lip -> lip.flat()).stream(),
                tower.keepOuts().stream().map(KeepOut::outline),
                tower.brackets().stream().map(Bracket::outline),
                tower.straightedges().stream()
                    .flatMap(s -> Stream.of(s.from(), s.to()))
                    .map(end -> Contour.circle(end, 1)),
                tower.landmarks().stream().map(l -> Contour.circle(l.at(), l.diameterMm() / 2)),
                layout.holes().stream().map(h -> Contour.circle(h.at(), h.bolt().seatRadiusMm())))
            .flatMap(s -> s);
    return outlines.map(Contour::bounds).reduce(Box::union).orElseThrow();
  }

  @Override
  public double heightMm() {
    return height;
  }

  private List<String> caption() {
    String words =
        "Seen from above, forward up the page. About 1 : %s; NOT TO SCALE FOR WORK: do not mark,"
            + " drill or cut from it. Lengths in %s. Heavy line: final cut. Long dashes: rough cut."
            + " Short dashes: the plate, and circles of washers. White arrows: which way the plate"
            + " (or what is named) must go, not how far; small triangles: cautions.";
    String unit = lengths.metric() ? "mm" : "inches";
    return TextStyle.wrap(words.formatted(Numbers.plain(times, 1), unit), WORDS, width);
  }

  private double footMm() {
    return caption().size() * TextStyle.lineMm(WORDS) + 1.0;
  }

  private double roomMm() {
    return height - BAR - HEAD - footMm() - 2 * AIR;
  }

  @Override
  public void draw(double leftMm, double topMm, List<Item> out) {
    double low = topMm - height + footMm();
    Box frame = new Box(leftMm, low, leftMm + width, topMm);
    Box room = new Box(leftMm, low, leftMm + width, topMm - BAR - HEAD);
    new Drawn(frame, room, out).all();
    double y = low - 1.0;
    TextStyle.lines(LayerPen.notes(out), leftMm, y, WORDS, caption());
  }

  /** The picture in its place on the page. */
  private final class Drawn {
    private final Box frame;
    private final Box room;
    private final List<Item> out;
    private final LayerPen notes;
    private final LabelPlacer placer;
    private final Set<List<Vec2>> arrows = new HashSet<>();

    Drawn(Box frame, Box room, List<Item> out) {
      this.frame = frame;
      this.room = room;
      this.out = out;
      notes = LayerPen.notes(out);
      placer = new LabelPlacer(room.grown(-TextBlock.CLEARED_MM - Pen.OUTLINE.widthMm()));
    }

    void all() {
      ground();
      head();
      tower();
      layout.findings().stream()
          .filter(f -> f.severity() == Severity.CAUTION)
          .flatMap(f -> f.spot().stream())
          .forEach(spot -> triangle(at(spot.from().toward(spot.to(), 0.5))));
      for (Finding stop : stops) {
        stop.spot().ifPresent(this::distance);
      }
      layout.holes().forEach(h -> must(h.name(), NAME, at(h.at()), page(h.diameterMm() / 2)));
      for (int i = 0; i < stops.size(); i++) {
        if (stops.get(i).spot().isPresent()) {
          label(i + 1, stops.get(i), stops.get(i).spot().get());
        }
      }
      names();
      out.addAll(placer.items());
    }

    private double page(double planMm) {
      return planMm / times;
    }

    private Vec2 way(Vec2 v) {
      return new Vec2(SheetFrame.inboardSign(layout.side(), Face.TOPSIDE) * v.y(), v.x());
    }

    private Vec2 at(Vec2 p) {
      return room.centre().plus(way(p.minus(plan.centre())).times(1 / times));
    }

    /** Pale stripes and the warning across, under everything. */
    private void ground() {
      Region inside = Region.inside(Contour.rectangle(frame));
      double reach = frame.width() + frame.height();
      Vec2 up = frame.centre();
      Vec2 along = new Vec2(frame.width(), frame.height() - BAR).unit();
      Vec2 across = along.quarterTurn();
      double cap = Lettering.capHeightToFit(WARNING, 0.8 * diagonal(), 30);
      for (double off = cap; off < reach; off += STRIPE_EVERY) {
        for (int sign : new int[] {1, -1}) {
          Vec2 from = up.plus(across.times(sign * off)).minus(along.times(reach));
          Vec2 end = from.plus(along.times(2 * reach));
          Vec2 wide = across.times(sign * STRIPE_WIDE);
          Region stripe =
              Region.inside(Contour.polygon(List.of(from, end, end.plus(wide), from.plus(wide))));
          for (Contour c : stripe.intersection(inside).contours()) {
            notes.polygon(c.corners(), Pen.NONE, Ink.PALE);
          }
        }
      }
      out.add(
          new Item.Text(
              Layer.NOTES,
              up.minus(across.times(cap / 2)),
              cap,
              Align.MIDDLE,
              along.direction(),
              WARNING,
              Ink.PALE));
    }

    private double diagonal() {
      return Math.hypot(frame.width(), frame.height() - BAR);
    }

    private void head() {
      notes.frame(frame, Pen.OUTLINE);
      Box bar = new Box(frame.minX(), frame.maxY() - BAR, frame.maxX(), frame.maxY());
      notes.area(bar, Ink.BLACK);
      String words = WARNING + " \u2022 NOT TO SCALE";
      double cap = Lettering.capHeightToFit(words, frame.width() - 6, BAR_CAP);
      double base = bar.centre().y() - cap / 2;
      notes.text(frame.centre().x(), base, cap, Align.MIDDLE, words, Ink.WHITE);
      double y = bar.minY() - HEAD / 2;
      Vec2 tip = new Vec2(frame.centre().x() + 16, bar.minY() - 1.5);
      notes.text(frame.centre().x(), y - WORDS / 2, WORDS, Align.MIDDLE, "FORWARD");
      notes.arrow(tip.minus(new Vec2(0, 8)), tip, 3, 1.1, Pen.OUTLINE);
      boolean inboardRight = SheetFrame.inboardSign(layout.side(), Face.TOPSIDE) > 0;
      aside(inboardRight ? "OUTBOARD" : "INBOARD", frame.minX() + 2, 1, y);
      aside(inboardRight ? "INBOARD" : "OUTBOARD", frame.maxX() - 2, -1, y);
    }

    /** A word at one end of the head with an arrow to that end. */
    private void aside(String word, double x, int inward, double y) {
      notes.arrow(new Vec2(x + inward * 10, y), new Vec2(x, y), 3, 1.1, Pen.OUTLINE);
      Align align = inward > 0 ? Align.START : Align.END;
      notes.text(x + inward * 12, y - WORDS / 2, WORDS, align, word);
    }

    private void tower() {
      Tower tower = layout.job().tower();
      tower.wall().ifPresent(c -> outline(c, Pen.OUTLINE));
      tower.boltingFace().ifPresent(c -> outline(c, Pen.THIN));
      tower.lip().ifPresent(lip -> outline(lip.flat(), Pen.FINE));
      outline(layout.plateOutline(), Pen.HIDDEN);
      outline(tower.mark(), Pen.FINE);
      outline(tower.opening(), Pen.THIN);
      outline(layout.roughCut(), Pen.ROUGH_CUT);
      outline(layout.finalCut(), Pen.FINAL_CUT);
      outline(layout.sweep().region(), Pen.FINE);
      tower.brackets().forEach(this::bracket);
      layout.notches().forEach(this::notch);
      tower.keepOuts().forEach(this::keepOut);
      tower.landmarks().forEach(this::landmark);
      tower.straightedges().forEach(s -> notes.line(at(s.from()), at(s.to()), Pen.CENTRE));
      Plate.Slot slot = layout.job().plate().slot();
      Vec2 from = at(layout.job().bearing(slot.fromMm()));
      Vec2 to = at(layout.job().bearing(slot.toMm()));
      if (from.distanceTo(to) > 0) {
        notes.line(from, to, Pen.CENTRE);
      }
      notes.circle(at(layout.bearing()), 1.4, Pen.OUTLINE);
      notes.dot(at(layout.bearing()), 0.5);
      notes.cross(at(Vec2.ZERO), 3, Pen.FINE);
      layout.holes().forEach(this::hole);
    }

    private void outline(Contour plan, Pen pen) {
      outline(Region.inside(plan), pen);
    }

    private void outline(Region plan, Pen pen) {
      for (Contour contour : plan.contours()) {
        contour
            .asCircle()
            .ifPresentOrElse(
                c -> notes.circle(at(c.centre()), page(c.radius()), pen),
                () -> notes.polygon(followed(contour), pen, Ink.NONE));
        placer.avoid(followed(contour), true, CROSSING);
      }
    }

    private List<Vec2> followed(Contour contour) {
      return contour.flattened(SAG_MM * times).stream().map(this::at).toList();
    }

    private void bracket(Bracket bracket) {
      outline(bracket.outline(), Pen.THIN);
      for (Bracket.Fastener f : bracket.fasteners()) {
        notes.circle(at(f.at()), page(f.diameterMm() / 2), Pen.THIN);
      }
    }

    private void notch(Notch notch) {
      for (Contour contour : notch.removed().contours()) {
        Region page = Region.inside(Contour.polygon(followed(contour)));
        notes.hatch(page, Region.EMPTY, Angle.ofDegrees(30), 1.2, Pen.FINE);
      }
      outline(notch.removed(), Pen.OUTLINE);
    }

    private void keepOut(KeepOut keepOut) {
      Region page = Region.inside(Contour.polygon(followed(keepOut.outline())));
      notes.hatch(page, Region.EMPTY, Angle.ofDegrees(135), 1.0, Pen.FINE);
      outline(keepOut.outline(), Pen.THIN);
    }

    private void landmark(Landmark landmark) {
      outline(Contour.circle(landmark.at(), landmark.diameterMm() / 2), Pen.THIN);
    }

    private void hole(PlacedHole hole) {
      Vec2 centre = at(hole.at());
      notes.circle(centre, page(hole.diameterMm() / 2), Pen.OUTLINE);
      notes.circle(centre, page(hole.bolt().seatRadiusMm()), Pen.HIDDEN);
      notes.dot(centre, 0.4);
      placer.keepClear(centre, page(hole.diameterMm() / 2) + 0.3);
    }

    private void triangle(Vec2 centre) {
      List<Vec2> corners =
          Stream.of(90.0, 210.0, 330.0)
              .map(d -> centre.plus(Vec2.polar(1.4, Angle.ofDegrees(d))))
              .toList();
      notes.polygon(corners, Pen.THIN, Ink.WHITE);
      placer.keepClear(centre, 1.5);
    }

    /** The distance as a dimension line, and the arrow the way that clears it. */
    private void distance(Spot spot) {
      Vec2 from = at(spot.from());
      Vec2 to = at(spot.to());
      double long_ = from.distanceTo(to);
      if (long_ > 0) {
        Vec2 unit = to.minus(from).unit();
        boolean inside = long_ > 3 * DIMENSION_HEAD;
        Vec2 out = unit.times(inside ? 0 : 2 * DIMENSION_HEAD);
        notes.line(from.minus(out), to.plus(out), Pen.OUTLINE);
        head(from, inside ? unit.times(-1) : unit);
        head(to, inside ? unit : unit.times(-1));
        placer.keepClear(from.minus(out), to.plus(out));
      } else {
        notes.circle(from, 1.6, Pen.OUTLINE);
        placer.keepClear(from, 1.8);
      }
      spot.move().filter(m -> m.norm() > 0).ifPresent(m -> arrow(from, to, way(m).unit()));
    }

    private void head(Vec2 tip, Vec2 pointing) {
      Vec2 back = tip.minus(pointing.times(DIMENSION_HEAD));
      Vec2 half = pointing.quarterTurn().times(DIMENSION_HEAD / 5);
      notes.polygon(List.of(tip, back.plus(half), back.minus(half)), Pen.NONE, Ink.BLACK);
    }

    /** A white arrow from what moves; beside the distance where it would lie upon it. */
    private void arrow(Vec2 from, Vec2 to, Vec2 way) {
      boolean upon = from.distanceTo(to) > 0 && to.minus(from).unit().dot(way) > 0.8;
      Vec2 side = way.quarterTurn();
      Vec2 start = from.plus(upon ? side.times(BESIDE) : way.times(0.8));
      // Near the edge it stands farther back: which way counts, not where from.
      for (int i = 0;
          i < ARROW && !room.contains(Box.around(start.plus(way.times(ARROW)), 3));
          i++) {
        start = start.minus(way);
      }
      Vec2 tip = start.plus(way.times(ARROW));
      Vec2 neck = tip.minus(way.times(ARROW_HEAD));
      Vec2 half = side.times(ARROW_HALF);
      Vec2 wide = side.times(ARROW_HEAD_HALF);
      List<Vec2> corners =
          List.of(
              start.plus(half),
              start.minus(half),
              neck.minus(half),
              neck.minus(wide),
              tip,
              neck.plus(wide),
              neck.plus(half));
      if (arrows.add(corners)) {
        notes.polygon(corners, Pen.OUTLINE, Ink.WHITE);
        placer.keepClear(corners, true);
      }
    }

    private void must(String words, double cap, Vec2 centre, double radius) {
      TextBlock block = TextBlock.of(cap, words);
      placer.place(LabelCandidates.around(block, centre, radius, Vec2.ZERO));
    }

    /** Number, figure, limit and way out; the number alone where that finds no room. */
    private void label(int number, Finding stop, Spot spot) {
      Vec2 middle = at(spot.from().toward(spot.to(), 0.5));
      String figures =
          "%s, needs %s".formatted(lengths.figure(stop.figure()), lengths.figure(stop.limit()));
      TextBlock whole =
          TextBlock.of(NUMBER, number + ":  " + figures).then(WORDS, WayOut.brief(spot, lengths));
      if (!placed(whole, middle, 3 * WORTH)) {
        placed(TextBlock.of(NUMBER, Integer.toString(number)), middle, Double.POSITIVE_INFINITY);
      }
    }

    private boolean placed(TextBlock block, Vec2 middle, double worth) {
      Further anywhere =
          new Further(
              LabelCandidates.ANYWHERE_COST,
              dearest -> LabelCandidates.anywhere(block, room, middle, dearest));
      return placer
          .place(
              LabelCandidates.around(block, middle, 2, Vec2.ZERO).stream()
                  .map(c -> c.pointingTo(Optional.of(middle)))
                  .toList(),
              worth,
              anywhere)
          .map(
              box -> {
                notes.polygon(
                    box.grown(TextBlock.CLEARED_MM + FRAME).corners(), Pen.THIN, Ink.WHITE);
                return true;
              })
          .orElse(false);
    }

    /** Names of what is there, where there is room for them. */
    private void names() {
      Tower tower = layout.job().tower();
      name("bearing", Contour.circle(layout.bearing(), 1.4 * times));
      tower.brackets().forEach(b -> name(b.name(), b.outline()));
      tower.landmarks().forEach(l -> name(l.name(), Contour.circle(l.at(), l.diameterMm() / 2)));
      tower.keepOuts().forEach(k -> name(k.name(), k.outline()));
      tower.wall().ifPresent(c -> along("wall", c));
      tower.boltingFace().ifPresent(c -> along("bolting face", c));
      layout.plateOutline().contours().forEach(c -> along("plate", c));
      along("mark", tower.mark());
      along("opening as found", tower.opening());
      tower.lip().ifPresent(lip -> along("lip", lip.flat()));
      layout.sweep().region().contours().forEach(c -> along("strut rod's sweep", c));
    }

    private void name(String words, Contour thing) {
      Box box = thing.bounds();
      Vec2 centre = at(box.centre());
      double radius = page(Math.min(box.width(), box.height()) / 2);
      TextBlock block = TextBlock.of(WORDS, words);
      placer.place(LabelCandidates.around(block, centre, radius, Vec2.ZERO), WORTH);
    }

    private void along(String words, Contour thing) {
      Contour page = Contour.polygon(followed(thing));
      TextBlock block = TextBlock.of(WORDS, words);
      List<LabelPlacer.Candidate> all = new ArrayList<>();
      all.addAll(LabelCandidates.along(block, page, true, 0.8));
      all.addAll(LabelCandidates.along(block, page, false, 0.8));
      placer.place(all, WORTH);
    }
  }
}
