package dev.towerscribe.drawing;

import dev.towerscribe.geometry.Edge.Arc;
import dev.towerscribe.geometry.Vec2;
import java.util.List;
import java.util.Optional;

/** Usual ways to draw a single dimension, each with how little a draughtsman likes it. */
final class DimensionCandidates {
  private static final int TIERS = 14;

  /** Each tier further out. */
  private static final double TIER = 4;

  /** On the other side than the one asked for. */
  private static final double OTHER_SIDE = 40;

  /** Before the part instead of outside it. */
  private static final double BEFORE_PART = 25;

  private static final double WORDS_OUTSIDE = 6;
  private static final double[] SLIDES = {0, -0.4, 0.4, -0.8, 0.8, -1, 1};

  /** Leaders stand at these angles from level, degrees: never level or upright. */
  private static final int[] SLANTS = {15, 30, 45, 60, 75};

  private static final double[] LEADERS_MM = {
    0, 2, 4, 7, 10, 14, 18, 23, 29, 36, 44, 54, 66, 80, 96, 115
  };
  private static final double LEADER_PER_MM = 0.6;

  /** Straight against the direction asked for. */
  private static final double TURNED_ROUND = 12;

  /** From within a circle or arc, where the outside is free too. */
  private static final double FROM_WITHIN = 10;

  /** An angle's arc further out, per mm. */
  private static final double ANGLE_PER_MM = 0.3;

  private static final double ANGLE_STEP_MM = 4;
  private static final int ANGLE_ARCS = 24;

  /** How much of an angle's arc its words may slide along. */
  private static final double MOST_OF_ARC = 0.7;

  private DimensionCandidates() {}

  static Optional<Item.Dimension> linear(
      DimensionRequest.Linear request, DimensionStyle style, DimensionCosts crowd) {
    LinearShape shape = new LinearShape(request, style);
    Cheapest<Sketch> choice = new Cheapest<>();
    for (int sign : new int[] {1, -1}) {
      Vec2 side = request.side().times(sign);
      double points =
          Math.max(request.from().dot(side), request.to().dot(side)) + request.clearMm();
      double edge = Math.max(points, crowd.reach(side));
      double dislike = sign > 0 ? 0 : OTHER_SIDE;
      for (int tier = 0; tier < TIERS; tier++) {
        double off = style.firstOffsetMm() + tier * style.stepMm();
        double cost = dislike + tier * TIER;
        offer(choice, shape, side, edge + off, cost);
        if (points + off < edge) {
          offer(choice, shape, side, points + off, cost + BEFORE_PART);
        }
      }
    }
    return crowd.settle(choice).map(shape::finished);
  }

  private static void offer(
      Cheapest<Sketch> choice, LinearShape shape, Vec2 side, double level, double cost) {
    if (shape.wordsFit()) {
      for (double slide : SLIDES) {
        choice.offer(cost + 3 * Math.abs(slide), () -> shape.between(side, level, slide));
      }
    }
    for (int past : new int[] {1, -1}) {
      choice.offer(
          cost + WORDS_OUTSIDE + (past < 0 ? 0.5 : 0), () -> shape.outside(side, level, past));
    }
  }

  static Optional<Item.Dimension> diameter(
      DimensionRequest.Diameter request, DimensionStyle style, DimensionCosts crowd) {
    Vec2 centre = request.centre();
    double radius = request.radiusMm();
    Vec2 away = centre.minus(crowd.middle());
    Vec2 liked =
        request.toward().orElse(away.norm() > radius / 10 ? away.unit() : new Vec2(1, 1).unit());
    LeaderShape shape = new LeaderShape(request.words(), style);
    Cheapest<Sketch> choice = new Cheapest<>();
    for (int slant : SLANTS) {
      for (int quadrant = 0; quadrant < 4; quadrant++) {
        Vec2 ray = slanted(slant, quadrant);
        double dislike = dislike(ray, liked, slant);
        Vec2 tip = centre.plus(ray.times(radius));
        leaders(choice, shape, tip, ray, 1000, dislike);
        leaders(choice, shape, tip, ray.times(-1), 2 * radius, dislike + FROM_WITHIN);
      }
    }
    return settled(choice, crowd, DimensionKind.DIAMETER, centre, radius, request.words());
  }

  static Optional<Item.Dimension> radius(
      DimensionRequest.Radius request, DimensionStyle style, DimensionCosts crowd) {
    Arc arc = request.arc();
    LeaderShape shape = new LeaderShape(request.words(), style);
    Cheapest<Sketch> choice = new Cheapest<>();
    int parts = 16;
    for (int i = 1; i < parts; i++) {
      Vec2 tip = arc.at((double) i / parts);
      Vec2 ray = tip.minus(arc.centre()).unit();
      double level = Math.min(Math.abs(ray.x()), Math.abs(ray.y()));
      // Level and upright leaders run along centre lines or look like edges.
      double dislike = 6.0 * Math.abs(i - parts / 2) / parts + (level < 0.15 ? 5 : 0);
      leaders(choice, shape, tip, ray, 1000, dislike + FROM_WITHIN / 2);
      leaders(choice, shape, tip, ray.times(-1), 1000, dislike);
    }
    return settled(
        choice, crowd, DimensionKind.RADIUS, arc.centre(), arc.radius(), request.words());
  }

  private static Vec2 slanted(int slant, int quadrant) {
    double a = Math.toRadians(slant);
    double x = Math.cos(a) * (quadrant == 1 || quadrant == 2 ? -1 : 1);
    double y = Math.sin(a) * (quadrant >= 2 ? -1 : 1);
    return new Vec2(x, y);
  }

  private static double dislike(Vec2 ray, Vec2 liked, int slant) {
    double steep = slant == 15 || slant == 75 ? 2 : 0;
    return TURNED_ROUND / 2 * (1 - ray.dot(liked)) + steep;
  }

  /** Leaders from a tip, of all lengths and with the shelf to either hand. */
  private static void leaders(
      Cheapest<Sketch> choice,
      LeaderShape shape,
      Vec2 tip,
      Vec2 away,
      double mostMm,
      double dislike) {
    for (double more : LEADERS_MM) {
      double length = shape.leastMm() + more;
      if (length >= mostMm) {
        break;
      }
      double cost = dislike + LEADER_PER_MM * more;
      boolean onward = away.x() >= 0;
      choice.offer(cost, () -> shape.draw(tip, away, length, onward));
      choice.offer(cost + 5, () -> shape.draw(tip, away, length, !onward));
    }
  }

  private static Optional<Item.Dimension> settled(
      Cheapest<Sketch> choice,
      DimensionCosts crowd,
      DimensionKind kind,
      Vec2 centre,
      double radiusMm,
      List<String> words) {
    return crowd
        .settle(choice)
        .map(
            sketch -> {
              // The leader's first stroke begins at its tip.
              Vec2 tip = sketch.strokes().get(0).from();
              return sketch.finished(kind, List.of(centre, tip), words);
            });
  }

  static Optional<Item.Dimension> angle(
      DimensionRequest.AngleBetween request, DimensionStyle style, DimensionCosts crowd) {
    AngleShape shape = new AngleShape(request, style);
    Cheapest<Sketch> choice = new Cheapest<>();
    for (int i = 0; i < ANGLE_ARCS; i++) {
      double near = style.firstOffsetMm() + i * ANGLE_STEP_MM;
      arc(choice, shape, near, 0);
      arc(choice, shape, shape.longestArmMm() + near, 6);
    }
    return crowd.settle(choice).map(shape::finished);
  }

  private static void arc(
      Cheapest<Sketch> choice, AngleShape shape, double radiusMm, double dislike) {
    double cost = dislike + ANGLE_PER_MM * radiusMm + (shape.arrowsFit(radiusMm) ? 0 : 4);
    for (double slide : SLIDES) {
      double where = 0.5 + slide / 2 * MOST_OF_ARC;
      choice.offer(cost + 3 * Math.abs(slide), () -> shape.over(radiusMm, where));
    }
    choice.offer(cost + WORDS_OUTSIDE, () -> shape.beyond(radiusMm, true));
    choice.offer(cost + WORDS_OUTSIDE + 0.5, () -> shape.beyond(radiusMm, false));
  }
}
