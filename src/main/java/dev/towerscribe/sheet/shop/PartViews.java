package dev.towerscribe.sheet.shop;

import dev.towerscribe.drawing.DimensionRequest;
import dev.towerscribe.drawing.Item;
import dev.towerscribe.drawing.Proof;
import dev.towerscribe.geometry.Bore;
import dev.towerscribe.geometry.Box;
import dev.towerscribe.geometry.Contour;
import dev.towerscribe.geometry.Vec2;
import dev.towerscribe.part.Feature;
import dev.towerscribe.part.Part;
import java.util.ArrayList;
import java.util.List;

/** The two views of a flat part: from above, and from its -y side. */
final class PartViews {
  private PartViews() {}

  /**
   * From above.
   *
   * @param part the part
   * @param sizes how lengths are written
   */
  record Above(Part part, DrawingLengths sizes) implements DrawingView {
    @Override
    public String caption() {
      return "VIEW FROM ABOVE";
    }

    @Override
    public Box bounds() {
      return part.solid().outline().bounds();
    }

    @Override
    public void draw(ViewPlacing at, List<Item> out) {
      PartPlan.draw(part.solid(), at, out);
    }

    @Override
    public List<Contour> outlines(ViewPlacing at) {
      return List.of(at.contour(part.solid().outline()));
    }

    @Override
    public void names(ViewPlacing at, List<Item> out) {
      HoleNames.add(part.features(), at, out);
    }

    @Override
    public List<DimensionRequest> wishes(ViewPlacing at) {
      return ViewDimensions.above(part, sizes, at);
    }

    /** Calculated from the features, not from the solid that is drawn. */
    @Override
    public List<Proof> proofs(ViewPlacing at) {
      List<Proof> proofs = new ArrayList<>();
      double k = at.factor();
      for (Feature f : part.features()) {
        if (f.edge().isEmpty()) {
          Vec2 page = at.origin().plus(f.centre().times(k));
          String name = f.kind().word() + " " + f.name();
          proofs.add(new Proof.RoundHole(name, page, f.diameterMm() * k / 2));
          f.recess()
              .map(r -> new Proof.RoundHole("recess of " + f.name(), page, r.diameterMm() * k / 2))
              .ifPresent(proofs::add);
        }
      }
      return proofs;
    }
  }

  /**
   * From the side.
   *
   * @param part the part
   * @param sizes how lengths are written
   */
  record Side(Part part, DrawingLengths sizes) implements DrawingView {
    @Override
    public String caption() {
      return "FROM THE SIDE";
    }

    @Override
    public boolean hasDatum() {
      return false;
    }

    @Override
    public Box bounds() {
      Box b = part.solid().outline().bounds();
      return new Box(b.minX(), 0, b.maxX(), part.solid().thicknessMm());
    }

    @Override
    public double dimensionRoomMm() {
      return sizes.both() ? 14 : 12;
    }

    @Override
    public void draw(ViewPlacing at, List<Item> out) {
      SideView.draw(part.solid(), at, out);
      DatumMark.below(at.point(new Vec2(datumX(), 0)), "A", out);
    }

    /** A place at the under face away from holes: the middle of the widest stretch without one. */
    private double datumX() {
      Box b = bounds();
      List<double[]> taken = new ArrayList<>();
      for (Bore bore : part.solid().bores()) {
        double r = bore.widestMm() / 2;
        taken.add(new double[] {bore.centre().x() - r, bore.centre().x() + r});
      }
      for (Contour c : part.solid().cutouts()) {
        taken.add(new double[] {c.bounds().minX(), c.bounds().maxX()});
      }
      taken.sort((p, q) -> Double.compare(p[0], q[0]));
      double from = b.minX();
      double best = b.minX();
      double widest = -1;
      for (double[] t : taken) {
        if (t[0] - from > widest) {
          widest = t[0] - from;
          best = (from + t[0]) / 2;
        }
        from = Math.max(from, t[1]);
      }
      return b.maxX() - from > widest ? (from + b.maxX()) / 2 : best;
    }

    @Override
    public List<DimensionRequest> wishes(ViewPlacing at) {
      Box b = bounds();
      Vec2 low = at.point(new Vec2(b.maxX(), 0));
      Vec2 high = at.point(new Vec2(b.maxX(), b.maxY()));
      List<String> words = sizes.lines(part.solid().thicknessMm());
      return List.of(DimensionRequest.Linear.vertical(low, high, true, words));
    }
  }
}
