package dev.towerscribe.survey;

import dev.towerscribe.adjust.Consistency;
import dev.towerscribe.adjust.DataSnooping;
import dev.towerscribe.adjust.Repeated;
import dev.towerscribe.finding.About;
import dev.towerscribe.finding.Findings;
import dev.towerscribe.finding.Severity;
import dev.towerscribe.model.Side;
import dev.towerscribe.quantity.Lengths;
import java.util.Optional;

/** Figures that stand alone: the mean of their readings, which must agree with each other. */
final class SingleFigures {
  /** Good readings contradict each other so much once in a thousand, as a single slip would. */
  private static final double UNLIKELY = 0.001;

  private static final String STATED = "uncertainties as stated";

  private final Side side;
  private final Findings findings;

  SingleFigures(Side side, Findings findings) {
    this.side = side;
    this.findings = findings;
  }

  /** A length. */
  Optional<Figure> length(Optional<Repeated> reading, String name, String hint) {
    return reading.map(r -> figure(r, name, false, hint));
  }

  Figure length(Repeated reading, String name) {
    return figure(reading, name, false, "");
  }

  /** An angle. */
  Optional<Figure> angle(Optional<Repeated> reading, String name) {
    return reading.map(r -> figure(r, name, true, ""));
  }

  private Figure figure(Repeated r, String name, boolean angle, String hint) {
    boolean agree = new Consistency(r.scatter(), r.count() - 1).chance() >= UNLIKELY;
    Repeated taken = agree ? r : r.withSd(r.shownSd());
    if (!agree) {
      double limit = DataSnooping.LEAST_LIMIT * Math.sqrt(2) * r.sd();
      findings.add(
          side.word(),
          "scatter." + Findings.slug(name),
          Severity.STOP,
          angle
              ? About.degrees(name, r.spread(), limit, STATED)
              : About.mm(name, r.spread(), limit, STATED),
          ("the %s readings of the %s differ by %s, more than their uncertainty of %s allows."
                  + " %sRead it again; accepted, their mean is kept and the uncertainty is taken as"
                  + " %s.")
              .formatted(
                  r.count(),
                  name,
                  told(findings, r.spread(), angle),
                  told(findings, r.sd(), angle),
                  hint,
                  told(findings, taken.sd(), angle)));
    }
    return new Figure(taken.mean(), taken.meanSd());
  }

  /** A length in the findings' unit, or an angle, with its unit. */
  static String told(Findings findings, double value, boolean angle) {
    return angle ? Lengths.degrees(value) + " deg" : findings.lengths().with(value);
  }
}
