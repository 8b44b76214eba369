package dev.towerscribe.survey;

import java.util.ArrayList;
import java.util.List;

/** How each reading of a solved network came out, and how all of them together did. */
final class Review {
  /** Checked by so little, a reading is as good as alone. */
  static final double UNCHECKED = 0.02;

  /** Chance alone gives this misfit once in a hundred surveys. Common practice, no source. */
  static final double UNLIKELY = 0.01;

  private final Adjustment adjustment;
  private final double limit;

  /**
   * A review.
   *
   * @param adjustment a solved network
   * @param limit in standard deviations, past which its readings would have been taken out
   */
  Review(Adjustment adjustment, double limit) {
    this.adjustment = adjustment;
    this.limit = limit;
  }

  /** The readings of the network, in the order of the file. */
  List<ReadingResult> readings() {
    List<ReadingResult> results = new ArrayList<>();
    for (Entry e : adjustment.entries()) {
      Measure.Row row = e.measure().row(adjustment.net(), adjustment.x());
      double computed = e.measure().value(adjustment.net(), adjustment.x());
      double share = 1 - e.weight() * adjustment.covariance(row, row);
      boolean checked = share > UNCHECKED;
      double off = e.reading().mean() - computed;
      double sd = checked ? 1 / Math.sqrt(e.weight() * share) : 0;
      results.add(
          new ReadingResult(
              e.id(),
              e.words(),
              e.count(),
              e.reading().mean(),
              computed,
              Math.max(0, Math.min(1, share)),
              checked,
              checked ? off / share / sd : 0,
              (limit + Snooping.SHOWS) * sd));
    }
    return results;
  }

  /** The fit as a whole, by kinds of readings. */
  Fit fit() {
    int freedom = adjustment.freedom();
    double squares = adjustment.squares();
    if (freedom < 1) {
      return new Fit(adjustment.entries().size(), 0, 0, 1, 1, List.of());
    }
    double ratio = Math.sqrt(squares / freedom);
    double chance = ChiSquare.above(squares, freedom);
    return new Fit(
        adjustment.entries().size(),
        freedom,
        ratio,
        chance,
        chance < UNLIKELY ? ratio : 1,
        kinds());
  }

  private List<Fit.Kind> kinds() {
    List<Fit.Kind> kinds = new ArrayList<>();
    List<String> names =
        adjustment.entries().stream().map(e -> e.kind().plural()).distinct().toList();
    for (String name : names) {
      double squares = 0;
      double share = 0;
      for (Entry e : adjustment.entries()) {
        if (e.kind().plural().equals(name)) {
          Measure.Row row = e.measure().row(adjustment.net(), adjustment.x());
          double off = e.reading().mean() - e.measure().value(adjustment.net(), adjustment.x());
          squares += e.weight() * off * off + e.reading().scatter();
          share += e.count() - e.weight() * adjustment.covariance(row, row);
        }
      }
      // With less than one reading to spare the figure says nothing.
      if (share >= 1) {
        kinds.add(new Fit.Kind(name, share, Math.sqrt(squares / share)));
      }
    }
    return kinds;
  }
}
