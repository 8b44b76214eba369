package dev.towerscribe.sheet.shop;

import static org.assertj.core.api.Assertions.assertThat;
import static org.assertj.core.api.Assertions.within;

import dev.towerscribe.drawing.Item;
import dev.towerscribe.drawing.Layer;
import dev.towerscribe.geometry.Bore;
import dev.towerscribe.geometry.Box;
import dev.towerscribe.geometry.Contour;
import dev.towerscribe.geometry.FlatSolid;
import dev.towerscribe.geometry.Recess;
import dev.towerscribe.geometry.RoundedRectangle;
import dev.towerscribe.geometry.Vec2;
import dev.towerscribe.quantity.Angle;
import dev.towerscribe.quantity.Tolerances;
import java.util.ArrayList;
import java.util.List;
import java.util.Optional;
import org.junit.jupiter.api.Test;

/** The view from the side, line by line. All expected figures: independent, calculated by hand. */
class SideViewTest {
  private static final double MM = Tolerances.COMPUTED_MM;
  private static final Contour DISC = Contour.circle(Vec2.ZERO, 50);

  private static List<Item.Line> lines(FlatSolid solid, ViewPlacing at, Layer layer) {
    List<Item> items = new ArrayList<>();
    SideView.draw(solid, at, items);
    return items.stream()
        .filter(i -> i instanceof Item.Line && i.layer() == layer)
        .map(Item.Line.class::cast)
        .toList();
  }

  private static List<Item.Line> lines(FlatSolid solid, Layer layer) {
    return lines(solid, new ViewPlacing(Vec2.ZERO, 1), layer);
  }

  private static FlatSolid disc(Contour outline, Recess recess) {
    return new FlatSolid(
        outline, 8, List.of(), List.of(new Bore(new Vec2(10, 5), 9, Optional.of(recess))));
  }

  /** That the lines are these, in any order and either direction. */
  private static void assertLines(List<Item.Line> lines, double[]... wanted) {
    assertThat(lines).hasSize(wanted.length);
    for (double[] w : wanted) {
      Vec2 a = new Vec2(w[0], w[1]);
      Vec2 b = new Vec2(w[2], w[3]);
      assertThat(lines)
          .as("%s to %s", a, b)
          .anyMatch(
              l ->
                  l.from().distanceTo(a) < MM && l.to().distanceTo(b) < MM
                      || l.from().distanceTo(b) < MM && l.to().distanceTo(a) < MM);
    }
  }

  private static double[] line(double x1, double y1, double x2, double y2) {
    return new double[] {x1, y1, x2, y2};
  }

  /** 15 wide and 3 deep from the top of 8: walls at 10 -+ 7.5, floor at 5, hole at 10 -+ 4.5. */
  @Test
  void counterboreFromTheUpperFace() {
    assertLines(
        lines(disc(DISC, new Recess.Counterbore(15, 3, true)), Layer.HIDDEN),
        line(2.5, 8, 2.5, 5),
        line(17.5, 8, 17.5, 5),
        line(2.5, 5, 17.5, 5),
        line(5.5, 0, 5.5, 5),
        line(14.5, 0, 14.5, 5));
  }

  /** The same from the under face: floor at 3, the plain hole above it. */
  @Test
  void counterboreFromTheUnderFace() {
    assertLines(
        lines(disc(DISC, new Recess.Counterbore(15, 3, false)), Layer.HIDDEN),
        line(2.5, 0, 2.5, 3),
        line(17.5, 0, 17.5, 3),
        line(2.5, 3, 17.5, 3),
        line(5.5, 3, 5.5, 8),
        line(14.5, 3, 14.5, 8));
  }

  /** A 90 degree cone from 17 to 9 is (17 - 9) / 2 = 4 deep. */
  @Test
  void countersinkFromEitherFace() {
    Angle right = Angle.ofDegrees(90);
    assertLines(
        lines(disc(DISC, new Recess.Countersink(17, right, true)), Layer.HIDDEN),
        line(1.5, 8, 5.5, 4),
        line(18.5, 8, 14.5, 4),
        line(5.5, 4, 14.5, 4),
        line(5.5, 0, 5.5, 4),
        line(14.5, 0, 14.5, 4));
    assertLines(
        lines(disc(DISC, new Recess.Countersink(17, right, false)), Layer.HIDDEN),
        line(1.5, 0, 5.5, 4),
        line(18.5, 0, 14.5, 4),
        line(5.5, 4, 14.5, 4),
        line(5.5, 4, 5.5, 8),
        line(14.5, 4, 14.5, 8));
  }

  /** At 1:2 from (100, 30): x = 100 + x / 2, and the axis stands out 2 mm of paper at each end. */
  @Test
  void axisAndCutOutAtAScale() {
    FlatSolid solid =
        new FlatSolid(
            DISC,
            8,
            List.of(Contour.sweptDisc(new Vec2(-20, 0), new Vec2(0, 0), 6)),
            List.of(Bore.plain(new Vec2(20, 5), 10)));
    ViewPlacing at = new ViewPlacing(new Vec2(100, 30), 0.5);
    assertLines(lines(solid, at, Layer.CENTRE_LINES), line(110, 28, 110, 36));
    assertLines(
        lines(solid, at, Layer.HIDDEN),
        line(87, 30, 87, 34),
        line(103, 30, 103, 34),
        line(107.5, 30, 107.5, 34),
        line(112.5, 30, 112.5, 34));
  }

  /** Nothing that turns smoothly shows a corner; nor does a corner that is the end of the view. */
  @Test
  void roundAndSquareOutlinesShowNoCorners() {
    Box box = new Box(-40, -30, 40, 30);
    for (Contour c :
        List.of(DISC, RoundedRectangle.rectangle(box, 8), RoundedRectangle.rectangle(box, 0))) {
      assertThat(lines(new FlatSolid(c, 8, List.of(), List.of()), Layer.OTHER_VIEWS)).isEmpty();
    }
  }

  /**
   * A hexagon with points at 0, 60, ... degrees on 50: seen from -y its points at 240 and 300 show,
   * x = -25 and 25; those at 60 and 120 lie behind and those at 0 and 180 are the ends.
   */
  @Test
  void cornersOfTheNearSideShow() {
    List<Vec2> points = new ArrayList<>();
    for (int i = 0; i < 6; i++) {
      points.add(Vec2.polar(50, Angle.ofDegrees(60.0 * i)));
    }
    FlatSolid solid = new FlatSolid(Contour.polygon(points), 8, List.of(), List.of());
    assertLines(lines(solid, Layer.OTHER_VIEWS), line(-25, 0, -25, 8), line(25, 0, 25, 8));
  }

  /** A step in the near side: (0, -30) to (0, -10) is an edge seen on end, one line at x = 0. */
  @Test
  void aStepIsOneLine() {
    Contour stepped =
        Contour.polygon(
            List.of(
                new Vec2(-40, -30),
                new Vec2(0, -30),
                new Vec2(0, -10),
                new Vec2(40, -10),
                new Vec2(40, 30),
                new Vec2(-40, 30)));
    FlatSolid solid = new FlatSolid(stepped, 8, List.of(), List.of());
    assertLines(lines(solid, Layer.OTHER_VIEWS), line(0, 0, 0, 8));
  }

  /** A corner where an arc ends on a straight edge at an angle is as sharp as any other. */
  @Test
  void aCornerOfAnArcShowsToo() {
    // A disc of 50 cut off at y = -30: its corners are at x = -40 and 40, in full view.
    double start = Math.atan2(-30, 40);
    var arc = new dev.towerscribe.geometry.Edge.Arc(Vec2.ZERO, 50, start, Math.PI - 2 * start);
    Contour cut =
        Contour.of(
            List.of(
                arc,
                new dev.towerscribe.geometry.Edge.Segment(new Vec2(-40, -30), new Vec2(40, -30))));
    FlatSolid solid = new FlatSolid(cut, 8, List.of(), List.of());
    assertLines(lines(solid, Layer.OTHER_VIEWS), line(-40, 0, -40, 8), line(40, 0, 40, 8));
  }

  @Test
  void theWholeIsABox() {
    List<Item> items = new ArrayList<>();
    SideView.draw(
        new FlatSolid(DISC, 8, List.of(), List.of()), new ViewPlacing(new Vec2(60, 10), 1), items);
    Item.Polyline box = (Item.Polyline) items.get(0);
    Box bounds = Contour.polygon(box.points()).bounds();
    assertThat(bounds.minX()).isCloseTo(10, within(MM));
    assertThat(bounds.maxX()).isCloseTo(110, within(MM));
    assertThat(bounds.minY()).isCloseTo(10, within(MM));
    assertThat(bounds.maxY()).isCloseTo(18, within(MM));
  }
}
