package dev.towerscribe.sheet.worksheet;

import java.util.Locale;

/** What a tape is held to: a point of the strut corner or a mark on floor or body. */
public sealed interface WorksheetEnd {
  /**
   * Its name in the survey file.
   *
   * @return for instance "ball_joint" or "A"
   */
  String key();

  /**
   * Its short name on the worksheet's figures.
   *
   * @return a number for a point, a letter for a mark
   */
  String sign();

  /**
   * What the trade calls it.
   *
   * @return for instance "lower ball joint"
   */
  String words();

  /**
   * A point of a strut corner that a survey takes, in the order of the worksheet and of the survey
   * file, which calls it by the constant's name in small letters.
   */
  enum Point implements WorksheetEnd {
    /** The original top pivot. */
    TOP("top pivot", "middle of its bearing or rubber"),
    /** The lower ball joint. */
    BALL_JOINT("lower ball joint", "middle of its ball"),
    /** The lower arm's front inner pivot. */
    ARM_FRONT("lower arm, front bush", "middle of the bush, on its bolt"),
    /** The lower arm's rear inner pivot. */
    ARM_REAR("lower arm, rear bush", "middle of the bush, on its bolt"),
    /** A point of the damper's axis, fixed in the upright. */
    STRUT_LOWER("strut tube, low", "centre line, above knuckle"),
    /** The tie rod's inner end. */
    TIE_INNER("tie rod, inner ball", "middle of its ball, in the boot"),
    /** The tie rod's outer end. */
    TIE_OUTER("tie rod, outer ball", "middle of its ball"),
    /** The wheel's centre. */
    WHEEL_CENTRE("wheel centre", "hub, halfway across the tyre"),
    /** The bolt that the strut turns about at the knuckle, where a camber bolt is fitted. */
    KNUCKLE_PIVOT("knuckle pivot", "only with a camber bolt: the bolt that stays");

    private final String words;
    private final String where;

    Point(String words, String where) {
      this.words = words;
      this.where = where;
    }

    @Override
    public String key() {
      return name().toLowerCase(Locale.ROOT);
    }

    @Override
    public String sign() {
      return Integer.toString(ordinal() + 1);
    }

    @Override
    public String words() {
      return words;
    }

    /**
     * The very place on the part.
     *
     * @return a few words
     */
    public String where() {
      return where;
    }

    /**
     * Whether a car may do without it.
     *
     * @return true for the knuckle's pivot
     */
    public boolean isOptional() {
      return this == KNUCKLE_PIVOT;
    }
  }

  /**
   * A mark on the car's middle line that both sides are taped from: the file's stations. On the
   * middle line they read the same from either side, and only one or two figures of their place
   * have to be measured.
   */
  enum Mark implements WorksheetEnd {
    /** Ahead of the wheels. */
    A("mark ahead", 1),
    /** Where the middle line crosses the line through the wheel centres. */
    B("middle mark", 0),
    /** Behind the wheels. */
    C("mark behind", -1),
    /** On the body: the one that checks the top pivots fore and aft. */
    D("front panel", 1);

    private final String words;
    private final int foreSign;

    Mark(String words, int foreSign) {
      this.words = words;
      this.foreSign = foreSign;
    }

    @Override
    public String key() {
      return name();
    }

    @Override
    public String sign() {
      return name();
    }

    @Override
    public String words() {
      return words;
    }

    /**
     * Which way it lies from the line through the wheel centres.
     *
     * @return +1 ahead, -1 behind, 0 on it
     */
    public int foreSign() {
      return foreSign;
    }

    /**
     * Whether it is on the floor.
     *
     * @return false for the mark on the body, whose height is measured too
     */
    public boolean isOnFloor() {
      return this != D;
    }
  }
}
