package dev.towerscribe.drawing;

import java.util.ArrayList;
import java.util.Comparator;
import java.util.List;
import java.util.Optional;
import java.util.function.Supplier;

/** Ways to draw one dimension, of which the cheapest that is not barred is taken. */
final class Choice {
  private record Way(double cost, Supplier<Sketch> drawn) {}

  private final List<Way> ways = new ArrayList<>();

  /**
   * Adds a way.
   *
   * @param cost how little it is liked before anything is crossed
   * @param drawn draws it, if it comes to that
   */
  void offer(double cost, Supplier<Sketch> drawn) {
    ways.add(new Way(cost, drawn));
  }

  /** The cheapest; of two alike the one offered first. Takes its place in the crowd. */
  Optional<Sketch> settle(DimensionCosts crowd) {
    ways.sort(Comparator.comparingDouble(Way::cost));
    Sketch best = null;
    double least = DimensionCosts.BARRED;
    for (Way way : ways) {
      if (way.cost() >= least) {
        break;
      }
      Sketch sketch = way.drawn().get();
      double cost = way.cost() + crowd.cost(sketch, least - way.cost());
      if (cost < least) {
        least = cost;
        best = sketch;
      }
    }
    if (best != null) {
      crowd.take(best);
    }
    return Optional.ofNullable(best);
  }
}
