package dev.towerscribe.report;

import dev.towerscribe.model.Side;
import dev.towerscribe.record.BayFigure;
import dev.towerscribe.record.Entry;
import dev.towerscribe.record.ReadingStage;
import dev.towerscribe.record.Strike;
import java.util.List;
import java.util.Optional;

/**
 * A job in a folder, and one of its visits.
 *
 * @param file the job file's name
 * @param title what the job is called; empty if that is not known
 * @param entry the visit; absent for a job without any
 */
public record RecordedVisit(String file, String title, Optional<Entry> entry) {
  /**
   * Which visit it is.
   *
   * @return its number, its date and its state, "struck" among them, each empty if not known
   */
  public List<String> about() {
    return List.of(
        entry.flatMap(Entry::number).map(n -> Integer.toString(n)).orElse(""),
        entry.flatMap(Entry::date).map(Object::toString).orElse(""),
        struck().isPresent() ? "struck" : entry.map(e -> e.state().hyphened()).orElse("no visit"));
  }

  /**
   * The striking that took it out.
   *
   * @return empty if it counts, or there is no visit
   */
  public Optional<Strike> struck() {
    return entry.flatMap(Entry::struck);
  }

  /** The visit, unless it was struck: what is counted or compared is taken from here. */
  private Optional<Entry> counted() {
    return entry.filter(e -> e.struck().isEmpty());
  }

  /**
   * One figure.
   *
   * @param side which wheel
   * @param stage when
   * @param figure which
   * @return it, if the visit has it and was not struck
   */
  public Optional<Entry.Figure> figure(Side side, ReadingStage stage, BayFigure figure) {
    return counted().flatMap(e -> e.of(Optional.of(side), stage, figure));
  }

  /**
   * How many figures lie outside two standard deviations.
   *
   * @return a whole number; empty without a visit, and for one that was struck
   */
  public String outside() {
    return counted()
        .map(e -> e.figures().stream().filter(f -> f.within().filter(w -> !w).isPresent()).count())
        .map(Object::toString)
        .orElse("");
  }

  /**
   * Words of the visit.
   *
   * @param key as the record has it
   * @return empty if it has none
   */
  public String words(String key) {
    return entry.map(e -> e.words().getOrDefault(key, "")).orElse("");
  }
}
