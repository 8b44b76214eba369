package dev.towerscribe.drawing;

import dev.towerscribe.geometry.Vec2;
import dev.towerscribe.quantity.Tolerances;
import java.util.ArrayList;
import java.util.List;

/** A leader from a point outward, with a jog where the row is crowded and words at its end. */
final class OrdinateShape {
  private final DimensionStyle style;
  private final DimensionText text;
  private final Vec2 side;
  private final Vec2 across;
  private final List<DimensionRequest.Ordinate> shared;
  private final double position;
  private final double foot;

  /**
   * One leader.
   *
   * @param shared requests that say the same of the same distance, at least one
   * @param side direction of the leader, of length one; it need not be the one asked for
   */
  OrdinateShape(List<DimensionRequest.Ordinate> shared, Vec2 side, DimensionStyle style) {
    this.style = style;
    this.shared = List.copyOf(shared);
    DimensionRequest.Ordinate first = shared.get(0);
    this.text = DimensionText.of(first.words(), style.capHeightMm());
    this.side = side;
    this.across = side.quarterTurn();
    this.position = first.point().dot(across);
    double furthest = Double.NEGATIVE_INFINITY;
    for (DimensionRequest.Ordinate request : shared) {
      furthest = Math.max(furthest, request.point().dot(side) + request.clearMm());
    }
    this.foot = furthest + style.gapMm();
  }

  List<DimensionRequest.Ordinate> shared() {
    return shared;
  }

  /** Where the point lies along the row. */
  double position() {
    return position;
  }

  /** How far along the side the leader begins. */
  double footMm() {
    return foot;
  }

  /** Room that the words take along the row. */
  double heightMm() {
    return text.heightMm();
  }

  private Vec2 at(double along, double out) {
    return across.times(along).plus(side.times(out));
  }

  /**
   * The part that is the same wherever the words go.
   *
   * @param bend where along the side the jog begins
   */
  Sketch straight(double bend) {
    Sketch sketch = new Sketch(style);
    if (foot < bend) {
      sketch.extension(at(position, foot), at(position, bend));
    }
    return sketch;
  }

  /**
   * Draws it.
   *
   * @param bend where along the side the jog begins
   * @param jogMm how far out the jog takes
   * @param label where along the row the words stand
   */
  Sketch draw(double bend, double jogMm, double label) {
    Sketch sketch = new Sketch(style);
    double start = Math.min(foot, bend);
    if (isStraight(label)) {
      sketch.extension(at(position, start), at(position, end(bend, jogMm)));
    } else {
      sketch.extension(at(position, start), at(position, bend));
    }
    outer(sketch, bend, jogMm, label);
    return sketch;
  }

  /** What differs from place to place: all from the bend outward. */
  Sketch outer(double bend, double jogMm, double label) {
    Sketch sketch = new Sketch(style);
    if (isStraight(label)) {
      sketch.extension(at(position, bend), at(position, end(bend, jogMm)));
    }
    outer(sketch, bend, jogMm, label);
    return sketch;
  }

  private boolean isStraight(double label) {
    return Math.abs(label - position) < Tolerances.COMPUTED_MM;
  }

  private double end(double bend, double jogMm) {
    return bend + jogMm + style.gapMm() * 2;
  }

  private void outer(Sketch sketch, double bend, double jogMm, double label) {
    double end = end(bend, jogMm);
    if (!isStraight(label)) {
      sketch.leader(at(position, bend), at(label, bend + jogMm));
      sketch.leader(at(label, bend + jogMm), at(label, end));
    }
    double middle = end + style.gapMm() + text.widthMm() / 2;
    sketch.text(text, at(label, middle), DimensionText.readable(side));
  }

  Item.Dimension finished(Sketch sketch) {
    List<Vec2> measured = new ArrayList<>();
    measured.add(shared.get(0).datum());
    shared.forEach(request -> measured.add(request.point()));
    return sketch.finished(DimensionKind.ORDINATE, measured, shared.get(0).words());
  }
}
