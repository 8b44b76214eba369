package dev.towerscribe.sheet.report;

import static org.assertj.core.api.Assertions.assertThat;

import dev.towerscribe.SampleJobs;
import dev.towerscribe.alignment.Alignment;
import dev.towerscribe.alignment.JobAlignment;
import dev.towerscribe.alignment.SideAlignment;
import dev.towerscribe.drawing.Item;
import dev.towerscribe.drawing.Page;
import dev.towerscribe.drawing.Pen;
import dev.towerscribe.geometry.Vec3;
import dev.towerscribe.layout.Layout;
import dev.towerscribe.model.Job;
import dev.towerscribe.model.MeasuredAxis;
import dev.towerscribe.model.Paper;
import dev.towerscribe.model.Plate;
import dev.towerscribe.model.PlateChange;
import dev.towerscribe.model.PlusMinus;
import dev.towerscribe.model.Side;
import dev.towerscribe.model.SideJob;
import dev.towerscribe.model.StrutPoint;
import dev.towerscribe.model.StrutPoints;
import dev.towerscribe.quantity.Angle;
import dev.towerscribe.quantity.LengthUnit;
import dev.towerscribe.report.AlignmentReport;
import dev.towerscribe.sheet.Pack;
import dev.towerscribe.sheet.PageRules;
import dev.towerscribe.sheet.SheetFixtures;
import dev.towerscribe.sheet.TextPageSamples;
import dev.towerscribe.sheet.text.JobInfo;
import java.util.ArrayList;
import java.util.EnumMap;
import java.util.List;
import java.util.Map;
import java.util.Optional;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.EnumSource;

public class AlignmentPageTest {
  public static Job job(Paper paper, LengthUnit units) {
    Map<Side, SideJob> sides = new EnumMap<>(Side.class);
    for (Side side : Side.values()) {
      sides.put(
          side,
          TextPageSamples.on(
              SampleJobs.side(side, SampleJobs.fullTower(), SampleJobs.plate(true)), paper, 10));
    }
    return new Job("both", Optional.empty(), units, sides);
  }

  public static SideJob with(SideJob s, Optional<StrutPoints> strut, Optional<MeasuredAxis> axis) {
    return s.withStrut(strut).withAxis(axis);
  }

  private static List<Page> pages(Job job, Side side, JobInfo info) {
    JobAlignment all = Alignment.of(job);
    return AlignmentPage.pages(all.sides().get(side), all, info);
  }

  private static List<Item.Polyline> curves(List<Page> pages, Pen pen) {
    return pages.stream()
        .flatMap(p -> p.items().stream())
        .filter(Item.Polyline.class::isInstance)
        .map(Item.Polyline.class::cast)
        .filter(p -> !p.closed() && p.pen() == pen)
        .toList();
  }

  @ParameterizedTest
  @EnumSource(Paper.class)
  void onePageASideInsideItsMarginsNothingOverAnything(Paper paper) {
    for (LengthUnit units : LengthUnit.values()) {
      Job job = job(paper, units);
      for (Side side : Side.values()) {
        List<Page> pages = pages(job, side, TextPageSamples.info(units, List.of()));
        assertThat(pages).hasSize(1);
        PageRules.check(pages, 10);
        PageRules.check(pages(job, side, TextPageSamples.longInfo(TextPageSamples.stops(2))), 10);
      }
    }
  }

  @Test
  void beforeIsDashedAndAfterIsThickAndEachIsNamed() {
    List<Page> pages =
        pages(
            job(Paper.A4, LengthUnit.MM),
            Side.LEFT,
            TextPageSamples.info(LengthUnit.MM, List.of()));
    // Toe and camber over travel, camber over steer of two wheels.
    assertThat(curves(pages, Pen.HIDDEN)).hasSize(4);
    assertThat(curves(pages, Pen.FINAL_CUT)).hasSize(4);
    assertThat(PageRules.words(pages.get(0)))
        .contains(
            "before",
            "after",
            "left before",
            "left after",
            "right before",
            "right after",
            "Before the work",
            "Chosen setting 16 mm",
            "Setting -8 mm",
            "Setting 4 mm")
        // The chosen one is not told twice.
        .doesNotContain("Setting 16 mm");
    assertThat(PageRules.words(pages))
        .contains("likely, 2 in 3", "0.27", "as measured", "deg, toe-in positive");
  }

  @Test
  void aCurveStopsWhereTheLinkageDoes() {
    Job job = job(Paper.A4, LengthUnit.MM);
    StrutPoints s = SampleJobs.strut();
    StrutPoints odd =
        s.with(StrutPoint.TIE_INNER, s.tieOuter().plus(new Vec3(0, -30, 0)))
            .withRide(0)
            .withPlusMinus(PlusMinus.all(2))
            .withKnuckleBolt(Optional.empty());
    SideJob side = with(job.sides().get(Side.LEFT), Optional.of(odd), Optional.empty());
    List<Page> pages =
        pages(SampleJobs.only(side), Side.LEFT, TextPageSamples.info(LengthUnit.MM, List.of()));
    PageRules.check(pages, 10);
    assertThat(curves(pages, Pen.FINAL_CUT))
        .anySatisfy(c -> assertThat(c.points().size()).isBetween(2, 16));
  }

  @Test
  void oneSideAloneShowsTheOtherWheelAsItsMirror() {
    SideJob side = job(Paper.A4, LengthUnit.MM).sides().get(Side.RIGHT);
    List<Page> pages =
        pages(SampleJobs.only(side), Side.RIGHT, TextPageSamples.info(LengthUnit.MM, List.of()));
    PageRules.check(pages, 10);
    assertThat(PageRules.words(pages.get(0))).contains("left after", "right after");
  }

  @Test
  void anEstimateSaysSoAndHasNoPlots() {
    SideJob side =
        with(
            job(Paper.LETTER, LengthUnit.INCH).sides().get(Side.LEFT),
            Optional.empty(),
            Optional.of(
                new MeasuredAxis(
                    Angle.ofDegrees(3), Angle.ofDegrees(11), 600, Angle.ofDegrees(-0.5))));
    List<Page> pages =
        pages(SampleJobs.only(side), Side.LEFT, TextPageSamples.info(LengthUnit.INCH, List.of()));
    PageRules.check(pages, 10);
    assertThat(PageRules.words(pages)).contains("AN ESTIMATE");
    assertThat(curves(pages, Pen.FINAL_CUT)).isEmpty();
  }

  @Test
  void manySettingsRunOnToAnotherPage() {
    Plate p = SampleJobs.plate(true);
    List<Double> index = new ArrayList<>();
    for (int i = -8; i <= 16; i++) {
      index.add((double) i);
    }
    Plate many =
        PlateChange.of(p)
            .withBearing(new Plate.Slot(-8, 16, index), p.bearingXMm(), p.bearingHeightMm())
            .plate();
    SideJob side = job(Paper.LETTER, LengthUnit.MM).sides().get(Side.LEFT).with(many);
    List<Page> pages =
        pages(SampleJobs.only(side), Side.LEFT, TextPageSamples.info(LengthUnit.MM, List.of()));
    assertThat(pages).hasSizeGreaterThan(1);
    PageRules.check(pages, 10);
  }

  @Test
  void anImpossibleLinkageStillHasItsPage() {
    StrutPoints s = SampleJobs.strut();
    StrutPoints inLine =
        s.with(StrutPoint.BALL_JOINT, s.armFront().plus(s.armRear()).times(0.5))
            .withRide(0)
            .withPlusMinus(PlusMinus.all(2))
            .withKnuckleBolt(Optional.empty());
    SideJob side =
        with(
            job(Paper.A4, LengthUnit.MM).sides().get(Side.LEFT),
            Optional.of(inLine),
            Optional.empty());
    List<Page> pages =
        pages(SampleJobs.only(side), Side.LEFT, TextPageSamples.info(LengthUnit.MM, List.of()));
    PageRules.check(pages, 10);
    assertThat(PageRules.words(pages)).contains("THE POINTS GIVE NO FIGURES", "not reached");
  }

  @Test
  void packAndStepsCarryWhatToExpect() throws Exception {
    Job job = job(Paper.A4, LengthUnit.MM);
    JobInfo info = TextPageSamples.info(LengthUnit.MM, List.of());
    JobAlignment alignment = Alignment.of(job);
    List<Page> pack = Pack.pages(Layout.of(job), alignment, info);
    List<String> stems = pack.stream().map(Page::fileStem).toList();
    assertThat(stems).doesNotHaveDuplicates();
    int at = stems.indexOf("left-alignment-1");
    assertThat(stems.get(at - 1)).startsWith("left-findings");
    assertThat(stems.get(at + 1)).startsWith("left-steps");
    assertThat(stems).contains("right-alignment-1");
    assertThat(SheetFixtures.pack(Layout.of(job), info).stream().map(Page::fileStem))
        .noneMatch(n -> n.contains("alignment"));
    SideAlignment left = alignment.sides().get(Side.LEFT);
    // Frozen: figures of the invented car, one decimal.
    assertThat(AlignmentReport.expected(left))
        .contains("Expect caster 5.3 deg (likely, 2 in 3, within 0.3 deg), camber -1.5 deg.");
    List<Page> steps =
        StepsPage.pages(Layout.of(job).sides().get(Side.LEFT), Optional.of(left), info);
    PageRules.check(steps, 10);
    assertThat(PageRules.words(steps).split("Expect caster", -1)).hasSize(3);
  }
}
