package dev.towerscribe.layout;

import java.util.ArrayList;
import java.util.List;

/**
 * The distance between two holes as calipers take it.
 *
 * @param from one hole's name
 * @param to the other's
 * @param centresMm centre to centre, in plan
 * @param insideMm between the near edges
 * @param outsideMm across the far edges
 * @param toleranceMm by how much the centre distance may be off, either way, before the two bolts
 *     bind: the sum of both radial clearances
 */
public record Span(
    String from,
    String to,
    double centresMm,
    double insideMm,
    double outsideMm,
    double toleranceMm) {
  /** Every pair of holes, in the plate's order. */
  static List<Span> between(List<PlacedHole> holes) {
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
