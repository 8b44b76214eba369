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
import java.util.stream.Stream;

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
    List<Hole> holes = new ArrayList<>();
    Vec2 from = new Vec2(plate.bearingXMm() + plate.slot().fromMm(), 0);
    Optional<PlateMake.BearingBore> bearing = make.bearingBore();
    Cavity slotCavity = new Cavity(Use.SLOT, 0, "slot");
    if (bearing.isPresent() && !plate.slotHasLength()) {
      holes.add(bearing(from, bearing.get()));
    } else if (slot(plate).asCircle().isPresent()) {
      holes.add(new Hole(Bore.plain(from, plate.slotWidthMm().value()), slotCavity));
    } else {
      cutouts.add(slot(plate));
    }
    for (int i = 0; i < plate.bolts().size(); i++) {
      Bolt bolt = plate.bolts().get(i);
      Bore bore = new Bore(bolt.at(), bolt.plateHoleMm(fit).value(), bolt.recess());
      holes.add(new Hole(bore, new Cavity(Use.BOLT, i, "bolt " + bolt.name())));
    }
    List<Double> settings = plate.slot().indexMm();
    for (int i = 0; i < settings.size() && make.indexHoles().isPresent(); i++) {
      double x = plate.bearingXMm() + settings.get(i);
      holes.addAll(pair(x, make.indexHoles().get(), 2 * i, "index hole " + (i + 1)));
    }
    List<Cavity> cut = cutouts.isEmpty() ? List.of() : List.of(slotCavity);
    return of(plate.outline(), plate.thicknessMm(), cutouts, cut, holes);
  }

  /** A round hole and what it is for. */
  private record Hole(Bore bore, Cavity cavity) {}

  private static PlateShape of(
      Contour outline, double thickMm, List<Contour> cutouts, List<Cavity> cut, List<Hole> holes) {
    List<Bore> bores = holes.stream().map(Hole::bore).toList();
    return new PlateShape(
        new FlatSolid(outline, thickMm, cutouts, bores),
        Stream.concat(cut.stream(), holes.stream().map(Hole::cavity)).toList());
  }

  private static Hole bearing(Vec2 at, PlateMake.BearingBore bore) {
    return new Hole(Bore.plain(at, bore.diameterMm()), new Cavity(Use.BEARING, 0, "bearing bore"));
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
    List<Hole> holes = new ArrayList<>(List.of(bearing(Vec2.ZERO, slider.bore())));
    slider.indexHoles().ifPresent(h -> holes.addAll(pair(0, h, 0, "index hole ")));
    Box box = new Box(-x, -y, x, y);
    Contour outline = RoundedRectangle.rectangle(box, slider.cornerMm().value());
    return of(outline, slider.thicknessMm().value(), List.of(), List.of(), holes);
  }

  private static List<Hole> pair(double x, PlateMake.IndexHoles holes, int place, String name) {
    Bore left = Bore.plain(new Vec2(x, holes.offsetMm()), holes.diameterMm());
    Bore right = Bore.plain(new Vec2(x, -holes.offsetMm()), holes.diameterMm());
    return List.of(
        new Hole(left, new Cavity(Use.INDEX, place, name + "a")),
        new Hole(right, new Cavity(Use.INDEX, place + 1, name + "b")));
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
