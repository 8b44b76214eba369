package dev.towerscribe.sheet.tower;

import dev.towerscribe.drawing.Align;
import dev.towerscribe.drawing.Ink;
import dev.towerscribe.drawing.Item;
import dev.towerscribe.drawing.Layer;
import dev.towerscribe.drawing.LayerPen;
import dev.towerscribe.drawing.Lettering;
import dev.towerscribe.drawing.Pen;
import dev.towerscribe.geometry.Box;
import dev.towerscribe.geometry.Contour;
import dev.towerscribe.geometry.Edge;
import dev.towerscribe.geometry.Region;
import dev.towerscribe.geometry.Vec2;
import dev.towerscribe.layout.PlacedHole;
import dev.towerscribe.layout.SideLayout;
import dev.towerscribe.model.Face;
import dev.towerscribe.quantity.Angle;
import dev.towerscribe.sheet.text.Fragment;
import dev.towerscribe.sheet.text.TextStyle;
import java.util.ArrayList;
import java.util.List;
import java.util.stream.IntStream;

/**
 * Which hole is which: the tower from its underside, forward up the page, small and not to scale.
 * Seen from below, the left tower's inboard side lies to the left.
 */
public final class KeyDiagram implements Fragment {
  private static final double NAME = 3.6;
  private static final double WORDS = TextStyle.SMALL;
  private static final double SAG_MM = 0.02;
  private static final double AIR = 0.8;

  /** Room for words and arrows over the tower, and for names beside it. */
  private static final double HEAD_MM = 2 * TextStyle.lineMm(WORDS) + 9.0;

  private static final double SIDE_MM = 6.0;
  private static final int RINGS = 10;
  private static final int TURNS = 24;

  /** Distance of points along an outline that stand for it. */
  private static final double CLOSE_MM = 0.5;

  /** Longest name that is written beside its hole; longer ones are replaced by row numbers. */
  private static final double LONGEST_NAME_MM = 12.0;

  /** Where names may stand, what is already there, and lines they had better keep clear of. */
  private record Places(Box room, List<Box> taken, List<Vec2> lines) {}

  /** Longest arrow of an error: short enough to stay beside its hole. */
  private static final double LONGEST_ARROW_MM = 9.0;

  /** Shorter arrows would be all head. */
  private static final double LEAST_ARROW_MM = 0.8;

  /** What errors may be drawn times their size. */
  private static final List<Integer> TIMES = List.of(50, 20, 10, 5, 2, 1);

  private static final List<String> FOOT =
      List.of(
          "NOT TO SCALE: do not mark from it.",
          "Seen from the underside. Dashed: the plate.",
          "Cross: the original strut rod centre.");

  private final SideLayout layout;
  private final List<Vec2> errors;
  private final int times;
  private final List<String> foot;
  private final double width;
  private final double height;
  private final double scale;
  private final Vec2 planCentre;

  /**
   * The tower with its holes' names.
   *
   * @param layout the tower
   * @param widthMm its width
   * @param heightMm its height
   */
  public KeyDiagram(SideLayout layout, double widthMm, double heightMm) {
    this(layout, List.of(), "", widthMm, heightMm);
  }

  /**
   * The same with an arrow from each hole's planned place to where it was drilled, errors many
   * times their size.
   *
   * @param layout the tower as planned
   * @param errors found less planned of each hole, plan; none for no arrows
   * @param what the errors are, to be read after "Arrows: "
   * @param widthMm its width
   * @param heightMm its height
   */
  public KeyDiagram(
      SideLayout layout, List<Vec2> errors, String what, double widthMm, double heightMm) {
    this.layout = layout;
    this.errors = List.copyOf(errors);
    double most = errors.stream().mapToDouble(Vec2::norm).max().orElse(0);
    times = TIMES.stream().filter(t -> t * most <= LONGEST_ARROW_MM).findFirst().orElse(0);
    foot = new ArrayList<>(FOOT);
    if (!errors.isEmpty()) {
      String words =
          times == 0
              ? "Errors are too large to draw."
              : "Arrows: " + what + ", drawn " + times + " TIMES full size.";
      foot.addAll(TextStyle.wrap(words, WORDS, widthMm));
    }
    this.width = widthMm;
    this.height = heightMm;
    Box all = layout.plateOutline().bounds();
    for (PlacedHole hole : layout.holes()) {
      all = all.union(Box.around(hole.at(), hole.diameterMm() / 2));
    }
    all = all.union(layout.opening().bounds());
    planCentre = all.centre();
    // Plan x runs up the page and plan y across it.
    scale =
        Math.min(
            (widthMm - 2 * SIDE_MM) / all.height(), (heightMm - HEAD_MM - footMm()) / all.width());
  }

  /**
   * What stands for each hole in the diagram: its name, or its row if names are long.
   *
   * @param holes in the order of their rows
   * @return one for each hole
   */
  public static List<String> keys(List<PlacedHole> holes) {
    boolean shortNames =
        holes.stream().allMatch(h -> Lettering.width(h.name(), NAME) <= LONGEST_NAME_MM);
    return IntStream.range(0, holes.size())
        .mapToObj(i -> shortNames ? holes.get(i).name() : Integer.toString(i + 1))
        .toList();
  }

  private double footMm() {
    return foot.size() * TextStyle.lineMm(WORDS) + 2.0;
  }

  @Override
  public double heightMm() {
    return height;
  }

  @Override
  public void draw(double leftMm, double topMm, List<Item> out) {
    LayerPen notes = LayerPen.notes(out);
    Vec2 middle = new Vec2(leftMm + width / 2, topMm - HEAD_MM - (height - HEAD_MM - footMm()) / 2);
    outline(layout.plateOutline(), middle, Pen.HIDDEN, out);
    outline(cut(), middle, Pen.OUTLINE, out);
    List<Box> taken = new ArrayList<>();
    Vec2 strutRod = onPage(Vec2.ZERO, middle);
    notes.cross(strutRod, 3, Pen.FINE);
    taken.add(Box.around(strutRod, 3));
    for (PlacedHole hole : layout.holes()) {
      Vec2 at = onPage(hole.at(), middle);
      double r = hole.diameterMm() / 2 * scale;
      new LayerPen(Layer.HOLES, out).circle(at, r, Pen.OUTLINE);
      taken.add(Box.around(at, r + AIR));
    }
    for (int i = 0; i < errors.size() && times > 0; i++) {
      error(layout.holes().get(i), errors.get(i), middle, taken, out);
    }
    Box room = new Box(leftMm, topMm - height + footMm(), leftMm + width, topMm - HEAD_MM + NAME);
    Places places = new Places(room, taken, lines(middle));
    List<String> keys = keys(layout.holes());
    for (int i = 0; i < keys.size(); i++) {
      name(keys.get(i), layout.holes().get(i), middle, places, out);
    }
    words(leftMm, topMm, out);
  }

  private Region cut() {
    return layout.finalCut().isEmpty() ? layout.opening() : layout.finalCut();
  }

  private Vec2 onPage(Vec2 plan, Vec2 middle) {
    return middle.plus(way(plan.minus(planCentre)).times(scale));
  }

  /** A plan vector's direction on the page, its length kept. */
  private Vec2 way(Vec2 plan) {
    return new Vec2(SheetFrame.inboardSign(layout.side(), Face.UNDERSIDE) * plan.y(), plan.x());
  }

  /** An arrow from where a hole was to be, many times as long as the error; names keep clear. */
  private void error(PlacedHole hole, Vec2 error, Vec2 middle, List<Box> taken, List<Item> out) {
    Vec2 from = onPage(hole.at(), middle);
    Vec2 arrow = way(error).times(times);
    if (arrow.norm() < LEAST_ARROW_MM) {
      return;
    }
    arrow(from, from.plus(arrow), LayerPen.notes(out));
    int boxes = (int) Math.ceil(arrow.norm());
    for (int i = 0; i <= boxes; i++) {
      taken.add(Box.around(from.plus(arrow.times((double) i / boxes)), AIR));
    }
  }

  private void outline(Region region, Vec2 middle, Pen pen, List<Item> out) {
    LayerPen notes = LayerPen.notes(out);
    for (Contour contour : region.contours()) {
      contour
          .asCircle()
          .ifPresentOrElse(
              c -> notes.circle(onPage(c.centre(), middle), c.radius() * scale, pen),
              () -> notes.polygon(followed(contour, middle), pen, Ink.NONE));
    }
  }

  private List<Vec2> followed(Contour contour, Vec2 middle) {
    return contour.flattened(SAG_MM / scale).stream().map(p -> onPage(p, middle)).toList();
  }

  /** Outside its hole, away from the strut rod if that place is free, else the nearest free one. */
  private void name(String name, PlacedHole hole, Vec2 middle, Places places, List<Item> out) {
    LayerPen notes = LayerPen.notes(out);
    Vec2 at = onPage(hole.at(), middle);
    Vec2 strutRod = onPage(Vec2.ZERO, middle);
    double wide = Lettering.width(name, NAME);
    double outward = at.distanceTo(strutRod) == 0 ? 0 : at.minus(strutRod).direction().degrees();
    double reach = hole.diameterMm() / 2 * scale + AIR;
    List<Box> free = new ArrayList<>();
    for (int ring = 0; ring < RINGS; ring++) {
      for (int turn = 0; turn < TURNS; turn++) {
        double degrees = outward + (turn % 2 == 0 ? 1 : -1) * 360.0 / TURNS * ((turn + 1) / 2);
        Box place = beside(at, reach + ring * NAME / 2, Angle.ofDegrees(degrees), wide);
        if (places.room().contains(place) && places.taken().stream().noneMatch(place::meets)) {
          free.add(place);
        }
      }
    }
    Box best =
        free.stream()
            .filter(place -> places.lines().stream().noneMatch(place::contains))
            .findFirst()
            .or(() -> free.stream().findFirst())
            .orElseThrow(
                () -> new IllegalArgumentException("no room for the name of hole " + name));
    places.taken().add(best);
    notes.text(best.centre().x(), best.centre().y() - NAME / 2, NAME, Align.MIDDLE, name);
    lead(at, reach, best, out);
  }

  /** A fine line from a hole to a name that could not stand right beside it. */
  private static void lead(Vec2 at, double reach, Box name, List<Item> out) {
    LayerPen notes = LayerPen.notes(out);
    Vec2 near =
        new Vec2(
            Math.max(name.minX(), Math.min(name.maxX(), at.x())),
            Math.max(name.minY(), Math.min(name.maxY(), at.y())));
    Vec2 way = near.minus(at);
    if (way.norm() > reach + NAME / 2) {
      Vec2 from = at.plus(way.unit().times(reach));
      Vec2 to = near.minus(way.unit().times(AIR));
      notes.line(from, to, Pen.FINE);
    }
  }

  /** Points of the drawn outlines, close together, that names had better keep clear of. */
  private List<Vec2> lines(Vec2 middle) {
    List<Vec2> points = new ArrayList<>();
    for (Region region : List.of(layout.plateOutline(), cut())) {
      for (Contour contour : region.contours()) {
        for (Edge edge : contour.edges()) {
          int pieces = (int) Math.ceil(edge.length() * scale / CLOSE_MM);
          for (int i = 0; i < pieces; i++) {
            points.add(onPage(edge.at((double) i / pieces), middle));
          }
        }
      }
    }
    return points;
  }

  /** A name's box that touches a circle round its hole from outside. */
  private static Box beside(Vec2 at, double reach, Angle way, double wide) {
    double halfW = wide / 2 + 0.3;
    double halfH = NAME * 0.65 + 0.3;
    Vec2 u = Vec2.polar(1, way);
    double toEdge =
        Math.min(halfW / Math.max(1e-9, Math.abs(u.x())), halfH / Math.max(1e-9, Math.abs(u.y())));
    Vec2 c = at.plus(u.times(reach + toEdge));
    return new Box(c.x() - halfW, c.y() - halfH, c.x() + halfW, c.y() + halfH);
  }

  private void words(double leftMm, double topMm, List<Item> out) {
    LayerPen notes = LayerPen.notes(out);
    double centre = leftMm + width / 2;
    double y = topMm;
    notes.text(centre, TextStyle.baseMm(y, WORDS), WORDS, Align.MIDDLE, "FORWARD");
    double tip = y - TextStyle.lineMm(WORDS) - 0.3;
    arrow(new Vec2(centre, tip - 7), new Vec2(centre, tip), notes);
    boolean outboardRight = SheetFrame.inboardSign(layout.side(), Face.UNDERSIDE) < 0;
    double outer = outboardRight ? leftMm + width : leftMm;
    Align align = outboardRight ? Align.END : Align.START;
    notes.text(outer, TextStyle.baseMm(y, WORDS), WORDS, align, "OUTBOARD");
    arrow(new Vec2(outer - (outboardRight ? 10 : -10), tip - 2), new Vec2(outer, tip - 2), notes);
    double low = topMm - height + footMm() - 2.0;
    for (String line : foot) {
      notes.text(centre, TextStyle.baseMm(low, WORDS), WORDS, Align.MIDDLE, line);
      low -= TextStyle.lineMm(WORDS);
    }
  }

  private static void arrow(Vec2 from, Vec2 tip, LayerPen notes) {
    double head = Math.min(3, 0.6 * from.distanceTo(tip));
    notes.arrow(from, tip, head, 1.1 * head / 3, Pen.OUTLINE);
  }
}
