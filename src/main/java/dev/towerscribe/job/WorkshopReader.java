package dev.towerscribe.job;

import dev.towerscribe.model.DrawingInfo;
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
            StatedValues.label(t, "number", Limits.NAME),
            StatedValues.label(t, "owner", Limits.NAME),
            StatedValues.label(t, "created_by", Limits.NAME),
            StatedValues.label(t, "approved_by", Limits.NAME),
            StatedValues.label(t, "revision", Limits.NAME),
            StatedValues.word(t, "projection", DrawingInfo.BLANK.projection().value()));
    t.close();
    return info;
  }

  static Optional<JigRules> jig(TableReader t) {
    JigRules d = JigRules.ASSUMED;
    var thickness = StatedValues.length(t, "thickness", Limits.JIG_THICKNESS, d.thicknessMm());
    var margin = StatedValues.length(t, "margin", Limits.JIG_MARGIN, d.marginMm());
    var rules = t.tableOrEmpty("bushing").flatMap(b -> bushing(b, thickness, margin));
    return t.closed(rules::get);
  }

  private static Optional<JigRules> bushing(
      TableReader b, Stated<Double> thickness, Stated<Double> margin) {
    JigRules d = JigRules.ASSUMED;
    var bore = StatedValues.length(b, "bore", Limits.BUSHING_BORE, d.boreMm());
    var outside = StatedValues.length(b, "outside", Limits.BUSHING);
    var fit = StatedValues.word(b, "fit", d.fit().value());
    if (outside.isPresent() && outside.get() <= bore.value()) {
      b.lengthFault(
          "outside",
          "more than the bore, " + b.atLeast(bore.value()),
          "Measure the bushing's outside.");
    }
    return b.closed(() -> new JigRules(thickness, margin, bore, outside, fit));
  }

  /** The face that [load] names, for jobs whose [mount] leaves it out. */
  static Optional<Seat> seat(TableReader load) {
    return load.has("seat") ? load.word("seat", Seat.class) : Optional.empty();
  }

  static Optional<Load> load(TableReader t) {
    var spring = StatedValues.figure(t, "spring", Limits.SPRING);
    var bump = t.length("bump", Limits.WHEEL_TRAVEL);
    var still = StatedValues.figure(t, "static", Limits.STATIC);
    var factor = StatedValues.figure(t, "factor", Limits.FACTOR, Load.FACTOR);
    var bolts = StatedValues.word(t, "class", Load.CLASS);
    var friction = StatedValues.figure(t, "friction", Limits.FRICTION, Load.FRICTION);
    return t.closed(() -> new Load(spring.get(), bump.get(), still.get(), factor, bolts, friction));
  }
}
