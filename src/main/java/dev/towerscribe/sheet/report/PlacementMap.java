package dev.towerscribe.sheet.report;

import dev.towerscribe.drawing.Align;
import dev.towerscribe.drawing.Ink;
import dev.towerscribe.drawing.Item;
import dev.towerscribe.drawing.Layer;
import dev.towerscribe.drawing.LayerPen;
import dev.towerscribe.drawing.Page;
import dev.towerscribe.drawing.Pen;
import dev.towerscribe.drawing.TextBlock;
import dev.towerscribe.geometry.Box;
import dev.towerscribe.geometry.Edge.Segment;
import dev.towerscribe.geometry.Region;
import dev.towerscribe.geometry.Vec2;
import dev.towerscribe.model.Mount;
import dev.towerscribe.model.Print;
import dev.towerscribe.placement.FeasibleMap;
import dev.towerscribe.placement.FeasibleMap.Barrier;
import dev.towerscribe.placement.Offer;
import dev.towerscribe.quantity.Angle;
import dev.towerscribe.quantity.LengthUnit;
import dev.towerscribe.quantity.Lengths;
import dev.towerscribe.quantity.Numbers;
import dev.towerscribe.report.Block;
import dev.towerscribe.report.PlacementReport;
import dev.towerscribe.sheet.text.BlockSetter;
import dev.towerscribe.sheet.text.Fragment;
import dev.towerscribe.sheet.text.JobInfo;
import dev.towerscribe.sheet.text.TextPage;
import dev.towerscribe.sheet.text.TextStyle;
import java.util.ArrayList;
import java.util.DoubleSummaryStatistics;
import java.util.List;
import java.util.Map;
import java.util.Optional;
import java.util.stream.Collectors;

/**
 * The map of a placement search: rotation across, rearward offset upward. Where the plates can go
 * the paper is white, with lines of equal caster; elsewhere it is hatched, and says why. The offers
 * stand on it with their letters, and their figures in a table below.
 */
public final class PlacementMap {
  private static final double GAP = 3.0;

  /** Heights of the drawing, the largest first: the first that leaves room for the table. */
  private static final List<Double> HEIGHTS_MM = List.of(150.0, 142.0, 134.0, 126.0, 118.0, 110.0);

  private PlacementMap() {}

  /**
   * The pages: the map with the table, or the table continued.
   *
   * @param map where the plates can go
   * @param offers the short list, in the order of their letters
   * @param estimate whether caster is an estimate
   * @param print paper and margin
   * @param info the job
   * @return at least one page
   */
  public static List<Page> pages(
      FeasibleMap map, List<Offer> offers, boolean estimate, Print print, JobInfo info) {
    return TextPage.fewest(HEIGHTS_MM, height -> pages(map, offers, estimate, print, info, height));
  }

  private static List<Page> pages(
      FeasibleMap map,
      List<Offer> offers,
      boolean estimate,
      Print print,
      JobInfo info,
      double height) {
    TextPage page = TextPage.of(print, info, Optional.empty(), "Where the plates can go");
    page.paragraph(
        ("White: every check passes on every tower of the job, at the best inboard offset and"
                + " setting there. Hatched: no placement stands, for the reason written there."
                + " Lines: caster in degrees, the smaller of both sides%s. Letters: the offers; a"
                + " letter set aside is joined to its place, the dot.")
            .formatted(estimate ? ", estimated" : ""),
        TextStyle.BODY);
    page.add(new Drawing(map, offers, info.units(), page.columnMm(), height), GAP, false);
    Lengths lengths = Lengths.in(info.units());
    String columns =
        "%s The figures are of the job as measured: lay it out with check before any metal is"
            + " marked.";
    page.blocks(
        List.of(
            PlacementReport.offers(offers, estimate),
            new Block.Paragraph(columns.formatted(PlacementReport.columns(lengths)), true)),
        lengths,
        BlockSetter.Style.AIRY);
    return page.pages("placement-map", "Placement map", "map-", true);
  }

  /** The drawing. */
  private record Drawing(
      FeasibleMap map, List<Offer> offers, LengthUnit unit, double widthMm, double heightMm)
      implements Fragment {
    private static final double LEFT = 11.0;
    private static final double BELOW = 12.0;
    private static final double RIGHT = 3.0;
    private static final double ABOVE = 6.5;
    private static final double WORDS = 3.0;
    private static final double NARROW_MM = 34.0;
    private static final double SPACING_MM = 2.4;

    /** Degrees that a barrier is hatched at, in the order they are drawn. */
    private static final List<Map.Entry<Barrier, Double>> DIRECTIONS =
        List.of(
            Map.entry(Barrier.STRUT_ROD, 45.0),
            Map.entry(Barrier.PLATE, 135.0),
            Map.entry(Barrier.BOLTS, 0.0),
            Map.entry(Barrier.BRACKET, 90.0),
            Map.entry(Barrier.LINKAGE, 20.0));

    private int columns() {
      return map.rotationsDeg().size();
    }

    private int rows() {
      return map.rearwardsMm().size();
    }

    @Override
    public void draw(double leftMm, double topMm, List<Item> out) {
      Box box =
          new Box(leftMm + LEFT, topMm - heightMm + BELOW, leftMm + widthMm - RIGHT, topMm - ABOVE);
      Vec2 origin = new Vec2(box.minX(), box.minY());
      double w = box.width() / columns();
      double h = box.height() / rows();
      List<Item> words = new ArrayList<>();
      OfferMarks marks =
          OfferMarks.of(offers.stream().map(o -> place(o.mount(), box)).toList(), box);
      List<Box> taken = new ArrayList<>(marks.boxes());
      for (Map.Entry<Barrier, Double> one : DIRECTIONS) {
        Region region =
            CellRegions.of(
                (x, y) -> map.barriers().get(x).get(y) == one.getKey(),
                columns(),
                rows(),
                origin,
                w,
                h);
        if (region.isEmpty()) {
          continue;
        }
        Angle direction = Angle.ofDegrees(one.getValue());
        new LayerPen(Layer.WASTE, out)
            .hatch(region, Region.EMPTY, direction, SPACING_MM, Pen.HATCH);
        LayerPen plate = new LayerPen(Layer.PLATE, out);
        region.contours().forEach(c -> plate.polygon(c.corners(), Pen.THIN, Ink.NONE));
        name(one.getKey(), region, box, taken, words);
      }
      contours(box, w, h, taken, out, words);
      axes(box, w, h, out);
      out.addAll(words);
      marks.draw(out);
    }

    private Vec2 place(Mount mount, Box box) {
      double r0 = map.rotationsDeg().get(0);
      double r1 = map.rotationsDeg().get(columns() - 1);
      double a0 = map.rearwardsMm().get(0);
      double a1 = map.rearwardsMm().get(rows() - 1);
      double w = box.width() / columns();
      double h = box.height() / rows();
      return new Vec2(
          box.minX() + w / 2 + (box.width() - w) * share(mount.rotation().degrees(), r0, r1),
          box.minY() + h / 2 + (box.height() - h) * share(mount.rearwardMm(), a0, a1));
    }

    private static double share(double value, double from, double to) {
      return to == from ? 0.5 : (value - from) / (to - from);
    }

    /** Each separate part that has room for it says why; the largest always does. */
    private static void name(
        Barrier barrier, Region region, Box box, List<Box> taken, List<Item> words) {
      TextBlock block = TextBlock.wrapped(WORDS, NARROW_MM, barrier.words());
      boolean first = true;
      for (Region part : region.parts()) {
        Vec2 best = null;
        double most = first ? Double.NEGATIVE_INFINITY : WORDS;
        Box room =
            new Box(
                box.minX() + block.widthMm() / 2 + 1,
                box.minY() + block.heightMm() / 2 + 1,
                box.maxX() - block.widthMm() / 2 - 1,
                box.maxY() - block.heightMm() / 2 - 1);
        for (double x = room.minX(); x <= room.maxX(); x += 2.5) {
          for (double y = room.minY(); y <= room.maxY(); y += 2.5) {
            Vec2 p = new Vec2(x, y);
            Box at = around(block, p);
            double depth = taken.stream().anyMatch(at::meets) ? -1e3 : 0.0;
            depth += part.depth(p);
            if (depth > most) {
              most = depth;
              best = p;
            }
          }
        }
        first = false;
        if (best != null) {
          taken.add(around(block, best));
          words.addAll(block.drawn(best, Angle.ZERO, true, Ink.BLACK));
        }
      }
    }

    /** Words with the ground cleared for them, which must not cut into other words. */
    private static Box around(TextBlock block, Vec2 p) {
      return new Box(
              p.x() - block.widthMm() / 2,
              p.y() - block.heightMm() / 2,
              p.x() + block.widthMm() / 2,
              p.y() + block.heightMm() / 2)
          .grown(TextBlock.CLEARED_MM);
    }

    /** Lines of equal caster between the middles of cells that stand, each with its number. */
    private void contours(
        Box box, double w, double h, List<Box> taken, List<Item> out, List<Item> words) {
      DoubleSummaryStatistics caster =
          map.casterDeg().stream()
              .flatMap(List::stream)
              .filter(degrees -> !Double.isNaN(degrees))
              .collect(Collectors.summarizingDouble(degrees -> degrees));
      if (caster.getCount() == 0) {
        return;
      }
      double low = caster.getMin();
      double high = caster.getMax();
      double step = high - low > 3 ? 1.0 : high - low > 1.5 ? 0.5 : 0.25;
      for (int k = (int) Math.ceil(low / step); k * step <= high; k++) {
        List<Segment> line = level(k * step, box, w, h);
        LayerPen lines = new LayerPen(Layer.CENTRE_LINES, out);
        line.forEach(s -> lines.line(s.start(), s.end(), Pen.OUTLINE));
        number(Numbers.plain(k * step, 2), line, taken, words);
      }
    }

    private static void number(String text, List<Segment> line, List<Box> taken, List<Item> words) {
      TextBlock block = TextBlock.of(WORDS, text);
      int n = line.size();
      for (int i = 0; i < n; i++) {
        // From the middle of the line outward.
        int at = n / 2 + (i % 2 == 0 ? i / 2 : -(i + 1) / 2);
        if (at < 0 || at >= n) {
          continue;
        }
        Vec2 p = line.get(at).at(0.5);
        Box around = around(block, p);
        if (taken.stream().noneMatch(around::meets)) {
          taken.add(around);
          words.addAll(block.drawn(p, Angle.ZERO, true, Ink.BLACK));
          return;
        }
      }
    }

    /**
     * Marching squares over the middles of the cells; a square with an empty corner is left out.
     */
    private List<Segment> level(double level, Box box, double w, double h) {
      List<Segment> line = new ArrayList<>();
      for (int x = 0; x + 1 < columns(); x++) {
        for (int y = 0; y + 1 < rows(); y++) {
          double[] v = {
            map.casterDeg().get(x).get(y),
            map.casterDeg().get(x + 1).get(y),
            map.casterDeg().get(x + 1).get(y + 1),
            map.casterDeg().get(x).get(y + 1)
          };
          if (Double.isNaN(v[0] + v[1] + v[2] + v[3])) {
            continue;
          }
          Vec2[] p = new Vec2[4];
          int[][] corner = {{0, 0}, {1, 0}, {1, 1}, {0, 1}};
          for (int i = 0; i < 4; i++) {
            p[i] =
                new Vec2(
                    box.minX() + (x + corner[i][0] + 0.5) * w,
                    box.minY() + (y + corner[i][1] + 0.5) * h);
          }
          List<Vec2> cuts = new ArrayList<>();
          for (int i = 0; i < 4; i++) {
            int j = (i + 1) % 4;
            if (v[i] < level != v[j] < level) {
              cuts.add(p[i].toward(p[j], (level - v[i]) / (v[j] - v[i])));
            }
          }
          for (int i = 0; i + 1 < cuts.size(); i += 2) {
            if (cuts.get(i).distanceTo(cuts.get(i + 1)) > 1e-6) {
              line.add(new Segment(cuts.get(i), cuts.get(i + 1)));
            }
          }
        }
      }
      return line;
    }

    private void axes(Box box, double w, double h, List<Item> out) {
      LayerPen notes = LayerPen.notes(out);
      double small = TextStyle.SMALL;
      double left = box.minX();
      double low = box.minY();
      notes.frame(box, Pen.OUTLINE);
      for (int i = 0; i < columns(); i++) {
        double degrees = map.rotationsDeg().get(i);
        if (Math.abs(degrees / 10 - Math.rint(degrees / 10)) < 1e-6) {
          double x = left + (i + 0.5) * w;
          notes.line(x, low, x, low - 1.5, Pen.THIN);
          double base = TextStyle.baseMm(low - 1.5, small);
          notes.text(x, base, small, Align.MIDDLE, Numbers.plain(degrees, 1));
        }
      }
      double middle = (left + box.maxX()) / 2;
      String across = "rotation, deg: 0 straight across the car, 90 straight back";
      notes.text(middle, low - BELOW + 1.5, TextStyle.BODY, Align.MIDDLE, across);
      double every = unit == LengthUnit.MM ? 10.0 : 0.5;
      double from = unit.fromMm(map.rearwardsMm().get(0));
      double to = unit.fromMm(map.rearwardsMm().get(rows() - 1));
      for (int k = (int) Math.ceil(from / every - 1e-6); k * every <= to + 1e-6; k++) {
        double y = low + h / 2 + (box.height() - h) * share(k * every, from, to);
        notes.line(left, y, left - 1.5, y, Pen.THIN);
        notes.text(left - 2.2, y - small / 2, small, Align.END, Numbers.plain(k * every, 1));
      }
      String upward = "upward: plate centre rearward, " + unit.symbol();
      notes.text(left - LEFT, box.maxY() + 2.0, TextStyle.BODY, Align.START, upward);
    }
  }
}
