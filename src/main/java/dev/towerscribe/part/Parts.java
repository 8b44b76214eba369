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
  private Parts() {}

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
    LengthUnit units = job.job().units();
    List<Part> plates = new ArrayList<>();
    List<Part> sliders = new ArrayList<>();
    List<Finding> findings = new ArrayList<>();
    boolean alike = wanted.values().stream().distinct().count() == 1;
    Wanted any = wanted.values().iterator().next();
    if (alike && !any.plate().handed()) {
      add(any, Hand.BOTH, wanted.size(), units, plates, sliders, findings);
    } else {
      wanted.forEach((side, w) -> add(w, Hand.of(side), 1, units, plates, sliders, findings));
      if (alike && !sliders.isEmpty()) {
        Part slider =
            new PlateParts(any.plate(), any.fit(), units)
                .slider(Hand.BOTH, wanted.size())
                .orElseThrow();
        sliders.clear();
        sliders.add(slider);
      }
    }
    plates.addAll(sliders);
    findings.sort(Comparator.comparing(Finding::severity));
    return new JobParts(plates, findings);
  }

  private static void add(
      Wanted wanted,
      Hand hand,
      int quantity,
      LengthUnit units,
      List<Part> plates,
      List<Part> sliders,
      List<Finding> findings) {
    PlateParts parts = new PlateParts(wanted.plate(), wanted.fit(), units);
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
