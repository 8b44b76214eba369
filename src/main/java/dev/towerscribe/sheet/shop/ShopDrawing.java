package dev.towerscribe.sheet.shop;

import dev.towerscribe.model.DrawingInfo;
import dev.towerscribe.sheet.text.Flow;
import dev.towerscribe.sheet.text.JobInfo;
import java.util.List;
import java.util.function.DoubleFunction;

/**
 * What a drawing is made of, before paper and scale are chosen.
 *
 * @param stem file stem, part of the identification number: "plate"
 * @param title what is drawn
 * @param kind document type: "Part drawing"
 * @param job title, date, mark, accepted stops
 * @param info title-block words of the job
 * @param style paper, projection, units
 * @param views from the top of the sheet downward
 * @param tables blocks beside or below them, by the width they get
 * @param making fields of the maker in the title block: material, finish, mass and so on
 */
record ShopDrawing(
    String stem,
    String title,
    String kind,
    JobInfo job,
    DrawingInfo info,
    DrawingStyle style,
    List<DrawingView> views,
    DoubleFunction<List<Flow.Entry>> tables,
    List<FieldGrid.Row> making) {
  ShopDrawing {
    views = List.copyOf(views);
    making = List.copyOf(making);
  }

  /** How its lengths are written. */
  DrawingLengths lengths() {
    return new DrawingLengths(style);
  }

  /** The identification number: the owner's, if given, the drawing's own name and the pack mark. */
  String number() {
    String own = stem + " " + job.packMark();
    return info.number().map(n -> n + " " + own).orElse(own);
  }
}
