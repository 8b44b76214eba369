package dev.towerscribe.store;

import static java.nio.charset.StandardCharsets.UTF_8;
import static org.assertj.core.api.Assertions.assertThat;

import java.util.List;
import org.junit.jupiter.api.Test;

class PackMarkTest {
  private static final List<byte[]> JOB = List.of("a job".getBytes(UTF_8));

  @Test
  void theCodeIsTheHeadOfTheHashInBase32() {
    // independent: printf '5:0.1.05:a job8:left.a.B' | sha256sum starts with the bits that
    // python3 -c "h=int('HASH'[:8],16)>>2; print(''.join('0123456789ABCDEFGHJKMNPQRSTVWXYZ'
    // [h>>s&31] for s in range(25,-1,-5)))" turns into this.
    assertThat(PackMark.of("0.1.0", JOB, List.of("left.a.B"))).isEqualTo("SE7ECX");
  }

  @Test
  void everyInputCounts() {
    String mark = PackMark.of("1", JOB, List.of());
    assertThat(mark).isNotEqualTo(PackMark.of("2", JOB, List.of()));
    assertThat(mark).isNotEqualTo(PackMark.of("1", JOB, List.of("left.a.B")));
    assertThat(mark).isNotEqualTo(PackMark.of("1", List.of(JOB.get(0), JOB.get(0)), List.of()));
    // The same bytes, parted elsewhere.
    assertThat(PackMark.of("1", List.of("ab".getBytes(UTF_8), "c".getBytes(UTF_8)), List.of()))
        .isNotEqualTo(
            PackMark.of("1", List.of("a".getBytes(UTF_8), "bc".getBytes(UTF_8)), List.of()));
  }

  @Test
  void theOrderOfAcceptedFindingsDoesNotCount() {
    assertThat(PackMark.of("1", JOB, List.of("left.a", "left.b")))
        .isEqualTo(PackMark.of("1", JOB, List.of("left.b", "left.a", "left.b")));
  }
}
