package dev.towerscribe.job;

import static org.assertj.core.api.Assertions.assertThat;
import static org.assertj.core.api.Assertions.within;

import dev.towerscribe.finding.Fault;
import dev.towerscribe.finding.JobRejected;
import dev.towerscribe.geometry.Vec3;
import dev.towerscribe.model.PlusMinus;
import dev.towerscribe.model.Side;
import dev.towerscribe.model.StrutPoint;
import java.io.IOException;
import java.nio.file.Files;
import java.nio.file.Path;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.api.io.TempDir;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.CsvSource;

/** strut.plus_minus, a figure or a table. */
class PlusMinusTest {
  private static final String LINE = "plus_minus = 2.0 ";

  @TempDir private Path folder;

  private PlusMinus read(String value) throws IOException, JobRejected {
    String wren = Files.readString(Path.of("templates/wren.toml"));
    assertThat(wren).contains(LINE);
    Path file = folder.resolve("job.toml");
    Files.writeString(file, wren.replace(LINE, "plus_minus = " + value + " "));
    return new JobReader(c -> true)
        .read(file)
        .sides()
        .get(Side.RIGHT)
        .strut()
        .orElseThrow()
        .plusMinus();
  }

  @Test
  void oneFigureIsForEveryCoordinateAndLeavesTheCamberTrue() throws IOException, JobRejected {
    assertThat(read("1.5")).isEqualTo(PlusMinus.all(1.5));
  }

  @Test
  void aTableNamesPointsAndTheRestIsOther() throws IOException, JobRejected {
    // Independent: as the table has it.
    PlusMinus sure =
        read("{ top = [1.0, 0.5, 0.25], tie_outer = [3, 2, 1], other = 4.0, camber = 0.1 }");
    assertThat(sure.points().get(StrutPoint.TOP.ordinal())).isEqualTo(new Vec3(1.0, 0.5, 0.25));
    assertThat(sure.points().get(StrutPoint.TIE_OUTER.ordinal())).isEqualTo(new Vec3(3, 2, 1));
    assertThat(sure.points().get(StrutPoint.WHEEL_CENTRE.ordinal())).isEqualTo(new Vec3(4, 4, 4));
    assertThat(sure.camber().degrees()).isCloseTo(0.1, within(1e-12));
  }

  @Test
  void whatNobodySaidIsAsWithoutTheKey() throws IOException, JobRejected {
    assertThat(read("{ }")).isEqualTo(PlusMinus.all(PlusMinusReader.DEFAULT_MM));
  }

  @ParameterizedTest
  @CsvSource(
      delimiter = '|',
      value = {
        "{ top = 1.0 }|strut.plus_minus.top",
        "{ top = [1, 2] }|strut.plus_minus.top",
        "{ top = [1, -2, 1] }|strut.plus_minus.top",
        "{ top = [1, 200, 1] }|strut.plus_minus.top",
        "{ other = nan }|strut.plus_minus.other",
        "{ camber = 9 }|strut.plus_minus.camber",
        "{ tpo = [1, 1, 1] }|strut.plus_minus.tpo",
        "[1, 2, 3]|strut.plus_minus",
        "\"two\"|strut.plus_minus",
      })
  void wrongOnesNameTheirKey(String value, String key) throws IOException {
    try {
      read(value);
    } catch (JobRejected e) {
      assertThat(e.faults()).extracting(Fault::key).anySatisfy(k -> assertThat(k).startsWith(key));
      return;
    }
    throw new AssertionError("taken: " + value);
  }
}
