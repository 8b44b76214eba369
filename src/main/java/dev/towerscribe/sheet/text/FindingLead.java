package dev.towerscribe.sheet.text;

import dev.towerscribe.drawing.Align;
import dev.towerscribe.drawing.Ink;
import dev.towerscribe.drawing.Item;
import dev.towerscribe.drawing.LayerPen;
import dev.towerscribe.drawing.Lettering;
import dev.towerscribe.drawing.Pen;
import dev.towerscribe.finding.Finding;
import dev.towerscribe.geometry.Vec2;
import dev.towerscribe.quantity.Angle;
import java.util.List;
import java.util.Locale;
import java.util.stream.IntStream;

/** The head of a finding: its mark, severity, what it is about, figure and limit. */
final class FindingLead implements Fragment {
  /** How far the words stand in, beside the mark. */
  static final double INDENT = 14.0;

  private static final double MARK = 9.0;
  private static final double CAP = 3.6;
  private static final String ACCEPTED = "ACCEPTED";
  private static final double TAG = 3.0;

  private final Finding finding;
  private final boolean accepted;
  private final List<String> about;
  private final List<String> figures;
  private final double width;

  /**
   * A head.
   *
   * @param finding what was found
   * @param accepted whether it is an accepted stop
   * @param figures figure and limit in words, empty where only the sentence counts
   * @param width of the column, mm
   */
  FindingLead(Finding finding, boolean accepted, String figures, double width) {
    this.finding = finding;
    this.accepted = accepted;
    this.width = width;
    double room = width - INDENT - (accepted ? tagMm() + 3.0 : 0);
    String word = finding.severity().word().toUpperCase(Locale.ROOT);
    about =
        TextStyle.wrap(finding.where().isEmpty() ? word : word + ": " + finding.where(), CAP, room);
    this.figures =
        figures.isEmpty()
            ? List.of()
            : TextStyle.wrap(figures + ".", TextStyle.BODY, width - INDENT);
  }

  private static double tagMm() {
    return Lettering.width(ACCEPTED, TAG) + 4.0;
  }

  @Override
  public double heightMm() {
    double least = figures.isEmpty() ? 0 : MARK + 1.0;
    return Math.max(
        least,
        about.size() * TextStyle.lineMm(CAP) + figures.size() * TextStyle.lineMm(TextStyle.BODY));
  }

  @Override
  public void draw(double leftMm, double topMm, List<Item> out) {
    LayerPen notes = LayerPen.notes(out);
    mark(new Vec2(leftMm + MARK / 2 + 0.5, topMm - 0.5 - MARK / 2), notes);
    if (accepted) {
      double right = leftMm + width;
      double left = right - tagMm();
      notes.box(left, topMm - TextStyle.lineMm(CAP), right, topMm - 0.4, Pen.NONE, Ink.BLACK);
      double base = TextStyle.baseMm(topMm, CAP) + 0.2;
      notes.text(right - tagMm() / 2, base, TAG, Align.MIDDLE, ACCEPTED, Ink.WHITE);
    }
    double y = TextStyle.lines(notes, leftMm + INDENT, topMm, CAP, about);
    TextStyle.lines(notes, leftMm + INDENT, y, TextStyle.BODY, figures);
  }

  /** Shapes of road signs, told apart without colour. */
  private void mark(Vec2 at, LayerPen notes) {
    switch (finding.severity()) {
      case STOP -> {
        List<Vec2> octagon = polygon(at, 8, MARK / 2 / Math.cos(Math.PI / 8), 22.5);
        notes.polygon(octagon, Pen.NONE, Ink.BLACK);
      }
      case CAUTION -> {
        List<Vec2> triangle = polygon(at.plus(new Vec2(0, -MARK / 10)), 3, MARK * 0.55, 90);
        notes.polygon(triangle, Pen.FINAL_CUT, Ink.NONE);
      }
      case NOTE -> notes.dot(at, MARK / 8);
    }
  }

  private static List<Vec2> polygon(Vec2 at, int sides, double radius, double startDegrees) {
    return IntStream.range(0, sides)
        .mapToObj(i -> Angle.ofDegrees(startDegrees + 360.0 * i / sides))
        .map(direction -> at.plus(Vec2.polar(radius, direction)))
        .toList();
  }
}
