package dev.towerscribe.sheet.worksheet;

import dev.towerscribe.drawing.Align;
import dev.towerscribe.drawing.Item;
import dev.towerscribe.drawing.Pen;
import dev.towerscribe.geometry.Vec2;
import dev.towerscribe.model.Side;
import dev.towerscribe.sheet.text.Fragment;
import dev.towerscribe.sheet.worksheet.WorksheetEnd.Mark;
import dev.towerscribe.sheet.worksheet.WorksheetEnd.Point;
import java.util.List;
import java.util.Optional;
import java.util.stream.Collectors;

/**
 * The floor under the car from above, forward up the page: the middle line, the line through the
 * wheel centres, the marks A to D, and either both sides with the axes or one side with what is
 * taped from the marks.
 *
 * @param side the side whose tapes are shown; both sides and the axes if empty
 * @param widthMm its width
 * @param heightMm its height
 */
record FloorSketch(Optional<Side> side, double widthMm, double heightMm) implements Fragment {
  /** How far the marks lie from the line through the wheel centres, mm of the car. */
  private static final double MARK = 560;

  private static final double MARK_D = 760;
  private static final double TO_FRONT = 870;
  private static final double TO_REAR = 650;
  private static final double HALF_CAR = 860;

  /** Where numbers of crowded points stand, out, mm of the car. */
  private static final double NUMBERS_OUT = 915;

  /** How far out one side reaches with its numbers. */
  private static final double HALF_WITH_NUMBERS = 960;

  /** How much of the other side shows beside one side, mm of the car. */
  private static final double BEYOND = 500;

  /** Middle of a side's name, out, mm of the car. */
  private static final double SIDE_NAME = 640;

  private static final double FOOT = 3.0;

  private double acrossMm() {
    return side.isPresent() ? HALF_WITH_NUMBERS + BEYOND : 2 * HALF_CAR;
  }

  private double scale() {
    return Math.min(widthMm / acrossMm(), (heightMm - FOOT) / (TO_FRONT + TO_REAR));
  }

  /** Where a mark stands in the sketch: out and fore, mm of the car. */
  static Vec2 place(Mark mark) {
    double fore = mark == Mark.D ? MARK_D : MARK * mark.foreSign();
    return new Vec2(0, fore);
  }

  @Override
  public void draw(double leftMm, double topMm, List<Item> out) {
    double scale = scale();
    // Seen from above with forward up the page, the car's left is the page's left.
    int outward = side.map(s -> -MirrorPen.sign(s)).orElse(-1);
    double middle =
        side.isPresent()
            ? leftMm + widthMm / 2 - outward * (HALF_WITH_NUMBERS - BEYOND) / 2 * scale
            : leftMm + widthMm / 2;
    Vec2 origin = new Vec2(middle, topMm - TO_FRONT * scale);
    for (Side each : Side.values()) {
      if (side.isEmpty() || side.get() == each) {
        car(new MirrorPen(origin, scale, -MirrorPen.sign(each), out));
      }
    }
    MirrorPen pen = new MirrorPen(origin, scale, outward, out);
    lines(pen, side.isPresent() ? BEYOND : HALF_CAR);
    if (side.isPresent()) {
      tapes(pen);
    } else {
      axes(pen);
    }
    for (Mark mark : Mark.values()) {
      FormPieces.disc(mark.sign(), pen.at(place(mark)), out);
    }
  }

  /** The two chain lines, broken at the marks' discs. */
  private static void lines(MirrorPen pen, double beyond) {
    double clear = FormPieces.DISC_CLEAR / pen.scale();
    double from = -TO_REAR;
    for (Mark mark : List.of(Mark.C, Mark.B, Mark.A, Mark.D)) {
      double fore = place(mark).y();
      pen.line(0, from, 0, fore - clear, Pen.CENTRE);
      from = fore + clear;
    }
    pen.line(0, from, 0, TO_FRONT - 20, Pen.CENTRE);
    pen.line(-beyond, 0, -clear, 0, Pen.CENTRE);
    pen.line(clear, 0, HALF_CAR, 0, Pen.CENTRE);
  }

  private static void car(MirrorPen pen) {
    pen.chain(Pen.THIN, new double[][] {{0, 842}, {420, 822}, {640, 740}, {790, 560}, {850, 330}});
    pen.chain(Pen.THIN, new double[][] {{850, -330}, {850, -TO_REAR}});
    StrutSample.tyre(pen, Pen.OUTLINE);
  }

  private void axes(MirrorPen pen) {
    double s = pen.scale();
    pen.arrow(-130, 330, -130, 480, Pen.EDGE);
    pen.words(-155, 380, Align.END, "FORE +");
    for (Side each : Side.values()) {
      MirrorPen half = new MirrorPen(pen.origin(), s, -MirrorPen.sign(each), pen.out());
      half.arrow(70, 150, 360, 150, Pen.EDGE);
      half.words(215, 150 + 2.0 / s, Align.MIDDLE, "OUT +");
      half.words(
          SIDE_NAME, -StrutSample.TYRE_MM - 7.0 / s, FormPieces.NAME, Align.MIDDLE, each.name());
    }
    MirrorPen right = new MirrorPen(pen.origin(), s, 1, pen.out());
    right.words(80, -TO_REAR + 2.0 / s, Align.START, "middle line: out 0");
    right.words(90, -6.0 / s, Align.START, "fore 0");
  }

  private void tapes(MirrorPen pen) {
    List<WorksheetPlan.Tape> tapes = WorksheetPlan.fromMarks();
    for (WorksheetPlan.Tape tape : tapes) {
      Vec2 from = place((Mark) tape.from());
      Vec2 to = StrutSample.below(tape.to());
      Vec2 start = from.plus(to.minus(from).unit().times(FormPieces.DISC_CLEAR / pen.scale()));
      pen.line(start.x(), start.y(), to.x(), to.y(), Pen.FINE);
    }
    tapes.stream().map(WorksheetPlan.Tape::to).distinct().forEach(point -> number(point, pen));
    pen.arrow(-270, 330, -270, 480, Pen.EDGE);
    pen.words(-270, 330 - 5.5 / pen.scale(), Align.MIDDLE, "FORWARD");
  }

  /** Where points crowd, their numbers stand apart, at the end of a fine line. */
  private static void number(Point point, MirrorPen pen) {
    Vec2 p = StrutSample.below(point);
    pen.target(p);
    double mm = 1 / pen.scale();
    Vec2 at =
        switch (point) {
          case BALL_JOINT -> new Vec2(NUMBERS_OUT, 80);
          case TOP -> new Vec2(NUMBERS_OUT, -62);
          case TIE_OUTER -> new Vec2(NUMBERS_OUT, -195);
          case ARM_REAR -> new Vec2(480, -400);
          case ARM_FRONT -> p.plus(new Vec2(2.6, 4.0).times(mm));
          default -> p.plus(new Vec2(-3.6, 2.6).times(mm));
        };
    pen.words(
        at.x(), at.y() - FormPieces.NAME / 2 * mm, FormPieces.NAME, Align.MIDDLE, point.sign());
    Vec2 way = p.minus(at);
    if (way.norm() > 8 * mm) {
      Vec2 from = at.plus(way.unit().times(3.4 * mm));
      Vec2 to = p.minus(way.unit().times(1.5 * mm));
      pen.line(from.x(), from.y(), to.x(), to.y(), Pen.THIN);
    }
  }

  /** What stands in a disc on the sketch, for the words beside it. */
  static String tapesFrom(Mark mark) {
    return WorksheetPlan.fromMarks().stream()
        .filter(t -> t.from() == mark)
        .map(t -> t.to().sign())
        .collect(Collectors.joining(", "));
  }
}
