package dev.towerscribe.store;

import static java.nio.charset.StandardCharsets.ISO_8859_1;
import static org.assertj.core.api.Assertions.assertThat;

import dev.towerscribe.Tries;
import dev.towerscribe.cli.CommandRuns;
import dev.towerscribe.job.Templates;
import java.nio.file.Files;
import java.nio.file.Path;
import java.util.Map;
import java.util.TreeMap;
import java.util.concurrent.TimeUnit;
import org.junit.jupiter.api.Tag;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.api.io.TempDir;

/** A real process, really killed while it replaces a pack; the directory holds one pack after. */
class KilledPackTest {
  /** Later and later after the staging directory shows, so that kills fall into every phase. */
  private static final int[] DELAYS_MS = {8, 0, 3, 20};

  private static final int POLL_NS = 200_000;

  private static final long LONGEST_RUN_S = 120;

  @TempDir Path temp;

  private CommandRuns runs;

  private void pack(String job) {
    runs.done("pack", job, "-o", "pack");
  }

  private Map<String, String> content() throws Exception {
    Map<String, String> content = new TreeMap<>();
    runs.files("pack").forEach((name, bytes) -> content.put(name, new String(bytes, ISO_8859_1)));
    return content;
  }

  @Tag("more-tries")
  @Test
  void oneWholePackIsThereAfterTheNextRunBegins() throws Exception {
    String text = Templates.text("wren.toml");
    runs = new CommandRuns(temp);
    runs.write("old.toml", text);
    runs.write("new.toml", text.replaceAll("(?m)^title.*$", "title = \"B\""));
    pack("new.toml");
    Map<String, String> fresh = content();
    pack("old.toml");
    Map<String, String> old = content();
    assertThat(old).isNotEqualTo(fresh);

    Path pack = temp.resolve("pack");
    Path staging = pack.resolve(DirectoryUpdate.STAGING);
    int killed = 0;
    for (int i = 0; i < Tries.of(1, DELAYS_MS.length); i++) {
      int delay = DELAYS_MS[i];
      Process child = runs.start("child.log", "pack", "new.toml", "-o", "pack");
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
      pack("old.toml");
      assertThat(content()).isEqualTo(old);
    }
    // Guards the test itself: a kill that always came too late would prove nothing.
    assertThat(killed).isPositive();
  }
}
