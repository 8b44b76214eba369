package dev.towerscribe.sheet.report;

import static org.assertj.core.api.Assertions.assertThat;
import static org.assertj.core.api.Assertions.within;

import dev.towerscribe.geometry.Contour;
import dev.towerscribe.geometry.Region;
import dev.towerscribe.geometry.Vec2;
import dev.towerscribe.quantity.Tolerances;
import java.util.Random;
import org.junit.jupiter.api.Test;

class CellRegionsTest {
  private static Region of(String... rowsFromTheTop) {
    int rows = rowsFromTheTop.length;
    return CellRegions.of(
        (x, y) -> rowsFromTheTop[rows - 1 - y].charAt(x) == '#',
        rowsFromTheTop[0].length(),
        rows,
        new Vec2(10, 20),
        2,
        3);
  }

  @Test
  void aBlockIsOneRectangleWithFourCorners() {
    Region block = of("....", ".##.", ".##.");
    assertThat(block.contours()).hasSize(1);
    assertThat(block.contours().get(0).edges()).hasSize(4);
    assertThat(block.bounds().minX()).isEqualTo(12);
    assertThat(block.bounds().maxY()).isEqualTo(26);
  }

  @Test
  void aRingHasAHoleAndCellsThatTouchAtACornerAreTwo() {
    Region ring = of("###", "#.#", "###");
    assertThat(ring.contours()).extracting(c -> c.signedArea() > 0).containsExactly(true, false);
    assertThat(of("#.", ".#").contours())
        .hasSize(2)
        .allMatch(c -> c.signedArea() == 6.0 && c.edges().size() == 4);
  }

  @Test
  void anyCellsHaveTheirAreaAndTheirMiddles() {
    // Independent: cells of 1.5 by 2, counted.
    Random random = new Random(20261125);
    for (int round = 0; round < 50; round++) {
      boolean[][] on = new boolean[9][7];
      int count = 0;
      for (boolean[] column : on) {
        for (int y = 0; y < column.length; y++) {
          column[y] = random.nextInt(5) < 3;
          count += column[y] ? 1 : 0;
        }
      }
      Region region = CellRegions.of((x, y) -> on[x][y], 9, 7, Vec2.ZERO, 1.5, 2);
      assertThat(region.area()).isCloseTo(3.0 * count, within(Tolerances.COMPUTED_MM));
      for (Contour contour : region.contours()) {
        assertThat(contour.edges().size()).isGreaterThanOrEqualTo(4);
      }
      for (int x = 0; x < 9; x++) {
        for (int y = 0; y < 7; y++) {
          assertThat(region.contains(new Vec2((x + 0.5) * 1.5, (y + 0.5) * 2))).isEqualTo(on[x][y]);
        }
      }
    }
  }
}
