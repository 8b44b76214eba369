package dev.towerscribe.layout;

import dev.towerscribe.geometry.Contour;
import dev.towerscribe.geometry.Region;
import dev.towerscribe.geometry.RegionDepths;
import dev.towerscribe.model.HoleRules;
import dev.towerscribe.model.Landmark;
import dev.towerscribe.model.Tower;
import java.util.ArrayList;
import java.util.List;

/**
 * One distance that a hole, or the washer or nut on it, must keep from something that stays where
 * it is when the plate moves. The check's finding and the search's verdict both take it from here.
 *
 * <p>Example: a bolt with a 16 mm washer at the edge of the bolting face has the limit 8 mm; with
 * its hole's centre 9.5 mm inside that edge the figure is 9.5 and the slack 1.5 mm.
 *
 * @param kind which check
 * @param hole which of the plate's holes, from 0
 * @param thing which of the tower's landmarks or keep-outs, from 0; 0 for the other kinds
 * @param region what it is measured from
 * @param inside whether the hole belongs inside the region, or outside
 * @param lessMm what of the way the washer or nut takes up itself
 * @param limitMm least figure that passes
 */
public record HoleMargin(
    Kind kind,
    int hole,
    int thing,
    RegionDepths region,
    boolean inside,
    double lessMm,
    double limitMm) {
  /** The checks of a hole that depend on where it lies on the tower. */
  public enum Kind {
    /** Hole centre to the finished opening. */
    EDGE_CUT,
    /** Hole centre to the edge of the bolting face. */
    EDGE_FACE,
    /** Hole centre to the edge of an existing hole. */
    EDGE_LANDMARK,
    /** Hole centre to the edge of the bolting face, for the washer or nut. */
    SEAT_FACE,
    /** Hole centre to the finished opening, for the washer or nut. */
    SEAT_CUT,
    /** Hole centre to where the flat begins beside a lip, for the washer or nut. */
    SEAT_LIP,
    /** Washer or nut to a keep-out. */
    KEEP_OUT
  }

  /**
   * The distance with the hole somewhere.
   *
   * @param x hole centre, plan, fore
   * @param y hole centre, plan, in
   * @return mm, negative where the hole, washer or nut reaches over what it must keep away from
   */
  public double figureMm(double x, double y) {
    double depth = region.at(x, y);
    return (inside ? depth : -depth) - lessMm;
  }

  /** Whether it is about the hole itself: with its radius or less no metal is left. */
  boolean isEdge() {
    return kind == Kind.EDGE_CUT || kind == Kind.EDGE_FACE || kind == Kind.EDGE_LANDMARK;
  }

  /**
   * Whether another of the same hole need not be looked at where this one passes.
   *
   * @param other another
   * @return true if both are one distance and this one's limit is the greater
   */
  public boolean settles(HoleMargin other) {
    return hole == other.hole
        && region == other.region
        && inside == other.inside
        && lessMm == other.lessMm
        && limitMm > other.limitMm;
  }

  /**
   * Every such distance of a tower.
   *
   * @param tower the tower
   * @param finished its opening once cut
   * @param rules the job's rule for metal round a hole
   * @param holes bolts and sizes of the holes; where they lie does not matter
   * @return hole by hole, each in the order of {@link Kind}; of two that are measured alike both
   */
  public static List<HoleMargin> of(
      Tower tower, Region finished, HoleRules rules, List<PlacedHole> holes) {
    RegionDepths cut = new RegionDepths(finished);
    List<RegionDepths> face = tower.boltingFace().map(HoleMargin::inside).stream().toList();
    List<RegionDepths> landmarks = new ArrayList<>();
    for (Landmark l : tower.landmarks()) {
      landmarks.add(inside(Contour.circle(l.at(), l.diameterMm() / 2)));
    }
    List<RegionDepths> lip = tower.lip().map(l -> inside(l.flat())).stream().toList();
    List<RegionDepths> keepOuts = tower.keepOuts().stream().map(k -> inside(k.outline())).toList();
    List<HoleMargin> all = new ArrayList<>();
    for (int i = 0; i < holes.size(); i++) {
      double edge =
          rules
              .edgeRule()
              .edgeMm(holes.get(i).bolt().thread().nominalMm(), holes.get(i).diameterMm());
      double seat = holes.get(i).bolt().seatRadiusMm();
      all.add(new HoleMargin(Kind.EDGE_CUT, i, 0, cut, false, 0.0, edge));
      for (RegionDepths f : face) {
        all.add(new HoleMargin(Kind.EDGE_FACE, i, 0, f, true, 0.0, edge));
      }
      for (int k = 0; k < landmarks.size(); k++) {
        all.add(new HoleMargin(Kind.EDGE_LANDMARK, i, k, landmarks.get(k), false, 0.0, edge));
      }
      for (RegionDepths f : face) {
        all.add(new HoleMargin(Kind.SEAT_FACE, i, 0, f, true, 0.0, seat));
      }
      all.add(new HoleMargin(Kind.SEAT_CUT, i, 0, cut, false, 0.0, seat));
      for (RegionDepths l : lip) {
        all.add(new HoleMargin(Kind.SEAT_LIP, i, 0, l, false, 0.0, seat));
      }
      for (int k = 0; k < keepOuts.size(); k++) {
        double margin = tower.keepOuts().get(k).marginMm();
        all.add(new HoleMargin(Kind.KEEP_OUT, i, k, keepOuts.get(k), false, seat, margin));
      }
    }
    return all;
  }

  private static RegionDepths inside(Contour outline) {
    return new RegionDepths(Region.inside(outline));
  }
}
