package dev.towerscribe.alignment;

import static org.assertj.core.api.Assertions.assertThat;
import static org.assertj.core.api.Assertions.within;

import dev.towerscribe.geometry.Vec3;
import dev.towerscribe.model.PlusMinus;
import dev.towerscribe.quantity.Angle;
import java.util.Arrays;
import java.util.List;
import java.util.stream.IntStream;
import org.junit.jupiter.api.Test;

/** The law of propagation over points and camber. Expected: independent, by hand. */
class FigureUncertaintyTest {
  /** Twenty-five squares and one root. */
  private static final double ROUNDING = 1e-13;

  private static final Vec3 SURE = new Vec3(0, 0, 0);

  private static PlusMinus plusMinus(Vec3 top, Vec3 tieOuter, Vec3 wheel, double camber) {
    return new PlusMinus(
        List.of(top, SURE, SURE, SURE, SURE, SURE, tieOuter, wheel), new Angle(camber));
  }

  private static double[] coordinates(int at, double... some) {
    double[] all = new double[24];
    System.arraycopy(some, 0, all, at, some.length);
    return all;
  }

  @Test
  void coordinatesAreIndependentSoSquaresAdd() {
    // 3 x 1 = 3 and 2 x 2 = 4 and 6 x 2 = 12: 9 + 16 + 144 = 169 = 13 squared.
    var figure = new Sensitivity.Figure(0, coordinates(0, 3, -2, 6), 0, new double[4]);
    assertThat(figure.plusMinus(plusMinus(new Vec3(1, 2, 2), SURE, SURE, 0)))
        .isCloseTo(13, within(ROUNDING));
  }

  @Test
  void eachCoordinateMeetsItsOwnDeviation() {
    // Of point 6, the outer tie rod end, derivatives stand at 18, 19, 20.
    var figure = new Sensitivity.Figure(0, coordinates(18, 1, 10, 100), 0, new double[4]);
    assertThat(figure.plusMinus(plusMinus(SURE, new Vec3(5, 0, 0), SURE, 0)))
        .isCloseTo(5, within(ROUNDING));
    assertThat(figure.plusMinus(plusMinus(SURE, new Vec3(0, 5, 0), SURE, 0)))
        .isCloseTo(50, within(ROUNDING));
    assertThat(figure.plusMinus(plusMinus(SURE, new Vec3(0, 0, 5), SURE, 0)))
        .isCloseTo(500, within(ROUNDING));
    assertThat(figure.plusMinus(plusMinus(new Vec3(5, 5, 5), SURE, new Vec3(5, 5, 5), 0))).isZero();
  }

  @Test
  void camberAsMeasuredCountsBesideThePoints() {
    // 0.6 by camber and 0.8 by the last coordinate of all: 1.
    var figure = new Sensitivity.Figure(0, coordinates(23, 4), -3, new double[4]);
    assertThat(figure.plusMinus(plusMinus(SURE, SURE, new Vec3(0, 0, 0.2), 0.2)))
        .isCloseTo(1, within(ROUNDING));
  }

  @Test
  void anyNumberThatIsNotFiniteLeavesTheFigureWithoutDerivatives() {
    double nan = Double.NaN;
    var figure = new Sensitivity.Figure(1, coordinates(0, 1), 2, new double[4]);
    assertThat(figure.isFinite()).isTrue();
    assertThat(new Sensitivity.Figure(nan, coordinates(0, 1), 2, new double[4]).isFinite())
        .isFalse();
    assertThat(new Sensitivity.Figure(1, coordinates(23, nan), 2, new double[4]).isFinite())
        .isFalse();
    assertThat(new Sensitivity.Figure(1, coordinates(0, 1), nan, new double[4]).isFinite())
        .isFalse();
    var choice = new Sensitivity.Figure(1, coordinates(0, 1), 2, new double[] {0, 0, 0, nan});
    assertThat(choice.isFinite()).isFalse();
    assertThat(new Sensitivity.Figures(figure, figure, figure, figure, figure, choice).isFinite())
        .isFalse();
  }

  @Test
  void aFigureIsItsNumbersNotItsArrays() {
    double[] by = IntStream.range(0, 24).mapToDouble(i -> i / 7.0).toArray();
    var one = new Sensitivity.Figure(1, by, 2, new double[] {3, 4, 5, 6});
    var same = new Sensitivity.Figure(1, Arrays.copyOf(by, 24), 2, new double[] {3, 4, 5, 6});
    assertThat(one).isEqualTo(same).hasSameHashCodeAs(same);
    assertThat(one).isNotEqualTo(new Sensitivity.Figure(9, by, 2, new double[] {3, 4, 5, 6}));
    assertThat(one).isNotEqualTo(new Sensitivity.Figure(1, by, 9, new double[] {3, 4, 5, 6}));
    assertThat(one).isNotEqualTo(new Sensitivity.Figure(1, by, 2, new double[] {3, 4, 5, 9}));
    assertThat(one)
        .isNotEqualTo(new Sensitivity.Figure(1, new double[24], 2, new double[] {3, 4, 5, 6}));
    assertThat(one).isNotEqualTo("figure");
  }
}
