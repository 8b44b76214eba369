package dev.towerscribe.report.json;

import dev.towerscribe.model.Job;
import dev.towerscribe.record.Cause;
import dev.towerscribe.record.CauseFit;
import dev.towerscribe.record.Compared;
import dev.towerscribe.record.Entry;
import dev.towerscribe.record.Evaluation;
import dev.towerscribe.record.Explanation;
import dev.towerscribe.record.PredictionChange;
import dev.towerscribe.record.Visit;
import dev.towerscribe.record.VisitEvaluator;
import dev.towerscribe.record.WheelVisit;
import java.util.List;

/**
 * A record as data, format 1. A visit is calculated again with the job as it is; {@code recorded}
 * has what was predicted at the time. A visit that was struck has that alone.
 */
public final class RecordJson {
  private final Json json;
  private final Job job;

  private RecordJson(Json json, Job job) {
    this.json = json;
    this.job = job;
  }

  /**
   * Writes a record.
   *
   * @param job the job as it is
   * @param entries the visits
   * @param remarks what is not as it was written
   * @return one line of JSON with its line end
   */
  public static String of(Job job, List<Entry> entries, List<String> remarks) {
    return Json.of(
        json ->
            json.head(job.title())
                .objects("visits", entries, new RecordJson(json, job)::entry)
                .strings("remarks", remarks));
  }

  private void entry(Entry entry) {
    entry.number().ifPresent(n -> json.put("number", n));
    entry.date().ifPresent(d -> json.put("date", d.toString()));
    json.put("state", entry.state().hyphened())
        .put("first_line", entry.firstLine())
        .put("last_line", entry.lastLine())
        .put("visit", entry.words().getOrDefault("visit", ""))
        .put("bay", entry.words().getOrDefault("bay", ""))
        .strings("accepted", entry.acceptedStops())
        .objects("recorded", entry.figures(), this::recorded)
        .strings("since", PredictionChange.of(job, entry));
    entry
        .struck()
        .ifPresent(
            s ->
                json.object(
                    "struck",
                    () -> json.put("date", s.date().toString()).put("reason", s.reason())));
    entry.visit().filter(v -> entry.struck().isEmpty()).ifPresent(this::now);
  }

  private void recorded(Entry.Figure f) {
    json.put("figure", f.name()).put("measured", f.measured());
    f.predicted().ifPresent(p -> json.put("predicted", p));
    f.within().ifPresent(w -> json.put("within", w));
  }

  private void now(Visit visit) {
    Evaluation e = VisitEvaluator.of(job, visit);
    json.object(
        "settings",
        () -> visit.wheels().forEach((side, w) -> json.object(side.word(), () -> wheel(w))));
    json.objects("compared", e.compared(), this::compared)
        .objects("explanations", e.explanations(), this::explanation)
        .findings(e.findings());
  }

  private void wheel(WheelVisit w) {
    json.put("setting", w.settingMm()).put("knuckle", w.knuckle());
    w.before().rideMm().ifPresent(mm -> json.put("ride_before", mm));
    w.after().rideMm().ifPresent(mm -> json.put("ride_after", mm));
  }

  private void compared(Compared c) {
    json.put("side", c.sideWord())
        .put("stage", c.stage().word())
        .put("figure", c.figure().word())
        .put("predicted", c.predicted());
    c.plusMinus().ifPresent(p -> json.put("plus_minus", p));
    json.put("measured", c.measured())
        .put("doubt", c.uncertainty())
        .put("difference", c.difference())
        .put("sd", c.sd())
        .put("within", c.within());
  }

  private void explanation(Explanation x) {
    json.put("side", x.side().map(s -> s.word()).orElse("both"))
        .put("figures", x.figures())
        .put("chi_square", x.chiSquare())
        .put("answer", x.answer().hyphened())
        .objects("causes", x.fits(), this::fit)
        .strings("say", x.say());
  }

  private void fit(CauseFit f) {
    String unit =
        switch (f.cause().kind()) {
          case LENGTH -> "mm";
          case ANGLE -> "deg";
          case RATIO -> "%";
        };
    json.put("cause", f.cause().hyphened())
        .strings("acting", f.acting().stream().map(s -> s.word()).toList())
        .put("unit", unit)
        .put("value", shown(f.cause(), f.value()))
        .put("plus_minus", shown(f.cause(), f.plusMinus()))
        .put("from", shown(f.cause(), f.from()))
        .put("to", shown(f.cause(), f.to()))
        .put("chi_square", f.chiSquare())
        .put("explained", f.explained())
        .put("would_explain", f.explains())
        .strings("leaves", f.leaves());
  }

  private static double shown(Cause cause, double value) {
    return switch (cause.kind()) {
      case LENGTH -> value;
      case ANGLE -> Math.toDegrees(value);
      case RATIO -> 100 * value;
    };
  }
}
