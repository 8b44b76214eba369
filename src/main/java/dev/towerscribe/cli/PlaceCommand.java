package dev.towerscribe.cli;

import dev.towerscribe.drawing.Lettering;
import dev.towerscribe.drawing.Page;
import dev.towerscribe.finding.Finding;
import dev.towerscribe.finding.JobRejected;
import dev.towerscribe.job.JobReader;
import dev.towerscribe.job.MountText;
import dev.towerscribe.model.Job;
import dev.towerscribe.model.Mount;
import dev.towerscribe.placement.CannotPlace;
import dev.towerscribe.placement.FeasibleMap;
import dev.towerscribe.placement.Layouts;
import dev.towerscribe.placement.Offer;
import dev.towerscribe.placement.Placements;
import dev.towerscribe.placement.SearchRange;
import dev.towerscribe.report.json.PlacementJson;
import dev.towerscribe.sheet.report.PlacementMap;
import dev.towerscribe.sheet.text.JobInfo;
import dev.towerscribe.store.OutputFile;
import dev.towerscribe.store.PackDirectory;
import dev.towerscribe.writer.pdf.PdfProof;
import dev.towerscribe.writer.pdf.PdfWriter;
import java.io.IOException;
import java.nio.charset.StandardCharsets;
import java.nio.file.Files;
import java.nio.file.Path;
import java.util.ArrayList;
import java.util.List;
import java.util.Locale;
import java.util.Optional;
import java.util.SortedMap;
import java.util.TreeMap;
import picocli.CommandLine.Model.CommandSpec;
import picocli.CommandLine.ParseResult;

/** {@code place}: where the plates can best go, in words, as data, as a map and as a new job. */
final class PlaceCommand implements Command {
  private static final String PDF = "place.pdf";

  @Override
  public CommandSpec spec() {
    return Options.command(
            "place",
            "Search for the placements that serve the job's aims best: rotation, rearward, inboard"
                + " and setting, one placement for every tower of the job, with no stop finding."
                + " Offers a few, and says what holds each one back. Ends with 1 if none stands.",
            "",
            "Example: towerscribe place wren.toml --write wren-placed.toml")
        .addOption(
            Options.flag("--json", "Print the offers as one JSON object, in degrees and mm."))
        .addOption(
            Options.text(
                "DIR",
                "Write place.pdf, the map of where the plates can go, there as well. Made if"
                    + " missing; other files there are left alone.",
                "-o",
                "--output"))
        .addOption(
            Options.text(
                "FILE",
                "Write the job with its [mount] replaced, all else left as it is, to this file.",
                "--write"))
        .addOption(
            Options.text("LETTER", "Which offer to write; A, the first, if not given.", "--offer"))
        .addOption(Options.flag("--force", "Let --write replace a file that is there already."))
        .addPositional(Options.job());
  }

  @Override
  public int run(ParseResult given, Context context) throws IOException, JobRejected, Refusal {
    String file = given.matchedPositionalValue(0, "");
    Path path = context.path(file);
    if (given.hasMatchedOption("--offer") && !given.hasMatchedOption("--write")) {
      throw new Refusal(Exit.WRONG_USE, "--offer says which offer --write is to write: give both");
    }
    LoadedJob loaded = LoadedJob.load(path, List.of(), context.console()::warn);
    Job job = loaded.layout().job();
    // A search takes a while: what bars the writing is said before it.
    Optional<Path> write = Optional.empty();
    String before = "";
    if (given.hasMatchedOption("--write")) {
      String name = given.matchedOptionValue("--write", "");
      Path target = context.path(name);
      refuseTarget(path, target, given.hasMatchedOption("--force"));
      OutputFile.refuseWithoutFolder(target, name);
      before = Files.readString(path, StandardCharsets.UTF_8);
      refuseText(before, job);
      write = Optional.of(target);
    }
    boolean map = given.hasMatchedOption("-o");
    Placements.Found found;
    int threads = Runtime.getRuntime().availableProcessors();
    try (ProgressBar bar = ProgressBar.ofTerminal(context.console())) {
      found =
          Placements.find(job, new Placements.Settings(SearchRange.USUAL, threads, map), bar::at);
    } catch (CannotPlace e) {
      if (e.isStop() && given.hasMatchedOption("--json")) {
        context.console().print(PlacementJson.of(job, List.of()));
      }
      throw new Refusal(e.isStop() ? Exit.STOPPED : Exit.WRONG_USE, file + ": " + e.getMessage());
    }
    if (found.offers().isEmpty()) {
      if (given.hasMatchedOption("--json")) {
        context.console().print(PlacementJson.of(job, found.offers()));
      }
      throw new Refusal(Exit.STOPPED, none(found));
    }
    Optional<byte[]> text = Optional.empty();
    Offer chosen = found.offers().get(0);
    if (write.isPresent()) {
      chosen = chosen(found.offers(), given.matchedOptionValue("--offer", "A"));
      text = Optional.of(placed(before, job, chosen.mount()));
      prove(text.get(), write.get(), job, chosen);
    }
    if (map) {
      map(loaded, found, context, context.path(given.matchedOptionValue("-o", "")));
    }
    if (write.isPresent()) {
      OutputFile.write(
          context.ops(), write.get(), text.orElseThrow(), given.hasMatchedOption("--force"));
    }
    context
        .console()
        .print(
            given.hasMatchedOption("--json")
                ? PlacementJson.of(job, found.offers())
                : PlacementText.of(job, found));
    if (write.isPresent() && !given.hasMatchedOption("--json")) {
      context
          .console()
          .say(
              "wrote "
                  + given.matchedOptionValue("--write", "")
                  + " with offer "
                  + given.matchedOptionValue("--offer", "A").toUpperCase(Locale.ROOT));
    }
    return Exit.DONE;
  }

  private static List<String> none(Placements.Found found) {
    List<String> lines = new ArrayList<>();
    List<Finding> always = found.always();
    lines.add(
        always.isEmpty()
            ? "no placement within 30 mm passes every check. In the way, the last to give way"
                + " first:"
            : "no placement can put these stop findings right:");
    found.inTheWay().forEach(b -> lines.add(b.words() + ": " + remedy(b)));
    always.forEach(f -> lines.add(f.id() + ": " + f.say()));
    return lines;
  }

  private static String remedy(FeasibleMap.Barrier barrier) {
    return switch (barrier) {
      case SHAFT -> "keep less inside the mark, or take a plate with a shorter slot";
      case PLATE -> "take a plate with another outline, or look at the opening and wall again";
      case BOLTS -> "measure more sound metal, keep more inside the mark or take another plate";
      case BRACKET -> "take a smaller socket, or look at the bracket's outline and least width";
      case LINKAGE -> "look at strut.camber, aims.camber_limit and the strut's points again";
    };
  }

  private static void refuseTarget(Path input, Path target, boolean force)
      throws IOException, Refusal {
    if (Files.exists(target) && Files.isSameFile(input, target)) {
      throw new Refusal(
          Exit.WRONG_USE, "--write names the job file itself, which is never replaced");
    }
    if (Files.exists(target) && !force) {
      throw new Refusal(
          Exit.FILES, target + " is there already and was left alone; --force replaces it");
    }
  }

  private static Offer chosen(List<Offer> offers, String letter) throws Refusal {
    for (int i = 0; i < offers.size(); i++) {
      if (PlacementMap.letter(i).equalsIgnoreCase(letter)) {
        return offers.get(i);
      }
    }
    throw new Refusal(
        Exit.WRONG_USE,
        "--offer "
            + letter
            + ": the offers go from A to "
            + PlacementMap.letter(offers.size() - 1));
  }

  /** Refuses a job file whose mount cannot be replaced by any other. */
  private static void refuseText(String text, Job job) throws Refusal {
    if (MountText.differsBySide(text)) {
      throw new Refusal(
          Exit.WRONG_USE,
          "the job gives one side a [mount] of its own, and an offer is one placement for both:"
              + " take it out, or enter the figures by hand");
    }
    placed(text, job, job.sides().values().iterator().next().mount());
  }

  /** The job's text with another mount, read back before it goes anywhere. */
  private static byte[] placed(String text, Job job, Mount mount) throws Refusal {
    Optional<String> changed = MountText.with(text, job.units(), mount);
    if (changed.isEmpty()) {
      throw new Refusal(
          Exit.WRONG_USE,
          "the job's [mount] is not written one key to a line, so it can't be replaced safely:"
              + " enter the figures by hand");
    }
    return changed.get().getBytes(StandardCharsets.UTF_8);
  }

  /** Read back as it will be read from its new place, it must be this job with that mount. */
  private static void prove(byte[] text, Path target, Job job, Offer offer) throws Refusal {
    Job again;
    try {
      again =
          new JobReader(Lettering::canWrite)
              .parse(
                  new String(text, StandardCharsets.UTF_8),
                  name -> LoadedJob.plateFile(target.resolveSibling(name)));
      if (again.equals(job.with(offer.mount())) && Layouts.of(again).layout().stops().isEmpty()) {
        return;
      }
    } catch (JobRejected e) {
      List<String> lines = new ArrayList<>();
      lines.add("nothing was written: at " + target + " the job could not be worked from");
      e.faults().forEach(f -> lines.add(f.line()));
      throw new Refusal(Exit.WRONG_USE, lines);
    }
    throw new Refusal(
        Exit.OUR_FAULT,
        List.of(
            "nothing was written: the job did not read back as the offer that was chosen",
            Main.PLEASE_REPORT));
  }

  private static void map(LoadedJob loaded, Placements.Found found, Context context, Path directory)
      throws IOException, Refusal {
    Job job = loaded.layout().job();
    JobInfo info = new JobInfo(job.title(), job.date(), job.units(), loaded.packMark(), List.of());
    List<Page> pages =
        PlacementMap.pages(
            found.map().orElseThrow(),
            found.offers(),
            found.estimate(),
            job.sides().values().iterator().next().print(),
            info);
    byte[] pdf = PdfWriter.write(job.title(), pages);
    PackCommand.refuse(PdfProof.check(pdf, pages));
    SortedMap<String, byte[]> files = new TreeMap<>();
    files.put(PDF, pdf);
    new PackDirectory(context.ops(), directory).writePlacement(loaded.packMark(), files);
  }
}
