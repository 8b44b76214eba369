package dev.towerscribe.model;

import dev.towerscribe.quantity.Angle;
import dev.towerscribe.quantity.Numbers;
import java.util.List;
import java.util.Optional;

/**
 * A printer as a job file carries it: rounded to the file's decimals.
 *
 * @param across printed over nominal along the paper's short side
 * @param along printed over nominal along the paper's long side
 * @param skew how far the printed long side leans toward +across; left as it is where empty
 */
public record PrinterFigures(double across, double along, Optional<Angle> skew) {
  /** Half of the last decimal moves the far end of 200 mm by 0.001 mm. */
  private static final int SCALE_DECIMALS = 5;

  /** Half of the last decimal moves the far end of 200 mm by 0.002 mm. */
  private static final int SKEW_DECIMALS = 3;

  /** Rounds them. */
  public PrinterFigures {
    across = rounded(across, SCALE_DECIMALS);
    along = rounded(along, SCALE_DECIMALS);
    skew = skew.map(a -> Angle.ofDegrees(rounded(a.degrees(), SKEW_DECIMALS)));
  }

  private static double rounded(double value, int decimals) {
    return Double.parseDouble(Numbers.plain(value, decimals));
  }

  /**
   * As they are written under {@code [print]}.
   *
   * @return one or two lines without ends
   */
  public List<String> lines() {
    String scale = "scale = " + scaleWords();
    return skew.isPresent() ? List.of(scale, "skew = " + skewWords()) : List.of(scale);
  }

  /**
   * What is written behind {@code scale}.
   *
   * @return for instance "{ across = 1.013, along = 0.994 }"
   */
  public String scaleWords() {
    return "{ across = %s, along = %s }"
        .formatted(Numbers.pointed(across, SCALE_DECIMALS), Numbers.pointed(along, SCALE_DECIMALS));
  }

  /**
   * What is written behind {@code skew}, which must be there.
   *
   * @return degrees, for instance "0.4"
   */
  public String skewWords() {
    return Numbers.pointed(skew.orElseThrow().degrees(), SKEW_DECIMALS);
  }
}
