package dev.towerscribe.placement;

import static org.assertj.core.api.Assertions.assertThat;

import dev.towerscribe.drawing.Lettering;
import dev.towerscribe.finding.Finding;
import dev.towerscribe.job.JobReader;
import dev.towerscribe.model.Job;
import dev.towerscribe.model.Seating;
import java.nio.file.Path;
import java.util.List;
import java.util.Optional;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.ValueSource;

/** Invented towers with hardly any room: what can be done on them must not be refused. */
class TightTowersTest {
  private static Job job(String name) throws Exception {
    Path file = Path.of("src", "test", "resources", "tight", "tight-%s.toml".formatted(name));
    return new JobReader(Lettering::canWrite).read(file);
  }

  private static List<String> stops(Job job) throws Exception {
    return Layouts.of(job).layout().stops().stream().map(Finding::id).toList();
  }

  @ParameterizedTest
  @ValueSource(strings = {"a", "b", "c"})
  void theirOwnMountsStandWithShimsAndNotWithout(String name) throws Exception {
    Job job = job(name);
    assertThat(stops(job)).isEmpty();
    Job bare = job.withSides(s -> s.with(new Seating(s.seating().stated(), Optional.empty())));
    assertThat(stops(bare)).containsExactly("left.stand-off", "right.stand-off");
    Job silent = job.withSides(s -> s.with(new Seating(Optional.empty(), s.seating().packing())));
    assertThat(stops(silent)).isNotEmpty().allMatch(id -> id.endsWith(".seat"));
  }
}
