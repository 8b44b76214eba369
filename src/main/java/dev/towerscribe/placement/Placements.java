package dev.towerscribe.placement;

import dev.towerscribe.alignment.Alignment;
import dev.towerscribe.alignment.NotReached;
import dev.towerscribe.alignment.Reading;
import dev.towerscribe.alignment.SideAlignment;
import dev.towerscribe.alignment.StrutFigures;
import dev.towerscribe.alignment.StrutRodPoses;
import dev.towerscribe.finding.Finding;
import dev.towerscribe.finding.JobRejected;
import dev.towerscribe.layout.JobLayout;
import dev.towerscribe.layout.Layout;
import dev.towerscribe.layout.quick.MountCheck;
import dev.towerscribe.model.Job;
import dev.towerscribe.model.Plate;
import dev.towerscribe.model.SideJob;
import dev.towerscribe.placement.PlacementSearch.Best;
import dev.towerscribe.placement.PlacementSearch.Want;
import dev.towerscribe.quantity.Angle;
import java.util.ArrayList;
import java.util.Collection;
import java.util.LinkedHashMap;
import java.util.List;
import java.util.Map;
import java.util.Optional;
import java.util.function.DoubleConsumer;
import java.util.stream.Collectors;

/** Finds where a job's plates can best go: one placement that fits every side of the job. */
public final class Placements {
  /**
   * How much of the score for the aims, in degrees of caster, an offer may give up for what it is
   * best at.
   */
  public static final double GIVEN_UP_DEG = 0.5;

  private Placements() {}

  /**
   * What a search found.
   *
   * @param offers the short list, the best for the aims first; empty if no placement stands
   * @param map where the plates can go, if it was asked for
   * @param estimate whether caster and camber are estimates from a measured axis
   * @param looked how many placements were looked at
   * @param always stops that no placement can put right and nobody can accept
   * @param standing stops that stand at the offers, but are a person's to answer for wherever the
   *     plates go
   * @param inTheWay if no placement stands though none of those stops: what bars most of them, the
   *     last to give way first
   */
  public record Found(
      List<Offer> offers,
      Optional<FeasibleMap> map,
      boolean estimate,
      long looked,
      List<Finding> always,
      List<Finding> standing,
      List<FeasibleMap.Barrier> inTheWay) {
    /** Copies the lists. */
    public Found {
      offers = List.copyOf(offers);
      always = List.copyOf(always);
      standing = List.copyOf(standing);
      inTheWay = List.copyOf(inTheWay);
    }
  }

  /**
   * How a search is run. None of it changes what is found, except for the range.
   *
   * @param range how far it goes
   * @param threads how many share the work, at least one
   * @param withMap whether a map of where the plates can go is wanted
   */
  public record Settings(SearchRange range, int threads, boolean withMap) {}

  /**
   * Searches.
   *
   * @param job the job; its own mount does not matter
   * @param settings how
   * @param progress told by any thread how far it has come, 0 to 1
   * @return what was found
   * @throws CannotPlace if the job lacks what a search needs
   */
  public static Found find(Job job, Settings settings, DoubleConsumer progress) throws CannotPlace {
    return find(job, Lattice.of(job), settings, progress);
  }

  static Found find(Job measured, Lattice lattice, Settings settings, DoubleConsumer progress)
      throws CannotPlace {
    Job job = atRest(measured);
    boolean estimate = ready(job);
    MountCheck check = MountCheck.of(job, StrutRodPoses::of);
    if (!check.always().isEmpty()) {
      return new Found(
          List.of(), Optional.empty(), estimate, 0, check.always(), check.standing(), List.of());
    }
    Workers workers =
        new Workers(settings.threads(), () -> new Score(job, lattice, check), progress);
    PlacementSearch search = new PlacementSearch(lattice, settings.range(), workers);
    try {
      search.look();
      Map<Lattice.Place, List<String>> named = new LinkedHashMap<>();
      Optional<Best> best = search.best(Want.AIMS, Double.NEGATIVE_INFINITY, 0.4, 0.5);
      if (best.isPresent()) {
        named.put(best.get().place(), new ArrayList<>(List.of(Want.AIMS.words())));
        double floor = best.get().aims() - GIVEN_UP_DEG;
        others(search, floor, estimate, named);
      }
      Score score = new Score(job, lattice, check);
      LimitingFactor heldBack = new LimitingFactor(job, lattice, search, score);
      List<Offer> offers = new ArrayList<>();
      Map<String, Finding> standing = new LinkedHashMap<>();
      check.standing().forEach(f -> standing.put(f.id(), f));
      for (Map.Entry<Lattice.Place, List<String>> one : named.entrySet()) {
        offers.add(
            offer(
                job.with(lattice.mount(one.getKey())),
                String.join(", ", one.getValue()),
                check,
                score.room(one.getKey()),
                heldBack.words(one.getKey()),
                standing));
      }
      Optional<FeasibleMap> map =
          settings.withMap() || offers.isEmpty()
              ? Optional.of(FeasibleMap.of(workers, lattice, settings.range(), 0.7))
              : Optional.empty();
      progress.accept(1.0);
      List<FeasibleMap.Barrier> inTheWay =
          offers.isEmpty() ? map.orElseThrow().mostly() : List.of();
      return new Found(
          offers,
          settings.withMap() ? map : Optional.empty(),
          estimate,
          search.looked(),
          List.of(),
          List.copyOf(standing.values()),
          inTheWay);
    } catch (NotReached e) {
      throw CannotPlace.stopped(
          ("the strut as measured does not work out: %s; run check, and measure the points that it"
                  + " names again")
              .formatted(e.reason().words()));
    }
  }

  private static void others(
      PlacementSearch search,
      double floor,
      boolean estimate,
      Map<Lattice.Place, List<String>> named)
      throws NotReached {
    double at = 0.5;
    for (Want want : Want.values()) {
      if (want != Want.AIMS && !(estimate && want == Want.BUMP_STEER)) {
        search
            .best(want, floor, at, at + 0.05)
            .ifPresent(
                b -> named.computeIfAbsent(b.place(), p -> new ArrayList<>()).add(want.words()));
        at += 0.05;
      }
    }
  }

  /** Whether figures are estimates; refuses a job that a search cannot be made for. */
  private static boolean ready(Job job) throws CannotPlace {
    List<SideJob> sides = List.copyOf(job.sides().values());
    for (SideJob side : sides) {
      if (side.strut().isEmpty() && side.axis().isEmpty()) {
        throw CannotPlace.lacking(
            ("the job gives neither the strut's points nor a steering axis for the %s side, so"
                    + " nothing is known of its caster and camber; add [strut] or [axis]")
                .formatted(side.side().word()));
      }
      Plate first = sides.get(0).plate();
      if (!side.plate().slot().equals(first.slot())
          || side.plate().bearingXMm() != first.bearingXMm()) {
        throw CannotPlace.lacking(
            "the plates of both sides have different slots, so no one placement serves both; place"
                + " each side in a job of its own");
      }
    }
    String stops =
        Alignment.of(job).sides().values().stream()
            .filter(s -> s.before().isEmpty())
            .flatMap(s -> s.findings().stream())
            .filter(Finding::isStop)
            .map(f -> f.id() + ": " + f.say())
            .distinct()
            .collect(Collectors.joining("; "));
    if (!stops.isEmpty()) {
      throw CannotPlace.stopped("the strut as measured does not work out: " + stops);
    }
    return isEstimate(job);
  }

  /**
   * Whether a search's figures are estimates.
   *
   * @param job the job
   * @return true if the strut's points are missing on a side
   */
  public static boolean isEstimate(Job job) {
    return job.sides().values().stream().anyMatch(s -> s.strut().isEmpty());
  }

  /** A tower past its dome has no place for a plate: its own checks say so. */
  private static Job atRest(Job job) {
    try {
      return Layout.atRest(job);
    } catch (JobRejected e) {
      return job;
    }
  }

  /** The figures of a job as it stands, as an offer of that name. */
  private static Offer offer(
      Job placed,
      String name,
      MountCheck check,
      double room,
      String heldBack,
      Map<String, Finding> standing) {
    Layouts.Worked worked;
    try {
      worked = Layouts.of(placed);
    } catch (JobRejected e) {
      throw new IllegalStateException("an offer past the dome of its tower", e);
    }
    JobLayout layout = worked.layout();
    for (Finding stop : layout.stops()) {
      if (Layouts.judgesPlace(stop, check.standing())) {
        throw new IllegalStateException("an offer with a stop: " + stop.id());
      }
      standing.putIfAbsent(stop.id(), stop);
    }
    double notches =
        layout.sides().values().stream()
            .flatMap(s -> s.notches().stream())
            .mapToDouble(n -> n.removed().area())
            .sum();
    Collection<SideAlignment> sides = worked.alignment().sides().values();
    List<Reading> readings = sides.stream().map(s -> s.at().orElseThrow()).toList();
    return new Offer(
        name,
        placed.sides().values().iterator().next().mount(),
        readings.stream().map(Reading::caster).min(Angle::compareTo).orElseThrow(),
        readings.stream().map(Reading::camber).min(Angle::compareTo).orElseThrow(),
        sides.stream().flatMap(s -> peak(s).stream()).max(Angle::compareTo),
        check.openingMm2() + notches,
        room,
        heldBack);
  }

  private static Optional<Angle> peak(SideAlignment side) {
    return side.strut()
        .flatMap(StrutFigures::at)
        .map(curves -> new Angle(Math.abs(curves.bumpSteer().peakRad())));
  }
}
