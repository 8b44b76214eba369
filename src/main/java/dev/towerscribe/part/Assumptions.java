package dev.towerscribe.part;

import dev.towerscribe.model.Bolt;
import dev.towerscribe.model.Fit;
import dev.towerscribe.model.Plate;
import dev.towerscribe.model.PlateMake;
import dev.towerscribe.model.Slider;
import dev.towerscribe.model.SlotEnds;
import dev.towerscribe.model.Stated;
import dev.towerscribe.quantity.LengthUnit;
import dev.towerscribe.quantity.Lengths;
import dev.towerscribe.quantity.Numbers;
import java.util.ArrayList;
import java.util.List;
import java.util.function.Function;

/** What was not specified about a part, in words for its drawing. */
final class Assumptions {
  private final Lengths lengths;
  private final List<String> list = new ArrayList<>();

  private Assumptions(LengthUnit units) {
    this.lengths = Lengths.in(units);
  }

  static List<String> of(Plate plate, Fit fit, LengthUnit units) {
    Assumptions a = new Assumptions(units);
    a.common(plate.make());
    PlateMake make = plate.make();
    boolean boreInPlate = make.bearingBore().isPresent() && !plate.slotHasLength();
    if (boreInPlate) {
      a.bore(make);
    } else {
      a.add("slot width", plate.slotWidthMm(), mm -> a.lengths.size(mm) + ", for what moves in it");
      a.add("slot ends", make.slotEnds(), SlotEnds::word);
      if (make.slotEnds().value() == SlotEnds.SQUARE) {
        a.add("slot corner radius", make.slotCornerMm(), a.lengths::size);
      }
    }
    for (Bolt bolt : plate.bolts()) {
      a.add(
          "hole " + bolt.name(),
          bolt.plateHoleMm(fit),
          mm -> a.lengths.size(mm) + ", clearance for " + bolt.thread().name());
    }
    a.add("bolts", make.fastening(), f -> f.word() + ", clearance holes in both plate and tower");
    a.indexFit(make);
    return List.copyOf(a.list);
  }

  static List<String> of(Slider slider, PlateMake make, LengthUnit units) {
    Assumptions a = new Assumptions(units);
    a.common(make);
    a.add("length", slider.lengthMm(), a.lengths::size);
    a.add("width", slider.widthMm(), a.lengths::size);
    a.add("thickness", slider.thicknessMm(), a.lengths::size);
    a.add("corner radius", slider.cornerMm(), a.lengths::size);
    a.bore(make);
    a.indexFit(make);
    return List.copyOf(a.list);
  }

  private void common(PlateMake make) {
    add("material", make.material(), m -> m);
    add("density", make.densityGPerCm3(), d -> Numbers.plain(d, 3) + " g/cm3");
    add("finish", make.finish(), f -> f);
    add("edges broken", make.edgeBreakMm(), lengths::size);
    add("general tolerances", make.general(), g -> "ISO 2768-" + g.word());
  }

  private void bore(PlateMake make) {
    make.bearingBore().ifPresent(b -> add("fit of the bearing bore", b.fit(), f -> f.word()));
  }

  private void indexFit(PlateMake make) {
    make.indexHoles().ifPresent(h -> add("fit of the index holes", h.fit(), f -> f.word()));
  }

  private <T> void add(String what, Stated<T> stated, Function<T, String> words) {
    add(list, what, stated, words);
  }

  /** Adds a sentence for a figure that was not specified; says nothing of one that was. */
  static <T> void add(List<String> list, String what, Stated<T> stated, Function<T, String> words) {
    if (stated.assumed()) {
      list.add(what + ": " + words.apply(stated.value()));
    }
  }
}
