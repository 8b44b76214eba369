package dev.towerscribe.layout;

import dev.towerscribe.finding.Fault;
import dev.towerscribe.finding.Finding;
import dev.towerscribe.finding.Findings;
import dev.towerscribe.finding.JobRejected;
import dev.towerscribe.finding.Stage;
import dev.towerscribe.geometry.Contour;
import dev.towerscribe.geometry.Frame2;
import dev.towerscribe.geometry.Region;
import dev.towerscribe.geometry.Vec2;
import dev.towerscribe.model.Job;
import dev.towerscribe.model.Mount;
import dev.towerscribe.model.Seating;
import dev.towerscribe.model.Side;
import dev.towerscribe.model.SideJob;
import dev.towerscribe.model.StrutRodReach;
import dev.towerscribe.model.Tower;
import dev.towerscribe.quantity.LengthUnit;
import dev.towerscribe.quantity.Lengths;
import dev.towerscribe.quantity.Lengths.Fineness;
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
   * Lays out every side of a job that is not begun, and runs every check.
   *
   * @param job the job
   * @param rods which ways a side's strut rod points over travel and steer, where that is known
   * @return layout of each side
   * @throws JobRejected if something lies past the edge of a domed tower top
   */
  public static JobLayout of(Job job, Function<SideJob, Optional<StrutRodReach>> rods)
      throws JobRejected {
    return of(job, rods, Stage.PLANNED);
  }

  /**
   * Lays out every side of a job and runs every check.
   *
   * @param job the job
   * @param rods which ways a side's strut rod points over travel and steer, where that is known
   * @param stage how far the work has come: what findings advise
   * @return layout of each side
   * @throws JobRejected if something lies past the edge of a domed tower top
   */
  public static JobLayout of(Job job, Function<SideJob, Optional<StrutRodReach>> rods, Stage stage)
      throws JobRejected {
    domeFaults(job);
    List<Finding> ofJob = jobFindings(job, stage);
    Map<Side, SideLayout> sides = new EnumMap<>(Side.class);
    for (SideJob side : job.sides().values()) {
      List<Finding> more =
          ofJob.stream().filter(f -> f.isOf("both") || f.isOf(side.side().word())).toList();
      sides.put(
          side.side(), side(side, job, j -> Sweep.of(j, rods.apply(j)), stage).withMore(more));
    }
    return new JobLayout(job, sides);
  }

  private static SideLayout side(
      SideJob job, Job whole, Function<SideJob, Sweep> sweeps, Stage stage) {
    Cuts cuts = Cuts.of(job);
    SideLayout bare = bare(job, cuts, sweeps.apply(job));
    Findings findings = findings(job, whole.units(), stage);
    HoleChecks.run(bare, cuts.finished(), findings);
    CutChecks.run(bare, sweeps, cuts, findings);
    PlateChecks.run(bare, cuts.finished(), findings);
    SocketChecks.run(bare, findings);
    TowerChecks.run(bare, whole, findings);
    return bare.with(findings.gravestFirst());
  }

  private static Findings findings(SideJob job, LengthUnit units, Stage stage) {
    return new Findings(job.side().word(), Lengths.in(units), stage);
  }

  /**
   * The checks of a job as a whole, which come out the same wherever the plates go.
   *
   * @param job the job
   * @param stage how far the work has come: what findings advise
   * @return findings of both sides, and of single ones
   */
  public static List<Finding> jobFindings(Job job, Stage stage) {
    return JobChecks.of(job, stage);
  }

  /**
   * The checks that come out the same wherever the plate goes.
   *
   * @param job a side
   * @param cuts its cuts
   * @param units unit of lengths in sentences
   * @return their findings, most serious first
   */
  public static List<Finding> fixedFindings(SideJob job, Cuts cuts, LengthUnit units) {
    SideLayout bare = bare(job, cuts, Sweep.of(job, Optional.empty()));
    Findings findings = findings(job, units, Stage.PLANNED);
    PatternChecks.run(bare, findings);
    CutChecks.shape(bare, cuts, findings);
    CutChecks.keepOuts(bare, cuts.finished(), findings);
    TowerChecks.seat(job, findings);
    TowerChecks.registration(job.tower(), findings);
    return findings.gravestFirst();
  }

  /**
   * Checks holes that lie elsewhere than planned: metal round each, washers, keep-outs and
   * distances between them.
   *
   * @param planned the tower as planned
   * @param holes its holes as they are, sizes too
   * @param plate where the plate went
   * @param units unit of lengths in sentences
   * @return findings with the ids of the plan's own, most serious first
   */
  public static List<Finding> holeChecks(
      SideLayout planned, List<PlacedHole> holes, Mount plate, LengthUnit units) {
    SideJob job = planned.job().with(plate);
    Findings findings = findings(job, units, Stage.DRILLED);
    HoleChecks.run(planned.with(job, holes), Cuts.of(job).finished(), findings);
    // What is drilled stays where it is.
    return findings.gravestFirst().stream().map(Finding::fixed).toList();
  }

  /**
   * The holes of a side where its plate goes.
   *
   * @param job a side
   * @return holes in the plate's order
   */
  public static List<PlacedHole> holes(SideJob job) {
    Frame2 frame = PlateFrames.toPlan(job);
    return job.plate().bolts().stream()
        .map(
            bolt -> {
              double diameter = bolt.thread().holeMm(job.holes().fit());
              return new PlacedHole(bolt, frame.map(bolt.at()), diameter, Drills.upTo(diameter));
            })
        .toList();
  }

  /**
   * A job whose plates have come to rest: the height of each bearing counts how far its plate lies
   * off a flat top, {@link RestingPlane#overOriginMm}.
   *
   * @param job any job
   * @return the job, heights filled in
   * @throws JobRejected if something lies past the edge of a domed tower top
   */
  public static Job atRest(Job job) throws JobRejected {
    domeFaults(job);
    return job.withSides(side -> side.with(seating(side)));
  }

  private static Seating seating(SideJob side) {
    if (side.tower().crown().isEmpty() && side.tower().lip().isEmpty()) {
      return side.seating().resting(0.0, 0.0);
    }
    Region finished = Cuts.of(side).finished();
    return side.seating()
        .resting(
            RestingPlane.overOriginMm(side, finished),
            RestingPlane.rimOverOriginMm(side, finished));
  }

  private static void domeFaults(Job job) throws JobRejected {
    Lengths lengths = Lengths.in(job.units());
    List<Fault> faults =
        job.sides().values().stream().flatMap(s -> domeFault(s, lengths).stream()).toList();
    if (!faults.isEmpty()) {
      throw new JobRejected(faults);
    }
  }

  /** A side laid out, not yet checked. */
  private static SideLayout bare(SideJob job, Cuts cuts, Sweep sweep) {
    List<PlacedHole> holes = holes(job);
    Region opening = Region.inside(job.tower().opening());
    return new SideLayout(
        job,
        holes,
        cuts.finalCut(),
        cuts.roughCut(),
        StarterHole.in(cuts.roughCut(), opening, job.cut().starterMm()),
        sweep,
        Notches.of(job, holes),
        Span.between(holes),
        RestingPlane.of(job, cuts.finished(), holes),
        List.of());
  }

  /** Paper cannot follow a dome past its equator, and a plate cannot be drilled there. */
  private static Optional<Fault> domeFault(SideJob side, Lengths lengths) {
    return pastDome(side)
        .map(
            farthest ->
                new Fault(
                    side.side().word() + ".tower.crown",
                    "a dome of radius "
                        + lengths.with(
                            side.tower().crown().orElseThrow().radiusMm(), Fineness.PLACE),
                    "more than %s, where the farthest point of the job lies"
                        .formatted(lengths.with(farthest, Fineness.PLACE)),
                    "Measure the width and the rise of the dome again"));
  }

  /**
   * How far out the farthest point of a job lies, if that is past the edge of its dome.
   *
   * @param side a side, its plate where it goes
   * @return mm; empty where all is well, and without a dome
   */
  public static Optional<Double> pastDome(SideJob side) {
    Tower tower = side.tower();
    if (tower.crown().isEmpty()) {
      return Optional.empty();
    }
    Frame2 frame = PlateFrames.toPlan(side);
    Stream<Vec2> ofPlate =
        Stream.concat(
            side.plate().bolts().stream().map(b -> frame.map(b.at())),
            outermost(side.plate().outline().mapped(frame)));
    double farthest = Math.max(farthest(ofPlate), outermostMm(tower));
    return farthest >= tower.crown().get().radiusMm() ? Optional.of(farthest) : Optional.empty();
  }

  /**
   * How far out the farthest point of a tower lies, wherever its plate goes.
   *
   * @param tower the tower
   * @return mm from the plan's origin
   */
  public static double outermostMm(Tower tower) {
    return farthest(
        Stream.of(
                tower.landmarks().stream().map(l -> l.at()),
                tower.straightedges().stream().flatMap(s -> Stream.of(s.from(), s.to())),
                Stream.of(tower.mark(), tower.opening()).flatMap(Layout::outermost),
                tower.boltingFace().stream().flatMap(Layout::outermost),
                tower.wall().stream().flatMap(Layout::outermost),
                tower.keepOuts().stream().flatMap(k -> outermost(k.outline())),
                tower.brackets().stream().flatMap(b -> outermost(b.outline())))
            .flatMap(s -> s));
  }

  private static double farthest(Stream<Vec2> points) {
    return points.mapToDouble(Vec2::norm).max().orElse(0.0);
  }

  private static Stream<Vec2> outermost(Contour contour) {
    return contour.flattened(1.0).stream();
  }
}
