package dev.towerscribe.job;

import static org.assertj.core.api.Assertions.assertThat;

import java.util.List;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.CsvSource;

class SpellingHintTest {
  /** Independent: counted by hand. */
  @ParameterizedTest
  @CsvSource({"keep,keep,0", "keep,kepe,1", "rough,ruff,3", "a,'',1", "corner,corners,1"})
  void lettersToMend(String a, String b, int steps) {
    assertThat(SpellingHint.distance(a, b)).isEqualTo(steps);
    assertThat(SpellingHint.distance(b, a)).isEqualTo(steps);
  }

  @Test
  void offersOnlyWhatIsNear() {
    List<String> known = List.of("axis", "aims", "pivot_height", "at");
    assertThat(SpellingHint.nearest("amis", known)).contains("aims");
    assertThat(SpellingHint.nearest("Pivot-Height", known)).contains("pivot_height");
    assertThat(SpellingHint.nearest("piviot_hight", known)).contains("pivot_height");
    assertThat(SpellingHint.nearest("colour", known)).isEmpty();
    assertThat(SpellingHint.nearest("a".repeat(100_000), known)).isEmpty();
  }
}
