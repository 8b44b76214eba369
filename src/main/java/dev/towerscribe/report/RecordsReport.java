package dev.towerscribe.report;

import dev.towerscribe.model.Side;
import dev.towerscribe.quantity.LengthUnit;
import dev.towerscribe.quantity.Lengths;
import dev.towerscribe.record.BayFigure;
import dev.towerscribe.record.ReadingStage;
import java.util.ArrayList;
import java.util.List;

/** Visits of many jobs, a row each. */
public final class RecordsReport {
  private RecordsReport() {}

  /**
   * The table of visits.
   *
   * @param visits in the order of their rows
   * @return the report
   */
  public static Report of(List<RecordedVisit> visits) {
    List<String> heads = new ArrayList<>(List.of("job", "visit", "date", "state", "outside"));
    heads.addAll(List.of("left caster", "camber", "right caster", "camber", "for"));
    Block.Table table = new Block.Table(heads, List.of()).each(visits, RecordsReport::row);
    return new Report("Towerscribe records", Lengths.in(LengthUnit.MM), List.of(table));
  }

  private static List<Cell> row(RecordedVisit visit) {
    List<Cell> row = new ArrayList<>(List.of(Cell.words(visit.file())));
    visit.about().forEach(a -> row.add(Cell.words(a)));
    row.add(Cell.words(visit.outside()));
    for (Side side : Side.values()) {
      row.add(measured(visit, side, BayFigure.CASTER));
      row.add(measured(visit, side, BayFigure.CAMBER));
    }
    row.add(Cell.words(visit.words("visit")));
    return row;
  }

  private static Cell measured(RecordedVisit visit, Side side, BayFigure figure) {
    return visit
        .figure(side, ReadingStage.AFTER, figure)
        .<Cell>map(f -> Cell.angle(f.measured()))
        .orElse(Cell.EMPTY);
  }
}
