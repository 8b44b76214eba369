package dev.towerscribe.sheet.worksheet;

import static org.assertj.core.api.Assertions.assertThat;
import static org.assertj.core.api.Assertions.within;

import dev.towerscribe.drawing.Ink;
import dev.towerscribe.drawing.Item;
import dev.towerscribe.drawing.Lettering;
import dev.towerscribe.drawing.Page;
import dev.towerscribe.drawing.Pen;
import dev.towerscribe.drawing.TurnedBox;
import dev.towerscribe.geometry.Box;
import dev.towerscribe.geometry.Vec2;
import dev.towerscribe.model.Paper;
import dev.towerscribe.model.Print;
import dev.towerscribe.model.Side;
import dev.towerscribe.quantity.LengthUnit;
import dev.towerscribe.sheet.PageRules;
import dev.towerscribe.writer.pdf.PdfProof;
import dev.towerscribe.writer.pdf.PdfWriter;
import java.io.IOException;
import java.util.ArrayList;
import java.util.Comparator;
import java.util.List;
import java.util.stream.Stream;
import org.apache.pdfbox.Loader;
import org.apache.pdfbox.pdmodel.PDDocument;
import org.apache.pdfbox.text.PDFTextStripper;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.Arguments;
import org.junit.jupiter.params.provider.EnumSource;
import org.junit.jupiter.params.provider.MethodSource;

/** The worksheet's pages on every paper and in both units. */
class WorksheetTest {
  private static final double MARGIN = 10;

  /** What the sheet is to hold to, mm: lettering, names of points, boxes. */
  private static final double WORDS = 3.5;

  private static final double NAMES = 4.5;
  private static final double BOX_HIGH = 8.0;
  private static final double BOX_WIDE = 22.0;

  /** Sums of lengths may differ by rounding, mm. */
  private static final double ROUNDING = 1e-9;

  static Stream<Arguments> everyPaperAndUnit() {
    return Stream.of(Paper.values())
        .flatMap(p -> Stream.of(LengthUnit.values()).map(u -> Arguments.of(p, u)));
  }

  private static List<Page> pages(Paper paper, LengthUnit units) {
    return Worksheet.pages(new Print(paper, MARGIN, 1, 1), units);
  }

  @ParameterizedTest
  @MethodSource("everyPaperAndUnit")
  void everythingStaysInsideTheMarginsAndApart(Paper paper, LengthUnit units) {
    List<Page> pages = pages(paper, units);
    // One page for each thing: 2 for the car, 6 for each side, 1 across it.
    assertThat(pages).hasSize(2 + 2 * 6 + 1);
    PageRules.check(pages, MARGIN);
    for (Page page : pages) {
      assertThat(page.widthMm()).isCloseTo(paper.widthMm(), within(ROUNDING));
      assertThat(page.heightMm()).isCloseTo(paper.heightMm(), within(ROUNDING));
      noTextIsCrossedByAnOutline(page);
    }
  }

  /** Boxes and outlines are chains of lines, which the common rules do not look at. */
  private static void noTextIsCrossedByAnOutline(Page page) {
    for (Item.Text text : PageRules.texts(page)) {
      TurnedBox room = Lettering.room(text).grown(-0.05);
      for (Item item : page.items()) {
        if (!PageRules.bounds(item).meets(room.bounds())) {
          continue;
        }
        if (item instanceof Item.Polyline p && p.pen() != Pen.NONE) {
          int n = p.points().size();
          for (int i = 0; i < (p.closed() ? n : n - 1); i++) {
            Vec2 from = p.points().get(i);
            Vec2 to = p.points().get((i + 1) % n);
            assertThat(room.lengthInside(from, to))
                .as(page.fileStem() + ": " + text.content() + " / " + p)
                .isLessThanOrEqualTo(0);
          }
        }
        if (item instanceof Item.Circle c && c.pen() != Pen.NONE) {
          for (int i = 0; i < 72; i++) {
            Vec2 on =
                c.centre()
                    .plus(
                        Vec2.polar(c.radiusMm(), dev.towerscribe.quantity.Angle.ofDegrees(5 * i)));
            assertThat(room.contains(on))
                .as(page.fileStem() + ": " + text.content() + " / " + c)
                .isFalse();
          }
        }
      }
    }
  }

  @ParameterizedTest
  @MethodSource("everyPaperAndUnit")
  void letteringAndBoxesAreLargeEnoughForOilyHands(Paper paper, LengthUnit units) {
    for (Page page : pages(paper, units)) {
      for (Item.Text text : PageRules.texts(page)) {
        assertThat(text.capHeightMm())
            .as(page.fileStem() + ": " + text)
            .isGreaterThanOrEqualTo(WORDS);
      }
      List<Box> boxes = boxes(page);
      assertThat(boxes.isEmpty())
          .as(page.fileStem())
          .isEqualTo(page.fileStem().contains("figures"));
      for (Box box : boxes) {
        double line = Pen.OUTLINE.widthMm();
        assertThat(box.height() - line).as(page.fileStem()).isGreaterThanOrEqualTo(BOX_HIGH);
        assertThat(box.width() - line).as(page.fileStem()).isGreaterThanOrEqualTo(BOX_WIDE);
      }
      for (int i = 0; i < boxes.size(); i++) {
        for (Box other : boxes.subList(i + 1, boxes.size())) {
          assertThat(boxes.get(i).grown(0.5).meets(other)).as(page.fileStem()).isFalse();
        }
      }
    }
  }

  /** Empty upright rectangles larger than a square to tick. */
  private static List<Box> boxes(Page page) {
    List<Box> boxes = new ArrayList<>();
    for (Item item : page.items()) {
      if (item instanceof Item.Polyline p
          && p.pen() == Pen.OUTLINE
          && p.fill() == Ink.NONE
          && p.closed()
          && p.points().size() == 4) {
        Box box = Box.around(p.points().get(0), 0).union(Box.around(p.points().get(2), 0));
        boolean tick = Math.abs(box.width() - box.height()) < ROUNDING;
        if (!tick && box.width() > 12) {
          boxes.add(box);
        }
      }
    }
    return boxes;
  }

  private static Page page(List<Page> pages, String stem) {
    return pages.stream().filter(p -> p.fileStem().equals(stem)).findFirst().orElseThrow();
  }

  @ParameterizedTest
  @EnumSource(Side.class)
  void everyPointIsNamedWithItsNumberAndKey(Side side) {
    List<Page> pages = pages(Paper.A4, LengthUnit.MM);
    for (WorksheetEnd.Point point : WorksheetEnd.Point.values()) {
      Page figures = page(pages, "survey-" + side.word() + "-figures");
      String joined = PageRules.words(List.of(figures));
      // Once in the front view and once from below; names may take two lines.
      assertThat(PageRules.words(figures).stream().filter(point.sign()::equals)).hasSize(2);
      assertThat(joined).contains(point.words(), point.key());
      Page table = page(pages, "survey-" + side.word() + "-points");
      assertThat(PageRules.words(table)).contains(point.sign(), point.words());
      assertThat(PageRules.words(List.of(table))).contains(point.key() + ": ");
      for (Page page : List.of(figures, table)) {
        assertThat(
                PageRules.texts(page).stream()
                    .filter(
                        t -> point.words().equals(t.content()) || point.sign().equals(t.content()))
                    .mapToDouble(Item.Text::capHeightMm)
                    .min()
                    .orElseThrow())
            .isGreaterThanOrEqualTo(NAMES);
      }
    }
    // Fore, out and height of nine points and two more, and three readings each of three figures.
    assertThat(boxes(page(pages, "survey-" + side.word() + "-points"))).hasSize(11 * 3 + 9);
  }

  @ParameterizedTest
  @EnumSource(Side.class)
  void everyTapeHasItsRowWithThreeBoxes(Side side) {
    List<Page> pages = pages(Paper.LETTER, LengthUnit.INCH);
    List<WorksheetPlan.Tape> tapes = new ArrayList<>(WorksheetPlan.between());
    tapes.addAll(WorksheetPlan.fromMarks());
    Page between = page(pages, "survey-" + side.word() + "-tapes");
    Page marks = page(pages, "survey-" + side.word() + "-marks");
    for (int i = 0; i < tapes.size(); i++) {
      Page page = i < WorksheetPlan.between().size() ? between : marks;
      String label = (side == Side.LEFT ? "L" : "R") + (i + 1);
      WorksheetPlan.Tape tape = tapes.get(i);
      assertThat(row(page, label))
          .contains(
              tape.from().sign() + " " + tape.from().words(),
              tape.to().sign() + " " + tape.to().words());
      assertThat(boxesInRow(page, label)).isEqualTo(3);
    }
    assertThat(boxes(marks)).hasSize(3 * (WorksheetPlan.fromMarks().size() + 2));
    Page across = page(pages, "survey-across");
    for (int i = 0; i < WorksheetPlan.across().size(); i++) {
      WorksheetPlan.Tape tape = WorksheetPlan.across().get(i);
      assertThat(row(across, "X" + (i + 1)))
          .contains(
              "LEFT " + tape.from().sign() + " " + tape.from().words(),
              "RIGHT " + tape.to().sign() + " " + tape.to().words());
      assertThat(boxesInRow(across, "X" + (i + 1))).isEqualTo(3);
    }
  }

  private static Item.Text text(Page page, String words) {
    return PageRules.texts(page).stream()
        .filter(t -> t.content().equals(words))
        .findFirst()
        .orElseThrow(() -> new AssertionError("no " + words + " on " + page.fileStem()));
  }

  /** What stands within half a row's height of a label. */
  private static List<String> row(Page page, String label) {
    double y = text(page, label).at().y();
    return PageRules.texts(page).stream()
        .filter(t -> Math.abs(t.at().y() - y) < 4.5)
        .map(Item.Text::content)
        .toList();
  }

  private static long boxesInRow(Page page, String label) {
    Item.Text text = text(page, label);
    double y = text.at().y() + text.capHeightMm() / 2;
    return boxes(page).stream().filter(b -> b.minY() < y && y < b.maxY()).count();
  }

  @ParameterizedTest
  @EnumSource(Paper.class)
  void theRightSidesFiguresAreTheLeftsMirrored(Paper paper) {
    List<Page> pages = pages(paper, LengthUnit.MM);
    for (String stem : List.of("figures", "tower")) {
      Page left = page(pages, "survey-left-" + stem);
      Page right = page(pages, "survey-right-" + stem);
      List<Item> ofLeft = figure(left);
      List<Item> ofRight = figure(right);
      assertThat(ofLeft).hasSameSizeAs(ofRight).hasSizeGreaterThan(15);
      double width = left.widthMm();
      for (int i = 0; i < ofLeft.size(); i++) {
        List<Vec2> a = sorted(corners(ofLeft.get(i)));
        List<Vec2> b =
            sorted(
                corners(ofRight.get(i)).stream().map(p -> new Vec2(width - p.x(), p.y())).toList());
        assertThat(a).hasSameSizeAs(b);
        for (int k = 0; k < a.size(); k++) {
          assertThat(b.get(k).distanceTo(a.get(k))).isLessThan(ROUNDING);
        }
      }
    }
    // A mirror image of nothing would pass too: outboard is to the right on the left's figures.
    Page left = page(pages, "survey-left-figures");
    assertThat(text(left, "OUTBOARD").at().x()).isGreaterThan(text(left, "INBOARD").at().x());
    Page right = page(pages, "survey-right-figures");
    assertThat(text(right, "OUTBOARD").at().x()).isLessThan(text(right, "INBOARD").at().x());
  }

  /** By height, then across: an arrowhead's corners change places when it is mirrored. */
  private static List<Vec2> sorted(List<Vec2> points) {
    return points.stream()
        .sorted(
            Comparator.comparingDouble((Vec2 p) -> Math.rint(p.y() * 1e6))
                .thenComparingDouble(p -> Math.rint(p.x() * 1e6)))
        .toList();
  }

  /** All but tables, head and letters: circles, and lines that are not upright rectangles. */
  private static List<Item> figure(Page page) {
    return page.items().stream()
        .filter(
            i -> i instanceof Item.Circle || i instanceof Item.Polyline p && p.points().size() != 4)
        .toList();
  }

  private static List<Vec2> corners(Item item) {
    return item instanceof Item.Circle c ? List.of(c.centre()) : ((Item.Polyline) item).points();
  }

  @Test
  void theTargetsLieWhereTheSampleHasItsPoints() {
    for (Side side : Side.values()) {
      Page page = page(pages(Paper.A4, LengthUnit.MM), "survey-" + side.word() + "-figures");
      List<Vec2> targets =
          page.items().stream()
              .filter(i -> i instanceof Item.Circle c && c.radiusMm() == 0.6)
              .map(i -> ((Item.Circle) i).centre())
              .toList();
      int points = WorksheetEnd.Point.values().length;
      assertThat(targets).hasSize(2 * points);
      // Independent: the sample's own coordinates, out to the right on the left side.
      double outward = side == Side.LEFT ? 1 : -1;
      WorksheetEnd.Point ball = WorksheetEnd.Point.BALL_JOINT;
      WorksheetEnd.Point top = WorksheetEnd.Point.TOP;
      Vec2 onPage = targets.get(top.ordinal()).minus(targets.get(ball.ordinal()));
      double dy = StrutSample.at(top).y() - StrutSample.at(ball).y();
      double dz = StrutSample.at(top).z() - StrutSample.at(ball).z();
      assertThat(onPage.x() / onPage.y()).isCloseTo(outward * dy / dz, within(1e-9));
      WorksheetEnd.Point rear = WorksheetEnd.Point.ARM_REAR;
      Vec2 below = targets.get(points + rear.ordinal()).minus(targets.get(points + ball.ordinal()));
      double dx = StrutSample.at(rear).x() - StrutSample.at(ball).x();
      double dyRear = StrutSample.at(rear).y() - StrutSample.at(ball).y();
      assertThat(below.x() / below.y()).isCloseTo(outward * dyRear / dx, within(1e-9));
      // Rearward is down the page, inboard is away from outboard.
      assertThat(below.y()).isNegative();
      assertThat(below.x() * outward).isNegative();
    }
  }

  @ParameterizedTest
  @EnumSource(Paper.class)
  void theSideIsLargeAndInItsOwnCorner(Paper paper) {
    for (Page page : pages(paper, LengthUnit.MM)) {
      for (Side side : Side.values()) {
        String word = side.word().toUpperCase(java.util.Locale.ROOT);
        if (!page.fileStem().contains(side.word())) {
          assertThat(
                  PageRules.texts(page).stream()
                      .filter(t -> t.content().equals(word) && t.capHeightMm() > 10))
              .isEmpty();
          continue;
        }
        Item.Text largest =
            PageRules.texts(page).stream()
                .max(Comparator.comparingDouble(Item.Text::capHeightMm))
                .orElseThrow();
        assertThat(largest.content()).isEqualTo(word);
        assertThat(largest.capHeightMm()).isGreaterThanOrEqualTo(12);
        boolean atLeft = largest.at().x() < page.widthMm() / 2;
        assertThat(atLeft).isEqualTo(side == Side.LEFT);
      }
    }
  }

  @Test
  void cautionsComeFirst() {
    List<Page> pages = pages(Paper.A4, LengthUnit.MM);
    assertThat(PageRules.words(pages.subList(0, 1)))
        .contains(
            "NEVER under a car on a jack alone",
            "LEAVE THE NUT ON THE STRUT ROD ALONE",
            "Level ground",
            "Ride height",
            "INDG434");
    for (int i = 0; i < pages.size(); i++) {
      assertThat(PageRules.words(pages.get(i)))
          .contains("Car", "Date", "By", "Page " + (i + 1) + " of " + pages.size());
    }
  }

  @Test
  void theUnitIsSaidAndTheUncertaintiesAreInIt() {
    String mm = PageRules.words(pages(Paper.A4, LengthUnit.MM));
    String inch = PageRules.words(pages(Paper.A4, LengthUnit.INCH));
    assertThat(mm).contains("Lengths in mm.").doesNotContain("Lengths in inches.");
    // Independent: 1.5 / 25.4 = 0.0591, 0.1 / 25.4 = 0.0039, 0.5 / 25.4 = 0.0197.
    assertThat(inch).contains("Lengths in inches.", "0.059", "0.004", "0.02");
  }

  @ParameterizedTest
  @MethodSource("everyPaperAndUnit")
  void sameBytesTwiceAndTheyReadBack(Paper paper, LengthUnit units) throws IOException {
    List<Page> pages = pages(paper, units);
    byte[] pdf = PdfWriter.write("Survey worksheet", pages);
    assertThat(PdfWriter.write("Survey worksheet", pages(paper, units))).isEqualTo(pdf);
    assertThat(PdfProof.check(pdf, pages)).isEmpty();
    try (PDDocument document = Loader.loadPDF(pdf)) {
      String text = new PDFTextStripper().getText(document).replaceAll("\\s+", " ");
      for (WorksheetEnd.Point point : WorksheetEnd.Point.values()) {
        assertThat(text).contains(point.words(), point.key());
      }
      assertThat(text).contains("L24", "R24", "X8", "Page 15 of 15");
    }
  }
}
