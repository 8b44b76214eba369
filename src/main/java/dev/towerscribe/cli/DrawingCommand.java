package dev.towerscribe.cli;

import dev.towerscribe.finding.Finding;
import dev.towerscribe.finding.JobRejected;
import dev.towerscribe.finding.Severity;
import dev.towerscribe.layout.SideLayout;
import dev.towerscribe.model.Job;
import dev.towerscribe.model.Paper;
import dev.towerscribe.model.Projection;
import dev.towerscribe.part.Jigs;
import dev.towerscribe.part.JobParts;
import dev.towerscribe.part.PartKind;
import dev.towerscribe.part.Parts;
import dev.towerscribe.part.SideJig;
import dev.towerscribe.quantity.LengthUnit;
import dev.towerscribe.sheet.shop.PartSheets;
import dev.towerscribe.sheet.text.JobInfo;
import dev.towerscribe.sheet.text.NoRoomException;
import dev.towerscribe.store.PackDirectory;
import dev.towerscribe.writer.dxf.DxfVersion;
import java.io.IOException;
import java.nio.file.Path;
import java.util.ArrayList;
import java.util.Arrays;
import java.util.LinkedHashMap;
import java.util.List;
import java.util.Map;
import java.util.Optional;
import picocli.CommandLine.Model.CommandSpec;
import picocli.CommandLine.Model.OptionSpec;
import picocli.CommandLine.ParseResult;

/** {@code drawing}: drawings and CAD files of the plate and of the drilled towers. */
final class DrawingCommand implements Command {
  private static final Map<String, DxfVersion> DXF = new LinkedHashMap<>();

  static {
    DXF.put("r12", DxfVersion.R12);
    DXF.put("2000", DxfVersion.R2000);
  }

  @Override
  public CommandSpec spec() {
    return Options.command(
            "drawing",
            "Draw the plate for a machinist and the drilled towers for a fixture maker: plate.pdf,"
                + " .svg, .dxf and .step, tower-left and tower-right .pdf and .dxf; files for"
                + " machines are at 1:1. While a stop finding stands, nothing is written and the"
                + " command ends with 1.",
            "",
            "Example: towerscribe drawing wren.toml -o wren-drawings")
        .addOption(
            OptionSpec.builder("-o", "--output")
                .type(String.class)
                .required(true)
                .paramLabel("DIR")
                .description(
                    "Where to. Made if missing; files of earlier drawings there are replaced, other"
                        + " files left alone.")
                .build())
        .addOption(
            Options.text(
                "PAPER",
                "Paper of the PDFs: "
                    + String.join(", ", Arrays.stream(Paper.values()).map(Paper::word).toList())
                    + ". A3, or Tabloid where the job prints on inch paper, if not given.",
                "--paper"))
        .addOption(
            Options.text(
                "ANGLE",
                "How views lie to each other: first or third. The job's drawing.projection if not"
                    + " given.",
                "--projection"))
        .addOption(
            Options.text(
                "UNIT", "Unit of the figures: mm or in. The job's if not given.", "--unit"))
        .addOption(Options.flag("--both", "Show the other unit too, in brackets."))
        .addOption(
            Options.text(
                "RELEASE", "Release of the DXF files: r12 or 2000; r12 if not given.", "--dxf"))
        .addOption(Options.flag("--jig", "Draw the drilling jigs too: jig-left, jig-right."))
        .addOption(Options.accept())
        .addPositional(Options.job());
  }

  @Override
  public int run(ParseResult given, Context context) throws IOException, JobRejected, Refusal {
    Path directory = context.path(given.matchedOptionValue("-o", ""));
    LoadedJob loaded =
        LoadedJob.load(
            context.path(given.matchedPositionalValue(0, "")),
            given.matchedOptionValue("--accept", List.of()),
            context.console()::warn);
    Job job = loaded.layout().job();
    PartSheets.Style style = style(given, job);
    DxfVersion version = one(given, "--dxf", DXF, DxfVersion.R12);
    JobParts parts = Parts.of(loaded.layout());
    List<SideJig> jigs = new ArrayList<>();
    if (given.hasMatchedOption("--jig")) {
      for (SideLayout side : loaded.layout().sides().values()) {
        jigs.add(Jigs.of(side, job.jig(), job.units()));
      }
    }
    List<Finding> findings = new ArrayList<>(parts.findings());
    jigs.forEach(j -> findings.addAll(j.findings()));
    List<Finding> stops = new ArrayList<>(loaded.openStops());
    findings.stream().filter(Finding::isStop).forEach(stops::add);
    if (!stops.isEmpty()) {
      context.console().warn("nothing was drawn, because of");
      stops.forEach(f -> context.console().warn(f.id() + ": " + f.say()));
      return Exit.STOPPED;
    }
    JobInfo info =
        new JobInfo(
            job.title(), job.date(), job.units(), loaded.packMark(), loaded.acceptedStops());
    DrawingFiles files = new DrawingFiles(info, job.drawing(), style, version);
    try {
      files.parts(parts.parts(), PartKind.PLATE);
      files.parts(parts.parts(), PartKind.SLIDER);
      loaded.layout().sides().values().forEach(files::tower);
      for (SideJig jig : jigs) {
        files.part(
            new PartSheets.Subject(
                "jig-" + jig.side().word(), jig.part().orElseThrow(), Optional.empty()));
      }
      job.load().ifPresent(load -> files.strength(loaded.layout().sides().values(), load));
    } catch (NoRoomException e) {
      throw new Refusal(
          Exit.WRONG_USE,
          List.of(
              "drawing: " + e.getMessage(),
              "nothing was written: use larger paper (--paper) or shorter words"));
    }
    PackCommand.refuse(files.mismatches());
    new PackDirectory(context.ops(), directory).writeDrawings(loaded.packMark(), files.files());
    context
        .console()
        .say(
            "wrote "
                + String.join(", ", files.files().keySet())
                + " to "
                + directory
                + ", pack mark "
                + loaded.packMark());
    loaded.acceptedStops().forEach(f -> context.console().say("accepted: " + f.id()));
    findings.stream()
        .filter(f -> f.severity() == Severity.CAUTION)
        .forEach(f -> context.console().say("caution: " + f.id() + ": " + f.say()));
    return Exit.DONE;
  }

  private static PartSheets.Style style(ParseResult given, Job job) throws Refusal {
    Map<String, Paper> papers = new LinkedHashMap<>();
    for (Paper paper : Paper.values()) {
      papers.put(paper.word(), paper);
    }
    Map<String, Projection> projections = new LinkedHashMap<>();
    for (Projection p : Projection.values()) {
      projections.put(p.word(), p);
    }
    Map<String, LengthUnit> units = new LinkedHashMap<>();
    for (LengthUnit u : LengthUnit.values()) {
      units.put(u.symbol(), u);
    }
    Paper printed = job.sides().values().iterator().next().print().paper();
    Paper usual = printed == Paper.A4 || printed == Paper.A3 ? Paper.A3 : Paper.TABLOID;
    return new PartSheets.Style(
        one(given, "--paper", papers, usual),
        one(given, "--projection", projections, job.drawing().projection().value()),
        one(given, "--unit", units, job.units()),
        given.hasMatchedOption("--both"));
  }

  private static <T> T one(ParseResult given, String option, Map<String, T> all, T otherwise)
      throws Refusal {
    if (!given.hasMatchedOption(option)) {
      return otherwise;
    }
    String word = given.matchedOptionValue(option, "");
    for (Map.Entry<String, T> entry : all.entrySet()) {
      if (entry.getKey().equalsIgnoreCase(word)) {
        return entry.getValue();
      }
    }
    throw new Refusal(
        Exit.WRONG_USE, option + " " + word + ": not one of " + String.join(", ", all.keySet()));
  }
}
