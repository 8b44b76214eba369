package dev.towerscribe.sheet;

import dev.towerscribe.drawing.Align;
import dev.towerscribe.drawing.Ink;
import dev.towerscribe.drawing.Item;
import dev.towerscribe.drawing.Layer;
import dev.towerscribe.drawing.Lettering;
import dev.towerscribe.drawing.Pen;
import dev.towerscribe.drawing.TurnedBox;
import dev.towerscribe.geometry.Arc;
import dev.towerscribe.geometry.Box;
import dev.towerscribe.geometry.Edge;
import dev.towerscribe.geometry.Recess;
import dev.towerscribe.geometry.Segment;
import dev.towerscribe.geometry.Vec2;
import dev.towerscribe.part.Feature;
import dev.towerscribe.part.FeatureKind;
import dev.towerscribe.quantity.Angle;
import java.util.ArrayList;
import java.util.List;

/**
 * Names beside holes on drawings, clear of every line that is there already where that can be. A
 * name that finds no room close to its hole stands farther off, at the end of a thin line to it.
 */
final class HoleNames {
  private static final double CAP_MM = 3.5;
  private static final double LEAST_CAP_MM = 2.5;

  /** A name without a line is this many times as far from any other hole. */
  private static final double NEARER = 1.5;

  private static final double CLEAR_MM = 0.8;
  private static final int DIRECTIONS = 24;
  private static final double STEP_MM = 1.5;
  private static final int STEPS = 8;

  /** Steps tried for names at the end of a line: 45 mm. */
  private static final int FAR_STEPS = 30;

  private static final int FAR_DIRECTIONS = 120;

  /** Chords of an arc are this long when it is asked whether a name lies across it, mm. */
  private static final double CHORD_MM = 1.0;

  private HoleNames() {}

  /**
   * Names of features.
   *
   * @param features holes, slots and windows
   * @param at the view's place
   * @param out shapes drawn so far; names are added
   */
  static void add(List<Feature> features, Placing at, List<Item> out) {
    List<Named> names = new ArrayList<>();
    for (Feature f : features) {
      if (f.edge().isEmpty() && f.kind() != FeatureKind.WINDOW) {
        double recess = f.recess().map(Recess::diameterMm).orElse(0.0);
        String name = shortName(f, features);
        names.add(new Named(name, f.centre(), Math.max(recess, f.diameterMm())));
      }
    }
    write(names, at, out);
  }

  /**
   * The name beside a hole: its own, but L1, L2 and so on for landmarks, whose names are long.
   *
   * @param f a feature
   * @param features all of its part
   */
  static String shortName(Feature f, List<Feature> features) {
    if (f.kind() != FeatureKind.SIGHT_HOLE) {
      return f.name();
    }
    List<Feature> sights =
        features.stream().filter(o -> o.kind() == FeatureKind.SIGHT_HOLE).toList();
    return "L" + (sights.indexOf(f) + 1);
  }

  /**
   * A round thing with a name.
   *
   * @param name what is written
   * @param centre its middle in the view
   * @param diameterMm its greatest diameter, true mm
   */
  record Named(String name, Vec2 centre, double diameterMm) {}

  /** Names of round things. */
  static void write(List<Named> names, Placing at, List<Item> out) {
    List<TurnedBox> taken = new ArrayList<>();
    List<Vec2[]> lines = new ArrayList<>();
    for (Item item : out) {
      collect(item, lines, taken);
    }
    for (Named named : names) {
      List<Named> others = names.stream().filter(o -> o != named).toList();
      name(named, others, at, lines, taken, out);
    }
  }

  private static void name(
      Named f,
      List<Named> others,
      Placing at,
      List<Vec2[]> lines,
      List<TurnedBox> taken,
      List<Item> out) {
    for (boolean led : new boolean[] {false, true}) {
      for (double cap : new double[] {CAP_MM, LEAST_CAP_MM}) {
        if (name(f, others, at, cap, led, lines, taken, out)) {
          return;
        }
      }
    }
  }

  /** Tries the places about a hole: those that can be no other's name, or any with a line to it. */
  private static boolean name(
      Named f,
      List<Named> others,
      Placing at,
      double cap,
      boolean far,
      List<Vec2[]> lines,
      List<TurnedBox> taken,
      List<Item> out) {
    double radius = at.length(f.diameterMm() / 2);
    Vec2 centre = at.point(f.centre());
    int directions = far ? FAR_DIRECTIONS : DIRECTIONS;
    Box all = far ? extent(lines, taken) : Box.around(centre, 0);
    double wide = Lettering.width(f.name(), cap);
    for (int step = far ? 1 : 0; step <= (far ? FAR_STEPS : STEPS); step++) {
      for (int d = 0; d < directions; d++) {
        // The first direction is up and to the right, between the arms of the centre mark.
        Vec2 u = Vec2.polar(1, Angle.ofDegrees(45 + 360.0 * d / directions));
        double reach = Math.abs(u.x()) * wide / 2 + Math.abs(u.y()) * cap / 2;
        Vec2 c = centre.plus(u.times(radius + CLEAR_MM + reach + step * STEP_MM));
        TurnedBox room =
            TurnedBox.of(
                new Box(c.x() - wide / 2, c.y() - cap / 2, c.x() + wide / 2, c.y() + cap / 2)
                    .grown(CLEAR_MM / 2));
        Vec2 end = room.edgeToward(centre);
        Vec2 touch =
            end.distanceTo(centre) > radius
                ? centre.toward(end, radius / end.distanceTo(centre))
                : centre;
        boolean itsOwn =
            far
                ? all.contains(room.bounds())
                    && taken.stream().allMatch(t -> t.lengthInside(touch, end) <= 0)
                    && others.stream().allMatch(o -> isClearOf(o, at, touch, end))
                : others.stream().allMatch(o -> isNearer(room, f, o, at));
        if (itsOwn && isFree(room, lines, taken)) {
          taken.add(room);
          if (far) {
            lines.add(new Vec2[] {touch, end});
            out.add(new Item.Line(Layer.NOTES, touch, end, Pen.FINE));
          }
          out.add(
              new Item.Text(
                  Layer.NOTES,
                  new Vec2(c.x(), c.y() - cap / 2),
                  cap,
                  Align.MIDDLE,
                  Angle.ZERO,
                  f.name(),
                  Ink.BLACK));
          return true;
        }
      }
    }
    return false;
  }

  /** Whether a name stands so much nearer to its hole than to another that nobody doubts it. */
  private static boolean isNearer(TurnedBox room, Named own, Named other, Placing at) {
    return NEARER * gapMm(room, own, at) + CLEAR_MM <= gapMm(room, other, at);
  }

  private static double gapMm(TurnedBox room, Named hole, Placing at) {
    return Math.max(0, room.distanceTo(at.point(hole.centre())) - at.length(hole.diameterMm() / 2));
  }

  /** Whether a line to a name keeps off another hole. */
  private static boolean isClearOf(Named other, Placing at, Vec2 from, Vec2 to) {
    Vec2 centre = at.point(other.centre());
    double off = new Segment(from, to).nearest(centre).distanceTo(centre);
    return off >= at.length(other.diameterMm() / 2) + CLEAR_MM;
  }

  /** What the view covers so far: no name goes beyond it. */
  private static Box extent(List<Vec2[]> lines, List<TurnedBox> taken) {
    Box all = Box.around(lines.get(0)[0], 0);
    for (Vec2[] line : lines) {
      all = all.union(Box.around(line[0], 0)).union(Box.around(line[1], 0));
    }
    for (TurnedBox box : taken) {
      all = all.union(box.bounds());
    }
    return all;
  }

  private static boolean isFree(TurnedBox room, List<Vec2[]> lines, List<TurnedBox> taken) {
    for (TurnedBox other : taken) {
      if (room.overlaps(other)) {
        return false;
      }
    }
    for (Vec2[] line : lines) {
      if (room.lengthInside(line[0], line[1]) > 0) {
        return false;
      }
    }
    return true;
  }

  private static void collect(Item item, List<Vec2[]> lines, List<TurnedBox> taken) {
    if (item instanceof Item.Line l) {
      lines.add(new Vec2[] {l.from(), l.to()});
    } else if (item instanceof Item.Circle c) {
      chords(new Arc(c.centre(), c.radiusMm(), 0, 2 * Math.PI), lines);
    } else if (item instanceof Item.Figure f) {
      f.contours().forEach(c -> c.edges().forEach(e -> chords(e, lines)));
    } else if (item instanceof Item.Polyline p) {
      int pieces = p.closed() ? p.points().size() : p.points().size() - 1;
      for (int i = 0; i < pieces; i++) {
        lines.add(new Vec2[] {p.points().get(i), p.points().get((i + 1) % p.points().size())});
      }
    } else if (item instanceof Item.Text t) {
      taken.add(Lettering.room(t));
    } else if (item instanceof Item.ArcLine a) {
      chords(a.arc(), lines);
    } else if (item instanceof Item.Dimension d) {
      d.parts().forEach(part -> collect(part, lines, taken));
    }
  }

  private static void chords(Edge edge, List<Vec2[]> lines) {
    int pieces = edge instanceof Arc ? Math.max(8, (int) Math.ceil(edge.length() / CHORD_MM)) : 1;
    for (int i = 0; i < pieces; i++) {
      lines.add(new Vec2[] {edge.at((double) i / pieces), edge.at((double) (i + 1) / pieces)});
    }
  }
}
