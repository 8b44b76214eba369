package dev.towerscribe.report.json;

import com.fasterxml.jackson.core.JsonFactory;
import com.fasterxml.jackson.core.JsonGenerator;
import dev.towerscribe.finding.Finding;
import dev.towerscribe.finding.Spot;
import dev.towerscribe.geometry.Vec2;
import dev.towerscribe.model.Side;
import dev.towerscribe.quantity.Angle;
import java.io.IOException;
import java.io.StringWriter;
import java.io.UncheckedIOException;
import java.util.List;
import java.util.Map;
import java.util.function.Consumer;

/**
 * One JSON object, its members in the order of the calls, without spaces. Numbers carry full double
 * precision and are the same in every locale; negative zero is written as zero.
 */
final class Json {
  private static final JsonFactory FACTORY = new JsonFactory();

  private static final int FORMAT = 1;

  private final JsonGenerator out;

  private Json(JsonGenerator out) {
    this.out = out;
  }

  private interface Step {
    void run() throws IOException;
  }

  /**
   * Writes an object.
   *
   * @param members writes its members
   * @return one line with its line end
   */
  static String of(Consumer<Json> members) {
    StringWriter text = new StringWriter();
    try (JsonGenerator out = FACTORY.createGenerator(text)) {
      out.writeStartObject();
      members.accept(new Json(out));
      out.writeEndObject();
    } catch (IOException e) {
      throw new UncheckedIOException(e);
    }
    return text.append('\n').toString();
  }

  /** The generator writes to memory, so what it may throw never comes. */
  private Json write(Step step) {
    try {
      step.run();
    } catch (IOException e) {
      throw new UncheckedIOException(e);
    }
    return this;
  }

  /** The members that most results begin with: format, title and unit. */
  Json head(String title) {
    return format().put("title", title).put("units", "mm");
  }

  /** The number of the format, raised when a key changes its meaning or goes. */
  Json format() {
    return put("format", FORMAT);
  }

  Json put(String key, String value) {
    return write(() -> out.writeStringField(key, value));
  }

  Json put(String key, boolean value) {
    return write(() -> out.writeBooleanField(key, value));
  }

  Json put(String key, int value) {
    return write(() -> out.writeNumberField(key, value));
  }

  /**
   * A number.
   *
   * @throws IllegalArgumentException if it is not finite, which JSON cannot say
   */
  Json put(String key, double value) {
    return write(() -> out.writeNumberField(key, finite(value)));
  }

  /** An angle, in degrees. */
  Json put(String key, Angle angle) {
    return put(key, angle.degrees());
  }

  private static double finite(double value) {
    if (!Double.isFinite(value)) {
      throw new IllegalArgumentException("not a JSON number: " + value);
    }
    return value == 0.0 ? 0.0 : value;
  }

  /** An object within. */
  Json object(String key, Runnable members) {
    write(() -> out.writeObjectFieldStart(key));
    members.run();
    return write(out::writeEndObject);
  }

  /** An array of objects, one for each item. */
  <T> Json objects(String key, Iterable<T> items, Consumer<T> members) {
    return array(
        key,
        () -> {
          for (T item : items) {
            out.writeStartObject();
            members.accept(item);
            out.writeEndObject();
          }
        });
  }

  /** The object {@code sides}, with an object for each side under its word. */
  <T> Json sides(Map<Side, T> sides, Consumer<T> members) {
    return object(
        "sides",
        () -> sides.forEach((side, its) -> object(side.word(), () -> members.accept(its))));
  }

  Json strings(String key, Iterable<String> values) {
    return array(
        key,
        () -> {
          for (String value : values) {
            out.writeString(value);
          }
        });
  }

  Json numbers(String key, double... values) {
    return array(key, () -> numbers(values));
  }

  /** An array of points, each an array of its two coordinates. */
  Json points(String key, List<Vec2> points) {
    return array(key, () -> points(points));
  }

  /** An array of arrays of points. */
  Json pointLists(String key, List<List<Vec2>> lists) {
    return array(
        key,
        () -> {
          for (List<Vec2> points : lists) {
            out.writeStartArray();
            points(points);
            out.writeEndArray();
          }
        });
  }

  /** The array {@code findings}. */
  Json findings(Iterable<Finding> findings) {
    return objects(
        "findings",
        findings,
        f -> {
          put("id", f.id()).put("severity", f.severity().word());
          if (f.isStop()) {
            put("acceptable", f.acceptable());
          }
          put("where", f.where())
              .put("figure", f.figure())
              .put("limit", f.limit())
              .put("unit", f.unit())
              .put("source", f.source())
              .put("say", f.say());
          f.spot().ifPresent(this::at);
        });
  }

  /**
   * Where a finding is: points of the plan, [fore, in]; {@code move} only if a way out was found.
   */
  private void at(Spot spot) {
    object(
        "at",
        () -> {
          numbers("from", spot.from().x(), spot.from().y());
          numbers("to", spot.to().x(), spot.to().y());
          put("moves", spot.mover().word());
          spot.move().ifPresent(move -> numbers("move", move.x(), move.y()));
        });
  }

  private Json array(String key, Step items) {
    return write(
        () -> {
          out.writeArrayFieldStart(key);
          items.run();
          out.writeEndArray();
        });
  }

  private void points(List<Vec2> points) throws IOException {
    for (Vec2 p : points) {
      out.writeStartArray();
      numbers(p.x(), p.y());
      out.writeEndArray();
    }
  }

  private void numbers(double... values) throws IOException {
    for (double value : values) {
      out.writeNumber(finite(value));
    }
  }
}
