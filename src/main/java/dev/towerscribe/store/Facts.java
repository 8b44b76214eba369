package dev.towerscribe.store;

import dev.towerscribe.geometry.Contour;
import dev.towerscribe.geometry.Edge;
import dev.towerscribe.geometry.Recess;
import dev.towerscribe.geometry.Vec2;
import dev.towerscribe.geometry.Vec3;
import dev.towerscribe.model.Stated;
import dev.towerscribe.quantity.Angle;
import dev.towerscribe.quantity.Numbers;
import java.time.LocalDate;
import java.util.List;
import java.util.Optional;

/**
 * Facts as lines of {@code key=value}, in the order in which they were put: the text that a pack
 * mark is the hash of. The same facts give the same text on every machine and with every release of
 * the platform; numbers stand in full, millimetres and radians.
 */
final class Facts {
  private final StringBuilder text = new StringBuilder();

  /**
   * Adds a fact.
   *
   * @param key what it is, dotted: {@code left.mount.rotation}
   * @param value a text, number, truth, date, one of an enumeration, angle, point, contour or
   *     recess; an {@link Optional} of these adds nothing when empty, a {@link Stated} one says
   *     whether it was assumed, and a list adds a line for each item
   * @return this
   * @throws IllegalArgumentException for anything else, whose text might vary
   */
  Facts put(String key, Object value) {
    if (value instanceof Optional<?> perhaps) {
      perhaps.ifPresent(v -> put(key, v));
    } else if (value instanceof Stated<?> stated) {
      put(key, stated.value());
      put(key + ".assumed", stated.assumed());
    } else if (value instanceof List<?> items) {
      put(key + ".count", items.size());
      for (int i = 0; i < items.size(); i++) {
        put(key + "." + i, items.get(i));
      }
    } else {
      text.append(key).append('=').append(written(value)).append('\n');
    }
    return this;
  }

  /**
   * Adds several facts of one thing.
   *
   * @param at key of the thing, which each of theirs follows after a point
   * @param keys their keys, a blank between them
   * @param values their values in the same order, as many
   * @return this
   */
  Facts all(String at, String keys, Object... values) {
    List<String> each = List.of(keys.split(" "));
    if (each.size() != values.length) {
      throw new IllegalArgumentException("%s values for %s".formatted(values.length, keys));
    }
    for (int i = 0; i < values.length; i++) {
      put(at + "." + each.get(i), values[i]);
    }
    return this;
  }

  private static String written(Object value) {
    if (value instanceof Double number) {
      return Numbers.exact(number);
    } else if (value instanceof String words) {
      // Without line ends of its own, so that no text can look like another fact.
      return words.replace("\\", "\\\\").replace("\n", "\\n").replace("\r", "\\r");
    } else if (value instanceof Boolean || value instanceof Integer || value instanceof LocalDate) {
      return value.toString();
    } else if (value instanceof Enum<?> one) {
      return one.name();
    } else if (value instanceof Angle angle) {
      return Numbers.exact(angle.radians());
    } else if (value instanceof Vec2 p) {
      return numbers(p.x(), p.y());
    } else if (value instanceof Vec3 p) {
      return numbers(p.x(), p.y(), p.z());
    } else if (value instanceof Contour contour) {
      return String.join("; ", contour.edges().stream().map(Facts::written).toList());
    } else if (value instanceof Edge.Segment s) {
      return "line " + numbers(s.start().x(), s.start().y(), s.end().x(), s.end().y());
    } else if (value instanceof Edge.Arc a) {
      return "arc "
          + numbers(a.centre().x(), a.centre().y(), a.radius(), a.startAngle(), a.sweep());
    } else if (value instanceof Recess.Counterbore c) {
      return "counterbore " + numbers(c.diameterMm(), c.depthMm()) + " " + c.fromTop();
    } else if (value instanceof Recess.Countersink c) {
      return "countersink " + numbers(c.diameterMm(), c.included().radians()) + " " + c.fromTop();
    }
    throw new IllegalArgumentException("no fact: " + value.getClass());
  }

  private static String numbers(double... values) {
    StringBuilder all = new StringBuilder();
    for (double value : values) {
      all.append(all.length() == 0 ? "" : " ").append(Numbers.exact(value));
    }
    return all.toString();
  }

  /** The lines, each with its end. */
  @Override
  public String toString() {
    return text.toString();
  }
}
