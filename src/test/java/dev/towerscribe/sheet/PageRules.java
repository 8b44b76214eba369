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

  /** Something on a page and the room it takes. */
  private record Placed<T extends Item>(T item, Box box) {}

  public static void check(List<Page> pages, double marginMm) {
    assertThat(pages).isNotEmpty();
    for (Page page : pages) {
      String name = page.fileStem() + " " + page.widthMm() + " x " + page.heightMm();
      assertThat(page.fullScale()).isFalse();
      assertThat(page.proofs()).isEmpty();
      Box paper = new Box(0, 0, page.widthMm(), page.heightMm());
      Box allowed = paper.grown(-marginMm + ROUNDING_MM);
      List<Placed<Item.Text>> texts = new ArrayList<>();
      List<Placed<Item>> others = new ArrayList<>();
      for (Item item : page.items()) {
        Box box = bounds(item);
        assertThat(allowed.contains(box)).as("%s: %s", name, item).isTrue();
        if (item instanceof Item.Text text) {
          texts.add(new Placed<>(text, box.grown(-ROUNDING_MM)));
        } else {
          others.add(new Placed<>(item, box));
        }
      }
      assertThat(texts)
          .as(name)
          .allSatisfy(text -> assertThat(text.item().capHeightMm()).isGreaterThanOrEqualTo(2.5));
      assertThat(overlaps(texts, others)).as(name).isEmpty();
      notOrphaned(page, texts(page), marginMm, name);
    }
  }

  /** Words over words, and words over lines or holes, both told. */
  private static List<String> overlaps(List<Placed<Item.Text>> texts, List<Placed<Item>> others) {
    List<String> faults = new ArrayList<>();
    for (int i = 0; i < texts.size(); i++) {
      Placed<Item.Text> text = texts.get(i);
      for (Placed<Item.Text> other : texts.subList(i + 1, texts.size())) {
        if (text.box().meets(other.box())) {
          faults.add(text.item().content() + " / " + other.item().content());
        }
      }
      for (Placed<Item> other : others) {
        boolean line = other.item() instanceof Item.Line l && crosses(l, other.box(), text.box());
        boolean hole =
            other.item() instanceof Item.Circle c
                && c.layer() == Layer.HOLES
                && text.box().meets(other.box());
        if (line || hole) {
          faults.add(text.item() + " / " + other.item());
        }
      }
    }
    return faults;
  }

  /** Looked for at a hundred points along the line. */
  private static boolean crosses(Item.Line line, Box bounds, Box box) {
    if (!box.meets(bounds)) {
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
