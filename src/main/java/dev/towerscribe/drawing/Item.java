package dev.towerscribe.drawing;

import dev.towerscribe.geometry.Contour;
import dev.towerscribe.geometry.Edge.Arc;
import dev.towerscribe.geometry.Region;
import dev.towerscribe.geometry.Vec2;
import dev.towerscribe.quantity.Angle;
import java.util.List;

/**
 * One shape on a page. A new kind breaks every writer when compiled, through {@link Visitor}. All
 * lengths mm, y up.
 */
public sealed interface Item {
  /**
   * What it stands for.
   *
   * @return layer
   */
  Layer layer();

  /**
   * Calls the method for its kind.
   *
   * @param visitor what to do for each kind
   */
  void accept(Visitor visitor);

  /** One method for each kind of shape. */
  interface Visitor {
    /**
     * A circle.
     *
     * @param circle the shape
     */
    void circle(Circle circle);

    /**
     * An arc.
     *
     * @param arc the shape
     */
    void arc(ArcLine arc);

    /**
     * A straight line.
     *
     * @param line the shape
     */
    void line(Line line);

    /**
     * A chain of straight lines.
     *
     * @param polyline the shape
     */
    void polyline(Polyline polyline);

    /**
     * A closed figure of lines and arcs.
     *
     * @param figure the shape
     */
    void figure(Figure figure);

    /**
     * A line of text.
     *
     * @param text the shape
     */
    void text(Text text);

    /**
     * A dimension: its parts are what is drawn.
     *
     * @param dimension the shape
     */
    default void dimension(Dimension dimension) {
      dimension.parts().forEach(part -> part.accept(this));
    }
  }

  /**
   * A whole circle.
   *
   * @param layer what it stands for
   * @param centre centre
   * @param radiusMm radius, positive
   * @param pen its line
   * @param fill its inside
   */
  record Circle(Layer layer, Vec2 centre, double radiusMm, Pen pen, Ink fill) implements Item {
    @Override
    public void accept(Visitor visitor) {
      visitor.circle(this);
    }
  }

  /**
   * An open circular arc.
   *
   * @param layer what it stands for
   * @param arc the arc, y up
   * @param pen its line
   */
  record ArcLine(Layer layer, Arc arc, Pen pen) implements Item {
    @Override
    public void accept(Visitor visitor) {
      visitor.arc(this);
    }
  }

  /**
   * A straight line.
   *
   * @param layer what it stands for
   * @param from one end
   * @param to other end
   * @param pen its line
   */
  record Line(Layer layer, Vec2 from, Vec2 to, Pen pen) implements Item {
    @Override
    public void accept(Visitor visitor) {
      visitor.line(this);
    }
  }

  /**
   * Straight lines from point to point.
   *
   * @param layer what it stands for
   * @param points at least two
   * @param closed whether the last point joins the first
   * @param pen its line
   * @param fill its inside
   */
  record Polyline(Layer layer, List<Vec2> points, boolean closed, Pen pen, Ink fill)
      implements Item {
    /** Copies the list. */
    public Polyline {
      points = List.copyOf(points);
    }

    @Override
    public void accept(Visitor visitor) {
      visitor.polyline(this);
    }
  }

  /**
   * A closed figure, with holes where its contours say so (even-odd). Whole circles in it are drawn
   * as circles.
   *
   * @param layer what it stands for
   * @param contours its boundaries
   * @param pen their line
   * @param fill the inside
   */
  record Figure(Layer layer, List<Contour> contours, Pen pen, Ink fill) implements Item {
    /** Copies the list. */
    public Figure {
      contours = List.copyOf(contours);
    }

    /**
     * A region's boundaries.
     *
     * @param layer what it stands for
     * @param region the region, in page millimetres
     * @param pen its line
     * @param fill its inside
     * @return the figure
     */
    public static Figure of(Layer layer, Region region, Pen pen, Ink fill) {
      return new Figure(layer, region.contours(), pen, fill);
    }

    @Override
    public void accept(Visitor visitor) {
      visitor.figure(this);
    }
  }

  /**
   * One line of text.
   *
   * @param layer what it stands for
   * @param at the point on the base line that {@code align} speaks of
   * @param capHeightMm height of a capital letter
   * @param align which part of the text stands at the point
   * @param turn direction of reading, counter-clockwise from the page's x axis
   * @param content the words
   * @param ink black or white
   */
  record Text(
      Layer layer, Vec2 at, double capHeightMm, Align align, Angle turn, String content, Ink ink)
      implements Item {
    @Override
    public void accept(Visitor visitor) {
      visitor.text(this);
    }
  }

  /**
   * A dimension, made up of lines, arcs, filled arrowheads and text. It stays one thing so that a
   * reader of the page can tell what it says of which points, and does not take its lines for
   * edges.
   *
   * @param kind what it is a size of
   * @param measured what it measures, page mm. Linear: the two points. Ordinate: the datum, then
   *     the point or points that share the figure. Diameter and radius: the centre, then the point
   *     of the curve that the arrow touches. Angle: the vertex, a point on the first arm and one on
   *     the second
   * @param words its lines of text, from the top
   * @param parts what is drawn, all on its layer
   */
  record Dimension(DimensionKind kind, List<Vec2> measured, List<String> words, List<Item> parts)
      implements Item {
    /** Checks that it says something of something; copies the lists. */
    public Dimension {
      measured = List.copyOf(measured);
      words = List.copyOf(words);
      parts = List.copyOf(parts);
      int least = kind == DimensionKind.ANGLE ? 3 : 2;
      if (measured.size() < least) {
        throw new IllegalArgumentException(kind + " measures too few points: " + measured.size());
      }
      if (words.isEmpty() || words.stream().anyMatch(String::isBlank)) {
        throw new IllegalArgumentException("a dimension without words");
      }
      for (Item part : parts) {
        boolean plain =
            part instanceof Line
                || part instanceof ArcLine
                || part instanceof Polyline
                || part instanceof Text;
        if (!plain || part.layer() != Layer.DIMENSIONS) {
          throw new IllegalArgumentException("not a part of a dimension: " + part);
        }
      }
    }

    @Override
    public Layer layer() {
      return Layer.DIMENSIONS;
    }

    @Override
    public void accept(Visitor visitor) {
      visitor.dimension(this);
    }
  }
}
