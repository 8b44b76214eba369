package dev.towerscribe.drilled;

import dev.towerscribe.drilled.Network.Contradiction;
import dev.towerscribe.drilled.Network.Found;
import dev.towerscribe.drilled.Network.Hanging;
import dev.towerscribe.drilled.Readings.Doubt;
import dev.towerscribe.geometry.Vec2;
import dev.towerscribe.layout.PlacedHole;
import dev.towerscribe.layout.SideLayout;
import dev.towerscribe.model.Landmark;
import java.util.ArrayList;
import java.util.Comparator;
import java.util.List;
import java.util.function.UnaryOperator;
import java.util.stream.Stream;
import org.hipparchus.linear.RealMatrix;
import org.hipparchus.linear.SingularValueDecomposition;

/** Sets the equations of one tower up, solves them, and looks for readings that are off. */
final class NetworkSolver {
  /** A hole whose centre is worse known than this is not found, mm. Our own choice, no source. */
  static final double HANGS_MM = 30;

  /** Share of a motion's square that makes a hole part of it. */
  private static final double PART = 0.01;

  /** Of an error of an unchecked reading less than this share shows in its residual. */
  static final double UNCHECKED = 0.01;

  /**
   * Standard deviations past which a reading is off: one sound reading in a thousand is (Baarda, A
   * testing procedure for use in geodetic networks, 1968, from memory).
   */
  static final double OFF = 3.29;

  /**
   * Readings whose leaving out helps alike, within two standard deviations, are told apart no
   * further.
   */
  private static final double ALIKE = 4.0;

  /** Two solutions fit alike within four standard deviations. */
  private static final double CLEARLY_BETTER = 16.0;

  /** Nobody drills so far from a mark, mm: something else is wrong. Our own choice, no source. */
  static final double FAR_MM = 10;

  /** At most one span in so many is left out: past that, it is the doubts that are wrong. */
  private static final int SPANS_PER_LEFT_OUT = 4;

  /** How words of what the job says of a landmark begin. */
  static final String OF_JOB = "the job's ";

  private final SideLayout layout;
  private final SideReadings readings;
  private final Doubt doubt;

  /** Holes first, in the plate's order, then landmarks that a span names. */
  private final List<PlacedHole> holes = new ArrayList<>();

  private final List<Landmark> landmarks = new ArrayList<>();
  private final List<Hanging> hanging = new ArrayList<>();

  NetworkSolver(SideLayout layout, SideReadings readings, Doubt doubt) {
    this.layout = layout;
    this.readings = readings;
    this.doubt = doubt;
    holes.addAll(layout.holes());
  }

  /** Found again without each hole that hangs once the readings are solved, not before. */
  Network solve() {
    Network network = solved();
    List<PlacedHole> loose =
        network.holes().stream().filter(f -> f.worstSdMm() > HANGS_MM).map(Found::planned).toList();
    if (loose.isEmpty()) {
      return network;
    }
    setAside(loose);
    return solve();
  }

  private Network solved() {
    List<Observation> observations = fixed();
    List<Contradiction> contradictions = new ArrayList<>();
    if (holes.isEmpty()) {
      return new Network(
          List.of(), hanging, new double[0][0], 3, contradictions, List.of(), 0, 0, false);
    }
    Adjustment best = best(observations);
    long spans = observations.stream().filter(o -> o.kind() == Observation.Kind.SPAN).count();
    long most = Math.max(1, spans / SPANS_PER_LEFT_OUT);
    boolean searching = true;
    while (searching && contradictions.size() < most) {
      List<Suspect> suspects = suspects(best);
      searching = !suspects.isEmpty();
      if (searching) {
        Suspect worst = suspects.get(0);
        boolean alone = suspects.size() == 1;
        contradictions.add(
            new Contradiction(
                suspects.stream().map(s -> s.observation().words()).toList(),
                worst.without().residual(worst.observation()),
                Math.sqrt(worst.gain()),
                alone));
        searching = alone;
        best = alone ? worst.without() : best;
      }
    }
    return network(best, contradictions);
  }

  // Equations.

  /** Equations of the holes that they fix; the others are set aside. */
  private List<Observation> fixed() {
    while (true) {
      List<Observation> observations = observations();
      if (holes.isEmpty()) {
        return observations;
      }
      SingularValueDecomposition stiffness =
          Adjustment.stiffness(observations, start(UnaryOperator.identity()), holes.size());
      List<PlacedHole> out = new ArrayList<>();
      for (int k = 0; k < stiffness.getSingularValues().length; k++) {
        if (stiffness.getSingularValues()[k] * HANGS_MM * HANGS_MM < 1) {
          double[] motion = stiffness.getU().getColumn(k);
          for (int h = 0; h < holes.size(); h++) {
            double share = Math.pow(motion[2 * h], 2) + Math.pow(motion[2 * h + 1], 2);
            if (share > PART && !out.contains(holes.get(h))) {
              out.add(holes.get(h));
            }
          }
        }
      }
      if (out.isEmpty()) {
        return observations;
      }
      setAside(out);
    }
  }

  private void setAside(List<PlacedHole> out) {
    for (PlacedHole hole : out) {
      hanging.add(new Hanging(hole, spansOf(hole.name())));
    }
    hanging.sort(Comparator.comparingInt(h -> layout.holes().indexOf(h.planned())));
    holes.removeAll(out);
  }

  private int spansOf(String name) {
    return (int)
        readings.spans().stream().filter(s -> s.from().equals(name) || s.to().equals(name)).count();
  }

  private List<Observation> observations() {
    List<String> names = new ArrayList<>(holes.stream().map(PlacedHole::name).toList());
    List<String> gone = hanging.stream().map(h -> h.planned().name()).toList();
    List<SpanReading> spans =
        readings.spans().stream()
            .filter(s -> !gone.contains(s.from()) && !gone.contains(s.to()))
            .toList();
    landmarks.clear();
    for (Landmark landmark : layout.job().tower().landmarks()) {
      String name = landmark.name();
      if (spans.stream().anyMatch(s -> s.from().equals(name) || s.to().equals(name))) {
        landmarks.add(landmark);
        names.add(name);
      }
    }
    List<Observation> all = new ArrayList<>();
    for (SpanReading s : spans) {
      all.add(
          Observation.span(
              s.words(),
              names.indexOf(s.from()),
              names.indexOf(s.to()),
              s.between().radii(),
              s.length().meanMm(),
              s.length().plusMinusMm()));
    }
    for (int l = 0; l < landmarks.size(); l++) {
      Landmark landmark = landmarks.get(l);
      int point = holes.size() + l;
      double sd = doubt.landmarkMm().value();
      String words = OF_JOB + landmark.name() + ", ";
      all.add(Observation.coordinate(words + "fore", point, 0, landmark.at().x(), sd));
      all.add(Observation.coordinate(words + "in", point, 1, landmark.at().y(), sd));
      all.add(
          Observation.diameter(
              words + "diameter", point, landmark.diameterMm(), doubt.caliperMm().value()));
    }
    for (int h = 0; h < holes.size(); h++) {
      SideReadings.HoleSize size = size(holes.get(h));
      all.add(
          Observation.diameter(
              "diameter of " + size.name(),
              h,
              size.diameter().meanMm(),
              size.diameter().plusMinusMm()));
    }
    return all;
  }

  private SideReadings.HoleSize size(PlacedHole hole) {
    return readings.holes().stream()
        .filter(s -> s.name().equals(hole.name()))
        .findFirst()
        .orElseThrow(() -> new IllegalArgumentException("no size of hole " + hole.name()));
  }

  // Solving.

  private double[] start(UnaryOperator<Vec2> ofHoles) {
    int points = holes.size() + landmarks.size();
    double[] x = new double[3 * points];
    for (int p = 0; p < points; p++) {
      boolean hole = p < holes.size();
      Vec2 at = hole ? ofHoles.apply(holes.get(p).at()) : landmarks.get(p - holes.size()).at();
      x[2 * p] = at.x();
      x[2 * p + 1] = at.y();
      x[2 * points + p] =
          hole
              ? size(holes.get(p)).diameter().meanMm()
              : landmarks.get(p - holes.size()).diameterMm();
    }
    return x;
  }

  /**
   * The solution that begins at the plan. Where that is past belief or far from the plan, others
   * are begun at the plan turned over; of those that fit alike, the nearest to the plan.
   */
  private Adjustment best(List<Observation> observations) {
    Adjustment best = Adjustment.solve(observations, start(UnaryOperator.identity()), holes.size());
    if (best.loose() > 0 || !pastBelief(best) && offPlan(best) <= FAR_MM) {
      return best;
    }
    List<Adjustment> all = new ArrayList<>(List.of(best));
    for (Mirror mirror : mirrors()) {
      all.add(Adjustment.solve(observations, start(mirror::over), holes.size()));
    }
    double least = all.stream().mapToDouble(Adjustment::chi2).min().orElseThrow();
    return all.stream()
        .filter(a -> a.chi2() < least + CLEARLY_BETTER)
        .min(Comparator.comparingDouble(this::offPlan))
        .orElseThrow();
  }

  /** How far the worst hole lies from its planned place. */
  private double offPlan(Adjustment a) {
    double worst = 0;
    for (int h = 0; h < holes.size(); h++) {
      Vec2 at = new Vec2(a.x()[2 * h], a.x()[2 * h + 1]);
      worst = Math.max(worst, at.distanceTo(holes.get(h).at()));
    }
    return worst;
  }

  /** Lines that a sheet may have been turned over about: along the car, the slot, two landmarks. */
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

  private static int spare(Adjustment a) {
    return a.observations().size() - a.x().length + a.loose();
  }

  /** Whether the residuals are larger than one sound set of readings in a thousand has them. */
  private static boolean pastBelief(Adjustment a) {
    return spare(a) > 0 && a.chi2() > Chi2.thousandth(spare(a));
  }

  // Readings that are off.

  /**
   * A reading with what is gained by leaving it out.
   *
   * @param gain fall of the sum of squares; for small misfits the square of its standardised
   *     residual
   */
  private record Suspect(Observation observation, Adjustment without, double gain) {}

  /** The reading that is off, and those that might as well be it; none if all agree. */
  private List<Suspect> suspects(Adjustment a) {
    if (spare(a) == 0) {
      return List.of();
    }
    double worst =
        a.observations().stream()
            .filter(o -> a.redundancy(o) > UNCHECKED)
            .mapToDouble(o -> standardised(a, o))
            .max()
            .orElse(0);
    if (worst < OFF) {
      return List.of();
    }
    List<Suspect> all = new ArrayList<>();
    for (Observation o : a.observations()) {
      if (a.redundancy(o) > UNCHECKED && standardised(a, o) > Math.sqrt(ALIKE)) {
        List<Observation> rest = new ArrayList<>(a.observations());
        rest.remove(o);
        // A gross error may have dragged the solution to where it does not find back from.
        Adjustment near = Adjustment.solve(rest, a.x(), holes.size());
        Adjustment fresh = Adjustment.solve(rest, start(UnaryOperator.identity()), holes.size());
        Adjustment without = fresh.chi2() < near.chi2() ? fresh : near;
        if (without.loose() == a.loose() && !hangs(without)) {
          all.add(new Suspect(o, without, a.chi2() - without.chi2()));
        }
      }
    }
    double most = all.stream().mapToDouble(Suspect::gain).max().orElse(0);
    return most < OFF * OFF
        ? List.of()
        : all.stream()
            .filter(s -> s.gain() > most - ALIKE)
            .sorted(Comparator.comparingDouble(Suspect::gain).reversed())
            .toList();
  }

  /** Whether leaving a reading out left a hole in the air. */
  private boolean hangs(Adjustment a) {
    for (int k = 0; k < 2 * holes.size(); k++) {
      if (a.covariance().getEntry(k, k) > HANGS_MM * HANGS_MM) {
        return true;
      }
    }
    return false;
  }

  private static double standardised(Adjustment a, Observation o) {
    return Math.abs(a.residual(o)) / (o.sd() * Math.sqrt(a.redundancy(o)));
  }

  // The answer.

  private Network network(Adjustment a, List<Contradiction> contradictions) {
    int n = holes.size();
    int points = n + landmarks.size();
    int spare = spare(a);
    double scatter = spare == 0 ? 0 : Math.sqrt(a.chi2() / spare);
    boolean widened = pastBelief(a);
    RealMatrix covariance = a.covariance();
    double by = widened ? scatter * scatter : 1;
    double[][] mine = new double[3 * n][3 * n];
    for (int row = 0; row < 3 * n; row++) {
      for (int column = 0; column < 3 * n; column++) {
        int from = row < 2 * n ? row : 2 * points + row - 2 * n;
        int to = column < 2 * n ? column : 2 * points + column - 2 * n;
        mine[row][column] = by * covariance.getEntry(from, to);
      }
    }
    if (a.loose() == 0) {
      moveTogether(mine, a.x());
    }
    List<Found> found = new ArrayList<>();
    for (int h = 0; h < n; h++) {
      double ff = mine[2 * h][2 * h];
      double ii = mine[2 * h + 1][2 * h + 1];
      double fi = mine[2 * h][2 * h + 1];
      found.add(
          new Found(
              holes.get(h),
              new Vec2(a.x()[2 * h], a.x()[2 * h + 1]),
              a.x()[2 * points + h],
              root(ff),
              root(ii),
              root((ff + ii) / 2 + Math.hypot((ff - ii) / 2, fi)),
              root(mine[2 * n + h][2 * n + h])));
    }
    return new Network(
        found, hanging, mine, a.loose(), contradictions, unchecked(a), spare, scatter, widened);
  }

  /**
   * Adds what the doubts of the line and of the old shaft's centre do. They move landmarks and
   * holes together, so that no distance shows it: it comes on top of what the readings leave, and
   * is the same for every hole.
   */
  private void moveTogether(double[][] covariance, double[] x) {
    double turn = doubt.line().value().radians();
    double shift = doubt.centreMm().value();
    double[][] by = new double[3][covariance.length];
    for (int h = 0; h < holes.size(); h++) {
      by[0][2 * h] = -turn * x[2 * h + 1];
      by[0][2 * h + 1] = turn * x[2 * h];
      by[1][2 * h] = shift;
      by[2][2 * h + 1] = shift;
    }
    for (double[] way : by) {
      for (int row = 0; row < way.length; row++) {
        for (int column = 0; column < way.length; column++) {
          covariance[row][column] += way[row] * way[column];
        }
      }
    }
  }

  private static double root(double variance) {
    return Math.sqrt(Math.max(0.0, variance));
  }

  /**
   * Readings of which an error shows nowhere. Sizes read more than once check themselves; those of
   * landmarks matter only where a reading goes to an edge.
   */
  private List<String> unchecked(Adjustment a) {
    Stream<Observation> spans =
        a.observations().stream()
            .filter(o -> o.kind() != Observation.Kind.DIAMETER)
            .filter(o -> a.redundancy(o) < UNCHECKED);
    Stream<Observation> sizes =
        a.observations().stream()
            .filter(o -> o.kind() == Observation.Kind.DIAMETER && o.i() < holes.size())
            .filter(o -> a.redundancy(o) < UNCHECKED)
            .filter(o -> size(holes.get(o.i())).diameter().readingsMm().size() == 1);
    return Stream.concat(spans, sizes).map(Observation::words).toList();
  }
}
