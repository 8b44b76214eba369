package dev.towerscribe.sheet.tower;

import static org.assertj.core.api.Assertions.assertThat;

import dev.towerscribe.alignment.Alignment;
import dev.towerscribe.alignment.SideAlignment;
import dev.towerscribe.drawing.Item;
import dev.towerscribe.drawing.Lettering;
import dev.towerscribe.drawing.Page;
import dev.towerscribe.job.JobReader;
import dev.towerscribe.job.Templates;
import dev.towerscribe.layout.JobLayout;
import dev.towerscribe.layout.Layout;
import dev.towerscribe.model.Job;
import dev.towerscribe.model.MeasuredAxis;
import dev.towerscribe.model.Paper;
import dev.towerscribe.model.Side;
import dev.towerscribe.quantity.Angle;
import dev.towerscribe.quantity.LengthUnit;
import dev.towerscribe.sheet.SheetFixtures;
import dev.towerscribe.sheet.TextPageSamples;
import dev.towerscribe.sheet.report.AlignmentPageTest;
import dev.towerscribe.sheet.text.JobInfo;
import java.util.List;
import java.util.Optional;
import java.util.stream.Stream;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.CsvSource;

class PredictedLineTest {
  private static final JobInfo INFO = TextPageSamples.info(LengthUnit.MM, List.of());

  private static List<Item.Text> lettering(Page page) {
    return Stream.concat(
            page.items().stream(), page.window().stream().flatMap(w -> w.items().stream()))
        .filter(Item.Text.class::isInstance)
        .map(Item.Text.class::cast)
        .toList();
  }

  @Test
  void everyTowerSheetTellsWhatToExpect() throws Exception {
    Job job = AlignmentPageTest.job(Paper.A4, LengthUnit.MM);
    JobLayout layout = Layout.of(job);
    for (Side side : Side.values()) {
      SideAlignment aligned = Alignment.of(job).sides().get(side);
      List<String> words = PredictedLine.words(aligned, LengthUnit.MM);
      // Frozen: figures of the invented car, one decimal; AlignmentTest holds their sources.
      assertThat(words)
          .containsExactly(
              "Predicted:",
              "caster +5.3\u00b0",
              "(likely, 2 in 3,",
              "within 0.3\u00b0),",
              "camber -1.5\u00b0",
              "at setting 16 mm");
      List<Page> pages =
          FullScaleSheets.pages(layout.sides().get(side), Optional.of(aligned), INFO);
      for (String face : List.of("underside", "topside")) {
        Page page =
            pages.stream().filter(p -> p.fileStem().endsWith(face)).findFirst().orElseThrow();
        List<Item.Text> line =
            lettering(page).stream().filter(t -> t.content().startsWith("Predicted:")).toList();
        assertThat(line).hasSize(1);
        // The least height of notes.
        assertThat(line.get(0).capHeightMm()).isGreaterThanOrEqualTo(3.5);
      }
      assertThat(SheetFixtures.fullScale(layout.sides().get(side), INFO))
          .allSatisfy(
              p -> assertThat(lettering(p)).noneMatch(t -> t.content().startsWith("Predicted:")));
    }
  }

  /** However crowded the tower, no sheet of a starter job leaves out what to expect. */
  @ParameterizedTest
  @CsvSource({"wren, A4", "wren, LETTER", "siskin, A4", "siskin, LETTER", "dunnock, A4"})
  void everySheetOfEveryStarterJobFindsRoomForIt(String name, Paper paper) throws Exception {
    Job job =
        new JobReader(Lettering::canWrite)
            .parse(
                Templates.text(name + ".toml")
                    .replaceFirst("(?m)^paper *=.*$", "paper = \"%s\"".formatted(paper.word())),
                file -> Optional.of(Templates.text(file)));
    JobLayout layout = Layout.of(job);
    JobInfo info = TextPageSamples.info(job.units(), List.of());
    for (Side side : Side.values()) {
      List<Page> pages =
          FullScaleSheets.pages(
              layout.sides().get(side), Optional.of(Alignment.of(job).sides().get(side)), info);
      for (String face : List.of("underside", "topside")) {
        assertThat(pages.stream().filter(p -> p.fileStem().contains(face)))
            .as("%s %s", side, face)
            .anyMatch(
                p ->
                    lettering(p).stream()
                        .anyMatch(t -> t.content().matches("(Predicted|Estimate):.*")));
      }
    }
  }

  @Test
  void anAxisGivesAnEstimateWithoutPlusMinusInTheJobsUnit() {
    SideAlignment side =
        Alignment.of(
                AlignmentPageTest.with(
                    AlignmentPageTest.job(Paper.LETTER, LengthUnit.INCH).sides().get(Side.LEFT),
                    Optional.empty(),
                    Optional.of(
                        new MeasuredAxis(
                            Angle.ofDegrees(3), Angle.ofDegrees(11), 600, Angle.ofDegrees(-0.5)))))
            .orElseThrow();
    assertThat(PredictedLine.words(side, LengthUnit.INCH))
        .hasSize(4)
        .startsWith("Estimate:")
        .anyMatch(w -> w.startsWith("caster +"))
        .anyMatch(w -> w.endsWith(" in"))
        .noneMatch(w -> w.contains("likely"));
  }
}
