package dev.towerscribe.survey;

import dev.towerscribe.model.Side;
import dev.towerscribe.model.StrutPoint;
import java.util.ArrayList;
import java.util.LinkedHashMap;
import java.util.List;
import java.util.Map;
import java.util.Optional;

/** The network of a car's points: both sides and the stations in one, in vehicle axes. */
final class CarNetwork {
  /** A car's points are above the floor it stands on; so much for readings that are off. */
  private static final double BELOW_FLOOR_MM = -100;

  /** Inner pivots may lie about the middle of the car, not far across it. */
  private static final double ACROSS_MM = -300;

  private final Network net = new Network();
  private final List<Entry> entries = new ArrayList<>();
  private final List<Labelled.Label> labels = new ArrayList<>();
  private final Map<SurveyPoint, Integer> nodes = new LinkedHashMap<>();
  private final Ids ids;

  private CarNetwork(Survey survey, Ids ids) {
    this.ids = ids;
    survey.stations().forEach(this::station);
    Map<SurveyPoint, Boolean> named = new LinkedHashMap<>();
    survey.sides().values().forEach(s -> points(s).forEach(p -> named.put(p, true)));
    for (Side side : survey.sides().keySet()) {
      for (StrutPoint standard : StrutPoint.values()) {
        SurveyPoint point = SurveyPoint.of(side, standard.word());
        if (named.containsKey(point)) {
          point(point, side, Optional.of(standard));
        }
      }
      for (SurveyPoint point : named.keySet()) {
        if (point.side().equals(Optional.of(side)) && !nodes.containsKey(point)) {
          point(point, side, Optional.empty());
        }
      }
    }
    survey.sides().forEach(this::readings);
  }

  static CarNetwork of(Survey survey, Ids ids) {
    return new CarNetwork(survey, ids);
  }

  Labelled labelled() {
    return new Labelled(net, entries, labels, Labelled.Axes.CAR);
  }

  /** The number of each point, in the order of the results. */
  Map<SurveyPoint, Integer> nodes() {
    return nodes;
  }

  private static List<SurveyPoint> points(SurveySide side) {
    List<SurveyPoint> points = new ArrayList<>();
    side.plots().forEach(p -> points.add(p.point()));
    side.heights().forEach(h -> points.add(h.point()));
    side.tapes().forEach(t -> points.addAll(List.of(t.from(), t.to())));
    return points;
  }

  private void station(Survey.Station s) {
    double[] given = {Network.FREE, Network.FREE, Network.FREE};
    double[] likely = {0, 0, 0};
    if (s.at().isPresent()) {
      likely = new double[] {s.at().get().x(), s.at().get().y(), s.at().get().z()};
      given = s.doubtMm().isPresent() ? given : likely;
    }
    double[] least = {-Double.MAX_VALUE, -Double.MAX_VALUE, BELOW_FLOOR_MM};
    // A place that is given is in sense wherever it is.
    boolean open = s.at().isEmpty();
    int node =
        net.node(given, likely, open ? least : all(-Double.MAX_VALUE), all(Double.MAX_VALUE));
    nodes.put(SurveyPoint.station(s.name()), node);
    labels.add(new Labelled.Label("both", s.name(), false));
    if (s.doubtMm().isPresent()) {
      List<String> ways = List.of("forward", "left", "up");
      for (int axis = 0; axis < Network.AXES; axis++) {
        entries.add(
            Entry.of(
                ids.next("both", "station", s.name(), ways.get(axis)),
                Entry.Kind.STATION,
                "the place of " + s.name() + ", " + ways.get(axis),
                new Measure.Coordinate(node, axis, 1),
                new SurveyReading(List.of(likely[axis]), s.doubtMm().get())));
      }
    }
  }

  private static double[] all(double value) {
    return new double[] {value, value, value};
  }

  private void point(SurveyPoint point, Side side, Optional<StrutPoint> standard) {
    int out = outward(side);
    double[] likely = standard.map(CarNetwork::likely).orElse(new double[] {0, 500, 300});
    likely[1] *= out;
    double[] least = {-Double.MAX_VALUE, -Double.MAX_VALUE, BELOW_FLOOR_MM};
    double[] most = all(Double.MAX_VALUE);
    double across = standard.map(StrutPoint::isOuter).orElse(false) ? 0 : ACROSS_MM;
    if (out > 0) {
      least[1] = across;
    } else {
      most[1] = -across;
    }
    nodes.put(point, net.node(all(Network.FREE), likely, least, most));
    labels.add(
        new Labelled.Label(
            side.word(), point.name(), standard.map(StrutPoint::isNeeded).orElse(false)));
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
    for (SurveySide.Plot p : s.plots()) {
      int node = nodes.get(p.point());
      String name = name(p.point(), side);
      String words = "the floor plot of " + name + ", ";
      entries.add(
          Entry.of(
              ids.next(side.word(), "floor", name, "forward"),
              Entry.Kind.FORWARD,
              words + "forward",
              new Measure.Coordinate(node, 0, 1),
              p.forward()));
      entries.add(
          Entry.of(
              ids.next(side.word(), "floor", name, "out"),
              Entry.Kind.OUT,
              words + "outward",
              new Measure.Coordinate(node, 1, outward(side)),
              p.out()));
    }
    for (SurveySide.Height h : s.heights()) {
      String name = name(h.point(), side);
      entries.add(
          Entry.of(
              ids.next(side.word(), "height", name),
              Entry.Kind.HEIGHT,
              "the height of " + name,
              new Measure.Coordinate(nodes.get(h.point()), 2, 1),
              h.up()));
    }
    for (SurveySide.Tape t : s.tapes()) {
      String from = name(t.from(), side);
      String to = name(t.to(), side);
      entries.add(
          Entry.of(
              ids.next(side.word(), "tape", from, to),
              Entry.Kind.TAPE,
              "the tape from " + from + " to " + to,
              new Measure.Distance(nodes.get(t.from()), nodes.get(t.to())),
              t.length()));
    }
  }

  /** A point's name as spoken on a side. */
  private static String name(SurveyPoint point, Side side) {
    return point.side().isEmpty() || point.side().get() == side ? point.name() : point.words();
  }
}
