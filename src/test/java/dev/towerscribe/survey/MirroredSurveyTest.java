package dev.towerscribe.survey;

import static org.assertj.core.api.Assertions.assertThat;
import static org.assertj.core.api.Assertions.within;

import dev.towerscribe.geometry.Vec3;
import dev.towerscribe.model.Side;
import java.util.EnumMap;
import java.util.List;
import java.util.Map;
import java.util.Optional;
import org.junit.jupiter.api.Test;

/** A car seen in a mirror: what was left is right, and every figure stays as it was. */
class MirroredSurveyTest {
  /** Two solutions, each good to 1e-9 of a standard deviation. */
  private static final double SAME_MM = 1e-6;

  private static SurveyPoint mirrored(SurveyPoint p) {
    return new SurveyPoint(p.side().map(MirroredSurveyTest::other), p.name());
  }

  private static Side other(Side side) {
    return side == Side.LEFT ? Side.RIGHT : Side.LEFT;
  }

  private static Survey mirrored(Survey s) {
    Map<Side, SurveySide> sides = new EnumMap<>(Side.class);
    s.sides()
        .forEach(
            (side, r) ->
                sides.put(
                    other(side),
                    new SurveySide(
                        r.plots().stream()
                            .map(
                                p -> new SurveySide.Plot(mirrored(p.point()), p.forward(), p.out()))
                            .toList(),
                        r.heights().stream()
                            .map(h -> new SurveySide.Height(mirrored(h.point()), h.up()))
                            .toList(),
                        r.tapes().stream()
                            .map(
                                t ->
                                    new SurveySide.Tape(
                                        mirrored(t.from()), mirrored(t.to()), t.length()))
                            .toList(),
                        r.tyreRadius(),
                        r.camber(),
                        r.toe(),
                        r.tower())));
    List<Survey.Station> stations =
        s.stations().stream()
            .map(
                t ->
                    new Survey.Station(
                        t.name(), t.at().map(Vec3::mirroredAcross), t.uncertaintyMm()))
            .toList();
    return new Survey(s.title(), s.date(), s.units(), stations, sides);
  }

  @Test
  void theMirrorImageHasTheSameFigures() {
    Survey demo = SurveyTexts.read(SurveyTexts.demo());
    SurveyResult plain = Surveys.of(demo);
    SurveyResult mirror = Surveys.of(mirrored(demo));
    for (PointResult p : plain.points()) {
      if (p.point().side().isEmpty()) {
        continue;
      }
      PointResult q = DemoSurveyTest.point(mirror, mirrored(p.point()));
      assertThat(q.at().minus(p.at()).norm()).as(p.point().words()).isLessThan(SAME_MM);
      PointCovariance a = p.spread();
      PointCovariance b = q.spread();
      assertThat(b.xx()).isCloseTo(a.xx(), within(SAME_MM));
      assertThat(b.xy()).isCloseTo(a.xy(), within(SAME_MM));
      assertThat(b.yz()).isCloseTo(a.yz(), within(SAME_MM));
      assertThat(b.zx()).isCloseTo(a.zx(), within(SAME_MM));
    }
    assertThat(mirror.fit().ratio()).isCloseTo(plain.fit().ratio(), within(1e-9));
    assertThat(plain.points()).hasSizeGreaterThan(20);
    assertThat(Optional.of(plain.stops().size())).contains(mirror.stops().size());
  }

  /** The right side alone: its tables are written as if on the left. */
  @Test
  void oneSideAloneStandsByItself() {
    Survey demo = SurveyTexts.read(SurveyTexts.demo());
    SurveySide right = demo.sides().get(Side.RIGHT);
    Survey alone =
        new Survey(
            demo.title(), demo.date(), demo.units(), demo.stations(), Map.of(Side.RIGHT, right));
    SurveyResult r = Surveys.of(alone);
    assertThat(r.stops()).isEmpty();
    String tables = JobTables.of(r, List.of());
    assertThat(tables).contains("[strut]", "[tower]").doesNotContain("[right.");
    PointResult top = DemoSurveyTest.point(r, SurveyPoint.of(Side.RIGHT, "top"));
    assertThat(top.at().y()).isPositive();
  }
}
