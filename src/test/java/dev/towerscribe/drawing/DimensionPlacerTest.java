package dev.towerscribe.drawing;

import static org.assertj.core.api.Assertions.assertThat;
import static org.assertj.core.api.Assertions.assertThatThrownBy;
import static org.assertj.core.api.Assertions.within;

import dev.towerscribe.drawing.DimensionRequest.AngleBetween;
import dev.towerscribe.drawing.DimensionRequest.Diameter;
import dev.towerscribe.drawing.DimensionRequest.Linear;
import dev.towerscribe.drawing.DimensionRequest.Ordinate;
import dev.towerscribe.drawing.DimensionRequest.Radius;
import dev.towerscribe.geometry.Box;
import dev.towerscribe.geometry.Contour;
import dev.towerscribe.geometry.Edge.Arc;
import dev.towerscribe.geometry.Vec2;
import java.util.List;
import java.util.Optional;
import java.util.stream.Stream;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.CsvSource;

/**
 * Worked dimensions of a plate of 60 by 40 with its lower left corner at (100, 100). Expected
 * figures are independent: added up by hand from the sizes of the style, which are 10 to the first
 * line, 8 from line to line, gap 1, overshoot 2, arrow 3.5, capitals 3.5.
 */
class DimensionPlacerTest {
  /** Sums of a few coordinates near 100 mm in double precision. */
  private static final double MM = 1e-9;

  /** Half the width of an arrowhead, mm: independent, 3.5 tan 9 degrees. */
  private static final double ARROW_HALF_MM = 0.554346;

  /** What figures reach below their base line, mm: 0.06 of 3.5, from the font's rounding. */
  private static final double BELOW_MM = 0.21;

  private static final Box AREA = new Box(10, 10, 287, 200);
  private static final Contour PLATE =
      Contour.polygon(
          List.of(new Vec2(100, 100), new Vec2(160, 100), new Vec2(160, 140), new Vec2(100, 140)));
  private static final Vec2 DOWN = new Vec2(0, -1);

  private static DimensionPlacer.Placement place(DimensionRequest... requests) {
    return place(new Obstacles(List.of(PLATE), List.of(), List.of()), requests);
  }

  private static DimensionPlacer.Placement place(Obstacles obstacles, DimensionRequest... wanted) {
    return new DimensionPlacer(DimensionStyle.ISO).place(AREA, obstacles, List.of(wanted));
  }

  private static Item.Dimension one(DimensionRequest... requests) {
    DimensionPlacer.Placement placement = place(requests);
    assertThat(placement.unplaced()).isEmpty();
    return placement.placed().get(0);
  }

  private static <T extends Item> List<T> parts(Item.Dimension dimension, Class<T> type) {
    return dimension.parts().stream().filter(type::isInstance).map(type::cast).toList();
  }

  private static Item.Text text(Item.Dimension dimension) {
    return parts(dimension, Item.Text.class).get(0);
  }

  private static void assertAt(Vec2 p, double x, double y) {
    assertThat(p.x()).isCloseTo(x, within(MM));
    assertThat(p.y()).isCloseTo(y, within(MM));
  }

  private static void assertLine(Item.Line line, double x1, double y1, double x2, double y2) {
    assertAt(line.from(), x1, y1);
    assertAt(line.to(), x2, y2);
    assertThat(line.pen()).isEqualTo(Pen.THIN);
  }

  /** An arrowhead is filled, 3.5 long; its tip is its first point. */
  private static void assertArrow(Item.Polyline arrow, double x, double y, double dx, double dy) {
    assertThat(arrow.fill()).isEqualTo(Ink.BLACK);
    assertThat(arrow.closed()).isTrue();
    assertAt(arrow.points().get(0), x, y);
    Vec2 back = arrow.points().get(1).toward(arrow.points().get(2), 0.5);
    assertAt(back, x - 3.5 * dx, y - 3.5 * dy);
    assertThat(arrow.points().get(1).distanceTo(arrow.points().get(2)) / 2)
        .isCloseTo(ARROW_HALF_MM, within(1e-6));
  }

  @Test
  void aLengthBelowThePart() {
    Item.Dimension d =
        one(Linear.horizontal(new Vec2(100, 100), new Vec2(160, 100), false, List.of("60.0")));
    List<Item.Line> lines = parts(d, Item.Line.class);
    assertLine(lines.get(0), 100, 99, 100, 88);
    assertLine(lines.get(1), 160, 99, 160, 88);
    assertLine(lines.get(2), 100, 90, 160, 90);
    List<Item.Polyline> arrows = parts(d, Item.Polyline.class);
    assertArrow(arrows.get(0), 100, 90, -1, 0);
    assertArrow(arrows.get(1), 160, 90, 1, 0);
    Item.Text text = text(d);
    assertAt(text.at(), 130, 91 + BELOW_MM);
    assertThat(text.align()).isEqualTo(Align.MIDDLE);
    assertThat(text.turn().degrees()).isZero();
    assertThat(text.capHeightMm()).isEqualTo(3.5);
    assertThat(d.kind()).isEqualTo(DimensionKind.LINEAR);
    assertThat(d.measured()).containsExactly(new Vec2(100, 100), new Vec2(160, 100));
    assertThat(d.words()).containsExactly("60.0");
  }

  /** Upright dimensions read from the right of the page: words stand left of their line. */
  @ParameterizedTest
  @CsvSource({"true, 170", "false, 90"})
  void anUprightLengthReadsFromTheRight(boolean right, double lineX) {
    double x = right ? 160 : 100;
    Item.Dimension d =
        one(Linear.vertical(new Vec2(x, 100), new Vec2(x, 140), right, List.of("40.0")));
    assertLine(parts(d, Item.Line.class).get(2), lineX, 100, lineX, 140);
    assertThat(text(d).turn().degrees()).isCloseTo(90, within(MM));
    assertAt(text(d).at(), lineX - 1 - BELOW_MM, 120);
  }

  @Test
  void aShortLengthHasItsArrowsOutsideAndItsWordsBeyond() {
    Item.Dimension d =
        one(Linear.horizontal(new Vec2(100, 100), new Vec2(104, 100), false, List.of("4.0")));
    List<Item.Polyline> arrows = parts(d, Item.Polyline.class);
    assertArrow(arrows.get(0), 100, 90, 1, 0);
    assertArrow(arrows.get(1), 104, 90, -1, 0);
    Item.Line line = parts(d, Item.Line.class).get(2);
    // Two lengths of an arrow past the one end, past the words at the other.
    assertThat(line.from().x()).isCloseTo(93, within(MM));
    double wordsEnd = text(d).at().x() + Lettering.width("4.0", 3.5) / 2;
    assertThat(line.to().x()).isCloseTo(wordsEnd, within(MM));
    assertThat(wordsEnd - Lettering.width("4.0", 3.5)).isGreaterThan(107.5);
  }

  @Test
  void wordsThatDoNotFitBetweenArrowsThatDoStandBeyondThem() {
    Item.Dimension d =
        one(
            Linear.horizontal(
                new Vec2(100, 100), new Vec2(110, 100), false, List.of("10.00 \u00B1 0.05")));
    assertArrow(parts(d, Item.Polyline.class).get(0), 100, 90, -1, 0);
    double half = Lettering.width("10.00 \u00B1 0.05", 3.5) / 2;
    assertThat(text(d).at().x() - half).isGreaterThan(110.7);
  }

  @Test
  void theShorterStandsNearerAndAChainSharesALine() {
    Vec2 left = new Vec2(100, 100);
    Vec2 middle = new Vec2(125, 100);
    Vec2 right = new Vec2(160, 100);
    List<Item.Dimension> placed =
        place(
                Linear.horizontal(left, right, false, List.of("60.0")),
                Linear.horizontal(left, middle, false, List.of("25.0")),
                Linear.horizontal(middle, right, false, List.of("35.0")))
            .placed();
    assertThat(placed)
        .extracting(d -> parts(d, Item.Line.class).get(2).from().y())
        .usingElementComparator((a, b) -> Math.abs(a - b) < MM ? 0 : Double.compare(a, b))
        .containsExactly(82.0, 90.0, 90.0);
  }

  @Test
  void twoLinesOfWordsBothStandAboveTheLine() {
    Item.Dimension d =
        one(
            Linear.horizontal(
                new Vec2(100, 140), new Vec2(160, 140), true, List.of("60.00", "[2.362]")));
    List<Item.Text> texts = parts(d, Item.Text.class);
    // Brackets reach 434 of 1409 units below (hhea): their base line stands that much higher.
    double lower = 150 + 1 + 3.5 * 434 / 1409;
    assertAt(texts.get(1).at(), 130, lower);
    assertAt(texts.get(0).at(), 130, lower + 1.6 * 3.5);
    assertThat(texts.get(0).content()).isEqualTo("60.00");
  }

  /** ISO 129-1, from memory: readable from the bottom or the right of the page. */
  @ParameterizedTest
  @CsvSource({
    "0, 0",
    "180, 0",
    "90, 90",
    "-90, 90",
    "45, 45",
    "-45, -45",
    "135, -45",
    "225, 45",
    "100, -80",
    "-89, -89",
    "91, -89"
  })
  void readsFromTheBottomOrTheRight(double lineDegrees, double readingDegrees) {
    double a = Math.toRadians(lineDegrees);
    Vec2 reading = DimensionText.readable(new Vec2(Math.cos(a), Math.sin(a)));
    assertThat(reading.direction().degrees()).isCloseTo(readingDegrees, within(1e-6));
  }

  @Test
  void anAlignedLengthRunsAlongItsEdge() {
    Vec2 from = new Vec2(100, 140);
    Vec2 to = new Vec2(130, 180);
    Item.Dimension d = one(Linear.aligned(from, to, new Vec2(-1, 0), List.of("50.0")));
    Item.Line line = parts(d, Item.Line.class).get(2);
    assertThat(line.from().distanceTo(line.to())).isCloseTo(50, within(MM));
    // Independent: 3-4-5, so ten to the left of the edge is (-8, 6).
    assertAt(line.from(), 92, 146);
    assertAt(line.to(), 122, 186);
    assertThat(text(d).turn().degrees()).isCloseTo(Math.toDegrees(Math.atan2(4, 3)), within(1e-9));
  }

  @Test
  void anOrdinateRunsStraightOutWhereItCan() {
    Vec2 datum = new Vec2(100, 100);
    Item.Dimension d = one(new Ordinate(datum, new Vec2(120, 120), DOWN, 4, List.of("20.00")));
    // From the hole's edge and the gap; past the plate 3, the jog's room 4 and its end 2.
    assertLine(parts(d, Item.Line.class).get(0), 120, 115, 120, 91);
    assertThat(parts(d, Item.Line.class)).hasSize(1);
    assertThat(parts(d, Item.Polyline.class)).isEmpty();
    TurnedBox room = Lettering.room(text(d));
    assertThat(text(d).turn().degrees()).isCloseTo(90, within(MM));
    assertThat(room.centre().x()).isCloseTo(120, within(MM));
    assertThat(room.bounds().maxY()).isCloseTo(90, within(MM));
    assertThat(d.measured()).containsExactly(datum, new Vec2(120, 120));
  }

  @Test
  void crowdedOrdinatesSpreadInOrderAboutTheirPoints() {
    Vec2 datum = new Vec2(100, 100);
    List<Item.Dimension> placed =
        place(
                new Ordinate(datum, new Vec2(122, 110), DOWN, 4, List.of("22.00")),
                new Ordinate(datum, new Vec2(120, 125), DOWN, 4, List.of("20.00")),
                new Ordinate(datum, new Vec2(121, 118), DOWN, 4, List.of("21.00")))
            .placed();
    List<Double> at = placed.stream().map(d -> Lettering.room(text(d)).centre().x()).toList();
    // Figures are 1.14 of 3.5 high, with 0.825 clear at either side; places lie half apart.
    double pitch = 1.14 * 3.5 + 2 * 0.825;
    assertThat(at.get(0) - at.get(2)).isBetween(pitch - MM, pitch + 0.5);
    assertThat(at.get(2) - at.get(1)).isBetween(pitch - MM, pitch + 0.5);
    assertThat(at.get(2)).isCloseTo(121, within(0.5));
    // Each leader is straight to the bend, leans, and ends straight.
    List<Item.Line> lines = parts(placed.get(0), Item.Line.class);
    assertLine(lines.get(0), 122, 105, 122, 97);
    assertLine(lines.get(1), 122, 97, at.get(0), 93);
    assertLine(lines.get(2), at.get(0), 93, at.get(0), 91);
  }

  @Test
  void ordinatesAtOneDistanceShareALeader() {
    Vec2 datum = new Vec2(100, 100);
    Vec2 near = new Vec2(120, 110);
    Vec2 far = new Vec2(120, 130);
    DimensionPlacer.Placement placement =
        place(
            new Ordinate(datum, far, DOWN, 3, List.of("20.00")),
            new Ordinate(datum, near, DOWN, 3, List.of("20.00")));
    assertThat(placement.unplaced()).isEmpty();
    assertThat(placement.placed())
        .singleElement()
        .satisfies(
            d -> {
              assertThat(d.measured()).containsExactly(datum, far, near);
              assertThat(parts(d, Item.Line.class).get(0).from().y()).isCloseTo(106, within(MM));
            });
  }

  @Test
  void leadersThatWouldPrintAsOneGoToEitherSide() {
    Vec2 datum = new Vec2(100, 100);
    List<Item.Dimension> placed =
        place(
                new Ordinate(datum, new Vec2(120, 130), DOWN, 3, List.of("20.00")),
                new Ordinate(datum, new Vec2(120.4, 110), DOWN, 3, List.of("20.40")))
            .placed();
    assertThat(text(placed.get(0)).at().y()).isGreaterThan(140);
    assertThat(text(placed.get(1)).at().y()).isLessThan(100);
  }

  @Test
  void aDiameterPointsAtTheCentreFromOutside() {
    Vec2 centre = new Vec2(130, 122);
    Contour hole = Contour.circle(centre, 4.5);
    DimensionPlacer.Placement placement =
        place(
            new Obstacles(List.of(PLATE), hole.edges(), List.of()),
            new Diameter(centre, 4.5, Optional.of(new Vec2(1, 1)), List.of("\u23009.00 H13")));
    Item.Dimension d = placement.placed().get(0);
    // The sheet font has no U+2300; the letter O with stroke stands for it.
    assertThat(d.words()).containsExactly("\u00D89.00 H13");
    Vec2 tip = d.measured().get(1);
    assertThat(d.measured().get(0)).isEqualTo(centre);
    assertThat(tip.distanceTo(centre)).isCloseTo(4.5, within(MM));
    Item.Line leader = parts(d, Item.Line.class).get(0);
    Vec2 away = tip.minus(centre).unit();
    assertThat(leader.to().minus(leader.from()).unit().dot(away)).isCloseTo(1, within(MM));
    assertArrow(parts(d, Item.Polyline.class).get(0), tip.x(), tip.y(), -away.x(), -away.y());
    Item.Line shelf = parts(d, Item.Line.class).get(1);
    assertThat(shelf.to().y()).isEqualTo(shelf.from().y());
    TurnedBox room = Lettering.room(text(d));
    assertThat(room.bounds().minY()).isCloseTo(shelf.from().y() + 1, within(MM));
    assertThat(room.centre().x()).isCloseTo((shelf.from().x() + shelf.to().x()) / 2, within(MM));
  }

  @Test
  void aDiameterWithNoRoomOutsideIsWrittenWithin() {
    Vec2 centre = new Vec2(60, 60);
    Contour circle = Contour.circle(centre, 40);
    DimensionPlacer.Placement placement =
        new DimensionPlacer(DimensionStyle.ISO)
            .place(
                Box.around(centre, 33),
                new Obstacles(List.of(circle), List.of(), List.of()),
                List.of(new Diameter(centre, 40, Optional.empty(), List.of("\u00D880.0"))));
    Item.Dimension d = placement.placed().get(0);
    Lettering.room(text(d))
        .corners()
        .forEach(corner -> assertThat(corner.distanceTo(centre)).isLessThan(40));
    // The arrow points outward at the curve.
    List<Vec2> arrow = parts(d, Item.Polyline.class).get(0).points();
    assertThat(arrow.get(0).distanceTo(centre)).isCloseTo(40, within(MM));
    assertThat(arrow.get(1).distanceTo(centre)).isLessThan(40);
  }

  @Test
  void aRadiusTouchesItsOwnArcOnly() {
    Arc corner = new Arc(new Vec2(150, 130), 10, 0, Math.PI / 2);
    Item.Dimension d = one(new Radius(corner, List.of("R10")));
    Vec2 tip = d.measured().get(1);
    assertThat(tip.distanceTo(corner.centre())).isCloseTo(10, within(MM));
    assertThat(tip.x()).isBetween(150.0, 160.0);
    assertThat(tip.y()).isBetween(130.0, 140.0);
    // In line with the centre.
    Item.Line leader = parts(d, Item.Line.class).get(0);
    Vec2 along = leader.to().minus(leader.from()).unit();
    assertThat(along.cross(tip.minus(corner.centre()).unit())).isCloseTo(0, within(MM));
  }

  @Test
  void anAngleHasItsArrowsOnTheArms() {
    Vec2 vertex = new Vec2(100, 100);
    Item.Dimension d =
        one(new AngleBetween(vertex, new Vec2(160, 100), new Vec2(100, 140), List.of("90\u00B0")));
    Arc arc = parts(d, Item.ArcLine.class).get(0).arc();
    assertAt(arc.centre(), 100, 100);
    assertThat(Math.toDegrees(arc.sweep())).isCloseTo(90, within(MM));
    List<Item.Polyline> arrows = parts(d, Item.Polyline.class);
    assertAt(arrows.get(0).points().get(0), 100 + arc.radius(), 100);
    assertAt(arrows.get(1).points().get(0), 100, 100 + arc.radius());
    // Both ends of each arrowhead lie on the arc.
    for (Item.Polyline arrow : arrows) {
      Vec2 back = arrow.points().get(1).toward(arrow.points().get(2), 0.5);
      assertThat(back.distanceTo(vertex)).isCloseTo(arc.radius(), within(MM));
    }
    TurnedBox room = Lettering.room(text(d));
    assertThat(room.distanceTo(vertex)).isGreaterThan(arc.radius());
  }

  /** From an arm that ends short of the arc an extension line is drawn. */
  @Test
  void anAnglesShortArmIsExtended() {
    Vec2 vertex = new Vec2(60, 60);
    Item.Dimension d =
        one(new AngleBetween(vertex, new Vec2(62, 60), new Vec2(60, 62), List.of("90\u00B0")));
    double radius = parts(d, Item.ArcLine.class).get(0).arc().radius();
    assertLine(parts(d, Item.Line.class).get(0), 63, 60, 60 + radius + 2, 60);
    assertLine(parts(d, Item.Line.class).get(1), 60, 63, 60, 60 + radius + 2);
  }

  @Test
  void wordsKeepOffWhatIsThereAlready() {
    Linear length =
        Linear.horizontal(new Vec2(100, 100), new Vec2(160, 100), false, List.of("60.0"));
    Vec2 usual = text(one(length)).at();
    TurnedBox room = TurnedBox.of(Box.around(usual, 3));
    Item.Dimension d =
        place(new Obstacles(List.of(PLATE), List.of(), List.of()).with(room), length)
            .placed()
            .get(0);
    assertThat(Lettering.room(text(d)).overlaps(room)).isFalse();
    for (Item.Line line : parts(d, Item.Line.class)) {
      assertThat(room.lengthInside(line.from(), line.to())).isZero();
    }
  }

  @Test
  void shapesOfThePageAreInTheWayTheirWordsToo() {
    Item.Dimension first =
        one(Linear.horizontal(new Vec2(100, 100), new Vec2(160, 100), false, List.of("60.0")));
    List<Item> drawn =
        List.of(
            first,
            new Item.Circle(Layer.HOLES, new Vec2(130, 120), 4.5, Pen.OUTLINE, Ink.NONE),
            new Item.Circle(Layer.HOLES, new Vec2(130, 120), 2, Pen.NONE, Ink.NONE));
    Obstacles obstacles = Obstacles.of(List.of(PLATE), drawn);
    // Three lines, two arrowheads of three sides, one circle.
    assertThat(obstacles.lines()).hasSize(3 + 2 * 3 + 1);
    assertThat(obstacles.taken()).containsExactly(Lettering.room(text(first)));
  }

  @Test
  void whatHasNoRoomIsGivenBack() {
    Linear length =
        Linear.horizontal(new Vec2(100, 100), new Vec2(160, 100), false, List.of("60.0"));
    Ordinate ordinate =
        new Ordinate(new Vec2(100, 100), new Vec2(120, 120), DOWN, 4, List.of("20.00"));
    Diameter diameter = new Diameter(new Vec2(130, 120), 28, Optional.empty(), List.of("\u00D856"));
    DimensionPlacer.Placement placement =
        new DimensionPlacer(DimensionStyle.ISO)
            .place(
                new Box(99, 99, 161, 141),
                new Obstacles(List.of(PLATE), List.of(), List.of(TurnedBox.of(PLATE.bounds()))),
                List.of(ordinate, length, diameter));
    assertThat(placement.placed()).isEmpty();
    assertThat(placement.unplaced()).containsExactly(ordinate, length, diameter);
  }

  @Test
  void equalRequestsAreDrawnOnce() {
    Linear length =
        Linear.horizontal(new Vec2(100, 100), new Vec2(160, 100), false, List.of("60.0"));
    assertThat(place(length, length).placed()).hasSize(1);
    assertThat(place(length, length).unplaced()).isEmpty();
  }

  @Test
  void refusesWhatCannotBeMeant() {
    Vec2 p = new Vec2(100, 100);
    Vec2 q = new Vec2(160, 100);
    List<String> words = List.of("60.0");
    Stream.<Runnable>of(
            () -> new DimensionStyle(2.4, 3.5, 1, 2, 10, 8),
            () -> new DimensionStyle(3.5, 0, 1, 2, 10, 8),
            () -> Linear.horizontal(p, q, true, List.of()),
            () -> Linear.horizontal(p, q, true, List.of(" ")),
            () -> Linear.vertical(p, q, true, words),
            () -> Linear.aligned(p, q, new Vec2(1, 0), words),
            () -> new Ordinate(p, q, DOWN, -1, words),
            () -> new Diameter(p, 0, Optional.empty(), words),
            () -> new AngleBetween(p, q, new Vec2(130, 100), words),
            () -> new Item.Dimension(DimensionKind.LINEAR, List.of(p), words, List.of()),
            () -> new Item.Dimension(DimensionKind.ANGLE, List.of(p, q), words, List.of()),
            () -> new Item.Dimension(DimensionKind.LINEAR, List.of(p, q), List.of(), List.of()),
            () ->
                new Item.Dimension(
                    DimensionKind.LINEAR,
                    List.of(p, q),
                    words,
                    List.of(new Item.Line(Layer.NOTES, p, q, Pen.THIN))))
        .forEach(
            meant -> assertThatThrownBy(meant::run).isInstanceOf(IllegalArgumentException.class));
  }
}
