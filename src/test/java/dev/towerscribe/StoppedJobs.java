package dev.towerscribe;

import dev.towerscribe.geometry.Contour;
import dev.towerscribe.geometry.Vec2;
import dev.towerscribe.model.Bracket;
import dev.towerscribe.model.KeepOut;
import dev.towerscribe.model.Mount;
import dev.towerscribe.model.Plate;
import dev.towerscribe.model.Side;
import dev.towerscribe.model.SideJob;
import dev.towerscribe.model.Tower;
import dev.towerscribe.model.TowerChange;
import dev.towerscribe.quantity.Angle;
import java.util.ArrayList;
import java.util.List;
import java.util.Optional;
import java.util.Random;

/** Invented jobs of which most have stops, each of another kind. */
public final class StoppedJobs {
  private StoppedJobs() {}

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

  /**
   * A side with its plate anywhere.
   *
   * @param random where it goes, turned how, of which hand
   * @param i the left tower where even, else the right one
   */
  public static SideJob random(Random random, int i) {
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
}
