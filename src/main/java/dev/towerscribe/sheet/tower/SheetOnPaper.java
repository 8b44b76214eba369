package dev.towerscribe.sheet.tower;

import dev.towerscribe.drawing.Item;
import dev.towerscribe.drawing.LayerPen;
import dev.towerscribe.drawing.Page;
import dev.towerscribe.drawing.Pen;
import dev.towerscribe.drawing.Proof;
import dev.towerscribe.geometry.Box;
import dev.towerscribe.geometry.PrintScale;
import dev.towerscribe.geometry.Vec2;
import dev.towerscribe.model.Print;
import dev.towerscribe.sheet.text.JobInfo;
import dev.towerscribe.sheet.text.NoRoomException;
import java.util.ArrayList;
import java.util.List;
import java.util.Optional;

/**
 * One full-scale drawing on its way to paper: where on the page it lies so that every name finds
 * room, or over which tiles it is shared out.
 *
 * @param sheet the drawing
 * @param print the paper
 * @param info what every page says about the job
 * @param zones how a page is shared out
 * @param window where the drawing shows
 */
record SheetOnPaper(FullScaleSheet sheet, Print print, JobInfo info, SheetZones zones, Box window) {
  private static final double FRAME_GAP_MM = 1.0;

  /** A sheet's pages: one, or its tiles row by row. */
  static List<Page> pages(FullScaleSheet sheet, Print print, JobInfo info) {
    SheetZones zones = SheetZones.of(print, info);
    Box window = zones.drawing().grown(-FRAME_GAP_MM);
    return new SheetOnPaper(sheet, print, info, zones, window).pages();
  }

  /** One of several tiles. */
  private record Tile(Tiles all, int row, int column) {
    String name() {
      return ", tile " + Tiles.name(row, column);
    }
  }

  private List<Page> pages() {
    Box needs = sheet.essentials();
    List<String> homeless = List.of();
    if (needs.width() <= window.width() && needs.height() <= window.height()) {
      for (Vec2 origin : origins()) {
        FullScaleSheet.Painted painted = sheet.painter().paint(origin, window, List.of());
        if (painted.unplaced().isEmpty()) {
          return List.of(page(origin, painted, Optional.empty()));
        }
        homeless = painted.unplaced();
      }
    }
    Tiles fewest = Tiles.of(needs, window, sheet.largestMm(), homeless.isEmpty() ? 1 : 2);
    for (Tiles tiles : fewest.andFiner()) {
      List<Page> pages = new ArrayList<>();
      homeless = tiled(tiles, pages);
      if (homeless.isEmpty()) {
        return pages;
      }
    }
    throw new NoRoomException("no room on " + print.paper().word() + " to name " + homeless);
  }

  /**
   * The tiles of one way to share a sheet out.
   *
   * @param pages where they go
   * @return names that found no room, after which the pages are not all there
   */
  private List<String> tiled(Tiles tiles, List<Page> pages) {
    List<FullScaleSheet.Join> joins = tiles.joins(sheet.others());
    for (int r = 0; r < tiles.rows(); r++) {
      for (int c = 0; c < tiles.columns(); c++) {
        Box seen = tiles.window(r, c);
        Vec2 origin = new Vec2(window.minX() - seen.minX(), window.minY() - seen.minY());
        FullScaleSheet.Painted painted = sheet.painter().paint(origin, window, joins);
        if (!painted.unplaced().isEmpty()) {
          return painted.unplaced();
        }
        pages.add(page(origin, painted, Optional.of(new Tile(tiles, r, c))));
      }
    }
    return List.of();
  }

  /** Places of the origin at which everything shows, the best first. */
  private List<Vec2> origins() {
    Box needs = sheet.wished(window);
    double leastX = window.minX() - needs.minX();
    double mostX = window.maxX() - needs.maxX();
    double leastY = window.minY() - needs.minY();
    double mostY = window.maxY() - needs.maxY();
    double offset = sheet.lineOffsetMm();
    double[] line = SheetBorder.lineRoom(zones, sheet.says(), false);
    double liked = Math.max(line[0], Math.min(line[1], (leastX + mostX) / 2 + offset)) - offset;
    double x = Math.max(leastX, Math.min(mostX, liked));
    List<Vec2> result = new ArrayList<>();
    result.add(new Vec2(x, (leastY + mostY) / 2));
    for (double down : new double[] {0.2, 0.8}) {
      for (double across : new double[] {0.2, 0.5, 0.8}) {
        result.add(new Vec2(leastX + across * (mostX - leastX), leastY + down * (mostY - leastY)));
      }
    }
    return result;
  }

  private Page page(Vec2 origin, FullScaleSheet.Painted painted, Optional<Tile> tile) {
    double x = origin.x() + sheet.lineOffsetMm();
    Optional<Double> lineX =
        Optional.of(x).filter(line -> line > window.minX() && line < window.maxX());
    PrintScale scale = new PrintScale(print.scaleAcross(), print.scaleAlong(), print.skew());
    CheckBars bars =
        CheckBars.of(new Vec2(zones.strip().maxX() - 3, zones.foot().maxY() - 5), info.units());
    SheetBorder.Says says = tile.map(t -> sheet.says().ofTile(t.name())).orElse(sheet.says());
    List<Item> items = new ArrayList<>();
    SheetBorder border = new SheetBorder(zones, info, scale, says, lineX, tile.isPresent(), items);
    border.draw(bars);
    tile.ifPresent(
        t -> {
          LayerPen notes = LayerPen.notes(items);
          notes.frame(window, Pen.OUTLINE);
          t.all().drawKey(border.keyRoom(), t.row(), t.column(), notes);
        });
    List<Proof> proofs = new ArrayList<>(painted.proofs());
    proofs.addAll(bars.proofs());
    String suffix = tile.map(t -> Tiles.suffix(t.row(), t.column())).orElse("");
    return new Page(
        sheet.stem() + suffix,
        sheet.title() + tile.map(Tile::name).orElse(""),
        sheet.label() + suffix,
        print.paper().widthMm(),
        print.paper().heightMm(),
        true,
        scale,
        items,
        Optional.of(new Page.Window(window, painted.items())),
        proofs);
  }
}
