package dev.towerscribe.drawing;

import dev.towerscribe.geometry.Vec2;
import dev.towerscribe.quantity.Angle;
import java.util.ArrayList;
import java.util.List;

/**
 * The words of a dimension as one block, measured once, that can be put anywhere.
 *
 * @param words lines, from the top
 * @param capMm height of a capital
 * @param widthMm of the widest line
 * @param heightMm from the lowest reach of the last line to the highest of the first
 * @param belowMm what the last line reaches below its base line
 */
record DimensionText(
    List<String> words, double capMm, double widthMm, double heightMm, double belowMm) {
  /** From one base line to the next, in heights of a capital: brackets clear each other. */
  static final double PITCH = 1.6;

  /**
   * Turns nearer than this to reading downward count as that: what a computed direction may be off.
   */
  private static final double TURN_SLACK = 1e-9;

  static DimensionText of(List<String> words, double capMm) {
    double wide = words.stream().mapToDouble(w -> Lettering.width(w, capMm)).max().orElseThrow();
    double below = Lettering.belowMm(words.get(words.size() - 1), capMm);
    double high =
        below + (words.size() - 1) * PITCH * capMm + Lettering.aboveMm(words.get(0), capMm);
    return new DimensionText(words, capMm, wide, high, below);
  }

  /** The room it takes, by its middle. */
  TurnedBox at(Vec2 centre, Vec2 reading) {
    return new TurnedBox(centre, widthMm / 2, heightMm / 2, reading);
  }

  /** The lines, by the middle of its room. */
  List<Item> drawn(Vec2 centre, Vec2 reading) {
    Vec2 up = reading.quarterTurn();
    Angle turn = reading.y() == 0.0 && reading.x() > 0 ? Angle.ZERO : reading.direction();
    List<Item> lines = new ArrayList<>(words.size());
    for (int i = 0; i < words.size(); i++) {
      double base = -heightMm / 2 + belowMm + (words.size() - 1 - i) * PITCH * capMm;
      lines.add(
          new Item.Text(
              Layer.DIMENSIONS,
              centre.plus(up.times(base)),
              capMm,
              Align.MIDDLE,
              turn,
              words.get(i),
              Ink.BLACK));
    }
    return lines;
  }

  /**
   * The way to read along a direction from the bottom of the page or from its right: from straight
   * up, which is included, clockwise to just short of straight down (ISO 129-1, from memory).
   */
  static Vec2 readable(Vec2 direction) {
    Vec2 d = direction.unit();
    boolean upright = d.x() > TURN_SLACK || d.x() >= -TURN_SLACK && d.y() > 0;
    return upright ? d : d.times(-1);
  }
}
