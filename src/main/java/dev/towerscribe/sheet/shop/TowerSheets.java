package dev.towerscribe.sheet.shop;

import dev.towerscribe.drawing.Align;
import dev.towerscribe.drawing.DimensionRequest;
import dev.towerscribe.drawing.Ink;
import dev.towerscribe.drawing.Item;
import dev.towerscribe.drawing.Layer;
import dev.towerscribe.drawing.LayerPen;
import dev.towerscribe.drawing.Page;
import dev.towerscribe.drawing.Pen;
import dev.towerscribe.drawing.Proof;
import dev.towerscribe.geometry.Box;
import dev.towerscribe.geometry.Contour;
import dev.towerscribe.geometry.Edge.Arc;
import dev.towerscribe.geometry.Frame2;
import dev.towerscribe.geometry.Region;
import dev.towerscribe.geometry.Vec2;
import dev.towerscribe.layout.PlacedHole;
import dev.towerscribe.layout.SideLayout;
import dev.towerscribe.model.DrawingInfo;
import dev.towerscribe.model.Landmark;
import dev.towerscribe.model.Projection;
import dev.towerscribe.model.Side;
import dev.towerscribe.quantity.Numbers;
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
  private static final double CAP_MM = 3.0;
  private static final double ROW_MM = 10.0;
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
      SideLayout layout, JobInfo job, DrawingInfo info, PartSheets.Style style) {
    return ShopSheets.onPaper(
        content(layout, job, info, style), DrawingSheetSize.of(style.paper()));
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
      SideLayout layout, JobInfo job, DrawingInfo info, PartSheets.Style style) {
    return ShopSheets.fullSize(content(layout, job, info, style));
  }

  private static ShopSheets.Content content(
      SideLayout layout, JobInfo job, DrawingInfo info, PartSheets.Style style) {
    DrawingLengths sizes = new DrawingLengths(style.unit(), style.both());
    String side = layout.side().word();
    return new ShopSheets.Content(
        "tower-" + side,
        side.substring(0, 1).toUpperCase(Locale.ROOT) + side.substring(1) + " tower, drilled",
        List.of(new Above(layout, sizes)),
        width -> tables(layout, job, sizes, width),
        (sheet, scale, paper) -> block(layout, job, info, style, sheet, scale, paper));
  }

  /**
   * The tower top from above.
   *
   * @param layout the tower
   * @param sizes how lengths are written
   */
  private record Above(SideLayout layout, DrawingLengths sizes) implements DrawingView {
    /** Plan (fore, in) to the view: fore upward, inboard to the right on the left tower. */
    private Frame2 frame() {
      double in = layout.side() == Side.LEFT ? 1 : -1;
      return new Frame2(Vec2.ZERO, new Vec2(0, 1), new Vec2(in, 0));
    }

    @Override
    public String caption() {
      return "VIEW FROM ABOVE, FORWARD IS UP, INBOARD IS "
          + (layout.side() == Side.LEFT ? "RIGHT" : "LEFT");
    }

    @Override
    public boolean hasDatum() {
      return true;
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

    @Override
    public double dimensionRoomMm() {
      return DrawingLengths.roomMm(sizes.both());
    }

    private void region(Region region, Layer layer, Pen pen, ViewPlacing at, List<Item> out) {
      for (Contour c : region.contours()) {
        Contour drawn = at.contour(c.mapped(frame()));
        out.add(
            drawn
                .asCircle()
                .<Item>map(a -> new Item.Circle(layer, a.centre(), a.radius(), pen, Ink.NONE))
                .orElseGet(() -> new Item.Figure(layer, List.of(drawn), pen, Ink.NONE)));
      }
    }

    @Override
    public void draw(ViewPlacing at, List<Item> out) {
      region(layout.plateOutline(), Layer.PLATE, Pen.HIDDEN, at, out);
      region(layout.opening(), Layer.OPENING, Pen.THIN, at, out);
      region(layout.finalCut(), Layer.FINAL_CUT, Pen.EDGE, at, out);
      for (PlacedHole hole : layout.holes()) {
        hole(hole.at(), hole.diameterMm(), Layer.HOLES, Pen.EDGE, at, out);
      }
      for (Landmark l : layout.job().tower().landmarks()) {
        hole(l.at(), l.diameterMm(), Layer.LANDMARKS, Pen.THIN, at, out);
      }
      Box b = outlines(at).get(0).bounds().grown(PartPlan.OVER_MM);
      Vec2 o = at.origin();
      line(new Vec2(b.minX(), o.y()), new Vec2(b.maxX(), o.y()), out);
      line(new Vec2(o.x(), b.minY()), new Vec2(o.x(), b.maxY()), out);
    }

    private static void line(Vec2 from, Vec2 to, List<Item> out) {
      new LayerPen(Layer.CENTRE_LINES, out).line(from, to, Pen.CENTRE);
    }

    private void hole(
        Vec2 plan, double diameterMm, Layer layer, Pen pen, ViewPlacing at, List<Item> out) {
      Vec2 c = at.point(frame().map(plan));
      double r = at.length(diameterMm / 2);
      new LayerPen(layer, out).circle(c, r, pen);
      for (Vec2 arm :
          List.of(new Vec2(r + PartPlan.OVER_MM, 0), new Vec2(0, r + PartPlan.OVER_MM))) {
        new LayerPen(Layer.CENTRE_LINES, out).line(c.minus(arm), c.plus(arm), Pen.FINE);
      }
    }

    /** The plate's edge as it will lie: dimensions keep clear of it. */
    @Override
    public List<Contour> outlines(ViewPlacing at) {
      return List.of(at.contour(Contour.rectangle(bounds())));
    }

    @Override
    public void names(ViewPlacing at, List<Item> out) {
      List<HoleNames.Named> names = new ArrayList<>();
      for (PlacedHole hole : layout.holes()) {
        names.add(new HoleNames.Named(hole.name(), frame().map(hole.at()), hole.diameterMm()));
      }
      int number = 1;
      for (Landmark l : layout.job().tower().landmarks()) {
        names.add(new HoleNames.Named("L" + number++, frame().map(l.at()), l.diameterMm()));
      }
      HoleNames.write(names, at, out);
    }

    @Override
    public List<DimensionRequest> wishes(ViewPlacing at) {
      List<DimensionRequest> wishes = new ArrayList<>();
      Vec2 zero = at.origin();
      Vec2 down = new Vec2(0, -1);
      Vec2 aside = new Vec2(-1, 0);
      wishes.add(new DimensionRequest.Ordinate(zero, zero, down, 0, List.of("0")));
      wishes.add(new DimensionRequest.Ordinate(zero, zero, aside, 0, List.of("0")));
      for (PlacedHole hole : layout.holes()) {
        ordinates(hole.at(), hole.diameterMm(), at, wishes);
      }
      for (Landmark l : layout.job().tower().landmarks()) {
        ordinates(l.at(), l.diameterMm(), at, wishes);
      }
      for (Contour c : layout.finalCut().contours()) {
        Optional<Arc> circle = at.contour(c.mapped(frame())).asCircle();
        circle.ifPresent(
            a ->
                wishes.add(
                    new DimensionRequest.Diameter(
                        a.centre(),
                        a.radius(),
                        Optional.empty(),
                        sizes.lines(DIAMETER, 2 * a.radius() / at.factor(), " final cut"))));
      }
      return wishes;
    }

    private void ordinates(
        Vec2 plan, double diameterMm, ViewPlacing at, List<DimensionRequest> wishes) {
      Vec2 zero = at.origin();
      Vec2 p = at.point(frame().map(plan));
      double clear = at.length(diameterMm / 2) + PartPlan.OVER_MM;
      if (Math.abs(plan.y()) >= PartWishes.SAME_MM) {
        wishes.add(
            new DimensionRequest.Ordinate(zero, p, new Vec2(0, -1), clear, sizes.lines(plan.y())));
      }
      if (Math.abs(plan.x()) >= PartWishes.SAME_MM) {
        wishes.add(
            new DimensionRequest.Ordinate(zero, p, new Vec2(-1, 0), clear, sizes.lines(plan.x())));
      }
    }

    /** Calculated from the plan without the frame that draws. */
    @Override
    public List<Proof> proofs(ViewPlacing at) {
      List<Proof> proofs = new ArrayList<>();
      double in = layout.side() == Side.LEFT ? at.factor() : -at.factor();
      for (PlacedHole h : layout.holes()) {
        Vec2 p =
            new Vec2(at.origin().x() + in * h.at().y(), at.origin().y() + at.factor() * h.at().x());
        proofs.add(new Proof.RoundHole("hole " + h.name(), p, at.factor() * h.diameterMm() / 2));
      }
      for (Landmark l : layout.job().tower().landmarks()) {
        Vec2 p =
            new Vec2(at.origin().x() + in * l.at().y(), at.origin().y() + at.factor() * l.at().x());
        proofs.add(
            new Proof.RoundHole("landmark " + l.name(), p, at.factor() * l.diameterMm() / 2));
      }
      return proofs;
    }
  }

  private static List<Flow.Entry> tables(
      SideLayout layout, JobInfo job, DrawingLengths sizes, double widthMm) {
    List<Flow.Entry> all = new ArrayList<>();
    ShopBlocks.accepted(all, job, widthMm);
    ShopBlocks.table(all, holes(layout, sizes, widthMm), 2);
    List<String> notes = new ArrayList<>();
    notes.add(
        "0, 0: the centre of the original strut rod, in the plane of the tower top. Fore: forward"
            + " is positive. In: toward the middle of the car is positive.");
    notes.add(
        "Thick: holes and final cut. Thin: opening as found and landmarks. Dashed: edge of the"
            + " plate.");
    layout
        .job()
        .tower()
        .crown()
        .ifPresent(
            crown ->
                notes.add(
                    "The tower top is a dome of radius "
                        + sizes.named(crown.radiusMm())
                        + ". Figures are in the plan, square to the plate; along the skin distances"
                        + " are longer."));
    notes.add(
        "Sheet of the tower: "
            + sizes.named(layout.job().tower().sheetMm())
            + ". Measured on one car; no two cars are alike: check against the landmarks.");
    ShopBlocks.notes(all, notes, widthMm);
    return all;
  }

  private static Table holes(SideLayout layout, DrawingLengths sizes, double widthMm) {
    List<Table.Column> columns =
        List.of(
            new Table.Column("Hole", 2.0, Align.START),
            new Table.Column("Fore", 1.2, Align.END),
            new Table.Column("In", 1.2, Align.END),
            new Table.Column("Size, tolerance", 1.2, Align.END),
            new Table.Column("Position " + DIAMETER, 1.3, Align.END),
            new Table.Column("Note", 2.4, Align.START));
    List<List<Table.Cell>> rows = new ArrayList<>();
    for (PlacedHole h : layout.holes()) {
      rows.add(
          List.of(
              Table.Cell.of(h.name()),
              cell(sizes, h.at().x(), ""),
              cell(sizes, h.at().y(), ""),
              cell(sizes, h.diameterMm(), DIAMETER),
              cell(sizes, h.clearanceMm(), DIAMETER),
              Table.Cell.of("for " + h.bolt().thread().name())));
    }
    int number = 1;
    for (Landmark l : layout.job().tower().landmarks()) {
      rows.add(
          List.of(
              Table.Cell.of("L" + number++),
              cell(sizes, l.at().x(), ""),
              cell(sizes, l.at().y(), ""),
              cell(sizes, l.diameterMm(), DIAMETER),
              Table.Cell.of(""),
              Table.Cell.of("landmark: " + l.name())));
    }
    return new Table(columns, rows, widthMm, 0);
  }

  private static Table.Cell cell(DrawingLengths sizes, double mm, String before) {
    return new Table.Cell(before + sizes.figure(mm), sizes.second(mm));
  }

  private static TitleBlock block(
      SideLayout layout,
      JobInfo job,
      DrawingInfo info,
      PartSheets.Style style,
      String sheet,
      String scale,
      String paper) {
    String side = layout.side().word();
    DrawingLengths sizes = new DrawingLengths(style.unit(), style.both());
    List<FieldGrid.Row> making =
        List.of(
            new FieldGrid.Row(
                ROW_MM,
                List.of(
                    new FieldGrid.Field(
                        "Side of the car", side.toUpperCase(Locale.ROOT), 45, CAP_MM),
                    new FieldGrid.Field(
                        "Rotation",
                        Numbers.plain(layout.job().mount().rotation().degrees(), 2) + "\u00B0",
                        45,
                        CAP_MM),
                    new FieldGrid.Field(
                        "Plate rearward",
                        sizes.named(layout.job().mount().rearwardMm()),
                        45,
                        CAP_MM),
                    new FieldGrid.Field(
                        "Plate inboard",
                        sizes.named(layout.job().mount().inboardMm()),
                        45,
                        CAP_MM))));
    return new TitleBlock(
        info.owner().orElse(""),
        side.substring(0, 1).toUpperCase(Locale.ROOT) + side.substring(1) + " tower, drilled",
        job.title(),
        "Fixture drawing",
        ShopBlocks.number(info, "tower-" + side, job),
        info.revision().orElse(""),
        job.date().map(Object::toString).orElse(""),
        sheet,
        info.createdBy().orElse(""),
        info.approvedBy().orElse(""),
        scale,
        sizes.words(),
        paper,
        style.projection() == Projection.FIRST,
        making);
  }
}
