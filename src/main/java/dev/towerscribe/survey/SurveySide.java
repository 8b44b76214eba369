package dev.towerscribe.survey;

import dev.towerscribe.adjust.Repeated;
import java.util.ArrayList;
import java.util.List;
import java.util.Objects;
import java.util.Optional;

/**
 * What was read on one side of a car. Nothing in it is worked over.
 *
 * @param plots plumb-bob plots on the floor
 * @param heights heights above level floor
 * @param tapes distances
 * @param tyreRadius ground to wheel centre, mm, if read
 * @param camber radians, positive when the wheel's top leans outward, if read
 * @param toe radians, per wheel, positive for toe-in, if read
 * @param tower what was read on the tower, if anything was
 */
public record SurveySide(
    List<Plot> plots,
    List<Height> heights,
    List<Tape> tapes,
    Optional<Repeated> tyreRadius,
    Optional<Repeated> camber,
    Optional<Repeated> toe,
    Optional<SurveyTower> tower) {
  /** Copies the lists. */
  public SurveySide {
    plots = List.copyOf(plots);
    heights = List.copyOf(heights);
    tapes = List.copyOf(tapes);
    Objects.requireNonNull(tyreRadius);
    Objects.requireNonNull(camber);
    Objects.requireNonNull(toe);
    Objects.requireNonNull(tower);
  }

  /** What was read, in the order of its readings; a point as often as it was read. */
  List<SurveyPoint> points() {
    List<SurveyPoint> points = new ArrayList<>();
    plots.forEach(p -> points.add(p.point()));
    heights.forEach(h -> points.add(h.point()));
    tapes.forEach(t -> points.addAll(List.of(t.from(), t.to())));
    return points;
  }

  /**
   * A point brought down to the floor.
   *
   * @param point what was plotted
   * @param forward of the line through the wheel centres, mm
   * @param out from the car's middle line outward on this side, mm
   */
  public record Plot(SurveyPoint point, Repeated forward, Repeated out) {}

  /**
   * A height.
   *
   * @param point what was measured
   * @param up above the floor, mm
   */
  public record Height(SurveyPoint point, Repeated up) {}

  /**
   * A straight distance.
   *
   * @param from one end
   * @param to the other, not the same
   * @param length mm
   */
  public record Tape(SurveyPoint from, SurveyPoint to, Repeated length) {
    /** Checks that it has two ends. */
    public Tape {
      if (from.equals(to)) {
        throw new IllegalArgumentException("a tape from " + from.words() + " to itself");
      }
    }
  }
}
