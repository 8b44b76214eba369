package dev.towerscribe.layout;

import java.util.ArrayList;
import java.util.List;

/** Every pair of holes, in the plate's order. */
final class Spans {
  private Spans() {}

  static List<Span> of(List<PlacedHole> holes) {
    List<Span> spans = new ArrayList<>();
    for (int i = 0; i < holes.size(); i++) {
      for (int j = i + 1; j < holes.size(); j++) {
        PlacedHole a = holes.get(i);
        PlacedHole b = holes.get(j);
        double centres = a.at().distanceTo(b.at());
        double half = (a.diameterMm() + b.diameterMm()) / 2;
        spans.add(
            new Span(
                a.name(),
                b.name(),
                centres,
                centres - half,
                centres + half,
                (a.clearanceMm() + b.clearanceMm()) / 2));
      }
    }
    return spans;
  }
}
