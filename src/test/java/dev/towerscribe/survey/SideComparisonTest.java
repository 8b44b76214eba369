package dev.towerscribe.survey;

import static org.assertj.core.api.Assertions.assertThat;
import static org.assertj.core.api.Assertions.within;

import dev.towerscribe.adjust.Adjustment;
import dev.towerscribe.adjust.Covariance;
import dev.towerscribe.adjust.Measure;
import dev.towerscribe.adjust.Network;
import dev.towerscribe.adjust.Observation;
import dev.towerscribe.adjust.Repeated;
import dev.towerscribe.finding.Finding;
import dev.towerscribe.finding.Findings;
import dev.towerscribe.finding.Severity;
import dev.towerscribe.geometry.Vec2;
import dev.towerscribe.geometry.Vec3;
import dev.towerscribe.model.Side;
import dev.towerscribe.quantity.LengthUnit;
import dev.towerscribe.quantity.Lengths;
import java.util.ArrayList;
import java.util.List;
import java.util.Map;
import java.util.Optional;
import org.junit.jupiter.api.Test;

/**
 * The two sides against each other: standard deviations of differences, and what is said at the
 * limits. Expected values: independent, worked by hand.
 */
class SideComparisonTest {
  private static final double ROUNDING = 1e-12;
  private static final Fit NO_FIT = new Fit(0, 0, 0, 1, 1, List.of());

  /** Variances 5 and 10 and a covariance of 3: the inverse of (10 -3; -3 5) / 41. */
  private static Covariance tied() {
    return Covariance.inverse(new double[][] {{10 / 41.0, -3 / 41.0}, {-3 / 41.0, 5 / 41.0}});
  }

  @Test
  void signsOfADifference() {
    // Forward and up: 5 + 10 - 2 x 3 = 9. Outward the right side's sign turns: 5 + 10 + 6 = 21.
    assertThat(Asymmetry.differenceSd(tied(), 0, 1, false)).isCloseTo(3, within(ROUNDING));
    assertThat(Asymmetry.differenceSd(tied(), 0, 1, true))
        .isCloseTo(Math.sqrt(21), within(ROUNDING));
    // Either side's own alone would be the root of 5 or of 10; a given one adds nothing.
    assertThat(Asymmetry.differenceSd(tied(), 1, 0, false)).isCloseTo(3, within(ROUNDING));
  }

  private final Findings findings = new Findings("both", Lengths.in(LengthUnit.MM));

  private Finding told(SideResult left, SideResult right) {
    new Asymmetry(
            Map.of(),
            Adjustment.solve(new Network(), List.of(), new double[0]),
            1,
            List.of(),
            Map.of(Side.LEFT, left, Side.RIGHT, right),
            findings)
        .report();
    List<Finding> all = findings.inOrder();
    assertThat(all).isNotEmpty();
    return all.get(all.size() - 1);
  }

  private static SideResult tyre(double radius, double sd) {
    return new SideResult(
        Optional.of(new Figure(radius, sd)), Optional.empty(), Optional.empty(), Optional.empty());
  }

  private static SideResult camber(double degrees, double sd) {
    return new SideResult(
        Optional.empty(),
        Optional.of(new Figure(Math.toRadians(degrees), Math.toRadians(sd))),
        Optional.empty(),
        Optional.empty());
  }

  @Test
  void threeStandardDeviationsOfBothSidesTogetherAreNoChance() {
    // 0.6 and 0.8 are 1.0 together: 3.0 mm may be chance, 3.1 may not.
    for (boolean swapped : new boolean[] {false, true}) {
      double left = swapped ? .8 : .6;
      double right = swapped ? .6 : .8;
      Finding chance = told(tyre(300, left), tyre(303, right));
      assertThat(chance.severity()).isEqualTo(Severity.NOTE);
      assertThat(chance.say())
          .isEqualTo(
              "tyre radius: 3.00 mm more on the right than on the left (likely, 2 in 3, within 1.00"
                  + " mm). The readings show no difference between the sides.");
      Finding sure = told(tyre(303.1, left), tyre(300, right));
      assertThat(sure.severity()).isEqualTo(Severity.CAUTION);
      assertThat(sure.figure()).isCloseTo(3.1, within(ROUNDING * 1000));
      assertThat(sure.limit()).isEqualTo(2);
      assertThat(sure.say()).contains("3.10 mm less on the right").contains("The sides differ");
    }
  }

  @Test
  void whatIsSureMayBeLittle() {
    Finding little = told(tyre(300, .1), tyre(302, .1));
    assertThat(little.severity()).isEqualTo(Severity.NOTE);
    assertThat(little.say()).endsWith("They differ slightly.");
    assertThat(told(tyre(300, .1), tyre(302.1, .1)).severity()).isEqualTo(Severity.CAUTION);
  }

  @Test
  void anglesAreToldInDegrees() {
    // 0.06 and 0.08 are 0.1 deg together; half a degree of camber is what nobody minds.
    assertThat(told(camber(-1, .06), camber(-1.6, .08)).say())
        .isEqualTo(
            "camber: 0.60 deg less on the right than on the left (likely, 2 in 3, within 0.10 deg)."
                + " The sides differ: give the right its own figures, and look for the reason.");
    assertThat(told(camber(-1, .06), camber(-.55, .08)).severity()).isEqualTo(Severity.NOTE);
  }

  @Test
  void oneSideAloneIsNotCompared() {
    new Asymmetry(
            Map.of(),
            Adjustment.solve(new Network(), List.of(), new double[0]),
            1,
            List.of(),
            Map.of(Side.LEFT, tyre(300, 1)),
            findings)
        .report();
    assertThat(findings.inOrder()).isEmpty();
    told(tyre(300, 1), tyre(301, 1));
    assertThat(findings.inOrder()).hasSize(1);
  }

  private static SideResult landmark(double x, double y, double sdX, double sdY, boolean found) {
    TowerResult.Hole hole =
        new TowerResult.Hole("seam", new Vec2(x, y), new Vec2(sdX, sdY), new Figure(8, .1), found);
    return new SideResult(
        Optional.empty(),
        Optional.empty(),
        Optional.empty(),
        Optional.of(
            new TowerResult(
                Optional.empty(),
                Optional.empty(),
                Optional.empty(),
                Optional.empty(),
                Optional.empty(),
                Optional.empty(),
                Optional.empty(),
                Optional.empty(),
                List.of(hole),
                List.of(),
                Optional.empty(),
                NO_FIT)));
  }

  @Test
  void ofALandmarkTheCoordinateThatIsSurestIsTold() {
    // Fore: 4 mm of 5 (3 and 4 together). In: 3 mm of 1 (0.6 and 0.8), three times its own.
    assertThat(told(landmark(90, 40, 3, .6, true), landmark(94, 43, 4, .8, true)).say())
        .isEqualTo(
            "seam: 3.00 mm further in on the right tower than on the left (likely, 2 in 3, within"
                + " 1.00 mm). The readings show no difference between the sides.");
    // The other way round: fore is worst, and less.
    assertThat(told(landmark(90, 40, .6, 3, true), landmark(86.5, 44, .8, 4, true)).say())
        .contains("3.50 mm further rearward")
        .contains("1.00 mm). The sides differ");
  }

  @Test
  void aLandmarkThatWasNotFoundIsNotCompared() {
    SideResult found = landmark(90, 40, 1, 1, true);
    SideResult not = landmark(80, 40, 1, 1, false);
    told(found, found);
    assertThat(findings.inOrder()).hasSize(1);
    assertThat(findings.inOrder().get(0).say()).contains("0.00 mm");
    new Asymmetry(
            Map.of(),
            Adjustment.solve(new Network(), List.of(), new double[0]),
            1,
            List.of(),
            Map.of(Side.LEFT, found, Side.RIGHT, not),
            findings)
        .report();
    new Asymmetry(
            Map.of(),
            Adjustment.solve(new Network(), List.of(), new double[0]),
            1,
            List.of(),
            Map.of(Side.LEFT, not, Side.RIGHT, found),
            findings)
        .report();
    assertThat(findings.inOrder()).hasSize(1);
  }

  /** Two points, each coordinate read to 1 mm, and heights to 10 mm. */
  private Finding points(Vec3 left, Vec3 right, double widened, boolean found) {
    Network net = new Network();
    List<Observation> read = new ArrayList<>();
    List<PointResult> results = new ArrayList<>();
    SurveyPoint l = SurveyPoint.of(Side.LEFT, "arm_front");
    SurveyPoint r = SurveyPoint.of(Side.RIGHT, "arm_front");
    for (Vec3 at : List.of(left, right)) {
      int node = net.node(Network.FREE, Network.FREE, Network.FREE);
      double[] xyz = {at.x(), at.y(), at.z()};
      for (int axis = 0; axis < Network.AXES; axis++) {
        read.add(
            Observation.of(
                read.size(),
                new Measure.Coordinate(node, axis, 1),
                Repeated.once(xyz[axis], axis == 2 ? 10 : 1)));
      }
    }
    results.add(new PointResult(l, left, PointCovariance.NONE, true, false));
    results.add(new PointResult(r, right, PointCovariance.NONE, found, false));
    new Asymmetry(
            Map.of(l, 0, r, 1),
            Adjustment.solve(net, read, new double[6]),
            widened,
            results,
            Map.of(Side.LEFT, tyre(300, 1), Side.RIGHT, tyre(300, 1)),
            findings)
        .report();
    return findings.inOrder().get(0);
  }

  @Test
  void ofAPointTheSurestCoordinateCounts() {
    // Height: 20 mm of 10 root 2 are 1.4; forward -6 of root 2 are 4.2; out 1 is 0.7.
    Finding f = points(new Vec3(100, 500, 200), new Vec3(94, 501, 220), 1, true);
    assertThat(f.say())
        .isEqualTo(
            "arm_front: 6.0 mm further rearward on the right than on the left (likely, 2 in 3,"
                + " within 1.4 mm). The sides differ: give the right its own figures, and look for"
                + " the reason.");
    assertThat(f.limit()).isEqualTo(3);
  }

  @Test
  void widenedReadingsTellLess() {
    // Twice root 2 is 2.8: 6 mm are no longer three of them.
    Finding f = points(new Vec3(100, 500, 200), new Vec3(106, 500, 200), 2, true);
    assertThat(f.say())
        .contains("further forward")
        .contains("2.8 mm")
        .endsWith("no difference between the sides.");
    assertThat(f.severity()).isEqualTo(Severity.NOTE);
  }

  @Test
  void heightsAreComparedUpward() {
    Finding f = points(new Vec3(100, 500, 200), new Vec3(100, 500, 150), 1, true);
    assertThat(f.say()).contains("50.0 mm lower on the right").contains("14.1 mm");
    assertThat(f.severity()).isEqualTo(Severity.CAUTION);
  }

  @Test
  void aPointThatWasNotFoundIsNotCompared() {
    assertThat(points(new Vec3(100, 500, 200), new Vec3(100, 500, 150), 1, false).say())
        .startsWith("tyre radius");
  }

  /** A side whose tower's figures are all the same, so that each must be told by its own name. */
  private static SideResult tower(double mm, double radians) {
    Optional<Figure> length = Optional.of(new Figure(mm, .1));
    Optional<Figure> angle = Optional.of(new Figure(radians, Math.toRadians(.1)));
    return new SideResult(
        length,
        angle,
        angle,
        Optional.of(
            new TowerResult(
                length,
                length,
                length,
                angle,
                angle,
                length,
                length,
                length,
                List.of(),
                List.of(),
                Optional.empty(),
                NO_FIT)));
  }

  @Test
  void everyFigureOfBothSidesIsCompared() {
    // 5 mm past 2 and 0.8 deg past the wheel's half a degree, but within the tower's one degree.
    told(tower(10, 0), tower(15, Math.toRadians(.8)));
    assertThat(findings.inOrder())
        .extracting(Finding::where)
        .containsExactly(
            "tyre radius",
            "camber",
            "toe",
            "sheet",
            "opening",
            "mark",
            "lean inboard",
            "lean rearward",
            "crown rise",
            "pivot height");
    for (Finding f : findings.inOrder()) {
      boolean lean = f.where().startsWith("lean");
      assertThat(f.severity()).isEqualTo(lean ? Severity.NOTE : Severity.CAUTION);
      assertThat(f.limit()).as(f.where()).isEqualTo(f.unit().equals("mm") ? 2 : lean ? 1 : .5);
    }
  }
}
