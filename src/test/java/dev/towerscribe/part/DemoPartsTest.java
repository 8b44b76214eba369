package dev.towerscribe.part;

import static org.assertj.core.api.Assertions.assertThat;

import dev.towerscribe.finding.Finding;
import dev.towerscribe.job.JobReader;
import dev.towerscribe.layout.JobLayout;
import dev.towerscribe.layout.Layout;
import dev.towerscribe.layout.SideLayout;
import java.nio.file.Path;
import java.util.List;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.CsvSource;

/** The starter jobs: their plates can be made. */
class DemoPartsTest {
  @ParameterizedTest
  // A domed top; one landmark alone; neither.
  @CsvSource({"wren, 3, jig-dome", "siskin, 2, jig-register", "dunnock, 2, "})
  void everyPartCanBeMade(String name, int count, String known) throws Exception {
    JobLayout layout =
        Layout.of(new JobReader(c -> true).read(Path.of("templates", name + ".toml")));
    JobParts parts = Parts.of(layout);
    assertThat(parts.parts()).hasSize(count);
    assertThat(parts.findings()).isEmpty();
    for (SideLayout side : layout.sides().values()) {
      SideJig jig = Jigs.of(side, layout.job().jig(), layout.job().units());
      assertThat(jig.part()).isPresent();
      assertThat(jig.findings())
          .extracting(Finding::id)
          .containsExactlyElementsOf(ids(side, known));
    }
  }

  private static List<String> ids(SideLayout side, String known) {
    return known == null ? List.of() : List.of(side.side().word() + "." + known);
  }
}
