package dev.towerscribe.drawing;

import dev.towerscribe.geometry.Contour;
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
  record ArcLine(Layer layer, dev.towerscribe.geometry.Arc arc, Pen pen) implements Item {
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
}
