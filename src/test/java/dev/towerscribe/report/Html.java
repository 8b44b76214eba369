package dev.towerscribe.report;

import dev.towerscribe.finding.Finding;
import dev.towerscribe.quantity.Lengths;
import java.util.List;

/** A third renderer of the same blocks: simple HTML, made without touching a builder. */
final class Html implements Block.Visitor {
  private final Lengths lengths;
  private final StringBuilder out = new StringBuilder();

  private Html(Lengths lengths) {
    this.lengths = lengths;
  }

  static String of(Report report) {
    Html html = new Html(report.lengths());
    html.tag("h1", report.title());
    report.blocks().forEach(b -> b.accept(html));
    return html.out.toString();
  }

  private static String escaped(String words) {
    return words.replace("&", "&amp;").replace("<", "&lt;").replace(">", "&gt;");
  }

  private void tag(String tag, String words) {
    out.append("<%s>%s</%s>\n".formatted(tag, escaped(words), tag));
  }

  private void list(List<String> points) {
    out.append("<ul>\n");
    points.forEach(p -> tag("li", p));
    out.append("</ul>\n");
  }

  @Override
  public void facts(Block.Facts facts) {
    out.append("<dl>\n");
    for (Block.Fact fact : facts.facts()) {
      tag("dt", fact.name());
      fact.value().forEach(v -> tag("dd", v));
    }
    out.append("</dl>\n");
  }

  @Override
  public void verdict(Block.Verdict verdict) {
    tag("strong", verdict.words());
    verdict.details().forEach(d -> tag("p", d));
  }

  @Override
  public void section(Block.Section section) {
    tag("h2", section.title());
  }

  @Override
  public void paragraph(Block.Paragraph paragraph) {
    tag(paragraph.fine() ? "small" : "p", paragraph.words());
  }

  @Override
  public void points(Block.Points points) {
    list(points.points());
  }

  @Override
  public void table(Block.Table table) {
    out.append("<table>\n<tr>\n");
    table.heads().forEach(h -> tag("th", h));
    out.append("</tr>\n");
    for (Block.Row row : table.rows()) {
      out.append("<tr>\n");
      row.cells().forEach(this::cell);
      out.append("</tr>\n");
    }
    out.append("</table>\n");
  }

  private void cell(Cell cell) {
    String likely =
        cell instanceof Cell.Figure f && f.likely().isPresent()
            ? " (%s: %s)".formatted(Lengths.LIKELY, f.likely().get().text(lengths))
            : "";
    tag("td", cell.text(lengths) + likely);
  }

  @Override
  public void findings(Block.FoundList found) {
    tag("h3", found.heading());
    for (Finding f : found.findings()) {
      tag("h4", f.id() + (found.accepted().contains(f.id()) ? " accepted" : ""));
      tag("p", FindingWords.about(f, lengths));
      tag("p", f.say());
    }
  }

  @Override
  public void fileLines(Block.FileLines lines) {
    tag("pre", String.join("\n", lines.lines()));
  }
}
