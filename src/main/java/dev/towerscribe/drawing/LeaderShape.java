package dev.towerscribe.drawing;

import dev.towerscribe.geometry.Vec2;
import java.util.List;

/** A leader with an arrow at a curve and words on a level shelf at its other end. */
final class LeaderShape {
  private final DimensionStyle style;
  private final DimensionText text;

  LeaderShape(List<String> words, DimensionStyle style) {
    this.style = style;
    text = DimensionText.of(words, style.capHeightMm());
  }

  /** Shortest leader that shows a line behind its arrowhead, mm. */
  double leastMm() {
    return 1.7 * style.arrowLengthMm();
  }

  /**
   * Draws it.
   *
   * @param tip where the arrow touches
   * @param away from the tip along the leader, length one
   * @param lengthMm of the leader, without its shelf
   * @param right whether the shelf runs to the right from the leader's end
   */
  Sketch draw(Vec2 tip, Vec2 away, double lengthMm, boolean right) {
    Sketch sketch = new Sketch(style);
    Vec2 elbow = tip.plus(away.times(lengthMm));
    double shelf = text.widthMm() * (right ? 1 : -1);
    sketch.leader(tip, elbow);
    sketch.leader(elbow, elbow.plus(new Vec2(shelf, 0)));
    sketch.arrow(tip, away.times(-1), false);
    Vec2 middle = elbow.plus(new Vec2(shelf / 2, style.gapMm() + text.heightMm() / 2));
    sketch.text(text, middle, new Vec2(1, 0));
    return sketch;
  }
}
