package dev.towerscribe.sheet;

import static org.assertj.core.api.Assertions.assertThat;

import dev.towerscribe.drawing.Item;
import dev.towerscribe.drawing.Page;
import dev.towerscribe.geometry.Box;
import dev.towerscribe.model.Mount;
import dev.towerscribe.model.Paper;
import dev.towerscribe.model.Print;
import dev.towerscribe.placement.FeasibleMap;
import dev.towerscribe.placement.FeasibleMap.Barrier;
import dev.towerscribe.placement.Offer;
import dev.towerscribe.quantity.Angle;
import dev.towerscribe.quantity.LengthUnit;
import java.util.ArrayList;
import java.util.Arrays;
import java.util.List;
import java.util.Optional;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.EnumSource;

class PlacementMapTest {
  private static final int ROTATIONS = 91;
  private static final int REARWARDS = 61;

  /** Nothing on a sheet is lettered smaller, mm. */
  private static final double LEAST_LETTERING_MM = 2.5;

  private static final double ROUNDING_MM = 1e-6;

  /** A white band across the middle, and each barrier somewhere outside it. */
  private static FeasibleMap map() {
    List<Double> rotations = new ArrayList<>();
    List<Double> rearwards = new ArrayList<>();
    List<List<Double>> caster = new ArrayList<>();
    List<List<Barrier>> barriers = new ArrayList<>();
    for (int x = 0; x < ROTATIONS; x++) {
      rotations.add((double) x);
      Double[] column = new Double[REARWARDS];
      Barrier[] why = new Barrier[REARWARDS];
      for (int y = 0; y < REARWARDS; y++) {
        boolean stands = Math.abs(y - 30) < 12;
        column[y] = stands ? 2 + x / 30.0 + (y - 18) / 12.0 : Double.NaN;
        why[y] = stands ? null : y > 30 ? above(x) : x < 45 ? Barrier.BRACKET : Barrier.LINKAGE;
      }
      caster.add(Arrays.asList(column));
      barriers.add(Arrays.asList(why));
    }
    for (int y = 0; y < REARWARDS; y++) {
      rearwards.add(y - 30.0);
    }
    return new FeasibleMap(rotations, rearwards, caster, barriers);
  }

  private static Barrier above(int x) {
    return x < 30 ? Barrier.SHAFT : x < 60 ? Barrier.PLATE : Barrier.BOLTS;
  }

  private static Offer offer(String name, double degrees, double rearward) {
    return new Offer(
        name,
        new Mount(Angle.ofDegrees(degrees), rearward, -1.2, 16),
        Angle.ofDegrees(5.94),
        Angle.ofDegrees(-1.4),
        Optional.of(Angle.ofDegrees(0.2)),
        9372,
        0.2,
        "words");
  }

  @ParameterizedTest
  @EnumSource(Paper.class)
  void staysInsideTheMarginsLegiblyAndSaysWhyEverywhere(Paper paper) {
    for (LengthUnit unit : LengthUnit.values()) {
      Print print = new Print(paper, 10, 1, 1);
      List<Page> pages =
          PlacementMap.pages(
              map(),
              List.of(
                  offer("best for the aims, least metal removed", 64.6, 3),
                  offer("most room at the edges", 66, 2)),
              false,
              print,
              new JobInfo("Wren hatch", Optional.empty(), unit, "ABC123", List.of()));
      // Words on the map stand on cleared ground over the hatching, so the text pages' rule that no
      // line crosses a word is not theirs; sizes and margins are.
      for (Page page : pages) {
        Box room =
            new Box(0, 0, page.widthMm(), page.heightMm()).grown(ROUNDING_MM - print.marginMm());
        for (Item item : page.items()) {
          assertThat(room.contains(PageRules.bounds(item))).as("%s", item).isTrue();
        }
        assertThat(PageRules.texts(page)).allMatch(t -> t.capHeightMm() >= LEAST_LETTERING_MM);
      }
      String words = PageRules.words(pages).replaceAll("\\s+", " ");
      for (Barrier barrier : Barrier.values()) {
        // Broken over lines on the map: the first two words of each tell them apart.
        String[] first = barrier.words().split(" ");
        assertThat(words).contains(first[0] + " " + first[1]);
      }
      // The offers' letters, and numbers on the lines of equal caster.
      assertThat(PageRules.words(pages.get(0))).contains("A", "B", "3", "4");
    }
  }
}
