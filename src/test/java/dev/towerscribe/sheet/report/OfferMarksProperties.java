package dev.towerscribe.sheet.report;

import static org.assertj.core.api.Assertions.assertThat;

import dev.towerscribe.geometry.Box;
import dev.towerscribe.geometry.Vec2;
import dev.towerscribe.sheet.report.OfferMarks.Mark;
import java.util.List;
import net.jqwik.api.Arbitraries;
import net.jqwik.api.Arbitrary;
import net.jqwik.api.Combinators;
import net.jqwik.api.ForAll;
import net.jqwik.api.Property;
import net.jqwik.api.Provide;
import net.jqwik.api.Tag;

/** Letters of offers anywhere, crowded or not. */
class OfferMarksProperties {
  /** About what a map on A4 has. */
  private static final Box BOX = new Box(20, 100, 195, 230);

  private static final double ROUNDING_MM = 1e-9;

  /** One to five offers, as a search makes, within a crowd of any size down to a single point. */
  @Provide
  Arbitrary<List<Vec2>> places() {
    Arbitrary<Double> share = Arbitraries.doubles().between(0, 1).ofScale(3);
    Arbitrary<Double> spread = Arbitraries.of(0.0, 0.1, 1.0, 3.0, 8.0, 25.0, 100.0);
    return spread.flatMap(
        s ->
            Combinators.combine(share, share)
                .as((x, y) -> new Vec2(x * s, y * s))
                .list()
                .ofMinSize(1)
                .ofMaxSize(5)
                .flatMap(
                    list -> Combinators.combine(share, share).as((x, y) -> moved(list, x, y))));
  }

  /** Somewhere in the box, its edges included. */
  private static List<Vec2> moved(List<Vec2> list, double across, double up) {
    Vec2 by =
        new Vec2(BOX.minX() + across * (BOX.width() - 100), BOX.minY() + up * (BOX.height() - 100));
    return list.stream().map(p -> p.plus(by)).toList();
  }

  @Tag("more-tries")
  @Property(seed = "20261")
  void noLetterCoversAnotherOrADotAndEachHasItsOwnPlace(@ForAll("places") List<Vec2> places) {
    List<Mark> marks = OfferMarks.of(places, BOX).marks();
    assertThat(marks).extracting(Mark::place).isEqualTo(places);
    double rings = 2 * OfferMarks.RING_MM + OfferMarks.CLEAR_MM - ROUNDING_MM;
    double dots = OfferMarks.RING_MM + OfferMarks.DOT_MM - ROUNDING_MM;
    for (int i = 0; i < marks.size(); i++) {
      Mark mark = marks.get(i);
      assertThat(mark.apart() || mark.letter().equals(mark.place())).isTrue();
      for (int k = 0; k < marks.size(); k++) {
        if (k == i) {
          continue;
        }
        Mark other = marks.get(k);
        assertThat(mark.letter().distanceTo(other.letter())).isGreaterThan(rings);
        assertThat(mark.letter().distanceTo(other.place())).isGreaterThan(dots);
        if (mark.apart()) {
          // Nor does a line run beneath another's letter.
          assertThat(mark.line().nearest(other.letter()).distanceTo(other.letter()))
              .isGreaterThan(OfferMarks.RING_MM);
        }
      }
      if (mark.apart()) {
        assertThat(BOX.contains(Box.around(mark.letter(), OfferMarks.RING_MM - ROUNDING_MM)))
            .isTrue();
      }
    }
  }

  @Tag("more-tries")
  @Property(seed = "20262")
  void aLoneOfferKeepsItsLetterOnItsPlace(@ForAll("places") List<Vec2> places) {
    Mark mark = OfferMarks.of(places.subList(0, 1), BOX).marks().get(0);
    assertThat(mark.letter()).isEqualTo(places.get(0));
    assertThat(mark.apart()).isFalse();
  }
}
