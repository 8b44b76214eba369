package dev.towerscribe.job;

import dev.towerscribe.geometry.Webs;
import dev.towerscribe.model.Bolt;
import dev.towerscribe.model.Fastening;
import dev.towerscribe.model.Fit;
import dev.towerscribe.model.Plate;
import dev.towerscribe.model.PlateMake;
import dev.towerscribe.model.PlateShape;
import dev.towerscribe.model.Slider;
import dev.towerscribe.model.SlotEnds;
import dev.towerscribe.quantity.Lengths;
import dev.towerscribe.quantity.Tolerances;
import java.util.Optional;

/**
 * Faults of a plate's making that show only once the whole plate and the job's holes are known. A
 * job that says nothing of the making is not judged here: it may be for the tower alone, and its
 * plate was made long ago. Whoever asks for its drawing gets the same faults as findings.
 */
final class MakeFaults {
  private static final String INDEX_HOLES = "index_holes";

  private final PlateReader.Found found;
  private final Plate plate;
  private final Fit fit;

  private MakeFaults(PlateReader.Found found, Fit fit) {
    this.found = found;
    this.plate = found.plate();
    this.fit = fit;
  }

  static void report(PlateReader.Found found, Fit fit) {
    boolean said =
        found.make().isPresent()
            || found.plate().bolts().stream()
                .anyMatch(b -> b.plateHoleMm().isPresent() || b.recess().isPresent());
    if (said) {
      new MakeFaults(found, fit).all();
    }
  }

  private void all() {
    for (int i = 0; i < plate.bolts().size(); i++) {
      bolt(plate.bolts().get(i), found.bolts().get(i));
    }
    found.make().ifPresent(this::make);
    if (found.table().sound()) {
      clashes(PlateShape.of(plate, fit), false);
      Slider.of(plate).ifPresent(s -> clashes(PlateShape.of(s), true));
    }
  }

  private void bolt(Bolt bolt, TableReader t) {
    boolean fixed = plate.make().fastening().value() == Fastening.FIXED;
    if (fixed && bolt.plateHoleMm().isEmpty()) {
      t.fault(
          "hole",
          "the tapping hole or the stud's hole, with fastener = \"fixed\"",
          "A clearance hole holds no bolt: look the size up with the fastener's maker.");
      return;
    }
    double hole = bolt.plateHoleMm(fit).value();
    if (!fixed && hole <= bolt.thread().nominalMm()) {
      t.lengthFault(
          "hole",
          "more than the bolt's own " + t.atLeast(bolt.thread().nominalMm()),
          "A floating bolt passes through: make the hole larger.");
    }
    if (bolt.recess().isEmpty()) {
      return;
    }
    var recess = bolt.recess().get();
    TableReader r =
        t.optionalTable("counterbore").or(() -> t.optionalTable("countersink")).orElseThrow();
    if (recess.diameterMm() <= hole) {
      r.lengthFault(
          "diameter",
          "more than its hole, " + t.atLeast(hole),
          "It is to take a head: make it wider than the hole.");
      return;
    }
    double deep = recess.depthMm(hole);
    if (deep >= plate.thicknessMm()) {
      r.lengthFault(
          r.has("depth") ? "depth" : "diameter",
          "less deep than the plate is thick, " + t.atMost(plate.thicknessMm()),
          "It goes " + length(t, deep) + " deep and leaves no metal under the head.");
    }
  }

  private void make(TableReader m) {
    PlateMake make = plate.make();
    double width = plate.slotWidthMm().value();
    boolean square = make.slotEnds().value() == SlotEnds.SQUARE;
    if (square && make.slotCornerMm().value() > width / 2) {
      m.lengthFault(
          "slot_corner",
          "at most half the slot's width, " + m.atMost(width / 2),
          "Make it smaller, or the slot wider.");
    }
    if (make.indexHoles().isPresent() && plate.slot().indexMm().isEmpty()) {
      m.fault(
          INDEX_HOLES,
          "only with plate.slot.index",
          "List the settings that the pins are to hold.");
    }
    if (make.edgeBreakMm().value() >= plate.thicknessMm() / 2) {
      m.lengthFault(
          "edge_break",
          "less than half the plate's thickness, " + m.atMost(plate.thicknessMm() / 2),
          "Two broken edges would leave no edge between them.");
    }
    if (make.slider().isPresent() && !plate.slotHasLength()) {
      m.fault(
          "slider",
          "only where the slot has length",
          "With from = to the bearing sits in the plate: drop this key.");
    }
    Slider.of(plate).ifPresent(s -> slider(s, m.optionalTable("slider").orElse(m)));
  }

  private static void slider(Slider slider, TableReader t) {
    double most = Math.min(slider.lengthMm().value(), slider.widthMm().value()) / 2;
    if (slider.cornerMm().value() > most) {
      t.lengthFault(
          "corner", "at most half its shorter side, " + t.atMost(most), "Make it smaller.");
    }
  }

  /** What touches or crosses: nothing of one piece would be left there. */
  private void clashes(PlateShape shape, boolean slider) {
    for (Webs.Web web : Webs.of(shape.solid())) {
      if (web.mm() > Tolerances.SAME_POINT_MM) {
        continue;
      }
      boolean edge = web.second() == Webs.EDGE;
      // The later of two is the one to change: slot or bearing come first, then bolts, then pins.
      PlateShape.Cavity at = shape.cavities().get(edge ? web.first() : web.second());
      String whole = slider ? "the slider" : "the plate";
      String other =
          edge ? "the edge of " + whole : "the " + shape.cavities().get(web.first()).name();
      Place place = place(at, slider && edge);
      String overlap = length(place.table, -web.mm());
      String name = (at.use() == PlateShape.Use.BOLT ? "The hole of " : "The ") + at.name();
      place.table.lengthFault(
          place.key,
          "more than 0 %s of metal to %s".formatted(place.table.unit().symbol(), other),
          "%s %s%s: move it, or make one of them smaller%s."
              .formatted(
                  name,
                  -web.mm() <= Tolerances.SAME_POINT_MM
                      ? "touches it"
                      : "runs into it by " + overlap,
                  slider ? " in the slider" : "",
                  slider && edge ? ", or the slider larger" : ""));
    }
  }

  private record Place(TableReader table, String key) {}

  private Place place(PlateShape.Cavity cavity, boolean ofSlider) {
    if (ofSlider && found.make().orElseThrow().has("slider")) {
      return new Place(found.make().get(), "slider");
    }
    Optional<TableReader> width = found.make().filter(m -> m.has("slot_width"));
    return switch (cavity.use()) {
      case BOLT -> new Place(found.bolts().get(cavity.place()), "at");
      case INDEX -> new Place(found.make().orElseThrow(), INDEX_HOLES);
      case BEARING -> new Place(found.make().orElseThrow(), "bearing_bore");
      case SLOT ->
          width.map(m -> new Place(m, "slot_width")).orElse(new Place(found.table(), "slot"));
    };
  }

  private static String length(TableReader t, double mm) {
    return Lengths.in(t.unit()).with(mm, Lengths.Fineness.DRAWING);
  }
}
