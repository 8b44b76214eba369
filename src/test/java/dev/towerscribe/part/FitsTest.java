package dev.towerscribe.part;

import static org.assertj.core.api.Assertions.assertThat;
import static org.assertj.core.api.Assertions.assertThatThrownBy;
import static org.assertj.core.api.Assertions.within;

import dev.towerscribe.model.Fastening;
import dev.towerscribe.model.Fit;
import dev.towerscribe.model.GeneralTolerance;
import dev.towerscribe.model.HoleFit;
import dev.towerscribe.model.Thread;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.CsvSource;

/** Tables of tolerances against the standards they come from. */
class FitsTest {
  private static final double ROUNDING_MM = 1e-12;

  @ParameterizedTest
  @CsvSource({
    // Published: ISO 286-2, rows over 6 to 120 mm. A size at the end of a range belongs to it.
    "6.1, 15, 220",
    "10, 15, 220",
    "10.1, 18, 270",
    "18, 18, 270",
    "18.1, 21, 330",
    "30, 21, 330",
    "30.1, 25, 390",
    "50, 25, 390",
    "50.1, 30, 460",
    "80, 30, 460",
    "80.1, 35, 540",
    "120, 35, 540",
  })
  void holesAsPublished(double mm, double h7, double h13) {
    SizeTolerance fine = Fits.hole(HoleFit.H7, mm);
    SizeTolerance coarse = Fits.hole(HoleFit.H13, mm);
    assertThat(fine.upperMm()).isCloseTo(h7 / 1000, within(ROUNDING_MM));
    assertThat(coarse.upperMm()).isCloseTo(h13 / 1000, within(ROUNDING_MM));
    assertThat(fine.lowerMm()).isZero();
    assertThat(coarse.lowerMm()).isZero();
    assertThat(fine.text()).isEqualTo("H7");
    assertThat(fine.source()).isEqualTo("ISO 286-2");
    assertThat(coarse.source()).isEqualTo("ISO 286-2");
  }

  @ParameterizedTest
  @CsvSource({
    // From memory: ISO 286-2.
    "3, 10, 140",
    "5.5, 12, 180",
    "120.1, 40, 630",
    "250, 46, 720",
  })
  void holesFromMemorySaySo(double mm, double h7, double h13) {
    assertThat(Fits.hole(HoleFit.H7, mm).upperMm()).isCloseTo(h7 / 1000, within(ROUNDING_MM));
    assertThat(Fits.hole(HoleFit.H13, mm).upperMm()).isCloseTo(h13 / 1000, within(ROUNDING_MM));
    assertThat(Fits.hole(HoleFit.H7, mm).source()).contains("from memory");
  }

  @ParameterizedTest
  @CsvSource({
    // Published: ISO 273:1979 names H12, H13, H14 for its series; ISO 286-2 gives H13. H12 and H14
    // figures: from memory. ASME B18.2.8 with the same grades: from memory.
    "M8, FINE, 8.4, H12, 150, true",
    "M8, MEDIUM, 9.0, H13, 220, false",
    "M8, COARSE, 10.0, H14, 360, true",
    "M16, MEDIUM, 17.5, H13, 270, false",
    "M5, MEDIUM, 5.5, H13, 180, true",
    "5/16, MEDIUM, 8.7376, H13, 220, true",
  })
  void clearanceHoles(String name, Fit fit, double mm, String text, double um, boolean memory) {
    SizeTolerance t = Fits.clearance(Thread.find(name).orElseThrow(), fit, mm);
    assertThat(t.text()).isEqualTo(text);
    assertThat(t.lowerMm()).isZero();
    assertThat(t.upperMm()).isCloseTo(um / 1000, within(ROUNDING_MM));
    assertThat(t.source().contains("from memory")).isEqualTo(memory);
  }

  @ParameterizedTest
  @CsvSource({
    // Published: ISO 2768-1 class m, 0.5 to 400 mm. Classes f and c: from memory.
    "0.5, 0.05, 0.1, 0.2",
    "3, 0.05, 0.1, 0.2",
    "3.1, 0.05, 0.1, 0.3",
    "6, 0.05, 0.1, 0.3",
    "6.1, 0.1, 0.2, 0.5",
    "30, 0.1, 0.2, 0.5",
    "30.1, 0.15, 0.3, 0.8",
    "120, 0.15, 0.3, 0.8",
    "120.1, 0.2, 0.5, 1.2",
    "400, 0.2, 0.5, 1.2",
  })
  void generalTolerances(double mm, double f, double m, double c) {
    assertThat(Fits.general(GeneralTolerance.FINE, mm).upperMm()).isEqualTo(f);
    assertThat(Fits.general(GeneralTolerance.MEDIUM, mm).upperMm()).isEqualTo(m);
    assertThat(Fits.general(GeneralTolerance.COARSE, mm).upperMm()).isEqualTo(c);
    assertThat(Fits.general(GeneralTolerance.MEDIUM, mm).lowerMm()).isEqualTo(-m);
    assertThat(Fits.general(GeneralTolerance.MEDIUM, mm).source()).isEqualTo("ISO 2768-1-m");
    assertThat(Fits.general(GeneralTolerance.FINE, mm).source()).contains("from memory");
    assertThat(Fits.general(GeneralTolerance.COARSE, mm).source()).contains("from memory");
  }

  @Test
  void sizesOutOfTheTablesAreRefused() {
    assertThatThrownBy(() -> Fits.hole(HoleFit.H7, 0)).isInstanceOf(IllegalArgumentException.class);
    assertThatThrownBy(() -> Fits.hole(HoleFit.H7, 250.1))
        .isInstanceOf(IllegalArgumentException.class);
    assertThatThrownBy(() -> Fits.hole(HoleFit.H7, Double.NaN))
        .isInstanceOf(IllegalArgumentException.class);
    assertThatThrownBy(() -> Fits.general(GeneralTolerance.MEDIUM, 0.4))
        .isInstanceOf(IllegalArgumentException.class);
    assertThatThrownBy(() -> Fits.general(GeneralTolerance.MEDIUM, 1001))
        .isInstanceOf(IllegalArgumentException.class);
  }

  /** Independent: by hand from T = H - F and T = (H - F) / 2. */
  @Test
  void positionTolerances() {
    var floating = new PositionTolerance(Fastening.FLOATING, 9.0, 8.0);
    assertThat(floating.diameterMm()).isEqualTo(1.0);
    assertThat(floating.formula()).isEqualTo("floating: T = H - F = 9.00 - 8.00 = 1.00 mm");
    var fixed = new PositionTolerance(Fastening.FIXED, 11.0, 10.0);
    assertThat(fixed.diameterMm()).isEqualTo(0.5);
    assertThat(fixed.formula()).isEqualTo("fixed: T = (H - F) / 2 = (11.00 - 10.00) / 2 = 0.50 mm");
  }

  @ParameterizedTest
  @CsvSource({
    // From memory: DIN 179.
    "1, 3",
    "3, 6",
    "3.3, 6",
    "3.4, 7",
    "6, 10",
    "8.5, 15",
    "26, 35",
  })
  void bushings(double bore, double outside) {
    assertThat(Bushings.outsideMm(bore)).isEqualTo(outside);
  }
}
