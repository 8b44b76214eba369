package dev.towerscribe.alignment;

import static org.assertj.core.api.Assertions.assertThat;
import static org.assertj.core.api.Assertions.within;

import dev.towerscribe.SampleJobs;
import dev.towerscribe.geometry.Vec2;
import dev.towerscribe.model.Side;
import dev.towerscribe.model.SideJob;
import dev.towerscribe.model.StrutPoints;
import dev.towerscribe.quantity.Angle;
import java.util.Optional;
import java.util.Random;
import org.junit.jupiter.api.Test;

/** The quick closed form against the one that is reported. */
class QuickStrutTest {
  /**
   * A ride height met to 1e-8 mm leaves angles right to that over the arm's 300 mm: 3e-11, and ten
   * times that for what the linkage makes of it.
   */
  private static final double RAD = 3e-10;

  /**
   * Bump steer is read from a parabola through three of 21 wheel heights at the travel's ends, and
   * a peak between two heights is missed by an eighth of the bend over 8 mm: half a hundredth.
   */
  private static final double SHARE = 0.005;

  private static final double TRAVEL = 80;

  private static SideJob job(Side side) {
    return SampleJobs.side(side, SampleJobs.fullTower(), SampleJobs.plate(true));
  }

  @Test
  void readsAsTheBayDoesAtRandomBearingsOnBothSides() throws NotReached {
    for (Side side : Side.values()) {
      SideJob job = job(side);
      Bay bay = Bay.of(job);
      QuickStrut quick = new QuickStrut(job, TRAVEL, TRAVEL, 21);
      Random random = new Random(20261125);
      for (int i = 0; i < 500; i++) {
        Vec2 bearing = new Vec2(80 * random.nextDouble() - 50, 80 * random.nextDouble() - 40);
        assertThat(quick.set(bearing.x(), bearing.y())).isTrue();
        Pose pose = bay.at(bearing);
        assertThat(quick.caster()).isCloseTo(pose.caster(), within(RAD));
        assertThat(quick.camber()).isCloseTo(pose.camber(), within(RAD));
        double peak =
            bay.travel(pose, -TRAVEL, TRAVEL, 8).stream()
                .mapToDouble(p -> Math.abs(p.pose().toe() - pose.toe()))
                .max()
                .orElseThrow();
        assertThat(quick.bumpSteer()).isCloseTo(peak, within(SHARE * peak));
      }
    }
  }

  @Test
  void turnsTheKnuckleBoltAsTheBayDoes() throws NotReached {
    StrutPoints.KnuckleBolt bolt =
        new StrutPoints.KnuckleBolt(
            new dev.towerscribe.geometry.Vec3(-6, 610, 300),
            Angle.ofDegrees(-2),
            Angle.ofDegrees(0.5));
    StrutPoints strut = job(Side.LEFT).strut().orElseThrow().withKnuckleBolt(Optional.of(bolt));
    SideJob job = job(Side.LEFT).withStrut(Optional.of(strut));
    Bay bay = Bay.of(job);
    for (Angle turn : new Angle[] {bolt.from(), bolt.to()}) {
      QuickStrut quick = QuickStrut.withKnuckle(job, turn);
      for (Vec2 bearing : new Vec2[] {new Vec2(-27, 9), new Vec2(0, 0), new Vec2(5, 24)}) {
        assertThat(quick.set(bearing.x(), bearing.y())).isTrue();
        assertThat(quick.camber())
            .isCloseTo(bay.withKnuckle(turn).at(bearing).camber(), within(RAD));
      }
    }
  }

  @Test
  void answersDoNotDependOnTheOneBefore() throws NotReached {
    QuickStrut used = new QuickStrut(job(Side.LEFT), TRAVEL, TRAVEL, 21);
    used.set(-40, 30);
    used.bumpSteer();
    QuickStrut fresh = new QuickStrut(job(Side.LEFT), TRAVEL, TRAVEL, 21);
    used.set(-20, 8);
    fresh.set(-20, 8);
    assertThat(used.caster()).isEqualTo(fresh.caster());
    assertThat(used.bumpSteer()).isEqualTo(fresh.bumpSteer());
  }

  @Test
  void saysWhereTheLinkageDoesNotReach() throws NotReached {
    QuickStrut quick = new QuickStrut(job(Side.LEFT), TRAVEL, TRAVEL, 21);
    // Five metres forward the wheel cannot be turned to its toe at ride height, or has no pose.
    SideJob job = job(Side.LEFT);
    Vec2 far = new Vec2(0, -2000);
    boolean bay;
    try {
      Bay.of(job).at(far);
      bay = true;
    } catch (NotReached e) {
      bay = false;
    }
    assertThat(quick.set(far.x(), far.y())).isEqualTo(bay);
  }
}
