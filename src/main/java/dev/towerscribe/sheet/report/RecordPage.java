package dev.towerscribe.sheet.report;

import dev.towerscribe.alignment.AlignmentTargets;
import dev.towerscribe.drawing.Align;
import dev.towerscribe.drawing.Item;
import dev.towerscribe.drawing.Page;
import dev.towerscribe.drawing.Pen;
import dev.towerscribe.finding.Finding;
import dev.towerscribe.finding.Severity;
import dev.towerscribe.model.Print;
import dev.towerscribe.model.Side;
import dev.towerscribe.quantity.Angle;
import dev.towerscribe.quantity.Numbers;
import dev.towerscribe.record.AsMade;
import dev.towerscribe.record.BayFigure;
import dev.towerscribe.record.BayReading;
import dev.towerscribe.record.Compared;
import dev.towerscribe.record.Evaluation;
import dev.towerscribe.record.Explanation;
import dev.towerscribe.record.Stage;
import dev.towerscribe.record.Visit;
import dev.towerscribe.record.WheelVisit;
import dev.towerscribe.sheet.text.Fragment;
import dev.towerscribe.sheet.text.JobInfo;
import dev.towerscribe.sheet.text.Lengths;
import dev.towerscribe.sheet.text.PageHead;
import dev.towerscribe.sheet.text.Table;
import dev.towerscribe.sheet.text.Table.Cell;
import dev.towerscribe.sheet.text.Table.Column;
import dev.towerscribe.sheet.text.TextPage;
import dev.towerscribe.sheet.text.TextStyle;
import java.util.ArrayList;
import java.util.LinkedHashMap;
import java.util.List;
import java.util.Locale;
import java.util.Map;
import java.util.Objects;
import java.util.Optional;

/**
 * A visit to the alignment bay on one page, to be kept with the job and handed to the customer:
 * predicted beside measured, what the differences say, cautions, and room to sign.
 */
public final class RecordPage {
  private static final double GAP = 3.0;
  private static final String PLUS_MINUS = "\u00b1";

  /**
   * Lettering of the words, space in table rows, and whether the table has what the work changed:
   * the airiest first. What is outside is told in words besides, so that the short table loses
   * nothing that counts.
   */
  private static final List<Spacing> SPACINGS =
      List.of(
          new Spacing(TextStyle.BODY, Table.AIRY_MM, true),
          new Spacing(TextStyle.SMALL, 0.4, true),
          new Spacing(TextStyle.SMALL, 0.1, true),
          new Spacing(TextStyle.SMALL, 0.1, false));

  private record Spacing(double cap, double padMm, boolean change) {}

  /**
   * What the page says of the entry it is made from.
   *
   * @param number its running number
   * @param remarks what is not as it was written, or has changed since, in words
   */
  public record Source(int number, List<String> remarks) {
    /** Copies the list. */
    public Source {
      remarks = List.copyOf(remarks);
    }
  }

  private final Evaluation record;
  private final Source source;
  private final JobInfo info;
  private final Lengths lengths;
  private final Spacing spacing;
  private final TextPage page;

  private RecordPage(Evaluation record, Source source, Print print, JobInfo info, Spacing spacing) {
    this.record = record;
    this.source = source;
    this.info = info;
    this.lengths = new Lengths(info.units());
    this.spacing = spacing;
    this.page =
        new TextPage(
            new PageHead(
                print, info, Optional.empty(), "Alignment record, visit " + source.number(), true));
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
    List<Page> best = List.of();
    for (Spacing spacing : SPACINGS) {
      List<Page> pages = new RecordPage(record, source, print, info, spacing).pages();
      if (best.isEmpty() || pages.size() < best.size()) {
        best = pages;
      }
    }
    return best;
  }

  private List<Page> pages() {
    Visit visit = record.visit();
    if (!visit.words().isEmpty()) {
      page.paragraph(visit.words(), TextStyle.HEADING);
    }
    visit.bay().ifPresent(b -> page.paragraph("Bay: " + b, spacing.cap()));
    source.remarks().forEach(r -> page.paragraph("NOTE: " + r + ".", spacing.cap()));
    accepted();
    page.table(figures(), GAP);
    page.paragraph(
        "Degrees \u00b1 one standard deviation. sd: the difference over that of both together; ! if"
            + " more than 2. Signs as in the job.",
        TextStyle.SMALL);
    if (record.findings().stream().anyMatch(f -> f.id().endsWith(".record-estimate"))) {
      page.paragraph(
          "Predicted without \u00b1: an ESTIMATE from the measured axis. What is outside may be the"
              + " estimate's.",
          spacing.cap());
    }
    places();
    aims();
    page.band("What the differences say");
    if (record.explanations().isEmpty()) {
      page.paragraph("Nothing was both predicted and measured.", spacing.cap());
    }
    told().forEach(x -> say(x.say()));
    page.columns(2);
    page.band("Cautions");
    cautions().forEach(c -> page.point(c, spacing.cap()));
    page.columns(1);
    page.add(new Signatures(page.columnMm()), GAP, false);
    return page.pages("record", "Alignment record", "rec-", true);
  }

  /** Points; a leading dash is a point of its own already. */
  private void say(List<String> sentences) {
    for (String s : sentences) {
      page.point(s.startsWith("- ") ? s.substring(2) : s, spacing.cap());
    }
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

  private void accepted() {
    if (!info.acceptedStops().isEmpty()) {
      page.paragraph(
          "Worked with accepted stops: "
              + String.join(", ", info.acceptedStops().stream().map(Finding::id).toList())
              + ".",
          spacing.cap());
    }
  }

  private List<Side> sides() {
    return List.copyOf(record.visit().wheels().keySet());
  }

  private Table figures() {
    List<Column> columns = new ArrayList<>();
    columns.add(new Column("", 25.5, Align.START));
    for (Side side : sides()) {
      String word = side.word().toUpperCase(Locale.ROOT);
      columns.add(new Column(word + "\npredicted", 27.5, Align.END));
      columns.add(new Column(word + "\nmeasured", 27.5, Align.END));
      columns.add(new Column("differ-\nence", 15.5, Align.END));
      columns.add(new Column("sd", 13.5, Align.END));
    }
    List<List<Cell>> rows = new ArrayList<>();
    for (Stage stage : Stage.values()) {
      if (stage == Stage.CHANGE && !spacing.change()) {
        continue;
      }
      List<List<Cell>> some = new ArrayList<>();
      for (BayFigure figure : BayFigure.values()) {
        row(stage, figure).ifPresent(some::add);
      }
      if (!some.isEmpty()) {
        List<Cell> head = new ArrayList<>();
        head.add(new Cell("", heading(stage)));
        while (head.size() < columns.size()) {
          head.add(Cell.of(""));
        }
        rows.add(head);
        rows.addAll(some);
      }
    }
    return new Table(columns, rows, page.columnMm(), 0, spacing.padMm());
  }

  private static String heading(Stage stage) {
    return stage.word().toUpperCase(Locale.ROOT);
  }

  /** A row of one figure at one stage, if any wheel has it. */
  private Optional<List<Cell>> row(Stage stage, BayFigure figure) {
    List<Cell> cells = new ArrayList<>();
    cells.add(Cell.of(TextStyle.titleCase(figure.word())));
    boolean any = false;
    for (Side side : sides()) {
      Optional<Compared> compared = record.of(Optional.of(side), stage, figure);
      Optional<Angle> read = read(side, stage, figure);
      any |= compared.isPresent() || read.isPresent();
      if (compared.isPresent()) {
        Compared c = compared.get();
        cells.add(Cell.of(with(c.predicted(), c.plusMinus())));
        cells.add(Cell.of(with(c.measured(), Optional.of(c.uncertainty()))));
        cells.add(Cell.of(signed(c.difference())));
        cells.add(Cell.of((c.within() ? "" : "!") + Numbers.fixed(c.sds(), 1)));
      } else {
        cells.add(Cell.of(""));
        cells.add(Cell.of(read.map(a -> with(a, Optional.empty())).orElse("")));
        cells.add(Cell.of(""));
        cells.add(Cell.of(""));
      }
    }
    return any ? Optional.of(cells) : Optional.empty();
  }

  private Optional<Angle> read(Side side, Stage stage, BayFigure figure) {
    WheelVisit wheel = record.visit().wheels().get(side);
    return switch (stage) {
      case BEFORE -> wheel.before().of(figure);
      case AFTER -> wheel.after().of(figure);
      case CHANGE -> Optional.empty();
    };
  }

  private static String with(Angle angle, Optional<Angle> plusMinus) {
    return hundredths(angle) + plusMinus.map(p -> PLUS_MINUS + hundredths(p)).orElse("");
  }

  private static String hundredths(Angle angle) {
    return Numbers.fixed(angle.degrees(), 2);
  }

  private static String signed(Angle angle) {
    String text = hundredths(angle);
    return text.startsWith("-") || angle.degrees() < 0.005 ? text : "+" + text;
  }

  /** Once if both sides are alike. */
  private void places() {
    List<String> all = sides().stream().map(this::place).toList();
    if (all.size() > 1 && all.stream().distinct().count() == 1) {
      page.paragraph("Left and right: " + all.get(0), spacing.cap());
      return;
    }
    for (int i = 0; i < all.size(); i++) {
      page.paragraph(TextStyle.titleCase(sides().get(i).word()) + ": " + all.get(i), spacing.cap());
    }
  }

  private String place(Side side) {
    WheelVisit wheel = record.visit().wheels().get(side);
    AsMade made = record.made().get(side);
    StringBuilder words = new StringBuilder("setting ");
    words.append(lengths.size(wheel.settingMm()));
    if (made != null) {
      words.append(", rotation ").append(Numbers.fixed(made.mount().rotation().degrees(), 1));
      words.append(" deg, rearward ").append(lengths.size(made.mount().rearwardMm()));
      words.append(", inboard ").append(lengths.size(made.mount().inboardMm()));
      words.append(" (").append(made.source()).append(")");
    }
    if (wheel.knuckle().radians() != 0.0) {
      words.append(", knuckle bolt ").append(hundredths(wheel.knuckle())).append(" deg");
    }
    words.append("; ride height ").append(ride(wheel.before())).append(" before, ");
    return words.append(ride(wheel.after())).append(" after.").toString();
  }

  private String ride(BayReading reading) {
    return reading.rideMm().map(lengths::size).orElse("not measured");
  }

  /** Once if both sides aim at the same. */
  private void aims() {
    List<String> all =
        sides().stream()
            .map(s -> record.job().sides().get(s))
            .filter(Objects::nonNull)
            .flatMap(s -> s.aims().stream())
            .map(AlignmentTargets::of)
            .map(RecordPage::words)
            .toList();
    for (String words : all.stream().distinct().toList()) {
      page.paragraph(words, spacing.cap());
    }
  }

  private static String words(AlignmentTargets g) {
    return "Aims: caster "
        + g.casterWords()
        + ", camber "
        + Numbers.plain(g.camber().degrees(), 2)
        + " deg, never past "
        + Numbers.plain(g.camberLimit().degrees(), 2)
        + " deg.";
  }

  /** What is to be seen to on each side, in one point, then what always is. */
  private List<String> cautions() {
    Map<String, String> bySide = new LinkedHashMap<>();
    for (Finding f : record.beyondFigures()) {
      if (f.severity() != Severity.NOTE) {
        String side = TextStyle.titleCase(f.id().substring(0, f.id().indexOf('.')));
        bySide.merge(side, f.say(), (a, b) -> a + " " + b);
      }
    }
    List<String> all = new ArrayList<>();
    bySide.forEach((side, say) -> all.add(side + ": " + say));
    all.add(
        "Check the torque of every fastener that was undone, to the vehicle maker's figures, and"
            + " again after the first short drive (common practice, no source).");
    all.add(
        "Alignment is for a bay, structure for a licensed shop: the maker's limits, local law and"
            + " local inspection come first. This record certifies nothing.");
    return all;
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
      double half = (widthMm - GUTTER) / 2;
      double line = topMm - HEIGHT + TextStyle.lineMm(TextStyle.SMALL);
      Map<Double, String> names =
          Map.of(
              leftMm,
              "Bay: name, day, signature",
              leftMm + half + GUTTER,
              "Customer: name, day, signature");
      for (double x : List.of(leftMm, leftMm + half + GUTTER)) {
        out.add(TextStyle.line(x, line, x + half, line, Pen.THIN));
        out.add(
            TextStyle.text(
                x,
                TextStyle.baseMm(line, TextStyle.SMALL),
                TextStyle.SMALL,
                Align.START,
                names.get(x)));
      }
    }
  }
}
