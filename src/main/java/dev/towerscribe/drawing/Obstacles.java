package dev.towerscribe.drawing;

import dev.towerscribe.geometry.Contour;
import dev.towerscribe.geometry.Edge;
import dev.towerscribe.geometry.Edge.Segment;
import dev.towerscribe.geometry.Vec2;
import java.util.ArrayList;
import java.util.List;

/**
 * What is on the page already where dimensions are to be placed.
 *
 * @param part outer outlines of the part: dimensions stand off these, and better outside them
 * @param lines every other line that words may not lie across: edges, centre lines, leaders
 * @param taken rooms that neither words nor lines of dimensions may enter: other words, tables
 */
public record Obstacles(List<Contour> part, List<Edge> lines, List<TurnedBox> taken) {
  /** Copies the lists. */
  public Obstacles {
    part = List.copyOf(part);
    lines = List.copyOf(lines);
    taken = List.copyOf(taken);
  }

  /**
   * What shapes already drawn stand in the way of. Lines of the part itself may be among them.
   *
   * @param part outer outlines of the part
   * @param drawn shapes of the page, dimensions too
   * @return their lines and the rooms of their words
   */
  public static Obstacles of(List<Contour> part, List<? extends Item> drawn) {
    Gatherer gatherer = new Gatherer();
    drawn.forEach(item -> item.accept(gatherer));
    return new Obstacles(part, gatherer.lines, gatherer.taken);
  }

  /**
   * With a room that is taken.
   *
   * @param room for instance a title block
   * @return these and it
   */
  public Obstacles with(TurnedBox room) {
    List<TurnedBox> more = new ArrayList<>(taken);
    more.add(room);
    return new Obstacles(part, lines, more);
  }

  private static final class Gatherer implements Item.Visitor {
    private final List<Edge> lines = new ArrayList<>();
    private final List<TurnedBox> taken = new ArrayList<>();

    private void add(Pen pen, Ink fill, List<? extends Edge> edges) {
      if (pen != Pen.NONE || fill == Ink.BLACK || fill == Ink.PALE) {
        lines.addAll(edges);
      }
    }

    @Override
    public void circle(Item.Circle circle) {
      Contour whole = Contour.circle(circle.centre(), circle.radiusMm());
      add(circle.pen(), circle.fill(), whole.edges());
    }

    @Override
    public void arc(Item.ArcLine arc) {
      add(arc.pen(), Ink.NONE, List.of(arc.arc()));
    }

    @Override
    public void line(Item.Line line) {
      add(line.pen(), Ink.NONE, List.of(new Segment(line.from(), line.to())));
    }

    @Override
    public void polyline(Item.Polyline polyline) {
      List<Vec2> points = polyline.points();
      List<Edge> chain = new ArrayList<>();
      int pieces = polyline.closed() ? points.size() : points.size() - 1;
      for (int i = 0; i < pieces; i++) {
        chain.add(new Segment(points.get(i), points.get((i + 1) % points.size())));
      }
      add(polyline.pen(), polyline.fill(), chain);
    }

    @Override
    public void figure(Item.Figure figure) {
      figure.contours().forEach(c -> add(figure.pen(), figure.fill(), c.edges()));
    }

    @Override
    public void text(Item.Text text) {
      if (!text.content().isEmpty()) {
        taken.add(Lettering.room(text));
      }
    }
  }
}
