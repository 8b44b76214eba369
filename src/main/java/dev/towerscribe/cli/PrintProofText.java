package dev.towerscribe.cli;

import dev.towerscribe.drawing.PrintReading;
import dev.towerscribe.job.PrintText;
import dev.towerscribe.quantity.Angle;
import dev.towerscribe.quantity.Numbers;
import dev.towerscribe.report.PrintProof;
import java.util.ArrayList;
import java.util.List;

/** A print proof in words. */
final class PrintProofText {
  private final TextLines text = new TextLines();
  private final PrintProof proof;

  private PrintProofText(PrintProof proof) {
    this.proof = proof;
  }

  /**
   * Writes what came of measuring a print.
   *
   * @param proof what came of it
   * @param hasJob whether the print was that of a job
   * @return lines ended by line feeds
   */
  static String of(PrintProof proof, boolean hasJob) {
    PrintProofText report = new PrintProofText(proof);
    report.all(hasJob);
    return report.text.toString();
  }

  private void all(boolean hasJob) {
    PrintReading r = proof.reading();
    text.line("Towerscribe print proof");
    text.line("");
    text.wrapped(
        "",
        "Across is the level bar, along the paper's short side; along is the upright bar at the"
            + " left. Nothing can show that the two were given the wrong way round.");
    List<List<String>> rows = new ArrayList<>();
    rows.add(List.of("", "should read", "reads", "printed / nominal", "+/-"));
    rows.add(row("across", r.barAcrossMm(), r.acrossMm(), four(r.across()), four(r.acrossDoubt())));
    rows.add(row("along", r.barAlongMm(), r.alongMm(), four(r.along()), four(r.alongDoubt())));
    r.farEndsMm()
        .ifPresent(
            d ->
                rows.add(
                    row(
                        "far ends",
                        Math.hypot(r.barAcrossMm(), r.barAlongMm()),
                        d,
                        "skew " + degrees(r.skew().orElseThrow()),
                        degrees(r.skewDoubt().orElseThrow()))));
    text.table(rows);
    text.line("");
    text.wrapped(
        "",
        "+/- is one standard deviation, from "
            + length(r.doubtMm())
            + " for one reading. Skew is positive where the upright bar leans toward the level"
            + " one.");
    if (r.farEndsMm().isEmpty()) {
      text.wrapped(
          "", "Without the reading from cross to cross the bars are taken to be square as drawn.");
    } else if (r.isSquare()) {
      text.wrapped("", "Square within the reading's error.");
    }
    proof.notes().forEach(note -> text.wrapped("", "LOOK: " + note));
    text.line("");
    if (r.isTrue()) {
      text.wrapped(
          "",
          hasJob
              ? "True: tape it. Nothing needs changing."
              : "True: this printer needs no correction.");
      return;
    }
    PrintText.Figures figures = proof.figures();
    if (!proof.old().isTrue()) {
      text.wrapped(
          "",
          "That page was drawn for a printer of "
              + four(proof.old().across())
              + " across, "
              + four(proof.old().along())
              + " along and skew "
              + degrees(proof.old().skew())
              + " deg; both together:");
    } else {
      text.line("For the job file:");
    }
    text.line("");
    text.line("[print]");
    figures.lines().forEach(text::line);
  }

  private List<String> row(
      String name, double nominalMm, double readMm, String result, String doubt) {
    return List.of(name, length(nominalMm), length(readMm), result, doubt);
  }

  /** What to do with the next print. */
  static String again(PrintProof proof) {
    PrintReading r = proof.reading();
    String words =
        "Print again and measure again: the bars must now read "
            + PrintCauses.length(r.barAcrossMm(), proof.units())
            + (r.barAlongMm() == r.barAcrossMm()
                ? ""
                : " and " + PrintCauses.length(r.barAlongMm(), proof.units()))
            + " within "
            + PrintCauses.length(PrintReading.WITHIN * r.doubtMm(), proof.units());
    return words
        + r.farEndsWithinMm()
            .map(
                within ->
                    ", and their far ends "
                        + PrintCauses.length(
                            Math.hypot(r.barAcrossMm(), r.barAlongMm()), proof.units())
                        + " within "
                        + PrintCauses.length(within, proof.units()))
            .orElse("")
        + ".";
  }

  private String length(double mm) {
    return PrintCauses.length(mm, proof.units());
  }

  private static String four(double ratio) {
    return Numbers.fixed(ratio, 4);
  }

  private static String degrees(Angle angle) {
    return Numbers.fixed(angle.degrees(), 2);
  }
}
