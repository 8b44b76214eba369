package dev.towerscribe.sheet.worksheet;

import dev.towerscribe.drawing.Item;
import dev.towerscribe.drawing.LayerPen;
import dev.towerscribe.drawing.Page;
import dev.towerscribe.geometry.Vec2;
import java.util.ArrayList;
import java.util.List;

/** A page made larger with everything on it; lines keep their widths. */
final class Enlarged implements Item.Visitor {
  private final double factor;
  private final List<Item> items = new ArrayList<>();

  private Enlarged(double factor) {
    this.factor = factor;
  }

  /**
   * Enlarges a page that is not to scale.
   *
   * @param page the page
   * @param factor new lengths over old ones
   * @return the page on paper that much larger
   */
  static Page page(Page page, double factor) {
    if (factor == 1) {
      return page;
    }
    Enlarged enlarged = new Enlarged(factor);
    page.items().forEach(item -> item.accept(enlarged));
    return new Page(
        page.fileStem(),
        page.title(),
        page.label(),
        page.widthMm() * factor,
        page.heightMm() * factor,
        page.fullScale(),
        page.scale(),
        enlarged.items,
        page.window(),
        page.proofs());
  }

  private Vec2 at(Vec2 p) {
    return p.times(factor);
  }

  @Override
  public void circle(Item.Circle c) {
    new LayerPen(c.layer(), items).circle(at(c.centre()), c.radiusMm() * factor, c.pen(), c.fill());
  }

  @Override
  public void line(Item.Line l) {
    new LayerPen(l.layer(), items).line(at(l.from()), at(l.to()), l.pen());
  }

  @Override
  public void polyline(Item.Polyline p) {
    List<Vec2> points = p.points().stream().map(this::at).toList();
    items.add(new Item.Polyline(p.layer(), points, p.closed(), p.pen(), p.fill()));
  }

  @Override
  public void text(Item.Text t) {
    items.add(
        new Item.Text(
            t.layer(),
            at(t.at()),
            t.capHeightMm() * factor,
            t.align(),
            t.turn(),
            t.content(),
            t.ink()));
  }

  @Override
  public void arc(Item.ArcLine arc) {
    throw unexpected(arc);
  }

  @Override
  public void figure(Item.Figure figure) {
    throw unexpected(figure);
  }

  @Override
  public void dimension(Item.Dimension dimension) {
    throw unexpected(dimension);
  }

  private static IllegalArgumentException unexpected(Item item) {
    return new IllegalArgumentException("no page of words is made of " + item);
  }
}
