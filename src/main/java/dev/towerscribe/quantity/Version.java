package dev.towerscribe.quantity;

/**
 * The program's version, a constant so that no resource is opened for it; a test holds it to the
 * build.
 */
public final class Version {
  /** As in the build file. */
  public static final String TEXT = "0.1.0";

  private Version() {}
}
