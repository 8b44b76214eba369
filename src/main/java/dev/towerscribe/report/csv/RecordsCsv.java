package dev.towerscribe.report.csv;

import dev.towerscribe.model.Side;
import dev.towerscribe.record.BayFigure;
import dev.towerscribe.record.Entry;
import dev.towerscribe.record.ReadingStage;
import dev.towerscribe.record.Strike;
import dev.towerscribe.report.RecordedVisit;
import java.util.ArrayList;
import java.util.List;
import java.util.Optional;

/**
 * Visits of many jobs: a line each, with every figure that a visit may have; degrees. Of a visit
 * that was struck its figures are left out, so that no sum takes them in.
 */
public final class RecordsCsv {
  private static final List<ReadingStage> STAGES = List.of(ReadingStage.BEFORE, ReadingStage.AFTER);

  private RecordsCsv() {}

  /**
   * Writes visits.
   *
   * @param visits in the order of their lines
   * @return a heading and a line for each
   */
  public static String of(List<RecordedVisit> visits) {
    Csv csv = new Csv();
    List<String> head =
        new ArrayList<>(
            List.of("job_file", "job", "visit", "date", "state", "for", "bay", "outside_2_sd"));
    for (Side side : Side.values()) {
      for (ReadingStage stage : STAGES) {
        for (BayFigure figure : BayFigure.values()) {
          String name = side.word() + "_" + stage.word() + "_" + figure.word();
          head.add(name + "_measured_deg");
          head.add(name + "_predicted_deg");
        }
      }
    }
    head.addAll(List.of("struck_on", "struck_for"));
    csv.row(head);
    visits.forEach(visit -> csv.row(cells(visit)));
    return csv.toString();
  }

  private static List<String> cells(RecordedVisit visit) {
    List<String> cells = new ArrayList<>();
    cells.add(Csv.words(visit.file()));
    cells.add(Csv.words(visit.title()));
    cells.addAll(visit.about());
    cells.add(Csv.words(visit.words("visit")));
    cells.add(Csv.words(visit.words("bay")));
    cells.add(visit.outside());
    for (Side side : Side.values()) {
      for (ReadingStage stage : STAGES) {
        for (BayFigure figure : BayFigure.values()) {
          Optional<Entry.Figure> f = visit.figure(side, stage, figure);
          cells.add(f.map(x -> Csv.degrees(x.measured())).orElse(""));
          cells.add(f.flatMap(Entry.Figure::predicted).map(Csv::degrees).orElse(""));
        }
      }
    }
    cells.add(visit.struck().map(s -> s.date().toString()).orElse(""));
    cells.add(Csv.words(visit.struck().map(Strike::reason).orElse("")));
    return cells;
  }
}
