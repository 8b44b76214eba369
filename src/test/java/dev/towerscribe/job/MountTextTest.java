package dev.towerscribe.job;

import static org.assertj.core.api.Assertions.assertThat;

import dev.towerscribe.model.Job;
import dev.towerscribe.model.Mount;
import dev.towerscribe.quantity.Angle;
import dev.towerscribe.quantity.LengthUnit;
import java.util.List;
import java.util.Optional;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.ValueSource;

class MountTextTest {
  private static final Mount ELSEWHERE = new Mount(Angle.ofDegrees(64.6), 13.0, -0.1, 4.0);

  private static final String PLAIN =
      """
      [mount] # where it goes
      rotation = 55.0                # from straight across
      rearward=8
        inboard  =  -3.0
      setting = 16.0
      [holes]
      """;

  @Test
  void replacesTheFourValuesAndNothingElse() {
    // Independent: written out by hand.
    assertThat(MountText.with(PLAIN, LengthUnit.MM, ELSEWHERE))
        .contains(
            """
            [mount] # where it goes
            rotation = 64.6                # from straight across
            rearward=13.0
              inboard  =  -0.1
            setting = 4.0
            [holes]
            """);
  }

  @Test
  void keepsLineEndsAndALastLineWithoutOne() {
    String windows = PLAIN.replace("\n", "\r\n").stripTrailing();
    String changed = MountText.with(windows, LengthUnit.MM, ELSEWHERE).orElseThrow();
    assertThat(changed).contains("rearward=13.0\r\n").endsWith("[holes]");
    assertThat(changed.chars().filter(c -> c == '\n').count())
        .isEqualTo(windows.chars().filter(c -> c == '\n').count());
  }

  @Test
  void leavesTheSameKeysInOtherTablesAlone() {
    String text = "[left.mount]\nrotation = 1.0\n" + PLAIN + "rotation = 2.0\n";
    assertThat(MountText.with(text, LengthUnit.MM, ELSEWHERE).orElseThrow())
        .contains("[left.mount]\nrotation = 1.0\n")
        .endsWith("rotation = 2.0\n");
  }

  @ParameterizedTest
  @ValueSource(
      strings = {
        "mount = { rotation = 55.0, rearward = 8.0, inboard = -3.0, setting = 16.0 }\n",
        "[mount]\nrotation = 55.0\nrearward = 8.0\ninboard = -3.0\n",
        "mount.rotation = 55.0\nmount.rearward = 8.0\nmount.inboard = 0.0\nmount.setting = 1.0\n",
        "[mount]\nrotation = 5.0\nrotation = 6.0\nrearward = 8.0\ninboard = 0.0\nsetting = 1.0\n",
      })
  void refusesWhatItDoesNotUnderstand(String text) {
    assertThat(MountText.with(text, LengthUnit.MM, ELSEWHERE)).isEmpty();
  }

  @Test
  void everyStarterJobReadsBackAsItselfElsewhere() throws Exception {
    for (String name : List.of("wren.toml", "siskin.toml", "dunnock.toml")) {
      String text = Templates.text(name);
      Job job = Jobs.READER.parse(text, plate -> Optional.of(Templates.text(plate)));
      double step = job.units() == LengthUnit.MM ? 0.1 : LengthUnit.INCH.toMm(0.005);
      Mount mount =
          new Mount(
              Angle.ofDegrees(41.3),
              77 * step,
              -13 * step,
              job.sides().values().iterator().next().plate().slot().fromMm());
      String changed = MountText.with(text, job.units(), mount).orElseThrow();
      Job again = Jobs.READER.parse(changed, plate -> Optional.of(Templates.text(plate)));
      Mount read = again.sides().values().iterator().next().mount();
      assertThat(read.rotation()).isEqualTo(mount.rotation());
      // A file carries nine decimals of an inch.
      assertThat(Math.abs(read.rearwardMm() - mount.rearwardMm())).isLessThan(1e-7);
      assertThat(Math.abs(read.inboardMm() - mount.inboardMm())).isLessThan(1e-7);
      assertThat(Math.abs(read.settingMm() - mount.settingMm())).isLessThan(1e-7);
      assertThat(again).isEqualTo(job.with(read));
    }
  }

  @Test
  void seesAMountOfOneSide() {
    assertThat(MountText.differsBySide(PLAIN)).isFalse();
    assertThat(MountText.differsBySide("[right.mount]\nsetting = 4.0\n")).isTrue();
    assertThat(MountText.differsBySide("left = { mount = { setting = 4.0 } }\n")).isTrue();
  }
}
