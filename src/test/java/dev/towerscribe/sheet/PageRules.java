package dev.towerscribe.sheet;

import static org.assertj.core.api.Assertions.assertThat;

import dev.towerscribe.drawing.Align;
import dev.towerscribe.drawing.Item;
import dev.towerscribe.drawing.Layer;
import dev.towerscribe.drawing.Lettering;
import dev.towerscribe.drawing.Page;
import dev.towerscribe.geometry.Box;
import dev.towerscribe.geometry.Vec2;
import dev.towerscribe.sheet.text.Fragments;
import dev.towerscribe.sheet.text.TextStyle;
import java.util.ArrayList;
import java.util.List;

/** What must hold of every text page, whatever stands on it. */
public final class PageRules {
  /** Reach of plain letters over a capital's height: brackets and ascenders of the sheet font. */
  private static final double ASCENDER = 1.08;

  /** Sums of line heights may differ by rounding, mm. */
  private static final double ROUNDING_MM = 1e-6;

  private PageRules() {}

  public static void check(List<Page> pages, double marginMm) {
    assertThat(pages).isNotEmpty();
    for (Page page : pages) {
      String name = page.fileStem() + " " + page.widthMm() + " x " + page.heightMm();
      assertThat(page.fullScale()).isFalse();
      assertThat(page.proofs()).isEmpty();
      Box paper = new Box(0, 0, page.widthMm(), page.heightMm());
      Box allowed = paper.grown(-marginMm + ROUNDING_MM);
      for (Item item : page.items()) {
        assertThat(allowed.contains(bounds(item))).as(name + ": " + item).isTrue();
      }
      List<Item.Text> texts = texts(page);
      for (int i = 0; i < texts.size(); i++) {
        Item.Text text = texts.get(i);
        assertThat(text.capHeightMm()).as(name + ": " + text).isGreaterThanOrEqualTo(2.5);
        Box box = bounds(text).grown(-ROUNDING_MM);
        for (int k = i + 1; k < texts.size(); k++) {
          assertThat(box.meets(bounds(texts.get(k)).grown(-ROUNDING_MM)))
              .as(name + ": " + text.content() + " / " + texts.get(k).content())
              .isFalse();
        }
        for (Item item : page.items()) {
          boolean crossed =
              item instanceof Item.Line line && crosses(line, box)
                  || item instanceof Item.Circle c
                      && c.layer() == Layer.HOLES
                      && box.meets(bounds(c));
          assertThat(crossed).as(name + ": " + text + " / " + item).isFalse();
        }
      }
      notOrphaned(page, texts, marginMm, name);
    }
  }

  /** Looked for at a hundred points along the line. */
  private static boolean crosses(Item.Line line, Box box) {
    if (!box.meets(bounds(line))) {
      return false;
    }
    for (int i = 0; i <= 100; i++) {
      Vec2 p = line.from().toward(line.to(), i / 100.0);
      if (box.meets(Box.around(p, line.pen().widthMm() / 2))) {
        return true;
      }
    }
    return false;
  }

  /** The lowest words above the foot are not a heading on its band. */
  private static void notOrphaned(Page page, List<Item.Text> texts, double margin, String name) {
    double footTop = margin + 2 * TextStyle.lineMm(TextStyle.SMALL) + 1;
    texts.stream()
        .filter(t -> t.at().y() > footTop)
        .reduce((a, b) -> a.at().y() <= b.at().y() ? a : b)
        .ifPresent(
            t ->
                assertThat(
                        t.capHeightMm() == TextStyle.HEADING
                            && t.at().x() == margin + Fragments.Band.INDENT)
                    .as(name + ": heading at the end: " + t)
                    .isFalse());
  }

  public static List<Item.Text> texts(Page page) {
    return page.items().stream()
        .filter(Item.Text.class::isInstance)
        .map(Item.Text.class::cast)
        .toList();
  }

  public static List<String> words(Page page) {
    return texts(page).stream().map(Item.Text::content).toList();
  }

  /** All words of all pages, lines joined. */
  public static String words(List<Page> pages) {
    List<String> all = new ArrayList<>();
    pages.forEach(p -> all.addAll(words(p)));
    return String.join(" ", all);
  }

  public static Box bounds(Item item) {
    if (item instanceof Item.Text t) {
      double wide = Lettering.width(t.content(), t.capHeightMm());
      double left =
          t.at().x() - (t.align() == Align.START ? 0 : t.align() == Align.END ? wide : wide / 2);
      boolean plain = t.content().chars().allMatch(c -> c < 128);
      double up = plain ? ASCENDER * t.capHeightMm() : Lettering.ascentMm(t.capHeightMm());
      return new Box(
          left, t.at().y() - Lettering.descentMm(t.capHeightMm()), left + wide, t.at().y() + up);
    }
    if (item instanceof Item.Line l) {
      double half = l.pen().widthMm() / 2;
      boolean level = l.from().y() == l.to().y();
      // Lines end where they end: only their thickness reaches further.
      double dx = level ? 0 : half;
      double dy = level ? half : 0;
      return new Box(
          Math.min(l.from().x(), l.to().x()) - dx,
          Math.min(l.from().y(), l.to().y()) - dy,
          Math.max(l.from().x(), l.to().x()) + dx,
          Math.max(l.from().y(), l.to().y()) + dy);
    }
    if (item instanceof Item.Circle c) {
      return Box.around(c.centre(), c.radiusMm() + c.pen().widthMm() / 2);
    }
    if (item instanceof Item.Polyline p) {
      Box box = null;
      for (Vec2 v : p.points()) {
        Box one = Box.around(v, p.pen().widthMm() / 2);
        box = box == null ? one : box.union(one);
      }
      return box;
    }
    throw new AssertionError("text pages are not made of " + item);
  }
}
