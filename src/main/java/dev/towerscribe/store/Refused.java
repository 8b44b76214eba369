package dev.towerscribe.store;

import java.io.IOException;
import java.util.List;

/**
 * Nothing was written, because something bars it. Its words say what; what a user can do about it
 * depends on who asked, so whoever catches it adds that.
 */
public final class Refused extends IOException {
  private static final long serialVersionUID = 1L;

  /** What bars it. */
  public enum Why {
    /** Another run is at work in the directory. */
    BUSY,
    /** The folder of the file is missing; only directories named for output are made. */
    NO_FOLDER,
    /** Another file is there, and nobody said that it may be replaced. */
    THERE_ALREADY,
    /** What is there is of a kind that is never replaced by what was to be written. */
    NEVER_REPLACED,
    /** A finished file does not show what was laid out: a fault of the program. */
    UNPROVED
  }

  private final Why why;
  private final transient List<String> lines;

  /**
   * Bars a writing.
   *
   * @param why what bars it
   * @param lines sentences without a full stop
   */
  public Refused(Why why, List<String> lines) {
    super(String.join("\n", lines));
    this.why = why;
    this.lines = List.copyOf(lines);
  }

  Refused(Why why, String line) {
    this(why, List.of(line));
  }

  /**
   * What bars it.
   *
   * @return one of the few
   */
  public Why why() {
    return why;
  }

  /**
   * The same in words.
   *
   * @return one sentence, or one and then each thing that is wrong
   */
  public List<String> lines() {
    return lines;
  }
}
