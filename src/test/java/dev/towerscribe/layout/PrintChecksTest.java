package dev.towerscribe.layout;

import static org.assertj.core.api.Assertions.assertThat;
import static org.assertj.core.api.Assertions.within;

import dev.towerscribe.SampleJobs;
import dev.towerscribe.finding.Finding;
import dev.towerscribe.finding.JobRejected;
import dev.towerscribe.finding.Severity;
import dev.towerscribe.model.Paper;
import dev.towerscribe.model.Print;
import dev.towerscribe.model.Side;
import dev.towerscribe.quantity.Angle;
import java.util.List;
import org.junit.jupiter.api.Test;

/** What is said of the printer. Figures worked by hand with a pocket calculator. */
class PrintChecksTest {
  private static final double CALCULATOR_MM = 1e-4;

  private static List<Finding> of(Print print) throws JobRejected {
    var side = SampleJobs.side(Side.LEFT, SampleJobs.plainTower(), SampleJobs.plate(true));
    return Layout.of(SampleJobs.only(side.with(print))).sides().get(Side.LEFT).findings().stream()
        .filter(f -> f.id().startsWith("left.print-"))
        .toList();
  }

  private static void expect(
      List<Finding> findings,
      String id,
      Severity severity,
      double figure,
      double limit,
      String unit) {
    Finding found = findings.stream().filter(f -> f.id().equals(id)).findFirst().orElseThrow();
    assertThat(found.severity()).as(id).isEqualTo(severity);
    assertThat(found.figure()).as(id).isCloseTo(figure, within(CALCULATOR_MM));
    assertThat(found.limit()).as(id).isEqualTo(limit);
    assertThat(found.unit()).as(id).isEqualTo(unit);
    assertThat(found.source()).isNotBlank();
    assertThat(found.say()).isNotBlank();
  }

  @Test
  void aTruePrinterIsNotSpokenOf() throws JobRejected {
    assertThat(of(new Print(Paper.A4, 10, 1, 1))).isEmpty();
  }

  @Test
  void aScaleIsANote() throws JobRejected {
    List<Finding> findings = of(new Print(Paper.A4, 10, 1.013, 0.994));
    expect(findings, "left.print-scale", Severity.NOTE, 1.3, 3, "%");
    assertThat(findings).hasSize(1);
  }

  @Test
  void aSkewIsANoteWithoutAScaleToo() throws JobRejected {
    List<Finding> findings = of(new Print(Paper.A4, 10, 1, 1, Angle.ofDegrees(-0.4)));
    expect(findings, "left.print-skew", Severity.NOTE, 0.4, 3, "deg");
    assertThat(findings).singleElement().extracting(Finding::say).asString().contains("-0.40 deg");
  }

  @Test
  void sheetsDrawnNearThePapersEdgeAreACaution() throws JobRejected {
    // The frame's half sizes 95 and 138.5: 105 - (95 + 138.5 tan 2) / 0.985.
    List<Finding> findings = of(new Print(Paper.A4, 10, 0.985, 1.01, Angle.ofDegrees(-2)));
    expect(findings, "left.print-edge", Severity.CAUTION, 3.6431, 4, "mm");
    assertThat(findings).hasSize(3);
    // With 13 mm of margin: 105 - (92 + 135.5 tan 2) / 0.985 = 6.7951.
    assertThat(of(new Print(Paper.A4, 13, 0.985, 1.01, Angle.ofDegrees(-2)))).hasSize(2);
  }

  @Test
  void sheetsDrawnBeyondThePaperAreAStop() throws JobRejected {
    // 148.5 - (148.5 - 4) / 0.97.
    expect(of(new Print(Paper.A4, 4, 1, 0.97)), "left.print-edge", Severity.STOP, -0.4691, 4, "mm");
  }
}
