package dev.towerscribe.job;

import dev.towerscribe.geometry.Recess;
import dev.towerscribe.model.HoleFit;
import dev.towerscribe.model.PlateMake;
import dev.towerscribe.model.Stated;
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
    var material = StatedValues.label(m, "material", Limits.PHRASE, d.material());
    var density = StatedValues.figure(m, "density", Limits.DENSITY, d.densityGPerCm3().value());
    var finish = StatedValues.label(m, "finish", Limits.PHRASE, d.finish());
    var edgeBreak = StatedValues.length(m, "edge_break", Limits.EDGE_BREAK, d.edgeBreakMm());
    var general = StatedValues.word(m, "general", d.general().value());
    var slotWidth = StatedValues.length(m, "slot_width", Limits.SLOT_WIDTH);
    var ends = StatedValues.word(m, "slot_ends", d.slotEnds().value());
    var corner = StatedValues.length(m, "slot_corner", Limits.PLATE_CORNER, d.slotCornerMm());
    var index = m.optionalTable("index_holes").flatMap(MakeReader::indexHoles);
    var bore = m.optionalTable("bearing_bore").flatMap(MakeReader::bearingBore);
    var slider = m.optionalTable("slider").flatMap(MakeReader::slider);
    if (m.has("slider") && !m.has("bearing_bore")) {
      m.fault(
          "slider",
          "only with bearing_bore",
          "Add the bore that it carries the bearing in, or drop this key.");
    }
    var fastening = StatedValues.word(m, "fastener", d.fastening().value());
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
    var diameter = t.length("diameter", Limits.INDEX_HOLE);
    var offset = t.length("offset", Limits.INDEX_OFFSET);
    var fit = fit(t, HoleFit.H13);
    return t.closed(() -> new PlateMake.IndexHoles(diameter.get(), offset.get(), fit));
  }

  private static Optional<PlateMake.BearingBore> bearingBore(TableReader t) {
    var diameter = t.length("diameter", Limits.BEARING_BORE);
    var fit = fit(t, HoleFit.H7);
    return t.closed(() -> new PlateMake.BearingBore(diameter.get(), fit));
  }

  private static Optional<PlateMake.SliderSize> slider(TableReader t) {
    var length = StatedValues.length(t, "length", Limits.SLIDER);
    var width = StatedValues.length(t, "width", Limits.SLIDER);
    var thickness = StatedValues.length(t, "thickness", Limits.THICKNESS);
    var corner = StatedValues.length(t, "corner", Limits.PLATE_CORNER);
    return t.closed(() -> new PlateMake.SliderSize(length, width, thickness, corner));
  }

  /** How a bolt's hole is widened, if it is; the table is unsound after a fault. */
  static Optional<Recess> recess(TableReader bolt) {
    if (bolt.has(COUNTERBORE) && bolt.has(COUNTERSINK)) {
      return bolt.fault(
          COUNTERSINK, "not with counterbore", "A hole is widened one way: keep one of the two.");
    }
    return bolt.optionalTable(COUNTERBORE)
        .flatMap(MakeReader::counterbore)
        .or(() -> bolt.optionalTable(COUNTERSINK).flatMap(MakeReader::countersink));
  }

  private static Optional<Recess> counterbore(TableReader t) {
    var diameter = t.length("diameter", Limits.RECESS);
    var depth = t.length("depth", Limits.RECESS_DEPTH);
    var top = fromTop(t);
    return t.closed(() -> new Recess.Counterbore(diameter.get(), depth.get(), top.get()));
  }

  private static Optional<Recess> countersink(TableReader t) {
    var diameter = t.length("diameter", Limits.RECESS);
    var angle = t.angle("angle", Limits.CONE);
    var top = fromTop(t);
    return t.closed(() -> new Recess.Countersink(diameter.get(), angle.get(), top.get()));
  }

  /** No default: a recess in the wrong face makes scrap. */
  private static Optional<Boolean> fromTop(TableReader t) {
    return t.word("face", List.of(true, false), top -> top ? "top" : "under");
  }
}
