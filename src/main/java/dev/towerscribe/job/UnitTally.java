package dev.towerscribe.job;

import dev.towerscribe.finding.Fault;
import dev.towerscribe.quantity.LengthUnit;
import dev.towerscribe.quantity.Numbers;
import java.util.ArrayList;
import java.util.HashSet;
import java.util.LinkedHashMap;
import java.util.List;
import java.util.Map;
import java.util.Set;

/**
 * Judges a unit by the plain lengths written in it. A length that is believable in this unit alone
 * speaks for it, one that is believable in the other alone speaks against it; what fits in both, or
 * in neither, says nothing. Inches in a millimetre file leave next to none that speak for it.
 */
final class UnitTally {
  /** One length against the unit is a slip of its own, and has a line of its own. */
  private static final int LEAST_AGAINST = 2;

  /** As many against it for one that speaks for it. */
  private static final int TIMES = 5;

  private static final double MM_PER_INCH = LengthUnit.INCH.toMm(1.0);

  private static final class Count {
    final LengthUnit unit;
    final List<String> against = new ArrayList<>();
    int speakFor;

    Count(LengthUnit unit) {
      this.unit = unit;
    }

    boolean isDoubtful() {
      return against.size() >= LEAST_AGAINST && against.size() >= TIMES * speakFor;
    }
  }

  private final Map<String, Count> counts = new LinkedHashMap<>();

  /** Both sides read what they share: each place counts once. */
  private final Set<String> seen = new HashSet<>();

  /** Counts a length that was written without a unit of its own. */
  void count(SourcePosition at, AllowedRange range, double written) {
    if (at.unit().isEmpty() || written == 0 || !seen.add(at.path())) {
      return;
    }
    LengthUnit unit = at.unit().get();
    boolean here = range.holds(unit.toMm(written));
    boolean there = range.holds(other(unit).toMm(written));
    Count count = counts.computeIfAbsent(at.said().key(), key -> new Count(unit));
    if (here && !there) {
      count.speakFor++;
    } else if (there && !here) {
      count.against.add(at.path());
    }
  }

  private static LengthUnit other(LengthUnit unit) {
    return unit == LengthUnit.MM ? LengthUnit.INCH : LengthUnit.MM;
  }

  /** The units that cannot be right, each as the one fault that stands for all its lengths'. */
  List<Fault> doubtful() {
    List<Fault> faults = new ArrayList<>();
    counts.forEach(
        (key, count) -> {
          if (count.isDoubtful()) {
            faults.add(fault(key, count));
          }
        });
    return faults;
  }

  private static Fault fault(String key, Count count) {
    String times = Numbers.plain(MM_PER_INCH, 0);
    String name = key.substring(Math.max(key.lastIndexOf('.'), key.lastIndexOf(' ')) + 1);
    return new Fault(
        key,
        "\"%s\"".formatted(count.unit.symbol()),
        "",
        ("Every length looks %s times too %s: is %s right? %s figures, %s among them, fit only"
                + " as %s.")
            .formatted(
                times,
                count.unit == LengthUnit.MM ? "small" : "large",
                name,
                count.against.size(),
                count.against.get(0),
                count.unit == LengthUnit.MM ? "inches" : "millimetres"));
  }
}
