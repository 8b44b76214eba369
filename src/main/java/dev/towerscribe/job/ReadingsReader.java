package dev.towerscribe.job;

import dev.towerscribe.adjust.Edges;
import dev.towerscribe.adjust.Repeated;
import dev.towerscribe.drilled.Readings;
import dev.towerscribe.drilled.Readings.Uncertainty;
import dev.towerscribe.drilled.SideReadings;
import dev.towerscribe.drilled.SideReadings.EdgeGap;
import dev.towerscribe.drilled.SideReadings.HoleSize;
import dev.towerscribe.drilled.SpanReading;
import dev.towerscribe.finding.JobRejected;
import dev.towerscribe.model.Bolt;
import dev.towerscribe.model.Job;
import dev.towerscribe.model.Landmark;
import dev.towerscribe.model.Side;
import dev.towerscribe.model.SideJob;
import dev.towerscribe.model.Stated;
import java.io.IOException;
import java.nio.charset.StandardCharsets;
import java.nio.file.Path;
import java.util.Comparator;
import java.util.EnumMap;
import java.util.List;
import java.util.Map;
import java.util.Optional;
import java.util.TreeSet;
import java.util.function.Consumer;
import java.util.function.IntPredicate;
import java.util.stream.Stream;

/**
 * Reads files of caliper readings of drilled holes. Their names are those of a job, so that is
 * needed first. Whatever a file holds, the answer is its readings or every fault found in it.
 *
 * @param printable whether the sheets can carry a character, by its Unicode code point
 * @param notes told what is no fault but should be changed in a file: keys in an old spelling
 * @param job the job that the holes were drilled from
 */
public record ReadingsReader(IntPredicate printable, Consumer<String> notes, Job job) {
  private static final List<String> SPANS = Stream.of(Edges.values()).map(Edges::word).toList();

  /**
   * Reads a file.
   *
   * @param file the readings file
   * @return the readings
   * @throws IOException if it cannot be read; the message says which and why
   * @throws JobRejected if it cannot be used, with every fault
   */
  public Readings read(Path file) throws IOException, JobRejected {
    return parse(JobReader.bytes(file));
  }

  /**
   * Reads a file's text.
   *
   * @param text TOML
   * @return the readings
   * @throws JobRejected if it cannot be used, with every fault
   */
  public Readings parse(String text) throws JobRejected {
    return parse(text.getBytes(StandardCharsets.UTF_8));
  }

  private Readings parse(byte[] bytes) throws JobRejected {
    return Faults.<Readings, JobRejected>of(faults -> parse(bytes, faults));
  }

  private Readings parse(byte[] bytes, Faults faults) throws JobRejected {
    TableReader top = FileHead.open(bytes, faults, printable, notes);
    faults.noteBlanks(top.all());
    var unit = FileHead.readUnits(top);
    var title = top.label("title", Limits.TITLE, job.title());
    var date = FileHead.date(top);
    var uncertainty = top.tableOrEmpty(Respelling.UNCERTAINTY).flatMap(ReadingsReader::uncertainty);
    Map<Side, SideReadings> sides = new EnumMap<>(Side.class);
    boolean any = false;
    for (Side side : Side.values()) {
      var t = top.optionalTable(side.word());
      any |= t.isPresent();
      if (t.isPresent() && !job.sides().containsKey(side)) {
        top.fault(side.word(), "a side of the job", "The job does not work on this side.");
      } else if (t.isPresent()) {
        // With uncertainties at fault, the rest is read all the same, for its own faults.
        new SideReader(t.get(), job.sides().get(side), uncertainty.orElse(Uncertainty.ASSUMED))
            .read()
            .ifPresent(r -> sides.put(side, r));
      }
    }
    top.close();
    if (!any && faults.isEmpty()) {
      String first = job.sides().keySet().iterator().next().word();
      top.missing(first, "readings of a side of the job", "Add [" + first + "].");
      top.reportMissing();
    }
    faults.throwIfAny();
    return new Readings(
        title.orElseThrow(), date, unit.orElseThrow(), uncertainty.orElseThrow(), sides);
  }

  private static Optional<Uncertainty> uncertainty(TableReader t) {
    Uncertainty usual = Uncertainty.ASSUMED;
    var caliper = StatedValues.length(t, "caliper", Limits.CALIPER_SD, usual.caliperMm());
    var landmark = StatedValues.length(t, "landmark", Limits.LANDMARK_SD, usual.landmarkMm());
    var edge = StatedValues.length(t, "edge", Limits.EDGE_SD, usual.edgeMm());
    var line = Stated.or(t.optionalAngle("line", Limits.LINE_SD), usual.line().value());
    var centre = StatedValues.length(t, "centre", Limits.CENTRE_SD, usual.centreMm());
    return t.closed(() -> new Uncertainty(caliper, landmark, edge, line, centre));
  }

  /** The readings of one tower. */
  private static final class SideReader {
    private final TableReader table;
    private final Side side;
    private final Uncertainty uncertainty;
    private final List<String> bolts;
    private final List<String> landmarks;

    SideReader(TableReader table, SideJob job, Uncertainty uncertainty) {
      this.table = table;
      this.side = job.side();
      this.uncertainty = uncertainty;
      this.bolts = job.plate().bolts().stream().map(Bolt::name).toList();
      this.landmarks = job.tower().landmarks().stream().map(Landmark::name).toList();
    }

    Optional<SideReadings> read() {
      TreeSet<String> taken = new TreeSet<>();
      var rows = table.tables("hole", 1, "holes");
      var holes =
          rows.stream()
              .flatMap(t -> hole(t, taken).stream())
              .sorted(Comparator.comparingInt(h -> bolts.indexOf(h.name())))
              .toList();
      var without = bolts.stream().filter(b -> !taken.contains(b)).toList();
      // An entry whose name cannot be read may be the one that seems to be missing.
      boolean allNamed =
          table.node("hole") instanceof TomlNode.Items list && list.items().size() == taken.size();
      if (allNamed && !rows.isEmpty() && !without.isEmpty()) {
        table.fault(
            "hole",
            "a diameter for every hole: " + String.join(", ", bolts),
            "Measure and add: " + String.join(", ", without) + ".");
      }
      var spans = table.each("span", 0, "readings", this::span);
      var edges = table.each("edge", 0, "readings", this::edge);
      return table.closed(() -> new SideReadings(side, holes, spans, edges));
    }

    private Optional<HoleSize> hole(TableReader t, TreeSet<String> taken) {
      var name = t.unique(known(t, "name", bolts, "holes"), taken);
      var diameter = byCaliper(t, "diameter", Limits.HOLE);
      return t.closed(() -> new HoleSize(name.get(), diameter.get()));
    }

    private Optional<SpanReading> span(TableReader t) {
      var from = end(t, "from");
      var to = end(t, "to");
      if (from.isPresent() && from.equals(to)) {
        t.fault("to", "another hole or landmark", "A span has two ends: name the other one.");
      }
      var said = Stream.of(Edges.values()).filter(between -> t.has(between.word())).toList();
      String limit = "one of " + String.join(", ", SPANS);
      if (said.isEmpty()) {
        t.missing(Edges.INSIDE.word(), limit, "Write down what the calipers read.");
        // Its uncertainty is looked at all the same.
        sd(t, Limits.CALIPER_SD, uncertainty.caliperMm());
        t.close();
        return Optional.empty();
      }
      var length = byCaliper(t, said.get(0).word(), Limits.SPAN);
      for (Edges more : said.subList(1, said.size())) {
        t.fault(more.word(), limit, "Give every reading an entry of its own.");
      }
      return t.closed(() -> new SpanReading(from.get(), to.get(), said.get(0), length.get()));
    }

    private Optional<EdgeGap> edge(TableReader t) {
      var hole = known(t, "hole", bolts, "holes");
      var gap = t.oneOrMore("gap", Limits.EDGE_GAP);
      var sd = sd(t, Limits.EDGE_SD, uncertainty.edgeMm());
      return t.closed(() -> new EdgeGap(hole.get(), new Repeated(gap.get(), sd.get())));
    }

    /** A hole or a landmark; the same name for both would leave it open which was meant. */
    private Optional<String> end(TableReader t, String key) {
      var all = Stream.concat(bolts.stream(), landmarks.stream()).distinct().toList();
      var name = known(t, key, all, "holes and landmarks");
      if (name.isPresent() && bolts.contains(name.get()) && landmarks.contains(name.get())) {
        return t.fault(
            key,
            "a name that only one thing has",
            "The job has a hole and a landmark of this name: rename the landmark there.");
      }
      return name;
    }

    private static Optional<String> known(
        TableReader t, String key, List<String> all, String what) {
      String limit = "the job's " + what + ": " + String.join(", ", all);
      var name = t.string(key, limit);
      if (name.isPresent() && !all.contains(name.get())) {
        return t.fault(key, limit, SpellingHint.advice(name.get(), all, "Use a name of the job."));
      }
      return name;
    }

    private Optional<Repeated> byCaliper(TableReader t, String key, AllowedRange range) {
      var figures = t.oneOrMore(key, range);
      var sd = sd(t, Limits.CALIPER_SD, uncertainty.caliperMm());
      return figures.flatMap(f -> sd.map(one -> new Repeated(f, one)));
    }

    private static Optional<Double> sd(TableReader t, AllowedRange range, Stated<Double> usualMm) {
      return t.length(Respelling.UNCERTAINTY, range, usualMm.value());
    }
  }
}
