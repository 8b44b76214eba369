package dev.towerscribe.survey;

import dev.towerscribe.finding.Severity;
import dev.towerscribe.model.Side;
import java.util.Optional;

/** Figures that stand alone: the mean of their readings, which must agree with each other. */
final class Scalars {
  /** Good readings contradict each other so much once in a thousand, as a single slip would. */
  private static final double UNLIKELY = 0.001;

  private final Side side;
  private final Found found;

  Scalars(Side side, Found found) {
    this.side = side;
    this.found = found;
  }

  /** A length. */
  Optional<Figure> length(Optional<SurveyReading> reading, String name, String hint) {
    return reading.map(r -> figure(r, name, false, hint));
  }

  Figure length(SurveyReading reading, String name) {
    return figure(reading, name, false, "");
  }

  /** An angle. */
  Optional<Figure> angle(Optional<SurveyReading> reading, String name) {
    return reading.map(r -> figure(r, name, true, ""));
  }

  private Figure figure(SurveyReading r, String name, boolean angle, String hint) {
    int n = r.values().size();
    double doubt = r.doubt();
    if (n > 1 && ChiSquare.above(r.scatter(), n - 1) < UNLIKELY) {
      doubt = doubt * Math.sqrt(r.scatter() / (n - 1));
      double limit = Snooping.LEAST_LIMIT * Math.sqrt(2) * r.doubt();
      String spread = angle ? Found.angle(r.spread()) : found.fine(r.spread());
      String wider = angle ? Found.angle(doubt) : found.fine(doubt);
      found.add(
          Severity.STOP,
          name,
          angle
              ? Found.Size.degrees(r.spread(), limit, Found.STATED)
              : Found.Size.mm(r.spread(), limit, Found.STATED),
          "the "
              + n
              + " readings of the "
              + name
              + " differ by "
              + spread
              + ", more than their doubt of "
              + (angle ? Found.angle(r.doubt()) : found.fine(r.doubt()))
              + " allows. "
              + hint
              + "Read it again; accepted, their mean is kept and the doubt is taken as "
              + wider
              + ".",
          side.word(),
          "scatter",
          name);
    }
    return new Figure(r.mean(), doubt / Math.sqrt(n));
  }
}
