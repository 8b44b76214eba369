package dev.towerscribe.job;

import static org.assertj.core.api.Assertions.assertThat;

import java.util.List;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.CsvSource;

class SpellingTest {
  /** Independent: counted by hand. */
  @ParameterizedTest
  @CsvSource({"keep,keep,0", "keep,kepe,1", "rough,ruff,3", "a,'',1", "corner,corners,1"})
  void lettersToMend(String a, String b, int steps) {
    assertThat(Spelling.distance(a, b)).isEqualTo(steps);
    assertThat(Spelling.distance(b, a)).isEqualTo(steps);
  }

  @Test
  void offersOnlyWhatIsNear() {
    List<String> known = List.of("axis", "aims", "pivot_height", "at");
    assertThat(Spelling.nearest("amis", known)).contains("aims");
    assertThat(Spelling.nearest("Pivot-Height", known)).contains("pivot_height");
    assertThat(Spelling.nearest("piviot_hight", known)).contains("pivot_height");
    assertThat(Spelling.nearest("colour", known)).isEmpty();
    assertThat(Spelling.nearest("a".repeat(100_000), known)).isEmpty();
  }
}
