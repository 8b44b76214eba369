package dev.towerscribe.drawing;

import dev.towerscribe.drawing.Cheapest.Chosen;
import dev.towerscribe.geometry.Box;
import dev.towerscribe.geometry.Edge.Segment;
import dev.towerscribe.geometry.Vec2;
import dev.towerscribe.quantity.Angle;
import java.util.ArrayList;
import java.util.List;
import java.util.Optional;
import java.util.function.DoubleFunction;

/**
 * Finds room for lettering among lines. Some things lettering may never cover (hole circles, the
 * final cut, other lettering, the frame); crossing others costs by the millimetre. Of the
 * candidates offered the cheapest is taken, the earlier of two alike, so the result never varies.
 */
public final class LabelPlacer {
  /** Shorter pieces of a line are put together: over 1 mm no curve of a sheet bends noticeably. */
  private static final double FINE_ENOUGH_MM = 1.0;

  /**
   * One way to place a label.
   *
   * @param block its lettering
   * @param centre its middle
   * @param turn direction of reading
   * @param pointer what a leader line runs to, if it stands apart
   * @param cost how little it is liked before anything is crossed
   */
  public record Candidate(
      TextBlock block, Vec2 centre, Angle turn, Optional<Vec2> pointer, double cost) {
    private TurnedBox box() {
      return block.at(centre, turn);
    }

    /**
     * The same, liked less.
     *
     * @param more what is added to its cost
     * @return the dearer candidate
     */
    public Candidate dearerBy(double more) {
      return new Candidate(block, centre, turn, pointer, cost + more);
    }

    /**
     * The same with another leader.
     *
     * @param end what the leader runs to, or nothing
     * @return the candidate with that leader alone
     */
    public Candidate pointingTo(Optional<Vec2> end) {
      return new Candidate(block, centre, turn, end, cost);
    }
  }

  /**
   * Candidates that are made only if one of them could be cheaper than the best of the first.
   *
   * @param from none of them costs less before anything is crossed
   * @param made gives those that cost less than it is told; giving others does no harm
   */
  public record Further(double from, DoubleFunction<List<Candidate>> made) {
    /** No further candidates. */
    public static final Further NONE = new Further(Double.POSITIVE_INFINITY, dearest -> List.of());
  }

  private record Disc(Vec2 centre, double radiusMm) {}

  private record Stroke(Vec2 from, Vec2 to, double costPerMm, Box bounds) {
    Stroke(Vec2 from, Vec2 to, double costPerMm) {
      this(from, to, costPerMm, new Segment(from, to).bounds());
    }
  }

  private record Taken(TurnedBox box, Box bounds) {
    Taken(TurnedBox box) {
      this(box, box.bounds());
    }
  }

  private final Box room;
  private final List<Taken> taken = new ArrayList<>();
  private final List<Disc> discs = new ArrayList<>();
  private final List<Stroke> walls = new ArrayList<>();
  private final List<Stroke> strokes = new ArrayList<>();
  private final List<Item> items = new ArrayList<>();

  /**
   * Starts with empty room.
   *
   * @param room where lettering may stand
   */
  public LabelPlacer(Box room) {
    this.room = room;
  }

  /**
   * Nothing may cover a box.
   *
   * @param box page mm
   */
  public void keepClear(TurnedBox box) {
    taken.add(new Taken(box));
  }

  /**
   * Nothing may cover a disc.
   *
   * @param centre its centre, page mm
   * @param radiusMm its radius, positive
   */
  public void keepClear(Vec2 centre, double radiusMm) {
    discs.add(new Disc(centre, radiusMm));
  }

  /**
   * No lettering may lie across a line.
   *
   * @param path its points, page mm
   * @param closed whether the last point joins the first
   */
  public void keepClear(List<Vec2> path, boolean closed) {
    strokesOf(path, closed, 1.0, walls);
  }

  /**
   * No lettering may lie across a straight line.
   *
   * @param from one end, page mm
   * @param to other end
   */
  public void keepClear(Vec2 from, Vec2 to) {
    keepClear(List.of(from, to), false);
  }

  /**
   * Lettering had better not lie across a line.
   *
   * @param path its points, page mm
   * @param closed whether the last point joins the first
   * @param costPerMm what each mm of it under lettering adds to a candidate's cost, not negative
   */
  public void avoid(List<Vec2> path, boolean closed, double costPerMm) {
    strokesOf(path, closed, costPerMm, strokes);
  }

  private static void strokesOf(
      List<Vec2> path, boolean closed, double costPerMm, List<Stroke> into) {
    Vec2 from = path.get(0);
    int pieces = closed ? path.size() : path.size() - 1;
    for (int i = 1; i <= pieces; i++) {
      Vec2 to = path.get(i % path.size());
      if (i == pieces || from.distanceTo(to) >= FINE_ENOUGH_MM) {
        into.add(new Stroke(from, to, costPerMm));
        from = to;
      }
    }
  }

  /**
   * Everything placed so far.
   *
   * @return leaders, white grounds and lettering, on the layer of notes
   */
  public List<Item> items() {
    return List.copyOf(items);
  }

  /**
   * Places a label.
   *
   * @param candidates in order of preference where costs are alike
   * @return the box it takes, or empty when no candidate is free
   */
  public Optional<TurnedBox> place(List<Candidate> candidates) {
    return place(candidates, Double.POSITIVE_INFINITY);
  }

  /**
   * Places a label unless it costs too much.
   *
   * @param candidates in order of preference where costs are alike
   * @param worth what the label is worth; no dearer place is taken
   * @return the box it takes, or empty when no candidate is free
   */
  public Optional<TurnedBox> place(List<Candidate> candidates, double worth) {
    return place(candidates, worth, Further.NONE);
  }

  /**
   * Places a label unless it costs too much.
   *
   * @param candidates in order of preference where costs are alike
   * @param worth what the label is worth; no dearer place is taken
   * @param further where costs are alike they come after the others
   * @return the box it takes, or empty when no candidate is free
   */
  public Optional<TurnedBox> place(List<Candidate> candidates, double worth, Further further) {
    Optional<Chosen<Candidate>> best = cheapest(candidates, worth);
    double least = best.map(Chosen::cost).orElse(worth);
    if (least > further.from()) {
      List<Candidate> all = new ArrayList<>(candidates);
      all.addAll(further.made().apply(least));
      best = cheapest(all, worth);
    }
    best.ifPresent(this::take);
    return best.map(b -> b.place().box());
  }

  private Optional<Chosen<Candidate>> cheapest(List<Candidate> candidates, double worth) {
    Cheapest<Candidate> cheapest = new Cheapest<>();
    candidates.forEach(c -> cheapest.offer(c.cost(), () -> c));
    return cheapest.choose(worth, (c, cost, most) -> costOf(c, most));
  }

  private void take(Chosen<Candidate> best) {
    Candidate chosen = best.place();
    TurnedBox box = chosen.box();
    chosen
        .pointer()
        .ifPresent(
            end -> {
              Vec2 start = box.grown(TextBlock.CLEARED_MM).edgeToward(end);
              items.add(new Item.Line(Layer.NOTES, start, end, Pen.FINE));
              items.add(new Item.Circle(Layer.NOTES, end, 0.5, Pen.NONE, Ink.BLACK));
              walls.add(new Stroke(start, end, 1.0));
              discs.add(new Disc(end, 0.8));
            });
    items.addAll(chosen.block().drawn(chosen.centre(), chosen.turn(), best.crosses(), Ink.BLACK));
    taken.add(new Taken(box.grown(TextBlock.CLEARED_MM)));
  }

  /** Cost of a candidate; infinite when it is barred or already dearer than the best. */
  private double costOf(Candidate candidate, double least) {
    TurnedBox box = candidate.box().grown(TextBlock.CLEARED_MM);
    Box bounds = box.bounds();
    if (!room.contains(bounds)) {
      return Double.POSITIVE_INFINITY;
    }
    for (Taken other : taken) {
      if (bounds.meets(other.bounds()) && box.overlaps(other.box())) {
        return Double.POSITIVE_INFINITY;
      }
    }
    for (Disc disc : discs) {
      if (box.isWithin(disc.radiusMm(), disc.centre())) {
        return Double.POSITIVE_INFINITY;
      }
    }
    for (Stroke wall : walls) {
      if (bounds.meets(wall.bounds()) && box.isCrossedBy(wall.from(), wall.to())) {
        return Double.POSITIVE_INFINITY;
      }
    }
    if (candidate.pointer().filter(end -> leaderBarred(box.edgeToward(end), end)).isPresent()) {
      return Double.POSITIVE_INFINITY;
    }
    double cost = candidate.cost();
    for (Stroke stroke : strokes) {
      if (bounds.meets(stroke.bounds())) {
        cost += stroke.costPerMm() * box.lengthInside(stroke.from(), stroke.to());
        if (cost >= least) {
          return Double.POSITIVE_INFINITY;
        }
      }
    }
    return cost;
  }

  private boolean leaderBarred(Vec2 start, Vec2 end) {
    if (!room.contains(end)) {
      return true;
    }
    for (Taken other : taken) {
      if (other.box().isCrossedBy(start, end)) {
        return true;
      }
    }
    Segment leader = new Segment(start, end);
    for (Disc disc : discs) {
      boolean endsThere = end.distanceTo(disc.centre()) <= disc.radiusMm() + TextBlock.CLEARED_MM;
      if (!endsThere && leader.nearest(disc.centre()).distanceTo(disc.centre()) < disc.radiusMm()) {
        return true;
      }
    }
    return false;
  }
}
