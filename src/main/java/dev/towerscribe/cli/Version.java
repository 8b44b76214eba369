package dev.towerscribe.cli;

/**
 * The program's version, a constant so that no resource is opened for it; a test holds it to the
 * build.
 */
final class Version {
  /** As in the build file. */
  static final String TEXT = "0.1.0";

  private Version() {}
}
