package dev.towerscribe.drawing;

import dev.towerscribe.geometry.Edge.Arc;
import dev.towerscribe.geometry.Vec2;
import java.util.List;

/** An angle on an arc with arrows, words over the arc or level beyond one end. */
final class AngleShape {
  private final DimensionRequest.AngleBetween request;
  private final DimensionStyle style;
  private final DimensionText text;
  private final double start;
  private final double sweep;
  private final double startReach;
  private final double endReach;

  AngleShape(DimensionRequest.AngleBetween request, DimensionStyle style) {
    this.request = request;
    this.style = style;
    this.text = DimensionText.of(request.words(), style.capHeightMm());
    Vec2 a = request.from().minus(request.vertex());
    Vec2 b = request.to().minus(request.vertex());
    double turn = Math.atan2(a.cross(b), a.dot(b));
    // Counter-clockwise, whichever arm was named first.
    Vec2 first = turn > 0 ? a : b;
    start = Math.atan2(first.y(), first.x());
    sweep = Math.abs(turn);
    startReach = first.norm();
    endReach = (turn > 0 ? b : a).norm();
  }

  double longestArmMm() {
    return Math.max(startReach, endReach);
  }

  boolean arrowsFit(double radiusMm) {
    return sweep * radiusMm >= 2.5 * style.arrowLengthMm();
  }

  /** Direction of length one at an angle past the start. */
  private Vec2 ray(double past) {
    return new Vec2(Math.cos(start + past), Math.sin(start + past));
  }

  private Vec2 at(double radiusMm, double past) {
    return request.vertex().plus(ray(past).times(radiusMm));
  }

  /**
   * Words over the arc, along it.
   *
   * @param where along the arc they stand: 0 at its start, 1 at its end
   */
  Sketch over(double radiusMm, double where) {
    double tail = arrowsFit(radiusMm) ? 0 : style.outsideArrowMm() / radiusMm;
    Sketch sketch = frame(radiusMm, -tail, sweep + tail);
    Vec2 out = ray(sweep * where);
    Vec2 reading = DimensionText.readable(out.quarterTurn());
    double half = text.heightMm() / 2;
    double middle;
    if (reading.quarterTurn().dot(out) > 0) {
      middle = radiusMm + style.gapMm() + half;
    } else {
      // Inside the arc the words' lower corners come nearest to it.
      double inner = radiusMm - style.gapMm();
      double reach = inner * inner - text.widthMm() * text.widthMm() / 4;
      middle = Math.sqrt(Math.max(0, reach)) - half;
    }
    sketch.text(text, request.vertex().plus(out.times(middle)), reading);
    return sketch;
  }

  /** Words level beyond the arc's end, or its start, where the arc is drawn on to them. */
  Sketch beyond(double radiusMm, boolean end) {
    double tail = arrowsFit(radiusMm) ? 0 : style.outsideArrowMm() / radiusMm;
    double lead = style.outsideArrowMm() / radiusMm;
    Sketch sketch = frame(radiusMm, end ? -tail : -lead, end ? sweep + lead : sweep + tail);
    double past = end ? sweep + lead : -lead;
    Vec2 onward = ray(past).quarterTurn().times(end ? 1 : -1);
    // The middle of the side of the words that faces the arc's end.
    double across = text.widthMm() / 2 + style.gapMm();
    double up = text.heightMm() / 2 + style.gapMm();
    boolean level = Math.abs(onward.x()) >= Math.abs(onward.y());
    Vec2 off =
        level
            ? new Vec2(Math.signum(onward.x()) * across, 0)
            : new Vec2(0, Math.signum(onward.y()) * up);
    sketch.text(text, at(radiusMm, past).plus(off), new Vec2(1, 0));
    return sketch;
  }

  private Sketch frame(double radiusMm, double from, double to) {
    Sketch sketch = new Sketch(style);
    arm(sketch, radiusMm, startReach, 0);
    arm(sketch, radiusMm, endReach, sweep);
    sketch.arc(new Arc(request.vertex(), radiusMm, start + from, to - from));
    boolean inside = arrowsFit(radiusMm);
    arrow(sketch, radiusMm, 0, inside ? -1 : 1);
    arrow(sketch, radiusMm, sweep, inside ? 1 : -1);
    return sketch;
  }

  /** The arrow lies along the chord of its own length, so that both its ends are on the arc. */
  private void arrow(Sketch sketch, double radiusMm, double past, int way) {
    double half = Math.asin(Math.min(1, style.arrowLengthMm() / radiusMm / 2));
    sketch.arrow(at(radiusMm, past), ray(past - way * half).quarterTurn().times(way), true);
  }

  private void arm(Sketch sketch, double radiusMm, double reachMm, double past) {
    double foot = reachMm + style.gapMm();
    if (foot < radiusMm) {
      sketch.extension(at(foot, past), at(radiusMm + style.overshootMm(), past));
    }
  }

  Item.Dimension finished(Sketch sketch) {
    return sketch.finished(
        DimensionKind.ANGLE,
        List.of(request.vertex(), request.from(), request.to()),
        request.words());
  }
}
