package dev.towerscribe.sheet.report;

import dev.towerscribe.drawing.Item;
import dev.towerscribe.drawing.LayerPen;
import dev.towerscribe.drawing.Page;
import dev.towerscribe.drawing.Pen;
import dev.towerscribe.finding.Finding;
import dev.towerscribe.model.Print;
import dev.towerscribe.quantity.Lengths;
import dev.towerscribe.record.Evaluation;
import dev.towerscribe.record.Explanation;
import dev.towerscribe.record.ReadingStage;
import dev.towerscribe.record.Visit;
import dev.towerscribe.report.Block;
import dev.towerscribe.report.Phrases;
import dev.towerscribe.report.RecordReport;
import dev.towerscribe.sheet.text.BlockSetter;
import dev.towerscribe.sheet.text.Fragment;
import dev.towerscribe.sheet.text.JobInfo;
import dev.towerscribe.sheet.text.Table;
import dev.towerscribe.sheet.text.TextPage;
import dev.towerscribe.sheet.text.TextStyle;
import java.util.List;
import java.util.Optional;

/**
 * A visit to the alignment bay on one page, to be kept with the job and handed to the customer:
 * predicted beside measured, what the differences say, cautions, and room to sign.
 */
public final class RecordPage {
  private static final double GAP = 3.0;

  /**
   * Lettering of the words, space in table rows, and whether the table has what the work changed:
   * the airiest first. What is outside is said in words as well, so that the short table loses
   * nothing that counts.
   */
  private static final List<Spacing> SPACINGS =
      List.of(
          new Spacing(style(TextStyle.BODY, Table.AIRY_MM), true),
          new Spacing(style(TextStyle.SMALL, 0.4), true),
          new Spacing(style(TextStyle.SMALL, 0.1), true),
          new Spacing(style(TextStyle.SMALL, 0.1), false));

  private record Spacing(BlockSetter.Style style, boolean change) {}

  private static BlockSetter.Style style(double cap, double padMm) {
    return new BlockSetter.Style(cap, padMm, BlockSetter.Style.AIRY.findingGapMm());
  }

  /**
   * What the page says of the entry it is made from.
   *
   * @param number its running number
   * @param remarks what is not as it was written, or has changed since, in words
   * @param struck whether it was struck: nothing is concluded from it then
   */
  public record Source(int number, List<String> remarks, boolean struck) {
    /** Copies the list. */
    public Source {
      remarks = List.copyOf(remarks);
    }
  }

  private final Evaluation record;
  private final Source source;
  private final JobInfo info;
  private final Lengths lengths;
  private final RecordReport words;
  private final Spacing spacing;
  private final TextPage page;

  private RecordPage(Evaluation record, Source source, Print print, JobInfo info, Spacing spacing) {
    this.record = record;
    this.source = source;
    this.info = info;
    this.lengths = Lengths.in(info.units());
    this.words = new RecordReport(record);
    this.spacing = spacing;
    String title =
        "Alignment record, visit " + source.number() + (source.struck() ? ", STRUCK" : "");
    this.page = TextPage.of(print, info, Optional.empty(), title);
  }

  /**
   * The page of one visit.
   *
   * @param record the visit beside the job
   * @param source the entry it is from
   * @param print paper and margin
   * @param info the job, dated by the visit
   * @return one page, or more where there is much to say
   */
  public static List<Page> pages(Evaluation record, Source source, Print print, JobInfo info) {
    return TextPage.fewest(
        SPACINGS, way -> new RecordPage(record, source, print, info, way).pages());
  }

  private List<Page> pages() {
    Visit visit = record.visit();
    if (!visit.words().isEmpty()) {
      page.paragraph(visit.words(), TextStyle.HEADING);
    }
    visit.bay().ifPresent(b -> say("Bay: " + b));
    source.remarks().forEach(r -> say("NOTE: " + r + "."));
    if (!info.acceptedStops().isEmpty()) {
      List<String> ids = info.acceptedStops().stream().map(Finding::id).toList();
      say("Worked with accepted stops: %s.".formatted(String.join(", ", ids)));
    }
    blocks(
        words.figures(
            words.sides().stream().map(Optional::of).toList(),
            spacing.change()
                ? List.of(ReadingStage.values())
                : List.of(ReadingStage.BEFORE, ReadingStage.AFTER)),
        new Block.Paragraph(RecordReport.explained(), true));
    if (record.findings().stream().anyMatch(f -> f.id().endsWith(".record-estimate"))) {
      say(
          "Predicted without uncertainty: an ESTIMATE from the measured axis. What is outside may"
              + " be the estimate's.");
    }
    places();
    words.aims().forEach(this::say);
    page.band("What the differences say");
    if (source.struck()) {
      say("Nothing: this visit was struck.");
    } else if (record.explanations().isEmpty()) {
      say("No figure was both predicted and measured.");
    }
    if (!source.struck()) {
      blocks(RecordReport.says(told()));
      page.columns(2);
      page.band("Cautions");
      blocks(words.cautions());
      page.columns(1);
    }
    page.add(new Signatures(page.columnMm()), GAP, false);
    return page.pages("record", "Alignment record", "rec-", true);
  }

  private void blocks(Block... blocks) {
    page.blocks(List.of(blocks), lengths, spacing.style());
  }

  private void say(String sentence) {
    page.paragraph(sentence, spacing.style().cap());
  }

  /**
   * Both wheels together are told of where both have something to explain, or neither: where one
   * has, its own words say it.
   */
  private List<Explanation> told() {
    long wheels =
        record.explanations().stream()
            .filter(x -> x.side().isPresent() && !x.outside().isEmpty())
            .count();
    return record.explanations().stream()
        .filter(x -> x.side().isPresent() || wheels != 1 && !x.outside().isEmpty())
        .toList();
  }

  /** Once if both sides are alike. */
  private void places() {
    List<String> all = words.sides().stream().map(words::place).toList();
    if (all.size() > 1 && all.stream().distinct().count() == 1) {
      say("Both: " + all.get(0));
      return;
    }
    for (int i = 0; i < all.size(); i++) {
      say(Phrases.capital(words.sides().get(i).word()) + ": " + all.get(i));
    }
  }

  /** Two lines to sign on. */
  private record Signatures(double widthMm) implements Fragment {
    private static final double HEIGHT = 14.0;
    private static final double GUTTER = 10.0;

    @Override
    public double heightMm() {
      return HEIGHT;
    }

    @Override
    public void draw(double leftMm, double topMm, List<Item> out) {
      LayerPen notes = LayerPen.notes(out);
      double half = (widthMm - GUTTER) / 2;
      double line = topMm - HEIGHT + TextStyle.lineMm(TextStyle.SMALL);
      double x = leftMm;
      for (String who : List.of("Bay", "Customer")) {
        notes.line(x, line, x + half, line, Pen.THIN);
        List<String> words = List.of(who + ": name, day, signature");
        TextStyle.lines(notes, x, line, TextStyle.SMALL, words);
        x += half + GUTTER;
      }
    }
  }
}
