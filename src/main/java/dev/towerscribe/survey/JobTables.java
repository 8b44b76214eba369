package dev.towerscribe.survey;

import dev.towerscribe.finding.Finding;
import dev.towerscribe.geometry.Vec2;
import dev.towerscribe.geometry.Vec3;
import dev.towerscribe.model.Side;
import dev.towerscribe.model.StrutPoint;
import dev.towerscribe.quantity.Lengths;
import dev.towerscribe.quantity.Worded;
import java.util.EnumMap;
import java.util.LinkedHashMap;
import java.util.List;
import java.util.Map;
import java.util.Optional;
import java.util.function.DoubleFunction;
import java.util.stream.Collectors;
import java.util.stream.Stream;

/**
 * A survey's result as tables of a job file, to be pasted in place of its own: those of the first
 * side for both, and for the other side what differs.
 */
public final class JobTables {
  private final SurveyResult result;
  private final Lengths lengths;
  private final StringBuilder text = new StringBuilder();

  private JobTables(SurveyResult result) {
    this.result = result;
    this.lengths = Lengths.in(result.survey().units());
  }

  /**
   * Writes the tables.
   *
   * @param result a survey's result; what its readings do not fix is left out
   * @param accepted stop findings that were accepted, told at the top
   * @return TOML, in the survey's unit
   */
  public static String of(SurveyResult result, List<Finding> accepted) {
    JobTables tables = new JobTables(result);
    tables.all(accepted);
    return tables.text.toString();
  }

  /** A key's value and what is said behind it. */
  private record Line(String value, String comment) {}

  private void all(List<Finding> accepted) {
    comment("From the survey: " + result.survey().title());
    result.survey().date().ifPresent(d -> comment("of " + d));
    comment(
        "These tables take the place of [tower] and [strut] of a job file in %s,"
            .formatted(lengths.metric() ? "mm" : "inches"));
    comment(
        "[[tower.landmark]] and plus_minus among them. Leave what is not surveyed as it is there:");
    comment(
        "bolting_face, wall, keep-outs and brackets; ride, bump, droop, steer and knuckle_bolt.");
    comment("Behind each figure: one standard deviation, from the uncertainty of the readings.");
    accepted.forEach(f -> comment("ACCEPTED %s: %s".formatted(f.id(), f.say())));
    List<Side> sides = List.copyOf(result.sides().keySet());
    Side first = sides.get(0);
    Map<String, Line> tower = tower(first);
    Map<String, Line> strut = strut(first);
    Map<String, Line> uncertainties = uncertainties(first);
    table("tower", tower, Map.of(), List.of("sheet", "opening", "mark", "landmark"));
    table("strut", strut, Map.of(), strutKeys());
    table("strut.plus_minus", uncertainties, Map.of(), List.of());
    for (Side other : sides.subList(1, sides.size())) {
      String prefix = other.word() + ".";
      table(prefix + "tower", tower(other), tower, List.of());
      table(prefix + "strut", strut(other), strut, List.of());
      table(prefix + "strut.plus_minus", uncertainties(other), uncertainties, List.of());
      same(other, first, tower, tower(other));
      same(other, first, strut, strut(other));
    }
  }

  private void same(Side other, Side first, Map<String, Line> base, Map<String, Line> own) {
    List<String> taken = base.keySet().stream().filter(k -> !own.containsKey(k)).toList();
    if (!taken.isEmpty()) {
      comment(
          "not surveyed on the %s, so there as on the %s: %s"
              .formatted(other.word(), first.word(), Listed.and(taken)));
    }
  }

  private static List<String> strutKeys() {
    return Stream.concat(
            Stream.of(StrutPoint.values()).filter(StrutPoint::isNeeded).map(StrutPoint::word),
            Stream.of("tyre_radius", "camber"))
        .toList();
  }

  private void comment(String words) {
    text.append("# ").append(words).append('\n');
  }

  /** Writes those lines that are not the same in the base. */
  private void table(
      String name, Map<String, Line> lines, Map<String, Line> base, List<String> needed) {
    Map<String, Line> own = new LinkedHashMap<>(lines);
    base.forEach(
        (key, line) ->
            own.computeIfPresent(key, (k, l) -> l.value().equals(line.value()) ? null : l));
    if (own.isEmpty()) {
      if (base.isEmpty() && !needed.isEmpty()) {
        text.append('\n');
        comment("[" + name + "]: not surveyed");
      }
      return;
    }
    text.append("\n[").append(name).append("]\n");
    for (String key : needed) {
      if (!lines.containsKey(key)) {
        comment(key + ": not surveyed, or not fixed by the readings. Add it.");
      }
    }
    own.forEach(
        (key, line) -> {
          String behind = line.comment().isEmpty() ? "" : "  # " + line.comment();
          text.append("%s = %s%s\n".formatted(key, line.value(), behind));
        });
  }

  // The tower.

  private Map<String, Line> tower(Side side) {
    Map<String, Line> lines = new LinkedHashMap<>();
    result.sides().get(side).tower().ifPresent(t -> tower(lines, t));
    return lines;
  }

  private void tower(Map<String, Line> lines, TowerResult t) {
    t.sheet().ifPresent(f -> lines.put("sheet", length(f)));
    t.opening().ifPresent(f -> lines.put("opening", diameter(f)));
    t.mark().ifPresent(f -> lines.put("mark", diameter(f)));
    both(lines, "lean", Lengths::degrees, "inboard", t.leanInboard(), "rearward", t.leanRearward());
    both(lines, "crown", this::fine, "across", t.crownAcross(), "rise", t.crownRise());
    t.pivotHeight().ifPresent(f -> lines.put("pivot_height", length(f)));
    String together =
        t.datum()
            .map(
                d ->
                    ("together: landmark = %s, line = %s, centre = %s in [uncertainty] of the"
                            + " readings of the drilled holes")
                        .formatted(
                            fine(d.landmarkSdMm()), degrees(d.turnSd()), fine(d.shiftSdMm())))
            .orElse("");
    list(
        lines,
        "landmark",
        t.landmarks().stream().filter(TowerResult.Hole::found).map(this::landmark).toList(),
        together);
    list(lines, "straightedge", t.lines().stream().map(this::edge).toList(), "");
  }

  private String landmark(TowerResult.Hole h) {
    return "  { name = %s, at = %s, diameter = %s },  # +/- %s fore, %s in, diameter %s"
        .formatted(
            quoted(h.name()),
            place(h.at()),
            fine(h.diameter().value()),
            fine(h.sd().x()),
            fine(h.sd().y()),
            fine(h.diameter().sd()));
  }

  private String edge(TowerResult.Line l) {
    return "  { name = %s, from = %s, to = %s },  # +/- %s"
        .formatted(quoted(l.name()), place(l.from()), place(l.to()), fine(l.sd()));
  }

  private static void list(
      Map<String, Line> lines, String key, List<String> items, String comment) {
    if (!items.isEmpty()) {
      lines.put(key, new Line("[\n" + String.join("\n", items) + "\n]", comment));
    }
  }

  private Line length(Figure f) {
    return new Line(fine(f.value()), plusMinus(f));
  }

  private Line diameter(Figure f) {
    return new Line("{ diameter = " + fine(f.value()) + " }", plusMinus(f));
  }

  /** A table of two figures, of which either may lack. */
  private static void both(
      Map<String, Line> lines,
      String key,
      DoubleFunction<String> told,
      String first,
      Optional<Figure> one,
      String second,
      Optional<Figure> two) {
    Map<String, Figure> figures = new LinkedHashMap<>();
    one.ifPresent(f -> figures.put(first, f));
    two.ifPresent(f -> figures.put(second, f));
    if (!figures.isEmpty()) {
      String values =
          figures.entrySet().stream()
              .map(e -> e.getKey() + " = " + told.apply(e.getValue().value()))
              .collect(Collectors.joining(", ", "{ ", " }"));
      String sds =
          figures.values().stream()
              .map(f -> told.apply(f.sd()))
              .collect(Collectors.joining(", ", "+/- ", ""));
      lines.put(key, new Line(values, sds));
    }
  }

  // The strut.

  private Map<String, Line> strut(Side side) {
    Map<String, Line> lines = new LinkedHashMap<>();
    found(side)
        .forEach(
            (p, r) -> {
              Vec3 at = r.at();
              String place =
                  "[%s, %s, %s]".formatted(coarse(at.x()), coarse(at.y()), coarse(at.z()));
              if (p.isNeeded()) {
                lines.put(p.word(), new Line(place, ""));
              } else {
                // Its range is not surveyed, and without one the key would be at fault.
                String bolt = "{ pivot = %s, from = , to = }".formatted(place);
                lines.put("# knuckle_bolt", new Line(bolt, ""));
              }
            });
    SideResult s = result.sides().get(side);
    Optional<Figure> radius = s.tyreRadius();
    radius.ifPresent(f -> lines.put("tyre_radius", new Line(coarse(f.value()), plusMinus(f))));
    s.camber().ifPresent(f -> lines.put("camber", angle(f)));
    s.toe().ifPresent(f -> lines.put("toe", angle(f)));
    return lines;
  }

  private static Line angle(Figure f) {
    return new Line(degrees(f.value()), "+/- " + degrees(f.sd()));
  }

  /** The points of the strut that the readings fix. */
  private Map<StrutPoint, PointResult> found(Side side) {
    Map<StrutPoint, PointResult> found = new EnumMap<>(StrutPoint.class);
    for (PointResult r : result.points()) {
      if (r.found() && r.point().side().equals(Optional.of(side))) {
        Worded.find(StrutPoint.values(), r.point().name()).ifPresent(p -> found.put(p, r));
      }
    }
    return found;
  }

  private Map<String, Line> uncertainties(Side side) {
    Map<String, Line> lines = new LinkedHashMap<>();
    found(side)
        .forEach(
            (p, r) -> {
              if (p.isNeeded()) {
                Vec3 sd = r.spread().sd();
                String sds = "[%s, %s, %s]".formatted(fine(sd.x()), fine(sd.y()), fine(sd.z()));
                lines.put(p.word(), new Line(sds, ""));
              }
            });
    Optional<Figure> camber = result.sides().get(side).camber();
    camber.ifPresent(f -> lines.put("camber", new Line(degrees(f.sd()), "")));
    return lines;
  }

  // Figures.

  private String plusMinus(Figure f) {
    return "+/- " + fine(f.sd());
  }

  private String place(Vec2 p) {
    return "[" + fine(p.x()) + ", " + fine(p.y()) + "]";
  }

  /** A point of the car: tenths of a millimetre. */
  private String coarse(double mm) {
    return lengths.figure(mm, Lengths.Fineness.PLACE);
  }

  /** By calipers: hundredths of a millimetre. */
  private String fine(double mm) {
    return lengths.figure(mm);
  }

  private static String degrees(double radians) {
    return Lengths.degrees(radians);
  }

  /**
   * Words as a TOML string.
   *
   * @param words without control characters
   * @return the same in quotes, as a file of ours has them
   */
  public static String quoted(String words) {
    return '"' + words.replace("\\", "\\\\").replace("\"", "\\\"") + '"';
  }
}
