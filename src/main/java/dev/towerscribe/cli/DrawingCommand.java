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
import dev.towerscribe.sheet.shop.DrawingStyle;
import dev.towerscribe.sheet.shop.PartSheets;
import dev.towerscribe.sheet.text.NoRoomException;
import dev.towerscribe.store.FileSet;
import dev.towerscribe.store.MadeFiles;
import dev.towerscribe.store.PackDirectory;
import dev.towerscribe.writer.dxf.DxfVersion;
import java.io.IOException;
import java.util.ArrayList;
import java.util.Collection;
import java.util.List;
import java.util.Optional;

/** {@code drawing}: drawings and CAD files of the plate and of the drilled towers. */
final class DrawingCommand implements Command {
  private static final String JIG = "--jig";
  private static final String BOTH = "--both";

  @Override
  public Options options() {
    return Options.command(
            "drawing",
            "Draw the plate for a machinist and the drilled towers for a fixture maker: plate.pdf,"
                + " .svg, .dxf and .step, tower-left and tower-right .pdf and .dxf; files for"
                + " machines are at 1:1. While a stop finding stands, nothing is written and the"
                + " command ends with 1.",
            "",
            "Example: towerscribe drawing wren.toml -o wren-drawings")
        .directory(
            true,
            "Where to. Made if missing; files of earlier drawings there are replaced, other files"
                + " left alone.")
        .paper("Paper of the PDFs", "A3, or Tabloid where the job prints on inch paper,")
        .text(
            "ANGLE",
            "How views lie to each other: first or third. The job's drawing.projection if not"
                + " given.",
            "--projection")
        .text("UNIT", "Unit of the figures: mm or in. The job's if not given.", "--unit")
        .flag(BOTH, "Show the other unit too, in brackets.")
        .text("RELEASE", "Release of the DXF files: r12 or 2000; r12 if not given.", "--dxf")
        .flag(JIG, "Draw the drilling jigs too: jig-left, jig-right.")
        .accept()
        .job();
  }

  @Override
  public int run(ParsedCommand given) throws IOException, JobRejected, Refusal {
    PackDirectory directory = given.directory();
    LoadedJob loaded = given.job();
    Job job = loaded.job();
    Collection<SideLayout> towers = loaded.layout().sides().values();
    DrawingStyle style = style(given, loaded);
    DxfVersion version =
        given.oneOf("--dxf", DxfVersion.values(), DrawingCommand::word).orElse(DxfVersion.R12);
    JobParts parts = Parts.of(loaded.layout());
    List<SideJig> jigs = new ArrayList<>();
    if (given.has(JIG)) {
      towers.forEach(tower -> jigs.add(Jigs.of(tower, job.jig(), job.units())));
    }
    List<Finding> findings = new ArrayList<>(parts.findings());
    jigs.forEach(j -> findings.addAll(j.findings()));
    List<Finding> stops = new ArrayList<>(loaded.accepted().open());
    findings.stream().filter(Finding::isStop).forEach(stops::add);
    Console console = given.console();
    if (!stops.isEmpty()) {
      console.warn("nothing was drawn, because of");
      stops.forEach(f -> console.warn(f.id() + ": " + f.say()));
      return Exit.STOPPED;
    }
    DrawingFiles drawings = new DrawingFiles(loaded.info(), job.drawing(), style, version);
    try {
      drawings.parts(parts.parts(), PartKind.PLATE);
      drawings.parts(parts.parts(), PartKind.SLIDER);
      towers.forEach(drawings::tower);
      for (SideJig jig : jigs) {
        drawings.part(
            new PartSheets.Subject(
                "jig-" + jig.side().word(), jig.part().orElseThrow(), Optional.empty()));
      }
      job.load().ifPresent(load -> drawings.strength(towers, load));
    } catch (NoRoomException e) {
      throw Refusal.wrongUse(
          List.of(
              "drawing: " + e.getMessage(),
              "nothing was written: use larger paper (--paper) or shorter words"));
    }
    MadeFiles files = drawings.files();
    directory.write(FileSet.DRAWINGS, loaded.packMark(), files);
    console.say(
        "wrote %s to %s, pack mark %s",
        String.join(", ", files.names()), given.directoryPath(), loaded.packMark());
    loaded.accepted().carried().forEach(f -> console.say("accepted: " + f.id()));
    findings.stream()
        .filter(f -> f.severity() == Severity.CAUTION)
        .forEach(f -> console.say("caution: " + f.id() + ": " + f.say()));
    return Exit.DONE;
  }

  private static String word(DxfVersion version) {
    return version == DxfVersion.R12 ? "r12" : "2000";
  }

  private static DrawingStyle style(ParsedCommand given, LoadedJob loaded) throws Refusal {
    Job job = loaded.job();
    Paper printed = loaded.print().paper();
    Paper usual = printed == Paper.A4 || printed == Paper.A3 ? Paper.A3 : Paper.TABLOID;
    return new DrawingStyle(
        given.paper().orElse(usual),
        given
            .oneOf("--projection", Projection.values(), Projection::word)
            .orElse(job.drawing().projection().value()),
        given.oneOf("--unit", LengthUnit.values(), LengthUnit::symbol).orElse(job.units()),
        given.has(BOTH));
  }
}
