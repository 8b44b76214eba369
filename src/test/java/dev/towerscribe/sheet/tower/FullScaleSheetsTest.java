package dev.towerscribe.sheet.tower;

import static org.assertj.core.api.Assertions.assertThat;
import static org.assertj.core.api.Assertions.within;

import dev.towerscribe.drawing.Align;
import dev.towerscribe.drawing.Item;
import dev.towerscribe.drawing.Layer;
import dev.towerscribe.drawing.LayerPen;
import dev.towerscribe.drawing.Lettering;
import dev.towerscribe.drawing.Page;
import dev.towerscribe.drawing.Proof;
import dev.towerscribe.drawing.TextBlock;
import dev.towerscribe.drawing.TurnedBox;
import dev.towerscribe.finding.Finding;
import dev.towerscribe.finding.Severity;
import dev.towerscribe.geometry.Box;
import dev.towerscribe.geometry.Contour;
import dev.towerscribe.geometry.Region;
import dev.towerscribe.geometry.Vec2;
import dev.towerscribe.layout.PlacedHole;
import dev.towerscribe.layout.SideLayout;
import dev.towerscribe.model.Crown;
import dev.towerscribe.model.KeepOut;
import dev.towerscribe.model.Landmark;
import dev.towerscribe.model.Paper;
import dev.towerscribe.model.Print;
import dev.towerscribe.model.Side;
import dev.towerscribe.quantity.Angle;
import dev.towerscribe.quantity.LengthUnit;
import dev.towerscribe.quantity.Lengths;
import dev.towerscribe.quantity.Tolerances;
import dev.towerscribe.sheet.SheetFixtures;
import dev.towerscribe.sheet.text.JobInfo;
import java.time.LocalDate;
import java.util.ArrayList;
import java.util.List;
import java.util.Map;
import java.util.Optional;
import java.util.stream.Stream;
import org.junit.jupiter.api.Test;

/** Full-scale pages by coordinates; no picture is compared. */
class FullScaleSheetsTest {
  private static final double MARGIN = 10;

  private record Case(String name, SideLayout layout, JobInfo info, List<Page> pages) {
    Case(String name, SideLayout layout, JobInfo info) {
      this(name, layout, info, SheetFixtures.fullScale(layout, info));
    }

    @Override
    public String toString() {
      return name;
    }
  }

  private static Landmark landmark(String name, double fore, double in) {
    return new Landmark(name, new Vec2(fore, in), 6);
  }

  private static List<Landmark> crowd() {
    List<Landmark> crowd = new ArrayList<>();
    for (int i = 0; i < 9; i++) {
      double a = i * 0.7;
      crowd.add(landmark("feature number " + i, 64 * Math.cos(a), 64 * Math.sin(a)));
    }
    return crowd;
  }

  /** Drawn once for all tests; pages do not change. */
  private static final List<Case> CASES = cases();

  private static List<Case> cases() {
    JobInfo inches =
        new JobInfo(
            "A car with a long name that goes on and on, and then a little further still",
            Optional.of(LocalDate.of(2026, 4, 1)),
            LengthUnit.INCH,
            "M3RT",
            List.of());
    List<Case> cases = new ArrayList<>();
    for (Side side : Side.values()) {
      for (Paper paper : Paper.values()) {
        cases.add(
            new Case(
                side + " " + paper,
                SheetFixtures.layout(SheetFixtures.plain(side).with(SheetFixtures.print(paper))),
                SheetFixtures.info()));
      }
      cases.add(
          new Case(
              side + " inches, slotted",
              SheetFixtures.layout(SheetFixtures.plain(side).slotted()),
              inches));
      cases.add(
          new Case(
              side + " crowded, stop accepted",
              SheetFixtures.layout(SheetFixtures.plain(side).withBolts(6).withLandmarks(crowd())),
              SheetFixtures.accepted(1)));
      cases.add(
          new Case(
              side + " long stop",
              SheetFixtures.layout(SheetFixtures.plain(side)),
              SheetFixtures.longStop()));
      cases.add(
          new Case(
              side + " tiled, four stops",
              SheetFixtures.layout(
                  SheetFixtures.plain(side)
                      .withLandmarks(
                          List.of(landmark("far", 130, -96), landmark("near", 38, -52)))),
              SheetFixtures.accepted(4)));
    }
    return cases;
  }

  private static Stream<Item> items(Page page) {
    return Stream.concat(
        page.items().stream(), page.window().stream().flatMap(w -> w.items().stream()));
  }

  private static List<Item.Text> texts(Page page) {
    return items(page).filter(Item.Text.class::isInstance).map(Item.Text.class::cast).toList();
  }

  private static String words(Page page) {
    return String.join("\n", texts(page).stream().map(Item.Text::content).toList());
  }

  /** From the base line's tails to the capitals' tops, over the width of the words. */
  private static TurnedBox box(Item.Text text) {
    double width = Lettering.width(text.content(), text.capHeightMm());
    boolean tails = text.content().chars().anyMatch(c -> "gjpqyQ,;()[]{}_/".indexOf(c) >= 0);
    double low = tails ? -TextBlock.TAIL * text.capHeightMm() : 0;
    double start =
        text.align() == Align.START ? 0 : text.align() == Align.MIDDLE ? -width / 2 : -width;
    Vec2 along = Vec2.polar(1, text.turn());
    Vec2 centre =
        text.at()
            .plus(along.times(start + width / 2))
            .plus(along.quarterTurn().times((low + text.capHeightMm()) / 2));
    return new TurnedBox(centre, width / 2, (text.capHeightMm() - low) / 2, text.turn());
  }

  @Test
  void letteringIsLargeEnoughInsideThePrintableAreaAndNeverOverlaps() {
    for (Case each : CASES) {
      for (Page page : each.pages()) {
        Box printable = new Box(0, 0, page.widthMm(), page.heightMm()).grown(-MARGIN + 1e-6);
        List<Item.Text> texts = texts(page);
        for (int i = 0; i < texts.size(); i++) {
          Item.Text text = texts.get(i);
          String where = each + ", " + page.fileStem() + ": " + text.content();
          assertThat(text.capHeightMm()).as(where).isGreaterThanOrEqualTo(2.5);
          assertThat(printable.contains(box(text).bounds())).as(where).isTrue();
          for (int j = 0; j < i; j++) {
            assertThat(box(text).grown(-0.05).overlaps(box(texts.get(j))))
                .as(where + " / " + texts.get(j).content())
                .isFalse();
          }
        }
      }
    }
  }

  @Test
  void letteringInTheDrawingCoversNoHoleAndStaysInsideTheWindow() {
    for (Case each : CASES) {
      for (Page page : each.pages()) {
        Page.Window window = page.window().orElseThrow();
        List<Item.Circle> holes =
            window.items().stream()
                .filter(Item.Circle.class::isInstance)
                .map(Item.Circle.class::cast)
                .filter(c -> c.layer() == Layer.HOLES && c.radiusMm() < 5)
                .toList();
        for (Item item : window.items()) {
          if (item instanceof Item.Text text) {
            String where = each + ", " + page.fileStem() + ": " + text.content();
            assertThat(window.box().contains(box(text).bounds())).as(where).isTrue();
            for (Item.Circle hole : holes) {
              assertThat(box(text).distanceTo(hole.centre()))
                  .as(where)
                  .isGreaterThan(hole.radiusMm());
            }
          }
        }
      }
    }
  }

  @Test
  void sideAndFaceAreTenMillimetresHighAndWide() {
    for (Case each : CASES) {
      for (Page page : each.pages()) {
        String side = each.layout().side().name();
        String face =
            page.fileStem().contains("underside")
                ? "UNDERSIDE"
                : page.fileStem().contains("topside") ? "TOPSIDE" : "BRACKET";
        for (String word : List.of(side, face)) {
          Item.Text text =
              texts(page).stream().filter(t -> t.content().equals(word)).findFirst().orElseThrow();
          assertThat(text.capHeightMm())
              .as(each + " " + page.fileStem() + " " + word)
              .isGreaterThanOrEqualTo(10);
        }
      }
    }
  }

  @Test
  void everyPageSaysWhatItMust() {
    for (Case each : CASES) {
      for (Page page : each.pages()) {
        String where = each + " " + page.fileStem();
        assertThat(page.fullScale()).isTrue();
        assertThat(words(page).replace('\n', ' '))
            .as(where)
            .contains("FORWARD", "OUTBOARD", "MEASURE THE BARS", "measure me before you tape this")
            .contains("Cutting is final. Read the caution page first.", "Scale 1:1")
            .contains("Pack " + each.info().packMark(), "Stop. Measure");
        assertThat(words(page).contains("STOP ACCEPTED"))
            .as(where)
            .isEqualTo(!each.info().acceptedStops().isEmpty());
        each.info()
            .acceptedStops()
            .forEach(s -> assertThat(words(page)).as(where).contains(s.id()));
        assertThat(words(page))
            .as(where)
            .contains(each.info().date().isPresent() ? "Date 2026-04-01" : "Date ________");
      }
    }
  }

  /** As exact as the findings, and in the job's unit: 15.96 must not read as its limit 16. */
  @Test
  void theBandOfAnAcceptedStopGivesItsFigureInTheJobsUnit() {
    Finding stop =
        new Finding(
            "left.edge-cut.B", Severity.STOP, "bolt B, final cut", 15.96, 16, "mm", "job", "Say.");
    // Independent: 15.96 / 25.4 = 0.6283 and 16 / 25.4 = 0.6299, rounded.
    Map<LengthUnit, String> expected =
        Map.of(LengthUnit.MM, "15.96 mm, limit 16.00", LengthUnit.INCH, "0.628 in, limit 0.630");
    expected.forEach(
        (units, words) -> {
          StopBand band = new StopBand(List.of(stop), Lengths.in(units), 190);
          List<Item> items = new ArrayList<>();
          band.draw(new Box(0, 0, 190, band.heightMm()), LayerPen.notes(items));
          assertThat(items)
              .filteredOn(Item.Text.class::isInstance)
              .extracting(i -> ((Item.Text) i).content())
              .anyMatch(t -> t.contains(words));
        });
  }

  /** Where names do not fit, more tiles with more overlap are tried: they must cover as well. */
  @Test
  void finerTilesStillCoverAndOverlap() {
    Box whole = new Box(-130, -90, 150, 260);
    Tiles fewest = Tiles.of(whole, new Box(0, 0, 170, 190), 20, 1);
    assertThat(fewest.andFiner()).hasSize(4).startsWith(fewest);
    for (Tiles tiles : fewest.andFiner()) {
      Box first = tiles.window(0, 0);
      Box last = tiles.window(tiles.rows() - 1, tiles.columns() - 1);
      assertThat(first.union(last).grown(1e-9).contains(whole)).as(tiles.toString()).isTrue();
      for (int r = 1; r < tiles.rows(); r++) {
        assertThat(tiles.window(r, 0).maxY() - tiles.window(r - 1, 0).minY())
            .isGreaterThanOrEqualTo(Tiles.LEAST_OVERLAP_MM);
      }
      for (int c = 1; c < tiles.columns(); c++) {
        assertThat(tiles.window(0, c - 1).maxX() - tiles.window(0, c).minX())
            .isGreaterThanOrEqualTo(Tiles.LEAST_OVERLAP_MM);
      }
    }
  }

  /** The foot's narrower column, beside the fore-aft line, holds the longest lines at 2.5 mm. */
  @Test
  void theFootHoldsItsLinesBesideTheForeAftLine() {
    for (String line :
        List.of(
            "Right tower, underside, tile A2. Scale 1:1",
            "Printer: 1.0288 across, 0.9888 along",
            "Cutting is final. Read the caution page first.")) {
      assertThat(Lettering.width(line, 2.5))
          .as(line)
          .isLessThan(SheetBorder.FOOT_LEFT_MM - SheetBorder.LINE_GAP_MM);
    }
  }

  @Test
  void namesStandOnTheSheets() {
    SideLayout layout = SheetFixtures.layout(SheetFixtures.plain(Side.LEFT));
    List<Page> pages = SheetFixtures.fullScale(layout, SheetFixtures.info());
    assertThat(pages)
        .extracting(Page::fileStem)
        .containsExactly("left-underside", "left-topside", "left-notch-1");
    for (Page page : pages.subList(0, 2)) {
      // Independent: the mark's radius 52 less 3 kept, and 2.5 less; 90 - 55 = 35 degrees.
      assertThat(words(page))
          .contains("FINAL CUT", "R 49.0 mm", "ROUGH CUT", "R 46.5 mm", "A\n", "B\n", "C\n")
          .contains("drill 9.0 mm", "KEEP OUT:", "spot weld", "drain hole", "seam end")
          .contains("35.0\u00b0", "55.0\u00b0", "waste: cut away", "fit this edge");
    }
  }

  /** The outboard arrow and the holes must agree: hole C of the fixture lies outboard. */
  @Test
  void theOutboardArrowPointsAwayFromInboard() {
    for (Case each : CASES) {
      for (Page page : each.pages()) {
        boolean below = page.fileStem().contains("underside");
        boolean left = each.layout().side() == Side.LEFT;
        Item.Text outboard =
            texts(page).stream()
                .filter(t -> t.content().equals("OUTBOARD"))
                .findFirst()
                .orElseThrow();
        boolean atTheRight = outboard.at().x() > page.widthMm() / 2;
        assertThat(atTheRight).as(each + " " + page.fileStem()).isEqualTo(left == below);
      }
    }
  }

  @Test
  void everyHoleIsProvedWhereItBelongs() {
    for (Side side : Side.values()) {
      SideLayout layout = SheetFixtures.layout(SheetFixtures.plain(side));
      List<Page> pages = SheetFixtures.fullScale(layout, SheetFixtures.info());
      for (Page page : pages.subList(0, 2)) {
        List<Proof.RoundHole> proofs = rounds(page);
        PlacedHole a = layout.holes().get(0);
        Vec2 from = centre(proofs, "hole A");
        boolean toTheRight = page.fileStem().contains("topside") == (side == Side.LEFT);
        for (PlacedHole hole : layout.holes()) {
          Vec2 apart = hole.at().minus(a.at());
          Vec2 found = centre(proofs, "hole " + hole.name()).minus(from);
          assertThat(found.y()).isCloseTo(apart.x(), within(Tolerances.COMPUTED_MM));
          assertThat(found.x())
              .isCloseTo(toTheRight ? apart.y() : -apart.y(), within(Tolerances.COMPUTED_MM));
        }
        assertThat(proofs)
            .extracting(Proof.RoundHole::name)
            .contains("pilot A", "starter 1", "starter 2", "landmark drain hole", "final cut")
            .contains("rough cut", "opening");
        assertThat(page.proofs().stream().filter(Proof.Bar.class::isInstance).count()).isEqualTo(6);
      }
    }
  }

  private static List<Proof.RoundHole> rounds(Page page) {
    return page.proofs().stream()
        .filter(Proof.RoundHole.class::isInstance)
        .map(Proof.RoundHole.class::cast)
        .toList();
  }

  private static Vec2 centre(List<Proof.RoundHole> proofs, String name) {
    return proofs.stream().filter(p -> p.name().equals(name)).findFirst().orElseThrow().centre();
  }

  /** Drawn circles and calculated ones are two computations; they must agree on a dome as well. */
  @Test
  void drawnCirclesAreTheProvedOnes() {
    for (boolean domed : new boolean[] {false, true}) {
      var wish = SheetFixtures.plain(Side.RIGHT);
      SideLayout layout = SheetFixtures.layout(domed ? wish.with(new Crown(140, 9)) : wish);
      for (Page page : SheetFixtures.fullScale(layout, SheetFixtures.info())) {
        List<Item.Circle> circles =
            items(page).filter(Item.Circle.class::isInstance).map(Item.Circle.class::cast).toList();
        for (Proof.RoundHole proof : rounds(page)) {
          if (proof.name().endsWith("cut") || proof.name().equals("opening")) {
            continue;
          }
          assertThat(circles)
              .as(page.fileStem() + " " + proof.name())
              .anyMatch(
                  c ->
                      c.centre().distanceTo(proof.centre()) < Tolerances.COMPUTED_MM
                          && Math.abs(c.radiusMm() - proof.radiusMm()) < Tolerances.COMPUTED_MM);
        }
      }
    }
  }

  @Test
  void everyEssentialShowsWholeOnSomeTile() {
    for (Paper paper : List.of(Paper.A4, Paper.LETTER)) {
      var wish =
          SheetFixtures.plain(Side.LEFT)
              .with(SheetFixtures.print(paper))
              .withLandmarks(List.of(landmark("far", 131, -120), landmark("other", -140, 90)));
      SideLayout layout = SheetFixtures.layout(wish);
      List<Page> pages =
          SheetFixtures.fullScale(layout, SheetFixtures.info()).stream()
              .filter(p -> p.fileStem().startsWith("left-underside"))
              .toList();
      assertThat(pages).hasSizeGreaterThan(1);
      assertThat(pages.get(0).fileStem()).isEqualTo("left-underside-a1");
      List<String> proved =
          pages.stream().flatMap(p -> rounds(p).stream()).map(Proof.RoundHole::name).toList();
      assertThat(proved)
          .contains("hole A", "hole B", "hole C", "landmark far", "landmark other")
          .contains("starter 1", "starter 2");
      for (Page page : pages) {
        assertThat(words(page)).contains("UNDERSIDE", "LEFT", "OUTBOARD", "tile ", "of 4");
      }
    }
  }

  @Test
  void tilesOverlapCoverEverythingAndShareTheirCrosses() {
    Box whole = new Box(-130, -140, 121, 150);
    Tiles tiles = Tiles.of(whole, new Box(0, 0, 176, 198), 19, 1);
    assertThat(tiles.rows()).isEqualTo(2);
    assertThat(tiles.columns()).isEqualTo(2);
    for (double x = -130; x <= 121; x += 0.5) {
      for (double y = -140; y <= 150; y += 0.5) {
        Box thing = Box.around(new Vec2(x, y), 19.0 / 2);
        Box cut =
            new Box(
                Math.max(thing.minX(), -130),
                Math.max(thing.minY(), -140),
                Math.min(thing.maxX(), 121),
                Math.min(thing.maxY(), 150));
        boolean seen = false;
        for (int r = 0; r < 2; r++) {
          for (int c = 0; c < 2; c++) {
            seen |= tiles.window(r, c).grown(1e-9).contains(cut);
          }
        }
        assertThat(seen).as(x + ", " + y).isTrue();
      }
    }
    Box a1 = tiles.window(0, 0);
    Box a2 = tiles.window(0, 1);
    assertThat(a1.maxX() - a2.minX()).isGreaterThanOrEqualTo(Tiles.LEAST_OVERLAP_MM);
    assertThat(
            tiles.joins(List.of()).stream()
                .filter(j -> a1.contains(j.at()) && a2.contains(j.at()))
                .count())
        .isGreaterThanOrEqualTo(2);
  }

  @Test
  void aCompensatedPrintSaysSo() {
    // Independent: as given.
    Print print = new Print(Paper.A4, 10, 0.985, 1.0123);
    for (Page page :
        SheetFixtures.fullScale(
            SheetFixtures.layout(SheetFixtures.plain(Side.LEFT).with(print)),
            SheetFixtures.info())) {
      assertThat(words(page).replace('\n', ' ')).contains("Printer: 0.985 across, 1.0123 along");
      assertThat(page.scale().across()).isEqualTo(0.985);
      assertThat(page.scale().along()).isEqualTo(1.0123);
    }
  }

  @Test
  void aPrintThatUndoesASkewSaysSo() {
    Print print = new Print(Paper.A4, 10, 0.985, 1.0123, Angle.ofDegrees(-0.4));
    for (Page page :
        SheetFixtures.fullScale(
            SheetFixtures.layout(SheetFixtures.plain(Side.LEFT).with(print)),
            SheetFixtures.info())) {
      assertThat(words(page).replace('\n', ' '))
          .contains("Printer: 0.985 across, 1.0123 along, skew -0.4\u00b0");
      assertThat(page.scale().skew()).isEqualTo(Angle.ofDegrees(-0.4));
    }
  }

  @Test
  void barsAreAHundredMillimetresOrFourInches() {
    for (Case each : CASES) {
      // Independent: 4 * 25.4.
      double length = each.info().units() == LengthUnit.INCH ? 101.6 : 100.0;
      for (Page page : each.pages()) {
        List<Proof.Bar> bars =
            page.proofs().stream()
                .filter(Proof.Bar.class::isInstance)
                .map(Proof.Bar.class::cast)
                .toList();
        Proof.Bar across = bars.get(0);
        Proof.Bar along = bars.get(1);
        assertThat(across.from()).isEqualTo(along.from());
        assertThat(across.to().minus(across.from()))
            .satisfies(v -> assertThat(v.x()).isCloseTo(length, within(1e-9)))
            .satisfies(v -> assertThat(v.y()).isZero());
        assertThat(along.to().minus(along.from()))
            .satisfies(v -> assertThat(v.y()).isCloseTo(length, within(1e-9)))
            .satisfies(v -> assertThat(v.x()).isZero());
        for (Proof.Bar bar : List.of(across, along)) {
          assertThat(items(page))
              .anyMatch(
                  i ->
                      i instanceof Item.Line l
                          && l.layer() == Layer.CHECK_BARS
                          && l.from().equals(bar.from())
                          && l.to().equals(bar.to()));
        }
      }
    }
  }

  @Test
  void nothingToCutAndOddKeepOutsAreDrawnAllTheSame() {
    KeepOut seam =
        new KeepOut(
            "seam",
            Contour.polygon(
                List.of(
                    new Vec2(-80, 40), new Vec2(-60, 58), new Vec2(-70, 65), new Vec2(-85, 50))),
            3);
    SideLayout some =
        SheetFixtures.layout(SheetFixtures.plain(Side.LEFT).withKeepOuts(List.of(seam)));
    SideLayout none =
        new SideLayout(
            some.job(),
            some.holes(),
            Region.EMPTY,
            Region.EMPTY,
            List.of(),
            some.sweep(),
            List.of(),
            List.of(),
            some.rest(),
            List.of());
    List<Page> pages = SheetFixtures.fullScale(none, SheetFixtures.info());
    assertThat(pages).hasSize(2);
    assertThat(words(pages.get(0))).doesNotContain("FINAL CUT").contains("seam");
  }

  @Test
  void theRulerIsTrueAndSaysWhatToWrite() {
    for (Paper paper : Paper.values()) {
      Page page = RulerPage.page(SheetFixtures.print(paper), Optional.of(SheetFixtures.info()));
      assertThat(page.fileStem()).isEqualTo("print-check");
      List<Item.Text> texts = texts(page);
      for (int i = 0; i < texts.size(); i++) {
        Item.Text text = texts.get(i);
        assertThat(text.capHeightMm()).isGreaterThanOrEqualTo(2.5);
        assertThat(
                new Box(0, 0, page.widthMm(), page.heightMm())
                    .grown(-MARGIN)
                    .contains(box(text).bounds()))
            .as(paper + " " + text.content())
            .isTrue();
        for (int j = 0; j < i; j++) {
          assertThat(box(text).grown(-0.05).overlaps(box(texts.get(j))))
              .as(paper + " " + text.content() + " / " + texts.get(j).content())
              .isFalse();
        }
      }
      assertThat(words(page)).contains("100 %", "calipers", "[print]", "3 %", "Pack K7Q2");
      assertThat(page.proofs()).hasSize(7);
    }
  }

  @Test
  void theRulersExampleIsWorkedRight() {
    Page page = RulerPage.page(SheetFixtures.print(Paper.A4), Optional.empty());
    // Independent: 167.5 / 170 = 0.985294...
    assertThat(words(page).replace('\n', ' ')).contains("167.5 / 170.0 = 0.9853");
    assertThat(words(page)).contains("scale = { across = 0.9853, along = 1.0000 }");
  }

  @Test
  void thesePagesComeOutTheSameEveryTime() {
    SideLayout layout = SheetFixtures.layout(SheetFixtures.plain(Side.LEFT));
    assertThat(SheetFixtures.fullScale(layout, SheetFixtures.info()))
        .isEqualTo(SheetFixtures.fullScale(layout, SheetFixtures.info()));
  }
}
