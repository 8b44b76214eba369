package dev.towerscribe.job;

import dev.towerscribe.geometry.Recess;
import dev.towerscribe.model.Fastening;
import dev.towerscribe.model.GeneralTolerance;
import dev.towerscribe.model.HoleFit;
import dev.towerscribe.model.PlateMake;
import dev.towerscribe.model.SlotEnds;
import dev.towerscribe.model.Stated;
import dev.towerscribe.quantity.Angle;
import java.util.List;
import java.util.Optional;

/** What a machinist needs to know: {@code plate.make}, and the recesses of bolt holes. */
final class MakeReader {
  private static final String COUNTERBORE = "counterbore";
  private static final String COUNTERSINK = "countersink";

  private MakeReader() {}

  /** The table, if it is sound. */
  static Optional<PlateMake> read(TableReader m) {
    PlateMake d = PlateMake.ASSUMED;
    Stated<String> material = StatedValues.label(m, "material", Limits.PHRASE, d.material());
    Stated<Double> density =
        StatedValues.figure(m, "density", Limits.DENSITY, d.densityGPerCm3().value());
    Stated<String> finish = StatedValues.label(m, "finish", Limits.PHRASE, d.finish());
    Stated<Double> edgeBreak =
        StatedValues.length(m, "edge_break", Limits.EDGE_BREAK, d.edgeBreakMm());
    Stated<GeneralTolerance> general = StatedValues.word(m, "general", d.general().value());
    Optional<Double> slotWidth = StatedValues.length(m, "slot_width", Limits.SLOT_WIDTH);
    Stated<SlotEnds> ends = StatedValues.word(m, "slot_ends", d.slotEnds().value());
    Stated<Double> corner =
        StatedValues.length(m, "slot_corner", Limits.PLATE_CORNER, d.slotCornerMm());
    Optional<PlateMake.IndexHoles> index =
        m.optionalTable("index_holes").flatMap(MakeReader::indexHoles);
    Optional<PlateMake.BearingBore> bore =
        m.optionalTable("bearing_bore").flatMap(MakeReader::bearingBore);
    Optional<PlateMake.SliderSize> slider = m.optionalTable("slider").flatMap(MakeReader::slider);
    if (m.has("slider") && !m.has("bearing_bore")) {
      m.fault(
          "slider",
          "only with bearing_bore",
          "Add the bore that it carries the bearing in, or drop this key.");
    }
    Stated<Fastening> fastening = StatedValues.word(m, "fastener", d.fastening().value());
    return m.closed(
        () ->
            new PlateMake(
                material, density, finish, edgeBreak, general, slotWidth, ends, corner, index, bore,
                slider, fastening));
  }

  private static Stated<HoleFit> fit(TableReader t, HoleFit otherwise) {
    return StatedValues.word(t, "fit", otherwise);
  }

  private static Optional<PlateMake.IndexHoles> indexHoles(TableReader t) {
    Optional<Double> diameter = t.length("diameter", Limits.INDEX_HOLE);
    Optional<Double> offset = t.length("offset", Limits.INDEX_OFFSET);
    Stated<HoleFit> fit = fit(t, HoleFit.H13);
    return t.closed(() -> new PlateMake.IndexHoles(diameter.get(), offset.get(), fit));
  }

  private static Optional<PlateMake.BearingBore> bearingBore(TableReader t) {
    Optional<Double> diameter = t.length("diameter", Limits.BEARING_BORE);
    Stated<HoleFit> fit = fit(t, HoleFit.H7);
    return t.closed(() -> new PlateMake.BearingBore(diameter.get(), fit));
  }

  private static Optional<PlateMake.SliderSize> slider(TableReader t) {
    Optional<Double> length = StatedValues.length(t, "length", Limits.SLIDER);
    Optional<Double> width = StatedValues.length(t, "width", Limits.SLIDER);
    Optional<Double> thickness = StatedValues.length(t, "thickness", Limits.THICKNESS);
    Optional<Double> corner = StatedValues.length(t, "corner", Limits.PLATE_CORNER);
    return t.closed(() -> new PlateMake.SliderSize(length, width, thickness, corner));
  }

  /** How a bolt's hole is widened, if it is; the table is unsound after a fault. */
  static Optional<Recess> recess(TableReader bolt) {
    if (bolt.has(COUNTERBORE) && bolt.has(COUNTERSINK)) {
      bolt.fault(
          COUNTERSINK, "not with counterbore", "A hole is widened one way: keep one of the two.");
      return Optional.empty();
    }
    Optional<TableReader> straight = bolt.optionalTable(COUNTERBORE);
    if (straight.isPresent()) {
      TableReader t = straight.get();
      Optional<Double> diameter = t.length("diameter", Limits.RECESS);
      Optional<Double> depth = t.length("depth", Limits.RECESS_DEPTH);
      Optional<Boolean> top = fromTop(t);
      return t.closed(() -> new Recess.Counterbore(diameter.get(), depth.get(), top.get()));
    }
    Optional<TableReader> cone = bolt.optionalTable(COUNTERSINK);
    if (cone.isPresent()) {
      TableReader t = cone.get();
      Optional<Double> diameter = t.length("diameter", Limits.RECESS);
      Optional<Angle> angle = t.angle("angle", Limits.CONE);
      Optional<Boolean> top = fromTop(t);
      return t.closed(() -> new Recess.Countersink(diameter.get(), angle.get(), top.get()));
    }
    return Optional.empty();
  }

  /** No default: a recess in the wrong face makes scrap. */
  private static Optional<Boolean> fromTop(TableReader t) {
    return t.word("face", List.of(true, false), top -> top ? "top" : "under", Optional.empty());
  }
}
