package dev.towerscribe.part;

import static org.assertj.core.api.Assertions.assertThat;
import static org.assertj.core.api.Assertions.within;

import dev.towerscribe.finding.Finding;
import dev.towerscribe.finding.JobRejected;
import dev.towerscribe.finding.Severity;
import dev.towerscribe.geometry.Bore;
import dev.towerscribe.geometry.Region;
import dev.towerscribe.geometry.Vec2;
import dev.towerscribe.layout.JobLayout;
import dev.towerscribe.layout.PlacedHole;
import dev.towerscribe.layout.SideLayout;
import dev.towerscribe.model.Side;
import dev.towerscribe.quantity.Tolerances;
import org.junit.jupiter.api.Test;

class JigsTest {
  private static final double MM = Tolerances.COMPUTED_MM;

  private static SideJig jig(String text, Side side) throws JobRejected {
    JobLayout layout = PartJobs.layout(text);
    return Jigs.of(layout.sides().get(side), layout.job().jig(), layout.job().units());
  }

  private static Feature feature(SideJig jig, String name) {
    return jig.part().orElseThrow().features().stream()
        .filter(f -> f.name().equals(name))
        .findFirst()
        .orElseThrow();
  }

  /**
   * Independent: seen from above, forward up, inboard is right of a left tower, left of a right.
   */
  @Test
  void itLiesOnItsTowerAsSeenFromAbove() throws Exception {
    // Landmark at fore 38, in -82.
    Feature left = feature(jig(PartJobs.PLAIN, Side.LEFT), "drain hole");
    assertThat(left.centre()).isEqualTo(new Vec2(-82, 38));
    Feature right = feature(jig(PartJobs.PLAIN, Side.RIGHT), "drain hole");
    assertThat(right.centre()).isEqualTo(new Vec2(82, 38));
    assertThat(left.kind()).isEqualTo(FeatureKind.SIGHT_HOLE);
    assertThat(left.diameterMm()).isEqualTo(9);
  }

  @Test
  void bushingsStandOverTheHolesOfTheTower() throws Exception {
    JobLayout layout = PartJobs.layout(PartJobs.PLAIN);
    for (SideLayout side : layout.sides().values()) {
      SideJig jig = Jigs.of(side, layout.job().jig(), layout.job().units());
      double inboard = side.side() == Side.LEFT ? 1 : -1;
      for (PlacedHole hole : side.holes()) {
        Feature bushing = feature(jig, hole.name());
        assertThat(bushing.centre().x()).isCloseTo(inboard * hole.at().y(), within(MM));
        assertThat(bushing.centre().y()).isCloseTo(hole.at().x(), within(MM));
        // From memory: DIN 179, a bore of 3 in a bushing of 6; H7 from memory too at 6 mm.
        assertThat(bushing.diameterMm()).isEqualTo(6);
        assertThat(bushing.size().text()).isEqualTo("H7");
        assertThat(bushing.note()).contains("drill 3 mm", "tower hole 9 mm");
      }
      assertThat(jig.bushingOutsideMm().assumed()).isTrue();
    }
  }

  /** Independent: radius of every corner 4.5 + 12 round the widest hole, as discs all alike. */
  @Test
  void metalRoundEveryHoleAndAWindowOverTheCut() throws Exception {
    Part part = jig(PartJobs.PLAIN, Side.LEFT).part().orElseThrow();
    Region outline = Region.inside(part.solid().outline());
    // The window, last, may come nearer.
    int holes = part.solid().bores().size() - 1;
    for (Bore bore : part.solid().bores().subList(0, holes)) {
      assertThat(outline.depth(bore.centre()) - bore.diameterMm() / 2)
          .isGreaterThanOrEqualTo(12 - MM);
    }
    assertThat(part.solid().thicknessMm()).isEqualTo(10);
    // Independent: the line between holes A and B passes 34.3056 from the middle, worked out apart,
    // so
    // a margin of m leaves 34.3056 + 4.5 + m - 49 round the final cut (mark 104 less keep 3 all
    // round): half the margin from m = 20.39 on. Below that the window is the opening, 62.
    assertThat(window(PartJobs.PLAIN).diameterMm()).isCloseTo(62, within(MM));
    assertThat(window(PartJobs.PLAIN + "[jig]\nmargin = 20.3\n").diameterMm())
        .isCloseTo(62, within(MM));
    assertThat(window(PartJobs.PLAIN + "[jig]\nmargin = 20.5\n").diameterMm())
        .isCloseTo(98, within(MM));
    assertThat(part.massKg()).isPositive();
    assertThat(part.assumed()).contains("bushing outside: 6 mm, from memory, DIN 179");
  }

  private static Feature window(String text) throws JobRejected {
    Part part = jig(text, Side.LEFT).part().orElseThrow();
    Feature window = part.features().get(part.features().size() - 1);
    assertThat(window.kind()).isEqualTo(FeatureKind.WINDOW);
    return window;
  }

  @Test
  void theJobsOwnFigures() throws Exception {
    String text =
        PartJobs.PLAIN
            + "[jig]\nthickness = 15.0\nmargin = 14.0\nbushing = { bore = 6.0, outside = 11.0 }\n";
    SideJig jig = jig(text, Side.LEFT);
    assertThat(jig.bushingOutsideMm().value()).isEqualTo(11);
    assertThat(jig.bushingOutsideMm().assumed()).isFalse();
    assertThat(jig.part().orElseThrow().solid().thicknessMm()).isEqualTo(15);
    assertThat(jig.part().orElseThrow().assumed()).noneMatch(a -> a.startsWith("thickness"));
  }

  /** Independent: at 38 out a landmark of 8 leaves 38 - 4 - 31 = 3 to the opening, less than 6. */
  @Test
  void noWindowWhereEvenTheOpeningLeavesTooLittle() throws Exception {
    String near =
        PartJobs.PLAIN.replace(
            "at = [38.0, -82.0], diameter = 9", "at = [38.0, 0.0], diameter = 8");
    SideJig without = jig(near, Side.LEFT);
    assertThat(without.part().orElseThrow().features())
        .extracting(Feature::kind)
        .doesNotContain(FeatureKind.WINDOW);
    assertThat(without.findings()).extracting(Finding::id).contains("left.jig-window");
  }

  @Test
  void aLandmarkInTheWayOfAHoleForbidsIt() throws Exception {
    Vec2 hole = PartJobs.layout(PartJobs.PLAIN).sides().get(Side.LEFT).holes().get(0).at();
    String at = "at = [" + (hole.x() + 3) + ", " + hole.y() + "]";
    String text = PartJobs.PLAIN.replace("at = [38.0, -82.0]", at);
    SideJig jig = jig(text, Side.LEFT);
    assertThat(jig.part()).isEmpty();
    Finding clash = jig.findings().get(0);
    assertThat(clash.id()).isEqualTo("left.jig-clash.bushing-A.sight-hole-drain-hole");
    assertThat(clash.isStop()).isTrue();
    // Independent: centres 3 apart, radii 3 and 4.5.
    assertThat(clash.figure()).isCloseTo(-4.5, within(1e-6));
  }

  @Test
  void aDrillLargerThanTheHoleIsRefused() throws Exception {
    SideJig jig = jig(PartJobs.PLAIN + "[jig]\nbushing = { bore = 9.5 }\n", Side.LEFT);
    assertThat(jig.part()).isEmpty();
    assertThat(jig.findings()).extracting(Finding::id).contains("left.jig-drill.A");
  }

  /** Independent: R = 140^2 / 24 + 1.5 = 818.1667; at r the dome is R - sqrt(R^2 - r^2) lower. */
  @Test
  void aFlatJigOnADomedTop() throws Exception {
    String text =
        PartJobs.PLAIN.replace(
            "sheet = 1.4", "sheet = 1.4\ncrown = { across = 140.0, rise = 3.0 }");
    SideLayout side = PartJobs.layout(text).sides().get(Side.LEFT);
    double r = side.holes().stream().mapToDouble(h -> h.at().norm()).max().orElseThrow();
    double radius = 140.0 * 140 / 24 + 1.5;
    Finding dome =
        jig(text, Side.LEFT).findings().stream()
            .filter(f -> f.id().equals("left.jig-dome"))
            .findFirst()
            .orElseThrow();
    assertThat(dome.severity()).isEqualTo(Severity.CAUTION);
    assertThat(dome.figure()).isCloseTo(radius - Math.sqrt(radius * radius - r * r), within(MM));
    assertThat(jig(PartJobs.PLAIN, Side.LEFT).findings())
        .extracting(Finding::id)
        .doesNotContain("left.jig-dome");
  }

  @Test
  void whatStandsRoundIt() throws Exception {
    String one =
        PartJobs.PLAIN.replace(
            "  { name = \"clip hole\", at = [-70.0, -60.0], diameter = 7.0 },\n", "");
    assertThat(jig(one, Side.LEFT).findings())
        .extracting(Finding::id)
        .contains("left.jig-register");
    String wall =
        PartJobs.PLAIN.replace(
            "[plate]\n",
            "wall = { points = [[90, -90], [90, 90], [-90, 90], [-90, -90]] }\n[[tower.bracket]]\n"
                + "name = \"low one\"\noutline = [[-95, 36], [-40, 36], [-40, 92], [-95, 92]]\n"
                + "underside = 9.0\nleast_width = 3.0\n[plate]\n");
    assertThat(jig(wall, Side.LEFT).findings())
        .extracting(Finding::id)
        .contains("left.jig-wall", "left.jig-bracket.low-one");
  }
}
