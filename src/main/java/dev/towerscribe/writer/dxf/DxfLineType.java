package dev.towerscribe.writer.dxf;

import dev.towerscribe.drawing.Pen;

/** Line types by the names that other programs know them by, with the pens' own lengths in mm. */
enum DxfLineType {
  CONTINUOUS("Solid line", Pen.OUTLINE),
  DASHED("Dashes", Pen.ROUGH_CUT),
  HIDDEN("Short dashes", Pen.HIDDEN),
  CENTER("Long chain", Pen.CENTRE);

  private final String description;
  private final Pen pattern;

  DxfLineType(String description, Pen pattern) {
    this.description = description;
    this.pattern = pattern;
  }

  String description() {
    return description;
  }

  /** A pen with its dashes. */
  Pen pattern() {
    return pattern;
  }

  /** The type that has a pen's dashes. */
  static DxfLineType of(Pen pen) {
    for (DxfLineType type : values()) {
      if (type.pattern.dashesMm().equals(pen.dashesMm())) {
        return type;
      }
    }
    throw new IllegalStateException("no line type has the dashes of " + pen);
  }
}
