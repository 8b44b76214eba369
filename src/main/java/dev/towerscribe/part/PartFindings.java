package dev.towerscribe.part;

import dev.towerscribe.finding.Finding;
import dev.towerscribe.finding.Severity;
import dev.towerscribe.geometry.FlatSolid;
import dev.towerscribe.geometry.Webs;
import dev.towerscribe.quantity.LengthUnit;
import dev.towerscribe.quantity.Numbers;
import dev.towerscribe.quantity.Tolerances;
import java.util.ArrayList;
import java.util.Comparator;
import java.util.HashSet;
import java.util.List;
import java.util.Set;

/** Gathers the findings of one part. */
final class PartFindings {
  /** The mark on a limit that rests on no published source. */
  static final String PRACTICE = "common practice, no source";

  private final String owner;
  private final LengthUnit units;
  private final List<Finding> list = new ArrayList<>();
  private final Set<String> ids = new HashSet<>();

  /**
   * For one part.
   *
   * @param owner first word of its ids: a side, or "both"
   * @param units the job's unit, for sentences
   */
  PartFindings(String owner, LengthUnit units) {
    this.owner = owner;
    this.units = units;
  }

  /** A length and its limit, mm, with what to say. */
  void add(String check, Severity severity, String where, double mm, double limitMm, String say) {
    list.add(new Finding(id(check), severity, where, mm, limitMm, "mm", PRACTICE, say));
  }

  /** A count and its limit, with what to say. */
  void count(String check, Severity severity, String where, int found, int limit, String say) {
    list.add(new Finding(id(check), severity, where, found, limit, "", PRACTICE, say));
  }

  /** An id that no other finding has: things may be alike but for what an id cannot hold. */
  private String id(String check) {
    String id = owner + "." + check;
    for (int again = 2; !ids.add(id); again++) {
      id = owner + "." + check + "-" + again;
    }
    return id;
  }

  /**
   * Judges the metal between all that is cut out of a part, and between that and its edge.
   *
   * @param check first words of the ids: "part" or "jig"
   * @param solid the part
   * @param names what is cut out, in the solid's order
   * @param leastMm width below which a web is thin
   * @return false if some of it touches or crosses
   */
  boolean webs(String check, FlatSolid solid, List<String> names, double leastMm) {
    boolean whole = true;
    for (Webs.Web web : Webs.of(solid)) {
      if (web.mm() >= leastMm - Tolerances.COMPUTED_MM) {
        continue;
      }
      String other = web.second() == Webs.EDGE ? "outer edge" : names.get(web.second());
      String first = names.get(web.first());
      String thing = slug(first) + "." + slug(other);
      String where = first + ", " + other;
      if (web.mm() <= Tolerances.SAME_POINT_MM) {
        whole = false;
        add(
            check + "-clash." + thing,
            Severity.STOP,
            where,
            web.mm(),
            0.0,
            first + " and " + other + " run into each other: no such part can be made. Move one.");
      } else {
        add(
            check + "-web." + thing,
            Severity.CAUTION,
            where,
            web.mm(),
            leastMm,
            length(web.mm())
                + " of metal between "
                + first
                + " and "
                + other
                + "; at least "
                + length(leastMm)
                + " is usual. Move one, or make one smaller.");
      }
    }
    return whole;
  }

  /** A length in the job's unit, for sentences. */
  String length(double mm) {
    return length(mm, units);
  }

  static String length(double mm, LengthUnit units) {
    return Numbers.fixed(units.fromMm(mm), units == LengthUnit.MM ? 2 : 3) + " " + units.symbol();
  }

  /** A name as part of an id. */
  static String slug(String name) {
    String slug = name.replaceAll("[^A-Za-z0-9]+", "-").replaceAll("^-|-$", "");
    return slug.isEmpty() ? "unnamed" : slug;
  }

  List<Finding> gravestFirst() {
    List<Finding> sorted = new ArrayList<>(list);
    sorted.sort(Comparator.comparing(Finding::severity));
    return sorted;
  }
}
