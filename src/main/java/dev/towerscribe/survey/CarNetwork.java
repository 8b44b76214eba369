package dev.towerscribe.survey;

import dev.towerscribe.adjust.Measure;
import dev.towerscribe.adjust.Network;
import dev.towerscribe.adjust.Repeated;
import dev.towerscribe.model.Side;
import dev.towerscribe.model.StrutPoint;
import dev.towerscribe.survey.NamedNetwork.Label;
import java.util.LinkedHashMap;
import java.util.LinkedHashSet;
import java.util.List;
import java.util.Map;
import java.util.Optional;
import java.util.Set;

/** The network of a car's points: both sides and the stations in one, in vehicle axes. */
final class CarNetwork {
  /** A car's points are above the floor it stands on; so much for readings that are off. */
  private static final double BELOW_FLOOR_MM = -100;

  /** Inner pivots may lie about the middle of the car, not far across it. */
  private static final double ACROSS_MM = -300;

  private final NamedNetwork net;
  private final Map<SurveyPoint, Integer> nodes = new LinkedHashMap<>();

  private CarNetwork(Survey survey, Set<String> ids) {
    net = new NamedNetwork(NamedNetwork.CAR, ids);
    survey.stations().forEach(this::station);
    Set<SurveyPoint> named = new LinkedHashSet<>();
    survey.sides().values().forEach(s -> named.addAll(s.points()));
    for (Side side : survey.sides().keySet()) {
      for (StrutPoint standard : StrutPoint.values()) {
        SurveyPoint point = SurveyPoint.of(side, standard.word());
        if (named.contains(point)) {
          point(point, side, Optional.of(standard));
        }
      }
      named.stream()
          .filter(p -> p.side().equals(Optional.of(side)) && !nodes.containsKey(p))
          .forEach(p -> point(p, side, Optional.empty()));
    }
    survey.sides().forEach(this::readings);
  }

  /** The network of a survey; ids of its readings are added to those that are taken. */
  static CarNetwork of(Survey survey, Set<String> ids) {
    return new CarNetwork(survey, ids);
  }

  NamedNetwork network() {
    return net;
  }

  /** The number of each point, in the order of the results. */
  Map<SurveyPoint, Integer> nodes() {
    return nodes;
  }

  private void station(Survey.Station s) {
    double[] at = s.at().map(p -> new double[] {p.x(), p.y(), p.z()}).orElse(new double[3]);
    boolean exact = s.at().isPresent() && s.uncertaintyMm().isEmpty();
    // A place that is given can be anywhere.
    Plausible where =
        s.at().isPresent()
            ? Plausible.anywhere(at)
            : new Plausible(at, aboveFloor(), Plausible.all(Double.MAX_VALUE));
    int node =
        net.point(
            new Label("both", s.name(), false), where, exact ? at : Plausible.all(Network.FREE));
    nodes.put(SurveyPoint.station(s.name()), node);
    if (s.uncertaintyMm().isPresent()) {
      List<String> ways = List.of("forward", "left", "up");
      for (int axis = 0; axis < Network.AXES; axis++) {
        String way = ways.get(axis);
        net.read(
            Entry.Kind.STATION,
            "the place of %s, %s".formatted(s.name(), way),
            new Measure.Coordinate(node, axis, 1),
            Repeated.once(at[axis], s.uncertaintyMm().get()),
            "both",
            "station",
            s.name(),
            way);
      }
    }
  }

  private static double[] aboveFloor() {
    return new double[] {-Double.MAX_VALUE, -Double.MAX_VALUE, BELOW_FLOOR_MM};
  }

  private void point(SurveyPoint point, Side side, Optional<StrutPoint> standard) {
    int out = outward(side);
    double[] likely = standard.map(CarNetwork::likely).orElse(new double[] {0, 500, 300});
    likely[1] *= out;
    double[] least = aboveFloor();
    double[] most = Plausible.all(Double.MAX_VALUE);
    double across = standard.map(StrutPoint::isOuter).orElse(false) ? 0 : ACROSS_MM;
    if (out > 0) {
      least[1] = across;
    } else {
      most[1] = -across;
    }
    boolean needed = standard.map(StrutPoint::isNeeded).orElse(false);
    nodes.put(
        point,
        net.point(
            new Label(side.word(), point.name(), needed),
            new Plausible(likely, least, most),
            Plausible.all(Network.FREE)));
  }

  /**
   * Where such a point is on most cars. Common practice, no source; only decides between places.
   */
  private static double[] likely(StrutPoint point) {
    return switch (point) {
      case TOP -> new double[] {-20, 560, 800};
      case BALL_JOINT -> new double[] {0, 680, 200};
      case ARM_FRONT -> new double[] {30, 350, 210};
      case ARM_REAR -> new double[] {-270, 350, 210};
      case STRUT_LOWER -> new double[] {0, 600, 420};
      case TIE_INNER -> new double[] {-110, 330, 260};
      case TIE_OUTER -> new double[] {-110, 650, 260};
      case WHEEL_CENTRE -> new double[] {0, 740, 300};
      case KNUCKLE_PIVOT -> new double[] {0, 620, 300};
    };
  }

  private static int outward(Side side) {
    return -side.inboardSign();
  }

  private void readings(Side side, SurveySide s) {
    String on = side.word();
    for (SurveySide.Plot p : s.plots()) {
      int node = nodes.get(p.point());
      String name = name(p.point(), side);
      String words = "the floor plot of %s, ".formatted(name);
      Measure along = new Measure.Coordinate(node, 0, 1);
      Measure across = new Measure.Coordinate(node, 1, outward(side));
      net.read(
          Entry.Kind.FORWARD, words + "forward", along, p.forward(), on, "floor", name, "forward");
      net.read(Entry.Kind.OUT, words + "outward", across, p.out(), on, "floor", name, "out");
    }
    for (SurveySide.Height h : s.heights()) {
      String name = name(h.point(), side);
      Measure height = new Measure.Coordinate(nodes.get(h.point()), 2, 1);
      net.read(Entry.Kind.HEIGHT, "the height of " + name, height, h.up(), on, "height", name);
    }
    for (SurveySide.Tape t : s.tapes()) {
      String from = name(t.from(), side);
      String to = name(t.to(), side);
      String words = "the tape from %s to %s".formatted(from, to);
      Measure distance = new Measure.Distance(nodes.get(t.from()), nodes.get(t.to()));
      net.read(Entry.Kind.TAPE, words, distance, t.length(), on, "tape", from, to);
    }
  }

  /** A point's name as spoken on a side. */
  private static String name(SurveyPoint point, Side side) {
    return point.side().orElse(side) == side ? point.name() : point.words();
  }
}
