package dev.towerscribe.job;

/**
 * What is believable of each figure. Common practice, no source: wide enough for any road car's
 * strut tower, narrow enough to catch a slipped digit or inches read as millimetres.
 */
final class Limits {
  static final AllowedRange PLAN = AllowedRange.mm(-600, 600);
  static final AllowedRange SHEET = AllowedRange.mm(0.3, 10);
  static final AllowedRange OPENING = AllowedRange.mm(20, 250);
  static final AllowedRange MARK = AllowedRange.mm(20, 400);
  static final AllowedRange BOLTING_FACE = AllowedRange.mm(40, 1000);
  static final AllowedRange LEAN = AllowedRange.degrees(-30, 30);
  static final AllowedRange CROWN_ACROSS = AllowedRange.mm(20, 600);
  static final AllowedRange CROWN_RISE = AllowedRange.mm(0.1, 300);
  static final AllowedRange LIP_HEIGHT = AllowedRange.mm(0.2, 40);
  static final AllowedRange LIP_RADIUS = AllowedRange.mm(0.1, 40);
  static final AllowedRange SKINS_APART = AllowedRange.mm(0, 60);
  static final AllowedRange PIVOT_HEIGHT = AllowedRange.mm(-150, 200);
  static final AllowedRange LANDMARK = AllowedRange.mm(0.5, 200);
  static final AllowedRange KEEP_OUT = AllowedRange.mm(0.5, 400);
  static final AllowedRange MARGIN = AllowedRange.mm(0, 50);
  static final AllowedRange BRACKET = AllowedRange.mm(5, 800);
  static final AllowedRange UNDERSIDE = AllowedRange.mm(0, 300);
  static final AllowedRange LEAST_WIDTH = AllowedRange.mm(0, 200);
  static final AllowedRange BRACKET_FASTENER = AllowedRange.mm(2, 60);
  static final AllowedRange STRAIGHTEDGE = AllowedRange.mm(20, 1700);

  static final AllowedRange PLATE = AllowedRange.mm(40, 500);
  static final AllowedRange PLATE_PLAN = AllowedRange.mm(-300, 300);
  static final AllowedRange THICKNESS = AllowedRange.mm(1, 40);
  static final AllowedRange SLOT = AllowedRange.mm(-100, 100);
  static final AllowedRange BEARING_X = AllowedRange.mm(-150, 150);
  static final AllowedRange BEARING_HEIGHT = AllowedRange.mm(-100, 200);
  static final AllowedRange MOVING = AllowedRange.mm(3, 150);
  static final AllowedRange CLEARANCE = AllowedRange.mm(0, 30);
  static final AllowedRange FLATS = AllowedRange.mm(5, 50);
  static final AllowedRange WASHER = AllowedRange.mm(5, 80);

  static final AllowedRange PLATE_CORNER = AllowedRange.mm(0, 100);
  static final AllowedRange HOLE = AllowedRange.mm(2, 50);
  static final AllowedRange RECESS = AllowedRange.mm(3, 100);
  static final AllowedRange RECESS_DEPTH = AllowedRange.mm(0.1, 40);
  static final AllowedRange CONE = AllowedRange.degrees(60, 120);

  /** Anything a plate is made of, from plastics to heavy metals, g/cm3. */
  static final AllowedRange DENSITY = new AllowedRange(0.5, 25, AllowedRange.Kind.DENSITY);

  static final AllowedRange EDGE_BREAK = AllowedRange.mm(0, 5);
  static final AllowedRange SLOT_WIDTH = AllowedRange.mm(3, 200);
  static final AllowedRange INDEX_HOLE = AllowedRange.mm(1, 50);
  static final AllowedRange INDEX_OFFSET = AllowedRange.mm(1, 250);
  static final AllowedRange BEARING_BORE = AllowedRange.mm(3, 200);
  static final AllowedRange SLIDER = AllowedRange.mm(10, 400);

  static final AllowedRange JIG_THICKNESS = AllowedRange.mm(3, 50);
  static final AllowedRange JIG_MARGIN = AllowedRange.mm(2, 50);
  static final AllowedRange BUSHING_BORE = AllowedRange.mm(0.8, 26);
  static final AllowedRange BUSHING = AllowedRange.mm(2, 60);

  static final AllowedRange SPRING = new AllowedRange(2, 1000, AllowedRange.Kind.RATE);
  static final AllowedRange STATIC = new AllowedRange(200, 50_000, AllowedRange.Kind.FORCE);
  static final AllowedRange FACTOR = AllowedRange.ratio(1, 5);
  static final AllowedRange FRICTION = AllowedRange.ratio(0.05, 0.5);

  /** A plate turned end for end is odd but can be meant, so the whole circle is allowed. */
  static final AllowedRange ROTATION = AllowedRange.degrees(-180, 180);

  static final AllowedRange OFFSET = AllowedRange.mm(-100, 100);
  static final AllowedRange KEEP = AllowedRange.mm(0, 50);
  static final AllowedRange ROUGH = AllowedRange.mm(0, 20);
  static final AllowedRange CORNER = AllowedRange.mm(0, 50);
  static final AllowedRange STARTER = AllowedRange.mm(2, 40);
  static final AllowedRange SOCKET = AllowedRange.mm(6, 80);
  static final AllowedRange SOCKET_DEPTH = AllowedRange.mm(10, 500);
  static final AllowedRange ROOM = AllowedRange.mm(0, 30);

  /** Less is not printed by most machines. */
  static final double LEAST_PAPER_MARGIN_MM = 4;

  /** Check bars, heads and tables of a page need this between its margins. */
  static final double LEAST_PRINTED_WIDTH_MM = 170;

  /** Printers are off by some tenths of a per cent to two; past three something else is wrong. */
  static final AllowedRange PRINT_SCALE = AllowedRange.ratio(0.97, 1.03);

  /**
   * Common practice, no source: paper fed at a slight angle leans by tenths of a degree, whole and
   * square.
   */
  static final AllowedRange PRINT_SKEW = AllowedRange.degrees(-3, 3);

  static final AllowedRange VEHICLE = AllowedRange.mm(-6000, 6000);
  static final AllowedRange TYRE_RADIUS = AllowedRange.mm(150, 600);
  static final AllowedRange WHEEL_ANGLE = AllowedRange.degrees(-10, 10);
  static final AllowedRange RIDE = AllowedRange.mm(-150, 150);
  static final AllowedRange WHEEL_TRAVEL = AllowedRange.mm(0, 200);
  static final AllowedRange STEER = AllowedRange.degrees(0, 50);
  static final AllowedRange PLUS_MINUS = AllowedRange.mm(0, 50);
  static final AllowedRange PLUS_MINUS_ANGLE = AllowedRange.degrees(0, 5);
  static final AllowedRange CASTER = AllowedRange.degrees(-10, 20);
  static final AllowedRange INCLINATION = AllowedRange.degrees(-5, 30);

  /** One standard deviation of a bay's reading: none is without, and past this it says nothing. */
  static final AllowedRange BAY_SD = AllowedRange.degrees(0.001, 5);

  static final AllowedRange AXIS_LENGTH = AllowedRange.mm(200, 1500);

  /** Two ends of a part closer than this are one point measured twice. */
  static final double LEAST_PART_MM = 20;

  /** Calipers that are off by more than this are no calipers. */
  static final AllowedRange CALIPER_SD = AllowedRange.mm(0.001, 2);

  static final AllowedRange LANDMARK_SD = AllowedRange.mm(0.001, 10);
  static final AllowedRange EDGE_SD = AllowedRange.mm(0.001, 5);
  static final AllowedRange CENTRE_SD = AllowedRange.mm(0, 10);
  static final AllowedRange LINE_SD = AllowedRange.degrees(0, 5);

  /** Between the edges of two holes of a tower; touching holes would be one hole. */
  static final AllowedRange SPAN = AllowedRange.mm(1, 800);

  static final AllowedRange EDGE_GAP = AllowedRange.mm(0, 300);

  // What is believable of a survey's readings.

  static final AllowedRange TAPE = AllowedRange.mm(5, 8000);
  static final AllowedRange FLOOR_OUT = AllowedRange.mm(-500, 2000);
  static final AllowedRange POINT_HEIGHT = AllowedRange.mm(-500, 3000);
  static final AllowedRange STRUT_ROD = AllowedRange.mm(3, 60);
  static final AllowedRange SURVEY_SPAN = AllowedRange.mm(1, 1200);

  /** Less than the first is no tape's, more than the second is no measurement. */
  static final AllowedRange SURVEY_SD = AllowedRange.mm(0.005, 50);

  static final AllowedRange SURVEY_ANGLE_SD = AllowedRange.degrees(0.005, 5);

  /** Readings of one thing: nobody takes more. */
  static final int MOST_READINGS = 20;

  static final int TITLE = 60;
  static final int NAME = 40;

  /** Material, finish: a line of a drawing's title block. */
  static final int PHRASE = 80;

  private Limits() {}
}
