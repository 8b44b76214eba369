package dev.towerscribe.alignment;

import static org.assertj.core.api.Assertions.assertThat;
import static org.assertj.core.api.Assertions.within;

import dev.towerscribe.SampleJobs;
import dev.towerscribe.geometry.Vec3;
import dev.towerscribe.model.Mount;
import dev.towerscribe.model.PlusMinus;
import dev.towerscribe.model.Side;
import dev.towerscribe.model.SideJob;
import dev.towerscribe.model.StrutPoints;
import dev.towerscribe.quantity.Angle;
import java.util.ArrayList;
import java.util.List;
import java.util.Optional;
import java.util.Random;
import java.util.function.ToDoubleFunction;
import org.junit.jupiter.api.Test;

class SensitivityTest {
  private static SideJob job(Side side) {
    return SampleJobs.side(side, SampleJobs.fullTower(), SampleJobs.plate(true));
  }

  /** The strut with one coordinate of one point moved. */
  private static StrutPoints nudged(StrutPoints s, int coordinate, double by) {
    List<Vec3> p = new ArrayList<>(s.points());
    Vec3 step =
        new Vec3(
            coordinate % 3 == 0 ? by : 0,
            coordinate % 3 == 1 ? by : 0,
            coordinate % 3 == 2 ? by : 0);
    p.set(coordinate / 3, p.get(coordinate / 3).plus(step));
    return s.withPoints(p);
  }

  private static double figure(SideJob job, boolean moved, ToDoubleFunction<Pose> of)
      throws NotReached {
    Bay bay = Bay.of(job);
    return of.applyAsDouble(moved ? bay.at(job.bearing(job.mount().settingMm())) : bay.before());
  }

  @Test
  void valuesAreThoseOfTheClosedForm() throws NotReached {
    for (Side side : Side.values()) {
      SideJob job = job(side);
      Pose pose = Bay.of(job).at(job.bearing(16));
      Sensitivity.Figures f = Sensitivity.at(job, 16);
      assertThat(f.caster().value()).isCloseTo(pose.caster(), within(1e-12));
      assertThat(f.camber().value()).isCloseTo(pose.camber(), within(1e-12));
      assertThat(f.inclination().value()).isCloseTo(pose.inclination(), within(1e-12));
      assertThat(f.scrubMm().value()).isCloseTo(pose.scrubMm(), within(1e-9));
      assertThat(f.trailMm().value()).isCloseTo(pose.trailMm(), within(1e-9));
      assertThat(f.damperMm().value()).isCloseTo(pose.damperMm(), within(1e-9));
    }
  }

  @Test
  void derivativesByTheCamberAgreeWithFiniteDifferences() throws NotReached {
    SideJob job = job(Side.LEFT);
    double step = 1e-5;
    for (boolean moved : new boolean[] {false, true}) {
      Sensitivity.Figures f =
          moved ? Sensitivity.at(job, job.mount().settingMm()) : Sensitivity.before(job);
      // Independent: central differences. Truncation step^2 and rounding 1e-15 / step: 1e-9 holds
      // both with room.
      assertThat(f.camber().byCamber())
          .isCloseTo(byCamber(job, moved, step, Pose::camber), within(1e-8));
      assertThat(f.caster().byCamber())
          .isCloseTo(byCamber(job, moved, step, Pose::caster), within(1e-8));
      // The wheel's camber goes nearly whole into what the bay reads after the work.
      assertThat(f.camber().byCamber()).isBetween(0.9, 1.1);
      assertThat(f.camber().plusMinus(PlusMinus.all(0))).isZero();
    }
  }

  private static double byCamber(SideJob job, boolean moved, double step, ToDoubleFunction<Pose> of)
      throws NotReached {
    return (figure(cambered(job, step), moved, of) - figure(cambered(job, -step), moved, of))
        / (2 * step);
  }

  private static SideJob cambered(SideJob job, double by) {
    StrutPoints s = job.strut().orElseThrow();
    return job.withStrut(Optional.of(s.withCamber(new Angle(s.camber().radians() + by))));
  }

  @Test
  void derivativesByThePointsAgreeWithFiniteDifferences() throws NotReached {
    SideJob job = job(Side.LEFT);
    for (boolean moved : new boolean[] {false, true}) {
      Sensitivity.Figures f =
          moved ? Sensitivity.at(job, job.mount().settingMm()) : Sensitivity.before(job);
      for (int i = 0; i < 24; i++) {
        difference(job, moved, i, f.caster(), Pose::caster, 1e-9);
        difference(job, moved, i, f.camber(), Pose::camber, 1e-9);
        difference(job, moved, i, f.inclination(), Pose::inclination, 1e-9);
        difference(job, moved, i, f.scrubMm(), Pose::scrubMm, 1e-6);
        difference(job, moved, i, f.trailMm(), Pose::trailMm, 1e-6);
        difference(job, moved, i, f.damperMm(), Pose::damperMm, 1e-6);
      }
    }
  }

  /**
   * Central differences with a step of 0.02 mm: the third derivative of these angles is below 1e-6
   * per mm3, so the step's own error is below 1e-10; rounding gives 1e-13 / 0.02.
   */
  private static void difference(
      SideJob job,
      boolean moved,
      int coordinate,
      Sensitivity.Figure figure,
      ToDoubleFunction<Pose> of,
      double tolerance)
      throws NotReached {
    double h = 0.02;
    StrutPoints s = job.strut().orElseThrow();
    double up = figure(job.withStrut(Optional.of(nudged(s, coordinate, h))), moved, of);
    double down = figure(job.withStrut(Optional.of(nudged(s, coordinate, -h))), moved, of);
    assertThat(figure.byCoordinate()[coordinate])
        .as("coordinate " + coordinate + " moved " + moved)
        .isCloseTo((up - down) / (2 * h), within(tolerance));
  }

  @Test
  void aToeThatTheBaySetsTurnsTheHeadingBothWays() throws NotReached {
    // Independent: central differences, of a strut measured with a degree of toe-in and of toe-out.
    for (double toe : new double[] {-1, 1}) {
      SideJob straight = job(Side.LEFT);
      StrutPoints s = straight.strut().orElseThrow().withToe(Angle.ofDegrees(toe));
      SideJob job = straight.withStrut(Optional.of(s));
      Sensitivity.Figures f = Sensitivity.at(job, job.mount().settingMm());
      for (int i = 0; i < 24; i++) {
        difference(job, true, i, f.caster(), Pose::caster, 1e-9);
        difference(job, true, i, f.camber(), Pose::camber, 1e-9);
        difference(job, true, i, f.trailMm(), Pose::trailMm, 1e-6);
      }
    }
  }

  @Test
  void derivativesByTheChoicesAgreeWithFiniteDifferences() throws NotReached {
    SideJob job = job(Side.LEFT);
    Mount m = job.mount();
    Sensitivity.Figures f = Sensitivity.at(job, m.settingMm());
    double h = 1e-3;
    Mount[][] nudges = {
      {
        new Mount(new Angle(m.rotation().radians() + h), m.rearwardMm(), m.inboardMm(), 16),
        new Mount(new Angle(m.rotation().radians() - h), m.rearwardMm(), m.inboardMm(), 16)
      },
      {
        new Mount(m.rotation(), m.rearwardMm() + h, m.inboardMm(), 16),
        new Mount(m.rotation(), m.rearwardMm() - h, m.inboardMm(), 16)
      },
      {
        new Mount(m.rotation(), m.rearwardMm(), m.inboardMm() + h, 16),
        new Mount(m.rotation(), m.rearwardMm(), m.inboardMm() - h, 16)
      },
      {
        new Mount(m.rotation(), m.rearwardMm(), m.inboardMm(), 16 + h),
        new Mount(m.rotation(), m.rearwardMm(), m.inboardMm(), 16 - h)
      },
    };
    for (int i = 0; i < 4; i++) {
      SideJob up = job.with(nudges[i][0]);
      SideJob down = job.with(nudges[i][1]);
      assertThat(f.caster().byChoice()[i])
          .as("caster by choice " + i)
          .isCloseTo(
              (figure(up, true, Pose::caster) - figure(down, true, Pose::caster)) / (2 * h),
              within(1e-8));
      assertThat(f.camber().byChoice()[i])
          .as("camber by choice " + i)
          .isCloseTo(
              (figure(up, true, Pose::camber) - figure(down, true, Pose::camber)) / (2 * h),
              within(1e-8));
    }
  }

  @Test
  void propagatedUncertaintyAgreesWithSampling() throws NotReached {
    // Independent: 100 000 struts with every coordinate off by a normal error of 2 mm.
    SideJob job = job(Side.LEFT);
    StrutPoints s = job.strut().orElseThrow();
    Sensitivity.Figures f = Sensitivity.at(job, job.mount().settingMm());
    Random random = new Random(42);
    int n = 100_000;
    double[] sum = new double[4];
    double[] squares = new double[4];
    Vec3[] at = {
      s.top(),
      s.ballJoint(),
      s.armFront(),
      s.armRear(),
      s.strutLower(),
      s.tieInner(),
      s.tieOuter(),
      s.wheelCentre()
    };
    for (int i = 0; i < n; i++) {
      Vec3[] p = new Vec3[8];
      for (int k = 0; k < 8; k++) {
        p[k] =
            at[k].plus(
                new Vec3(
                    2 * random.nextGaussian(),
                    2 * random.nextGaussian(),
                    2 * random.nextGaussian()));
      }
      SideJob sampled = job.withStrut(Optional.of(s.withPoints(List.of(p))));
      Pose pose = Bay.of(sampled).at(sampled.bearing(sampled.mount().settingMm()));
      double[] x = {pose.caster(), pose.camber(), pose.scrubMm(), pose.trailMm()};
      for (int k = 0; k < 4; k++) {
        sum[k] += x[k];
        squares[k] += x[k] * x[k];
      }
    }
    Sensitivity.Figure[] figures = {f.caster(), f.camber(), f.scrubMm(), f.trailMm()};
    for (int k = 0; k < 4; k++) {
      double mean = sum[k] / n;
      double deviation = Math.sqrt(squares[k] / n - mean * mean);
      assertThat(figures[k].plusMinus(PlusMinus.all(2)) / deviation)
          .as("figure " + k)
          .isBetween(0.97, 1.03);
    }
  }

  @Test
  void rightIsLeftMirrored() throws NotReached {
    SideJob left = job(Side.LEFT);
    SideJob right = job(Side.RIGHT);
    Pose a = Bay.of(left).at(left.bearing(4));
    Pose b = Bay.of(right).at(right.bearing(4));
    assertThat(a.caster()).isEqualTo(b.caster());
    assertThat(a.camber()).isEqualTo(b.camber());
    assertThat(a.scrubMm()).isEqualTo(b.scrubMm());
  }

  @Test
  void noMoveNoChange() throws NotReached {
    // A bearing at the original centre and height is the original pivot.
    SideJob job = job(Side.LEFT);
    Bay bay = Bay.of(job);
    Vec3 there =
        TopPivot.moved(bay.mechanism().points().top(), job, dev.towerscribe.geometry.Vec2.ZERO);
    Vec3 up = job.tower().lean().normal(Side.LEFT).times(18 - 12);
    assertThat(there.minus(bay.mechanism().points().top()).minus(up).norm()).isLessThan(1e-12);
    assertThat(bay.before().caster()).isCloseTo(Math.atan2(28, 600), within(1e-12));
  }
}
