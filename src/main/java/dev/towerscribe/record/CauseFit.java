package dev.towerscribe.record;

import dev.towerscribe.model.Side;
import java.util.List;
import java.util.Optional;

/**
 * One cause fitted to the differences by weighted least squares.
 *
 * @param cause the cause
 * @param acting the wheels it acts on
 * @param value its figure: mm, radians or a share, by the cause's kind
 * @param plusMinus one standard deviation of that
 * @param from least value that is plausible
 * @param to greatest
 * @param chiSquare what is left of chi-square with it
 * @param explained share of chi-square that it takes away, 0 to 1
 * @param leaves figures that stay outside two standard deviations with it, by name
 * @param say what it would be, a clause: "the bearing at setting 4 mm, not 16 mm"
 * @param hint what the figure looks like, if anything: "about what ..."
 */
public record CauseFit(
    Cause cause,
    List<Side> acting,
    double value,
    double plusMinus,
    double from,
    double to,
    double chiSquare,
    double explained,
    List<String> leaves,
    String say,
    Optional<String> hint) {
  /** Share of the range that rounding may take a fitted value past its ends. */
  private static final double ROUNDING = 1e-9;

  /** Copies the lists. */
  public CauseFit {
    acting = List.copyOf(acting);
    leaves = List.copyOf(leaves);
  }

  /**
   * Whether the figure is plausible.
   *
   * @return true within the range
   */
  public boolean plausible() {
    double rounding = ROUNDING * (to - from);
    return value >= from - rounding && value <= to + rounding;
  }

  /**
   * Whether it would do: a figure that is plausible, and nothing left outside.
   *
   * @return true if both
   */
  public boolean explains() {
    return plausible() && leaves.isEmpty();
  }
}
