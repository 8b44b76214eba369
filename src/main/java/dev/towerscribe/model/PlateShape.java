package dev.towerscribe.model;

import dev.towerscribe.geometry.Bore;
import dev.towerscribe.geometry.Box;
import dev.towerscribe.geometry.Contour;
import dev.towerscribe.geometry.FlatSolid;
import dev.towerscribe.geometry.RoundedRectangle;
import dev.towerscribe.geometry.Vec2;
import java.util.ArrayList;
import java.util.List;
import java.util.Optional;

/**
 * A plate, or its slider, as a solid in its own frame, upper face up.
 *
 * @param solid what is left of the metal; what is cut out may still touch or cross
 * @param cavities what is cut out: the solid's cut-outs, then its bores, in their order
 */
public record PlateShape(FlatSolid solid, List<Cavity> cavities) {
  /** Copies the list. */
  public PlateShape {
    cavities = List.copyOf(cavities);
    if (cavities.size() != solid.cutouts().size() + solid.bores().size()) {
      throw new IllegalArgumentException("each cut-out has one name");
    }
  }

  /** What a cut-out is for. */
  public enum Use {
    /** The bearing's travel. */
    SLOT,
    /** The bearing's seat. */
    BEARING,
    /** A bolt of the plate. */
    BOLT,
    /** A pin that holds a setting. */
    INDEX
  }

  /**
   * One thing that is cut out.
   *
   * @param use what it is for
   * @param place its place among those of its use, in the job's order; the two index holes of a
   *     setting follow each other, a at +y first
   * @param name what to call it: "bolt A", "slot", "index hole 2a"
   */
  public record Cavity(Use use, int place, String name) {}

  /**
   * The plate. Its slot where the bearing moves or has no bore of its own; else the bearing's bore.
   *
   * @param plate the plate
   * @param fit clearance series of bolt holes of which nothing is said
   * @return its shape
   * @throws IllegalArgumentException if a recess is as deep as the plate or no wider than its hole,
   *     or the slot's corners are larger than its width allows; the job reader finds these first
   */
  public static PlateShape of(Plate plate, Fit fit) {
    PlateMake make = plate.make();
    List<Contour> cutouts = new ArrayList<>();
    List<Bore> bores = new ArrayList<>();
    List<Cavity> cut = new ArrayList<>();
    List<Cavity> bored = new ArrayList<>();
    Vec2 from = new Vec2(plate.bearingXMm() + plate.slot().fromMm(), 0);
    Optional<PlateMake.BearingBore> bearing = make.bearingBore();
    if (bearing.isPresent() && !plate.slotHasLength()) {
      bores.add(Bore.plain(from, bearing.get().diameterMm()));
      bored.add(new Cavity(Use.BEARING, 0, "bearing bore"));
    } else {
      Contour slot = slot(plate);
      Cavity cavity = new Cavity(Use.SLOT, 0, "slot");
      if (slot.asCircle().isPresent()) {
        bores.add(Bore.plain(from, plate.slotWidthMm().value()));
        bored.add(cavity);
      } else {
        cutouts.add(slot);
        cut.add(cavity);
      }
    }
    for (int i = 0; i < plate.bolts().size(); i++) {
      Bolt bolt = plate.bolts().get(i);
      bores.add(new Bore(bolt.at(), bolt.plateHoleMm(fit).value(), bolt.recess()));
      bored.add(new Cavity(Use.BOLT, i, "bolt " + bolt.name()));
    }
    make.indexHoles()
        .ifPresent(
            holes -> {
              List<Double> settings = plate.slot().indexMm();
              for (int i = 0; i < settings.size(); i++) {
                double x = plate.bearingXMm() + settings.get(i);
                pair(x, holes, 2 * i, "index hole " + (i + 1), bores, bored);
              }
            });
    cut.addAll(bored);
    return new PlateShape(new FlatSolid(plate.outline(), plate.thicknessMm(), cutouts, bores), cut);
  }

  /**
   * The slider, origin at the bearing's centre.
   *
   * @param slider its sizes
   * @return its shape
   * @throws IllegalArgumentException if its corners are larger than its sides allow
   */
  public static PlateShape of(Slider slider) {
    double x = slider.lengthMm().value() / 2;
    double y = slider.widthMm().value() / 2;
    List<Bore> bores = new ArrayList<>();
    List<Cavity> cavities = new ArrayList<>();
    bores.add(Bore.plain(Vec2.ZERO, slider.bore().diameterMm()));
    cavities.add(new Cavity(Use.BEARING, 0, "bearing bore"));
    slider.indexHoles().ifPresent(h -> pair(0, h, 0, "index hole ", bores, cavities));
    return new PlateShape(
        new FlatSolid(
            RoundedRectangle.rectangle(new Box(-x, -y, x, y), slider.cornerMm().value()),
            slider.thicknessMm().value(),
            List.of(),
            bores),
        cavities);
  }

  private static void pair(
      double x,
      PlateMake.IndexHoles holes,
      int place,
      String name,
      List<Bore> bores,
      List<Cavity> cavities) {
    bores.add(Bore.plain(new Vec2(x, holes.offsetMm()), holes.diameterMm()));
    cavities.add(new Cavity(Use.INDEX, place, name + "a"));
    bores.add(Bore.plain(new Vec2(x, -holes.offsetMm()), holes.diameterMm()));
    cavities.add(new Cavity(Use.INDEX, place + 1, name + "b"));
  }

  /** Edge of the slot: as wide as said, reaching half its width past the outermost settings. */
  private static Contour slot(Plate plate) {
    double half = plate.slotWidthMm().value() / 2;
    double from = plate.bearingXMm() + plate.slot().fromMm();
    double to = plate.bearingXMm() + plate.slot().toMm();
    if (plate.make().slotEnds().value() == SlotEnds.ROUND) {
      return Contour.sweptDisc(new Vec2(from, 0), new Vec2(to, 0), half);
    }
    return RoundedRectangle.rectangle(
        new Box(from - half, -half, to + half, half), plate.make().slotCornerMm().value());
  }
}
