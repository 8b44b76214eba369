package dev.towerscribe.finding;

import java.util.List;
import java.util.stream.Collectors;

/** A job file that cannot be used, with every fault found in it. */
public final class JobRejected extends Exception {
  private static final long serialVersionUID = 1L;

  private final transient List<Fault> faults;

  /**
   * Gathers the faults.
   *
   * @param faults at least one
   */
  public JobRejected(List<Fault> faults) {
    super(faults.stream().map(Fault::line).collect(Collectors.joining("\n")));
    this.faults = List.copyOf(faults);
    if (faults.isEmpty()) {
      throw new IllegalArgumentException("a rejected job has at least one fault");
    }
  }

  /**
   * Every fault, in the file's order where that is known.
   *
   * @return the faults, at least one
   */
  public List<Fault> faults() {
    return faults;
  }
}
