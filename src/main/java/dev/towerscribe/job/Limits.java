package dev.towerscribe.job;

/**
 * What is believable of each figure. Common practice, no source: wide enough for any road car's
 * strut tower, narrow enough to catch a slipped digit or inches read as millimetres.
 */
final class Limits {
  static final Range PLAN = Range.mm(-600, 600);
  static final Range SHEET = Range.mm(0.3, 10);
  static final Range OPENING = Range.mm(20, 250);
  static final Range MARK = Range.mm(20, 400);
  static final Range BOLTING_FACE = Range.mm(40, 1000);
  static final Range LEAN = Range.degrees(-30, 30);
  static final Range CROWN_ACROSS = Range.mm(20, 600);
  static final Range CROWN_RISE = Range.mm(0.1, 300);
  static final Range PIVOT_HEIGHT = Range.mm(-150, 200);
  static final Range LANDMARK = Range.mm(0.5, 200);
  static final Range KEEP_OUT = Range.mm(0.5, 400);
  static final Range MARGIN = Range.mm(0, 50);
  static final Range BRACKET = Range.mm(5, 800);
  static final Range UNDERSIDE = Range.mm(0, 300);
  static final Range LEAST_WIDTH = Range.mm(0, 200);
  static final Range BRACKET_FASTENER = Range.mm(2, 60);
  static final Range STRAIGHTEDGE = Range.mm(20, 1700);

  static final Range PLATE = Range.mm(40, 500);
  static final Range PLATE_PLAN = Range.mm(-300, 300);
  static final Range THICKNESS = Range.mm(1, 40);
  static final Range SLOT = Range.mm(-100, 100);
  static final Range BEARING_X = Range.mm(-150, 150);
  static final Range BEARING_HEIGHT = Range.mm(-100, 200);
  static final Range MOVING = Range.mm(3, 150);
  static final Range CLEARANCE = Range.mm(0, 30);
  static final Range FLATS = Range.mm(5, 50);
  static final Range WASHER = Range.mm(5, 80);

  static final Range PLATE_CORNER = Range.mm(0, 100);
  static final Range HOLE = Range.mm(2, 50);
  static final Range RECESS = Range.mm(3, 100);
  static final Range RECESS_DEPTH = Range.mm(0.1, 40);
  static final Range CONE = Range.degrees(60, 120);

  /** Anything a plate is made of, from plastics to heavy metals, g/cm3. */
  static final Range DENSITY = new Range(0.5, 25, Range.Kind.DENSITY);

  static final Range EDGE_BREAK = Range.mm(0, 5);
  static final Range SLOT_WIDTH = Range.mm(3, 200);
  static final Range INDEX_HOLE = Range.mm(1, 50);
  static final Range INDEX_OFFSET = Range.mm(1, 250);
  static final Range BEARING_BORE = Range.mm(3, 200);
  static final Range SLIDER = Range.mm(10, 400);

  static final Range JIG_THICKNESS = Range.mm(3, 50);
  static final Range JIG_MARGIN = Range.mm(2, 50);
  static final Range BUSHING_BORE = Range.mm(0.8, 26);
  static final Range BUSHING = Range.mm(2, 60);

  static final Range SPRING = new Range(2, 1000, Range.Kind.RATE);
  static final Range STATIC = new Range(200, 50_000, Range.Kind.FORCE);
  static final Range FACTOR = Range.ratio(1, 5);
  static final Range FRICTION = Range.ratio(0.05, 0.5);

  /** A plate turned end for end is odd but can be meant, so the whole circle is allowed. */
  static final Range ROTATION = Range.degrees(-180, 180);

  static final Range OFFSET = Range.mm(-100, 100);
  static final Range KEEP = Range.mm(0, 50);
  static final Range ROUGH = Range.mm(0, 20);
  static final Range CORNER = Range.mm(0, 50);
  static final Range STARTER = Range.mm(2, 40);
  static final Range SOCKET = Range.mm(6, 80);
  static final Range SOCKET_DEPTH = Range.mm(10, 500);
  static final Range ROOM = Range.mm(0, 30);

  /** Less is not printed by most machines. */
  static final double LEAST_PAPER_MARGIN_MM = 4;

  /** Check bars, heads and tables of a page need this between its margins. */
  static final double LEAST_PRINTED_WIDTH_MM = 170;

  /** Printers are off by some tenths of a per cent to two; past three something else is wrong. */
  static final Range PRINT_SCALE = Range.ratio(0.97, 1.03);

  /**
   * Common practice, no source: paper fed at a slight angle leans by tenths of a degree, whole and
   * square.
   */
  static final Range PRINT_SKEW = Range.degrees(-3, 3);

  static final Range VEHICLE = Range.mm(-6000, 6000);
  static final Range TYRE_RADIUS = Range.mm(150, 600);
  static final Range WHEEL_ANGLE = Range.degrees(-10, 10);
  static final Range RIDE = Range.mm(-150, 150);
  static final Range WHEEL_TRAVEL = Range.mm(0, 200);
  static final Range STEER = Range.degrees(0, 50);
  static final Range PLUS_MINUS = Range.mm(0, 50);
  static final Range PLUS_MINUS_ANGLE = Range.degrees(0, 5);
  static final Range CASTER = Range.degrees(-10, 20);
  static final Range INCLINATION = Range.degrees(-5, 30);

  /** One standard deviation of a bay's reading: none is without, and past this it says nothing. */
  static final Range BAY_SD = Range.degrees(0.001, 5);

  static final Range AXIS_LENGTH = Range.mm(200, 1500);

  /** Two ends of a part closer than this are one point measured twice. */
  static final double LEAST_PART_MM = 20;

  /** Calipers that are off by more than this are no calipers. */
  static final Range CALIPER_SD = Range.mm(0.001, 2);

  static final Range LANDMARK_SD = Range.mm(0.001, 10);
  static final Range EDGE_SD = Range.mm(0.001, 5);
  static final Range CENTRE_SD = Range.mm(0, 10);
  static final Range LINE_SD = Range.degrees(0, 5);

  /** Between the edges of two holes of a tower; touching holes would be one hole. */
  static final Range SPAN = Range.mm(1, 800);

  static final Range EDGE_GAP = Range.mm(0, 300);

  static final int TITLE = 60;
  static final int NAME = 40;

  /** Material, finish: a line of a drawing's title block. */
  static final int PHRASE = 80;

  private Limits() {}
}
