package dev.towerscribe.record;

import dev.towerscribe.model.Side;
import dev.towerscribe.quantity.Worded;
import java.util.List;
import java.util.Optional;

/**
 * What the differences say of the model, for one wheel or for both together.
 *
 * @param side which wheel; empty for both
 * @param figures how many were compared
 * @param chiSquare of all their differences
 * @param outside figures outside two standard deviations
 * @param alreadyBefore figures that were off in the same way before the work
 * @param fits every cause that these figures can tell of, the best first; none if nothing is
 *     outside
 * @param answer what it comes to
 * @param say the same in sentences
 */
public record Explanation(
    Optional<Side> side,
    int figures,
    double chiSquare,
    List<Compared> outside,
    List<Compared> alreadyBefore,
    List<CauseFit> fits,
    Answer answer,
    List<String> say) {
  /** What the figures allow to be said. */
  public enum Answer implements Worded {
    /** Nothing is outside. */
    NOTHING_TO_EXPLAIN,
    /** One cause would explain all of it. */
    ONE_CAUSE,
    /** Several would, each by itself. */
    SEVERAL_CAUSES,
    /** Too few figures to tell causes apart. */
    TOO_FEW_FIGURES,
    /** No single one would. */
    NO_SINGLE_CAUSE
  }

  /** Copies the lists. */
  public Explanation {
    outside = List.copyOf(outside);
    alreadyBefore = List.copyOf(alreadyBefore);
    fits = List.copyOf(fits);
    say = List.copyOf(say);
  }

  /**
   * The causes that would do, the best first.
   *
   * @return perhaps none
   */
  public List<CauseFit> explaining() {
    return fits.stream().filter(CauseFit::explains).toList();
  }
}
