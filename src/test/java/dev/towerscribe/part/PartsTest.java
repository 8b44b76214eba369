package dev.towerscribe.part;

import static org.assertj.core.api.Assertions.assertThat;
import static org.assertj.core.api.Assertions.within;

import dev.towerscribe.finding.Finding;
import dev.towerscribe.finding.Severity;
import dev.towerscribe.geometry.Recess;
import dev.towerscribe.geometry.Vec2;
import dev.towerscribe.quantity.Tolerances;
import java.util.List;
import org.junit.jupiter.api.Test;

class PartsTest {
  private static final double MM = Tolerances.COMPUTED_MM;

  /** Relative rounding of a volume put together from some ten terms. */
  private static final double SHARE = 1e-12;

  private static final String MADE =
      PartJobs.made(
              """
              density = 2.7
              general = "c"
              slot_width = 20.0
              slot_ends = "square"
              slot_corner = 3.5
              index_holes = { diameter = 6.1, offset = 20.0 }
              bearing_bore = { diameter = 22.5 }
              slider = { length = 44.0, width = 66.0, thickness = 7.0, corner = 4.5 }
              """)
          .replace(
              "{ name = \"A\", at = [76.0, 0.0], thread = \"M8\", flats = 13.0 }",
              "{ name = \"A\", at = [76.0, 0.0], thread = \"M8\", flats = 13.0, hole = 9.3,"
                  + " counterbore = { diameter = 15.5, depth = 2.2, face = \"top\" } }");

  private static Feature feature(Part part, String name) {
    return part.features().stream().filter(f -> f.name().equals(name)).findFirst().orElseThrow();
  }

  /**
   * Independent: disc 186, slot 26 x 24 with half circles, three holes of 9, by closed formulas.
   */
  @Test
  void volumeAndMassOfAPlainPlate() throws Exception {
    Part plate =
        PartJobs.find(PartJobs.parts(PartJobs.PLAIN), PartKind.PLATE, Hand.LEFT).orElseThrow();
    double area = Math.PI * 93 * 93 - (26 * 24 + Math.PI * 13 * 13) - 3 * Math.PI * 4.5 * 4.5;
    assertThat(plate.volumeMm3()).isCloseTo(area * 6, within(area * 6 * SHARE));
    // Independent: the same worked out apart from the program.
    assertThat(plate.massKg()).isCloseTo(1.216397720985, within(1e-11));
    assertThat(plate.quantity()).isEqualTo(1);
    assertThat(plate.features()).extracting(Feature::name).containsExactly("slot", "A", "B", "C");
    assertThat(plate.assumed())
        .contains(
            "material: structural steel, 235 MPa or better",
            "density: 7.85 g/cm3",
            "slot width: 26 mm, for what moves in it",
            "slot ends: round",
            "hole A: 9 mm, clearance for M8",
            "general tolerances: ISO 2768-m");
  }

  /** Independent: formulas for a rounded rectangle, discs and a ring, worked out apart. */
  @Test
  void volumeAndMassOfEverythingAtOnce() throws Exception {
    JobParts parts = PartJobs.parts(MADE);
    Part plate = PartJobs.find(parts, PartKind.PLATE, Hand.LEFT).orElseThrow();
    assertThat(plate.volumeMm3()).isCloseTo(155674.850384245, within(1e-6));
    assertThat(plate.massKg()).isCloseTo(0.420322096037, within(1e-11));
    Part slider = PartJobs.find(parts, PartKind.SLIDER, Hand.LEFT).orElseThrow();
    assertThat(slider.volumeMm3()).isCloseTo(17013.920697866, within(1e-6));
    assertThat(slider.massKg()).isCloseTo(0.045937585884, within(1e-11));
    assertThat(slider.hand()).isEqualTo(Hand.BOTH);
    assertThat(slider.quantity()).isEqualTo(2);
    assertThat(parts.parts()).hasSize(3);
  }

  @Test
  void featuresAndTheirTolerances() throws Exception {
    Part plate = PartJobs.find(PartJobs.parts(MADE), PartKind.PLATE, Hand.LEFT).orElseThrow();
    assertThat(plate.features())
        .extracting(Feature::name)
        .containsExactly("slot", "A", "B", "C", "1a", "1b", "2a", "2b");
    Feature a = feature(plate, "A");
    assertThat(a.diameterMm()).isEqualTo(9.3);
    assertThat(a.assumed()).isFalse();
    assertThat(a.recess().orElseThrow()).isEqualTo(new Recess.Counterbore(15.5, 2.2, true));
    // Independent: T = 9.3 - 8 and 9 - 8; H13 from ISO 286-2.
    assertThat(a.position().orElseThrow().diameterMm()).isCloseTo(1.3, within(MM));
    assertThat(a.size().upperMm()).isCloseTo(0.22, within(MM));
    Feature b = feature(plate, "B");
    assertThat(b.assumed()).isTrue();
    assertThat(b.position().orElseThrow().diameterMm()).isCloseTo(1.0, within(MM));
    Feature slot = feature(plate, "slot");
    assertThat(slot.diameterMm()).isEqualTo(20.0);
    // Independent: settings -8 and 16 from bearing x 8 end at 0 and 24, half the width beyond them.
    assertThat(slot.edge().orElseThrow().bounds().minX()).isCloseTo(-10, within(MM));
    assertThat(slot.edge().orElseThrow().bounds().maxX()).isCloseTo(34, within(MM));
    assertThat(slot.centre().distanceTo(new Vec2(12, 0))).isLessThan(MM);
    // From memory: ISO 2768-c, over 6 to 30.
    assertThat(slot.size().upperMm()).isEqualTo(0.5);
    // Independent: index -8 is at x = 8 - 8 = 0.
    assertThat(feature(plate, "1a").centre()).isEqualTo(new Vec2(0, 20));
    assertThat(feature(plate, "2b").centre()).isEqualTo(new Vec2(24, -20));
    assertThat(feature(plate, "1a").size().text()).isEqualTo("H13");
    Part slider = PartJobs.find(PartJobs.parts(MADE), PartKind.SLIDER, Hand.RIGHT).orElseThrow();
    assertThat(slider.features()).extracting(Feature::name).containsExactly("bearing", "a", "b");
    assertThat(feature(slider, "bearing").size().text()).isEqualTo("H7");
    // Published: ISO 286-2, H7 over 18 to 30 mm.
    assertThat(feature(slider, "bearing").size().upperMm()).isCloseTo(0.021, within(MM));
    assertThat(feature(slider, "b").centre()).isEqualTo(new Vec2(0, -20));
  }

  @Test
  void fixedBoltsTakeTheirRoomFromTheTower() throws Exception {
    String text =
        PartJobs.made("fastener = \"fixed\"").replace("flats = 13.0", "flats = 13.0, hole = 6.8");
    Feature a = feature(PartJobs.parts(text).parts().get(0), "A");
    assertThat(a.diameterMm()).isEqualTo(6.8);
    // Independent: the tower's medium hole for M8 is 9.0, so (9 - 8) / 2.
    assertThat(a.position().orElseThrow().diameterMm()).isCloseTo(0.5, within(MM));
    assertThat(a.size().text()).isEqualTo("+/-0.2");
    assertThat(a.note()).contains("tapped or stud");
  }

  @Test
  void aBearingThatCannotMoveSitsInThePlate() throws Exception {
    // Independent: bearing at 8, slot at 16; moving part of 22 and 2 all round.
    String text =
        PartJobs.made("bearing_bore = { diameter = 40.0 }")
            .replace("from = -8.0, to = 16.0, index = [-8.0, 16.0]", "from = 16.0, to = 16.0");
    JobParts parts = PartJobs.parts(text);
    assertThat(PartJobs.find(parts, PartKind.SLIDER, Hand.LEFT)).isEmpty();
    Part plate = PartJobs.find(parts, PartKind.PLATE, Hand.LEFT).orElseThrow();
    assertThat(plate.features())
        .extracting(Feature::kind)
        .startsWith(FeatureKind.BEARING_BORE)
        .doesNotContain(FeatureKind.SLOT);
    assertThat(plate.features().get(0).centre()).isEqualTo(new Vec2(24, 0));
    assertThat(plate.solid().cutouts()).isEmpty();
    // Without a bore the place of the one setting is a round hole.
    String round = text.replace("bearing_bore = { diameter = 40.0 }", "finish = \"none\"");
    Feature slot = PartJobs.parts(round).parts().get(0).features().get(0);
    assertThat(slot.kind()).isEqualTo(FeatureKind.SLOT);
    assertThat(slot.diameterMm()).isEqualTo(26.0);
  }

  /** Independent: bore 22.5 and slot 26 wide: 2 (13 + 6) = 38; with pins 2 (20 + 3.05 + 6). */
  @Test
  void aSliderOfWhichNothingIsSaid() throws Exception {
    String bore = "bearing_bore = { diameter = 22.5 }";
    Part slider =
        PartJobs.find(PartJobs.parts(PartJobs.made(bore)), PartKind.SLIDER, Hand.LEFT)
            .orElseThrow();
    assertThat(slider.solid().outline().bounds().width()).isCloseTo(38, within(MM));
    assertThat(slider.solid().outline().bounds().height()).isCloseTo(38, within(MM));
    assertThat(slider.solid().thicknessMm()).isEqualTo(6);
    assertThat(slider.assumed()).contains("length: 38 mm", "corner radius: 5 mm");
    String pins = bore + "\nindex_holes = { diameter = 6.1, offset = 20.0 }";
    slider =
        PartJobs.find(PartJobs.parts(PartJobs.made(pins)), PartKind.SLIDER, Hand.LEFT)
            .orElseThrow();
    assertThat(slider.solid().outline().bounds().height()).isCloseTo(58.1, within(MM));
  }

  @Test
  void handedPlatesAreMirrorImagesAndOthersAreOnePart() throws Exception {
    JobParts pair = PartJobs.parts(PartJobs.PLAIN);
    assertThat(pair.parts()).extracting(Part::hand).containsExactly(Hand.LEFT, Hand.RIGHT);
    assertThat(feature(pair.parts().get(0), "B").centre()).isEqualTo(new Vec2(-38, 65.8));
    assertThat(feature(pair.parts().get(1), "B").centre()).isEqualTo(new Vec2(-38, -65.8));
    JobParts one = PartJobs.parts(PartJobs.PLAIN.replace("handed = true", "handed = false"));
    assertThat(one.parts()).hasSize(1);
    assertThat(one.parts().get(0).hand()).isEqualTo(Hand.BOTH);
    assertThat(one.parts().get(0).quantity()).isEqualTo(2);
    assertThat(PartJobs.find(one, PartKind.PLATE, Hand.RIGHT)).isPresent();
    // The right-hand part comes from what the job says of the right side.
    JobParts differ = PartJobs.parts(PartJobs.PLAIN + "[right.plate]\nthickness = 8.0\n");
    assertThat(differ.parts().get(1).solid().thicknessMm()).isEqualTo(8);
    JobParts unlike =
        PartJobs.parts(
            PartJobs.PLAIN.replace("handed = true", "handed = false")
                + "[right.plate]\nthickness = 8.0\n");
    assertThat(unlike.parts()).extracting(Part::hand).containsExactly(Hand.LEFT, Hand.RIGHT);
    assertThat(feature(unlike.parts().get(1), "B").centre()).isEqualTo(new Vec2(-38, 65.8));
  }

  /** Independent: square of 180 with corners of 20: 180^2 - (4 - pi) 400. */
  @Test
  void outlineWithRoundedCorners() throws Exception {
    String square =
        "outline = { points = [[90, 90], [-90, 90], [-90, -90], [90, -90]] }\ncorner = 20.0";
    Part plate =
        PartJobs.parts(PartJobs.PLAIN.replace("outline = { diameter = 186.0 }", square))
            .parts()
            .get(0);
    assertThat(plate.solid().outline().signedArea()).isCloseTo(32056.63706143592, within(1e-8));
    assertThat(plate.solid().outline().edges()).hasSize(8);
  }

  @Test
  void whatIsUncertainIsSaid() throws Exception {
    assertThat(PartJobs.parts(PartJobs.PLAIN).findings()).isEmpty();
    // Independent: a hole edge at 84 + 4.5 = 88.5, 4.5 mm from the edge of 93, thinner than 6.
    String thin = PartJobs.PLAIN.replace("at = [76.0, 0.0]", "at = [84.0, 0.0]");
    Finding web = only(thin, "left.part-web.bolt-A.outer-edge");
    assertThat(web.severity()).isEqualTo(Severity.CAUTION);
    assertThat(web.figure()).isCloseTo(4.5, within(MM));
    assertThat(web.limit()).isEqualTo(6.0);
    // The job says nothing of the making, so its reader lets it pass; its part cannot be made. The
    // slot ends at 24 + 13 = 37, a hole at 40 begins at 35.5.
    String broken = PartJobs.PLAIN.replace("at = [76.0, 0.0]", "at = [40.0, 0.0]");
    Finding clash = only(broken, "left.part-clash.slot.bolt-A");
    assertThat(clash.isStop()).isTrue();
    assertThat(clash.figure()).isCloseTo(-1.5, within(MM));
    assertThat(clash.source()).isEqualTo("geometry");
    // A floor of 6 - 4.5 = 1.5 where a third would be 2.
    String deep = MADE.replace("depth = 2.2", "depth = 4.5");
    assertThat(only(deep, "left.part-floor.A").figure()).isCloseTo(1.5, within(MM));
    String narrow = MADE.replace("diameter = 15.5", "diameter = 13.0");
    assertThat(only(narrow, "left.part-recess.A").limit()).isEqualTo(13.0);
    // The slider of 66 x 120 reaches 24 + 60 = 84 past the bolt at 76: 8 deep, seat 8 more.
    String wide = MADE.replace("length = 44.0", "length = 120.0");
    assertThat(only(wide, "left.slider-bolt.A").figure()).isCloseTo(-16, within(MM));
  }

  private static Finding only(String text, String id) throws Exception {
    List<Finding> found =
        PartJobs.parts(text).findings().stream().filter(f -> f.id().equals(id)).toList();
    assertThat(found).as("%s in %s", id, PartJobs.parts(text).findings()).hasSize(1);
    return found.get(0);
  }
}
