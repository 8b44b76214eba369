package dev.towerscribe.geometry;

import dev.towerscribe.quantity.Tolerances;
import java.util.ArrayList;
import java.util.List;
import org.locationtech.jts.geom.Coordinate;
import org.locationtech.jts.geom.Geometry;
import org.locationtech.jts.geom.GeometryFactory;
import org.locationtech.jts.geom.LinearRing;
import org.locationtech.jts.geom.MultiPolygon;
import org.locationtech.jts.geom.Polygon;
import org.locationtech.jts.operation.buffer.BufferOp;
import org.locationtech.jts.operation.buffer.BufferParameters;
import org.locationtech.jts.operation.overlayng.OverlayNG;
import org.locationtech.jts.operation.overlayng.OverlayNGRobust;

/**
 * The operations of {@link Overlay} and {@link Offsets} on flattened boundaries by JTS, for the
 * rare case that the exact ones cannot close: right to a tenth of the flattening tolerance, {@link
 * Tolerances#FLATTEN_MM}, instead of to rounding. Results have straight edges only.
 */
final class FlattenedOverlay {
  private static final double SAG_MM = Tolerances.FLATTEN_MM / 10;
  private static final GeometryFactory FACTORY = new GeometryFactory();

  private FlattenedOverlay() {}

  static List<Contour> moved(Boundaries region, double leftMm) {
    double step = 4 * Math.asin(Math.sqrt(Math.min(1.0, SAG_MM / (2 * Math.abs(leftMm)))));
    int perQuarter = Math.max(1, (int) Math.ceil(Math.PI / 2 / step));
    BufferParameters parameters = new BufferParameters(perQuarter);
    parameters.setSimplifyFactor(1e-6);
    return contours(BufferOp.bufferOp(geometry(region, SAG_MM), -leftMm, parameters));
  }

  static List<Contour> overlay(Boundaries a, Boundaries b, OverlayKind kind) {
    int operation =
        switch (kind) {
          case INTERSECTION -> OverlayNG.INTERSECTION;
          case UNION -> OverlayNG.UNION;
          case MINUS -> OverlayNG.DIFFERENCE;
        };
    return contours(OverlayNGRobust.overlay(geometry(a, SAG_MM), geometry(b, SAG_MM), operation));
  }

  /** A region as polygons whose corners lie on its boundary. */
  static Geometry geometry(Boundaries region, double sagMm) {
    List<Polygon> polygons = new ArrayList<>();
    for (List<Contour> part : RegionParts.of(region)) {
      List<LinearRing> rings = part.stream().map(c -> ring(c.flattened(sagMm))).toList();
      LinearRing[] holes = rings.subList(1, rings.size()).toArray(LinearRing[]::new);
      polygons.add(FACTORY.createPolygon(rings.get(0), holes));
    }
    MultiPolygon all = FACTORY.createMultiPolygon(polygons.toArray(Polygon[]::new));
    return all.isValid() ? all : all.buffer(0);
  }

  static LinearRing ring(List<Vec2> points) {
    Coordinate[] closed = new Coordinate[points.size() + 1];
    for (int i = 0; i < closed.length; i++) {
      Vec2 p = points.get(i % points.size());
      closed[i] = new Coordinate(p.x(), p.y());
    }
    return FACTORY.createLinearRing(closed);
  }

  /** Polygons as boundaries of straight edges; whatever has no area is left out. */
  private static List<Contour> contours(Geometry geometry) {
    List<Contour> contours = new ArrayList<>();
    for (int i = 0; i < geometry.getNumGeometries(); i++) {
      if (geometry.getGeometryN(i) instanceof Polygon polygon && !polygon.isEmpty()) {
        contours.add(contour(polygon.getExteriorRing()));
        for (int h = 0; h < polygon.getNumInteriorRing(); h++) {
          contours.add(contour(polygon.getInteriorRingN(h)).reversed());
        }
      }
    }
    return contours;
  }

  private static Contour contour(LinearRing ring) {
    List<Vec2> points = new ArrayList<>();
    for (int i = 0; i + 1 < ring.getNumPoints(); i++) {
      Coordinate c = ring.getCoordinateN(i);
      points.add(new Vec2(c.x, c.y));
    }
    return Contour.polygon(points);
  }
}
