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
 * down on every bolt under it: what the bracket shares with the circles of those sockets, and the
 * tips that this leaves at the mouth. Nothing more is taken where too thin a web remains: that is a
 * finding, and a decision for a person.
 */
final class Notches {
  /**
   * Radius of the rounding of the tips of metal at a notch's mouth, enough to lose the burr. Webs
   * thinner than twice this go too.
   */
  static final double TIP_MM = 1.0;

  /** Smaller bites than this are rounding noise, mm2. */
  private static final double NOTHING_MM2 = 1e-6;

  private Notches() {}

  /** The circle that one socket needs. */
  record Bite(String bolt, Vec2 centre, double radiusMm) {
    Region region() {
      return Region.inside(Contour.circle(centre, radiusMm));
    }
  }

  static List<Notch> of(SideJob job, List<PlacedHole> holes) {
    List<Notch> notches = new ArrayList<>();
    double radius = job.tools().reachRadiusMm();
    for (Bracket bracket : job.tower().brackets()) {
      Region metal = Region.inside(bracket.outline());
      List<Bite> bites = new ArrayList<>();
      for (PlacedHole hole : holes) {
        Bite bite = new Bite(hole.name(), hole.at(), radius);
        if (-metal.depth(hole.at()) < radius
            && metal.intersection(bite.region()).area() > NOTHING_MM2) {
          bites.add(bite);
        }
      }
      if (!bites.isEmpty()) {
        notches.add(cut(bracket, metal, bites));
      }
    }
    return notches;
  }

  private static Notch cut(Bracket bracket, Region metal, List<Bite> bites) {
    Region bitten = Region.EMPTY;
    for (Bite bite : bites) {
      bitten = bitten.isEmpty() ? bite.region() : bitten.union(bite.region());
    }
    Region remaining = roundTips(metal.minus(bitten), bites);
    NotchWidths.Section least = NotchWidths.least(bracket.outline(), remaining, bites);
    return new Notch(
        bracket,
        bites.stream().map(Bite::bolt).toList(),
        metal.minus(remaining),
        remaining,
        least.widthMm(),
        least.across());
  }

  /**
   * Rounds the tips that the bites left, and drops slivers thinner than a tip, but leaves the
   * bracket's own corners alone.
   */
  private static Region roundTips(Region sharp, List<Bite> bites) {
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
