package dev.towerscribe.model;

import static org.assertj.core.api.Assertions.assertThat;

import dev.towerscribe.geometry.Contour;
import dev.towerscribe.geometry.Edge.Arc;
import dev.towerscribe.geometry.Edge.Segment;
import dev.towerscribe.geometry.Recess;
import dev.towerscribe.geometry.Vec2;
import java.lang.reflect.RecordComponent;
import java.util.List;
import java.util.Optional;
import java.util.StringJoiner;
import java.util.stream.Stream;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.MethodSource;

/**
 * Records whose text is written out say every component, by name and in order, but for what a job
 * may leave out: pack marks of jobs older than those keys rest on the text without them.
 */
class WrittenOutTest {
  static Stream<Record> records() {
    Bolt bolt = new Bolt("A", new Vec2(1.5, -2), Thread.KNOWN.get(0), 8, 16);
    Plate.Slot slot = new Plate.Slot(-10, 12.5, List.of(-10.0, 0.0));
    Contour outline = Contour.circle(Vec2.ZERO, 70);
    Plate plate =
        new Plate("plate", 4, outline, true, slot, 1, 2.25, 44, 3, 5, 6, List.of(bolt, bolt));
    Bolt sunk =
        new Bolt(
            "B",
            Vec2.ZERO,
            Thread.KNOWN.get(0),
            8,
            16,
            Optional.of(5.5),
            Optional.of(new Recess.Counterbore(10, 2, true)));
    PlateMake d = PlateMake.ASSUMED;
    PlateMake make =
        new PlateMake(
            d.material(),
            d.densityGPerCm3(),
            d.finish(),
            d.edgeBreakMm(),
            Stated.given(GeneralTolerance.MEDIUM),
            d.slotWidthMm(),
            d.slotEnds(),
            d.slotCornerMm(),
            d.indexHoles(),
            d.bearingBore(),
            d.slider(),
            d.fastening());
    List<Bolt> bolts = List.of(bolt, sunk);
    Plate made = new Plate("plate", 4, outline, true, slot, 1, 2, 44, 3, 5, 6, bolts, make);
    return Stream.of(
        plate,
        made,
        sunk,
        slot,
        bolt,
        Thread.KNOWN.get(11),
        new Vec2(1e-7, -0.0),
        new Segment(Vec2.ZERO, new Vec2(3, 4)),
        new Arc(Vec2.ZERO, 5, 0.25, -1));
  }

  @ParameterizedTest
  @MethodSource("records")
  void textIsThatOfARecord(Record value) throws ReflectiveOperationException {
    // Independent: put together here from what the class file says of the record.
    StringJoiner parts = new StringJoiner(", ", value.getClass().getSimpleName() + "[", "]");
    for (RecordComponent part : value.getClass().getRecordComponents()) {
      Object held = part.getAccessor().invoke(value);
      boolean left = held.equals(Optional.empty()) || held.equals(PlateMake.ASSUMED);
      if (!left) {
        parts.add(part.getName() + "=" + (held instanceof Optional<?> o ? o.get() : held));
      }
    }
    assertThat(value.toString()).isEqualTo(parts.toString());
  }
}
