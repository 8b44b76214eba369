package dev.towerscribe.drawing;

import java.util.ArrayList;
import java.util.Comparator;
import java.util.List;
import java.util.Optional;
import java.util.function.Supplier;

/**
 * Places offered for one thing on a page, of which the cheapest that is not barred is chosen:
 * labels of sheets, dimensions, names of holes and letters of maps are all placed by it. What bars
 * a place and what crossing a line costs is the business of whoever asks; their rules differ. A
 * label of a 1:1 sheet may clear the paper beneath it and cross thin lines; words of a dimension
 * may touch nothing (ISO 129-1); a hole's name must lie nearer to its own hole than to any other.
 *
 * <p>Example: offered "left" for 2 and "right" for 3, where "left" lies across a line that costs 4,
 * "right" is chosen.
 *
 * @param <T> what is placed
 */
public final class Cheapest<T> {
  /** Cost of what is barred. */
  public static final double BARRED = Double.POSITIVE_INFINITY;

  /**
   * What a place costs where it is.
   *
   * @param <T> what is placed
   */
  @FunctionalInterface
  public interface Crossing<T> {
    /**
     * The whole cost of a place.
     *
     * @param place the place
     * @param cost what it costs before anything is crossed
     * @param most what is of interest: anything that costs as much may be given as barred
     * @return the cost and what it crosses; {@link #BARRED} where it cannot be
     */
    double of(T place, double cost, double most);
  }

  /**
   * What was chosen.
   *
   * @param <T> what is placed
   * @param place the place
   * @param ownCost what it cost before anything was crossed
   * @param cost the whole cost
   */
  public record Chosen<T>(T place, double ownCost, double cost) {
    /**
     * Whether it lies across something.
     *
     * @return true if crossing cost anything
     */
    public boolean crosses() {
      return cost > ownCost;
    }
  }

  private record Offer<T>(double cost, Supplier<T> made) {}

  private final List<Offer<T>> offers = new ArrayList<>();

  /**
   * Offers a place.
   *
   * @param cost how little it is liked before anything is crossed
   * @param made makes it, if it comes to that
   */
  public void offer(double cost, Supplier<T> made) {
    offers.add(new Offer<>(cost, made));
  }

  /**
   * Chooses. Places are asked about from the least own cost on, until none left could be cheaper.
   *
   * @param worth no place that costs as much is chosen
   * @param crossing what places cost where they are
   * @return the cheapest, of two alike the one with the least own cost, then the one offered first;
   *     empty if all are barred or too dear
   */
  public Optional<Chosen<T>> choose(double worth, Crossing<T> crossing) {
    List<Offer<T>> sorted = new ArrayList<>(offers);
    sorted.sort(Comparator.comparingDouble(Offer::cost));
    Chosen<T> best = null;
    double least = worth;
    for (Offer<T> offer : sorted) {
      if (offer.cost() >= least) {
        break;
      }
      T place = offer.made().get();
      double cost = crossing.of(place, offer.cost(), least);
      if (cost < least) {
        least = cost;
        best = new Chosen<>(place, offer.cost(), cost);
      }
    }
    return Optional.ofNullable(best);
  }
}
