package dev.towerscribe.record;

import static org.assertj.core.api.Assertions.assertThat;

import dev.towerscribe.drawing.Lettering;
import dev.towerscribe.job.JobReader;
import dev.towerscribe.job.Templates;
import dev.towerscribe.job.VisitReader;
import dev.towerscribe.model.Job;
import java.nio.file.Files;
import java.nio.file.Path;
import java.security.MessageDigest;
import java.util.HexFormat;
import java.util.List;
import java.util.Optional;
import org.junit.jupiter.api.Test;

class RecordTextTest {
  private static final Path GOLDEN =
      Path.of("src", "test", "resources", "record", "wren.record.txt");

  private static String demo() throws Exception {
    Job job =
        new JobReader(Lettering::canWrite)
            .parse(Templates.text("wren.toml"), name -> Optional.empty());
    Visit visit =
        new VisitReader(Lettering::canWrite, note -> {})
            .parse(Files.readAllBytes(Path.of("templates", "wren-visit.toml")), job);
    return EntryText.of(
        1,
        VisitEvaluator.of(job, visit),
        new EntryText.About(job.title(), "MARK00", "Towerscribe", List.of("left.edge-cut.B")));
  }

  /** Frozen: the invented demo's figures, as they first came out and were looked through. */
  @Test
  void theDemoEntryIsAsItWas() throws Exception {
    assertThat(demo()).isEqualTo(Files.readString(GOLDEN));
  }

  @Test
  void theChecksumIsThatOfSha256sum() throws Exception {
    String text = demo();
    int closing = text.indexOf("-- end of visit 1, checksum ");
    // Independent: sha256sum of the lines above the closing one, first sixteen digits.
    byte[] hash =
        MessageDigest.getInstance("SHA-256").digest(text.substring(0, closing).getBytes("UTF-8"));
    assertThat(text.substring(closing))
        .isEqualTo(
            "-- end of visit 1, checksum "
                + HexFormat.of().formatHex(hash).substring(0, 16)
                + " --\n");
  }

  @Test
  void anEditedEntryIsReadAndSaidToBeEdited() throws Exception {
    String edited =
        demo()
            .replace(
                "right after caster: measured 4.4 deg", "right after caster: measured 5.4 deg");
    RecordText text = RecordText.read(edited);
    Entry entry = text.entries().get(0);
    assertThat(entry.state()).isEqualTo(Entry.State.EDITED);
    assertThat(text.remarks()).hasSize(1);
    assertThat(text.remarks().get(0)).contains("visit 1", "was edited after it was written");
    assertThat(entry.visit()).isPresent();
    assertThat(EntryText.identity(entry.visit().get()))
        .contains("right after caster: measured 5.4 deg");
  }

  @Test
  void anotherEditorsLineEndsAndByteOrderMarkAreNoEdit() throws Exception {
    RecordText text = RecordText.read("\uFEFF" + demo().replace("\n", "\r\n"));
    assertThat(text.remarks()).isEmpty();
    assertThat(text.entries().get(0).state()).isEqualTo(Entry.State.WHOLE);
  }

  @Test
  void whatBelongsToNoEntryIsSaid() throws Exception {
    RecordText text = RecordText.read("my own note\nand more\n\n" + demo() + "after it\n");
    assertThat(text.entries()).hasSize(1);
    assertThat(text.remarks().get(0)).isEqualTo("lines 1 to 2 belong to no entry");
    assertThat(text.remarks().get(1)).startsWith("line ").endsWith(" belongs to no entry");
  }

  @Test
  void anEntryWithoutItsSettingOrDaySaysSo() throws Exception {
    RecordText noSetting = RecordText.read(demo().replace("left setting: 16 mm\n", ""));
    assertThat(noSetting.remarks().toString()).contains("no setting of the left side");
    assertThat(noSetting.entries().get(0).visit().orElseThrow().wheels()).hasSize(1);
    RecordText noDay = RecordText.read(demo().replace("2026-12-03 ==", "2026-13-03 =="));
    assertThat(noDay.remarks().toString()).contains("no such day: 2026-13-03");
    assertThat(noDay.entries().get(0).visit()).isEmpty();
  }

  @Test
  void theNextNumberIsPastEveryOtherEvenOfACutEntry() throws Exception {
    assertThat(RecordText.read("").nextNumber()).isEqualTo(1);
    assertThat(RecordText.read(demo()).nextNumber()).isEqualTo(2);
    assertThat(RecordText.read(demo() + "\n== Towerscribe record, visit 12, 20").nextNumber())
        .isEqualTo(13);
    // A number that may itself be cut off is none.
    assertThat(RecordText.read(demo() + "\n== Towerscribe record, visit 12").nextNumber())
        .isEqualTo(2);
  }
}
