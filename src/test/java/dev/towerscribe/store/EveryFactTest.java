package dev.towerscribe.store;

import static org.assertj.core.api.Assertions.assertThat;

import dev.towerscribe.drilled.Readings;
import dev.towerscribe.geometry.Contour;
import dev.towerscribe.geometry.Edge;
import dev.towerscribe.geometry.Frame2;
import dev.towerscribe.geometry.Recess;
import dev.towerscribe.geometry.Vec2;
import dev.towerscribe.geometry.Vec3;
import dev.towerscribe.job.JobReader;
import dev.towerscribe.job.ReadingsReader;
import dev.towerscribe.job.Templates;
import dev.towerscribe.model.Job;
import dev.towerscribe.quantity.Angle;
import java.lang.reflect.Constructor;
import java.lang.reflect.InvocationTargetException;
import java.lang.reflect.ParameterizedType;
import java.lang.reflect.RecordComponent;
import java.lang.reflect.Type;
import java.nio.file.Path;
import java.time.LocalDate;
import java.util.ArrayList;
import java.util.Arrays;
import java.util.LinkedHashMap;
import java.util.List;
import java.util.Map;
import java.util.Optional;
import java.util.Set;
import java.util.TreeSet;
import java.util.function.Function;
import java.util.stream.Stream;
import org.junit.jupiter.api.Test;

/**
 * Every component of every record that a job is made of counts in its mark: each is changed, one
 * after the other, in jobs that between them say everything there is to say.
 */
class EveryFactTest {
  /** A part of a tree of records: its value, and the whole tree with another in its place. */
  private record Place(List<String> components, Object value, Function<Object, Object> put) {}

  private static Job job(String text) throws Exception {
    return new JobReader(c -> true).parse(text, plate -> Optional.of(Templates.text(plate)));
  }

  @Test
  void everyComponentOfAJobCounts() throws Exception {
    Set<String> left = components(Job.class);
    assertThat(left).hasSizeGreaterThan(150);
    for (Job job :
        List.of(
            everything(),
            job(Templates.text("siskin.toml")),
            job(Templates.text("dunnock.toml")))) {
      changeAll(job, j -> JobFacts.of((Job) j).toString(), left);
    }
    assertThat(left).as("components that no change reached").isEmpty();
  }

  @Test
  void everyComponentOfReadingsCounts() throws Exception {
    Set<String> left = components(Readings.class);
    Readings readings =
        new ReadingsReader(c -> true, note -> {}, job(Templates.text("wren.toml")))
            .read(Path.of("templates", "wren-drilled.toml"));
    changeAll(readings, r -> ReadingsFacts.of("ABCDEF", (Readings) r).toString(), left);
    assertThat(left).as("components that no change reached").isEmpty();
    assertThat(ReadingsFacts.of("ABCDEG", readings))
        .doesNotHaveToString(ReadingsFacts.of("ABCDEF", readings).toString());
  }

  /** The demo, with what it leaves out. */
  private static Job everything() throws Exception {
    return job(
        Templates.text("wren.toml")
            .replace(
                "owner = ", "created_by = \"a\"\napproved_by = \"b\"\nrevision = \"1\"\nowner = ")
            .replace(
                "bearing_bore = ",
                "slot_width = 30.0\n"
                    + "slider = { length = 70.0, width = 60.0, thickness = 8.0, corner = 2.0 }\n"
                    + "bearing_bore = ")
            .replaceFirst(
                "pivot_height",
                "lip = { turned = \"up\", height = 3.0, radius = 2.0, flat = { diameter = 80.0 }"
                    + " }\n"
                    + "second_skin = { sheet = 1.0, apart = 4.0 }\n"
                    + "pivot_height")
            .replaceFirst("flats = 13.0", "flats = 13.0, hole = 9.5"));
  }

  /** Changes whatever can be changed; takes what a changed text was seen for out of the set. */
  private static void changeAll(Object root, Function<Object, String> facts, Set<String> left) {
    String before = facts.apply(root);
    for (Place place : places(root, List.of(), value -> value)) {
      int made = 0;
      for (Object other : others(place.value())) {
        Object changed;
        try {
          changed = place.put().apply(other);
        } catch (IllegalArgumentException e) {
          // No valid job; another change will do.
          continue;
        }
        made++;
        assertThat(facts.apply(changed))
            .as("%s: %s instead of %s", place.components(), other, place.value())
            .isNotEqualTo(before);
      }
      if (made > 0) {
        place.components().forEach(left::remove);
      }
    }
  }

  private static List<Place> places(
      Object value, List<String> within, Function<Object, Object> put) {
    List<Place> places = new ArrayList<>();
    places.add(new Place(within, value, put));
    if (value instanceof Optional<?> perhaps && perhaps.isPresent()) {
      places.addAll(places(perhaps.get(), within, other -> put.apply(Optional.of(other))));
    } else if (value instanceof List<?> list) {
      for (int i = 0; i < list.size(); i++) {
        int at = i;
        places.addAll(
            places(
                list.get(i),
                within,
                other -> {
                  List<Object> changed = new ArrayList<>(list);
                  changed.set(at, other);
                  return put.apply(changed);
                }));
      }
    } else if (value instanceof Map<?, ?> map) {
      for (Object key : map.keySet()) {
        places.addAll(
            places(
                map.get(key),
                within,
                other -> {
                  Map<Object, Object> changed = new LinkedHashMap<>(map);
                  changed.put(key, other);
                  return put.apply(changed);
                }));
      }
    } else if (value instanceof Record record && isTree(record.getClass())) {
      RecordComponent[] all = record.getClass().getRecordComponents();
      Object[] values = values(record, all);
      for (int i = 0; i < all.length; i++) {
        int at = i;
        List<String> names = new ArrayList<>(within);
        names.add(record.getClass().getSimpleName() + "." + all[i].getName());
        places.addAll(
            places(
                values[i],
                names,
                other -> {
                  Object[] changed = values.clone();
                  changed[at] = other;
                  return put.apply(made(record.getClass(), all, changed));
                }));
      }
    }
    return places;
  }

  /** Points and angles are figures, recesses and edges are told by what they are. */
  private static boolean isTree(Class<?> type) {
    return type.isRecord()
        && !Set.of(Vec2.class, Vec3.class, Angle.class).contains(type)
        && !Recess.class.isAssignableFrom(type)
        && !Edge.class.isAssignableFrom(type);
  }

  private static Object[] values(Record record, RecordComponent[] all) {
    return Arrays.stream(all)
        .map(
            c -> {
              try {
                return c.getAccessor().invoke(record);
              } catch (IllegalAccessException | InvocationTargetException e) {
                throw new AssertionError(e);
              }
            })
        .toArray();
  }

  private static Object made(Class<?> type, RecordComponent[] all, Object[] values) {
    try {
      Constructor<?> constructor =
          type.getDeclaredConstructor(
              Arrays.stream(all).map(RecordComponent::getType).toArray(Class[]::new));
      return constructor.newInstance(values);
    } catch (InvocationTargetException e) {
      throw new IllegalArgumentException(e.getCause());
    } catch (ReflectiveOperationException e) {
      throw new AssertionError(e);
    }
  }

  /** Values of the same kind that are not this one; none for what is changed by its parts. */
  private static List<Object> others(Object value) {
    if (value instanceof Double number) {
      return List.of(number + 0.001, number - 0.001);
    } else if (value instanceof Boolean truth) {
      return List.of(!truth);
    } else if (value instanceof String words) {
      return List.of(words + "x");
    } else if (value instanceof LocalDate date) {
      return List.of(date.plusDays(1));
    } else if (value instanceof Enum<?> one) {
      return Stream.of(one.getDeclaringClass().getEnumConstants())
          .filter(o -> o != one)
          .map(o -> (Object) o)
          .toList();
    } else if (value instanceof Angle angle) {
      return List.of(new Angle(angle.radians() + 1e-6), new Angle(angle.radians() - 1e-6));
    } else if (value instanceof Vec2 p) {
      return List.of(new Vec2(p.x() + 0.001, p.y()), new Vec2(p.x(), p.y() + 0.001));
    } else if (value instanceof Vec3 p) {
      return List.of(
          new Vec3(p.x() + 0.001, p.y(), p.z()),
          new Vec3(p.x(), p.y() + 0.001, p.z()),
          new Vec3(p.x(), p.y(), p.z() + 0.001));
    } else if (value instanceof Contour contour) {
      Frame2 aside = new Frame2(new Vec2(0.001, 0), new Vec2(1, 0), new Vec2(0, 1));
      return List.of(contour.mapped(aside), contour.reversed());
    } else if (value instanceof Recess.Counterbore c) {
      return List.of(
          new Recess.Counterbore(c.diameterMm() + 0.001, c.depthMm(), c.fromTop()),
          new Recess.Counterbore(c.diameterMm(), c.depthMm() + 0.001, c.fromTop()),
          new Recess.Counterbore(c.diameterMm(), c.depthMm(), !c.fromTop()),
          new Recess.Countersink(c.diameterMm(), new Angle(1), c.fromTop()));
    } else if (value instanceof Optional<?> perhaps && perhaps.isPresent()) {
      return List.of(Optional.empty());
    } else if (value instanceof List<?> list && !list.isEmpty()) {
      return List.of(list.subList(0, list.size() - 1));
    }
    return List.of();
  }

  /** Every component of the records that a type is made of, by the types that they declare. */
  private static Set<String> components(Class<?> root) {
    Set<String> names = new TreeSet<>();
    collect(root, names);
    return names;
  }

  private static void collect(Type type, Set<String> names) {
    if (type instanceof ParameterizedType generic) {
      collect(generic.getRawType(), names);
      Stream.of(generic.getActualTypeArguments()).forEach(t -> collect(t, names));
    } else if (type instanceof Class<?> plain && isTree(plain)) {
      for (RecordComponent c : plain.getRecordComponents()) {
        if (names.add(plain.getSimpleName() + "." + c.getName())) {
          collect(c.getGenericType(), names);
        }
      }
    }
  }
}
