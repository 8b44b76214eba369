package dev.towerscribe.sheet.shop;

import dev.towerscribe.drawing.Align;
import dev.towerscribe.drawing.DimensionRequest;
import dev.towerscribe.drawing.Item;
import dev.towerscribe.drawing.Layer;
import dev.towerscribe.drawing.LayerPen;
import dev.towerscribe.drawing.Page;
import dev.towerscribe.drawing.Pen;
import dev.towerscribe.drawing.Proof;
import dev.towerscribe.geometry.Box;
import dev.towerscribe.geometry.Contour;
import dev.towerscribe.geometry.Frame2;
import dev.towerscribe.geometry.Region;
import dev.towerscribe.geometry.Vec2;
import dev.towerscribe.layout.PlacedHole;
import dev.towerscribe.layout.SideLayout;
import dev.towerscribe.model.DrawingInfo;
import dev.towerscribe.model.Landmark;
import dev.towerscribe.model.Mount;
import dev.towerscribe.model.Side;
import dev.towerscribe.model.Tower;
import dev.towerscribe.quantity.Lengths;
import dev.towerscribe.report.Phrases;
import dev.towerscribe.sheet.text.Flow;
import dev.towerscribe.sheet.text.JobInfo;
import dev.towerscribe.sheet.text.NoRoomException;
import dev.towerscribe.sheet.text.Table;
import java.util.ArrayList;
import java.util.List;
import java.util.Locale;
import java.util.Optional;

/**
 * The drilled tower for whoever makes a fixture: what must be where, in the plan of the tower top,
 * by ordinates from the original strut rod centre. Seen from above, forward up the sheet.
 */
public final class TowerSheets {
  private static final String DIAMETER = "\u00D8";

  private TowerSheets() {}

  /**
   * Sheets of paper.
   *
   * @param layout the tower
   * @param job title, date, mark, accepted stops
   * @param info title-block words of the job
   * @param style paper and units
   * @return at least one page, file stem "tower-left" or "tower-right"
   * @throws NoRoomException if words do not fit on the paper
   */
  public static List<Page> onPaper(
      SideLayout layout, JobInfo job, DrawingInfo info, DrawingStyle style) {
    return ShopSheets.onPaper(drawing(layout, job, info, style));
  }

  /**
   * The same drawing as one sheet at 1:1 without a frame, for files that machines read.
   *
   * @param layout the tower
   * @param job title, date, mark, accepted stops
   * @param info title-block words of the job
   * @param style units
   * @return the sheet
   */
  public static MachineSheet fullSize(
      SideLayout layout, JobInfo job, DrawingInfo info, DrawingStyle style) {
    return ShopSheets.fullSize(drawing(layout, job, info, style));
  }

  private static ShopDrawing drawing(
      SideLayout layout, JobInfo job, DrawingInfo info, DrawingStyle style) {
    DrawingLengths sizes = new DrawingLengths(style);
    List<Round> rounds = rounds(layout);
    String side = layout.side().word();
    return new ShopDrawing(
        "tower-" + side,
        Phrases.capital(side) + " tower, drilled",
        "Fixture drawing",
        job,
        info,
        style,
        List.of(new Above(layout, rounds, sizes)),
        width -> tables(layout, rounds, job, sizes, width),
        making(layout, sizes));
  }

  /**
   * A hole or a landmark.
   *
   * @param layer what it is
   * @param pen its circle
   * @param sign its short name: "B1", "L1"
   * @param name what the file's proof calls it
   * @param at its middle, plan (fore, in)
   * @param diameterMm its diameter
   */
  private record Round(
      Layer layer, Pen pen, String sign, String name, Vec2 at, double diameterMm) {}

  private static List<Round> rounds(SideLayout layout) {
    List<Round> rounds = new ArrayList<>();
    for (PlacedHole h : layout.holes()) {
      String name = "hole " + h.name();
      rounds.add(new Round(Layer.HOLES, Pen.EDGE, h.name(), name, h.at(), h.diameterMm()));
    }
    int number = 1;
    for (Landmark l : layout.job().tower().landmarks()) {
      String name = "landmark " + l.name();
      String sign = "L" + number++;
      rounds.add(new Round(Layer.LANDMARKS, Pen.THIN, sign, name, l.at(), l.diameterMm()));
    }
    return rounds;
  }

  /**
   * The tower top from above.
   *
   * @param layout the tower
   * @param rounds its holes, then its landmarks
   * @param sizes how lengths are written
   */
  private record Above(SideLayout layout, List<Round> rounds, DrawingLengths sizes)
      implements DrawingView {
    /** Plan (fore, in) to the view: fore upward, inboard to the right on the left tower. */
    private Frame2 frame() {
      return new Frame2(Vec2.ZERO, new Vec2(0, 1), new Vec2(-layout.side().inboardSign(), 0));
    }

    @Override
    public String caption() {
      return "VIEW FROM ABOVE, FORWARD IS UP, INBOARD IS "
          + (layout.side() == Side.LEFT ? "RIGHT" : "LEFT");
    }

    @Override
    public Box bounds() {
      Box box = layout.opening().mapped(frame()).bounds();
      for (Region r : List.of(layout.finalCut(), layout.plateOutline())) {
        if (!r.isEmpty()) {
          box = box.union(r.mapped(frame()).bounds());
        }
      }
      for (Landmark l : layout.job().tower().landmarks()) {
        box = box.union(Box.around(frame().map(l.at()), l.diameterMm() / 2));
      }
      return box;
    }

    private void region(Region region, Layer layer, Pen pen, ViewPlacing at, List<Item> out) {
      LayerPen drawn = new LayerPen(layer, out);
      region.contours().forEach(c -> drawn.contour(at.contour(c.mapped(frame())), pen));
    }

    @Override
    public void draw(ViewPlacing at, List<Item> out) {
      region(layout.plateOutline(), Layer.PLATE, Pen.HIDDEN, at, out);
      region(layout.opening(), Layer.OPENING, Pen.THIN, at, out);
      region(layout.finalCut(), Layer.FINAL_CUT, Pen.EDGE, at, out);
      LayerPen centres = new LayerPen(Layer.CENTRE_LINES, out);
      for (Round round : rounds) {
        Vec2 c = at.point(frame().map(round.at()));
        double r = at.length(round.diameterMm() / 2);
        new LayerPen(round.layer(), out).circle(c, r, round.pen());
        centres.cross(c, r + PartPlan.OVER_MM, Pen.FINE);
      }
      Box b = outlines(at).get(0).bounds().grown(PartPlan.OVER_MM);
      PartPlan.axes(b, at.origin(), out);
    }

    @Override
    public void names(ViewPlacing at, List<Item> out) {
      HoleNames.write(
          rounds.stream()
              .map(r -> new HoleNames.Named(r.sign(), frame().map(r.at()), r.diameterMm()))
              .toList(),
          at,
          out);
    }

    @Override
    public List<DimensionRequest> wishes(ViewPlacing at) {
      ViewDimensions wishes = new ViewDimensions(sizes, at);
      wishes.datum();
      for (Round r : rounds) {
        wishes.place(frame().map(r.at()), r.diameterMm() / 2, r.at().y(), r.at().x());
      }
      for (Contour c : layout.finalCut().contours()) {
        c.mapped(frame())
            .asCircle()
            .ifPresent(
                a ->
                    wishes.diameter(
                        a.centre(),
                        a.radius(),
                        Optional.empty(),
                        sizes.lines(DIAMETER, 2 * a.radius(), " final cut")));
      }
      return wishes.wishes();
    }

    /** Calculated from the plan without the frame that draws. */
    @Override
    public List<Proof> proofs(ViewPlacing at) {
      List<Proof> proofs = new ArrayList<>();
      double k = at.factor();
      for (Round r : rounds) {
        double in = layout.side() == Side.LEFT ? r.at().y() : -r.at().y();
        Vec2 page = at.origin().plus(new Vec2(in, r.at().x()).times(k));
        proofs.add(new Proof.RoundHole(r.name(), page, k * r.diameterMm() / 2));
      }
      return proofs;
    }
  }

  private static List<Flow.Entry> tables(
      SideLayout layout, List<Round> rounds, JobInfo job, DrawingLengths sizes, double widthMm) {
    List<Flow.Entry> all = new ArrayList<>();
    ShopBlocks.accepted(all, job, widthMm);
    ShopBlocks.table(all, holes(layout, rounds, sizes, widthMm), 2);
    List<String> notes = new ArrayList<>();
    notes.add(
        "0, 0: the centre of the original strut rod, in the plane of the tower top. Fore: forward"
            + " is positive. In: toward the middle of the car is positive.");
    notes.add(
        "Thick: holes and final cut. Thin: opening as found and landmarks. Dashed: edge of the"
            + " plate.");
    Tower tower = layout.job().tower();
    String dome =
        "The tower top is a dome of radius %s. Figures are in the plan, square to the plate; along"
            + " the skin distances are longer.";
    tower.crown().ifPresent(c -> notes.add(dome.formatted(sizes.named(c.radiusMm()))));
    tower
        .lip()
        .ifPresent(
            l ->
                notes.add(
                    "The opening's edge is a lip turned %s by %s, radius of the bend %s."
                        .formatted(
                            l.turned().word(),
                            sizes.named(l.heightMm()),
                            sizes.named(l.radiusMm()))));
    notes.add(
        ("Sheet of the tower: %s%s. The plate goes %s. Measured on one car; no two cars are alike:"
                + " check against the landmarks.")
            .formatted(
                sizes.named(tower.sheetMm()),
                tower
                    .secondSkin()
                    .map(
                        s ->
                            ", and a second sheet of %s, %s apart"
                                .formatted(sizes.named(s.sheetMm()), sizes.named(s.apartMm())))
                    .orElse(""),
                layout.job().seating().seat().words()));
    ShopBlocks.notes(all, notes, widthMm);
    return all;
  }

  private static Table holes(
      SideLayout layout, List<Round> rounds, DrawingLengths sizes, double widthMm) {
    List<Table.Column> columns =
        List.of(
            new Table.Column("Hole", 2.0, Align.START),
            new Table.Column("Fore", 1.2, Align.END),
            new Table.Column("In", 1.2, Align.END),
            new Table.Column("Size, tolerance", 1.2, Align.END),
            new Table.Column("Position " + DIAMETER, 1.3, Align.END),
            new Table.Column("Note", 2.4, Align.START));
    List<List<Table.Cell>> rows = new ArrayList<>();
    for (int i = 0; i < rounds.size(); i++) {
      Round r = rounds.get(i);
      Optional<PlacedHole> hole = layout.holes().stream().skip(i).findFirst();
      rows.add(
          List.of(
              Table.Cell.of(r.sign()),
              sizes.cell(r.at().x(), ""),
              sizes.cell(r.at().y(), ""),
              sizes.cell(r.diameterMm(), DIAMETER),
              hole.map(h -> sizes.cell(h.clearanceMm(), DIAMETER)).orElse(Table.Cell.of("")),
              Table.Cell.of(
                  hole.map(h -> "for " + h.bolt().thread().name())
                      .orElse(r.name().replaceFirst(" ", ": ")))));
    }
    return new Table(columns, rows, widthMm, 0);
  }

  private static List<FieldGrid.Row> making(SideLayout layout, DrawingLengths sizes) {
    Mount mount = layout.job().mount();
    String side = layout.side().word().toUpperCase(Locale.ROOT);
    String rotation = Lengths.plainDegrees(mount.rotation()) + "\u00B0";
    return List.of(
        FieldGrid.row(
            FieldGrid.field("Side of the car", side, 45),
            FieldGrid.field("Rotation", rotation, 45),
            FieldGrid.field("Plate rearward", sizes.named(mount.rearwardMm()), 45),
            FieldGrid.field("Plate inboard", sizes.named(mount.inboardMm()), 45)));
  }
}
