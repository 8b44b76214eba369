package dev.towerscribe;

import dev.towerscribe.geometry.Contour;
import dev.towerscribe.geometry.Vec2;
import dev.towerscribe.geometry.Vec3;
import dev.towerscribe.model.Bolt;
import dev.towerscribe.model.Bracket;
import dev.towerscribe.model.Crown;
import dev.towerscribe.model.CutRules;
import dev.towerscribe.model.EdgeRule;
import dev.towerscribe.model.Fit;
import dev.towerscribe.model.HoleRules;
import dev.towerscribe.model.Job;
import dev.towerscribe.model.KeepOut;
import dev.towerscribe.model.Landmark;
import dev.towerscribe.model.Lean;
import dev.towerscribe.model.Mount;
import dev.towerscribe.model.Packing;
import dev.towerscribe.model.Paper;
import dev.towerscribe.model.Plate;
import dev.towerscribe.model.PlateMake;
import dev.towerscribe.model.PlusMinus;
import dev.towerscribe.model.Print;
import dev.towerscribe.model.Seat;
import dev.towerscribe.model.Seating;
import dev.towerscribe.model.Side;
import dev.towerscribe.model.SideJob;
import dev.towerscribe.model.StrutPoints;
import dev.towerscribe.model.Thread;
import dev.towerscribe.model.Tools;
import dev.towerscribe.model.Tower;
import dev.towerscribe.quantity.Angle;
import dev.towerscribe.quantity.LengthUnit;
import java.util.EnumMap;
import java.util.List;
import java.util.Map;
import java.util.Optional;
import java.util.function.UnaryOperator;

/** Invented jobs for tests, built without the job reader. */
public final class SampleJobs {
  /** On top, and what a dome leaves is filled. */
  public static final Seating SEATING =
      new Seating(Optional.of(Seat.ON_TOP), Optional.of(Packing.SHIMS));

  private SampleJobs() {}

  /**
   * A round, flat, level tower with a generous bolting face, two landmarks and nothing in the way.
   */
  public static Tower plainTower() {
    return new Tower(
        1.4,
        Contour.circle(Vec2.ZERO, 31),
        Contour.circle(Vec2.ZERO, 52),
        Lean.LEVEL,
        Optional.empty(),
        12,
        Optional.of(rectangle(-110, -110, 110, 110)),
        Optional.empty(),
        List.of(
            new Landmark("drain hole", new Vec2(38, -52), 9),
            new Landmark("tooling hole", new Vec2(-60, 60), 6)),
        List.of(),
        List.of(),
        List.of(),
        Optional.empty(),
        Optional.empty());
  }

  /** A tower with everything: lean, crown, bolting face, wall, keep-outs, a bracket. */
  public static Tower fullTower() {
    return new Tower(
        1.4,
        Contour.circle(Vec2.ZERO, 31),
        Contour.circle(Vec2.ZERO, 52),
        new Lean(Angle.ofDegrees(5), Angle.ofDegrees(2)),
        Optional.of(new Crown(140, 3)),
        12,
        Optional.of(rectangle(-105, -100, 100, 100)),
        Optional.of(rectangle(-118, -112, 112, 112)),
        List.of(
            new Landmark("drain hole", new Vec2(38, -52), 9),
            new Landmark("tooling hole", new Vec2(-60, 65), 6)),
        List.of(),
        List.of(new KeepOut("spot weld", Contour.circle(new Vec2(-85, -40), 3.5), 3)),
        List.of(
            new Bracket(
                "bonnet hinge bracket",
                rectangle(-60, -108, -10, -68),
                14,
                12,
                List.of(new Bracket.Fastener(new Vec2(-50, -96), 10)))),
        Optional.empty(),
        Optional.empty());
  }

  /** A closed rectangle. */
  public static Contour rectangle(double minX, double minY, double maxX, double maxY) {
    return Contour.polygon(
        List.of(
            new Vec2(minX, minY),
            new Vec2(maxX, minY),
            new Vec2(maxX, maxY),
            new Vec2(minX, maxY)));
  }

  /** Three bolts, handed or not; the pattern is not symmetric about the slot. */
  public static Plate plate(boolean handed) {
    Thread m8 = Thread.find("M8").orElseThrow();
    return new Plate(
        "three-bolt slotted plate",
        6,
        Contour.circle(Vec2.ZERO, 93),
        handed,
        new Plate.Slot(-8, 16, List.of(-8.0, 4.0, 16.0)),
        8,
        18,
        22,
        2,
        5,
        2,
        List.of(
            new Bolt("A", new Vec2(76, 3), m8, 13, 16),
            new Bolt("B", new Vec2(-38, 65.8), m8, 13, 16),
            new Bolt("C", new Vec2(-36, -64), m8, 13, 16)),
        PlateMake.ASSUMED);
  }

  /** The strut of the invented demo car, left side. */
  public static StrutPoints strut() {
    return new StrutPoints(
        new Vec3(-20, 545, 790),
        new Vec3(8, 655, 190),
        new Vec3(20, 345, 205),
        new Vec3(-290, 350, 212),
        new Vec3(-4, 590, 420),
        new Vec3(-120, 330, 262),
        new Vec3(-118, 640, 258),
        new Vec3(0, 722, 290),
        290,
        Angle.ofDegrees(-0.5),
        Angle.ZERO,
        0,
        PlusMinus.all(2),
        Optional.empty(),
        StrutPoints.Limits.USUAL);
  }

  /** The same strut on the other side. */
  public static StrutPoints mirrored(StrutPoints s) {
    return s.withPoints(s.points().stream().map(Vec3::mirroredAcross).toList());
  }

  /** One side of a job. */
  public static SideJob side(Side side, Tower tower, Plate plate) {
    return new SideJob(
        side,
        tower,
        plate,
        new Mount(Angle.ofDegrees(55), 8, -3, 16),
        SEATING,
        new HoleRules(Fit.MEDIUM, EdgeRule.STRICT),
        new CutRules(3, 2.5, 8, 10),
        new Tools(19.2, 60, 2, false),
        new Print(Paper.A4, 10, 1, 1),
        Optional.of(side == Side.LEFT ? strut() : mirrored(strut())),
        Optional.empty(),
        Optional.empty());
  }

  /** Both sides alike, except that the right tower is given through a change. */
  public static Job job(Tower tower, Plate plate, UnaryOperator<SideJob> rightChange) {
    Map<Side, SideJob> sides = new EnumMap<>(Side.class);
    sides.put(Side.LEFT, side(Side.LEFT, tower, plate));
    sides.put(Side.RIGHT, rightChange.apply(side(Side.RIGHT, tower, plate)));
    return new Job("Wren hatch, road and track days", Optional.empty(), LengthUnit.MM, sides);
  }

  /** A job of one side. */
  public static Job only(SideJob side) {
    return new Job("one side", Optional.empty(), LengthUnit.MM, Map.of(side.side(), side));
  }
}
