package dev.towerscribe.job;

import static org.assertj.core.api.Assertions.assertThat;

import dev.towerscribe.finding.Fault;
import dev.towerscribe.finding.JobRejected;
import dev.towerscribe.model.Job;
import dev.towerscribe.model.Side;
import dev.towerscribe.model.SideJob;
import java.util.List;
import java.util.Optional;

/** Job texts for tests, and short ways to read them. */
final class Jobs {
  /** As on the sheets' font: anything but the higher planes and a star. */
  static final JobReader READER = new JobReader(c -> c < 0x2600);

  /** The least a job can hold: everything else has a default. */
  static final String LEAST =
      """
      format = 1
      title = "Least"
      [tower]
      sheet = 1.4
      opening = { diameter = 62.0 }
      mark = { diameter = 104.0 }
      landmark = [{ name = "hole", at = [38.0, -52.0], diameter = 9.0 }]
      [plate]
      name = "plate"
      thickness = 6.0
      outline = { diameter = 186.0 }
      handed = true
      slot = { from = -8.0, to = 16.0 }
      bearing = { x = 8.0, height = 18.0 }
      moving = { diameter = 22.0 }
      bolts = [
        { name = "A", at = [76.0, 0.0], thread = "M8", flats = 13.0 },
        { name = "B", at = [-38.0, 65.8], thread = "M8", flats = 13.0 },
      ]
      [mount]
      rotation = 55.0
      rearward = 8.0
      inboard = -3.0
      setting = 16.0
      """;

  private Jobs() {}

  static Job read(String text) throws JobRejected {
    return READER.parse(text, Jobs::plateFile);
  }

  static SideJob side(String text, Side side) throws JobRejected {
    return read(text).sides().get(side);
  }

  static List<Fault> faults(String text) {
    try {
      read(text);
      return List.of();
    } catch (JobRejected e) {
      return e.faults();
    }
  }

  /** The text with one place changed; the place must be there exactly once. */
  static String with(String text, String old, String changed) {
    int at = text.indexOf(old);
    assertThat(at).as("\"%s\" is in the text", old).isNotNegative();
    assertThat(text.indexOf(old, at + 1)).as("\"%s\" is in it once", old).isNegative();
    return text.replace(old, changed);
  }

  static Optional<String> plateFile(String name) {
    return Templates.names().contains(name) ? Optional.of(Templates.text(name)) : Optional.empty();
  }
}
