package dev.towerscribe.cli;

import dev.towerscribe.finding.Finding;
import dev.towerscribe.geometry.Contour;
import dev.towerscribe.geometry.Region;
import dev.towerscribe.geometry.Vec2;
import dev.towerscribe.layout.JobLayout;
import dev.towerscribe.layout.Notch;
import dev.towerscribe.layout.PlacedHole;
import dev.towerscribe.layout.SideLayout;
import dev.towerscribe.layout.Span;
import dev.towerscribe.model.Side;
import dev.towerscribe.quantity.Tolerances;
import java.util.Comparator;
import java.util.List;
import java.util.Map;

/**
 * A layout as data: one JSON object, format 1. Lengths are millimetres and points are [fore, in]
 * whatever the job's units. Areas and lengths are those of the true arcs; the points beside them
 * are its corners, with arcs broken so finely that no chord departs by more than {@link
 * Tolerances#FLATTEN_MM}.
 */
final class ResultsJson {
  private static final int FORMAT = 1;

  private final JsonWriter json = new JsonWriter();

  private ResultsJson() {}

  /**
   * Writes a layout.
   *
   * @param layout any layout
   * @return one line of JSON with its line end
   */
  static String of(JobLayout layout) {
    ResultsJson results = new ResultsJson();
    results.job(layout);
    return results.json + "\n";
  }

  private void job(JobLayout layout) {
    json.beginObject();
    json.key("format").value(FORMAT);
    json.key("title").value(layout.job().title());
    json.key("units").value("mm");
    json.key("sides").beginObject();
    for (Map.Entry<Side, SideLayout> side : layout.sides().entrySet()) {
      json.key(side.getKey().word());
      side(side.getValue());
    }
    json.endObject().endObject();
  }

  private void side(SideLayout side) {
    json.beginObject();
    json.key("holes").beginArray();
    for (PlacedHole hole : side.holes()) {
      json.beginObject().key("name").value(hole.name());
      json.key("fore").value(hole.at().x()).key("in").value(hole.at().y());
      json.key("diameter").value(hole.diameterMm()).endObject();
    }
    json.endArray();
    json.key("bearing").beginObject();
    json.key("fore").value(side.bearing().x()).key("in").value(side.bearing().y());
    json.key("height").value(side.job().plate().bearingHeightMm()).endObject();
    json.key("cuts").beginObject();
    json.key("final");
    cut(side.finalCut());
    json.key("rough");
    cut(side.roughCut());
    json.endObject();
    json.key("notches").beginArray();
    for (Notch notch : side.notches()) {
      json.beginObject().key("bracket").value(notch.bracket().name());
      json.key("area").value(notch.removed().area());
      boundary(notch.removed());
      json.key("width_left").value(notch.widthLeftMm()).endObject();
    }
    json.endArray();
    json.key("spans").beginArray();
    for (Span span : side.spans()) {
      json.beginObject().key("from").value(span.from()).key("to").value(span.to());
      json.key("centres").value(span.centresMm()).key("inside").value(span.insideMm());
      json.key("outside").value(span.outsideMm()).endObject();
    }
    json.endArray();
    json.key("findings").beginArray();
    for (Finding finding : side.findings()) {
      finding(json, finding);
    }
    json.endArray().endObject();
  }

  private void cut(Region cut) {
    json.beginObject();
    json.key("area").value(cut.area()).key("length").value(cut.length());
    boundary(cut);
    if (cut.contours().size() == 1) {
      cut.contours()
          .get(0)
          .asCircle()
          .ifPresent(
              circle -> {
                json.key("centre");
                point(circle.centre());
                json.key("diameter").value(2 * circle.radius());
              });
    }
    json.endObject();
  }

  /**
   * The boundary of a region: {@code points} is its largest contour, and where there are more,
   * {@code boundaries} holds every one, outer ones counter-clockwise and holes clockwise.
   */
  private void boundary(Region region) {
    List<Contour> contours = region.contours();
    json.key("points");
    contours.stream()
        .max(Comparator.comparingDouble(Contour::signedArea))
        .ifPresentOrElse(this::points, () -> json.beginArray().endArray());
    if (contours.size() > 1) {
      json.key("boundaries").beginArray();
      contours.forEach(this::points);
      json.endArray();
    }
  }

  private void points(Contour contour) {
    json.beginArray();
    contour.flattened(Tolerances.FLATTEN_MM).forEach(this::point);
    json.endArray();
  }

  private void point(Vec2 p) {
    json.beginArray().value(p.x()).value(p.y()).endArray();
  }

  /** A finding as an object. */
  static void finding(JsonWriter json, Finding finding) {
    json.beginObject().key("id").value(finding.id());
    json.key("severity").value(finding.severity().word());
    json.key("where").value(finding.where());
    json.key("figure").value(finding.figure()).key("limit").value(finding.limit());
    json.key("unit").value(finding.unit()).key("source").value(finding.source());
    json.key("say").value(finding.say()).endObject();
  }
}
