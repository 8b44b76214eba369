package dev.towerscribe.report.json;

import dev.towerscribe.geometry.Contour;
import dev.towerscribe.geometry.Region;
import dev.towerscribe.geometry.Vec2;
import dev.towerscribe.layout.Grip;
import dev.towerscribe.layout.JobLayout;
import dev.towerscribe.layout.SideLayout;
import dev.towerscribe.model.Packing;
import dev.towerscribe.model.Seating;
import dev.towerscribe.quantity.Tolerances;
import java.util.Comparator;
import java.util.List;

/**
 * A layout as data, format 1. Points are [fore, in]. Areas and lengths are those of the true arcs;
 * the points beside them are its corners, with arcs broken so finely that no chord departs by more
 * than {@link Tolerances#FLATTEN_MM}.
 */
public final class LayoutJson {
  private final Json json;

  private LayoutJson(Json json) {
    this.json = json;
  }

  /**
   * Writes a layout.
   *
   * @param layout any layout
   * @return one line of JSON with its line end
   */
  public static String of(JobLayout layout) {
    return Json.of(
        json -> json.head(layout.job().title()).sides(layout.sides(), new LayoutJson(json)::side));
  }

  private void side(SideLayout side) {
    json.objects(
        "holes",
        side.holes(),
        h -> {
          Grip grip = side.grip(h);
          json.put("name", h.name())
              .put("fore", h.at().x())
              .put("in", h.at().y())
              .put("diameter", h.diameterMm())
              .put("gap", side.rest().gapMm(h.at()))
              .put("grip", grip.gripMm())
              .put("bolt_length", grip.leastLengthMm());
        });
    Seating seating = side.job().seating();
    json.object(
        "seating",
        () -> {
          json.put("seat", seating.seat().word())
              .put("packing", seating.packing().map(Packing::word).orElse("none"))
              .put("rest", seating.restMm());
          json.points("contacts", side.rest().contacts());
        });
    json.object(
        "bearing",
        () ->
            json.put("fore", side.bearing().x())
                .put("in", side.bearing().y())
                .put("height", side.job().bearingHeightMm()));
    json.object(
        "cuts",
        () ->
            json.object("final", () -> cut(side.finalCut()))
                .object("rough", () -> cut(side.roughCut())));
    json.objects(
        "notches",
        side.notches(),
        n -> {
          json.put("bracket", n.bracket().name()).put("area", n.removed().area());
          boundary(n.removed());
          json.put("width_left", n.widthLeftMm());
        });
    json.objects(
        "spans",
        side.spans(),
        s ->
            json.put("from", s.from())
                .put("to", s.to())
                .put("centres", s.centresMm())
                .put("inside", s.insideMm())
                .put("outside", s.outsideMm()));
    json.findings(side.findings());
  }

  private void cut(Region cut) {
    json.put("area", cut.area()).put("length", cut.length());
    boundary(cut);
    if (cut.contours().size() == 1) {
      cut.contours()
          .get(0)
          .asCircle()
          .ifPresent(
              c ->
                  json.numbers("centre", c.centre().x(), c.centre().y())
                      .put("diameter", 2 * c.radius()));
    }
  }

  /**
   * The boundary of a region: {@code points} is its largest contour, and where there are more,
   * {@code boundaries} holds every one, outer ones counter-clockwise and holes clockwise.
   */
  private void boundary(Region region) {
    List<Contour> contours = region.contours();
    json.points(
        "points",
        contours.stream()
            .max(Comparator.comparingDouble(Contour::signedArea))
            .map(LayoutJson::corners)
            .orElse(List.of()));
    if (contours.size() > 1) {
      json.pointLists("boundaries", contours.stream().map(LayoutJson::corners).toList());
    }
  }

  private static List<Vec2> corners(Contour contour) {
    return contour.flattened(Tolerances.FLATTEN_MM);
  }
}
