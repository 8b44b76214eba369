package dev.towerscribe.geometry;

/** Which operation two regions are put through; what is kept of each boundary follows from it. */
enum OverlayKind {
  INTERSECTION,
  UNION,
  MINUS
}
