package dev.towerscribe.survey;

import static org.assertj.core.api.Assertions.assertThat;
import static org.assertj.core.api.Assertions.within;

import dev.towerscribe.Tries;
import dev.towerscribe.adjust.DataSnooping;
import dev.towerscribe.finding.Finding;
import dev.towerscribe.finding.Findings;
import dev.towerscribe.geometry.Vec3;
import dev.towerscribe.job.JobReader;
import dev.towerscribe.job.Templates;
import dev.towerscribe.model.Job;
import dev.towerscribe.model.PlusMinus;
import dev.towerscribe.model.Side;
import dev.towerscribe.model.StrutPoint;
import dev.towerscribe.model.StrutPoints;
import java.util.ArrayList;
import java.util.List;
import java.util.Map;
import java.util.Optional;
import org.junit.jupiter.api.Tag;
import org.junit.jupiter.api.Test;

/** The demo car's survey, and slips in it. */
class DemoSurveyTest {
  private static final Survey DEMO = SurveyTexts.read(SurveyTexts.demo());
  private static final SurveyResult RESULT = Surveys.of(DEMO);

  /** Of some 60 coordinates none should be off by more than so many standard deviations. */
  private static final double SURE = 4;

  @Test
  void theDemoHasNothingToStopAtAndChecksEveryReading() {
    assertThat(RESULT.stops()).isEmpty();
    assertThat(RESULT.readings()).hasSizeGreaterThan(150).allMatch(ReadingResult::checked);
    assertThat(RESULT.fit().widened()).isEqualTo(1);
    assertThat(RESULT.fit().chance()).isBetween(.01, .99);
  }

  /** Independent: the figures that the readings were drawn about are those of wren.toml. */
  @Test
  void theDemoComesToTheFiguresItWasDrawnFrom() throws Exception {
    Job wren = job(Templates.text("wren.toml"));
    StrutPoints truth = wren.sides().get(Side.LEFT).strut().orElseThrow();
    Map<String, Vec3> points =
        Map.of(
            "top", truth.top(),
            "ball_joint", truth.ballJoint(),
            "arm_front", truth.armFront(),
            "arm_rear", truth.armRear(),
            "strut_lower", truth.strutLower(),
            "tie_inner", truth.tieInner(),
            "tie_outer", truth.tieOuter(),
            "wheel_centre", truth.wheelCentre());
    for (Side side : Side.values()) {
      points.forEach(
          (name, at) -> {
            PointResult r = point(RESULT, SurveyPoint.of(side, name));
            Vec3 off = r.at().minus(at);
            Vec3 sd = r.spread().sd();
            assertThat(Math.abs(off.x()) / sd.x()).as(side + name + " X").isLessThan(SURE);
            assertThat(Math.abs(off.y()) / sd.y()).as(side + name + " Y").isLessThan(SURE);
            assertThat(Math.abs(off.z()) / sd.z()).as(side + name + " Z").isLessThan(SURE);
          });
      TowerResult tower = RESULT.sides().get(side).tower().orElseThrow();
      var job = wren.sides().get(side).tower();
      for (int i = 0; i < 2; i++) {
        TowerResult.Hole hole = tower.landmarks().get(i);
        assertThat(hole.name()).isEqualTo(job.landmarks().get(i).name());
        assertThat(hole.at().x())
            .isCloseTo(job.landmarks().get(i).at().x(), within(SURE * hole.sd().x()));
        assertThat(hole.at().y())
            .isCloseTo(job.landmarks().get(i).at().y(), within(SURE * hole.sd().y()));
      }
    }
  }

  static PointResult point(SurveyResult result, SurveyPoint point) {
    return result.points().stream().filter(p -> p.point().equals(point)).findFirst().orElseThrow();
  }

  /** A slip that a thumb's width makes, in each tape in turn, in all its readings. */
  @Tag("more-tries")
  @Test
  void sixMillimetresInAnyTapeAreNamed() {
    everyTape(-1, 6, Tries.of(3, 1));
    everyTape(-1, -6, Tries.of(4, 1));
  }

  /** Nine in one of its two readings, the other of which is right. */
  @Tag("more-tries")
  @Test
  void aSlipInOneReadingOfAnyTapeIsNamed() {
    everyTape(0, 9, Tries.of(3, 1));
  }

  /** A digit that was misread: far past what is linear. */
  @Tag("more-tries")
  @Test
  void coarseSlipsAreNamed() {
    everyTape(-1, -100, Tries.of(11, 4));
  }

  private static void everyTape(int reading, double slipMm, int step) {
    List<String> missed = new ArrayList<>();
    for (Side side : Side.values()) {
      List<SurveySide.Tape> tapes = DEMO.sides().get(side).tapes();
      assertThat(tapes).hasSizeGreaterThan(40);
      for (int i = 0; i < tapes.size(); i += step) {
        Survey slipped = SurveyTexts.withTape(DEMO, side, i, SurveyTexts.longer(slipMm, reading));
        SurveyResult result = Surveys.of(slipped);
        SurveySide.Tape t = tapes.get(i);
        String tape =
            side.word() + ".outlier.tape-" + name(t.from(), side) + "-" + name(t.to(), side);
        String one = tape + "-reading-" + (reading + 1);
        Finding named = result.stops().isEmpty() ? null : result.stops().get(0);
        boolean right =
            named != null
                && result.stops().size() == 1
                // Both readings may be doubted where only one was wrong, never the other way.
                && (named.id().equals(tape) || reading >= 0 && named.id().equals(one))
                && named.say().contains("Read it again;")
                && named.say().contains(slipMm > 0 ? "longer" : "shorter");
        if (!right) {
          missed.add(tape + ": " + result.stops());
        } else if (reading < 0 || named.id().equals(one)) {
          // The slip itself, within four standard deviations of what the rest make of it.
          assertThat(named.figure())
              .as(tape)
              .isCloseTo(Math.abs(slipMm), within(4 * named.limit() / DataSnooping.LEAST_LIMIT));
        }
      }
    }
    assertThat(missed).isEmpty();
  }

  private static String name(SurveyPoint p, Side side) {
    return Findings.slug(p.side().isEmpty() || p.side().get() == side ? p.name() : p.words());
  }

  /** With neither plots nor heights a coarse slip bends the network out of all straight lines. */
  @Test
  void aCoarseSlipAmongTapesAloneIsNamed() {
    String demo = SurveyTexts.demo();
    String tapes = demo.replaceAll("(?ms)^(floor|height) = \\[$.*?^\\]$", "");
    assertThat(tapes).doesNotContain("\nfloor = [").doesNotContain("\nheight = [");
    Survey survey = SurveyTexts.read(tapes);
    assertThat(Surveys.of(survey).stops()).isEmpty();
    List<SurveySide.Tape> left = survey.sides().get(Side.LEFT).tapes();
    int index =
        left.indexOf(
            left.stream()
                .filter(t -> t.from().name().equals("D") && t.to().name().equals("wheel_centre"))
                .findFirst()
                .orElseThrow());
    SurveyResult slipped =
        Surveys.of(SurveyTexts.withTape(survey, Side.LEFT, index, SurveyTexts.longer(-300, -1)));
    assertThat(SurveyTexts.ids(slipped.stops()))
        .containsExactly("left.outlier.tape-D-wheel-centre");
    assertThat(slipped.stops().get(0).figure()).isCloseTo(300, within(10.0));
  }

  /** Plots and heights hold the points; the stations are found from the points. */
  @Test
  void stationsNeedNotBeKnown() {
    SurveyResult r =
        Surveys.of(SurveyTexts.read(SurveyTexts.demo().replaceAll("(?m)^at = .*$", "")));
    assertThat(r.stops()).isEmpty();
    Vec3 c = point(r, SurveyPoint.station("C")).at();
    assertThat(c.minus(new Vec3(-600, 0, 0)).norm()).isLessThan(5);
  }

  @Test
  void aReadingLeftOutIsTheSameAsOneNeverTaken() {
    Survey slipped = SurveyTexts.withTape(DEMO, Side.LEFT, 3, SurveyTexts.longer(60, -1));
    String without =
        SurveyTexts.demo()
            .lines()
            .filter(l -> !l.contains("from = \"F\", to = \"top\""))
            .reduce("", (a, b) -> a + b + "\n");
    SurveyResult left = Surveys.of(slipped);
    SurveyResult never = Surveys.of(SurveyTexts.read(without));
    assertThat(SurveyTexts.ids(left.stops())).containsExactly("left.outlier.tape-F-top");
    for (int i = 0; i < left.points().size(); i++) {
      // Two ways to one solution, each to 1e-9 of a standard deviation.
      assertThat(left.points().get(i).at().minus(never.points().get(i).at()).norm())
          .isLessThan(1e-6);
    }
  }

  /** The tables in the place of those of the job that the survey was drawn from. */
  @Test
  void theTablesPasteIntoTheJob() throws Exception {
    String pasted = pasted(Templates.text("wren.toml"), JobTables.of(RESULT, List.of()));
    Job job = job(pasted);
    for (Side side : Side.values()) {
      StrutPoints strut = job.sides().get(side).strut().orElseThrow();
      Vec3 ball = side == Side.LEFT ? strut.ballJoint() : strut.ballJoint().mirroredAcross();
      PointResult found = point(RESULT, SurveyPoint.of(side, "ball_joint"));
      // Tenths are written; hundredths of the +/-.
      assertThat(ball.minus(found.at()).norm()).isLessThan(.05 * Math.sqrt(3) + 1e-9);
      PlusMinus uncertainties = strut.plusMinus();
      assertThat(
              uncertainties
                  .points()
                  .get(StrutPoint.BALL_JOINT.ordinal())
                  .minus(found.spread().sd())
                  .norm())
          .isLessThan(.01);
      assertThat(uncertainties.camber().degrees()).isCloseTo(.10, within(.005));
      assertThat(strut.limits().bumpMm()).isEqualTo(60);
      var tower = job.sides().get(side).tower();
      var surveyed = RESULT.sides().get(side).tower().orElseThrow();
      assertThat(tower.sheetMm()).isCloseTo(surveyed.sheet().orElseThrow().value(), within(.005));
      assertThat(tower.landmarks().get(0).at().distanceTo(surveyed.landmarks().get(0).at()))
          .isLessThan(.01);
      assertThat(tower.keepOuts()).hasSize(2);
    }
    // Not the figures that were there before.
    assertThat(job.sides().get(Side.LEFT).strut().orElseThrow().ballJoint())
        .isNotEqualTo(new Vec3(8, 655, 190));
  }

  /** What a person does with an editor: out with the surveyed lines, in with the new tables. */
  static String pasted(String job, String tables) {
    StringBuilder rest = new StringBuilder();
    StringBuilder boltingFace = new StringBuilder();
    StringBuilder travel = new StringBuilder();
    String section = "";
    for (String line : job.lines().toList()) {
      section = line.startsWith("[") ? line.split("]")[0].replace("[", "") : section;
      switch (section) {
        case "tower" -> boltingFace.append(line.startsWith("bolting_face =") ? line + "\n" : "");
        case "strut" -> travel.append(line.matches("(bump|droop|steer) .*") ? line + "\n" : "");
        case "tower.landmark", "right.tower" -> {
          // Surveyed.
        }
        default -> rest.append(line).append('\n');
      }
    }
    int tower = tables.indexOf("[tower]\n") + "[tower]\n".length();
    int strut = tables.indexOf("[strut]\n");
    int keepOuts = rest.indexOf("[[tower.keepout]]");
    return rest.substring(0, keepOuts)
        + tables.substring(0, tower)
        + boltingFace
        + tables.substring(tower, strut)
        + "[strut]\n"
        + travel
        + tables.substring(strut + "[strut]\n".length())
        + rest.substring(keepOuts);
  }

  private static Job job(String text) throws Exception {
    return new JobReader(c -> c < 0x2600).parse(text, name -> Optional.empty());
  }
}
