package dev.towerscribe.layout;

import static org.assertj.core.api.Assertions.assertThat;
import static org.assertj.core.api.Assertions.within;

import dev.towerscribe.SampleJobs;
import dev.towerscribe.finding.Finding;
import dev.towerscribe.finding.Findings;
import dev.towerscribe.finding.JobRejected;
import dev.towerscribe.finding.Severity;
import dev.towerscribe.geometry.Contour;
import dev.towerscribe.geometry.Vec2;
import dev.towerscribe.model.Bolt;
import dev.towerscribe.model.CutRules;
import dev.towerscribe.model.Job;
import dev.towerscribe.model.KeepOut;
import dev.towerscribe.model.Landmark;
import dev.towerscribe.model.Lean;
import dev.towerscribe.model.Mount;
import dev.towerscribe.model.Plate;
import dev.towerscribe.model.PlateChange;
import dev.towerscribe.model.Side;
import dev.towerscribe.model.SideJob;
import dev.towerscribe.model.Straightedge;
import dev.towerscribe.model.Tower;
import dev.towerscribe.model.TowerChange;
import dev.towerscribe.quantity.Angle;
import dev.towerscribe.quantity.Numbers;
import java.util.List;
import java.util.Optional;
import org.junit.jupiter.api.Test;

/**
 * Every check once where it passes and once where it fails, with its figure. At no rotation and no
 * offset the sample holes lie at A (3, 76), B (65.8, -38), C (-64, -36); M8, hole 9.0, washer 16.
 */
class ChecksTest {
  private static final double MM = 1e-9;
  private static final Mount STRAIGHT = new Mount(Angle.ZERO, 0, 0, 4);

  private static SideJob base() {
    return SampleJobs.side(Side.LEFT, SampleJobs.plainTower(), SampleJobs.plate(true))
        .with(STRAIGHT);
  }

  private static SideLayout lay(SideJob side) throws JobRejected {
    return Layout.of(SampleJobs.only(side)).sides().get(side.side());
  }

  private static Finding finding(SideLayout layout, String id) {
    return layout.findings().stream()
        .filter(f -> f.id().equals(id))
        .findFirst()
        .orElseThrow(
            () ->
                new AssertionError(
                    id + " not among " + layout.findings().stream().map(Finding::id).toList()));
  }

  private static void expect(
      SideLayout layout, String id, Severity severity, double figure, double limit) {
    Finding found = finding(layout, id);
    assertThat(found.figure()).as(id).isCloseTo(figure, within(MM));
    assertThat(found.limit()).as(id + " limit").isCloseTo(limit, within(MM));
    assertThat(found.severity()).as(id).isEqualTo(severity);
    assertThat(found.source()).as(id + " source").isNotBlank();
    assertThat(found.say()).as(id + " say").isNotBlank();
  }

  /** A tower with some of its parts changed. */
  private static Tower tower(
      double markRadius,
      Contour boltingFace,
      Contour wall,
      List<Landmark> landmarks,
      List<Straightedge> lines,
      List<KeepOut> keepOuts) {
    Tower t = SampleJobs.plainTower();
    return TowerChange.of(t)
        .withOpening(t.opening(), Contour.circle(Vec2.ZERO, markRadius))
        .withBounds(Optional.ofNullable(boltingFace), Optional.ofNullable(wall))
        .withLandmarks(landmarks, lines)
        .withObstacles(keepOuts, t.brackets())
        .tower();
  }

  private static final List<Landmark> TWO = SampleJobs.plainTower().landmarks();
  private static final Contour LAND = SampleJobs.rectangle(-110, -110, 110, 110);

  @Test
  void aSoundJobHasNoStop() throws JobRejected {
    assertThat(lay(base()).findings()).noneMatch(Finding::isStop);
  }

  @Test
  void idsAreUnique() throws JobRejected {
    JobLayout layout =
        Layout.of(SampleJobs.job(SampleJobs.fullTower(), SampleJobs.plate(true), right -> right));
    List<String> ids =
        layout.sides().values().stream()
            .flatMap(s -> s.findings().stream())
            .map(Finding::id)
            // What is about both sides is said with each of them.
            .filter(id -> !id.startsWith("both."))
            .toList();
    assertThat(ids).doesNotHaveDuplicates();
  }

  /** Keep-outs may share a name; accepting one stop must not accept another with it. */
  @Test
  void thingsOfOneNameKeepIdsOfTheirOwn() throws JobRejected {
    KeepOut under = new KeepOut("spot weld", Contour.circle(new Vec2(3, 76), 3), 3);
    KeepOut beside = new KeepOut("spot weld", Contour.circle(new Vec2(3, 82), 3), 3);
    List<Landmark> alike =
        List.of(
            new Landmark("mark", new Vec2(38, -52), 9),
            new Landmark("hole (a)", new Vec2(12, 76), 4),
            new Landmark("hole a", new Vec2(-6, 76), 4));
    Tower tower = tower(52, LAND, null, alike, List.of(), List.of(under, beside));
    assertThat(lay(base().with(tower)).findings())
        .extracting(Finding::id)
        .doesNotHaveDuplicates()
        .contains("left.keep-out.A.spot-weld", "left.keep-out.A.spot-weld-2")
        .contains("left.edge-landmark.A.hole-a", "left.edge-landmark.A.hole-a-3");
    JobLayout both = Layout.of(SampleJobs.job(tower, SampleJobs.plate(true), right -> right));
    assertThat(both.sides().get(Side.LEFT).findings())
        .extracting(Finding::id)
        .doesNotHaveDuplicates()
        .contains("left.towers-differ.mark", "left.towers-differ.mark-4");
    // The first one out of the way: the second keeps its id.
    KeepOut away = new KeepOut("spot weld", Contour.circle(new Vec2(90, 90), 3), 3);
    SideLayout later =
        lay(base().with(tower(52, LAND, null, TWO, List.of(), List.of(away, beside))));
    assertThat(finding(later, "left.keep-out.A.spot-weld-2").isStop()).isTrue();
    assertThat(later.findings()).noneMatch(f -> f.id().equals("left.keep-out.A.spot-weld"));
  }

  @Test
  void slugsNeverMeet() {
    assertThat(Findings.slugs(List.of("a b", "a-b", "a-b-2", "(a b)", "\u0438", "\u0436")))
        .doesNotHaveDuplicates()
        .startsWith("a-b");
  }

  @Test
  void edgeToTheCut() throws JobRejected {
    // Limit: strict, the largest of 1.5 d0 = 13.5, 1.2 d0 = 10.8 (EN 1993-1-3, EN 1993-1-8) and
    // 2 D = 16.
    double b = Math.hypot(65.8, 38);
    expect(lay(base()), "left.edge-cut.B", Severity.NOTE, b - 49, 16);
    SideLayout close = lay(base().with(tower(65, LAND, null, TWO, List.of(), List.of())));
    expect(close, "left.edge-cut.B", Severity.STOP, b - 62, 16);
    expect(close, "left.seat-cut.B", Severity.NOTE, b - 62, 8);
    SideLayout over = lay(base().with(tower(75, LAND, null, TWO, List.of(), List.of())));
    expect(over, "left.seat-cut.B", Severity.STOP, b - 72, 8);
  }

  @Test
  void edgeAndSeatOnTheLand() throws JobRejected {
    Contour narrow = SampleJobs.rectangle(-110, -110, 110, 83);
    SideLayout layout = lay(base().with(tower(52, narrow, null, TWO, List.of(), List.of())));
    expect(layout, "left.edge-land.A", Severity.STOP, 7, 16);
    expect(layout, "left.seat-land.A", Severity.STOP, 7, 8);
    expect(layout, "left.edge-land.B", Severity.NOTE, 44.2, 16);
  }

  @Test
  void landNotMeasuredIsACaution() throws JobRejected {
    SideLayout layout = lay(base().with(tower(52, null, null, TWO, List.of(), List.of())));
    expect(layout, "left.seat-land.A", Severity.CAUTION, 0, 8);
    assertThat(layout.findings()).noneMatch(Finding::isStop);
  }

  @Test
  void anExistingHoleIsAnEdge() throws JobRejected {
    List<Landmark> near = List.of(new Landmark("drain hole", new Vec2(3, 95), 9), TWO.get(1));
    SideLayout layout = lay(base().with(tower(52, LAND, null, near, List.of(), List.of())));
    expect(layout, "left.edge-landmark.A.drain-hole", Severity.STOP, 14.5, 16);
  }

  @Test
  void keepOutsUnderAWasherAndInTheCut() throws JobRejected {
    List<KeepOut> spots =
        List.of(
            new KeepOut("spot weld", Contour.circle(new Vec2(3, 91), 3.5), 4),
            new KeepOut("seam", SampleJobs.rectangle(-10, 50, 10, 52), 3));
    SideLayout layout = lay(base().with(tower(52, LAND, null, TWO, List.of(), spots)));
    // 15 - 3.5 - 8 and, for the seam, its corner (10, 50) and its middle.
    expect(layout, "left.keep-out.A.spot-weld", Severity.STOP, 3.5, 4);
    expect(layout, "left.cut-keep-out.seam", Severity.STOP, 1.0, 3);
    // Both keep-outs pass at C: the nearer one, by its corner (-10, 50), speaks for both.
    expect(layout, "left.keep-out.C.seam", Severity.NOTE, Math.hypot(54, 86) - 8, 3);
  }

  @Test
  void aKeepOutInsideTheCutNeverPasses() throws JobRejected {
    List<KeepOut> weld = List.of(new KeepOut("weld", Contour.circle(new Vec2(40, 0), 3), 0));
    SideLayout layout = lay(base().with(tower(52, LAND, null, TWO, List.of(), weld)));
    Finding found = finding(layout, "left.cut-keep-out.weld");
    assertThat(found.severity()).isEqualTo(Severity.STOP);
    // The deepest point of the weld is its inner edge, 37 from the centre of a cut of 49.
    assertThat(found.figure()).isCloseTo(-12, within(0.01));
  }

  @Test
  void spacing() throws JobRejected {
    Plate p = SampleJobs.plate(true);
    Bolt a = p.bolts().get(0);
    Bolt near = new Bolt("D", new Vec2(76, 25), a.thread(), 13, 16);
    Plate crowded = plateWith(p, List.of(a, near), p.outline(), 5, 2);
    SideLayout layout = lay(base().with(crowded));
    // Strict: the largest of 3 d0 = 27 (thin sheet), 2.4 d0 = 21.6 and 3 D = 24.
    expect(layout, "left.spacing.A-D", Severity.STOP, 22, 27);
    assertThat(finding(layout, "left.spacing.A-D").source()).startsWith("3 d0, EN 1993-1-3");
    expect(layout, "left.socket-bolt.A-D", Severity.NOTE, 22 - 9.6 - 13 / Math.sqrt(3), 0);
  }

  private static Plate plateWith(
      Plate p, List<Bolt> bolts, Contour outline, double cover, double wallGap) {
    return PlateChange.of(p).withShape(outline, bolts).withMargins(cover, wallGap).plate();
  }

  @Test
  void plateCoversTheOpening() throws JobRejected {
    expect(lay(base()), "left.plate-cover", Severity.NOTE, 93 - 49, 5);
    SideJob shifted = base().with(new Mount(Angle.ZERO, 0, 40, 4));
    expect(lay(shifted), "left.plate-cover", Severity.STOP, 4, 5);
  }

  @Test
  void plateClearsTheWall() throws JobRejected {
    Contour wall = SampleJobs.rectangle(-120, -120, 120, 94);
    SideLayout layout = lay(base().with(tower(52, LAND, wall, TWO, List.of(), List.of())));
    expect(layout, "left.plate-wall", Severity.STOP, 1, 2);
    Contour through = SampleJobs.rectangle(-120, -120, 120, 90);
    SideLayout met = lay(base().with(tower(52, LAND, through, TWO, List.of(), List.of())));
    assertThat(finding(met, "left.plate-wall").figure()).isNegative();
  }

  @Test
  void theOpeningHoldsWhatMoves() throws JobRejected {
    SideJob noStrut = base().withStrut(Optional.empty());
    SideLayout layout = lay(noStrut);
    // Bearing from 0 to 24 inboard, moving radius 11: 49 - 24 - 11.
    expect(layout, "left.sweep", Severity.NOTE, 14, 2);
    assertThat(finding(layout, "left.sweep-lean").severity()).isEqualTo(Severity.CAUTION);
    assertThat(finding(layout, "left.sweep-lean").isMeasured()).isFalse();
    SideLayout far = lay(noStrut.with(new Mount(Angle.ZERO, 0, 13, 4)));
    expect(far, "left.sweep", Severity.STOP, 1, 2);
  }

  @Test
  void nothingLeftToCutIsAStop() throws JobRejected {
    SideJob greedy = base().with(new CutRules(50, 2.5, 8, 10));
    SideLayout layout = lay(greedy);
    assertThat(finding(layout, "left.cut-shape").severity()).isEqualTo(Severity.STOP);
    assertThat(layout.finalCut().isEmpty()).isTrue();
  }

  @Test
  void aCutInsideTheOldOpeningIsACaution() throws JobRejected {
    SideJob shy = base().with(new CutRules(25, 2.5, 8, 10));
    // Final cut radius 27 inside an opening of 31.
    expect(lay(shy), "left.cut-opening", Severity.CAUTION, -4, 0);
  }

  @Test
  void aMarkWithAWaistFallsToPieces() throws JobRejected {
    Tower t = SampleJobs.plainTower();
    Contour dumbbell =
        Contour.polygon(
            List.of(
                new Vec2(-45, -90),
                new Vec2(45, -90),
                new Vec2(45, 45),
                new Vec2(5, 50),
                new Vec2(5, 60),
                new Vec2(40, 65),
                new Vec2(40, 95),
                new Vec2(-40, 95),
                new Vec2(-40, 65),
                new Vec2(-5, 60),
                new Vec2(-5, 50),
                new Vec2(-45, 45)));
    Tower pinched = TowerChange.of(t).withOpening(t.opening(), dumbbell).tower();
    expect(lay(base().with(pinched)), "left.cut-shape", Severity.STOP, 2, 1);
  }

  @Test
  void oneLandmarkNeedsALine() throws JobRejected {
    List<Landmark> one = TWO.subList(0, 1);
    SideLayout alone = lay(base().with(tower(52, LAND, null, one, List.of(), List.of())));
    expect(alone, "left.registration", Severity.CAUTION, 1, 2);
    // Independent: by hand. From the strut rod centre to (38, -52).
    expect(alone, "left.registration-baseline", Severity.NOTE, Math.hypot(38, 52), 50);
    List<Straightedge> line =
        List.of(new Straightedge("strut brace edge", new Vec2(-90, -80), new Vec2(90, -80)));
    SideLayout withLine = lay(base().with(tower(52, LAND, null, one, line, List.of())));
    expect(withLine, "left.registration", Severity.NOTE, 2, 2);
  }

  @Test
  void landmarksCloseTogetherAreACaution() throws JobRejected {
    List<Landmark> close =
        List.of(new Landmark("one", new Vec2(-15, 0), 6), new Landmark("two", new Vec2(15, 0), 6));
    SideLayout layout = lay(base().with(tower(52, LAND, null, close, List.of(), List.of())));
    expect(layout, "left.registration-baseline", Severity.CAUTION, 30, 50);
    SideLayout alone =
        lay(base().with(tower(52, LAND, null, close.subList(0, 1), List.of(), List.of())));
    expect(alone, "left.registration-baseline", Severity.STOP, 15, 25);
  }

  @Test
  void settingBetweenMarks() throws JobRejected {
    SideLayout layout = lay(base().with(new Mount(Angle.ZERO, 0, 0, 6)));
    expect(layout, "left.setting", Severity.CAUTION, 2, 0.5);
  }

  @Test
  void flatPlateOnADome() throws JobRejected {
    SideLayout layout =
        lay(
            SampleJobs.side(Side.LEFT, SampleJobs.fullTower(), SampleJobs.plate(true))
                .with(STRAIGHT));
    // Independent: R = (140^2 / 4 + 9) / 6, at A, the farthest, below the rim of the cut (52 - 3):
    // sqrt(R^2 - 49^2) - sqrt(R^2 - r^2). Shims fill it.
    double radius = (4900 + 9) / 6.0;
    double r2 = 9 + 76 * 76;
    double gap = Math.sqrt(radius * radius - 49 * 49) - Math.sqrt(radius * radius - r2);
    assertThat(finding(layout, "left.stand-off").severity()).isEqualTo(Severity.NOTE);
    assertThat(finding(layout, "left.stand-off").say())
        .startsWith(Numbers.fixed(gap, 2) + " mm of gap");
    assertThat(layout.rest().gapMm(layout.holes().get(0).at())).isCloseTo(gap, within(MM));
  }

  @Test
  void towersUnlikeEachOther() throws JobRejected {
    Tower t = SampleJobs.plainTower();
    Tower other =
        TowerChange.of(t)
            .withOpening(Contour.circle(Vec2.ZERO, 31.5), Contour.circle(Vec2.ZERO, 55))
            .withTop(new Lean(Angle.ofDegrees(1.5), Angle.ZERO), t.crown())
            .withLandmarks(
                List.of(new Landmark("drain hole", new Vec2(41, -48), 9), TWO.get(1)),
                t.straightedges())
            .tower();
    Job job = SampleJobs.job(t, SampleJobs.plate(true), right -> right.with(other));
    for (Side side : Side.values()) {
      SideLayout layout = Layout.of(job).sides().get(side);
      String id = side.word() + ".towers-differ.";
      expect(layout, id + "opening", Severity.NOTE, 0.5, 2);
      expect(layout, id + "mark", Severity.CAUTION, 3, 2);
      expect(layout, id + "drain-hole", Severity.CAUTION, 5, 2);
      expect(layout, id + "lean", Severity.CAUTION, 1.5, 1);
    }
  }

  @Test
  void gravestFirst() throws JobRejected {
    List<Severity> order =
        lay(base().with(tower(65, LAND, null, TWO, List.of(), List.of()))).findings().stream()
            .map(Finding::severity)
            .toList();
    assertThat(order).isSorted();
  }
}
