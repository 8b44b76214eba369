package dev.towerscribe.layout;

import static org.assertj.core.api.Assertions.assertThat;
import static org.assertj.core.api.Assertions.within;

import dev.towerscribe.SampleJobs;
import dev.towerscribe.finding.JobRejected;
import dev.towerscribe.geometry.Vec2;
import dev.towerscribe.model.Mount;
import dev.towerscribe.model.Side;
import dev.towerscribe.model.SideJob;
import dev.towerscribe.quantity.Angle;
import dev.towerscribe.quantity.Tolerances;
import net.jqwik.api.ForAll;
import net.jqwik.api.Property;
import net.jqwik.api.constraints.DoubleRange;

class LayoutProperties {
  private static final double MM = Tolerances.COMPUTED_MM;

  private static SideLayout lay(Side side, boolean handed, Mount mount) throws JobRejected {
    SideJob job = SampleJobs.side(side, SampleJobs.plainTower(), SampleJobs.plate(handed));
    return Layout.of(SampleJobs.only(job.with(mount))).sides().get(side);
  }

  @Property(seed = "20261125", tries = 100)
  void aMirroredPairHasOnePlan(
      @ForAll @DoubleRange(min = -180, max = 180) double degrees,
      @ForAll @DoubleRange(min = -30, max = 30) double rearward,
      @ForAll @DoubleRange(min = -30, max = 30) double inboard)
      throws JobRejected {
    Mount mount = new Mount(Angle.ofDegrees(degrees), rearward, inboard, 0);
    SideLayout left = lay(Side.LEFT, true, mount);
    SideLayout right = lay(Side.RIGHT, true, mount);
    for (int i = 0; i < left.holes().size(); i++) {
      assertThat(left.holes().get(i).at()).isEqualTo(right.holes().get(i).at());
    }
  }

  @Property(seed = "20261125", tries = 100)
  void onePartForBothSidesIsReflectedInTheSlotLine(
      @ForAll @DoubleRange(min = -180, max = 180) double degrees,
      @ForAll @DoubleRange(min = -30, max = 30) double rearward,
      @ForAll @DoubleRange(min = -30, max = 30) double inboard)
      throws JobRejected {
    Mount mount = new Mount(Angle.ofDegrees(degrees), rearward, inboard, 0);
    SideLayout left = lay(Side.LEFT, false, mount);
    SideLayout right = lay(Side.RIGHT, false, mount);
    Vec2 slot = slot(left).unit();
    Vec2 centre = new Vec2(-rearward, inboard);
    for (int i = 0; i < left.holes().size(); i++) {
      Vec2 a = left.holes().get(i).at().minus(centre);
      Vec2 b = right.holes().get(i).at().minus(centre);
      assertThat(a.dot(slot)).isCloseTo(b.dot(slot), within(MM));
      assertThat(a.cross(slot)).isCloseTo(-b.cross(slot), within(MM));
    }
    assertThat(left.bearing().distanceTo(right.bearing())).isCloseTo(0, within(MM));
  }

  @Property(seed = "20261125", tries = 100)
  void turningThePlateTurnsEveryHoleAboutItsCentre(
      @ForAll @DoubleRange(min = -180, max = 180) double degrees,
      @ForAll @DoubleRange(min = -180, max = 180) double more)
      throws JobRejected {
    SideLayout one = lay(Side.LEFT, true, new Mount(Angle.ofDegrees(degrees), 8, -3, 4));
    SideLayout two = lay(Side.LEFT, true, new Mount(Angle.ofDegrees(degrees + more), 8, -3, 4));
    Vec2 centre = new Vec2(-8, -3);
    for (int i = 0; i < one.holes().size(); i++) {
      // In (fore, in) a growing rotation turns from inboard to rearward: from +y to -x.
      Vec2 turned =
          centre.plus(one.holes().get(i).at().minus(centre).rotated(Angle.ofDegrees(more)));
      assertThat(turned.distanceTo(two.holes().get(i).at())).isCloseTo(0, within(MM));
    }
  }

  @Property(seed = "20261125", tries = 50)
  void shiftingThePlateShiftsEveryHole(
      @ForAll @DoubleRange(min = -30, max = 30) double rearward,
      @ForAll @DoubleRange(min = -30, max = 30) double inboard)
      throws JobRejected {
    SideLayout zero = lay(Side.RIGHT, true, new Mount(Angle.ofDegrees(40), 0, 0, 4));
    SideLayout moved = lay(Side.RIGHT, true, new Mount(Angle.ofDegrees(40), rearward, inboard, 4));
    for (int i = 0; i < zero.holes().size(); i++) {
      Vec2 shift = moved.holes().get(i).at().minus(zero.holes().get(i).at());
      assertThat(shift.x()).isCloseTo(-rearward, within(MM));
      assertThat(shift.y()).isCloseTo(inboard, within(MM));
    }
  }

  private static Vec2 slot(SideLayout side) {
    SideJob job = side.job();
    return job.bearing(job.plate().slot().toMm()).minus(job.bearing(job.plate().slot().fromMm()));
  }
}
