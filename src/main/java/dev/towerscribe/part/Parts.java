package dev.towerscribe.part;

import dev.towerscribe.finding.Finding;
import dev.towerscribe.finding.Findings;
import dev.towerscribe.layout.JobLayout;
import dev.towerscribe.layout.SideLayout;
import dev.towerscribe.model.Fit;
import dev.towerscribe.model.Plate;
import dev.towerscribe.model.Side;
import dev.towerscribe.quantity.LengthUnit;
import dev.towerscribe.quantity.Lengths;
import java.util.ArrayList;
import java.util.Comparator;
import java.util.EnumMap;
import java.util.List;
import java.util.Map;

/** The plates and sliders that a job needs. */
public final class Parts {
  private final LengthUnit units;
  private final List<Part> plates = new ArrayList<>();
  private final List<Part> sliders = new ArrayList<>();
  private final List<Finding> findings = new ArrayList<>();

  private Parts(LengthUnit units) {
    this.units = units;
  }

  private record Wanted(Plate plate, Fit fit) {}

  /**
   * Resolves them. A handed plate is a part for each side, the right one mirrored from what the job
   * says of the right side; a plate that is not handed is one part for both sides, unless the sides
   * differ. A slider is alike in either hand.
   *
   * @param job the job, laid out
   * @return parts and findings; with a stop finding some part cannot be made as it is
   */
  public static JobParts of(JobLayout job) {
    Map<Side, Wanted> wanted = new EnumMap<>(Side.class);
    for (SideLayout side : job.sides().values()) {
      wanted.put(side.side(), new Wanted(side.job().plate(), side.job().holes().fit()));
    }
    return new Parts(job.job().units()).of(wanted);
  }

  private JobParts of(Map<Side, Wanted> wanted) {
    boolean alike = wanted.values().stream().distinct().count() == 1;
    Wanted any = wanted.values().iterator().next();
    if (alike && !any.plate().handed()) {
      add(any, Hand.BOTH, wanted.size());
    } else {
      wanted.forEach((side, w) -> add(w, Hand.of(side), 1));
      if (alike && !sliders.isEmpty()) {
        sliders.clear();
        made(any).slider(Hand.BOTH, wanted.size()).ifPresent(sliders::add);
      }
    }
    plates.addAll(sliders);
    findings.sort(Comparator.comparing(Finding::severity));
    return new JobParts(plates, findings);
  }

  private PlateParts made(Wanted wanted) {
    return new PlateParts(wanted.plate(), wanted.fit(), units);
  }

  private void add(Wanted wanted, Hand hand, int quantity) {
    PlateParts parts = made(wanted);
    Part plate = parts.plate(hand, quantity);
    boolean mirror = hand == Hand.RIGHT && wanted.plate().handed();
    plates.add(mirror ? plate.mirrored(hand) : plate);
    parts.slider(hand, quantity).ifPresent(sliders::add);
    Findings found = new Findings(hand.word(), Lengths.in(units));
    parts.judge(found);
    findings.addAll(found.gravestFirst());
  }

  /**
   * Whether two parts are mirror images of each other.
   *
   * @param one a part
   * @param other another
   * @return true if the second's shape is the first's with y negated
   */
  public static boolean areMirrored(Part one, Part other) {
    return one.kind() == other.kind()
        && other.features().equals(one.mirrored(other.hand()).features())
        && other.solid().equals(one.solid().mapped(Part.MIRROR));
  }
}
