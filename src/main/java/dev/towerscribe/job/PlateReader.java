package dev.towerscribe.job;

import dev.towerscribe.geometry.Contour;
import dev.towerscribe.geometry.Region;
import dev.towerscribe.geometry.Vec2;
import dev.towerscribe.model.Bolt;
import dev.towerscribe.model.Defaults;
import dev.towerscribe.model.Plate;
import dev.towerscribe.model.Thread;
import dev.towerscribe.quantity.Tolerances;
import java.util.ArrayList;
import java.util.HashSet;
import java.util.List;
import java.util.Optional;
import java.util.Set;

/** [plate], whether inline or from a file of its own. */
final class PlateReader {
  private static final int LEAST_BOLTS = 2;

  private PlateReader() {}

  /**
   * A plate with the readers of its tables, for faults that show only with other tables read.
   *
   * @param plate the plate
   * @param table its table
   * @param make the table of its making, empty if there is none
   * @param bolts those of its bolts
   */
  record Found(
      Plate plate, TableReader table, Optional<TableReader> make, List<TableReader> bolts) {}

  static Optional<Found> read(TableReader t) {
    t.leave("file");
    var name = t.label("name", Limits.NAME, "plate");
    var thickness = t.length("thickness", Limits.THICKNESS);
    var outline =
        t.table("outline")
            .flatMap(
                s ->
                    ShapeReader.whole(
                        s,
                        ShapeReader.CIRCLE_OR_RING,
                        Limits.PLATE,
                        Limits.PLATE_PLAN,
                        Optional.of(Vec2.ZERO)))
            .flatMap(shape -> rounded(t, shape));
    var handed =
        t.flag("handed", "Say true for a mirrored pair, false for one part used on both sides.");
    var slot = t.table("slot").flatMap(PlateReader::slot);
    var bearing = t.table("bearing");
    var bearingX = bearing.flatMap(b -> b.length("x", Limits.BEARING_X));
    var height = bearing.flatMap(b -> b.length("height", Limits.BEARING_HEIGHT));
    bearing.ifPresent(TableReader::close);
    var moving = t.table("moving");
    var diameter = moving.flatMap(m -> m.length("diameter", Limits.MOVING));
    var clearance =
        moving.flatMap(m -> m.length("clearance", Limits.CLEARANCE, Defaults.CLEARANCE_MM));
    moving.ifPresent(TableReader::close);
    var cover = t.length("cover", Limits.MARGIN, Defaults.COVER_MM);
    var wallGap = t.length("wall_gap", Limits.MARGIN, Defaults.WALL_GAP_MM);
    var boltTables = t.tables("bolts", LEAST_BOLTS, "bolts");
    var bolts = bolts(boltTables, outline);
    var make = t.tableOrEmpty("make").flatMap(MakeReader::read);
    return t.closed(
        () ->
            new Found(
                new Plate(
                    name.get(),
                    thickness.get(),
                    outline.get(),
                    handed.get(),
                    slot.get(),
                    bearingX.get(),
                    height.get(),
                    diameter.get(),
                    clearance.get(),
                    cover.get(),
                    wallGap.get(),
                    bolts,
                    make.get()),
                t,
                t.optionalTable("make"),
                boltTables));
  }

  /** A traced outline with its outward corners rounded: every check is to see the true edge. */
  private static Optional<Contour> rounded(TableReader t, Contour traced) {
    double radius = t.length("corner", Limits.PLATE_CORNER, 0.0).orElse(0.0);
    if (radius == 0.0) {
      return Optional.of(traced);
    }
    if (traced.asCircle().isPresent()) {
      return t.fault(
          "corner", "only with an outline of points", "A circle has no corners: drop this.");
    }
    var round = Region.inside(traced).opened(radius).contours();
    if (round.size() != 1) {
      return t.lengthFault(
          "corner",
          "a radius that fits everywhere inside the outline",
          "Some part of the outline is narrower than twice the radius: make it smaller.");
    }
    return Optional.of(round.get(0));
  }

  private static Optional<Plate.Slot> slot(TableReader s) {
    var from = s.length("from", Limits.SLOT);
    var to = s.length("to", Limits.SLOT);
    var index = s.lengths("index", 0, 50, Limits.SLOT);
    if (from.isPresent() && to.isPresent()) {
      if (from.get() > to.get()) {
        s.fault(
            "from",
            "at most slot.to, " + s.atMost(to.get()),
            "Swap the two: the bearing moves from the lower setting to the higher.");
      } else if (index.isPresent()) {
        AllowedRange range = AllowedRange.mm(from.get(), to.get());
        if (!index.get().stream().allMatch(range::holds)) {
          s.fault(
              "index",
              "settings within the slot, " + range.words(s.unit()),
              "Take out what lies outside, or lengthen the slot.");
        }
      }
    }
    return s.closed(
        () ->
            new Plate.Slot(
                from.get(), to.get(), index.get().stream().sorted().distinct().toList()));
  }

  private static List<Bolt> bolts(List<TableReader> tables, Optional<Contour> outline) {
    List<Bolt> bolts = new ArrayList<>();
    Set<String> names = new HashSet<>();
    for (TableReader b : tables) {
      bolt(b, names, outline, bolts).ifPresent(bolts::add);
    }
    return bolts;
  }

  private static Optional<Bolt> bolt(
      TableReader b, Set<String> names, Optional<Contour> outline, List<Bolt> others) {
    var name = b.unique(boltName(b), names);
    var at = b.point("at", Limits.PLATE_PLAN);
    var thread = b.word("thread", Thread.KNOWN, Thread::name);
    var flats = b.length("flats", Limits.FLATS);
    Optional<Double> washer =
        b.has("washer") ? b.length("washer", Limits.WASHER) : thread.map(Thread::washerMm);
    if (thread.isPresent()) {
      double nominal = thread.get().nominalMm();
      String limit = "more than the bolt's own " + b.atLeast(nominal);
      if (flats.isPresent() && flats.get() <= nominal) {
        b.lengthFault("flats", limit, "Measure across the flats of the nut or head.");
      }
      if (washer.isPresent() && washer.get() <= nominal) {
        b.lengthFault("washer", limit, "Measure the washer's outside.");
      }
    }
    if (at.isPresent() && outline.isPresent() && !outline.get().encloses(at.get())) {
      b.fault("at", "inside the plate's outline", "Check its signs, and the outline.");
    }
    if (at.isPresent() && thread.isPresent()) {
      apart(b, at.get(), thread.get(), others);
    }
    var hole = StatedValues.length(b, "hole", Limits.HOLE);
    var recess = MakeReader.recess(b);
    return b.closed(
        () ->
            new Bolt(name.get(), at.get(), thread.get(), flats.get(), washer.get(), hole, recess));
  }

  private static void apart(TableReader b, Vec2 at, Thread thread, List<Bolt> others) {
    for (Bolt other : others) {
      double least = (thread.nominalMm() + other.thread().nominalMm()) / 2;
      double apart = other.at().distanceTo(at);
      String limit = "at least " + b.atLeast(least) + " from other bolts";
      String todo = "It is at the same place as bolt " + other.name() + ": check both.";
      if (apart < Tolerances.SAME_POINT_MM) {
        // One place in any unit.
        b.fault("at", limit, todo);
        return;
      }
      if (apart < least) {
        b.lengthFault("at", limit, todo);
        return;
      }
    }
  }

  private static Optional<String> boltName(TableReader b) {
    String limit = "1 to 3 letters or digits";
    var name = b.string("name", limit);
    if (name.isPresent() && !name.get().matches("[A-Za-z0-9]{1,3}")) {
      return b.fault("name", limit, "It is printed beside the hole: keep it short.");
    }
    return name;
  }
}
