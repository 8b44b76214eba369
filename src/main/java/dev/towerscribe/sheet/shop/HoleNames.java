package dev.towerscribe.sheet.shop;

import dev.towerscribe.drawing.Align;
import dev.towerscribe.drawing.Cheapest;
import dev.towerscribe.drawing.Item;
import dev.towerscribe.drawing.Layer;
import dev.towerscribe.drawing.LayerPen;
import dev.towerscribe.drawing.Lettering;
import dev.towerscribe.drawing.Obstacles;
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
import java.util.Map;
import java.util.stream.Collectors;

/**
 * Names beside holes on drawings, clear of every line that is there already where that can be.
 *
 * @param names what is written beside what
 * @param at the view's place
 * @param taken rooms of all words so far
 * @param edges lines of the view but centre lines, curves as chords
 * @param centres its centre lines
 */
record HoleNames(
    List<Named> names,
    ViewPlacing at,
    List<TurnedBox> taken,
    List<Segment> edges,
    List<Segment> centres) {
  private static final double CAP_MM = 3.5;
  private static final double LEAST_CAP_MM = 2.5;
  private static final double CLEAR_MM = 0.8;
  private static final int DIRECTIONS = 24;
  private static final double STEP_MM = 1.5;
  private static final int STEPS = 8;

  /** Chords of an arc are this long when it is asked whether a name lies across it, mm. */
  private static final double CHORD_MM = 1.0;

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
    Map<Boolean, List<Item>> drawn =
        out.stream().collect(Collectors.partitioningBy(i -> i.layer() == Layer.CENTRE_LINES));
    Obstacles edges = Obstacles.of(List.of(), drawn.get(false));
    Obstacles centres = Obstacles.of(List.of(), drawn.get(true));
    List<TurnedBox> taken = new ArrayList<>(edges.taken());
    taken.addAll(centres.taken());
    HoleNames writer =
        new HoleNames(names, at, taken, chords(edges.lines()), chords(centres.lines()));
    LayerPen notes = LayerPen.notes(out);
    names.forEach(named -> writer.write(named, notes));
  }

  private void write(Named named, LayerPen notes) {
    Spot spot =
        spots(named)
            .choose(Cheapest.BARRED, (s, cost, most) -> isFree(s, named) ? cost : Cheapest.BARRED)
            .map(Cheapest.Chosen::place)
            .orElseThrow(() -> new NoRoomException("no room for the name of hole " + named.name()));
    taken.add(spot.room());
    if (spot.rule().led) {
      Segment leader = spot.leader();
      edges.add(leader);
      notes.line(leader.start(), leader.end(), Pen.FINE);
    }
    Vec2 c = spot.room().centre();
    notes.text(c.x(), c.y() - spot.capMm() / 2, spot.capMm(), Align.MIDDLE, named.name());
  }

  /**
   * What a name may do where there is little room, the best first: beside its hole, across centre
   * lines if need be; else farther off with a line to it; else across edges. A hole without a name
   * cannot be told from its neighbour.
   */
  private enum Rule {
    BESIDE(false, false, false),
    BESIDE_ON_CENTRE_LINES(false, true, false),
    LED(true, false, false),
    LED_ON_CENTRE_LINES(true, true, false),
    LED_ON_EDGES(true, true, true);

    private final boolean led;
    private final boolean acrossCentres;
    private final boolean acrossEdges;

    Rule(boolean led, boolean acrossCentres, boolean acrossEdges) {
      this.led = led;
      this.acrossCentres = acrossCentres;
      this.acrossEdges = acrossEdges;
    }
  }

  /**
   * A place for a name.
   *
   * @param rule by which rule it is offered
   * @param room what it takes up
   * @param capMm height of its capitals
   * @param foot where on its hole a line to it would begin
   * @param hole the hole's middle
   */
  private record Spot(Rule rule, TurnedBox room, double capMm, Vec2 foot, Vec2 hole) {
    Segment leader() {
      return new Segment(foot, room.edgeToward(hole));
    }
  }

  /** All places by all rules, each dearer than the one before. */
  private Cheapest<Spot> spots(Named named) {
    Cheapest<Spot> spots = new Cheapest<>();
    double radius = at.length(named.diameterMm() / 2);
    Vec2 centre = at.point(named.centre());
    int cost = 0;
    for (Rule rule : Rule.values()) {
      for (double cap : new double[] {CAP_MM, LEAST_CAP_MM}) {
        double wide = Lettering.width(named.name(), cap);
        for (int step = rule.led ? 1 : 0; step <= STEPS; step++) {
          double off = radius + CLEAR_MM + step * STEP_MM;
          for (int d = 0; d < DIRECTIONS; d++) {
            // The first direction is up and to the right, between the arms of the centre mark.
            double degrees = 45 + 360.0 * d / DIRECTIONS;
            spots.offer(cost++, () -> spot(rule, cap, wide, centre, radius, off, degrees));
          }
        }
      }
    }
    return spots;
  }

  private static Spot spot(
      Rule rule, double cap, double wide, Vec2 centre, double radius, double off, double degrees) {
    Vec2 u = Vec2.polar(1, Angle.ofDegrees(degrees));
    double reach = Math.abs(u.x()) * wide / 2 + Math.abs(u.y()) * cap / 2;
    Vec2 c = centre.plus(u.times(off + reach));
    TurnedBox room =
        TurnedBox.of(
            new Box(c.x() - wide / 2, c.y() - cap / 2, c.x() + wide / 2, c.y() + cap / 2)
                .grown(CLEAR_MM / 2));
    return new Spot(rule, room, cap, centre.plus(u.times(radius)), centre);
  }

  /** Whether nothing is in the way, and it is clear which hole is meant. */
  private boolean isFree(Spot spot, Named own) {
    Rule rule = spot.rule();
    return taken.stream().noneMatch(spot.room()::overlaps)
        && (rule.acrossEdges || isClear(spot.room(), edges))
        && (rule.acrossCentres || isClear(spot.room(), centres))
        && (rule.led ? leads(spot.leader(), own) : isNearest(spot.room(), own));
  }

  private static boolean isClear(TurnedBox room, List<Segment> lines) {
    return lines.stream().noneMatch(l -> room.isCrossedBy(l.start(), l.end()));
  }

  /** Beside another hole it would be taken for the name of that one. */
  private boolean isNearest(TurnedBox room, Named own) {
    double gap = gapMm(room, own) + CLEAR_MM;
    return names.stream().allMatch(o -> o == own || gapMm(room, o) >= gap);
  }

  private double gapMm(TurnedBox room, Named hole) {
    return room.distanceTo(at.point(hole.centre())) - at.length(hole.diameterMm() / 2);
  }

  /** Whether a line meets no name and no other hole. */
  private boolean leads(Segment leader, Named own) {
    return taken.stream().noneMatch(t -> t.isCrossedBy(leader.start(), leader.end()))
        && names.stream().allMatch(o -> o == own || isPast(leader, o));
  }

  private boolean isPast(Segment leader, Named hole) {
    Vec2 centre = at.point(hole.centre());
    return leader.nearest(centre).distanceTo(centre)
        > at.length(hole.diameterMm() / 2) + CLEAR_MM / 2;
  }

  private static List<Segment> chords(List<Edge> edges) {
    List<Segment> chords = new ArrayList<>();
    for (Edge edge : edges) {
      int pieces = edge instanceof Arc ? Math.max(8, (int) Math.ceil(edge.length() / CHORD_MM)) : 1;
      for (int i = 0; i < pieces; i++) {
        chords.add(new Segment(edge.at((double) i / pieces), edge.at((double) (i + 1) / pieces)));
      }
    }
    return chords;
  }
}
