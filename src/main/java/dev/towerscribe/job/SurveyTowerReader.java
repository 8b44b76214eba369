package dev.towerscribe.job;

import dev.towerscribe.adjust.Edges;
import dev.towerscribe.adjust.Repeated;
import dev.towerscribe.finding.Fault;
import dev.towerscribe.survey.SurveyTower;
import java.util.ArrayList;
import java.util.HashSet;
import java.util.LinkedHashMap;
import java.util.List;
import java.util.Map;
import java.util.Optional;
import java.util.Set;
import java.util.stream.Stream;

/**
 * [left.tower] and [right.tower] of a survey.
 *
 * @param sds how far one reading of each kind may be off
 */
record SurveyTowerReader(SurveyUncertainty sds) {
  private static final List<String> EDGES = Stream.of(Edges.values()).map(Edges::word).toList();

  Optional<SurveyTower> read(TableReader t) {
    double caliper = sds.caliperMm();
    var sheet = SurveyFigures.optional(t, "sheet", Limits.SHEET, caliper);
    var opening = SurveyFigures.optional(t, "opening", Limits.OPENING, caliper);
    var mark = SurveyFigures.optional(t, "mark", Limits.MARK, sds.ruleMm());
    if (opening.isPresent() && mark.isPresent() && mark.get().mean() < opening.get().mean()) {
      t.fault(
          "mark", "at least the opening", "The old mount's ring lies round the hole: look again.");
    }
    var lean = t.optionalTable("lean");
    var inboard = lean.flatMap(l -> angle(l, "inboard"));
    var rearward = lean.flatMap(l -> angle(l, "rearward"));
    lean.ifPresent(TableReader::close);
    var crown = t.optionalTable("crown").flatMap(this::crown);
    var pivot = SurveyFigures.optional(t, "pivot_height", Limits.PIVOT_HEIGHT, sds.ruleMm());
    var strutRod = SurveyFigures.optional(t, "shaft", Limits.STRUT_ROD, caliper);
    Ends ends = new Ends(new HashSet<>(), new LinkedHashMap<>(), new ArrayList<>());
    var landmarks = t.each("landmark", 0, "landmarks", l -> landmark(l, ends.names));
    var spans = t.each("span", 0, "spans", s -> span(s, ends));
    // A landmark whose name cannot be read may be the one that a span means.
    if (!t.has("landmark")
        || t.node("landmark") instanceof TomlNode.Items list
            && list.items().size() == ends.names.size()) {
      ends.unknown.values().forEach(t::add);
    }
    if (!t.has("shaft") && !ends.fromRod.isEmpty()) {
      t.missing(
          "shaft",
          Limits.STRUT_ROD.words(t.unit()),
          "Measure the thread's diameter: its edge is an end of %s."
              .formatted(String.join(", ", ends.fromRod)));
    }
    var lines = t.named("straightedge", 0, "straightedges", this::line);
    return t.closed(
        () ->
            new SurveyTower(
                sheet, opening, mark, inboard, rearward, crown, pivot, strutRod, landmarks, spans,
                lines));
  }

  /**
   * What the spans of a tower lean on.
   *
   * @param names of its landmarks
   * @param unknown a fault for each name that is none of them, however many spans use it
   * @param fromRod keys of the readings from the strut rod's edge
   */
  private record Ends(Set<String> names, Map<String, Fault> unknown, List<String> fromRod) {}

  private Optional<Repeated> angle(TableReader t, String key) {
    return SurveyFigures.angles(t, key, Limits.LEAN, sds.angleRad());
  }

  private Optional<SurveyTower.Dome> crown(TableReader c) {
    double sd = SurveyFigures.sd(c, sds.ruleMm());
    var across = SurveyFigures.lengths(c, "across", Limits.CROWN_ACROSS, sd);
    var rise = SurveyFigures.lengths(c, "rise", Limits.CROWN_RISE, sd);
    if (across.isPresent() && rise.isPresent() && rise.get().mean() > across.get().mean() / 2) {
      c.fault("rise", "at most half of across", "A dome cannot rise further: measure both again.");
    }
    return c.closed(() -> new SurveyTower.Dome(across.get(), rise.get()));
  }

  private Optional<SurveyTower.Place> place(TableReader t, String key, double sd) {
    return SurveyFigures.pairs(t, key, Limits.PLAN, Limits.PLAN, sd)
        .map(p -> new SurveyTower.Place(p.get(0), p.get(1)));
  }

  private Optional<SurveyTower.Mark> landmark(TableReader l, Set<String> names) {
    var name = l.uniqueName(names);
    if (name.isPresent() && name.get().equals(SurveyTower.STRUT_ROD)) {
      l.fault(
          "name", "another name than shaft", "That is the old strut rod centre: rename the hole.");
    }
    // A place by rule and a diameter by calipers differ too much to share an uncertainty.
    double sd = SurveyFigures.sd(l, sds.ruleMm());
    Optional<SurveyTower.Place> at = l.has("at") ? place(l, "at", sd) : Optional.empty();
    var diameter = SurveyFigures.lengths(l, "diameter", Limits.LANDMARK, sds.caliperMm());
    return l.closed(() -> new SurveyTower.Mark(name.get(), at, diameter.get()));
  }

  private Optional<SurveyTower.Span> span(TableReader s, Ends ends) {
    var from = end(s, "from", ends);
    var to = end(s, "to", ends);
    if (from.isPresent() && from.equals(to)) {
      s.fault("to", "another end than from", "A span has two ends: name the other one.");
    }
    var given = Stream.of(Edges.values()).filter(r -> s.has(r.word())).toList();
    Optional<Repeated> length = Optional.empty();
    if (given.size() == 1) {
      Edges edges = given.get(0);
      // Nobody can set calipers to a centre: that takes a rule.
      double usual = edges == Edges.CENTRES ? sds.ruleMm() : sds.caliperMm();
      double sd = SurveyFigures.sd(s, usual);
      length = SurveyFigures.lengths(s, edges.word(), Limits.SURVEY_SPAN, sd);
      boolean fromStrutRod =
          from.equals(Optional.of(SurveyTower.STRUT_ROD))
              || to.equals(Optional.of(SurveyTower.STRUT_ROD));
      if (fromStrutRod && edges != Edges.CENTRES) {
        String path = s.origin(edges.word()).path();
        ends.fromRod.add(path.substring(path.indexOf("span")));
      }
    } else {
      s.has(Respelling.UNCERTAINTY);
      String limit = "one of " + String.join(", ", EDGES);
      if (given.isEmpty()) {
        s.missing(EDGES.get(0), limit, "Say what the span was taken between.");
      } else {
        s.fault(given.get(1).word(), limit, "Write a second span for it.");
      }
    }
    var read = length;
    return s.closed(() -> new SurveyTower.Span(from.get(), to.get(), given.get(0), read.get()));
  }

  private static Optional<String> end(TableReader s, String key, Ends ends) {
    var name = s.label(key, Limits.NAME);
    if (name.isEmpty()
        || name.get().equals(SurveyTower.STRUT_ROD)
        || ends.names.contains(name.get())) {
      return name;
    }
    var known =
        Stream.concat(Stream.of(SurveyTower.STRUT_ROD), ends.names.stream().sorted()).toList();
    s.unsound();
    ends.unknown.putIfAbsent(
        name.get(),
        new Fault(
            s.origin(key).path(),
            MessageText.quoted(name.get()),
            "shaft or a landmark of this tower",
            SpellingHint.advice(
                name.get(), known, "Known here: " + String.join(", ", known) + ".")));
    return Optional.empty();
  }

  private Optional<SurveyTower.Line> line(TableReader s, Set<String> names) {
    var name = s.uniqueName(names);
    double sd = SurveyFigures.sd(s, sds.ruleMm());
    var from = place(s, "from", sd);
    var to = place(s, "to", sd);
    return s.closed(() -> new SurveyTower.Line(name.get(), from.get(), to.get()));
  }
}
