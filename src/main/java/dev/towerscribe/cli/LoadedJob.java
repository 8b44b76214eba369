package dev.towerscribe.cli;

import dev.towerscribe.alignment.JobAlignment;
import dev.towerscribe.drawing.Lettering;
import dev.towerscribe.finding.JobRejected;
import dev.towerscribe.job.JobReader;
import dev.towerscribe.layout.JobLayout;
import dev.towerscribe.model.Job;
import dev.towerscribe.model.Print;
import dev.towerscribe.placement.Layouts;
import dev.towerscribe.sheet.text.JobInfo;
import dev.towerscribe.store.PackMark;
import java.io.IOException;
import java.nio.charset.StandardCharsets;
import java.nio.file.Files;
import java.nio.file.Path;
import java.time.LocalDate;
import java.util.List;
import java.util.Optional;
import java.util.function.Consumer;

/**
 * A job as a command was given it: read, laid out, with the stops that were accepted.
 *
 * @param layout the laid out job
 * @param alignment what a bay will read
 * @param accepted its stop findings, and which were accepted
 * @param packMark the code that its sheets would carry
 */
record LoadedJob(JobLayout layout, JobAlignment alignment, Accepted accepted, String packMark) {
  /**
   * Reads a job and lays it out.
   *
   * @param path the job file
   * @param acceptedIds what stood after {@code --accept}
   * @param notes told what should be changed in the file, though it is no fault
   * @return the job
   * @throws IOException if the file cannot be read
   * @throws JobRejected if it has faults
   * @throws Refusal if an accepted id is not a stop finding of this job
   */
  static LoadedJob load(Path path, List<String> acceptedIds, Consumer<String> notes)
      throws IOException, JobRejected, Refusal {
    Job job = new JobReader(Lettering::canWrite, notes).read(path);
    Layouts.Worked worked = Layouts.of(job);
    Accepted accepted = Accepted.of(acceptedIds, worked.layout().stops(), "this job", notes);
    return new LoadedJob(
        worked.layout(), worked.alignment(), accepted, PackMark.of(job, accepted.ids()));
  }

  Job job() {
    return layout.job();
  }

  /** How the job is printed: its sides share a printer unless it says otherwise. */
  Print print() {
    return job().sides().values().iterator().next().print();
  }

  /** What every page says of it. */
  JobInfo info() {
    return info(job().date());
  }

  /** The same of a page that has a date of its own. */
  JobInfo info(Optional<LocalDate> date) {
    return new JobInfo(job().title(), date, job().units(), packMark, accepted.carried());
  }

  /**
   * Reads a job from a text as it would be read from a file.
   *
   * @param text the file's content
   * @param path its place, beside which its plate files are looked for
   * @return the job
   * @throws JobRejected if it has faults
   */
  static Job parse(String text, Path path) throws JobRejected {
    return new JobReader(Lettering::canWrite)
        .parse(text, plate -> plateFile(path.resolveSibling(plate)));
  }

  /** The text of a plate file; empty if it cannot be read, which the job's reader then reports. */
  private static Optional<String> plateFile(Path path) {
    try {
      return Optional.of(Files.readString(path, StandardCharsets.UTF_8));
    } catch (IOException e) {
      return Optional.empty();
    }
  }
}
