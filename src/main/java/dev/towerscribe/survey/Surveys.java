package dev.towerscribe.survey;

import dev.towerscribe.adjust.Adjustment;
import dev.towerscribe.adjust.Covariance;
import dev.towerscribe.finding.About;
import dev.towerscribe.finding.Findings;
import dev.towerscribe.finding.Severity;
import dev.towerscribe.geometry.Vec2;
import dev.towerscribe.geometry.Vec3;
import dev.towerscribe.model.Side;
import dev.towerscribe.model.StrutPoint;
import dev.towerscribe.quantity.Lengths;
import java.util.ArrayList;
import java.util.EnumMap;
import java.util.HashSet;
import java.util.List;
import java.util.Map;
import java.util.Optional;
import java.util.Set;
import java.util.stream.Stream;

/** Works out a survey. */
public final class Surveys {
  private static final String NOT_ROUND = "Perhaps it is not round: then trace it in the job. ";

  private final Survey survey;
  private final Findings findings;
  private final Set<String> ids = new HashSet<>();
  private final List<ReadingResult> readings = new ArrayList<>();

  private Surveys(Survey survey) {
    this.survey = survey;
    this.findings = new Findings("both", Lengths.in(survey.units()));
  }

  /**
   * Works out a survey.
   *
   * @param survey its readings
   * @return points, tower figures and findings; the same survey always gives the same
   */
  public static SurveyResult of(Survey survey) {
    return new Surveys(survey).result();
  }

  private SurveyResult result() {
    CarNetwork car = CarNetwork.of(survey, ids);
    Solved solved = Solved.of(car.network());
    Adjustment adjustment = solved.adjustment();
    Fit fit = review(car.network(), solved, "points", "both");
    List<PointResult> points = new ArrayList<>();
    car.nodes().forEach((point, node) -> points.add(point(point, node, adjustment, fit)));
    Map<Side, SideResult> sides = new EnumMap<>(Side.class);
    survey.sides().forEach((side, s) -> sides.put(side, side(side, s)));
    unchecked();
    survey.sides().forEach((side, s) -> missing(side, points, sides.get(side)));
    new Asymmetry(car.nodes(), adjustment, fit.widened(), points, sides, findings).report();
    return new SurveyResult(survey, points, sides, fit, readings, findings.gravestFirst());
  }

  private Fit review(NamedNetwork net, Solved solved, String what, String side) {
    NetworkReview review = new NetworkReview(net, solved.adjustment(), solved.limit());
    Fit fit = review.fit();
    new NetworkFindings(net, solved, fit, what, findings).report(side);
    readings.addAll(review.readings());
    return fit;
  }

  private static PointResult point(SurveyPoint point, int node, Adjustment a, Fit fit) {
    double[] at = a.net().place(a.x(), node);
    PointCovariance spread = spread(a, node).times(fit.widened() * fit.widened());
    Vec3 place = new Vec3(at[0], at[1], at[2]);
    boolean mirrored = point.side().equals(Optional.of(Side.RIGHT));
    return new PointResult(
        point,
        mirrored ? place.mirroredAcross() : place,
        mirrored ? spread.mirrored() : spread,
        UnfixedPoints.isFound(a, node, fit.widened()),
        a.net().nodes().get(node).isGiven());
  }

  private static PointCovariance spread(Adjustment a, int node) {
    if (a.net().nodes().get(node).isGiven()) {
      return PointCovariance.NONE;
    }
    double[][] c = a.covariance().of(a.net().unknownsOf(node));
    return new PointCovariance(c[0][0], c[1][1], c[2][2], c[0][1], c[1][2], c[2][0]);
  }

  private SideResult side(Side side, SurveySide s) {
    SingleFigures scalars = new SingleFigures(side, findings);
    return new SideResult(
        scalars.length(s.tyreRadius(), "tyre radius", ""),
        scalars.angle(s.camber(), "camber"),
        scalars.angle(s.toe(), "toe"),
        s.tower().map(t -> tower(side, t, scalars)));
  }

  private TowerResult tower(Side side, SurveyTower t, SingleFigures scalars) {
    TowerNetwork network = TowerNetwork.of(side, t, ids);
    Solved solved = Solved.of(network.network());
    Adjustment a = solved.adjustment();
    Fit fit = review(network.network(), solved, "tower", side.word());
    List<TowerResult.Hole> holes =
        t.landmarks().stream().map(m -> hole(m.name(), network, a, fit.widened())).toList();
    return new TowerResult(
        scalars.length(t.sheet(), "sheet", ""),
        scalars.length(t.opening(), "opening", NOT_ROUND),
        scalars.length(t.mark(), "mark", NOT_ROUND),
        scalars.angle(t.leanInboard(), "lean inboard"),
        scalars.angle(t.leanRearward(), "lean rearward"),
        scalars.length(t.crown().map(SurveyTower.Dome::across), "crown across", ""),
        scalars.length(t.crown().map(SurveyTower.Dome::rise), "crown rise", ""),
        scalars.length(t.pivotHeight(), "pivot height", ""),
        holes,
        t.lines().stream().map(l -> line(l, scalars)).toList(),
        SharedLandmarkErrors.of(
            holes, h -> a.net().unknownsOf(network.node(h)), a.covariance(), fit.widened()),
        fit);
  }

  private static TowerResult.Hole hole(
      String name, TowerNetwork network, Adjustment a, double widened) {
    int node = network.node(name);
    int[] u = a.net().unknownsOf(node);
    double[] at = a.net().place(a.x(), node);
    int size = network.diameter(name);
    Covariance sure = a.covariance();
    return new TowerResult.Hole(
        name,
        new Vec2(at[0], at[1]),
        new Vec2(widened * sure.sd(u[0]), widened * sure.sd(u[1])),
        new Figure(a.x()[size], widened * sure.sd(size)),
        UnfixedPoints.isFound(a, node, widened));
  }

  private static TowerResult.Line line(SurveyTower.Line l, SingleFigures scalars) {
    Figure fromFore = scalars.length(l.from().fore(), l.name() + " from fore");
    Figure fromIn = scalars.length(l.from().in(), l.name() + " from in");
    Figure toFore = scalars.length(l.to().fore(), l.name() + " to fore");
    Figure toIn = scalars.length(l.to().in(), l.name() + " to in");
    return new TowerResult.Line(
        l.name(),
        new Vec2(fromFore.value(), fromIn.value()),
        new Vec2(toFore.value(), toIn.value()),
        Stream.of(fromFore, fromIn, toFore, toIn).mapToDouble(Figure::sd).max().orElseThrow());
  }

  /** One finding for each side: with a bare survey there would be dozens. */
  private void unchecked() {
    for (String side : List.of("left", "right")) {
      List<String> names =
          readings.stream()
              .filter(r -> !r.checked() && r.id().startsWith(side + "."))
              // A diameter stands by itself: its own readings check it.
              .filter(r -> !r.id().startsWith(side + ".diameter"))
              .map(ReadingResult::words)
              .toList();
      if (!names.isEmpty()) {
        String source = "redundancy below " + Adjustment.UNCHECKED;
        findings.add(
            side,
            "unchecked",
            Severity.CAUTION,
            new About(side + " readings", names.size(), 0, "", source),
            ("no other reading checks %s: a slip there would go straight into the result. Take one"
                    + " more reading of each point they fix.")
                .formatted(Listed.and(names)));
      }
    }
  }

  private void missing(Side side, List<PointResult> points, SideResult result) {
    List<SurveyPoint> surveyed = points.stream().map(PointResult::point).toList();
    List<String> strut = new ArrayList<>();
    for (StrutPoint p : StrutPoint.values()) {
      boolean lacks = p.isNeeded() && !surveyed.contains(SurveyPoint.of(side, p.word()));
      addIf(lacks, strut, p.word());
    }
    addIf(result.tyreRadius().isEmpty(), strut, "tyre_radius");
    addIf(result.camber().isEmpty(), strut, "camber");
    tell(side, "strut", strut);
    List<String> tower = new ArrayList<>();
    Optional<TowerResult> t = result.tower();
    addIf(t.flatMap(TowerResult::sheet).isEmpty(), tower, "sheet");
    addIf(t.flatMap(TowerResult::opening).isEmpty(), tower, "opening");
    addIf(t.flatMap(TowerResult::mark).isEmpty(), tower, "mark");
    addIf(t.filter(some -> !some.landmarks().isEmpty()).isEmpty(), tower, "landmark");
    tell(side, "tower", tower);
  }

  private static void addIf(boolean lacks, List<String> keys, String key) {
    if (lacks) {
      keys.add(key);
    }
  }

  private void tell(Side side, String table, List<String> keys) {
    if (!keys.isEmpty()) {
      findings.add(
          side.word(),
          "missing." + table,
          Severity.CAUTION,
          new About("[" + table + "]", keys.size(), 0, "", "job file"),
          "the survey has no reading of %s, which the job's %s table needs."
              .formatted(Listed.and(keys), table));
    }
  }
}
