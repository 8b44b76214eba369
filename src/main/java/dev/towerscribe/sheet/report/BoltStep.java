package dev.towerscribe.sheet.report;

import dev.towerscribe.drawing.Align;
import dev.towerscribe.layout.Grip;
import dev.towerscribe.layout.PlacedHole;
import dev.towerscribe.layout.SideLayout;
import dev.towerscribe.model.Packing;
import dev.towerscribe.model.Seating;
import dev.towerscribe.quantity.Lengths;
import dev.towerscribe.sheet.text.Table;
import dev.towerscribe.sheet.text.Table.Cell;
import dev.towerscribe.sheet.text.Table.Column;
import java.util.ArrayList;
import java.util.List;
import java.util.stream.Collectors;

/**
 * The step that gets bolts, and what fills the gap under the plate, ready.
 *
 * @param layout the tower
 * @param lengths how lengths are written
 */
record BoltStep(SideLayout layout, Lengths lengths) {
  private boolean packed() {
    return layout.grips().stream().anyMatch(grip -> grip.packingMm() > 0);
  }

  /** What to do. */
  String todo() {
    Seating seating = layout.job().seating();
    String lies = "have bolts of these lengths. The plate goes %s.";
    if (!packed()) {
      return "H" + lies.substring(1).formatted(seating.seat().words());
    }
    String fill =
        seating.packing().isEmpty()
            ? "Fill the gap under the plate"
            : seating.packing().get() == Packing.SHIMS
                ? "Make up the shims"
                : "Form the seat to these heights";
    return "%s; %s".formatted(fill, lies.formatted(seating.seat().words()));
  }

  /** Where the plate rests, and the sleeves that two sheets apart need. */
  List<String> details() {
    List<String> all = new ArrayList<>();
    if (packed()) {
      all.add(
          "The plate rests on %s and must not bend when the nuts are drawn tight."
              .formatted(layout.restsOn()));
      if (!layout.restsAllRound() && !layout.rest().contacts().isEmpty()) {
        String places =
            layout.rest().contacts().stream()
                .map(p -> "fore %s, in %s".formatted(lengths.with(p.x()), lengths.with(p.y())))
                .collect(Collectors.joining("; "));
        all.add("It touches at: %s.".formatted(places));
      }
    }
    layout
        .job()
        .tower()
        .secondSkin()
        .filter(skin -> skin.apartMm() > 0)
        .ifPresent(
            skin ->
                all.add(
                    "Between the two sheets a sleeve of %s on every bolt."
                        .formatted(lengths.with(skin.apartMm()))));
    return all;
  }

  /** Shim or seat height where there is a gap, grip and length of each bolt. */
  Table table(double widthMm) {
    boolean packed = packed();
    boolean formed =
        layout.job().seating().packing().filter(p -> p == Packing.FORMED_SEAT).isPresent();
    List<Column> columns = new ArrayList<>();
    columns.add(new Column("Bolt", 1.0, Align.START));
    if (packed) {
      columns.add(new Column(formed ? "Seat's height" : "Shim", 1.0, Align.START));
    }
    columns.add(new Column("Grip", 1.0, Align.START));
    columns.add(new Column("Length, at least", 1.6, Align.START));
    List<List<Cell>> rows = new ArrayList<>();
    for (PlacedHole hole : layout.holes()) {
      Grip grip = layout.grip(hole);
      List<Cell> row = new ArrayList<>();
      row.add(Cell.of("%s, %s".formatted(hole.name(), hole.bolt().thread().name())));
      if (packed) {
        row.add(size(grip.packingMm()));
      }
      row.add(size(grip.gripMm()));
      row.add(size(grip.leastLengthMm()));
      rows.add(row);
    }
    return new Table(columns, rows, widthMm, 0);
  }

  private Cell size(double mm) {
    return new Cell(lengths.size(mm), lengths.other().size(mm));
  }
}
