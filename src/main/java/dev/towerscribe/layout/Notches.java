package dev.towerscribe.layout;

import dev.towerscribe.geometry.Contour;
import dev.towerscribe.geometry.Region;
import dev.towerscribe.geometry.Vec2;
import dev.towerscribe.model.Bracket;
import dev.towerscribe.model.SideJob;
import java.util.List;
import java.util.Optional;

/**
 * The least metal to take from each bracket so that the socket, with room round it, comes straight
 * down on every bolt under it: what the bracket shares with the circles of those sockets, and the
 * tips that this leaves at the mouth. Nothing more is taken where too thin a web remains: that is a
 * finding, and a decision for a person.
 */
public final class Notches {
  /**
   * Radius of the rounding of the tips of metal at a notch's mouth, enough to lose the burr. Webs
   * thinner than twice this go too.
   */
  public static final double TIP_MM = 1.0;

  /** Smaller bites than this are rounding noise, mm2. */
  private static final double NOTHING_MM2 = 1e-6;

  private Notches() {}

  /**
   * The notches of a tower.
   *
   * @param job a side
   * @param holes its holes where they lie
   * @return one for each bracket that stands in the way of a socket, in the job's order
   */
  public static List<Notch> of(SideJob job, List<PlacedHole> holes) {
    double radius = job.tools().reachRadiusMm();
    return job.tower().brackets().stream()
        .flatMap(bracket -> of(bracket, holes, radius).stream())
        .toList();
  }

  /** The notch of one bracket, if it stands in the way of a socket that reaches so far. */
  static Optional<Notch> of(Bracket bracket, List<PlacedHole> holes, double radius) {
    Region metal = Region.inside(bracket.outline());
    List<PlacedHole> under =
        holes.stream()
            .filter(h -> -metal.depth(h.at()) < radius)
            .filter(h -> metal.intersection(disc(h, radius)).area() > NOTHING_MM2)
            .toList();
    return under.isEmpty() ? Optional.empty() : Optional.of(cut(bracket, metal, under, radius));
  }

  private static Region disc(PlacedHole hole, double radius) {
    return Region.inside(Contour.circle(hole.at(), radius));
  }

  private static Notch cut(Bracket bracket, Region metal, List<PlacedHole> under, double radius) {
    List<Region> bites = under.stream().map(h -> disc(h, radius)).toList();
    Region bitten = bites.stream().reduce(Region::union).orElseThrow();
    Region remaining = roundTips(metal.minus(bitten), bites);
    List<Vec2> centres = under.stream().map(PlacedHole::at).toList();
    NotchSections.Narrowest least =
        new NotchSections(bracket.outline()).narrowest(remaining, centres, radius);
    return new Notch(
        bracket,
        under.stream().map(PlacedHole::name).toList(),
        metal.minus(remaining),
        remaining,
        least.widthMm(),
        least.across());
  }

  /**
   * Rounds the tips that the bites left, and drops slivers thinner than a tip, but leaves the
   * bracket's own corners alone.
   */
  private static Region roundTips(Region sharp, List<Region> bites) {
    if (sharp.isEmpty()) {
      return sharp;
    }
    // What opening with the tip's disc loses is either at a bite or at a corner of the bracket that
    // was there before; the latter stays.
    Region lost = sharp.minus(sharp.opened(TIP_MM));
    Region result = sharp;
    for (Region part : lost.parts()) {
      if (bites.stream().anyMatch(b -> part.boundaryGap(b).mm() < TIP_MM * 1e-3)) {
        result = result.minus(part);
      }
    }
    return result;
  }
}
