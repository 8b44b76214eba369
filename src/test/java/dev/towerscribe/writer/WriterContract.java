package dev.towerscribe.writer;

import static org.assertj.core.api.Assertions.assertThat;
import static org.assertj.core.api.Assertions.assertThatThrownBy;

import dev.towerscribe.drawing.Align;
import dev.towerscribe.drawing.Ink;
import dev.towerscribe.drawing.Item;
import dev.towerscribe.drawing.Layer;
import dev.towerscribe.drawing.Page;
import dev.towerscribe.drawing.Pen;
import dev.towerscribe.drawing.Proof;
import dev.towerscribe.geometry.Box;
import dev.towerscribe.geometry.PrintScale;
import dev.towerscribe.geometry.Vec2;
import dev.towerscribe.quantity.Angle;
import dev.towerscribe.quantity.Tolerances;
import java.nio.charset.StandardCharsets;
import java.util.ArrayList;
import java.util.Arrays;
import java.util.List;
import java.util.Locale;
import java.util.Optional;
import java.util.TimeZone;
import java.util.function.Function;
import net.jqwik.api.Example;
import net.jqwik.api.ForAll;
import net.jqwik.api.Property;
import net.jqwik.api.constraints.IntRange;

/** What every writer with its proof must hold to. */
public abstract class WriterContract {
  /**
   * How exactly shapes must be found again, mm: a hundredth of the proof's tolerance. What is seen
   * in a pass or a failure is the proof's own limit, so proofs are moved to just inside and just
   * outside of it.
   */
  private static final double EXACT_MM = 1e-4;

  private static final double JUST_INSIDE_MM = Tolerances.READ_BACK_MM - EXACT_MM;
  private static final double JUST_OUTSIDE_MM = Tolerances.READ_BACK_MM + EXACT_MM;

  /** The file. */
  protected abstract byte[] write(Page page);

  /** The mismatches of a file. */
  protected abstract List<String> check(byte[] file, Page page);

  private List<String> mismatches(Page written, Page expected) {
    return check(write(written), expected);
  }

  @Property(seed = "7301", tries = 60)
  void findsEveryShapeWhereItWasDrawn(@ForAll @IntRange(min = 0, max = 1_000_000) int seed) {
    Page page = SamplePages.random(seed);
    byte[] file = write(page);
    assertThat(check(file, page)).isEmpty();
    for (int direction = 0; direction < 6; direction++) {
      assertThat(check(file, moved(page, direction, JUST_INSIDE_MM))).isEmpty();
      assertThat(check(file, moved(page, direction, JUST_OUTSIDE_MM))).hasSameSizeAs(page.proofs());
    }
  }

  /** Proofs moved so that in print each is off by the distance: 0-3 by place, 4-5 by radius. */
  private static Page moved(Page page, int direction, double mm) {
    Vec2 by =
        switch (direction) {
          case 0 -> new Vec2(mm, 0);
          case 1 -> new Vec2(-mm, 0);
          case 2 -> new Vec2(0, mm);
          case 3 -> new Vec2(0, -mm);
          default -> Vec2.ZERO;
        };
    double wider = direction == 4 ? mm : -mm;
    List<Proof> proofs = new ArrayList<>();
    for (Proof proof : page.proofs()) {
      if (proof instanceof Proof.RoundHole hole) {
        proofs.add(
            new Proof.RoundHole(
                hole.name(),
                hole.centre().plus(by),
                direction < 4 ? hole.radiusMm() : hole.radiusMm() + wider));
      } else if (proof instanceof Proof.Bar bar) {
        Vec2 shift = direction < 4 ? by : new Vec2(wider, 0);
        proofs.add(new Proof.Bar(bar.name(), bar.from(), bar.to().plus(shift)));
      }
    }
    return SamplePages.withProofs(page, proofs);
  }

  @Example
  void provesThePageOfEveryKind() {
    for (PrintScale scale : SamplePages.SCALES) {
      Page page = SamplePages.everything(scale);
      assertThat(mismatches(page, page)).isEmpty();
    }
  }

  @Example
  void catchesAScaledPage() {
    Page page = SamplePages.everything(PrintScale.TRUE);
    Page scaled = SamplePages.everything(new PrintScale(1.001, 1.001));
    // Independent: the shape nearest to the page's middle is hole A, 59 mm off; a thousandth moves
    // it by 0.059 mm.
    assertThat(mismatches(scaled, page)).hasSize(page.proofs().size());
    assertThat(mismatches(page, scaled)).hasSize(page.proofs().size());
  }

  @Example
  void catchesASkewedPage() {
    Page page = SamplePages.everything(PrintScale.TRUE);
    Page leaning = SamplePages.everything(new PrintScale(1, 1, Angle.ofDegrees(0.1)));
    Page other = SamplePages.everything(new PrintScale(1, 1, Angle.ofDegrees(-0.1)));
    // Independent: hole A stands 21.5 mm above the page's middle; a tenth of a degree moves it by
    // 0.038 mm and the ends of every bar by more.
    for (Page written : List.of(leaning, other)) {
      assertThat(mismatches(written, page)).hasSize(page.proofs().size());
      assertThat(mismatches(page, written)).hasSize(page.proofs().size());
    }
    assertThat(mismatches(leaning, other)).hasSize(page.proofs().size());
  }

  @Example
  void catchesAHoleOutsideALeaningWindow() {
    // Independent: at 200 mm above the middle's height a lean of 3 degrees moves the window's left
    // edge from 60 by 200 tan 3 = 10.48 mm; the hole is moved by as much, and stays cut off.
    PrintScale leaning = new PrintScale(1, 1, Angle.ofDegrees(-3));
    Item hole = new Item.Circle(Layer.HOLES, new Vec2(54, 280), 5, Pen.OUTLINE, Ink.NONE);
    List<Proof> proofs = List.of(new Proof.RoundHole("hole A", new Vec2(54, 280), 5));
    Page seen = tile(new Box(50, 20, 100, 290), hole, proofs, leaning);
    Page cutOff = tile(new Box(60, 20, 100, 290), hole, proofs, leaning);
    assertThat(mismatches(seen, seen)).isEmpty();
    assertThat(mismatches(cutOff, cutOff)).hasSize(1);
  }

  @Example
  void catchesAMovedShape() {
    Page page = SamplePages.everything(PrintScale.TRUE);
    Page moved =
        changeHoleA(
            page,
            hole ->
                new Item.Circle(
                    hole.layer(),
                    hole.centre().plus(new Vec2(0, 0.02)),
                    hole.radiusMm(),
                    hole.pen(),
                    hole.fill()));
    assertThat(mismatches(moved, page)).singleElement().asString().contains("hole A", "170.020");
  }

  @Example
  void catchesAWrongRadius() {
    Page page = SamplePages.everything(PrintScale.TRUE);
    Page wider =
        changeHoleA(
            page,
            hole -> new Item.Circle(hole.layer(), hole.centre(), 4.52, hole.pen(), hole.fill()));
    assertThat(mismatches(wider, page)).singleElement().asString().contains("hole A", "4.520 mm");
  }

  @Example
  void catchesAMissingHole() {
    Page page = SamplePages.everything(PrintScale.TRUE);
    assertThat(mismatches(changeHoleA(page, hole -> null), page))
        .singleElement()
        .asString()
        .contains("hole A");
  }

  @Example
  void catchesAnInvisibleHole() {
    Page page = SamplePages.everything(PrintScale.TRUE);
    Page unseen =
        changeHoleA(
            page,
            hole ->
                new Item.Circle(hole.layer(), hole.centre(), hole.radiusMm(), Pen.NONE, Ink.NONE));
    assertThat(mismatches(unseen, page)).hasSize(1);
  }

  @Example
  void catchesAHoleOutsideItsWindow() {
    Item hole = new Item.Circle(Layer.HOLES, new Vec2(50, 50), 5, Pen.OUTLINE, Ink.NONE);
    List<Proof> proofs = List.of(new Proof.RoundHole("hole A", new Vec2(50, 50), 5));
    Page seen = tile(new Box(40, 40, 100, 100), hole, proofs);
    Page cutOff = tile(new Box(60, 40, 100, 100), hole, proofs);
    assertThat(mismatches(seen, seen)).isEmpty();
    assertThat(mismatches(cutOff, cutOff)).hasSize(1);
  }

  private static Page tile(Box box, Item item, List<Proof> proofs) {
    return tile(box, item, proofs, PrintScale.TRUE);
  }

  private static Page tile(Box box, Item item, List<Proof> proofs, PrintScale scale) {
    return new Page(
        "tile",
        "Tile",
        "t",
        210,
        297,
        true,
        scale,
        List.of(),
        Optional.of(new Page.Window(box, List.of(item))),
        proofs);
  }

  @Example
  void catchesAShortBar() {
    Page page = SamplePages.everything(PrintScale.TRUE);
    List<Item> items =
        page.items().stream()
            .map(
                item ->
                    item instanceof Item.Line line && line.from().equals(new Vec2(20, 20))
                        ? new Item.Line(line.layer(), line.from(), new Vec2(169.98, 20), line.pen())
                        : item)
            .toList();
    assertThat(mismatches(SamplePages.withItems(page, items), page))
        .singleElement()
        .asString()
        .contains("bar across", "169.980");
  }

  @Example
  void catchesAnotherPaper() {
    Page page = SamplePages.everything(PrintScale.TRUE);
    Page other =
        new Page(
            page.fileStem(),
            page.title(),
            page.label(),
            page.widthMm() + 0.02,
            page.heightMm(),
            true,
            page.scale(),
            page.items(),
            page.window(),
            page.proofs());
    assertThat(mismatches(other, page)).isNotEmpty();
  }

  @Example
  void catchesWhatIsNoSuchFile() {
    Page page = SamplePages.everything(PrintScale.TRUE);
    assertThat(check(new byte[0], page)).isNotEmpty();
    assertThat(check("not a drawing".getBytes(StandardCharsets.UTF_8), page)).isNotEmpty();
    byte[] half = write(page);
    assertThat(check(Arrays.copyOf(half, half.length / 2), page)).isNotEmpty();
  }

  @Example
  void writesTheSameBytesWhereverAndWhenever() throws InterruptedException {
    Page page = SamplePages.everything(new PrintScale(1.013, 0.994));
    byte[] first = write(page);
    Locale locale = Locale.getDefault();
    TimeZone zone = TimeZone.getDefault();
    try {
      for (String tag : List.of("de-DE", "ar-EG-u-nu-arab", "tr-TR", "hi-IN-u-nu-deva")) {
        Locale.setDefault(Locale.forLanguageTag(tag));
        TimeZone.setDefault(TimeZone.getTimeZone("Pacific/Kiritimati"));
        Thread.sleep(5);
        assertThat(write(page)).as(tag).isEqualTo(first);
      }
    } finally {
      Locale.setDefault(locale);
      TimeZone.setDefault(zone);
    }
  }

  @Example
  void refusesWhatTheFontCannotWrite() {
    for (Align align : Align.values()) {
      Item text =
          new Item.Text(
              Layer.NOTES, new Vec2(50, 50), 3.5, align, Angle.ZERO, "bolt \u4E2D", Ink.BLACK);
      Page page = SamplePages.withItems(SamplePages.everything(PrintScale.TRUE), List.of(text));
      assertThatThrownBy(() -> write(page))
          .isInstanceOf(IllegalArgumentException.class)
          .hasMessageContaining("U+4E2D");
    }
  }

  private static Page changeHoleA(Page page, Function<Item.Circle, Item> change) {
    List<Item> items = new ArrayList<>();
    for (Item item : page.items()) {
      Item changed =
          item instanceof Item.Circle circle
                  && circle.layer() == Layer.HOLES
                  && circle.radiusMm() == 4.5
              ? change.apply(circle)
              : item;
      if (changed != null) {
        items.add(changed);
      }
    }
    return SamplePages.withItems(page, items);
  }
}
