package dev.towerscribe.report.json;

import static org.assertj.core.api.Assertions.assertThat;
import static org.assertj.core.api.Assertions.assertThatThrownBy;

import com.fasterxml.jackson.databind.ObjectMapper;
import java.util.List;
import net.jqwik.api.ForAll;
import net.jqwik.api.Property;
import org.junit.jupiter.api.Test;

class JsonTest {
  @Test
  void writesInTheOrderOfTheCalls() {
    assertThat(
            Json.of(
                json ->
                    json.put("a", 1)
                        .numbers("b", 0.5, -0.0)
                        .strings("c", List.of())
                        .object("d", () -> {})
                        .objects("e", List.of("x", "y"), word -> json.put("is", word))
                        .put("f", true)))
        .isEqualTo(
            "{\"a\":1,\"b\":[0.5,0.0],\"c\":[],\"d\":{},\"e\":[{\"is\":\"x\"},{\"is\":\"y\"}],"
                + "\"f\":true}\n");
  }

  @Test
  void refusesWhatJsonCannotSay() {
    for (double none : new double[] {Double.NaN, Double.NEGATIVE_INFINITY}) {
      assertThatThrownBy(() -> Json.of(json -> json.put("a", none)))
          .isInstanceOf(IllegalArgumentException.class);
      assertThatThrownBy(() -> Json.of(json -> json.numbers("a", none)))
          .isInstanceOf(IllegalArgumentException.class);
    }
  }

  @Property(seed = "20260401", tries = 300)
  void anyTextReadsBack(@ForAll String text) throws Exception {
    String json = Json.of(j -> j.put("text", text));
    assertThat(new ObjectMapper().readTree(json).get("text").textValue()).isEqualTo(text);
    assertThat(json.strip()).doesNotContain("\n");
  }

  @Property(seed = "20260402", tries = 300)
  void anyNumberReadsBackToTheLastBit(@ForAll double number) throws Exception {
    String json = Json.of(j -> j.put("number", number));
    assertThat(new ObjectMapper().readTree(json).get("number").doubleValue())
        .isEqualTo(number == 0.0 ? 0.0 : number);
  }
}
