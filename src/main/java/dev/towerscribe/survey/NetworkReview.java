package dev.towerscribe.survey;

import dev.towerscribe.adjust.Adjustment;
import dev.towerscribe.adjust.Consistency;
import dev.towerscribe.adjust.DataSnooping;
import dev.towerscribe.adjust.Observation;
import java.util.ArrayList;
import java.util.LinkedHashMap;
import java.util.List;
import java.util.Map;
import java.util.stream.Collectors;

/** How each reading of a solved network came out, and how all of them together did. */
final class NetworkReview {
  private final NamedNetwork net;
  private final Adjustment adjustment;
  private final double limit;

  /**
   * A review.
   *
   * @param net what its readings are called
   * @param adjustment the network solved
   * @param limit in standard deviations, past which its readings would have been taken out
   */
  NetworkReview(NamedNetwork net, Adjustment adjustment, double limit) {
    this.net = net;
    this.adjustment = adjustment;
    this.limit = limit;
  }

  /** The readings of the network, in the order of the file. */
  List<ReadingResult> readings() {
    return adjustment.observations().stream().map(this::reading).toList();
  }

  private ReadingResult reading(Observation o) {
    double calculated = adjustment.calculated(o);
    double share = adjustment.redundancy(o);
    boolean checked = adjustment.isChecked(o);
    double sd = checked ? 1 / Math.sqrt(o.weight() * share) : 0;
    return new ReadingResult(
        net.entry(o).id(),
        net.entry(o).words(),
        o.reading().count(),
        o.reading().mean(),
        calculated,
        Math.max(0, Math.min(1, share)),
        checked,
        checked ? (o.reading().mean() - calculated) / share / sd : 0,
        (limit + DataSnooping.SHOWS) * sd);
  }

  /** The fit as a whole, by kinds of readings. */
  Fit fit() {
    Consistency c = adjustment.consistency();
    return new Fit(
        adjustment.observations().size(),
        c.freedom(),
        c.ratio(),
        c.chance(),
        c.widening(),
        c.freedom() < 1 ? List.of() : kinds());
  }

  private List<Fit.Kind> kinds() {
    Map<String, List<Observation>> byKind =
        adjustment.observations().stream()
            .collect(
                Collectors.groupingBy(
                    o -> net.entry(o).kind().plural(), LinkedHashMap::new, Collectors.toList()));
    List<Fit.Kind> kinds = new ArrayList<>();
    byKind.forEach(
        (name, some) -> {
          double squares = 0;
          double share = 0;
          for (Observation o : some) {
            double off = o.reading().mean() - adjustment.calculated(o);
            squares += o.weight() * off * off + o.reading().scatter();
            share += o.reading().count() - o.weight() * adjustment.calculatedVariance(o);
          }
          // With less than one spare reading the figure says nothing.
          if (share >= 1) {
            kinds.add(new Fit.Kind(name, share, Math.sqrt(squares / share)));
          }
        });
    return kinds;
  }
}
