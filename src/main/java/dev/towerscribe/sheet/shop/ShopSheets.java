package dev.towerscribe.sheet.shop;

import dev.towerscribe.drawing.Align;
import dev.towerscribe.drawing.DimensionPlacer;
import dev.towerscribe.drawing.DimensionStyle;
import dev.towerscribe.drawing.Item;
import dev.towerscribe.drawing.Layer;
import dev.towerscribe.drawing.LayerPen;
import dev.towerscribe.drawing.Obstacles;
import dev.towerscribe.drawing.Page;
import dev.towerscribe.drawing.Pen;
import dev.towerscribe.drawing.Proof;
import dev.towerscribe.geometry.Box;
import dev.towerscribe.geometry.PrintScale;
import dev.towerscribe.geometry.Vec2;
import dev.towerscribe.quantity.Numbers;
import dev.towerscribe.sheet.text.Flow;
import dev.towerscribe.sheet.text.NoRoomException;
import java.util.ArrayList;
import java.util.List;
import java.util.Optional;
import java.util.OptionalDouble;
import java.util.stream.DoubleStream;

/**
 * Puts a drawing together: views with their dimensions, tables and notes beside or below them,
 * title block. The same composition serves a sheet of paper at an ISO 5455 scale and a file at 1:1.
 */
final class ShopSheets {
  /** Scales of ISO 5455:1979, the largest first. */
  private static final double[] SCALES = {5, 2, 1, 0.5, 0.2, 0.1, 0.05};

  private static final double GAP_MM = 4.0;
  private static final double CAPTION_CAP_MM = 3.5;
  private static final double CAPTION_MM = 8.0;
  private static final double BAR_MM = 100.0;
  private static final double BAR_ROOM_MM = 9.0;

  /** Least width of a column of tables, mm. */
  private static final double TABLES_MM = 172.0;

  private ShopSheets() {}

  /** Where things go on a sheet. */
  private record Rooms(Box views, Optional<Box> tables) {}

  /**
   * On paper.
   *
   * @param drawing what is drawn
   * @return at least one page; the first has the views
   */
  static List<Page> onPaper(ShopDrawing drawing) {
    DrawingSheetSize leaf = DrawingSheetSize.of(drawing.style().paper());
    Rooms rooms = rooms(drawing, leaf);
    double factor =
        scaleFor(drawing.views(), rooms.views())
            .orElseThrow(
                () ->
                    new NoRoomException(
                        "even at 1:20 the views of " + drawing.stem() + " do not fit"));
    return pages(drawing, leaf, rooms, factor, true);
  }

  /**
   * As one sheet at 1:1, as large as it has to be, without a frame: for files that machines read.
   *
   * @param drawing what is drawn
   * @return the sheet
   */
  static MachineSheet fullSize(ShopDrawing drawing) {
    double viewsWide = BAR_MM + 30;
    for (DrawingView view : drawing.views()) {
      viewsWide = Math.max(viewsWide, wideMm(view, 1));
    }
    double tables = TABLES_MM + 2 * GAP_MM;
    double tablesHigh = heightOf(drawing.tables().apply(TABLES_MM));
    double blockHigh = title(drawing, "none", new Box(0, 0, 1000, 1000)).height();
    double high =
        Math.max(highMm(drawing.views(), 1), tablesHigh + blockHigh + GAP_MM) + 2 * GAP_MM + 1;
    double borders = DrawingSheetSize.FILING_MM + DrawingSheetSize.BORDER_MM;
    DrawingSheetSize leaf =
        new DrawingSheetSize(
            "1:1",
            Math.ceil(viewsWide + tables + 2 * GAP_MM + borders),
            Math.ceil(high + 2 * DrawingSheetSize.BORDER_MM));
    Box f = leaf.frame();
    double split = f.maxX() - tables;
    Rooms rooms =
        new Rooms(
            new Box(f.minX(), f.minY(), split, f.maxY()),
            Optional.of(aboveTitle(drawing, leaf, split + GAP_MM)));
    DrawingView above =
        drawing.views().stream().filter(DrawingView::hasDatum).findFirst().orElseThrow();
    return new MachineSheet(
        pages(drawing, leaf, rooms, 1, false).get(0),
        places(drawing.views(), rooms.views(), 1).get(drawing.views().indexOf(above)).origin());
  }

  private static double heightOf(List<Flow.Entry> entries) {
    return entries.stream().mapToDouble(e -> e.block().heightMm() + e.gapMm()).sum();
  }

  private static Box title(ShopDrawing drawing, String paper, Box frame) {
    return new TitleBlock(drawing, "1 of 1", "1:1", paper).box(frame);
  }

  /** What is free above the title block, from a left edge on. */
  private static Box aboveTitle(ShopDrawing drawing, DrawingSheetSize leaf, double left) {
    Box f = leaf.frame();
    Box title = title(drawing, leaf.name(), f);
    return new Box(left, title.maxY() + GAP_MM, f.maxX() - GAP_MM, f.maxY() - GAP_MM);
  }

  private static Rooms rooms(ShopDrawing drawing, DrawingSheetSize leaf) {
    Box f = leaf.frame();
    Box title = title(drawing, leaf.name(), f);
    if (f.width() - title.width() > title.width() * 0.6) {
      Box views = new Box(f.minX(), f.minY(), title.minX() - GAP_MM, f.maxY());
      return new Rooms(views, Optional.of(aboveTitle(drawing, leaf, title.minX())));
    }
    Box all = aboveTitle(drawing, leaf, f.minX() + GAP_MM);
    double tables = heightOf(drawing.tables().apply(all.width()));
    OptionalDouble alone = scaleFor(drawing.views(), all);
    double left = all.height() - tables - GAP_MM;
    if (left > 0) {
      Box above = new Box(all.minX(), all.maxY() - left, all.maxX(), all.maxY());
      if (alone.isPresent() && scaleFor(drawing.views(), above).equals(alone)) {
        return new Rooms(
            above,
            Optional.of(new Box(all.minX(), all.minY(), all.maxX(), all.maxY() - left - GAP_MM)));
      }
    }
    return new Rooms(all, Optional.empty());
  }

  /** Height of a view with its dimensions and caption, mm of paper. */
  private static double cellMm(DrawingView view, double factor) {
    return view.bounds().height() * factor + 2 * view.dimensionRoomMm() + CAPTION_MM;
  }

  /** Width of a view with its dimensions, mm of paper. */
  private static double wideMm(DrawingView view, double factor) {
    return view.bounds().width() * factor + 2 * view.dimensionRoomMm();
  }

  /** Height of all views one under the other, mm of paper. */
  private static double highMm(List<DrawingView> views, double factor) {
    double high = BAR_ROOM_MM;
    for (DrawingView view : views) {
      high += cellMm(view, factor);
    }
    return high;
  }

  private static OptionalDouble scaleFor(List<DrawingView> views, Box room) {
    return DoubleStream.of(SCALES)
        .filter(factor -> views.stream().allMatch(v -> wideMm(v, factor) <= room.width()))
        .filter(factor -> highMm(views, factor) <= room.height())
        .findFirst();
  }

  static String scaleWords(double factor) {
    return factor >= 1 ? Numbers.plain(factor, 0) + ":1" : "1:" + Numbers.plain(1 / factor, 0);
  }

  private static List<Page> pages(
      ShopDrawing drawing, DrawingSheetSize leaf, Rooms rooms, double factor, boolean framed) {
    List<Item> first = new ArrayList<>();
    List<Proof> proofs = new ArrayList<>();
    views(drawing.views(), rooms.views(), factor, first, proofs);
    bar(rooms.views(), framed && factor != 1, first, proofs);
    List<List<Item>> bodies = new ArrayList<>();
    bodies.add(first);
    Box f = leaf.frame();
    Box rest = aboveTitle(drawing, leaf, f.minX() + GAP_MM);
    flow(drawing, rooms.tables().orElse(rest), bodies, rooms.tables().isPresent());
    List<Page> pages = new ArrayList<>();
    for (int i = 0; i < bodies.size(); i++) {
      List<Item> items = bodies.get(i);
      if (framed) {
        items.addAll(DrawingFrame.items(leaf));
      }
      String sheet = (i + 1) + " of " + bodies.size();
      new TitleBlock(drawing, sheet, scaleWords(factor), leaf.name()).draw(f, items);
      String name = drawing.stem() + (i == 0 ? "" : "-" + (i + 1));
      pages.add(
          new Page(
              name,
              bodies.size() == 1 ? drawing.title() : drawing.title() + " " + (i + 1),
              name,
              leaf.widthMm(),
              leaf.heightMm(),
              factor == 1 && i == 0,
              PrintScale.TRUE,
              items,
              Optional.empty(),
              i == 0 ? proofs : List.of()));
    }
    return pages;
  }

  private static void flow(
      ShopDrawing drawing, Box room, List<List<Item>> bodies, boolean onFirst) {
    Flow flow = new Flow(room.minX(), room.maxY(), room.minY());
    flow.columns(1, room.width(), GAP_MM);
    flow.add(drawing.tables().apply(room.width()));
    List<List<Item>> pages = flow.pages();
    for (int i = 0; i < pages.size(); i++) {
      if (i == 0 && onFirst) {
        bodies.get(0).addAll(pages.get(0));
      } else {
        bodies.add(new ArrayList<>(pages.get(i)));
      }
    }
  }

  private static void views(
      List<DrawingView> views, Box room, double factor, List<Item> items, List<Proof> proofs) {
    List<ViewPlacing> places = places(views, room, factor);
    for (int i = 0; i < views.size(); i++) {
      DrawingView view = views.get(i);
      ViewPlacing at = places.get(i);
      Box b = view.bounds();
      double middle = room.centre().x();
      double upper = at.origin().y() + factor * b.maxY();
      double top = upper + CAPTION_MM + view.dimensionRoomMm();
      List<Item> drawn = new ArrayList<>();
      view.draw(at, drawn);
      LayerPen.notes(drawn)
          .text(middle, top - CAPTION_MM + 2.0, CAPTION_CAP_MM, Align.MIDDLE, view.caption());
      double foot = top - cellMm(view, factor);
      Box area = new Box(room.minX() + 1, foot, room.maxX() - 1, upper + view.dimensionRoomMm());
      drawn.addAll(
          new DimensionPlacer(DimensionStyle.ISO)
              .place(area, Obstacles.of(view.outlines(at), drawn), view.wishes(at))
              .placed());
      // Names find room anywhere near their holes; leaders do not.
      view.names(at, drawn);
      items.addAll(drawn);
      proofs.addAll(view.proofs(at));
    }
  }

  /** Where each view stands: one under the other, the spare room shared out between them. */
  private static List<ViewPlacing> places(List<DrawingView> views, Box room, double factor) {
    double spare = room.height() - highMm(views, factor);
    double pad = Math.max(0, spare / (views.size() + 1));
    double top = room.maxY();
    List<ViewPlacing> places = new ArrayList<>();
    for (DrawingView view : views) {
      top -= pad;
      Box b = view.bounds();
      double upper = top - CAPTION_MM - view.dimensionRoomMm();
      places.add(
          new ViewPlacing(
              new Vec2(room.centre().x() - factor * b.centre().x(), upper - factor * b.maxY()),
              factor));
      top -= cellMm(view, factor);
    }
    return places;
  }

  /** A bar of 100 mm of paper, or of the drawing where that is at 1:1. */
  private static void bar(Box room, boolean paperOnly, List<Item> items, List<Proof> proofs) {
    double y = room.minY() + 4;
    Vec2 from = new Vec2(room.minX() + GAP_MM, y);
    Vec2 to = from.plus(new Vec2(BAR_MM, 0));
    LayerPen bar = new LayerPen(Layer.CHECK_BARS, items);
    bar.line(from, to, Pen.OUTLINE);
    bar.line(from.x(), y - 2, from.x(), y + 2, Pen.OUTLINE);
    bar.line(to.x(), y - 2, to.x(), y + 2, Pen.OUTLINE);
    String words = paperOnly ? "100 MM ON PAPER" : "100 MM";
    bar.text(from.x() + 3, y + 1.5, 2.5, Align.START, words);
    proofs.add(new Proof.Bar("check bar", from, to));
  }
}
