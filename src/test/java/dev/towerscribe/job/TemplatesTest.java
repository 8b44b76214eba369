package dev.towerscribe.job;

import static org.assertj.core.api.Assertions.assertThat;
import static org.assertj.core.api.Assertions.assertThatThrownBy;

import dev.towerscribe.geometry.Vec2;
import dev.towerscribe.model.Job;
import dev.towerscribe.model.Side;
import java.nio.file.Files;
import java.nio.file.Path;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.api.io.TempDir;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.ValueSource;

class TemplatesTest {
  @ParameterizedTest
  @ValueSource(strings = {"wren.toml", "siskin.toml", "dunnock.toml"})
  void everyStarterJobLoadsFromDisk(String name, @TempDir Path folder) throws Exception {
    for (String each : Templates.names()) {
      Path file = folder.resolve(each);
      Files.createDirectories(file.getParent());
      Files.writeString(file, Templates.text(each));
    }
    Job job = Jobs.READER.read(folder.resolve(name));
    assertThat(job.sides().keySet()).containsExactly(Side.LEFT, Side.RIGHT);
    assertThat(Templates.text(name)).contains("INVENTED");
  }

  @Test
  void bothPlateFilesLoadInAJob() {
    for (String plate : Templates.names()) {
      if (plate.startsWith("plates/")) {
        int from = Jobs.LEAST.indexOf("[plate]");
        int to = Jobs.LEAST.indexOf("[mount]");
        String text =
            Jobs.LEAST.substring(0, from)
                + "[plate]\nfile = \""
                + plate
                + "\"\n"
                + Jobs.with(Jobs.LEAST.substring(to), "setting = 16.0", "setting = 0");
        assertThat(Jobs.faults(text)).isEmpty();
      }
    }
  }

  /** Independent: 1.8 in = 45.72 mm and -1.05 in = -26.67 mm by hand. */
  @Test
  void theTracedMarkIsInInches() throws Exception {
    Job job = Jobs.read(Templates.text("siskin.toml"));
    assertThat(job.sides().get(Side.LEFT).tower().mark().corners())
        .anySatisfy(p -> assertThat(p.distanceTo(new Vec2(-45.72, -26.67))).isLessThan(1e-9));
  }

  @Test
  void theDemoTowersAreNotAlike() throws Exception {
    Job job = Jobs.read(Templates.text("wren.toml"));
    assertThat(job.sides().get(Side.LEFT).tower())
        .isNotEqualTo(job.sides().get(Side.RIGHT).tower());
  }

  @Test
  void anUnknownTemplateIsRefused() {
    assertThatThrownBy(() -> Templates.text("robin.toml"))
        .isInstanceOf(IllegalArgumentException.class);
  }
}
