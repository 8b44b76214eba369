package dev.towerscribe.sheet.shop;

import dev.towerscribe.drawing.Align;
import dev.towerscribe.drawing.Ink;
import dev.towerscribe.drawing.Item;
import dev.towerscribe.drawing.Layer;
import dev.towerscribe.drawing.LayerPen;
import dev.towerscribe.drawing.Lettering;
import dev.towerscribe.drawing.Pen;
import dev.towerscribe.drawing.TurnedBox;
import dev.towerscribe.geometry.Box;
import dev.towerscribe.geometry.Edge;
import dev.towerscribe.geometry.Edge.Arc;
import dev.towerscribe.geometry.Edge.Segment;
import dev.towerscribe.geometry.Recess;
import dev.towerscribe.geometry.Vec2;
import dev.towerscribe.part.Feature;
import dev.towerscribe.part.FeatureKind;
import dev.towerscribe.quantity.Angle;
import dev.towerscribe.sheet.text.NoRoomException;
import java.util.ArrayList;
import java.util.List;
import java.util.Optional;

/** Names beside holes on drawings, clear of every line that is there already where that can be. */
final class HoleNames {
  private static final double CAP_MM = 3.5;
  private static final double LEAST_CAP_MM = 2.5;
  private static final double CLEAR_MM = 0.8;
  private static final int DIRECTIONS = 24;
  private static final double STEP_MM = 1.5;
  private static final int STEPS = 8;

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
  static void add(List<Feature> features, ViewPlacing at, List<Item> out) {
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

  /**
   * Names of round things.
   *
   * @param names what is written beside what
   * @param at the view's place
   * @param out shapes drawn so far; names are added
   * @throws NoRoomException if a name could only be written over another or beside another hole
   */
  static void write(List<Named> names, ViewPlacing at, List<Item> out) {
    LayerPen notes = LayerPen.notes(out);
    List<TurnedBox> taken = new ArrayList<>();
    List<Vec2[]> edges = new ArrayList<>();
    List<Vec2[]> centres = new ArrayList<>();
    for (Item item : out) {
      collect(item, item.layer() == Layer.CENTRE_LINES ? centres : edges, taken);
    }
    List<Vec2[]> all = new ArrayList<>(edges);
    all.addAll(centres);
    for (Named named : names) {
      // Beside its hole, across centre lines if need be; else farther off with a line to it; else
      // across edges. A hole without a name cannot be told from its neighbour.
      Spot spot =
          spot(named, names, at, all, taken, false)
              .or(() -> spot(named, names, at, edges, taken, false))
              .or(() -> spot(named, names, at, all, taken, true))
              .or(() -> spot(named, names, at, edges, taken, true))
              .or(() -> spot(named, names, at, List.of(), taken, true))
              .orElseThrow(
                  () -> new NoRoomException("no room for the name of hole " + named.name()));
      taken.add(spot.room());
      for (Vec2[] leader : spot.leader()) {
        all.add(leader);
        edges.add(leader);
        notes.line(leader[0], leader[1], Pen.FINE);
      }
      out.add(
          new Item.Text(
              Layer.NOTES,
              new Vec2(spot.room().centre().x(), spot.room().centre().y() - spot.capMm() / 2),
              spot.capMm(),
              Align.MIDDLE,
              Angle.ZERO,
              named.name(),
              Ink.BLACK));
    }
  }

  /**
   * A place for a name.
   *
   * @param room what it takes up
   * @param capMm height of its capitals
   * @param leader the line that leads to its hole, or none
   */
  private record Spot(TurnedBox room, double capMm, List<Vec2[]> leader) {}

  /** A free place: nearer to its own hole than to any other, or with a line that leads there. */
  private static Optional<Spot> spot(
      Named f,
      List<Named> names,
      ViewPlacing at,
      List<Vec2[]> lines,
      List<TurnedBox> taken,
      boolean led) {
    double radius = at.length(f.diameterMm() / 2);
    Vec2 centre = at.point(f.centre());
    for (double cap : new double[] {CAP_MM, LEAST_CAP_MM}) {
      double wide = Lettering.width(f.name(), cap);
      for (int step = led ? 1 : 0; step <= STEPS; step++) {
        for (int d = 0; d < DIRECTIONS; d++) {
          // The first direction is up and to the right, between the arms of the centre mark.
          Vec2 u = Vec2.polar(1, Angle.ofDegrees(45 + 360.0 * d / DIRECTIONS));
          double reach = Math.abs(u.x()) * wide / 2 + Math.abs(u.y()) * cap / 2;
          Vec2 c = centre.plus(u.times(radius + CLEAR_MM + reach + step * STEP_MM));
          TurnedBox room =
              TurnedBox.of(
                  new Box(c.x() - wide / 2, c.y() - cap / 2, c.x() + wide / 2, c.y() + cap / 2)
                      .grown(CLEAR_MM / 2));
          if (!isFree(room, lines, taken)) {
            continue;
          }
          if (led) {
            Vec2[] leader = {centre.plus(u.times(radius)), room.edgeToward(centre)};
            if (leads(leader, f, names, at, taken)) {
              return Optional.of(new Spot(room, cap, List.<Vec2[]>of(leader)));
            }
          } else if (isNearest(room, f, names, at)) {
            return Optional.of(new Spot(room, cap, List.of()));
          }
        }
      }
    }
    return Optional.empty();
  }

  /** Beside another hole it would be taken for the name of that one. */
  private static boolean isNearest(TurnedBox room, Named own, List<Named> names, ViewPlacing at) {
    double gap = gapMm(room, own, at) + CLEAR_MM;
    return names.stream().allMatch(o -> o == own || gapMm(room, o, at) >= gap);
  }

  private static double gapMm(TurnedBox room, Named hole, ViewPlacing at) {
    return room.distanceTo(at.point(hole.centre())) - at.length(hole.diameterMm() / 2);
  }

  /** Whether a line meets no name and no other hole. */
  private static boolean leads(
      Vec2[] leader, Named own, List<Named> names, ViewPlacing at, List<TurnedBox> taken) {
    if (taken.stream().anyMatch(t -> t.lengthInside(leader[0], leader[1]) > 0)) {
      return false;
    }
    Segment line = new Segment(leader[0], leader[1]);
    return names.stream()
        .allMatch(
            o ->
                o == own
                    || line.nearest(at.point(o.centre())).distanceTo(at.point(o.centre()))
                        > at.length(o.diameterMm() / 2) + CLEAR_MM / 2);
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
