package dev.towerscribe.layout;

import dev.towerscribe.geometry.Contour;
import dev.towerscribe.geometry.Region;
import dev.towerscribe.geometry.Vec2;
import dev.towerscribe.model.Bracket;
import dev.towerscribe.model.SideJob;
import java.util.ArrayList;
import java.util.List;

/**
 * The least metal to take from each bracket so that the socket, with room round it, comes straight
 * down on every bolt under it.
 *
 * <p>For each bolt in the way the least is the socket's circle itself. Where that would leave a web
 * thinner than the bracket's least width between the circle and an edge, the circle is run out
 * through that edge instead, as a slot of the same width, if that leaves enough everywhere else. Of
 * all such choices the one that keeps the least width takes precedence, then the one that removes
 * least. Tips left at the mouth are rounded.
 */
final class Notches {
  /** Radius of the rounding of the tips of metal at a notch's mouth: enough to lose the burr. */
  static final double TIP_MM = 1.0;

  /** Smaller bites than this are rounding noise, mm2. */
  private static final double NOTHING_MM2 = 1e-6;

  private Notches() {}

  /** The path of the socket's centre through a bracket: a point, or from it out past an edge. */
  record Bite(PlacedHole hole, Vec2 from, Vec2 to, double radiusMm) {
    Region region() {
      return Region.inside(Contour.sweptDisc(from, to, radiusMm));
    }
  }

  static List<Notch> of(SideJob job, List<PlacedHole> holes) {
    List<Notch> notches = new ArrayList<>();
    // A notch is an inside corner of the bracket too, so its radius is never less than a cut's.
    double radius = Math.max(job.tools().reachRadiusMm(), job.cut().cornerMm());
    for (Bracket bracket : job.tower().brackets()) {
      Region metal = Region.inside(bracket.outline());
      List<Bite> bites = new ArrayList<>();
      for (PlacedHole hole : holes) {
        boolean blocked = -metal.depth(hole.at()) < job.tools().reachRadiusMm();
        Bite bite = new Bite(hole, hole.at(), hole.at(), radius);
        if (blocked && metal.intersection(bite.region()).area() > NOTHING_MM2) {
          bites.add(bite);
        }
      }
      if (!bites.isEmpty()) {
        notches.add(best(bracket, metal, bites));
      }
    }
    return notches;
  }

  /** Improves the choice for one bolt at a time, keeping the others as they are. */
  private static Notch best(Bracket bracket, Region metal, List<Bite> bites) {
    List<Bite> chosen = new ArrayList<>(bites);
    Notch best = cut(bracket, metal, chosen);
    for (int i = 0; i < bites.size() && best.widthLeftMm() < bracket.leastWidthMm(); i++) {
      Bite plain = bites.get(i);
      for (Bite open : runOuts(bracket.outline(), plain)) {
        List<Bite> candidate = new ArrayList<>(chosen);
        candidate.set(i, open);
        Notch notch = cut(bracket, metal, candidate);
        if (better(notch, best)) {
          best = notch;
          chosen = candidate;
        }
      }
    }
    return best;
  }

  private static boolean better(Notch a, Notch b) {
    double least = a.bracket().leastWidthMm();
    boolean aHolds = a.widthLeftMm() >= least;
    boolean bHolds = b.widthLeftMm() >= least;
    if (aHolds != bHolds) {
      return aHolds;
    }
    return aHolds && a.removed().area() < b.removed().area();
  }

  /** The socket's circle run straight out through each side of the bracket. */
  private static List<Bite> runOuts(Contour outline, Bite plain) {
    List<Bite> list = new ArrayList<>();
    for (var edge : outline.edges()) {
      Vec2 exit = edge.nearest(plain.from());
      double distance = exit.distanceTo(plain.from());
      if (distance > 0) {
        double past = (distance + plain.radiusMm() + TIP_MM) / distance;
        list.add(
            new Bite(
                plain.hole(), plain.from(), plain.from().toward(exit, past), plain.radiusMm()));
      }
    }
    return list;
  }

  private static Notch cut(Bracket bracket, Region metal, List<Bite> bites) {
    Region bitten = Region.EMPTY;
    for (Bite bite : bites) {
      bitten = bitten.isEmpty() ? bite.region() : bitten.union(bite.region());
    }
    Region sharp = metal.minus(bitten);
    Region remaining = roundTips(sharp, metal, bites);
    Region removed = metal.minus(remaining);
    return new Notch(
        bracket,
        bites.stream().map(b -> b.hole().name()).toList(),
        removed,
        remaining,
        NotchWidths.least(bracket.outline(), remaining, bites));
  }

  /**
   * Rounds the tips that the bites left, and drops slivers thinner than a tip, but leaves the
   * bracket's own corners alone.
   */
  private static Region roundTips(Region sharp, Region metal, List<Bite> bites) {
    if (sharp.isEmpty()) {
      return sharp;
    }
    // What opening with the tip's disc loses is either at a bite or at a corner of the bracket that
    // was there before; the latter stays.
    Region lost = sharp.minus(sharp.opened(TIP_MM));
    Region result = sharp;
    for (Region part : lost.parts()) {
      boolean atBite =
          bites.stream().anyMatch(b -> part.boundaryGap(b.region()).mm() < TIP_MM * 1e-3);
      if (atBite) {
        result = result.minus(part);
      }
    }
    return result;
  }
}
