package dev.towerscribe.survey;

import static org.assertj.core.api.Assertions.assertThat;

import dev.towerscribe.finding.Finding;
import dev.towerscribe.job.JobReader;
import dev.towerscribe.job.Templates;
import dev.towerscribe.model.Side;
import java.util.ArrayList;
import java.util.HashSet;
import java.util.List;
import java.util.Optional;
import java.util.Random;
import java.util.regex.Matcher;
import java.util.regex.Pattern;
import org.junit.jupiter.api.Tag;
import org.junit.jupiter.api.Test;

/** Whatever was read, an answer comes: no reading is bad enough to break the calculation. */
class BrokenSurveysTest {
  private static final Pattern LENGTH = Pattern.compile("(length|up) = \\[([0-9.]+), ([0-9.]+)\\]");

  /** Lines of the demo's entries, some of them left out and some of them wrong. */
  private static String broken(Random random) {
    double keep = random.nextDouble();
    double slips = random.nextDouble() < 0.5 ? 0.02 : 0.3 * random.nextDouble();
    List<String> lines = new ArrayList<>();
    for (String line : SurveyTexts.demo().lines().toList()) {
      boolean entry = line.startsWith("  { ") && !line.contains("name =");
      if (entry && random.nextDouble() > keep) {
        continue;
      }
      Matcher m = LENGTH.matcher(line);
      if (m.find() && random.nextDouble() < slips) {
        double wrong = 10 + 1500 * random.nextDouble();
        line = m.replaceFirst(m.group(1) + " = [" + wrong + ", " + m.group(3) + "]");
      }
      boolean place = line.startsWith("at = ");
      lines.add(place && random.nextDouble() > keep ? "" : line);
    }
    return String.join("\n", lines);
  }

  @Tag("simulation")
  @Test
  void everyBrokenSurveyHasAnAnswer() {
    Random random = new Random(7);
    int stopped = 0;
    int open = 0;
    for (int i = 0; i < 20; i++) {
      String text = broken(random);
      SurveyResult r = Surveys.of(SurveyTexts.read(text));
      stopped += r.stops().isEmpty() ? 0 : 1;
      open += r.points().stream().allMatch(PointResult::found) ? 0 : 1;
      List<String> ids = SurveyTexts.ids(r.findings());
      assertThat(new HashSet<>(ids)).hasSameSizeAs(ids);
      for (PointResult p : r.points()) {
        assertThat(p.spread().sd().norm()).isFinite();
      }
      String tables = JobTables.of(r, r.stops()).split("\n\\[right", 2)[0];
      for (PointResult p : r.points()) {
        boolean left = p.point().side().equals(Optional.of(Side.LEFT));
        if (left && !p.found()) {
          assertThat(tables).doesNotContain("\n" + p.point().name() + " = ");
        }
      }
    }
    // Not all of them are without hope.
    assertThat(stopped).isGreaterThan(14);
    assertThat(open).isBetween(3, 18);
  }

  @Tag("simulation")
  @Test
  void aFileInTheWrongUnitIsToldWithoutEnd() {
    // All tapes in tenths of an inch: nothing agrees, and the search for slips must come to an end.
    String text = SurveyTexts.demo();
    StringBuilder wrong = new StringBuilder();
    Matcher m = LENGTH.matcher(text);
    while (m.find()) {
      double half = Double.parseDouble(m.group(2)) / 2.54;
      m.appendReplacement(wrong, m.group(1) + " = [" + half + ", " + half + "]");
    }
    m.appendTail(wrong);
    SurveyResult r = Surveys.of(SurveyTexts.read(wrong.toString()));
    assertThat(r.stops()).hasSizeBetween(10, 40);
    assertThat(r.fit().widened()).isGreaterThan(10);
  }

  @Test
  void oddNamesSurviveTheTables() throws Exception {
    String odd = "a \\\"b\\\" \\\\ é # [x] = 'y'";
    String demo = SurveyTexts.demo().replace("drain hole", odd);
    SurveyResult r = Surveys.of(SurveyTexts.read(demo));
    List<Finding> none = List.of();
    String job = DemoSurveyTest.pasted(Templates.text("wren.toml"), JobTables.of(r, none));
    assertThat(
            new JobReader(c -> c < 0x2600)
                .parse(job, name -> Optional.empty())
                .sides()
                .get(Side.RIGHT)
                .tower()
                .landmarks()
                .get(0)
                .name())
        .isEqualTo("a \"b\" \\ é # [x] = 'y'");
  }
}
