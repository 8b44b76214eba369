package dev.towerscribe.report.json;

import dev.towerscribe.geometry.PrintReading;
import dev.towerscribe.report.PrintProof;
import java.util.List;

/** What came of measuring a print as data, format 1. */
public final class PrintProofJson {
  private PrintProofJson() {}

  /**
   * Writes what came of measuring a print.
   *
   * @param proof what came of it
   * @param written whether the job file was changed
   * @return one line of JSON with its line end
   */
  public static String of(PrintProof proof, boolean written) {
    PrintReading r = proof.reading();
    return Json.of(
        json -> {
          begin(json, r, r.isTrue() ? "true" : "correct");
          json.object("measured", () -> measured(json, r));
          json.object(
              "drawn_for",
              () ->
                  json.put("across", proof.old().across())
                      .put("along", proof.old().along())
                      .put("skew", proof.old().skew()));
          if (!r.isTrue()) {
            json.object(
                "print",
                () -> {
                  json.put("across", proof.figures().across())
                      .put("along", proof.figures().along());
                  proof.figures().skew().ifPresent(a -> json.put("skew", a));
                });
          }
          json.strings("notes", proof.notes()).put("written", written);
        });
  }

  /**
   * Writes that a print is of no use.
   *
   * @param r what the calipers read
   * @param reasons why, in sentences
   * @return one line of JSON with its line end
   */
  public static String refused(PrintReading r, List<String> reasons) {
    return Json.of(
        json -> {
          begin(json, r, "refused");
          json.strings("reasons", reasons).put("written", false);
        });
  }

  private static void begin(Json json, PrintReading r, String verdict) {
    json.format().put("units", "mm").put("verdict", verdict);
    json.object("bars", () -> json.put("across", r.barAcrossMm()).put("along", r.barAlongMm()));
    json.object(
        "readings",
        () -> {
          json.put("across", r.acrossMm()).put("along", r.alongMm());
          r.farEndsMm().ifPresent(d -> json.put("far_ends", d));
        });
    json.put("doubt", r.uncertaintyMm());
  }

  private static void measured(Json json, PrintReading r) {
    figure(json, "across", r.across(), r.acrossUncertainty());
    figure(json, "along", r.along(), r.alongUncertainty());
    if (r.farEndsMm().isPresent()) {
      figure(
          json,
          "skew",
          r.skew().orElseThrow().degrees(),
          r.skewUncertainty().orElseThrow().degrees());
      json.put("square", r.isSquare());
    }
  }

  private static void figure(Json json, String key, double value, double plusMinus) {
    json.object(key, () -> json.put("figure", value).put("plus_minus", plusMinus));
  }
}
