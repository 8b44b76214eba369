package dev.towerscribe.writer.step;

/** A file that is not the kind of STEP file that is written here. */
final class StepUnreadable extends Exception {
  StepUnreadable(String message) {
    super(message);
  }
}
