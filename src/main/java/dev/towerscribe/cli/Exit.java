package dev.towerscribe.cli;

/** Exit codes of every command. */
final class Exit {
  /** The command did what it was asked. */
  static final int DONE = 0;

  /**
   * The job was understood and has a stop finding that was not accepted; or readings of a print
   * were understood, and no printer can be so far off.
   */
  static final int STOPPED = 1;

  /** Wrong use or bad input; nothing was written. */
  static final int WRONG_USE = 2;

  /** A file could not be read or written. */
  static final int FILES = 3;

  /** A fault of the program's own: EX_SOFTWARE of sysexits.h (BSD). */
  static final int OUR_FAULT = 70;

  private Exit() {}
}
