package dev.towerscribe.survey;

import dev.towerscribe.finding.Finding;
import dev.towerscribe.geometry.Vec2;
import dev.towerscribe.geometry.Vec3;
import dev.towerscribe.model.Side;
import dev.towerscribe.model.StrutPoint;
import dev.towerscribe.quantity.Lengths;
import java.util.ArrayList;
import java.util.LinkedHashMap;
import java.util.List;
import java.util.Map;
import java.util.Optional;

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
        "These tables take the place of [tower] and [strut] of a job file in "
            + (lengths.metric() ? "mm" : "inches")
            + ",");
    comment(
        "[[tower.landmark]] and plus_minus among them. Leave what is not surveyed as it is there:");
    comment(
        "bolting_face, wall, keep-outs and brackets; ride, bump, droop, steer and knuckle_bolt.");
    comment("Behind each figure: one standard deviation, from the uncertainty of the readings.");
    for (Finding f : accepted) {
      comment("ACCEPTED " + f.id() + ": " + f.say());
    }
    List<Side> sides = List.copyOf(result.sides().keySet());
    Side first = sides.get(0);
    Map<String, Line> tower = tower(first);
    Map<String, Line> strut = strut(first);
    Map<String, Line> uncertainties = uncertainties(first);
    table("tower", tower, Map.of(), towerKeys());
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
          "not surveyed on the "
              + other.word()
              + ", so there as on the "
              + first.word()
              + ": "
              + Listed.and(taken));
    }
  }

  private static List<String> towerKeys() {
    return List.of("sheet", "opening", "mark", "landmark");
  }

  private static List<String> strutKeys() {
    List<String> keys = new ArrayList<>();
    for (StrutPoint p : StrutPoint.values()) {
      if (p.isNeeded()) {
        keys.add(p.word());
      }
    }
    keys.addAll(List.of("tyre_radius", "camber"));
    return keys;
  }

  private void comment(String words) {
    text.append("# ").append(words).append('\n');
  }

  /** Writes those lines that are not the same in the base. */
  private void table(
      String name, Map<String, Line> lines, Map<String, Line> base, List<String> needed) {
    Map<String, Line> own = new LinkedHashMap<>(lines);
    own.entrySet()
        .removeIf(
            e ->
                base.containsKey(e.getKey())
                    && base.get(e.getKey()).value().equals(e.getValue().value()));
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
          text.append(key).append(" = ").append(line.value());
          if (!line.comment().isEmpty()) {
            text.append("  # ").append(line.comment());
          }
          text.append('\n');
        });
  }

  // The tower.

  private Map<String, Line> tower(Side side) {
    Map<String, Line> lines = new LinkedHashMap<>();
    Optional<TowerResult> tower = result.sides().get(side).tower();
    if (tower.isEmpty()) {
      return lines;
    }
    TowerResult t = tower.get();
    t.sheet().ifPresent(f -> lines.put("sheet", new Line(fine(f.value()), plusMinus(f))));
    t.opening().ifPresent(f -> lines.put("opening", diameter(f)));
    t.mark().ifPresent(f -> lines.put("mark", diameter(f)));
    both(lines, "lean", "inboard", t.leanInboard(), "rearward", t.leanRearward(), true);
    both(lines, "crown", "across", t.crownAcross(), "rise", t.crownRise(), false);
    t.pivotHeight()
        .ifPresent(f -> lines.put("pivot_height", new Line(fine(f.value()), plusMinus(f))));
    List<String> holes = new ArrayList<>();
    for (TowerResult.Hole h : t.landmarks()) {
      if (h.found()) {
        holes.add(
            "  { name = "
                + quoted(h.name())
                + ", at = "
                + place(h.at())
                + ", diameter = "
                + fine(h.diameter().value())
                + " },  # +/- "
                + fine(h.sd().x())
                + " fore, "
                + fine(h.sd().y())
                + " in, diameter "
                + fine(h.diameter().sd()));
      }
    }
    String uncertainty =
        t.datum()
            .map(
                d ->
                    "together: landmark = "
                        + fine(d.landmarkSdMm())
                        + ", line = "
                        + degrees(d.turnSd())
                        + ", centre = "
                        + fine(d.shiftSdMm())
                        + " in [uncertainty] of the readings of the drilled holes")
            .orElse("");
    list(lines, "landmark", holes, uncertainty);
    List<String> edges = new ArrayList<>();
    for (TowerResult.Line l : t.lines()) {
      edges.add(
          "  { name = "
              + quoted(l.name())
              + ", from = "
              + place(l.from())
              + ", to = "
              + place(l.to())
              + " },  # +/- "
              + fine(l.sd()));
    }
    list(lines, "straightedge", edges, "");
    return lines;
  }

  private static void list(
      Map<String, Line> lines, String key, List<String> items, String comment) {
    if (!items.isEmpty()) {
      lines.put(key, new Line("[\n" + String.join("\n", items) + "\n]", comment));
    }
  }

  private Line diameter(Figure f) {
    return new Line("{ diameter = " + fine(f.value()) + " }", plusMinus(f));
  }

  private void both(
      Map<String, Line> lines,
      String key,
      String first,
      Optional<Figure> one,
      String second,
      Optional<Figure> two,
      boolean angles) {
    List<String> values = new ArrayList<>();
    List<String> uncertainties = new ArrayList<>();
    one.ifPresent(f -> add(first, f, angles, values, uncertainties));
    two.ifPresent(f -> add(second, f, angles, values, uncertainties));
    if (!values.isEmpty()) {
      lines.put(
          key,
          new Line(
              "{ " + String.join(", ", values) + " }", "+/- " + String.join(", ", uncertainties)));
    }
  }

  private void add(
      String key, Figure f, boolean angle, List<String> values, List<String> uncertainties) {
    values.add(key + " = " + (angle ? degrees(f.value()) : fine(f.value())));
    uncertainties.add(angle ? degrees(f.sd()) : fine(f.sd()));
  }

  // The strut.

  private Map<String, Line> strut(Side side) {
    Map<String, Line> lines = new LinkedHashMap<>();
    for (StrutPoint p : StrutPoint.values()) {
      Optional<PointResult> r = found(side, p);
      if (r.isEmpty()) {
        continue;
      }
      Vec3 at = r.get().at();
      String place = "[" + coarse(at.x()) + ", " + coarse(at.y()) + ", " + coarse(at.z()) + "]";
      if (p.isNeeded()) {
        lines.put(p.word(), new Line(place, ""));
      } else {
        // Its range is not surveyed, and without one the key would be at fault.
        lines.put("# knuckle_bolt", new Line("{ pivot = " + place + ", from = , to = }", ""));
      }
    }
    SideResult s = result.sides().get(side);
    s.tyreRadius()
        .ifPresent(f -> lines.put("tyre_radius", new Line(coarse(f.value()), plusMinus(f))));
    s.camber().ifPresent(f -> lines.put("camber", angle(f)));
    s.toe().ifPresent(f -> lines.put("toe", angle(f)));
    return lines;
  }

  private static Line angle(Figure f) {
    return new Line(degrees(f.value()), "+/- " + degrees(f.sd()));
  }

  private Optional<PointResult> found(Side side, StrutPoint p) {
    return result.points().stream()
        .filter(r -> r.found() && r.point().equals(SurveyPoint.of(side, p.word())))
        .findFirst();
  }

  private Map<String, Line> uncertainties(Side side) {
    Map<String, Line> lines = new LinkedHashMap<>();
    for (StrutPoint p : StrutPoint.values()) {
      Optional<PointResult> r = p.isNeeded() ? found(side, p) : Optional.empty();
      r.ifPresent(
          found -> {
            Vec3 sd = found.spread().sd();
            lines.put(
                p.word(),
                new Line("[" + fine(sd.x()) + ", " + fine(sd.y()) + ", " + fine(sd.z()) + "]", ""));
          });
    }
    result
        .sides()
        .get(side)
        .camber()
        .ifPresent(f -> lines.put("camber", new Line(degrees(f.sd()), "")));
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

  private static String quoted(String words) {
    return '"' + words.replace("\\", "\\\\").replace("\"", "\\\"") + '"';
  }
}
