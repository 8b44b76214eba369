package dev.towerscribe.alignment;

import dev.towerscribe.finding.Finding;
import dev.towerscribe.model.Side;
import dev.towerscribe.model.SideJob;
import java.util.List;
import java.util.Optional;
import java.util.function.ToDoubleFunction;

/**
 * One side's alignment: before the work, at the chosen setting, and at every setting that can be
 * told apart.
 *
 * @param job the side
 * @param estimate whether only the steering axis was measured
 * @param before before the work; absent if the linkage cannot get to ride height
 * @param at at the chosen setting; absent likewise
 * @param settings the index marks and both ends of the slot, ascending
 * @param strut what only measured points give
 * @param findings this side's findings, in the order they were made
 */
public record SideAlignment(
    SideJob job,
    boolean estimate,
    Optional<Reading> before,
    Optional<Reading> at,
    List<AtSetting> settings,
    Optional<StrutFigures> strut,
    List<Finding> findings) {
  /**
   * One place of the bearing.
   *
   * @param settingMm where along the slot
   * @param reading what a bay would read; absent if the linkage cannot get to ride height
   */
  public record AtSetting(double settingMm, Optional<Reading> reading) {}

  /** Copies the lists. */
  public SideAlignment {
    settings = List.copyOf(settings);
    findings = List.copyOf(findings);
  }

  /** The same with its findings. */
  SideAlignment with(List<Finding> found) {
    return new SideAlignment(job, estimate, before, at, settings, strut, found);
  }

  /**
   * Which side.
   *
   * @return side
   */
  public Side side() {
    return job.side();
  }

  /**
   * How much longer the damper is at the chosen setting, both at ride height: that much more bump
   * travel and less droop travel is left.
   *
   * @return mm; absent where one of both is not known
   */
  public Optional<Double> damperChangeMm() {
    return both(Pose::damperMm);
  }

  /**
   * How far this wheel's contact point moves out.
   *
   * @return mm; absent where one of both is not known
   */
  public Optional<Double> trackChangeMm() {
    return both(Pose::contactYMm);
  }

  private Optional<Double> both(ToDoubleFunction<Pose> figure) {
    Optional<Pose> old = before.flatMap(Reading::linkage);
    Optional<Pose> now = at.flatMap(Reading::linkage);
    return old.isPresent() && now.isPresent()
        ? Optional.of(figure.applyAsDouble(now.get()) - figure.applyAsDouble(old.get()))
        : Optional.empty();
  }
}
