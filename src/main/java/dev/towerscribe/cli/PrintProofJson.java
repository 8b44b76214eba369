package dev.towerscribe.cli;

import dev.towerscribe.drawing.PrintReading;
import java.util.List;

/** A print proof as data: one JSON object, format 1, mm and degrees whatever the job's units. */
final class PrintProofJson {
  private static final int FORMAT = 1;

  private PrintProofJson() {}

  /**
   * Writes what came of measuring a print.
   *
   * @param proof what came of it
   * @param written whether the job file was changed
   * @return one line of JSON with its line end
   */
  static String of(PrintProof proof, boolean written) {
    PrintReading r = proof.reading();
    JsonWriter json = new JsonWriter();
    begin(json, r, r.isTrue() ? "true" : "correct");
    json.key("measured").beginObject();
    figure(json, "across", r.across(), r.acrossDoubt());
    figure(json, "along", r.along(), r.alongDoubt());
    if (r.farEndsMm().isPresent()) {
      figure(json, "skew", r.skew().orElseThrow().degrees(), r.skewDoubt().orElseThrow().degrees());
      json.key("square").value(r.isSquare());
    }
    json.endObject();
    json.key("drawn_for").beginObject();
    json.key("across").value(proof.old().across());
    json.key("along").value(proof.old().along());
    json.key("skew").value(proof.old().skew().degrees()).endObject();
    if (!r.isTrue()) {
      json.key("print").beginObject();
      json.key("across").value(proof.figures().across());
      json.key("along").value(proof.figures().along());
      proof.figures().skew().ifPresent(a -> json.key("skew").value(a.degrees()));
      json.endObject();
    }
    json.key("notes").beginArray();
    proof.notes().forEach(json::value);
    json.endArray();
    json.key("written").value(written).endObject();
    return json + "\n";
  }

  /**
   * Writes that a print is of no use.
   *
   * @param r what the calipers read
   * @param reasons why, in sentences
   * @return one line of JSON with its line end
   */
  static String refused(PrintReading r, List<String> reasons) {
    JsonWriter json = new JsonWriter();
    begin(json, r, "refused");
    json.key("reasons").beginArray();
    reasons.forEach(json::value);
    json.endArray();
    json.key("written").value(false).endObject();
    return json + "\n";
  }

  private static void begin(JsonWriter json, PrintReading r, String verdict) {
    json.beginObject().key("format").value(FORMAT);
    json.key("units").value("mm");
    json.key("verdict").value(verdict);
    json.key("bars").beginObject();
    json.key("across").value(r.barAcrossMm());
    json.key("along").value(r.barAlongMm()).endObject();
    json.key("readings").beginObject();
    json.key("across").value(r.acrossMm());
    json.key("along").value(r.alongMm());
    r.farEndsMm().ifPresent(d -> json.key("far_ends").value(d));
    json.endObject();
    json.key("doubt").value(r.doubtMm());
  }

  private static void figure(JsonWriter json, String name, double value, double plusMinus) {
    json.key(name).beginObject().key("figure").value(value);
    json.key("plus_minus").value(plusMinus).endObject();
  }
}
