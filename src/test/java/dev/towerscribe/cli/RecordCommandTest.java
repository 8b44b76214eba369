package dev.towerscribe.cli;

import static org.assertj.core.api.Assertions.assertThat;
import static org.assertj.core.api.Assertions.within;

import com.fasterxml.jackson.databind.JsonNode;
import dev.towerscribe.job.Templates;
import java.nio.file.Files;
import java.nio.file.Path;
import java.util.List;
import java.util.stream.Stream;
import org.apache.pdfbox.Loader;
import org.apache.pdfbox.pdmodel.PDDocument;
import org.apache.pdfbox.text.PDFTextStripper;
import org.junit.jupiter.api.BeforeEach;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.api.io.TempDir;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.CsvSource;

/** {@code record} from the words typed to the files written. */
class RecordCommandTest {
  @TempDir Path directory;

  private CommandRuns runs;

  private String visit;

  @BeforeEach
  void writeFiles() throws Exception {
    runs = new CommandRuns(directory);
    visit = Files.readString(Path.of("templates", "wren-visit.toml"));
    runs.write("wren.toml", Templates.text("wren.toml"));
    runs.write("visit.toml", visit);
  }

  private int record(String... words) {
    return runs.run(Stream.concat(Stream.of("record"), Stream.of(words)).toArray(String[]::new));
  }

  private String recordText() throws Exception {
    return runs.read("wren.record.txt");
  }

  @Test
  void theDemoVisitIsAddedAndSaid() throws Exception {
    assertThat(record("wren.toml", "visit.toml")).isEqualTo(Exit.DONE);
    assertThat(runs.err()).isEmpty();
    assertThat(visit).contains("INVENTED");
    assertThat(runs.out())
        .contains("LEFT: all 8 figures are within 2 sd")
        // The right was read with the bearing near the mark at 4 mm; nobody says that it is so.
        .contains("Would explain it: the bearing at setting 4 mm, not 16 mm")
        .endsWith("added visit 1 to wren.record.txt\n");
    assertThat(recordText()).startsWith("== Towerscribe record, visit 1, 2026-12-03 ==\n");
    assertThat(directory.resolve(".towerscribe-lock")).doesNotExist();
  }

  @Test
  void theVerySameVisitIsRefusedUnlessAskedForAgain() throws Exception {
    assertThat(record("wren.toml", "visit.toml")).isEqualTo(Exit.DONE);
    String before = recordText();
    assertThat(record("wren.toml", "visit.toml")).isEqualTo(Exit.WRONG_USE);
    assertThat(runs.err()).contains("already has this visit, as visit 1", "--again");
    assertThat(recordText()).isEqualTo(before);
    assertThat(record("wren.toml", "visit.toml", "--again")).isEqualTo(Exit.DONE);
    assertThat(recordText()).startsWith(before).contains("== Towerscribe record, visit 2, ");
    runs.write("visit.toml", visit.replace("caster = 5.2", "caster = 5.21"));
    assertThat(record("wren.toml", "visit.toml")).isEqualTo(Exit.DONE);
    // The same figures in inches are the same figures.
    runs.write(
        "inch.toml",
        visit
            .replace("units = \"mm\"", "units = \"in\"")
            .replace("setting = 16.0", "setting = 0.6299212598425197")
            .replace("ride = 2.0", "ride = 0.08"));
    assertThat(record("wren.toml", "inch.toml")).isEqualTo(Exit.WRONG_USE);
    assertThat(runs.err()).contains("already has this visit");
  }

  @Test
  void everyFaultOfAVisitIsToldAtOnceAndNothingIsWritten() throws Exception {
    runs.write(
        "bad.toml",
        visit
            .replace("date = 2026-12-03 ", "date = 2026-13-03 ")
            .replace("caster = 2.6", "caster = 26.0")
            .replace("knuckle = 0.0 ", "knuckle = -9.0 ")
            .replace("camber = -0.85", "cambre = -0.85"));
    assertThat(record("wren.toml", "bad.toml")).isEqualTo(Exit.WRONG_USE);
    assertThat(runs.err())
        .contains("the visit file cannot be used, and nothing was added")
        .contains("date: \"2026-13-03\"; allowed: a date")
        .contains("left.before.caster: 26; allowed: -10 to 20 deg")
        .contains("left.after.knuckle: -9; allowed: within the job's knuckle bolt, -2 to 0.5 deg")
        .contains("right.after.cambre: unknown key. Did you mean camber?");
    assertThat(runs.out()).isEmpty();
    assertThat(directory.resolve("wren.record.txt")).doesNotExist();
  }

  @Test
  void exitCodes() throws Exception {
    assertThat(record()).isEqualTo(Exit.WRONG_USE);
    assertThat(record("wren.toml")).isEqualTo(Exit.FILES);
    assertThat(runs.err()).contains("no visit has been recorded yet");
    assertThat(record("wren.toml", "none.toml")).isEqualTo(Exit.FILES);
    assertThat(record("none.toml", "visit.toml")).isEqualTo(Exit.FILES);
    assertThat(record("visit.toml", "visit.toml")).isEqualTo(Exit.WRONG_USE);
    assertThat(record("wren.toml", "visit.toml", "--csv")).isEqualTo(Exit.WRONG_USE);
    assertThat(runs.err()).contains("--csv does not go with adding a visit");
    assertThat(record("wren.toml", "--list", ".")).isEqualTo(Exit.WRONG_USE);
    assertThat(record("--list", "nowhere")).isEqualTo(Exit.FILES);
    assertThat(record("wren.toml", "visit.toml", "--accept", "left.nothing"))
        .isEqualTo(Exit.WRONG_USE);
    assertThat(directory.resolve("wren.record.txt")).doesNotExist();
    assertThat(record("wren.toml", "visit.toml")).isEqualTo(Exit.DONE);
    assertThat(record("wren.toml", "--visit", "7")).isEqualTo(Exit.WRONG_USE);
    assertThat(runs.err()).contains("the record has 1");
    assertThat(record("wren.toml", "-o", "p.pdf", "--paper", "A9")).isEqualTo(Exit.WRONG_USE);
    assertThat(record("wren.toml", "-o", "no/p.pdf")).isEqualTo(Exit.FILES);
    assertThat(record("--help")).isEqualTo(Exit.DONE);
  }

  @Test
  void theRecordIsShownWithWhatIsNotAsItWas() throws Exception {
    record("wren.toml", "visit.toml");
    runs.write(
        "wren.record.txt",
        recordText().replace("measured 4.4 deg", "measured 4.9 deg")
            + "\n== Towerscribe record, visit 2, 2027-01-01 ==\n"
            + "left after caster: measured 5.5 deg +/- 0.15; not predicted\nleft after cam");
    assertThat(record("wren.toml")).isEqualTo(Exit.DONE);
    assertThat(runs.out())
        .contains("right after caster: measured 4.9 deg")
        .contains("remark: visit 1, lines 1 to ", "was edited after it was written")
        .contains("remark: an entry was cut short at line ")
        .contains("its readings are: left after caster 5.5 deg\n")
        .contains("left after cam\n");
    assertThat(record("wren.toml", "visit.toml")).isEqualTo(Exit.DONE);
    assertThat(runs.err()).contains("was cut short at line");
    assertThat(recordText())
        .contains(
            "left after cam\n"
                + "-- the entry above was cut short --\n\n"
                + "== Towerscribe record, visit 3,");
  }

  @Test
  void aJobChangedSinceIsSaid() throws Exception {
    record("wren.toml", "visit.toml");
    assertThat(record("wren.toml")).isEqualTo(Exit.DONE);
    assertThat(runs.out()).doesNotContain("since then");
    runs.write(
        "wren.toml", Templates.text("wren.toml").replace("rearward = 8.0 ", "rearward = 6.0 "));
    assertThat(record("wren.toml")).isEqualTo(Exit.DONE);
    assertThat(runs.out())
        .contains(
            "since then: the job has changed, or the program: predicted left after caster then");
    assertThat(record("wren.toml", "-o", "page.pdf")).isEqualTo(Exit.DONE);
  }

  @Test
  void jsonHasTheFiguresAndTheCauses() throws Exception {
    record("wren.toml", "visit.toml");
    assertThat(record("wren.toml", "--json")).isEqualTo(Exit.DONE);
    assertThat(runs.out()).doesNotContain("NaN");
    JsonNode all = runs.data();
    assertThat(all.path("format").asInt()).isEqualTo(1);
    JsonNode one = all.path("visits").get(0);
    assertThat(one.path("number").asInt()).isEqualTo(1);
    assertThat(one.path("state").asText()).isEqualTo("whole");
    assertThat(one.path("settings").path("right").path("setting").asDouble()).isEqualTo(16);
    // 16 figures, 6 changes, 6 of left against right.
    assertThat(one.path("compared")).hasSize(28);
    JsonNode first = one.path("compared").get(0);
    assertThat(first.path("difference").asDouble())
        .isCloseTo(
            first.path("measured").asDouble() - first.path("predicted").asDouble(), within(1e-12));
    JsonNode right = one.path("explanations").get(1);
    assertThat(right.path("side").asText()).isEqualTo("right");
    assertThat(right.path("answer").asText()).isEqualTo("one-cause");
    JsonNode cause = right.path("causes").get(0);
    assertThat(cause.path("cause").asText()).isEqualTo("setting");
    assertThat(cause.path("would_explain").asBoolean()).isTrue();
    // Independent: the demo was read at the mark 12 mm back along the slot, give or take what the
    // bay's uncertainty leaves open.
    assertThat(cause.path("value").asDouble()).isBetween(-16.0, -8.0);
  }

  @Test
  void thePageIsWrittenOnceAndReplacedOnlyWhenTold() throws Exception {
    record("wren.toml", "visit.toml");
    assertThat(record("wren.toml", "-o", "page.pdf", "--paper", "Letter")).isEqualTo(Exit.DONE);
    byte[] letter = Files.readAllBytes(directory.resolve("page.pdf"));
    assertThat(record("wren.toml", "-o", "page.pdf", "--paper", "Letter")).isEqualTo(Exit.DONE);
    assertThat(Files.readAllBytes(directory.resolve("page.pdf"))).isEqualTo(letter);
    assertThat(record("wren.toml", "-o", "page.pdf")).isEqualTo(Exit.FILES);
    assertThat(Files.readAllBytes(directory.resolve("page.pdf"))).isEqualTo(letter);
    assertThat(record("wren.toml", "-o", "page.pdf", "--force")).isEqualTo(Exit.DONE);
    assertThat(Files.readAllBytes(directory.resolve("page.pdf"))).isNotEqualTo(letter);
  }

  @Test
  void anEditedRecordWithLettersNoSheetHasStillGivesItsPage() throws Exception {
    record("wren.toml", "visit.toml");
    runs.write(
        "wren.record.txt", recordText().replace("bay: Invented Bay", "bay: \u05d0\u0301 Bay"));
    assertThat(record("wren.toml", "-o", "page.pdf")).isEqualTo(Exit.DONE);
    runs.write("wren.record.txt", "== Towerscribe record, visit 1, 2026-12-03 ==\n");
    assertThat(record("wren.toml", "-o", "page2.pdf")).isEqualTo(Exit.WRONG_USE);
    assertThat(runs.err()).contains("do not hold enough for a page");
  }

  @Test
  void aFolderIsListedInOrderAndBrokenFilesAreNamed() throws Exception {
    record("wren.toml", "visit.toml");
    runs.write(
        "jobs/b.toml",
        Templates.text("wren.toml").replace("Wren hatch, road", "=Wren \\\"B\\\", road"));
    runs.write("jobs/a.toml", Templates.text("siskin.toml"));
    runs.write("jobs/visit.toml", visit);
    runs.write("jobs/notes.txt", "mine");
    record("jobs/b.toml", "visit.toml");
    record("jobs/b.toml", "visit.toml", "--again");
    assertThat(record("--list", "jobs")).isEqualTo(Exit.DONE);
    assertThat(runs.err()).isEmpty();
    assertThat(runs.out().lines().skip(3).map(l -> l.strip().split(" +")[0]))
        .containsExactly("a.toml", "b.toml", "b.toml");
    assertThat(record("--list", "jobs", "--csv")).isEqualTo(Exit.DONE);
    List<String> lines = List.of(runs.out().split("\r\n", -1));
    assertThat(lines).hasSize(5);
    assertThat(lines.get(0))
        .startsWith("job_file,job,visit,date,state,for,bay,outside_2_sd,")
        .contains("right_after_camber_predicted_deg");
    assertThat(lines.get(2))
        .startsWith("b.toml,\"'=Wren \"\"B\"\", road and track days\",1,2026-12-03,whole,")
        .contains(",-0.85,-1.46,");

    runs.write("jobs/c.toml", "title = \"broken\"\n[tower]\nopening = 3\n[mount]\n");
    runs.write("jobs/d.toml", "not toml at all");
    runs.write("jobs/orphan.record.txt", runs.read("jobs/b.record.txt"));
    assertThat(record("--list", "jobs", "--csv", "-o", "list.csv")).isEqualTo(Exit.FILES);
    assertThat(runs.err())
        .contains("c.toml: tower.opening: 3")
        .contains("d.toml: ")
        .contains("orphan.record.txt: there is no orphan.toml beside it");
    // a, b twice, and the two visits whose job is gone.
    assertThat(runs.read("list.csv").split("\r\n")).hasSize(6);
  }

  // Striking.

  private int strike(String number, String reason, String date) {
    return record("wren.toml", "--strike", number, "--reason", reason, "--date", date);
  }

  /** The wrong car's figures were added; they stay readable, and nothing counts them any more. */
  @Test
  void aStruckVisitStaysMarkedAndCountsNoMore() throws Exception {
    assertThat(record("wren.toml", "visit.toml")).isEqualTo(Exit.DONE);
    runs.write("second.toml", visit.replace("caster = 5.2", "caster = 5.1"));
    assertThat(record("wren.toml", "second.toml")).isEqualTo(Exit.DONE);
    String before = recordText();
    String pageOfOne = "record wren.toml --visit 1 -o one.pdf";
    assertThat(runs.run(pageOfOne.split(" "))).isEqualTo(Exit.DONE);

    assertThat(strike("2", "the wrong car", "2026-12-05")).as(runs.err()).isEqualTo(Exit.DONE);
    assertThat(runs.out()).isEqualTo("struck visit 2 in wren.record.txt; it stays there, marked\n");
    assertThat(recordText()).startsWith(before);
    assertThat(recordText().substring(before.length()))
        .matches("\n-- visit 2 struck on 2026-12-05: the wrong car, checksum [0-9a-f]{16} --\n");

    assertThat(record("wren.toml")).isEqualTo(Exit.DONE);
    assertThat(runs.out())
        .contains("STRUCK, counts no more: struck on 2026-12-05: the wrong car\n== Towerscribe")
        .doesNotContain("remark:");
    JsonNode data = runs.json("record", "wren.toml", "--json");
    assertThat(data.path("visits").get(0).has("struck")).isFalse();
    assertThat(data.path("visits").get(0).has("explanations")).isTrue();
    JsonNode struck = data.path("visits").get(1);
    assertThat(struck.path("struck").path("date").asText()).isEqualTo("2026-12-05");
    assertThat(struck.path("struck").path("reason").asText()).isEqualTo("the wrong car");
    assertThat(struck.path("recorded").size()).isPositive();
    assertThat(struck.has("explanations")).isFalse();
    assertThat(struck.has("compared")).isFalse();

    // The last visit that counts is the first again; the struck one only by its number.
    assertThat(runs.run("record wren.toml -o last.pdf".split(" "))).isEqualTo(Exit.DONE);
    assertThat(runs.out()).contains("with visit 1");
    assertThat(Files.readAllBytes(directory.resolve("last.pdf")))
        .isEqualTo(Files.readAllBytes(directory.resolve("one.pdf")));
    assertThat(runs.run("record wren.toml --visit 2 -o two.pdf".split(" "))).isEqualTo(Exit.DONE);
    try (PDDocument page = Loader.loadPDF(directory.resolve("two.pdf").toFile())) {
      assertThat(new PDFTextStripper().getText(page).replaceAll("\\s+", " "))
          .contains("visit 2, STRUCK", "struck on 2026-12-05: the wrong car")
          .contains("Nothing: this visit was struck")
          .doesNotContain("Would explain it");
    }

    // Lists show it as struck, and give no figure that a sum would take in.
    assertThat(runs.run("record", "--list", ".")).isEqualTo(Exit.DONE);
    assertThat(runs.out().lines().filter(l -> l.contains("2026-12-03")))
        .satisfiesExactly(
            l -> assertThat(l).contains("whole", "5.20"),
            l -> assertThat(l).contains("struck").doesNotContain("5.10"));
    assertThat(runs.run("record", "--list", ".", "--csv")).isEqualTo(Exit.DONE);
    assertThat(runs.out().lines().toList().get(2))
        .contains(",struck,")
        .endsWith(",2026-12-05,the wrong car");
    assertThat(runs.out().lines().toList().get(1)).endsWith(",,");

    // What was struck does not stand in the way of adding it rightly.
    assertThat(record("wren.toml", "second.toml")).isEqualTo(Exit.DONE);
    assertThat(runs.out()).endsWith("added visit 3 to wren.record.txt\n");
  }

  @ParameterizedTest
  @CsvSource(
      delimiter = '|',
      value = {
        "2|why|2026-12-05|the record has 1",
        "0|why|2026-12-05|the record has 1",
        "-1|why|2026-12-05|the record has 1",
        "nan|why|2026-12-05|the record has 1",
        "1|' '|2026-12-05|--reason",
        "1|why|2026-12-02|itself is of 2026-12-03",
        "1|why|5.12.2026|YYYY-MM-DD",
        "1|why|9999-12-05|YYYY-MM-DD",
        "1|why|2026-02-30|YYYY-MM-DD",
      })
  void aWrongStrikingChangesNothing(String number, String reason, String date, String says)
      throws Exception {
    assertThat(record("wren.toml", "visit.toml")).isEqualTo(Exit.DONE);
    String before = recordText();
    assertThat(strike(number, reason, date)).isEqualTo(Exit.WRONG_USE);
    assertThat(runs.err()).contains(says);
    assertThat(recordText()).isEqualTo(before);
  }

  @Test
  void aStrikingNeedsItsReasonAndItsDayAndAVisitThatCounts() throws Exception {
    assertThat(strike("1", "why", "2026-12-05")).isEqualTo(Exit.FILES);
    assertThat(record("wren.toml", "visit.toml")).isEqualTo(Exit.DONE);
    assertThat(record("wren.toml", "--strike", "1")).isEqualTo(Exit.WRONG_USE);
    assertThat(runs.err()).contains("--reason: why", "--date is missing");
    assertThat(strike("1", "x".repeat(81), "2026-12-05")).isEqualTo(Exit.WRONG_USE);
    assertThat(strike("1", "two\nlines", "2026-12-05")).isEqualTo(Exit.WRONG_USE);
    assertThat(record("wren.toml", "--reason", "why")).isEqualTo(Exit.WRONG_USE);
    assertThat(record("wren.toml", "visit.toml", "--strike", "1")).isEqualTo(Exit.WRONG_USE);
    assertThat(strike("1", "why", "2026-12-05")).isEqualTo(Exit.DONE);
    String once = recordText();
    assertThat(strike("1", "again", "2026-12-06")).isEqualTo(Exit.WRONG_USE);
    assertThat(runs.err()).contains("visit 1 was struck on 2026-12-05: why");
    assertThat(recordText()).isEqualTo(once);
    assertThat(record("wren.toml", "-o", "page.pdf")).isEqualTo(Exit.WRONG_USE);
    assertThat(runs.err()).contains("every visit of the record was struck");
  }

  /** Whoever edits the mark is told on; a mark without its visit is named. */
  @Test
  void anEditedStrikingIsTold() throws Exception {
    assertThat(record("wren.toml", "visit.toml")).isEqualTo(Exit.DONE);
    assertThat(strike("1", "why", "2026-12-05")).isEqualTo(Exit.DONE);
    runs.write("wren.record.txt", recordText().replace(": why,", ": because,"));
    assertThat(record("wren.toml")).isEqualTo(Exit.DONE);
    assertThat(runs.out())
        .contains("struck on 2026-12-05: because", "which strikes visit 1, was edited after");
    runs.write("wren.record.txt", recordText().replace("-- visit 1 struck", "-- visit 7 struck"));
    assertThat(record("wren.toml")).isEqualTo(Exit.DONE);
    assertThat(runs.out()).contains("strikes visit 7, which is not above it");
  }
}
