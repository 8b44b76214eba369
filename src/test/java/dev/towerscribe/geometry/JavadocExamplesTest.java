package dev.towerscribe.geometry;

import static org.assertj.core.api.Assertions.assertThat;
import static org.assertj.core.api.Assertions.within;

import dev.towerscribe.geometry.Edge.Arc;
import dev.towerscribe.geometry.Edge.Segment;
import java.util.List;
import org.junit.jupiter.api.Test;

/**
 * The worked examples that the Javadoc of the boundary algorithms gives. Expected figures are
 * independent: school geometry.
 */
class JavadocExamplesTest {
  private static final SnapDistance ROOM = SnapDistance.TRIES.get(0);
  private static final double MM = 1e-9;

  private static Segment line(double x0, double y0, double x1, double y1) {
    return new Segment(new Vec2(x0, y0), new Vec2(x1, y1));
  }

  private static Region box(double x0, double y0, double x1, double y1) {
    return Region.inside(Contour.rectangle(new Box(x0, y0, x1, y1)));
  }

  @Test
  void twoSegmentsThatCrossAreFourPiecesBetweenFiveVertices() {
    Arrangement cut = new Arrangement(List.of(line(0, 0, 4, 0), line(2, -1, 2, 3)), ROOM);
    assertThat(cut.vertexCount()).isEqualTo(5);
    assertThat(cut.pieces())
        .extracting(p -> p.from() + "-" + p.to())
        .containsExactly("0-4", "4-1", "2-4", "4-3");
    Arrangement circle = new Arrangement(List.of(new Arc(Vec2.ZERO, 5, 0, 2 * Math.PI)), ROOM);
    assertThat(circle.vertexCount()).isZero();
    assertThat(circle.pieces()).hasSize(1);
  }

  @Test
  void twoSquaresOverlaid() {
    Region a = box(0, 0, 2, 2);
    Region b = box(1, 1, 3, 3);
    assertThat(a.intersection(b).area()).isCloseTo(1, within(MM));
    assertThat(a.union(b).area()).isCloseTo(7, within(MM));
    assertThat(a.union(b).contours().get(0).edges()).hasSize(8);
    assertThat(a.minus(b).area()).isCloseTo(3, within(MM));
    assertThat(a.minus(b).contours().get(0).edges()).hasSize(6);
  }

  @Test
  void aTriangleLosesItsStrayPiece() {
    List<Edge> edges =
        List.of(line(0, 0, 4, 0), line(4, 0, 0, 3), line(0, 3, 0, 0), line(0, 3, -2e-4, 3));
    Arrangement cut = new Arrangement(edges, ROOM);
    assertThat(LoopBuilder.close(cut.pieces(), cut.vertexCount(), ROOM).orElseThrow())
        .singleElement()
        .satisfies(c -> assertThat(c.signedArea()).isCloseTo(6, within(MM)));
    List<Edge> lost =
        List.of(line(0, 0, 4, 0), line(4, 0, 0, 3), line(0, 3, 0, 0), line(0, 3, -2, 3));
    Arrangement more = new Arrangement(lost, ROOM);
    assertThat(LoopBuilder.close(more.pieces(), more.vertexCount(), ROOM)).isEmpty();
  }

  @Test
  void aSquareGrownAndInset() {
    Region square = box(-5, -5, 5, 5);
    assertThat(square.grown(2).area()).isCloseTo(100 + 80 + 4 * Math.PI, within(1e-8));
    assertThat(square.inset(2).area()).isCloseTo(36, within(MM));
    assertThat(square.inset(2).contours().get(0).edges()).hasSize(4);
  }

  @Test
  void theParallelsOfACorner() {
    Region corner = box(-10, 0, 0, 10);
    List<Edge> out = Parallels.of(corner, -2, ROOM);
    assertThat(out)
        .filteredOn(e -> e instanceof Arc arc && arc.centre().norm() < MM)
        .singleElement()
        .satisfies(
            e -> {
              assertThat(e.start().distanceTo(new Vec2(0, -2))).isLessThan(MM);
              assertThat(e.end().distanceTo(new Vec2(2, 0))).isLessThan(MM);
            });
    List<Edge> in = Parallels.of(corner, 2, ROOM);
    assertThat(in).hasSize(4).allMatch(Segment.class::isInstance);
    assertThat(in).anyMatch(e -> e.end().distanceTo(new Vec2(-2, 2)) < MM);
    assertThat(in).anyMatch(e -> e.start().distanceTo(new Vec2(-2, 2)) < MM);
  }

  @Test
  void depthsOfPoints() {
    RegionDepths disc = new RegionDepths(Shapes.disc(0, 0, 31));
    assertThat(disc.at(3, 4)).isCloseTo(26, within(MM));
    assertThat(disc.at(40, 0)).isCloseTo(-9, within(MM));
    RegionDepths square = new RegionDepths(box(0, 0, 10, 10));
    assertThat(square.at(4, 7)).isCloseTo(3, within(MM));
    assertThat(square.at(13, 14)).isCloseTo(-5, within(MM));
  }

  @Test
  void sharedPointsOfAnArcAndALine() {
    Arc circle = new Arc(Vec2.ZERO, 5, 0, 2 * Math.PI);
    assertThat(Crossings.of(circle, line(-6, 3, 6, 3), MM))
        .hasSize(2)
        .allMatch(p -> Math.abs(Math.abs(p.x()) - 4) < MM && Math.abs(p.y() - 3) < MM);
    assertThat(Crossings.of(circle, line(-6, 5, 6, 5), MM))
        .singleElement()
        .satisfies(p -> assertThat(p.distanceTo(new Vec2(0, 5))).isLessThan(MM));
  }

  @Test
  void howFarADiscSticksOut() {
    double mm = Overhang.mm(Shapes.disc(0, 0, 10), Shapes.disc(9, 0, 3), false);
    assertThat(mm).isCloseTo(2, within(1e-5));
    Region holed = Shapes.disc(0, 0, 10).minus(Shapes.disc(0, 0, 0.5));
    assertThat(Overhang.mm(holed, Shapes.disc(0, 0, 1), true)).isCloseTo(0.5, within(1e-5));
  }
}
