package dev.towerscribe.layout;

import static org.assertj.core.api.Assertions.assertThat;
import static org.assertj.core.api.Assertions.within;

import dev.towerscribe.SampleJobs;
import dev.towerscribe.StoppedJobs;
import dev.towerscribe.finding.Finding;
import dev.towerscribe.finding.JobRejected;
import dev.towerscribe.finding.Spot;
import dev.towerscribe.finding.Spot.Mover;
import dev.towerscribe.geometry.Vec2;
import dev.towerscribe.model.Bolt;
import dev.towerscribe.model.Job;
import dev.towerscribe.model.Mount;
import dev.towerscribe.model.Plate;
import dev.towerscribe.model.Side;
import dev.towerscribe.model.SideJob;
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

  private static String kind(Finding f) {
    return f.id().split("\\.")[1];
  }

  @Test
  void movingThePlateAsTheArrowSaysClearsThatStop() throws JobRejected {
    Map<String, Integer> cleared = new TreeMap<>();
    Map<String, Integer> without = new TreeMap<>();
    Random random = new Random(20261201);
    for (int i = 0; i < 24; i++) {
      SideJob job = StoppedJobs.random(random, i);
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

  private static Plate with(Plate p, Plate.Slot slot, double bearingX, List<Bolt> bolts) {
    return new Plate(
        p.name(),
        p.thicknessMm(),
        p.outline(),
        p.handed(),
        slot,
        bearingX,
        p.bearingHeightMm(),
        p.movingDiameterMm(),
        p.movingClearanceMm(),
        p.coverMm(),
        p.wallGapMm(),
        bolts,
        p.make());
  }

  @Test
  void holesTooCloseArePushedApartByWhatIsMissing() throws JobRejected {
    Plate p = SampleJobs.plate(true);
    List<Bolt> bolts = new ArrayList<>(p.bolts());
    Bolt b = bolts.get(1);
    Bolt twin = new Bolt("D", b.at().plus(new Vec2(-9, 12)), b.thread(), b.flatsMm(), 16);
    bolts.add(twin);
    SideJob job = SampleJobs.side(Side.LEFT, SampleJobs.plainTower(), p);
    SideJob close = job.with(with(p, p.slot(), p.bearingXMm(), bolts));
    Finding stop = find(lay(close), "left.spacing.B-D").orElseThrow();
    assertThat(stop.isStop()).isTrue();
    Spot spot = stop.spot().orElseThrow();
    assertThat(spot.mover()).isEqualTo(Mover.HOLE);
    // Independent: 15 mm apart by Pythagoras.
    assertThat(stop.figure()).isCloseTo(15, within(1e-9));
    double more = spot.move().orElseThrow().norm();
    assertThat(more).isBetween(stop.limit() - 15 - 1e-9, stop.limit() - 15 + 0.1);
    double k = (15 + more) / 15;
    bolts.set(3, new Bolt("D", b.at().plus(new Vec2(-9 * k, 12 * k)), b.thread(), 13, 16));
    SideJob mended = job.with(with(p, p.slot(), p.bearingXMm(), bolts));
    assertThat(stops(lay(mended), "left.spacing.B-D")).isFalse();
  }

  @Test
  void aBearingOutsideItsBoltsHasAPlaceAndNoWayOut() throws JobRejected {
    Plate p = SampleJobs.plate(true);
    SideJob job = SampleJobs.side(Side.LEFT, SampleJobs.plainTower(), p);
    Plate.Slot slot = new Plate.Slot(-8, 16, List.of());
    Finding stop =
        find(lay(job.with(with(p, slot, 80, p.bolts()))), "left.bearing-hull").orElseThrow();
    assertThat(stop.isStop()).isTrue();
    Spot spot = stop.spot().orElseThrow();
    assertThat(spot.move()).isEmpty();
    assertThat(spot.from().distanceTo(spot.to())).isCloseTo(-stop.figure(), within(1e-9));
  }

  @Test
  void whatIsDrilledHasAPlaceAndNoWayOut() throws JobRejected {
    SideJob job =
        SampleJobs.side(Side.LEFT, SampleJobs.plainTower(), SampleJobs.plate(true))
            .with(new Mount(Angle.ofDegrees(90), -20, -3, 0));
    SideLayout planned = lay(job);
    assertThat(find(planned, "left.edge-cut.A").orElseThrow().spot().orElseThrow().move())
        .isPresent();
    List<Finding> drilled = Layout.holeChecks(planned, planned.holes(), job.mount(), LengthUnit.MM);
    Finding stop =
        drilled.stream().filter(f -> f.id().equals("left.edge-cut.A")).findFirst().orElseThrow();
    assertThat(stop.spot().orElseThrow().move()).isEmpty();
  }

  @Test
  void theDistanceDrawnIsTheFigure() throws JobRejected {
    Random random = new Random(7);
    for (int i = 0; i < 10; i++) {
      SideLayout layout = lay(StoppedJobs.random(random, i));
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
