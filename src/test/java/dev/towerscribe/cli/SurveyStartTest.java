package dev.towerscribe.cli;

import static org.assertj.core.api.Assertions.assertThat;
import static org.assertj.core.api.Assertions.within;

import com.fasterxml.jackson.databind.JsonNode;
import com.fasterxml.jackson.dataformat.toml.TomlMapper;
import dev.towerscribe.drawing.Item;
import dev.towerscribe.drawing.Page;
import dev.towerscribe.model.Paper;
import dev.towerscribe.model.Print;
import dev.towerscribe.quantity.LengthUnit;
import dev.towerscribe.sheet.worksheet.Worksheet;
import dev.towerscribe.sheet.worksheet.WorksheetEnd;
import dev.towerscribe.sheet.worksheet.WorksheetPlan;
import java.nio.file.Files;
import java.nio.file.Path;
import java.util.ArrayList;
import java.util.List;
import java.util.regex.Matcher;
import java.util.regex.Pattern;
import java.util.stream.IntStream;
import java.util.stream.Stream;
import org.junit.jupiter.api.BeforeEach;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.api.io.TempDir;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.EnumSource;
import org.junit.jupiter.params.provider.ValueSource;

/** The empty survey file against the worksheet, and both commands. */
class SurveyStartTest {
  @TempDir Path directory;

  private CommandRuns runs;

  @BeforeEach
  void inTheFolder() {
    runs = new CommandRuns(directory);
  }

  private int run(String words) {
    return runs.run(words.split(" "));
  }

  private static JsonNode parse(String toml) throws Exception {
    return new TomlMapper().readTree(toml);
  }

  /** What a user does: hashes off, figures in. */
  private static String filledIn(String text) {
    return text.replaceAll("(?m)^  # (\\{|[a-z_]+ = )", "  $1")
        .replaceAll("\"(-?)___\"", "$1" + "10.5");
  }

  @ParameterizedTest
  @EnumSource(LengthUnit.class)
  void emptyItHoldsNoReadingAndFilledInEveryOne(LengthUnit units) throws Exception {
    // Independent: the rows of the worksheet, and the 10.5 that the test itself fills in.
    String text = SurveyStartText.of(units);
    JsonNode empty = parse(text);
    assertThat(empty.path("format").asInt()).isEqualTo(1);
    assertThat(empty.path("units").asText()).isEqualTo(units.symbol());
    // Where the lines cross there is nothing to read.
    assertThat(names(empty.path("station"), "name")).containsExactly("B");
    for (String side : List.of("left", "right")) {
      for (String list : List.of("floor", "height", "tape")) {
        assertThat(empty.path(side).path(list).isArray()).isTrue();
        assertThat(empty.path(side).path(list)).isEmpty();
      }
      assertThat(empty.path(side).has("camber")).isFalse();
      assertThat(empty.path(side).path("tower").has("sheet")).isFalse();
      assertThat(empty.path(side).path("tower").path("span")).isEmpty();
    }

    JsonNode full = parse(filledIn(text));
    assertThat(names(full.path("station"), "name")).containsExactly("A", "B", "C", "D");
    assertThat(full.path("station").get(2).path("at").get(0).asDouble()).isEqualTo(-10.5);
    List<String> keys =
        Stream.of(WorksheetEnd.Point.values()).map(WorksheetEnd.Point::key).toList();
    for (String side : List.of("left", "right")) {
      JsonNode corner = full.path(side);
      assertThat(names(corner.path("floor"), "point")).isEqualTo(keys);
      assertThat(names(corner.path("height"), "point")).isEqualTo(keys);
      List<WorksheetPlan.Tape> tapes = new ArrayList<>(WorksheetPlan.between());
      tapes.addAll(WorksheetPlan.fromMarks());
      List<String> ends =
          new ArrayList<>(tapes.stream().map(t -> t.from().key() + " " + t.to().key()).toList());
      if (side.equals("left")) {
        WorksheetPlan.across().forEach(t -> ends.add(t.from().key() + " right." + t.to().key()));
      }
      List<String> found = new ArrayList<>();
      corner
          .path("tape")
          .forEach(
              t -> {
                found.add(t.path("from").asText() + " " + t.path("to").asText());
                assertThat(t.path("length")).hasSize(3);
              });
      assertThat(found).isEqualTo(ends);
      for (String wheel : List.of("tyre_radius", "camber", "toe")) {
        assertThat(corner.path(wheel)).hasSize(3);
      }
      JsonNode tower = corner.path("tower");
      for (String twice : List.of("sheet", "opening", "mark", "pivot_height")) {
        assertThat(tower.path(twice)).hasSize(2);
      }
      assertThat(tower.path("shaft").asDouble()).isEqualTo(10.5);
      assertThat(tower.path("lean").path("inboard")).hasSize(2);
      assertThat(tower.path("lean").path("rearward")).hasSize(2);
      assertThat(tower.path("crown").path("rise")).hasSize(2);
      assertThat(names(tower.path("landmark"), "name")).isEqualTo(WorksheetPlan.landmarks());
      assertThat(names(tower.path("span"), "to"))
          .isEqualTo(WorksheetPlan.spans().stream().map(WorksheetPlan.Span::to).toList());
      assertThat(tower.path("straightedge")).hasSize(1);
    }
  }

  private static List<String> names(JsonNode list, String key) {
    return IntStream.range(0, list.size()).mapToObj(i -> list.get(i).path(key).asText()).toList();
  }

  @Test
  void uncertaintiesAreTheSameLengthsInEitherUnit() throws Exception {
    JsonNode mm = parse(SurveyStartText.of(LengthUnit.MM)).path("uncertainty");
    JsonNode inch = parse(SurveyStartText.of(LengthUnit.INCH)).path("uncertainty");
    for (String key : List.of("tape", "floor", "height", "caliper", "rule")) {
      // Half of the last digit written, a thousandth of an inch.
      assertThat(inch.path(key).asDouble() * 25.4)
          .isCloseTo(mm.path(key).asDouble(), within(0.0005 * 25.4));
      assertThat(inch.path(key).isFloatingPointNumber()).isTrue();
    }
    assertThat(inch.path("angle")).isEqualTo(mm.path("angle"));
  }

  @Test
  void itsRowsAreTheWorksheetsInOrder() {
    List<String> onPaper = new ArrayList<>();
    for (Page page : Worksheet.pages(new Print(Paper.A4, 10, 1, 1), LengthUnit.MM)) {
      page.items().stream()
          .filter(Item.Text.class::isInstance)
          .map(i -> ((Item.Text) i).content())
          .filter(w -> w.matches("[LRX][0-9]+"))
          .forEach(onPaper::add);
    }
    List<String> inFile = new ArrayList<>();
    Matcher rows =
        Pattern.compile("(?m)length = .*# ([LRX][0-9]+)(?:, .*)?$")
            .matcher(SurveyStartText.of(LengthUnit.MM));
    while (rows.find()) {
      inFile.add(rows.group(1));
    }
    // 24 of each side and 8 across; the worksheet has blank rows of its own besides.
    assertThat(inFile).hasSize(24 + 24 + 8).doesNotHaveDuplicates();
    for (String side : List.of("L", "R", "X")) {
      List<String> file = inFile.stream().filter(r -> r.startsWith(side)).toList();
      List<String> paper = onPaper.stream().filter(r -> r.startsWith(side)).toList();
      assertThat(paper.subList(0, file.size())).isEqualTo(file);
    }
  }

  /** A hash taken off too many: what is still blank is named, and nothing else is said of it. */
  @Test
  void forgottenGapsAreNamedTogether() throws Exception {
    String text =
        SurveyStartText.of(LengthUnit.MM).replaceAll("(?m)^  # (\\{ point|opening)", "  $1");
    runs.write("s.toml", text);
    assertThat(run("survey s.toml -o tables.toml")).isEqualTo(Exit.WRONG_USE);
    assertThat(runs.err().lines().filter(l -> l.contains("still blank"))).hasSize(2);
    assertThat(runs.err().lines()).hasSize(3);
    assertThat(runs.err())
        .contains("left: still blank: floor[0 to 8].at, height[0 to 8].up, tower.opening");
    assertThat(directory.resolve("tables.toml")).doesNotExist();
  }

  @Test
  void bothCommandsWriteTheirFileOnceAndTheSameTwice() throws Exception {
    assertThat(run("survey --worksheet -o w.pdf --paper letter --units in")).isEqualTo(Exit.DONE);
    assertThat(runs.out()).contains("wrote w.pdf, 15 pages");
    byte[] first = Files.readAllBytes(directory.resolve("w.pdf"));
    assertThat(run("survey --worksheet -o w.pdf --paper Letter --units in")).isEqualTo(Exit.DONE);
    assertThat(Files.readAllBytes(directory.resolve("w.pdf"))).isEqualTo(first);
    assertThat(run("survey --worksheet -o w.pdf --paper A3")).isEqualTo(Exit.FILES);
    assertThat(runs.err()).contains("--force");
    assertThat(Files.readAllBytes(directory.resolve("w.pdf"))).isEqualTo(first);
    assertThat(run("survey --worksheet -o w.pdf --paper A3 --force")).isEqualTo(Exit.DONE);
    assertThat(Files.readAllBytes(directory.resolve("w.pdf"))).isNotEqualTo(first);

    assertThat(run("survey --start")).isEqualTo(Exit.DONE);
    assertThat(runs.out()).contains("wrote survey.toml", "towerscribe survey survey.toml");
    assertThat(runs.read("survey.toml")).isEqualTo(SurveyStartText.of(LengthUnit.MM));
    assertThat(run("survey --start --units in")).isEqualTo(Exit.FILES);
    assertThat(run("survey --start --units in --force")).isEqualTo(Exit.DONE);
    assertThat(runs.read("survey.toml")).contains("units = \"in\"");
  }

  @ParameterizedTest
  @ValueSource(
      strings = {
        "survey",
        "survey --worksheet --start",
        "survey --worksheet --paper B7",
        "survey --worksheet --units cm",
        "survey --start --units furlong",
        "survey --start --paper A4",
        "survey --nonsense",
      })
  void wrongUseWritesNothing(String words) throws Exception {
    assertThat(run(words)).isEqualTo(Exit.WRONG_USE);
    assertThat(runs.out()).isEmpty();
    assertThat(runs.err()).startsWith("towerscribe: ");
    try (Stream<Path> files = Files.list(directory)) {
      assertThat(files).isEmpty();
    }
  }

  @Test
  void aMissingFolderIsNotMade() {
    assertThat(run("survey --worksheet -o none/w.pdf")).isEqualTo(Exit.FILES);
    assertThat(run("survey --start -o none/s.toml")).isEqualTo(Exit.FILES);
    assertThat(runs.err()).contains("does not exist");
    assertThat(directory.resolve("none")).doesNotExist();
  }
}
