package dev.towerscribe.finding;

/** What a limit rests on where no published figure stands behind it. */
public final class Sources {
  /** A habit of the trade that no source was found for. */
  public static final String PRACTICE = "common practice, no source";

  /** A limit that the program's makers chose. */
  public static final String OWN_CHOICE = "our own choice, no source";

  /** A limit that nobody set: past it two things would be in one place. */
  public static final String GEOMETRY = "geometry";

  private Sources() {}
}
