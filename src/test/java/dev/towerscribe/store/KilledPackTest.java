package dev.towerscribe.store;

import static java.nio.charset.StandardCharsets.UTF_8;
import static org.assertj.core.api.Assertions.assertThat;

import dev.towerscribe.cli.Main;
import dev.towerscribe.job.Templates;
import java.io.ByteArrayOutputStream;
import java.io.File;
import java.io.PrintStream;
import java.nio.file.Files;
import java.nio.file.Path;
import java.util.Map;
import java.util.TreeMap;
import java.util.concurrent.TimeUnit;
import java.util.stream.Stream;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.api.io.TempDir;

/** A real process, really killed while it replaces a pack; the directory holds one pack after. */
class KilledPackTest {
  /** Later and later after the staging directory shows, so that kills fall into every phase. */
  private static final int[] DELAYS_MS = {0, 3, 8, 20};

  private static final int POLL_NS = 200_000;

  private static final long LONGEST_RUN_S = 120;

  @TempDir Path temp;

  private int pack(String job) {
    PrintStream nowhere = new PrintStream(new ByteArrayOutputStream(), false, UTF_8);
    return Main.run(new String[] {"pack", job, "-o", "pack"}, nowhere, nowhere, temp);
  }

  private Map<String, String> content() throws Exception {
    Map<String, String> content = new TreeMap<>();
    try (Stream<Path> paths = Files.walk(temp.resolve("pack"))) {
      for (Path p : (Iterable<Path>) paths.filter(Files::isRegularFile)::iterator) {
        content.put(
            temp.relativize(p).toString(),
            new String(Files.readAllBytes(p), java.nio.charset.StandardCharsets.ISO_8859_1));
      }
    }
    return content;
  }

  @Test
  void oneWholePackIsThereAfterTheNextRunBegins() throws Exception {
    String text = Templates.text("wren.toml");
    Files.writeString(temp.resolve("old.toml"), text);
    Files.writeString(temp.resolve("new.toml"), text.replaceAll("(?m)^title.*$", "title = \"B\""));
    assertThat(pack("new.toml")).isZero();
    Map<String, String> fresh = content();
    assertThat(pack("old.toml")).isZero();
    Map<String, String> old = content();
    assertThat(old).isNotEqualTo(fresh);

    Path pack = temp.resolve("pack");
    Path staging = pack.resolve(DirectoryUpdate.STAGING);
    int killed = 0;
    for (int delay : DELAYS_MS) {
      Process child =
          new ProcessBuilder(
                  Path.of(System.getProperty("java.home"), "bin", "java").toString(),
                  "-Djava.awt.headless=true",
                  "-XX:+UseSerialGC",
                  "-XX:TieredStopAtLevel=1",
                  "-cp",
                  System.getProperty("java.class.path"),
                  Main.class.getName(),
                  "pack",
                  "new.toml",
                  "-o",
                  "pack")
              .directory(temp.toFile())
              .redirectErrorStream(true)
              .redirectOutput(new File(temp.toFile(), "child.log"))
              .start();
      while (child.isAlive() && !Files.exists(staging)) {
        Thread.sleep(0, POLL_NS);
      }
      child.waitFor(delay, TimeUnit.MILLISECONDS);
      // SIGKILL where there are signals.
      child.destroyForcibly();
      assertThat(child.waitFor(LONGEST_RUN_S, TimeUnit.SECONDS)).isTrue();
      killed += child.exitValue() == 0 ? 0 : 1;

      new DirectoryUpdate(FileOps.REAL, pack).recover();
      Files.deleteIfExists(pack.resolve(DirectoryLock.NAME));
      assertThat(content()).as("killed after %d ms", delay).isIn(old, fresh);
      // A run after a killed one works, and puts the old pack back for the next try.
      assertThat(pack("old.toml")).isZero();
      assertThat(content()).isEqualTo(old);
    }
    // Guards the test itself: a kill that always came too late would prove nothing.
    assertThat(killed).isPositive();
  }
}
