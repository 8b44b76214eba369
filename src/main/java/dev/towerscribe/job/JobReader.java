package dev.towerscribe.job;

import dev.towerscribe.finding.Fault;
import dev.towerscribe.finding.JobRejected;
import dev.towerscribe.model.Job;
import dev.towerscribe.model.Seat;
import dev.towerscribe.model.Side;
import dev.towerscribe.model.SideJob;
import java.io.IOException;
import java.io.InputStream;
import java.io.UncheckedIOException;
import java.nio.charset.StandardCharsets;
import java.nio.file.AccessDeniedException;
import java.nio.file.Files;
import java.nio.file.NoSuchFileException;
import java.nio.file.Path;
import java.util.EnumMap;
import java.util.List;
import java.util.Map;
import java.util.Optional;
import java.util.function.Consumer;
import java.util.function.Function;
import java.util.function.IntPredicate;
import java.util.stream.Stream;

/**
 * Reads job files. Whatever a file holds, the answer is a job or every fault found in it.
 *
 * @param printable whether the sheets can carry a character, by its Unicode code point
 * @param notes told what is no fault but should be changed in a file: keys in an old spelling
 */
public record JobReader(IntPredicate printable, Consumer<String> notes) {
  private static final String[] WHOLE_FILE = {
    FileHead.FORMAT,
    "title",
    "date",
    FileHead.UNITS,
    "sides",
    "drawing",
    "jig",
    "load",
    "left",
    "right"
  };
  private static final List<String> NEEDED = List.of("tower", "plate", "mount");
  private static final String[] SECTIONS = {
    "tower", "plate", "mount", "holes", "cut", "tools", "print", "strut", "axis", "aims"
  };

  /**
   * A reader that keeps its notes to itself.
   *
   * @param printable whether the sheets can carry a character, by its Unicode code point
   */
  public JobReader(IntPredicate printable) {
    this(printable, note -> {});
  }

  /**
   * Reads a job file, and the plate files it names beside it.
   *
   * @param file the job file
   * @return the job
   * @throws IOException if a file cannot be read; the message says which and why
   * @throws JobRejected if the job cannot be used, with every fault
   */
  public Job read(Path file) throws IOException, JobRejected {
    return job(bytes(file), name -> Optional.of(bytes(file.resolveSibling(name))));
  }

  /**
   * Reads a job from its text.
   *
   * @param text TOML
   * @param plateFiles gives the text of a plate file by its path beside the job, or empty if there
   *     is none
   * @return the job
   * @throws JobRejected if the job cannot be used, with every fault
   */
  public Job parse(String text, Function<String, Optional<String>> plateFiles) throws JobRejected {
    try {
      // Half of a surrogate pair can be in a string but in no file; it becomes a question mark.
      return job(utf8(text), name -> plateFiles.apply(name).map(JobReader::utf8));
    } catch (IOException e) {
      throw new UncheckedIOException(e);
    }
  }

  private static byte[] utf8(String text) {
    return text.getBytes(StandardCharsets.UTF_8);
  }

  static byte[] bytes(Path file) throws IOException {
    try {
      if (Files.isDirectory(file)) {
        throw new IOException("cannot read " + file + ": it is a folder, not a file");
      }
      try (InputStream in = Files.newInputStream(file)) {
        return in.readNBytes(TomlText.MOST_BYTES + 1);
      }
    } catch (NoSuchFileException e) {
      throw new IOException("cannot read " + file + ": there is no such file", e);
    } catch (AccessDeniedException e) {
      throw new IOException("cannot read " + file + ": not allowed to", e);
    }
  }

  /**
   * Whether a file is plainly something other than a job.
   *
   * @param bytes its content
   * @return true if it can be parsed and has no table that jobs have; false for a file that cannot
   *     be parsed, which may be a broken job
   */
  public static boolean isOfAnotherKind(byte[] bytes) {
    Faults faults = new Faults();
    // Every job has these two, for both sides or for each; no plate, survey, visit or readings
    // file has them, nor have the tables that a survey makes for a job.
    return TomlText.decode(bytes, "", faults)
        .flatMap(text -> TomlText.parse(text, "", faults))
        .filter(toml -> Stream.of("mount", "plate").noneMatch(key -> onAnySide(toml, key)))
        .isPresent();
  }

  /**
   * The file without a side's changes to a table that is not there: the table's own fault says it,
   * and what the changes leave out is none.
   */
  private static TomlNode.Table founded(TomlNode.Table root, List<Side> sides) {
    TomlNode.Table founded = root;
    for (String key : NEEDED) {
      boolean shared = root.entries().get(key) instanceof TomlNode.Table;
      if (!shared && sides.stream().anyMatch(s -> !own(root, s).entries().containsKey(key))) {
        for (Side side : sides) {
          founded = founded.with(side.word(), own(founded, side).without(List.of(key)));
        }
      }
    }
    return founded;
  }

  /** Tables of sides that are not worked on, whatever they hold. */
  private static List<String> otherThan(List<Side> sides) {
    return Stream.of(Side.values()).filter(s -> !sides.contains(s)).map(Side::word).toList();
  }

  private static TomlNode.Table own(TomlNode.Table root, Side side) {
    return root.entries().get(side.word()) instanceof TomlNode.Table t
        ? t
        : TomlNode.Table.empty(root.origin().child(side.word()));
  }

  private static boolean onAnySide(TomlText toml, String key) {
    return toml.has(key) || toml.has("left", key) || toml.has("right", key);
  }

  private Job job(byte[] bytes, PlateFiles.Source source) throws IOException, JobRejected {
    return Faults.<Job, IOException>of(faults -> job(bytes, source, faults));
  }

  private Job job(byte[] bytes, PlateFiles.Source source, Faults faults)
      throws IOException, JobRejected {
    TomlNode.Table root = FileHead.root(bytes, Respelling.OF_JOBS, faults, notes);
    TableReader top = FileHead.open(root, faults, printable);
    var unit = root.origin().unit();
    FileHead.readUnits(top);
    var title = top.label("title", Limits.TITLE);
    var date = FileHead.date(top);
    var sides = FileHead.sides(top);
    var drawing = top.tableOrEmpty("drawing").map(WorkshopReader::drawing);
    var jig = top.tableOrEmpty("jig").flatMap(WorkshopReader::jig);
    var loadTable = top.optionalTable("load");
    var seat = loadTable.flatMap(WorkshopReader::seat);
    var load = loadTable.flatMap(WorkshopReader::load);
    top.optionalTable("left");
    top.optionalTable("right");
    top.leave(SECTIONS);
    top.close();
    faults.noteBlanks(root.without(List.of(SECTIONS)).without(otherThan(sides)));

    Map<Side, SideJob> jobs = new EnumMap<>(Side.class);
    PlateFiles plates = new PlateFiles(source, root.origin().said(), faults);
    for (Side side : sides) {
      side(side, founded(root, sides), plates, seat, faults).ifPresent(job -> jobs.put(side, job));
    }
    faults.throwIfAny();
    return new Job(
        title.orElseThrow(),
        date,
        unit.orElseThrow(),
        jobs,
        drawing.orElseThrow(),
        jig.orElseThrow(),
        load);
  }

  private Optional<SideJob> side(
      Side side, TomlNode.Table root, PlateFiles plates, Optional<Seat> loadSeat, Faults faults)
      throws IOException {
    // Unknown keys of the whole file were reported with the top table.
    TomlNode.Table shared = root.only(List.of(SECTIONS));
    TomlNode.Table own = own(root, side);
    TomlNode ownPlate = own.entries().get("plate");
    TomlNode sharedPlate = shared.entries().get("plate");
    Optional<TomlNode> plate = Optional.empty();
    if (sharedPlate != null && !PlateFiles.namesFile(ownPlate)) {
      plate = plates.expanded(sharedPlate);
      shared = plate.isPresent() ? shared.with("plate", plate.get()) : shared;
    } else {
      // A side that names a plate file of its own shares nothing with the other plate.
      shared = shared.without(List.of("plate"));
    }
    boolean plateReadable = sharedPlate == null || plate.isPresent();
    if (ownPlate != null && PlateFiles.namesFile(ownPlate)) {
      plate = plates.expanded(ownPlate);
      plateReadable = plate.isPresent();
      own = plate.isPresent() ? own.with("plate", plate.get()) : own;
    }
    for (String key : WHOLE_FILE) {
      TomlNode node = own.entries().get(key);
      if (node != null) {
        String todo = key + " belongs to the whole file: it cannot differ from side to side.";
        faults.add(new Fault(node.origin().path(), "unknown key", "", todo));
      }
    }
    TomlNode.Table merged = SideOverrides.over(shared, own.without(List.of(WHOLE_FILE)));
    faults.noteBlanks(merged);
    return SideReader.read(
        side, new TableReader(merged, faults, printable), plateReadable, loadSeat);
  }
}
