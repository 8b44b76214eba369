package dev.towerscribe.cli;

import dev.towerscribe.drawing.Page;
import dev.towerscribe.layout.SideLayout;
import dev.towerscribe.model.DrawingInfo;
import dev.towerscribe.model.Load;
import dev.towerscribe.part.Part;
import dev.towerscribe.part.PartKind;
import dev.towerscribe.part.Parts;
import dev.towerscribe.sheet.report.StrengthPage;
import dev.towerscribe.sheet.shop.DrawingStyle;
import dev.towerscribe.sheet.shop.MachineSheet;
import dev.towerscribe.sheet.shop.PartSheets;
import dev.towerscribe.sheet.shop.TowerSheets;
import dev.towerscribe.sheet.text.JobInfo;
import dev.towerscribe.store.MadeFile;
import dev.towerscribe.store.MadeFiles;
import dev.towerscribe.strength.Strength;
import dev.towerscribe.strength.StrengthInput;
import dev.towerscribe.writer.dxf.DxfVersion;
import dev.towerscribe.writer.step.PartName;
import java.util.ArrayList;
import java.util.List;
import java.util.Locale;
import java.util.Optional;

/** The files of a job's drawings, made and proved in memory. */
final class DrawingFiles {
  private final JobInfo job;
  private final DrawingInfo info;
  private final DrawingStyle style;
  private final DxfVersion version;
  private final MadeFiles files = new MadeFiles();

  DrawingFiles(JobInfo job, DrawingInfo info, DrawingStyle style, DxfVersion version) {
    this.job = job;
    this.info = info;
    this.style = style;
    this.version = version;
  }

  /** Every file made so far. */
  MadeFiles files() {
    return files;
  }

  /**
   * Drawings of parts of one kind. Two that are mirror images share one drawing; each hand has its
   * own files for machines.
   *
   * @param parts left or common one first
   * @param kind their kind, which names the files
   */
  void parts(List<Part> parts, PartKind kind) {
    List<Part> some = parts.stream().filter(p -> p.kind() == kind).toList();
    String word = kind.word();
    if (some.size() == 2 && Parts.areMirrored(some.get(0), some.get(1))) {
      part(new PartSheets.Subject(word, some.get(0), Optional.of(some.get(1))));
      Part other = some.get(1);
      machine(
          new PartSheets.Subject(word + "-" + other.hand().word(), other, Optional.of(some.get(0))),
          false);
    } else {
      for (Part part : some) {
        String stem = some.size() == 1 ? word : word + "-" + part.hand().word();
        part(new PartSheets.Subject(stem, part, Optional.empty()));
      }
    }
  }

  /** The drawing of a part and its files for machines. */
  void part(PartSheets.Subject subject) {
    pdf(subject.stem(), PartSheets.onPaper(subject, job, info, style));
    machine(subject, true);
  }

  private void machine(PartSheets.Subject subject, boolean svg) {
    MachineSheet sheet = PartSheets.fullSize(subject, job, info, style);
    Page page = sheet.page();
    if (svg) {
      files.put(subject.stem() + ".svg", MadeFile.svg(page));
    }
    dxf(subject.stem(), sheet);
    Part part = subject.part();
    PartName name =
        new PartName(
            subject.stem() + " " + job.packMark(),
            part.name() + " (" + part.hand().word().toLowerCase(Locale.ROOT) + "), " + job.title(),
            info.owner().orElse(""),
            job.date());
    files.put(subject.stem() + ".step", MadeFile.step(part.solid(), name));
  }

  /** The drilled tower. */
  void tower(SideLayout layout) {
    String stem = "tower-" + layout.side().word();
    pdf(stem, TowerSheets.onPaper(layout, job, info, style));
    dxf(stem, TowerSheets.fullSize(layout, job, info, style));
  }

  /** The advisory strength page of each tower. */
  void strength(Iterable<SideLayout> towers, Load load) {
    List<Page> pages = new ArrayList<>();
    for (SideLayout tower : towers) {
      StrengthInput input = StrengthInput.of(tower.job(), load);
      pages.addAll(StrengthPage.pages(Strength.of(tower, input), tower.job().print(), job));
    }
    pdf("strength", pages);
  }

  /** Pages as one document. */
  private void pdf(String stem, List<Page> pages) {
    String title = job.title() + ": " + pages.get(0).title();
    files.put(stem + ".pdf", MadeFile.pdf(title, pages));
  }

  private void dxf(String stem, MachineSheet sheet) {
    files.put(stem + ".dxf", MadeFile.dxf(sheet.page(), version, sheet.datum()));
  }
}
