package dev.towerscribe.store;

import dev.towerscribe.adjust.Repeated;
import dev.towerscribe.drilled.Readings;
import dev.towerscribe.drilled.SideReadings;
import dev.towerscribe.drilled.SpanReading;

/** Every fact of readings of drilled holes, which with those of the job decide the drilled page. */
final class ReadingsFacts {
  private ReadingsFacts() {}

  /**
   * The facts of readings.
   *
   * @param jobMark the mark of the job whose holes were read
   * @param readings any
   * @return the facts
   */
  static Facts of(String jobMark, Readings readings) {
    Facts facts = new Facts().put("job", jobMark).put("title", readings.title());
    facts.put("date", readings.date()).put("units", readings.units());
    Readings.Uncertainty u = readings.uncertainty();
    facts.all("uncertainty", "caliper landmark edge", u.caliperMm(), u.landmarkMm(), u.edgeMm());
    facts.all("uncertainty", "line centre", u.line(), u.centreMm());
    readings.sides().values().forEach(side -> side(facts, side.side().word(), side));
    return facts;
  }

  private static void side(Facts facts, String at, SideReadings side) {
    facts.put(at, side.side());
    for (SideReadings.HoleSize hole : side.holes()) {
      facts.put(at + ".hole", hole.name());
      reading(facts, at + ".hole.diameter", hole.diameter());
    }
    for (SpanReading s : side.spans()) {
      facts.all(at + ".span", "from to between", s.from(), s.to(), s.edges());
      reading(facts, at + ".span.length", s.length());
    }
    for (SideReadings.EdgeGap edge : side.edges()) {
      facts.put(at + ".edge.hole", edge.hole());
      reading(facts, at + ".edge.gap", edge.gap());
    }
  }

  private static void reading(Facts facts, String at, Repeated r) {
    facts.put(at, r.values()).put(at + ".uncertainty", r.sd());
  }
}
