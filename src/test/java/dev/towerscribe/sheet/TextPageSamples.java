package dev.towerscribe.sheet;

import dev.towerscribe.SampleJobs;
import dev.towerscribe.finding.Finding;
import dev.towerscribe.finding.JobRejected;
import dev.towerscribe.finding.Severity;
import dev.towerscribe.geometry.Region;
import dev.towerscribe.geometry.Vec2;
import dev.towerscribe.layout.Layout;
import dev.towerscribe.layout.SideLayout;
import dev.towerscribe.layout.Span;
import dev.towerscribe.model.Bolt;
import dev.towerscribe.model.Job;
import dev.towerscribe.model.Paper;
import dev.towerscribe.model.Plate;
import dev.towerscribe.model.PlateChange;
import dev.towerscribe.model.Print;
import dev.towerscribe.model.Side;
import dev.towerscribe.model.SideJob;
import dev.towerscribe.model.Thread;
import dev.towerscribe.model.Tower;
import dev.towerscribe.quantity.Angle;
import dev.towerscribe.quantity.LengthUnit;
import dev.towerscribe.sheet.text.JobInfo;
import java.util.ArrayList;
import java.util.List;
import java.util.Map;
import java.util.Optional;
import java.util.stream.IntStream;

/** Towers and jobs that the text pages are tried on. */
public final class TextPageSamples {
  private TextPageSamples() {}

  public static SideJob on(SideJob s, Paper paper, double margin) {
    return s.with(new Print(paper, margin, 1, 1));
  }

  public static SideLayout plain(Side side, Paper paper) {
    return laidOut(
        on(SampleJobs.side(side, SampleJobs.plainTower(), SampleJobs.plate(true)), paper, 10),
        LengthUnit.MM);
  }

  public static SideLayout full(Side side, Paper paper, LengthUnit units) {
    return laidOut(
        on(SampleJobs.side(side, SampleJobs.fullTower(), SampleJobs.plate(true)), paper, 10),
        units);
  }

  /** Eight bolts of two sizes, perhaps with long names. */
  public static SideLayout eight(Side side, Paper paper, boolean longNames) {
    return eight(side, paper, longNames, 78);
  }

  /** The same, that far from the plate's centre, mm. */
  public static SideLayout eight(Side side, Paper paper, boolean longNames, double radius) {
    Plate three = SampleJobs.plate(false);
    List<Bolt> bolts = new ArrayList<>();
    for (int i = 0; i < 8; i++) {
      Thread thread = Thread.find(i % 2 == 0 ? "M8" : "M10").orElseThrow();
      String name =
          longNames ? "by-wiper-motor-bracket-" + (i + 1) : "ABCDEFGH".substring(i, i + 1);
      Vec2 at = Vec2.polar(radius, Angle.ofDegrees(10 + 45 * i));
      bolts.add(new Bolt(name, at, thread, i % 2 == 0 ? 13 : 16, i % 2 == 0 ? 16 : 20));
    }
    Plate plate = PlateChange.of(three).withShape(three.outline(), bolts).plate();
    return laidOut(on(SampleJobs.side(side, domed(), plate), paper, 10), LengthUnit.MM);
  }

  private static Tower domed() {
    return SampleJobs.fullTower();
  }

  public static SideLayout laidOut(SideJob side, LengthUnit units) {
    try {
      Job job = new Job("one side", Optional.empty(), units, Map.of(side.side(), side));
      return Layout.of(job).sides().get(side.side());
    } catch (JobRejected e) {
      throw new AssertionError(e);
    }
  }

  /** The same tower with other findings. */
  public static SideLayout with(SideLayout s, List<Finding> findings) {
    return new SideLayout(
        s.job(),
        s.holes(),
        s.finalCut(),
        s.roughCut(),
        s.starters(),
        s.sweep(),
        s.notches(),
        s.spans(),
        s.rest(),
        findings);
  }

  /** The same tower with other spans. */
  public static SideLayout withSpans(SideLayout s, List<Span> spans) {
    return new SideLayout(
        s.job(),
        s.holes(),
        s.finalCut(),
        s.roughCut(),
        s.starters(),
        s.sweep(),
        s.notches(),
        spans,
        s.rest(),
        s.findings());
  }

  /** The same tower with nothing left to cut. */
  public static SideLayout uncut(SideLayout s) {
    return new SideLayout(
        s.job(),
        s.holes(),
        Region.EMPTY,
        Region.EMPTY,
        List.of(),
        s.sweep(),
        s.notches(),
        s.spans(),
        s.rest(),
        s.findings());
  }

  /** That many findings, severities in turn. */
  public static List<Finding> findings(int count) {
    return IntStream.range(0, count).mapToObj(i -> finding(i, Severity.values()[i % 3])).toList();
  }

  /** That many stops. */
  public static List<Finding> stops(int count) {
    return IntStream.range(0, count).mapToObj(i -> finding(i, Severity.STOP)).toList();
  }

  private static Finding finding(int i, Severity severity) {
    return new Finding(
        "left.edge-cut.bolt-" + (i + 1),
        severity,
        "bolt " + (i + 1) + ", final cut",
        10.25 + i,
        16,
        "mm",
        "2 D, rivets in aircraft sheet, by analogy: NAVEDTRA 14018 ch. 13",
        "The hole's centre lies too near the final cut; move the plate or keep more metal inside"
            + " the mark.");
  }

  public static JobInfo info(LengthUnit units, List<Finding> accepted) {
    return new JobInfo(
        "Wren hatch, road and track days", Optional.empty(), units, "7F3A-91C2", accepted);
  }

  /** A title of sixty characters. */
  public static JobInfo longInfo(List<Finding> accepted) {
    return new JobInfo(
        "Wren hatch with the Wednesday evening club, road and TRACK 1",
        Optional.of(java.time.LocalDate.of(2026, 2, 28)),
        LengthUnit.INCH,
        "7F3A-91C2",
        accepted);
  }
}
