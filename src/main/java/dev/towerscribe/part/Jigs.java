package dev.towerscribe.part;

import dev.towerscribe.finding.About;
import dev.towerscribe.finding.Findings;
import dev.towerscribe.finding.Severity;
import dev.towerscribe.finding.Sources;
import dev.towerscribe.geometry.Bore;
import dev.towerscribe.geometry.Contour;
import dev.towerscribe.geometry.FlatSolid;
import dev.towerscribe.geometry.Frame2;
import dev.towerscribe.geometry.Region;
import dev.towerscribe.geometry.Vec2;
import dev.towerscribe.geometry.Webs;
import dev.towerscribe.layout.PlacedHole;
import dev.towerscribe.layout.SideLayout;
import dev.towerscribe.model.Bracket;
import dev.towerscribe.model.Crown;
import dev.towerscribe.model.GeneralTolerance;
import dev.towerscribe.model.HoleFit;
import dev.towerscribe.model.JigRules;
import dev.towerscribe.model.Landmark;
import dev.towerscribe.model.PlateMake;
import dev.towerscribe.model.Side;
import dev.towerscribe.model.Stated;
import dev.towerscribe.model.Tower;
import dev.towerscribe.quantity.LengthUnit;
import dev.towerscribe.quantity.Lengths;
import java.util.ArrayList;
import java.util.Comparator;
import java.util.List;
import java.util.Optional;
import java.util.stream.Stream;

/**
 * Drilling jigs: a flat plate that lies on a tower, is set over its landmarks with pins, and guides
 * the first drill of every hole through a bushing.
 */
public final class Jigs {
  /**
   * Gap under the jig on a dome past which a drill is badly guided (common practice, no source).
   */
  private static final double GAP_MM = 1.0;

  private final SideLayout side;
  private final JigRules rules;
  private final Lengths lengths;
  private final Findings findings;
  private final Frame2 frame;
  private final Stated<Double> outside;

  private Jigs(SideLayout side, JigRules rules, LengthUnit units) {
    this.side = side;
    this.rules = rules;
    this.lengths = Lengths.in(units);
    this.findings = new Findings(side.side().word(), lengths);
    this.frame = fromPlan(side.side());
    this.outside =
        rules
            .outsideMm()
            .map(Stated::given)
            .orElseGet(() -> Stated.assumed(Bushings.outsideMm(rules.boreMm().value())));
  }

  /**
   * Plan to the frame of a jig that lies on its tower and is seen from above with forward up:
   * inboard is to the right on the left tower and to the left on the right one.
   *
   * @param side which tower
   * @return the map; a reflection on the left, as (fore, in) is left-handed seen from above there
   */
  public static Frame2 fromPlan(Side side) {
    double right = side == Side.LEFT ? 1.0 : -1.0;
    return new Frame2(Vec2.ZERO, new Vec2(0, 1), new Vec2(right, 0));
  }

  /**
   * The jig of a tower.
   *
   * @param side the tower, laid out
   * @param rules how jigs are made; a bore of at most 26 mm unless it gives the outside as well
   * @param units the job's unit, for sentences
   * @return the jig, or why there is none
   */
  public static SideJig of(SideLayout side, JigRules rules, LengthUnit units) {
    Jigs jig = new Jigs(side, rules, units);
    Optional<Part> part = jig.part();
    return new SideJig(side.side(), part, jig.frame, jig.outside, jig.findings.gravestFirst());
  }

  private double leastWebMm() {
    return rules.marginMm().value() / 2;
  }

  private Optional<Part> part() {
    List<Feature> features = new ArrayList<>();
    List<String> names = new ArrayList<>();
    boolean guided = true;
    for (PlacedHole hole : side.holes()) {
      features.add(bushing(hole));
      names.add("bushing " + hole.name());
      guided &= drillFits(hole);
    }
    for (Landmark landmark : side.job().tower().landmarks()) {
      features.add(sight(landmark));
      names.add("sight hole " + landmark.name());
    }
    List<Bore> bores = features.stream().map(f -> Bore.plain(f.centre(), f.diameterMm())).toList();
    Contour outline = outline(bores);
    double thickness = rules.thicknessMm().value();
    FlatSolid bare = new FlatSolid(outline, thickness, List.of(), bores);
    boolean whole = WebCheck.passes(findings, "jig", bare, names, leastWebMm());
    around(Region.inside(outline));
    if (!whole || !guided) {
      return Optional.empty();
    }
    FlatSolid solid = bare;
    Optional<Contour> window = window(bare);
    if (window.isPresent()) {
      Contour edge = window.get();
      boolean round = edge.asCircle().isPresent();
      solid = withWindow(bare, edge);
      features.add(round ? features.size() : 0, window(edge));
    } else {
      findings.add(
          "jig-window",
          Severity.NOTE,
          About.mm("jig", 0, 0, Sources.PRACTICE),
          "No window: neither the final cut nor the opening leaves enough metal round it.");
    }
    return Optional.of(
        new Part(
            side.side().word() + " drilling jig",
            PartKind.JIG,
            Hand.of(side.side()),
            1,
            solid,
            features,
            Stated.assumed("steel"),
            Stated.assumed("deburr, degrease"),
            Stated.assumed(0.5),
            Stated.assumed(GeneralTolerance.FINE),
            Stated.assumed(PlateMake.STEEL_G_PER_CM3),
            assumed()));
  }

  private static FlatSolid withWindow(FlatSolid bare, Contour edge) {
    List<Bore> bores = new ArrayList<>(bare.bores());
    List<Contour> cutouts = new ArrayList<>();
    edge.asCircle()
        .ifPresentOrElse(
            c -> bores.add(Bore.plain(c.centre(), 2 * c.radius())), () -> cutouts.add(edge));
    return new FlatSolid(bare.outline(), bare.thicknessMm(), cutouts, bores);
  }

  private Contour outline(List<Bore> bores) {
    double widest = bores.stream().mapToDouble(Bore::diameterMm).max().orElseThrow();
    return Contour.hullOfDiscs(
        bores.stream().map(Bore::centre).toList(), widest / 2 + rules.marginMm().value());
  }

  private Feature bushing(PlacedHole hole) {
    Bore bore = Bore.plain(frame.map(hole.at()), outside.value());
    String drill = lengths.size(rules.boreMm().value());
    return Feature.round(
        FeatureKind.BUSHING_HOLE,
        hole.name(),
        bore,
        Fits.hole(rules.fit().value(), bore.diameterMm()),
        "bushing for drill %s; tower hole %s".formatted(drill, lengths.size(hole.diameterMm())),
        outside.assumed() || rules.fit().assumed());
  }

  private Feature sight(Landmark landmark) {
    Bore bore = Bore.plain(frame.map(landmark.at()), landmark.diameterMm());
    String note = "pin %s through it into the landmark".formatted(lengths.size(bore.diameterMm()));
    SizeTolerance size = Fits.hole(HoleFit.H13, bore.diameterMm());
    return Feature.round(FeatureKind.SIGHT_HOLE, landmark.name(), bore, size, note, true);
  }

  private static Feature window(Contour edge) {
    double diameter = edge.asCircle().map(c -> 2 * c.radius()).orElse(0.0);
    double size = Math.min(edge.bounds().width(), edge.bounds().height());
    return new Feature(
        FeatureKind.WINDOW,
        "window",
        edge.bounds().centre(),
        diameter,
        Optional.empty(),
        diameter > 0 ? Optional.empty() : Optional.of(edge),
        Fits.general(GeneralTolerance.COARSE, size),
        Optional.empty(),
        "over the opening; not a guide for the cut",
        true);
  }

  private boolean drillFits(PlacedHole hole) {
    double bore = rules.boreMm().value();
    if (bore <= hole.diameterMm()) {
      return true;
    }
    findings.add(
        "jig-drill." + hole.name(),
        Severity.STOP,
        About.mm("bushing " + hole.name(), bore, hole.diameterMm(), Sources.GEOMETRY),
        ("The bushing's bore is larger than the finished hole %s. Choose a bushing for the pilot"
                + " drill.")
            .formatted(hole.name()));
    return false;
  }

  /** The final cut, or else the opening as found, where it leaves metal on all sides. */
  private Optional<Contour> window(FlatSolid bare) {
    return Stream.of(side.finalCut(), side.opening())
        .filter(r -> r.contours().size() == 1)
        .map(r -> r.mapped(frame).contours().get(0))
        .filter(edge -> leavesMetal(bare, edge))
        .findFirst();
  }

  private boolean leavesMetal(FlatSolid bare, Contour edge) {
    FlatSolid cut = withWindow(bare, edge);
    int place = edge.asCircle().isPresent() ? cut.bores().size() - 1 : 0;
    return Webs.of(cut).stream()
        .filter(w -> w.first() == place || w.second() == place)
        .allMatch(w -> w.mm() >= leastWebMm());
  }

  /** What is round the jig on its tower. */
  private void around(Region jig) {
    Tower tower = side.job().tower();
    if (tower.landmarks().size() == 1) {
      findings.add(
          "jig-register",
          Severity.CAUTION,
          new About("jig", 1, 2, "", Sources.PRACTICE),
          "One landmark does not keep the jig from turning. Find a second one, far from the first,"
              + " or prove its direction with the sheet before drilling.");
    }
    tower.crown().ifPresent(this::dome);
    tower
        .wall()
        .map(w -> Region.inside(w).mapped(frame).marginAround(jig))
        .filter(mm -> mm < 0)
        .ifPresent(
            mm ->
                findings.add(
                    "jig-wall",
                    Severity.CAUTION,
                    About.mm("jig, tower wall", mm, 0, Sources.PRACTICE),
                    ("The jig reaches %s past the tower's wall. Use landmarks nearer to the"
                            + " opening, or trim it there.")
                        .formatted(lengths.with(-mm))));
    for (Bracket bracket : tower.brackets()) {
      double thickness = rules.thicknessMm().value();
      Region above = Region.inside(bracket.outline()).mapped(frame);
      if (bracket.undersideMm() < thickness && !jig.intersection(above).isEmpty()) {
        findings.add(
            "jig-bracket." + Findings.slug(bracket.name()),
            Severity.CAUTION,
            About.mm("jig, " + bracket.name(), bracket.undersideMm(), thickness, Sources.PRACTICE),
            "The jig is thicker than the gap under %s. Trim it there, or make it thinner."
                .formatted(bracket.name()));
      }
    }
  }

  private void dome(Crown crown) {
    PlacedHole farthest =
        side.holes().stream().max(Comparator.comparingDouble(h -> h.at().norm())).orElseThrow();
    double r = farthest.at().norm();
    double drop = crown.radiusMm() - Math.sqrt(crown.radiusMm() * crown.radiusMm() - r * r);
    boolean high = drop > GAP_MM;
    findings.add(
        "jig-dome",
        high ? Severity.CAUTION : Severity.NOTE,
        About.mm("jig, bolt " + farthest.name(), drop, GAP_MM, Sources.PRACTICE),
        ("The top is domed and the jig is flat: it rests near its middle or round its window, and"
                + " hole %s lies %s below the dome's middle. %s")
            .formatted(
                farthest.name(),
                lengths.with(drop),
                high
                    ? "Shim the jig so that it cannot rock, and keep the drill square to it."
                    : "Keep the drill square to it."));
  }

  private List<String> assumed() {
    List<String> list = new ArrayList<>();
    list.add("material: steel, 7.85 g/cm3");
    list.add("general tolerances: ISO 2768-f");
    list.add("edges broken: " + lengths.size(0.5));
    Assumptions.add(list, "thickness", rules.thicknessMm(), lengths::size);
    Assumptions.add(list, "metal round the holes", rules.marginMm(), lengths::size);
    Assumptions.add(
        list, "bushing bore", rules.boreMm(), mm -> lengths.size(mm) + ", the pilot drill");
    Assumptions.add(
        list, "bushing outside", outside, mm -> lengths.size(mm) + ", " + Bushings.SOURCE);
    Assumptions.add(list, "fit of the bushing holes", rules.fit(), HoleFit::word);
    return list;
  }
}
