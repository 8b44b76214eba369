package dev.towerscribe.geometry;

import java.util.ArrayList;
import java.util.List;

/** The metal left between what is cut out of a flat part, and between that and its edge. */
public final class Webs {
  /** Stands for the part's outer edge in the place of a second cut-out. */
  public static final int EDGE = -1;

  private Webs() {}

  /**
   * What is left between two things.
   *
   * @param first a cut-out: its place among the part's cut-outs, followed by its bores
   * @param second a later one, or {@link #EDGE}
   * @param mm width of the metal in the face where it is least; zero where they touch, negative by
   *     how far they run into each other; for two outlines that are no circles, by the root of the
   *     area they share
   */
  public record Web(int first, int second, double mm) {}

  /**
   * Every web of a part, by place.
   *
   * @param part the part; its pieces may touch and cross
   * @return one for each cut-out and the edge, then one for each pair
   */
  public static List<Web> of(FlatSolid part) {
    List<Cavity> cavities = new ArrayList<>();
    part.cutouts().forEach(c -> cavities.add(new Cavity(c, c, 0, 0)));
    part.bores().forEach(b -> cavities.add(Cavity.of(b)));
    Region outline = Region.inside(part.outline());
    List<Web> webs = new ArrayList<>();
    for (int i = 0; i < cavities.size(); i++) {
      Cavity c = cavities.get(i);
      double mm = Math.min(within(outline, c.top), within(outline, c.under));
      webs.add(new Web(i, EDGE, mm));
    }
    for (int i = 0; i < cavities.size(); i++) {
      for (int j = i + 1; j < cavities.size(); j++) {
        webs.add(new Web(i, j, between(cavities.get(i), cavities.get(j), part.thicknessMm())));
      }
    }
    return webs;
  }

  /** What a cut-out takes up in either face, and how deep its widening goes down from there. */
  private record Cavity(Contour top, Contour under, double topDeepMm, double underDeepMm) {
    static Cavity of(Bore b) {
      Contour plain = Contour.circle(b.centre(), b.diameterMm() / 2);
      Contour wide = Contour.circle(b.centre(), b.widestMm() / 2);
      boolean fromTop = b.recess().map(Recess::fromTop).orElse(false);
      boolean fromUnder = b.recess().map(r -> !r.fromTop()).orElse(false);
      double deep = b.recess().map(r -> r.depthMm(b.diameterMm())).orElse(0.0);
      return new Cavity(
          fromTop ? wide : plain,
          fromUnder ? wide : plain,
          fromTop ? deep : 0,
          fromUnder ? deep : 0);
    }
  }

  private static double between(Cavity a, Cavity b, double thicknessMm) {
    double mm = Math.min(gap(a.top, b.top), gap(a.under, b.under));
    // Widenings of opposite faces meet if together they go right through.
    if (a.topDeepMm + b.underDeepMm >= thicknessMm) {
      mm = Math.min(mm, gap(a.top, b.under));
    }
    if (a.underDeepMm + b.topDeepMm >= thicknessMm) {
      mm = Math.min(mm, gap(a.under, b.top));
    }
    return mm;
  }

  private static double within(Region outline, Contour inner) {
    return inner
        .asCircle()
        .map(c -> outline.depth(c.centre()) - c.radius())
        .orElseGet(() -> outline.marginAround(Region.inside(inner)));
  }

  private static double gap(Contour a, Contour b) {
    var circleA = a.asCircle();
    var circleB = b.asCircle();
    if (circleA.isPresent() && circleB.isPresent()) {
      double apart = circleA.get().centre().distanceTo(circleB.get().centre());
      return apart - circleA.get().radius() - circleB.get().radius();
    }
    if (circleB.isPresent()) {
      return -Region.inside(a).depth(circleB.get().centre()) - circleB.get().radius();
    }
    if (circleA.isPresent()) {
      return gap(b, a);
    }
    return apart(Region.inside(a), Region.inside(b));
  }

  /** Two outlines that are no circles; overlap is given as an area. */
  private static double apart(Region a, Region b) {
    double mm = a.boundaryGap(b).mm();
    Region shared = mm > 0 ? Region.EMPTY : a.intersection(b);
    boolean inside =
        a.contains(b.contours().get(0).edges().get(0).start())
            || b.contains(a.contours().get(0).edges().get(0).start());
    if (mm > 0 && inside) {
      return -mm;
    }
    return shared.isEmpty() ? mm : -Math.sqrt(shared.area());
  }
}
