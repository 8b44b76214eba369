package dev.towerscribe.model;

import static org.assertj.core.api.Assertions.assertThat;
import static org.assertj.core.api.Assertions.within;

import dev.towerscribe.geometry.Vec2;
import java.util.List;
import java.util.stream.DoubleStream;
import java.util.stream.Stream;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.CsvSource;

/** Tables of the program against the standards they come from. */
class PublishedTablesTest {
  @ParameterizedTest
  @CsvSource({
    // Published: ISO 273:1979, fine, medium and coarse series; washers ISO 7089:2000 (M14: from
    // memory).
    "M5, 5.3, 5.5, 5.8, 10",
    "M6, 6.4, 6.6, 7, 12",
    "M8, 8.4, 9, 10, 16",
    "M10, 10.5, 11, 12, 20",
    "M12, 13, 13.5, 14.5, 24",
    "M14, 15, 15.5, 16.5, 28",
    "M16, 17, 17.5, 18.5, 30",
  })
  void metricClearanceHoles(String name, double fine, double medium, double coarse, double washer) {
    Thread thread = Thread.find(name).orElseThrow();
    assertThat(thread.holeMm(Fit.FINE)).isEqualTo(fine);
    assertThat(thread.holeMm(Fit.MEDIUM)).isEqualTo(medium);
    assertThat(thread.holeMm(Fit.COARSE)).isEqualTo(coarse);
    assertThat(thread.washerMm()).isEqualTo(washer);
    assertThat("M" + Math.round(thread.nominalMm())).isEqualTo(name);
    assertThat(thread.holeSource(Fit.MEDIUM)).contains("ISO 273");
  }

  @ParameterizedTest
  @CsvSource({
    // Published: ASME B18.2.8 normal fit, as tabled in Machinery's Handbook, 31st edition, inches.
    "1/4, 0.281",
    "5/16, 0.344",
    "3/8, 0.406",
    "7/16, 0.469",
    "1/2, 0.562",
  })
  void inchClearanceHoles(String name, double normal) {
    Thread thread = Thread.find(name).orElseThrow();
    assertThat(thread.holeMm(Fit.MEDIUM)).isCloseTo(normal * 25.4, within(1e-12));
    assertThat(thread.holeSource(Fit.MEDIUM)).doesNotContain("memory");
    assertThat(thread.holeSource(Fit.FINE)).contains("memory");
  }

  /**
   * Published, second-hand: EN 1993-1-3:2006 Table 8.4, e2 {@literal >=} 1.5 d0 (e1 1.0 d0), p1 and
   * p2 {@literal >=} 3 d0.
   */
  @Test
  void edgeRuleOfThinSheet() {
    assertThat(EdgeRule.EN1993_1_3.word()).isEqualTo("en1993-1-3");
    assertThat(EdgeRule.EN1993_1_3.edgeMm(8, 9)).isEqualTo(13.5);
    assertThat(EdgeRule.EN1993_1_3.spacingMm(8, 9)).isEqualTo(27.0);
    assertThat(EdgeRule.EN1993_1_3.edgeSource(8, 9))
        .isEqualTo("1.5 d0, EN 1993-1-3:2006 Table 8.4, second-hand");
  }

  /** A rule for rivets in aircraft sheet never stands there as if it were one for this. */
  @Test
  void theRivetRuleSaysWhatItIs() {
    for (EdgeRule rule : List.of(EdgeRule.TWO_DIAMETER, EdgeRule.STRICT)) {
      assertThat(rule.edgeSource(8, 9)).contains("2 D", "rivets", "aircraft", "by analogy");
    }
    assertThat(EdgeRule.TWO_DIAMETER.spacingSource(8, 9)).contains("3 D", "by analogy");
  }

  /** For every size that a job can ask for, and for holes drilled far too large. */
  @Test
  void strictIsTheStrictestOfAll() {
    List<EdgeRule> others =
        Stream.of(EdgeRule.values()).filter(rule -> rule != EdgeRule.STRICT).toList();
    assertThat(others).hasSize(3);
    for (Thread thread : Thread.KNOWN) {
      double bolt = thread.nominalMm();
      DoubleStream holes =
          DoubleStream.concat(
              Stream.of(Fit.values()).mapToDouble(thread::holeMm),
              DoubleStream.of(bolt, 4 * bolt / 3, 1.4 * bolt, 2 * bolt));
      holes.forEach(
          hole -> {
            double edge = others.stream().mapToDouble(r -> r.edgeMm(bolt, hole)).max().orElse(0);
            double apart =
                others.stream().mapToDouble(r -> r.spacingMm(bolt, hole)).max().orElse(0);
            assertThat(EdgeRule.STRICT.edgeMm(bolt, hole)).isEqualTo(edge);
            assertThat(EdgeRule.STRICT.spacingMm(bolt, hole)).isEqualTo(apart);
            assertThat(named(EdgeRule.STRICT.edgeSource(bolt, hole), bolt, hole))
                .isCloseTo(edge, within(1e-9));
            assertThat(named(EdgeRule.STRICT.spacingSource(bolt, hole), bolt, hole))
                .isCloseTo(apart, within(1e-9));
          });
    }
  }

  /** What a reader works out from the words beside a limit: "1.5 d0, ..." or "2 D, ...". */
  private static double named(String source, double bolt, double hole) {
    String[] words = source.split("[ ,]+");
    assertThat(words[1]).isIn("d0", "D");
    return Double.parseDouble(words[0]) * (words[1].equals("D") ? bolt : hole);
  }

  @Test
  void edgeRules() {
    // Published: EN 1993-1-8:2005 Table 3.3, e >= 1.2 d0, p1 >= 2.2 d0, p2 >= 2.4 d0.
    assertThat(EdgeRule.EN1993.edgeMm(8, 9)).isCloseTo(10.8, within(1e-12));
    assertThat(EdgeRule.EN1993.spacingMm(8, 9)).isCloseTo(21.6, within(1e-12));
    // Published: NAVEDTRA 14018 ch. 13, edge 2 D, spacing 3 D.
    assertThat(EdgeRule.TWO_DIAMETER.edgeMm(8, 9)).isEqualTo(16.0);
    assertThat(EdgeRule.TWO_DIAMETER.spacingMm(8, 9)).isEqualTo(24.0);
    assertThat(EdgeRule.STRICT.edgeMm(8, 9)).isEqualTo(16.0);
    assertThat(EdgeRule.STRICT.spacingMm(8, 9)).isEqualTo(27.0);
    // A hole far larger than its bolt: thin sheet's rule governs.
    assertThat(EdgeRule.STRICT.edgeMm(8, 14)).isEqualTo(21.0);
    assertThat(EdgeRule.STRICT.edgeSource(8, 14)).contains("EN 1993-1-3");
    assertThat(EdgeRule.STRICT.spacingMm(8, 14)).isEqualTo(42.0);
  }

  @ParameterizedTest
  @CsvSource({
    // Published: ISO 216:2007 (A4, A3); 8.5 x 11, 8.5 x 14 and 11 x 17 in, at 25.4 mm each.
    "A4, 210, 297",
    "A3, 297, 420",
    "Letter, 215.9, 279.4",
    "Legal, 215.9, 355.6",
    "Tabloid, 279.4, 431.8",
  })
  void paperSizes(String word, double width, double height) {
    Paper paper =
        java.util.Arrays.stream(Paper.values())
            .filter(p -> p.word().equals(word))
            .findFirst()
            .orElseThrow();
    assertThat(paper.widthMm()).isCloseTo(width, within(1e-9));
    assertThat(paper.heightMm()).isCloseTo(height, within(1e-9));
  }

  @Test
  void domeFromItsSagitta() {
    // Independent: R^2 = (c / 2)^2 + (R - s)^2 by Pythagoras, so R = c^2 / (8 s) + s / 2.
    Crown crown = new Crown(140, 3);
    assertThat(crown.radiusMm()).isCloseTo(140.0 * 140 / (8 * 3) + 1.5, within(1e-9));
  }

  @Test
  void domeOnPaper() {
    // Published method: azimuthal equidistant projection, Snyder, USGS Professional Paper 1395.
    // Computed from it: radius 300, rim 100 -> 101.951.
    double rise = 300 - Math.sqrt(300 * 300 - 100 * 100);
    Crown crown = new Crown(200, rise);
    assertThat(crown.radiusMm()).isCloseTo(300, within(1e-9));
    assertThat(crown.alongSkinMm(100)).isCloseTo(101.951, within(5e-4));
    Vec2 onPaper = crown.onPaper(new Vec2(60, -80));
    assertThat(onPaper.norm()).isCloseTo(101.951, within(5e-4));
    assertThat(onPaper.x() / onPaper.y()).isCloseTo(60.0 / -80.0, within(1e-12));
    assertThat(crown.onPaper(Vec2.ZERO)).isEqualTo(Vec2.ZERO);
  }

  @Test
  void acrossCorners() {
    // Independent: a regular hexagon's corners lie on a circle of AF 2 / sqrt 3. AF 18 beats a
    // washer of 20 only past 17.3.
    Bolt bolt = new Bolt("A", Vec2.ZERO, Thread.find("M10").orElseThrow(), 18, 20);
    assertThat(bolt.seatRadiusMm()).isCloseTo(18 / Math.sqrt(3), within(1e-12));
    Bolt small = new Bolt("A", Vec2.ZERO, Thread.find("M10").orElseThrow(), 16, 20);
    assertThat(small.seatRadiusMm()).isEqualTo(10.0);
  }

  @Test
  void leanTipsTheNormalTheWayItSays() {
    // Independent: by hand. ISO 8855 axes: inboard is -Y on the left, rearward is -X.
    Lean lean =
        new Lean(
            dev.towerscribe.quantity.Angle.ofDegrees(5),
            dev.towerscribe.quantity.Angle.ofDegrees(2));
    var left = lean.normal(Side.LEFT);
    assertThat(left.x()).isNegative();
    assertThat(left.y()).isNegative();
    assertThat(left.x() / left.z()).isCloseTo(-Math.tan(Math.toRadians(2)), within(1e-12));
    assertThat(left.y() / left.z()).isCloseTo(-Math.tan(Math.toRadians(5)), within(1e-12));
    assertThat(lean.normal(Side.RIGHT)).isEqualTo(left.mirroredAcross());
    for (Side side : Side.values()) {
      var f = lean.fore(side);
      var i = lean.in(side);
      var n = lean.normal(side);
      assertThat(f.dot(n)).isCloseTo(0, within(1e-12));
      assertThat(f.dot(i)).isCloseTo(0, within(1e-12));
      assertThat(i.norm()).isCloseTo(1, within(1e-12));
      assertThat(f.x()).isPositive();
      assertThat(i.y() * side.inboardSign()).isPositive();
      // Vehicle X projected into the plane has no sideways part of its own.
      assertThat(f.cross(n).dot(new dev.towerscribe.geometry.Vec3(1, 0, 0)))
          .isCloseTo(0, within(1e-12));
    }
  }
}
