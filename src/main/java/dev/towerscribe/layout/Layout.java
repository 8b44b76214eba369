package dev.towerscribe.layout;

import dev.towerscribe.finding.Fault;
import dev.towerscribe.finding.Finding;
import dev.towerscribe.finding.JobRejected;
import dev.towerscribe.geometry.Contour;
import dev.towerscribe.geometry.Region;
import dev.towerscribe.geometry.Vec2;
import dev.towerscribe.model.Job;
import dev.towerscribe.model.Mount;
import dev.towerscribe.model.Plate;
import dev.towerscribe.model.ShaftReach;
import dev.towerscribe.model.Side;
import dev.towerscribe.model.SideJob;
import dev.towerscribe.model.Tower;
import dev.towerscribe.quantity.LengthUnit;
import dev.towerscribe.quantity.Numbers;
import java.util.ArrayList;
import java.util.EnumMap;
import java.util.List;
import java.util.Map;
import java.util.Optional;
import java.util.function.Function;
import java.util.stream.Stream;

/** Lays a job out: from what was measured and chosen to where everything goes. */
public final class Layout {
  private Layout() {}

  /**
   * Lays out every side of a job and runs every check, the strut taken to stay as it was measured.
   *
   * @param job the job
   * @return layout of each side
   * @throws JobRejected if something lies past the edge of a domed tower top
   */
  public static JobLayout of(Job job) throws JobRejected {
    return of(job, side -> Optional.empty());
  }

  /**
   * Lays out every side of a job and runs every check.
   *
   * @param job the job
   * @param shaft which ways a side's shaft points over travel and steer, where that is known
   * @return layout of each side
   * @throws JobRejected if something lies past the edge of a domed tower top
   */
  public static JobLayout of(Job job, Function<SideJob, Optional<ShaftReach>> shaft)
      throws JobRejected {
    List<Fault> faults = new ArrayList<>();
    job.sides().values().forEach(s -> domeFaults(s, job.units(), faults));
    if (!faults.isEmpty()) {
      throw new JobRejected(faults);
    }
    Map<Side, SideLayout> sides = new EnumMap<>(Side.class);
    for (SideJob side : job.sides().values()) {
      sides.put(side.side(), side(side, job, shaft.apply(side)));
    }
    return new JobLayout(job, sides);
  }

  private static SideLayout side(SideJob job, Job whole, Optional<ShaftReach> shaft) {
    Cuts cuts = cuts(job);
    SideLayout bare = bare(job, cuts, shaft);
    Findings findings = new Findings(job.side(), whole.units());
    HoleChecks.run(bare, cuts.finished(), findings);
    CutChecks.run(bare, cuts, findings);
    PlateChecks.run(bare, cuts.finished(), findings);
    SocketChecks.run(bare, findings);
    TowerChecks.run(bare, whole, findings);
    return bare.with(findings.gravestFirst());
  }

  /**
   * Checks holes that lie elsewhere than planned: metal round each, washers, keep-outs and
   * distances between them.
   *
   * @param planned the tower as planned
   * @param holes its holes as they are, sizes too
   * @param plate where the plate went
   * @param units unit of lengths in sentences
   * @return findings with the ids of the plan's own, gravest first
   */
  public static List<Finding> holeChecks(
      SideLayout planned, List<PlacedHole> holes, Mount plate, LengthUnit units) {
    SideJob job = planned.job().with(plate);
    Findings findings = new Findings(job.side(), units);
    SideLayout there =
        new SideLayout(
            job,
            PlateFrames.toPlan(job),
            Region.inside(job.plate().outline()).mapped(PlateFrames.toPlan(job)),
            holes,
            planned.bearing(),
            planned.slotFrom(),
            planned.slotTo(),
            planned.opening(),
            planned.mark(),
            planned.finalCut(),
            planned.roughCut(),
            planned.starters(),
            planned.sweep(),
            planned.notches(),
            Spans.of(holes),
            List.of());
    HoleChecks.run(there, cuts(job).finished(), findings);
    return findings.gravestFirst();
  }

  /**
   * The opening once it is cut: the final cut, with the old opening where that reaches further.
   *
   * @param job a side
   * @return plan region
   */
  public static Region finished(SideJob job) {
    return cuts(job).finished();
  }

  /** The cuts of a side, wherever its plate goes. */
  static Cuts cuts(SideJob job) {
    Tower tower = job.tower();
    return Cuts.of(Region.inside(tower.mark()), Region.inside(tower.opening()), job.cut());
  }

  /** The holes of a side in the plate's order. */
  static List<PlacedHole> holes(SideJob job) {
    var frame = PlateFrames.toPlan(job);
    return job.plate().bolts().stream()
        .map(
            bolt -> {
              double diameter = bolt.thread().holeMm(job.holes().fit());
              return new PlacedHole(bolt, frame.map(bolt.at()), diameter, Drills.upTo(diameter));
            })
        .toList();
  }

  /** A side laid out, not yet checked. */
  static SideLayout bare(SideJob job, Cuts cuts, Optional<ShaftReach> shaft) {
    Plate plate = job.plate();
    var frame = PlateFrames.toPlan(job);
    Mount mount = job.mount();
    List<PlacedHole> holes = holes(job);
    Region opening = Region.inside(job.tower().opening());
    Region mark = Region.inside(job.tower().mark());
    Sweep sweep = Sweeps.of(job, shaft);
    List<Notch> notches = Notches.of(job, holes);
    return new SideLayout(
        job,
        frame,
        Region.inside(plate.outline()).mapped(frame),
        holes,
        job.bearing(mount.settingMm()),
        job.bearing(plate.slot().fromMm()),
        job.bearing(plate.slot().toMm()),
        opening,
        mark,
        cuts.finalCut(),
        cuts.roughCut(),
        Starters.in(cuts.roughCut(), opening, job.cut().starterMm()),
        sweep,
        notches,
        Spans.of(holes),
        List.of());
  }

  /** Paper cannot follow a dome past its equator, and a plate cannot be drilled there. */
  private static void domeFaults(SideJob side, LengthUnit units, List<Fault> faults) {
    pastDome(side)
        .ifPresent(
            farthest ->
                faults.add(
                    new Fault(
                        side.side().word() + ".tower.crown",
                        "a dome of radius "
                            + text(side.tower().crown().orElseThrow().radiusMm(), units),
                        "more than "
                            + text(farthest, units)
                            + ", where the farthest point of the job lies",
                        "Measure the width and the rise of the dome again")));
  }

  /** How far out the farthest point of a job lies, if that is past the edge of its dome, mm. */
  static Optional<Double> pastDome(SideJob side) {
    Tower tower = side.tower();
    if (tower.crown().isEmpty()) {
      return Optional.empty();
    }
    var frame = PlateFrames.toPlan(side);
    double ofPlate =
        Stream.concat(
                side.plate().bolts().stream().map(b -> frame.map(b.at())),
                outermost(side.plate().outline().mapped(frame)))
            .mapToDouble(Vec2::norm)
            .max()
            .orElse(0.0);
    double farthest = Math.max(ofPlate, outermostMm(tower));
    return farthest >= tower.crown().get().radiusMm() ? Optional.of(farthest) : Optional.empty();
  }

  /** How far out the farthest point of a tower lies, wherever its plate goes, mm. */
  static double outermostMm(Tower tower) {
    return Stream.of(
            tower.landmarks().stream().map(l -> l.at()),
            tower.straightedges().stream().flatMap(s -> Stream.of(s.from(), s.to())),
            Stream.of(tower.mark(), tower.opening()).flatMap(Layout::outermost),
            tower.land().stream().flatMap(Layout::outermost),
            tower.wall().stream().flatMap(Layout::outermost),
            tower.keepOuts().stream().flatMap(k -> outermost(k.outline())),
            tower.brackets().stream().flatMap(b -> outermost(b.outline())))
        .flatMap(s -> s)
        .mapToDouble(Vec2::norm)
        .max()
        .orElse(0.0);
  }

  private static String text(double mm, LengthUnit units) {
    return Numbers.fixed(units.fromMm(mm), units == LengthUnit.MM ? 1 : 3) + " " + units.symbol();
  }

  private static Stream<Vec2> outermost(Contour contour) {
    return contour.flattened(1.0).stream();
  }
}
