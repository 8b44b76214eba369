package dev.towerscribe.drawing;

/** What a shape stands for. The order is the order of painting, lowest first. */
public enum Layer {
  /** Hatching and tint of metal to be cut away. */
  WASTE("waste"),
  /** Outline of the plate as it will lie. */
  PLATE("plate"),
  /** Edges of the sound metal and the walls. */
  LAND("land"),
  /** The ring the old mount left. */
  MARK("mark"),
  /** The opening as found. */
  OPENING("opening"),
  /** Where nothing may go. */
  KEEP_OUTS("keep-outs"),
  /** Brackets above the tower. */
  BRACKETS("brackets"),
  /** Centre lines, arrows' lines and straightedge lines. */
  CENTRE_LINES("centre-lines"),
  /** Features a sheet is laid against. */
  LANDMARKS("landmarks"),
  /** The first, smaller cut. */
  ROUGH_CUT("rough-cut"),
  /** The line to finish to. */
  FINAL_CUT("final-cut"),
  /** Starter holes for a saw. */
  STARTER_HOLES("starter-holes"),
  /** Metal to take from a bracket. */
  NOTCH("notch"),
  /** Bolt holes: final circle, pilot circle and cross. */
  HOLES("holes"),
  /** Other edges cut right through a part: its slot, a jig's window. */
  CUTOUTS("cutouts"),
  /** Counterbores and countersinks. */
  RECESSES("recesses"),
  /** Edges that lie behind metal. */
  HIDDEN("hidden-edges"),
  /** Pictures of a part that are no edges to cut: its side, its other hand made small. */
  OTHER_VIEWS("other-views"),
  /** Dimensions, their lines, arrows and figures. */
  DIMENSIONS("dimensions"),
  /** Frame and title block of a drawing. */
  FRAME("frame"),
  /** Bars to measure the print by. */
  CHECK_BARS("check-bars"),
  /** Words, tables, frames. */
  NOTES("notes");

  private final String id;

  Layer(String id) {
    this.id = id;
  }

  /**
   * The name used for groups in files.
   *
   * @return lower case with hyphens
   */
  public String id() {
    return id;
  }
}
