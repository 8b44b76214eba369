package dev.towerscribe.drawing;

import dev.towerscribe.geometry.Vec2;
import java.util.List;

/** A distance between arrows, drawn with its line at a given height over the part. */
final class LinearShape {
  private final DimensionRequest.Linear request;
  private final DimensionStyle style;
  private final DimensionText text;
  private final double low;
  private final double high;
  private final boolean fromIsLow;

  LinearShape(DimensionRequest.Linear request, DimensionStyle style) {
    this.request = request;
    this.style = style;
    this.text = DimensionText.of(request.words(), style.capHeightMm());
    double a = request.from().dot(request.along());
    double b = request.to().dot(request.along());
    low = Math.min(a, b);
    high = Math.max(a, b);
    fromIsLow = a <= b;
  }

  /** Whether there is room for the arrows between the extension lines, and a line between them. */
  boolean arrowsFit() {
    return high - low >= 2.5 * style.arrowLengthMm();
  }

  /** Whether the words fit over the line between the extension lines. */
  boolean wordsFit() {
    return room() >= 0;
  }

  /** What is left over of the dimension line beside the words. */
  private double room() {
    return high - low - text.widthMm() - 2 * DimensionStyle.CLEAR_MM;
  }

  /**
   * Words between the extension lines.
   *
   * @param side outward, of length one
   * @param level of the dimension line, along the side from the page's origin
   * @param slide of the words along the line: 0 in the middle, -1 and 1 at its ends
   */
  Sketch between(Vec2 side, double level, double slide) {
    Sketch sketch = new Sketch(style);
    double start = arrowsFit() ? low : low - style.outsideArrowMm();
    double end = arrowsFit() ? high : high + style.outsideArrowMm();
    frame(sketch, side, level, start, end);
    words(sketch, side, level, (low + high) / 2 + slide * room() / 2);
    return sketch;
  }

  /**
   * Words beyond one of the extension lines.
   *
   * @param side outward, of length one
   * @param level of the dimension line, along the side from the page's origin
   * @param past +1 beyond the end that lies further along the measured direction, -1 the other
   */
  Sketch outside(Vec2 side, double level, int past) {
    Sketch sketch = new Sketch(style);
    double tail = arrowsFit() ? 0 : style.outsideArrowMm();
    double lead = (arrowsFit() ? 0 : style.arrowLengthMm()) + 2 * DimensionStyle.CLEAR_MM;
    double reach = lead + text.widthMm();
    double start = past < 0 ? low - reach : low - tail;
    double end = past < 0 ? high + tail : high + reach;
    frame(sketch, side, level, start, end);
    double middle = lead + text.widthMm() / 2;
    words(sketch, side, level, past < 0 ? low - middle : high + middle);
    return sketch;
  }

  private Vec2 at(Vec2 side, double along, double level) {
    return request.along().times(along).plus(side.times(level));
  }

  private void frame(Sketch sketch, Vec2 side, double level, double start, double end) {
    extension(sketch, side, level, fromIsLow ? request.from() : request.to(), low);
    extension(sketch, side, level, fromIsLow ? request.to() : request.from(), high);
    sketch.dimensionLine(at(side, start, level), at(side, end, level));
    Vec2 outward = request.along().times(arrowsFit() ? 1 : -1);
    sketch.arrow(at(side, low, level), outward.times(-1), true);
    sketch.arrow(at(side, high, level), outward, true);
  }

  private void extension(Sketch sketch, Vec2 side, double level, Vec2 point, double along) {
    double foot = point.dot(side) + request.clearMm() + style.gapMm();
    if (foot < level) {
      sketch.extension(at(side, along, foot), at(side, along, level + style.overshootMm()));
    }
  }

  private void words(Sketch sketch, Vec2 side, double level, double along) {
    Vec2 reading = DimensionText.readable(request.along());
    Vec2 above = reading.quarterTurn().times(style.gapMm() + text.heightMm() / 2);
    sketch.text(text, at(side, along, level).plus(above), reading);
  }

  Item.Dimension finished(Sketch sketch) {
    return sketch.finished(
        DimensionKind.LINEAR, List.of(request.from(), request.to()), request.words());
  }
}
