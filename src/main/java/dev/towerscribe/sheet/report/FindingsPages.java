package dev.towerscribe.sheet.report;

import dev.towerscribe.drawing.Align;
import dev.towerscribe.drawing.Page;
import dev.towerscribe.finding.Finding;
import dev.towerscribe.finding.Severity;
import dev.towerscribe.layout.SideLayout;
import dev.towerscribe.quantity.Lengths;
import dev.towerscribe.report.Block;
import dev.towerscribe.report.LayoutReport;
import dev.towerscribe.sheet.text.BlockSetter;
import dev.towerscribe.sheet.text.JobInfo;
import dev.towerscribe.sheet.text.Table;
import dev.towerscribe.sheet.text.Table.Cell;
import dev.towerscribe.sheet.text.Table.Column;
import dev.towerscribe.sheet.text.TextPage;
import dev.towerscribe.sheet.text.TextStyle;
import java.util.ArrayList;
import java.util.List;
import java.util.Optional;
import java.util.Set;
import java.util.stream.Collectors;

/**
 * The result of every check of one tower, most serious first, each with figure, limit and source.
 */
public final class FindingsPages {
  /** The airiest first. */
  private static final List<BlockSetter.Style> STYLES =
      List.of(
          BlockSetter.Style.AIRY,
          new BlockSetter.Style(TextStyle.BODY, 0.4, 4.0),
          new BlockSetter.Style(TextStyle.BODY, 0.1, 3.2));

  /** The mark of a note in a table. */
  private static final String DOT = "\u2022";

  private FindingsPages() {}

  /**
   * The findings of one tower.
   *
   * @param layout the tower
   * @param info the job; its accepted stops are marked so
   * @return at least one page
   */
  public static List<Page> pages(SideLayout layout, JobInfo info) {
    return TextPage.fewest(STYLES, style -> pages(layout, info, style));
  }

  private static List<Page> pages(SideLayout layout, JobInfo info, BlockSetter.Style style) {
    TextPage page = TextPage.of(layout.job().print(), info, Optional.of(layout.side()), "Findings");
    Lengths lengths = Lengths.in(info.units());
    if (layout.findings().isEmpty()) {
      page.paragraph("No check was made of this tower.", TextStyle.BODY);
    }
    for (Block.FoundList found : LayoutReport.findings(layout, ids(info.acceptedStops()))) {
      if (found.findings().isEmpty()) {
        continue;
      }
      if (found.findings().get(0).severity() == Severity.NOTE) {
        addNotes(page, found, style, lengths);
      } else {
        page.blocks(List.of(found), lengths, style);
      }
    }
    return page.pages(layout.side(), "findings", "tower, findings", "find");
  }

  /** Ids of findings. */
  static Set<String> ids(List<Finding> findings) {
    return findings.stream().map(Finding::id).collect(Collectors.toSet());
  }

  /**
   * Notes are many. Those that say something are listed one by one, in two columns under a heading
   * of the same width, which keeps it with the first; those that only say that a figure passed its
   * limit stand in one table, a line each, with the sources once, below it.
   */
  private static void addNotes(
      TextPage page, Block.FoundList notes, BlockSetter.Style style, Lengths lengths) {
    List<Finding> passed = notes.findings().stream().filter(n -> onlyPassed(n, lengths)).toList();
    List<Finding> told = notes.findings().stream().filter(n -> !passed.contains(n)).toList();
    page.columns(told.size() > 1 ? 2 : 1);
    page.blocks(
        List.of(new Block.FoundList(notes.heading(), told, notes.accepted())), lengths, style);
    if (passed.isEmpty()) {
      return;
    }
    if (told.size() > 1) {
      page.columns(1);
    }
    List<String> sources =
        passed.stream().map(Finding::source).filter(s -> !s.isEmpty()).distinct().toList();
    List<Column> columns =
        List.of(
            new Column("", 0.2, Align.MIDDLE),
            new Column("Passed", 2.25, Align.START),
            new Column("Found", 1.0, Align.END),
            new Column("Limit", 0.9, Align.END),
            new Column("[source of the limit] id", 2.75, Align.START));
    List<List<Cell>> rows = new ArrayList<>();
    for (Finding n : passed) {
      int source = sources.indexOf(n.source()) + 1;
      rows.add(
          List.of(
              Cell.of(DOT),
              Cell.of(n.where()),
              Cell.of(lengths.amount(n.figure(), n.unit())),
              Cell.of(lengths.amount(n.limit(), n.unit())),
              new Cell("", source == 0 ? n.id() : "[%s] %s".formatted(source, n.id()))));
    }
    page.table(new Table(columns, rows, page.columnMm(), 0, style.padMm()), style.findingGapMm());
    page.columns(2);
    for (int i = 0; i < sources.size(); i++) {
      page.paragraph("[" + (i + 1) + "] " + sources.get(i), TextStyle.SMALL);
    }
  }

  /** Whether its sentence says no more than its figure and limit do. */
  private static boolean onlyPassed(Finding note, Lengths lengths) {
    return note.say().startsWith(lengths.amount(note.figure(), note.unit()) + " ")
        || note.unit().equals("deg");
  }
}
