package dev.towerscribe.layout;

import static org.assertj.core.api.Assertions.assertThat;
import static org.assertj.core.api.Assertions.within;

import dev.towerscribe.SampleJobs;
import dev.towerscribe.finding.Finding;
import dev.towerscribe.finding.JobRejected;
import dev.towerscribe.finding.Spot;
import dev.towerscribe.finding.Spot.Mover;
import dev.towerscribe.geometry.Contour;
import dev.towerscribe.geometry.Vec2;
import dev.towerscribe.model.Bracket;
import dev.towerscribe.model.Job;
import dev.towerscribe.model.KeepOut;
import dev.towerscribe.model.Mount;
import dev.towerscribe.model.Plate;
import dev.towerscribe.model.Side;
import dev.towerscribe.model.SideJob;
import dev.towerscribe.model.Tower;
import dev.towerscribe.model.TowerChange;
import dev.towerscribe.quantity.Angle;
import dev.towerscribe.quantity.LengthUnit;
import java.util.ArrayList;
import java.util.List;
import java.util.Map;
import java.util.Optional;
import java.util.Random;
import java.util.TreeMap;
import org.junit.jupiter.api.Test;

/** Who does what a stop's arrow says, by the amount it says, is rid of that stop. */
class SpotsTest {
  /** Points are found among corners of chords of 0.01 mm sag. */
  private static final double DRAWN_MM = 0.05;

  private static SideLayout lay(SideJob job, LengthUnit units) throws JobRejected {
    Job whole = new Job("one side", Optional.empty(), units, Map.of(job.side(), job));
    return Layout.of(whole).sides().get(job.side());
  }

  private static SideLayout lay(SideJob job) throws JobRejected {
    return lay(job, LengthUnit.MM);
  }

  private static Optional<Finding> find(SideLayout layout, String id) {
    return layout.findings().stream().filter(f -> f.id().equals(id)).findFirst();
  }

  private static boolean stops(SideLayout layout, String id) {
    return find(layout, id).filter(Finding::isStop).isPresent();
  }

  /** A tower with something of every kind in the way. */
  private static Tower crowded(boolean dome) {
    Tower t = SampleJobs.fullTower();
    List<KeepOut> keepOuts =
        List.of(
            new KeepOut("weld", Contour.circle(new Vec2(-85, -40), 3.5), 3),
            new KeepOut("seam", SampleJobs.rectangle(42, -12, 60, 12), 3),
            new KeepOut("tag", SampleJobs.rectangle(62, 30, 70, 64), 2));
    List<Bracket> brackets = new ArrayList<>(t.brackets());
    brackets.add(
        new Bracket(
            "stay",
            SampleJobs.rectangle(-90, 34, -40, 92),
            14,
            30,
            List.of(new Bracket.Fastener(new Vec2(-72, 60), 10))));
    TowerChange change = TowerChange.of(t).withObstacles(keepOuts, brackets);
    Tower crowded = change.tower();
    return dome
        ? crowded
        : TowerChange.of(crowded).withTop(crowded.lean(), Optional.empty()).tower();
  }

  private static String kind(Finding f) {
    return f.id().split("\\.")[1];
  }

  /** The same with so little metal that it may fail to cover the opening. */
  private static Plate small(Plate p) {
    return new Plate(
        p.name(),
        p.thicknessMm(),
        SampleJobs.rectangle(-58, -72, 88, 72),
        p.handed(),
        p.slot(),
        p.bearingXMm(),
        p.bearingHeightMm(),
        p.movingDiameterMm(),
        p.movingClearanceMm(),
        p.coverMm(),
        p.wallGapMm(),
        p.bolts(),
        p.make());
  }

  private static SideJob random(Random random, int i) {
    Side side = i % 2 == 0 ? Side.LEFT : Side.RIGHT;
    boolean handed = random.nextBoolean();
    double angle = random.nextDouble() * 360 - 180;
    Mount mount =
        new Mount(
            Angle.ofDegrees(angle),
            random.nextDouble() * 44 - 22,
            random.nextDouble() * 44 - 22,
            random.nextDouble() * 24 - 8);
    Plate plate = SampleJobs.plate(handed);
    if (random.nextInt(3) == 0) {
      plate = small(plate);
    }
    return SampleJobs.side(side, crowded(random.nextBoolean()), plate).with(mount);
  }

  @Test
  void movingThePlateAsTheArrowSaysClearsThatStop() throws JobRejected {
    Map<String, Integer> cleared = new TreeMap<>();
    Map<String, Integer> without = new TreeMap<>();
    Random random = new Random(20261201);
    for (int i = 0; i < 24; i++) {
      SideJob job = random(random, i);
      LengthUnit units = i % 3 == 0 ? LengthUnit.INCH : LengthUnit.MM;
      SideLayout layout = lay(job, units);
      for (Finding stop : layout.findings()) {
        if (!stop.isStop() || stop.spot().isEmpty()) {
          continue;
        }
        Spot spot = stop.spot().get();
        if (spot.move().isEmpty()) {
          without.merge(kind(stop), 1, Integer::sum);
          continue;
        }
        Vec2 move = spot.move().get();
        if (spot.mover() == Mover.PLATE) {
          double step = units == LengthUnit.MM ? 0.1 : 0.0254;
          for (double part : new double[] {move.x() / step, move.y() / step}) {
            assertThat(part).as(stop.id()).isCloseTo(Math.rint(part), within(1e-6));
          }
          Mount m = job.mount();
          Mount typed =
              new Mount(
                  m.rotation(), m.rearwardMm() - move.x(), m.inboardMm() + move.y(), m.settingMm());
          assertThat(stops(lay(job.with(typed), units), stop.id()))
              .as("%s of job %s, moved by %s", stop.id(), i, move)
              .isFalse();
        } else {
          assertThat(spot.mover()).isEqualTo(Mover.CUT);
          SideJob smaller = job.with(job.cut().keeping(move.norm()));
          assertThat(stops(lay(smaller, units), stop.id())).as(stop.id()).isFalse();
        }
        cleared.merge(kind(stop), 1, Integer::sum);
      }
    }
    assertThat(cleared.keySet())
        .contains(
            "edge-cut",
            "edge-land",
            "edge-landmark",
            "seat-land",
            "seat-cut",
            "keep-out",
            "cut-keep-out",
            "plate-cover",
            "plate-wall",
            "sweep",
            "notch-width",
            "notch-fastener");
  }

  @Test
  void theDistanceDrawnIsTheFigure() throws JobRejected {
    Random random = new Random(7);
    for (int i = 0; i < 10; i++) {
      SideLayout layout = lay(random(random, i));
      for (Finding f : layout.findings()) {
        if (f.spot().isEmpty()) {
          continue;
        }
        Spot spot = f.spot().get();
        double drawn = spot.from().distanceTo(spot.to());
        assertThat(drawn).as(f + "").isCloseTo(Math.abs(f.figure()), within(DRAWN_MM));
      }
    }
  }
}
