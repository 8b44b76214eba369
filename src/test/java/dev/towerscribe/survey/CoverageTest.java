package dev.towerscribe.survey;

import static org.assertj.core.api.Assertions.assertThat;

import dev.towerscribe.adjust.Adjustment;
import dev.towerscribe.adjust.Consistency;
import dev.towerscribe.adjust.Network;
import dev.towerscribe.adjust.Repeated;
import dev.towerscribe.geometry.Vec3;
import dev.towerscribe.model.Side;
import dev.towerscribe.model.StrutPoint;
import dev.towerscribe.quantity.LengthUnit;
import java.util.ArrayList;
import java.util.HashSet;
import java.util.LinkedHashMap;
import java.util.List;
import java.util.Map;
import java.util.Optional;
import java.util.Random;
import org.junit.jupiter.api.Tag;
import org.junit.jupiter.api.Test;

/**
 * Do the +/- hold? Random cars, random readings of them, errors drawn at the uncertainties stated.
 */
@Tag("simulation")
class CoverageTest {
  private static final int CASES = 2000;

  /** What a normal error leaves within two standard deviations. */
  private static final double LEAST = .93;

  private static final double MOST = .97;

  /** Each so-manieth survey is searched for slips, of which it has none. */
  private static final int SNOOPED = 4;

  private final Random random = new Random(20261120);

  /** A car's true points and what was read of them. */
  private record Case(Survey survey, Map<SurveyPoint, Vec3> truth) {}

  @Test
  void plusMinusTwoCoversTheTruthAsOftenAsItSays() {
    int within = 0;
    int all = 0;
    int notFound = 0;
    double squares = 0;
    int freedom = 0;
    int failed = 0;
    int stopped = 0;
    for (int i = 0; i < CASES; i++) {
      Case c = randomCase();
      CarNetwork car = CarNetwork.of(c.survey(), new HashSet<>());
      Adjustment a = PointPlacer.solve(car.network()).adjustment();
      if (i % SNOOPED == 0) {
        Solved o = Solved.of(car.network());
        stopped += o.setAside().isEmpty() && o.scattered().isEmpty() ? 0 : 1;
      }
      squares += a.consistency().squares();
      freedom += a.freedom();
      failed += a.consistency().chance() < Consistency.UNLIKELY ? 1 : 0;
      for (Map.Entry<SurveyPoint, Integer> e : car.nodes().entrySet()) {
        int[] unknown = a.net().unknownsOf(e.getValue());
        if (unknown[0] == Network.NONE) {
          continue;
        }
        if (!UnfixedPoints.isFound(a, e.getValue(), 1)) {
          notFound++;
          continue;
        }
        double[] at = a.net().place(a.x(), e.getValue());
        Vec3 t = c.truth().get(e.getKey());
        double[] truth = {t.x(), t.y(), t.z()};
        for (int axis = 0; axis < 3; axis++) {
          all++;
          double sd = a.covariance().sd(unknown[axis]);
          within += Math.abs(at[axis] - truth[axis]) <= 2 * sd ? 1 : 0;
        }
      }
    }
    assertThat(all).isGreaterThan(40 * CASES / 2);
    assertThat(notFound).isZero();
    assertThat((double) within / all).isBetween(LEAST, MOST);
    // Chi-square has its degrees of freedom as its mean; of so many the mean is within 1 %.
    assertThat(squares / freedom).isBetween(.99, 1.01);
    // One good survey in a hundred fails the test: of 2000 some 20, +/- 4.5 by the binomial.
    assertThat(failed).isBetween(5, 38);
    // At most one good survey in twenty is stopped: of 500 some 25, +/- 5 by the binomial.
    assertThat(stopped).isBetween(5, 40);
  }

  private Case randomCase() {
    Map<SurveyPoint, Vec3> truth = new LinkedHashMap<>();
    List<Survey.Station> stations = new ArrayList<>();
    double[][] floor = {{-600, 0}, {500, 0}, {420, 950}, {-480, 950}, {-100, 1100}};
    for (int i = 0; i < floor.length; i++) {
      Vec3 at = new Vec3(near(floor[i][0], 100), near(floor[i][1], 100), near(0, 30));
      truth.put(SurveyPoint.station("S" + i), at);
      stations.add(new Survey.Station("S" + i, Optional.of(at), Optional.empty()));
    }
    truth.put(SurveyPoint.station("K"), new Vec3(near(-150, 60), near(100, 60), near(860, 60)));
    stations.add(new Survey.Station("K", Optional.empty(), Optional.empty()));
    double[][] strut = {
      {-20, 545, 790}, {8, 655, 190}, {20, 345, 205}, {-290, 350, 212},
      {-4, 590, 420}, {-120, 330, 262}, {-118, 640, 258}, {0, 722, 290}
    };
    for (int i = 0; i < strut.length; i++) {
      SurveyPoint p = SurveyPoint.of(Side.LEFT, StrutPoint.values()[i].word());
      truth.put(p, new Vec3(near(strut[i][0], 40), near(strut[i][1], 40), near(strut[i][2], 40)));
    }
    double tape = 0.5 + 2 * random.nextDouble();
    double plumb = 0.5 + 3 * random.nextDouble();
    List<SurveySide.Plot> plots = new ArrayList<>();
    List<SurveySide.Height> heights = new ArrayList<>();
    List<SurveySide.Tape> tapes = new ArrayList<>();
    List<SurveyPoint> points = new ArrayList<>(truth.keySet());
    for (int i = 0; i < points.size(); i++) {
      SurveyPoint p = points.get(i);
      if (i >= floor.length && random.nextDouble() < 0.6) {
        plots.add(
            new SurveySide.Plot(p, read(truth.get(p).x(), plumb), read(truth.get(p).y(), plumb)));
      }
      if (i >= floor.length && random.nextDouble() < 0.6) {
        heights.add(new SurveySide.Height(p, read(truth.get(p).z(), plumb)));
      }
      for (int j = 0; i >= floor.length && j < i; j++) {
        // Every point to every station but the last, and some to each other.
        if (j < floor.length - 1 || random.nextDouble() < 0.3) {
          double length = truth.get(p).minus(truth.get(points.get(j))).norm();
          tapes.add(new SurveySide.Tape(points.get(j), p, read(length, tape)));
        }
      }
    }
    SurveySide side =
        new SurveySide(
            plots,
            heights,
            tapes,
            Optional.empty(),
            Optional.empty(),
            Optional.empty(),
            Optional.empty());
    return new Case(
        new Survey("random", Optional.empty(), LengthUnit.MM, stations, Map.of(Side.LEFT, side)),
        truth);
  }

  private double near(double value, double range) {
    return value + range * (2 * random.nextDouble() - 1);
  }

  private Repeated read(double truth, double uncertainty) {
    List<Double> values = new ArrayList<>();
    for (int n = 1 + random.nextInt(3); n > 0; n--) {
      values.add(truth + uncertainty * random.nextGaussian());
    }
    return new Repeated(values, uncertainty);
  }
}
