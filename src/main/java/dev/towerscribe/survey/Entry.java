package dev.towerscribe.survey;

/**
 * What the readings of one thing are called.
 *
 * @param id names them among all of a survey: "left" or "right", a point, and letters, digits,
 *     hyphens
 * @param kind what was read with what
 * @param words what it is: "the tape from C to ball_joint"
 */
record Entry(String id, Kind kind, String words) {
  /** Kinds of readings; each has words for being too much and too little. */
  enum Kind {
    /** A distance between points of the car. */
    TAPE("tapes", "longer", "shorter"),
    /** Forward, on the floor. */
    FORWARD("floor plots", "further forward", "further rearward"),
    /** Outward, on the floor. */
    OUT("floor plots", "further out", "further in"),
    /** Above the floor. */
    HEIGHT("heights", "higher", "lower"),
    /** The place of a station that is known. */
    STATION("stations", "more", "less"),
    /** Forward, on the tower. */
    FORE("places by rule", "further forward", "further rearward"),
    /** Inward, on the tower. */
    IN("places by rule", "further in", "further out"),
    /** Between holes of the tower. */
    SPAN("spans", "longer", "shorter"),
    /** A hole's diameter. */
    DIAMETER("diameters", "larger", "smaller");

    private final String plural;
    private final String more;
    private final String less;

    Kind(String plural, String more, String less) {
      this.plural = plural;
      this.more = more;
      this.less = less;
    }

    String plural() {
      return plural;
    }

    String comparative(double excess) {
      return excess > 0 ? more : less;
    }

    /** Whether it is told in hundredths of a millimetre. */
    boolean isFine() {
      return switch (this) {
        case SPAN, DIAMETER, FORE, IN -> true;
        case TAPE, FORWARD, OUT, HEIGHT, STATION -> false;
      };
    }
  }

  /** "left", "right" or "both". */
  String side() {
    return id.substring(0, id.indexOf('.'));
  }

  /** The rest of the id. */
  String thing() {
    return id.substring(id.indexOf('.') + 1);
  }
}
