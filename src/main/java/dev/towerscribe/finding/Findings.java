package dev.towerscribe.finding;

import dev.towerscribe.quantity.Lengths;
import dev.towerscribe.quantity.Tolerances;
import java.util.ArrayList;
import java.util.Comparator;
import java.util.HashSet;
import java.util.List;
import java.util.Set;

/**
 * Gathers findings in the order they are made and gives each an id of its own: accepting one must
 * never accept another. Not for use by several threads at once.
 */
public final class Findings {
  /** Said of a stop that no switch lifts, after what it says itself. */
  public static final String NOT_ACCEPTABLE = "This stop cannot be accepted.";

  private final String owner;
  private final Lengths lengths;
  private final Stage stage;
  private final List<Finding> list = new ArrayList<>();
  private final Set<String> ids = new HashSet<>();

  /**
   * An empty collection.
   *
   * @param owner first part of each id: "left", "right" or "both"
   * @param lengths how lengths read in the sentences
   */
  public Findings(String owner, Lengths lengths) {
    this(owner, lengths, Stage.PLANNED);
  }

  /**
   * An empty collection for work that has come some way.
   *
   * @param owner first part of each id: "left", "right" or "both"
   * @param lengths how lengths read in the sentences
   * @param stage how far the work has come
   */
  public Findings(String owner, Lengths lengths, Stage stage) {
    this.owner = owner;
    this.lengths = lengths;
    this.stage = stage;
  }

  /**
   * What to do about a finding: what helps before a hole is drilled is no help after it.
   *
   * @param planned advice while the plate can still go elsewhere
   * @param drilled advice once the holes are drilled
   * @return the one for the stage of the work
   */
  public String advise(String planned, String drilled) {
    return stage == Stage.PLANNED ? planned : drilled;
  }

  /**
   * How lengths read in the sentences.
   *
   * @return the formatter given
   */
  public Lengths lengths() {
    return lengths;
  }

  /**
   * Adds a finding.
   *
   * @param check the rest of its id: "edge-cut.B"; where it is taken, "-2", "-3" follow
   * @param severity what it means for the work; a stop anyway where the figure is impossible
   * @param about its place, figure, limit and source
   * @param say one plain sentence: what is so, and what to do
   */
  public void add(String check, Severity severity, About about, String say) {
    add(owner, check, severity, about, say);
  }

  /**
   * Adds a finding of another owner, for instance of one side among those of a whole car.
   *
   * @param side first part of its id
   * @param check the rest of its id
   * @param severity what it means for the work
   * @param about its place, figure, limit and source
   * @param say one plain sentence: what is so, and what to do
   */
  public void add(String side, String check, Severity severity, About about, String say) {
    boolean impossible = about.isImpossible();
    list.add(
        new Finding(
            unused(side + "." + check),
            impossible ? Severity.STOP : severity,
            about.where(),
            about.figure(),
            about.limit(),
            about.unit(),
            about.source(),
            impossible ? say + (say.endsWith(".") ? " " : ". ") + NOT_ACCEPTABLE : say,
            !impossible,
            about.spot()));
  }

  /**
   * Judges a length that must not be less than its limit: a note when it passes.
   *
   * @param check the rest of its id
   * @param about lengths in mm
   * @param failing severity when it is less
   * @param meaning what the length is, to be read after "x mm"
   * @param advice what to do when it fails
   */
  public void atLeast(String check, About about, Severity failing, String meaning, String advice) {
    boolean fails = !passes(about.figure(), about.limit());
    String need = (fails ? "needs " : "at least ") + lengths.with(about.limit());
    judge(check, about, failing, fails, meaning, need, advice);
  }

  /**
   * Judges a length that must not be more than its limit: a note when it passes.
   *
   * @param check the rest of its id
   * @param about lengths in mm
   * @param failing severity when it is more
   * @param meaning what the length is, to be read after "x mm"
   * @param advice what to do when it fails
   */
  public void atMost(String check, About about, Severity failing, String meaning, String advice) {
    boolean fails = !passes(about.limit(), about.figure());
    String need = "at most " + lengths.with(about.limit());
    judge(check, about, failing, fails, meaning, need, advice);
  }

  /**
   * Takes a finding over from another calculation under another id, all else as it is.
   *
   * @param check the rest of its id here
   * @param finding the finding
   * @param before said before its own sentence, with a space at its end
   */
  public void take(String check, Finding finding, String before) {
    list.add(finding.as(unused(owner + "." + check), before + finding.say()));
  }

  private String unused(String id) {
    String unused = id;
    for (int again = 2; !ids.add(unused); again++) {
      unused = id + "-" + again;
    }
    return unused;
  }

  private void judge(
      String check,
      About about,
      Severity failing,
      boolean fails,
      String meaning,
      String need,
      String advice) {
    String say = lengths.with(about.figure()) + " " + meaning + "; " + need;
    add(check, fails ? failing : Severity.NOTE, about, say + (fails ? ". " + advice : "."));
  }

  /**
   * One of several things of a kind, for instance a landmark near a hole.
   *
   * @param check the rest of its id
   * @param about lengths in mm, the figure not to be less than the limit
   * @param meaning what the length is, to be read after "x mm"
   * @param advice what to do when it fails
   */
  public record Candidate(String check, About about, String meaning, String advice) {
    private double slackMm() {
      return about.figure() - about.limit();
    }

    private boolean fails() {
      return !passes(about.figure(), about.limit());
    }
  }

  /**
   * Judges several things of a kind: each one that fails is a finding of its own; where all pass,
   * the tightest speaks for the rest.
   *
   * @param candidates what was found, perhaps nothing
   * @param failing severity of each that fails
   */
  public void eachFailingOrTightest(List<Candidate> candidates, Severity failing) {
    List<Candidate> told = candidates.stream().filter(Candidate::fails).toList();
    if (told.isEmpty()) {
      told =
          candidates.stream().min(Comparator.comparingDouble(Candidate::slackMm)).stream().toList();
    }
    told.forEach(c -> atLeast(c.check(), c.about(), failing, c.meaning(), c.advice()));
  }

  /**
   * Whether a figure that must not be less than its limit passes. A figure calculated in two ways
   * may differ in its last digits, so one that is less by rounding alone passes.
   *
   * @param figure the figure, mm or degrees
   * @param limit its limit in the same unit
   * @return false when it is truly less
   */
  public static boolean passes(double figure, double limit) {
    return !(figure < limit - Tolerances.COMPUTED_MM);
  }

  /**
   * Everything added so far.
   *
   * @return stops, then cautions, then notes; those of one severity in the order they were added
   */
  public List<Finding> gravestFirst() {
    return list.stream().sorted(Comparator.comparing(Finding::severity)).toList();
  }

  /**
   * Everything added so far.
   *
   * @return in the order they were added
   */
  public List<Finding> inOrder() {
    return List.copyOf(list);
  }

  /**
   * A name as part of an id.
   *
   * @param name any text
   * @return its ASCII letters and digits, each run of anything else a hyphen, none at the ends;
   *     "unnamed" where nothing is left
   */
  public static String slug(String name) {
    String slug = name.replaceAll("[^A-Za-z0-9]+", "-").replaceAll("^-|-$", "");
    return slug.isEmpty() ? "unnamed" : slug;
  }

  /**
   * Names of one list as parts of ids, no two alike. A later one whose slug is taken gets its place
   * in the list, counted from 1; so an id stays with its thing whichever others pass or fail.
   *
   * @param names in the job's order; they may repeat, or differ only in what an id cannot hold
   * @return a slug for each
   */
  public static List<String> slugs(List<String> names) {
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
}
