package dev.towerscribe.survey;

import java.util.ArrayList;
import java.util.List;

/**
 * What was read of one thing, once or several times, and what it is a reading of.
 *
 * @param id names it among all readings: "left" or "right", a point, and letters, digits, hyphens
 * @param kind what was read with what
 * @param words what it is: "the tape from C to ball_joint"
 * @param measure what it is of
 * @param reading the figures
 * @param numbers which of the file's readings they are, from 1: some may have been left out
 */
record Entry(
    String id,
    Kind kind,
    String words,
    Measure measure,
    SurveyReading reading,
    List<Integer> numbers) {
  /** Kinds of readings; each has words for being too much and too little. */
  enum Kind {
    /** A distance between points of the car. */
    TAPE("tapes", "longer", "shorter"),
    /** Forward, on the floor. */
    FORWARD("floor plots", "further forward", "further rearward"),
    /** Outward, on the floor. */
    OUT("floor plots", "further out", "further in"),
    /** Above the floor. */
    HEIGHT("heights", "higher", "lower"),
    /** The place of a station that is known. */
    STATION("stations", "more", "less"),
    /** Forward, on the tower. */
    FORE("places by rule", "further forward", "further rearward"),
    /** Inward, on the tower. */
    IN("places by rule", "further in", "further out"),
    /** Between holes of the tower. */
    SPAN("spans", "longer", "shorter"),
    /** A hole's diameter. */
    DIAMETER("diameters", "larger", "smaller");

    private final String plural;
    private final String more;
    private final String less;

    Kind(String plural, String more, String less) {
      this.plural = plural;
      this.more = more;
      this.less = less;
    }

    String plural() {
      return plural;
    }

    String comparative(double excess) {
      return excess > 0 ? more : less;
    }
  }

  /** An entry as the file gives it. */
  static Entry of(String id, Kind kind, String words, Measure measure, SurveyReading reading) {
    List<Integer> numbers = new ArrayList<>();
    for (int i = 1; i <= reading.values().size(); i++) {
      numbers.add(i);
    }
    return new Entry(id, kind, words, measure, reading, List.copyOf(numbers));
  }

  int count() {
    return reading.values().size();
  }

  /** The weight of the mean: one over its variance. */
  double weight() {
    return count() / (reading.doubt() * reading.doubt());
  }

  /** The same without one of its readings, of which there are at least two. */
  Entry without(int index) {
    List<Double> values = new ArrayList<>(reading.values());
    List<Integer> left = new ArrayList<>(numbers);
    values.remove(index);
    left.remove(index);
    return new Entry(
        id, kind, words, measure, new SurveyReading(values, reading.doubt()), List.copyOf(left));
  }

  /** The same with another doubt. */
  Entry doubted(double doubt) {
    return new Entry(id, kind, words, measure, new SurveyReading(reading.values(), doubt), numbers);
  }
}
