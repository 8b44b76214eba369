package dev.towerscribe.sheet.worksheet;

import dev.towerscribe.drawing.Page;
import dev.towerscribe.quantity.LengthUnit;
import dev.towerscribe.sheet.text.Fragment;
import dev.towerscribe.sheet.text.Fragments;
import dev.towerscribe.sheet.text.TextPage;
import dev.towerscribe.sheet.text.TextStyle;
import dev.towerscribe.sheet.worksheet.FormPieces.Blank;
import dev.towerscribe.sheet.worksheet.FormPieces.Cell;
import dev.towerscribe.sheet.worksheet.FormPieces.Disc;
import dev.towerscribe.sheet.worksheet.FormPieces.Gap;
import dev.towerscribe.sheet.worksheet.FormPieces.Row;
import dev.towerscribe.sheet.worksheet.FormPieces.Says;
import dev.towerscribe.sheet.worksheet.FormPieces.Tick;
import dev.towerscribe.sheet.worksheet.WorksheetEnd.Mark;
import dev.towerscribe.sheet.worksheet.WorksheetEnd.Point;
import java.util.ArrayList;
import java.util.List;
import java.util.Optional;
import java.util.stream.Stream;

/** The worksheet's pages for the whole car: cautions, the car, setting out, distances across. */
final class WorksheetStart {
  private static final double ROW = Row.LEAST;
  private static final double SKETCH_SHARE = 0.5;
  private static final double LABEL_SHARE = 0.34;
  private static final double GAP = 4.0;

  private static final String SOURCES =
      "Stands: HSE INDG434. Eyes: 29 CFR 1910.133. The rest: common practice, no source.";

  private WorksheetStart() {}

  /** Cautions, the car as it stands, and the tools. */
  static List<Page> cautions(WorksheetHead head) {
    TextPage page = new TextPage(head);
    page.add(caution(page.columnMm()), 0, false);
    heading(page, "THE CAR AS IT STANDS");
    double wide = page.columnMm();
    page.chain(
        List.of(
            whole("Fuel, load, who sits in it", wide),
            halves("Tyre pressure, front left", "front right", wide),
            halves("Wing lip, front left", "front right", wide),
            halves("Wing lip, rear left", "rear right", wide)),
        GAP / 2,
        false);
    page.paragraph(
        "Wing lip: from the floor straight up to the wing's edge over the wheel's middle. Read it"
            + " again when all is done: if it moved, the car moved.",
        FormPieces.WORDS);
    heading(page, "TOOLS, each checked");
    List<List<String>> tools =
        List.of(
            List.of("one tape for everything", "plumb bob and string", "steel rule and square"),
            List.of("calipers to 0.1 mm", "angle finder to 0.1 deg", "straightedge"),
            List.of("long bar, spirit level", "trammel on a bar", "chalk line, masking tape"),
            List.of("fine marker, paint pen", "torch, safety glasses", "a second person"));
    page.chain(tools.stream().map(three -> ticks(three, wide, 7.6)).toList(), 1.0, false);
    page.add(
        new Fragments.Stack(Fragments.lines(SOURCES, FormPieces.WORDS, wide, 0), 0), 2.0, false);
    return page.pages("survey-start", "Before you start", "S", true);
  }

  private static Fragment caution(double width) {
    double inside = Fragments.Warning.insideMm(width);
    List<Fragment> lines =
        points(
            inside,
            "NEVER under a car on a jack alone. Wheels on four equal, level ramps, a pit or a"
                + " drive-on lift; rear wheels chocked; push the car hard before you go under.",
            "LEAVE THE NUT ON THE STRUT ROD ALONE. The spring behind it is loaded.",
            "Level ground: all four tyres stand on one level, checked with a long bar and a spirit"
                + " level.",
            "Ride height: normal load, right tyre pressures, wheels on the ground and straight"
                + " ahead. Roll it back and forth, bounce each end, then do not touch it again.",
            "Engine cold, key out: a fan can start by itself. Goggles on: dirt falls.",
            "Cracked, rusted or bent metal: stop, and have a qualified body or chassis shop look at"
                + " it.");
    return new Fragments.Warning(
        TextStyle.wrap("BEFORE YOU GO UNDER", FormPieces.HEADING, inside),
        FormPieces.HEADING,
        new Fragments.Stack(lines, 0.6),
        width);
  }

  /** Squares to tick, as wide as the page together. */
  private static Fragment ticks(List<String> words, double wide, double high) {
    double each = wide / words.size();
    return new Row(words.stream().<Cell>map(word -> new Tick(word, each)).toList(), high);
  }

  private static List<Fragment> points(double widthMm, String... points) {
    return Stream.of(points)
        .map(words -> Fragments.dotted(words, FormPieces.WORDS, widthMm))
        .<Fragment>map(lines -> new Fragments.Stack(lines, 0))
        .toList();
  }

  static void heading(TextPage page, String words) {
    double room = page.columnMm() - 2 * Fragments.Band.INDENT;
    List<String> lines = TextStyle.wrap(words, FormPieces.HEADING, room);
    page.add(new Fragments.Band(lines, FormPieces.HEADING, page.columnMm()), GAP, true);
  }

  private static Fragment whole(String words, double wide) {
    double label = LABEL_SHARE * wide;
    return new Row(
        List.of(Says.wrapped(words, FormPieces.WORDS, label), new Blank(wide - label)), ROW);
  }

  private static Fragment halves(String one, String other, double wide) {
    double label = LABEL_SHARE * wide;
    double second = 0.16 * wide;
    double box = (wide - label - second) / 2;
    return new Row(
        List.of(
            Says.wrapped(one, FormPieces.WORDS, label),
            new Blank(box),
            Says.before(other, second),
            new Blank(box)),
        ROW);
  }

  /** Axes and marks on the floor, and the uncertainties. */
  static List<Page> settingOut(WorksheetHead head) {
    TextPage page = new TextPage(head);
    double wide = page.columnMm();
    double sketch = SKETCH_SHARE * wide;
    double words = wide - sketch - GAP;
    List<Fragment> steps =
        points(
            words,
            "MIDDLE LINE. Drop the bob from like points left and right, well ahead and well behind."
                + " Halve each distance on the floor; chalk the line through both middles.",
            "WHEEL-CENTRE LINE. Drop the bob from both hubs' middles; chalk the line through both."
                + " It must cross square: tape from A to both ends.",
            "B is where they cross. A, C: a stride ahead and behind, on the middle line. D: on the"
                + " body, middle of the front panel's upper edge.");
    Fragment text = new Fragments.Stack(steps, 1.6);
    page.add(
        new Fragments.Beside(
            new FloorSketch(Optional.empty(), sketch, text.heightMm()), text, sketch + GAP),
        0,
        false);
    page.point(
        "BOB. From each point let it hang a finger above the floor, still. Mark under its tip;"
            + " write the number and L or R beside it.",
        FormPieces.WORDS);
    page.point(
        "PLOT. Square to the lines: FORE of the wheel-centre line (behind it: minus), OUT from the"
            + " middle line. HEIGHT: a rule stood upright, or along the bob's string.",
        FormPieces.WORDS);
    heading(page, "THE MARKS: where they are");
    page.add(marks(wide, head.units()), 1.0, false);
    heading(page, "UNCERTAINTIES, " + head.units().symbol() + ": how far one reading may be off");
    page.lead(
        "Likely, 2 in 3: a reading is off by less than this. Empty: as printed.", FormPieces.WORDS);
    page.add(uncertainties(wide, head.units()), 1.0, false);
    return page.pages("survey-setting-out", "Setting out", "S-floor", true);
  }

  private static Fragment marks(double wide, LengthUnit units) {
    List<Fragment> rows = new ArrayList<>();
    double label = 0.34 * wide;
    double box = (wide - 2 * FormPieces.DISC - 3 - label) / 2 - 22;
    for (Mark mark : Mark.values()) {
      if (mark.foreSign() == 0) {
        continue;
      }
      List<Cell> cells = new ArrayList<>();
      cells.add(new Disc(mark.sign(), 2 * FormPieces.DISC + 3));
      cells.add(Says.wrapped(mark.words(), FormPieces.NAME, label + 12));
      cells.add(Says.before(mark.foreSign() > 0 ? "fore +" : "fore -", 16));
      cells.add(new Blank(box));
      if (!mark.isOnFloor()) {
        cells.add(Says.before("height", 16));
        cells.add(new Blank(box));
      }
      rows.add(new Row(cells, ROW));
    }
    return new Fragments.Stack(rows, 0);
  }

  private static Fragment uncertainties(double wide, LengthUnit units) {
    WorksheetUncertainty[] all = WorksheetUncertainty.values();
    List<Fragment> rows = new ArrayList<>();
    double half = (wide - GAP) / 2;
    double box = Blank.LEAST + 2;
    for (int i = 0; i < all.length; i += 2) {
      List<Cell> cells = new ArrayList<>();
      for (int k = i; k < Math.min(i + 2, all.length); k++) {
        if (k > i) {
          cells.add(new Gap(GAP));
        }
        cells.add(Says.wrapped(all[k].words(), FormPieces.WORDS, half - box - 15));
        cells.add(Says.before(all[k].usual(units), 15));
        cells.add(new Blank(box));
      }
      rows.add(new Row(cells, ROW));
    }
    return new Fragments.Stack(rows, 0);
  }

  /** Distances from one side of the car to the other. */
  static List<Page> across(WorksheetHead head) {
    TextPage page = new TextPage(head);
    page.lead(
        "From the LEFT point to the RIGHT one. Two like points may be taped on the floor, between"
            + " the bob's marks. The two that cross show a side that is further forward.",
        FormPieces.WORDS);
    TapeRows rows = TapeRows.across(page.columnMm(), TapeRows.LEAST_ROW + 0.6);
    List<WorksheetPlan.Tape> tapes = WorksheetPlan.across();
    page.rows(rows.headings(), rows.rows(tapes, 4, WorksheetPlan::acrossLabel), 2.0);
    heading(page, "LEFT AGAINST RIGHT: should be alike; if not, read both again");
    page.lead(
        "Compare each height and each figure out, left with right. More than "
            + (head.units() == LengthUnit.MM ? "5 mm" : "0.2 in")
            + " apart: measure again, then ask whether the car has been hit.",
        FormPieces.WORDS);
    List<String> signs = Stream.of(Point.values()).map(Point::sign).toList();
    page.add(ticks(signs, page.columnMm(), 9), 1.0, false);
    return page.pages("survey-across", "Across the car", "S-across", true);
  }
}
