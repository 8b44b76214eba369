package dev.towerscribe.drilled;

import dev.towerscribe.adjust.Propagation;
import java.util.List;
import java.util.Optional;

/**
 * Whether the plate goes on the holes as drilled.
 *
 * @param mating the test itself
 * @param slackSdMm +/- of its slack, from the uncertainties of places and sizes
 * @param enlargement what lets it on; empty where it goes on
 * @param play how far it can still be moved; empty where it does not go on
 */
public record PlateFit(
    PlateFitSolver mating,
    double slackSdMm,
    Optional<Enlargement> enlargement,
    Optional<Play> play) {
  /** The answer. */
  public enum Verdict {
    /** By more than two standard deviations. */
    GOES_ON("THE PLATE GOES ON"),
    /** By less: only offering it up tells. */
    CLOSE("TOO CLOSE TO TELL: OFFER THE PLATE UP"),
    /** It does not. */
    DOES_NOT("THE PLATE DOES NOT GO ON");

    private final String words;

    Verdict(String words) {
      this.words = words;
    }

    /**
     * In large words.
     *
     * @return capitals
     */
    public String words() {
      return words;
    }
  }

  /**
   * Tries the plate.
   *
   * @param pegs its bolts
   * @param covariance of the holes' places x1, y1, x2 ... and then of their diameters, mm2
   * @return how it goes on
   */
  static PlateFit of(List<BoltPlay> pegs, double[][] covariance) {
    PlateFitSolver mating = PlateFitSolver.of(pegs);
    int n = pegs.size();
    double[] by = new double[3 * n];
    for (int i = 0; i < n; i++) {
      by[2 * i] = mating.slackByHole(i).x();
      by[2 * i + 1] = mating.slackByHole(i).y();
      // A hole wider by one mm gives half a mm of play.
      by[2 * n + i] = mating.slackByPlay(i) / 2;
    }
    double sd = Propagation.sd(by, covariance);
    return new PlateFit(
        mating,
        sd,
        mating.goesOn() ? Optional.empty() : Optional.of(Enlargement.of(mating)),
        Play.of(mating));
  }

  /**
   * The answer: two standard deviations either way are too close to tell.
   *
   * @return the verdict
   */
  public Verdict verdict() {
    double slack = mating.slackMm();
    if (!mating.blocked().isEmpty() || slack < -2 * slackSdMm) {
      return Verdict.DOES_NOT;
    }
    return slack > 2 * slackSdMm || slackSdMm == 0 ? Verdict.GOES_ON : Verdict.CLOSE;
  }
}
