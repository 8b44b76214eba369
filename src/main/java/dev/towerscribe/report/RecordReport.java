package dev.towerscribe.report;

import static dev.towerscribe.report.Cell.angle;
import static dev.towerscribe.report.Cell.figure;
import static dev.towerscribe.report.Cell.words;

import dev.towerscribe.alignment.AlignmentTargets;
import dev.towerscribe.finding.Finding;
import dev.towerscribe.finding.Severity;
import dev.towerscribe.model.Side;
import dev.towerscribe.quantity.Angle;
import dev.towerscribe.quantity.Lengths;
import dev.towerscribe.record.BayFigure;
import dev.towerscribe.record.BayReading;
import dev.towerscribe.record.Compared;
import dev.towerscribe.record.Evaluation;
import dev.towerscribe.record.Explanation;
import dev.towerscribe.record.MountAsMade;
import dev.towerscribe.record.ReadingStage;
import dev.towerscribe.record.Visit;
import dev.towerscribe.record.WheelVisit;
import java.util.ArrayList;
import java.util.Collections;
import java.util.LinkedHashMap;
import java.util.List;
import java.util.Locale;
import java.util.Map;
import java.util.Objects;
import java.util.Optional;
import java.util.Set;
import java.util.stream.Stream;

/** A visit to the alignment bay beside the predictions. */
public final class RecordReport {
  /** Stands by a difference of more than two standard deviations. */
  private static final String OUT = "!";

  private final Evaluation record;
  private final Lengths lengths;

  /**
   * The parts of a report, each as it is needed.
   *
   * @param record the visit beside the job
   */
  public RecordReport(Evaluation record) {
    this.record = record;
    this.lengths = Lengths.in(record.job().units());
  }

  /**
   * The report of one visit.
   *
   * @param number the visit's number in the record
   * @param record the visit beside the job
   * @return the report
   */
  public static Report of(int number, Evaluation record) {
    RecordReport words = new RecordReport(record);
    Visit visit = record.visit();
    List<Block.Fact> facts = Phrases.facts("job", record.job().title(), Optional.of(visit.date()));
    if (!visit.words().isEmpty()) {
      facts.add(Phrases.fact("visit", visit.words()));
    }
    visit.bay().ifPresent(b -> facts.add(Phrases.fact("bay", b)));
    Blocks blocks = new Blocks().add(new Block.Facts(facts)).say(explained());
    for (Side side : words.sides()) {
      blocks.section(side, "wheel").say(Phrases.capital(words.place(side)));
      blocks.add(words.tableOrNothing(Optional.of(side)));
    }
    if (record.compared().stream().anyMatch(c -> c.side().isEmpty())) {
      blocks.section("Left minus right").add(words.tableOrNothing(Optional.empty()));
    }
    return blocks
        .section("What the differences say")
        .add(says(record.explanations()))
        .add(FindingWords.lines(record.beyondFigures(), Set.of()))
        .report("Towerscribe record, visit " + number, words.lengths);
  }

  /**
   * The wheels of the visit.
   *
   * @return left first
   */
  public List<Side> sides() {
    return List.copyOf(record.visit().wheels().keySet());
  }

  /**
   * What the table of figures means.
   *
   * @return sentences
   */
  public static String explained() {
    return ("Degrees. 2 in 3: likely this near (one standard deviation). Off: read less"
            + " predicted; sd: that over both deviations, %s if more than 2. Signs as in the job.")
        .formatted(OUT);
  }

  private Block tableOrNothing(Optional<Side> side) {
    return figures(List.of(side), List.of(ReadingStage.values()))
        .ifAny()
        .<Block>map(table -> table)
        .orElse(Phrases.say("No figure was both predicted and measured."));
  }

  /**
   * Predicted beside measured.
   *
   * @param sides which wheels, beside one another; empty for left minus right
   * @param stages which of them
   * @return a table, perhaps without rows
   */
  public Block.Table figures(List<Optional<Side>> sides, List<ReadingStage> stages) {
    List<String> heads = new ArrayList<>(List.of(""));
    for (Optional<Side> side : sides) {
      String wheel =
          sides.size() == 1 ? "" : side.orElseThrow().word().toUpperCase(Locale.ROOT) + " ";
      heads.addAll(List.of(wheel + "predicted", "2 in 3", wheel + "read", "2 in 3", "off", "sd"));
    }
    Block.Table table = new Block.Table(heads, List.of());
    for (ReadingStage stage : stages) {
      List<List<Cell>> rows =
          Stream.of(BayFigure.values())
              .map(figure -> row(sides, stage, figure))
              .filter(row -> row.stream().anyMatch(Cell.Figure.class::isInstance))
              .toList();
      if (!rows.isEmpty()) {
        table = table.plus(words(stage.word().toUpperCase(Locale.ROOT))).each(rows, row -> row);
      }
    }
    return table;
  }

  private List<Cell> row(List<Optional<Side>> sides, ReadingStage stage, BayFigure figure) {
    List<Cell> row = new ArrayList<>(List.of(words(figure.word())));
    for (Optional<Side> side : sides) {
      row.addAll(
          record
              .of(side, stage, figure)
              .map(RecordReport::cells)
              .orElseGet(() -> onlyRead(read(side, stage, figure))));
    }
    return row;
  }

  private static List<Cell> onlyRead(Optional<Angle> read) {
    List<Cell> cells = new ArrayList<>(Collections.nCopies(6, Cell.EMPTY));
    read.ifPresent(angle -> cells.set(2, angle(angle)));
    return cells;
  }

  private static List<Cell> cells(Compared c) {
    Cell likely = c.plusMinus().<Cell>map(Cell::angle).orElse(Cell.EMPTY);
    // The bay sets toe to what the job gives.
    boolean set = c.figure() == BayFigure.TOE && c.plusMinus().equals(Optional.of(Angle.ZERO));
    return List.of(
        angle(c.predicted()),
        set ? words("set") : likely,
        angle(c.measured()),
        angle(c.uncertainty()),
        figure(Amount.DIFFERENCE, c.difference().radians()),
        figure(Amount.NUMBER, c.sds()).marked(OUT, !c.within()));
  }

  private Optional<Angle> read(Optional<Side> side, ReadingStage stage, BayFigure figure) {
    return side.map(s -> record.visit().wheels().get(s))
        .flatMap(
            wheel ->
                switch (stage) {
                  case BEFORE -> wheel.before().of(figure);
                  case AFTER -> wheel.after().of(figure);
                  case CHANGE -> Optional.empty();
                });
  }

  /**
   * Where the plate went and how the wheel stood.
   *
   * @param side a wheel of the visit
   * @return a sentence
   */
  public String place(Side side) {
    WheelVisit wheel = record.visit().wheels().get(side);
    MountAsMade made = record.made().get(side);
    return "setting %s%s%s; ride %s before, %s after."
        .formatted(
            lengths.size(wheel.settingMm()),
            made == null
                ? ""
                : ", %s (%s)".formatted(Phrases.place(made.mount(), lengths), made.source()),
            wheel.knuckle().radians() == 0.0
                ? ""
                : ", knuckle bolt " + Lengths.withDegrees(wheel.knuckle()),
            ride(wheel.before()),
            ride(wheel.after()));
  }

  private String ride(BayReading reading) {
    return reading.rideMm().map(lengths::size).orElse("not measured");
  }

  /**
   * What is aimed at.
   *
   * @return a sentence for each side, once where both aim at the same
   */
  public List<String> aims() {
    return sides().stream()
        .map(s -> record.job().sides().get(s))
        .filter(Objects::nonNull)
        .flatMap(s -> s.aims().stream())
        .map(AlignmentTargets::of)
        .map(
            g ->
                "Aims: caster %s, camber %s deg, never past %s deg."
                    .formatted(
                        g.casterWords(),
                        Lengths.plainDegrees(g.camber()),
                        Lengths.plainDegrees(g.camberLimit())))
        .distinct()
        .toList();
  }

  /**
   * What the differences say; a leading dash is a point of its own already.
   *
   * @param explanations those to be told
   * @return a list
   */
  public static Block.Points says(List<Explanation> explanations) {
    return new Block.Points(
        explanations.stream()
            .flatMap(x -> x.say().stream())
            .map(s -> s.startsWith("- ") ? s.substring(2) : s)
            .toList());
  }

  /**
   * What is to be seen to on each side, in one point, then what always is.
   *
   * @return a list
   */
  public Block.Points cautions() {
    Map<String, String> bySide = new LinkedHashMap<>();
    for (Finding f : record.beyondFigures()) {
      if (f.severity() != Severity.NOTE) {
        String side = Phrases.capital(f.id().substring(0, f.id().indexOf('.')));
        bySide.merge(side, f.say(), (a, b) -> a + " " + b);
      }
    }
    List<String> all = new ArrayList<>();
    bySide.forEach((side, say) -> all.add(side + ": " + say));
    all.add(
        "Check the torque of every fastener that was undone: strut and wheel nuts to the vehicle"
            + " maker's figures, plate bolts to those of the plate's maker or an engineer; and"
            + " again after the first short drive (common practice, no source).");
    all.add(
        "Alignment is for a bay, structure for a qualified body or chassis shop: the maker's"
            + " limits, local law and local inspection come first. This record certifies nothing.");
    return new Block.Points(all);
  }
}
