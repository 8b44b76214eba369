package dev.towerscribe.layout.quick;

import static org.assertj.core.api.Assertions.assertThat;

import dev.towerscribe.SampleJobs;
import dev.towerscribe.Tries;
import dev.towerscribe.finding.JobRejected;
import dev.towerscribe.geometry.Contour;
import dev.towerscribe.geometry.Vec2;
import dev.towerscribe.layout.Layout;
import dev.towerscribe.model.Bracket;
import dev.towerscribe.model.CutRules;
import dev.towerscribe.model.Job;
import dev.towerscribe.model.KeepOut;
import dev.towerscribe.model.Mount;
import dev.towerscribe.model.Plate;
import dev.towerscribe.model.PlateChange;
import dev.towerscribe.model.SideJob;
import dev.towerscribe.model.StrutRodReach;
import dev.towerscribe.model.Tower;
import dev.towerscribe.model.TowerChange;
import dev.towerscribe.quantity.Angle;
import java.util.ArrayList;
import java.util.List;
import java.util.Optional;
import java.util.Random;
import org.junit.jupiter.api.Tag;
import org.junit.jupiter.api.Test;

/** The quick answer against the checks themselves, both ways, at seeded random placements. */
class MountCheckProperties {
  private static final int PLACEMENTS = 120;

  /** Least count of each answer, so that neither way goes untried. */
  private static final int EACH_WAY = 5;

  private static final java.util.function.Function<SideJob, Optional<StrutRodReach>> STRUT_ROD =
      dev.towerscribe.alignment.StrutRodPoses::of;

  private int yes;
  private int no;

  private static boolean byLayout(Job job, Mount mount) {
    try {
      return Layout.of(job.with(mount), STRUT_ROD).stops().isEmpty();
    } catch (JobRejected e) {
      return false;
    }
  }

  private void agree(Job job, long seed, double spreadMm, double rotationFrom, double rotationTo) {
    MountCheck check = MountCheck.of(job, STRUT_ROD);
    Scratch scratch = new Scratch();
    Random random = new Random(seed);
    for (int i = 0; i < PLACEMENTS; i++) {
      Angle rotation =
          Angle.ofDegrees(rotationFrom + random.nextDouble() * (rotationTo - rotationFrom));
      double rearward = (2 * random.nextDouble() - 1) * spreadMm;
      double inboard = (2 * random.nextDouble() - 1) * spreadMm;
      boolean expected = byLayout(job, new Mount(rotation, rearward, inboard, 16));
      boolean quick = check.allows(scratch.at(rotation.radians(), rearward, inboard));
      assertThat(quick)
          .as("rotation %s, rearward %s, inboard %s", rotation.degrees(), rearward, inboard)
          .isEqualTo(expected);
      yes += expected ? 1 : 0;
      no += expected ? 0 : 1;
    }
  }

  private void bothWaysTried() {
    assertThat(yes).isGreaterThan(EACH_WAY);
    assertThat(no).isGreaterThan(EACH_WAY);
  }

  private static Tower tower(
      Contour mark, Optional<Contour> wall, List<KeepOut> keepOuts, List<Bracket> brackets) {
    Tower full = SampleJobs.fullTower();
    return TowerChange.of(full)
        .withOpening(full.opening(), mark)
        .withBounds(full.boltingFace(), wall)
        .withObstacles(keepOuts, brackets)
        .tower();
  }

  private static List<Vec2> ring(int count, double radius, double wave) {
    List<Vec2> points = new ArrayList<>();
    for (int i = 0; i < count; i++) {
      points.add(Vec2.polar(radius + wave * Math.sin(3.0 * i), Angle.ofDegrees(360.0 * i / count)));
    }
    return points;
  }

  private static Plate withOutline(Plate p, Contour outline) {
    return PlateChange.of(p).withShape(outline, p.bolts()).plate();
  }

  @Test
  void roundTowersPlatesAHandedPair() {
    agree(SampleJobs.job(SampleJobs.fullTower(), SampleJobs.plate(true), s -> s), 1, 12, 0, 90);
    agree(SampleJobs.job(SampleJobs.plainTower(), SampleJobs.plate(true), s -> s), 2, 14, -90, 180);
    bothWaysTried();
  }

  @Test
  void onePartOnBothSides() {
    agree(
        SampleJobs.job(SampleJobs.plainTower(), SampleJobs.plate(false), s -> s), 3, 12, -40, 130);
    bothWaysTried();
  }

  @Test
  void tracedMarkPolygonPlateAndAWallWithABay() {
    Contour wall =
        Contour.polygon(
            List.of(
                new Vec2(-106, -104),
                new Vec2(108, -104),
                new Vec2(108, 106),
                new Vec2(20, 106),
                new Vec2(0, 98),
                new Vec2(-20, 106),
                new Vec2(-106, 106)));
    Tower traced =
        tower(Contour.polygon(ring(14, 52, 1.5)), Optional.of(wall), List.of(), List.of());
    agree(
        SampleJobs.job(
            traced, withOutline(SampleJobs.plate(true), Contour.polygon(ring(11, 92, 2))), s -> s),
        4,
        10,
        0,
        90);
    bothWaysTried();
  }

  @Test
  void openingThatReachesPastTheCut() {
    Tower odd =
        new Tower(
            1.4,
            Contour.circle(new Vec2(6, 3), 45),
            Contour.circle(Vec2.ZERO, 52),
            SampleJobs.fullTower().lean(),
            Optional.empty(),
            12,
            SampleJobs.fullTower().boltingFace(),
            Optional.empty(),
            SampleJobs.fullTower().landmarks(),
            List.of(),
            List.of(),
            List.of(),
            Optional.empty(),
            Optional.empty());
    agree(
        SampleJobs.job(odd, SampleJobs.plate(true), s -> s.with(new CutRules(6, 2, 8, 10))),
        5,
        12,
        0,
        90);
    bothWaysTried();
  }

  @Tag("more-tries")
  @Test
  void bracketsOverEveryBolt() {
    List<Bracket> brackets =
        List.of(
            new Bracket(
                "hinge",
                SampleJobs.rectangle(-95, 36, -40, 92),
                14,
                12,
                List.of(new Bracket.Fastener(new Vec2(-86, 82), 10))),
            new Bracket(
                "angle",
                Contour.polygon(
                    List.of(
                        new Vec2(20, -100),
                        new Vec2(90, -100),
                        new Vec2(90, -20),
                        new Vec2(62, -20),
                        new Vec2(62, -66),
                        new Vec2(20, -66))),
                20,
                9,
                List.of(
                    new Bracket.Fastener(new Vec2(30, -90), 9),
                    new Bracket.Fastener(new Vec2(76, -30), 9))));
    Tower bracketed =
        tower(
            Contour.circle(Vec2.ZERO, 52),
            Optional.empty(),
            List.of(new KeepOut("seam", SampleJobs.rectangle(70, 60, 90, 64), 2)),
            brackets);
    for (int seed = 10; seed < Tries.of(12, 14); seed++) {
      agree(SampleJobs.job(bracketed, SampleJobs.plate(true), s -> s), seed, 9, -60, 160);
    }
    bothWaysTried();
  }

  @Test
  void aStopThatNoPlacementPutsRightBarsAll() {
    Job job =
        SampleJobs.job(
            SampleJobs.plainTower(),
            SampleJobs.plate(true),
            s -> s.with(new CutRules(50, 2.5, 8, 10)));
    MountCheck check = MountCheck.of(job, STRUT_ROD);
    assertThat(check.always()).isNotEmpty();
    assertThat(check.allows(new Scratch().at(1.0, 0, 0))).isFalse();
  }

  @Test
  void figuresAtTheirLimitPassAsTheyDoInTheChecks() {
    // Half a millionth of a millimetre either side of the limit: nearer than the quick figures are
    // trusted, so the checks are asked.
    Job job = SampleJobs.job(SampleJobs.plainTower(), SampleJobs.plate(true), s -> s);
    MountCheck check = MountCheck.of(job, STRUT_ROD);
    Scratch scratch = new Scratch();
    double rotation = Math.toRadians(55);
    double low = 8;
    double high = 40;
    while (high - low > 1e-9) {
      double half = (low + high) / 2;
      if (check.allows(scratch.at(rotation, half, -3))) {
        low = half;
      } else {
        high = half;
      }
    }
    assertThat(low).isGreaterThan(8);
    for (double off : new double[] {-5e-7, -1e-8, -1e-9, -1e-10, 0, 1e-10, 1e-9, 1e-8, 5e-7}) {
      Mount mount = new Mount(new Angle(rotation), low + off, -3, 0);
      assertThat(check.allows(scratch.at(rotation, low + off, -3)))
          .as("off by %s", off)
          .isEqualTo(byLayout(job, mount));
    }
  }
}
