package dev.towerscribe.layout.quick;

import dev.towerscribe.finding.Findings;
import dev.towerscribe.geometry.Box;
import dev.towerscribe.geometry.Region;
import dev.towerscribe.geometry.RegionDepths;
import dev.towerscribe.layout.Cuts;
import dev.towerscribe.layout.HoleMargin;
import dev.towerscribe.layout.Layout;
import dev.towerscribe.layout.Margins;
import dev.towerscribe.layout.Notches;
import dev.towerscribe.layout.PlacedHole;
import dev.towerscribe.layout.PlateFrames;
import dev.towerscribe.layout.Sweep;
import dev.towerscribe.model.Bolt;
import dev.towerscribe.model.Mount;
import dev.towerscribe.model.Plate;
import dev.towerscribe.model.SideJob;
import dev.towerscribe.model.StrutRodReach;
import dev.towerscribe.quantity.Angle;
import java.util.List;
import java.util.Optional;
import java.util.function.Function;
import java.util.stream.IntStream;

/**
 * One tower, ready to say quickly whether a plate placed somewhere would meet a stop finding. What
 * does not move with the plate is worked out once. The holes' distances are the checks' own; the
 * other checks are settled by bounds of theirs, and where those do not reach, the answer is not
 * sure and the checks' own functions must be asked.
 */
final class QuickTowerCheck {
  /** How far outside the opening a bearing may be whose strut rod still goes through it, mm. */
  private static final double BEARING_ROOM_MM = 12.0;

  private final SideJob job;
  private final Cuts cuts;
  private final Function<SideJob, Optional<StrutRodReach>> reach;
  private final double hand;
  private final double[] boltX;
  private final double[] boltY;

  /** By hole; of two that are measured alike only the one with the greater limit. */
  private final HoleMargin[][] margins;

  private final QuickPlateCheck plate;
  private final QuickStrutRodCheck rod;
  private final QuickNotchCheck[] notches;

  QuickTowerCheck(
      SideJob job,
      Cuts cuts,
      Function<SideJob, Optional<StrutRodReach>> reach,
      StrutRodModel.Known moving) {
    this.job = job;
    this.cuts = cuts;
    this.reach = reach;
    hand = PlateFrames.hand(job);
    List<Bolt> bolts = job.plate().bolts();
    boltX = bolts.stream().mapToDouble(b -> b.at().x()).toArray();
    boltY = bolts.stream().mapToDouble(b -> b.at().y()).toArray();
    margins = margins();
    plate = new QuickPlateCheck(job, cuts.finished(), hand);
    boolean simple = cuts.finished().contours().size() == 1;
    rod = new QuickStrutRodCheck(job, new RegionDepths(cuts.finished()), simple, moving);
    double radius = job.tools().reachRadiusMm();
    notches =
        job.tower().brackets().stream()
            .map(b -> new QuickNotchCheck(b, radius))
            .toArray(QuickNotchCheck[]::new);
  }

  private HoleMargin[][] margins() {
    List<PlacedHole> holes = Layout.holes(job);
    List<HoleMargin> all = HoleMargin.of(job.tower(), cuts.finished(), job.holes(), holes);
    return IntStream.range(0, holes.size())
        .mapToObj(
            i ->
                all.stream()
                    .filter(m -> m.hole() == i && all.stream().noneMatch(o -> o.settles(m)))
                    .toArray(HoleMargin[]::new))
        .toArray(HoleMargin[][]::new);
  }

  /** Where a bearing may be whose strut rod goes through the opening. */
  static Box bearings(Cuts cuts) {
    return cuts.finished().bounds().grown(BEARING_ROOM_MM);
  }

  /**
   * Whether no check that depends on the placement gives a stop, as far as can be said quickly.
   *
   * @param s holds the placement; told what stands in the way
   */
  Answer quick(Scratch s) {
    s.next();
    if (s.stops(Barrier.STRUT_ROD, rod.asMeasured(s))
        || s.stops(Barrier.PLATE, plate.covers(s))
        || s.stops(Barrier.PLATE, plate.clearsWall(s))
        || s.stops(Barrier.BOLTS, Answer.of(holes(s)))
        || s.stops(Barrier.PLATE, plate.withinDome(s))
        || s.stops(Barrier.STRUT_ROD, rod.moving(s))) {
      return Answer.NO;
    }
    for (QuickNotchCheck notch : notches) {
      if (s.stops(Barrier.BRACKET, notch.stands(s))) {
        return Answer.NO;
      }
    }
    return s.answer();
  }

  /** The same for sure, by the checks' own functions where need be. */
  boolean allows(Scratch s) {
    Answer quick = quick(s);
    if (quick != Answer.UNSURE) {
      return quick == Answer.YES;
    }
    SideJob placed = job.with(new Mount(new Angle(s.rotation), s.rearward, s.inboard, 0.0));
    return !(s.unsure(Barrier.PLATE) && s.stops(Barrier.PLATE, plateStands(placed))
        || s.unsure(Barrier.BRACKET) && s.stops(Barrier.BRACKET, notchesStand(placed))
        || s.unsure(Barrier.STRUT_ROD) && s.stops(Barrier.STRUT_ROD, rodStands(placed)));
  }

  private Answer plateStands(SideJob placed) {
    Plate top = job.plate();
    Region outline = Region.inside(top.outline()).mapped(PlateFrames.toPlan(placed));
    boolean stands =
        Layout.pastDome(placed).isEmpty()
            && Findings.passes(Margins.plateCover(outline, cuts.finished()), top.coverMm())
            && job.tower()
                .wall()
                .map(w -> Margins.plateToWall(Region.inside(w), outline))
                .map(gap -> Findings.passes(gap, top.wallGapMm()))
                .orElse(true);
    return Answer.of(stands);
  }

  private Answer notchesStand(SideJob placed) {
    return Answer.of(
        Notches.of(placed, Layout.holes(placed)).stream().allMatch(Margins::leavesEnough));
  }

  private Answer rodStands(SideJob placed) {
    double clearance = job.plate().movingClearanceMm();
    double gap =
        Margins.aroundSweep(Sweep.of(placed, reach.apply(placed)), cuts.finished(), clearance);
    return Answer.of(Findings.passes(gap, clearance));
  }

  /** Where the holes lie, to the last digit as {@link PlateFrames#toPlan} has it. */
  private void placeHoles(Scratch s) {
    s.holes(boltX.length);
    for (int i = 0; i < boltX.length; i++) {
      s.x[i] = -s.rearward + (boltX[i] * -s.sin + boltY[i] * (hand * s.cos));
      s.y[i] = s.inboard + (boltX[i] * s.cos + boltY[i] * (hand * s.sin));
    }
  }

  private boolean holes(Scratch s) {
    placeHoles(s);
    s.slack = Double.POSITIVE_INFINITY;
    for (int i = 0; i < margins.length; i++) {
      for (HoleMargin margin : margins[i]) {
        double figure = margin.figureMm(s.x[i], s.y[i]);
        if (!Findings.passes(figure, margin.limitMm())) {
          return false;
        }
        s.slack = Math.min(s.slack, figure - margin.limitMm());
      }
    }
    return true;
  }

  /**
   * The least of what is left before a hole, washer or nut meets an edge, a landmark or a keep-out;
   * mm, negative infinity where one does.
   */
  double slack(Scratch s) {
    return holes(s) ? s.slack : Double.NEGATIVE_INFINITY;
  }

  /** Metal of brackets in the sockets' circles, mm2: a notch's area except for its tips. */
  double overlap(Scratch s) {
    placeHoles(s);
    double area = 0.0;
    for (QuickNotchCheck notch : notches) {
      for (int i = 0; i < boltX.length; i++) {
        area += notch.overlap(s.x[i], s.y[i]);
      }
    }
    return area;
  }
}
