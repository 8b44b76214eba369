package dev.towerscribe.drilled;

import dev.towerscribe.finding.Finding;
import dev.towerscribe.finding.Severity;
import dev.towerscribe.model.Side;
import dev.towerscribe.quantity.LengthUnit;
import dev.towerscribe.quantity.Numbers;
import java.util.ArrayList;
import java.util.Comparator;
import java.util.List;

/** Gathers the findings of one drilled tower; every id begins with {@code side.drilled-}. */
final class DrilledFindings {
  /** The mark on a limit that rests on no published source. */
  static final String PRACTICE = "common practice, no source";

  /** The mark on a limit of our own. */
  static final String OURS = "our own choice, no source";

  private final Side side;
  private final LengthUnit units;
  private final List<Finding> list = new ArrayList<>();

  DrilledFindings(Side side, LengthUnit units) {
    this.side = side;
    this.units = units;
  }

  /** What a finding is about. */
  record What(String check, String where, double figure, double limit, String unit, String source) {
    static What length(String check, String where, double mm, double limitMm, String source) {
      return new What(check, where, mm, limitMm, "mm", source);
    }

    /** For a finding in words alone. */
    static What words(String check, String where, String source) {
      return new What(check, where, 0, 0, "", source);
    }
  }

  void add(What what, Severity severity, String say) {
    String id = unique(side.word() + ".drilled-" + what.check());
    list.add(
        new Finding(
            id,
            severity,
            what.where(),
            what.figure(),
            what.limit(),
            what.unit(),
            what.source(),
            say));
  }

  /** A finding of the plan's own checks, made again of what was drilled. */
  void again(Finding f) {
    String check = f.id().substring(f.id().indexOf('.') + 1);
    add(
        new What(check, f.where(), f.figure(), f.limit(), f.unit(), f.source()),
        f.severity(),
        "As drilled: " + f.say());
  }

  /** Two readings may have one name: the second is told apart by a number. */
  private String unique(String id) {
    String free = id;
    for (int n = 2; taken(free); n++) {
      free = id + "-" + n;
    }
    return free;
  }

  private boolean taken(String id) {
    return list.stream().anyMatch(f -> f.id().equals(id));
  }

  /** A name as part of an id: letters and digits kept, the rest hyphens. */
  static String slug(String name) {
    String slug = name.replaceAll("[^A-Za-z0-9]+", "-").replaceAll("^-|-$", "");
    return slug.isEmpty() ? "unnamed" : slug;
  }

  /** A length in the job's unit, for sentences. */
  String length(double mm) {
    return Numbers.fixed(units.fromMm(mm), units == LengthUnit.MM ? 2 : 3) + " " + units.symbol();
  }

  List<Finding> gravestFirst() {
    List<Finding> sorted = new ArrayList<>(list);
    sorted.sort(Comparator.comparing(Finding::severity));
    return sorted;
  }
}
