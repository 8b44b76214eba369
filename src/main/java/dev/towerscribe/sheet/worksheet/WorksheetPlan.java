package dev.towerscribe.sheet.worksheet;

import static dev.towerscribe.sheet.worksheet.WorksheetEnd.Point.ARM_FRONT;
import static dev.towerscribe.sheet.worksheet.WorksheetEnd.Point.ARM_REAR;
import static dev.towerscribe.sheet.worksheet.WorksheetEnd.Point.BALL_JOINT;
import static dev.towerscribe.sheet.worksheet.WorksheetEnd.Point.KNUCKLE_PIVOT;
import static dev.towerscribe.sheet.worksheet.WorksheetEnd.Point.STRUT_LOWER;
import static dev.towerscribe.sheet.worksheet.WorksheetEnd.Point.TIE_INNER;
import static dev.towerscribe.sheet.worksheet.WorksheetEnd.Point.TIE_OUTER;
import static dev.towerscribe.sheet.worksheet.WorksheetEnd.Point.TOP;
import static dev.towerscribe.sheet.worksheet.WorksheetEnd.Point.WHEEL_CENTRE;

import dev.towerscribe.model.Side;
import dev.towerscribe.sheet.worksheet.WorksheetEnd.Mark;
import dev.towerscribe.sheet.worksheet.WorksheetEnd.Point;
import java.util.List;
import java.util.stream.IntStream;
import java.util.stream.Stream;

/**
 * Which distances a survey takes, and in which order. The worksheet and the empty survey file both
 * go by these lists, so a row of the one is a line of the other.
 *
 * <p>The distances were chosen so that, with a floor plot and a height of every point, a gross
 * mistake in any one reading shows in others: the share of each reading that the others check is at
 * least a tenth, the wheel centres' own fore and height apart, which no tape reaches.
 */
public final class WorksheetPlan {
  /** What the old strut rod centre is called in spans of a tower. */
  public static final String STRUT_ROD = "shaft";

  /**
   * A distance to be taped.
   *
   * @param from one end
   * @param to other end; on the other side of the car for the distances across
   */
  public record Tape(WorksheetEnd from, Point to) {
    /**
     * Whether it is needed only on cars with a camber bolt at the knuckle.
     *
     * @return true if one end is the knuckle's pivot
     */
    public boolean isOptional() {
      return from == KNUCKLE_PIVOT || to == KNUCKLE_PIVOT;
    }
  }

  /**
   * A distance on a tower's top.
   *
   * @param from {@link #STRUT_ROD} or a landmark's name
   * @param to a landmark's name
   */
  public record Span(String from, String to) {}

  private static final List<Tape> BETWEEN =
      Stream.of(
              tapes(BALL_JOINT, ARM_FRONT, ARM_REAR),
              tapes(ARM_FRONT, ARM_REAR),
              tapes(TIE_INNER, TIE_OUTER),
              tapes(TIE_OUTER, BALL_JOINT, ARM_FRONT),
              tapes(STRUT_LOWER, BALL_JOINT, TIE_OUTER, ARM_FRONT, TIE_INNER, TOP),
              tapes(TOP, BALL_JOINT),
              tapes(KNUCKLE_PIVOT, BALL_JOINT, STRUT_LOWER, TIE_OUTER, ARM_FRONT))
          .flatMap(List::stream)
          .toList();

  private static final List<Tape> FROM_MARKS =
      Stream.of(
              tapes(Mark.A, BALL_JOINT, ARM_FRONT),
              tapes(Mark.B, BALL_JOINT),
              tapes(Mark.C, BALL_JOINT, ARM_REAR, TIE_OUTER, TIE_INNER),
              tapes(Mark.D, TOP))
          .flatMap(List::stream)
          .toList();

  private static final List<Tape> ACROSS =
      List.of(
          new Tape(TOP, TOP),
          new Tape(BALL_JOINT, BALL_JOINT),
          new Tape(ARM_FRONT, ARM_FRONT),
          new Tape(ARM_REAR, ARM_REAR),
          new Tape(TIE_OUTER, TIE_OUTER),
          new Tape(WHEEL_CENTRE, WHEEL_CENTRE),
          new Tape(ARM_FRONT, ARM_REAR),
          new Tape(ARM_REAR, ARM_FRONT));

  private static final int LANDMARKS = 3;

  private WorksheetPlan() {}

  private static List<Tape> tapes(WorksheetEnd from, Point... to) {
    return Stream.of(to).map(end -> new Tape(from, end)).toList();
  }

  /**
   * Distances from point to point of one side.
   *
   * @return in order of the worksheet
   */
  public static List<Tape> between() {
    return BETWEEN;
  }

  /**
   * Distances from the marks to one side's points; they follow on {@link #between}.
   *
   * @return in order of the worksheet
   */
  public static List<Tape> fromMarks() {
    return FROM_MARKS;
  }

  /**
   * Distances from a point of the left side to one of the right.
   *
   * @return in order of the worksheet
   */
  public static List<Tape> across() {
    return ACROSS;
  }

  /**
   * Names that stand for a tower's landmarks until the user gives them better ones.
   *
   * @return as many as there are rows for
   */
  public static List<String> landmarks() {
    return IntStream.rangeClosed(1, LANDMARKS).mapToObj(i -> "landmark " + i).toList();
  }

  /**
   * Distances on a tower: from the strut rod to each landmark, then between the landmarks.
   *
   * @return every pair once
   */
  public static List<Span> spans() {
    List<String> ends = Stream.concat(Stream.of(STRUT_ROD), landmarks().stream()).toList();
    return IntStream.range(0, ends.size())
        .boxed()
        .flatMap(i -> ends.stream().skip(i + 1).map(to -> new Span(ends.get(i), to)))
        .toList();
  }

  /**
   * The label of one side's tape row.
   *
   * @param side the side
   * @param index from 0, through {@link #between} and then {@link #fromMarks}
   * @return for instance "L3"
   */
  public static String label(Side side, int index) {
    return (side == Side.LEFT ? "L" : "R") + (index + 1);
  }

  /**
   * The label of a row of distances across the car.
   *
   * @param index from 0
   * @return for instance "X3"
   */
  public static String acrossLabel(int index) {
    return "X" + (index + 1);
  }
}
