package dev.towerscribe.drilled;

import java.util.ArrayList;
import java.util.Comparator;
import java.util.List;
import java.util.Optional;

/**
 * The least drilling out of tower holes that lets the plate on. The figures are the very limit,
 * where the bolts just go in: whoever drills wants some more.
 *
 * @param each for every bolt, the least new diameter of its tower hole alone
 * @param allByMm by how much every tower hole's diameter must grow where all grow alike; 0 where
 *     the plate goes on; empty where a bolt does not go through the plate's own hole, which no
 *     drilling of the tower mends
 */
public record Enlargement(List<One> each, Optional<Double> allByMm) {
  /** How near to the least the diameters are, mm: far below what calipers resolve. */
  public static final double NEAR_MM = 1e-7;

  /**
   * One hole drilled out alone.
   *
   * @param name the bolt
   * @param diameterMm its least new diameter; empty where this hole alone does not do it
   * @param byMm by how much it grows, 0 where the plate goes on; empty likewise
   */
  public record One(String name, Optional<Double> diameterMm, Optional<Double> byMm) {}

  /** Copies the list. */
  public Enlargement {
    each = List.copyOf(each);
  }

  /**
   * The one hole that has to grow least.
   *
   * @return the first of the least; empty if no hole alone does it
   */
  public Optional<One> best() {
    return each.stream()
        .filter(o -> o.byMm().isPresent())
        .min(Comparator.comparingDouble(o -> o.byMm().orElseThrow()));
  }

  /**
   * Works it out.
   *
   * @param mating a plate that was tried
   * @return what lets it on
   */
  public static Enlargement of(PlateFitSolver mating) {
    List<BoltPlay> pegs = mating.pegs();
    List<One> each = new ArrayList<>();
    boolean plate = pegs.stream().allMatch(BoltPlay::entersPlate);
    for (int i = 0; i < pegs.size(); i++) {
      BoltPlay peg = pegs.get(i);
      Optional<Double> by = plate ? alone(mating, i) : Optional.empty();
      each.add(new One(peg.name(), by.map(b -> peg.towerHoleMm() + b), by));
    }
    // A diameter more by e gives a play more by e / 2, and as much slack.
    double all =
        pegs.stream()
            .mapToDouble(peg -> peg.boltMm() - peg.towerHoleMm())
            .reduce(mating.placesAllow() ? 0.0 : -2 * mating.slackMm(), Math::max);
    return new Enlargement(each, plate ? Optional.of(all) : Optional.empty());
  }

  private static Optional<Double> alone(PlateFitSolver mating, int hole) {
    List<BoltPlay> others = new ArrayList<>(mating.pegs());
    BoltPlay peg = others.remove(hole);
    double toEnter = Math.max(0.0, peg.boltMm() - peg.towerHoleMm());
    return others.stream().allMatch(BoltPlay::entersTower)
        ? placing(mating, hole).map(by -> Math.max(by, toEnter))
        : Optional.empty();
  }

  /** The least growth that brings the hole to where the others leave the plate. */
  private static Optional<Double> placing(PlateFitSolver mating, int hole) {
    if (mating.placesAllow()) {
      return Optional.of(0.0);
    }
    List<BoltPlay> pegs = mating.pegs();
    List<BoltPlay> others = new ArrayList<>(pegs);
    BoltPlay peg = others.remove(hole);
    // With one slack of growth in radius at least; at most what the others' best pose asks for.
    double low = -2 * mating.slackMm();
    double high = low;
    if (!others.isEmpty()) {
      AngleSearch rest = new AngleSearch(others, AngleSearch.plays(others)).run(false);
      if (rest.best() < -AngleSearch.PROVED_MM) {
        return Optional.empty();
      }
      rest.look(rest.bestTurn());
      RigidMove free = rest.move(rest.bestTurn());
      double away = peg.hole().distanceTo(free.of(peg.place()));
      high = Math.max(low, 2 * (away - peg.playMm()));
    }
    while (high - low > NEAR_MM) {
      double mid = low + (high - low) / 2;
      if (goesOn(pegs, hole, mid)) {
        high = mid;
      } else {
        low = mid;
      }
    }
    return Optional.of(high);
  }

  private static boolean goesOn(List<BoltPlay> pegs, int hole, double by) {
    double[] plays = AngleSearch.plays(pegs);
    plays[hole] += by / 2;
    return new AngleSearch(pegs, plays).run(true).best() >= -AngleSearch.PROVED_MM;
  }
}
