package dev.towerscribe.drilled;

import dev.towerscribe.adjust.Adjustment;
import dev.towerscribe.adjust.Consistency;
import dev.towerscribe.adjust.Covariance;
import dev.towerscribe.adjust.DataSnooping;
import dev.towerscribe.adjust.Measure;
import dev.towerscribe.adjust.Network;
import dev.towerscribe.adjust.NormalEquations;
import dev.towerscribe.adjust.Observation;
import dev.towerscribe.adjust.Propagation;
import dev.towerscribe.adjust.Repeated;
import dev.towerscribe.drilled.HoleNetwork.Contradiction;
import dev.towerscribe.drilled.HoleNetwork.Found;
import dev.towerscribe.drilled.HoleNetwork.Hanging;
import dev.towerscribe.drilled.Readings.Uncertainty;
import dev.towerscribe.geometry.Vec2;
import dev.towerscribe.layout.PlacedHole;
import dev.towerscribe.layout.SideLayout;
import dev.towerscribe.model.Landmark;
import java.util.ArrayList;
import java.util.Comparator;
import java.util.LinkedHashSet;
import java.util.List;
import java.util.Optional;
import java.util.Set;
import java.util.function.UnaryOperator;
import java.util.stream.IntStream;
import java.util.stream.Stream;

/** Sets the equations of one tower up, solves them, and looks for readings that are off. */
public final class HoleSolver {
  /** A hole whose centre is worse known than this is not found, mm. Our own choice, no source. */
  static final double HANGS_MM = 30;

  /** Share of an open direction's square that makes a hole part of it. */
  private static final double PART = 0.01;

  /** Two solutions fit alike within four standard deviations, squared. */
  private static final double CLEARLY_BETTER = 16.0;

  /** Nobody drills so far from a mark, mm: something else is wrong. Our own choice, no source. */
  static final double FAR_MM = 10;

  /**
   * At most one span in so many is left out: past that, the standard deviations are wrong. Our own
   * choice, no source.
   */
  private static final int SPANS_PER_LEFT_OUT = 4;

  /** How words of what the job says of a landmark begin. */
  static final String OF_JOB = "the job's ";

  private final SideLayout layout;
  private final SideReadings readings;
  private final Uncertainty uncertainty;

  /** Holes first, in the plate's order, then landmarks that a span names. */
  private final List<PlacedHole> holes;

  private final List<Landmark> landmarks = new ArrayList<>();
  private final List<Hanging> hanging = new ArrayList<>();
  private Network net = new Network();
  private final List<String> words = new ArrayList<>();
  private final List<Observation> observations = new ArrayList<>();

  private HoleSolver(SideLayout layout, SideReadings readings, Uncertainty uncertainty) {
    this.layout = layout;
    this.readings = readings;
    this.uncertainty = uncertainty;
    holes = new ArrayList<>(layout.holes());
  }

  /**
   * Finds the holes.
   *
   * @param layout the tower as planned
   * @param readings what calipers said
   * @param uncertainty how sure a landmark's place in the job is, and its size
   * @return the holes, with everything the readings have against each other
   */
  public static HoleNetwork of(SideLayout layout, SideReadings readings, Uncertainty uncertainty) {
    return new HoleSolver(layout, readings, uncertainty).solve();
  }

  /** Solved again without each hole that turns out to hang, at the plan or at the solution. */
  private HoleNetwork solve() {
    while (true) {
      equations();
      if (holes.isEmpty()) {
        return new HoleNetwork(
            List.of(), hanging, new double[0][0], 3, List.of(), List.of(), 0, 0, false);
      }
      Set<PlacedHole> out = hanging(start(UnaryOperator.identity()));
      if (out.isEmpty()) {
        DataSnooping snooping = snooping();
        Adjustment last = snooping.run(best());
        HoleNetwork network = network(last, snooping);
        out.addAll(hanging(last.x()));
        network.holes().stream()
            .filter(f -> f.worstSdMm() > HANGS_MM)
            .forEach(f -> out.add(f.planned()));
        if (out.isEmpty()) {
          return network;
        }
      }
      out.forEach(hole -> hanging.add(new Hanging(hole, (int) spansOf(hole.name()))));
      hanging.sort(Comparator.comparingInt(h -> layout.holes().indexOf(h.planned())));
      holes.removeAll(out);
    }
  }

  private long spansOf(String name) {
    return readings.spans().stream().filter(s -> isOf(s, name)).count();
  }

  private static boolean isOf(SpanReading span, String name) {
    return span.from().equals(name) || span.to().equals(name);
  }

  // Equations.

  private void equations() {
    List<SpanReading> spans =
        readings.spans().stream()
            .filter(s -> hanging.stream().noneMatch(h -> isOf(s, h.planned().name())))
            .toList();
    landmarks.clear();
    layout.job().tower().landmarks().stream()
        .filter(l -> spans.stream().anyMatch(s -> isOf(s, l.name())))
        .forEach(landmarks::add);
    List<String> names =
        Stream.concat(holes.stream().map(PlacedHole::name), landmarks.stream().map(Landmark::name))
            .toList();
    net = new Network();
    names.forEach(name -> net.node(Network.FREE, Network.FREE, 0));
    names.forEach(name -> net.size());
    words.clear();
    observations.clear();
    for (SpanReading s : spans) {
      int from = names.indexOf(s.from());
      int to = names.indexOf(s.to());
      observe(s.words(), new Measure.Distance(from, to, s.edges(), from, to), mean(s.length()));
    }
    for (int l = 0; l < landmarks.size(); l++) {
      Landmark landmark = landmarks.get(l);
      int point = holes.size() + l;
      double sd = uncertainty.landmarkMm().value();
      Repeated fore = Repeated.once(landmark.at().x(), sd);
      Repeated in = Repeated.once(landmark.at().y(), sd);
      Repeated wide = Repeated.once(landmark.diameterMm(), uncertainty.caliperMm().value());
      String of = OF_JOB + landmark.name() + ", ";
      observe(of + "fore", new Measure.Coordinate(point, 0, 1), fore);
      observe(of + "in", new Measure.Coordinate(point, 1, 1), in);
      observe(of + "diameter", new Measure.Size(point), wide);
    }
    for (int h = 0; h < holes.size(); h++) {
      PlacedHole hole = holes.get(h);
      observe("diameter of " + hole.name(), new Measure.Size(h), mean(diameter(hole)));
    }
  }

  private void observe(String what, Measure measure, Repeated reading) {
    observations.add(Observation.of(words.size(), measure, reading));
    words.add(what);
  }

  /** Repeated readings are judged by themselves, before: here they count as their mean. */
  private static Repeated mean(Repeated r) {
    return Repeated.once(r.mean(), r.meanSd());
  }

  private Repeated diameter(PlacedHole hole) {
    return readings
        .diameter(hole.name())
        .orElseThrow(() -> new IllegalArgumentException("no size of hole " + hole.name()));
  }

  /** Holes that take part in a direction that is open, but for moves of the whole pattern. */
  private Set<PlacedHole> hanging(double[] x) {
    NormalEquations equations = NormalEquations.of(net, observations, x);
    Set<PlacedHole> out = new LinkedHashSet<>();
    for (double[] way : Pattern.held(net, holes.size(), equations.matrix(), x).open()) {
      for (int h = 0; h < holes.size(); h++) {
        int[] u = net.unknownsOf(h);
        if (way[u[0]] * way[u[0]] + way[u[1]] * way[u[1]] > PART) {
          out.add(holes.get(h));
        }
      }
    }
    return out;
  }

  // Solving.

  private double[] start(UnaryOperator<Vec2> ofHoles) {
    double[] x = new double[net.unknowns()];
    for (int h = 0; h < holes.size(); h++) {
      put(x, h, ofHoles.apply(holes.get(h).at()), diameter(holes.get(h)).mean());
    }
    for (int l = 0; l < landmarks.size(); l++) {
      put(x, holes.size() + l, landmarks.get(l).at(), landmarks.get(l).diameterMm());
    }
    return x;
  }

  private void put(double[] x, int point, Vec2 at, double diameterMm) {
    net.put(x, point, new double[] {at.x(), at.y(), 0});
    x[net.unknownOfSize(point)] = diameterMm;
  }

  /**
   * The solution that begins at the plan. Where that does not fit or is far from the plan, others
   * are begun at the plan flipped; of those that fit alike, the nearest to the plan.
   */
  private Adjustment best() {
    Adjustment best = solved(observations, start(UnaryOperator.identity()));
    boolean free = !best.covariance().open().isEmpty();
    boolean likely = best.consistency().chance() >= Consistency.UNLIKELY;
    if (free || likely && offPlan(best) <= FAR_MM) {
      return best;
    }
    List<Adjustment> all =
        Stream.concat(
                Stream.of(best),
                mirrors().stream().map(mirror -> solved(observations, start(mirror::over))))
            .toList();
    double least = all.stream().mapToDouble(HoleSolver::squares).min().orElseThrow();
    return all.stream()
        .filter(a -> squares(a) < least + CLEARLY_BETTER)
        .min(Comparator.comparingDouble(this::offPlan))
        .orElseThrow();
  }

  private Adjustment solved(List<Observation> some, double[] start) {
    return Adjustment.solve(net, some, start);
  }

  private static double squares(Adjustment a) {
    return a.consistency().squares();
  }

  private Vec2 at(Adjustment a, int hole) {
    double[] at = net.place(a.x(), hole);
    return new Vec2(at[0], at[1]);
  }

  /** How far the worst hole lies from its planned place. */
  private double offPlan(Adjustment a) {
    return IntStream.range(0, holes.size())
        .mapToDouble(h -> at(a, h).distanceTo(holes.get(h).at()))
        .max()
        .orElseThrow();
  }

  /** Lines that a sheet may have been flipped about: along the car, the slot, two landmarks. */
  private List<Mirror> mirrors() {
    List<Mirror> mirrors = new ArrayList<>();
    mirrors.add(new Mirror(Vec2.ZERO, new Vec2(1, 0)));
    mirrors.add(new Mirror(layout.plateFrame().origin(), layout.plateFrame().xAxis()));
    for (int a = 0; a < landmarks.size(); a++) {
      for (int b = 0; b < a; b++) {
        Vec2 along = landmarks.get(a).at().minus(landmarks.get(b).at());
        if (along.norm() > 1) {
          mirrors.add(new Mirror(landmarks.get(b).at(), along.unit()));
        }
      }
    }
    return mirrors;
  }

  private record Mirror(Vec2 at, Vec2 along) {
    Vec2 over(Vec2 p) {
      Vec2 d = p.minus(at);
      return at.plus(along.times(2 * d.dot(along))).minus(d);
    }
  }

  /** Readings that are off: a plate's holes have few to spare, so nothing undecided is left out. */
  private DataSnooping snooping() {
    long spans = observations.stream().filter(o -> o.measure() instanceof Measure.Distance).count();
    return new DataSnooping(
        observations,
        this::again,
        (int) Math.max(1, spans / SPANS_PER_LEFT_OUT),
        DataSnooping.Undecided.KEPT);
  }

  /** A gross error may have dragged the solution to where it does not find back from. */
  private Adjustment again(List<Observation> left, double[] before) {
    Adjustment near = solved(left, before);
    Adjustment fresh = solved(left, start(UnaryOperator.identity()));
    return squares(fresh) < squares(near) ? fresh : near;
  }

  // The answer.

  private HoleNetwork network(Adjustment a, DataSnooping snooping) {
    Consistency consistency = a.consistency();
    boolean tied = a.covariance().open().isEmpty();
    Covariance sure = a.covariance().times(Math.pow(consistency.widening(), 2));
    for (double[] way : tied ? together(a) : List.<double[]>of()) {
      sure = sure.plus(way);
    }
    List<Found> found = new ArrayList<>();
    for (int h = 0; h < holes.size(); h++) {
      int size = net.unknownOfSize(h);
      int[] u = net.unknownsOf(h);
      double[][] place = sure.of(u[0], u[1]);
      found.add(
          new Found(
              holes.get(h),
              at(a, h),
              a.x()[size],
              sure.sd(u[0]),
              sure.sd(u[1]),
              Propagation.worstSd(place[0][0], place[1][1], place[0][1]),
              sure.sd(size)));
    }
    return new HoleNetwork(
        found,
        hanging,
        sure.of(unknownsOfHoles()),
        a.covariance().open().size(),
        Stream.concat(snooping.setAside(a).stream(), snooping.undecided().stream())
            .map(s -> contradiction(s, snooping))
            .toList(),
        unchecked(a),
        consistency.freedom(),
        consistency.ratio(),
        consistency.widening() > 1);
  }

  private Contradiction contradiction(DataSnooping.SetAside s, DataSnooping snooping) {
    List<String> readings =
        Stream.concat(Stream.of(s.observation()), s.rivals().stream())
            .map(o -> words.get(o.number()))
            .toList();
    return new Contradiction(
        readings,
        s.excess(),
        Math.abs(s.deviations()),
        snooping.limit(),
        !snooping.undecided().equals(Optional.of(s)));
  }

  /** Places of the holes, then their sizes. */
  private int[] unknownsOfHoles() {
    return IntStream.concat(
            IntStream.range(0, holes.size()).flatMap(h -> IntStream.of(net.unknownsOf(h)).limit(2)),
            IntStream.range(0, holes.size()).map(net::unknownOfSize))
        .toArray();
  }

  /**
   * What the line and the strut rod centre do where they are off. They move landmarks and holes
   * together, so that no distance shows it: it comes on top of what the readings leave, and is the
   * same for every hole.
   */
  private List<double[]> together(Adjustment a) {
    double turn = uncertainty.line().value().radians();
    double shift = uncertainty.centreMm().value();
    double[] turned = new double[net.unknowns()];
    double[] fore = new double[net.unknowns()];
    double[] in = new double[net.unknowns()];
    for (int h = 0; h < holes.size(); h++) {
      int[] u = net.unknownsOf(h);
      turned[u[0]] = -turn * at(a, h).y();
      turned[u[1]] = turn * at(a, h).x();
      fore[u[0]] = shift;
      in[u[1]] = shift;
    }
    return List.of(turned, fore, in);
  }

  /**
   * Readings of which an error shows nowhere. Sizes read more than once check themselves; those of
   * landmarks matter only where a reading goes to an edge.
   */
  private List<String> unchecked(Adjustment a) {
    List<Observation> alone = a.observations().stream().filter(o -> !a.isChecked(o)).toList();
    Stream<Observation> spans = alone.stream().filter(o -> !(o.measure() instanceof Measure.Size));
    Stream<Observation> sizes = alone.stream().filter(this::isHoleReadOnce);
    return Stream.concat(spans, sizes).map(o -> words.get(o.number())).toList();
  }

  private boolean isHoleReadOnce(Observation o) {
    return o.measure() instanceof Measure.Size s
        && s.size() < holes.size()
        && diameter(holes.get(s.size())).count() == 1;
  }
}
