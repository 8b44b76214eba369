package dev.towerscribe.survey;

import dev.towerscribe.adjust.Repeated;
import dev.towerscribe.finding.Finding;
import dev.towerscribe.finding.JobRejected;
import dev.towerscribe.job.SurveyReader;
import dev.towerscribe.model.Side;
import java.io.IOException;
import java.io.UncheckedIOException;
import java.nio.file.Files;
import java.nio.file.Path;
import java.util.ArrayList;
import java.util.EnumMap;
import java.util.List;
import java.util.Map;
import java.util.function.UnaryOperator;

/** Surveys for tests. */
final class SurveyTexts {
  private SurveyTexts() {}

  static String demo() {
    try {
      return Files.readString(Path.of("templates", "wren-survey.toml"));
    } catch (IOException e) {
      throw new UncheckedIOException(e);
    }
  }

  static Survey read(String text) {
    try {
      return new SurveyReader(c -> c < 0x2600, note -> {}).parse(text);
    } catch (JobRejected e) {
      throw new AssertionError(e.getMessage(), e);
    }
  }

  static List<String> ids(List<Finding> findings) {
    return findings.stream().map(Finding::id).toList();
  }

  static Finding finding(SurveyResult result, String id) {
    return result.findings().stream()
        .filter(f -> f.id().equals(id))
        .findFirst()
        .orElseThrow(() -> new AssertionError(id + " is not among " + ids(result.findings())));
  }

  /** A survey with one tape's readings changed. */
  static Survey withTape(Survey s, Side side, int index, UnaryOperator<Repeated> change) {
    SurveySide old = s.sides().get(side);
    List<SurveySide.Tape> tapes = new ArrayList<>(old.tapes());
    SurveySide.Tape t = tapes.get(index);
    tapes.set(index, new SurveySide.Tape(t.from(), t.to(), change.apply(t.length())));
    Map<Side, SurveySide> sides = new EnumMap<>(s.sides());
    sides.put(
        side,
        new SurveySide(
            old.plots(),
            old.heights(),
            tapes,
            old.tyreRadius(),
            old.camber(),
            old.toe(),
            old.tower()));
    return new Survey(s.title(), s.date(), s.units(), s.stations(), sides);
  }

  /** All readings, or the one of that index, longer by so much. */
  static UnaryOperator<Repeated> longer(double mm, int reading) {
    return r -> {
      List<Double> values = new ArrayList<>(r.values());
      for (int i = 0; i < values.size(); i++) {
        values.set(i, values.get(i) + (reading < 0 || reading == i ? mm : 0));
      }
      return new Repeated(values, r.sd());
    };
  }
}
