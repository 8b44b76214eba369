package dev.towerscribe.cli;

import dev.towerscribe.alignment.JobAlignment;
import dev.towerscribe.drawing.Lettering;
import dev.towerscribe.finding.Finding;
import dev.towerscribe.finding.JobRejected;
import dev.towerscribe.job.JobReader;
import dev.towerscribe.layout.JobLayout;
import dev.towerscribe.model.Job;
import dev.towerscribe.placement.Layouts;
import dev.towerscribe.quantity.Version;
import dev.towerscribe.store.PackMark;
import java.io.IOException;
import java.io.InputStream;
import java.nio.charset.StandardCharsets;
import java.nio.file.FileSystemException;
import java.nio.file.Files;
import java.nio.file.Path;
import java.util.ArrayList;
import java.util.Arrays;
import java.util.List;
import java.util.Optional;
import java.util.Set;
import java.util.TreeSet;
import java.util.function.Consumer;

/**
 * A job as a command was given it: read, laid out, with the stops that were accepted.
 *
 * @param layout the laid out job
 * @param alignment what a bay will read
 * @param accepted ids of accepted stop findings, sorted
 * @param packMark the code that its sheets would carry
 */
record LoadedJob(JobLayout layout, JobAlignment alignment, Set<String> accepted, String packMark) {
  /** Far more text than a job file has; beyond it the reader refuses the file anyway. */
  private static final int MOST_BYTES = 1 << 24;

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
    byte[] before = read(path);
    Job job = new JobReader(Lettering::canWrite, notes).read(path);
    if (!Arrays.equals(before, read(path))) {
      throw new Refusal(Exit.FILES, path + " changed while it was read; run the command again");
    }
    Layouts.Worked worked = Layouts.of(job);
    JobLayout layout = worked.layout();
    Set<String> accepted = new TreeSet<>(acceptedIds);
    refuseUnknown(layout, accepted);
    return new LoadedJob(
        layout,
        worked.alignment(),
        accepted,
        PackMark.of(Version.TEXT, inputs(before, job), accepted));
  }

  /**
   * Stop findings that bar the sheets.
   *
   * @return stops that were not accepted
   */
  List<Finding> openStops() {
    return layout.stops().stream().filter(f -> !accepted.contains(f.id())).toList();
  }

  /**
   * Stop findings that the sheets carry.
   *
   * @return stops that were accepted
   */
  List<Finding> acceptedStops() {
    return layout.stops().stream().filter(f -> accepted.contains(f.id())).toList();
  }

  private static void refuseUnknown(JobLayout layout, Set<String> accepted) throws Refusal {
    List<String> stops = layout.stops().stream().map(Finding::id).toList();
    List<String> unknown = accepted.stream().filter(id -> !stops.contains(id)).toList();
    if (unknown.isEmpty()) {
      return;
    }
    List<String> lines = new ArrayList<>();
    for (String id : unknown) {
      lines.add("--accept " + id + ": not a stop finding of this job");
    }
    lines.add(
        stops.isEmpty()
            ? "this job has no stop finding"
            : "its stop findings are: " + String.join(", ", stops));
    throw new Refusal(Exit.WRONG_USE, lines);
  }

  /**
   * What the pack mark stands for: the job file as written, and the plates, which may have come
   * from files of their own.
   */
  private static List<byte[]> inputs(byte[] text, Job job) {
    List<byte[]> inputs = new ArrayList<>();
    inputs.add(text);
    job.sides()
        .values()
        .forEach(s -> inputs.add(s.plate().toString().getBytes(StandardCharsets.UTF_8)));
    return inputs;
  }

  private static byte[] read(Path path) throws IOException {
    if (Files.isDirectory(path)) {
      throw new IOException(path + ": is a directory, not a job file");
    }
    try (InputStream in = Files.newInputStream(path)) {
      return in.readNBytes(MOST_BYTES);
    } catch (FileSystemException e) {
      throw e;
    } catch (IOException e) {
      throw new IOException(path + ": cannot be read: " + e.getMessage(), e);
    }
  }

  /** The text of a plate file; empty if it cannot be read, which the job's reader then reports. */
  static Optional<String> plateFile(Path path) {
    try {
      return Optional.of(Files.readString(path, StandardCharsets.UTF_8));
    } catch (IOException e) {
      return Optional.empty();
    }
  }
}
