package dev.towerscribe.survey;

import dev.towerscribe.finding.Severity;
import dev.towerscribe.quantity.Numbers;
import java.util.ArrayList;
import java.util.List;

/** What there is to say of one network: slips, contradictions, twins, open points, the fit. */
final class NetworkFindings {
  private static final String BAARDA = "data snooping, Baarda 1968, from memory; doubts as stated";

  /** So many rivals are named. */
  private static final int MOST_RIVALS = 4;

  private final Labelled labelled;
  private final Snooping.Outcome outcome;
  private final Fit fit;
  private final String what;
  private final Found found;

  /**
   * Findings of a network.
   *
   * @param labelled the network
   * @param outcome what came of it
   * @param fit how its readings agree
   * @param what "points" or "tower"
   * @param found where findings go
   */
  NetworkFindings(Labelled labelled, Snooping.Outcome outcome, Fit fit, String what, Found found) {
    this.labelled = labelled;
    this.outcome = outcome;
    this.fit = fit;
    this.what = what;
    this.found = found;
  }

  /** Adds them; a side is that of a tower, or "both". */
  void report(String side) {
    outcome.setAside().forEach(this::slip);
    outcome.scattered().forEach(this::contradiction);
    Adjustment a = outcome.placed().adjustment();
    outcome.placed().twins().stream()
        // A point that is open has more than two places.
        .filter(t -> OpenPoints.isFound(a, t.node(), fit.widened()))
        .forEach(this::twin);
    new OpenPoints(labelled, a, fit.widened(), found).report();
    fit(side);
  }

  private static String side(Entry entry) {
    return entry.id().substring(0, entry.id().indexOf('.'));
  }

  private static String thing(Entry entry) {
    return entry.id().substring(entry.id().indexOf('.') + 1);
  }

  private void slip(Snooping.SetAside slip) {
    Entry e = slip.entry();
    boolean one = slip.number().isPresent();
    String subject = one ? "reading " + slip.number().get() + " of " + e.words() : e.words();
    StringBuilder say = new StringBuilder();
    say.append(subject)
        .append(" is ")
        .append(length(e, Math.abs(slip.excess())))
        .append(' ')
        .append(e.kind().comparative(slip.excess()))
        .append(" than the rest allow. ");
    if (slip.rivals().isEmpty()) {
      say.append("Read it again");
    } else {
      List<String> rivals = new ArrayList<>();
      rivals.add(e.words());
      slip.rivals().stream().limit(MOST_RIVALS).forEach(r -> rivals.add(r.words()));
      if (slip.rivals().size() > MOST_RIVALS) {
        rivals.add("another");
      }
      say.append("The rest cannot tell which is wrong: ")
          .append(Found.joined(rivals, " or "))
          .append(". Read them again");
    }
    say.append("; accepted, it is left out.");
    found.add(
        Severity.STOP,
        e.words(),
        Found.Size.mm(Math.abs(slip.excess()), slip.limit(), BAARDA),
        say.toString(),
        side(e),
        one
            ? new String[] {"outlier", thing(e), "reading", "" + slip.number().get()}
            : new String[] {"outlier", thing(e)});
  }

  /** Fine readings in hundredths. */
  private String length(Entry e, double mm) {
    return switch (e.kind()) {
      case SPAN, DIAMETER, FORE, IN -> found.fine(mm);
      default -> found.length(mm);
    };
  }

  private void contradiction(Snooping.Scattered s) {
    Entry e = s.entry();
    int n = e.count();
    found.add(
        Severity.STOP,
        e.words(),
        Found.Size.mm(
            e.reading().spread(), outcome.limit() * Math.sqrt(2) * e.reading().doubt(), BAARDA),
        "the "
            + n
            + " readings of "
            + e.words()
            + " differ by "
            + length(e, e.reading().spread())
            + ", and nothing tells which is wrong. Read it again; accepted, "
            + (n == 2 ? "both" : "all")
            + " are kept and its doubt is taken as "
            + length(e, s.widened())
            + ".",
        side(e),
        "scatter",
        thing(e));
  }

  private void twin(Placing.Twin twin) {
    Labelled.Label label = labelled.labels().get(twin.node());
    double[] at = twin.at().clone();
    if (labelled.axes().outward() && label.side().equals("right")) {
      at[1] = -at[1];
    }
    Adjustment a = outcome.placed().adjustment();
    double apart = Placing.distance(twin.at(), a.net().place(a.x(), twin.node()));
    List<String> ways = labelled.axes().ways();
    found.add(
        label.needed() ? Severity.STOP : Severity.CAUTION,
        label.name(),
        Found.Size.mm(apart, 0, "distances alone cannot tell a place from its mirror image"),
        label.name()
            + " fits a second place as well, "
            + found.length(apart)
            + " away: "
            + found.length(at[0])
            + " "
            + ways.get(0)
            + ", "
            + found.length(at[1])
            + " "
            + ways.get(1)
            + (labelled.axes() == Labelled.Axes.CAR
                ? ", " + found.length(at[2]) + " " + ways.get(2)
                : "")
            + ". Take one more reading that tells them apart"
            + (label.needed() ? "; accepted, the place in the list is kept." : "."),
        label.side(),
        "twofold",
        label.name());
  }

  private void fit(String side) {
    if (fit.freedom() < 1) {
      return;
    }
    double limit = limit(fit.freedom());
    String figures =
        "the readings of "
            + (what.equals("tower") ? "places on the tower" : "the car's points")
            + " lie "
            + Numbers.fixed(fit.ratio(), 2)
            + " times as far from the result as their doubts make likely, with "
            + fit.freedom()
            + " to spare";
    boolean wide = fit.widened() > 1;
    boolean narrow = 1 - fit.chance() < Review.UNLIKELY;
    String say =
        wide
            ? figures
                + ": the doubts are stated too small, or there is more than one slip. Every +/- of"
                + " theirs was widened by that much. Look at the worst readings again."
            : figures
                + (narrow ? ": the doubts may be stated too large." : ": as is to be expected.");
    found.add(
        wide ? Severity.CAUTION : Severity.NOTE,
        what,
        new Found.Size(fit.ratio(), limit, "", "chi-square test, one in a hundred"),
        say,
        side,
        "fit",
        what);
  }

  /** The ratio that chance passes once in a hundred. */
  private static double limit(int freedom) {
    double low = 0;
    double high = 10;
    // Each step halves the gap; 60 exhaust a double.
    for (int i = 0; i < 60; i++) {
      double middle = (low + high) / 2;
      if (ChiSquare.above(middle * middle * freedom, freedom) > Review.UNLIKELY) {
        low = middle;
      } else {
        high = middle;
      }
    }
    return high;
  }
}
