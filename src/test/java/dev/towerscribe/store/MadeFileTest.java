package dev.towerscribe.store;

import static java.nio.charset.StandardCharsets.UTF_8;
import static org.assertj.core.api.Assertions.assertThat;
import static org.assertj.core.api.Assertions.assertThatThrownBy;

import java.util.List;
import org.junit.jupiter.api.Test;

class MadeFileTest {
  @Test
  void aSheetThatIsNotWhatWasLaidOutIsNotHandedOut() throws Exception {
    MadeFile.refuse(List.of());
    assertThatThrownBy(() -> MadeFile.refuse(List.of("hole B is not there")))
        .isInstanceOfSatisfying(
            Refused.class,
            r -> {
              assertThat(r.why()).isEqualTo(Refused.Why.UNPROVED);
              assertThat(r.lines()).hasSize(2).last().isEqualTo("hole B is not there");
            });
  }

  @Test
  void filesOfOneDirectoryHaveEachANameOfTheirOwn() throws Exception {
    MadeFiles files =
        new MadeFiles().put("b.txt", MadeFile.text("ä")).put("a.txt", MadeFile.text(""));
    assertThat(files.names()).containsExactly("a.txt", "b.txt");
    assertThat(files.proved().get("b.txt")).isEqualTo("ä".getBytes(UTF_8));
    assertThatThrownBy(() -> files.put("a.txt", MadeFile.text("again")))
        .isInstanceOf(IllegalStateException.class)
        .hasMessageContaining("a.txt");
  }
}
