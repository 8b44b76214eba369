package dev.towerscribe.record;

import dev.towerscribe.model.Side;
import dev.towerscribe.quantity.Lengths;
import dev.towerscribe.quantity.Numbers;
import dev.towerscribe.record.Explanation.Answer;
import java.util.ArrayList;
import java.util.Comparator;
import java.util.List;
import java.util.Locale;
import java.util.Map;
import java.util.Optional;
import java.util.Set;

/** Asks of every cause whether it would explain what is outside, and puts the answer in words. */
final class CauseExplainer {
  /** One figure is met exactly by almost any cause. */
  private static final int LEAST_FIGURES = 2;

  /** Two standard deviations, squared: causes nearer in chi-square cannot be told apart. */
  private static final double TOLD_APART = Compared.MOST_SD * Compared.MOST_SD;

  /** Far above the rounding of a sum of squares, far below what tells causes apart. */
  private static final double SAME_CHI_SQUARE = 1e-6;

  private static final int MOST_TOLD = 4;

  private final Optional<Side> side;
  private final Comparison all;
  private final Map<Side, Predictor> predictors;
  private final Lengths lengths;
  private final List<Compared> compared;
  private final List<Compared> outside;
  private final double chiSquare;
  private final List<CauseFit> fits;
  private final Answer answer;

  private CauseExplainer(
      Optional<Side> side, Comparison all, Map<Side, Predictor> predictors, Lengths lengths) {
    this.side = side;
    this.all = all;
    this.predictors = predictors;
    this.lengths = lengths;
    compared = all.judged().stream().map(all::compared).toList();
    outside = compared.stream().filter(c -> !c.within()).toList();
    CauseFitter fitter = new CauseFitter(all, predictors, lengths);
    chiSquare = fitter.chiSquare();
    fits = outside.isEmpty() ? List.of() : fits(fitter);
    answer = answer();
  }

  /**
   * One wheel, or both together.
   *
   * @param side which; empty for both
   * @param all its figures, at least one
   * @param predictors of the wheels the figures are of
   * @param lengths how lengths are told
   */
  static Explanation of(
      Optional<Side> side, Comparison all, Map<Side, Predictor> predictors, Lengths lengths) {
    return new CauseExplainer(side, all, predictors, lengths).explanation();
  }

  private Explanation explanation() {
    List<Compared> already = compared.stream().filter(this::isOffAlready).toList();
    return new Explanation(
        side, all.rows().size(), chiSquare, outside, already, fits, answer, say(already));
  }

  private List<CauseFit> fits(CauseFitter fitter) {
    List<CauseFit> fits = new ArrayList<>();
    for (Cause cause : Cause.values()) {
      if (cause.isAcross() && side.isPresent() || isTheSameAsAnother(cause)) {
        continue;
      }
      fitter.fit(cause, predictors.keySet()).ifPresent(fits::add);
      if (side.isEmpty() && !cause.isAcross()) {
        for (Side one : Side.values()) {
          fitter.fit(cause, Set.of(one)).ifPresent(fits::add);
        }
      }
    }
    // Those that would do come first, then by what they leave. Causes that leave the same but for
    // rounding stay in the order they are asked in, on every machine.
    fits.sort(
        Comparator.comparing((CauseFit f) -> !f.explains())
            .thenComparingDouble(f -> Math.rint(f.chiSquare() / SAME_CHI_SQUARE)));
    return fits;
  }

  /** Where only one stage was read, a cause of that stage alone and one of both are the same. */
  private boolean isTheSameAsAnother(Cause cause) {
    boolean before = all.rows().stream().anyMatch(r -> r.stage() == ReadingStage.BEFORE);
    boolean after = all.rows().stream().anyMatch(r -> r.stage() == ReadingStage.AFTER);
    return switch (cause) {
      case RIDE_BEFORE, RIDE_AFTER, SUBFRAME_SINCE -> !before || !after;
      default -> false;
    };
  }

  /** Off before the work and off in the same way after it, the change as predicted. */
  private boolean isOffAlready(Compared before) {
    return before.stage() == ReadingStage.BEFORE
        && !before.within()
        && find(before, ReadingStage.AFTER)
            .filter(a -> a.difference().radians() * before.difference().radians() > 0)
            .isPresent()
        && find(before, ReadingStage.CHANGE).filter(Compared::within).isPresent();
  }

  private Optional<Compared> find(Compared like, ReadingStage stage) {
    return compared.stream()
        .filter(
            c -> c.side().equals(like.side()) && c.figure() == like.figure() && c.stage() == stage)
        .findFirst();
  }

  private Answer answer() {
    if (outside.isEmpty()) {
      return Answer.NOTHING_TO_EXPLAIN;
    }
    if (all.rows().size() < LEAST_FIGURES) {
      return Answer.TOO_FEW_FIGURES;
    }
    long explaining = fits.stream().filter(CauseFit::explains).count();
    return explaining == 0
        ? Answer.NO_SINGLE_CAUSE
        : explaining == 1 ? Answer.ONE_CAUSE : Answer.SEVERAL_CAUSES;
  }

  private List<String> say(List<Compared> already) {
    List<String> say = new ArrayList<>();
    String scope = side.map(s -> s.word().toUpperCase(Locale.ROOT)).orElse("BOTH SIDES");
    int n = all.rows().size();
    if (answer == Answer.NOTHING_TO_EXPLAIN) {
      say.add(
          n == 1
              ? scope + ": the one figure is within 2 sd of the prediction. Nothing to explain."
              : "%s: all %s figures are within 2 sd of the prediction, chi-square %s. Nothing to explain."
                  .formatted(scope, n, Numbers.fixed(chiSquare, 1)));
      return say;
    }
    List<Compared> own = outside.stream().filter(c -> c.side().equals(side)).toList();
    say.add(
        "%s%s. Chi-square %s of %s."
            .formatted(
                scope,
                own.isEmpty()
                    ? " together: left against right is within 2 sd"
                    : ": outside 2 sd: " + told(own),
                Numbers.fixed(chiSquare, 1),
                n == 1 ? "1 figure" : n + " figures"));
    // Where what the work changed is off as well, it is not cleared by what was off before.
    boolean changed = own.stream().anyMatch(c -> c.stage() == ReadingStage.CHANGE);
    if (side.isPresent() && !already.isEmpty() && !changed) {
      say.add(
          ("Already off in the same way before the work: %s, and the work changed it as predicted."
                  + " That points at the job's points, its camber or the way of reading, not at the"
                  + " work.")
              .formatted(told(already)));
    }
    say.addAll(causes());
    return say;
  }

  private String told(List<Compared> some) {
    return String.join("; ", some.stream().map(this::told).toList());
  }

  private String told(Compared c) {
    return "%s%s %s %s%s (%s sd)"
        .formatted(
            side.isPresent() ? "" : "left-right ",
            c.stage().word(),
            c.figure().word(),
            c.difference().radians() < 0 ? "-" : "+",
            CauseWords.degrees(c.difference().radians()),
            Numbers.fixed(c.sds(), 1));
  }

  private List<String> causes() {
    List<CauseFit> would = fits.stream().filter(CauseFit::explains).toList();
    List<String> say = new ArrayList<>();
    switch (answer) {
      case TOO_FEW_FIGURES -> {
        say.add("Too few figures to tell causes apart: measure more of them.");
        would.stream().limit(MOST_TOLD).forEach(f -> say.add("These would help: " + sentence(f)));
      }
      case NO_SINGLE_CAUSE -> {
        say.add("No single cause looked at explains it.");
        fits.stream().limit(1).forEach(f -> say.add("Nearest: " + near(f)));
      }
      case ONE_CAUSE -> say.add("Would explain it: " + sentence(would.get(0)));
      default -> {
        boolean apart = would.get(1).chiSquare() - would.get(0).chiSquare() > TOLD_APART;
        say.add(
            "Each of these alone would explain it; "
                + (apart
                    ? "the first fits best by far:"
                    : "these figures cannot tell the first ones apart:"));
        would.stream().limit(MOST_TOLD).forEach(f -> say.add("- " + sentence(f)));
        if (would.size() > MOST_TOLD) {
          say.add("- and " + (would.size() - MOST_TOLD) + " more that fit less well.");
        }
      }
    }
    return say;
  }

  private String sentence(CauseFit f) {
    return "%s%s; %s, within %s; it takes away %s %% of chi-square. To find out: %s."
        .formatted(
            f.say(),
            f.hint().map(h -> " (" + h + ")").orElse(""),
            Lengths.LIKELY,
            figure(f, f.plusMinus()).substring(1),
            Numbers.fixed(100 * f.explained(), 0),
            f.cause().check());
  }

  private String figure(CauseFit f, double value) {
    return CauseWords.figure(lengths, f.cause(), value);
  }

  private String near(CauseFit f) {
    String so =
        "%s would take away %s %%".formatted(f.say(), Numbers.fixed(100 * f.explained(), 0));
    return f.plausible()
        ? "%s and leave outside: %s.".formatted(so, String.join(", ", f.leaves()))
        : "%s, but that is more than is plausible (%s to %s)."
            .formatted(so, figure(f, f.from()), figure(f, f.to()));
  }
}
