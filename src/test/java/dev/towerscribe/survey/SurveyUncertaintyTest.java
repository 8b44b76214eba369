package dev.towerscribe.survey;

import static org.assertj.core.api.Assertions.assertThat;
import static org.assertj.core.api.Assertions.within;

import dev.towerscribe.finding.Finding;
import dev.towerscribe.model.Side;
import org.junit.jupiter.api.Test;

/**
 * Standard deviations of points and of differences between the sides, where readings tie the sides
 * together. Expected values: independent, each worked by hand beside its check.
 */
class SurveyUncertaintyTest {
  private static final String HEAD =
      """
      format = 1
      title = "two readings and a tie"
      sides = ["left", "right"]
      """;

  /** Two by two matrices and a root. */
  private static final double ROUNDING = 1e-9;

  private static SurveyResult of(String rest) {
    SurveyResult result = Surveys.of(SurveyTexts.read(HEAD + rest));
    assertThat(result.stops()).isEmpty();
    return result;
  }

  private static PointResult point(SurveyResult r, Side side) {
    return DemoSurveyTest.point(r, SurveyPoint.of(side, "ball_joint"));
  }

  /**
   * Both points plotted to 2 mm, and a tape of 2 mm along the axis from one to the other. With a
   * weight of 1/4 for each reading the normal matrix is (2 -1; -1 2) / 4, as the tape holds the
   * difference, so the covariance is (2 1; 1 2) x 4/3: each point to 1.633 mm.
   */
  private static final double EACH = Math.sqrt(8 / 3.0);

  /** Across the car the two points lie 1400 mm apart, each that far outward of the middle. */
  private static final SurveyResult ACROSS =
      of(
          """
          [left]
          floor = [{ point = "ball_joint", at = [0.0, 700.0], doubt = 2.0 }]
          height = [{ point = "ball_joint", up = 200.0, doubt = 2.0 }]
          tape = [{ from = "ball_joint", to = "right.ball_joint", length = 1407.0, doubt = 2.0 }]
          [right]
          floor = [{ point = "ball_joint", at = [0.0, 707.0], doubt = 2.0 }]
          height = [{ point = "ball_joint", up = 200.0, doubt = 2.0 }]
          """);

  @Test
  void aTapeAcrossTiesTheTwoOutwardPlaces() {
    for (Side side : Side.values()) {
      assertThat(point(ACROSS, side).spread().sd().y()).isCloseTo(EACH, within(ROUNDING));
      assertThat(point(ACROSS, side).spread().sd().x()).isCloseTo(2, within(ROUNDING));
      assertThat(point(ACROSS, side).spread().sd().z()).isCloseTo(2, within(ROUNDING));
    }
  }

  @Test
  void outwardErrorsOfTheTwoSidesAddUp() {
    // The tape allows both to be further out on the left and further in on the right by the same,
    // so outward places differ with the variance (2 + 2 + 2 x 1) x 4/3 = 8: 2.83 mm. With the sign
    // of the other axes it would be (2 + 2 - 2) x 4/3: 1.63 mm.
    Finding f = SurveyTexts.finding(ACROSS, "both.asymmetry.ball-joint");
    assertThat(f.figure()).isCloseTo(7, within(1e-6));
    assertThat(f.say()).contains("further out on the right").contains("2.8 mm");
    // 7 mm is 2.5 of these, not three: nothing is sure.
    assertThat(f.say()).endsWith("show no difference between the sides.");
  }

  @Test
  void forwardErrorsOfTheTwoSidesCancel() {
    // The same tie along the car, both points on the middle line: the difference of the forward
    // places has the variance (2 + 2 - 2 x 1) x 4/3 = 8/3.
    SurveyResult along =
        of(
            """
            [left]
            floor = [{ point = "ball_joint", at = [300.0, 0.0], doubt = 2.0 }]
            height = [{ point = "ball_joint", up = 200.0, doubt = 2.0 }]
            tape = [{ from = "ball_joint", to = "right.ball_joint", length = 307.0, doubt = 2.0 }]
            [right]
            floor = [{ point = "ball_joint", at = [-7.0, 0.0], doubt = 2.0 }]
            height = [{ point = "ball_joint", up = 200.0, doubt = 2.0 }]
            """);
    assertThat(point(along, Side.LEFT).spread().sd().x()).isCloseTo(EACH, within(ROUNDING));
    Finding f = SurveyTexts.finding(along, "both.asymmetry.ball-joint");
    assertThat(f.say()).contains("307.0 mm further rearward on the right").contains("1.6 mm");
  }

  @Test
  void aDifferenceHasTheUncertaintyOfBothSides() {
    // 0.3 and 0.4 deg: 0.5 deg. 0.6 and 0.8 mm: 1.0 mm. Neither side's own would do.
    for (boolean swapped : new boolean[] {false, true}) {
      SurveyResult r =
          of(side("left", swapped ? 2 : 1, -1.0) + side("right", swapped ? 1 : 2, -1.4));
      Finding camber = SurveyTexts.finding(r, "both.asymmetry.camber");
      assertThat(camber.figure()).isCloseTo(0.4, within(ROUNDING));
      assertThat(camber.say()).contains("0.40 deg").contains("0.50 deg");
      Finding sheet = SurveyTexts.finding(r, "both.asymmetry.sheet");
      assertThat(sheet.say()).contains("1.00 mm");
      Finding hole = SurveyTexts.finding(r, "both.asymmetry.seam-bolt");
      assertThat(hole.say()).contains("1.00 mm");
    }
  }

  private static String side(String side, int which, double camber) {
    double mm = which == 1 ? 0.6 : 0.8;
    double deg = which == 1 ? 0.3 : 0.4;
    return """
    [%s]
    camber = { readings = [%s], doubt = %s }
    [%s.tower]
    sheet = { readings = [1.4], doubt = %s }
    landmark = [{ name = "seam bolt", at = [%s, 40.0], diameter = 8.0, doubt = %s }]
    """
        .formatted(side, camber, deg, side, mm, side.equals("left") ? 90.0 : 91.0, mm);
  }

  @Test
  void anOpenPointTakesNoReadingsFromTheFreedom() {
    // Two plots of one point, four figures for the two unknowns they fix: two are left over. Its
    // height is an unknown too, but no reading was needed for what no reading fixes.
    SurveyResult r =
        Surveys.of(
            SurveyTexts.read(
                HEAD.replace(", \"right\"", "")
                    + """
                    [left]
                    floor = [{ point = "ball_joint", at = [[0.0, 700.0], [1.0, 701.0]], doubt = 1.0 }]
                    """));
    assertThat(r.stops()).extracting(Finding::id).containsExactly("left.unfixed.ball-joint");
    assertThat(r.fit().freedom()).isEqualTo(2);
    // Each figure lies half a millimetre from the mean: four squares of a quarter make one.
    assertThat(r.fit().ratio()).isCloseTo(Math.sqrt(1.0 / 2), within(ROUNDING));
  }
}
