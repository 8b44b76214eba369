package dev.towerscribe.store;

import static org.assertj.core.api.Assertions.assertThat;
import static org.assertj.core.api.Assertions.assertThatThrownBy;

import dev.towerscribe.Tries;
import dev.towerscribe.quantity.Version;
import dev.towerscribe.report.LayoutReport;
import java.io.IOException;
import java.nio.file.FileSystemException;
import java.nio.file.Files;
import java.nio.file.Path;
import java.util.Map;
import java.util.Optional;
import java.util.TreeMap;
import java.util.stream.Stream;
import org.junit.jupiter.api.BeforeEach;
import org.junit.jupiter.api.Tag;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.api.io.TempDir;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.EnumSource;

/**
 * Whatever fails, and wherever the process ends: a directory holds one whole pack or the other, and
 * what no pack made is not touched.
 */
class PackDirectoryTest {
  private static final String OLD_MARK = "AAAAAA";
  private static final String NEW_MARK = "BBBBBB";

  /** Far more operations than one update has; the loop must have ended before. */
  private static final int MOST_OPERATIONS = 1000;

  private static final FileOps NEVER_FAILING =
      new FailingOps(FailingOps.Way.ONCE, Integer.MAX_VALUE);

  @TempDir Path temp;
  private Path directory;

  @BeforeEach
  void nameDirectory() {
    directory = temp.resolve("a place/for the pack");
  }

  private static MadeFiles files(String... namesAndTexts) {
    MadeFiles files = new MadeFiles();
    for (int i = 0; i < namesAndTexts.length; i += 2) {
      files.put(namesAndTexts[i], MadeFile.text(namesAndTexts[i + 1]));
    }
    return files;
  }

  private static String report(String words) {
    return LayoutReport.TITLE + "\n" + words + "\n";
  }

  private void writeOld(FileOps ops) throws Exception {
    new PackDirectory(ops, directory)
        .writePack(
            OLD_MARK,
            files("pack.pdf", "old pdf", "left.svg", "old left", "gone.svg", "old gone"),
            report("old"));
  }

  private void writeNew(FileOps ops) throws Exception {
    new PackDirectory(ops, directory)
        .writePack(
            NEW_MARK,
            files("pack.pdf", "new pdf", "left.svg", "new left", "right.svg", "new right"),
            report("new"));
  }

  /** Every file below the directory, hidden ones too. */
  private Map<String, String> content() throws IOException {
    Map<String, String> content = new TreeMap<>();
    if (!Files.exists(directory)) {
      return content;
    }
    try (Stream<Path> paths = Files.walk(directory)) {
      for (Path p : (Iterable<Path>) paths::iterator) {
        if (Files.isRegularFile(p)) {
          content.put(directory.relativize(p).toString(), Files.readString(p));
        }
      }
    }
    return content;
  }

  private void recover() throws IOException {
    new DirectoryUpdate(NEVER_FAILING, directory).recover();
    Files.deleteIfExists(directory.resolve(DirectoryLock.NAME));
  }

  @Test
  void aNewPackReplacesTheOldOneAndLeavesNothingElseBehind() throws Exception {
    writeOld(NEVER_FAILING);
    assertThat(content())
        .containsOnlyKeys("gone.svg", "left.svg", "pack.list", "pack.pdf", "report.txt");
    writeNew(FileOps.REAL);
    assertThat(content())
        .containsOnlyKeys("left.svg", "pack.list", "pack.pdf", "report.txt", "right.svg")
        .containsEntry("pack.pdf", "new pdf")
        .containsEntry("left.svg", "new left");
  }

  @Test
  void theListIsOneThatSha256sumReads() throws Exception {
    writeOld(NEVER_FAILING);
    // independent: printf 'old pdf' | sha256sum
    assertThat(content().get("pack.list"))
        .startsWith("# Towerscribe " + Version.TEXT + ", pack mark AAAAAA\n")
        .contains("88222c2438bbcb602c55e9a710f45f7651a0cc76da8b31b2bf2e53aa94217cf9  pack.pdf\n");
  }

  @ParameterizedTest
  @EnumSource(FailingOps.Way.class)
  void aFailureAtAnyOperationLeavesOneWholePack(FailingOps.Way way) throws Exception {
    writeOld(NEVER_FAILING);
    Files.writeString(directory.resolve("notes.txt"), "mine");
    Map<String, String> old = content();
    writeNew(FileOps.REAL);
    Map<String, String> fresh = content();
    int endings = 0;
    int oldSets = 0;
    int newSets = 0;
    for (int n = 1; n < MOST_OPERATIONS; n++) {
      reset(old);
      FailingOps ops = new FailingOps(way, n);
      boolean failed = false;
      try {
        writeNew(ops);
      } catch (IOException | FailingOps.Killed e) {
        failed = true;
      }
      if (!ops.hasFailed()) {
        break;
      }
      endings++;
      for (Map.Entry<String, String> file : content().entrySet()) {
        if (!file.getKey().startsWith(".")) {
          assertThat(file.getValue())
              .as("operation %d, %s", n, file.getKey())
              .isIn(old.get(file.getKey()), fresh.get(file.getKey()));
        }
      }
      assertThat(content()).as("operation %d", n).containsKeys("pack.pdf", "left.svg");
      if (way == FailingOps.Way.ONCE) {
        // No kill: the same run has put everything right, the hidden rest apart.
        Map<String, String> seen = content();
        seen.keySet().removeIf(name -> name.startsWith("."));
        assertThat(seen).as("operation %d", n).isEqualTo(failed ? old : fresh);
      }
      recover();
      assertThat(content()).as("after operation %d", n).isIn(old, fresh);
      if (content().equals(old)) {
        oldSets++;
      } else {
        newSets++;
      }
    }
    assertThat(endings).isBetween(20, MOST_OPERATIONS - 2);
    assertThat(oldSets).isPositive();
    assertThat(newSets).isPositive();
  }

  @ParameterizedTest
  @EnumSource(FailingOps.Way.class)
  void aFailureDuringTheFirstPackLeavesAWholePackOrNone(FailingOps.Way way) throws Exception {
    writeNew(FileOps.REAL);
    Map<String, String> fresh = content();
    int endings = 0;
    for (int n = 1; n < MOST_OPERATIONS; n++) {
      reset(Map.of());
      FailingOps ops = new FailingOps(way, n);
      try {
        writeNew(ops);
      } catch (IOException | FailingOps.Killed e) {
        assertThat(e).isNotNull();
      }
      if (!ops.hasFailed()) {
        break;
      }
      endings++;
      if (Files.exists(directory)) {
        recover();
      }
      assertThat(content()).as("operation %d", n).isIn(Map.of(), fresh);
    }
    assertThat(endings).isBetween(20, MOST_OPERATIONS - 2);
  }

  @Tag("more-tries")
  @ParameterizedTest
  @EnumSource(FailingOps.Way.class)
  void aFailureDuringRecoveryIsRecoveredFromToo(FailingOps.Way way) throws Exception {
    writeOld(NEVER_FAILING);
    Map<String, String> old = content();
    writeNew(FileOps.REAL);
    Map<String, String> fresh = content();
    for (int first = 20; first < MOST_OPERATIONS; first += Tries.of(8, 2)) {
      reset(old);
      FailingOps ops = new FailingOps(FailingOps.Way.KILL, first);
      try {
        writeNew(ops);
      } catch (FailingOps.Killed e) {
        assertThat(ops.hasFailed()).isTrue();
      }
      if (!ops.hasFailed()) {
        return;
      }
      Map<String, String> left = content();
      for (int second = 1; second < MOST_OPERATIONS; second++) {
        reset(left);
        FailingOps again = new FailingOps(way, second);
        try {
          new DirectoryUpdate(again, directory).recover();
        } catch (IOException | FailingOps.Killed e) {
          assertThat(again.hasFailed()).isTrue();
        }
        recover();
        assertThat(content()).as("operations %d, %d", first, second).isIn(old, fresh);
        if (!again.hasFailed()) {
          break;
        }
      }
    }
  }

  private void reset(Map<String, String> content) throws IOException {
    if (Files.exists(directory)) {
      try (Stream<Path> paths = Files.walk(directory)) {
        for (Path p : paths.sorted((a, b) -> b.compareTo(a)).toList()) {
          Files.delete(p);
        }
      }
    }
    for (Map.Entry<String, String> file : content.entrySet()) {
      Path p = directory.resolve(file.getKey());
      Files.createDirectories(p.getParent());
      Files.writeString(p, file.getValue());
    }
  }

  @Test
  void aFileThatNoPackMadeBarsItsNameAndStays() throws Exception {
    Files.createDirectories(directory);
    Files.writeString(directory.resolve("left.svg"), "mine");
    assertThatThrownBy(() -> writeNew(FileOps.REAL))
        .isInstanceOf(FileSystemException.class)
        .hasMessageContaining("left.svg");
    assertThat(content()).containsOnly(Map.entry("left.svg", "mine"));
  }

  private Optional<String> writeReport(FileOps ops, String picture) throws IOException {
    return new PackDirectory(ops, directory)
        .writeReport(
            NEW_MARK,
            files("overview.pdf", picture),
            older -> report("stop beside " + older.orElse("nothing")));
  }

  @Test
  void aReportThatAnotherProgramWroteStays() throws Exception {
    Files.createDirectories(directory);
    Files.writeString(directory.resolve("report.txt"), "mine");
    assertThatThrownBy(() -> writeReport(FileOps.REAL, "picture"))
        .isInstanceOf(FileSystemException.class);
    assertThat(content()).containsOnly(Map.entry("report.txt", "mine"));
  }

  @Test
  void aPictureThatAnotherProgramMadeStaysAndBarsTheReportButNotAPack() throws Exception {
    Files.createDirectories(directory);
    Files.writeString(directory.resolve("overview.pdf"), "mine");
    assertThatThrownBy(() -> writeReport(FileOps.REAL, "picture"))
        .isInstanceOf(FileSystemException.class)
        .hasMessageContaining("overview.pdf");
    assertThat(content()).containsOnly(Map.entry("overview.pdf", "mine"));
    writeNew(FileOps.REAL);
    assertThat(content()).containsEntry("overview.pdf", "mine").containsKey("pack.pdf");
  }

  @Test
  void aStopWritesReportAndOverviewAndNothingElse() throws Exception {
    assertThat(writeReport(FileOps.REAL, "first")).isEmpty();
    assertThat(content()).containsOnlyKeys("report.txt", "overview.pdf", "overview.list");
    assertThat(writeReport(FileOps.REAL, "second")).isEmpty();
    assertThat(content())
        .containsOnlyKeys("report.txt", "overview.pdf", "overview.list")
        .containsEntry("overview.pdf", "second");
  }

  @Test
  void aPackTakesAnOverviewAway() throws Exception {
    writeReport(FileOps.REAL, "stops");
    writeNew(FileOps.REAL);
    assertThat(content())
        .containsOnlyKeys("left.svg", "pack.list", "pack.pdf", "report.txt", "right.svg");
    writeReport(FileOps.REAL, "stops again");
    assertThat(content()).containsKeys("pack.pdf", "overview.pdf", "overview.list");
    writeOld(FileOps.REAL);
    assertThat(content())
        .containsOnlyKeys("gone.svg", "left.svg", "pack.list", "pack.pdf", "report.txt");
  }

  @Test
  void aStopLeavesAnOlderPackAsItWasAndTellsItsMark() throws Exception {
    writeOld(NEVER_FAILING);
    Map<String, String> old = content();
    assertThat(writeReport(FileOps.REAL, "picture")).contains(OLD_MARK);
    Map<String, String> now = content();
    assertThat(now.remove("report.txt")).contains("stop beside AAAAAA");
    assertThat(now.remove("overview.pdf")).isEqualTo("picture");
    now.remove("overview.list");
    old.remove("report.txt");
    assertThat(now).isEqualTo(old);
  }

  @Test
  void whereverAStopOrThePackAfterItFailsReportAndPictureBelongTogether() throws Exception {
    writeOld(NEVER_FAILING);
    Map<String, String> before = content();
    boolean failed = true;
    for (int at = 0; failed && at < MOST_OPERATIONS; at++) {
      failed = false;
      try {
        writeReport(new FailingOps(FailingOps.Way.FROM_THEN_ON, at), "picture");
      } catch (IOException e) {
        failed = true;
      }
      recover();
      Map<String, String> now = content();
      if (now.containsKey("overview.pdf")) {
        assertThat(now.get("report.txt")).contains("stop beside AAAAAA");
        assertThat(now).containsKeys("overview.list", "pack.pdf", "gone.svg");
        writeOld(NEVER_FAILING);
      } else {
        assertThat(now).isEqualTo(before);
      }
      assertThat(content()).isEqualTo(before);
    }
    assertThat(failed).isFalse();
  }

  @Test
  void aListWithAPathInItIsNotBelieved() throws Exception {
    writeOld(NEVER_FAILING);
    Path outside = directory.resolveSibling("outside.txt");
    Files.writeString(outside, "mine");
    Path list = directory.resolve("pack.list");
    Files.writeString(list, Files.readString(list) + "0".repeat(64) + "  ../outside.txt\n");
    assertThatThrownBy(() -> writeNew(FileOps.REAL)).isInstanceOf(FileSystemException.class);
    assertThat(outside).hasContent("mine");
  }

  @Test
  void twoRunsAtOnceDoNotMeet() throws Exception {
    writeOld(NEVER_FAILING);
    Map<String, String> old = content();
    try (DirectoryLock lock = DirectoryLock.tryAcquire(directory).orElseThrow()) {
      assertThat(lock).isNotNull();
      assertThatThrownBy(() -> writeNew(FileOps.REAL))
          .isInstanceOfSatisfying(
              Refused.class, r -> assertThat(r.why()).isEqualTo(Refused.Why.BUSY))
          .hasMessageContaining("another run");
    }
    assertThat(content()).isEqualTo(old);
    writeNew(FileOps.REAL);
  }

  @Test
  void aLockFileOfAKilledRunBarsNobody() throws Exception {
    Files.createDirectories(directory);
    Files.writeString(directory.resolve(DirectoryLock.NAME), "12345 678");
    writeNew(FileOps.REAL);
    assertThat(content()).doesNotContainKey(DirectoryLock.NAME);
  }

  @Test
  void aDirectoryWhereAFileShouldGoIsAFileFaultAndChangesNothing() throws Exception {
    writeOld(NEVER_FAILING);
    Files.delete(directory.resolve("left.svg"));
    Files.createDirectory(directory.resolve("left.svg"));
    Map<String, String> old = content();
    assertThatThrownBy(() -> writeNew(FileOps.REAL)).isInstanceOf(IOException.class);
    assertThat(content()).isEqualTo(old);
  }

  @Test
  void directoriesMadeForNothingAreTakenAwayAgain() throws Exception {
    FailingOps full = new FailingOps(FailingOps.Way.ONCE, 4);
    assertThatThrownBy(() -> writeNew(full)).isInstanceOf(IOException.class);
    assertThat(temp).isEmptyDirectory();
  }
}
