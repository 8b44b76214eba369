package dev.towerscribe.report.json;

import static java.nio.charset.StandardCharsets.UTF_8;
import static org.assertj.core.api.Assertions.assertThat;
import static org.assertj.core.api.Assertions.within;

import com.fasterxml.jackson.databind.JsonNode;
import com.fasterxml.jackson.databind.ObjectMapper;
import dev.towerscribe.cli.Main;
import dev.towerscribe.job.JobReader;
import dev.towerscribe.job.Templates;
import dev.towerscribe.model.Job;
import dev.towerscribe.model.Mount;
import dev.towerscribe.placement.Offer;
import dev.towerscribe.quantity.Angle;
import java.io.ByteArrayOutputStream;
import java.io.PrintStream;
import java.nio.file.Files;
import java.nio.file.Path;
import java.util.List;
import java.util.Map;
import java.util.Optional;
import java.util.Set;
import java.util.TreeSet;
import org.junit.jupiter.api.Test;

/**
 * Other programs read these keys. Frozen samples are of the writer of our own that stood before the
 * library's: every key that it gave for the templates, and two subjects in full.
 */
class JsonSamplesTest {
  private static final Path SAMPLES = Path.of("src", "test", "resources", "json");

  /** What decides a double's last digits differs between processors. */
  private static final double RELATIVE = 1e-9;

  private static final String READINGS = "101.3,99.4,141.4";

  /** Commands whose data have between them every key of a subject. */
  private static final Map<String, List<String>> RUNS =
      Map.of(
          "layout",
          List.of(
              "check templates/wren.toml",
              "check templates/siskin.toml",
              "check templates/dunnock.toml"),
          "alignment",
          List.of("align templates/wren.toml", "align templates/siskin.toml"),
          "survey",
          List.of("survey templates/wren-survey.toml"),
          "drilled",
          List.of("drilled templates/wren.toml templates/wren-drilled.toml"),
          "record",
          List.of("record output-samples/wren-car.toml"),
          "print",
          List.of(
              "ruler --measured " + READINGS,
              "ruler --measured 100,100",
              "ruler --measured 120,100,150",
              "ruler --measured 4.01,3.99,5.66 --job templates/siskin.toml"));

  private static JsonNode data(String command) throws Exception {
    ByteArrayOutputStream out = new ByteArrayOutputStream();
    PrintStream nowhere = new PrintStream(new ByteArrayOutputStream(), false, UTF_8);
    String[] words = (command + " --json").split(" ");
    Main.run(words, new PrintStream(out, false, UTF_8), nowhere, Path.of(""));
    return new ObjectMapper().readTree(out.toString(UTF_8));
  }

  @Test
  void theKeysAreThoseThatTheyWere() throws Exception {
    Set<String> keys = new TreeSet<>();
    for (Map.Entry<String, List<String>> subject : RUNS.entrySet()) {
      for (String command : subject.getValue()) {
        collect(data(command), subject.getKey(), keys);
      }
    }
    assertThat(keys).containsExactlyElementsOf(Files.readAllLines(SAMPLES.resolve("keys.txt")));
  }

  /** Paths with the kind of what stands there; sides alike, arrays without their places. */
  private static void collect(JsonNode node, String path, Set<String> keys) {
    if (node.isObject()) {
      for (Map.Entry<String, JsonNode> member : node.properties()) {
        String key = member.getKey();
        boolean side = key.equals("left") || key.equals("right");
        collect(member.getValue(), path + "." + (side ? "SIDE" : key), keys);
      }
    } else if (node.isArray()) {
      node.forEach(item -> collect(item, path + "[]", keys));
    } else {
      keys.add(path + (node.isTextual() ? " text" : node.isNumber() ? " number" : " truth"));
    }
  }

  @Test
  void theValuesAreThoseThatTheyWere() throws Exception {
    same(sample("alignment-wren"), data("align templates/wren.toml"), "alignment");
    same(sample("print"), data("ruler --measured " + READINGS), "print");
  }

  private static JsonNode sample(String name) throws Exception {
    return new ObjectMapper().readTree(SAMPLES.resolve(name + ".json").toFile());
  }

  /** Words for people may become better ones; everything else stays. */
  private static void same(JsonNode was, JsonNode is, String path) {
    assertThat(is.getNodeType()).as(path).isEqualTo(was.getNodeType());
    assertThat(is.size()).as(path).isEqualTo(was.size());
    if (was.isObject()) {
      assertThat(is.fieldNames()).toIterable().containsExactlyElementsOf(was::fieldNames);
      was.fieldNames().forEachRemaining(k -> same(was.get(k), is.get(k), path + "." + k));
    } else if (was.isArray()) {
      for (int i = 0; i < was.size(); i++) {
        same(was.get(i), is.get(i), path + "[" + i + "]");
      }
    } else if (was.isNumber()) {
      double number = was.doubleValue();
      assertThat(is.doubleValue())
          .as(path)
          .isCloseTo(number, within(RELATIVE * Math.max(1e-3, Math.abs(number))));
    } else if (!path.endsWith("say") && !path.endsWith("source") && !path.contains("notes")) {
      assertThat(is).as(path).isEqualTo(was);
    }
  }

  @Test
  void anOfferSaysItsMountAndItsFigures() throws Exception {
    Job job =
        new JobReader(c -> true)
            .parse(Templates.text("wren.toml"), plate -> Optional.of(Templates.text(plate)));
    Offer offer =
        new Offer(
            "best",
            new Mount(Angle.ZERO, 1.5, -2, 4),
            Angle.ofDegrees(0),
            Angle.ZERO,
            Optional.of(Angle.ZERO),
            120.25,
            0.5,
            "the wall");
    // independent: RFC 8259 by hand, in the order of the manual
    String head = "{\"format\":1,\"title\":\"" + job.title() + "\",\"units\":\"mm\",";
    assertThat(PlacementJson.of(job, List.of(offer)))
        .isEqualTo(
            head
                + "\"figures\":\"linkage\",\"offers\":[{\"name\":\"best\",\"rotation\":0.0,"
                + "\"rearward\":1.5,\"inboard\":-2.0,\"setting\":4.0,\"caster\":0.0,\"camber\":0.0,"
                + "\"bump_steer\":0.0,\"metal_removed\":120.25,\"edge_slack\":0.5,"
                + "\"held_back_by\":\"the wall\"}]}\n");
    assertThat(PlacementJson.of(job, List.of()))
        .isEqualTo(head + "\"figures\":\"linkage\",\"offers\":[]}\n");
  }
}
