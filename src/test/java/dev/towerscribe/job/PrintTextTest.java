package dev.towerscribe.job;

import static org.assertj.core.api.Assertions.assertThat;

import dev.towerscribe.model.Job;
import dev.towerscribe.model.PrinterFigures;
import dev.towerscribe.quantity.Angle;
import java.util.List;
import java.util.Optional;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.ValueSource;

class PrintTextTest {
  private static final PrinterFigures FOUND =
      new PrinterFigures(1.0130004, 0.994, Optional.of(Angle.ofDegrees(0.4001)));

  private static final PrinterFigures SQUARE = new PrinterFigures(1.0, 0.994, Optional.empty());

  // Independent: every expected text is written out by hand.

  @Test
  void replacesTheFiguresAndNothingElse() {
    assertThat(
            PrintText.with(
                """
                title = "a [print] of sorts"
                [print]   # the shop's own
                  skew=-1.5# measured
                paper = "A4"
                scale  =  { along = 1.0,across = 1.0 }   # 1 May
                [left.print]
                margin = 12.0
                """,
                FOUND))
        .contains(
            """
            title = "a [print] of sorts"
            [print]   # the shop's own
              skew=0.4# measured
            paper = "A4"
            scale  =  { across = 1.013, along = 0.994 }   # 1 May
            [left.print]
            margin = 12.0
            """);
  }

  @Test
  void aSkewIsAddedAfterTheScale() {
    String text = "[print]\r\nscale = { across = 1.0 }\r\nmargin = 10.0\r\n";
    assertThat(PrintText.with(text, FOUND))
        .contains(
            "[print]\r\nscale = { across = 1.013, along = 0.994 }\r\nskew = 0.4\r\nmargin ="
                + " 10.0\r\n");
    assertThat(PrintText.with(text, SQUARE))
        .contains("[print]\r\nscale = { across = 1.0, along = 0.994 }\r\nmargin = 10.0\r\n");
  }

  @Test
  void bothAreAddedUnderTheHeading() {
    assertThat(PrintText.with("[print]\npaper = \"A4\"\nskew = 1.0\n", FOUND))
        .contains(
            "[print]\nscale = { across = 1.013, along = 0.994 }\npaper = \"A4\"\nskew = 0.4\n");
    assertThat(PrintText.with("a = 1\n[print]", FOUND))
        .contains("a = 1\n[print]\nscale = { across = 1.013, along = 0.994 }\nskew = 0.4");
  }

  @Test
  void aTableIsAddedAtTheEnd() {
    assertThat(PrintText.with("a = 1\n[cut]\nkeep = 3.0", FOUND))
        .contains(
            "a = 1\n[cut]\nkeep = 3.0\n\n[print]\nscale = { across = 1.013, along = 0.994 }\n"
                + "skew = 0.4\n");
  }

  @ParameterizedTest
  @ValueSource(
      strings = {
        "print = { scale = { across = 1.0, along = 1.0 } }\n",
        "[print.scale]\nacross = 1.0\nalong = 1.0\n",
        "[print]\nscale.across = 1.0\n",
        "[print]\npaper = \"A4\"\n[print.scale]\nacross = 1.0\n",
        "print.skew = 1.0\n",
        "[print]\n\"scale\" = { across = 1.0 }\n",
      })
  void refusesWhatItDoesNotUnderstand(String text) {
    assertThat(PrintText.with(text, FOUND)).isEmpty();
  }

  @Test
  void everyStarterJobReadsBackAsItselfFromAnotherPrinter() throws Exception {
    for (String name : List.of("wren.toml", "siskin.toml", "dunnock.toml")) {
      String text = Templates.text(name);
      Job job = Jobs.READER.parse(text, plate -> Optional.of(Templates.text(plate)));
      String changed = PrintText.with(text, FOUND).orElseThrow();
      Job again = Jobs.READER.parse(changed, plate -> Optional.of(Templates.text(plate)));
      assertThat(again).isEqualTo(job.printedBy(1.013, 0.994, Angle.ofDegrees(0.4)));
      assertThat(PrintText.with(changed, FOUND)).contains(changed);
    }
  }

  @Test
  void seesAPrinterOfOneSide() {
    assertThat(PrintText.differsBySide("[print]\nskew = 1.0\n[left.print]\nmargin = 9.0\n"))
        .isEmpty();
    assertThat(
            PrintText.differsBySide(
                "left = { print = { skew = 4.0 } }\n[right.print.scale]\nalong = 1.0\n"))
        .containsExactly("left.print.skew", "right.print.scale");
  }

  @Test
  void figuresAreWrittenAsTheyWillBeRead() {
    // Independent: as given, with no more digits than that.
    assertThat(FOUND.lines())
        .containsExactly("scale = { across = 1.013, along = 0.994 }", "skew = 0.4");
    assertThat(FOUND.across()).isEqualTo(1.013);
    assertThat(FOUND.skew()).contains(Angle.ofDegrees(0.4));
    assertThat(new PrinterFigures(1, 1, Optional.of(new Angle(-1e-9))).lines())
        .containsExactly("scale = { across = 1.0, along = 1.0 }", "skew = 0.0");
  }
}
