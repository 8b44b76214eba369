package dev.towerscribe;

/** How often a test that tries many cases does so: less in each build, more in the long run. */
public final class Tries {
  /** Tests with this tag run in each build and again, with more tries, in the long run. */
  public static final String TAG = "more-tries";

  private static final boolean LONG_RUN = Boolean.getBoolean("tests.long");

  private Tries() {}

  /**
   * A number for this run. Cases come from a seed, so those of a build are the first of a long run.
   *
   * @param inEachBuild enough to notice a slip in a formula
   * @param inLongRun enough to meet the rare case
   */
  public static int of(int inEachBuild, int inLongRun) {
    return LONG_RUN ? inLongRun : inEachBuild;
  }
}
