package dev.towerscribe.cli;

import static java.nio.charset.StandardCharsets.UTF_8;
import static org.assertj.core.api.Assertions.assertThat;

import java.io.ByteArrayOutputStream;
import java.io.IOException;
import java.io.PrintStream;
import java.nio.file.Files;
import java.nio.file.Path;
import java.util.SortedMap;
import java.util.TreeMap;
import java.util.stream.Stream;

/** Runs of the command line in a folder of a test's own. */
final class DrawingRuns {
  private final Path folder;
  private String out = "";
  private String err = "";

  DrawingRuns(Path folder) {
    this.folder = folder;
  }

  String out() {
    return out;
  }

  String err() {
    return err;
  }

  int run(String... args) {
    ByteArrayOutputStream said = new ByteArrayOutputStream();
    ByteArrayOutputStream warned = new ByteArrayOutputStream();
    int exit =
        Main.run(
            args,
            new PrintStream(said, false, UTF_8),
            new PrintStream(warned, false, UTF_8),
            folder);
    out = said.toString(UTF_8);
    err = warned.toString(UTF_8);
    return exit;
  }

  /** Runs what must end well. */
  void done(String... args) {
    int exit = run(args);
    assertThat(exit).as(String.join(" ", args) + "\n" + err).isEqualTo(Exit.DONE);
  }

  Path write(String name, String text) throws IOException {
    return Files.writeString(folder.resolve(name), text);
  }

  /** Files of a folder below, by name; empty if there is no such folder. */
  SortedMap<String, byte[]> files(String name) throws IOException {
    SortedMap<String, byte[]> files = new TreeMap<>();
    Path at = folder.resolve(name);
    if (Files.isDirectory(at)) {
      try (Stream<Path> all = Files.walk(at)) {
        for (Path file : all.filter(Files::isRegularFile).toList()) {
          files.put(at.relativize(file).toString(), Files.readAllBytes(file));
        }
      }
    }
    return files;
  }
}
