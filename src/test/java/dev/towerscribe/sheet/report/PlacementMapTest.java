package dev.towerscribe.sheet.report;

import static org.assertj.core.api.Assertions.assertThat;

import dev.towerscribe.drawing.Ink;
import dev.towerscribe.drawing.Item;
import dev.towerscribe.drawing.Page;
import dev.towerscribe.geometry.Box;
import dev.towerscribe.geometry.Vec2;
import dev.towerscribe.model.Mount;
import dev.towerscribe.model.Paper;
import dev.towerscribe.model.Print;
import dev.towerscribe.placement.FeasibleMap;
import dev.towerscribe.placement.FeasibleMap.Barrier;
import dev.towerscribe.placement.Offer;
import dev.towerscribe.quantity.Angle;
import dev.towerscribe.quantity.LengthUnit;
import dev.towerscribe.sheet.PageRules;
import dev.towerscribe.sheet.text.JobInfo;
import java.util.ArrayList;
import java.util.Arrays;
import java.util.List;
import java.util.Optional;
import java.util.stream.Stream;
import org.junit.jupiter.api.Test;
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
    return x < 30 ? Barrier.STRUT_ROD : x < 60 ? Barrier.PLATE : Barrier.BOLTS;
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
      assertThat(pages)
          .allSatisfy(
              page ->
                  assertThat(PageRules.texts(page))
                      .anyMatch(t -> t.content().contains("Law and vehicle maker first.")));
      for (Barrier barrier : Barrier.values()) {
        // Broken over lines on the map: the first two words of each tell them apart.
        String[] first = barrier.words().split(" ");
        assertThat(words).contains(first[0] + " " + first[1]);
      }
      // The offers' letters, and numbers on the lines of equal caster.
      assertThat(PageRules.words(pages.get(0))).contains("A", "B", "3", "4");
    }
  }

  @Test
  void lettersOfOffersThatNearlyCoincideAreApartAndEachIsJoinedToItsPlace() {
    // A tenth of a degree and of a millimetre apart, and a third not far off.
    List<Offer> offers =
        List.of(offer("a", 64.6, 3), offer("b", 64.7, 3.1), offer("c", 66, 2), offer("d", 20, -5));
    List<Page> pages =
        PlacementMap.pages(
            map(),
            offers,
            false,
            new Print(Paper.A4, 10, 1, 1),
            new JobInfo("Wren hatch", Optional.empty(), LengthUnit.MM, "ABC123", List.of()));
    List<Item> items = pages.get(0).items();
    List<Item.Circle> rings = circles(items).filter(c -> c.fill() == Ink.WHITE).toList();
    List<Item.Circle> dots = circles(items).filter(c -> c.fill() == Ink.BLACK).toList();
    assertThat(rings).hasSize(4);
    for (Item.Circle a : rings) {
      for (Item.Circle b : rings) {
        assertThat(a == b || a.centre().distanceTo(b.centre()) > a.radiusMm() + b.radiusMm())
            .isTrue();
      }
    }
    // D alone has room to itself.
    assertThat(dots).hasSize(3);
    for (int i = 0; i < 3; i++) {
      Vec2 dot = dots.get(i).centre();
      Vec2 ring = rings.get(i).centre();
      assertThat(items)
          .anyMatch(
              item -> item instanceof Item.Line l && l.from().equals(dot) && l.to().equals(ring));
    }
    // The dots lie as the offers do: one scale along each axis, taken from the two farthest.
    Vec2 lone = rings.get(3).centre();
    double across = (dots.get(2).centre().x() - lone.x()) / (66 - 20);
    double up = (dots.get(2).centre().y() - lone.y()) / (2 + 5);
    assertThat(dots.get(0).centre().distanceTo(lone.plus(new Vec2(across * 44.6, up * 8))))
        .isLessThan(ROUNDING_MM);
    assertThat(dots.get(1).centre().distanceTo(lone.plus(new Vec2(across * 44.7, up * 8.1))))
        .isLessThan(ROUNDING_MM);
  }

  private static Stream<Item.Circle> circles(List<Item> items) {
    return items.stream().filter(Item.Circle.class::isInstance).map(Item.Circle.class::cast);
  }
}
