package dev.towerscribe.survey;

import dev.towerscribe.adjust.Edges;
import dev.towerscribe.adjust.Measure;
import dev.towerscribe.adjust.Network;
import dev.towerscribe.adjust.Repeated;
import dev.towerscribe.model.Side;
import dev.towerscribe.survey.NamedNetwork.Label;
import java.util.LinkedHashMap;
import java.util.Map;
import java.util.Set;

/**
 * The network of a tower's landmarks: in plan, from the strut rod centre. Diameters are unknowns
 * like the places, as spans between edges hang on them.
 */
final class TowerNetwork {
  private final NamedNetwork net;
  private final String side;
  private final Map<String, Integer> nodes = new LinkedHashMap<>();
  private final Map<String, Integer> sizes = new LinkedHashMap<>();

  private TowerNetwork(Side side, SurveyTower tower, Set<String> ids) {
    this.net = new NamedNetwork(NamedNetwork.TOWER, ids);
    this.side = side.word();
    point(SurveyTower.STRUT_ROD, false, 0, 0, 0);
    boolean toStrutRod = tower.spans().stream().anyMatch(TowerNetwork::isOfStrutRod);
    if (toStrutRod && tower.strutRod().isPresent()) {
      size(SurveyTower.STRUT_ROD, "the diameter of the strut rod", tower.strutRod().get());
    }
    for (SurveyTower.Mark m : tower.landmarks()) {
      point(m.name(), true, Network.FREE, Network.FREE, 0);
      size(m.name(), "the diameter of " + m.name(), m.diameter());
    }
    for (SurveyTower.Mark m : tower.landmarks()) {
      m.at().ifPresent(at -> place(m.name(), at));
    }
    tower.spans().forEach(this::span);
  }

  /** The network of a tower; ids of its readings are added to those that are taken. */
  static TowerNetwork of(Side side, SurveyTower tower, Set<String> ids) {
    return new TowerNetwork(side, tower, ids);
  }

  private void point(String name, boolean needed, double... given) {
    nodes.put(name, net.point(new Label(side, name, needed), Plausible.anywhere(0, 0, 0), given));
  }

  private void size(String name, String words, Repeated diameter) {
    Measure.Size size = new Measure.Size(net.net().size());
    sizes.put(name, size.size());
    net.read(Entry.Kind.DIAMETER, words, size, diameter, side, "diameter", name);
  }

  private void place(String name, SurveyTower.Place at) {
    String words = "the place by rule of %s, ".formatted(name);
    Measure fore = new Measure.Coordinate(nodes.get(name), 0, 1);
    Measure in = new Measure.Coordinate(nodes.get(name), 1, 1);
    net.read(Entry.Kind.FORE, words + "fore", fore, at.fore(), side, "place", name, "fore");
    net.read(Entry.Kind.IN, words + "in", in, at.in(), side, "place", name, "in");
  }

  private void span(SurveyTower.Span span) {
    int from = nodes.get(span.from());
    int to = nodes.get(span.to());
    Edges edges = span.edges();
    String words = "the span from %s to %s, %s".formatted(span.from(), span.to(), edges.word());
    Measure distance =
        edges == Edges.CENTRES
            ? new Measure.Distance(from, to)
            : new Measure.Distance(from, to, edges, sizes.get(span.from()), sizes.get(span.to()));
    String[] id = {"span", span.from(), span.to(), edges.word()};
    net.read(Entry.Kind.SPAN, words, distance, span.length(), side, id);
  }

  private static boolean isOfStrutRod(SurveyTower.Span span) {
    return span.edges() != Edges.CENTRES
        && (span.from().equals(SurveyTower.STRUT_ROD) || span.to().equals(SurveyTower.STRUT_ROD));
  }

  NamedNetwork network() {
    return net;
  }

  int node(String landmark) {
    return nodes.get(landmark);
  }

  /** The unknown that is a landmark's diameter. */
  int diameter(String landmark) {
    return net.net().unknownOfSize(sizes.get(landmark));
  }
}
