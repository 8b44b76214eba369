package dev.towerscribe.drawing;

import dev.towerscribe.geometry.Edge.Arc;
import dev.towerscribe.geometry.Vec2;
import java.util.ArrayList;
import java.util.List;

/** A dimension being drawn up: its parts, and what of them others must keep clear of. */
final class Sketch {
  /** What a stroke is, which decides what may cross it. */
  enum Role {
    /** An edge or centre line of the part. */
    PART,
    /** From a measured point outward. */
    EXTENSION,
    /** A straight dimension line, whose ends others may share. */
    DIMENSION_LINE,
    /** A leader, a jog or the arc of an angle. */
    LEADER,
    /** A side of an arrowhead. */
    ARROW
  }

  /** A straight piece. */
  record Stroke(Vec2 from, Vec2 to, Role role) {}

  /** Largest distance of a chord from its arc where room is looked for, mm. */
  static final double SAG_MM = 0.03;

  /** Arrows that meet tip to tip on a shared extension line do not cross. */
  private static final double TIP_SHARE = 0.3;

  private static final double ARROW_HALF_WIDTH =
      Math.tan(Math.toRadians(DimensionStyle.ARROW_DEGREES / 2));

  private final DimensionStyle style;
  private final List<Item> parts = new ArrayList<>();
  private final List<Stroke> strokes = new ArrayList<>();
  private final List<TurnedBox> rooms = new ArrayList<>();

  Sketch(DimensionStyle style) {
    this.style = style;
  }

  List<Stroke> strokes() {
    return strokes;
  }

  /** Rooms of its words. */
  List<TurnedBox> rooms() {
    return rooms;
  }

  Item.Dimension finished(DimensionKind kind, List<Vec2> measured, List<String> words) {
    return new Item.Dimension(kind, measured, words, parts);
  }

  void extension(Vec2 from, Vec2 to) {
    straight(from, to, Role.EXTENSION);
  }

  void dimensionLine(Vec2 from, Vec2 to) {
    straight(from, to, Role.DIMENSION_LINE);
  }

  void leader(Vec2 from, Vec2 to) {
    straight(from, to, Role.LEADER);
  }

  private void straight(Vec2 from, Vec2 to, Role role) {
    parts.add(new Item.Line(Layer.DIMENSIONS, from, to, DimensionStyle.LINE));
    strokes.add(new Stroke(from, to, role));
  }

  void arc(Arc arc) {
    parts.add(new Item.ArcLine(Layer.DIMENSIONS, arc, DimensionStyle.LINE));
    strokes.addAll(chords(arc, Role.LEADER));
  }

  static List<Stroke> chords(Arc arc, Role role) {
    double step = 2 * Math.acos(Math.max(0, 1 - SAG_MM / arc.radius()));
    int pieces = Math.max(4, (int) Math.ceil(Math.abs(arc.sweep()) / step));
    List<Stroke> chords = new ArrayList<>(pieces);
    Vec2 from = arc.start();
    for (int i = 1; i <= pieces; i++) {
      Vec2 to = i == pieces ? arc.end() : arc.at((double) i / pieces);
      chords.add(new Stroke(from, to, role));
      from = to;
    }
    return chords;
  }

  /**
   * An arrowhead.
   *
   * @param tip where it points
   * @param pointing direction of length one
   * @param shared whether another arrow may meet it there, tip to tip
   */
  void arrow(Vec2 tip, Vec2 pointing, boolean shared) {
    double share = shared ? TIP_SHARE : 0;
    double half = style.arrowLengthMm() * ARROW_HALF_WIDTH;
    Vec2 back = tip.minus(pointing.times(style.arrowLengthMm()));
    Vec2 left = back.plus(pointing.quarterTurn().times(half));
    Vec2 right = back.minus(pointing.quarterTurn().times(half));
    parts.add(
        new Item.Polyline(Layer.DIMENSIONS, List.of(tip, left, right), true, Pen.NONE, Ink.BLACK));
    strokes.add(new Stroke(tip.toward(left, share), left, Role.ARROW));
    strokes.add(new Stroke(left, right, Role.ARROW));
    strokes.add(new Stroke(right, tip.toward(right, share), Role.ARROW));
  }

  void text(DimensionText text, Vec2 centre, Vec2 reading) {
    parts.addAll(text.drawn(centre, reading));
    rooms.add(text.at(centre, reading));
  }
}
