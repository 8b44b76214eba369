package dev.towerscribe.writer.dxf;

import dev.towerscribe.drawing.Align;
import dev.towerscribe.drawing.Ink;
import dev.towerscribe.drawing.Item;
import dev.towerscribe.drawing.Layer;
import dev.towerscribe.drawing.Lettering;
import dev.towerscribe.drawing.Pen;
import dev.towerscribe.geometry.Box;
import dev.towerscribe.geometry.Contour;
import dev.towerscribe.geometry.Edge;
import dev.towerscribe.geometry.Edge.Arc;
import dev.towerscribe.geometry.Edge.Segment;
import dev.towerscribe.geometry.Vec2;
import dev.towerscribe.quantity.Tolerances;
import java.util.ArrayList;
import java.util.List;

/** Turns shapes into entities. */
final class DxfPainter implements Item.Visitor {
  /** Line of an area whose black fill cannot be drawn. */
  private static final Pen IN_PLACE_OF_FILL = Pen.OUTLINE;

  private static final double FULL_TURN = 2 * Math.PI;

  /** A full turn in pieces is full to this, radians: SAME_POINT_MM at a radius of a metre. */
  private static final double SAME_TURN = Tolerances.SAME_POINT_MM / 1000;

  private final DxfGroups out;
  private final DxfFrame frame;
  private final List<Vec2> whiteTexts = new ArrayList<>();

  DxfPainter(List<Item> items, DxfGroups out, DxfFrame frame) {
    this.out = out;
    this.frame = frame;
    for (Item item : items) {
      if (item instanceof Item.Text text && text.ink() == Ink.WHITE) {
        whiteTexts.add(text.at());
      }
    }
  }

  @Override
  public void circle(Item.Circle circle) {
    Pen pen = orOutline(circle.pen(), circle.fill() == Ink.BLACK);
    if (pen != Pen.NONE) {
      circle(circle.layer(), circle.centre(), circle.radiusMm(), pen);
    }
  }

  @Override
  public void arc(Item.ArcLine line) {
    if (line.pen() != Pen.NONE) {
      edge(line.layer(), line.arc(), line.pen());
    }
  }

  @Override
  public void line(Item.Line line) {
    if (line.pen() != Pen.NONE) {
      line(line.layer(), line.from(), line.to(), line.pen());
    }
  }

  @Override
  public void polyline(Item.Polyline polyline) {
    List<Vec2> points = polyline.points();
    boolean black = polyline.fill() == Ink.BLACK;
    boolean filled = black && solid(polyline.layer(), points);
    Pen pen = orOutline(polyline.pen(), black && !filled);
    if (pen == Pen.NONE) {
      return;
    }
    for (int i = 1; i < points.size(); i++) {
      line(polyline.layer(), points.get(i - 1), points.get(i), pen);
    }
    if (points.size() > 2 && (polyline.closed() || polyline.pen() == Pen.NONE)) {
      line(polyline.layer(), points.get(points.size() - 1), points.get(0), pen);
    }
  }

  @Override
  public void figure(Item.Figure figure) {
    boolean black = figure.fill() == Ink.BLACK;
    boolean filled = black && solid(figure);
    Pen pen = orOutline(figure.pen(), black && !filled);
    if (pen != Pen.NONE) {
      figure.contours().forEach(contour -> contour(figure.layer(), contour, pen));
    }
  }

  @Override
  public void text(Item.Text text) {
    // Asked also where it is not needed: this refuses what no sheet can show.
    Vec2 start = Lettering.start(text);
    if (text.ink() == Ink.NONE || text.content().isBlank()) {
      return;
    }
    if (!(text.capHeightMm() > 0)) {
      throw new IllegalArgumentException("a text's height must be positive: " + text);
    }
    boolean atStart = text.align() == Align.START;
    // White lettering is written like any other: its ground is not filled, and layers have colours.
    beginEntity("TEXT", text.layer()).since2000(100, "AcDbText");
    // Readers that know no alignment set the text from here, as the sheet font would lie.
    out.point(10, start).length(40, text.capHeightMm()).text(1, DxfText.encode(text.content()));
    out.angle(50, text.turn().radians());
    out.length(41, frame.widthFactor()).text(7, DxfFrame.TEXT_STYLE);
    out.whole(72, text.align().ordinal());
    if (!atStart) {
      out.point(11, text.at());
    }
    out.since2000(100, "AcDbText").whole(73, 0);
  }

  private static Pen orOutline(Pen pen, boolean fillIsMissing) {
    return pen == Pen.NONE && fillIsMissing ? IN_PLACE_OF_FILL : pen;
  }

  private void contour(Layer layer, Contour contour, Pen pen) {
    Arc whole = wholeCircle(contour.edges());
    if (whole != null) {
      circle(layer, whole.centre(), whole.radius(), pen);
    } else {
      contour.edges().forEach(edge -> edge(layer, edge, pen));
    }
  }

  /** An arc of the circle that all edges together are, or null. */
  private static Arc wholeCircle(List<Edge> edges) {
    Arc first = edges.get(0) instanceof Arc arc ? arc : null;
    double turned = 0;
    for (Edge edge : edges) {
      if (first == null
          || !(edge instanceof Arc arc)
          || arc.centre().distanceTo(first.centre()) > Tolerances.COMPUTED_MM
          || Math.abs(arc.radius() - first.radius()) > Tolerances.COMPUTED_MM
          || arc.sweep() > 0 != first.sweep() > 0) {
        return null;
      }
      turned += Math.abs(arc.sweep());
    }
    return Math.abs(turned - FULL_TURN) <= SAME_TURN ? first : null;
  }

  private void edge(Layer layer, Edge edge, Pen pen) {
    if (edge instanceof Arc arc) {
      if (arc.isFullCircle()) {
        circle(layer, arc.centre(), arc.radius(), pen);
      } else {
        arc(layer, arc, pen);
      }
    } else {
      line(layer, edge.start(), edge.end(), pen);
    }
  }

  private void circle(Layer layer, Vec2 centre, double radiusMm, Pen pen) {
    if (!(radiusMm > 0)) {
      throw new IllegalArgumentException("a circle's radius must be positive, not " + radiusMm);
    }
    beginLine("CIRCLE", layer, "AcDbCircle", pen);
    out.point(10, centre).length(40, radiusMm);
  }

  private void arc(Layer layer, Arc arc, Pen pen) {
    // The format knows only arcs that run counter-clockwise.
    boolean forward = arc.sweep() > 0;
    double from = forward ? arc.startAngle() : arc.startAngle() + arc.sweep();
    double to = forward ? arc.startAngle() + arc.sweep() : arc.startAngle();
    if (DxfGroups.angleText(from).equals(DxfGroups.angleText(to))) {
      // Shorter than can be written; equal angles would say a whole circle.
      return;
    }
    beginLine("ARC", layer, "AcDbCircle", pen);
    out.point(10, arc.centre()).length(40, arc.radius());
    out.since2000(100, "AcDbArc").angle(50, from).angle(51, to);
  }

  private void line(Layer layer, Vec2 from, Vec2 to, Pen pen) {
    if (!from.equals(to)) {
      beginLine("LINE", layer, "AcDbLine", pen);
      out.point(10, from).point(11, to);
    }
  }

  private boolean solid(Item.Figure figure) {
    if (figure.contours().size() != 1
        || !figure.contours().get(0).edges().stream().allMatch(Segment.class::isInstance)) {
      return false;
    }
    return solid(figure.layer(), figure.contours().get(0).corners());
  }

  /** Fills a triangle or a quadrangle if the format can and no white text needs legible ground. */
  private boolean solid(Layer layer, List<Vec2> points) {
    List<Vec2> corners = new ArrayList<>(points);
    if (corners.size() > 3 && corners.get(0).equals(corners.get(corners.size() - 1))) {
      corners.remove(corners.size() - 1);
    }
    if (corners.size() < 3 || corners.size() > 4 || !isConvex(corners) || carriesText(corners)) {
      return false;
    }
    beginEntity("SOLID", layer).since2000(100, "AcDbTrace");
    out.point(10, corners.get(0)).point(11, corners.get(1));
    // The format goes from corner to corner like the letter Z; a triangle says its last one twice.
    out.point(12, corners.get(corners.size() - 1)).point(13, corners.get(2));
    return true;
  }

  private static boolean isConvex(List<Vec2> corners) {
    int left = 0;
    int right = 0;
    for (int i = 0; i < corners.size(); i++) {
      Vec2 a = corners.get(i);
      Vec2 b = corners.get((i + 1) % corners.size());
      Vec2 c = corners.get((i + 2) % corners.size());
      double turn = b.minus(a).cross(c.minus(b));
      left += turn > 0 ? 1 : 0;
      right += turn < 0 ? 1 : 0;
    }
    return left == corners.size() || right == corners.size();
  }

  private boolean carriesText(List<Vec2> corners) {
    Box around =
        corners.stream()
            .map(p -> Box.around(p, Tolerances.SAME_POINT_MM))
            .reduce(Box::union)
            .orElseThrow();
    return whiteTexts.stream().anyMatch(around::contains);
  }

  private void beginLine(String type, Layer layer, String subclass, Pen pen) {
    beginEntity(type, layer);
    DxfLineType lineType = DxfLineType.of(pen);
    if (lineType != DxfLineType.CONTINUOUS) {
      out.text(6, lineType.name());
    }
    // Hundredths of a mm.
    out.since2000(370, Long.toString(Math.round(pen.widthMm() * 100))).since2000(100, subclass);
  }

  private DxfGroups beginEntity(String type, Layer layer) {
    out.text(0, type).since2000(5, frame.nextHandle()).since2000(330, DxfFrame.MODEL_SPACE);
    return out.since2000(100, "AcDbEntity").text(8, DxfLayers.name(layer));
  }
}
