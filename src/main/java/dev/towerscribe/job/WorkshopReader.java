package dev.towerscribe.job;

import dev.towerscribe.model.BoltClass;
import dev.towerscribe.model.DrawingInfo;
import dev.towerscribe.model.HoleFit;
import dev.towerscribe.model.JigRules;
import dev.towerscribe.model.Load;
import dev.towerscribe.model.Seat;
import dev.towerscribe.model.Stated;
import java.util.Optional;

/** Tables of the whole job that only the workshop's pages need: drawing, jig, load. */
final class WorkshopReader {
  private WorkshopReader() {}

  static DrawingInfo drawing(TableReader t) {
    DrawingInfo info =
        new DrawingInfo(
            Said.label(t, "number", Limits.NAME),
            Said.label(t, "owner", Limits.NAME),
            Said.label(t, "created_by", Limits.NAME),
            Said.label(t, "approved_by", Limits.NAME),
            Said.label(t, "revision", Limits.NAME),
            Said.word(t, "projection", DrawingInfo.BLANK.projection().value()));
    t.close();
    return info;
  }

  static Optional<JigRules> jig(TableReader t) {
    JigRules d = JigRules.ASSUMED;
    Stated<Double> thickness = Said.length(t, "thickness", Limits.JIG_THICKNESS, d.thicknessMm());
    Stated<Double> margin = Said.length(t, "margin", Limits.JIG_MARGIN, d.marginMm());
    Stated<Double> bore = d.boreMm();
    Optional<Double> outside = Optional.empty();
    Stated<HoleFit> fit = d.fit();
    Optional<TableReader> bushing = t.optionalTable("bushing");
    if (bushing.isPresent()) {
      TableReader b = bushing.get();
      bore = Said.length(b, "bore", Limits.BUSHING_BORE, d.boreMm());
      outside = Said.length(b, "outside", Limits.BUSHING);
      fit = Said.word(b, "fit", d.fit().value());
      if (outside.isPresent() && outside.get() <= bore.value()) {
        b.lengthFault(
            "outside",
            "more than the bore, " + b.atLeast(bore.value()),
            "Measure the bushing's outside.");
      }
      b.close();
    }
    t.close();
    return t.sound()
        ? Optional.of(new JigRules(thickness, margin, bore, outside, fit))
        : Optional.empty();
  }

  static Optional<Load> load(TableReader t) {
    Optional<Double> spring = Said.figure(t, "spring", Limits.SPRING);
    Optional<Double> bump = t.length("bump", Limits.WHEEL_TRAVEL);
    Optional<Double> still = Said.figure(t, "static", Limits.STATIC);
    Optional<Seat> seat = t.word("seat", Seat.class);
    Stated<Double> factor = Said.figure(t, "factor", Limits.FACTOR, Load.FACTOR);
    Stated<BoltClass> bolts = Said.word(t, "class", Load.CLASS);
    Stated<Double> friction = Said.figure(t, "friction", Limits.FRICTION, Load.FRICTION);
    return t.closed(
        () -> new Load(spring.get(), bump.get(), still.get(), seat.get(), factor, bolts, friction));
  }
}
