package dev.towerscribe.survey;

import dev.towerscribe.adjust.Adjustment;
import dev.towerscribe.adjust.Covariance;
import dev.towerscribe.adjust.Network;
import dev.towerscribe.adjust.Row;
import dev.towerscribe.finding.About;
import dev.towerscribe.finding.Findings;
import dev.towerscribe.finding.Severity;
import dev.towerscribe.finding.Sources;
import dev.towerscribe.model.Side;
import dev.towerscribe.quantity.Lengths;
import dev.towerscribe.quantity.Lengths.Fineness;
import java.util.List;
import java.util.Map;
import java.util.Optional;
import java.util.function.Function;

/**
 * The left side against the right one mirrored: each point and figure that both have, against the
 * standard deviation of their difference.
 */
final class Asymmetry {
  /** A difference past so many of its own standard deviations is no chance. */
  private static final double SURE = 3;

  /** What a road car's two sides differ by without anybody minding. Common practice, no source. */
  private static final double POINT_MM = 3;

  private static final double TOWER_MM = 2;
  private static final double TOWER_RAD = Math.toRadians(1);
  private static final double WHEEL_RAD = Math.toRadians(0.5);

  /** Coordinates of a point, and what each is called when it is more and when it is less. */
  private static final String[][] CAR = {
    {"further forward", "further rearward"}, {"further out", "further in"}, {"higher", "lower"}
  };

  private static final String[][] TOWER = {
    {"further forward", "further rearward"}, {"further in", "further out"}
  };

  private final Map<SurveyPoint, Integer> nodes;
  private final Adjustment adjustment;
  private final double widened;
  private final List<PointResult> points;
  private final Map<Side, SideResult> sides;
  private final Findings findings;

  Asymmetry(
      Map<SurveyPoint, Integer> nodes,
      Adjustment adjustment,
      double widened,
      List<PointResult> points,
      Map<Side, SideResult> sides,
      Findings findings) {
    this.nodes = nodes;
    this.adjustment = adjustment;
    this.widened = widened;
    this.points = points;
    this.sides = sides;
    this.findings = findings;
  }

  void report() {
    if (sides.size() < 2) {
      return;
    }
    List<PointResult> found = points.stream().filter(PointResult::found).toList();
    for (PointResult left : found) {
      if (left.point().side().equals(Optional.of(Side.LEFT))) {
        SurveyPoint twin = SurveyPoint.of(Side.RIGHT, left.point().name());
        found.stream().filter(p -> p.point().equals(twin)).forEach(right -> point(left, right));
      }
    }
    figure("tyre radius", false, TOWER_MM, SideResult::tyreRadius);
    figure("camber", true, WHEEL_RAD, SideResult::camber);
    figure("toe", true, WHEEL_RAD, SideResult::toe);
    tower("sheet", false, TowerResult::sheet);
    tower("opening", false, TowerResult::opening);
    tower("mark", false, TowerResult::mark);
    tower("lean inboard", true, TowerResult::leanInboard);
    tower("lean rearward", true, TowerResult::leanRearward);
    tower("crown rise", false, TowerResult::crownRise);
    tower("pivot height", false, TowerResult::pivotHeight);
    for (TowerResult.Hole l : holes(Side.LEFT)) {
      holes(Side.RIGHT).stream()
          .filter(r -> l.name().equals(r.name()) && l.found() && r.found())
          .forEach(r -> landmark(l, r));
    }
  }

  private void point(PointResult left, PointResult right) {
    double[] difference = {
      right.at().x() - left.at().x(), right.at().y() - left.at().y(), right.at().z() - left.at().z()
    };
    int[] l = adjustment.net().unknownsOf(nodes.get(left.point()));
    int[] r = adjustment.net().unknownsOf(nodes.get(right.point()));
    double[] sd = new double[Network.AXES];
    for (int axis = 0; axis < Network.AXES; axis++) {
      sd[axis] = widened * differenceSd(adjustment.covariance(), l[axis], r[axis], axis == 1);
    }
    place(left.point().name(), "", difference, sd, CAR, POINT_MM, Fineness.TAPE);
  }

  /**
   * Standard deviation of right less left in one coordinate. Outward is -Y on the right, so there
   * the two sides' errors add up in the difference.
   *
   * @param sure covariance of the car's points, vehicle axes
   * @param left unknown of the left point's coordinate
   * @param right unknown of the right point's
   * @param outward whether it is the coordinate outward
   * @return mm
   */
  static double differenceSd(Covariance sure, int left, int right, boolean outward) {
    return sure.sd(new Row(new int[] {left, right}, new double[] {-1, outward ? -1 : 1}));
  }

  private List<TowerResult.Hole> holes(Side side) {
    return sides.get(side).tower().map(TowerResult::landmarks).orElse(List.of());
  }

  private void landmark(TowerResult.Hole l, TowerResult.Hole r) {
    double[] difference = {r.at().x() - l.at().x(), r.at().y() - l.at().y()};
    double[] sd = {Math.hypot(l.sd().x(), r.sd().x()), Math.hypot(l.sd().y(), r.sd().y())};
    place(l.name(), " tower", difference, sd, TOWER, TOWER_MM, Fineness.CALIPER);
  }

  /** Tells the coordinate that differs most for how sure it is. */
  private void place(
      String name,
      String where,
      double[] difference,
      double[] sd,
      String[][] ways,
      double limit,
      Fineness fineness) {
    int worst = 0;
    for (int axis = 1; axis < difference.length; axis++) {
      worst = past(difference[axis], sd[axis]) > past(difference[worst], sd[worst]) ? axis : worst;
    }
    double size = Math.abs(difference[worst]);
    judge(
        About.mm(name, size, limit, Sources.PRACTICE),
        size > SURE * sd[worst],
        size > limit,
        "%s %s on the right%s than on the left%s"
            .formatted(
                findings.lengths().with(size, fineness),
                ways[worst][difference[worst] > 0 ? 0 : 1],
                where,
                Lengths.likelyWithin(findings.lengths().with(sd[worst], fineness))));
  }

  private static double past(double difference, double sd) {
    return Math.abs(difference) / Math.max(sd, 1e-9);
  }

  private void tower(String name, boolean angle, Function<TowerResult, Optional<Figure>> of) {
    figure(name, angle, angle ? TOWER_RAD : TOWER_MM, s -> s.tower().flatMap(of));
  }

  private void figure(
      String name, boolean angle, double limit, Function<SideResult, Optional<Figure>> of) {
    of.apply(sides.get(Side.LEFT))
        .ifPresent(
            left ->
                of.apply(sides.get(Side.RIGHT))
                    .ifPresent(right -> compare(name, angle, limit, left, right)));
  }

  private void compare(String name, boolean angle, double limit, Figure left, Figure right) {
    double difference = right.value() - left.value();
    double sd = Math.hypot(left.sd(), right.sd());
    double size = Math.abs(difference);
    judge(
        angle
            ? About.degrees(name, size, limit, Sources.PRACTICE)
            : About.mm(name, size, limit, Sources.PRACTICE),
        size > SURE * sd,
        size > limit,
        "%s %s on the right than on the left%s"
            .formatted(
                SingleFigures.told(findings, size, angle),
                difference < 0 ? "less" : "more",
                Lengths.likelyWithin(SingleFigures.told(findings, sd, angle))));
  }

  private void judge(About about, boolean sure, boolean much, String words) {
    findings.add(
        "both",
        "asymmetry." + Findings.slug(about.where()),
        sure && much ? Severity.CAUTION : Severity.NOTE,
        about,
        "%s: %s. %s"
            .formatted(
                about.where(),
                words,
                sure && much
                    ? "The sides differ: give the right its own figures, and look for the reason."
                    : sure
                        ? "They differ slightly."
                        : "The readings show no difference between the sides."));
  }
}
