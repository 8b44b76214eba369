package dev.towerscribe.sheet.tower;

import dev.towerscribe.drawing.Align;
import dev.towerscribe.drawing.Ink;
import dev.towerscribe.drawing.LayerPen;
import dev.towerscribe.drawing.Lettering;
import dev.towerscribe.drawing.Pen;
import dev.towerscribe.finding.Finding;
import dev.towerscribe.geometry.Box;
import dev.towerscribe.geometry.Contour;
import dev.towerscribe.geometry.Region;
import dev.towerscribe.quantity.Angle;
import dev.towerscribe.quantity.Lengths;
import dev.towerscribe.quantity.Numbers;
import dev.towerscribe.sheet.text.JobInfo;
import java.util.ArrayList;
import java.util.List;

/**
 * A band hatched so heavily that it shows across a garage, with each accepted stop's id and figure.
 * A single short one stands beside the words, others in rows below them.
 *
 * @param stops at least one
 * @param lengths how lengths are written
 * @param widthMm of the band
 */
record StopBand(List<Finding> stops, Lengths lengths, double widthMm) {
  private static final String WORDS = "STOP ACCEPTED";
  private static final double WORDS_CAP_MM = 10;
  private static final double LEAST_CAP_MM = 2.5;
  private static final double MOST_CAP_MM = 3.5;
  private static final double HEIGHT_MM = 15;
  private static final double ROW_MM = 4.8;
  private static final double ENDS_MM = 8;
  private static final double TOP_MM = 2.5;

  /** More than so many are counted, not named; the findings page has them all. */
  private static final int MOST_NAMED = 6;

  /** The band of a job's accepted stops. */
  static StopBand of(JobInfo info, double widthMm) {
    return new StopBand(info.acceptedStops(), Lengths.in(info.units()), widthMm);
  }

  private double roomMm() {
    return widthMm - 2 * ENDS_MM - 2;
  }

  private double besideMm() {
    return roomMm() - Lettering.width(WORDS, WORDS_CAP_MM) - 7;
  }

  private boolean beside() {
    return stops.size() == 1
        && Lettering.width(stops.get(0).id(), LEAST_CAP_MM) <= besideMm()
        && Lettering.width(figure(stops.get(0)), LEAST_CAP_MM) <= besideMm();
  }

  private List<String> lines() {
    List<String> all = stops.stream().map(stop -> stop.id() + ": " + figure(stop)).toList();
    if (all.size() <= MOST_NAMED) {
      return all;
    }
    List<String> lines = new ArrayList<>(all.subList(0, MOST_NAMED - 1));
    lines.add(all.size() - lines.size() + " more: see the findings");
    return lines;
  }

  private int columns() {
    boolean twoFit =
        lines().size() > 1
            && lines().stream().allMatch(l -> Lettering.width(l, LEAST_CAP_MM) <= roomMm() / 2 - 2);
    return twoFit ? 2 : 1;
  }

  double heightMm() {
    int columns = columns();
    return beside() ? HEIGHT_MM : HEIGHT_MM + ROW_MM * ((lines().size() + columns - 1) / columns);
  }

  void draw(Box box, LayerPen notes) {
    Box inner = box.grown(-Pen.HEAVY.widthMm() / 2);
    notes.frame(inner, Pen.HEAVY);
    hatch(inner, 4.0, Pen.HEAVY, notes);
    double left = box.minX() + ENDS_MM;
    double right = box.maxX() - ENDS_MM;
    notes.area(new Box(left, box.minY() + 1.4, right, box.maxY() - 1.4), Ink.WHITE);
    double base = box.maxY() - TOP_MM - WORDS_CAP_MM;
    if (beside()) {
      double from = right - 1 - besideMm();
      notes.text(left + 3, base, WORDS_CAP_MM, Align.START, WORDS);
      fitted(from, base + 5.8, besideMm(), stops.get(0).id(), notes);
      fitted(from, base + 0.6, besideMm(), figure(stops.get(0)), notes);
      return;
    }
    notes.text(box.centre().x(), base, WORDS_CAP_MM, Align.MIDDLE, WORDS);
    int columns = columns();
    double each = roomMm() / columns;
    List<String> lines = lines();
    for (int i = 0; i < lines.size(); i++) {
      double x = left + 1 + (i % columns) * each;
      fitted(x, base - ROW_MM * (1 + i / columns), each - 2, lines.get(i), notes);
    }
  }

  /** Figure and limit, the unit once: two stops may then stand in one row. */
  private String figure(Finding stop) {
    boolean isLength = stop.unit().equals("mm");
    String limit = isLength ? lengths.figure(stop.limit()) : Numbers.plain(stop.limit(), 2);
    return "%s, limit %s".formatted(lengths.amount(stop.figure(), stop.unit()), limit);
  }

  /** One line, made smaller and only then cut short to fit. */
  private static void fitted(double x, double y, double widthMm, String words, LayerPen notes) {
    double cap = Math.max(LEAST_CAP_MM, Lettering.capHeightToFit(words, widthMm, MOST_CAP_MM));
    notes.text(x, y, cap, Align.START, Lettering.shortened(words, cap, widthMm + 1e-6));
  }

  /** A box hatched at 45 degrees. */
  static void hatch(Box box, double spacingMm, Pen pen, LayerPen notes) {
    Region region = Region.inside(Contour.polygon(box.corners()));
    notes.hatch(region, Region.EMPTY, Angle.ofDegrees(45), spacingMm, pen);
  }
}
