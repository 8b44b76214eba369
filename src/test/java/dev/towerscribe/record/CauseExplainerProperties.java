package dev.towerscribe.record;

import static org.assertj.core.api.Assertions.assertThat;
import static org.assertj.core.api.Assertions.within;

import dev.towerscribe.model.Job;
import dev.towerscribe.model.Side;
import dev.towerscribe.record.Explanation.Answer;
import java.util.Map;
import java.util.Optional;
import net.jqwik.api.ForAll;
import net.jqwik.api.Property;
import net.jqwik.api.Tag;
import net.jqwik.api.constraints.DoubleRange;

/** Whatever one thing is off, by however much: it is found again, with its figure. */
class CauseExplainerProperties {
  /** Share of a value that a fit may miss it by: steps of derivatives, rounding. */
  private static final double FOUND = 1e-4;

  private static final Job JOB = Visits.sureJob();

  private static double most(Cause cause) {
    return switch (cause) {
      case SETTING -> 24;
      case CASTER_SWING -> 0.24;
      default -> cause.believed(0, 0)[1];
    };
  }

  @Tag("more-tries")
  @Property(seed = "20261203")
  void aCauseOnBothSidesIsFoundAgain(
      @ForAll Cause cause, @ForAll @DoubleRange(min = -1, max = 1) double share) {
    double by = most(cause) * (cause == Cause.SETTING ? -Math.abs(share) : share);
    Explanation x =
        Visits.explanation(
            VisitEvaluator.of(
                JOB,
                Visits.visit(
                    Map.of(
                        Side.LEFT, Visits.wheel(JOB, Side.LEFT, cause, by, Visits.ALL),
                        Side.RIGHT, Visits.wheel(JOB, Side.RIGHT, cause, by, Visits.ALL)))),
            Optional.empty());
    if (x.answer() == Answer.NOTHING_TO_EXPLAIN) {
      assertThat(x.fits()).isEmpty();
      return;
    }
    CauseFit found =
        x.fits().stream()
            .filter(f -> f.cause() == cause && f.acting().size() == 2)
            .findFirst()
            .orElseThrow();
    assertThat(found.value()).isCloseTo(by, within(FOUND * most(cause)));
    assertThat(found.chiSquare()).isLessThan(1e-6);
    assertThat(found.explained()).isCloseTo(1, within(1e-6));
    assertThat(found.explains()).isTrue();
    assertThat(x.answer()).isIn(Answer.ONE_CAUSE, Answer.SEVERAL_CAUSES);
    // Nothing does better than what it was made by.
    assertThat(x.fits().get(0).chiSquare()).isLessThan(1e-6);
  }

  @Tag("more-tries")
  @Property(seed = "20261204")
  void aCauseOnOneSideIsFoundOnThatSideAndAmongBoth(
      @ForAll Cause cause,
      @ForAll Side side,
      @ForAll @DoubleRange(min = 0.5, max = 1) double share) {
    if (cause.isAcross()) {
      return;
    }
    double by = most(cause) * (cause == Cause.SETTING ? -share : share);
    Side other = side == Side.LEFT ? Side.RIGHT : Side.LEFT;
    Evaluation e =
        VisitEvaluator.of(
            JOB,
            Visits.visit(
                Map.of(
                    side, Visits.wheel(JOB, side, cause, by, Visits.ALL),
                    other, Visits.wheel(JOB, other, cause, 0, Visits.ALL))));
    assertThat(Visits.explanation(e, Optional.of(other)).answer())
        .isEqualTo(Answer.NOTHING_TO_EXPLAIN);
    Explanation own = Visits.explanation(e, Optional.of(side));
    if (own.answer() == Answer.NOTHING_TO_EXPLAIN) {
      return;
    }
    Explanation both = Visits.explanation(e, Optional.empty());
    for (Explanation x : java.util.List.of(own, both)) {
      assertThat(x.fits())
          .anySatisfy(
              f -> {
                assertThat(f.cause()).isEqualTo(cause);
                assertThat(f.acting()).containsExactly(side);
                assertThat(f.value()).isCloseTo(by, within(FOUND * most(cause)));
                assertThat(f.explains()).isTrue();
              });
    }
  }
}
