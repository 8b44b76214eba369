package dev.towerscribe.survey;

import dev.towerscribe.adjust.Adjustment;
import dev.towerscribe.adjust.Consistency;
import dev.towerscribe.adjust.DataSnooping.Scattered;
import dev.towerscribe.adjust.DataSnooping.SetAside;
import dev.towerscribe.adjust.Measure;
import dev.towerscribe.adjust.Repeated;
import dev.towerscribe.finding.About;
import dev.towerscribe.finding.Findings;
import dev.towerscribe.finding.Severity;
import dev.towerscribe.quantity.Lengths;
import dev.towerscribe.quantity.Lengths.Fineness;
import dev.towerscribe.quantity.Numbers;
import java.util.ArrayList;
import java.util.List;

/** What there is to say of one network: slips, contradictions, twins, open points, the fit. */
final class NetworkFindings {
  private static final String BAARDA =
      "data snooping, Baarda 1968, from memory; uncertainties as stated";

  /** So many rivals are named. */
  private static final int MOST_RIVALS = 4;

  private final NamedNetwork net;
  private final Solved solved;
  private final Fit fit;
  private final String what;
  private final Findings findings;
  private final Lengths lengths;

  /**
   * Findings of a network.
   *
   * @param net the network
   * @param solved what came of it
   * @param fit how its readings agree
   * @param what "points" or "tower"
   * @param findings where findings go
   */
  NetworkFindings(NamedNetwork net, Solved solved, Fit fit, String what, Findings findings) {
    this.net = net;
    this.solved = solved;
    this.fit = fit;
    this.what = what;
    this.findings = findings;
    this.lengths = findings.lengths();
  }

  /** Adds them; a side is that of a tower, or "both". */
  void report(String side) {
    solved.setAside().forEach(this::slip);
    solved.scattered().forEach(this::contradiction);
    solved.placed().twins().stream()
        // A point that is open has more than two places.
        .filter(t -> UnfixedPoints.isFound(solved.adjustment(), t.node(), fit.widened()))
        .forEach(this::twin);
    new UnfixedPoints(net, solved.adjustment(), fit.widened(), findings).report();
    fit(side);
  }

  private void slip(SetAside slip) {
    Entry e = net.entry(slip.observation());
    String excess = length(e, Math.abs(slip.excess()));
    findings.add(
        e.side(),
        "outlier." + e.thing() + slip.number().map(n -> "-reading-" + n).orElse(""),
        Severity.STOP,
        About.mm(e.words(), Math.abs(slip.excess()), solved.limit() * slip.sd(), BAARDA),
        "%s is %s %s than the rest allow. %s; accepted, it is left out."
            .formatted(
                slip.number().map(n -> "reading " + n + " of ").orElse("") + e.words(),
                excess,
                e.kind().comparative(slip.excess()),
                advice(e, slip)));
  }

  private String advice(Entry e, SetAside slip) {
    if (slip.rivals().isEmpty()) {
      return "Read it again";
    }
    List<String> rivals = new ArrayList<>(List.of(e.words()));
    slip.rivals().stream().limit(MOST_RIVALS).forEach(r -> rivals.add(net.entry(r).words()));
    if (slip.rivals().size() > MOST_RIVALS) {
      rivals.add("another");
    }
    return "The rest cannot tell which is wrong: %s. Read them again".formatted(Listed.or(rivals));
  }

  private String length(Entry e, double mm) {
    return lengths.with(mm, e.kind().isFine() ? Fineness.CALIPER : Fineness.TAPE);
  }

  private void contradiction(Scattered s) {
    Entry e = net.entry(s.observation());
    Repeated r = s.observation().reading();
    findings.add(
        e.side(),
        "scatter." + e.thing(),
        Severity.STOP,
        About.mm(e.words(), r.spread(), solved.limit() * Math.sqrt(2) * r.sd(), BAARDA),
        ("the %s readings of %s differ by %s, and nothing tells which is wrong. Read it again;"
                + " accepted, %s are kept and its uncertainty is taken as %s.")
            .formatted(
                r.count(),
                e.words(),
                length(e, r.spread()),
                r.count() == 2 ? "both" : "all",
                length(e, s.widenedSd())));
  }

  private void twin(PointPlacer.Twin twin) {
    NamedNetwork.Label label = net.labels().get(twin.node());
    Adjustment a = solved.adjustment();
    double apart = Measure.distance(twin.at(), a.net().place(a.x(), twin.node()));
    double[] at = twin.at().clone();
    at[1] = net.isMirrored(label) ? -at[1] : at[1];
    List<String> coordinates = new ArrayList<>();
    for (int axis = 0; axis < net.axes().ways().size(); axis++) {
      coordinates.add(tape(at[axis]) + " " + net.axes().ways().get(axis));
    }
    findings.add(
        label.side(),
        "twofold." + Findings.slug(label.name()),
        label.needed() ? Severity.STOP : Severity.CAUTION,
        About.mm(
            label.name(), apart, 0, "distances alone cannot tell a place from its mirror image"),
        "%s fits a second place as well, %s away: %s. Take one more reading that tells them apart%s"
            .formatted(
                label.name(),
                tape(apart),
                String.join(", ", coordinates),
                label.needed() ? "; accepted, the place in the list is kept." : "."));
  }

  private String tape(double mm) {
    return lengths.with(mm, Fineness.TAPE);
  }

  private void fit(String side) {
    if (fit.freedom() < 1) {
      return;
    }
    boolean wide = fit.widened() > 1;
    boolean narrow = 1 - fit.chance() < Consistency.UNLIKELY;
    findings.add(
        side,
        "fit." + what,
        wide ? Severity.CAUTION : Severity.NOTE,
        new About(
            what,
            fit.ratio(),
            Consistency.limit(fit.freedom()),
            "",
            "chi-square test, one in a hundred"),
        ("the readings of %s lie %s times as far from the result as their uncertainties make"
                + " likely, with %s spare readings%s")
            .formatted(
                net.isCar() ? "the car's points" : "places on the tower",
                Numbers.fixed(fit.ratio(), 2),
                fit.freedom(),
                wide
                    ? ": the uncertainties are stated too small, or there is more than one slip."
                        + " Every uncertainty of theirs was widened by that much. Look at the worst"
                        + " readings again."
                    : narrow
                        ? ": the uncertainties may be stated too large."
                        : ": as is to be expected."));
  }
}
