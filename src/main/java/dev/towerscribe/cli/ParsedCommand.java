package dev.towerscribe.cli;

import dev.towerscribe.drawing.Lettering;
import dev.towerscribe.finding.JobRejected;
import dev.towerscribe.job.JobReader;
import dev.towerscribe.model.Job;
import dev.towerscribe.model.Paper;
import dev.towerscribe.model.Print;
import dev.towerscribe.report.PlainText;
import dev.towerscribe.report.Report;
import dev.towerscribe.store.FileOps;
import dev.towerscribe.store.MadeFile;
import dev.towerscribe.store.OutputFile;
import dev.towerscribe.store.PackDirectory;
import java.io.IOException;
import java.nio.file.Path;
import java.util.Arrays;
import java.util.List;
import java.util.Optional;
import java.util.function.Consumer;
import java.util.function.Function;
import java.util.function.Supplier;
import picocli.CommandLine.ParseResult;

/**
 * A command as it was given.
 *
 * @param words what stood on the command line
 * @param context where it works
 */
record ParsedCommand(ParseResult words, Context context) {
  /** What {@code -o} and its like are called everywhere. */
  static final String OUTPUT = "-o";

  static final String FORCE = "--force";
  static final String JSON = "--json";
  static final String PAPER = "--paper";
  static final String ACCEPT = "--accept";

  Console console() {
    return context.console();
  }

  FileOps ops() {
    return context.ops();
  }

  /** Where readers tell what should be changed in a file, though it is no fault. */
  Consumer<String> notes() {
    return console()::warn;
  }

  boolean has(String option) {
    return words.hasMatchedOption(option);
  }

  /** What stood after an option. */
  Optional<String> text(String option) {
    return Optional.ofNullable(words.matchedOptionValue(option, null));
  }

  /** What stood without an option, by its place; empty if nothing did. */
  Optional<String> word(int place) {
    return Optional.ofNullable(words.matchedPositionalValue(place, null));
  }

  /** The ids after {@code --accept}. */
  List<String> accepted() {
    return words.matchedOptionValue(ACCEPT, List.of());
  }

  /** The path of a needed word. */
  Path path(int place) throws Refusal {
    return context.path(word(place).orElse(""));
  }

  Path path(String given) throws Refusal {
    return context.path(given);
  }

  /**
   * The job that stood first, with the stops that were accepted.
   *
   * @throws IOException if a file cannot be read
   * @throws JobRejected if it has faults
   * @throws Refusal if an accepted id is not a stop finding of this job
   */
  LoadedJob job() throws IOException, JobRejected, Refusal {
    return LoadedJob.load(path(0), accepted(), notes());
  }

  /** The same for commands whose {@code --accept} is about something else. */
  LoadedJob jobAlone() throws IOException, JobRejected, Refusal {
    return LoadedJob.load(path(0), List.of(), notes());
  }

  /** The job that stood first, as its file has it: not laid out, none of its stops looked for. */
  Job jobFile() throws IOException, JobRejected, Refusal {
    return new JobReader(Lettering::canWrite, notes()).read(path(0));
  }

  /** Writes a file to fill in; never over the job that it is for. */
  void start(String file, String text) throws IOException, Refusal {
    OutputFile output = output(file);
    if (path(file).normalize().equals(path(0).normalize())) {
      throw Refusal.wrongUse("-o names the job file itself, which is never replaced");
    }
    output.write(MadeFile.text(text), force());
    console().say("wrote " + file);
  }

  /** What reads a file that may have faults. */
  interface Reading<T> {
    T read() throws IOException, JobRejected;
  }

  /** What a file other than the job holds; its faults are told under a head of their own. */
  static <T> T read(String head, Reading<T> reading) throws IOException, Refusal {
    try {
      return reading.read();
    } catch (JobRejected e) {
      throw Refusal.of(head, e);
    }
  }

  /** A file to be written, its folder there. */
  OutputFile output(String file) throws IOException, Refusal {
    return new OutputFile(ops(), path(file)).inFolder(file);
  }

  boolean force() {
    return has(FORCE);
  }

  /** The directory after {@code -o}, as a place for files and as a path. */
  PackDirectory directory() throws Refusal {
    return new PackDirectory(ops(), directoryPath());
  }

  Path directoryPath() throws Refusal {
    return path(text(OUTPUT).orElse(""));
  }

  Optional<Paper> paper() throws Refusal {
    return oneOf(PAPER, Paper.values(), Paper::word);
  }

  /** How pages are printed: on the paper that was asked for, or else as usual. */
  Print print(Print usual) throws Refusal {
    return paper().map(usual::on).orElse(usual);
  }

  /**
   * One of a few words.
   *
   * @param option what it stands after
   * @param all what it may mean
   * @param word the word for each; capitals do not count
   * @return what it means; empty if the option is not there
   * @throws Refusal for any other word
   */
  <T> Optional<T> oneOf(String option, T[] all, Function<T, String> word) throws Refusal {
    Optional<String> said = text(option);
    if (said.isEmpty()) {
      return Optional.empty();
    }
    Optional<T> one =
        Arrays.stream(all).filter(a -> word.apply(a).equalsIgnoreCase(said.get())).findFirst();
    if (one.isEmpty()) {
      throw Refusal.wrongUse(
          "%s %s: not one of %s",
          option, said.get(), String.join(", ", Arrays.stream(all).map(word).toList()));
    }
    return one;
  }

  /** Data for programs if asked for, and otherwise words for people. */
  void print(Supplier<String> json, Supplier<Report> words) {
    console().print(has(JSON) ? json.get() : PlainText.of(words.get()));
  }
}
