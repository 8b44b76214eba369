package dev.towerscribe.cli;

import dev.towerscribe.drawing.Page;
import dev.towerscribe.finding.Finding;
import dev.towerscribe.finding.JobRejected;
import dev.towerscribe.job.MountText;
import dev.towerscribe.layout.Layout;
import dev.towerscribe.model.Job;
import dev.towerscribe.model.Mount;
import dev.towerscribe.placement.CannotPlace;
import dev.towerscribe.placement.FeasibleMap;
import dev.towerscribe.placement.Layouts;
import dev.towerscribe.placement.Offer;
import dev.towerscribe.placement.Placements;
import dev.towerscribe.placement.SearchRange;
import dev.towerscribe.report.PlacementReport;
import dev.towerscribe.report.json.PlacementJson;
import dev.towerscribe.sheet.report.PlacementMap;
import dev.towerscribe.store.FileSet;
import dev.towerscribe.store.MadeFile;
import dev.towerscribe.store.MadeFiles;
import dev.towerscribe.store.OutputFile;
import java.io.IOException;
import java.nio.charset.StandardCharsets;
import java.nio.file.Files;
import java.nio.file.Path;
import java.util.ArrayList;
import java.util.List;
import java.util.Locale;
import java.util.Optional;

/** {@code place}: where the plates can best go, in words, as data, as a map and as a new job. */
final class PlaceCommand implements Command {
  private static final String WRITE = "--write";
  private static final String OFFER = "--offer";
  private static final String FIRST = "A";

  @Override
  public Options options() {
    return Options.command(
            "place",
            "Search for the placements that serve the job's aims best: rotation, rearward, inboard"
                + " and setting, one placement for every tower of the job, with no stop finding."
                + " Offers a few, and says what holds each one back. Ends with 1 if none stands.",
            "",
            "Example: towerscribe place wren.toml --write wren-placed.toml")
        .json("Print the offers as one JSON object, in degrees and mm.")
        .directory(
            false,
            "Write place.pdf, the map of where the plates can go, there as well. Made if missing;"
                + " other files there are left alone.")
        .text(
            "FILE",
            "Write the job with its [mount] replaced, all else left as it is, to this file.",
            WRITE)
        .text("LETTER", "Which offer to write; A, the first, if not given.", OFFER)
        .force("Let --write replace a file that is there already.")
        .job();
  }

  /** The job file to be written, and the text that it is made from. */
  private record Rewritten(String name, Path path, OutputFile file, String before) {}

  @Override
  public int run(ParsedCommand given) throws IOException, JobRejected, Refusal {
    if (given.has(OFFER) && !given.has(WRITE)) {
      throw Refusal.wrongUse("--offer says which offer --write is to write: give both");
    }
    LoadedJob loaded = given.job();
    Job job = loaded.job();
    // A search takes a while: what bars the writing is said before it.
    Optional<Rewritten> write = rewritten(given, job);
    Placements.Found found = find(given, job);
    if (write.isPresent()) {
      Offer offer = chosen(found.offers(), given.text(OFFER).orElse(FIRST));
      String text = placed(write.get().before(), job, offer.mount());
      prove(text, write.get().path(), job, offer, found.standing());
      map(given, loaded, found);
      write.get().file().write(MadeFile.text(text), given.force());
    } else {
      map(given, loaded, found);
    }
    given.print(() -> PlacementJson.of(job, found.offers()), () -> PlacementReport.of(job, found));
    if (write.isPresent() && !given.has(ParsedCommand.JSON)) {
      String letter = given.text(OFFER).orElse(FIRST).toUpperCase(Locale.ROOT);
      given.console().say("wrote %s with offer %s", write.get().name(), letter);
    }
    return Exit.DONE;
  }

  private static Placements.Found find(ParsedCommand given, Job job) throws Refusal {
    int threads = Runtime.getRuntime().availableProcessors();
    Placements.Settings settings =
        new Placements.Settings(SearchRange.USUAL, threads, given.has(ParsedCommand.OUTPUT));
    try (ProgressBar bar = ProgressBar.ofTerminal(given.console())) {
      Placements.Found found = Placements.find(job, settings, bar::at);
      if (!found.offers().isEmpty()) {
        return found;
      }
      throw stopped(given, job, none(found));
    } catch (CannotPlace e) {
      String why = given.word(0).orElseThrow() + ": " + e.getMessage();
      throw e.isStop() ? stopped(given, job, List.of(why)) : Refusal.wrongUse(why);
    }
  }

  /** No placement stands: a program gets an empty list, a person what is in the way. */
  private static Refusal stopped(ParsedCommand given, Job job, List<String> lines) {
    if (given.has(ParsedCommand.JSON)) {
      given.console().print(PlacementJson.of(job, List.of()));
    }
    return new Refusal(Exit.STOPPED, lines);
  }

  private static List<String> none(Placements.Found found) {
    List<String> lines = new ArrayList<>();
    List<Finding> always = found.always();
    lines.add(
        always.isEmpty()
            ? "no placement within 30 mm passes every check. What prevents it, the hardest to move"
                + " first:"
            : "no placement can clear these stop findings:");
    found.inTheWay().forEach(b -> lines.add(b.words() + ": " + remedy(b)));
    always.forEach(f -> lines.add(f.id() + ": " + f.say()));
    return lines;
  }

  private static String remedy(FeasibleMap.Barrier barrier) {
    return switch (barrier) {
      case STRUT_ROD -> "keep less inside the mark, or take a plate with a shorter slot";
      case PLATE -> "take a plate with another outline, or look at the opening and wall again";
      case BOLTS -> "measure more sound metal, keep more inside the mark or take another plate";
      case BRACKET -> "take a smaller socket, or look at the bracket's outline and least width";
      case LINKAGE ->
          "look at strut.camber, strut.droop, aims.camber_limit and the strut's points again";
    };
  }

  /** What {@code --write} asks for, refused where no offer could be written. */
  private static Optional<Rewritten> rewritten(ParsedCommand given, Job job)
      throws IOException, Refusal {
    Optional<String> name = given.text(WRITE);
    if (name.isEmpty()) {
      return Optional.empty();
    }
    Path input = given.path(0);
    Path path = given.path(name.get());
    if (Files.exists(path) && Files.isSameFile(input, path)) {
      throw Refusal.wrongUse("--write names the job file itself, which is never replaced");
    }
    OutputFile file = new OutputFile(given.ops(), path);
    if (!given.force()) {
      file.unlessThere();
    }
    file.inFolder(name.get());
    String before = Files.readString(input, StandardCharsets.UTF_8);
    if (MountText.differsBySide(before)) {
      throw Refusal.wrongUse(
          "the job gives one side a [mount] of its own, and an offer is one placement for both:"
              + " take it out, or enter the figures by hand");
    }
    placed(before, job, job.sides().values().iterator().next().mount());
    return Optional.of(new Rewritten(name.get(), path, file, before));
  }

  private static Offer chosen(List<Offer> offers, String letter) throws Refusal {
    for (int i = 0; i < offers.size(); i++) {
      if (PlacementReport.letter(i).equalsIgnoreCase(letter)) {
        return offers.get(i);
      }
    }
    throw Refusal.wrongUse(
        "--offer %s: the offers go from A to %s",
        letter, PlacementReport.letter(offers.size() - 1));
  }

  /** The job's text with another mount, read back before it goes anywhere. */
  private static String placed(String text, Job job, Mount mount) throws Refusal {
    return MountText.with(text, job.units(), mount)
        .orElseThrow(
            () ->
                Refusal.wrongUse(
                    "the job's [mount] is not written one key to a line, so it can't be replaced"
                        + " safely: enter the figures by hand"));
  }

  /** Read back as it will be read from its new place, it must be this job with that mount. */
  private static void prove(String text, Path target, Job job, Offer offer, List<Finding> standing)
      throws Refusal {
    try {
      Job again = LoadedJob.parse(text, target);
      // Where a plate rests depends on its place.
      if (Layout.atRest(again).equals(Layout.atRest(job.with(offer.mount())))
          && Layouts.of(again).layout().stops().stream()
              .noneMatch(f -> Layouts.judgesPlace(f, standing))) {
        return;
      }
    } catch (JobRejected e) {
      throw Refusal.of(
          "nothing was written: at %s the job could not be worked from".formatted(target), e);
    }
    throw Refusal.ourFault(
        "nothing was written: the job did not read back as the offer that was chosen");
  }

  private static void map(ParsedCommand given, LoadedJob loaded, Placements.Found found)
      throws IOException, Refusal {
    if (found.map().isPresent()) {
      List<Page> pages =
          PlacementMap.pages(
              found.map().get(), found.offers(), found.estimate(), loaded.print(), loaded.info());
      MadeFiles files = new MadeFiles().put("place.pdf", MadeFile.pdf(loaded.job().title(), pages));
      given.directory().write(FileSet.PLACEMENT, loaded.packMark(), files);
    }
  }
}
