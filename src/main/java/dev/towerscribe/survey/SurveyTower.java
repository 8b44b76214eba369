package dev.towerscribe.survey;

import dev.towerscribe.adjust.Edges;
import dev.towerscribe.adjust.Repeated;
import java.util.List;
import java.util.Objects;
import java.util.Optional;

/**
 * What was read on one tower. Places are of its plan: fore, in, from the strut rod centre.
 *
 * @param sheet thickness of its metal, mm
 * @param opening diameter of the hole in it, mm
 * @param mark diameter of the ring the old mount left, mm
 * @param leanInboard radians
 * @param leanRearward radians
 * @param crown the dome of its top
 * @param pivotHeight original top pivot above its plane, mm
 * @param strutRod diameter of the old strut rod's thread, mm
 * @param landmarks round holes that sheets are laid against
 * @param spans distances between them, or from the strut rod
 * @param lines straight lines that sheets are laid along
 */
public record SurveyTower(
    Optional<Repeated> sheet,
    Optional<Repeated> opening,
    Optional<Repeated> mark,
    Optional<Repeated> leanInboard,
    Optional<Repeated> leanRearward,
    Optional<Dome> crown,
    Optional<Repeated> pivotHeight,
    Optional<Repeated> strutRod,
    List<Mark> landmarks,
    List<Span> spans,
    List<Line> lines) {
  /** The name of the strut rod centre in spans. */
  public static final String STRUT_ROD = "shaft";

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
        if (!end.equals(STRUT_ROD) && !names.contains(end)) {
          throw new IllegalArgumentException("a span to " + end + ", which is no landmark");
        }
        if (end.equals(STRUT_ROD) && span.edges() != Edges.CENTRES && strutRod.isEmpty()) {
          throw new IllegalArgumentException("a span to the strut rod's edge without its diameter");
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
  public record Dome(Repeated across, Repeated rise) {}

  /**
   * A round hole.
   *
   * @param name what a person calls it
   * @param at its place by rule, if read
   * @param diameter mm
   */
  public record Mark(String name, Optional<Place> at, Repeated diameter) {}

  /**
   * A place by rule and square.
   *
   * @param fore mm
   * @param in mm
   */
  public record Place(Repeated fore, Repeated in) {}

  /**
   * A distance on the tower.
   *
   * @param from a landmark's name, or {@link #STRUT_ROD}
   * @param to another
   * @param edges what of the two holes it was taken between
   * @param length mm
   */
  public record Span(String from, String to, Edges edges, Repeated length) {
    /** Checks that it has two ends. */
    public Span {
      if (from.equals(to)) {
        throw new IllegalArgumentException("a span from " + from + " to itself");
      }
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
