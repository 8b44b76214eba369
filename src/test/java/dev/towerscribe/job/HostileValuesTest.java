package dev.towerscribe.job;

import static org.assertj.core.api.Assertions.assertThat;

import com.fasterxml.jackson.core.JsonParser;
import com.fasterxml.jackson.databind.JsonNode;
import com.fasterxml.jackson.dataformat.toml.TomlFactory;
import dev.towerscribe.Tries;
import dev.towerscribe.finding.Fault;
import dev.towerscribe.finding.JobRejected;
import dev.towerscribe.model.Job;
import java.io.IOException;
import java.nio.charset.StandardCharsets;
import java.util.ArrayList;
import java.util.List;
import java.util.Map;
import java.util.Optional;
import java.util.StringJoiner;
import java.util.function.Consumer;
import org.junit.jupiter.api.BeforeAll;
import org.junit.jupiter.api.Tag;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.MethodSource;

/**
 * Each key of each starter file in turn holds what it should not, or is not there: the file is then
 * refused in one line, as one fault never makes a second false one.
 */
class HostileValuesTest {
  private static final List<String> HOSTILE =
      List.of(
          "\"what\"",
          "\"14 cm\"",
          "-1",
          "1e9",
          "0",
          "nan",
          "true",
          "[1.0]",
          "[[1.0]]",
          "\"\"",
          "[]");

  private static final String MISSING = "missing";

  private static final Consumer<String> NO_NOTES = note -> {};

  /** More than one line, each of them true: what is written and why. */
  private static final Map<String, String> SEVERAL =
      Map.of(
          "dunnock.toml /plate/file " + MISSING,
          "without its file the plate has no key at all, and each that it needs is named",
          "plates/three-bolt.toml /slot/index/0 -1",
          "both pins of the setting run into their neighbours, one on each side of the slot",
          "plates/three-bolt.toml /slot/index/0 0",
          "the same two pins",
          "wren.toml /plate/slot/index/0 -1",
          "the same two pins",
          "wren.toml /plate/slot/index/0 0",
          "the same two pins",
          "wren-survey.toml /sides/1 " + MISSING,
          "two readings reach over to the side that is no longer there",
          "wren-survey.toml /left/tower/landmark " + MISSING,
          "both names that spans use are unknown, each named once",
          "wren-survey.toml /left/tower/landmark []",
          "both names, each once",
          "wren-survey.toml /right/tower/landmark " + MISSING,
          "both names, each once",
          "wren-survey.toml /right/tower/landmark []",
          "both names, each once");

  private static Job wren;

  @BeforeAll
  static void readTheJob() throws JobRejected {
    wren = Jobs.read(Templates.text("wren.toml"));
  }

  private static void read(String file, String text) throws JobRejected {
    switch (file) {
      case "plates/three-bolt.toml" ->
          Jobs.READER.parse(
              Templates.text("dunnock.toml").replace("four-bolt", "three-bolt"),
              name -> Optional.of(text));
      case "wren-survey.toml" -> new SurveyReader(c -> true, NO_NOTES).parse(text);
      case "wren-drilled.toml" -> new ReadingsReader(c -> true, NO_NOTES, wren).parse(text);
      case "wren-visit.toml" ->
          new VisitReader(c -> true, NO_NOTES).parse(text.getBytes(StandardCharsets.UTF_8), wren);
      default -> Jobs.read(text);
    }
  }

  static List<String> files() {
    return List.of(
        "wren.toml",
        "siskin.toml",
        "dunnock.toml",
        "plates/three-bolt.toml",
        "wren-survey.toml",
        "wren-drilled.toml",
        "wren-visit.toml");
  }

  @Tag(Tries.TAG)
  @ParameterizedTest
  @MethodSource("files")
  void oneMistakeIsOneLine(String file) throws Exception {
    JsonNode tree = tree(file);
    read(file, text(tree, "", ""));
    List<String> paths = new ArrayList<>();
    paths("", tree, paths);
    List<String> values = new ArrayList<>(HOSTILE);
    values.add(MISSING);
    List<String> wrong = new ArrayList<>();
    List<String> several = new ArrayList<>();
    int refused = 0;
    // In each build some of the values at each key; in the long run all of them.
    int step = Tries.of(9, 1);
    for (int i = 0; i < paths.size(); i++) {
      for (int j = i % step; j < values.size(); j += step) {
        String where = file + " " + paths.get(i) + " " + values.get(j);
        List<Fault> faults = faults(file, text(tree, paths.get(i), values.get(j)));
        refused += Math.min(1, faults.size());
        if (faults.size() > 1 && SEVERAL.containsKey(where)) {
          several.add(where);
        } else if (faults.size() > 1) {
          wrong.add(where + ": " + String.join(" | ", faults.stream().map(Fault::line).toList()));
        }
      }
    }
    List<String> exceptions =
        SEVERAL.keySet().stream().filter(k -> k.startsWith(file + " ")).toList();
    assertThat(wrong).isEmpty();
    assertThat(exceptions).containsAll(several);
    assertThat(step > 1 || several.containsAll(exceptions)).as("all still needed").isTrue();
    assertThat(refused).as("values that were refused").isGreaterThan(5 * paths.size() / step);
  }

  /** A blank anywhere is named, and no second line comes of it. */
  @ParameterizedTest
  @MethodSource("files")
  void oneBlankIsOneLine(String file) throws Exception {
    JsonNode tree = tree(file);
    List<String> paths = new ArrayList<>();
    paths("", tree, paths);
    List<String> wrong = new ArrayList<>();
    for (String path : paths) {
      List<String> lines =
          faults(file, text(tree, path, "\"___\"")).stream().map(Fault::line).toList();
      if (lines.size() != 1 || !lines.get(0).contains("still blank")) {
        wrong.add(path + ": " + String.join(" | ", lines));
      }
    }
    assertThat(wrong).isEmpty();
    assertThat(paths).hasSizeGreaterThan(20);
  }

  private static List<Fault> faults(String file, String text) {
    try {
      read(file, text);
      return List.of();
    } catch (JobRejected e) {
      return e.faults();
    }
  }

  private static JsonNode tree(String file) throws IOException {
    try (JsonParser parser = new TomlFactory().createParser(Templates.text(file))) {
      return TomlTree.of(parser);
    }
  }

  /** Every key, and the first two items of every list: the rest are like them. */
  private static void paths(String at, JsonNode node, List<String> paths) {
    if (!at.isEmpty()) {
      paths.add(at);
    }
    node.properties().forEach(e -> paths(at + "/" + e.getKey(), e.getValue(), paths));
    for (int i = 0; i < (node.isArray() ? Math.min(2, node.size()) : 0); i++) {
      paths(at + "/" + i, node.get(i), paths);
    }
  }

  private static String text(JsonNode top, String path, String value) {
    StringBuilder out = new StringBuilder();
    top.properties()
        .forEach(
            e ->
                written("/" + e.getKey(), e.getValue(), path, value)
                    .ifPresent(v -> out.append(e.getKey()).append(" = ").append(v).append('\n')));
    return out.toString();
  }

  private static Optional<String> written(String at, JsonNode node, String path, String value) {
    if (at.equals(path)) {
      return value.equals(MISSING) ? Optional.empty() : Optional.of(value);
    }
    if (node.isObject()) {
      StringJoiner all = new StringJoiner(", ", "{ ", " }");
      node.properties()
          .forEach(
              e ->
                  written(at + "/" + e.getKey(), e.getValue(), path, value)
                      .ifPresent(v -> all.add(e.getKey() + " = " + v)));
      return Optional.of(all.toString());
    }
    if (node.isArray()) {
      StringJoiner all = new StringJoiner(", ", "[", "]");
      for (int i = 0; i < node.size(); i++) {
        written(at + "/" + i, node.get(i), path, value).ifPresent(all::add);
      }
      return Optional.of(all.toString());
    }
    return Optional.of(node.isTextual() ? "\"" + node.textValue() + "\"" : node.toString());
  }
}
