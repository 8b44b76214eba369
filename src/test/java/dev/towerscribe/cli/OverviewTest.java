package dev.towerscribe.cli;

import static org.assertj.core.api.Assertions.assertThat;
import static org.assertj.core.api.Assertions.within;

import com.fasterxml.jackson.databind.JsonNode;
import dev.towerscribe.job.Templates;
import java.nio.file.Files;
import java.nio.file.Path;
import java.util.Map;
import java.util.TreeMap;
import java.util.regex.Matcher;
import java.util.regex.Pattern;
import java.util.stream.Stream;
import org.apache.pdfbox.Loader;
import org.apache.pdfbox.pdmodel.PDDocument;
import org.apache.pdfbox.text.PDFTextStripper;
import org.junit.jupiter.api.BeforeEach;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.api.io.TempDir;

/** A person checks, packs, mends and packs again in one directory, in every order. */
class OverviewTest {
  private static final String GOOD = "good.toml";
  private static final String OTHER = "other.toml";
  private static final String STOP = "stop.toml";
  private static final String WARNING = "DO NOT WORK FROM THE SHEETS";

  @TempDir Path directory;

  private CommandRuns runs;

  @BeforeEach
  void writeJobs() throws Exception {
    runs = new CommandRuns(directory);
    String good = Templates.text("wren.toml");
    runs.write(GOOD, good);
    runs.write(OTHER, good.replace("rough = 2.5 ", "rough = 2.0 "));
    runs.write(STOP, good.replace("rearward = 8.0 ", "rearward = 24.0 "));
  }

  private Map<String, byte[]> place() throws Exception {
    Map<String, byte[]> files = new TreeMap<>();
    Path place = directory.resolve("place");
    if (Files.exists(place)) {
      try (Stream<Path> paths = Files.list(place)) {
        for (Path p : (Iterable<Path>) paths::iterator) {
          files.put(p.getFileName().toString(), Files.readAllBytes(p));
        }
      }
    }
    return files;
  }

  private String words(String pdf) throws Exception {
    try (PDDocument document = Loader.loadPDF(directory.resolve(pdf).toFile())) {
      return new PDFTextStripper().getText(document).replaceAll("\\s+", " ");
    }
  }

  private void check(String job, int exit) {
    assertThat(runs.run("check", job, "-o", "place")).as(runs.err()).isEqualTo(exit);
  }

  private void pack(String job, int exit) {
    assertThat(runs.run("pack", job, "-o", "place")).as(runs.err()).isEqualTo(exit);
  }

  @Test
  void withoutADirectoryACheckWritesNothing() throws Exception {
    assertThat(runs.run("check", STOP)).isEqualTo(Exit.STOPPED);
    String words = runs.out();
    assertThat(place()).isEmpty();
    check(STOP, Exit.STOPPED);
    assertThat(runs.out()).isEqualTo(words);
    assertThat(place()).containsOnlyKeys("overview.list", "overview.pdf", "report.txt");
    assertThat(runs.read("place/report.txt")).isEqualTo(words);
  }

  @Test
  void theSameJobGivesTheSameBytes() throws Exception {
    check(STOP, Exit.STOPPED);
    Map<String, byte[]> first = place();
    pack(STOP, Exit.STOPPED);
    Map<String, byte[]> second = place();
    assertThat(second.keySet()).isEqualTo(first.keySet());
    second.forEach((name, bytes) -> assertThat(bytes).as(name).isEqualTo(first.get(name)));
  }

  @Test
  void thePictureTellsEveryStopWithItsWayOutAndIsNoSheet() throws Exception {
    check(STOP, Exit.STOPPED);
    String words = words("place/overview.pdf");
    assertThat(words).contains("NOT FOR CUTTING", "NOT TO SCALE", "FORWARD", "Clears with");
    assertThat(words).contains("Law and vehicle maker first.");
    assertThat(words).doesNotContain("100 mm", "UNDERSIDE", "TOPSIDE");
    runs.run("check", STOP, "--json");
    runs.data().findValues("findings").stream()
        .flatMap(list -> Stream.iterate(0, i -> i < list.size(), i -> i + 1).map(list::get))
        .filter(f -> f.path("severity").asText().equals("stop"))
        .forEach(f -> assertThat(words).contains("Id: " + f.path("id").asText() + "."));
  }

  @Test
  void dataHasThePlaceOfEachStopAndTypingItsShiftClearsIt() throws Exception {
    runs.run("check", STOP, "--json");
    JsonNode stop = null;
    for (JsonNode f : runs.data().path("sides").path("left").path("findings")) {
      boolean first = stop == null && f.path("severity").asText().equals("stop");
      stop = first && f.path("at").path("moves").asText().equals("plate") ? f : stop;
      if (f.path("severity").asText().equals("note")) {
        assertThat(f.has("at")).as(f.toString()).isFalse();
      }
    }
    assertThat(stop).isNotNull();
    JsonNode at = stop.path("at");
    double dx = at.path("from").path(0).asDouble() - at.path("to").path(0).asDouble();
    double dy = at.path("from").path(1).asDouble() - at.path("to").path(1).asDouble();
    assertThat(Math.hypot(dx, dy))
        .isCloseTo(Math.abs(stop.path("figure").asDouble()), within(0.05));
    String id = stop.path("id").asText();
    check(STOP, Exit.STOPPED);
    String told = words("place/overview.pdf");
    // The two figures as a person reads them off the page.
    Matcher typed =
        Pattern.compile("rearward = (\\S+), inboard = (\\S+)\\. Id: " + Pattern.quote(id) + "\\.")
            .matcher(told);
    assertThat(typed.find()).as(told).isTrue();
    runs.write(
        "mended.toml",
        Templates.text("wren.toml")
            .replace("rearward = 8.0 ", "rearward = " + typed.group(1) + " ")
            .replace("inboard  = -3.0 ", "inboard  = " + typed.group(2) + " "));
    runs.run("check", "mended.toml", "--json");
    for (JsonNode f : runs.data().path("sides").path("left").path("findings")) {
      if (f.path("id").asText().equals(id)) {
        assertThat(f.path("severity").asText()).isNotEqualTo("stop");
      }
    }
  }

  @Test
  void dataGoesToStandardOutputAloneWithFilesBeside() throws Exception {
    assertThat(runs.run("check", GOOD, "--json", "-o", "place")).isEqualTo(Exit.DONE);
    assertThat(runs.data().path("format").asInt()).isEqualTo(1);
    assertThat(runs.err()).isEmpty();
    assertThat(words("place/overview.pdf")).contains("NOT FOR CUTTING", "No stop finding.");
  }

  @Test
  void whoMendsAStoppedJobAndPacksItHasNoStalePicture() throws Exception {
    pack(STOP, Exit.STOPPED);
    assertThat(runs.err()).contains("overview.pdf");
    pack(GOOD, Exit.DONE);
    assertThat(place()).doesNotContainKeys("overview.pdf", "overview.list").containsKey("pack.pdf");
  }

  @Test
  void checkingAPackedJobAgainChangesNoWordOfItsReport() throws Exception {
    pack(GOOD, Exit.DONE);
    Map<String, byte[]> packed = place();
    check(GOOD, Exit.DONE);
    assertThat(runs.err()).doesNotContain(WARNING);
    Map<String, byte[]> checked = place();
    assertThat(checked.remove("overview.pdf")).isNotNull();
    assertThat(checked.remove("overview.list")).isNotNull();
    assertThat(checked.keySet()).isEqualTo(packed.keySet());
    checked.forEach((name, bytes) -> assertThat(bytes).as(name).isEqualTo(packed.get(name)));
    pack(GOOD, Exit.DONE);
    assertThat(place().keySet()).isEqualTo(packed.keySet());
  }

  @Test
  void checkingAnotherStateBesideAPackWarnsOfItsSheets() throws Exception {
    pack(GOOD, Exit.DONE);
    byte[] sheets = place().get("pack.pdf");
    check(OTHER, Exit.DONE);
    assertThat(runs.err()).contains(WARNING, "no sheets yet");
    assertThat(runs.read("place/report.txt")).contains(WARNING).doesNotContain("pack mark  ");
    check(STOP, Exit.STOPPED);
    assertThat(runs.err()).contains(WARNING, "a stop finding and no sheets");
    assertThat(place().get("pack.pdf")).isEqualTo(sheets);
    // Mended: report, sheets and nothing else again.
    pack(OTHER, Exit.DONE);
    assertThat(place()).doesNotContainKeys("overview.pdf", "overview.list");
    assertThat(runs.read("place/report.txt")).doesNotContain(WARNING);
  }

  @Test
  void somebodysOwnPictureIsNeverReplaced() throws Exception {
    Files.createDirectories(directory.resolve("place"));
    Files.writeString(directory.resolve("place/overview.pdf"), "mine");
    check(STOP, Exit.FILES);
    pack(STOP, Exit.FILES);
    assertThat(place()).containsOnlyKeys("overview.pdf");
    pack(GOOD, Exit.DONE);
    assertThat(directory.resolve("place/overview.pdf")).hasContent("mine");
  }

  @Test
  void aJobWithFaultsWritesNothing() throws Exception {
    runs.write("bad.toml", "format = 1\nunits = \"furlong\"\n");
    check("bad.toml", Exit.WRONG_USE);
    assertThat(place()).isEmpty();
  }
}
