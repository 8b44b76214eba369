package dev.towerscribe.store;

import dev.towerscribe.adjust.Repeated;
import dev.towerscribe.drilled.Readings;
import dev.towerscribe.drilled.SideReadings;
import dev.towerscribe.drilled.SpanReading;

/** Every fact of readings of drilled holes, which with those of the job decide the drilled page. */
final class ReadingsFacts {
  private final Facts facts = new Facts();

  private ReadingsFacts() {}

  /**
   * The facts of readings.
   *
   * @param jobMark the mark of the job whose holes were read
   * @param readings any
   * @return the facts
   */
  static Facts of(String jobMark, Readings readings) {
    ReadingsFacts all = new ReadingsFacts();
    all.facts.put("job", jobMark);
    all.readings(readings);
    return all.facts;
  }

  private void readings(Readings r) {
    facts.put("title", r.title());
    facts.put("date", r.date());
    facts.put("units", r.units());
    facts.put("uncertainty.caliper", r.uncertainty().caliperMm());
    facts.put("uncertainty.landmark", r.uncertainty().landmarkMm());
    facts.put("uncertainty.edge", r.uncertainty().edgeMm());
    facts.put("uncertainty.line", r.uncertainty().line());
    facts.put("uncertainty.centre", r.uncertainty().centreMm());
    r.sides().values().forEach(side -> side(side.side().word(), side));
  }

  private void side(String at, SideReadings side) {
    facts.put(at, side.side());
    for (SideReadings.HoleSize hole : side.holes()) {
      facts.put(at + ".hole", hole.name());
      reading(at + ".hole.diameter", hole.diameter());
    }
    for (SpanReading span : side.spans()) {
      facts.put(at + ".span.from", span.from());
      facts.put(at + ".span.to", span.to());
      facts.put(at + ".span.between", span.edges());
      reading(at + ".span.length", span.length());
    }
    for (SideReadings.EdgeGap edge : side.edges()) {
      facts.put(at + ".edge.hole", edge.hole());
      reading(at + ".edge.gap", edge.gap());
    }
  }

  private void reading(String at, Repeated r) {
    facts.put(at, r.values());
    facts.put(at + ".uncertainty", r.sd());
  }
}
