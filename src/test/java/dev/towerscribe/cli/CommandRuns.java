package dev.towerscribe.cli;

import static java.nio.charset.StandardCharsets.UTF_8;
import static org.assertj.core.api.Assertions.assertThat;

import com.fasterxml.jackson.databind.JsonNode;
import com.fasterxml.jackson.databind.ObjectMapper;
import dev.towerscribe.store.FileOps;
import java.io.ByteArrayOutputStream;
import java.io.IOException;
import java.io.PrintStream;
import java.nio.file.Files;
import java.nio.file.Path;
import java.util.ArrayList;
import java.util.List;
import java.util.SortedMap;
import java.util.TreeMap;
import java.util.stream.Stream;

/**
 * Runs of the command line in a folder of a test's own: the words typed, the exit code, and what
 * was said. No run may show a stack trace, or end a line of other than a table as Windows does.
 */
public final class CommandRuns {
  private final Path folder;
  private String out = "";
  private String err = "";

  public CommandRuns(Path folder) {
    this.folder = folder;
  }

  /** What the last run wrote to standard output. */
  public String out() {
    return out;
  }

  /** What the last run wrote to standard error. */
  public String err() {
    return err;
  }

  public int run(String... words) {
    return run(FileOps.REAL, words);
  }

  /** Runs on a disk that may fail. */
  int run(FileOps ops, String... words) {
    ByteArrayOutputStream said = new ByteArrayOutputStream();
    ByteArrayOutputStream warned = new ByteArrayOutputStream();
    Console console =
        new Console(new PrintStream(said, false, UTF_8), new PrintStream(warned, false, UTF_8));
    int exit = Main.run(words, new Context(console, folder, ops));
    out = said.toString(UTF_8);
    err = warned.toString(UTF_8);
    assertThat(out + err).doesNotContain("\tat ");
    if (!List.of(words).contains("--csv")) {
      assertThat(out + err).doesNotContain("\r");
    }
    return exit;
  }

  /** Runs what must end well, and gives its standard output. */
  public String done(String... words) {
    int exit = run(words);
    assertThat(exit).as("%s\n%s%s", String.join(" ", words), out, err).isEqualTo(Exit.DONE);
    return out;
  }

  /** The data of a run that must end well. */
  public JsonNode json(String... words) throws IOException {
    return json(Exit.DONE, words);
  }

  /** The data of a run that must end with that exit code. */
  public JsonNode json(int exit, String... words) throws IOException {
    assertThat(run(words)).as("%s\n%s", String.join(" ", words), err).isEqualTo(exit);
    return data();
  }

  /** What the last run wrote to standard output, which must be data. */
  public JsonNode data() throws IOException {
    assertThat(out).endsWith("}\n").doesNotContain("NaN");
    return new ObjectMapper().readTree(out);
  }

  /** A process of its own, for tests that end it or run two at once; it says all to the log. */
  public Process start(String log, String... words) throws IOException {
    List<String> command = new ArrayList<>();
    command.add(Path.of(System.getProperty("java.home"), "bin", "java").toString());
    command.addAll(List.of("-Djava.awt.headless=true", "-XX:+UseSerialGC"));
    command.add("-XX:TieredStopAtLevel=1");
    command.addAll(List.of("-cp", System.getProperty("java.class.path"), Main.class.getName()));
    command.addAll(List.of(words));
    return new ProcessBuilder(command)
        .directory(folder.toFile())
        .redirectErrorStream(true)
        .redirectOutput(folder.resolve(log).toFile())
        .start();
  }

  /** Writes a file, and the folders it lies in. */
  public Path write(String name, String text) throws IOException {
    Path file = folder.resolve(name);
    Files.createDirectories(file.getParent());
    return Files.writeString(file, text);
  }

  public String read(String name) throws IOException {
    return Files.readString(folder.resolve(name));
  }

  /** Files of a folder below, by name; empty if there is no such folder. */
  public SortedMap<String, byte[]> files(String name) throws IOException {
    return filesBelow(folder.resolve(name));
  }

  /** Files of any folder, by name; empty if there is no such folder. */
  public static SortedMap<String, byte[]> filesBelow(Path at) throws IOException {
    SortedMap<String, byte[]> files = new TreeMap<>();
    if (Files.isDirectory(at)) {
      try (Stream<Path> all = Files.walk(at)) {
        for (Path file : all.filter(Files::isRegularFile).toList()) {
          files.put(at.relativize(file).toString().replace('\\', '/'), Files.readAllBytes(file));
        }
      }
    }
    return files;
  }

  /** Names in a folder below, sorted. */
  public List<String> names(String name) throws IOException {
    try (Stream<Path> paths = Files.list(folder.resolve(name))) {
      return paths.map(p -> p.getFileName().toString()).sorted().toList();
    }
  }
}
