package dev.towerscribe.job;

import static org.assertj.core.api.Assertions.assertThat;

import dev.towerscribe.finding.JobRejected;
import java.util.List;
import java.util.Optional;
import java.util.Random;
import java.util.regex.Matcher;
import java.util.regex.Pattern;
import net.jqwik.api.ForAll;
import net.jqwik.api.Property;
import net.jqwik.api.Tag;

/** Whatever happens to a job's text, the answer is a job or faults, never anything else. */
class JobFuzzProperties {
  private static final List<String> TEXTS =
      List.of(
          Templates.text("wren.toml"),
          Templates.text("siskin.toml"),
          Templates.text("dunnock.toml"));

  private static final Pattern VALUE =
      Pattern.compile("(?<== )[^\\n#]+|-?\\d+\\.\\d+|\"[^\"\\n]*\"");

  private static final List<String> ODD_VALUES =
      List.of(
          "nan",
          "inf",
          "-inf",
          "0",
          "-0.0",
          "-1",
          "1e308",
          "-1e308",
          "1e-320",
          "1e999999999",
          "[]",
          "{}",
          "[[]]",
          "\"\"",
          "\"\\u0000\"",
          "true",
          "2026-11-25",
          "10:00:00",
          "[1, 2]",
          "[1, 2, 3]",
          "[nan, 1]",
          "{ diameter = 50 }",
          "{ points = [[1, 2], [1, 2], [1, 2]] }",
          "[[1, 2], [3, 4]]",
          "{ radii = [30, 30, 30, 30, 30, 30] }",
          "'x'",
          "99999999999999999999999999",
          "0x10",
          "3",
          "\"M10\"",
          "\"in\"",
          "[{}, {}]",
          "[\"left\"]",
          "{ file = \"x\" }",
          "0.0000001",
          "\uD83D\uDE00");

  @Property(seed = "20261125", tries = 600)
  void survivesAnyDamage(@ForAll long seed) {
    answersWhateverIsDamaged(seed);
  }

  @Tag("simulation")
  @Property(seed = "20261128", tries = 3000)
  void survivesMuchMoreDamage(@ForAll long seed) {
    answersWhateverIsDamaged(seed);
  }

  private static void answersWhateverIsDamaged(long seed) {
    Random random = new Random(seed);
    String text = TEXTS.get(random.nextInt(TEXTS.size()));
    int times = 1 + random.nextInt(4);
    for (int i = 0; i < times; i++) {
      text = damaged(text, random);
    }
    answers(text);
  }

  @Property(seed = "20261126", tries = 500)
  void survivesAnyText(@ForAll String text) {
    answers(text);
    answers("format = 1\ntitle = \"" + text + "\"\n");
  }

  /** While the unit is uncertain lengths are judged least, so here the model is least guarded. */
  @Property(seed = "20261127", tries = 300)
  void survivesDamageUnderAnUnknownUnit(@ForAll long seed) {
    answersUnderAnUnknownUnit(seed);
  }

  @Tag("simulation")
  @Property(seed = "20261129", tries = 2000)
  void survivesMuchMoreDamageUnderAnUnknownUnit(@ForAll long seed) {
    answersUnderAnUnknownUnit(seed);
  }

  private static void answersUnderAnUnknownUnit(long seed) {
    Random random = new Random(seed);
    String text = TEXTS.get(random.nextInt(2)).replaceFirst("units  = \"..\"", "units = \"m\"");
    for (int i = 0; i < 3; i++) {
      text = withOddValue(text, random.nextInt(text.length()), random);
    }
    answers(text);
  }

  private static void answers(String text) {
    try {
      assertThat(Jobs.READER.parse(text, name -> plate(name, text)).sides()).isNotEmpty();
    } catch (JobRejected e) {
      assertThat(e.faults()).isNotEmpty().doesNotHaveDuplicates();
      assertThat(e.faults())
          .allSatisfy(fault -> assertThat(fault.line()).doesNotContain("\n").isNotBlank());
    }
  }

  /** A plate file now and then turns out to be the job itself. */
  private static Optional<String> plate(String name, String text) {
    return text.length() % 3 == 0 ? Optional.of(text) : Jobs.plateFile(name);
  }

  private static String damaged(String text, Random random) {
    if (text.isEmpty()) {
      return "x";
    }
    int at = random.nextInt(text.length());
    return switch (random.nextInt(7)) {
      case 0 -> text.substring(0, at);
      case 1 -> text.substring(at);
      case 2 -> text.substring(0, at) + anyCharacter(random) + text.substring(at + 1);
      case 3 -> withoutLine(text, at);
      case 4 -> {
        int end = Math.min(text.length(), at + random.nextInt(200));
        yield text.substring(0, end) + text.substring(at, end) + text.substring(end);
      }
      default -> withOddValue(text, at, random);
    };
  }

  private static String anyCharacter(Random random) {
    String likely = "{}[]=,.\"'#\n-+_ 0123456789abcdefin";
    return random.nextBoolean()
        ? String.valueOf(likely.charAt(random.nextInt(likely.length())))
        : String.valueOf((char) random.nextInt(0x10000));
  }

  private static String withoutLine(String text, int at) {
    int from = text.lastIndexOf('\n', at);
    int to = text.indexOf('\n', at + 1);
    return text.substring(0, Math.max(0, from)) + (to < 0 ? "" : text.substring(to));
  }

  private static String withOddValue(String text, int at, Random random) {
    Matcher matcher = VALUE.matcher(text);
    if (!matcher.find(at)) {
      return text;
    }
    String odd = ODD_VALUES.get(random.nextInt(ODD_VALUES.size()));
    return text.substring(0, matcher.start()) + odd + text.substring(matcher.end());
  }
}
