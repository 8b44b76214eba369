package dev.towerscribe.drilled;

import dev.towerscribe.SampleJobs;
import dev.towerscribe.adjust.Edges;
import dev.towerscribe.adjust.Repeated;
import dev.towerscribe.drilled.Readings.Uncertainty;
import dev.towerscribe.drilled.SideReadings.EdgeGap;
import dev.towerscribe.drilled.SideReadings.HoleSize;
import dev.towerscribe.finding.JobRejected;
import dev.towerscribe.geometry.Vec2;
import dev.towerscribe.layout.Layout;
import dev.towerscribe.layout.PlacedHole;
import dev.towerscribe.layout.SideLayout;
import dev.towerscribe.model.Job;
import dev.towerscribe.model.Landmark;
import dev.towerscribe.model.Side;
import dev.towerscribe.model.Stated;
import dev.towerscribe.model.Tower;
import dev.towerscribe.model.TowerChange;
import dev.towerscribe.quantity.Angle;
import java.util.ArrayList;
import java.util.LinkedHashMap;
import java.util.List;
import java.util.Map;
import java.util.Random;
import java.util.function.UnaryOperator;

/** A tower with holes somewhere, and what calipers would read there. */
final class Drills {
  static final double CALIPER = 0.05;
  static final Uncertainty UNCERTAINTY = uncertainty(CALIPER, 0.3);

  final SideLayout layout;

  /** Where everything really is. */
  final Map<String, Vec2> at = new LinkedHashMap<>();

  final Map<String, Double> diameter = new LinkedHashMap<>();
  final List<SpanReading> spans = new ArrayList<>();
  final List<EdgeGap> edges = new ArrayList<>();

  private Random random = new Random(0);
  private double noise;

  Drills(SideLayout layout) {
    this.layout = layout;
    for (PlacedHole hole : layout.holes()) {
      at.put(hole.name(), hole.at());
      diameter.put(hole.name(), hole.diameterMm());
    }
    for (Landmark landmark : layout.job().tower().landmarks()) {
      at.put(landmark.name(), landmark.at());
      diameter.put(landmark.name(), landmark.diameterMm());
    }
  }

  /** The demo-like tower of {@link SampleJobs}, flat, three M8 holes, two landmarks. */
  static Drills plain(Side side) {
    return new Drills(layout(side, true));
  }

  static SideLayout layout(Side side, boolean handed) {
    return layout(SampleJobs.job(SampleJobs.plainTower(), SampleJobs.plate(handed), s -> s), side);
  }

  static SideLayout layout(Job job, Side side) {
    try {
      return Layout.of(job).sides().get(side);
    } catch (JobRejected e) {
      throw new IllegalStateException(e);
    }
  }

  /** A tower with other landmarks. */
  static Tower with(Tower t, List<Landmark> landmarks) {
    return TowerChange.of(t).withLandmarks(landmarks, t.straightedges()).tower();
  }

  static Uncertainty uncertainty(double caliper, double landmark) {
    return uncertainty(caliper, landmark, Angle.ZERO, 0);
  }

  static Uncertainty uncertainty(double caliper, double landmark, Angle line, double centre) {
    return new Uncertainty(
        Stated.given(caliper),
        Stated.given(landmark),
        Stated.given(0.2),
        Stated.given(line),
        Stated.given(centre));
  }

  /** Every reading from now on is off by a normal error of so many standard deviations. */
  Drills noisy(Random source, double deviations) {
    random = source;
    noise = deviations;
    return this;
  }

  /** Holes drilled elsewhere. */
  Drills moved(UnaryOperator<Vec2> by) {
    layout.holes().forEach(h -> at.computeIfPresent(h.name(), (n, p) -> by.apply(p)));
    return this;
  }

  Drills moved(String hole, double fore, double in) {
    at.computeIfPresent(hole, (n, p) -> p.plus(new Vec2(fore, in)));
    return this;
  }

  Drills span(String from, String to, Edges between) {
    return span(from, to, between, 0);
  }

  /** A reading with a gross error. */
  Drills span(String from, String to, Edges between, double off) {
    double centres = at.get(from).distanceTo(at.get(to));
    double radii = (diameter.get(from) + diameter.get(to)) / 2;
    double mm = centres + between.radii() * radii + off + noise * CALIPER * random.nextGaussian();
    spans.add(new SpanReading(from, to, between, new Repeated(List.of(mm), CALIPER)));
    return this;
  }

  /** Every pair of holes, inside and outside. */
  Drills allPairs() {
    List<PlacedHole> holes = layout.holes();
    for (int i = 0; i < holes.size(); i++) {
      for (int j = i + 1; j < holes.size(); j++) {
        span(holes.get(i).name(), holes.get(j).name(), Edges.INSIDE);
        span(holes.get(i).name(), holes.get(j).name(), Edges.OUTSIDE);
      }
    }
    return this;
  }

  /** Every hole to every landmark. */
  Drills allTies() {
    for (PlacedHole hole : layout.holes()) {
      for (Landmark landmark : layout.job().tower().landmarks()) {
        span(hole.name(), landmark.name(), Edges.INSIDE);
      }
    }
    return this;
  }

  SideReadings readings() {
    List<HoleSize> sizes = new ArrayList<>();
    for (PlacedHole hole : layout.holes()) {
      double mm = diameter.get(hole.name());
      double a = mm + noise * CALIPER * random.nextGaussian();
      double b = mm + noise * CALIPER * random.nextGaussian();
      sizes.add(new HoleSize(hole.name(), new Repeated(List.of(a, b), CALIPER)));
    }
    return new SideReadings(layout.side(), sizes, spans, edges);
  }

  HoleNetwork network() {
    return HoleSolver.of(layout, readings(), UNCERTAINTY);
  }
}
