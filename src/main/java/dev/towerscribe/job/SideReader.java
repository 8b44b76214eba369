package dev.towerscribe.job;

import dev.towerscribe.model.Bolt;
import dev.towerscribe.model.CutRules;
import dev.towerscribe.model.Defaults;
import dev.towerscribe.model.Fit;
import dev.towerscribe.model.HoleRules;
import dev.towerscribe.model.Mount;
import dev.towerscribe.model.Packing;
import dev.towerscribe.model.Paper;
import dev.towerscribe.model.Plate;
import dev.towerscribe.model.Print;
import dev.towerscribe.model.Seat;
import dev.towerscribe.model.Seating;
import dev.towerscribe.model.Side;
import dev.towerscribe.model.SideJob;
import dev.towerscribe.model.Tools;
import dev.towerscribe.quantity.Angle;
import dev.towerscribe.quantity.Numbers;
import java.util.Optional;

/** One side of the car, its overrides already merged in. */
final class SideReader {
  private static final double DEFAULT_ROUGH_MM = 2.5;
  private static final double DEFAULT_STARTER_MM = 10.0;
  private static final double DEFAULT_DEPTH_MM = 60.0;
  private static final double DEFAULT_PAPER_MARGIN_MM = 10.0;

  private SideReader() {}

  /**
   * Reads a side.
   *
   * @param side which
   * @param t its tables
   * @param plateReadable false when the plate's own file is already at fault
   * @param loadSeat the face that the job's [load] names, if it does
   * @return the side, if nothing in it is at fault
   */
  static Optional<SideJob> read(
      Side side, TableReader t, boolean plateReadable, Optional<Seat> loadSeat) {
    var tower = t.table("tower").flatMap(TowerReader::read);
    t.leave("plate");
    if (!plateReadable) {
      t.unsound();
    }
    Optional<PlateReader.Found> found =
        plateReadable ? t.table("plate").flatMap(PlateReader::read) : Optional.empty();
    var plate = found.map(PlateReader.Found::plate);
    var mountTable = t.table("mount");
    var seating = mountTable.flatMap(m -> seating(m, loadSeat));
    var mount = mountTable.flatMap(m -> mount(m, plate));
    var holes = t.tableOrEmpty("holes").flatMap(SideReader::holes);
    if (found.isPresent() && holes.isPresent()) {
      MakeFaults.report(found.get(), holes.get().fit());
    }
    var cut = t.tableOrEmpty("cut").flatMap(SideReader::cut);
    var tools = t.tableOrEmpty("tools").flatMap(s -> tools(s, plate));
    var print = t.tableOrEmpty("print").flatMap(SideReader::print);
    var strut = t.optionalTable("strut").flatMap(s -> StrutReader.strut(s, side));
    var axis = t.optionalTable("axis").flatMap(StrutReader::axis);
    var aims = t.optionalTable("aims").flatMap(StrutReader::aims);
    return t.closed(
        () ->
            new SideJob(
                side,
                tower.get(),
                plate.get(),
                mount.get(),
                seating.get(),
                holes.get(),
                cut.get(),
                tools.get(),
                print.get(),
                strut,
                axis,
                aims));
  }

  private static Optional<Seating> seating(TableReader m, Optional<Seat> loadSeat) {
    Optional<Seat> own = m.has("seat") ? m.word("seat", Seat.class) : Optional.empty();
    if (own.isPresent() && loadSeat.isPresent() && !own.equals(loadSeat)) {
      return m.fault(
          "seat",
          "the face that [load] names, \"%s\"".formatted(loadSeat.get().word()),
          "The plate lies against one face: drop one of the two, or put it right.");
    }
    Optional<Packing> packing =
        m.has("packing") ? m.word("packing", Packing.class) : Optional.empty();
    return Optional.of(new Seating(own.or(() -> loadSeat), packing));
  }

  private static Optional<Mount> mount(TableReader m, Optional<Plate> plate) {
    var rotation = m.angle("rotation", Limits.ROTATION);
    var rearward = m.length("rearward", Limits.OFFSET);
    var inboard = m.length("inboard", Limits.OFFSET);
    var setting = m.length("setting", Limits.SLOT);
    if (setting.isPresent() && plate.isPresent()) {
      Plate.Slot slot = plate.get().slot();
      AllowedRange range = AllowedRange.mm(slot.fromMm(), slot.toMm());
      if (!range.holds(setting.get())) {
        m.fault(
            "setting",
            "within the slot, " + range.words(m.unit()),
            "The bearing can only be fixed within the slot.");
      }
    }
    return m.closed(() -> new Mount(rotation.get(), rearward.get(), inboard.get(), setting.get()));
  }

  private static Optional<HoleRules> holes(TableReader h) {
    var fit = h.word("fit", Fit.MEDIUM);
    var rule = h.word("edge_rule", Defaults.EDGE_RULE);
    return h.closed(() -> new HoleRules(fit.get(), rule.get()));
  }

  private static Optional<CutRules> cut(TableReader c) {
    var keep = c.length("keep", Limits.KEEP, Defaults.KEEP_MM);
    var rough = c.length("rough", Limits.ROUGH, DEFAULT_ROUGH_MM);
    var corner = c.length("corner", Limits.CORNER, Defaults.CORNER_MM);
    var starter = c.length("starter", Limits.STARTER, DEFAULT_STARTER_MM);
    return c.closed(() -> new CutRules(keep.get(), rough.get(), corner.get(), starter.get()));
  }

  private static Optional<Tools> tools(TableReader t, Optional<Plate> plate) {
    var room = t.length("room", Limits.ROOM, Defaults.ROOM_MM);
    boolean assumed = !t.has("socket");
    var s = t.optionalTable("socket");
    Optional<Double> socket =
        assumed
            ? plate.flatMap(p -> typicalSocket(t, p))
            : s.flatMap(r -> r.length("diameter", Limits.SOCKET));
    Optional<Double> depth =
        assumed
            ? Optional.of(DEFAULT_DEPTH_MM)
            : s.flatMap(r -> r.length("depth", Limits.SOCKET_DEPTH, DEFAULT_DEPTH_MM));
    s.ifPresent(TableReader::close);
    if (socket.isEmpty()) {
      t.unsound();
    }
    return t.closed(() -> new Tools(socket.get(), depth.get(), room.get(), assumed));
  }

  private static Optional<Double> typicalSocket(TableReader t, Plate plate) {
    double flats = plate.bolts().stream().mapToDouble(Bolt::flatsMm).max().orElseThrow();
    var typical = Sockets.typicalMm(flats);
    if (typical.isEmpty()) {
      t.missing(
          "socket",
          "{ diameter, depth } of the socket for the largest bolt",
          "No typical size is known past %s mm across flats: measure yours."
              .formatted(Numbers.plain(Sockets.largestFlatsMm(), 0)));
    }
    return typical;
  }

  private static Optional<Print> print(TableReader p) {
    var paper = p.word("paper", Paper.A4);
    // An unknown paper's own fault is enough: the widest sheet then bounds the margin.
    double width = paper.orElse(Paper.A3).widthMm();
    var margin =
        p.length(
            "margin",
            AllowedRange.mm(
                Limits.LEAST_PAPER_MARGIN_MM, (width - Limits.LEAST_PRINTED_WIDTH_MM) / 2),
            DEFAULT_PAPER_MARGIN_MM);
    var scale = p.tableOrEmpty("scale");
    var across = scale.flatMap(s -> scale(s, "across"));
    var along = scale.flatMap(s -> scale(s, "along"));
    scale.ifPresent(TableReader::close);
    var skew =
        p.angle(
            "skew",
            Limits.PRINT_SKEW,
            Angle.ZERO,
            "A printer further out of square is not fit for this: use another.");
    return p.closed(
        () -> new Print(paper.get(), margin.get(), across.get(), along.get(), skew.get()));
  }

  private static Optional<Double> scale(TableReader s, String key) {
    return s.ratio(
        key,
        Limits.PRINT_SCALE,
        1.0,
        "A printer further off has page scaling on: print at 100 %, then measure again.");
  }
}
