package dev.towerscribe.survey;

import java.util.ArrayList;
import java.util.Comparator;
import java.util.List;
import java.util.Optional;
import org.hipparchus.special.Erf;

/**
 * Finds readings that cannot be right: data snooping (Baarda 1968). Each reading, and each entry of
 * repeated readings as a whole, is asked how far it lies from what all the others make of it, in
 * standard deviations of that difference. The worst past the limit is taken out, and all is solved
 * again, until none is left.
 */
final class Snooping {
  /**
   * The least number of standard deviations past which a reading is no chance: one good reading in
   * a thousand lies further off. Baarda 1968, from memory; the figure is that of the normal
   * distribution.
   */
  static final double LEAST_LIMIT = 3.2905;

  /** With many readings the limit goes up, so that one good survey in twenty is stopped at most. */
  private static final double GOOD_STOPPED = 0.05;

  /**
   * So much past the limit, a slip is found four times in five. Baarda 1968, from memory; the
   * figure is that of the normal distribution.
   */
  static final double SHOWS = 0.8416;

  /** Below this share of a reading that the others check, there is nothing to compare it with. */
  private static final double COMPARABLE = 1e-4;

  /**
   * Readings that explain a misfit this nearly as well (squared standard deviations; odds of twenty
   * to one) cannot be told apart, where each hides in the other.
   */
  private static final double RIVAL = 6;

  private static final double HIDES = 0.5 + 1e-9;

  /** With so many readings wrong the doubts or the units are, and naming more helps nobody. */
  private static final int MOST_OUT = 20;

  /** Past so many standard deviations straight lines may mislead. */
  private static final double COARSE = 10;

  /** With more coarse slips than this the rest is no measure for one of them. */
  private static final int MOST_COARSE = 5;

  /** So many suspects of a coarse slip are tried. */
  private static final int MOST_TRIED = 12;

  private final Network net;
  private final List<Entry> entries;
  private final double limit;
  private final List<SetAside> out = new ArrayList<>();
  private final List<Scattered> scattered = new ArrayList<>();

  private Snooping(Network net, List<Entry> entries) {
    this.net = net;
    this.entries = new ArrayList<>(entries);
    this.limit = limit(entries);
  }

  /** The limit for a network's readings, in standard deviations. */
  static double limit(List<Entry> entries) {
    int asked = 0;
    for (Entry e : entries) {
      asked += e.count() > 1 ? e.count() + 1 : 1;
    }
    return asked == 0
        ? LEAST_LIMIT
        : Math.max(LEAST_LIMIT, Math.sqrt(2) * Erf.erfcInv(GOOD_STOPPED / asked));
  }

  /**
   * What came of a network.
   *
   * @param placed solved without what was set aside
   * @param setAside readings that cannot be right, worst first
   * @param scattered entries whose repeated readings do not agree and nothing tells which is wrong
   * @param limit in standard deviations, past which readings were taken out
   */
  record Outcome(
      Placing.Placed placed, List<SetAside> setAside, List<Scattered> scattered, double limit) {}

  /**
   * A reading that the others do not allow.
   *
   * @param entry its entry
   * @param number which of several readings, from 1; empty for all of them
   * @param excess how much it is more than the rest allow, mm
   * @param limit how much would be chance, mm
   * @param rivals other entries that may be wrong in its place
   */
  record SetAside(
      Entry entry, Optional<Integer> number, double excess, double limit, List<Entry> rivals) {}

  /**
   * Repeated readings that contradict each other.
   *
   * @param entry with its own doubt
   * @param widened the doubt that was taken in its place, mm
   */
  record Scattered(Entry entry, double widened) {}

  /** A suspicion: one reading of an entry, or all of them. */
  private record Suspect(int entry, int reading, double deviations, double excess, double sd) {
    static final int ALL = -1;
  }

  static Outcome of(Network net, List<Entry> entries) {
    return new Snooping(net, entries).run();
  }

  private Outcome run() {
    Placing.Placed placed = Placing.solve(net, entries);
    boolean thorough = true;
    while (true) {
      Optional<Suspect> worst = worst(placed.adjustment());
      boolean done = worst.isEmpty() || out.size() + scattered.size() >= MOST_OUT;
      if (done && !thorough) {
        placed = Placing.again(net, entries, placed.adjustment().x());
        thorough = true;
        continue;
      }
      if (done) {
        Adjustment last = placed.adjustment();
        return new Outcome(placed, out.stream().map(o -> told(o, last)).toList(), scattered, limit);
      }
      Suspect s = worst.get();
      List<Entry> rivals;
      if (Math.abs(s.deviations()) > COARSE && out.size() < MOST_COARSE) {
        Tried tried = tried(placed.adjustment());
        s = tried.suspect();
        rivals = tried.rivals();
      } else {
        rivals = rivals(placed.adjustment(), s);
      }
      Entry entry = entries.get(s.entry());
      if (s.reading() != Suspect.ALL && contradicted(placed.adjustment(), s)) {
        double n = entry.count();
        double widened = entry.reading().doubt() * Math.sqrt(entry.reading().scatter() / (n - 1));
        scattered.add(new Scattered(entry, widened));
        entries.set(s.entry(), entry.doubted(widened));
        placed = Placing.quick(net, entries, placed.adjustment().x());
        thorough = false;
        continue;
      }
      boolean all = s.reading() == Suspect.ALL;
      out.add(
          new SetAside(
              entry,
              all ? Optional.empty() : Optional.of(entry.numbers().get(s.reading())),
              s.excess(),
              limit * s.sd(),
              rivals));
      List<Entry> left = without(s);
      entries.clear();
      entries.addAll(left);
      placed = Placing.quick(net, entries, placed.adjustment().x());
      thorough = false;
    }
  }

  private List<Entry> without(Suspect s) {
    List<Entry> left = new ArrayList<>(entries);
    if (s.reading() == Suspect.ALL) {
      left.remove(s.entry());
    } else {
      left.set(s.entry(), left.get(s.entry()).without(s.reading()));
    }
    return left;
  }

  /** What came of trying. */
  private record Tried(Suspect suspect, List<Entry> rivals) {}

  /**
   * A coarse slip bends the whole network, and what is reckoned along straight lines may point at a
   * neighbour. So the worst suspects are left out in turn and all is solved again: the one whose
   * absence makes the rest agree best is wrong.
   */
  private Tried tried(Adjustment a) {
    List<Suspect> suspects = new ArrayList<>();
    for (int i = 0; i < entries.size(); i++) {
      suspects.addAll(suspects(a, i));
    }
    suspects.sort(Comparator.comparingDouble(s -> -Math.abs(s.deviations())));
    List<Suspect> worst = suspects.subList(0, Math.min(MOST_TRIED, suspects.size()));
    double[] misfit = new double[worst.size()];
    int best = 0;
    for (int i = 0; i < misfit.length; i++) {
      Suspect s = worst.get(i);
      Adjustment left = Placing.quick(net, without(s), a.x()).adjustment();
      boolean all = s.reading() == Suspect.ALL;
      // Readings that agree with each other must not make their entry the better one to leave out.
      misfit[i] = left.squares() + (all ? entries.get(s.entry()).reading().scatter() : 0);
      if (left.unfixed().size() > a.unfixed().size()) {
        misfit[i] = Double.POSITIVE_INFINITY;
      }
      best = misfit[i] < misfit[best] ? i : best;
    }
    List<Entry> rivals = new ArrayList<>();
    Suspect chosen = worst.get(best);
    for (int i = 0; i < misfit.length; i++) {
      Suspect other = worst.get(i);
      boolean near = misfit[i] - misfit[best] < RIVAL;
      if (near && other.entry() == chosen.entry() && other.reading() == Suspect.ALL) {
        chosen = other;
      } else if (near && other.entry() != chosen.entry() && other.reading() == Suspect.ALL) {
        rivals.add(entries.get(other.entry()));
      }
    }
    return new Tried(chosen, rivals);
  }

  /** What was set aside, against what the readings that are left make of it. */
  private SetAside told(SetAside o, Adjustment a) {
    Measure.Row row = o.entry().measure().row(net, a.x());
    double doubt = o.entry().reading().doubt();
    int count = o.number().isPresent() ? 1 : o.entry().count();
    double read =
        o.number().isPresent()
            ? o.entry().reading().values().get(o.entry().numbers().indexOf(o.number().get()))
            : o.entry().reading().mean();
    double sd = Math.sqrt(doubt * doubt / count + a.covariance(row, row));
    return new SetAside(
        o.entry(),
        o.number(),
        read - o.entry().measure().value(net, a.x()),
        limit * sd,
        o.rivals());
  }

  private Optional<Suspect> worst(Adjustment a) {
    Suspect worst = null;
    for (int i = 0; i < entries.size(); i++) {
      for (Suspect s : suspects(a, i)) {
        // Rounding must not decide between equals: the first stays.
        boolean worse =
            worst == null || Math.abs(s.deviations()) > Math.abs(worst.deviations()) + 1e-6;
        worst = worse && Math.abs(s.deviations()) > limit ? s : worst;
      }
    }
    return Optional.ofNullable(worst).map(w -> allOf(a, w));
  }

  /** The whole entry in place of one reading, where that is nearly as likely: safer left out. */
  private Suspect allOf(Adjustment a, Suspect worst) {
    return suspects(a, worst.entry()).stream()
        .filter(s -> s.reading() == Suspect.ALL && Math.abs(s.deviations()) > limit)
        .filter(s -> nearly(s, worst))
        .findFirst()
        .orElse(worst);
  }

  private List<Suspect> suspects(Adjustment a, int i) {
    Entry entry = entries.get(i);
    Measure.Row row = entry.measure().row(net, a.x());
    double computed = entry.measure().value(net, a.x());
    double leverage = a.covariance(row, row);
    List<Suspect> suspects = new ArrayList<>();
    double whole = 1 - entry.weight() * leverage;
    if (whole > COMPARABLE) {
      double excess = (entry.reading().mean() - computed) / whole;
      double sd = 1 / Math.sqrt(entry.weight() * whole);
      suspects.add(new Suspect(i, Suspect.ALL, excess / sd, excess, sd));
    }
    double doubt = entry.reading().doubt();
    double single = 1 - leverage / (doubt * doubt);
    for (int k = 0; entry.count() > 1 && k < entry.count(); k++) {
      double excess = (entry.reading().values().get(k) - computed) / single;
      double sd = doubt / Math.sqrt(single);
      suspects.add(new Suspect(i, k, excess / sd, excess, sd));
    }
    return suspects;
  }

  /** Whether another reading of the same entry may as well be the wrong one. */
  private boolean contradicted(Adjustment a, Suspect suspect) {
    Entry entry = entries.get(suspect.entry());
    Measure.Row row = entry.measure().row(net, a.x());
    double share = a.covariance(row, row) / Math.pow(entry.reading().doubt(), 2);
    boolean hides = share / (1 - share) > HIDES;
    return hides
        && suspects(a, suspect.entry()).stream()
            .filter(s -> s.reading() != Suspect.ALL && s.reading() != suspect.reading())
            .anyMatch(s -> nearly(s, suspect));
  }

  private static boolean nearly(Suspect other, Suspect worst) {
    return Math.pow(worst.deviations(), 2) - Math.pow(other.deviations(), 2) < RIVAL;
  }

  /** Other entries that would explain the misfit nearly as well. */
  private List<Entry> rivals(Adjustment a, Suspect worst) {
    Entry entry = entries.get(worst.entry());
    Measure.Row row = entry.measure().row(net, a.x());
    boolean all = worst.reading() == Suspect.ALL;
    double weight = all ? entry.weight() : 1 / Math.pow(entry.reading().doubt(), 2);
    double checked = 1 - weight * a.covariance(row, row);
    List<Entry> rivals = new ArrayList<>();
    for (int i = 0; i < entries.size(); i++) {
      if (i == worst.entry()) {
        continue;
      }
      Entry other = entries.get(i);
      Measure.Row otherRow = other.measure().row(net, a.x());
      double otherChecked = 1 - other.weight() * a.covariance(otherRow, otherRow);
      if (otherChecked < COMPARABLE) {
        continue;
      }
      double hides =
          Math.sqrt(weight * other.weight() / (checked * otherChecked))
              * Math.abs(a.covariance(row, otherRow));
      if (hides > HIDES
          && suspects(a, i).stream()
              .anyMatch(s -> s.reading() == Suspect.ALL && nearly(s, worst))) {
        rivals.add(other);
      }
    }
    return rivals;
  }
}
