package dev.towerscribe.sheet.worksheet;

import dev.towerscribe.drawing.Item;
import dev.towerscribe.drawing.Page;
import dev.towerscribe.geometry.Vec2;
import dev.towerscribe.model.Paper;
import dev.towerscribe.model.Print;
import dev.towerscribe.model.Side;
import dev.towerscribe.quantity.LengthUnit;
import java.util.ArrayList;
import java.util.List;
import java.util.Optional;
import java.util.function.Function;

/**
 * The survey worksheet: pages to print, take under the car and fill in by hand. What it asks for,
 * and in which order, is {@link WorksheetPlan}'s, as it is in the empty survey file.
 */
public final class Worksheet {
  private record Part(
      Optional<Side> side, String title, Function<WorksheetHead, List<Page>> pages) {}

  private Worksheet() {}

  /**
   * All pages, laid out for small paper and enlarged on larger paper, letters, boxes and all, so
   * that they are read from further away: cautions and setting out, then one side wholly, then the
   * other, then what runs across the car.
   *
   * @param print paper and margin; a print scale plays no part, as nothing is to scale
   * @param units the unit that lengths are to be written in
   * @return the pages in order, numbered through
   */
  public static List<Page> pages(Print print, LengthUnit units) {
    int total = numbered(print, units, 0).size();
    return numbered(print, units, total);
  }

  private static List<Page> numbered(Print print, LengthUnit units, int total) {
    Paper paper = print.paper();
    double factor = Math.max(1, paper.widthMm() / Paper.LETTER.widthMm());
    List<Page> pages = new ArrayList<>();
    for (Part part : parts()) {
      WorksheetHead head =
          new WorksheetHead(
              paper.widthMm() / factor,
              paper.heightMm() / factor,
              print.marginMm() / factor,
              units,
              part.side(),
              part.title(),
              pages.size(),
              total);
      part.pages().apply(head).forEach(page -> pages.add(enlarged(page, factor)));
    }
    return pages;
  }

  /** A page that is not to scale made larger with everything on it; lines keep their widths. */
  private static Page enlarged(Page page, double factor) {
    if (factor == 1) {
      return page;
    }
    return new Page(
        page.fileStem(),
        page.title(),
        page.label(),
        page.widthMm() * factor,
        page.heightMm() * factor,
        page.fullScale(),
        page.scale(),
        page.items().stream().map(item -> enlarged(item, factor)).toList(),
        page.window(),
        page.proofs());
  }

  private static Item enlarged(Item item, double by) {
    if (item instanceof Item.Circle c) {
      return new Item.Circle(c.layer(), c.centre().times(by), c.radiusMm() * by, c.pen(), c.fill());
    } else if (item instanceof Item.Line l) {
      return new Item.Line(l.layer(), l.from().times(by), l.to().times(by), l.pen());
    } else if (item instanceof Item.Polyline p) {
      List<Vec2> points = p.points().stream().map(point -> point.times(by)).toList();
      return new Item.Polyline(p.layer(), points, p.closed(), p.pen(), p.fill());
    } else if (item instanceof Item.Text t) {
      double cap = t.capHeightMm() * by;
      return new Item.Text(
          t.layer(), t.at().times(by), cap, t.align(), t.turn(), t.content(), t.ink());
    }
    throw new IllegalArgumentException("no page of words is made of " + item);
  }

  private static List<Part> parts() {
    List<Part> parts = new ArrayList<>();
    Optional<Side> both = Optional.empty();
    parts.add(new Part(both, "Survey worksheet", WorksheetStart::cautions));
    parts.add(new Part(both, "Setting out", WorksheetStart::settingOut));
    for (Side side : Side.values()) {
      Optional<Side> one = Optional.of(side);
      parts.add(new Part(one, "Points: which is which", WorksheetCorner::figures));
      parts.add(new Part(one, "Points: bob and height", WorksheetCorner::points));
      parts.add(new Part(one, "Tapes, point to point", WorksheetCorner::tapes));
      parts.add(new Part(one, "Tapes from the marks", WorksheetCorner::marks));
      parts.add(new Part(one, "Tower top", WorksheetTower::top));
      parts.add(new Part(one, "Tower: landmarks, spans", WorksheetTower::landmarks));
    }
    parts.add(new Part(both, "Across the car", WorksheetStart::across));
    return parts;
  }
}
