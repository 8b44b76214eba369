package dev.towerscribe.survey;

import java.util.List;
import java.util.Objects;
import java.util.Optional;

/**
 * What was read on one tower. Places are of its plan: fore, in, from the old strut-shaft centre.
 *
 * @param sheet thickness of its metal, mm
 * @param opening diameter of the hole in it, mm
 * @param mark diameter of the ring the old mount left, mm
 * @param leanInboard radians
 * @param leanRearward radians
 * @param crown the dome of its top
 * @param pivotHeight original top pivot above its plane, mm
 * @param shaft diameter of the old shaft's thread, mm
 * @param landmarks round holes that sheets are laid against
 * @param spans distances between them, or from the shaft
 * @param lines straight lines that sheets are laid along
 */
public record SurveyTower(
    Optional<SurveyReading> sheet,
    Optional<SurveyReading> opening,
    Optional<SurveyReading> mark,
    Optional<SurveyReading> leanInboard,
    Optional<SurveyReading> leanRearward,
    Optional<Dome> crown,
    Optional<SurveyReading> pivotHeight,
    Optional<SurveyReading> shaft,
    List<Mark> landmarks,
    List<Span> spans,
    List<Line> lines) {
  /** The name of the old shaft's centre in spans. */
  public static final String SHAFT = "shaft";

  /** Copies the lists and checks that spans name landmarks. */
  public SurveyTower {
    Objects.requireNonNull(sheet);
    Objects.requireNonNull(opening);
    Objects.requireNonNull(mark);
    landmarks = List.copyOf(landmarks);
    spans = List.copyOf(spans);
    lines = List.copyOf(lines);
    List<String> names = landmarks.stream().map(Mark::name).toList();
    for (Span span : spans) {
      for (String end : List.of(span.from(), span.to())) {
        if (!end.equals(SHAFT) && !names.contains(end)) {
          throw new IllegalArgumentException("a span to " + end + ", which is no landmark");
        }
        if (end.equals(SHAFT) && span.reach() != Reach.CENTRES && shaft.isEmpty()) {
          throw new IllegalArgumentException("a span to the shaft's edge without its diameter");
        }
      }
    }
  }

  /**
   * A dome by straightedge.
   *
   * @param across between the places where the gap was read, mm
   * @param rise the gap, mm
   */
  public record Dome(SurveyReading across, SurveyReading rise) {}

  /**
   * A round hole.
   *
   * @param name what a person calls it
   * @param at its place by rule, if read
   * @param diameter mm
   */
  public record Mark(String name, Optional<Place> at, SurveyReading diameter) {}

  /**
   * A place by rule and square.
   *
   * @param fore mm
   * @param in mm
   */
  public record Place(SurveyReading fore, SurveyReading in) {}

  /**
   * A distance on the tower.
   *
   * @param from a landmark's name, or {@link #SHAFT}
   * @param to another
   * @param reach what of the two holes it was taken between
   * @param length mm
   */
  public record Span(String from, String to, Reach reach, SurveyReading length) {
    /** Checks that it has two ends. */
    public Span {
      if (from.equals(to)) {
        throw new IllegalArgumentException("a span from " + from + " to itself");
      }
    }
  }

  /** What a span was taken between. */
  public enum Reach {
    /** Centre to centre. */
    CENTRES("centres", 0),
    /** Between the near edges. */
    INSIDE("inside", -1),
    /** Across the far edges. */
    OUTSIDE("outside", 1);

    private final String word;
    private final int radii;

    Reach(String word, int radii) {
      this.word = word;
      this.radii = radii;
    }

    /**
     * Its key in survey files.
     *
     * @return lower-case word
     */
    public String word() {
      return word;
    }

    /**
     * How many times both radii are added to the distance of the centres.
     *
     * @return -1, 0 or 1
     */
    public int radii() {
      return radii;
    }
  }

  /**
   * A straight line.
   *
   * @param name what a person calls it
   * @param from one place on it
   * @param to another
   */
  public record Line(String name, Place from, Place to) {}
}
