package dev.towerscribe.cli;

import static org.assertj.core.api.Assertions.assertThat;

import java.io.IOException;
import java.nio.file.Files;
import java.nio.file.Path;
import java.util.Arrays;
import java.util.List;
import java.util.Locale;
import java.util.SortedMap;
import org.junit.jupiter.api.AfterEach;
import org.junit.jupiter.api.BeforeEach;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.api.io.TempDir;

/**
 * Frozen: the files in output-samples, made again by the very commands that its README lists. What
 * they should contain is checked elsewhere; here only that nothing changes unseen, and that a
 * machine with other digits and another rule for capitals writes the same.
 */
class OutputSamplesTest {
  private static final Path TOP = Path.of("").toAbsolutePath();
  private static final Path SAMPLES = TOP.resolve("output-samples");
  private static final String COMMAND = "./towerscribe ";

  /** Turkish has two letters I, so "pin" is "P\u0130N" in capitals; the digits are Arabic ones. */
  private static final Locale FOREIGN = Locale.forLanguageTag("tr-TR-u-nu-arab");

  @TempDir Path work;

  private final Locale usual = Locale.getDefault();

  @BeforeEach
  void goAbroad() {
    Locale.setDefault(FOREIGN);
    // The premise: without it the comparison would say nothing of locales.
    assertThat(String.format("%d", 1)).isEqualTo("\u0661");
    assertThat("i".toUpperCase(Locale.getDefault())).isEqualTo("\u0130");
  }

  @AfterEach
  void comeHome() {
    Locale.setDefault(usual);
  }

  @Test
  void everySampleIsMadeAgainByteForByte() throws IOException {
    List<String> commands =
        Files.readAllLines(SAMPLES.resolve("README.md")).stream()
            .filter(line -> line.startsWith(COMMAND))
            .map(line -> line.substring(COMMAND.length()))
            .toList();
    // Each command that leaves files to keep.
    assertThat(commands.stream().map(c -> c.split(" ")[0]))
        .contains("pack", "align", "drawing", "ruler");
    CommandRuns runs = new CommandRuns(work);
    for (String command : commands) {
      // Read from the repository, write to a folder of the test's own.
      String[] words =
          Arrays.stream(command.split(" "))
              .map(
                  w ->
                      w.startsWith("output-samples/")
                          ? work.resolve(w).toString()
                          : w.startsWith("templates/") ? TOP.resolve(w).toString() : w)
              .toArray(String[]::new);
      Files.createDirectories(work.resolve("output-samples"));
      runs.done(words);
    }
    SortedMap<String, byte[]> made = runs.files("output-samples");
    SortedMap<String, byte[]> kept = CommandRuns.filesBelow(SAMPLES);
    kept.remove("README.md");
    assertThat(made.keySet()).isEqualTo(kept.keySet());
    made.forEach((name, bytes) -> assertThat(bytes).as(name).isEqualTo(kept.get(name)));
  }
}
