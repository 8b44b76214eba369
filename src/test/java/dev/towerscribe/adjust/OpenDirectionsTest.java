package dev.towerscribe.adjust;

import static org.assertj.core.api.Assertions.assertThat;

import java.util.List;
import org.junit.jupiter.api.Test;

/** What observations leave open, in words. */
class OpenDirectionsTest {
  private static final Axes AXES =
      new Axes(
          List.of("place forward", "place outward", "height"), List.of("forward", "out", "up"));

  private final TestNetwork t = new TestNetwork();
  private final int p = t.inSpace();

  private void coordinate(int axis) {
    t.read(new Measure.Coordinate(p, axis, 1), 1, 0.0);
  }

  private String words(boolean mirrored) {
    return OpenDirections.of(t.solve(0, 0, 0), p).words(AXES, mirrored);
  }

  @Test
  void aPointThatIsFixedHasNone() {
    coordinate(0);
    coordinate(1);
    coordinate(2);
    assertThat(OpenDirections.of(t.solve(0, 0, 0), p).isEmpty()).isTrue();
    assertThat(OpenDirections.of(t.solve(0, 0, 0), t.known(1, 2, 3)).isEmpty()).isTrue();
  }

  @Test
  void alongAnAxisItIsThatCoordinate() {
    coordinate(0);
    coordinate(1);
    assertThat(words(false)).isEqualTo("height");
  }

  @Test
  void acrossAnAxisItIsTheOtherTwo() {
    coordinate(1);
    assertThat(words(false)).isEqualTo("place forward nor its height");
  }

  @Test
  void withoutAnythingItIsThePlace() {
    assertThat(words(false)).isEqualTo("place");
  }

  @Test
  void aSlantedLineIsTold() {
    // A distance along (0.6, 0.8, 0) and the height: along (0.8, -0.6, 0) nothing is fixed.
    coordinate(2);
    t.tape(t.known(600, 800, 0), p, 1, 1000.0);
    assertThat(words(false)).isEqualTo("place along the line (0.80 forward, -0.60 out, 0.00 up)");
    // On the other side outward is the other way.
    assertThat(words(true)).isEqualTo("place along the line (0.80 forward, 0.60 out, 0.00 up)");
  }

  @Test
  void aSlantedPlaneIsToldByWhatIsSquareToIt() {
    t.tape(t.known(600, 800, 0), p, 1, 1000.0);
    assertThat(words(false))
        .isEqualTo("place square to the line (0.60 forward, 0.80 out, 0.00 up)");
  }

  @Test
  void ofTwoComponentsAlikeTheFirstIsToldAsPositive() {
    coordinate(2);
    t.tape(t.known(700, 700, 0), p, 1, 990.0);
    assertThat(words(false)).isEqualTo("place along the line (0.71 forward, -0.71 out, 0.00 up)");
    assertThat(OpenDirections.of(t.solve(0, 0, 0), p).isEmpty()).isFalse();
  }

  @Test
  void aPlaneSlantedToAllAxes() {
    t.tape(t.known(360, 480, 800), p, 1, 1000.0);
    assertThat(words(false))
        .isEqualTo("place square to the line (0.36 forward, 0.48 out, 0.80 up)");
  }
}
