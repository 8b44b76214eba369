package dev.towerscribe.sheet.worksheet;

import static dev.towerscribe.sheet.worksheet.WorksheetPoint.ARM_FRONT;
import static dev.towerscribe.sheet.worksheet.WorksheetPoint.ARM_REAR;
import static dev.towerscribe.sheet.worksheet.WorksheetPoint.BALL_JOINT;
import static dev.towerscribe.sheet.worksheet.WorksheetPoint.KNUCKLE_PIVOT;
import static dev.towerscribe.sheet.worksheet.WorksheetPoint.STRUT_LOWER;
import static dev.towerscribe.sheet.worksheet.WorksheetPoint.TIE_INNER;
import static dev.towerscribe.sheet.worksheet.WorksheetPoint.TIE_OUTER;
import static dev.towerscribe.sheet.worksheet.WorksheetPoint.TOP;
import static dev.towerscribe.sheet.worksheet.WorksheetPoint.WHEEL_CENTRE;

import dev.towerscribe.model.Side;
import java.util.ArrayList;
import java.util.List;

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
  public record Tape(WorksheetEnd from, WorksheetEnd to) {
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
      List.of(
          new Tape(BALL_JOINT, ARM_FRONT),
          new Tape(BALL_JOINT, ARM_REAR),
          new Tape(ARM_FRONT, ARM_REAR),
          new Tape(TIE_INNER, TIE_OUTER),
          new Tape(TIE_OUTER, BALL_JOINT),
          new Tape(TIE_OUTER, ARM_FRONT),
          new Tape(STRUT_LOWER, BALL_JOINT),
          new Tape(STRUT_LOWER, TIE_OUTER),
          new Tape(STRUT_LOWER, ARM_FRONT),
          new Tape(STRUT_LOWER, TIE_INNER),
          new Tape(STRUT_LOWER, TOP),
          new Tape(TOP, BALL_JOINT),
          new Tape(KNUCKLE_PIVOT, BALL_JOINT),
          new Tape(KNUCKLE_PIVOT, STRUT_LOWER),
          new Tape(KNUCKLE_PIVOT, TIE_OUTER),
          new Tape(KNUCKLE_PIVOT, ARM_FRONT));

  private static final List<Tape> FROM_MARKS =
      List.of(
          new Tape(WorksheetMark.A, BALL_JOINT),
          new Tape(WorksheetMark.A, ARM_FRONT),
          new Tape(WorksheetMark.B, BALL_JOINT),
          new Tape(WorksheetMark.C, BALL_JOINT),
          new Tape(WorksheetMark.C, ARM_REAR),
          new Tape(WorksheetMark.C, TIE_OUTER),
          new Tape(WorksheetMark.C, TIE_INNER),
          new Tape(WorksheetMark.D, TOP));

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
    List<String> names = new ArrayList<>();
    for (int i = 1; i <= LANDMARKS; i++) {
      names.add("landmark " + i);
    }
    return names;
  }

  /**
   * Distances on a tower: from the strut rod to each landmark, then between the landmarks.
   *
   * @return every pair once
   */
  public static List<Span> spans() {
    List<String> ends = new ArrayList<>();
    ends.add(STRUT_ROD);
    ends.addAll(landmarks());
    List<Span> spans = new ArrayList<>();
    for (int i = 0; i < ends.size(); i++) {
      for (int k = i + 1; k < ends.size(); k++) {
        spans.add(new Span(ends.get(i), ends.get(k)));
      }
    }
    return spans;
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
