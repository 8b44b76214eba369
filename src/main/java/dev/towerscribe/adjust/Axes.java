package dev.towerscribe.adjust;

import java.util.List;

/**
 * How a network's coordinates are spoken of.
 *
 * @param places each after "its": "place forward", "place outward", "height"
 * @param ways each after a number, as many as count: "forward", "out", "up"
 */
public record Axes(List<String> places, List<String> ways) {
  /** Copies the lists. */
  public Axes {
    places = List.copyOf(places);
    ways = List.copyOf(ways);
  }
}
