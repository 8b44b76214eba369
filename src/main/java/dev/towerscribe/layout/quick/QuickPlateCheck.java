package dev.towerscribe.layout.quick;

import dev.towerscribe.geometry.Contour;
import dev.towerscribe.geometry.Edge;
import dev.towerscribe.geometry.Region;
import dev.towerscribe.geometry.RegionDepths;
import dev.towerscribe.geometry.Vec2;
import dev.towerscribe.layout.Layout;
import dev.towerscribe.model.Plate;
import dev.towerscribe.model.SideJob;
import dev.towerscribe.model.Tower;
import java.util.List;
import java.util.function.ToDoubleFunction;

/**
 * Bounds of {@link dev.towerscribe.layout.Margins#plateCover} and {@link
 * dev.towerscribe.layout.Margins#plateToWall}, and of the way to a dome's edge.
 */
final class QuickPlateCheck {
  private final double hand;
  private final RegionDepths plate;
  private final List<Edge> plateEdges;
  private final double plateReach;
  private final double coverMm;
  private final boolean disc;
  private final boolean simple;
  private final List<Edge> finishedEdges;
  private final Vec2 finishedMiddle;
  private final double finishedReach;
  private final RegionDepths wall;
  private final double wallGapMm;
  private final double domeMm;
  private final boolean towerPastDome;

  QuickPlateCheck(SideJob job, Region finished, double hand) {
    this.hand = hand;
    Tower tower = job.tower();
    Plate top = job.plate();
    plate = new RegionDepths(Region.inside(top.outline()));
    plateEdges = top.outline().edges();
    plateReach = reach(top.outline(), Vec2.ZERO);
    coverMm = top.coverMm();
    disc = plate.isDisc() && new RegionDepths(finished).isDisc();
    simple = finished.contours().size() == 1;
    finishedEdges = finished.contours().stream().flatMap(c -> c.edges().stream()).toList();
    finishedMiddle = finished.bounds().centre();
    finishedReach =
        finished.contours().stream().mapToDouble(c -> reach(c, finishedMiddle)).max().orElse(0.0);
    wall = tower.wall().map(c -> new RegionDepths(Region.inside(c))).orElse(null);
    wallGapMm = top.wallGapMm();
    domeMm = tower.crown().map(c -> c.radiusMm()).orElse(Double.POSITIVE_INFINITY);
    towerPastDome = Layout.outermostMm(tower) >= domeMm;
  }

  /** A radius about a point that holds a boundary. */
  private static double reach(Contour contour, Vec2 about) {
    double most = 0.0;
    for (Edge edge : contour.edges()) {
      most = Math.max(most, edge.start().distanceTo(about));
      if (edge instanceof Edge.Arc arc) {
        most = Math.max(most, arc.centre().distanceTo(about) + arc.radius());
      }
    }
    return most;
  }

  /** Whether the plate covers the opening. */
  Answer covers(Scratch s) {
    if (!simple) {
      return Answer.UNSURE;
    }
    double atLeast = plateDepth(finishedMiddle, s) - finishedReach;
    if (disc || atLeast > coverMm + Answer.UNSURE_MM) {
      // With discs it is the figure itself.
      return Answer.of(atLeast, coverMm);
    }
    return along(finishedEdges, p -> plateDepth(p, s), coverMm);
  }

  /** How deep a point of the plan lies in the plate. */
  private double plateDepth(Vec2 p, Scratch s) {
    double fore = p.x() + s.rearward;
    double in = p.y() - s.inboard;
    return plate.at(-fore * s.sin + in * s.cos, hand * (fore * s.cos + in * s.sin));
  }

  /** Whether it stays clear of the wall. */
  Answer clearsWall(Scratch s) {
    if (wall == null) {
      return Answer.YES;
    }
    if (plate.isDisc()) {
      double depth = wallDepth(plate.discX(), plate.discY(), s);
      return Answer.of(depth - plate.discRadius(), wallGapMm);
    }
    if (wallDepth(0, 0, s) - plateReach > wallGapMm + Answer.UNSURE_MM) {
      return Answer.YES;
    }
    return along(plateEdges, p -> wallDepth(p.x(), p.y(), s), wallGapMm);
  }

  /** How deep a point of the plate's frame lies inside the wall. */
  private double wallDepth(double x, double y, Scratch s) {
    double across = y * hand;
    return wall.at(s.bearingX(x) + across * s.cos, s.bearingY(x) + across * s.sin);
  }

  private static Answer along(List<Edge> edges, ToDoubleFunction<Vec2> depth, double limitMm) {
    Answer all = Answer.YES;
    for (Edge edge : edges) {
      all =
          all.and(AlongLine.atLeast(t -> depth.applyAsDouble(edge.at(t)), edge.length(), limitMm));
      if (all == Answer.NO) {
        return all;
      }
    }
    return all;
  }

  /** Whether plate, holes and tower stay within a dome's edge. */
  Answer withinDome(Scratch s) {
    if (towerPastDome) {
      return Answer.NO;
    }
    double farthest = Math.hypot(s.rearward, s.inboard) + plateReach;
    for (int i = 0; i < s.x.length; i++) {
      farthest = Math.max(farthest, Math.hypot(s.x[i], s.y[i]));
    }
    return farthest > domeMm - Answer.UNSURE_MM ? Answer.UNSURE : Answer.YES;
  }
}
