package dev.towerscribe.part;

import dev.towerscribe.quantity.Worded;

/** What a part's cut-out is for. */
public enum FeatureKind implements Worded {
  /** A bolt hole of the plate. */
  BOLT_HOLE,
  /** A hole for the pin that holds a setting. */
  INDEX_HOLE,
  /** What the bearing moves along. */
  SLOT,
  /** The bearing's seat. */
  BEARING_BORE,
  /** A hole of the jig that a drill bushing is pressed into. */
  BUSHING_HOLE,
  /** A hole of the jig that is set over a landmark. */
  SIGHT_HOLE,
  /** The jig's window over the opening. */
  WINDOW
}
