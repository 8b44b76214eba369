package dev.towerscribe.report;

import static dev.towerscribe.report.Cell.angle;
import static dev.towerscribe.report.Cell.figure;
import static dev.towerscribe.report.Cell.length;
import static dev.towerscribe.report.Cell.words;

import dev.towerscribe.geometry.PrintReading;
import dev.towerscribe.geometry.PrintScale;
import dev.towerscribe.quantity.Lengths;
import dev.towerscribe.quantity.Numbers;
import java.util.ArrayList;
import java.util.List;

/** What came of measuring a print. */
public final class PrintReport {
  private PrintReport() {}

  /**
   * The report of a print.
   *
   * @param proof what came of measuring it
   * @param hasJob whether the print was that of a job
   * @return the report
   */
  public static Report of(PrintProof proof, boolean hasJob) {
    PrintReading r = proof.reading();
    Lengths lengths = Lengths.in(proof.units());
    Blocks blocks =
        new Blocks()
            .say(
                "Across is the level bar, along the paper's short side; along is the upright bar"
                    + " at the left. If the two are swapped, nothing shows it.")
            .add(table(r))
            .say(
                "%s, by %s for one reading. Skew is in degrees, positive where the upright bar"
                    + " leans toward the level one.",
                Phrases.LIKELY_MEANS, lengths.with(r.uncertaintyMm()));
    if (r.farEndsMm().isEmpty()) {
      blocks.say(
          "Without the reading from cross to cross the bars are taken to be square as drawn.");
    } else if (r.isSquare()) {
      blocks.say("Square within the reading's error.");
    }
    proof.notes().forEach(note -> blocks.say("LOOK: " + note));
    String todo = hasJob ? "tape it. Nothing needs changing." : "this printer needs no correction.";
    blocks.add(
        new Block.Verdict(r.isTrue() ? "True: " + todo : correction(proof.old()), List.of()));
    if (!r.isTrue()) {
      List<String> lines = new ArrayList<>(List.of("[print]"));
      lines.addAll(proof.figures().lines());
      blocks.add(new Block.FileLines(lines));
    }
    return blocks.report("Towerscribe print proof", lengths);
  }

  private static Block.Table table(PrintReading r) {
    Block.Table table =
        Block.Table.of("", "should read", "reads", "printed / nominal", Lengths.LIKELY)
            .plus(row("across", r.barAcrossMm(), r.acrossMm(), r.across(), r.acrossUncertainty()))
            .plus(row("along", r.barAlongMm(), r.alongMm(), r.along(), r.alongUncertainty()));
    if (r.farEndsMm().isPresent()) {
      table =
          table.plus(
              words("far ends"),
              length(Math.hypot(r.barAcrossMm(), r.barAlongMm())),
              length(r.farEndsMm()),
              words("skew " + Lengths.degrees(r.skew().orElseThrow())),
              angle(r.skewUncertainty()));
    }
    return table;
  }

  private static List<Cell> row(
      String name, double nominalMm, double readMm, double ratio, double sd) {
    return List.of(
        words(name),
        length(nominalMm),
        length(readMm),
        figure(Amount.RATIO, ratio),
        figure(Amount.RATIO, sd));
  }

  private static String correction(PrintScale old) {
    return old.isTrue()
        ? "For the job file:"
        : "That page was drawn for a printer of %s across, %s along and skew %s deg; both together:"
            .formatted(
                Numbers.fixed(old.across(), 4),
                Numbers.fixed(old.along(), 4),
                Lengths.degrees(old.skew()));
  }

  /**
   * What to do with the next print.
   *
   * @param proof what came of measuring this one
   * @return a sentence
   */
  public static String again(PrintProof proof) {
    PrintReading r = proof.reading();
    Lengths lengths = Lengths.in(proof.units());
    return "Print again and measure again: the bars must now read %s%s within %s%s."
        .formatted(
            lengths.with(r.barAcrossMm()),
            r.barAlongMm() == r.barAcrossMm() ? "" : " and " + lengths.with(r.barAlongMm()),
            lengths.with(PrintReading.WITHIN * r.uncertaintyMm()),
            r.farEndsWithinMm()
                .map(
                    within ->
                        ", and their far ends %s within %s"
                            .formatted(
                                lengths.with(Math.hypot(r.barAcrossMm(), r.barAlongMm())),
                                lengths.with(within)))
                .orElse(""));
  }
}
