package dev.towerscribe.sheet.text;

import dev.towerscribe.drawing.Align;
import dev.towerscribe.drawing.Lettering;
import dev.towerscribe.finding.Finding;
import dev.towerscribe.quantity.Lengths;
import dev.towerscribe.report.Block;
import dev.towerscribe.report.Cell;
import dev.towerscribe.report.FindingWords;
import dev.towerscribe.report.Phrases;
import java.util.ArrayList;
import java.util.Arrays;
import java.util.List;
import java.util.Optional;
import java.util.stream.IntStream;

/**
 * Sets the blocks of a report in a column of a page: columns of a table as wide as what stands in
 * them asks for, figures to the right with how near they are in small lettering below.
 */
public final class BlockSetter implements Block.Visitor {
  private static final double PARAGRAPH_GAP = 2.0;
  private static final double POINT_GAP = 1.6;
  private static final double SECTION_GAP = 6.0;
  private static final double TABLE_GAP = 3.0;
  private static final double VERDICT = 6.0;

  /** Space beside what stands in a cell. */
  private static final double CELL_PAD = 3.3;

  /** The most that words ask for before they wrap. */
  private static final double MOST_WORDS_MM = 45.0;

  private final Lengths lengths;
  private final Style style;
  private final double widthMm;
  private final List<Flow.Entry> entries = new ArrayList<>();

  /**
   * How airy a page is.
   *
   * @param cap lettering of sentences
   * @param padMm space above and below what a row of a table says
   * @param findingGapMm space between findings
   */
  public record Style(double cap, double padMm, double findingGapMm) {
    /** Where there is plenty of room. */
    public static final Style AIRY = new Style(TextStyle.BODY, Table.AIRY_MM, 5.0);
  }

  private BlockSetter(Lengths lengths, Style style, double widthMm) {
    this.lengths = lengths;
    this.style = style;
    this.widthMm = widthMm;
  }

  /** What a block becomes in a column of a page. */
  static List<Flow.Entry> entries(Block block, Lengths lengths, Style style, double widthMm) {
    BlockSetter setter = new BlockSetter(lengths, style, widthMm);
    block.accept(setter);
    return setter.entries;
  }

  /**
   * Blocks under one another as one piece that is never torn apart.
   *
   * @param blocks the blocks
   * @param lengths the unit
   * @param widthMm its width
   * @param gapMm space between them
   * @return the piece
   */
  public static Fragment stack(
      List<? extends Block> blocks, Lengths lengths, double widthMm, double gapMm) {
    return new Fragments.Stack(
        blocks.stream()
            .map(block -> entries(block, lengths, Style.AIRY, widthMm))
            .map(parts -> parts.stream().map(Flow.Entry::block).toList())
            .<Fragment>map(parts -> new Fragments.Stack(parts, 0))
            .toList(),
        gapMm);
  }

  private void chain(List<? extends Fragment> parts, double gapMm, boolean keepLast) {
    entries.addAll(Flow.Entry.chain(parts, gapMm, keepLast));
  }

  @Override
  public void facts(Block.Facts facts) {
    for (Block.Fact fact : facts.facts()) {
      String words = Phrases.capital(fact.name()) + ": " + String.join(" ", fact.value());
      chain(Fragments.lines(words, style.cap(), widthMm, 0), PARAGRAPH_GAP, false);
    }
  }

  @Override
  public void verdict(Block.Verdict verdict) {
    double inside = Fragments.Warning.insideMm(widthMm);
    List<Fragment> lines = new ArrayList<>();
    verdict.details().forEach(d -> lines.addAll(Fragments.lines(d, TextStyle.HEADING, inside, 0)));
    Fragment said = new Fragments.Stack(lines, 0);
    Fragment warning = Fragments.Warning.of(verdict.words(), VERDICT, said, widthMm);
    chain(List.of(warning), TABLE_GAP, false);
  }

  @Override
  public void section(Block.Section section) {
    heading(section.title());
  }

  private void heading(String words) {
    chain(List.of(Fragments.Band.of(words, TextStyle.HEADING, widthMm)), SECTION_GAP, true);
  }

  @Override
  public void paragraph(Block.Paragraph paragraph) {
    double cap = paragraph.fine() ? TextStyle.SMALL : style.cap();
    chain(Fragments.lines(paragraph.words(), cap, widthMm, 0), PARAGRAPH_GAP, false);
  }

  @Override
  public void points(Block.Points points) {
    for (String point : points.points()) {
      chain(Fragments.dotted(point, style.cap(), widthMm), POINT_GAP, false);
    }
  }

  @Override
  public void table(Block.Table table) {
    int count = table.heads().size();
    List<List<Table.Cell>> rows =
        table.rows().stream()
            .map(row -> IntStream.range(0, count).mapToObj(i -> cell(row, i)).toList())
            .toList();
    double[] widths = widths(table, rows);
    List<Table.Column> columns = new ArrayList<>();
    for (int i = 0; i < count; i++) {
      Align align = table.isFigures(i) ? Align.END : Align.START;
      columns.add(new Table.Column(Phrases.capital(table.heads().get(i)), widths[i], align));
    }
    Table set = new Table(columns, rows, widthMm, 0, style.padMm());
    entries.addAll(Flow.Entry.rows(set.head(), set.body(), TABLE_GAP));
  }

  private Table.Cell cell(Block.Row row, int column) {
    if (row.cells().size() == 1) {
      // A heading among the rows.
      return new Table.Cell("", column == 0 ? row.cells().get(0).text(lengths) : "");
    }
    Cell cell = row.cells().get(column);
    String words = cell.text(lengths);
    if (column == 0) {
      return new Table.Cell(Phrases.capital(words), row.hasLikely() ? Lengths.LIKELY : "");
    }
    Optional<Cell> likely = cell instanceof Cell.Figure f ? f.likely() : Optional.empty();
    return new Table.Cell(words, likely.map(c -> c.text(lengths)).orElse(""));
  }

  /** What each column asks for; where that is too much, words wrap and figures do not. */
  private double[] widths(Block.Table table, List<List<Table.Cell>> rows) {
    int count = table.heads().size();
    double[] least = new double[count];
    double[] wish = new double[count];
    for (int i = 0; i < count; i++) {
      least[i] = TextStyle.longestWordMm(Phrases.capital(table.heads().get(i)), TextStyle.SMALL);
      wish[i] = least[i];
      for (List<Table.Cell> row : rows) {
        Table.Cell cell = row.get(i);
        least[i] = Math.max(least[i], TextStyle.longestWordMm(cell.main(), TextStyle.TABLE));
        least[i] = Math.max(least[i], TextStyle.longestWordMm(cell.second(), TextStyle.SMALL));
        wish[i] = Math.max(wish[i], Lettering.width(cell.main(), TextStyle.TABLE));
        wish[i] = Math.max(wish[i], Lettering.width(cell.second(), TextStyle.SMALL));
      }
      wish[i] = Math.max(least[i], Math.min(wish[i], MOST_WORDS_MM)) + CELL_PAD;
      least[i] += CELL_PAD;
    }
    double tooMuch = Arrays.stream(wish).sum() - widthMm;
    double canGive = Arrays.stream(wish).sum() - Arrays.stream(least).sum();
    if (tooMuch > 0 && canGive > 0) {
      double share = Math.min(1, tooMuch / canGive);
      for (int i = 0; i < count; i++) {
        wish[i] -= share * (wish[i] - least[i]);
      }
    }
    return wish;
  }

  @Override
  public void findings(Block.FoundList found) {
    heading(found.heading());
    for (Finding f : found.findings()) {
      finding(f, found.accepted().contains(f.id()));
    }
  }

  private void finding(Finding f, boolean accepted) {
    double in = FindingLead.INDENT;
    List<Fragment> all = new ArrayList<>();
    all.add(new FindingLead(f, accepted, FindingWords.figures(f, lengths), widthMm));
    all.addAll(Fragments.lines(f.say(), TextStyle.BODY, widthMm, in));
    String source = f.source().isEmpty() ? "" : "Limit: " + f.source() + ". ";
    all.addAll(Fragments.lines(source + "Id: " + f.id(), TextStyle.SMALL, widthMm, in));
    chain(all, style.findingGapMm(), false);
  }

  @Override
  public void fileLines(Block.FileLines lines) {
    chain(
        lines.lines().stream().map(l -> new Fragments.Words(l, style.cap(), CELL_PAD)).toList(),
        PARAGRAPH_GAP,
        false);
  }
}
