package dev.towerscribe.model;

import dev.towerscribe.quantity.Numbers;
import dev.towerscribe.quantity.Worded;
import java.util.List;
import java.util.function.ToDoubleFunction;

/**
 * A published rule for the least distance of a hole from an edge and from another hole. None of
 * them was written for a strut tower, and each is for steady loads; nobody knows the direction of a
 * bolt's load here, so of a rule's figures along and across the load the larger is taken.
 *
 * <p>Example: M8 in a hole of 9.0 mm, strict: 16.0 mm to an edge (two diameters) and 27.0 mm to the
 * next hole (three holes).
 */
public enum EdgeRule implements Worded {
  /** The strictest of the other three, figure by figure. */
  STRICT("", 0, 0, true),
  /**
   * Thin sheet of steel, the rule that a tower comes nearest to: EN 1993-1-3:2006 Table 8.4, bolts
   * from M6 in sheet of 0.75 mm to less than 3 mm. Edge 1.5 d0, its e2 across the load: its e1
   * along the load is only 1.0 d0, and is paid for with resistance. Spacing 3 d0, p1 and p2 alike.
   * The standard itself was not seen; the figures are second-hand, from a program that quotes the
   * table.
   */
  EN1993_1_3("EN 1993-1-3:2006 Table 8.4, second-hand", 1.5, 3.0, true),
  /**
   * Steel structures of thicker metal: EN 1993-1-8:2005 Table 3.3. Edge 1.2 d0, e1 and e2 alike;
   * spacing 2.4 d0, its p2 across the load, as p1 along it is 2.2 d0.
   */
  EN1993("EN 1993-1-8:2005 Table 3.3", 1.2, 2.4, true),
  /**
   * Edge 2 D, spacing 3 D: a rule for rivets in aircraft sheet, most of it aluminium (NAVEDTRA
   * 14018 ch. 13), taken for bolts in steel sheet by analogy.
   */
  TWO_DIAMETER("rivets in aircraft sheet, by analogy: NAVEDTRA 14018 ch. 13", 2.0, 3.0, false);

  /** Those with figures of their own; of two that ask for the same the first is named. */
  private static final List<EdgeRule> PUBLISHED = List.of(EN1993_1_3, EN1993, TWO_DIAMETER);

  private final String source;
  private final double edge;
  private final double spacing;
  private final boolean ofHole;

  /**
   * A rule.
   *
   * @param source citation
   * @param edge hole centre to edge, diameters
   * @param spacing between hole centres, diameters
   * @param ofHole whether those are diameters of the hole, or of the bolt
   */
  EdgeRule(String source, double edge, double spacing, boolean ofHole) {
    this.source = source;
    this.edge = edge;
    this.spacing = spacing;
    this.ofHole = ofHole;
  }

  @Override
  public String word() {
    return Worded.super.word().replace(' ', '-');
  }

  private double ownEdgeMm(double boltMm, double holeMm) {
    return edge * (ofHole ? holeMm : boltMm);
  }

  private double ownSpacingMm(double boltMm, double holeMm) {
    return spacing * (ofHole ? holeMm : boltMm);
  }

  /** The rule whose own figure counts: this one, or of the strictest the one that asks for most. */
  private EdgeRule governing(ToDoubleFunction<EdgeRule> ownMm) {
    if (this != STRICT) {
      return this;
    }
    EdgeRule most = PUBLISHED.get(0);
    for (EdgeRule rule : PUBLISHED) {
      most = ownMm.applyAsDouble(rule) > ownMm.applyAsDouble(most) ? rule : most;
    }
    return most;
  }

  private EdgeRule forEdge(double boltMm, double holeMm) {
    return governing(rule -> rule.ownEdgeMm(boltMm, holeMm));
  }

  private EdgeRule forSpacing(double boltMm, double holeMm) {
    return governing(rule -> rule.ownSpacingMm(boltMm, holeMm));
  }

  private String cited(double diameters) {
    return Numbers.plain(diameters, 1) + (ofHole ? " d0, " : " D, ") + source;
  }

  /**
   * Least distance from a hole's centre to an edge.
   *
   * @param boltMm nominal bolt diameter D
   * @param holeMm hole diameter d0
   * @return mm
   */
  public double edgeMm(double boltMm, double holeMm) {
    return forEdge(boltMm, holeMm).ownEdgeMm(boltMm, holeMm);
  }

  /**
   * Where {@link #edgeMm} comes from.
   *
   * @param boltMm nominal bolt diameter D
   * @param holeMm hole diameter d0
   * @return factor and citation of the rule that gives the figure
   */
  public String edgeSource(double boltMm, double holeMm) {
    EdgeRule rule = forEdge(boltMm, holeMm);
    return rule.cited(rule.edge);
  }

  /**
   * Least distance between two hole centres.
   *
   * @param boltMm nominal bolt diameter D, the larger of two
   * @param holeMm hole diameter d0, the larger of two
   * @return mm
   */
  public double spacingMm(double boltMm, double holeMm) {
    return forSpacing(boltMm, holeMm).ownSpacingMm(boltMm, holeMm);
  }

  /**
   * Where {@link #spacingMm} comes from.
   *
   * @param boltMm nominal bolt diameter D, the larger of two
   * @param holeMm hole diameter d0, the larger of two
   * @return factor and citation of the rule that gives the figure
   */
  public String spacingSource(double boltMm, double holeMm) {
    EdgeRule rule = forSpacing(boltMm, holeMm);
    return rule.cited(rule.spacing);
  }
}
