package dev.towerscribe.cli;

import dev.towerscribe.drawing.Lettering;
import dev.towerscribe.finding.JobRejected;
import dev.towerscribe.geometry.PrintReading;
import dev.towerscribe.geometry.PrintScale;
import dev.towerscribe.job.JobReader;
import dev.towerscribe.job.PrintText;
import dev.towerscribe.model.Job;
import dev.towerscribe.model.Print;
import dev.towerscribe.model.PrinterFigures;
import dev.towerscribe.quantity.Angle;
import dev.towerscribe.quantity.LengthUnit;
import dev.towerscribe.quantity.Lengths;
import dev.towerscribe.quantity.Numbers;
import dev.towerscribe.report.PlainText;
import dev.towerscribe.report.PrintProof;
import dev.towerscribe.report.PrintReport;
import dev.towerscribe.report.json.PrintProofJson;
import dev.towerscribe.sheet.tower.RulerPage;
import dev.towerscribe.store.MadeFile;
import dev.towerscribe.store.OutputFile;
import java.io.IOException;
import java.nio.charset.StandardCharsets;
import java.nio.file.Files;
import java.nio.file.Path;
import java.util.ArrayList;
import java.util.Arrays;
import java.util.List;
import java.util.Optional;
import java.util.regex.Matcher;
import java.util.regex.Pattern;
import java.util.stream.Stream;

/**
 * {@code ruler --measured}: what calipers read on a print becomes the job's print figures.
 *
 * @param given what was asked for, with {@code --measured}
 */
record MeasuredPrint(ParsedCommand given) {
  /** Common practice, no source: what one reading of plain calipers on paper is worth. */
  private static final double UNCERTAINTY_MM = 0.05;

  private static final double MOST_UNCERTAINTY_MM = 1.0;

  /** What most printers leave blank, and the least margin of a job. */
  private static final double PRINTED_EDGE_MM = 4.0;

  private static final double MOST_LENGTH = 1000;

  private static final String EXAMPLE = "101.3,99.4";

  private static final Pattern LENGTH =
      Pattern.compile("([+-]?(?:[0-9]+\\.?[0-9]*|\\.[0-9]+)) ?(mm|in)?");

  static final String JOB = "--job";
  static final String MEASURED = "--measured";
  static final String BARS = "--bars";
  static final String UNCERTAINTY = "--uncertainty";
  static final String UNITS = "--units";
  static final String WRITE = "--write";

  /** Options that are of use with readings only. */
  private static final List<String> ONLY_HERE =
      List.of(BARS, UNCERTAINTY, UNITS, WRITE, ParsedCommand.JSON);

  /** Options of the page, which is not written here. */
  private static final List<String> NOT_HERE =
      List.of(ParsedCommand.OUTPUT, ParsedCommand.PAPER, ParsedCommand.FORCE);

  private record JobFile(String given, Path path, byte[] bytes, Job job) {
    String text() {
      return new String(bytes, StandardCharsets.UTF_8);
    }
  }

  /** Refuses options that only readings give a meaning. */
  static void refuseWithout(ParsedCommand given) throws Refusal {
    Refusal.ifAny(
        ONLY_HERE.stream()
            .filter(given::has)
            .map(o -> o + " goes with --measured, which was not given")
            .toList());
  }

  /**
   * Works out a print and, if asked to, changes the job file.
   *
   * @return the exit code
   * @throws IOException if the job file cannot be read or written
   * @throws JobRejected if it has faults
   * @throws Refusal if the readings are wrong or the printer is of no use
   */
  int run() throws IOException, JobRejected, Refusal {
    List<String> faults = new ArrayList<>();
    List<Said> readings = numbers(MEASURED, List.of("across", "along", "far ends"), faults);
    List<Said> bars = numbers(BARS, List.of("across", "along"), faults);
    List<Said> uncertainty = numbers(UNCERTAINTY, List.of("uncertainty"), faults);
    Optional<LengthUnit> unit = Optional.empty();
    try {
      unit = given.oneOf(UNITS, LengthUnit.values(), LengthUnit::symbol);
    } catch (Refusal e) {
      faults.addAll(e.lines());
    }
    NOT_HERE.stream()
        .filter(given::has)
        .forEach(o -> faults.add(o + ": with --measured no page is written"));
    boolean hasJob = given.has(JOB);
    if (given.has(WRITE) && !hasJob) {
      faults.add("--write: which job file? Give it with --job");
    }
    if (given.has(UNITS) && hasJob) {
      faults.add("--units: the job says its units; leave it out");
    }
    Refusal.ifAny(faults);

    Optional<JobFile> file = hasJob ? Optional.of(jobFile()) : Optional.empty();
    LengthUnit units = file.map(f -> f.job().units()).orElse(unit.orElse(LengthUnit.MM));
    PrintReading reading = reading(readings, bars, uncertainty, units);
    PrintCauses causes = new PrintCauses(reading, units);
    if (!reading.isPossible()) {
      // Lengths that no triangle has are a slip, not a printer.
      throw Refusal.wrongUse(causes.ofTriangle());
    }
    refusePrinter(reading, causes.all());

    Optional<Print> print = file.map(f -> f.job().sides().values().iterator().next().print());
    PrintScale old =
        print
            .map(p -> new PrintScale(p.scaleAcross(), p.scaleAlong(), p.skew()))
            .orElse(PrintScale.TRUE);
    PrintProof proof = PrintProof.of(reading, units, old, causes.notes());
    if (!reading.isTrue()) {
      refusePrinter(reading, tooFar(proof));
      proof = withEdge(proof, print);
    }
    boolean write = given.has(WRITE) && !reading.isTrue();
    if (write) {
      write(file.orElseThrow(), proof);
    }
    tell(proof, file, write);
    return Exit.DONE;
  }

  private void tell(PrintProof proof, Optional<JobFile> file, boolean written) {
    if (given.has(ParsedCommand.JSON)) {
      given.console().print(PrintProofJson.of(proof, written));
      return;
    }
    given.console().print(PlainText.of(PrintReport.of(proof, file.isPresent())));
    if (proof.reading().isTrue()) {
      return;
    }
    given.console().say("");
    if (written) {
      given.console().say("wrote these lines into " + file.orElseThrow().given());
    } else if (file.isPresent()) {
      given.console().say("not written: --write puts these lines into the job file");
    }
    given.console().say(PrintReport.again(proof));
  }

  // Readings.

  /** A length as typed: in the unit behind it, or in that of all that have none. */
  private record Said(double value, Optional<LengthUnit> unit) {
    double mm(LengthUnit usual) {
      return unit.orElse(usual).toMm(value);
    }
  }

  private List<Said> numbers(String option, List<String> names, List<String> faults) {
    Optional<String> said = given.text(option);
    if (said.isEmpty()) {
      return List.of();
    }
    String text = said.get();
    String[] parts = text.split(",", -1);
    int least = Math.min(2, names.size());
    if (parts.length < least || parts.length > names.size()) {
      faults.add(
          ("%s %s: %s, needs %s%s (%s). Separate them with commas, without spaces; decimals take a"
                  + " point: %s")
              .formatted(
                  option,
                  text,
                  parts.length == 1 ? "1 number" : parts.length + " numbers",
                  least == names.size() ? "" : least + " or ",
                  names.size(),
                  String.join(",", names),
                  EXAMPLE));
      return List.of();
    }
    List<Said> values = new ArrayList<>();
    for (int i = 0; i < parts.length; i++) {
      String where = option + ", " + names.get(i) + ": " + parts[i];
      String part = parts[i].strip();
      Matcher length = LENGTH.matcher(part);
      if (!length.matches()) {
        faults.add(
            ("%s is not a plain number, alone or with mm or in right behind it. Commas between the"
                    + " numbers, a point for decimals: %s")
                .formatted(where, EXAMPLE));
        continue;
      }
      double value = Double.parseDouble(length.group(1));
      if (!(value > 0 && value <= MOST_LENGTH)) {
        String most = " is too much: at most " + Numbers.plain(MOST_LENGTH, 0);
        faults.add(where + (value > 0 ? most : " must be more than 0"));
        continue;
      }
      String symbol = length.group(2);
      values.add(
          new Said(
              value,
              Stream.of(LengthUnit.values()).filter(u -> u.symbol().equals(symbol)).findFirst()));
    }
    return values;
  }

  private static PrintReading reading(
      List<Said> readings, List<Said> bars, List<Said> uncertainty, LengthUnit units)
      throws Refusal {
    RulerPage.Bars usual = RulerPage.Bars.ofSheets(units);
    double uncertaintyMm = uncertainty.isEmpty() ? UNCERTAINTY_MM : uncertainty.get(0).mm(units);
    if (uncertaintyMm > MOST_UNCERTAINTY_MM) {
      throw Refusal.wrongUse(
          "--uncertainty: %s is too much, at most %s: a print cannot be proved by such readings",
          Lengths.in(units).with(uncertaintyMm), Lengths.in(units).with(MOST_UNCERTAINTY_MM));
    }
    return new PrintReading(
        bars.isEmpty() ? usual.acrossMm() : bars.get(0).mm(units),
        bars.isEmpty() ? usual.alongMm() : bars.get(1).mm(units),
        readings.get(0).mm(units),
        readings.get(1).mm(units),
        readings.size() == 3 ? Optional.of(readings.get(2).mm(units)) : Optional.empty(),
        uncertaintyMm);
  }

  private void refusePrinter(PrintReading reading, List<String> reasons) throws Refusal {
    if (reasons.isEmpty()) {
      return;
    }
    if (given.has(ParsedCommand.JSON)) {
      given.console().print(PrintProofJson.refused(reading, reasons));
    }
    List<String> lines = new ArrayList<>(reasons);
    lines.add("nothing was written; do not use this print");
    throw new Refusal(Exit.STOPPED, lines);
  }

  /** Readings that are believable by themselves but not on top of what the job undoes already. */
  private static List<String> tooFar(PrintProof proof) {
    List<String> lines = new ArrayList<>();
    PrinterFigures figures = proof.figures();
    together("scale across", figures.across(), lines);
    together("scale along", figures.along(), lines);
    double skew = figures.skew().orElse(Angle.ZERO).degrees();
    if (Math.abs(skew) > PrintCauses.MOST_SKEW_DEG) {
      lines.add(
          ("with the job's own skew this printer would be %s deg out of square, more than %s. Was"
                  + " this print made with the job as it is now?")
              .formatted(Numbers.fixed(skew, 2), Numbers.plain(PrintCauses.MOST_SKEW_DEG, 0)));
    }
    return lines;
  }

  private static void together(String name, double value, List<String> lines) {
    if (PrintCauses.isOff(value)) {
      String past = Numbers.plain(100 * RulerPage.REFUSED_PAST, 0);
      lines.add(
          "with the job's own, the %s would be %s, more than %s %% off."
                  .formatted(name, Numbers.fixed(value, 4), past)
              + " Was this print made with the job as it is now, at 100 %?");
    }
  }

  private static PrintProof withEdge(PrintProof proof, Optional<Print> print) {
    PrinterFigures f = proof.figures();
    Optional<Double> edge =
        print.map(p -> p.by(f.across(), f.along(), f.skew().orElse(Angle.ZERO)).drawnEdgeMm());
    if (edge.isEmpty() || edge.get() >= PRINTED_EDGE_MM) {
      return proof;
    }
    List<String> notes = new ArrayList<>(proof.notes());
    notes.add(
        ("Drawn so, the corners of the sheets come within %s of the paper's edge, where printers"
                + " leave %s or more blank: make print.margin larger.")
            .formatted(
                Lengths.in(proof.units()).with(edge.get()),
                Lengths.in(proof.units()).with(PRINTED_EDGE_MM)));
    return new PrintProof(proof.reading(), proof.units(), proof.old(), f, notes);
  }

  // The job file.

  private JobFile jobFile() throws IOException, JobRejected, Refusal {
    String name = given.text(JOB).orElseThrow();
    Path path = given.path(name);
    Job job = new JobReader(Lettering::canWrite, given.notes()).read(path);
    byte[] bytes = Files.readAllBytes(path);
    List<String> own = PrintText.differsBySide(new String(bytes, StandardCharsets.UTF_8));
    if (!own.isEmpty()) {
      throw Refusal.wrongUse(
          ("%s: %s gives one side a printer of its own, and one print cannot stand for both. Take"
                  + " it out, or measure without --job and enter the figures by hand")
              .formatted(name, String.join(", ", own)));
    }
    JobFile file = new JobFile(name, path, bytes, job);
    if (!LoadedJob.parse(file.text(), path).equals(job)) {
      throw changed(name);
    }
    return file;
  }

  private static Refusal changed(String name) {
    return new Refusal(Exit.FILES, name + " changed while it was read; run the command again");
  }

  private void write(JobFile file, PrintProof proof) throws IOException, JobRejected, Refusal {
    PrinterFigures figures = proof.figures();
    Optional<String> text = PrintText.with(file.text(), figures);
    if (text.isEmpty()) {
      throw Refusal.of(
          file.given()
              + ": [print] is not written one key to a line with scale in braces, so it can't be"
              + " changed safely. Enter by hand, under [print]:",
          figures.lines());
    }
    Job wanted =
        file.job().printedBy(figures.across(), figures.along(), figures.skew().orElse(Angle.ZERO));
    if (!LoadedJob.parse(text.get(), file.path()).equals(wanted)) {
      throw Refusal.ourFault("nothing was written: the job did not read back as it was to be");
    }
    if (!Arrays.equals(Files.readAllBytes(file.path()), file.bytes())) {
      throw changed(file.given());
    }
    new OutputFile(given.ops(), file.path()).write(MadeFile.text(text.get()), true);
  }
}
