package dev.towerscribe.layout.quick;

/** What stands in the way of a placement. */
public enum Barrier {
  /** The strut rod or what moves with it meets the opening's edge. */
  STRUT_ROD,
  /** The plate does not cover the opening, or meets a wall, or reaches past a dome's edge. */
  PLATE,
  /** A hole, washer or nut is too near an edge, a landmark or a keep-out. */
  BOLTS,
  /** Too little of a bracket would be left. */
  BRACKET
}
