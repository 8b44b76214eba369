package dev.towerscribe.layout;

import dev.towerscribe.finding.Finding;
import dev.towerscribe.finding.Severity;
import dev.towerscribe.model.Bracket;
import dev.towerscribe.model.KeepOut;
import dev.towerscribe.model.Landmark;
import dev.towerscribe.model.Side;
import dev.towerscribe.model.Tower;
import dev.towerscribe.quantity.LengthUnit;
import dev.towerscribe.quantity.Numbers;
import java.util.ArrayList;
import java.util.Comparator;
import java.util.List;

/** Gathers the findings of one side. */
final class Findings {
  /** The mark on a limit that rests on no published source. */
  static final String PRACTICE = "common practice, no source";

  private final Side side;
  private final LengthUnit units;
  private final List<Finding> list = new ArrayList<>();

  Findings(Side side, LengthUnit units) {
    this.side = side;
    this.units = units;
  }

  /** What a check found, before it is judged. */
  record Figure(String check, String where, double mm, double limitMm, String source) {}

  /**
   * Judges a length that must not be less than its limit.
   *
   * @param figure what was found; its check becomes part of the id
   * @param failing severity when it is less
   * @param meaning what the length is, to be read after "x mm"
   * @param advice what to do when it fails
   */
  void atLeast(Figure figure, Severity failing, String meaning, String advice) {
    // A figure computed in two ways may differ in its last digits: equal to the limit passes.
    boolean fails = !passes(figure.mm(), figure.limitMm());
    String say =
        length(figure.mm())
            + " "
            + meaning
            + "; "
            + (fails ? "needs " : "at least ")
            + length(figure.limitMm())
            + (fails ? ". " + advice : ".");
    add(figure, fails ? failing : Severity.NOTE, say);
  }

  /** One of several things of a kind, for instance a landmark near a hole. */
  record Candidate(Figure figure, String meaning, String advice) {}

  /**
   * Judges several things of a kind: each one that fails is a finding of its own; where all pass,
   * the tightest speaks for the rest.
   *
   * @param candidates what was found, perhaps nothing
   * @param failing severity of each that fails
   */
  void eachFailingOrTightest(List<Candidate> candidates, Severity failing) {
    List<Candidate> failed = candidates.stream().filter(c -> slack(c.figure()) < -PASS_MM).toList();
    List<Candidate> told =
        failed.isEmpty()
            ? candidates.stream().min(Comparator.comparingDouble(c -> slack(c.figure()))).stream()
                .toList()
            : failed;
    for (Candidate c : told) {
      atLeast(c.figure(), failing, c.meaning(), c.advice());
    }
  }

  private static double slack(Figure figure) {
    return figure.mm() - figure.limitMm();
  }

  /**
   * Judges a length that must not be more than its limit.
   *
   * @param figure what was found
   * @param failing severity when it is more
   * @param meaning what the length is, to be read after "x mm"
   * @param advice what to do when it fails
   */
  void atMost(Figure figure, Severity failing, String meaning, String advice) {
    boolean fails = figure.mm() > figure.limitMm() + PASS_MM;
    String say =
        length(figure.mm())
            + " "
            + meaning
            + "; at most "
            + length(figure.limitMm())
            + (fails ? ". " + advice : ".");
    add(figure, fails ? failing : Severity.NOTE, say);
  }

  /** Rounding allowed before a figure at its limit fails, mm. */
  static final double PASS_MM = 1e-9;

  /** Whether a length that must not be less than its limit passes. */
  static boolean passes(double mm, double limitMm) {
    return !(mm < limitMm - PASS_MM);
  }

  /** Adds a length finding whose severity is already decided. */
  void add(Figure figure, Severity severity, String say) {
    list.add(
        new Finding(
            id(figure.check()),
            severity,
            figure.where(),
            figure.mm(),
            figure.limitMm(),
            "mm",
            figure.source(),
            say));
  }

  /** Adds a finding in another unit. */
  void add(
      String check,
      Severity severity,
      String where,
      double figure,
      double limit,
      String unit,
      String source,
      String say) {
    list.add(new Finding(id(check), severity, where, figure, limit, unit, source, say));
  }

  private String id(String check) {
    String id = side.word() + "." + check;
    if (list.stream().anyMatch(f -> f.id().equals(id))) {
      throw new IllegalStateException("two findings with the id " + id);
    }
    return id;
  }

  /** A length in the job's unit, for sentences. */
  String length(double mm) {
    return Numbers.fixed(units.fromMm(mm), units == LengthUnit.MM ? 2 : 3) + " " + units.symbol();
  }

  /** A name as part of an id: letters and digits kept, the rest hyphens. */
  private static String slug(String name) {
    String slug = name.replaceAll("[^A-Za-z0-9]+", "-").replaceAll("^-|-$", "");
    return slug.isEmpty() ? "unnamed" : slug;
  }

  /**
   * Names of one list as parts of ids, no two alike: accepting one finding must never accept
   * another. A later one whose slug is taken gets its place in the list, counted from 1; so an id
   * stays with its thing whichever others pass or fail.
   *
   * @param names in the job's order; they may repeat, or differ only in what an id cannot hold
   * @return a slug for each
   */
  static List<String> slugs(List<String> names) {
    List<String> slugs = new ArrayList<>();
    List<String> plain = names.stream().map(Findings::slug).toList();
    for (int i = 0; i < plain.size(); i++) {
      String slug = plain.get(i);
      if (plain.indexOf(slug) < i) {
        slug += "-" + (i + 1);
      }
      while (slugs.contains(slug) || (plain.contains(slug) && plain.indexOf(slug) != i)) {
        slug += "-again";
      }
      slugs.add(slug);
    }
    return slugs;
  }

  /** {@link #slugs} of a tower's keep-outs. */
  static List<String> keepOuts(Tower tower) {
    return slugs(tower.keepOuts().stream().map(KeepOut::name).toList());
  }

  /** {@link #slugs} of a tower's landmarks. */
  static List<String> landmarks(Tower tower) {
    return slugs(tower.landmarks().stream().map(Landmark::name).toList());
  }

  /** {@link #slugs} of a tower's brackets. */
  static List<String> brackets(Tower tower) {
    return slugs(tower.brackets().stream().map(Bracket::name).toList());
  }

  List<Finding> gravestFirst() {
    List<Finding> sorted = new ArrayList<>(list);
    sorted.sort(Comparator.comparing(Finding::severity));
    return sorted;
  }
}
