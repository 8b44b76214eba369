package dev.towerscribe.part;

/** What a part's cut-out is for. */
public enum FeatureKind {
  /** A bolt hole of the plate. */
  BOLT_HOLE("bolt hole"),
  /** A hole for the pin that holds a setting. */
  INDEX_HOLE("index hole"),
  /** What the bearing moves along. */
  SLOT("slot"),
  /** The bearing's seat. */
  BEARING_BORE("bearing bore"),
  /** A hole of the jig that a drill bushing is pressed into. */
  BUSHING_HOLE("bushing hole"),
  /** A hole of the jig that is set over a landmark. */
  SIGHT_HOLE("sight hole"),
  /** The jig's window over the opening. */
  WINDOW("window");

  private final String word;

  FeatureKind(String word) {
    this.word = word;
  }

  /**
   * Its name in tables and data.
   *
   * @return lower-case words
   */
  public String word() {
    return word;
  }
}
