package dev.towerscribe.survey;

import java.util.List;

/**
 * A network whose points have names.
 *
 * @param net the network
 * @param entries its readings
 * @param labels one for each point, by its number
 * @param axes how its coordinates are spoken of
 */
record Labelled(Network net, List<Entry> entries, List<Label> labels, Axes axes) {
  /**
   * A point's name.
   *
   * @param side "left", "right" or "both"
   * @param name its own
   * @param needed whether the job's tables need it
   */
  record Label(String side, String name, boolean needed) {}

  /**
   * Words for coordinates.
   *
   * @param places each after "its": "place forward", "place outward", "height"
   * @param ways each after a number, as many as count: "forward", "out", "up"
   * @param outward the vehicle's second axis has the outward sense on the left only
   */
  record Axes(List<String> places, List<String> ways, boolean outward) {
    static final Axes CAR =
        new Axes(
            List.of("place forward", "place outward", "height"),
            List.of("forward", "out", "up"),
            true);
    static final Axes TOWER =
        new Axes(List.of("place fore", "place in", "height"), List.of("fore", "in"), false);
  }
}
