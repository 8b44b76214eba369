package dev.towerscribe.job;

import dev.towerscribe.geometry.Contour;
import dev.towerscribe.geometry.Region;
import dev.towerscribe.geometry.Vec2;
import dev.towerscribe.model.Bracket;
import dev.towerscribe.model.Crown;
import dev.towerscribe.model.Defaults;
import dev.towerscribe.model.KeepOut;
import dev.towerscribe.model.Landmark;
import dev.towerscribe.model.Lean;
import dev.towerscribe.model.Lip;
import dev.towerscribe.model.SecondSkin;
import dev.towerscribe.model.Straightedge;
import dev.towerscribe.model.Tower;
import dev.towerscribe.quantity.Angle;
import dev.towerscribe.quantity.Tolerances;
import java.util.Optional;
import java.util.Set;

/** [tower]. */
final class TowerReader {
  private static final Optional<Vec2> ORIGIN = Optional.of(Vec2.ZERO);

  private TowerReader() {}

  static Optional<Tower> read(TableReader t) {
    var sheet = t.length("sheet", Limits.SHEET);
    var openingTable = t.table("opening");
    var opening = openingTable.flatMap(s -> closed(s, Limits.OPENING));
    var markTable = t.table("mark");
    var mark = markTable.flatMap(s -> closed(s, Limits.MARK));
    opening.ifPresent(shape -> aroundOrigin(openingTable.get(), shape));
    if (opening.isPresent() && mark.isPresent() && !contains(mark.get(), opening.get())) {
      markInsideOpening(markTable.get(), openingTable.get());
    }
    var lean = t.tableOrEmpty("lean").flatMap(TowerReader::lean);
    var crown = t.optionalTable("crown").flatMap(TowerReader::crown);
    var pivot = t.length("pivot_height", Limits.PIVOT_HEIGHT, 0.0);
    var boltingFace =
        t.optionalTable(Respelling.BOLTING_FACE).flatMap(s -> closed(s, Limits.BOLTING_FACE));
    var lip = t.optionalTable("lip").flatMap(l -> lip(l, opening));
    var secondSkin = t.optionalTable("second_skin").flatMap(TowerReader::secondSkin);
    var wall = t.optionalTable("wall").flatMap(s -> closed(s, Limits.BOLTING_FACE));
    var landmarks = t.named("landmark", 1, "landmarks", TowerReader::landmark);
    var straightedges = t.named("straightedge", 0, "straightedges", TowerReader::straightedge);
    var keepOuts = t.each("keepout", 0, "keep-outs", TowerReader::keepOut);
    var brackets = t.named("bracket", 0, "brackets", TowerReader::bracket);
    return t.closed(
        () ->
            new Tower(
                sheet.get(),
                opening.get(),
                mark.get(),
                lean.get(),
                crown,
                pivot.get(),
                boltingFace,
                wall,
                landmarks,
                straightedges,
                keepOuts,
                brackets,
                lip,
                secondSkin));
  }

  private static Optional<Contour> closed(TableReader s, AllowedRange size) {
    return ShapeReader.whole(s, ShapeReader.KINDS, size, Limits.PLAN, ORIGIN);
  }

  /** The strut rod stands in the opening, so the origin lies inside it. */
  private static void aroundOrigin(TableReader s, Contour opening) {
    if (!opening.encloses(Vec2.ZERO)) {
      s.fault(
          s.has("at") ? "at" : ShapeReader.kindOf(s),
          "an opening around [0, 0], the original strut rod centre",
          "Check its place and the signs of its points.");
    }
  }

  private static void markInsideOpening(TableReader mark, TableReader opening) {
    // Filed under the side's own key where only one of the two is: that is the one to fix.
    boolean mendOpening = isOverride(opening) && !isOverride(mark);
    TableReader s = mendOpening ? opening : mark;
    s.fault(
        ShapeReader.kindOf(s),
        mendOpening
            ? "an opening that lies inside the mark all round"
            : "a mark right round the opening",
        "The old mount's ring cannot be smaller than the hole: measure both again.");
  }

  private static boolean isOverride(TableReader shape) {
    String path = shape.origin(ShapeReader.kindOf(shape)).path();
    return path.startsWith("left.") || path.startsWith("right.");
  }

  private static boolean contains(Contour outer, Contour inner) {
    var out = outer.asCircle();
    var in = inner.asCircle();
    if (out.isPresent() && in.isPresent()) {
      double apart = out.get().centre().distanceTo(in.get().centre());
      return apart + in.get().radius() <= out.get().radius() + Tolerances.SAME_POINT_MM;
    }
    // Flattening can move either line by FLATTEN_MM, which leaves slivers along its length.
    double slivers = 2 * Tolerances.FLATTEN_MM * (inner.length() + outer.length());
    return Region.inside(inner).minus(Region.inside(outer)).area() <= slivers;
  }

  private static Optional<Lean> lean(TableReader l) {
    var inboard = l.angle("inboard", Limits.LEAN, Angle.ZERO);
    var rearward = l.angle("rearward", Limits.LEAN, Angle.ZERO);
    return l.closed(() -> new Lean(inboard.get(), rearward.get()));
  }

  private static Optional<Crown> crown(TableReader c) {
    var across = c.length("across", Limits.CROWN_ACROSS);
    var rise = c.length("rise", Limits.CROWN_RISE);
    if (across.isPresent() && rise.isPresent() && rise.get() > across.get() / 2) {
      c.fault(
          "rise",
          "at most half of across, " + c.atMost(across.get() / 2),
          "A dome cannot rise further: measure both again.");
    }
    return c.closed(() -> new Crown(across.get(), rise.get()));
  }

  private static Optional<Lip> lip(TableReader l, Optional<Contour> opening) {
    var turned = l.word("turned", Lip.Turned.class);
    var height = l.length("height", Limits.LIP_HEIGHT);
    var radius = l.length("radius", Limits.LIP_RADIUS);
    var flatTable = l.table("flat");
    var flat = flatTable.flatMap(s -> closed(s, Limits.MARK));
    if (opening.isPresent() && flat.isPresent() && !contains(flat.get(), opening.get())) {
      TableReader s = flatTable.get();
      s.fault(
          ShapeReader.kindOf(s),
          "a line right round the opening",
          "The flat begins outside the lip: measure both again.");
    }
    return l.closed(() -> new Lip(turned.get(), height.get(), radius.get(), flat.get()));
  }

  private static Optional<SecondSkin> secondSkin(TableReader s) {
    var sheet = s.length("sheet", Limits.SHEET);
    var apart = s.length("apart", Limits.SKINS_APART, 0.0);
    return s.closed(() -> new SecondSkin(sheet.get(), apart.get()));
  }

  private static Optional<Landmark> landmark(TableReader l, Set<String> names) {
    var name = l.uniqueName(names);
    var at = l.point("at", Limits.PLAN);
    var diameter = l.length("diameter", Limits.LANDMARK);
    return l.closed(() -> new Landmark(name.get(), at.get(), diameter.get()));
  }

  private static Optional<Straightedge> straightedge(TableReader s, Set<String> names) {
    var name = s.uniqueName(names);
    var from = s.point("from", Limits.PLAN);
    var to = s.point("to", Limits.PLAN);
    if (from.isPresent() && to.isPresent()) {
      double apart = from.get().distanceTo(to.get());
      if (!Limits.STRAIGHTEDGE.holds(apart)) {
        s.lengthFault(
            "to",
            Limits.STRAIGHTEDGE.words(s.unit()) + " from the other point",
            "Take two points further apart along the line.");
      }
    }
    return s.closed(() -> new Straightedge(name.get(), from.get(), to.get()));
  }

  private static Optional<KeepOut> keepOut(TableReader k) {
    var name = k.label("name", Limits.NAME, "keep-out");
    var outline =
        ShapeReader.read(
            k, ShapeReader.CIRCLE_OR_RING, Limits.KEEP_OUT, Limits.PLAN, Optional.empty());
    var margin = k.length("margin", Limits.MARGIN, Defaults.KEEP_OUT_MM);
    return k.closed(() -> new KeepOut(name.get(), outline.get(), margin.get()));
  }

  private static Optional<Bracket.Fastener> fastener(TableReader f) {
    var at = f.point("at", Limits.PLAN);
    var diameter = f.length("diameter", Limits.BRACKET_FASTENER);
    return f.closed(() -> new Bracket.Fastener(at.get(), diameter.get()));
  }

  private static Optional<Bracket> bracket(TableReader b, Set<String> names) {
    var name = b.uniqueName(names);
    var outline = ShapeReader.ring(b, "outline", Limits.BRACKET, Limits.PLAN);
    var underside = b.length("underside", Limits.UNDERSIDE);
    var least = b.length("least_width", Limits.LEAST_WIDTH);
    var fasteners = b.each("fasteners", 0, "fasteners", TowerReader::fastener);
    return b.closed(
        () -> new Bracket(name.get(), outline.get(), underside.get(), least.get(), fasteners));
  }
}
