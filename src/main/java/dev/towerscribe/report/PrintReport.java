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
    List<Block> blocks = new ArrayList<>();
    blocks.add(
        Phrases.say(
            "Across is the level bar, along the paper's short side; along is the upright bar at the"
                + " left. If the two are swapped, nothing shows it."));
    blocks.add(table(r));
    blocks.add(
        Phrases.say(
            "%s, by %s for one reading. Skew is in degrees, positive where the upright bar leans"
                + " toward the level one.",
            Phrases.LIKELY_MEANS, lengths.with(r.uncertaintyMm())));
    if (r.farEndsMm().isEmpty()) {
      blocks.add(
          Phrases.say(
              "Without the reading from cross to cross the bars are taken to be square as drawn."));
    } else if (r.isSquare()) {
      blocks.add(Phrases.say("Square within the reading's error."));
    }
    proof.notes().forEach(note -> blocks.add(Phrases.say("LOOK: " + note)));
    if (r.isTrue()) {
      blocks.add(
          new Block.Verdict(
              hasJob
                  ? "True: tape it. Nothing needs changing."
                  : "True: this printer needs no correction.",
              List.of()));
    } else {
      blocks.add(new Block.Verdict(correction(proof.old()), List.of()));
      List<String> lines = new ArrayList<>(List.of("[print]"));
      lines.addAll(proof.figures().lines());
      blocks.add(new Block.FileLines(lines));
    }
    return new Report("Towerscribe print proof", lengths, blocks);
  }

  private static Block.Table table(PrintReading r) {
    Block.Table table =
        Block.Table.of("", "should read", "reads", "printed / nominal", Phrases.LIKELY)
            .plus(row("across", r.barAcrossMm(), r.acrossMm(), r.across(), r.acrossUncertainty()))
            .plus(row("along", r.barAlongMm(), r.alongMm(), r.along(), r.alongUncertainty()));
    if (r.farEndsMm().isPresent()) {
      table =
          table.plus(
              List.of(
                  words("far ends"),
                  length(Math.hypot(r.barAcrossMm(), r.barAlongMm())),
                  length(r.farEndsMm().get()),
                  words("skew " + Lengths.degrees(r.skew().orElseThrow())),
                  angle(r.skewUncertainty().orElseThrow())));
    }
    return table;
  }

  private static List<Cell> row(
      String name, double nominalMm, double readMm, double ratio, double sd) {
    return List.of(
        words(name),
        length(nominalMm),
        length(readMm),
        figure(Amount.Kind.RATIO, ratio),
        figure(Amount.Kind.RATIO, sd));
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
