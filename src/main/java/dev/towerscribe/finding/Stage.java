package dev.towerscribe.finding;

/** How far the work has come, which decides what can still be done about a finding. */
public enum Stage {
  /** Nothing is drilled or cut: the plate can still go elsewhere. */
  PLANNED,
  /** The holes are drilled: they stay where they are. */
  DRILLED
}
