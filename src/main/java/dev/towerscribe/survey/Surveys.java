package dev.towerscribe.survey;

import dev.towerscribe.finding.Severity;
import dev.towerscribe.geometry.Vec2;
import dev.towerscribe.geometry.Vec3;
import dev.towerscribe.model.Side;
import dev.towerscribe.model.StrutPoint;
import java.util.ArrayList;
import java.util.EnumMap;
import java.util.List;
import java.util.Map;
import java.util.Optional;
import java.util.stream.Stream;

/** Works out a survey. */
public final class Surveys {
  private static final String NOT_ROUND = "Perhaps it is not round: then trace it in the job. ";

  private final Survey survey;
  private final Found found;
  private final Ids ids = new Ids();
  private final List<ReadingResult> readings = new ArrayList<>();

  private Surveys(Survey survey) {
    this.survey = survey;
    this.found = new Found(survey.units());
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
    Labelled labelled = car.labelled();
    Snooping.Outcome outcome = Snooping.of(labelled.net(), labelled.entries());
    Adjustment adjustment = outcome.placed().adjustment();
    Review review = new Review(adjustment, outcome.limit());
    Fit fit = review.fit();
    new NetworkFindings(labelled, outcome, fit, "points", found).report("both");
    readings.addAll(review.readings());
    List<PointResult> points = new ArrayList<>();
    car.nodes().forEach((point, node) -> points.add(point(point, node, adjustment, fit)));
    Map<Side, SideResult> sides = new EnumMap<>(Side.class);
    survey.sides().forEach((side, s) -> sides.put(side, side(side, s)));
    unchecked();
    survey.sides().forEach((side, s) -> missing(side, points, sides.get(side)));
    new Asymmetry(car.nodes(), adjustment, fit.widened(), points, sides, found).report();
    return new SurveyResult(survey, points, sides, fit, readings, found.gravestFirst());
  }

  private static PointResult point(SurveyPoint point, int node, Adjustment a, Fit fit) {
    double[] at = a.net().place(a.x(), node);
    Spread spread = spread(a, node).times(fit.widened() * fit.widened());
    Vec3 place = new Vec3(at[0], at[1], at[2]);
    boolean mirrored = point.side().equals(Optional.of(Side.RIGHT));
    return new PointResult(
        point,
        mirrored ? place.mirroredAcross() : place,
        mirrored ? spread.mirrored() : spread,
        OpenPoints.isFound(a, node, fit.widened()),
        a.net().nodes().get(node).isGiven());
  }

  private static Spread spread(Adjustment a, int node) {
    int[] u = a.net().nodes().get(node).unknown();
    return a.net().nodes().get(node).isGiven()
        ? Spread.NONE
        : new Spread(
            a.covariance(u[0], u[0]),
            a.covariance(u[1], u[1]),
            a.covariance(u[2], u[2]),
            a.covariance(u[0], u[1]),
            a.covariance(u[1], u[2]),
            a.covariance(u[2], u[0]));
  }

  private SideResult side(Side side, SurveySide s) {
    Scalars scalars = new Scalars(side, found);
    return new SideResult(
        scalars.length(s.tyreRadius(), "tyre radius", ""),
        scalars.angle(s.camber(), "camber"),
        scalars.angle(s.toe(), "toe"),
        s.tower().map(t -> tower(side, t, scalars)));
  }

  private TowerResult tower(Side side, SurveyTower t, Scalars scalars) {
    TowerNetwork network = TowerNetwork.of(side, t, ids);
    Labelled labelled = network.labelled();
    Snooping.Outcome outcome = Snooping.of(labelled.net(), labelled.entries());
    Adjustment a = outcome.placed().adjustment();
    Review review = new Review(a, outcome.limit());
    Fit fit = review.fit();
    new NetworkFindings(labelled, outcome, fit, "tower", found).report(side.word());
    readings.addAll(review.readings());
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
        Datums.of(holes, h -> a.net().nodes().get(network.node(h)).unknown(), a, fit.widened()),
        fit);
  }

  private static TowerResult.Hole hole(
      String name, TowerNetwork network, Adjustment a, double widened) {
    int node = network.node(name);
    int[] u = a.net().nodes().get(node).unknown();
    double[] at = a.net().place(a.x(), node);
    int size = network.diameter(name);
    return new TowerResult.Hole(
        name,
        new Vec2(at[0], at[1]),
        new Vec2(widened * sd(a, u[0]), widened * sd(a, u[1])),
        new Figure(a.x()[size], widened * sd(a, size)),
        OpenPoints.isFound(a, node, widened));
  }

  private static double sd(Adjustment a, int unknown) {
    return Math.sqrt(Math.max(0, a.covariance(unknown, unknown)));
  }

  private static TowerResult.Line line(SurveyTower.Line l, Scalars scalars) {
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
        found.add(
            Severity.CAUTION,
            side + " readings",
            new Found.Size(names.size(), 0, "", "redundancy below " + Review.UNCHECKED),
            "no other reading checks "
                + Found.and(names)
                + ": a slip there would go straight into the result. Take one more reading of each"
                + " point they fix.",
            side,
            "unchecked");
      }
    }
  }

  private void missing(Side side, List<PointResult> points, SideResult result) {
    List<String> strut = new ArrayList<>();
    for (StrutPoint p : StrutPoint.values()) {
      boolean surveyed =
          points.stream().anyMatch(r -> r.point().equals(SurveyPoint.of(side, p.word())));
      if (p.isNeeded() && !surveyed) {
        strut.add(p.word());
      }
    }
    if (result.tyreRadius().isEmpty()) {
      strut.add("tyre_radius");
    }
    if (result.camber().isEmpty()) {
      strut.add("camber");
    }
    tell(side, "strut", strut);
    List<String> tower = new ArrayList<>();
    Optional<TowerResult> t = result.tower();
    if (t.flatMap(TowerResult::sheet).isEmpty()) {
      tower.add("sheet");
    }
    if (t.flatMap(TowerResult::opening).isEmpty()) {
      tower.add("opening");
    }
    if (t.flatMap(TowerResult::mark).isEmpty()) {
      tower.add("mark");
    }
    if (t.map(TowerResult::landmarks).orElse(List.of()).isEmpty()) {
      tower.add("landmark");
    }
    tell(side, "tower", tower);
  }

  private void tell(Side side, String table, List<String> keys) {
    if (!keys.isEmpty()) {
      found.add(
          Severity.CAUTION,
          "[" + table + "]",
          new Found.Size(keys.size(), 0, "", "job file"),
          "the survey has no reading of "
              + Found.and(keys)
              + ", which the job's "
              + table
              + " table needs.",
          side.word(),
          "missing",
          table);
    }
  }
}
