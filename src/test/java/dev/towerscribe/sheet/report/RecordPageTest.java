package dev.towerscribe.sheet.report;

import static org.assertj.core.api.Assertions.assertThat;

import dev.towerscribe.drawing.Lettering;
import dev.towerscribe.drawing.Page;
import dev.towerscribe.job.JobReader;
import dev.towerscribe.job.Templates;
import dev.towerscribe.job.VisitReader;
import dev.towerscribe.model.Job;
import dev.towerscribe.model.Paper;
import dev.towerscribe.model.Print;
import dev.towerscribe.model.Side;
import dev.towerscribe.quantity.LengthUnit;
import dev.towerscribe.record.Visit;
import dev.towerscribe.record.VisitEvaluator;
import dev.towerscribe.sheet.PageRules;
import dev.towerscribe.sheet.TextPageSamples;
import dev.towerscribe.writer.pdf.PdfProof;
import dev.towerscribe.writer.pdf.PdfWriter;
import java.nio.file.Files;
import java.nio.file.Path;
import java.util.ArrayList;
import java.util.List;
import java.util.Map;
import java.util.Optional;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.EnumSource;

class RecordPageTest {
  private static final RecordPage.Source FIRST = new RecordPage.Source(1, List.of(), false);

  private static Job job() throws Exception {
    return new JobReader(Lettering::canWrite)
        .parse(Templates.text("wren.toml"), name -> Optional.empty());
  }

  private static Visit visit() throws Exception {
    return new VisitReader(Lettering::canWrite, note -> {})
        .parse(Files.readAllBytes(Path.of("templates", "wren-visit.toml")), job());
  }

  private static Print on(Paper paper) {
    return new Print(paper, 10, 1, 1);
  }

  private static List<Page> demo(Paper paper) throws Exception {
    return RecordPage.pages(
        VisitEvaluator.of(job(), visit()),
        FIRST,
        on(paper),
        TextPageSamples.info(LengthUnit.MM, List.of()));
  }

  private static Visit with(Visit v, String words, Optional<String> bay, Side... sides) {
    Map<Side, dev.towerscribe.record.WheelVisit> some = new java.util.EnumMap<>(Side.class);
    for (Side side : sides) {
      some.put(side, v.wheels().get(side));
    }
    return new Visit(v.date(), words, bay, v.uncertainty(), some);
  }

  private static List<Page> crowded(Paper paper) throws Exception {
    String eighty = "W".repeat(40) + " a visit with a very long name that goes on";
    return RecordPage.pages(
        VisitEvaluator.of(job(), with(visit(), eighty, Optional.of(eighty), Side.LEFT, Side.RIGHT)),
        new RecordPage.Source(
            123,
            List.of(
                "this entry was edited after it was written: its checksum does not match",
                "the job has changed, or the program: predicted left after caster then 5.28 deg,"
                    + " now 5.41 deg; and 11 more"),
            false),
        on(paper),
        TextPageSamples.longInfo(TextPageSamples.stops(3)));
  }

  private static List<Page> oneSide(Paper paper) throws Exception {
    return RecordPage.pages(
        VisitEvaluator.of(job(), with(visit(), "", Optional.empty(), Side.RIGHT)),
        FIRST,
        on(paper),
        TextPageSamples.info(LengthUnit.INCH, List.of()));
  }

  @ParameterizedTest
  @EnumSource(Paper.class)
  void everythingStaysInsideTheMarginsAndApart(Paper paper) throws Exception {
    PageRules.check(demo(paper), 10);
    PageRules.check(crowded(paper), 10);
    PageRules.check(oneSide(paper), 10);
  }

  @Test
  void theDemoIsOnePageOnBothCommonPapers() throws Exception {
    for (Paper paper : List.of(Paper.A4, Paper.LETTER)) {
      List<Page> pages = demo(paper);
      assertThat(pages).hasSize(1);
      assertThat(PageRules.words(pages))
          .contains(
              "Alignment record, visit 1", "first alignment after fitting", "Bay: Invented Bay")
          .contains("LEFT predicted", "RIGHT read", "5.28 0.27 5.20 0.15", "!6.9")
          .contains("setting 16 mm, rotation 55 deg", "Aims: caster 5.5 to 6 deg")
          .contains("Would explain it", "Check the torque")
          .contains("qualified body or chassis shop", "local inspection", "certifies nothing")
          .contains("Bay: name, day, signature", "Customer: name, day, signature");
      byte[] pdf = PdfWriter.write("record", pages);
      assertThat(PdfProof.check(pdf, pages)).isEmpty();
    }
    assertThat(oneSide(Paper.LETTER)).hasSize(1);
  }

  @Test
  void acceptedStopsAndRemarksAreOnIt() throws Exception {
    assertThat(PageRules.words(crowded(Paper.A4)))
        .contains("PRINTED WITH 3 ACCEPTED STOPS", "left.edge-cut.bolt-1")
        .contains("NOTE: this entry was edited", "now 5.41 deg");
  }

  @Test
  void samePagesTwice() throws Exception {
    assertThat(demo(Paper.A4)).isEqualTo(demo(Paper.A4));
  }

  /** Writes pages to {@code target/sheets}, to be looked at by eye. */
  @Test
  void writesPagesToLookAt() throws Exception {
    for (Paper paper : List.of(Paper.A4, Paper.LETTER)) {
      List<Page> all = new ArrayList<>(demo(paper));
      all.addAll(crowded(paper));
      all.addAll(oneSide(paper));
      Path file = Path.of("target", "sheets", "record-" + paper.word() + ".pdf");
      Files.createDirectories(file.getParent());
      Files.write(file, PdfWriter.write("record", all));
      assertThat(Files.size(file)).isPositive();
    }
  }
}
