package dev.towerscribe.report.csv;

import static org.assertj.core.api.Assertions.assertThat;

import java.util.List;
import org.junit.jupiter.api.Test;

class CsvTest {
  @Test
  void cellsThatBeginLikeFormulasAreMadeHarmless() {
    Csv csv = new Csv();
    csv.row(
        List.of(
            Csv.words("=1+1"),
            Csv.words("+a"),
            Csv.words(" @b"),
            Csv.words("-c, d"),
            Csv.words("e\tf"),
            Csv.words("plain"),
            "-1.5"));
    assertThat(csv.toString()).isEqualTo("'=1+1,'+a,' @b,\"'-c, d\",e?f,plain,-1.5\r\n");
  }
}
