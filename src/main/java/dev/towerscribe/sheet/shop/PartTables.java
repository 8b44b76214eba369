package dev.towerscribe.sheet.shop;

import dev.towerscribe.drawing.Align;
import dev.towerscribe.geometry.Edge;
import dev.towerscribe.geometry.Edge.Arc;
import dev.towerscribe.geometry.Recess;
import dev.towerscribe.geometry.Vec2;
import dev.towerscribe.part.Feature;
import dev.towerscribe.part.FeatureKind;
import dev.towerscribe.part.Part;
import dev.towerscribe.part.PartKind;
import dev.towerscribe.part.PositionTolerance;
import dev.towerscribe.quantity.Numbers;
import dev.towerscribe.sheet.text.Fragment;
import dev.towerscribe.sheet.text.Fragments;
import dev.towerscribe.sheet.text.Table;
import dev.towerscribe.sheet.text.TextStyle;
import java.util.ArrayList;
import java.util.Collections;
import java.util.LinkedHashMap;
import java.util.List;
import java.util.Map;

/** Tables and notes beside the views of a flat part. */
final class PartTables {
  private static final String DIAMETER = "\u00D8";

  private PartTables() {}

  /** Holes: place, size with tolerance, zone of position, remarks. */
  static Table holes(Part part, DrawingLengths sizes, double widthMm) {
    boolean positions = part.features().stream().anyMatch(f -> f.position().isPresent());
    List<Table.Column> columns = new ArrayList<>();
    // Inches have four decimals, and a figure broken over two lines would read as two figures.
    boolean wide = sizes.both() || !sizes.lengths().metric();
    // Wide enough for "bearing", which else is broken within the word on A4.
    columns.add(new Table.Column("Hole", 1.25, Align.START));
    columns.add(new Table.Column("X", wide ? 1.4 : 1.05, Align.END));
    columns.add(new Table.Column("Y", wide ? 1.4 : 1.05, Align.END));
    columns.add(new Table.Column("Size, tolerance", 1.5, Align.END));
    columns.add(new Table.Column("Limits", 1.6, Align.END));
    if (positions) {
      columns.add(new Table.Column("Pos. " + DIAMETER, wide ? 1.25 : 1.0, Align.END));
    }
    columns.add(new Table.Column("Note", wide ? 2.3 : 3.2, Align.START));
    List<List<Table.Cell>> rows = new ArrayList<>();
    part.solid()
        .outline()
        .asCircle()
        .ifPresent(edge -> rows.add(roundOutline(edge, sizes, columns.size())));
    for (Feature f : part.features()) {
      if (f.kind() == FeatureKind.WINDOW) {
        continue;
      }
      List<Table.Cell> row = new ArrayList<>();
      row.add(Table.Cell.of(label(f, part.features())));
      point(row, sizes, f.centre());
      String before = f.edge().isEmpty() ? DIAMETER : "";
      String size = before + sizes.figure(f.diameterMm()) + " " + sizes.tolerance(f.size());
      row.add(new Table.Cell(size.strip(), sizes.second(f.diameterMm())));
      row.add(Table.Cell.of(limits(f, sizes)));
      if (positions) {
        row.add(
            f.position().map(p -> sizes.cell(p.diameterMm(), DIAMETER)).orElse(Table.Cell.of("")));
      }
      row.add(Table.Cell.of(note(f, sizes)));
      rows.add(row);
    }
    return new Table(columns, rows, widthMm, 0);
  }

  /** A round outline stands with the holes; any other has a table of its own. */
  private static List<Table.Cell> roundOutline(Arc edge, DrawingLengths sizes, int columns) {
    List<Table.Cell> row = new ArrayList<>();
    row.add(Table.Cell.of("outline"));
    point(row, sizes, edge.centre());
    row.add(sizes.cell(2 * edge.radius(), DIAMETER));
    row.addAll(Collections.nCopies(columns - 1 - row.size(), Table.Cell.of("")));
    row.add(Table.Cell.of("edge of the part; general tolerance"));
    return row;
  }

  private static String label(Feature f, List<Feature> all) {
    return switch (f.kind()) {
      case BOLT_HOLE, BUSHING_HOLE -> f.name();
      case SLOT, BEARING_BORE -> f.kind().word();
      case SIGHT_HOLE -> HoleNames.shortName(f, all) + " " + f.name();
      default -> f.name().isEmpty() ? f.kind().word() : f.name();
    };
  }

  private static String limits(Feature f, DrawingLengths sizes) {
    return "%s to %s"
        .formatted(
            sizes.limit(f.diameterMm() + f.size().lowerMm()),
            sizes.limit(f.diameterMm() + f.size().upperMm()));
  }

  private static String note(Feature f, DrawingLengths sizes) {
    List<String> words = new ArrayList<>();
    f.recess().ifPresent(r -> words.add(recess(r, sizes)));
    f.edge()
        .filter(e -> f.kind() == FeatureKind.SLOT)
        .ifPresent(e -> words.add(sizes.line(e.bounds().width()) + " long over its ends"));
    if (!f.note().isEmpty()) {
      words.add(f.note());
    }
    if (f.assumed()) {
      words.add("assumed");
    }
    return String.join("; ", words);
  }

  private static String recess(Recess recess, DrawingLengths sizes) {
    String face = recess.fromTop() ? ", upper face" : ", under face";
    if (recess instanceof Recess.Counterbore c) {
      return "counterbore %s%s, %s deep%s"
          .formatted(DIAMETER, sizes.line(c.diameterMm()), sizes.line(c.depthMm()), face);
    }
    Recess.Countersink c = (Recess.Countersink) recess;
    String angle = Numbers.plain(c.included().degrees(), 1);
    return "countersink %s%s x %s\u00B0%s"
        .formatted(DIAMETER, sizes.line(c.diameterMm()), angle, face);
  }

  /** Position tolerances: each with its frame, its holes, and the formula it comes from. */
  static List<Fragment> positions(Part part, DrawingLengths sizes, double widthMm) {
    Map<PositionTolerance, List<Feature>> alike = new LinkedHashMap<>();
    for (Feature f : part.features()) {
      f.position().ifPresent(p -> alike.computeIfAbsent(p, k -> new ArrayList<>()).add(f));
    }
    boolean slot = part.features().stream().anyMatch(f -> f.kind() == FeatureKind.SLOT);
    List<String> datums = slot ? List.of("A", "B") : List.of("A");
    List<Fragment> all = new ArrayList<>();
    alike.forEach(
        (p, holes) -> {
          var frame = new DatumMark.Position(DIAMETER + sizes.line(p.diameterMm()), datums);
          String names = String.join(", ", holes.stream().map(Feature::name).toList());
          double at = frame.widthMm() + 3;
          List<Fragment> words =
              Fragments.lines(
                  "Holes " + names + ", " + p.formula(), TextStyle.SMALL, widthMm - at, 0);
          all.add(new Fragments.Beside(frame, new Fragments.Stack(words, 0), at));
        });
    return all;
  }

  /**
   * The outline corner by corner, where it is not one circle: arcs with both ends and centre, sharp
   * corners with their point. Straight lines join them in this order.
   */
  static Table outline(Part part, DrawingLengths sizes, double widthMm) {
    List<Table.Column> columns = new ArrayList<>();
    columns.add(new Table.Column("Outline", 1.1, Align.START));
    for (String head : List.of("from X", "Y", "to X", "Y", "R", "centre X", "Y")) {
      columns.add(new Table.Column(head, head.equals("R") ? 0.9 : 1.0, Align.END));
    }
    List<List<Table.Cell>> rows = new ArrayList<>();
    List<Edge> edges = part.solid().outline().edges();
    for (int i = 0; i < edges.size(); i++) {
      Edge before = edges.get((i + edges.size() - 1) % edges.size());
      Edge e = edges.get(i);
      List<Table.Cell> row = new ArrayList<>();
      if (e instanceof Arc a) {
        row.add(Table.Cell.of(a.sweep() > 0 ? "arc" : "hollow arc"));
        point(row, sizes, e.start());
        point(row, sizes, e.end());
        row.add(sizes.cell(a.radius(), ""));
        point(row, sizes, a.centre());
      } else if (!(before instanceof Arc)) {
        row.add(Table.Cell.of("corner"));
        point(row, sizes, e.start());
        row.addAll(Collections.nCopies(5, Table.Cell.of("")));
      }
      if (!row.isEmpty()) {
        rows.add(row);
      }
    }
    return new Table(columns, rows, widthMm, 0);
  }

  private static void point(List<Table.Cell> row, DrawingLengths sizes, Vec2 p) {
    row.add(sizes.cell(p.x(), ""));
    row.add(sizes.cell(p.y(), ""));
  }

  static boolean hasOutlineTable(Part part) {
    return part.solid().outline().asCircle().isEmpty();
  }

  /** What is to be known beside figures. */
  static List<String> notes(Part part, DrawingLengths sizes) {
    List<String> notes = new ArrayList<>();
    boolean slot = part.features().stream().anyMatch(f -> f.kind() == FeatureKind.SLOT);
    notes.add(frameWords(part));
    notes.add(
        "Datum A: the under face."
            + (slot ? " Datum B: the middle plane of the slot, Y = 0." : ""));
    notes.add(
        ("Break all edges %s. No cracks, nicks or burrs in holes or edges. The CAD files have sharp"
                + " edges and nominal sizes.")
            .formatted(sizes.named(part.edgeBreakMm().value())));
    if (!part.assumed().isEmpty()) {
      notes.add("Assumed, as not specified: " + String.join("; ", part.assumed()) + ".");
    }
    notes.add(
        part.kind() == PartKind.JIG
            ? "Marks and guides the drill only. Check the first pilot hole with calipers."
            : "Carries a car's suspension. Neither the material nor the design is certified by this"
                + " drawing.");
    return notes;
  }

  private static String frameWords(Part part) {
    return switch (part.kind()) {
      case PLATE ->
          "X = 0, Y = 0: the plate's centre. X runs along the slot, the way the bearing moves as"
              + " the setting grows. Seen from above.";
      case SLIDER -> "X = 0, Y = 0: the bearing's centre. X runs along the plate's slot.";
      case JIG ->
          "X = 0, Y = 0: the original strut rod centre. Y is forward. Seen from above, as the jig"
              + " lies on the tower.";
    };
  }
}
