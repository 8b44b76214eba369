package dev.towerscribe.layout;

import dev.towerscribe.geometry.Region;
import dev.towerscribe.model.CutRules;
import dev.towerscribe.model.SideJob;
import java.util.List;

/**
 * The two cut lines.
 *
 * @param finalCut the mark inset by what is kept, its inside corners rounded
 * @param roughCut the final cut inset again, rounded again
 * @param finished the opening once cut: the final cut, with the old opening where that reaches
 *     further
 * @param pieces how many separate pieces the mark's inset fell into; 1 when all is well
 */
public record Cuts(Region finalCut, Region roughCut, Region finished, int pieces) {
  /**
   * The cuts of a side, wherever its plate goes.
   *
   * @param job the side
   * @return its cuts
   */
  public static Cuts of(SideJob job) {
    return of(Region.inside(job.tower().mark()), Region.inside(job.tower().opening()), job.cut());
  }

  static Cuts of(Region mark, Region opening, CutRules rules) {
    // Rounding is an opening by a disc, which is one more inset and a growth: doing both insets at
    // once keeps a circle's radius exact.
    Region whole = mark.inset(rules.keepMm() + rules.cornerMm()).grown(rules.cornerMm());
    List<Region> parts = whole.parts();
    Region cut = parts.isEmpty() ? Region.EMPTY : parts.get(0);
    Region rough = Region.EMPTY;
    Region finished = opening;
    if (!cut.isEmpty()) {
      List<Region> inner =
          cut.inset(rules.roughMm() + rules.cornerMm()).grown(rules.cornerMm()).parts();
      rough = inner.isEmpty() ? Region.EMPTY : inner.get(0);
      finished = cut.marginAround(opening) >= 0 ? cut : cut.union(opening);
    }
    return new Cuts(cut, rough, finished, parts.size());
  }
}
