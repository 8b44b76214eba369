package dev.towerscribe.job;

import static org.assertj.core.api.Assertions.assertThat;
import static org.junit.jupiter.params.provider.Arguments.arguments;

import dev.towerscribe.finding.Fault;
import java.util.List;
import java.util.stream.Stream;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.Arguments;
import org.junit.jupiter.params.provider.MethodSource;

/** One mistake in a good job gives one fault, filed under its key, in words that help. */
class JobFaultsTest {
  private static final String WREN = Templates.text("wren.toml");

  /** What is replaced, by what, under which key, and words its line holds. */
  static Stream<Arguments> oneMistake() {
    return Stream.of(
            // Keys.
            arguments("keep = 3.0", "kepe = 3.0", "cut.kepe", "unknown key. Did you mean keep?"),
            arguments("[aims]", "[amis]", "amis", "Did you mean aims?"),
            arguments(
                "opening = { diameter = 62.0 }",
                "opening = { diametre = 62.0 }",
                "tower.opening.diametre",
                "Did you mean diameter?"),
            arguments("keep = 3.0", "flavour = 3.0", "cut.flavour", "Known here: keep, rough"),
            arguments("sheet = 1.4", "", "tower.sheet", "missing; allowed: 0.3 to 10 mm"),
            arguments("rotation = 55.0", "", "mount.rotation", "missing; allowed: -180 to 180 deg"),
            arguments("handed = true ", "# ", "plate.handed", "missing; allowed: true or false"),
            arguments("title  =", "#", "title", "missing"),
            arguments("format = 1 ", "# ", "format", "missing"),
            arguments("moving = {", "# {", "plate.moving", "Add [plate.moving]"),
            // Types.
            arguments(
                "sheet = 1.4",
                "sheet = \"1.4\"",
                "tower.sheet",
                "\"1.4\"; allowed: 0.3 to 10 mm. Write a number without quotes"),
            arguments("sheet = 1.4", "sheet = true", "tower.sheet", "true; allowed: 0.3 to 10 mm"),
            arguments("handed = true ", "handed = \"yes\"", "plate.handed", "true or false"),
            arguments(
                "handed = true ", "handed = 1 #", "plate.handed", "1; allowed: true or false"),
            arguments(
                "opening = { diameter = 62.0 }",
                "opening = 62.0",
                "tower.opening",
                "62; allowed: a table"),
            arguments(
                "title  = \"Wren hatch, road and track days\"", "title = 7", "title", "quotes"),
            arguments("at = [84.0, 40.0]", "at = [84.0]", "tower.keepout[0].at", "two numbers"),
            arguments("at = [84.0, 40.0]", "at = 84.0", "tower.keepout[0].at", "two numbers"),
            arguments("at = [84.0, 40.0]", "at = [84.0, \"x\"]", "tower.keepout[0].at[1]", "\"x\""),
            arguments("top = [-20.0, 545.0, 790.0]", "top = [-20.0, 545.0]", "strut.top", "three"),
            arguments("index = [-8.0, 4.0, 16.0]", "index = 4.0", "plate.slot.index", "list"),
            arguments(
                "fasteners = [{ at = [-86.0, 82.0], diameter = 10.0 }]",
                "fasteners = [3]",
                "tower.bracket[0].fasteners[0]",
                "a table"),
            arguments("date   = 2026-11-25", "date = \"25.11.2026\"", "date", "YYYY-MM-DD"),
            arguments("date   = 2026-11-25", "date = 2026-02-30", "date", "YYYY-MM-DD"),
            arguments("date   = 2026-11-25", "date = 0026-11-25", "date", "Check the year"),
            arguments("date   = 2026-11-25", "date = 2026-11-25T10:00:00Z", "date", "YYYY-MM-DD"),
            // Figures.
            arguments("sheet = 1.4", "sheet = -1.4", "tower.sheet", "-1.4; ", "negative"),
            arguments("sheet = 1.4", "sheet = 0", "tower.sheet", "0; ", "zero"),
            arguments("sheet = 1.4", "sheet = 14.0", "tower.sheet", "Too large", "unit"),
            arguments("sheet = 1.4", "sheet = nan", "tower.sheet", "nan; allowed: 0.3 to 10 mm"),
            arguments("sheet = 1.4", "sheet = -inf", "tower.sheet", "-inf; allowed: 0.3 to 10 mm"),
            arguments("sheet = 1.4", "sheet = 1e999", "tower.sheet", "1E+999"),
            arguments("keep = 3.0", "keep = -0.1", "cut.keep", "negative"),
            arguments("rotation = 55.0", "rotation = 181", "mount.rotation", "-180 to 180 deg"),
            arguments(
                "lean = { inboard = 5.0",
                "lean = { inboard = 50.0",
                "tower.lean.inboard",
                "-30 to 30 deg"),
            arguments(
                "opening = { diameter = 62.0 }",
                "opening = { diameter = 6.2 }",
                "tower.opening.diameter",
                "20 to 250 mm"),
            arguments(
                "tyre_radius = 290.0", "tyre_radius = 29.0", "strut.tyre_radius", "150 to 600"),
            arguments(
                "across = 1.0", "across = 0.94", "print.scale.across", "0.97 to 1.03", "scaling"),
            arguments("margin = 10.0", "skew = 3.1", "print.skew", "-3 to 3 deg", "out of square"),
            arguments("margin = 10.0", "skew = -3.1", "print.skew", "-3 to 3 deg"),
            arguments("margin = 10.0", "skew = 1e9", "print.skew", "-3 to 3 deg"),
            arguments("margin = 10.0", "skew = nan", "print.skew", "-3 to 3 deg"),
            arguments("margin = 10.0", "skew = \"0.4\"", "print.skew", "-3 to 3 deg", "quotes"),
            arguments("margin = 10.0", "margin = 3.9", "print.margin", "4 to 20 mm"),
            arguments("margin = 10.0", "margin = 20.1", "print.margin", "4 to 20 mm"),
            arguments(
                "rise = 3.0", "rise = 70.5", "tower.crown.rise", "at most half of across, 70 mm"),
            // Words.
            arguments(
                "units  = \"mm\"",
                "units = \"inch\"",
                "units",
                "\"mm\" or \"in\"",
                "Did you mean \"in\"?"),
            arguments(
                "units  = \"mm\"", "units = \"millimetres\"", "units", "Did you mean \"mm\"?"),
            arguments("units  = \"mm\"", "units = \"cm\"", "units", "\"mm\" or \"in\"", "convert"),
            arguments("units  = \"mm\"", "units = 1", "units", "\"mm\" or \"in\""),
            arguments(
                "paper = \"A4\"",
                "paper = \"a4\"",
                "print.paper",
                "A4, A3, Letter, Legal, Tabloid",
                "Did you mean \"A4\"?"),
            arguments("fit = \"medium\"", "fit = \"close\"", "holes.fit", "fine, medium, coarse"),
            arguments(
                "edge_rule = \"strict\"",
                "edge_rule = \"en1992\"",
                "holes.edge_rule",
                "strict, en1993-1-3, en1993, two-diameter",
                "Did you mean \"en1993\"?"),
            arguments(
                "use = \"road-and-track\"",
                "use = \"rally\"",
                "aims.use",
                "road, road-and-track, track"),
            arguments(
                "thread = \"M8\", flats = 13.0 },\n  { name = \"B\"",
                "thread = \"M9\", flats = 13.0 },\n  { name = \"B\"",
                "plate.bolts[0].thread",
                "M5, M6, M8, M10"),
            arguments("format = 1 ", "format = 2 ", "format", "2; allowed: 1"),
            arguments("format = 1 ", "format = \"1\" ", "format", "\"1\"; allowed: 1"),
            arguments("sides  = [\"left\", \"right\"]", "sides = []", "sides", "an empty list"),
            arguments(
                "sides  = [\"left\", \"right\"]", "sides = \"left\"", "sides", "square brackets"),
            arguments(
                "sides  = [\"left\", \"right\"]",
                "sides = [\"left\", \"rihgt\"]",
                "sides[1]",
                "Did you mean \"right\"?"),
            arguments(
                "sides  = [\"left\", \"right\"]",
                "sides = [\"left\", \"left\"]",
                "sides[1]",
                "twice"),
            // Shapes.
            arguments(
                "opening = { diameter = 62.0 }",
                "opening = { points = [[30, 30], [-30, -30], [30, -30], [-30, 30]] }",
                "tower.opening.points",
                "cross itself",
                "(0, 0)"),
            arguments(
                "opening = { diameter = 62.0 }",
                "opening = { points = [[30, 0], [-30, 0]] }",
                "tower.opening.points",
                "3 to 500 points"),
            arguments(
                "opening = { diameter = 62.0 }",
                "opening = { radii = [31, 31, 31, 31, 31] }",
                "tower.opening.radii",
                "6 to 360"),
            arguments(
                "opening = { diameter = 62.0 }",
                "opening = { diameter = 62, radii = [31, 31, 31, 31, 31, 31] }",
                "tower.opening.radii",
                "already given by diameter"),
            arguments(
                "opening = { diameter = 62.0 }",
                "opening = {}",
                "tower.opening.diameter",
                "one of diameter, points, radii"),
            arguments(
                "opening = { diameter = 62.0 }",
                "opening = { diameter = 40, at = [25, 0] }",
                "tower.opening.at",
                "around [0, 0]"),
            arguments(
                "opening = { diameter = 62.0 }",
                "opening = { points = [[30, 30], [-30, 30], [-30, -30], [30, -30]], at = [1, 1] }",
                "tower.opening.at",
                "drop this key"),
            arguments(
                "mark = { diameter = 104.0 }",
                "mark = { diameter = 61.0 }",
                "tower.mark.diameter",
                "61; allowed: a mark right round the opening"),
            arguments(
                "mark = { diameter = 104.0 }",
                "mark = { points = [[52, 52], [-20, 52], [-20, -52], [52, -52]] }",
                "tower.mark.points",
                "a mark right round the opening"),
            arguments(
                "opening = { diameter = 63.0 }",
                "opening = { diameter = 106.0 }",
                "right.tower.mark.diameter",
                "105; allowed: a mark right round"),
            arguments(
                "opening = { diameter = 63.0 }",
                "opening = { diameter = 1.0 }",
                "right.tower.opening.diameter",
                "1; allowed: 20 to 250 mm"),
            arguments(
                "outline = [[-95.0, 36.0], [-40.0, 36.0]",
                "outline = [[-95.0, 30.0], [-95.0, 30]",
                "tower.bracket[0].outline",
                "points 1 and 2 are in one place"),
            // Things.
            arguments(
                "name = \"spot weld, front\"\nat = [84.0, 40.0]",
                "name = \"spot weld, front\"",
                "tower.keepout[0].at",
                "missing"),
            arguments(
                "{ name = \"B\", at = [-38.0, 65.8]",
                "{ name = \"A\", at = [-38.0, 65.8]",
                "plate.bolts[1].name",
                "\"A\"; allowed: a name of its own"),
            arguments(
                "name = \"B\"",
                "name = \"B1-x\"",
                "plate.bolts[1].name",
                "1 to 3 letters or digits"),
            arguments(
                "at = [-38.0, 65.8]",
                "at = [75.0, 1.0]",
                "plate.bolts[1].at",
                "at least 8 mm from other bolts",
                "bolt A"),
            arguments(
                "at = [-38.0, 65.8]",
                "at = [-38.0, 85.8]",
                "plate.bolts[1].at",
                "inside the plate's outline"),
            arguments(
                "flats = 13.0 },\n  { name = \"B\"",
                "flats = 8.0 },\n  { name = \"B\"",
                "plate.bolts[0].flats",
                "more than the bolt's own 8 mm"),
            arguments(
                "flats = 13.0 },\n  { name = \"B\"",
                "flats = 13.0, washer = 7 },\n  { name = \"B\"",
                "plate.bolts[0].washer",
                "more than the bolt's own 8 mm"),
            arguments(
                "setting  = 16.0",
                "setting = 16.5",
                "mount.setting",
                "within the slot, -8 to 16 mm"),
            arguments(
                "index = [-8.0, 4.0, 16.0]",
                "index = [-8.0, 4.0, 17.0]",
                "plate.slot.index",
                "within the slot, -8 to 16 mm"),
            arguments(
                "slot = { from = -8.0",
                "slot = { from = 18.0",
                "plate.slot.from",
                "at most slot.to, 16 mm"),
            arguments(
                "[tools]\nsocket = { diameter = 19.2, depth = 60.0 }",
                "[tools]\nsocket = { depth = 60.0 }",
                "tools.socket.diameter",
                "missing"),
            // The strut.
            arguments(
                "top = [-20.0, 545.0, 790.0]",
                "top = [-20.0, -545.0, 790.0]",
                "strut.top",
                "Y positive"),
            arguments(
                "arm_rear = [-290.0, 350.0, 212.0]",
                "arm_rear = [20, 345, 206]",
                "strut.arm_rear",
                "at least 20 mm from arm_front"),
            arguments(
                "top = [-20.0, 545.0, 790.0]",
                "top = [-20.0, 545.0, 90.0]",
                "strut.top",
                "above the ball joint"),
            arguments(
                "from = -2.0, to = 0.5",
                "from = 2.0, to = 0.5",
                "strut.knuckle_bolt.from",
                "at most to, 0.5 deg"),
            arguments("bump = 60.0", "bump = -60.0", "strut.bump", "0 to 200 mm", "negative"),
            arguments("bump = 60.0", "bump = 201.0", "strut.bump", "0 to 200 mm"),
            arguments("bump = 60.0", "bump = \"60\"", "strut.bump", "\"60\""),
            arguments("droop = 60.0", "droop = nan", "strut.droop", "nan"),
            arguments("droop = 60.0", "droop = 1e9", "strut.droop", "0 to 200 mm"),
            arguments("steer = 35.0", "steer = 51.0", "strut.steer", "0 to 50 deg"),
            arguments("steer = 35.0", "steer = -35.0", "strut.steer", "0 to 50 deg"),
            arguments("caster = [5.5, 6.0]", "caster = [6.5, 6.0]", "aims.caster", "Swap"),
            arguments(
                "camber_limit = -3.2",
                "camber_limit = -2.0",
                "aims.camber_limit",
                "at most camber, -2.4 deg"),
            // Text.
            arguments(
                "\"Wren hatch, road and track days\"", "\"  \"", "title", "1 to 60 characters"),
            arguments(
                "\"Wren hatch, road and track days\"",
                "\"" + "x".repeat(61) + "\"",
                "title",
                "1 to 60 characters"),
            arguments(
                "\"bonnet hinge bracket\"",
                "\"" + "x".repeat(41) + "\"",
                "tower.bracket[0].name",
                "1 to 40 characters"),
            arguments(
                "\"Wren hatch, road and track days\"",
                "\"Wren \u2605\"",
                "title",
                "U+2605 (\u2605)"),
            arguments("\"Wren hatch, road and track days\"", "\"Wren\\u0007\"", "title", "U+0007"),
            arguments("\"Wren hatch, road and track days\"", "\"Wren\\u202E\"", "title", "U+202E"),
            // Overrides of a side.
            arguments(
                "[right.tower]",
                "[right]\nunits = \"in\"\n[right.tower]",
                "right.units",
                "the whole file"),
            arguments(
                "[right.tower]",
                "[right.towr]\n[right.tower]",
                "right.towr",
                "Did you mean tower?"),
            arguments(
                "[right.tower]",
                "[right.tower]\nshet = 1.5",
                "right.tower.shet",
                "Did you mean sheet?"),
            arguments("[right.tower]", "[left]\ncut = 3\n[right.tower]", "left.cut", "a table"),
            arguments("[right.tower]", "left = 3\n[right.tower]", "load.left", "unknown key"),
            // Plate files.
            arguments(
                "[plate]",
                "[plate]\nfile = \"/plates/three-bolt.toml\"",
                "plate.file",
                "beside the job file"),
            arguments(
                "[plate]",
                "[plate]\nfile = \"../three-bolt.toml\"",
                "plate.file",
                "beside the job file"),
            arguments(
                "[plate]", "[plate]\nfile = 'C:\\plate.toml'", "plate.file", "beside the job file"),
            arguments("[plate]", "[plate]\nfile = \"a\\u0000b\"", "plate.file", "beside the job"),
            arguments(
                "[plate]",
                "[plate]\nfile = \"plates/six-bolt.toml\"",
                "plate.file",
                "a file that exists"),
            arguments("[plate]", "[plate]\nfile = 3", "plate.file", "quotes"))
        .map(
            a ->
                a.get().length > 4
                    ? arguments(
                        a.get()[0],
                        a.get()[1],
                        a.get()[2],
                        List.of((String) a.get()[3], (String) a.get()[4]))
                    : arguments(a.get()[0], a.get()[1], a.get()[2], List.of((String) a.get()[3])));
  }

  @ParameterizedTest(name = "{2}: {1}")
  @MethodSource
  void oneMistake(String old, String changed, String key, List<String> words) {
    List<Fault> faults = Jobs.faults(Jobs.with(WREN, old, changed));
    assertThat(faults).as("%s", faults).hasSize(1);
    assertThat(faults.get(0).key()).isEqualTo(key);
    assertThat(faults.get(0).line()).contains(words);
    assertThat(faults.get(0).todo()).as("what to do").isNotBlank();
  }

  static Stream<Arguments> brokenToml() {
    return Stream.of(
        arguments(
            "a = 1\nopening = { diameter 62 }\n", "line 2, column 21: opening", "cannot be read"),
        arguments("a = 1\na = 2\n", "line 2", "This key was given before"),
        arguments(
            "a = 1\na = 2\n\n# a remark\nb = 3\n", "line 2: a = 2", "This key was given before"),
        arguments("[a]\nx = 1\n[a]\n", "line 3", "This table was given before"),
        arguments("a = 62,0\n", "line 1", "takes a point, not a comma: write 62.0"),
        arguments("a = \"x\n", "line 1", "line"),
        arguments("a = [1, 2\n", "line 2", "ends too soon"),
        arguments("a = \n", "line 1", "a value is missing"),
        arguments("a = 01\n", "line 1", "begin with a zero"),
        arguments("a = \"\\q\"\n", "line 1", "two backslashes"),
        arguments("a = \"\u0001\"\n", "line 1", "control character"),
        arguments("a = " + "[".repeat(100_000), "", "nested too deep"),
        arguments("a.".repeat(100_000) + "b = 1", "", "nested too deep"));
  }

  @ParameterizedTest
  @MethodSource
  void brokenToml(String text, String place, String words) {
    List<Fault> faults = Jobs.faults(text);
    assertThat(faults).hasSize(1);
    assertThat(faults.get(0).line()).startsWith("file: ").contains(place, words);
  }

  @Test
  void tenFaultsAtOnceEachOnceInTheFilesOrder() {
    String text = WREN;
    text = Jobs.with(text, "sheet = 1.4", "sheet = 14");
    text = Jobs.with(text, "lean = { inboard = 5.0", "lean = { inboard = \"5\"");
    text = Jobs.with(text, "name = \"spot weld, rear\"", "nmae = \"spot weld, rear\"");
    text = Jobs.with(text, "thickness = 6.0", "");
    text = Jobs.with(text, "from = -8.0", "from = nan");
    text = Jobs.with(text, "rotation = 55.0", "rotation = 550");
    text = Jobs.with(text, "fit = \"medium\"", "fit = \"loose\"");
    text = Jobs.with(text, "paper = \"A4\"", "paper = \"A5\"");
    text = Jobs.with(text, "ball_joint = [8.0, 655.0, 190.0]", "ball_joint = [8.0, 655.0]");
    text = Jobs.with(text, "opening = { diameter = 63.0 }", "opening = { diameter = 0 }");
    assertThat(Jobs.faults(text))
        .extracting(Fault::key)
        .containsExactly(
            "tower.sheet",
            "tower.lean.inboard",
            "tower.keepout[1].nmae",
            "plate.thickness",
            "plate.slot.from",
            "mount.rotation",
            "holes.fit",
            "print.paper",
            "strut.ball_joint",
            "right.tower.opening.diameter");
  }

  @Test
  void noLandmarkAtAll() {
    String line = "landmark = [{ name = \"hole\", at = [38.0, -52.0], diameter = 9.0 }]";
    for (String changed : List.of("", "landmark = []")) {
      List<Fault> faults = Jobs.faults(Jobs.with(Jobs.LEAST, line, changed));
      assertThat(faults).extracting(Fault::key).containsExactly("tower.landmark");
      assertThat(faults.get(0).limit()).contains("1 to 200 landmarks");
    }
    String twice = line.replace("]\n", "").replace("}]", "}, " + line.substring(12));
    assertThat(Jobs.faults(Jobs.with(Jobs.LEAST, line, twice)))
        .extracting(Fault::key)
        .containsExactly("tower.landmark[1].name");
  }

  @Test
  void fewerThanTwoBolts() {
    String second = "  { name = \"B\", at = [-38.0, 65.8], thread = \"M8\", flats = 13.0 },\n";
    List<Fault> faults = Jobs.faults(Jobs.with(Jobs.LEAST, second, ""));
    assertThat(faults).extracting(Fault::key).containsExactly("plate.bolts");
    assertThat(faults.get(0).line()).contains("a list of 1; allowed: 2 to 200 bolts");
  }

  /** Independent: 0.3 mm / 25.4 = 0.01181 in, 10 mm = 0.39370 in, rounded into the range. */
  @Test
  void limitsOfAnInchJobAreInInches() {
    String text = Jobs.with(Templates.text("siskin.toml"), "sheet = 0.055", "sheet = 1.4");
    assertThat(Jobs.faults(text).get(0).line())
        .startsWith("tower.sheet: 1.4; allowed: 0.0119 to 0.3937 in");
    String atLimit = Jobs.with(Templates.text("siskin.toml"), "sheet = 0.055", "sheet = 0.0119");
    assertThat(Jobs.faults(atLimit)).isEmpty();
  }

  /** With the unit unknown a length is at fault only if it is so in any unit. */
  @Test
  void anUnknownUnitHidesNoOtherFaultsButMakesNone() {
    String text = Jobs.with(Templates.text("siskin.toml"), "units  = \"in\"", "units = \"inches\"");
    assertThat(Jobs.faults(text)).extracting(Fault::key).containsExactly("units");
    assertThat(Jobs.faults(Jobs.with(text, "rotation = 40.0", "rotation = 400.0")))
        .extracting(Fault::key)
        .containsExactly("units", "mount.rotation");
    assertThat(Jobs.faults(Jobs.with(text, "sheet = 0.055", "sheet = -1e308")))
        .extracting(Fault::key)
        .containsExactly("units", "tower.sheet");

    assertThat(Jobs.faults(Jobs.with(text, "sheet = 0.055", "sheet = nan")))
        .extracting(Fault::key)
        .containsExactly("units", "tower.sheet");
  }

  @Test
  void faultsOfAPlateFileNameTheFile() {
    String plate =
        Jobs.with(Templates.text("plates/four-bolt.toml"), "thickness = 8.0", "thickness = 80.0");
    String text = Templates.text("dunnock.toml");
    assertThat(faultsWithPlate(text, plate))
        .extracting(Fault::key)
        .containsExactly("plates/four-bolt.toml: thickness");
    assertThat(faultsWithPlate(text, "thickness = "))
        .extracting(Fault::key)
        .containsExactly("plates/four-bolt.toml");
    assertThat(faultsWithPlate(text, Jobs.with(plate, "format = 1", "format = 3")))
        .extracting(Fault::key)
        .containsExactly("plates/four-bolt.toml: format");
    assertThat(faultsWithPlate(text, Jobs.with(plate, "bolts = [", "bolst = [")))
        .extracting(Fault::key)
        .containsExactly("plates/four-bolt.toml: thickness", "plates/four-bolt.toml: bolst");
    String inches = Jobs.with(plate, "units = \"mm\"", "units = \"yard\"");
    assertThat(faultsWithPlate(text, inches))
        .extracting(Fault::key)
        .containsExactly("plates/four-bolt.toml: units", "plates/four-bolt.toml: thickness");
  }

  private static List<Fault> faultsWithPlate(String text, String plate) {
    try {
      Jobs.READER.parse(text, name -> java.util.Optional.of(plate));
      return List.of();
    } catch (dev.towerscribe.finding.JobRejected e) {
      return e.faults();
    }
  }

  @Test
  void aSocketForAVeryLargeHexIsNotGuessed() {
    String text = Jobs.LEAST.replace("flats = 13.0", "flats = 24.0");
    List<Fault> faults = Jobs.faults(text);
    assertThat(faults).extracting(Fault::key).containsExactly("tools.socket");
    assertThat(faults.get(0).todo()).contains("19 mm across flats");
  }

  @Test
  void thousandsOfFaultsAreCutShort() {
    StringBuilder text = new StringBuilder(Jobs.LEAST);
    for (int i = 0; i < 5000; i++) {
      text.append("key").append(i).append(" = 1\n");
    }
    List<Fault> faults = Jobs.faults(text.toString());
    assertThat(faults).hasSize(201);
    assertThat(faults.get(200).given()).isEqualTo("4800 more faults");
  }
}
