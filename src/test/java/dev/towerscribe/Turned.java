package dev.towerscribe;

import dev.towerscribe.geometry.Vec2;
import java.util.List;
import java.util.function.Function;

/** The turn and shift that bring some points nearest to others: least squares, written out. */
record Turned(double cos, double sin, Vec2 from, Vec2 to) {
  static <T> Turned best(List<T> names, Function<T, Vec2> from, Function<T, Vec2> to) {
    Vec2 a = middle(names, from);
    Vec2 b = middle(names, to);
    double dot = 0;
    double cross = 0;
    for (T name : names) {
      Vec2 p = from.apply(name).minus(a);
      Vec2 q = to.apply(name).minus(b);
      dot += p.x() * q.x() + p.y() * q.y();
      cross += p.x() * q.y() - p.y() * q.x();
    }
    double r = Math.hypot(dot, cross);
    return new Turned(dot / r, cross / r, a, b);
  }

  private static <T> Vec2 middle(List<T> names, Function<T, Vec2> of) {
    Vec2 sum = new Vec2(0, 0);
    for (T name : names) {
      sum = sum.plus(of.apply(name));
    }
    return sum.times(1.0 / names.size());
  }

  Vec2 turn(Vec2 way) {
    return new Vec2(cos * way.x() - sin * way.y(), sin * way.x() + cos * way.y());
  }

  Vec2 of(Vec2 p) {
    return turn(p.minus(from)).plus(to);
  }
}
