package dev.towerscribe.sheet.report;

import static org.assertj.core.api.Assertions.assertThat;
import static org.assertj.core.api.Assertions.within;

import dev.towerscribe.SampleJobs;
import dev.towerscribe.drawing.Ink;
import dev.towerscribe.drawing.Item;
import dev.towerscribe.drawing.Layer;
import dev.towerscribe.drawing.Page;
import dev.towerscribe.finding.Finding;
import dev.towerscribe.finding.Severity;
import dev.towerscribe.geometry.Vec2;
import dev.towerscribe.layout.PlacedHole;
import dev.towerscribe.layout.SideLayout;
import dev.towerscribe.layout.Span;
import dev.towerscribe.model.Paper;
import dev.towerscribe.model.Print;
import dev.towerscribe.model.Side;
import dev.towerscribe.quantity.Angle;
import dev.towerscribe.quantity.LengthUnit;
import dev.towerscribe.quantity.Lengths;
import dev.towerscribe.sheet.PageRules;
import dev.towerscribe.sheet.TextPageSamples;
import dev.towerscribe.sheet.text.JobInfo;
import dev.towerscribe.sheet.text.TextStyle;
import java.util.ArrayList;
import java.util.List;
import java.util.SortedSet;
import java.util.TreeSet;
import java.util.regex.Matcher;
import java.util.regex.Pattern;
import java.util.stream.IntStream;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.EnumSource;
import org.junit.jupiter.params.provider.ValueSource;

class TextPagesTest {
  private static List<Page> all(SideLayout layout, JobInfo info) {
    List<Page> pages = new ArrayList<>(CautionPage.pages(layout.job().print(), info));
    pages.addAll(FindingsPages.pages(layout, info));
    pages.addAll(StepsPage.pages(layout, info));
    pages.addAll(CaliperPage.pages(layout, info));
    return pages;
  }

  @ParameterizedTest
  @EnumSource(Paper.class)
  void everythingStaysInsideTheMarginsAndApart(Paper paper) {
    for (Side side : Side.values()) {
      PageRules.check(
          all(TextPageSamples.plain(side, paper), TextPageSamples.info(LengthUnit.MM, List.of())),
          10);
      SideLayout full = TextPageSamples.full(side, paper, LengthUnit.INCH);
      PageRules.check(all(full, TextPageSamples.longInfo(TextPageSamples.stops(1))), 10);
      SideLayout many =
          TextPageSamples.with(
              TextPageSamples.eight(side, paper, false), TextPageSamples.findings(40));
      PageRules.check(all(many, TextPageSamples.longInfo(TextPageSamples.stops(5))), 10);
      SideLayout longNames =
          TextPageSamples.with(TextPageSamples.eight(side, paper, true), TextPageSamples.stops(40));
      PageRules.check(all(longNames, TextPageSamples.longInfo(TextPageSamples.stops(40))), 10);
    }
  }

  @ParameterizedTest
  @ValueSource(doubles = {0, 5, 15, 20})
  void marginsAreKept(double margin) {
    SideLayout layout =
        TextPageSamples.laidOut(
            TextPageSamples.on(
                SampleJobs.side(Side.LEFT, SampleJobs.fullTower(), SampleJobs.plate(false)),
                Paper.LETTER,
                margin),
            LengthUnit.MM);
    PageRules.check(all(layout, TextPageSamples.longInfo(TextPageSamples.stops(3))), margin);
  }

  @Test
  void samePagesTwice() {
    SideLayout layout = TextPageSamples.full(Side.RIGHT, Paper.A4, LengthUnit.MM);
    JobInfo info = TextPageSamples.longInfo(TextPageSamples.stops(9));
    assertThat(all(layout, info)).isEqualTo(all(layout, info));
  }

  @Test
  void dateIsPrintedOrLeftToFillIn() {
    Print print = new Print(Paper.A4, 10, 1, 1);
    assertThat(
            PageRules.words(
                CautionPage.pages(print, TextPageSamples.info(LengthUnit.MM, List.of()))))
        .contains("Date ________");
    assertThat(PageRules.words(CautionPage.pages(print, TextPageSamples.longInfo(List.of()))))
        .contains("Date 2026-02-28")
        .contains("Pack 7F3A-91C2")
        .contains("Wren hatch with the Wednesday evening club, road and TRACK 1");
  }

  // ---- caution page

  @ParameterizedTest
  @EnumSource(Paper.class)
  void cautionIsTwoPagesWithItsSourcesAndTheStopList(Paper paper) {
    List<Page> pages =
        CautionPage.pages(
            new Print(paper, 10, 1, 1), TextPageSamples.info(LengthUnit.MM, List.of()));
    assertThat(pages).extracting(Page::fileStem).containsExactly("caution", "caution-2");
    assertThat(pages.get(0).label()).isEqualTo("C");
    // Words of the published sources named beside the warnings.
    assertThat(PageRules.words(pages))
        .contains(
            "STOP: ASK A QUALIFIED BODY OR CHASSIS SHOP WHEN",
            "cannot be put back",
            "INDG434",
            "INDG280",
            "1910.133",
            "43.13-1B",
            "A780",
            "FMVSS",
            "30122",
            "certifies nothing");
    // Read lying under a car: body lettering of 3.3 mm even on the smallest paper, a frozen bound.
    assertThat(
            PageRules.texts(pages.get(1)).stream()
                .filter(t -> t.content().contains("Battery off"))
                .findFirst()
                .orElseThrow()
                .capHeightMm())
        .isGreaterThanOrEqualTo(3.3);
  }

  /** Before a saw is switched on: is this a car, a tower, a sheet to leave to others? */
  @Test
  void theFirstPageSendsTheWrongCarToAShop() {
    String first = words(cautions().subList(0, 1));
    String box = first.substring(first.indexOf("STOP: ASK"), first.indexOf("WHAT THIS DOES"));
    assertThat(box)
        .contains("hybrid or electric", "high voltage", "air suspension", "cast", "aluminium")
        .contains("bonded", "layered (sandwich)", "ultra-high-strength")
        .contains("cracked, rusted or repaired", "the law forbids it");
    assertThat(first).contains("can fail a roadworthiness inspection");
  }

  @Test
  void theSecondPageSaysHowNotToBeHurt() {
    String second = words(cautions().subList(1, 2));
    assertThat(second)
        .contains("Battery off, then wait", "pretensioners stay live", "the vehicle maker says")
        .contains("Goggles for work overhead", "face shield", "grinding")
        .contains("P2 or N95", "Old underseal may hold tar or asbestos")
        .contains("30\u00a0minutes after hot work");
  }

  /** What each source is for, and no more; and whose torque goes where. */
  @Test
  void noSourceIsAskedForMoreThanItSays() {
    String second = words(cautions().subList(1, 2));
    assertThat(second)
        .contains("is taken out is stored with care.\u00a0[3]", "INDG280, for that alone")
        .contains("by the paint maker's sheet", "hot-dip galvanising was cut", "standard.\u00a0[8]")
        .contains("43.13-1B, 4-58 and 4-59, on aluminium: by analogy")
        .contains("plate bolts by the plate's maker or an engineer")
        .contains("strut and wheel nuts by the vehicle maker");
    SideLayout layout = TextPageSamples.full(Side.LEFT, Paper.A4, LengthUnit.MM);
    String steps = words(StepsPage.pages(layout, TextPageSamples.info(LengthUnit.MM, List.of())));
    assertThat(steps)
        .contains("torque by the plate's maker or an engineer")
        .contains("Strut and wheel nuts by the vehicle maker's figures")
        .contains("Where hot-dip galvanising was cut, ASTM A780", "it covers nothing else")
        .contains("on aluminium: by analogy");
  }

  /** A number in brackets without a source, or a source that nothing rests on, misleads. */
  @Test
  void everyNumberOnTheCautionPagesHasItsSource() {
    String all = words(cautions());
    int at = all.indexOf("Sources:");
    SortedSet<Integer> cited = new TreeSet<>();
    Matcher in = Pattern.compile("\\[(\\d+)\\]").matcher(all.substring(0, at));
    while (in.find()) {
      cited.add(Integer.valueOf(in.group(1)));
    }
    SortedSet<Integer> listed = new TreeSet<>();
    Matcher of = Pattern.compile("[:.] (\\d+)\u00a0(?=[A-Z0-9])").matcher(all.substring(at));
    while (of.find()) {
      listed.add(Integer.valueOf(of.group(1)));
    }
    assertThat(cited).isEqualTo(listed).hasSize(12);
  }

  private static List<Page> cautions() {
    return CautionPage.pages(
        new Print(Paper.A4, 10, 1, 1), TextPageSamples.info(LengthUnit.MM, List.of()));
  }

  /** Lines joined, as they are read. */
  private static String words(List<Page> pages) {
    return PageRules.words(pages).replaceAll("[ \n]+", " ");
  }

  @ParameterizedTest
  @ValueSource(ints = {1, 2, 3, 5, 9, 20, 40})
  void eachAcceptedStopIsToldAndTheWarningsStayOnPageOne(int count) {
    for (Paper paper : Paper.values()) {
      List<Finding> stops = TextPageSamples.stops(count);
      List<Page> pages =
          CautionPage.pages(new Print(paper, 10, 1, 1), TextPageSamples.longInfo(stops));
      String all = PageRules.words(pages);
      for (Finding stop : stops) {
        assertThat(all).contains(stop.id());
      }
      String first = PageRules.words(pages.subList(0, 1));
      assertThat(first)
          .contains(count == 1 ? "1 STOP WAS ACCEPTED" : count + " STOPS WERE ACCEPTED")
          .contains("THE LAW WHERE YOU ARE", "STOP: ASK");
      assertThat(words(pages.subList(1, 2))).contains("Sources:", "common practice");
    }
  }

  @Test
  void everySidePageShowsThatStopsWereAccepted() {
    SideLayout layout = TextPageSamples.full(Side.LEFT, Paper.A4, LengthUnit.MM);
    JobInfo info = TextPageSamples.longInfo(TextPageSamples.stops(2));
    for (List<Page> pages :
        List.of(
            FindingsPages.pages(layout, info),
            StepsPage.pages(layout, info),
            CaliperPage.pages(layout, info))) {
      for (Page page : pages) {
        assertThat(PageRules.words(page)).contains("PRINTED WITH 2 ACCEPTED STOPS", "LEFT");
      }
    }
  }

  // ---- findings

  @Test
  void findingsGravestFirstEachWithItsFiguresAndMark() {
    List<Finding> findings = TextPageSamples.findings(40);
    SideLayout layout = TextPageSamples.with(TextPageSamples.plain(Side.LEFT, Paper.A4), findings);
    List<Finding> accepted = List.of(findings.get(0), findings.get(3));
    List<Page> pages = FindingsPages.pages(layout, TextPageSamples.info(LengthUnit.MM, accepted));
    assertThat(pages.get(0).fileStem()).isEqualTo("left-findings-1");
    String all = PageRules.words(pages);
    for (Finding finding : findings) {
      assertThat(all).contains(finding.id() + " ");
    }
    // Severities in turn from 40 findings: 14 stops, 13 cautions, 13 notes (independent count).
    assertThat(all).contains("14 stops: do not cut", "13 cautions", "13 notes");
    assertThat(all.indexOf("14 stops")).isLessThan(all.indexOf("13 cautions"));
    assertThat(all.indexOf("13 cautions")).isLessThan(all.indexOf("13 notes"));
    // Figures: 10.25 + 3 against 16 (independent, from the sample).
    assertThat(all).contains("Found 13.25 mm, limit 16.00 mm.");
    assertThat(all.split("ACCEPTED", -1)).hasSize(2 + 1 + pages.size());
    assertThat(marks(pages, 8, Ink.BLACK)).isEqualTo(14);
    assertThat(marks(pages, 3, Ink.NONE)).isEqualTo(13);
    // These notes have a sentence of their own, so each stands alone with a dot.
    assertThat(dots(pages)).isEqualTo(13);
  }

  private static long marks(List<Page> pages, int corners, Ink fill) {
    return pages.stream()
        .flatMap(p -> p.items().stream())
        .filter(
            i -> i instanceof Item.Polyline p && p.points().size() == corners && p.fill() == fill)
        .count();
  }

  private static long dots(List<Page> pages) {
    return pages.stream()
        .flatMap(p -> p.items().stream())
        .filter(i -> i instanceof Item.Circle c && c.fill() == Ink.BLACK)
        .count();
  }

  @Test
  void aNoteThatOnlySaysThatItPassedIsALineOfTheTable() {
    Finding passed =
        new Finding(
            "left.edge-cut.B",
            Severity.NOTE,
            "bolt B, final cut",
            18.47,
            16,
            "mm",
            "a rule",
            "18.47 mm from hole centre to the finished opening; at least 16.00 mm.");
    SideLayout layout =
        TextPageSamples.with(TextPageSamples.plain(Side.LEFT, Paper.A4), List.of(passed));
    List<Page> pages = FindingsPages.pages(layout, TextPageSamples.info(LengthUnit.MM, List.of()));
    assertThat(PageRules.words(pages.get(0)))
        .contains("bolt B, final cut", "18.47 mm", "16.00 mm", "[1] left.edge-cut.B")
        .noneMatch(w -> w.contains("from hole centre"));
    assertThat(dots(pages)).isZero();
  }

  @Test
  void findingsInTheJobsUnitAndOtherUnitsAsTheyAre() {
    Finding length = finding("left.a", 25.4, 50.8, "mm");
    Finding angle = finding("left.b", 3.456, 5, "deg");
    Finding count = finding("left.c", 1, 2, "");
    SideLayout layout =
        TextPageSamples.with(
            TextPageSamples.plain(Side.LEFT, Paper.A4), List.of(length, angle, count));
    String words =
        PageRules.words(
            FindingsPages.pages(layout, TextPageSamples.info(LengthUnit.INCH, List.of())));
    // 25.4 mm is one inch by definition (ISO 80000-3); halves round away from zero.
    assertThat(words)
        .contains("Found 1.000 in (25.40 mm), limit 2.000 in (50.80 mm).")
        .contains("Found 3.46 deg, limit 5.00 deg.")
        .contains("Found 1, limit 2.");
  }

  private static Finding finding(String id, double figure, double limit, String unit) {
    return new Finding(id, Severity.CAUTION, "thing", figure, limit, unit, "job", "So it is.");
  }

  // ---- caliper table

  @Test
  void caliperFiguresAreTheSpansFormatted() {
    Span span = new Span("A", "B", 130.154, 121.154, 139.154, 1.0);
    SideLayout layout =
        TextPageSamples.withSpans(TextPageSamples.plain(Side.LEFT, Paper.A4), List.of(span));
    // Independent: 130.154 / 25.4 = 5.12417, 121.154 / 25.4 = 4.76984, 139.154 / 25.4 = 5.47850,
    // 1 / 25.4 = 0.03937.
    assertThat(
            row(CaliperPage.pages(layout, TextPageSamples.info(LengthUnit.MM, List.of())), "A - B"))
        .containsExactlyInAnyOrder(
            "A - B",
            "130.15",
            "5.124 in",
            "121.15",
            "4.770 in",
            "139.15",
            "5.479 in",
            "1.00",
            "0.039 in");
    assertThat(
            row(
                CaliperPage.pages(layout, TextPageSamples.info(LengthUnit.INCH, List.of())),
                "A - B"))
        .containsExactlyInAnyOrder(
            "A - B",
            "5.124",
            "130.15 mm",
            "4.770",
            "121.15 mm",
            "5.479",
            "139.15 mm",
            "0.039",
            "1.00 mm");
  }

  /** Everything that stands in a row's height. */
  private static List<String> row(List<Page> pages, String first) {
    for (Page page : pages) {
      for (Item.Text text : PageRules.texts(page)) {
        if (text.content().equals(first)) {
          return PageRules.texts(page).stream()
              .filter(t -> Math.abs(t.at().y() - text.at().y()) < 5)
              .map(Item.Text::content)
              .toList();
        }
      }
    }
    throw new AssertionError("no row " + first);
  }

  @Test
  void everyPairHasItsRowAndTheUnitsAreNamed() {
    List<Page> pages =
        CaliperPage.pages(
            TextPageSamples.eight(Side.LEFT, Paper.A4, false),
            TextPageSamples.info(LengthUnit.MM, List.of()));
    List<String> words = pages.stream().flatMap(p -> PageRules.words(p).stream()).toList();
    String names = "ABCDEFGH";
    // 8 holes make 8 * 7 / 2 = 28 pairs (independent).
    List<String> pairs =
        IntStream.range(0, 8)
            .boxed()
            .flatMap(
                i ->
                    IntStream.range(i + 1, 8)
                        .mapToObj(k -> names.charAt(i) + " - " + names.charAt(k)))
            .toList();
    assertThat(pairs).hasSize(28);
    assertThat(words).containsAll(pairs);
    String all = String.join(" ", words);
    assertThat(all)
        .contains(
            "outside jaws", "inside jaws", "Centres, mm", "by up to, mm", "Measured", "domed");
    assertThat(pages.size()).isGreaterThan(1);
    // The headings come again on the second page.
    assertThat(PageRules.words(pages.get(1))).contains("Holes");
  }

  @Test
  void domedTowerGivesThePaperDistanceToo() {
    SideLayout layout = TextPageSamples.full(Side.LEFT, Paper.A4, LengthUnit.MM);
    List<Page> pages = CaliperPage.pages(layout, TextPageSamples.info(LengthUnit.MM, List.of()));
    Vec2 a = layout.holes().get(0).at();
    Vec2 b = layout.holes().get(1).at();
    // Independent: sagitta R = c^2/(8 s) + s/2 for c = 140, s = 3; then R asin(r / R) from the pole
    // and the law of cosines between the two bearings.
    double radius = 140.0 * 140.0 / 24.0 + 1.5;
    double ra = radius * Math.asin(a.norm() / radius);
    double rb = radius * Math.asin(b.norm() / radius);
    double between = a.direction().radians() - b.direction().radians();
    double paper = Math.sqrt(ra * ra + rb * rb - 2 * ra * rb * Math.cos(between));
    double read =
        row(pages, "A - B").stream()
            .filter(w -> w.matches("[0-9]+\\.[0-9]{2}"))
            .mapToDouble(Double::parseDouble)
            .filter(v -> Math.abs(v - paper) < 0.005 + 1e-9)
            .findFirst()
            .orElseThrow(() -> new AssertionError("no " + paper));
    // Half of the last printed digit.
    assertThat(read).isCloseTo(paper, within(0.005 + 1e-9));
    assertThat(read).isGreaterThan(a.distanceTo(b) + 0.05);
  }

  @ParameterizedTest
  @EnumSource(Side.class)
  void keyDiagramIsSeenFromBelow(Side side) {
    // Independent: geometry of looking up.
    SideLayout layout = TextPageSamples.plain(side, Paper.A4);
    Page page = CaliperPage.pages(layout, TextPageSamples.info(LengthUnit.MM, List.of())).get(0);
    List<Item.Circle> circles =
        page.items().stream()
            .filter(i -> i.layer() == Layer.HOLES)
            .map(Item.Circle.class::cast)
            .toList();
    assertThat(circles).hasSize(3);
    Vec2 a = layout.holes().get(0).at();
    Vec2 b = layout.holes().get(1).at();
    Vec2 onPage = circles.get(1).centre().minus(circles.get(0).centre());
    double scale = onPage.norm() / b.minus(a).norm();
    // Forward is up the page. From below, the left tower's inboard side is on the page's left and
    // the right tower's on its right (geometry of looking up).
    double across = side == Side.LEFT ? -1 : 1;
    assertThat(onPage.y()).isCloseTo(scale * (b.x() - a.x()), within(1e-9));
    assertThat(onPage.x()).isCloseTo(across * scale * (b.y() - a.y()), within(1e-9));
    assertThat(Math.abs(b.y() - a.y())).isGreaterThan(10);
    assertThat(scale).isLessThan(0.7);
    assertThat(PageRules.words(page))
        .contains("FORWARD", "OUTBOARD")
        .anyMatch(w -> w.startsWith("NOT TO SCALE"));
    Item.Text outboard =
        PageRules.texts(page).stream()
            .filter(t -> t.content().equals("OUTBOARD"))
            .findFirst()
            .orElseThrow();
    Vec2 middle = circles.get(0).centre().toward(circles.get(1).centre(), 0.5);
    assertThat(Math.signum(outboard.at().x() - middle.x())).isEqualTo(-across);
  }

  @Test
  void namesStandNearestToTheirOwnHoles() {
    for (Side side : Side.values()) {
      SideLayout layout = TextPageSamples.eight(side, Paper.A4, false);
      Page page = CaliperPage.pages(layout, TextPageSamples.info(LengthUnit.MM, List.of())).get(0);
      List<Item.Circle> circles =
          page.items().stream()
              .filter(i -> i.layer() == Layer.HOLES)
              .map(Item.Circle.class::cast)
              .toList();
      for (int i = 0; i < circles.size(); i++) {
        String name = layout.holes().get(i).name();
        Item.Text text =
            PageRules.texts(page).stream()
                .filter(t -> t.content().equals(name) && t.capHeightMm() == 3.6)
                .findFirst()
                .orElseThrow();
        Vec2 at = PageRules.bounds(text).centre();
        double own = at.distanceTo(circles.get(i).centre());
        for (int k = 0; k < circles.size(); k++) {
          assertThat(at.distanceTo(circles.get(k).centre())).isGreaterThanOrEqualTo(own);
        }
      }
    }
  }

  @Test
  void crowdedHolesStillGetTheirNames() {
    for (Side side : Side.values()) {
      for (double radius : new double[] {20, 30, 45}) {
        SideLayout layout = TextPageSamples.eight(side, Paper.A4, false, radius);
        List<Page> pages =
            CaliperPage.pages(layout, TextPageSamples.info(LengthUnit.MM, List.of()));
        PageRules.check(pages, 10);
      }
    }
  }

  // ---- steps

  @Test
  void stepsCarryThisJobsFigures() {
    SideLayout layout = TextPageSamples.full(Side.LEFT, Paper.A4, LengthUnit.MM);
    List<Page> pages = StepsPage.pages(layout, TextPageSamples.info(LengthUnit.MM, List.of()));
    String all = PageRules.words(pages);
    // The sample job's own figures.
    assertThat(all)
        .contains(
            "drain hole (9 mm), tooling hole (6 mm)",
            "each hole: A, B, C.",
            "Set the adjuster at 16.00 mm, index mark 3 of 3.",
            "Slot 55.0 deg rearward from straight across (35.0 deg",
            "3 mm stays standing",
            "2.5 mm inside the final line",
            "radius 8 mm",
            "From -8 mm to 16 mm: 2 mm clear",
            "Notch the bonnet hinge bracket",
            "mirrored pair: use the left one");
    for (PlacedHole hole : layout.holes()) {
      for (double drill : hole.drillsMm()) {
        assertThat(all).contains(Lengths.in(LengthUnit.MM).size(drill));
      }
    }
    // In order, each number once, beside a box to tick.
    List<Integer> numbers =
        pages.stream()
            .flatMap(p -> PageRules.texts(p).stream())
            .filter(t -> t.capHeightMm() == TextStyle.HEADING && t.content().matches("[0-9]+"))
            .map(t -> Integer.valueOf(t.content()))
            .toList();
    assertThat(numbers)
        .isEqualTo(IntStream.rangeClosed(1, numbers.size()).boxed().toList())
        .hasSizeGreaterThan(15);
    assertThat(all.indexOf("Drill the pilots")).isLessThan(all.indexOf("Saw to the dashed"));
    assertThat(all.indexOf("Saw to the dashed")).isLessThan(all.indexOf("File to the thick"));
    assertThat(all.indexOf("Trial fit")).isLessThan(all.indexOf("wheel alignment"));
  }

  @Test
  void stepsInInches() {
    String all =
        PageRules.words(
            StepsPage.pages(
                TextPageSamples.full(Side.RIGHT, Paper.LETTER, LengthUnit.INCH),
                TextPageSamples.info(LengthUnit.INCH, List.of())));
    // 16 / 25.4 = 0.62992; 3 / 25.4 = 0.11811 (independent).
    assertThat(all)
        .contains("Set the adjuster at 0.630 in", "0.118 in (3 mm)", "use the right one");
  }

  @Test
  void stepsOfAnUnhandedPlateAndAPlaceWithoutIndexMark() {
    SideLayout layout = TextPageSamples.eight(Side.RIGHT, Paper.A4, false);
    assertThat(
            PageRules.words(
                StepsPage.pages(layout, TextPageSamples.info(LengthUnit.MM, List.of()))))
        .contains("One part serves both sides");
  }

  @Test
  void nothingToCutIsSaid() {
    String all =
        PageRules.words(
            StepsPage.pages(
                TextPageSamples.uncut(TextPageSamples.plain(Side.LEFT, Paper.A4)),
                TextPageSamples.info(LengthUnit.MM, List.of())));
    assertThat(all).contains("Leave the opening as it is.").doesNotContain("Saw to");
  }

  @Test
  void sheetsForOnePrinterSaySo() {
    var side = SampleJobs.side(Side.LEFT, SampleJobs.plainTower(), SampleJobs.plate(true));
    var scaled = side.with(new Print(Paper.A4, 10, 0.998, 1.0025));
    String all =
        PageRules.words(
            StepsPage.pages(
                TextPageSamples.laidOut(scaled, LengthUnit.MM),
                TextPageSamples.info(LengthUnit.MM, List.of())));
    assertThat(all).contains("0.9980 across and 1.0025 along: use no other");
    String leaning =
        PageRules.words(
            StepsPage.pages(
                TextPageSamples.laidOut(
                    scaled.with(new Print(Paper.A4, 10, 0.998, 1, Angle.ofDegrees(0.4))),
                    LengthUnit.MM),
                TextPageSamples.info(LengthUnit.MM, List.of())));
    assertThat(leaning.replace('\n', ' ')).contains("1.0000 along and 0.40\u00b0 out of square");
  }
}
