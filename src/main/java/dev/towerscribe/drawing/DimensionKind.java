package dev.towerscribe.drawing;

/** What a dimension says a size of. */
public enum DimensionKind {
  /** A distance between two points along a direction, with extension lines and arrows. */
  LINEAR,
  /** A distance from a datum, written at the end of a leader. */
  ORDINATE,
  /** A circle's diameter, at the end of a leader. */
  DIAMETER,
  /** An arc's radius, at the end of a leader. */
  RADIUS,
  /** The angle between two directions, on an arc with arrows. */
  ANGLE
}
