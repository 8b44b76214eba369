package dev.towerscribe.survey;

import dev.towerscribe.model.Side;
import java.util.ArrayList;
import java.util.LinkedHashMap;
import java.util.List;
import java.util.Map;

/**
 * The network of a tower's landmarks: in plan, from the old shaft's centre. Diameters are unknowns
 * like the places, as spans between edges hang on them.
 */
final class TowerNetwork {
  private final Network net = new Network();
  private final List<Entry> entries = new ArrayList<>();
  private final List<Labelled.Label> labels = new ArrayList<>();
  private final Map<String, Integer> nodes = new LinkedHashMap<>();
  private final Map<String, Integer> sizes = new LinkedHashMap<>();

  private TowerNetwork(Side side, SurveyTower tower, Ids ids) {
    double[] least = {-Double.MAX_VALUE, -Double.MAX_VALUE, -Double.MAX_VALUE};
    double[] most = {Double.MAX_VALUE, Double.MAX_VALUE, Double.MAX_VALUE};
    String s = side.word();
    nodes.put(SurveyTower.SHAFT, net.node(new double[3], new double[3], least, most));
    labels.add(new Labelled.Label(s, SurveyTower.SHAFT, false));
    boolean toShaft = tower.spans().stream().anyMatch(TowerNetwork::isOfShaft);
    if (toShaft && tower.shaft().isPresent()) {
      sizes.put(SurveyTower.SHAFT, net.size());
      entries.add(
          Entry.of(
              ids.next(s, "diameter", SurveyTower.SHAFT),
              Entry.Kind.DIAMETER,
              "the diameter of the shaft",
              new Measure.Size(sizes.get(SurveyTower.SHAFT)),
              tower.shaft().get()));
    }
    double[] free = {Network.FREE, Network.FREE, 0};
    for (SurveyTower.Mark m : tower.landmarks()) {
      nodes.put(m.name(), net.node(free, new double[3], least, most));
      labels.add(new Labelled.Label(s, m.name(), true));
      sizes.put(m.name(), net.size());
      entries.add(
          Entry.of(
              ids.next(s, "diameter", m.name()),
              Entry.Kind.DIAMETER,
              "the diameter of " + m.name(),
              new Measure.Size(sizes.get(m.name())),
              m.diameter()));
    }
    for (SurveyTower.Mark m : tower.landmarks()) {
      if (m.at().isPresent()) {
        String words = "the place by rule of " + m.name() + ", ";
        entries.add(
            Entry.of(
                ids.next(s, "place", m.name(), "fore"),
                Entry.Kind.FORE,
                words + "fore",
                new Measure.Coordinate(nodes.get(m.name()), 0, 1),
                m.at().get().fore()));
        entries.add(
            Entry.of(
                ids.next(s, "place", m.name(), "in"),
                Entry.Kind.IN,
                words + "in",
                new Measure.Coordinate(nodes.get(m.name()), 1, 1),
                m.at().get().in()));
      }
    }
    for (SurveyTower.Span span : tower.spans()) {
      boolean centres = span.reach() == SurveyTower.Reach.CENTRES;
      entries.add(
          Entry.of(
              ids.next(s, "span", span.from(), span.to(), span.reach().word()),
              Entry.Kind.SPAN,
              "the span from " + span.from() + " to " + span.to() + ", " + span.reach().word(),
              new Measure.Distance(
                  nodes.get(span.from()),
                  nodes.get(span.to()),
                  span.reach().radii(),
                  centres ? Network.NONE : sizes.get(span.from()),
                  centres ? Network.NONE : sizes.get(span.to())),
              span.length()));
    }
  }

  static TowerNetwork of(Side side, SurveyTower tower, Ids ids) {
    return new TowerNetwork(side, tower, ids);
  }

  private static boolean isOfShaft(SurveyTower.Span span) {
    return span.reach() != SurveyTower.Reach.CENTRES
        && (span.from().equals(SurveyTower.SHAFT) || span.to().equals(SurveyTower.SHAFT));
  }

  Labelled labelled() {
    return new Labelled(net, entries, labels, Labelled.Axes.TOWER);
  }

  int node(String landmark) {
    return nodes.get(landmark);
  }

  /** The unknown that is a landmark's diameter. */
  int diameter(String landmark) {
    return net.unknownOfSize(sizes.get(landmark));
  }
}
