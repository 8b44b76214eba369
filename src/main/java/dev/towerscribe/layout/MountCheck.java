package dev.towerscribe.layout;

import dev.towerscribe.finding.Finding;
import dev.towerscribe.geometry.Box;
import dev.towerscribe.model.Job;
import dev.towerscribe.model.ShaftReach;
import dev.towerscribe.model.Side;
import dev.towerscribe.model.SideJob;
import dev.towerscribe.model.StrutPoints;
import java.util.ArrayList;
import java.util.EnumMap;
import java.util.List;
import java.util.Map;
import java.util.Optional;
import java.util.function.Function;

/**
 * Whether a job would have no stop finding with its plates somewhere else, for searches that ask
 * hundreds of thousands of times. The answer is that of {@link Layout#of}, for both towers; a
 * setting does not change it. Safe for several threads, each with its own {@link Scratch}.
 */
public final class MountCheck {
  private final List<TowerFit> towers;

  /** How many towers each of them stands for. */
  private final List<Integer> counts;

  private final List<Finding> always;
  private final double openingMm2;

  private MountCheck(
      List<TowerFit> towers, List<Integer> counts, List<Finding> always, double openingMm2) {
    this.towers = List.copyOf(towers);
    this.counts = List.copyOf(counts);
    this.always = List.copyOf(always);
    this.openingMm2 = openingMm2;
  }

  /** What can be said quickly. */
  public enum Answer {
    /** No stop. */
    YES,
    /** A stop. */
    NO,
    /** The checks themselves must be asked. */
    UNSURE
  }

  /** What stands in the way of a placement, in the order in which it is looked for. */
  public enum Barrier {
    /** The shaft or what moves with it meets the opening's edge. */
    SHAFT,
    /** The plate does not cover the opening, or meets a wall. */
    PLATE,
    /** A hole, washer or nut is too near an edge, a landmark or a keep-out. */
    BOLTS,
    /** Too little of a bracket would be left. */
    BRACKET
  }

  /** A thread's own room to reckon in. */
  public static final class Scratch {
    private final FitScratch inner = new FitScratch();

    /** Makes one. */
    public Scratch() {}

    /**
     * What stood in the way when the last answer was no.
     *
     * @return the first thing found
     */
    public Barrier barrier() {
      return inner.barrier();
    }
  }

  /**
   * Prepares a job.
   *
   * @param job any job; its mount does not matter
   * @param shaft which ways a side's shaft points over travel and steer, where that is known
   * @return its check
   */
  public static MountCheck of(Job job, Function<SideJob, Optional<ShaftReach>> shaft) {
    List<TowerFit> towers = new ArrayList<>();
    List<Integer> counts = new ArrayList<>();
    List<Finding> always = new ArrayList<>();
    double opening = 0.0;
    Map<Side, Cuts> allCuts = new EnumMap<>(Side.class);
    SideJob first = null;
    for (SideJob side : job.sides().values()) {
      boolean twin = first != null && twins(first, side);
      allCuts.put(side.side(), twin ? allCuts.get(first.side()) : Layout.cuts(side));
      first = first == null ? side : first;
    }
    Box bearings = allCuts.values().stream().map(TowerFit::bearings).reduce(Box::union).get();
    SideJob before = null;
    ShaftModel.Known moving = null;
    for (SideJob side : job.sides().values()) {
      Cuts cuts = allCuts.get(side.side());
      if (before != null && always.isEmpty() && twins(before, side)) {
        // What is said of the one is said of the other.
        counts.set(0, 2);
        opening *= 2;
        continue;
      }
      if (before == null || !sameShaft(before, side)) {
        moving = ShaftModel.fit(side, shaft, bearings);
      }
      before = side;
      towers.add(new TowerFit(side, cuts, shaft, moving));
      counts.add(1);
      SideLayout bare = Layout.bare(side, cuts, Optional.empty());
      Findings findings = new Findings(side.side(), job.units());
      HoleChecks.spacing(bare, findings);
      CutChecks.shape(bare, cuts, findings);
      CutChecks.keepOuts(bare, cuts.finished(), findings);
      TowerChecks.registration(side.tower(), findings);
      findings.gravestFirst().stream().filter(Finding::isStop).forEach(always::add);
      opening += cuts.finished().area() - bare.opening().area();
    }
    return new MountCheck(towers, counts, always, opening);
  }

  /** Whether the shafts of both sides move alike: one side is the other's mirror image. */
  private static boolean sameShaft(SideJob a, SideJob b) {
    return a.strut().map(StrutPoints::mirrored).equals(b.strut())
        && a.tower().lean().equals(b.tower().lean())
        && a.tower().pivotHeightMm() == b.tower().pivotHeightMm()
        && a.tower().sheetMm() == b.tower().sheetMm()
        && a.plate().equals(b.plate());
  }

  /** Whether one side is the other's mirror image in all that a placement is checked for. */
  private static boolean twins(SideJob a, SideJob b) {
    return sameShaft(a, b)
        && a.plate().handed()
        && a.tower().equals(b.tower())
        && a.holes().equals(b.holes())
        && a.cut().equals(b.cut())
        && a.tools().equals(b.tools());
  }

  /**
   * Stops that no placement can put right.
   *
   * @return findings, perhaps none
   */
  public List<Finding> always() {
    return always;
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
   * @param rotation radians
   * @param rearward plate centre, mm
   * @param inboard plate centre, mm
   * @param scratch the thread's own
   * @return true if {@link Layout#of} would find none
   */
  public boolean allows(double rotation, double rearward, double inboard, Scratch scratch) {
    if (!always.isEmpty()) {
      return false;
    }
    for (TowerFit tower : towers) {
      if (!tower.allows(rotation, rearward, inboard, scratch.inner)) {
        return false;
      }
    }
    return true;
  }

  /**
   * As {@link #allows}, but only as far as it can be said quickly.
   *
   * @param rotation radians
   * @param rearward plate centre, mm
   * @param inboard plate centre, mm
   * @param scratch the thread's own
   * @return what {@link #allows} would say, or that it would have to ask the checks
   */
  public Answer quick(double rotation, double rearward, double inboard, Scratch scratch) {
    if (!always.isEmpty()) {
      return Answer.NO;
    }
    double sin = Math.sin(rotation);
    double cos = Math.cos(rotation);
    Answer all = Answer.YES;
    for (TowerFit tower : towers) {
      Answer answer = tower.quick(sin, cos, rearward, inboard, scratch.inner);
      if (answer == Answer.NO) {
        return answer;
      }
      all = answer == Answer.UNSURE ? answer : all;
    }
    return all;
  }

  /**
   * What is left at the tightest place before a hole, washer or nut comes too near an edge of the
   * metal, a landmark or a keep-out.
   *
   * @param rotation radians
   * @param rearward plate centre, mm
   * @param inboard plate centre, mm
   * @param scratch the thread's own
   * @return mm; negative infinity where one does
   */
  public double slack(double rotation, double rearward, double inboard, Scratch scratch) {
    double sin = Math.sin(rotation);
    double cos = Math.cos(rotation);
    double least = Double.POSITIVE_INFINITY;
    for (TowerFit tower : towers) {
      least = Math.min(least, tower.slack(sin, cos, rearward, inboard, scratch.inner));
    }
    return least;
  }

  /**
   * Metal of brackets that the sockets' circles take: the notches' area but for their tips.
   *
   * @param rotation radians
   * @param rearward plate centre, mm
   * @param inboard plate centre, mm
   * @param scratch the thread's own
   * @return mm2
   */
  public double notchesMm2(double rotation, double rearward, double inboard, Scratch scratch) {
    double sin = Math.sin(rotation);
    double cos = Math.cos(rotation);
    double area = 0.0;
    for (int i = 0; i < towers.size(); i++) {
      area += counts.get(i) * towers.get(i).overlap(sin, cos, rearward, inboard, scratch.inner);
    }
    return area;
  }
}
