package dev.towerscribe.sheet.report;

import static org.assertj.core.api.Assertions.assertThat;

import dev.towerscribe.drawing.Page;
import dev.towerscribe.geometry.Vec3;
import dev.towerscribe.layout.SideLayout;
import dev.towerscribe.model.BoltClass;
import dev.towerscribe.model.Lean;
import dev.towerscribe.model.Paper;
import dev.towerscribe.model.Seat;
import dev.towerscribe.model.Side;
import dev.towerscribe.quantity.Angle;
import dev.towerscribe.quantity.LengthUnit;
import dev.towerscribe.sheet.PageRules;
import dev.towerscribe.sheet.TextPageSamples;
import dev.towerscribe.sheet.text.JobInfo;
import dev.towerscribe.strength.Loads;
import dev.towerscribe.strength.Strength;
import dev.towerscribe.strength.StrengthInput;
import dev.towerscribe.strength.StrengthReport;
import dev.towerscribe.writer.pdf.PdfWriter;
import java.io.IOException;
import java.nio.file.Files;
import java.nio.file.Path;
import java.util.ArrayList;
import java.util.List;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.EnumSource;

class StrengthPageTest {
  private static StrengthReport report(SideLayout layout, Seat seat, double factor) {
    Vec3 up = new Lean(Angle.ofDegrees(12), Angle.ofDegrees(5)).normal(layout.side());
    return Strength.of(
        layout,
        new StrengthInput(
            new Loads(28, 65, 3900, factor),
            up,
            "the measured lean of the strut",
            seat,
            BoltClass.CLASS_8_8,
            0.12));
  }

  private static List<Page> pages(SideLayout layout, JobInfo info, Seat seat, double factor) {
    return StrengthPage.pages(report(layout, seat, factor), layout.job().print(), info);
  }

  @ParameterizedTest
  @EnumSource(Paper.class)
  void everythingStaysInsideTheMarginsAndApart(Paper paper) {
    // Long words and most lines together: inches, a plate on top, alarms, accepted stops.
    PageRules.check(
        pages(
            TextPageSamples.plain(Side.LEFT, paper),
            TextPageSamples.info(LengthUnit.MM, List.of()),
            Seat.UNDERNEATH,
            2),
        10);
    JobInfo stops = TextPageSamples.longInfo(TextPageSamples.stops(2));
    SideLayout full = TextPageSamples.full(Side.RIGHT, paper, LengthUnit.INCH);
    PageRules.check(pages(full, stops, Seat.ON_TOP, 30), 10);
    SideLayout eight = TextPageSamples.eight(Side.LEFT, paper, true);
    PageRules.check(pages(eight, stops, Seat.ON_TOP, 30), 10);
  }

  @Test
  void saysWhatItIsNot() {
    String words =
        PageRules.words(
            pages(
                TextPageSamples.plain(Side.LEFT, Paper.A4),
                TextPageSamples.info(LengthUnit.MM, List.of()),
                Seat.ON_TOP,
                2));
    assertThat(words)
        .contains("ADVISORY - NOT A CERTIFICATION")
        .contains("licensed engineer")
        .contains("vehicle maker")
        // Independent: by hand, 3900 + 28 * 65 = 5720, doubled.
        .contains("5720 N")
        .contains("11440 N")
        .contains("AREAS COMPARED ONLY")
        .doesNotContain("WOULD");
  }

  @Test
  void anOverloadedBoltIsToldAtTheHead() {
    SideLayout layout = TextPageSamples.plain(Side.LEFT, Paper.A4);
    String words =
        PageRules.words(
            pages(layout, TextPageSamples.info(LengthUnit.MM, List.of()), Seat.ON_TOP, 30));
    // Independent: 30 * 5720 N cos 12 or so on three M8 of 21 200 N.
    assertThat(words)
        .contains("BOLT A WOULD TAKE", "THE PLATE WOULD LIFT AT BOLT A", "plate lifts");
  }

  @Test
  void samePagesTwice() {
    SideLayout layout = TextPageSamples.full(Side.RIGHT, Paper.A4, LengthUnit.MM);
    JobInfo info = TextPageSamples.info(LengthUnit.MM, List.of());
    assertThat(pages(layout, info, Seat.ON_TOP, 2)).isEqualTo(pages(layout, info, Seat.ON_TOP, 2));
  }

  /** Writes the page to {@code target/sheets}, to be looked at by eye. */
  @Test
  void writesPagesToLookAt() throws IOException {
    for (Paper paper : List.of(Paper.A4, Paper.LETTER)) {
      List<Page> all = new ArrayList<>();
      JobInfo info = TextPageSamples.info(LengthUnit.MM, List.of());
      all.addAll(pages(TextPageSamples.plain(Side.LEFT, paper), info, Seat.UNDERNEATH, 2));
      all.addAll(
          pages(
              TextPageSamples.full(Side.RIGHT, paper, LengthUnit.INCH),
              TextPageSamples.longInfo(TextPageSamples.stops(1)),
              Seat.ON_TOP,
              6));
      Path file = Path.of("target", "sheets", "strength-" + paper.word() + ".pdf");
      Files.createDirectories(file.getParent());
      Files.write(file, PdfWriter.write("strength", all));
      assertThat(Files.size(file)).isPositive();
    }
  }
}
