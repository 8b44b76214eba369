package dev.towerscribe.sheet.worksheet;

import static org.assertj.core.api.Assertions.assertThat;
import static org.assertj.core.api.Assertions.within;

import dev.towerscribe.geometry.Vec3;
import java.util.ArrayList;
import java.util.LinkedHashMap;
import java.util.List;
import java.util.Map;
import org.hipparchus.linear.LUDecomposition;
import org.hipparchus.linear.MatrixUtils;
import org.hipparchus.linear.RealMatrix;
import org.junit.jupiter.api.Test;

/**
 * Whether the distances of the worksheet check each other: the share of each reading that the
 * others answer for, the redundancy number of least squares, over the sample strut corner on both
 * sides. A reading with none can be wrong by any amount and nothing shows it.
 */
class WorksheetPlanTest {
  private static final int POINTS = WorksheetEnd.Point.values().length;

  /** Equal uncertainties of 1.5 mm; a tape read three times counts three times. */
  private static final double ONCE = 1 / (1.5 * 1.5);

  private final List<double[]> rows = new ArrayList<>();
  private final List<Double> weights = new ArrayList<>();
  private final List<String> names = new ArrayList<>();

  private static Vec3 at(WorksheetEnd end, int side) {
    if (end instanceof WorksheetEnd.Point point) {
      Vec3 p = StrutSample.at(point);
      return side == 0 ? p : p.mirroredAcross();
    }
    return switch ((WorksheetEnd.Mark) end) {
      case A -> new Vec3(700, 0, 0);
      case B -> new Vec3(0, 0, 0);
      case C -> new Vec3(-700, 0, 0);
      case D -> new Vec3(650, 0, 760);
    };
  }

  private static int column(WorksheetEnd end, int side) {
    return 3 * (side * POINTS + ((WorksheetEnd.Point) end).ordinal());
  }

  private void add(String name, double[] row, double weight) {
    names.add(name);
    rows.add(row);
    weights.add(weight);
  }

  private void tape(String name, WorksheetEnd from, int fromSide, WorksheetEnd to, int toSide) {
    Vec3 way = at(to, toSide).minus(at(from, fromSide)).unit();
    double[] row = new double[6 * POINTS];
    put(row, from, fromSide, way.times(-1));
    put(row, to, toSide, way);
    add(name, row, 3 * ONCE);
  }

  private static void put(double[] row, WorksheetEnd end, int side, Vec3 way) {
    if (end instanceof WorksheetEnd.Point) {
      int c = column(end, side);
      row[c] = way.x();
      row[c + 1] = way.y();
      row[c + 2] = way.z();
    }
  }

  private Map<String, Double> shares() {
    return shares("");
  }

  /** The shares with one row left out. */
  private Map<String, Double> shares(String without) {
    rows.clear();
    weights.clear();
    names.clear();
    for (int side = 0; side < 2; side++) {
      String prefix = side == 0 ? "L" : "R";
      for (WorksheetEnd.Point point : WorksheetEnd.Point.values()) {
        for (int k = 0; k < 3; k++) {
          double[] row = new double[6 * POINTS];
          row[column(point, side) + k] = 1;
          add(prefix + "." + point.key() + "." + "xyz".charAt(k), row, ONCE);
        }
      }
      List<WorksheetPlan.Tape> tapes = new ArrayList<>(WorksheetPlan.between());
      tapes.addAll(WorksheetPlan.fromMarks());
      for (int i = 0; i < tapes.size(); i++) {
        tape(prefix + (i + 1), tapes.get(i).from(), side, tapes.get(i).to(), side);
      }
    }
    List<WorksheetPlan.Tape> across = WorksheetPlan.across();
    for (int i = 0; i < across.size(); i++) {
      tape(WorksheetPlan.acrossLabel(i), across.get(i).from(), 0, across.get(i).to(), 1);
    }
    int out = names.indexOf(without);
    if (out >= 0) {
      names.remove(out);
      rows.remove(out);
      weights.remove(out);
    }
    RealMatrix j = MatrixUtils.createRealMatrix(rows.toArray(double[][]::new));
    RealMatrix w =
        MatrixUtils.createRealDiagonalMatrix(
            weights.stream().mapToDouble(Double::doubleValue).toArray());
    RealMatrix cofactors =
        new LUDecomposition(j.transpose().multiply(w).multiply(j)).getSolver().getInverse();
    RealMatrix hat = j.multiply(cofactors).multiply(j.transpose()).multiply(w);
    Map<String, Double> shares = new LinkedHashMap<>();
    for (int i = 0; i < names.size(); i++) {
      shares.put(names.get(i), 1 - hat.getEntry(i, i));
    }
    return shares;
  }

  @Test
  void everyReadingIsCheckedByOthersButTheWheelCentresForeAndHeight() {
    Map<String, Double> shares = shares();
    shares.forEach(
        (name, share) -> {
          if (name.matches("[LR]\\.wheel_centre\\.[xz]")) {
            // No tape reaches it: the worksheet says to take both twice.
            assertThat(share).as(name).isCloseTo(0, within(1e-9));
          } else {
            assertThat(share).as(name).isGreaterThan(0.1);
          }
        });
    // Independent: 2 x (27 + 24) + 8 readings for 54 unknowns; the shares add up to the difference.
    assertThat(shares).hasSize(110);
    assertThat(shares.values().stream().mapToDouble(Double::doubleValue).sum())
        .isCloseTo(110 - 54, within(1e-6));
  }

  @Test
  void sharesAsCalculatedElsewhere() {
    Map<String, Double> shares = shares();
    // Independent: the same network by numpy's linear algebra, rounded to two decimals.
    Map<String, Double> elsewhere =
        Map.of(
            "L.top.x", 0.53,
            "R.ball_joint.y", 0.91,
            "L.tie_inner.z", 0.21,
            "R.knuckle_pivot.x", 0.54,
            "L1", 0.55,
            "L12", 0.44,
            "R24", 0.29,
            "X1", 0.20,
            "X6", 0.14);
    elsewhere.forEach(
        (name, share) -> assertThat(shares.get(name)).as(name).isCloseTo(share, within(0.005)));
  }

  @Test
  void anyOneTapeMayBeMissingButThoseTheGuideNames() {
    // What docs/survey-worksheet.md tells to read twice where that row is missing.
    Map<String, List<String>> told =
        Map.of(
            "L15", List.of("L.knuckle_pivot.x"),
            "L16", List.of("L.knuckle_pivot.y"),
            "L21", List.of("L.arm_rear.z"),
            "L24", List.of("L.top.x"));
    for (String row : shares().keySet()) {
      if (!row.matches("[LX][0-9]+")) {
        continue;
      }
      List<String> unchecked = new ArrayList<>();
      shares(row)
          .forEach(
              (name, share) -> {
                if (share < 0.08 && !name.contains("wheel_centre")) {
                  unchecked.add(name);
                }
              });
      // X6 is the only one to check how far out the wheel centres are, which are read twice.
      List<String> expected = told.getOrDefault(row, List.of());
      assertThat(unchecked).as("without " + row).isEqualTo(expected);
    }
  }

  @Test
  void noDistanceIsAskedForTwice() {
    for (List<WorksheetPlan.Tape> tapes :
        List.of(WorksheetPlan.between(), WorksheetPlan.fromMarks(), WorksheetPlan.across())) {
      assertThat(tapes).doesNotHaveDuplicates();
    }
    for (WorksheetPlan.Tape tape : WorksheetPlan.between()) {
      assertThat(tape.from()).isNotEqualTo(tape.to());
      assertThat(WorksheetPlan.between())
          .doesNotContain(new WorksheetPlan.Tape(tape.to(), (WorksheetEnd.Point) tape.from()));
    }
    // Every pair of the strut rod and three landmarks: 4 x 3 / 2.
    assertThat(WorksheetPlan.spans()).hasSize(6).doesNotHaveDuplicates();
  }
}
