package dev.towerscribe.adjust;

import java.util.ArrayList;
import java.util.Comparator;
import java.util.List;
import java.util.Optional;
import java.util.function.BiFunction;
import java.util.stream.IntStream;
import org.hipparchus.special.Erf;

/**
 * Finds readings that cannot be right: data snooping (Baarda 1968). Each reading, and each
 * observation of repeated readings as a whole, is asked how far it lies from what all the others
 * make of it, in standard deviations of that difference. The worst past the limit is taken out, and
 * all is solved again, until none is left.
 */
public final class DataSnooping {
  /**
   * The least number of standard deviations past which a reading is no chance: one good reading in
   * a thousand lies further off. Baarda 1968, from memory; the figure is that of the normal
   * distribution.
   */
  public static final double LEAST_LIMIT = 3.2905;

  /**
   * So much past the limit, a slip is found four times in five. Baarda 1968, from memory; the
   * figure is that of the normal distribution.
   */
  public static final double SHOWS = 0.8416;

  /** With many readings the limit goes up, so that one good set in twenty is stopped at most. */
  private static final double GOOD_STOPPED = 0.05;

  /** Below this share of a reading that the others check, there is nothing to compare it with. */
  private static final double COMPARABLE = 1e-4;

  /**
   * Readings that explain a misfit this nearly as well (squared standard deviations; odds of twenty
   * to one) cannot be told apart, where each hides in the other.
   */
  private static final double RIVAL = 6;

  private static final double HIDES = 0.5 + 1e-9;

  /** Past so many standard deviations straight lines may mislead. */
  private static final double COARSE = 10;

  /** With more coarse slips than this the rest is no measure for one of them. */
  private static final int MOST_COARSE = 5;

  /** So many suspects of a coarse slip are tried. */
  private static final int MOST_TRIED = 12;

  /** What is done with a reading where others would explain the misfit nearly as well. */
  public enum Undecided {
    /** It is left out all the same, its rivals named: the rest fix everything without it. */
    LEFT_OUT,
    /** All are kept, and the search ends: a right reading left out would do more harm. */
    KEPT
  }

  private final BiFunction<List<Observation>, double[], Adjustment> solver;
  private final double limit;
  private final int most;
  private final Undecided undecided;
  private final List<SetAside> out = new ArrayList<>();
  private final List<Scattered> scattered = new ArrayList<>();
  private Optional<SetAside> open = Optional.empty();

  /**
   * A search.
   *
   * @param observations all there are: they set the limit
   * @param solver solves observations that are left, from unknowns that were found before
   * @param most at most so many are left out: past that it is standard deviations or units that are
   *     wrong, and naming more helps nobody
   * @param undecided what is done where the culprit cannot be told
   */
  public DataSnooping(
      List<Observation> observations,
      BiFunction<List<Observation>, double[], Adjustment> solver,
      int most,
      Undecided undecided) {
    this.solver = solver;
    this.most = most;
    this.undecided = undecided;
    limit = limit(observations);
  }

  /**
   * The limit for a set of readings: it rises with their number.
   *
   * @param observations all there are
   * @return standard deviations, at least {@link #LEAST_LIMIT}
   */
  public static double limit(List<Observation> observations) {
    int asked = 0;
    for (Observation o : observations) {
      asked += o.reading().count() > 1 ? o.reading().count() + 1 : 1;
    }
    return Math.max(LEAST_LIMIT, Math.sqrt(2) * Erf.erfcInv(GOOD_STOPPED / Math.max(1, asked)));
  }

  /**
   * A reading that the others do not allow.
   *
   * @param observation what it is a reading of
   * @param number which of several readings, from 1; empty for all of them
   * @param excess how much it is more than the rest allow, mm
   * @param sd standard deviation of that, mm
   * @param rivals other observations that may be wrong in its place
   */
  public record SetAside(
      Observation observation,
      Optional<Integer> number,
      double excess,
      double sd,
      List<Observation> rivals) {
    /**
     * How far it is off.
     *
     * @return standard deviations, with the sign of the excess
     */
    public double deviations() {
      return excess / sd;
    }
  }

  /**
   * Repeated readings that contradict each other.
   *
   * @param observation with its own standard deviation
   * @param widenedSd what was taken in its place: what the readings themselves show, mm
   */
  public record Scattered(Observation observation, double widenedSd) {}

  /** A suspicion: one reading of an observation, or all of them. */
  private record Suspect(Observation of, int reading, double excess, double sd) {
    static final int ALL = -1;

    boolean all() {
      return reading == ALL;
    }

    double size() {
      return Math.abs(excess / sd);
    }

    /** Whether it explains a misfit nearly as well as the worst does. */
    boolean nearly(Suspect worst) {
      return worst.size() * worst.size() - size() * size() < RIVAL;
    }
  }

  private record Accused(Suspect suspect, List<Observation> rivals) {}

  /**
   * Searches.
   *
   * @param first a solution with all observations, or with those that an earlier search left
   * @return the solution without what was set aside
   */
  public Adjustment run(Adjustment first) {
    Adjustment now = first;
    while (open.isEmpty() && out.size() + scattered.size() < most) {
      Optional<Suspect> worst = worst(now);
      if (worst.isEmpty()) {
        break;
      }
      now = judged(now, accused(now, worst.get()));
    }
    return now;
  }

  private Adjustment judged(Adjustment now, Accused accused) {
    Suspect s = accused.suspect();
    List<Observation> left = new ArrayList<>(now.observations());
    if (!s.all() && isContradicted(now, s)) {
      double widened = s.of().reading().shownSd();
      scattered.add(new Scattered(s.of(), widened));
      left.set(left.indexOf(s.of()), s.of().withSd(widened));
      return solver.apply(left, now.x());
    }
    SetAside aside =
        new SetAside(
            s.of(),
            s.all() ? Optional.empty() : Optional.of(s.of().numbers().get(s.reading())),
            s.excess(),
            s.sd(),
            accused.rivals());
    if (undecided == Undecided.KEPT && !accused.rivals().isEmpty()) {
      open = Optional.of(aside);
      return now;
    }
    out.add(aside);
    return solver.apply(without(left, s), now.x());
  }

  /**
   * The limit that was used.
   *
   * @return standard deviations
   */
  public double limit() {
    return limit;
  }

  /**
   * Repeated readings that do not agree, where nothing tells which is wrong.
   *
   * @return in the order in which they were found
   */
  public List<Scattered> scattered() {
    return List.copyOf(scattered);
  }

  /**
   * A misfit that several readings explain, all of which were kept.
   *
   * @return the likeliest, with its rivals; empty if there is none
   */
  public Optional<SetAside> undecided() {
    return open;
  }

  /**
   * What was left out, against what the readings that are left make of it.
   *
   * @param last the solution without them
   * @return worst first
   */
  public List<SetAside> setAside(Adjustment last) {
    return out.stream().map(o -> told(o, last)).toList();
  }

  private static SetAside told(SetAside o, Adjustment last) {
    Repeated reading = o.observation().reading();
    Repeated asked =
        o.number()
            .map(n -> reading.values().get(o.observation().numbers().indexOf(n)))
            .map(value -> Repeated.once(value, reading.sd()))
            .orElse(reading);
    double variance = Math.pow(asked.meanSd(), 2) + last.calculatedVariance(o.observation());
    return new SetAside(
        o.observation(),
        o.number(),
        asked.mean() - last.calculated(o.observation()),
        Math.sqrt(variance),
        o.rivals());
  }

  private static List<Observation> without(List<Observation> observations, Suspect s) {
    List<Observation> left = new ArrayList<>(observations);
    if (s.all()) {
      left.remove(s.of());
    } else {
      left.set(left.indexOf(s.of()), s.of().without(s.reading()));
    }
    return left;
  }

  private Accused accused(Adjustment a, Suspect worst) {
    return worst.size() > COARSE && out.size() < MOST_COARSE
        ? tried(a)
        : new Accused(worst, rivals(a, worst));
  }

  /**
   * A coarse slip bends the whole network, and what is calculated along straight lines may point at
   * a neighbour. So the worst suspects are left out in turn and all is solved again: the one whose
   * absence makes the rest agree best is wrong.
   */
  private Accused tried(Adjustment a) {
    List<Suspect> worst =
        a.observations().stream()
            .flatMap(o -> suspects(a, o).stream())
            .sorted(Comparator.comparingDouble(s -> -s.size()))
            .limit(MOST_TRIED)
            .toList();
    double[] misfit = worst.stream().mapToDouble(s -> misfitWithout(a, s)).toArray();
    int best = IntStream.range(0, misfit.length).reduce(0, (i, k) -> misfit[k] < misfit[i] ? k : i);
    List<Observation> rivals = new ArrayList<>();
    Suspect chosen = worst.get(best);
    for (int i = 0; i < misfit.length; i++) {
      Suspect other = worst.get(i);
      if (misfit[i] - misfit[best] < RIVAL && other.all()) {
        if (other.of().equals(chosen.of())) {
          chosen = other;
        } else {
          rivals.add(other.of());
        }
      }
    }
    return new Accused(chosen, rivals);
  }

  /** What is left of the squares without a suspect; infinite where its absence opens something. */
  private double misfitWithout(Adjustment a, Suspect s) {
    Adjustment left = solver.apply(without(a.observations(), s), a.x());
    // Readings that agree with each other must not make their observation the better to leave out.
    double own = s.all() ? s.of().reading().scatter() : 0;
    return left.covariance().open().size() > a.covariance().open().size()
        ? Double.POSITIVE_INFINITY
        : left.consistency().squares() + own;
  }

  private Optional<Suspect> worst(Adjustment a) {
    Suspect worst = null;
    for (Observation o : a.observations()) {
      for (Suspect s : suspects(a, o)) {
        // Rounding must not decide between equals: the first stays.
        boolean worse = worst == null || s.size() > worst.size() + 1e-6;
        worst = worse && s.size() > limit ? s : worst;
      }
    }
    return Optional.ofNullable(worst).map(w -> allOf(a, w));
  }

  /** The whole observation in place of one reading, where that is nearly as likely: safer out. */
  private Suspect allOf(Adjustment a, Suspect worst) {
    return suspects(a, worst.of()).stream()
        .filter(s -> s.all() && s.size() > limit && s.nearly(worst))
        .findFirst()
        .orElse(worst);
  }

  private static List<Suspect> suspects(Adjustment a, Observation o) {
    double calculated = a.calculated(o);
    double variance = a.calculatedVariance(o);
    List<Suspect> suspects = new ArrayList<>();
    double whole = 1 - o.weight() * variance;
    if (whole > COMPARABLE) {
      suspects.add(
          new Suspect(
              o,
              Suspect.ALL,
              (o.reading().mean() - calculated) / whole,
              1 / Math.sqrt(o.weight() * whole)));
    }
    double sd = o.reading().sd();
    double single = 1 - variance / (sd * sd);
    for (int k = 0; o.reading().count() > 1 && k < o.reading().count(); k++) {
      double off = o.reading().values().get(k) - calculated;
      suspects.add(new Suspect(o, k, off / single, sd / Math.sqrt(single)));
    }
    return suspects;
  }

  /** Whether another reading of the same observation may as well be the wrong one. */
  private static boolean isContradicted(Adjustment a, Suspect suspect) {
    double share = a.calculatedVariance(suspect.of()) / Math.pow(suspect.of().reading().sd(), 2);
    return share / (1 - share) > HIDES
        && suspects(a, suspect.of()).stream()
            .anyMatch(s -> !s.all() && s.reading() != suspect.reading() && s.nearly(suspect));
  }

  /** Other observations that would explain the misfit nearly as well. */
  private static List<Observation> rivals(Adjustment a, Suspect worst) {
    double weight = worst.all() ? worst.of().weight() : 1 / Math.pow(worst.of().reading().sd(), 2);
    double checked = 1 - weight * a.calculatedVariance(worst.of());
    List<Observation> rivals = new ArrayList<>();
    for (Observation other : a.observations()) {
      if (!other.equals(worst.of())
          && suspects(a, other).stream().anyMatch(s -> s.all() && s.nearly(worst))) {
        double both = weight * other.weight() / (checked * a.redundancy(other));
        double hides = Math.sqrt(both) * a.covariance().of(a.row(worst.of()), a.row(other));
        if (Math.abs(hides) > HIDES) {
          rivals.add(other);
        }
      }
    }
    return rivals;
  }
}
