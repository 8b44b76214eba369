package dev.towerscribe.layout.quick;

import dev.towerscribe.finding.Finding;
import dev.towerscribe.finding.Stage;
import dev.towerscribe.geometry.Box;
import dev.towerscribe.geometry.Region;
import dev.towerscribe.layout.Cuts;
import dev.towerscribe.layout.Layout;
import dev.towerscribe.model.Job;
import dev.towerscribe.model.Side;
import dev.towerscribe.model.SideJob;
import dev.towerscribe.model.StrutPoints;
import dev.towerscribe.model.StrutRodReach;
import java.util.ArrayList;
import java.util.EnumMap;
import java.util.List;
import java.util.Map;
import java.util.Optional;
import java.util.function.Function;

/**
 * Whether a job would have no stop finding with its plates somewhere else, for searches that ask
 * hundreds of thousands of times. The answer is that of {@link Layout#of}, for both towers, but for
 * the stops that stand wherever the plates go and are a person's to answer for; a setting does not
 * change it. Safe for several threads, each with its own {@link Scratch}.
 */
public final class MountCheck {
  private final List<QuickTowerCheck> towers;

  /** How many towers each of them stands for. */
  private final List<Integer> counts;

  private final List<Finding> always;
  private final List<Finding> standing;
  private final double openingMm2;

  private MountCheck(
      List<QuickTowerCheck> towers, List<Integer> counts, List<Finding> fixed, double openingMm2) {
    this.towers = List.copyOf(towers);
    this.counts = List.copyOf(counts);
    always = fixed.stream().filter(f -> !f.acceptable()).toList();
    standing = fixed.stream().filter(Finding::acceptable).toList();
    this.openingMm2 = openingMm2;
  }

  /**
   * Prepares a job.
   *
   * @param job any job; its mount does not matter
   * @param rods which ways a side's strut rod points over travel and steer, where that is known
   * @return its check
   */
  public static MountCheck of(Job job, Function<SideJob, Optional<StrutRodReach>> rods) {
    Map<Side, Cuts> allCuts = new EnumMap<>(Side.class);
    List<SideJob> sides = List.copyOf(job.sides().values());
    SideJob first = sides.get(0);
    for (SideJob side : sides) {
      boolean twin = side != first && twins(first, side);
      allCuts.put(side.side(), twin ? allCuts.get(first.side()) : Cuts.of(side));
    }
    Box bearings =
        allCuts.values().stream().map(QuickTowerCheck::bearings).reduce(Box::union).orElseThrow();
    List<QuickTowerCheck> towers = new ArrayList<>();
    List<Integer> counts = new ArrayList<>();
    List<Finding> fixed = new ArrayList<>();
    double opening = 0.0;
    StrutRodModel.Known moving = null;
    for (SideJob side : sides) {
      Cuts cuts = allCuts.get(side.side());
      Layout.fixedFindings(side, cuts, job.units()).stream()
          .filter(Finding::isStop)
          .forEach(fixed::add);
      if (side != first && twins(first, side)) {
        // What is said of the one is said of the other.
        counts.set(0, 2);
        opening *= 2;
        continue;
      }
      if (side == first || !sameRod(first, side)) {
        moving = StrutRodModel.fit(side, rods, bearings);
      }
      towers.add(new QuickTowerCheck(side, cuts, rods, moving));
      counts.add(1);
      opening += cuts.finished().area() - Region.inside(side.tower().opening()).area();
    }
    Layout.jobFindings(job, Stage.PLANNED).stream().filter(Finding::isStop).forEach(fixed::add);
    return new MountCheck(towers, counts, fixed, opening);
  }

  /** Whether the strut rods of both sides move alike: one side is the other's mirror image. */
  private static boolean sameRod(SideJob a, SideJob b) {
    return a.strut().map(StrutPoints::mirrored).equals(b.strut())
        && a.tower().lean().equals(b.tower().lean())
        && a.tower().pivotHeightMm() == b.tower().pivotHeightMm()
        && a.tower().throughMm() == b.tower().throughMm()
        && a.seating().equals(b.seating())
        && a.plate().equals(b.plate());
  }

  /** Whether one side is the other's mirror image in all that a placement is checked for. */
  private static boolean twins(SideJob a, SideJob b) {
    return sameRod(a, b)
        && a.plate().handed()
        && a.tower().equals(b.tower())
        && a.holes().equals(b.holes())
        && a.cut().equals(b.cut())
        && a.tools().equals(b.tools());
  }

  /**
   * Stops that no placement can put right and nobody can accept: with one of them nothing stands.
   *
   * @return findings, perhaps none
   */
  public List<Finding> always() {
    return always;
  }

  /**
   * Stops that no placement can put right, but a person may answer for: a search goes on beside
   * them.
   *
   * @return findings, perhaps none
   */
  public List<Finding> standing() {
    return standing;
  }

  /**
   * Metal cut from the openings of all towers, wherever the plates go.
   *
   * @return mm2
   */
  public double openingMm2() {
    return openingMm2;
  }

  /**
   * Whether a placement leaves no stop finding on any tower.
   *
   * @param placed the thread's own room with the placement; told what stands in the way
   * @return true if {@link Layout#of} would find none but those {@link #standing}
   */
  public boolean allows(Scratch placed) {
    return always.isEmpty() && towers.stream().allMatch(t -> t.allows(placed));
  }

  /**
   * As {@link #allows}, but only as far as it can be said quickly.
   *
   * @param placed the thread's own room with the placement; told what stands in the way
   * @return what {@link #allows} would say, or that it would have to ask the checks
   */
  public Answer quick(Scratch placed) {
    Answer all = always.isEmpty() ? Answer.YES : Answer.NO;
    for (int i = 0; i < towers.size() && all != Answer.NO; i++) {
      all = all.and(towers.get(i).quick(placed));
    }
    return all;
  }

  /**
   * What is left at the tightest place before a hole, washer or nut comes too near an edge of the
   * metal, a landmark or a keep-out.
   *
   * @param placed the thread's own room with the placement
   * @return mm; negative infinity where one does
   */
  public double slack(Scratch placed) {
    return towers.stream().mapToDouble(t -> t.slack(placed)).min().orElseThrow();
  }

  /**
   * Metal of brackets that the sockets' circles take: the notches' area but for their tips.
   *
   * @param placed the thread's own room with the placement
   * @return mm2
   */
  public double notchesMm2(Scratch placed) {
    double area = 0.0;
    for (int i = 0; i < towers.size(); i++) {
      area += counts.get(i) * towers.get(i).overlap(placed);
    }
    return area;
  }
}
