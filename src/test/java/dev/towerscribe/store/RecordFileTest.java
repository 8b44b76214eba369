package dev.towerscribe.store;

import static java.nio.charset.StandardCharsets.UTF_8;
import static org.assertj.core.api.Assertions.assertThat;
import static org.assertj.core.api.Assertions.assertThatThrownBy;

import dev.towerscribe.Tries;
import dev.towerscribe.cli.CommandRuns;
import dev.towerscribe.job.Templates;
import dev.towerscribe.record.Entry;
import dev.towerscribe.record.RecordText;
import java.io.IOException;
import java.nio.file.FileSystemException;
import java.nio.file.Files;
import java.nio.file.Path;
import java.util.ArrayList;
import java.util.Arrays;
import java.util.List;
import java.util.concurrent.TimeUnit;
import org.junit.jupiter.api.BeforeEach;
import org.junit.jupiter.api.Tag;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.api.io.TempDir;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.EnumSource;

/**
 * Whatever fails, and wherever the process ends: every entry before stays, and the next one works.
 */
class RecordFileTest {
  /** Far more operations than one append has; the loop must have ended before. */
  private static final int MOST_OPERATIONS = 100;

  private static final long LONGEST_RUN_S = 240;

  @TempDir Path temp;

  private CommandRuns runs;

  private Path file;
  private String entry;

  @BeforeEach
  void anEntry() throws Exception {
    runs = new CommandRuns(temp);
    runs.write("wren.toml", Templates.text("wren.toml"));
    Files.copy(Path.of("templates", "wren-visit.toml"), temp.resolve("visit.toml"));
    file = temp.resolve("wren.record.txt");
    runs.done("record", "wren.toml", "visit.toml");
    entry = Files.readString(file);
    Files.delete(file);
  }

  private RecordText append(FileOps ops) throws Exception {
    return new RecordFile(ops, temp.resolve("wren.toml")).append(before -> entry);
  }

  private static RecordText text(byte[] bytes) {
    return RecordText.read(new String(bytes, UTF_8));
  }

  @ParameterizedTest
  @EnumSource(FailingOps.Way.class)
  void aFailureAtAnyOperationLeavesWhatWasThere(FailingOps.Way way) throws Exception {
    for (boolean first : new boolean[] {true, false}) {
      int endings = 0;
      for (int n = 1; n < MOST_OPERATIONS; n++) {
        Files.deleteIfExists(file);
        if (!first) {
          append(FileOps.REAL);
        }
        byte[] before = first ? new byte[0] : Files.readAllBytes(file);
        FailingOps ops = new FailingOps(way, n);
        boolean failed = false;
        try {
          append(ops);
        } catch (IOException | FailingOps.Killed e) {
          failed = true;
        }
        if (!ops.hasFailed()) {
          break;
        }
        endings++;
        byte[] after = Files.exists(file) ? Files.readAllBytes(file) : new byte[0];
        assertThat(Arrays.copyOf(after, before.length)).as("operation %d", n).isEqualTo(before);
        RecordText then = append(FileOps.REAL);
        assertThat(Arrays.copyOf(Files.readAllBytes(file), after.length)).isEqualTo(after);
        long whole = then.entries().stream().filter(e -> e.state() == Entry.State.WHOLE).count();
        assertThat(whole).as("operation %d, failed %s", n, failed).isBetween(first ? 1L : 2L, 3L);
      }
      assertThat(endings).isBetween(2, MOST_OPERATIONS - 2);
    }
  }

  @Tag("more-tries")
  @Test
  void aKillAfterAnyByteLeavesWhatWasThereAndTheTornEntryIsMarkedOff() throws Exception {
    append(FileOps.REAL);
    byte[] before = Files.readAllBytes(file);
    int appendAt = appendOperation();
    // Near both ends every byte in a long run; and every seventh, and at the line ends.
    int ends = Tries.of(8, 90);
    for (int kept = 0; kept <= entry.length() + 1; kept++) {
      boolean near = kept < ends || kept > entry.length() - ends;
      if (!near && kept % Tries.of(70, 7) != 0 && entry.charAt(kept - 1) != '\n') {
        continue;
      }
      Files.write(file, before);
      try {
        append(new FailingOps(FailingOps.Way.KILL, appendAt, kept));
      } catch (FailingOps.Killed e) {
        assertThat(Files.size(file)).isEqualTo(before.length + kept);
      }
      byte[] torn = Files.readAllBytes(file);
      RecordText then = append(FileOps.REAL);
      assertThat(Arrays.copyOf(Files.readAllBytes(file), torn.length)).isEqualTo(torn);
      assertThat(then.entries().get(0)).isEqualTo(text(before).entries().get(0));
      assertThat(then.entries().get(then.entries().size() - 1).state())
          .isEqualTo(Entry.State.WHOLE);
      assertThat(then.endsOpen()).isFalse();
      if (kept > 1 && kept < entry.length()) {
        assertThat(then.entries().get(1).state()).isEqualTo(Entry.State.CUT_SHORT);
        assertThat(then.remarks().get(0)).startsWith("an entry was cut short at line ");
      }
    }
  }

  /** Which of the operations is the append itself. */
  private int appendOperation() throws Exception {
    for (int n = 1; n < MOST_OPERATIONS; n++) {
      byte[] before = Files.readAllBytes(file);
      try {
        append(new FailingOps(FailingOps.Way.KILL, n, 1));
      } catch (FailingOps.Killed e) {
        assertThat(e).isNotNull();
      }
      boolean grew = Files.size(file) == before.length + 1;
      Files.write(file, before);
      if (grew) {
        return n;
      }
    }
    throw new AssertionError("nothing was appended");
  }

  @Test
  void whatIsNoPlainFileIsLeftAlone() throws Exception {
    Files.createDirectory(file);
    assertThatThrownBy(() -> append(FileOps.REAL))
        .isInstanceOf(FileSystemException.class)
        .hasMessageContaining("not a plain file");
    Files.delete(file);
    Path elsewhere = Files.writeString(temp.resolve("elsewhere.txt"), "mine");
    Files.createSymbolicLink(file, elsewhere);
    assertThatThrownBy(() -> append(FileOps.REAL)).isInstanceOf(FileSystemException.class);
    assertThat(Files.readString(elsewhere)).isEqualTo("mine");
  }

  @Test
  void aRefusedEntryLeavesNoFileAndNoLock() throws Exception {
    RecordFile record = new RecordFile(FileOps.REAL, temp.resolve("wren.toml"));
    assertThatThrownBy(
            () ->
                record.append(
                    before -> {
                      throw new IllegalCallerException("no");
                    }))
        .isInstanceOf(IllegalCallerException.class);
    assertThat(file).doesNotExist();
    assertThat(temp.resolve(DirectoryLock.NAME)).doesNotExist();
  }

  /** Real processes, at the same moment: both visits get in, one after the other. */
  @Test
  void anotherProcessWaitsUntilTheFolderIsFree() throws Exception {
    Process child;
    try (DirectoryLock lock = DirectoryLock.tryAcquire(temp).orElseThrow()) {
      assertThat(lock).isNotNull();
      child = runs.start("waiting.log", "record", "wren.toml", "visit.toml");
      // Enough for it to be done, were it not kept out; less than it waits.
      assertThat(child.waitFor(3, TimeUnit.SECONDS)).as(runs.read("waiting.log")).isFalse();
      assertThat(file).doesNotExist();
    }
    assertThat(child.waitFor(LONGEST_RUN_S, TimeUnit.SECONDS)).isTrue();
    assertThat(child.exitValue()).isZero();
  }

  @Test
  void twoProcessesAtOnceBothGetIn() throws Exception {
    String visit = Files.readString(temp.resolve("visit.toml"));
    List<Process> children = new ArrayList<>();
    for (int i = 1; i <= 2; i++) {
      String name = "visit" + i + ".toml";
      runs.write(name, visit.replace("2026-12-03", "2026-12-0" + i));
      children.add(runs.start("child" + i + ".log", "record", "wren.toml", name));
    }
    for (Process child : children) {
      assertThat(child.waitFor(LONGEST_RUN_S, TimeUnit.SECONDS)).isTrue();
      assertThat(child.exitValue()).isZero();
    }
    RecordText text = text(Files.readAllBytes(file));
    assertThat(text.remarks()).isEmpty();
    assertThat(text.entries()).extracting(e -> e.number().orElse(0)).containsExactly(1, 2);
    assertThat(text.entries())
        .extracting(e -> e.date().orElseThrow().toString())
        .containsExactlyInAnyOrder("2026-12-01", "2026-12-02");
  }
}
