package dev.towerscribe;

import dev.towerscribe.adjust.Edges;
import dev.towerscribe.adjust.Repeated;
import dev.towerscribe.geometry.Vec2;
import dev.towerscribe.geometry.Vec3;
import dev.towerscribe.model.Landmark;
import dev.towerscribe.model.PlusMinus;
import dev.towerscribe.model.Side;
import dev.towerscribe.model.StrutPoint;
import dev.towerscribe.model.StrutPoints;
import dev.towerscribe.model.Tower;
import dev.towerscribe.model.TowerChange;
import dev.towerscribe.quantity.Angle;
import dev.towerscribe.quantity.LengthUnit;
import dev.towerscribe.survey.Survey;
import dev.towerscribe.survey.SurveyPoint;
import dev.towerscribe.survey.SurveySide;
import dev.towerscribe.survey.SurveyTower;
import java.util.ArrayList;
import java.util.EnumMap;
import java.util.List;
import java.util.Map;
import java.util.Optional;
import java.util.Random;

/**
 * A car with true places that nobody knows, and what tape, plumb bob, calipers and angle finder
 * would read on it, each off by a normal error of its stated uncertainty. Invented throughout.
 */
final class SimulatedCar {
  /** One standard deviation of one reading, mm; as the manual assumes. */
  static final double TAPE = 1.5;

  static final double PLOT = 1.5;
  static final double HEIGHT = 1.5;
  static final double RULE = 0.5;
  static final double CALIPER = 0.1;

  /** One standard deviation of the angle finder on the wheel, degrees. */
  static final double FINDER_DEG = 0.1;

  private static final List<StrutPoint> POINTS =
      List.of(
          StrutPoint.TOP,
          StrutPoint.BALL_JOINT,
          StrutPoint.ARM_FRONT,
          StrutPoint.ARM_REAR,
          StrutPoint.STRUT_LOWER,
          StrutPoint.TIE_INNER,
          StrutPoint.TIE_OUTER,
          StrutPoint.WHEEL_CENTRE);

  private static final int[][] TAPES = {
    {0, 1}, {0, 4}, {1, 2}, {1, 3}, {2, 3}, {5, 6}, {1, 6}, {1, 7}, {4, 7}, {2, 5}, {3, 5}, {6, 7},
    {0, 2}, {4, 6}
  };

  private static final List<String> HOLES = List.of("drain hole", "wiring hole", "tooling hole");

  /** True places of the strut's points, left side, in the order of {@link PlusMinus#points()}. */
  final List<Vec3> points = new ArrayList<>();

  final Angle camber;

  /** True landmarks. */
  final List<Landmark> landmarks = new ArrayList<>();

  private final Random random;

  SimulatedCar(Random random) {
    this.random = random;
    StrutPoints s = SampleJobs.strut();
    for (Vec3 p :
        List.of(
            s.top(),
            s.ballJoint(),
            s.armFront(),
            s.armRear(),
            s.strutLower(),
            s.tieInner(),
            s.tieOuter(),
            s.wheelCentre())) {
      points.add(p.plus(new Vec3(off(12), off(12), off(12))));
    }
    camber = Angle.ofDegrees(-0.5 + off(0.5));
    // All round, as the manual asks: landmarks on one side make the +/- of a shift too large.
    double[] bearings = {-60, 60, 180};
    double[] diameters = {9, 7, 6};
    for (int i = 0; i < HOLES.size(); i++) {
      double bearing = Math.toRadians(bearings[i] + 30 * (random.nextDouble() - 0.5));
      double r = 64 + 30 * random.nextDouble();
      landmarks.add(
          new Landmark(
              HOLES.get(i), new Vec2(r * Math.cos(bearing), r * Math.sin(bearing)), diameters[i]));
    }
  }

  /** A normal error. */
  double off(double sd) {
    return sd * random.nextGaussian();
  }

  private Repeated read(double truth, double sd, int times) {
    List<Double> values = new ArrayList<>();
    for (int i = 0; i < times; i++) {
      values.add(truth + off(sd));
    }
    return new Repeated(values, sd);
  }

  private static SurveyPoint point(int i) {
    return SurveyPoint.of(Side.LEFT, POINTS.get(i).word());
  }

  /** The left side's survey. */
  Survey survey() {
    List<SurveySide.Plot> plots = new ArrayList<>();
    List<SurveySide.Height> heights = new ArrayList<>();
    for (int i = 0; i < points.size(); i++) {
      Vec3 p = points.get(i);
      plots.add(new SurveySide.Plot(point(i), read(p.x(), PLOT, 1), read(p.y(), PLOT, 1)));
      heights.add(new SurveySide.Height(point(i), read(p.z(), HEIGHT, 1)));
    }
    List<SurveySide.Tape> tapes = new ArrayList<>();
    for (int[] ends : TAPES) {
      double length = points.get(ends[0]).minus(points.get(ends[1])).norm();
      tapes.add(new SurveySide.Tape(point(ends[0]), point(ends[1]), read(length, TAPE, 2)));
    }
    SurveySide left =
        new SurveySide(
            plots,
            heights,
            tapes,
            Optional.of(read(290, HEIGHT, 1)),
            Optional.of(read(camber.radians(), Math.toRadians(FINDER_DEG), 2)),
            Optional.empty(),
            Optional.of(tower()));
    Map<Side, SurveySide> sides = new EnumMap<>(Map.of(Side.LEFT, left));
    return new Survey("simulated", Optional.empty(), LengthUnit.MM, List.of(), sides);
  }

  private SurveyTower tower() {
    List<SurveyTower.Mark> marks = new ArrayList<>();
    List<SurveyTower.Span> spans = new ArrayList<>();
    for (int i = 0; i < landmarks.size(); i++) {
      Landmark l = landmarks.get(i);
      marks.add(
          new SurveyTower.Mark(
              l.name(),
              Optional.of(
                  new SurveyTower.Place(read(l.at().x(), RULE, 2), read(l.at().y(), RULE, 2))),
              read(l.diameterMm(), CALIPER, 2)));
      spans.add(span(SurveyTower.STRUT_ROD, Vec2.ZERO, l));
      Landmark next = landmarks.get((i + 1) % landmarks.size());
      spans.add(span(next.name(), next.at(), l));
    }
    return new SurveyTower(
        Optional.of(read(1.4, 0.05, 2)),
        Optional.of(read(62, CALIPER, 2)),
        Optional.of(read(104, RULE, 2)),
        Optional.of(read(0, Math.toRadians(0.2), 2)),
        Optional.of(read(0, Math.toRadians(0.2), 2)),
        Optional.empty(),
        Optional.of(read(12, RULE, 2)),
        Optional.empty(),
        marks,
        spans,
        List.of());
  }

  private SurveyTower.Span span(String from, Vec2 at, Landmark to) {
    return new SurveyTower.Span(
        from, to.name(), Edges.CENTRES, read(at.distanceTo(to.at()), CALIPER, 2));
  }

  /** A strut of these points. */
  static StrutPoints strut(List<Vec3> p, Angle camber, PlusMinus sure) {
    return new StrutPoints(
        p.get(0),
        p.get(1),
        p.get(2),
        p.get(3),
        p.get(4),
        p.get(5),
        p.get(6),
        p.get(7),
        290,
        camber,
        Angle.ZERO,
        0,
        sure,
        Optional.empty(),
        StrutPoints.Limits.USUAL);
  }

  /** The plain tower with these landmarks. */
  static Tower tower(List<Landmark> landmarks) {
    Tower t = SampleJobs.plainTower();
    return TowerChange.of(t).withLandmarks(landmarks, t.straightedges()).tower();
  }
}
