package dev.towerscribe.quantity;

import static org.assertj.core.api.Assertions.assertThat;

import dev.towerscribe.quantity.Lengths.Fineness;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.CsvSource;

/** Number text of lengths and angles. Expected values: independent, by hand (1 in = 25.4 mm). */
class LengthsTest {
  private static final Lengths MM = Lengths.in(LengthUnit.MM);
  private static final Lengths INCH = Lengths.in(LengthUnit.INCH);

  @ParameterizedTest
  @CsvSource({
    "TAPE, 12.3, 0.49",
    "PLACE, 12.3, 0.486",
    "CALIPER, 12.35, 0.486",
    "DRAWING, 12.35, 0.4861",
    "LIMIT, 12.346, 0.48606",
  })
  void decimalsGoByWhatReadsIt(Fineness fineness, String mm, String inch) {
    assertThat(MM.figure(12.346, fineness)).isEqualTo(mm);
    assertThat(INCH.figure(12.346, fineness)).isEqualTo(inch);
  }

  @Test
  void unitsAreNamed() {
    assertThat(MM.with(25.4)).isEqualTo("25.40 mm");
    assertThat(INCH.with(25.4, Fineness.TAPE)).isEqualTo("1.00 in");
    assertThat(INCH.both(25.4)).isEqualTo("1.000 in (25.40 mm)");
    assertThat(MM.both(-25.4)).isEqualTo("-25.40 mm (-1.000 in)");
    assertThat(MM.other().metric()).isFalse();
    assertThat(INCH.other().metric()).isTrue();
  }

  @Test
  void nominalSizesDropZerosAtTheirEnd() {
    assertThat(MM.size(6.5)).isEqualTo("6.5 mm");
    assertThat(INCH.size(6.35)).isEqualTo("0.25 in");
    assertThat(MM.plain(8.0, Fineness.DRAWING)).isEqualTo("8");
  }

  @Test
  void areasTakeTheUnitTwice() {
    // One square inch is 645.16 square millimetres.
    assertThat(MM.area(645.16)).isEqualTo("645");
    assertThat(INCH.area(645.16)).isEqualTo("1.000");
  }

  @Test
  void anglesAreDegrees() {
    assertThat(Lengths.degrees(Angle.ofDegrees(5.204))).isEqualTo("5.20");
    assertThat(Lengths.degrees(Math.PI / 2)).isEqualTo("90.00");
    assertThat(Lengths.fineDegrees(Math.toRadians(-0.0124))).isEqualTo("-0.012");
    assertThat(Lengths.withDegrees(Angle.ofDegrees(-1.8))).isEqualTo("-1.80 deg");
    assertThat(Lengths.plainDegrees(Angle.ofDegrees(5.2))).isEqualTo("5.2");
  }
}
