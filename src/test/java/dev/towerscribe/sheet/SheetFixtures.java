package dev.towerscribe.sheet;

import dev.towerscribe.SampleJobs;
import dev.towerscribe.alignment.JobAlignment;
import dev.towerscribe.drawing.Page;
import dev.towerscribe.finding.Finding;
import dev.towerscribe.finding.Severity;
import dev.towerscribe.geometry.Contour;
import dev.towerscribe.geometry.Frame2;
import dev.towerscribe.geometry.Region;
import dev.towerscribe.geometry.Vec2;
import dev.towerscribe.layout.JobLayout;
import dev.towerscribe.layout.Notch;
import dev.towerscribe.layout.PlacedHole;
import dev.towerscribe.layout.RestingPlane;
import dev.towerscribe.layout.SideLayout;
import dev.towerscribe.layout.StarterHole;
import dev.towerscribe.layout.Sweep;
import dev.towerscribe.model.Bolt;
import dev.towerscribe.model.Bracket;
import dev.towerscribe.model.Crown;
import dev.towerscribe.model.CutRules;
import dev.towerscribe.model.EdgeRule;
import dev.towerscribe.model.Fit;
import dev.towerscribe.model.HoleRules;
import dev.towerscribe.model.KeepOut;
import dev.towerscribe.model.Landmark;
import dev.towerscribe.model.Lean;
import dev.towerscribe.model.Mount;
import dev.towerscribe.model.Paper;
import dev.towerscribe.model.Plate;
import dev.towerscribe.model.PlateMake;
import dev.towerscribe.model.Print;
import dev.towerscribe.model.Side;
import dev.towerscribe.model.SideJob;
import dev.towerscribe.model.Straightedge;
import dev.towerscribe.model.Thread;
import dev.towerscribe.model.Tools;
import dev.towerscribe.model.Tower;
import dev.towerscribe.quantity.Angle;
import dev.towerscribe.quantity.LengthUnit;
import dev.towerscribe.sheet.text.JobInfo;
import dev.towerscribe.sheet.tower.FullScaleSheets;
import java.util.ArrayList;
import java.util.List;
import java.util.Map;
import java.util.Optional;

/** An invented car's tower, laid out by hand: nothing about it is symmetrical. */
public final class SheetFixtures {
  private SheetFixtures() {}

  /** What a fixture varies. */
  public record Wish(
      Side side,
      Print print,
      Optional<Crown> crown,
      List<Landmark> landmarks,
      List<KeepOut> keepOuts,
      int bolts,
      boolean slottedMark) {
    public Wish with(Print other) {
      return new Wish(side, other, crown, landmarks, keepOuts, bolts, slottedMark);
    }

    public Wish with(Crown dome) {
      return new Wish(side, print, Optional.of(dome), landmarks, keepOuts, bolts, slottedMark);
    }

    public Wish withLandmarks(List<Landmark> more) {
      return new Wish(side, print, crown, more, keepOuts, bolts, slottedMark);
    }

    public Wish withKeepOuts(List<KeepOut> more) {
      return new Wish(side, print, crown, landmarks, more, bolts, slottedMark);
    }

    public Wish withBolts(int number) {
      return new Wish(side, print, crown, landmarks, keepOuts, number, slottedMark);
    }

    public Wish slotted() {
      return new Wish(side, print, crown, landmarks, keepOuts, bolts, true);
    }
  }

  public static Print print(Paper paper) {
    return new Print(paper, 10, 1, 1);
  }

  public static Wish plain(Side side) {
    return new Wish(
        side,
        print(Paper.A4),
        Optional.empty(),
        List.of(
            new Landmark("drain hole", new Vec2(38, -52), 9),
            new Landmark("seam end", new Vec2(-64, -30), 5)),
        List.of(
            new KeepOut("spot weld", Contour.circle(new Vec2(-80, 20), 3.5), 3),
            new KeepOut("spot weld", Contour.circle(new Vec2(70, 46), 3.5), 3)),
        3,
        false);
  }

  public static JobInfo info() {
    return new JobInfo(
        "Wren hatch, road and track days", Optional.empty(), LengthUnit.MM, "K7Q2", List.of());
  }

  public static JobInfo accepted(int number) {
    List<Finding> stops = new ArrayList<>();
    for (int i = 0; i < number; i++) {
      stops.add(
          new Finding(
              "left.edge-cut." + (char) ('A' + i),
              Severity.STOP,
              "bolt, final cut",
              11.2 + i,
              16,
              "mm",
              "practice",
              "Too near the edge."));
    }
    return new JobInfo(
        "Wren hatch, road and track days", Optional.empty(), LengthUnit.MM, "K7Q2", stops);
  }

  /** One stop with an id too long to stand beside the words. */
  public static JobInfo longStop() {
    return new JobInfo(
        "Wren hatch",
        Optional.empty(),
        LengthUnit.MM,
        "K7Q2",
        List.of(
            new Finding(
                "right.edge-landmark.C.front-jig-hole",
                Severity.STOP,
                "bolt C, front jig hole",
                15.2,
                16,
                "mm",
                "practice",
                "Too near.")));
  }

  public static Frame2 plateFrame() {
    double q = Math.toRadians(55);
    return new Frame2(
        new Vec2(-8, -3), new Vec2(-Math.sin(q), Math.cos(q)), new Vec2(Math.cos(q), Math.sin(q)));
  }

  public static SideLayout layout(Wish wish) {
    Thread m8 = Thread.find("M8").orElseThrow();
    List<Bolt> bolts = new ArrayList<>();
    for (int i = 0; i < wish.bolts(); i++) {
      Vec2 at = new Vec2(76, 0).rotated(Angle.ofDegrees(360.0 * i / wish.bolts()));
      bolts.add(new Bolt(Character.toString('A' + i), at, m8, 13, 16));
    }
    Contour plateEdge = Contour.circle(Vec2.ZERO, 93);
    Plate plate =
        new Plate(
            "three-bolt slotted plate",
            6,
            plateEdge,
            true,
            new Plate.Slot(-8, 16, List.of(-8.0, 4.0, 16.0)),
            8,
            18,
            22,
            2,
            5,
            2,
            bolts,
            PlateMake.ASSUMED);
    Bracket bracket =
        new Bracket(
            "hood hinge bracket",
            Contour.polygon(
                List.of(
                    new Vec2(-60, -95),
                    new Vec2(-15, -95),
                    new Vec2(-15, -50),
                    new Vec2(-60, -50))),
            14,
            12,
            List.of(new Bracket.Fastener(new Vec2(-52, -88), 10)));
    Contour opening = Contour.circle(Vec2.ZERO, 31);
    Contour mark =
        wish.slottedMark()
            ? Contour.sweptDisc(new Vec2(-4, -6), new Vec2(6, 10), 50)
            : Contour.circle(Vec2.ZERO, 52);
    Tower tower =
        new Tower(
            1.4,
            opening,
            mark,
            Lean.LEVEL,
            wish.crown(),
            12,
            Optional.of(
                Contour.polygon(
                    List.of(
                        new Vec2(100, -100),
                        new Vec2(100, 100),
                        new Vec2(-105, 100),
                        new Vec2(-105, -100)))),
            Optional.empty(),
            wish.landmarks(),
            List.of(new Straightedge("wing flange", new Vec2(-90, 84), new Vec2(90, 88))),
            wish.keepOuts(),
            List.of(bracket),
            Optional.empty(),
            Optional.empty());
    Tools tools = new Tools(19.2, 60, 2, false);
    SideJob job =
        new SideJob(
            wish.side(),
            tower,
            plate,
            new Mount(Angle.ofDegrees(55), 8, -3, 16),
            SampleJobs.SEATING,
            new HoleRules(Fit.MEDIUM, EdgeRule.STRICT),
            new CutRules(3, 2.5, 8, 10),
            tools,
            wish.print(),
            Optional.empty(),
            Optional.empty(),
            Optional.empty());
    Frame2 frame = plateFrame();
    List<PlacedHole> holes =
        bolts.stream()
            .map(b -> new PlacedHole(b, frame.map(b.at()), 9.0, List.of(3.0, 6.0, 9.0)))
            .toList();
    Region markRegion = Region.inside(mark);
    Region cut = markRegion.inset(3);
    Region sweep = Region.inside(Contour.sweptDisc(new Vec2(-4, 0), new Vec2(-22, 10), 13));
    Region outline = Region.inside(bracket.outline());
    PlacedHole blocked = holes.get(holes.size() - 1);
    Region socket = Region.inside(Contour.circle(blocked.at(), tools.reachRadiusMm()));
    Region removed = outline.intersection(socket);
    List<Notch> notches =
        removed.isEmpty()
            ? List.of()
            : List.of(
                new Notch(
                    bracket,
                    List.of(blocked.name()),
                    removed,
                    outline.minus(removed),
                    14.24,
                    Optional.empty()));
    return new SideLayout(
        job,
        holes,
        cut,
        cut.inset(2.5),
        List.of(new StarterHole(new Vec2(39, 0), 10), new StarterHole(new Vec2(-39, 0), 10)),
        new Sweep(new Vec2(-4, 0), new Vec2(-22, 10), 13, sweep, false, 0, 0),
        notches,
        List.of(),
        RestingPlane.of(job, cut, holes),
        List.of());
  }

  /** Full-scale pages without a line that tells what a bay will read. */
  public static List<Page> fullScale(SideLayout layout, JobInfo info) {
    return FullScaleSheets.pages(layout, Optional.empty(), info);
  }

  /** A job's pages without an alignment. */
  public static List<Page> pack(JobLayout layout, JobInfo info) {
    JobAlignment none = new JobAlignment(Map.of(), Optional.empty(), Optional.empty(), List.of());
    return Pack.pages(layout, none, info);
  }
}
