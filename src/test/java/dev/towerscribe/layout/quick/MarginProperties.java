package dev.towerscribe.layout.quick;

import static org.assertj.core.api.Assertions.assertThat;
import static org.assertj.core.api.Assertions.within;

import dev.towerscribe.alignment.StrutRodPoses;
import dev.towerscribe.drawing.Lettering;
import dev.towerscribe.finding.Finding;
import dev.towerscribe.finding.Findings;
import dev.towerscribe.finding.JobRejected;
import dev.towerscribe.geometry.Box;
import dev.towerscribe.geometry.Contour;
import dev.towerscribe.geometry.RegionDepths;
import dev.towerscribe.geometry.Vec2;
import dev.towerscribe.job.JobReader;
import dev.towerscribe.job.Templates;
import dev.towerscribe.layout.Cuts;
import dev.towerscribe.layout.Layout;
import dev.towerscribe.layout.PlacedHole;
import dev.towerscribe.layout.PlateFrames;
import dev.towerscribe.layout.SideLayout;
import dev.towerscribe.model.Bolt;
import dev.towerscribe.model.Job;
import dev.towerscribe.model.KeepOut;
import dev.towerscribe.model.Mount;
import dev.towerscribe.model.Plate;
import dev.towerscribe.model.PlateChange;
import dev.towerscribe.model.Side;
import dev.towerscribe.model.SideJob;
import dev.towerscribe.model.TowerChange;
import dev.towerscribe.quantity.Angle;
import java.util.ArrayList;
import java.util.EnumMap;
import java.util.List;
import java.util.Map;
import java.util.Optional;
import java.util.Random;
import java.util.Set;
import java.util.TreeSet;
import java.util.function.Predicate;
import org.junit.jupiter.api.AfterAll;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.ValueSource;

/**
 * The search's quick verdicts and margins against the findings of the job laid out there, at seeded
 * random mounts: holes to the last digits, bounds never on the wrong side.
 */
class MarginProperties {
  private static final int MOUNTS = 30;

  private static final Set<String> HOLES =
      Set.of("edge-cut", "edge-land", "edge-landmark", "seat-land", "seat-cut", "keep-out");

  /** Roundings of sums of some hundred millimetres. */
  private static final double ROUNDING_MM = 1e-12;

  /** What was answered, by check: each must have been said both ways somewhere. */
  private static final Set<String> SAID = new TreeSet<>();

  private static Job template(String name) throws Exception {
    return new JobReader(Lettering::canWrite)
        .parse(Templates.text(name), plate -> Optional.of(Templates.text(plate)));
  }

  @ParameterizedTest
  @ValueSource(strings = {"wren.toml", "siskin.toml", "dunnock.toml"})
  void templates(String name) throws Exception {
    Job job = template(name);
    around(job, 21, 1.0);
    around(job, 22, 14.0);
  }

  /** Jobs whose own mount has a tenth of a millimetre left on every side. */
  @ParameterizedTest
  @ValueSource(longs = {31, 32, 33})
  void tightTowers(long seed) throws Exception {
    Job job = tight(template("wren.toml"), new Random(seed));
    around(job, seed, 0.3);
    around(job, seed, 3.0);
  }

  /** The bolts somewhere near their own places; the bolting face and two welds drawn round them. */
  private static Job tight(Job wren, Random random) {
    Mount mount =
        new Mount(
            Angle.ofDegrees(35 + 35 * random.nextDouble()),
            -3 + 10 * random.nextDouble(),
            8 + 6 * random.nextDouble(),
            4.0);
    List<Vec2> moves = new ArrayList<>();
    for (int i = 0; i < 3; i++) {
      moves.add(new Vec2(12 * random.nextDouble() - 6, 12 * random.nextDouble() - 6));
    }
    return wren.withSides(
        side -> {
          Plate plate = side.plate();
          List<Bolt> bolts = new ArrayList<>();
          for (int i = 0; i < plate.bolts().size(); i++) {
            Bolt b = plate.bolts().get(i);
            bolts.add(
                new Bolt(
                    b.name(), b.at().plus(moves.get(i)), b.thread(), b.flatsMm(), b.washerMm()));
          }
          SideJob moved =
              side.with(PlateChange.of(plate).withShape(plate.outline(), bolts).plate())
                  .with(mount);
          List<PlacedHole> holes = Layout.holes(moved);
          return moved.with(
              TowerChange.of(side.tower())
                  .withBounds(Optional.of(face(moved, holes)), Optional.empty())
                  .withObstacles(welds(moved, holes), side.tower().brackets())
                  .tower());
        });
  }

  private static Contour face(SideJob job, List<PlacedHole> holes) {
    double left = 0.1;
    double room =
        left
            + job.holes()
                .edgeRule()
                .edgeMm(holes.get(0).bolt().thread().nominalMm(), holes.get(0).diameterMm());
    double fore = holes.stream().mapToDouble(h -> h.at().x()).max().orElseThrow() + room;
    double aft = holes.stream().mapToDouble(h -> h.at().x()).min().orElseThrow() - room;
    double in = holes.stream().mapToDouble(h -> h.at().y()).max().orElseThrow() + room;
    double out = holes.stream().mapToDouble(h -> h.at().y()).min().orElseThrow() - room;
    return Contour.polygon(
        List.of(new Vec2(aft, out), new Vec2(fore, out), new Vec2(fore, in), new Vec2(aft, in)));
  }

  private static List<KeepOut> welds(SideJob job, List<PlacedHole> holes) {
    List<KeepOut> welds = new ArrayList<>();
    for (PlacedHole h : holes.subList(0, 2)) {
      double away = h.bolt().seatRadiusMm() + 3.0 + 3.5 + 0.1;
      Vec2 at = h.at().plus(h.at().times(away / h.at().norm()));
      welds.add(new KeepOut("weld " + h.name(), Contour.circle(at, 3.5), 3.0));
    }
    return welds;
  }

  private static void around(Job job, long seed, double spread) {
    MountCheck check = MountCheck.of(job, StrutRodPoses::of);
    Scratch scratch = new Scratch();
    Random random = new Random(seed);
    Map<Side, StrutRodModel.Known> rods = new EnumMap<>(Side.class);
    for (SideJob side : job.sides().values()) {
      Box bearings = QuickTowerCheck.bearings(Cuts.of(side));
      rods.put(side.side(), StrutRodModel.fit(side, StrutRodPoses::of, bearings));
    }
    Mount own = job.sides().values().iterator().next().mount();
    for (int i = 0; i < MOUNTS; i++) {
      Mount mount =
          new Mount(
              new Angle(
                  own.rotation().radians()
                      + Math.toRadians(spread * (2 * random.nextDouble() - 1))),
              own.rearwardMm() + spread * (2 * random.nextDouble() - 1),
              own.inboardMm() + spread * (2 * random.nextDouble() - 1),
              own.settingMm());
      double rotation = mount.rotation().radians();
      boolean allows = check.allows(scratch.at(rotation, mount.rearwardMm(), mount.inboardMm()));
      List<SideLayout> laidOut;
      try {
        laidOut = List.copyOf(Layout.of(job.with(mount), StrutRodPoses::of).sides().values());
      } catch (JobRejected e) {
        assertThat(allows).isFalse();
        continue;
      }
      boolean stopped =
          laidOut.stream().anyMatch(s -> s.findings().stream().anyMatch(Finding::isStop));
      assertThat(allows).as("%s", mount).isEqualTo(!stopped);
      double least = Double.POSITIVE_INFINITY;
      for (SideLayout side : laidOut) {
        least = Math.min(least, holeSlack(side));
        bounds(side, rods.get(side.side()));
      }
      double slack = check.slack(scratch.at(rotation, mount.rearwardMm(), mount.inboardMm()));
      if (least >= 0) {
        assertThat(slack).isCloseTo(least, within(ROUNDING_MM));
      } else {
        assertThat(slack).isEqualTo(Double.NEGATIVE_INFINITY);
      }
    }
  }

  private static String check(Finding f) {
    return f.id().split("\\.")[1];
  }

  /** The least of figure minus limit over the findings about holes. */
  private static double holeSlack(SideLayout side) {
    return side.findings().stream()
        .filter(f -> HOLES.contains(check(f)) && side.job().tower().boltingFace().isPresent())
        .mapToDouble(f -> f.figure() - f.limit())
        .min()
        .orElseThrow();
  }

  private static void bounds(SideLayout side, StrutRodModel.Known moving) {
    SideJob placed = side.job();
    Cuts cuts = Cuts.of(placed);
    Mount mount = placed.mount();
    Scratch s = new Scratch();
    double rotation = mount.rotation().radians();
    s.at(rotation, mount.rearwardMm(), mount.inboardMm());
    s.holes(side.holes().size());
    for (int i = 0; i < side.holes().size(); i++) {
      s.x[i] = side.holes().get(i).at().x();
      s.y[i] = side.holes().get(i).at().y();
    }
    QuickPlateCheck plate = new QuickPlateCheck(placed, cuts.finished(), PlateFrames.hand(placed));
    holds(plate.covers(s), side, f -> check(f).equals("plate-cover"));
    holds(plate.clearsWall(s), side, f -> check(f).equals("plate-wall"));
    QuickStrutRodCheck rod =
        new QuickStrutRodCheck(
            placed,
            new RegionDepths(cuts.finished()),
            cuts.finished().contours().size() == 1,
            moving);
    holds(rod.asMeasured(s).and(rod.moving(s)), side, f -> check(f).equals("sweep"));
    holds(
        placed.tower().brackets().stream()
            .map(b -> new QuickNotchCheck(b, placed.tools().reachRadiusMm()).stands(s))
            .reduce(Answer.YES, Answer::and),
        side,
        f -> check(f).startsWith("notch-"));
  }

  /** A yes needs every finding passed, a no one failed; not sure says nothing. */
  private static void holds(Answer answer, SideLayout side, Predicate<Finding> about) {
    List<Finding> found = side.findings().stream().filter(about).toList();
    boolean passes = found.stream().allMatch(f -> Findings.passes(f.figure(), f.limit()));
    if (answer != Answer.UNSURE) {
      assertThat(answer == Answer.YES).as("%s of %s", found, side.job().mount()).isEqualTo(passes);
      found.forEach(f -> SAID.add(check(f) + " " + answer));
    }
  }

  @AfterAll
  static void everyBoundWasTriedBothWays() {
    assertThat(SAID)
        .contains(
            "plate-cover YES",
            "plate-wall YES",
            "sweep YES",
            "sweep NO",
            "notch-width YES",
            "notch-width NO");
  }
}
