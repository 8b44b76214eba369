package dev.towerscribe.layout;

import dev.towerscribe.geometry.Box;
import dev.towerscribe.geometry.Contour;
import dev.towerscribe.geometry.Depths;
import dev.towerscribe.geometry.Edge;
import dev.towerscribe.geometry.Edge.Arc;
import dev.towerscribe.geometry.Region;
import dev.towerscribe.geometry.Vec2;
import dev.towerscribe.model.Bolt;
import dev.towerscribe.model.KeepOut;
import dev.towerscribe.model.Landmark;
import dev.towerscribe.model.Mount;
import dev.towerscribe.model.Plate;
import dev.towerscribe.model.ShaftReach;
import dev.towerscribe.model.Side;
import dev.towerscribe.model.SideJob;
import dev.towerscribe.model.Tower;
import dev.towerscribe.quantity.Angle;
import dev.towerscribe.quantity.LengthUnit;
import java.util.List;
import java.util.Optional;
import java.util.function.Function;

/**
 * One tower, ready to say quickly whether a plate placed somewhere would meet a stop finding. What
 * does not move with the plate is worked out once. Where the quick figure is nearer to its limit
 * than {@link FitScratch#UNSURE_MM}, and where no quick figure is at hand, the answer is not sure,
 * and the checks themselves must be asked.
 */
final class TowerFit {
  private static final double UNSURE_MM = FitScratch.UNSURE_MM;

  /** How far outside the opening a bearing may be whose shaft still goes through it, mm. */
  private static final double BEARING_ROOM_MM = 12.0;

  private final SideJob job;
  private final Cuts cuts;
  private final double hand;

  private final int bolts;
  private final double[] boltX;
  private final double[] boltY;
  private final double[] edgeLimit;
  private final double[] seat;
  private final double socketRadius;

  private final Depths finished;
  private final Depths land;
  private final double[] landmarkX;
  private final double[] landmarkY;
  private final double[] landmarkRadius;
  private final Depths[] keepOuts;
  private final double[] margins;
  private final NotchFit[] notches;

  private final Depths plate;
  private final List<Edge> plateEdges;
  private final double plateReach;
  private final double coverMm;
  private final List<Edge> finishedEdges;
  private final double finishedX;
  private final double finishedY;
  private final double finishedReach;
  private final Depths wall;
  private final double wallGapMm;
  private final boolean simple;

  private final double domeMm;
  private final boolean domeFails;

  private final ShaftFit shaft;
  private final Function<SideJob, Optional<ShaftReach>> reach;

  TowerFit(
      SideJob job,
      Cuts cuts,
      Function<SideJob, Optional<ShaftReach>> reach,
      ShaftModel.Known moving) {
    this.reach = reach;
    this.job = job;
    this.cuts = cuts;
    hand = job.side() == Side.RIGHT && !job.plate().handed() ? -1.0 : 1.0;
    Tower tower = job.tower();
    Plate top = job.plate();
    bolts = top.bolts().size();
    boltX = new double[bolts];
    boltY = new double[bolts];
    edgeLimit = new double[bolts];
    seat = new double[bolts];
    List<PlacedHole> holes = Layout.holes(job);
    for (int i = 0; i < bolts; i++) {
      Bolt bolt = top.bolts().get(i);
      boltX[i] = bolt.at().x();
      boltY[i] = bolt.at().y();
      edgeLimit[i] = HoleChecks.edgeLimit(job.holes(), holes.get(i));
      seat[i] = bolt.seatRadiusMm();
    }
    socketRadius = job.tools().reachRadiusMm();
    finished = new Depths(cuts.finished());
    land = tower.land().map(c -> new Depths(Region.inside(c))).orElse(null);
    List<Landmark> landmarks = tower.landmarks();
    landmarkX = landmarks.stream().mapToDouble(l -> l.at().x()).toArray();
    landmarkY = landmarks.stream().mapToDouble(l -> l.at().y()).toArray();
    landmarkRadius = landmarks.stream().mapToDouble(l -> l.diameterMm() / 2).toArray();
    List<KeepOut> outs = tower.keepOuts();
    keepOuts =
        outs.stream().map(k -> new Depths(Region.inside(k.outline()))).toArray(Depths[]::new);
    margins = outs.stream().mapToDouble(KeepOut::marginMm).toArray();
    notches = tower.brackets().stream().map(NotchFit::new).toArray(NotchFit[]::new);
    plate = new Depths(Region.inside(top.outline()));
    plateEdges = top.outline().edges();
    plateReach = reach(top.outline(), Vec2.ZERO);
    coverMm = top.coverMm();
    finishedEdges = cuts.finished().contours().stream().flatMap(c -> c.edges().stream()).toList();
    Vec2 middle = cuts.finished().bounds().centre();
    finishedX = middle.x();
    finishedY = middle.y();
    finishedReach =
        cuts.finished().contours().stream().mapToDouble(c -> reach(c, middle)).max().orElse(0.0);
    wall = tower.wall().map(c -> new Depths(Region.inside(c))).orElse(null);
    wallGapMm = top.wallGapMm();
    simple = cuts.finished().contours().size() == 1;
    domeMm = tower.crown().map(c -> c.radiusMm()).orElse(Double.POSITIVE_INFINITY);
    domeFails = Layout.outermostMm(tower) >= domeMm;
    shaft = new ShaftFit(job, finished, simple, moving);
  }

  /** Where a bearing may be whose shaft goes through the opening. */
  static Box bearings(Cuts cuts) {
    return cuts.finished().bounds().grown(BEARING_ROOM_MM);
  }

  /** A radius about a point that holds a boundary. */
  private static double reach(Contour contour, Vec2 about) {
    double most = 0.0;
    for (Edge edge : contour.edges()) {
      most = Math.max(most, edge.start().distanceTo(about));
      if (edge instanceof Arc arc) {
        most = Math.max(most, arc.centre().distanceTo(about) + arc.radius());
      }
    }
    return most;
  }

  /**
   * Whether no check that depends on the placement gives a stop, as far as can be said quickly.
   *
   * @param sin of the rotation
   * @param cos of the rotation
   * @param rearward plate centre, mm
   * @param inboard plate centre, mm
   * @param s the thread's own; told what stands in the way
   */
  MountCheck.Answer quick(double sin, double cos, double rearward, double inboard, FitScratch s) {
    s.unsure = false;
    s.unsureShaft = false;
    s.unsureNotch = false;
    if (!shaft.asMeasured(sin, cos, rearward, inboard, s)) {
      s.barrier = MountCheck.Barrier.SHAFT;
      return MountCheck.Answer.NO;
    }
    if (domeFails
        || !cover(sin, cos, rearward, inboard, s)
        || !wall(sin, cos, rearward, inboard, s)) {
      s.barrier = MountCheck.Barrier.PLATE;
      return MountCheck.Answer.NO;
    }
    if (!holes(sin, cos, rearward, inboard, s)) {
      s.barrier = MountCheck.Barrier.BOLTS;
      return MountCheck.Answer.NO;
    }
    dome(rearward, inboard, s);
    if (!shaft.moving(sin, cos, rearward, inboard, s)) {
      s.barrier = MountCheck.Barrier.SHAFT;
      return MountCheck.Answer.NO;
    }
    for (NotchFit notch : notches) {
      NotchFit.Answer answer = notch.stands(s.x, s.y, socketRadius, s.bites);
      if (answer == NotchFit.Answer.NO) {
        s.barrier = MountCheck.Barrier.BRACKET;
        return MountCheck.Answer.NO;
      }
      s.unsureNotch |= answer == NotchFit.Answer.UNSURE;
    }
    return s.unsure || s.unsureShaft || s.unsureNotch
        ? MountCheck.Answer.UNSURE
        : MountCheck.Answer.YES;
  }

  /** The same without doubt, by the checks themselves where need be. */
  boolean allows(double rotation, double rearward, double inboard, FitScratch s) {
    MountCheck.Answer quick = quick(Math.sin(rotation), Math.cos(rotation), rearward, inboard, s);
    if (quick != MountCheck.Answer.UNSURE) {
      return quick == MountCheck.Answer.YES;
    }
    Mount mount = new Mount(new Angle(rotation), rearward, inboard, 0.0);
    if (s.unsure) {
      s.barrier = MountCheck.Barrier.BOLTS;
      return checked(mount);
    }
    boolean askShaft = s.unsureShaft;
    if (s.unsureNotch && !notched(mount)) {
      s.barrier = MountCheck.Barrier.BRACKET;
      return false;
    }
    if (askShaft && !swept(mount)) {
      s.barrier = MountCheck.Barrier.SHAFT;
      return false;
    }
    return true;
  }

  private boolean swept(Mount mount) {
    SideJob moved = job.with(mount);
    double clearance = job.plate().movingClearanceMm();
    Sweep sweep = Sweeps.of(moved, reach.apply(moved));
    return Findings.passes(CutChecks.sweepGap(sweep, cuts.finished(), clearance), clearance);
  }

  /** The checks themselves. */
  private boolean checked(Mount mount) {
    SideJob moved = job.with(mount);
    if (Layout.pastDome(moved).isPresent()) {
      return false;
    }
    Findings findings = new Findings(job.side(), LengthUnit.MM);
    SideLayout bare = Layout.bare(moved, cuts, reach.apply(moved));
    HoleChecks.run(bare, cuts.finished(), findings);
    CutChecks.run(bare, cuts, findings);
    PlateChecks.run(bare, cuts.finished(), findings);
    SocketChecks.run(bare, findings);
    return findings.gravestFirst().stream().noneMatch(f -> f.isStop());
  }

  private boolean notched(Mount mount) {
    SideJob moved = job.with(mount);
    for (Notch notch : Notches.of(moved, Layout.holes(moved))) {
      if (!SocketChecks.leavesEnough(notch)) {
        return false;
      }
    }
    return true;
  }

  private void place(double sin, double cos, double rearward, double inboard, FitScratch s) {
    s.room(bolts);
    for (int i = 0; i < bolts; i++) {
      s.x[i] = -rearward - boltX[i] * sin + boltY[i] * hand * cos;
      s.y[i] = inboard + boltX[i] * cos + boltY[i] * hand * sin;
    }
  }

  private boolean holes(double sin, double cos, double rearward, double inboard, FitScratch s) {
    place(sin, cos, rearward, inboard, s);
    s.slack = Double.POSITIVE_INFINITY;
    for (int i = 0; i < bolts; i++) {
      double x = s.x[i];
      double y = s.y[i];
      double metal = Math.max(edgeLimit[i], seat[i]);
      double cut = -finished.at(x, y) - metal;
      double edge = land == null ? Double.POSITIVE_INFINITY : land.at(x, y) - metal;
      double slack = Math.min(cut, edge);
      for (int k = 0; k < landmarkX.length; k++) {
        double dx = x - landmarkX[k];
        double dy = y - landmarkY[k];
        double gap = Math.sqrt(dx * dx + dy * dy) - landmarkRadius[k] - edgeLimit[i];
        slack = Math.min(slack, gap);
      }
      for (int k = 0; k < keepOuts.length; k++) {
        slack = Math.min(slack, -keepOuts[k].at(x, y) - seat[i] - margins[k]);
      }
      if (!s.notes(slack, 0.0)) {
        return false;
      }
      s.slack = Math.min(s.slack, slack);
    }
    return true;
  }

  /**
   * The least of what is left before a hole, washer or nut meets an edge, a landmark or a keep-out;
   * mm, negative where one does.
   */
  double slack(double sin, double cos, double rearward, double inboard, FitScratch s) {
    s.unsure = false;
    return holes(sin, cos, rearward, inboard, s) ? s.slack : Double.NEGATIVE_INFINITY;
  }

  /** Metal of brackets in the sockets' circles, mm2: a notch's area but for its tips. */
  double overlap(double sin, double cos, double rearward, double inboard, FitScratch s) {
    place(sin, cos, rearward, inboard, s);
    double area = 0.0;
    for (NotchFit notch : notches) {
      for (int i = 0; i < bolts; i++) {
        area += notch.overlap(s.x[i], s.y[i], socketRadius);
      }
    }
    return area;
  }

  private void dome(double rearward, double inboard, FitScratch s) {
    if (domeMm == Double.POSITIVE_INFINITY) {
      return;
    }
    double farthest = Math.hypot(rearward, inboard) + plateReach;
    for (int i = 0; i < bolts; i++) {
      farthest = Math.max(farthest, Math.hypot(s.x[i], s.y[i]));
    }
    s.unsure |= farthest > domeMm - UNSURE_MM;
  }

  private boolean cover(double sin, double cos, double rearward, double inboard, FitScratch s) {
    if (!simple) {
      return s.doubt();
    }
    double quick = plateDepth(finishedX, finishedY, sin, cos, rearward, inboard) - finishedReach;
    if (quick > coverMm + UNSURE_MM) {
      return true;
    }
    if (plate.isDisc() && finished.isDisc()) {
      return s.notes(quick, coverMm);
    }
    double worst = 1.0;
    for (Edge edge : finishedEdges) {
      worst = Math.min(worst, covered(edge, 0, 1, sin, cos, rearward, inboard));
      if (worst < 0) {
        return false;
      }
    }
    s.unsure |= worst == 0.0;
    return true;
  }

  private double plateDepth(
      double x, double y, double sin, double cos, double rearward, double inboard) {
    double fore = x + rearward;
    double in = y - inboard;
    return plate.at(-fore * sin + in * cos, hand * (fore * cos + in * sin));
  }

  private double covered(
      Edge edge, double t0, double t1, double sin, double cos, double rearward, double inboard) {
    double t = (t0 + t1) / 2;
    Vec2 p = edge.at(t);
    double over = plateDepth(p.x(), p.y(), sin, cos, rearward, inboard) - coverMm;
    double half = edge.length() * (t1 - t0) / 2;
    if (over < -UNSURE_MM) {
      return -1.0;
    }
    if (over > half + UNSURE_MM) {
      return 1.0;
    }
    if (half < FitScratch.LEAST_PIECE_MM) {
      return 0.0;
    }
    double first = covered(edge, t0, t, sin, cos, rearward, inboard);
    return first < 0 ? first : Math.min(first, covered(edge, t, t1, sin, cos, rearward, inboard));
  }

  private boolean wall(double sin, double cos, double rearward, double inboard, FitScratch s) {
    if (wall == null) {
      return true;
    }
    if (plate.isDisc()) {
      double x = -rearward - plate.discX() * sin + plate.discY() * hand * cos;
      double y = inboard + plate.discX() * cos + plate.discY() * hand * sin;
      return s.notes(wall.at(x, y) - plate.discRadius(), wallGapMm);
    }
    if (wall.at(-rearward, inboard) - plateReach > wallGapMm + UNSURE_MM) {
      return true;
    }
    double worst = 1.0;
    for (Edge edge : plateEdges) {
      worst = Math.min(worst, clear(edge, 0, 1, sin, cos, rearward, inboard));
      if (worst < 0) {
        return false;
      }
    }
    s.unsure |= worst == 0.0;
    return true;
  }

  private double clear(
      Edge edge, double t0, double t1, double sin, double cos, double rearward, double inboard) {
    double t = (t0 + t1) / 2;
    Vec2 p = edge.at(t);
    double x = -rearward - p.x() * sin + p.y() * hand * cos;
    double y = inboard + p.x() * cos + p.y() * hand * sin;
    double over = wall.at(x, y) - wallGapMm;
    double half = edge.length() * (t1 - t0) / 2;
    if (over < -UNSURE_MM) {
      return -1.0;
    }
    if (over > half + UNSURE_MM) {
      return 1.0;
    }
    if (half < FitScratch.LEAST_PIECE_MM) {
      return 0.0;
    }
    double first = clear(edge, t0, t, sin, cos, rearward, inboard);
    return first < 0 ? first : Math.min(first, clear(edge, t, t1, sin, cos, rearward, inboard));
  }
}
