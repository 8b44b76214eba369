package dev.towerscribe.cli;

import dev.towerscribe.finding.Finding;
import dev.towerscribe.model.Job;
import dev.towerscribe.record.Cause;
import dev.towerscribe.record.Compared;
import dev.towerscribe.record.Entry;
import dev.towerscribe.record.Evaluate;
import dev.towerscribe.record.Evaluation;
import dev.towerscribe.record.Explanation;
import dev.towerscribe.record.Fit;
import dev.towerscribe.record.Since;
import dev.towerscribe.record.Visit;
import java.util.List;
import java.util.Optional;

/**
 * A record as data: one JSON object, format 1, degrees and millimetres whatever the job's units. A
 * visit is reckoned anew with the job as it is; {@code recorded} has what was predicted at the
 * time.
 */
final class RecordJson {
  private static final int FORMAT = 1;

  private final JsonWriter json = new JsonWriter();
  private final Job job;

  private RecordJson(Job job) {
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
  static String of(Job job, List<Entry> entries, List<String> remarks) {
    RecordJson results = new RecordJson(job);
    results.all(entries, remarks);
    return results.json + "\n";
  }

  private void all(List<Entry> entries, List<String> remarks) {
    json.beginObject();
    json.key("format").value(FORMAT);
    json.key("title").value(job.title());
    json.key("units").value("mm");
    json.key("visits").beginArray();
    entries.forEach(this::entry);
    json.endArray();
    json.key("remarks").beginArray();
    remarks.forEach(json::value);
    json.endArray();
    json.endObject();
  }

  private void entry(Entry entry) {
    json.beginObject();
    entry.number().ifPresent(n -> json.key("number").value(n));
    entry.date().ifPresent(d -> json.key("date").value(d.toString()));
    json.key("state").value(entry.state().word());
    json.key("first_line").value(entry.firstLine());
    json.key("last_line").value(entry.lastLine());
    json.key("visit").value(entry.words().getOrDefault("visit", ""));
    json.key("bay").value(entry.words().getOrDefault("bay", ""));
    json.key("accepted").beginArray();
    entry.acceptedStops().forEach(json::value);
    json.endArray();
    json.key("recorded").beginArray();
    entry.figures().forEach(this::recorded);
    json.endArray();
    json.key("since").beginArray();
    Since.of(job, entry).forEach(json::value);
    json.endArray();
    entry.visit().ifPresent(this::reckoned);
    json.endObject();
  }

  private void recorded(Entry.Figure f) {
    json.beginObject();
    json.key("figure").value(f.name());
    json.key("measured").value(f.measured().degrees());
    f.predicted().ifPresent(p -> json.key("predicted").value(p.degrees()));
    f.within().ifPresent(w -> json.key("within").value(w));
    json.endObject();
  }

  private void reckoned(Visit visit) {
    Evaluation e = Evaluate.of(job, visit);
    json.key("settings").beginObject();
    visit
        .wheels()
        .forEach(
            (side, w) -> {
              json.key(side.word()).beginObject();
              json.key("setting").value(w.settingMm());
              json.key("knuckle").value(w.knuckle().degrees());
              Optional<Double> before = w.before().rideMm();
              Optional<Double> after = w.after().rideMm();
              before.ifPresent(mm -> json.key("ride_before").value(mm));
              after.ifPresent(mm -> json.key("ride_after").value(mm));
              json.endObject();
            });
    json.endObject();
    json.key("compared").beginArray();
    e.compared().forEach(this::compared);
    json.endArray();
    json.key("explanations").beginArray();
    e.explanations().forEach(this::explanation);
    json.endArray();
    json.key("findings").beginArray();
    e.findings().forEach(this::finding);
    json.endArray();
  }

  private void compared(Compared c) {
    json.beginObject();
    json.key("side").value(c.sideWord());
    json.key("stage").value(c.stage().word());
    json.key("figure").value(c.figure().word());
    json.key("predicted").value(c.predicted().degrees());
    c.plusMinus().ifPresent(p -> json.key("plus_minus").value(p.degrees()));
    json.key("measured").value(c.measured().degrees());
    json.key("doubt").value(c.doubt().degrees());
    json.key("difference").value(c.difference().degrees());
    json.key("sd").value(c.sd().degrees());
    json.key("within").value(c.within());
    json.endObject();
  }

  private void explanation(Explanation x) {
    json.beginObject();
    json.key("side").value(x.side().map(s -> s.word()).orElse("both"));
    json.key("figures").value(x.figures());
    json.key("chi_square").value(x.chiSquare());
    json.key("answer").value(x.answer().word());
    json.key("causes").beginArray();
    x.fits().forEach(this::fit);
    json.endArray();
    json.key("say").beginArray();
    x.say().forEach(json::value);
    json.endArray();
    json.endObject();
  }

  private void fit(Fit f) {
    json.beginObject();
    json.key("cause").value(f.cause().word());
    json.key("acting").beginArray();
    f.acting().forEach(s -> json.value(s.word()));
    json.endArray();
    json.key("unit")
        .value(
            switch (f.cause().kind()) {
              case LENGTH -> "mm";
              case ANGLE -> "deg";
              case RATIO -> "%";
            });
    json.key("value").value(shown(f.cause(), f.value()));
    json.key("plus_minus").value(shown(f.cause(), f.plusMinus()));
    json.key("from").value(shown(f.cause(), f.from()));
    json.key("to").value(shown(f.cause(), f.to()));
    json.key("chi_square").value(f.chiSquare());
    json.key("explained").value(f.explained());
    json.key("would_explain").value(f.explains());
    json.key("leaves").beginArray();
    f.leaves().forEach(json::value);
    json.endArray();
    json.endObject();
  }

  private static double shown(Cause cause, double value) {
    return switch (cause.kind()) {
      case LENGTH -> value;
      case ANGLE -> Math.toDegrees(value);
      case RATIO -> 100 * value;
    };
  }

  private void finding(Finding f) {
    json.beginObject();
    json.key("id").value(f.id());
    json.key("severity").value(f.severity().word());
    json.key("where").value(f.where());
    json.key("figure").value(f.figure());
    json.key("limit").value(f.limit());
    json.key("unit").value(f.unit());
    json.key("source").value(f.source());
    json.key("say").value(f.say());
    json.endObject();
  }
}
