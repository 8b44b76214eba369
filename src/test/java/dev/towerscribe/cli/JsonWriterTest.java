package dev.towerscribe.cli;

import static org.assertj.core.api.Assertions.assertThat;
import static org.assertj.core.api.Assertions.assertThatThrownBy;

import com.fasterxml.jackson.databind.JsonNode;
import com.fasterxml.jackson.databind.ObjectMapper;
import net.jqwik.api.ForAll;
import net.jqwik.api.Property;
import org.junit.jupiter.api.Test;

class JsonWriterTest {
  @Test
  void writesInTheOrderOfTheCalls() {
    JsonWriter json = new JsonWriter();
    json.beginObject().key("a").value(1).key("b").beginArray().value(0.5).value(-0.0).endArray();
    json.key("c").beginArray().endArray().key("d").beginObject().endObject().endObject();
    assertThat(json).hasToString("{\"a\":1,\"b\":[0.5,0.0],\"c\":[],\"d\":{}}");
  }

  @Test
  void refusesWhatJsonCannotSay() {
    assertThatThrownBy(() -> new JsonWriter().value(Double.NaN))
        .isInstanceOf(IllegalArgumentException.class);
    assertThatThrownBy(() -> new JsonWriter().value(Double.NEGATIVE_INFINITY))
        .isInstanceOf(IllegalArgumentException.class);
  }

  @Property(seed = "20260401", tries = 300)
  void anyTextReadsBack(@ForAll String text) throws Exception {
    JsonNode back = new ObjectMapper().readTree(new JsonWriter().value(text).toString());
    assertThat(back.textValue()).isEqualTo(text);
  }

  @Property(seed = "20260402", tries = 300)
  void anyNumberReadsBackToTheLastBit(@ForAll double number) throws Exception {
    JsonNode back = new ObjectMapper().readTree(new JsonWriter().value(number).toString());
    assertThat(back.doubleValue()).isEqualTo(number == 0.0 ? 0.0 : number);
  }
}
