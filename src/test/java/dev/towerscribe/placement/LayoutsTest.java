package dev.towerscribe.placement;

import static org.assertj.core.api.Assertions.assertThat;
import static org.assertj.core.api.Assertions.within;

import dev.towerscribe.SampleJobs;
import dev.towerscribe.alignment.StrutRodPoses;
import dev.towerscribe.finding.Finding;
import dev.towerscribe.finding.Severity;
import dev.towerscribe.geometry.Vec2;
import dev.towerscribe.layout.Layout;
import dev.towerscribe.layout.SideLayout;
import dev.towerscribe.layout.Sweep;
import dev.towerscribe.model.Job;
import dev.towerscribe.model.Side;
import dev.towerscribe.model.SideJob;
import dev.towerscribe.model.StrutPoints;
import dev.towerscribe.model.StrutRodReach;
import dev.towerscribe.quantity.Angle;
import java.util.List;
import java.util.Optional;
import java.util.Random;
import org.junit.jupiter.api.Test;

class LayoutsTest {
  private static final Job DEMO =
      SampleJobs.job(SampleJobs.fullTower(), SampleJobs.plate(true), s -> s);

  private static Finding sweep(SideLayout side) {
    return side.findings().stream()
        .filter(f -> f.id().endsWith(".sweep"))
        .findFirst()
        .orElseThrow();
  }

  @Test
  void travelAndSteerWidenTheSweep() throws Exception {
    Sweep still = Layout.of(Layout.atRest(DEMO)).sides().get(Side.LEFT).sweep();
    SideLayout side = Layouts.of(DEMO).layout().sides().get(Side.LEFT);
    Sweep moving = side.sweep();
    assertThat(still.poses()).isZero();
    assertThat(moving.poses()).isEqualTo(125);
    assertThat(moving.slantDegrees()).isGreaterThan(still.slantDegrees());
    assertThat(moving.region().area()).isGreaterThan(still.region().area());
    assertThat(sweep(side).figure())
        .isLessThan(sweep(Layout.of(Layout.atRest(DEMO)).sides().get(Side.LEFT)).figure());
    // Independent: the strut rod's disc at any of its poses lies in the region, the disc calculated
    // from that pose's own slant.
    SideJob job = Layout.atRest(DEMO).sides().get(Side.LEFT);
    // The plate and the metal beside it lie on one rim, so 18 it stays.
    for (StrutRodReach.Ray ray : StrutRodPoses.of(job).orElseThrow().rays()) {
      Vec2 centre = job.bearing(ray.settingMm()).plus(ray.perMm().times(18));
      double tan = ray.perMm().norm();
      double radius = 11 * Math.sqrt(1 + tan * tan) + 1.4 * tan + 2;
      assertThat(moving.region().depth(centre)).isGreaterThanOrEqualTo(radius - 1e-9);
    }
  }

  @Test
  void noPoseBetweenThoseCountedReachesFartherByMoreThanATenth() throws Exception {
    SideJob job = Layout.atRest(DEMO).sides().get(Side.LEFT);
    Sweep sweep = Layouts.of(DEMO).layout().sides().get(Side.LEFT).sweep();
    Random random = new Random(7);
    StrutPoints.Limits all = job.strut().orElseThrow().limits();
    for (int i = 0; i < 200; i++) {
      StrutPoints.Limits some =
          new StrutPoints.Limits(
              all.bumpMm() * random.nextDouble(),
              all.droopMm() * random.nextDouble(),
              new Angle(all.steer().radians() * random.nextDouble()));
      for (StrutRodReach.Ray ray : StrutRodPoses.of(with(job, some)).orElseThrow().rays()) {
        Vec2 centre = job.bearing(ray.settingMm()).plus(ray.perMm().times(18));
        double tan = ray.perMm().norm();
        double radius = 11 * Math.sqrt(1 + tan * tan) + 1.4 * tan + 2;
        // What is documented of the sampling.
        assertThat(sweep.region().depth(centre)).isGreaterThanOrEqualTo(radius - 0.1);
      }
    }
  }

  private static SideJob with(SideJob j, StrutPoints.Limits limits) {
    StrutPoints s = j.strut().orElseThrow();
    return j.withStrut(Optional.of(s.withLimits(limits)));
  }

  @Test
  void aStrutThatNeverMovesSweepAsAtRest() throws Exception {
    SideJob job = with(DEMO.sides().get(Side.LEFT), new StrutPoints.Limits(0, 0, Angle.ZERO));
    Sweep moving = Layouts.of(SampleJobs.only(job)).layout().sides().get(Side.LEFT).sweep();
    Sweep still = Layout.of(Layout.atRest(SampleJobs.only(job))).sides().get(Side.LEFT).sweep();
    // The upright follows the bearing, so that the lower end is not quite where it was measured.
    assertThat(moving.radiusMm()).isCloseTo(still.radiusMm(), within(0.2));
    assertThat(moving.region().marginAround(still.region())).isGreaterThanOrEqualTo(-1e-9);
  }

  @Test
  void bothTowersOfAMirroredCarSweepAlike() throws Exception {
    var sides = Layouts.of(DEMO).layout().sides();
    assertThat(sides.get(Side.RIGHT).sweep().region().area())
        .isCloseTo(sides.get(Side.LEFT).sweep().region().area(), within(1e-6));
  }

  @Test
  void alignmentFindingsStandAmongTheOthersGravestFirst() throws Exception {
    Layouts.Worked worked = Layouts.of(DEMO);
    for (SideLayout side : worked.layout().sides().values()) {
      List<Finding> all = side.findings();
      assertThat(all).extracting(Finding::id).contains("both.cross-caster");
      assertThat(all)
          .containsAll(worked.alignment().sides().get(side.side()).findings())
          .isSortedAccordingTo(java.util.Comparator.comparing(Finding::severity));
      assertThat(all).extracting(Finding::severity).contains(Severity.NOTE);
    }
  }
}
