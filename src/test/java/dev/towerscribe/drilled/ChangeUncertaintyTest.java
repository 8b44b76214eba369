package dev.towerscribe.drilled;

import static org.assertj.core.api.Assertions.assertThat;
import static org.assertj.core.api.Assertions.within;

import dev.towerscribe.SampleJobs;
import dev.towerscribe.alignment.Alignment;
import dev.towerscribe.alignment.Reading;
import dev.towerscribe.geometry.Vec3;
import dev.towerscribe.model.Mount;
import dev.towerscribe.model.MountCovariance;
import dev.towerscribe.model.PlusMinus;
import dev.towerscribe.model.Side;
import dev.towerscribe.model.SideJob;
import dev.towerscribe.model.StrutPoints;
import dev.towerscribe.quantity.Angle;
import java.util.ArrayList;
import java.util.List;
import java.util.Optional;
import java.util.function.Function;
import java.util.function.ToDoubleFunction;
import org.junit.jupiter.api.Test;

/**
 * What the points' own errors leave of the change that the drilling made. They move both figures
 * alike, so most of it cancels: the change is far better known than either figure.
 */
class ChangeUncertaintyTest {
  /** Central differences with these steps against derivatives, relative. */
  private static final double DIFFERENCES = 1e-5;

  private static final double STEP_MM = 1e-2;
  private static final double STEP_RAD = 1e-5;

  /** Every coordinate its own, so that none can stand in for another. */
  private static final PlusMinus SURE =
      new PlusMinus(
          List.of(
              new Vec3(0.5, 0.6, 0.7),
              new Vec3(0.8, 0.9, 1.0),
              new Vec3(1.1, 1.2, 1.3),
              new Vec3(1.4, 1.5, 1.6),
              new Vec3(0.45, 0.55, 0.65),
              new Vec3(0.75, 0.85, 0.95),
              new Vec3(1.05, 1.15, 1.25),
              new Vec3(1.35, 1.45, 1.55)),
          Angle.ofDegrees(0.1));

  private final SideJob job =
      SampleJobs.side(Side.LEFT, SampleJobs.fullTower(), SampleJobs.plate(true))
          .with(new Mount(Angle.ofDegrees(55), 8, -3, 4));
  private final Mount astray = new Mount(Angle.ofDegrees(58), 11, 1, 4);

  @Test
  void theChangeIsNowLessThenCoordinateByCoordinate() {
    DrilledAngles found = DrilledAngles.of(strut(points(SURE)), astray, MountCovariance.EXACT);
    check(found.caster().orElseThrow(), job -> read(job, Reading::caster), true);
    check(found.camber().orElseThrow(), job -> read(job, Reading::camber), true);
    check(found.toe().orElseThrow(), ToeBeforeReset::at, false);
  }

  /** independent: each coordinate and the camber moved by hand, the bay read again. */
  private void check(
      DrilledAngles.Figure found, ToDoubleFunction<SideJob> figure, boolean mostCancels) {
    double ofChange = 0;
    double ofFigure = 0;
    for (Moved m : moves()) {
      double now = (at(m.up(), astray, figure) - at(m.down(), astray, figure)) / m.by() * m.sd();
      double then =
          (at(m.up(), job.mount(), figure) - at(m.down(), job.mount(), figure)) / m.by() * m.sd();
      ofFigure += now * now;
      ofChange += (now - then) * (now - then);
    }
    var sure = found.uncertainty().orElseThrow();
    assertThat(sure.points().orElseThrow().radians())
        .isCloseTo(Math.sqrt(ofFigure), within(DIFFERENCES * Math.sqrt(ofFigure)));
    assertThat(sure.pointsOfChange().orElseThrow().radians())
        .isCloseTo(Math.sqrt(ofChange), within(DIFFERENCES * Math.sqrt(ofFigure)));
    // Common practice says so, too: what changed is known better than what is.
    if (mostCancels) {
      assertThat(ofChange).isLessThan(ofFigure / 25);
    }
  }

  private double at(StrutPoints points, Mount mount, ToDoubleFunction<SideJob> figure) {
    return figure.applyAsDouble(strut(points).with(mount));
  }

  private static double read(SideJob job, Function<Reading, Angle> figure) {
    return figure.apply(Alignment.of(job).orElseThrow().at().orElseThrow()).radians();
  }

  private SideJob strut(StrutPoints points) {
    return job.withStrut(Optional.of(points)).withAxis(Optional.empty());
  }

  private record Moved(StrutPoints up, StrutPoints down, double by, double sd) {}

  private List<Moved> moves() {
    List<Moved> moves = new ArrayList<>();
    for (int i = 0; i < 24; i++) {
      Vec3 sd = SURE.points().get(i / 3);
      double[] sds = {sd.x(), sd.y(), sd.z()};
      moves.add(new Moved(points(i, STEP_MM, 0), points(i, -STEP_MM, 0), 2 * STEP_MM, sds[i % 3]));
    }
    moves.add(
        new Moved(
            points(0, 0, STEP_RAD),
            points(0, 0, -STEP_RAD),
            2 * STEP_RAD,
            SURE.camber().radians()));
    return moves;
  }

  private StrutPoints points(PlusMinus sure) {
    return job.strut().orElseThrow().withPlusMinus(sure);
  }

  private StrutPoints points(int coordinate, double mm, double camber) {
    StrutPoints s = points(PlusMinus.all(0));
    List<Vec3> at = new ArrayList<>(s.points());
    int axis = coordinate % 3;
    Vec3 by = new Vec3(axis == 0 ? mm : 0, axis == 1 ? mm : 0, axis == 2 ? mm : 0);
    at.set(coordinate / 3, at.get(coordinate / 3).plus(by));
    return s.withPoints(at).withCamber(new Angle(s.camber().radians() + camber));
  }
}
