package dev.towerscribe.job;

import static org.assertj.core.api.Assertions.assertThat;
import static org.junit.jupiter.params.provider.Arguments.arguments;

import dev.towerscribe.finding.Fault;
import java.util.Arrays;
import java.util.List;
import java.util.stream.Stream;
import org.assertj.core.api.InstanceOfAssertFactories;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.Arguments;
import org.junit.jupiter.params.provider.MethodSource;

/** One mistake in what a machinist, a jig maker or a strength page is told gives one fault. */
class MakeFaultsTest {
  private static final String MAKE =
      """
      [plate.make]
      material = "aluminium, 6 mm sheet"
      density = 2.7
      finish = "anodise"
      edge_break = 0.4
      general = "f"
      slot_width = 20.0
      slot_ends = "square"
      slot_corner = 3.5
      index_holes = { diameter = 6.1, offset = 20.0, fit = "H7" }
      bearing_bore = { diameter = 22.5, fit = "H13" }
      slider = { length = 44.0, width = 66.0, thickness = 7.0, corner = 4.5 }
      fastener = "floating"
      [mount]
      """;

  private static final String TAIL =
      """
      [drawing]
      number = "TS-1"
      owner = "A"
      created_by = "B"
      approved_by = "C"
      revision = "D"
      projection = "first"
      [jig]
      thickness = 12.0
      margin = 11.0
      bushing = { bore = 3.2, outside = 6.0, fit = "H13" }
      [load]
      spring = 25.0
      bump = 61.0
      static = 3500.0
      seat = "under"
      factor = 1.6
      class = "10.9"
      friction = 0.14
      """;

  private static final String WHOLE =
      Jobs.with(
              Jobs.with(
                  Jobs.with(Jobs.LEAST, "[mount]\n", MAKE),
                  "to = 16.0 }",
                  "to = 16.0, index = [-8.0, 16.0] }"),
              "{ name = \"A\", at = [76.0, 0.0], thread = \"M8\", flats = 13.0 }",
              "{ name = \"A\", at = [76.0, 0.0], thread = \"M8\", flats = 13.0, hole = 9.3,"
                  + " counterbore = { diameter = 15.5, depth = 2.2, face = \"top\" } }")
          + TAIL;

  private static final String SINK =
      "counterbore = { diameter = 15.5, depth = 2.2, face = \"top\" }";

  @Test
  void theWholeIsSound() {
    assertThat(Jobs.faults(WHOLE)).isEmpty();
  }

  /** What is written, what stands in its place, under which key, and words of its line. */
  static Stream<Arguments> oneMistake() {
    return Stream.of(
        // Required within their tables.
        row("diameter = 6.1, ", "", "plate.make.index_holes.diameter", "missing"),
        row("offset = 20.0, ", "", "plate.make.index_holes.offset", "missing; allowed: 1 to 250"),
        row("diameter = 22.5, ", "", "plate.make.bearing_bore.diameter", "missing"),
        row("diameter = 15.5, ", "", "plate.bolts[0].counterbore.diameter", "missing"),
        row(", face = \"top\"", "", "plate.bolts[0].counterbore.face", "missing", "top, under"),
        row("spring = 25.0\n", "", "load.spring", "missing; allowed: 2 to 1000 N/mm"),
        row("bump = 61.0\n", "", "load.bump", "missing"),
        row("static = 3500.0\n", "", "load.static", "missing; allowed: 200 to 50000 N"),
        // Types.
        row("\"aluminium, 6 mm sheet\"", "6", "plate.make.material", "quotes"),
        row("\"aluminium, 6 mm sheet\"", "\" \"", "plate.make.material", "1 to 80"),
        row("\"anodise\"", "\"" + "x".repeat(81) + "\"", "plate.make.finish", "1 to 80"),
        row("\"anodise\"", "\"a\\u0007\"", "plate.make.finish", "U+0007"),
        row("general = \"f\"", "general = \"v\"", "plate.make.general", "f, m, c"),
        row("slot_ends = \"square\"", "slot_ends = 1", "plate.make.slot_ends", "round, square"),
        row("fit = \"H7\"", "fit = \"H8\"", "plate.make.index_holes.fit", "H7, H13"),
        row("fastener = \"floating\"", "fastener = true", "plate.make.fastener", "floating"),
        row("face = \"top\"", "face = \"upper\"", "plate.bolts[0].counterbore.face", "top, under"),
        row("projection = \"first\"", "projection = 1", "drawing.projection", "first, third"),
        row("number = \"TS-1\"", "number = 1", "drawing.number", "quotes"),
        row("owner = \"A\"", "owner = \"\"", "drawing.owner", "1 to 40"),
        row("created_by = \"B\"", "created_bi = \"B\"", "drawing.created_bi", "created_by?"),
        row("class = \"10.9\"", "class = 10.9", "load.class", "8.8, 10.9"),
        row("class = \"10.9\"", "class = \"12.9\"", "load.class", "8.8, 10.9"),
        row("seat = \"under\"", "seat = \"below\"", "load.seat", "top, under"),
        row("seat = \"under\"", "seat = 1", "load.seat", "top, under"),
        row("hole = 9.3", "hole = \"9.3\"", "plate.bolts[0].hole", "quotes"),
        row(SINK, "counterbore = 3", "plate.bolts[0].counterbore", "a table"),
        row(SINK, SINK + ", countersink = {}", "plate.bolts[0].countersink", "one of the two"),
        row(
            SINK,
            "countersink = { diameter = 16.0, angle = 30, face = \"under\" }",
            "plate.bolts[0].countersink.angle",
            "60 to 120 deg"),
        row(
            SINK,
            "countersink = { diameter = 16.0, face = \"under\" }",
            "plate.bolts[0].countersink.angle",
            "missing"),
        row("[jig]", "[right.jig]\nmargin = 3\n[jig]", "right.jig", "the whole file"),
        // What fits with what. Independent: figures by hand.
        row("hole = 9.3", "hole = 8.0", "plate.bolts[0].hole", "more than the bolt's own 8 mm"),
        row("diameter = 15.5", "diameter = 9.3", "plate.bolts[0].counterbore.diameter", "9.3 mm"),
        row("depth = 2.2", "depth = 6.0", "plate.bolts[0].counterbore.depth", "thick, 6 mm"),
        // A cone of 90 degrees from 23 to 9.3 is 6.85 deep.
        row(
            SINK,
            "countersink = { diameter = 23.0, angle = 90.0, face = \"under\" }",
            "plate.bolts[0].countersink.diameter",
            "6.85 mm deep"),
        row("edge_break = 0.4", "edge_break = 3.0", "plate.make.edge_break", "thickness, 3 mm"),
        row("slot_corner = 3.5", "slot_corner = 10.1", "plate.make.slot_corner", "width, 10 mm"),
        row(", index = [-8.0, 16.0]", "", "plate.make.index_holes", "plate.slot.index"),
        row("bearing_bore = { diameter = 22.5, fit = \"H13\" }\n", "", "plate.make.slider", "only"),
        row("corner = 4.5", "corner = 22.1", "plate.make.slider.corner", "side, 22 mm"),
        // The slot reaches from x 0 - 10 to 24 + 10; a recess of 15.5 at 32 lies 2 + 7.75 in it.
        row(
            "at = [76.0, 0.0]",
            "at = [32.0, 0.0]",
            "plate.bolts[0].at",
            "metal to the slot",
            "9.75 mm"),
        // A recess of 15.5 at 86 reaches to 93.75, past the edge of 93.
        row(
            "at = [76.0, 0.0]",
            "at = [86.0, 0.0]",
            "plate.bolts[0].at",
            "metal to the edge of the plate",
            "0.75 mm"),
        // The bore of 22.5 is wider than a slider of 22.5 has metal for; touching is a fault.
        row("length = 44.0", "length = 22.5", "plate.make.slider", "touches it"));
  }

  private static Arguments row(String old, String changed, String key, String... words) {
    return arguments(old, changed, key, Arrays.asList(words));
  }

  @ParameterizedTest(name = "{2}: {1}")
  @MethodSource
  void oneMistake(String old, String changed, String key, List<String> words) {
    oneFault(Jobs.with(WHOLE, old, changed), key, words);
  }

  private static void oneFault(String text, String key, List<String> words) {
    List<Fault> faults = Jobs.faults(text);
    assertThat(faults).as("%s", faults).hasSize(1);
    assertThat(faults.get(0).key()).isEqualTo(key);
    assertThat(faults.get(0).line()).contains(words);
    assertThat(faults.get(0).todo()).as("what to do").isNotBlank();
  }

  /** Each figure once: what is written, its key, and the range it is held to. */
  static Stream<Arguments> figures() {
    return Stream.of(
        arguments("density = 2.7", "plate.make.density", "0.5 to 25 g/cm3"),
        arguments("edge_break = 0.4", "plate.make.edge_break", "0 to 5 mm"),
        arguments("slot_width = 20.0", "plate.make.slot_width", "3 to 200 mm"),
        arguments("slot_corner = 3.5", "plate.make.slot_corner", "0 to 100 mm"),
        arguments("diameter = 6.1", "plate.make.index_holes.diameter", "1 to 50 mm"),
        arguments("offset = 20.0", "plate.make.index_holes.offset", "1 to 250 mm"),
        arguments("diameter = 22.5", "plate.make.bearing_bore.diameter", "3 to 200 mm"),
        arguments("length = 44.0", "plate.make.slider.length", "10 to 400 mm"),
        arguments("width = 66.0", "plate.make.slider.width", "10 to 400 mm"),
        arguments("thickness = 7.0", "plate.make.slider.thickness", "1 to 40 mm"),
        arguments("corner = 4.5", "plate.make.slider.corner", "0 to 100 mm"),
        arguments("hole = 9.3", "plate.bolts[0].hole", "2 to 50 mm"),
        arguments("diameter = 15.5", "plate.bolts[0].counterbore.diameter", "3 to 100 mm"),
        arguments("depth = 2.2", "plate.bolts[0].counterbore.depth", "0.1 to 40 mm"),
        arguments("thickness = 12.0", "jig.thickness", "3 to 50 mm"),
        arguments("margin = 11.0", "jig.margin", "2 to 50 mm"),
        arguments("bore = 3.2", "jig.bushing.bore", "0.8 to 26 mm"),
        arguments("outside = 6.0", "jig.bushing.outside", "2 to 60 mm"),
        arguments("spring = 25.0", "load.spring", "2 to 1000 N/mm"),
        arguments("bump = 61.0", "load.bump", "0 to 200 mm"),
        arguments("static = 3500.0", "load.static", "200 to 50000 N"),
        arguments("factor = 1.6", "load.factor", "1 to 5"),
        arguments("friction = 0.14", "load.friction", "0.05 to 0.5"));
  }

  @ParameterizedTest(name = "{1}")
  @MethodSource
  void figures(String written, String key, String range) {
    String name = written.substring(0, written.indexOf('=') + 2);
    for (String odd : List.of("-7.0", "1e9", "nan", "inf", "-inf", "\"7\"", "true", "[7.0]")) {
      oneFault(Jobs.with(WHOLE, written, name + odd), key, List.of("allowed: " + range));
    }
  }

  @Test
  void aFixedFastenerNeedsItsHole() {
    String fixed = Jobs.with(WHOLE, "fastener = \"floating\"", "fastener = \"fixed\"");
    oneFault(fixed, "plate.bolts[1].hole", List.of("missing", "tapping hole"));
    String tapped =
        Jobs.with(
            fixed,
            "{ name = \"B\", at = [-38.0, 65.8],",
            "{ name = \"B\", hole = 6.8, at = [-38, 65.8],");
    assertThat(Jobs.faults(tapped)).isEmpty();
  }

  @Test
  void aSliderWithoutASlotIsRefused() {
    String text =
        Jobs.with(
            Jobs.with(
                WHOLE,
                "from = -8.0, to = 16.0, index = [-8.0, 16.0]",
                "from = 16.0, to = 16.0, index = [16.0]"),
            "offset = 20.0",
            "offset = 30.0");
    oneFault(text, "plate.make.slider", List.of("where the slot has length"));
  }

  @Test
  void everyClashAtOnce() {
    // Independent: pins of 6.1 at offset 13 lie 13 - 3.05 = 9.95 from the middle, 0.05 inside a
    // slot
    // of half width 10 and past its start, and 13 - 3.05 - 11.25 < 0 from the bore in the slider.
    String text = Jobs.with(WHOLE, "offset = 20.0", "offset = 13.0");
    List<Fault> faults = Jobs.faults(text);
    assertThat(faults).extracting(Fault::key).containsOnly("plate.make.index_holes");
    assertThat(faults.stream().map(Fault::line))
        .anySatisfy(l -> assertThat(l).contains("index hole 1a", "metal to the slot", "0.05 mm"))
        .anySatisfy(l -> assertThat(l).contains("index hole 2b", "metal to the slot", "0.05 mm"))
        .anySatisfy(l -> assertThat(l).contains("bearing bore", "1.30 mm in the slider"));
  }

  @Test
  void aSlotThatRunsOutOfThePlate() {
    // Independent: the slot's square end reaches 16 + 70 + 10 = 96 along the slot, past 93.
    String text =
        Jobs.with(
            Jobs.with(Jobs.LEAST, "bearing = { x = 8.0", "bearing = { x = 70.0"),
            "[mount]\n",
            "[plate.make]\nslot_width = 20.0\n[mount]\n");
    List<Fault> faults = Jobs.faults(text);
    assertThat(faults)
        .anySatisfy(
            f -> {
              assertThat(f.key()).isEqualTo("plate.make.slot_width");
              assertThat(f.line()).contains("the edge of the plate", "3.00 mm");
            });
    // Nothing said of the making: the plate is not judged, as before these keys.
    assertThat(Jobs.faults(Jobs.with(Jobs.LEAST, "bearing = { x = 8.0", "bearing = { x = 70.0")))
        .isEmpty();
  }

  @Test
  void cornersOfAnOutline() {
    String square = "outline = { points = [[90, 90], [-90, 90], [-90, -90], [90, -90]] }";
    String text = Jobs.with(Jobs.LEAST, "outline = { diameter = 186.0 }", square);
    assertThat(Jobs.faults(Jobs.with(text, square, square + "\ncorner = 20.0"))).isEmpty();
    assertThat(Jobs.faults(Jobs.with(text, square, square + "\ncorner = 0"))).isEmpty();
    oneFault(
        Jobs.with(text, square, square + "\ncorner = 90.5"),
        "plate.corner",
        List.of("fits everywhere"));
    for (String odd : List.of("-1", "nan", "inf", "1e9", "\"3\"")) {
      oneFault(
          Jobs.with(text, square, square + "\ncorner = " + odd),
          "plate.corner",
          List.of("0 to 100 mm"));
    }
    oneFault(
        Jobs.with(Jobs.LEAST, "handed = true", "handed = true\ncorner = 3.0"),
        "plate.corner",
        List.of("outline of points"));
    // Independent: a corner of 40 cuts the tip at 45 degrees back to 50 sqrt 2 + 40 = 110.7 from
    // the
    // middle; the bolt at (80, 80) is 113.1 out.
    String far = Jobs.with(text, "at = [76.0, 0.0]", "at = [80.0, 80.0]");
    assertThat(Jobs.faults(far)).isEmpty();
    oneFault(
        Jobs.with(far, square, square + "\ncorner = 40.0"),
        "plate.bolts[0].at",
        List.of("inside the plate's outline"));
  }

  @Test
  void limitsOfAnInchJobAreInInchesButLoadsAreNot() {
    String more =
        "[plate.make]\nslot_width = 20.0\ndensity = 7.85\n[load]\nspring = 25.0\n"
            + "bump = 2.0\nstatic = 3200.0\nseat = \"top\"\n";
    String inches = Jobs.with(Templates.text("siskin.toml"), "[mount]", more + "[mount]");
    assertThat(Jobs.faults(inches).stream().map(Fault::line))
        .singleElement(InstanceOfAssertFactories.STRING)
        .startsWith("plate.make.slot_width")
        .contains("7.874 in");
  }
}
