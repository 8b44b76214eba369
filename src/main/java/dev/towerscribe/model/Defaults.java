package dev.towerscribe.model;

/**
 * What stands in where a job leaves a margin out, mm. Readers of jobs fill in from here, and the
 * checks name these beside a job's own figure that is less. Common practice, no source.
 */
public final class Defaults {
  /** Plate beyond the finished opening, all round. */
  public static final double COVER_MM = 5.0;

  /** Plate to the tower's wall. */
  public static final double WALL_GAP_MM = 2.0;

  /** What moves with the bearing to the opening's edge. */
  public static final double CLEARANCE_MM = 2.0;

  /** Air round a socket. */
  public static final double ROOM_MM = 2.0;

  /** Round a keep-out. */
  public static final double KEEP_OUT_MM = 3.0;

  /** Left standing inside the mark. */
  public static final double KEEP_MM = 3.0;

  /** Least radius of an inside corner of the cut. */
  public static final double CORNER_MM = 8.0;

  /** The rule for metal round a hole. */
  public static final EdgeRule EDGE_RULE = EdgeRule.STRICT;

  private Defaults() {}
}
