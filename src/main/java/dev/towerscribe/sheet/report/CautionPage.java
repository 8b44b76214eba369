package dev.towerscribe.sheet.report;

import dev.towerscribe.drawing.Lettering;
import dev.towerscribe.drawing.Page;
import dev.towerscribe.finding.Finding;
import dev.towerscribe.model.Print;
import dev.towerscribe.quantity.Lengths;
import dev.towerscribe.report.Block;
import dev.towerscribe.report.FindingWords;
import dev.towerscribe.sheet.text.BlockSetter;
import dev.towerscribe.sheet.text.Fragment;
import dev.towerscribe.sheet.text.Fragments;
import dev.towerscribe.sheet.text.JobInfo;
import dev.towerscribe.sheet.text.PageHead;
import dev.towerscribe.sheet.text.TextPage;
import dev.towerscribe.sheet.text.TextStyle;
import java.util.ArrayList;
import java.util.List;
import java.util.Optional;

/**
 * The first two pages of a pack, lettered as large as the paper allows: when not to do it and what
 * it does to the car; then how not to be hurt. Accepted stops stand at the top of the first, and
 * where they are many, in full on a last one.
 */
public final class CautionPage {
  /** The first asks whether, the second tells how. */
  private static final int PAGES = 2;

  private static final double LARGEST = 5.0;
  private static final double SMALLEST = 2.6;
  private static final int STEPS = 32;
  private static final double SOURCES_GAP = 5.0;

  /** A list of accepted stops that needs more of the page's height would crowd out the warnings. */
  private static final double MOST_OF_THE_PAGE = 0.4;

  private static final String LEAD =
      "A strut tower is part of the car's structure. Metal taken from it cannot be put back.";

  /** Numbers keep beside their sources: no-break spaces. */
  private static final String SOURCES =
      "Sources: 1\u00a0HSE INDG434. 2\u00a0HSE, motor vehicle repair: hot work, fuel, fire; 29 CFR"
          + " 1910.252. 3\u00a0HSE INDG280, for that alone. 4\u00a029 CFR 1910.133, appendix B."
          + " 5\u00a0NIOSH: 85\u00a0dBA over 8\u00a0hours. 6\u00a0Exposure limit for zinc oxide"
          + " fume: 5\u00a0mg/m\u00b3. 7\u00a0FAA AC 43.13-1B, 4-58 and 4-59, on aluminium: by"
          + " analogy. 8\u00a0ASTM A780. 9\u00a0FMVSS 113, S4.2. 10\u00a0UK vehicle test:"
          + " prescribed areas; 6.1.1(d). 11\u00a049 USC 30122. 12\u00a0HSE, electric and hybrid"
          + " vehicles. Unnumbered: common practice, no source.";

  private CautionPage() {}

  /**
   * The caution pages.
   *
   * @param print paper and margin
   * @param info the job, with the stops that were accepted
   * @return two pages; more for many accepted stops
   */
  public static List<Page> pages(Print print, JobInfo info) {
    for (Detail detail : Detail.values()) {
      if (boxMm(print, info, detail) > MOST_OF_THE_PAGE * print.paper().heightMm()) {
        continue;
      }
      if (fits(print, info, 0, detail)) {
        int fitting = 0;
        int tooLarge = STEPS + 1;
        while (tooLarge - fitting > 1) {
          int half = (fitting + tooLarge) / 2;
          if (fits(print, info, half, detail)) {
            fitting = half;
          } else {
            tooLarge = half;
          }
        }
        return tryPages(print, info, capMm(fitting), detail, false);
      }
    }
    return tryPages(print, info, SMALLEST, Detail.COUNT, false);
  }

  private static double boxMm(Print print, JobInfo info, Detail detail) {
    double width = print.paper().widthMm() - 2 * print.marginMm();
    return accepted(info, width, SMALLEST, detail).heightMm();
  }

  /** How the first page tells of accepted stops. */
  private enum Detail {
    FULL,
    IDS,
    COUNT
  }

  private static double capMm(int step) {
    return SMALLEST + (LARGEST - SMALLEST) * step / STEPS;
  }

  private static boolean fits(Print print, JobInfo info, int step, Detail detail) {
    return tryPages(print, info, capMm(step), detail, true).size() == PAGES;
  }

  private static List<Page> tryPages(
      Print print, JobInfo info, double cap, Detail detail, boolean firstOnly) {
    TextPage page =
        new TextPage(new PageHead(print, info, Optional.empty(), "Before any metal is cut", false));
    page.lead(LEAD, Math.max(cap, Lettering.capHeightToFit(LEAD, page.columnMm(), cap * 1.35)));
    page.paragraph(
        "This pack helps with marking out. It certifies nothing. Local law, vehicle inspection and"
            + " the vehicle maker's limits come first: if they forbid this work, do not do it.",
        cap);
    if (!info.acceptedStops().isEmpty()) {
      page.add(accepted(info, page.columnMm(), Math.min(cap, TextStyle.BODY), detail), 4, false);
    }
    whether(page, cap);
    page.columnsOnNewPage(1);
    work(page, cap);
    page.add(Fragments.paragraph(SOURCES, TextStyle.SMALL, page.columnMm()), SOURCES_GAP, false);
    if (detail != Detail.FULL && !firstOnly) {
      page.columns(1);
      List<Finding> stops = info.acceptedStops();
      Block full = new Block.FoundList("Accepted stops in full", stops, FindingsPages.ids(stops));
      page.blocks(List.of(full), Lengths.in(info.units()), BlockSetter.Style.AIRY);
    }
    return page.pages("caution", "Caution", "C", true);
  }

  /** Whether to do it at all: the shop box over the whole width, then what it means for the car. */
  private static void whether(TextPage page, double cap) {
    page.add(stopAndAsk(page.columnMm(), cap), 1.5 * cap, false);
    page.section(
        "WHAT THIS DOES TO THE CAR",
        List.of(
            "The tower carries the suspension. A misplaced hole, a nick or a rough edge can start a"
                + " fatigue crack.",
            "A modified load-bearing member can fail a roadworthiness inspection.\u00a0[10]",
            "Steering, braking and tyre wear will change. Insurance and registration may too: ask"
                + " before cutting."),
        cap);
    page.section(
        "THE LAW WHERE YOU ARE",
        List.of(
            "UK: structure within 30 cm of a suspension mounting is inspected in the test; a main"
                + " member that changes have made much less rigid fails.\u00a0[10]",
            "US: an owner's own changes are state law; a business is bound more"
                + " tightly.\u00a0[11]"),
        cap);
  }

  private static void work(TextPage page, double cap) {
    page.section(
        "BEFORE YOU START",
        List.of(
            "Firm level ground, wheels chocked, the car on rated stands. Never on a jack"
                + " alone.\u00a0[1]",
            "A strut's spring is loaded. Leave its centre nut alone unless a proper compressor"
                + " holds the spring captive.",
            "Battery off, then wait: airbags and belt pretensioners stay live for as long as the"
                + " vehicle maker says. Keep tools and heat from them and from all wiring. One that"
                + " is taken out is stored with care.\u00a0[3]",
            "Sparks light fuel, underseal and trim. Clear them away, extinguisher in reach. Fire"
                + " watch for 30\u00a0minutes after hot work.\u00a0[2]"),
        cap);
    page.section(
        "EYES, EARS, LUNGS, HANDS",
        List.of(
            "Eye protection always. Goggles for work overhead; grinding, a face shield over"
                + " them.\u00a0[4]",
            "Ear protection when sawing, drilling or grinding.\u00a0[5]",
            "Dust: a mask of class P2 or N95 at least. Heat on galvanised sheet makes zinc fume:"
                + " fresh air and a respirator for metal fume.\u00a0[6]",
            "Old underseal may hold tar or asbestos; such a mask is not enough. Do not grind, burn"
                + " or dry-brush it: have it looked at.",
            "Fresh edges and swarf cut. Brush swarf, never blow it. No gloves near a turning"
                + " drill."),
        cap);
    page.section(
        "WHEN THE CUT IS DONE",
        List.of(
            "Deburr and round every edge: no notch, nick or burr may stay.\u00a0[7]",
            "Zinc-rich primer on all bare metal by the paint maker's sheet; where hot-dip"
                + " galvanising was cut, by its repair standard.\u00a0[8] Then paint and seal.",
            "Check the bonnet's hinges, its latch and its second catch.\u00a0[9]",
            "Torque: plate bolts by the plate's maker or an engineer; strut and wheel nuts by the"
                + " vehicle maker.",
            "Have the wheels aligned before driving at speed."),
        cap);
  }

  private static Fragment stopAndAsk(double width, double cap) {
    double inside = Fragments.Warning.insideMm(width);
    Fragment points =
        Fragments.points(
            List.of(
                "the car is hybrid or electric: high voltage;\u00a0[12]",
                "it has air suspension;",
                "the tower is cast, or aluminium;",
                "the sheet is bonded, layered (sandwich) or ultra-high-strength;",
                "the metal is cracked, rusted or repaired;",
                "left and right towers are not alike;",
                "the sheet is thinner than this job says;",
                "metal and paper disagree anywhere;",
                "the findings show a stop;",
                "the law forbids it, or you are not sure."),
            cap,
            inside,
            0.8);
    String title = "STOP: ASK A QUALIFIED BODY OR CHASSIS SHOP WHEN";
    double titleCap =
        Math.max(TextStyle.SMALL, Lettering.capHeightToFit(title, inside, cap * 1.15));
    return Fragments.Warning.of(title, titleCap, points, width);
  }

  private static Fragment accepted(JobInfo info, double width, double cap, Detail detail) {
    double inside = Fragments.Warning.insideMm(width);
    Lengths lengths = Lengths.in(info.units());
    List<Finding> stops = info.acceptedStops();
    Fragment told =
        switch (detail) {
          case FULL ->
              Fragments.points(
                  stops.stream().map(stop -> inFull(stop, lengths)).toList(), cap, inside, 0.8);
          case IDS -> {
            String ids = String.join(", ", stops.stream().map(Finding::id).toList());
            List<Fragment> lines =
                new ArrayList<>(Fragments.lines(ids + ".", TextStyle.SMALL, inside, 0));
            lines.addAll(Fragments.lines("In full on the last page.", cap, inside, 0));
            yield new Fragments.Stack(lines, 0.8);
          }
          case COUNT ->
              new Fragments.Stack(Fragments.lines("Listed on the last page.", cap, inside, 0), 0.8);
        };
    String title =
        "%s, against this program's advice"
            .formatted(
                stops.size() == 1 ? "1 STOP WAS ACCEPTED" : stops.size() + " STOPS WERE ACCEPTED");
    return Fragments.Warning.of(title, TextStyle.HEADING, told, width);
  }

  private static String inFull(Finding stop, Lengths lengths) {
    return "%s: %s. %s.".formatted(stop.id(), stop.where(), FindingWords.figures(stop, lengths));
  }
}
