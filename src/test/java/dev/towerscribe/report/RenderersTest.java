package dev.towerscribe.report;

import static org.assertj.core.api.Assertions.assertThat;

import dev.towerscribe.drawing.Lettering;
import dev.towerscribe.drilled.Drilled;
import dev.towerscribe.drilled.DrilledAngles;
import dev.towerscribe.finding.Finding;
import dev.towerscribe.geometry.PrintReading;
import dev.towerscribe.geometry.PrintScale;
import dev.towerscribe.job.JobReader;
import dev.towerscribe.job.ReadingsReader;
import dev.towerscribe.job.SurveyReader;
import dev.towerscribe.job.VisitReader;
import dev.towerscribe.model.Job;
import dev.towerscribe.model.Mount;
import dev.towerscribe.model.Side;
import dev.towerscribe.placement.Layouts;
import dev.towerscribe.placement.Offer;
import dev.towerscribe.placement.Placements;
import dev.towerscribe.quantity.Angle;
import dev.towerscribe.quantity.LengthUnit;
import dev.towerscribe.quantity.Lengths;
import dev.towerscribe.record.VisitEvaluator;
import dev.towerscribe.survey.Surveys;
import java.nio.file.Files;
import java.nio.file.Path;
import java.util.ArrayList;
import java.util.EnumMap;
import java.util.List;
import java.util.Map;
import java.util.Optional;
import java.util.Set;
import org.junit.jupiter.api.Test;

/** Every block of every builder through two renderers: what one says, the other says. */
class RenderersTest {
  private static final Path TEMPLATES = Path.of("templates");

  private static Job job(String name) throws Exception {
    return new JobReader(Lettering::canWrite).read(TEMPLATES.resolve(name));
  }

  private static List<Report> all() throws Exception {
    List<Report> reports = new ArrayList<>();
    for (String name : List.of("wren.toml", "siskin.toml")) {
      Job job = job(name);
      Layouts.Worked worked = Layouts.of(job);
      reports.add(
          LayoutReport.of(
              worked.layout(), Set.of(), Optional.of("ABC123"), List.of("Read this first.")));
      reports.add(AlignmentReport.of(job, worked.alignment()));
    }
    Job wren = job("wren.toml");
    reports.add(
        SurveyReport.of(
            Surveys.of(
                new SurveyReader(Lettering::canWrite, note -> {})
                    .read(TEMPLATES.resolve("wren-survey.toml"))),
            Set.of()));
    Drilled drilled =
        Drilled.of(
            Layouts.of(wren).layout(),
            new ReadingsReader(Lettering::canWrite, note -> {}, wren)
                .read(TEMPLATES.resolve("wren-drilled.toml")),
            j -> Layouts.of(j).layout());
    Map<Side, DrilledAngles> angles = new EnumMap<>(Side.class);
    drilled
        .sides()
        .forEach(
            (side, d) ->
                d.asDrilled()
                    .ifPresent(
                        as ->
                            angles.put(
                                side, DrilledAngles.of(d.planned().job(), as.mount(), as.sure()))));
    reports.add(DrilledReport.of(drilled, angles, Set.of()));
    reports.add(
        RecordReport.of(
            1,
            VisitEvaluator.of(
                wren,
                new VisitReader(Lettering::canWrite, note -> {})
                    .parse(Files.readAllBytes(TEMPLATES.resolve("wren-visit.toml")), wren))));
    Offer offer =
        new Offer(
            "best for the aims",
            new Mount(Angle.ofDegrees(64.6), 13, 0, 16),
            Angle.ofDegrees(5.94),
            Angle.ofDegrees(-1.41),
            Optional.of(Angle.ofDegrees(0.181)),
            9372,
            0.2,
            "the rod & the opening touch");
    reports.add(
        PlacementReport.of(
            wren,
            new Placements.Found(
                List.of(offer), Optional.empty(), false, 12, List.of(), List.of(), List.of())));
    reports.add(
        PrintReport.of(
            PrintProof.of(
                new PrintReading(100, 100, 99, 99.5, Optional.of(140.2), 0.05),
                LengthUnit.MM,
                PrintScale.TRUE,
                List.of("a note")),
            true));
    return reports;
  }

  /** Words in one line, whatever a renderer broke or set beside them. */
  private static String plain(String text) {
    return text.replaceAll("<[^>]*>", " ")
        .replace("&lt;", "<")
        .replace("&gt;", ">")
        .replace("&amp;", "&")
        .replaceAll("\\s+", " ");
  }

  /** What a block says, piece by piece. */
  private static List<String> pieces(Report report) {
    List<String> pieces = new ArrayList<>();
    pieces.add(report.title());
    Block.Visitor collector =
        new Block.Visitor() {
          @Override
          public void facts(Block.Facts facts) {
            facts.facts().forEach(f -> pieces.addAll(f.value()));
          }

          @Override
          public void verdict(Block.Verdict verdict) {
            pieces.add(verdict.words());
            pieces.addAll(verdict.details());
          }

          @Override
          public void section(Block.Section section) {}

          @Override
          public void paragraph(Block.Paragraph paragraph) {
            pieces.add(paragraph.words());
          }

          @Override
          public void points(Block.Points points) {
            pieces.addAll(points.points());
          }

          @Override
          public void table(Block.Table table) {
            pieces.addAll(table.heads());
            for (Block.Row row : table.rows()) {
              for (Cell cell : row.cells()) {
                pieces.add(cell.text(report.lengths()));
                if (cell instanceof Cell.Figure f) {
                  f.likely().ifPresent(l -> pieces.add(l.text(report.lengths())));
                }
              }
            }
          }

          @Override
          public void findings(Block.FoundList found) {
            pieces.add(found.heading());
            for (Finding f : found.findings()) {
              pieces.addAll(List.of(f.id(), f.where(), f.say()));
              pieces.add(FindingWords.figures(f, report.lengths()));
            }
          }

          @Override
          public void fileLines(Block.FileLines lines) {
            pieces.addAll(lines.lines());
          }
        };
    report.blocks().forEach(b -> b.accept(collector));
    return pieces;
  }

  @Test
  void everySentenceAndFigureArrivesInTextAndInHtml() throws Exception {
    for (Report report : all()) {
      String text = plain(PlainText.of(report));
      String html = plain(Html.of(report));
      List<String> pieces = pieces(report);
      assertThat(pieces).as(report.title()).hasSizeGreaterThan(15);
      for (String piece : pieces) {
        assertThat(text).as(report.title()).contains(plain(piece));
        assertThat(html).as(report.title()).contains(plain(piece));
      }
    }
  }

  @Test
  void everyKindOfBlockIsUsed() throws Exception {
    assertThat(all().stream().flatMap(r -> r.blocks().stream()).map(Block::getClass))
        .contains(
            Block.Facts.class,
            Block.Verdict.class,
            Block.Section.class,
            Block.Paragraph.class,
            Block.Points.class,
            Block.Table.class,
            Block.FoundList.class,
            Block.FileLines.class);
  }

  @Test
  void figuresAreLinedUpByMeaningAndSayHowNearTheyAre() {
    Block.Table table =
        Block.Table.of("", "size", "word")
            .plus(List.of(Cell.words("A"), Cell.length(25.4).likely(2.54), Cell.words("left")))
            .plus(List.of(Cell.words("B"), Cell.length(-254), Cell.words("right")));
    Report mm = new Report("t", Lengths.in(LengthUnit.MM), List.of(table));
    // Independent: set by hand; figures end in one column, words begin in one.
    assertThat(PlainText.of(mm))
        .isEqualTo(
            """
            t

                                   size  word
              A                   25.40  left
                likely, 2 in 3     2.54
              B                 -254.00  right
            """);
    Report inches = new Report("t", Lengths.in(LengthUnit.INCH), List.of(table));
    // Published: the inch is 25.4 mm, ISO 80000-3.
    assertThat(PlainText.of(inches)).contains(" 1.000  left", " 0.100\n", "-10.000  right");
    assertThat(Html.of(inches)).contains("<td>1.000 (likely, 2 in 3: 0.100)</td>");
  }

  @Test
  void aFigureThatTheJobStatesReadsAsMeasured() {
    assertThat(Cell.angle(0.1).likelyOrMeasured(0).likely()).contains(Cell.words("as measured"));
    assertThat(Cell.angle(0.1).likelyOrMeasured(1e-3).likely()).contains(Cell.angle(1e-3));
  }

  @Test
  void signsAndMarks() {
    var lengths = Lengths.in(LengthUnit.MM);
    assertThat(Cell.figure(Amount.DIFFERENCE, Math.toRadians(0.126)).text(lengths))
        .isEqualTo("+0.13");
    assertThat(Cell.figure(Amount.DIFFERENCE, Math.toRadians(0.001)).text(lengths))
        .isEqualTo("0.00");
    assertThat(Cell.figure(Amount.NUMBER, 2.8).marked("!", true).text(lengths)).isEqualTo("!2.8");
    assertThat(Cell.length(9).marked("SHORT", true).text(lengths)).isEqualTo("SHORT 9.00");
    assertThat(Cell.length(9).marked("SHORT", false).text(lengths)).isEqualTo("9.00");
  }
}
