package dev.towerscribe.record;

import dev.towerscribe.model.Job;
import dev.towerscribe.quantity.Angle;
import dev.towerscribe.quantity.Lengths;
import java.util.ArrayList;
import java.util.List;
import java.util.Optional;
import java.util.stream.Collectors;

/** Whether a job, or the program, gives other predictions now than when a visit was recorded. */
public final class PredictionChange {
  /** Half the last digit that a record keeps, and as much again for rounding at a half. */
  private static final double SAME_DEG = 0.01;

  private static final int MOST_TOLD = 3;

  private PredictionChange() {}

  /**
   * Compares.
   *
   * @param job the job as it is
   * @param entry a visit of it
   * @return nothing, also of a visit that was struck, or one sentence without a full stop
   */
  public static List<String> of(Job job, Entry entry) {
    if (entry.visit().isEmpty() || entry.struck().isPresent()) {
      return List.of();
    }
    Evaluation now = VisitEvaluator.of(job, entry.visit().get());
    List<String> changed = new ArrayList<>();
    for (Entry.Figure f : entry.figures()) {
      Optional<Angle> predicted = now.of(f.side(), f.stage(), f.figure()).map(Compared::predicted);
      if (!same(f.predicted(), predicted)) {
        changed.add(
            "%s then %s, now %s".formatted(f.name(), words(f.predicted()), words(predicted)));
      }
    }
    if (changed.isEmpty()) {
      return List.of();
    }
    String told = changed.stream().limit(MOST_TOLD).collect(Collectors.joining("; "));
    int more = changed.size() - MOST_TOLD;
    return List.of(
        "the job has changed, or the program: predicted %s%s"
            .formatted(told, more > 0 ? "; and %s more".formatted(more) : ""));
  }

  private static boolean same(Optional<Angle> a, Optional<Angle> b) {
    return a.isPresent() == b.isPresent()
        && (a.isEmpty() || Math.abs(a.get().degrees() - b.get().degrees()) < SAME_DEG);
  }

  private static String words(Optional<Angle> angle) {
    return angle.map(Lengths::withDegrees).orElse("nothing");
  }
}
