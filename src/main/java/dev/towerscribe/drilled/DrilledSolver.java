package dev.towerscribe.drilled;

import dev.towerscribe.adjust.Propagation;
import dev.towerscribe.adjust.Repeated;
import dev.towerscribe.drilled.DrilledSide.AsDrilled;
import dev.towerscribe.drilled.DrilledSide.EdgeMetal;
import dev.towerscribe.drilled.DrilledSide.Hole;
import dev.towerscribe.drilled.DrilledSide.SpanFound;
import dev.towerscribe.drilled.HoleNetwork.Found;
import dev.towerscribe.finding.Finding;
import dev.towerscribe.finding.Findings;
import dev.towerscribe.finding.JobRejected;
import dev.towerscribe.finding.Severity;
import dev.towerscribe.geometry.Region;
import dev.towerscribe.geometry.Vec2;
import dev.towerscribe.layout.Cuts;
import dev.towerscribe.layout.JobLayout;
import dev.towerscribe.layout.Layout;
import dev.towerscribe.layout.PlacedHole;
import dev.towerscribe.layout.SideLayout;
import dev.towerscribe.model.Bolt;
import dev.towerscribe.model.Fastening;
import dev.towerscribe.model.HoleRules;
import dev.towerscribe.model.Mount;
import dev.towerscribe.model.Side;
import dev.towerscribe.model.SideJob;
import dev.towerscribe.quantity.Lengths;
import java.util.ArrayList;
import java.util.Arrays;
import java.util.List;
import java.util.Optional;
import java.util.Set;
import java.util.stream.IntStream;

/** Puts one drilled tower together: network, fit, mount, edges, and what is to be said of them. */
final class DrilledSolver {
  /** A check of the plate's own holes, which no drilling of the tower changes. */
  /** Checks of the plate alone, which drilling does not change. */
  private static final Set<String> OF_PLATE = Set.of("edge-plate", "bolt-count");

  /** The bearing among the bolts, which says nothing while one of them is not found. */
  private static final String BEARING = "bearing-hull";

  /** Checks of the plan about holes: these are made of the drilled ones instead. */
  private static final Set<String> OF_HOLES =
      Set.of(
          "edge-cut",
          "edge-land",
          "edge-landmark",
          "edge-plate",
          "bolt-count",
          "seat-land",
          "seat-cut",
          "keep-out",
          "spacing",
          BEARING,
          "fatigue");

  private final JobLayout job;
  private final Readings all;
  private final SideLayout planned;
  private final SideReadings readings;
  private final Layouter layouter;
  private final HoleNetwork network;

  DrilledSolver(JobLayout job, Readings all, Side side, Layouter layouter) {
    this.job = job;
    this.all = all;
    this.layouter = layouter;
    planned = job.sides().get(side);
    readings = all.sides().get(side);
    network = HoleSolver.of(planned, readings, all.uncertainty());
  }

  DrilledSide side() throws JobRejected {
    Optional<RigidFit> best = bestFit();
    Mount mount = planned.job().mount();
    DrilledSide bare =
        new DrilledSide(
            planned,
            readings,
            network,
            IntStream.range(0, network.holes().size()).mapToObj(i -> hole(i, best)).toList(),
            Optional.of(network)
                .filter(HoleNetwork::complete)
                .map(all -> PlateFit.of(pegs(), all.covariance())),
            edges(),
            spans(),
            best.filter(b -> network.tied())
                .map(
                    b -> new AsDrilled(b.move().of(mount), b.mountCovariance(mount).orElseThrow())),
            List.of());
    Findings findings = new Findings(planned.side().word(), Lengths.in(job.job().units()));
    new ReadingChecks(bare, all.uncertainty(), best, findings).run();
    new HoleFitChecks(bare, findings).run();
    if (bare.asDrilled().isPresent()) {
      again(bare.asDrilled().get().mount(), findings);
    }
    return bare.with(findings.gravestFirst());
  }

  private Hole hole(int i, Optional<RigidFit> best) {
    Found f = network.holes().get(i);
    Optional<Vec2> error = Optional.of(f.at().minus(f.planned().at()));
    return new Hole(f, error.filter(e -> network.tied()), best.map(b -> b.residuals().get(i)));
  }

  /** The planned pattern laid on the found holes; empty where they do not say a turn. */
  private Optional<RigidFit> bestFit() {
    List<Vec2> from = network.holes().stream().map(f -> f.planned().at()).toList();
    List<Vec2> to = network.holes().stream().map(Found::at).toList();
    return from.size() > 1 && RigidFit.plain(from, to).turnKnown()
        ? Optional.of(RigidFit.plain(from, to, places()))
        : Optional.empty();
  }

  /** Covariance of the places alone. */
  private double[][] places() {
    int n = 2 * network.holes().size();
    return Arrays.stream(network.covariance(), 0, n)
        .map(row -> Arrays.copyOf(row, n))
        .toArray(double[][]::new);
  }

  /** The bolts between the holes as drilled and the plate as planned. */
  private List<BoltPlay> pegs() {
    SideJob side = planned.job();
    boolean fixed = side.plate().make().fastening().value() == Fastening.FIXED;
    List<BoltPlay> pegs = new ArrayList<>();
    for (Found f : network.holes()) {
      Bolt bolt = f.planned().bolt();
      double nominal = bolt.thread().nominalMm();
      // A stud, or a bolt in a tapped hole, has no play in the plate.
      double inPlate = fixed ? nominal : bolt.plateHoleMm(side.holes().fit()).value();
      pegs.add(
          new BoltPlay(bolt.name(), f.at(), f.planned().at(), f.diameterMm(), inPlate, nominal));
    }
    return pegs;
  }

  private List<SpanFound> spans() {
    List<SpanFound> spans = new ArrayList<>();
    List<Found> holes = network.holes();
    for (int i = 0; i < holes.size(); i++) {
      for (int j = i + 1; j < holes.size(); j++) {
        Found a = holes.get(i);
        Found b = holes.get(j);
        Vec2 along = b.at().minus(a.at());
        double[] by = new double[network.covariance().length];
        double d = along.norm();
        if (d > 0) {
          by[2 * i] = -along.x() / d;
          by[2 * i + 1] = -along.y() / d;
          by[2 * j] = along.x() / d;
          by[2 * j + 1] = along.y() / d;
        }
        spans.add(
            new SpanFound(
                a.name(),
                b.name(),
                a.planned().at().distanceTo(b.planned().at()),
                d,
                Propagation.sd(by, network.covariance()),
                (clearance(a) + clearance(b)) / 2));
      }
    }
    return spans;
  }

  private static double clearance(Found f) {
    return f.diameterMm() - f.planned().bolt().thread().nominalMm();
  }

  private List<EdgeMetal> edges() {
    Region finished = Cuts.of(planned.job()).finished();
    HoleRules rules = planned.job().holes();
    List<EdgeMetal> edges = new ArrayList<>();
    for (PlacedHole hole : planned.holes()) {
      Optional<Found> found = network.found(hole.name());
      double diameter =
          readings.diameter(hole.name()).map(Repeated::mean).orElse(hole.diameterMm());
      Optional<Repeated> read =
          readings.edges().stream()
              .filter(e -> e.hole().equals(hole.name()))
              .map(SideReadings.EdgeGap::gap)
              .findFirst();
      Optional<Double> metal =
          found
              .filter(f -> network.tied() && !finished.isEmpty())
              .map(f -> -finished.depth(f.at()) - f.diameterMm() / 2);
      double sd = found.map(f -> Math.hypot(f.worstSdMm(), f.diameterSdMm() / 2)).orElse(0.0);
      double bolt = hole.bolt().thread().nominalMm();
      double limit = rules.edgeRule().edgeMm(bolt, diameter) - diameter / 2;
      String source = rules.edgeRule().edgeSource(bolt, diameter);
      edges.add(new EdgeMetal(hole.name(), metal, sd, read, limit, source));
    }
    return edges;
  }

  /**
   * The plan's own checks, of the holes and the plate where they now are. Of the holes, what does
   * not pass; of the rest, what is worse than it was planned.
   */
  private void again(Mount mount, Findings findings) throws JobRejected {
    List<PlacedHole> drilled = network.holes().stream().map(Found::asDrilled).toList();
    boolean all = drilled.size() == planned.holes().size();
    Layout.holeChecks(planned, drilled, mount, job.job().units()).stream()
        .filter(f -> f.severity() != Severity.NOTE && !OF_PLATE.contains(f.check()))
        .filter(f -> all || !f.check().equals(BEARING))
        .filter(f -> worse(f) || OF_HOLES.contains(f.check()) && f.isStop())
        .forEach(f -> again(f, findings));
    SideLayout moved = layouter.of(job.job().with(mount)).sides().get(planned.side());
    moved.findings().stream()
        .filter(f -> !OF_HOLES.contains(f.check()))
        .filter(f -> f.id().startsWith(planned.side().word() + "."))
        .filter(this::worse)
        .forEach(f -> again(f, findings));
  }

  private static void again(Finding f, Findings findings) {
    findings.take(
        "drilled-" + f.id().substring(f.id().indexOf('.') + 1), f.fixed(), "As drilled: ");
  }

  /** Whether a finding weighs more than in the plan. */
  private boolean worse(Finding f) {
    return planned.findings().stream()
            .filter(p -> p.id().equals(f.id()))
            .findFirst()
            .map(Finding::severity)
            .orElse(Severity.NOTE)
            .compareTo(f.severity())
        > 0;
  }
}
