package dev.towerscribe.report;

import dev.towerscribe.finding.Finding;
import dev.towerscribe.quantity.Lengths;
import java.util.ArrayList;
import java.util.List;
import java.util.Locale;
import java.util.Optional;
import java.util.stream.IntStream;

/** A report as plain text, for a screen or a file: words wrapped, columns of tables lined up. */
public final class PlainText implements Block.Visitor {
  private static final int WRAP_COLUMN = 92;
  private static final int LEAST_NAME = 9;

  private final Lengths lengths;
  private final StringBuilder text = new StringBuilder();

  /** Whether the next paragraph belongs to what stands above it. */
  private boolean close;

  private PlainText(Lengths lengths) {
    this.lengths = lengths;
  }

  /**
   * Writes a report.
   *
   * @param report any report
   * @return lines ended by line feeds
   */
  public static String of(Report report) {
    PlainText text = new PlainText(report.lengths());
    text.line(report.title());
    report.blocks().forEach(b -> b.accept(text));
    return text.text.toString();
  }

  @Override
  public void facts(Block.Facts facts) {
    if (!close) {
      gap();
    }
    int wide =
        facts.facts().stream().mapToInt(f -> f.name().length()).reduce(LEAST_NAME, Math::max) + 2;
    for (Block.Fact fact : facts.facts()) {
      String indent = fact.name() + " ".repeat(wide - fact.name().length());
      for (String line : fact.value()) {
        wrapped(indent, " ".repeat(wide), line);
        indent = " ".repeat(wide);
      }
    }
  }

  @Override
  public void verdict(Block.Verdict verdict) {
    gap();
    line(verdict.words());
    verdict.details().forEach(d -> wrapped("", "", d));
  }

  @Override
  public void section(Block.Section section) {
    gap();
    String title = section.title().toUpperCase(Locale.ROOT);
    line(title);
    line("=".repeat(title.length()));
    close = true;
  }

  @Override
  public void paragraph(Block.Paragraph paragraph) {
    String indent = paragraph.fine() ? "  " : "";
    if (!close && !paragraph.fine()) {
      gap();
    }
    wrapped(indent, indent, paragraph.words());
    close = !paragraph.fine();
  }

  @Override
  public void points(Block.Points points) {
    gap();
    points.points().forEach(p -> wrapped("- ", "  ", p));
  }

  @Override
  public void table(Block.Table table) {
    gap();
    List<List<String>> rows = new ArrayList<>();
    rows.add(table.heads());
    for (Block.Row row : table.rows()) {
      rows.add(row.cells().stream().map(c -> c.text(lengths)).toList());
      if (row.hasLikely()) {
        rows.add(row.cells().stream().map(c -> likely(c, c == row.cells().get(0))).toList());
      }
    }
    int[] widths =
        IntStream.range(0, table.heads().size())
            .map(i -> rows.stream().mapToInt(r -> i < r.size() ? width(r, i) : 0).max().orElse(0))
            .toArray();
    for (List<String> row : rows) {
      StringBuilder cells = new StringBuilder();
      for (int i = 0; i < row.size(); i++) {
        String pad = " ".repeat(Math.max(0, widths[i] - row.get(i).length()));
        cells.append("  ").append(table.isFigures(i) ? pad + row.get(i) : row.get(i) + pad);
      }
      line(cells.toString().stripTrailing());
    }
  }

  /** A heading among the rows runs over all columns. */
  private static int width(List<String> row, int column) {
    return row.size() == 1 ? 0 : row.get(column).length();
  }

  private String likely(Cell cell, boolean name) {
    Optional<Cell> how = cell instanceof Cell.Figure f ? f.likely() : Optional.empty();
    return how.map(c -> c.text(lengths)).orElse(name ? "  " + Lengths.LIKELY : "");
  }

  @Override
  public void findings(Block.FoundList found) {
    gap();
    line(found.heading());
    for (Finding f : found.findings()) {
      line("  " + f.id() + (found.accepted().contains(f.id()) ? "  ACCEPTED" : ""));
      String about = FindingWords.about(f, lengths);
      if (!about.isEmpty()) {
        wrapped("    ", "    ", about);
      }
      wrapped("    ", "    ", f.say());
    }
  }

  @Override
  public void fileLines(Block.FileLines lines) {
    gap();
    lines.lines().forEach(this::line);
  }

  private void gap() {
    line("");
    close = false;
  }

  /** Adds words, broken at spaces. */
  private void wrapped(String first, String indent, String words) {
    StringBuilder row = new StringBuilder(first);
    boolean empty = true;
    for (String word : words.split(" ")) {
      if (!empty && row.length() + word.length() + 1 > WRAP_COLUMN) {
        line(row.toString());
        row = new StringBuilder(indent);
        empty = true;
      }
      row.append(empty ? "" : " ").append(word);
      empty = false;
    }
    line(row.toString());
  }

  private void line(String words) {
    text.append(words).append('\n');
  }
}
