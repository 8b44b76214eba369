package dev.towerscribe.cli;

import dev.towerscribe.finding.Finding;
import dev.towerscribe.model.Side;
import dev.towerscribe.quantity.Angle;
import dev.towerscribe.quantity.LengthUnit;
import dev.towerscribe.quantity.Numbers;
import dev.towerscribe.record.AsMade;
import dev.towerscribe.record.BayFigure;
import dev.towerscribe.record.Compared;
import dev.towerscribe.record.Evaluation;
import dev.towerscribe.record.Explanation;
import dev.towerscribe.record.Stage;
import dev.towerscribe.record.Visit;
import java.util.ArrayList;
import java.util.List;
import java.util.Locale;
import java.util.Optional;

/** A visit beside the predictions, in words. Angles in degrees, lengths in the job's unit. */
final class RecordWords {
  private final TextLines text = new TextLines();
  private final Evaluation evaluation;

  private RecordWords(Evaluation evaluation) {
    this.evaluation = evaluation;
  }

  /**
   * Writes a report.
   *
   * @param number the visit's number in the record
   * @param evaluation the visit beside the job
   * @return lines ended by line feeds
   */
  static String of(int number, Evaluation evaluation) {
    RecordWords words = new RecordWords(evaluation);
    words.head(number);
    evaluation.visit().wheels().keySet().forEach(words::side);
    words.leftRight();
    words.said();
    return words.text.toString();
  }

  private void head(int number) {
    Visit visit = evaluation.visit();
    text.line("Towerscribe record, visit " + number);
    text.line("");
    text.line("job        " + evaluation.job().title());
    text.line("date       " + visit.date());
    if (!visit.words().isEmpty()) {
      text.line("visit      " + visit.words());
    }
    visit.bay().ifPresent(b -> text.line("bay        " + b));
    text.line("");
    text.wrapped(
        "",
        "Angles in degrees, each with one standard deviation. sd: the difference over that of both"
            + " together; more than 2 is outside. Signs as in the job file.");
  }

  private void side(Side side) {
    text.line("");
    String title = side.word().toUpperCase(Locale.ROOT) + " WHEEL";
    text.line(title);
    text.line("=".repeat(title.length()));
    LengthUnit unit = evaluation.job().units();
    AsMade made = evaluation.made().get(side);
    if (made != null) {
      text.line(
          "plate "
              + made.source()
              + ": rotation "
              + Numbers.fixed(made.mount().rotation().degrees(), 1)
              + " deg, rearward "
              + Numbers.fixed(unit.fromMm(made.mount().rearwardMm()), 2)
              + ", inboard "
              + Numbers.fixed(unit.fromMm(made.mount().inboardMm()), 2)
              + ", setting "
              + Numbers.fixed(unit.fromMm(evaluation.visit().wheels().get(side).settingMm()), 2));
    }
    rows(Optional.of(side));
  }

  private void leftRight() {
    if (evaluation.compared().stream().anyMatch(c -> c.side().isEmpty())) {
      text.line("");
      text.line("LEFT MINUS RIGHT");
      text.line("================");
      rows(Optional.empty());
    }
  }

  private void rows(Optional<Side> side) {
    List<List<String>> rows = new ArrayList<>();
    rows.add(List.of("", "predicted", "+/-", "measured", "+/-", "difference", "sd", ""));
    for (Stage stage : Stage.values()) {
      for (BayFigure figure : BayFigure.values()) {
        evaluation.of(side, stage, figure).ifPresent(c -> rows.add(row(c)));
      }
    }
    if (rows.size() > 1) {
      text.table(rows);
    } else {
      text.line("nothing was both predicted and measured");
    }
  }

  private static List<String> row(Compared c) {
    return List.of(
        c.stage().word() + " " + c.figure().word(),
        degrees(c.predicted()),
        c.plusMinus().map(RecordWords::degrees).orElse(""),
        degrees(c.measured()),
        degrees(c.doubt()),
        degrees(c.difference()),
        Numbers.fixed(c.sds(), 1),
        c.within() ? "" : "OUTSIDE");
  }

  private static String degrees(Angle angle) {
    return Numbers.fixed(angle.degrees(), 2);
  }

  private void said() {
    text.line("");
    text.line("WHAT THE DIFFERENCES SAY");
    text.line("========================");
    for (Explanation x : evaluation.explanations()) {
      x.say().forEach(s -> text.wrapped("  ", s));
    }
    for (Finding f : evaluation.beyondFigures()) {
      text.wrapped("  ", f.severity().word() + " " + f.id() + ": " + f.say());
    }
  }
}
