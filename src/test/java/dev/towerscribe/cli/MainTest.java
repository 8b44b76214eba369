package dev.towerscribe.cli;

import static java.nio.charset.StandardCharsets.UTF_8;
import static org.assertj.core.api.Assertions.assertThat;
import static org.assertj.core.api.Assertions.within;
import static org.junit.jupiter.api.Assumptions.assumeTrue;

import com.fasterxml.jackson.databind.JsonNode;
import dev.towerscribe.job.Templates;
import dev.towerscribe.quantity.Tolerances;
import dev.towerscribe.quantity.Version;
import dev.towerscribe.report.LayoutReport;
import dev.towerscribe.store.FailingOps;
import dev.towerscribe.store.FileOps;
import dev.towerscribe.store.Refused;
import java.io.ByteArrayOutputStream;
import java.io.OutputStream;
import java.io.PrintStream;
import java.nio.file.Files;
import java.nio.file.Path;
import java.util.ArrayList;
import java.util.List;
import java.util.Locale;
import java.util.Map;
import java.util.TimeZone;
import java.util.TreeMap;
import java.util.stream.Stream;
import org.junit.jupiter.api.BeforeEach;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.api.io.TempDir;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.CsvSource;
import org.junit.jupiter.params.provider.ValueSource;

/** The commands from the words typed to the exit code, within this process. */
class MainTest {
  /** The strut rod then passes the opening's edge nearer than asked for: a stop to be accepted. */
  private static final String BEARING_FAR_OUT = "bearing = { x = 16.0, height = 18.0 }";

  private static final String ARABIC_DIGITS = "ar-EG-u-nu-arab America/St_Johns";

  @TempDir Path directory;

  private CommandRuns runs;

  @BeforeEach
  void writeJobs() throws Exception {
    runs = new CommandRuns(directory);
    runs.write("good.toml", Templates.text("wren.toml"));
    runs.write(
        "stop.toml", Templates.text("wren.toml").replaceAll("(?m)^bearing = .*$", BEARING_FAR_OUT));
    runs.write("bad.toml", "format = 1\nunits = \"furlong\"\n");
  }

  private List<String> written() throws Exception {
    try (Stream<Path> paths = Files.walk(directory)) {
      return paths
          .filter(Files::isRegularFile)
          .map(p -> directory.relativize(p).toString())
          .filter(n -> !List.of("good.toml", "stop.toml", "bad.toml").contains(n))
          .sorted()
          .toList();
    }
  }

  private List<String> openStops() throws Exception {
    runs.run("check", "stop.toml", "--json");
    return runs.data().path("sides").findValues("findings").stream()
        .flatMap(f -> Stream.iterate(0, i -> i < f.size(), i -> i + 1).map(f::get))
        .filter(f -> f.path("severity").asText().equals("stop"))
        .map(f -> f.path("id").asText())
        .toList();
  }

  private String[] packAcceptingAll() throws Exception {
    List<String> args = new ArrayList<>(List.of("pack", "stop.toml", "-o", "pack"));
    openStops().forEach(id -> args.addAll(List.of("--accept", id)));
    return args.toArray(String[]::new);
  }

  @Test
  void helpAndVersionAreResults() {
    assertThat(runs.run("--help")).isEqualTo(Exit.DONE);
    assertThat(runs.out()).contains("start", "check", "align", "pack", "ruler", "Example:");
    assertThat(runs.run("--version")).isEqualTo(Exit.DONE);
    assertThat(runs.out()).isEqualTo("towerscribe " + Version.TEXT + "\n");
    assertThat(runs.err()).isEmpty();
  }

  @ParameterizedTest
  @ValueSource(strings = {"start", "check", "align", "pack", "ruler"})
  void everyCommandExplainsItselfWithAnExample(String command) {
    assertThat(runs.run(command, "--help")).isEqualTo(Exit.DONE);
    assertThat(runs.out())
        .contains("Usage: towerscribe " + command, "Example: towerscribe " + command);
    String help = runs.out();
    assertThat(runs.run("help", command)).isEqualTo(Exit.DONE);
    assertThat(runs.out()).isEqualTo(help);
  }

  @ParameterizedTest
  @ValueSource(
      strings = {
        "",
        "pak",
        "--nonsense",
        "check",
        "check good.toml extra",
        "check good.toml --jason",
        "check @good.toml --json --json x",
        "pack good.toml",
        "pack -o out",
        "pack good.toml -o out -o other",
        "ruler --paper B7",
        "start --demo none",
        "start --template none",
        "start --units cm",
        "start --demo wren --units in",
        "start --demo wren --paper A3",
        "check bad.toml",
        "align",
        "align good.toml --accept left.sweep",
        "align bad.toml -o out",
        "pack bad.toml -o out",
        "check good.toml --accept left.nothing",
        "pack good.toml -o out --accept left.nothing",
        "pack stop.toml -o out --accept left.nothing",
      })
  void wrongUseAndBadInputWriteNothing(String words) throws Exception {
    assertThat(runs.run(words.isEmpty() ? new String[0] : words.split(" ")))
        .isEqualTo(Exit.WRONG_USE);
    assertThat(runs.out()).isEmpty();
    assertThat(runs.err()).startsWith("towerscribe: ").endsWith("\n");
    assertThat(written()).isEmpty();
    assertThat(directory.resolve("out")).doesNotExist();
  }

  @Test
  void aMistypedOptionIsAnsweredWithTheNearest() {
    runs.run("check", "good.toml", "--jsonn");
    assertThat(runs.err()).contains("--json", "towerscribe check --help");
  }

  @Test
  void everyFaultOfAJobIsNamed() {
    runs.run("check", "bad.toml");
    assertThat(runs.err()).contains("units", "furlong");
  }

  @Test
  void anUnknownAcceptedIdIsAnsweredWithTheStopsThereAre() throws Exception {
    List<String> stops = openStops();
    assertThat(stops).isNotEmpty();
    runs.run("pack", "stop.toml", "-o", "out", "--accept", "left.nothing");
    assertThat(runs.err()).contains("left.nothing").contains(stops);
  }

  @Test
  void filesThatCannotBeReadAreFileFaults() throws Exception {
    assertThat(runs.run("check", "missing.toml")).isEqualTo(Exit.FILES);
    assertThat(runs.err()).contains("missing.toml");
    assertThat(runs.run("check", ".")).isEqualTo(Exit.FILES);
    assertThat(runs.run("pack", "missing.toml", "-o", "out")).isEqualTo(Exit.FILES);
    assertThat(runs.run("ruler", "--job", "missing.toml")).isEqualTo(Exit.FILES);
    assertThat(written()).isEmpty();
  }

  @Test
  void filesThatCannotBeWrittenAreFileFaults() throws Exception {
    assertThat(runs.run("pack", "good.toml", "-o", "bad.toml")).isEqualTo(Exit.FILES);
    assertThat(runs.run("pack", "good.toml", "-o", "bad.toml/below")).isEqualTo(Exit.FILES);
    assertThat(runs.run("pack", "stop.toml", "-o", "bad.toml")).isEqualTo(Exit.FILES);
    assertThat(runs.run("ruler", "-o", "no/such/place.pdf")).isEqualTo(Exit.FILES);
    assertThat(runs.err()).contains("place.pdf");
    assertThat(runs.run("start", "-o", ".")).isEqualTo(Exit.FILES);
    assertThat(written()).isEmpty();
    for (FailingOps.Way way : List.of(FailingOps.Way.ONCE, FailingOps.Way.FROM_THEN_ON)) {
      assertThat(runs.run(new FailingOps(way, 8), "pack", "good.toml", "-o", "out"))
          .isEqualTo(Exit.FILES);
      assertThat(runs.err()).contains("no space left on device");
      assertThat(runs.run(new FailingOps(way, 2), "ruler")).isEqualTo(Exit.FILES);
    }
  }

  @Test
  void aDirectoryForAJobIsNamed() throws Exception {
    Files.createDirectory(directory.resolve("folder.toml"));
    assertThat(runs.run("check", "folder.toml")).isEqualTo(Exit.FILES);
    assertThat(runs.err()).contains("folder.toml").contains("it is a folder, not a file");
  }

  /** The longest names that a job may give, of the widest letter. */
  @Test
  void longNamesFindRoomOrAreCounted() throws Exception {
    String wide = "W".repeat(40);
    runs.write(
        "long.toml",
        Templates.text("wren.toml")
            .replace(
                "title  = \"Wren hatch, road and track days\"",
                "title = \"" + "W".repeat(60) + "\"")
            .replace("drain hole", wide)
            .replace("wiring clip hole", wide.substring(1) + "M")
            .replace("bonnet hinge bracket", wide.substring(1) + "V")
            .replace("three-bolt slotted plate", wide));
    assertThat(runs.run("pack", "long.toml", "-o", "out")).as(runs.err()).isEqualTo(Exit.DONE);
    assertThat(runs.read("out/left-underside.svg")).contains("Match: all 2");
  }

  /** What does not fit the paper is the job's fault, not the program's, and writes nothing. */
  @Test
  void paperTooSmallForTheWordsIsBadInput() throws Exception {
    runs.write(
        "crowded.toml",
        Templates.text("siskin.toml").replaceAll("(?m)^margin = 0.4$", "margin = 0.87"));
    assertThat(runs.run("pack", "crowded.toml", "-o", "out")).isEqualTo(Exit.WRONG_USE);
    assertThat(runs.err()).contains("no room").contains("larger paper, a smaller margin");
    assertThat(directory.resolve("out")).doesNotExist();
    runs.write(
        "crowded.toml",
        Templates.text("wren.toml").replaceAll("(?m)^margin = 10.0", "margin = 22.0"));
    assertThat(runs.run("check", "crowded.toml")).isEqualTo(Exit.WRONG_USE);
    assertThat(runs.err()).contains("print.margin: 22; allowed: 4 to 20 mm");
  }

  @Test
  void aReadOnlyDirectoryIsAFileFault() throws Exception {
    Path closed = Files.createDirectory(directory.resolve("closed"));
    assumeTrue(
        closed.toFile().setWritable(false) && !Files.isWritable(closed),
        "this user may write anywhere");
    assertThat(runs.run("pack", "good.toml", "-o", "closed")).isEqualTo(Exit.FILES);
    assertThat(runs.err()).contains("permission denied");
    assertThat(closed.toFile().setWritable(true)).isTrue();
    assertThat(written()).isEmpty();
  }

  @Test
  void aFullStandardOutputIsAFileFault() {
    OutputStream full =
        new OutputStream() {
          @Override
          public void write(int b) throws java.io.IOException {
            throw new java.io.IOException("no space left on device");
          }
        };
    ByteArrayOutputStream errBytes = new ByteArrayOutputStream();
    assertThat(
            Main.run(
                new String[] {"check", "good.toml", "--json"},
                new PrintStream(full, false, UTF_8),
                new PrintStream(errBytes, false, UTF_8),
                directory))
        .isEqualTo(Exit.FILES);
    assertThat(errBytes.toString(UTF_8)).contains("standard output");
  }

  @Test
  void aFaultOfOursIsSaidInPlainWords() {
    FileOps broken = new FailingOps(FailingOps.Way.KILL, 3);
    assertThat(runs.run(broken, "pack", "good.toml", "-o", "out")).isEqualTo(Exit.OUR_FAULT);
    assertThat(runs.err()).contains(Refusal.PLEASE_REPORT);
  }

  @ParameterizedTest
  @CsvSource({
    "BUSY, 3, no",
    "NO_FOLDER, 3, no",
    "THERE_ALREADY, 3, no; --force replaces it",
    "NEVER_REPLACED, 2, 'no, --force or not; name another file'",
    "UNPROVED, 70, no",
  })
  void whatBarsAWritingHasItsExitCodeAndItsWords(Refused.Why why, int exit, String words) {
    ByteArrayOutputStream said = new ByteArrayOutputStream();
    PrintStream err = new PrintStream(said, false, UTF_8);
    Console console = new Console(err, err);
    assertThat(Main.refused(new Refused(why, List.of("no")), console)).isEqualTo(exit);
    console.flush();
    assertThat(said.toString(UTF_8))
        .isEqualTo(
            "towerscribe: "
                + words
                + "\n"
                + (exit == Exit.OUR_FAULT ? "towerscribe: " + Refusal.PLEASE_REPORT + "\n" : ""));
  }

  @Test
  void localeAndTimeZoneDoNotShow() throws Exception {
    Map<String, byte[]> first = null;
    Locale locale = Locale.getDefault();
    TimeZone zone = TimeZone.getDefault();
    try {
      for (String place : List.of("en-GB UTC", "tr-TR Pacific/Kiritimati", ARABIC_DIGITS)) {
        Locale.setDefault(Locale.forLanguageTag(place.split(" ")[0]));
        TimeZone.setDefault(TimeZone.getTimeZone(place.split(" ")[1]));
        assertThat(runs.run("pack", "good.toml", "-o", "pack")).isEqualTo(Exit.DONE);
        assertThat(runs.run("check", "good.toml")).isEqualTo(Exit.DONE);
        Map<String, byte[]> now = bytes();
        now.put("words of check", runs.out().getBytes(UTF_8));
        if (first == null) {
          first = now;
        }
        assertThat(now.keySet()).isEqualTo(first.keySet());
        for (Map.Entry<String, byte[]> file : now.entrySet()) {
          assertThat(file.getValue())
              .as("%s, %s", place, file.getKey())
              .isEqualTo(first.get(file.getKey()));
        }
      }
    } finally {
      Locale.setDefault(locale);
      TimeZone.setDefault(zone);
    }
  }

  @Test
  void aGoodJobChecksAndWritesNoFile() throws Exception {
    assertThat(runs.run("check", "good.toml")).isEqualTo(Exit.DONE);
    assertThat(runs.out())
        .contains("no stop finding", "LEFT TOWER", "RIGHT TOWER", "read before cutting");
    assertThat(runs.err()).isEmpty();
    assertThat(written()).isEmpty();
  }

  @Test
  void aStopEndsACheckWithOneInWordsAndAsData() throws Exception {
    assertThat(runs.run("check", "stop.toml")).isEqualTo(Exit.STOPPED);
    assertThat(runs.out()).contains("no sheets until put right");
    assertThat(runs.run("check", "stop.toml", "--json")).isEqualTo(Exit.STOPPED);
    assertThat(runs.data().path("format").asInt()).isEqualTo(1);
    String[] args = packAcceptingAll();
    args[0] = "check";
    List<String> check = new ArrayList<>(List.of(args));
    check.subList(2, 4).clear();
    assertThat(runs.run(check.toArray(String[]::new))).isEqualTo(Exit.DONE);
    assertThat(runs.out()).contains("ACCEPTED");
  }

  @Test
  void aGoodJobPacks() throws Exception {
    assertThat(runs.run("pack", "good.toml", "-o", "a pack/of mine")).isEqualTo(Exit.DONE);
    assertThat(runs.out()).contains("pack mark ");
    assertThat(written())
        .contains(
            "a pack/of mine/pack.list",
            "a pack/of mine/pack.pdf",
            "a pack/of mine/report.json",
            "a pack/of mine/report.txt")
        .anyMatch(n -> n.endsWith(".svg"))
        .noneMatch(n -> n.contains("/."));
    Path pack = directory.resolve("a pack/of mine");
    String report = Files.readString(pack.resolve("report.txt"));
    String data = Files.readString(pack.resolve("report.json"));
    runs.run("check", "good.toml", "--json");
    assertThat(data).isEqualTo(runs.out());
    assertThat(report).startsWith(LayoutReport.TITLE).contains("pack mark");
  }

  @Test
  void aStoppedJobLeavesReportAndOverviewAndNothingElse() throws Exception {
    assertThat(runs.run("pack", "stop.toml", "-o", "pack")).isEqualTo(Exit.STOPPED);
    assertThat(written())
        .containsExactly("pack/overview.list", "pack/overview.pdf", "pack/report.txt");
    for (String id : openStops()) {
      runs.run("pack", "stop.toml", "-o", "pack");
      assertThat(runs.err()).contains(id);
      assertThat(runs.read("pack/report.txt")).contains(id);
    }
  }

  @Test
  void aStopThatWasAcceptedPacksAndIsCarried() throws Exception {
    assertThat(runs.run(packAcceptingAll())).isEqualTo(Exit.DONE);
    assertThat(written()).contains("pack/pack.pdf");
    assertThat(runs.out()).contains("accepted: ");
    assertThat(runs.read("pack/report.txt")).contains("ACCEPTED");
  }

  @Test
  void aStopBesideAnOlderPackLeavesItsSheetsAndWarnsOfThem() throws Exception {
    runs.run("pack", "good.toml", "-o", "pack");
    Map<String, byte[]> before = bytes();
    String mark = runs.read("pack/pack.list").substring(0, 80);
    assertThat(runs.run("pack", "stop.toml", "-o", "pack")).isEqualTo(Exit.STOPPED);
    assertThat(runs.err()).contains("DO NOT WORK FROM THE SHEETS");
    assertThat(mark).contains(runs.err().replaceAll("(?s).*pack mark ([0-9A-Z]{6}).*", "$1"));
    assertThat(runs.read("pack/report.txt")).contains("DO NOT WORK FROM THE SHEETS");
    Map<String, byte[]> after = bytes();
    assertThat(after.remove("pack/overview.pdf")).isNotEmpty();
    after.remove("pack/overview.list");
    assertThat(after.keySet()).isEqualTo(before.keySet());
    after.forEach(
        (name, content) -> {
          if (!name.equals("pack/report.txt")) {
            assertThat(content).as(name).isEqualTo(before.get(name));
          }
        });
  }

  private Map<String, byte[]> bytes() throws Exception {
    Map<String, byte[]> bytes = new TreeMap<>();
    for (String name : written()) {
      bytes.put(name, Files.readAllBytes(directory.resolve(name)));
    }
    return bytes;
  }

  @Test
  void anOldSpellingIsNotedAndChangesNothingElse() throws Exception {
    int exit = runs.run("check", "good.toml", "--json");
    String now = runs.out();
    assertThat(runs.err()).isEmpty();
    runs.write("old.toml", Templates.text("wren.toml").replace("bolting_face", "land"));
    assertThat(runs.run("check", "old.toml", "--json")).isEqualTo(exit);
    assertThat(runs.out()).isEqualTo(now);
    assertThat(runs.err())
        .isEqualTo(
            "towerscribe: tower.land: the key land is called bolting_face now; the old spelling"
                + " works in this release only\n");
  }

  @Test
  void startNeverOverwritesAFile() throws Exception {
    assertThat(runs.run("start")).isEqualTo(Exit.DONE);
    assertThat(runs.out()).contains("fill in every ___, then: towerscribe check job.toml");
    runs.write("job.toml", "my measurements");
    assertThat(runs.run("start")).isEqualTo(Exit.FILES);
    assertThat(runs.err()).contains("--force");
    assertThat(directory.resolve("job.toml")).hasContent("my measurements");
    assertThat(runs.run("start", "--force")).isEqualTo(Exit.DONE);
    assertThat(directory.resolve("job.toml")).content().contains("\"___\"");
  }

  @Test
  void everyTemplateStartsAJobThatIsUnderstood() {
    assertThat(runs.run("start", "--list")).isEqualTo(Exit.DONE);
    assertThat(runs.out().lines()).contains("wren").hasSizeGreaterThan(1);
    for (String name : runs.out().lines().toList()) {
      String file = "start-" + name + ".toml";
      assertThat(runs.run("start", "--demo", name, "-o", file)).as(name).isEqualTo(Exit.DONE);
      // What it says to do next works, with the demo's job for readings.
      String then = runs.out().substring(runs.out().indexOf("try it: towerscribe ") + 20).strip();
      String[] words = then.replace("JOB", "start-wren.toml").split(" ");
      assertThat(words).contains(file);
      assertThat(runs.run(words)).as(then).isIn(Exit.DONE, Exit.STOPPED);
    }
  }

  @Test
  void aRulerIsWrittenAndNotOverAnotherFile() throws Exception {
    assertThat(runs.run("ruler")).isEqualTo(Exit.DONE);
    byte[] first = Files.readAllBytes(directory.resolve("ruler.pdf"));
    assertThat(new String(first, 0, 5, UTF_8)).isEqualTo("%PDF-");
    assertThat(runs.run("ruler")).isEqualTo(Exit.DONE);
    assertThat(runs.run("ruler", "--paper", "Letter")).isEqualTo(Exit.FILES);
    assertThat(directory.resolve("ruler.pdf")).hasBinaryContent(first);
    assertThat(runs.run("ruler", "--paper", "letter", "--force")).isEqualTo(Exit.DONE);
    assertThat(runs.run("ruler", "--job", "good.toml", "-o", "job.pdf")).isEqualTo(Exit.DONE);
  }

  @Test
  void controlCharactersNeverReachTheTerminal() {
    assertThat(runs.run("check", "\u001b[31mred.toml")).isEqualTo(Exit.FILES);
    assertThat(runs.err()).contains("?[31mred.toml").doesNotContain("\u001b");
  }

  @Test
  void dataHasTheSettledKeys() throws Exception {
    runs.run("check", "good.toml", "--json");
    JsonNode all = runs.data();
    assertThat(all.fieldNames()).toIterable().containsExactly("format", "title", "units", "sides");
    JsonNode left = all.path("sides").path("left");
    assertThat(left.fieldNames())
        .toIterable()
        .containsExactly("holes", "seating", "bearing", "cuts", "notches", "spans", "findings");
    assertThat(left.path("holes").get(0).fieldNames())
        .toIterable()
        .containsExactly("name", "fore", "in", "diameter", "gap", "grip", "bolt_length");
    assertThat(left.path("bearing").fieldNames())
        .toIterable()
        .containsExactly("fore", "in", "height");
    for (String cut : List.of("final", "rough")) {
      assertThat(left.path("cuts").path(cut).fieldNames())
          .toIterable()
          .startsWith("area", "length", "points");
    }
    assertThat(left.path("spans").get(0).fieldNames())
        .toIterable()
        .containsExactly("from", "to", "centres", "inside", "outside");
    assertThat(left.path("findings").get(0).fieldNames())
        .toIterable()
        .startsWith("id", "severity", "where", "figure", "limit", "unit", "source", "say");
  }

  @Test
  void dataOfARoundCutIsExactAndItsPointsFine() throws Exception {
    runs.run("check", "good.toml", "--json");
    JsonNode cut = runs.data().path("sides").path("left").path("cuts").path("final");
    double diameter = cut.path("diameter").asDouble();
    // independent: mark diameter 104 less twice the keep of 3, from the starter job's text
    assertThat(diameter).isEqualTo(98.0);
    assertThat(cut.path("area").asDouble())
        .isCloseTo(Math.PI * 49 * 49, within(Tolerances.COMPUTED_MM));
    assertThat(cut.path("points"))
        .allSatisfy(
            p ->
                assertThat(Math.hypot(p.get(0).asDouble(), p.get(1).asDouble()))
                    .isCloseTo(49.0, within(Tolerances.COMPUTED_MM)));
  }

  @Test
  void dataIsInMillimetresForAJobInInches() throws Exception {
    runs.write("inch.toml", Templates.text("siskin.toml"));
    runs.run("check", "inch.toml", "--json");
    JsonNode all = runs.data();
    assertThat(all.path("units").asText()).isEqualTo("mm");
    // published: 11/32 in, the ASME B18.2.8 normal hole of a 5/16 bolt, here 0.344 in
    assertThat(all.path("sides").path("left").path("holes").get(0).path("diameter").asDouble())
        .isEqualTo(0.344 * 25.4);
  }
}
