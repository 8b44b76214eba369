package dev.towerscribe.sheet.shop;

import dev.towerscribe.drawing.Item;
import dev.towerscribe.drawing.Layer;
import dev.towerscribe.drawing.LayerPen;
import dev.towerscribe.drawing.Pen;
import dev.towerscribe.geometry.Vec2;
import java.util.List;

/**
 * The sign of a projection method after ISO 5456-2: a truncated cone from its side, and the two
 * circles of its end. First angle has the circles right of the cone, whose small end points away
 * from them; third angle has them left of it, at its small end. Proportions from memory.
 */
final class ProjectionSign {
  /** Height of the sign: the cone's larger diameter, mm. */
  static final double HEIGHT_MM = 6.0;

  private static final double SMALL_MM = HEIGHT_MM / 2;
  private static final double CONE_MM = HEIGHT_MM;
  private static final double GAP_MM = 2.0;
  private static final double OVER_MM = 1.0;

  /** Width with its centre lines, mm. */
  static final double WIDTH_MM = CONE_MM + GAP_MM + HEIGHT_MM + 2 * OVER_MM;

  private ProjectionSign() {}

  /** Draws it about a centre. */
  static void draw(boolean firstAngle, Vec2 centre, List<Item> out) {
    LayerPen s = new LayerPen(Layer.FRAME, out);
    double y = centre.y();
    double left = centre.x() - WIDTH_MM / 2 + OVER_MM;
    double cone = firstAngle ? left : left + HEIGHT_MM + GAP_MM;
    double rings = (firstAngle ? left + CONE_MM + GAP_MM : left) + HEIGHT_MM / 2;
    // Third angle: the view from the left stands at the left, so the small end faces the rings.
    double smallX = cone;
    double bigX = cone + CONE_MM;
    s.line(smallX, y - SMALL_MM / 2, smallX, y + SMALL_MM / 2, Pen.OUTLINE);
    s.line(bigX, y - HEIGHT_MM / 2, bigX, y + HEIGHT_MM / 2, Pen.OUTLINE);
    s.line(smallX, y + SMALL_MM / 2, bigX, y + HEIGHT_MM / 2, Pen.OUTLINE);
    s.line(smallX, y - SMALL_MM / 2, bigX, y - HEIGHT_MM / 2, Pen.OUTLINE);
    s.circle(new Vec2(rings, y), HEIGHT_MM / 2, Pen.OUTLINE);
    s.circle(new Vec2(rings, y), SMALL_MM / 2, Pen.OUTLINE);
    s.line(cone - OVER_MM, y, cone + CONE_MM + OVER_MM, y, Pen.FINE);
    double half = HEIGHT_MM / 2 + OVER_MM;
    s.line(rings - half, y, rings + half, y, Pen.FINE);
    s.line(rings, y - half, rings, y + half, Pen.FINE);
  }
}
