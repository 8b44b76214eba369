package dev.towerscribe.record;

import static java.nio.charset.StandardCharsets.UTF_8;
import static org.assertj.core.api.Assertions.assertThat;
import static org.assertj.core.api.Assertions.within;

import dev.towerscribe.model.Job;
import dev.towerscribe.model.Side;
import dev.towerscribe.quantity.Angle;
import dev.towerscribe.quantity.LengthUnit;
import java.time.LocalDate;
import java.util.Arrays;
import java.util.EnumMap;
import java.util.List;
import java.util.Map;
import java.util.Optional;
import net.jqwik.api.Arbitraries;
import net.jqwik.api.Arbitrary;
import net.jqwik.api.Combinators;
import net.jqwik.api.ForAll;
import net.jqwik.api.Property;
import net.jqwik.api.Provide;
import net.jqwik.api.Tag;

/** Whatever a visit says and wherever an append ends, the record tells all of it. */
class RecordTextProperties {
  private static final EntryText.About ABOUT =
      new EntryText.About("an invented car \u00e9", "ABC123", "Towerscribe 0", List.of());

  private static Job job(LengthUnit unit) {
    Job mm = Visits.job();
    return new Job(mm.title(), mm.date(), unit, mm.sides());
  }

  private static String entry(int number, Visit visit, LengthUnit unit) {
    return EntryText.of(number, VisitEvaluator.of(job(unit), visit), ABOUT);
  }

  @Provide
  Arbitrary<Visit> visits() {
    Arbitrary<BayReading> readings =
        Combinators.combine(
                Arbitraries.integers().between(-9_999_999, 19_999_999).list().ofSize(4),
                Arbitraries.integers().between(0, 15),
                Arbitraries.integers().between(-150_000, 150_000).optional())
            .as(
                (micros, mask, ride) -> {
                  Map<BayFigure, Angle> figures = new EnumMap<>(BayFigure.class);
                  for (BayFigure f : BayFigure.values()) {
                    if ((mask >> f.ordinal() & 1) == 1) {
                      figures.put(f, Angle.ofDegrees(micros.get(f.ordinal()) / 1e6));
                    }
                  }
                  return new BayReading(figures, ride.map(r -> r / 1e3));
                });
    Arbitrary<WheelVisit> wheels =
        Combinators.combine(readings, readings, Arbitraries.integers().between(-8000, 16000))
            .as((before, after, s) -> new WheelVisit(before, after, s / 1e3, Angle.ZERO))
            .filter(WheelVisit::hasFigures);
    Arbitrary<String> words =
        Arbitraries.of("", "a visit", "-- end of visit 1 --", "== visit ==", "\u00e9\u00df: 3 deg");
    return Combinators.combine(
            wheels.optional(), wheels, words, Arbitraries.integers().between(1, 28))
        .as(
            (left, right, w, day) -> {
              Map<Side, WheelVisit> both = new EnumMap<>(Side.class);
              left.ifPresent(l -> both.put(Side.LEFT, l));
              both.put(Side.RIGHT, right);
              return new Visit(
                  LocalDate.of(2026, 12, day),
                  w,
                  w.isEmpty() ? Optional.empty() : Optional.of("Invented Bay"),
                  BayUncertainty.USUAL,
                  both);
            });
  }

  @Property(tries = 30, seed = "31")
  void anEntryReadsBackAsItWasGiven(@ForAll("visits") Visit visit, @ForAll LengthUnit unit) {
    RecordText text = RecordText.read(entry(7, visit, unit));
    assertThat(text.remarks()).isEmpty();
    assertThat(text.entries()).hasSize(1);
    Entry entry = text.entries().get(0);
    assertThat(entry.state()).isEqualTo(Entry.State.WHOLE);
    assertThat(entry.number()).contains(7);
    Visit again = entry.visit().orElseThrow();
    assertThat(EntryText.identity(again)).isEqualTo(EntryText.identity(visit));
    assertThat(again.uncertainty().figures()).isEqualTo(visit.uncertainty().figures());
    // In inches to nine decimals: half of the last is 1.3e-8 mm.
    assertThat(again.uncertainty().rideMm()).isCloseTo(visit.uncertainty().rideMm(), within(2e-8));
    // Written once more, it is the very same: nothing is lost on the way.
    assertThat(entry(7, again, unit)).isEqualTo(entry(7, visit, unit));
  }

  @Tag("simulation")
  @Property(tries = 5, seed = "32")
  void anAppendCutOffAtAnyByteHidesNothing(
      @ForAll("visits") Visit first,
      @ForAll("visits") Visit second,
      @ForAll("visits") Visit third) {
    String before = entry(1, first, LengthUnit.MM);
    RecordText one = RecordText.read(before);
    byte[] more = one.toAppend(entry(one.nextNumber(), second, LengthUnit.MM)).getBytes(UTF_8);
    // A record's entries are given numbers in turn: 2 after a first byte that is a line's end
    // alone.
    List<String> thirds = List.of(entry(2, third, LengthUnit.MM), entry(3, third, LengthUnit.MM));
    List<Entry.Figure> given =
        RecordText.read(before + new String(more, UTF_8)).entries().get(1).figures();
    for (int kept = 0; kept <= more.length; kept++) {
      byte[] part = Arrays.copyOf(more, kept);
      byte[] bytes = before.getBytes(UTF_8);
      byte[] file = Arrays.copyOf(bytes, bytes.length + kept);
      System.arraycopy(part, 0, file, bytes.length, kept);
      RecordText torn = RecordText.read(new String(file, UTF_8));
      assertThat(torn.entries().get(0)).isEqualTo(one.entries().get(0));
      boolean all = kept >= more.length - 1;
      boolean begun = kept > 1;
      assertThat(torn.entries()).hasSize(begun ? 2 : 1);
      if (begun) {
        Entry last = torn.entries().get(1);
        assertThat(last.state()).isEqualTo(all ? Entry.State.WHOLE : Entry.State.CUT_SHORT);
        if (!all) {
          assertThat(torn.remarks().get(0))
              .startsWith("an entry was cut short at line " + last.lastLine())
              .contains("its readings are: ");
        }
        // What is told of the readings is what was given, never part of a figure.
        assertThat(given).containsAll(last.figures());
      }
      // The next append works, and is whole, and the torn one is still there and marked off.
      byte[] again = torn.toAppend(thirds.get(torn.nextNumber() - 2)).getBytes(UTF_8);
      byte[] longer = Arrays.copyOf(file, file.length + again.length);
      System.arraycopy(again, 0, longer, file.length, again.length);
      RecordText after = RecordText.read(new String(longer, UTF_8));
      assertThat(after.entries()).hasSize(begun ? 3 : 2);
      assertThat(after.entries().get(0)).isEqualTo(one.entries().get(0));
      Entry added = after.entries().get(after.entries().size() - 1);
      assertThat(added.state()).isEqualTo(Entry.State.WHOLE);
      assertThat(EntryText.identity(added.visit().orElseThrow()))
          .isEqualTo(EntryText.identity(third));
      assertThat(after.endsOpen()).isFalse();
      if (begun && !all) {
        assertThat(after.entries().get(1).state()).isEqualTo(Entry.State.CUT_SHORT);
        assertThat(after.entries().get(1).figures()).isEqualTo(torn.entries().get(1).figures());
        assertThat(after.remarks()).anyMatch(r -> r.startsWith("an entry was cut short at line "));
      }
    }
  }

  @Property(tries = 200, seed = "33")
  void anyTextIsReadWithoutAFault(@ForAll("junk") String text) {
    RecordText read = RecordText.read(text);
    // Every line that says something is in an entry or told of.
    long said = text.lines().filter(l -> !l.isBlank()).count();
    long inEntries = read.entries().stream().mapToLong(e -> e.lines().size()).sum();
    assertThat(inEntries + read.remarks().size() > 0 || said == 0 || text.contains("cut short"))
        .isTrue();
    assertThat(RecordText.read(text + read.toAppend(SOME_ENTRY)).entries())
        .last()
        .satisfies(e -> assertThat(e.state()).isEqualTo(Entry.State.WHOLE));
  }

  private static final Visit SOME =
      Visits.visit(
          Map.of(
              Side.LEFT,
              Visits.wheel(
                  BayReading.NONE,
                  new BayReading(Map.of(BayFigure.CASTER, Angle.ofDegrees(5)), Optional.empty()))));

  private static final String SOME_ENTRY = entry(3, SOME, LengthUnit.MM);

  @Provide
  Arbitrary<String> junk() {
    Arbitrary<String> line =
        Arbitraries.of(
            "",
            "\u0000\u0000",
            "== Towerscribe record, visit 4, 2026-02-31 ==",
            "== Towerscribe record, visit 999999999999, 2026-01-01 ==",
            "-- end of visit 4, checksum 0123456789abcdef --",
            RecordLines.MARK,
            "left after caster: measured 5 deg +/- 0.15; not predicted",
            "left after caster: measured 9e9 deg +/- 0.15; not predicted",
            "left setting: 16 mm",
            "my own words",
            "doubt caster: 0 deg",
            SOME_ENTRY.stripTrailing());
    return line.list().ofMaxSize(8).map(l -> String.join("\n", l));
  }
}
