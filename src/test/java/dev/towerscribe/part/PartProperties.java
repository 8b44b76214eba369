package dev.towerscribe.part;

import static org.assertj.core.api.Assertions.assertThat;
import static org.assertj.core.api.Assertions.within;

import dev.towerscribe.SampleJobs;
import dev.towerscribe.finding.JobRejected;
import dev.towerscribe.geometry.Bore;
import dev.towerscribe.geometry.Contour;
import dev.towerscribe.geometry.Region;
import dev.towerscribe.geometry.Vec2;
import dev.towerscribe.layout.Layout;
import dev.towerscribe.model.Bolt;
import dev.towerscribe.model.Job;
import dev.towerscribe.model.Mount;
import dev.towerscribe.model.Plate;
import dev.towerscribe.model.PlateMake;
import dev.towerscribe.model.SideJob;
import dev.towerscribe.model.Thread;
import dev.towerscribe.quantity.Angle;
import dev.towerscribe.quantity.LengthUnit;
import dev.towerscribe.quantity.Tolerances;
import java.util.ArrayList;
import java.util.List;
import java.util.Map;
import java.util.Optional;
import java.util.Random;
import java.util.TreeMap;
import net.jqwik.api.ForAll;
import net.jqwik.api.Property;

/** Random plates, in both hands and turned on their towers. */
class PartProperties {
  private static final double MM = Tolerances.COMPUTED_MM;

  /** Volumes of some 1e5 mm3 from ten terms: their relative rounding. */
  private static final double SHARE = 1e-12;

  private static Plate plate(Random random, boolean handed) {
    List<Vec2> corners = new ArrayList<>();
    int n = 5 + random.nextInt(4);
    for (int i = 0; i < n; i++) {
      Angle at = new Angle(2 * Math.PI * (i + 0.6 * random.nextDouble()) / n);
      corners.add(Vec2.polar(85 + 15 * random.nextDouble(), at));
    }
    Contour outline =
        Region.inside(Contour.polygon(corners))
            .opened(5 + 5 * random.nextDouble())
            .contours()
            .get(0);
    List<Bolt> bolts = new ArrayList<>();
    Thread m8 = Thread.find("M8").orElseThrow();
    for (int i = 0; i < 3; i++) {
      Angle at = new Angle(2 * Math.PI * (i + 0.3 * random.nextDouble()) / 3);
      Vec2 p = Vec2.polar(50 + 8 * random.nextDouble(), at);
      bolts.add(new Bolt("ABC".substring(i, i + 1), p, m8, 13, 16));
    }
    return new Plate(
        "random",
        4 + 6 * random.nextDouble(),
        outline,
        handed,
        new Plate.Slot(-5 * random.nextDouble(), 5 * random.nextDouble(), List.of()),
        4 * random.nextDouble(),
        18,
        20,
        2,
        5,
        2,
        bolts,
        PlateMake.ASSUMED);
  }

  private static JobParts parts(Plate plate, Random random) throws JobRejected {
    Mount mount = new Mount(Angle.ofDegrees(360 * random.nextDouble() - 180), 5, -3, 0);
    Map<dev.towerscribe.model.Side, SideJob> sides = new TreeMap<>();
    for (var side : dev.towerscribe.model.Side.values()) {
      sides.put(side, SampleJobs.side(side, SampleJobs.plainTower(), plate).with(mount));
    }
    return Parts.of(Layout.of(new Job("random", Optional.empty(), LengthUnit.MM, sides)));
  }

  @Property(seed = "20261125", tries = 100)
  void theRightHandPartIsTheMirrorImage(@ForAll long seed) throws JobRejected {
    Random random = new Random(seed);
    JobParts pair = parts(plate(random, true), random);
    Part left = pair.parts().get(0);
    Part right = pair.parts().get(1);
    assertThat(pair.parts()).hasSize(2);
    assertThat(right.volumeMm3()).isCloseTo(left.volumeMm3(), within(left.volumeMm3() * SHARE));
    assertThat(right.features()).hasSameSizeAs(left.features());
    for (int i = 0; i < left.features().size(); i++) {
      Feature l = left.features().get(i);
      Feature r = right.features().get(i);
      assertThat(r.name()).isEqualTo(l.name());
      assertThat(r.diameterMm()).isEqualTo(l.diameterMm());
      assertThat(r.centre().distanceTo(mirrored(l.centre()))).isLessThan(MM);
    }
    // Independent: the outline point by point, by depth, without the program's own map.
    Region leftEdge = Region.inside(left.solid().outline());
    Region rightEdge = Region.inside(right.solid().outline());
    for (Vec2 p : left.solid().outline().flattened(0.5)) {
      assertThat(rightEdge.depth(mirrored(p))).isCloseTo(0, within(MM));
      Vec2 inside = p.times(0.9);
      assertThat(rightEdge.depth(mirrored(inside))).isCloseTo(leftEdge.depth(inside), within(MM));
    }
    for (int i = 0; i < left.solid().bores().size(); i++) {
      Bore r = right.solid().bores().get(i);
      assertThat(r.centre().distanceTo(mirrored(left.solid().bores().get(i).centre())))
          .isLessThan(MM);
    }
  }

  @Property(seed = "20261126", tries = 50)
  void aPartForBothSidesIsAsWritten(@ForAll long seed) throws JobRejected {
    Random random = new Random(seed);
    Plate plate = plate(random, false);
    JobParts one = parts(plate, random);
    assertThat(one.parts()).hasSize(1);
    for (Bolt bolt : plate.bolts()) {
      assertThat(one.parts().get(0).features())
          .anySatisfy(f -> assertThat(f.centre()).isEqualTo(bolt.at()));
    }
  }

  /** Turning the plate on its tower turns no part: the part belongs to the plate frame. */
  @Property(seed = "20261127", tries = 50)
  void theMountDoesNotChangeThePart(@ForAll long seed) throws JobRejected {
    Random random = new Random(seed);
    Plate plate = plate(random, true);
    assertThat(parts(plate, random)).isEqualTo(parts(plate, random));
  }

  private static Vec2 mirrored(Vec2 p) {
    return new Vec2(p.x(), -p.y());
  }
}
