package dev.towerscribe.layout;

import dev.towerscribe.geometry.Arc;
import dev.towerscribe.geometry.Box;
import dev.towerscribe.geometry.Contour;
import dev.towerscribe.geometry.Depths;
import dev.towerscribe.geometry.Edge;
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
import java.util.Arrays;
import java.util.List;
import java.util.Optional;
import java.util.function.Function;

/**
 * One tower, ready to say quickly whether a plate placed somewhere would meet a stop finding. What
 * does not move with the plate is worked out once. Where the quick figure is nearer to its limit
 * than {@link #UNSURE_MM}, and where no quick figure is at hand, the answer is not sure, and the
 * checks themselves must be asked.
 */
final class TowerFit {
  /** Room for figures reckoned in two ways, mm; wide of any rounding. */
  private static final double UNSURE_MM = 1e-6;

  /** How far outside the opening a bearing may be whose shaft still goes through it, mm. */
  private static final double BEARING_ROOM_MM = 12.0;

  /** Pieces of a boundary are halved down to this length before they are left undecided, mm. */
  private static final double LEAST_PIECE_MM = 1e-5;

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

  private final double slotFrom;
  private final double slotTo;
  private final Sweeps.Shaft shaft;
  private final Function<SideJob, Optional<ShaftReach>> reach;
  private final ShaftModel.Known moving;

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
    slotFrom = top.bearingXMm() + top.slot().fromMm();
    slotTo = top.bearingXMm() + top.slot().toMm();
    shaft = Sweeps.shaft(job);
    this.moving = moving;
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

  /** Somewhere to reckon in, one for each thread. */
  static final class Scratch {
    private double[] x = new double[0];
    private double[] y = new double[0];
    private int[] bites = new int[0];
    private boolean unsure;
    private boolean unsureShaft;
    private boolean unsureNotch;
    private MountCheck.Barrier barrier = MountCheck.Barrier.SHAFT;
    private double slack;

    private double[] rayX = new double[0];
    private double[] rayY = new double[0];
    private final double[] terms = new double[10];
    private int[] hull = new int[0];
    private Integer[] order = new Integer[0];

    private void rays(int n) {
      if (rayX.length != n) {
        rayX = new double[n];
        rayY = new double[n];
        hull = new int[2 * n];
        order = new Integer[n];
      }
    }

    /** Corners of the rays' convex hull, counter-clockwise; how many there are. */
    private int hull(int n) {
      for (int i = 0; i < n; i++) {
        order[i] = i;
      }
      Arrays.sort(
          order,
          (a, b) ->
              rayX[a] != rayX[b]
                  ? Double.compare(rayX[a], rayX[b])
                  : Double.compare(rayY[a], rayY[b]));
      int size = 0;
      for (int i = 0; i < n; i++) {
        size = push(order[i], size, 0);
      }
      int lower = size - 1;
      for (int i = n - 2; i >= 0; i--) {
        size = push(order[i], size, lower);
      }
      return Math.max(1, size - 1);
    }

    private int push(int p, int size, int from) {
      int count = size;
      while (count >= from + 2) {
        int a = hull[count - 2];
        int b = hull[count - 1];
        double cross =
            (rayX[b] - rayX[a]) * (rayY[p] - rayY[b]) - (rayY[b] - rayY[a]) * (rayX[p] - rayX[b]);
        if (cross > 0) {
          break;
        }
        count--;
      }
      hull[count] = p;
      return count + 1;
    }

    MountCheck.Barrier barrier() {
      return barrier;
    }

    private void room(int n) {
      if (x.length != n) {
        x = new double[n];
        y = new double[n];
        bites = new int[n];
      }
    }
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
  MountCheck.Answer quick(double sin, double cos, double rearward, double inboard, Scratch s) {
    s.unsure = false;
    s.unsureShaft = false;
    s.unsureNotch = false;
    if (!sweep(sin, cos, rearward, inboard, s)) {
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
    if (moving.moves() && !sweptOver(sin, cos, rearward, inboard, s)) {
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
  boolean allows(double rotation, double rearward, double inboard, Scratch s) {
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

  /** Notes a figure against its limit; false if it surely fails. */
  private static boolean notes(double figure, double limit, Scratch s) {
    double over = figure - limit;
    if (over < UNSURE_MM) {
      if (over < -UNSURE_MM) {
        return false;
      }
      s.unsure = true;
    }
    return true;
  }

  private void place(double sin, double cos, double rearward, double inboard, Scratch s) {
    s.room(bolts);
    for (int i = 0; i < bolts; i++) {
      s.x[i] = -rearward - boltX[i] * sin + boltY[i] * hand * cos;
      s.y[i] = inboard + boltX[i] * cos + boltY[i] * hand * sin;
    }
  }

  private boolean holes(double sin, double cos, double rearward, double inboard, Scratch s) {
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
      if (!notes(slack, 0.0, s)) {
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
  double slack(double sin, double cos, double rearward, double inboard, Scratch s) {
    s.unsure = false;
    return holes(sin, cos, rearward, inboard, s) ? s.slack : Double.NEGATIVE_INFINITY;
  }

  /** Metal of brackets in the sockets' circles, mm2: a notch's area but for its tips. */
  double overlap(double sin, double cos, double rearward, double inboard, Scratch s) {
    place(sin, cos, rearward, inboard, s);
    double area = 0.0;
    for (NotchFit notch : notches) {
      for (int i = 0; i < bolts; i++) {
        area += notch.overlap(s.x[i], s.y[i], socketRadius);
      }
    }
    return area;
  }

  private void dome(double rearward, double inboard, Scratch s) {
    if (domeMm == Double.POSITIVE_INFINITY) {
      return;
    }
    double farthest = Math.hypot(rearward, inboard) + plateReach;
    for (int i = 0; i < bolts; i++) {
      farthest = Math.max(farthest, Math.hypot(s.x[i], s.y[i]));
    }
    s.unsure |= farthest > domeMm - UNSURE_MM;
  }

  private boolean sweep(double sin, double cos, double rearward, double inboard, Scratch s) {
    double fromX = -rearward - slotFrom * sin;
    double fromY = inboard + slotFrom * cos;
    double toX = -rearward - slotTo * sin;
    double toY = inboard + slotTo * cos;
    double radius = shaft.radius(fromX, fromY, toX, toY);
    double ax = shaft.throughX(fromX);
    double ay = shaft.throughY(fromY);
    double bx = shaft.throughX(toX);
    double by = shaft.throughY(toY);
    double atA = finished.at(ax, ay) - radius;
    double atB = finished.at(bx, by) - radius;
    if (!notes(Math.min(atA, atB), 0.0, s)) {
      return false;
    }
    if (finished.isDisc()) {
      // Inside a disc what lies between two points is no nearer to its edge than the nearer one.
      return true;
    }
    return simple ? notes(alongLine(ax, ay, bx, by, radius), 0.0, s) : unsure(s);
  }

  /** The same over travel and steer. */
  private boolean sweptOver(double sin, double cos, double rearward, double inboard, Scratch s) {
    if (moving.model().isEmpty() || !simple) {
      return unsureShaft(s);
    }
    ShaftModel model = moving.model().get();
    int n = model.rays() + 2;
    s.rays(n);
    double middle = (slotFrom + slotTo) / 2;
    double most = model.centres(sin, cos, rearward, inboard, middle, s.rayX, s.rayY, s.terms);
    if (Double.isNaN(most)) {
      return unsureShaft(s);
    }
    double fromX = -rearward - slotFrom * sin;
    double fromY = inboard + slotFrom * cos;
    double toX = -rearward - slotTo * sin;
    double toY = inboard + slotTo * cos;
    s.rayX[n - 2] = shaft.throughX(fromX);
    s.rayY[n - 2] = shaft.throughY(fromY);
    s.rayX[n - 1] = shaft.throughX(toX);
    s.rayY[n - 1] = shaft.throughY(toY);
    double slant = Math.max(shaft.slant(fromX, fromY, toX, toY), Math.atan(Math.sqrt(most)));
    double radius = shaft.widened(slant);
    double least = Double.POSITIVE_INFINITY;
    for (int i = 0; i < n; i++) {
      least = Math.min(least, finished.at(s.rayX[i], s.rayY[i]));
      if (least < radius - model.errorMm()) {
        return false;
      }
    }
    if (least < radius + model.errorMm()) {
      return unsureShaft(s);
    }
    if (finished.isDisc()) {
      return true;
    }
    int corners = s.hull(n);
    for (int i = 0; i < corners; i++) {
      int a = s.hull[i];
      int b = s.hull[(i + 1) % corners];
      double along =
          alongLine(s.rayX[a], s.rayY[a], s.rayX[b], s.rayY[b], radius + model.errorMm());
      if (along <= 0) {
        return unsureShaft(s);
      }
    }
    return true;
  }

  private static boolean unsureShaft(Scratch s) {
    s.unsureShaft = true;
    return true;
  }

  private static boolean unsure(Scratch s) {
    s.unsure = true;
    return true;
  }

  /**
   * Whether the depth along a line stays above a limit: positive if so, negative if not, 0 if too
   * close to say. Depth changes no faster than way.
   */
  private double alongLine(double ax, double ay, double bx, double by, double limit) {
    double half = Math.hypot(bx - ax, by - ay) / 2;
    double mx = (ax + bx) / 2;
    double my = (ay + by) / 2;
    double over = finished.at(mx, my) - limit;
    if (over < -UNSURE_MM) {
      return -1.0;
    }
    if (over > half + UNSURE_MM) {
      return 1.0;
    }
    if (half < LEAST_PIECE_MM) {
      return 0.0;
    }
    double first = alongLine(ax, ay, mx, my, limit);
    return first < 0 ? first : Math.min(first, alongLine(mx, my, bx, by, limit));
  }

  private boolean cover(double sin, double cos, double rearward, double inboard, Scratch s) {
    if (!simple) {
      return unsure(s);
    }
    double quick = plateDepth(finishedX, finishedY, sin, cos, rearward, inboard) - finishedReach;
    if (quick > coverMm + UNSURE_MM) {
      return true;
    }
    if (plate.isDisc() && finished.isDisc()) {
      return notes(quick, coverMm, s);
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
    if (half < LEAST_PIECE_MM) {
      return 0.0;
    }
    double first = covered(edge, t0, t, sin, cos, rearward, inboard);
    return first < 0 ? first : Math.min(first, covered(edge, t, t1, sin, cos, rearward, inboard));
  }

  private boolean wall(double sin, double cos, double rearward, double inboard, Scratch s) {
    if (wall == null) {
      return true;
    }
    if (plate.isDisc()) {
      double x = -rearward - plate.discX() * sin + plate.discY() * hand * cos;
      double y = inboard + plate.discX() * cos + plate.discY() * hand * sin;
      return notes(wall.at(x, y) - plate.discRadius(), wallGapMm, s);
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
    if (half < LEAST_PIECE_MM) {
      return 0.0;
    }
    double first = clear(edge, t0, t, sin, cos, rearward, inboard);
    return first < 0 ? first : Math.min(first, clear(edge, t, t1, sin, cos, rearward, inboard));
  }
}
