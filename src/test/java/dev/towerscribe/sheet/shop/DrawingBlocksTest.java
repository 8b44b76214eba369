package dev.towerscribe.sheet.shop;

import static org.assertj.core.api.Assertions.assertThat;
import static org.assertj.core.api.Assertions.assertThatThrownBy;
import static org.assertj.core.api.Assertions.within;

import dev.towerscribe.drawing.Item;
import dev.towerscribe.drawing.Lettering;
import dev.towerscribe.drawing.Pen;
import dev.towerscribe.geometry.Box;
import dev.towerscribe.geometry.Contour;
import dev.towerscribe.geometry.Edge.Arc;
import dev.towerscribe.geometry.Vec2;
import dev.towerscribe.model.Paper;
import dev.towerscribe.quantity.LengthUnit;
import dev.towerscribe.quantity.Lengths;
import dev.towerscribe.quantity.Tolerances;
import dev.towerscribe.sheet.text.NoRoomException;
import java.util.ArrayList;
import java.util.List;
import org.junit.jupiter.api.Test;

/**
 * What drawings are put together from. Figures: independent, calculated by hand, unless labelled.
 */
class DrawingBlocksTest {
  private static final double MM = Tolerances.COMPUTED_MM;

  private static List<Item.Text> texts(List<Item> items) {
    return items.stream().filter(Item.Text.class::isInstance).map(Item.Text.class::cast).toList();
  }

  private static List<Item.Text> texts(List<Item> items, String words) {
    return texts(items).stream().filter(t -> t.content().equals(words)).toList();
  }

  private static List<Item.Line> lines(List<Item> items, Pen pen) {
    return items.stream()
        .filter(i -> i instanceof Item.Line l && l.pen() == pen)
        .map(Item.Line.class::cast)
        .toList();
  }

  /** Published: ISO 5457:1999 lays A4 upright and larger sheets on their long side (memory). */
  @Test
  void sheetsLieAsTheStandardHasThem() {
    assertThat(DrawingSheetSize.of(Paper.A4)).isEqualTo(new DrawingSheetSize("A4", 210, 297));
    assertThat(DrawingSheetSize.of(Paper.A3)).isEqualTo(new DrawingSheetSize("A3", 420, 297));
    assertThat(DrawingSheetSize.of(Paper.TABLOID))
        .isEqualTo(new DrawingSheetSize("Tabloid", 431.8, 279.4));
    // 420 - 20 - 15 and 297 - 2 * 15.
    assertThat(DrawingSheetSize.of(Paper.A3).frame()).isEqualTo(new Box(20, 15, 405, 282));
  }

  /**
   * A3: the frame is 385 wide about 212.5, so four fields either way, borders at 62.5, 112.5, ...
   * 362.5; 267 high about 148.5, three fields either way, borders at 48.5, 98.5, ... 248.5.
   */
  @Test
  void fieldsOfA3() {
    List<Item> items = DrawingFrame.items(DrawingSheetSize.of(Paper.A3));
    for (int i = 1; i <= 8; i++) {
      List<Item.Text> numbers = texts(items, Integer.toString(i));
      // Above and below.
      assertThat(numbers).hasSize(2);
      double middle = i == 1 ? (20 + 62.5) / 2 : i == 8 ? (362.5 + 405) / 2 : 37.5 + 50 * (i - 1);
      assertThat(numbers).allMatch(t -> Math.abs(t.at().x() - middle) < MM);
    }
    assertThat(texts(items, "9")).isEmpty();
    String letters = "ABCDEF";
    for (int i = 0; i < 6; i++) {
      List<Item.Text> found = texts(items, letters.substring(i, i + 1));
      assertThat(found).hasSize(2);
      // Downward from the top; the base line is half a letter of 2.5 below the field's middle.
      double middle = i == 0 ? (248.5 + 282) / 2 : i == 5 ? (15 + 48.5) / 2 : 273.5 - 50 * i;
      assertThat(found).allMatch(t -> Math.abs(t.at().y() - (middle - 1.25)) < MM);
    }
    assertThat(texts(items, "G")).isEmpty();
    // Six borders above and six below, besides the middle ones, which the centring marks are; four
    // on either side.
    assertThat(lines(items, Pen.OUTLINE)).hasSize(2 * 6 + 2 * 4);
    assertThat(lines(items, Pen.OUTLINE))
        .anyMatch(
            l ->
                l.from().distanceTo(new Vec2(62.5, 282)) < MM
                    && l.to().distanceTo(new Vec2(62.5, 287)) < MM);
    // Centring marks of 0.7 at the middle of each side, 5 into the frame but not at the foot.
    assertThat(lines(items, Pen.FINAL_CUT)).hasSize(4);
    assertThat(lines(items, Pen.FINAL_CUT))
        .anyMatch(
            l ->
                l.from().distanceTo(new Vec2(212.5, 277)) < MM
                    && l.to().distanceTo(new Vec2(212.5, 287)) < MM);
    assertThat(Pen.FINAL_CUT.widthMm()).isEqualTo(0.7);
  }

  /**
   * A4 upright: 175 wide about 107.5, so two fields either way; 267 high, letters A to F; on the
   * upper and right edge only.
   */
  @Test
  void fieldsOfA4StandAtTheTopAndTheRightOnly() {
    List<Item> items = DrawingFrame.items(DrawingSheetSize.of(Paper.A4));
    assertThat(texts(items).stream().map(Item.Text::content).sorted().toList())
        .containsExactly("1", "2", "3", "4", "A", "B", "C", "D", "E", "F");
    assertThat(texts(items, "1").get(0).at().x()).isCloseTo((20 + 57.5) / 2, within(MM));
    assertThat(texts(items, "1").get(0).at().y()).isGreaterThan(282);
    assertThat(texts(items, "A").get(0).at().x()).isGreaterThan(195);
  }

  /** Letters I and O are left out: 900 mm of frame have nine fields either way, A to T. */
  @Test
  void lettersThatLookLikeFiguresAreLeftOut() {
    List<Item> items = DrawingFrame.items(new DrawingSheetSize("long", 1000, 930));
    List<String> letters =
        texts(items).stream()
            .filter(t -> Character.isLetter(t.content().charAt(0)))
            .map(Item.Text::content)
            .distinct()
            .toList();
    assertThat(letters).hasSize(18).doesNotContain("I", "O").contains("A", "J", "P", "T");
  }

  private static List<Item.Text> field(String value, double heightMm, double widthMm) {
    List<Item> out = new ArrayList<>();
    FieldGrid grid =
        new FieldGrid(
            List.of(
                new FieldGrid.Row(heightMm, List.of(new FieldGrid.Field("Owner", value, 1, 3.0)))));
    grid.draw(10, 100, widthMm, out);
    return texts(out);
  }

  /** Shares of 3 and 1 of 80: 60 and 20; rows of 10 and 16 downward from 100. */
  @Test
  void fieldsShareTheRowByTheirWeights() {
    FieldGrid.Field wide = new FieldGrid.Field("Title", "Plate", 3, 3);
    FieldGrid.Field narrow = new FieldGrid.Field("Rev", "", 1, 3);
    FieldGrid grid =
        new FieldGrid(
            List.of(
                new FieldGrid.Row(10, List.of(wide, narrow)),
                new FieldGrid.Row(16, List.of(narrow))));
    assertThat(grid.heightMm()).isEqualTo(26);
    List<List<Box>> boxes = grid.draw(10, 100, 80, new ArrayList<>());
    assertThat(boxes.get(0)).containsExactly(new Box(10, 90, 70, 100), new Box(70, 90, 90, 100));
    assertThat(boxes.get(1)).containsExactly(new Box(10, 74, 90, 90));
  }

  /**
   * The label's base is 1.1 + 2.5 below the top, at 96.4; a value of 3 another 1.1 + 3 lower, at
   * 92.3; both 1.1 from the left.
   */
  @Test
  void aValueStandsUnderItsLabel() {
    List<Item.Text> texts = field("Sedge", 10, 50);
    assertThat(texts).extracting(Item.Text::content).containsExactly("Owner", "Sedge");
    assertThat(texts.get(0).at().distanceTo(new Vec2(11.1, 96.4))).isLessThan(MM);
    assertThat(texts.get(1).at().distanceTo(new Vec2(11.1, 92.3))).isLessThan(MM);
    assertThat(texts.get(1).capHeightMm()).isEqualTo(3.0);
    assertThat(field("", 10, 50)).hasSize(1);
  }

  /**
   * In a row of 16, 16 - 3.6 - 1.1 - 0.55 = 10.75 is left: two lines of 3 take 3 + 4.8 + 0.9 = 8.7,
   * three take 13.5, three of 2.5 take 2.5 + 8 + 0.75 = 11.25. So two lines, never three.
   */
  @Test
  void valuesWrapWhereTheRowIsTallEnough() {
    String words = "Sedge Lane Garage";
    double one = Lettering.width("Sedge Lane", 3.0) + 2.2;
    List<Item.Text> two = field(words, 16, one + 0.1);
    assertThat(two).extracting(Item.Text::content).containsExactly("Owner", "Sedge Lane", "Garage");
    assertThat(two.get(1).at().y() - two.get(2).at().y()).isCloseTo(4.8, within(MM));
    double narrow = Lettering.width("Sedge", 2.5) + 2.3;
    assertThatThrownBy(() -> field(words, 16, narrow))
        .isInstanceOf(NoRoomException.class)
        .hasMessageContaining("Owner: Sedge Lane Garage");
    // A row of 10 has 4.75: one line; smaller letters first, then refusal.
    double small = Lettering.width(words, 2.5) + 2.2;
    List<Item.Text> shrunk = field(words, 10, small + 0.01);
    assertThat(shrunk).hasSize(2);
    assertThat(shrunk.get(1).capHeightMm()).isEqualTo(2.5);
    assertThatThrownBy(() -> field(words, 10, small - 0.1)).isInstanceOf(NoRoomException.class);
  }

  /** Independent: 9 / 25.4 = 0.354330.... */
  @Test
  void sizesInEitherUnit() {
    DrawingLengths mm = new DrawingLengths(Lengths.in(LengthUnit.MM), false);
    assertThat(mm.figure(9)).isEqualTo("9");
    assertThat(mm.figure(65.804)).isEqualTo("65.8");
    assertThat(mm.figure(-38.256)).isEqualTo("-38.26");
    assertThat(mm.figure(-0.001)).isEqualTo("0");
    // Published: 10 H7 is 10 to 10.015 (ISO 286-2, from memory); 10.02 would be too large.
    assertThat(mm.limit(10.015)).isEqualTo("10.015");
    assertThat(mm.second(9)).isEmpty();
    assertThat(mm.lines(9)).containsExactly("9");
    assertThat(mm.named(6)).isEqualTo("6 mm");
    assertThat(mm.words()).isEqualTo("mm");
    DrawingLengths inch = new DrawingLengths(Lengths.in(LengthUnit.INCH), false);
    assertThat(inch.figure(25.4)).isEqualTo("1");
    assertThat(inch.figure(9)).isEqualTo("0.3543");
    assertThat(inch.named(9)).isEqualTo("0.3543 in");
    assertThat(inch.words()).isEqualTo("inch");
  }

  @Test
  void sizesInBothUnits() {
    DrawingLengths mm = new DrawingLengths(Lengths.in(LengthUnit.MM), true);
    assertThat(mm.lines("2\u00D7 \u2300", 9, " H13"))
        .containsExactly("2\u00D7 \u23009 H13", "[2\u00D7 \u23000.3543]");
    assertThat(mm.line(9)).isEqualTo("9 [0.3543]");
    assertThat(mm.named(9)).isEqualTo("9 mm [0.3543 in]");
    assertThat(mm.words()).isEqualTo("mm, [inch] in brackets");
    DrawingLengths inch = new DrawingLengths(Lengths.in(LengthUnit.INCH), true);
    assertThat(inch.lines(12.7)).containsExactly("0.5", "[12.7]");
    assertThat(inch.second(12.7)).isEqualTo("[12.7]");
    assertThat(inch.words()).isEqualTo("inch, [mm] in brackets");
  }

  @Test
  void placingScalesAboutItsOrigin() {
    ViewPlacing at = new ViewPlacing(new Vec2(100, 40), 0.5);
    assertThat(at.point(new Vec2(30, -20))).isEqualTo(new Vec2(115, 30));
    assertThat(at.length(9)).isEqualTo(4.5);
    Contour slot = at.contour(Contour.sweptDisc(new Vec2(0, 0), new Vec2(24, 0), 13));
    // 100 - 6.5 to 100 + 12 + 6.5, 40 -+ 6.5; area a quarter of 26 * 24 + pi 13^2.
    assertThat(slot.bounds().minX()).isCloseTo(93.5, within(MM));
    assertThat(slot.bounds().maxX()).isCloseTo(118.5, within(MM));
    assertThat(slot.bounds().minY()).isCloseTo(33.5, within(MM));
    assertThat(slot.bounds().maxY()).isCloseTo(46.5, within(MM));
    assertThat(Math.abs(slot.signedArea())).isCloseTo((26 * 24 + Math.PI * 169) / 4, within(1e-9));
    Arc circle = at.contour(Contour.circle(new Vec2(10, 10), 8)).asCircle().orElseThrow();
    assertThat(circle.centre()).isEqualTo(new Vec2(105, 45));
    assertThat(circle.radius()).isEqualTo(4);
    for (double bad : new double[] {0, -1, Double.NaN, Double.POSITIVE_INFINITY}) {
      assertThatThrownBy(() -> new ViewPlacing(Vec2.ZERO, bad))
          .isInstanceOf(IllegalArgumentException.class);
    }
  }
}
