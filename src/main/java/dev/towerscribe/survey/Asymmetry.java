package dev.towerscribe.survey;

import dev.towerscribe.finding.Severity;
import dev.towerscribe.model.Side;
import java.util.List;
import java.util.Map;
import java.util.Optional;
import java.util.function.Function;

/**
 * The left side against the right one mirrored: each point and figure that both have, against the
 * +/- of their difference.
 */
final class Asymmetry {
  /** A difference past so many of its own standard deviations is no chance. */
  private static final double SURE = 3;

  /** What a road car's two sides differ by without anybody minding. Common practice, no source. */
  private static final double POINT_MM = 3;

  private static final double TOWER_MM = 2;
  private static final double TOWER_RAD = Math.toRadians(1);
  private static final double WHEEL_RAD = Math.toRadians(0.5);

  private final Map<SurveyPoint, Integer> nodes;
  private final Adjustment adjustment;
  private final double widened;
  private final List<PointResult> points;
  private final Map<Side, SideResult> sides;
  private final Found found;

  Asymmetry(
      Map<SurveyPoint, Integer> nodes,
      Adjustment adjustment,
      double widened,
      List<PointResult> points,
      Map<Side, SideResult> sides,
      Found found) {
    this.nodes = nodes;
    this.adjustment = adjustment;
    this.widened = widened;
    this.points = points;
    this.sides = sides;
    this.found = found;
  }

  void report() {
    if (sides.size() < 2) {
      return;
    }
    for (PointResult left : points) {
      if (left.found() && left.point().side().equals(Optional.of(Side.LEFT))) {
        SurveyPoint twin = SurveyPoint.of(Side.RIGHT, left.point().name());
        points.stream()
            .filter(p -> p.point().equals(twin) && p.found())
            .findFirst()
            .ifPresent(right -> point(left, right));
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
    landmarks();
  }

  private void point(PointResult left, PointResult right) {
    double[] difference = {
      right.at().x() - left.at().x(), right.at().y() - left.at().y(), right.at().z() - left.at().z()
    };
    int[] l = adjustment.net().nodes().get(nodes.get(left.point())).unknown();
    int[] r = adjustment.net().nodes().get(nodes.get(right.point())).unknown();
    double[] sd = new double[Network.AXES];
    for (int axis = 0; axis < Network.AXES; axis++) {
      // Outward is -Y on the right, so there the two sides' errors add up in the difference.
      double sign = axis == 1 ? 1 : -1;
      double variance =
          adjustment.covariance(l[axis], l[axis])
              + adjustment.covariance(r[axis], r[axis])
              + 2 * sign * adjustment.covariance(l[axis], r[axis]);
      sd[axis] = widened * Math.sqrt(Math.max(0, variance));
    }
    int worst = 0;
    for (int axis = 1; axis < Network.AXES; axis++) {
      worst = past(difference[axis], sd[axis]) > past(difference[worst], sd[worst]) ? axis : worst;
    }
    String[] ways =
        new String[][] {
              {"further forward", "further rearward"},
              {"further out", "further in"},
              {"higher", "lower"}
            }
            [worst];
    judge(
        left.point().name(),
        Found.Size.mm(Math.abs(difference[worst]), POINT_MM, Found.PRACTICE),
        Math.abs(difference[worst]),
        sd[worst],
        POINT_MM,
        found.length(Math.abs(difference[worst]))
            + " "
            + (difference[worst] > 0 ? ways[0] : ways[1])
            + " on the right than on the left, +/- "
            + found.length(sd[worst]));
  }

  private static double past(double difference, double sd) {
    return Math.abs(difference) / Math.max(sd, 1e-9);
  }

  private void figure(
      String name, boolean angle, double limit, Function<SideResult, Optional<Figure>> of) {
    Optional<Figure> left = of.apply(sides.get(Side.LEFT));
    Optional<Figure> right = of.apply(sides.get(Side.RIGHT));
    if (left.isPresent() && right.isPresent()) {
      compare(name, angle, limit, left.get(), right.get());
    }
  }

  private void tower(String name, boolean angle, Function<TowerResult, Optional<Figure>> of) {
    figure(name, angle, angle ? TOWER_RAD : TOWER_MM, s -> s.tower().flatMap(of));
  }

  private void compare(String name, boolean angle, double limit, Figure left, Figure right) {
    double difference = right.value() - left.value();
    double sd = Math.hypot(left.sd(), right.sd());
    double size = Math.abs(difference);
    judge(
        name,
        angle
            ? Found.Size.degrees(size, limit, Found.PRACTICE)
            : Found.Size.mm(size, limit, Found.PRACTICE),
        size,
        sd,
        limit,
        (angle ? Found.angle(size) : found.fine(size))
            + (difference < 0 ? " less" : " more")
            + " on the right than on the left, +/- "
            + (angle ? Found.angle(sd) : found.fine(sd)));
  }

  private void landmarks() {
    List<TowerResult.Hole> left = holes(Side.LEFT);
    List<TowerResult.Hole> right = holes(Side.RIGHT);
    for (TowerResult.Hole l : left) {
      for (TowerResult.Hole r : right) {
        if (l.name().equals(r.name()) && l.found() && r.found()) {
          place(l, r);
        }
      }
    }
  }

  private List<TowerResult.Hole> holes(Side side) {
    return sides.get(side).tower().map(TowerResult::landmarks).orElse(List.of());
  }

  private void place(TowerResult.Hole l, TowerResult.Hole r) {
    double fore = r.at().x() - l.at().x();
    double in = r.at().y() - l.at().y();
    double foreSd = Math.hypot(l.sd().x(), r.sd().x());
    double inSd = Math.hypot(l.sd().y(), r.sd().y());
    boolean along = past(fore, foreSd) >= past(in, inSd);
    double size = Math.abs(along ? fore : in);
    String way =
        along
            ? fore > 0 ? "further forward" : "further rearward"
            : in > 0 ? "further in" : "further out";
    judge(
        l.name(),
        Found.Size.mm(size, TOWER_MM, Found.PRACTICE),
        size,
        along ? foreSd : inSd,
        TOWER_MM,
        found.fine(size)
            + " "
            + way
            + " on the right tower than on the left, +/- "
            + found.fine(along ? foreSd : inSd));
  }

  private void judge(
      String name, Found.Size size, double difference, double sd, double limit, String words) {
    boolean sure = difference > SURE * sd;
    boolean much = difference > limit;
    String say =
        name
            + ": "
            + words
            + (sure && much
                ? ". The sides differ: give the right its own figures, and look for the reason."
                : sure
                    ? ". They differ, by little."
                    : ". The readings do not tell the sides apart.");
    found.add(
        sure && much ? Severity.CAUTION : Severity.NOTE,
        name,
        size,
        say,
        "both",
        "asymmetry",
        name);
  }
}
