package dev.towerscribe.cli;

import dev.towerscribe.finding.Finding;
import dev.towerscribe.finding.Severity;
import dev.towerscribe.geometry.Region;
import dev.towerscribe.layout.JobLayout;
import dev.towerscribe.layout.Notch;
import dev.towerscribe.layout.PlacedHole;
import dev.towerscribe.layout.SideLayout;
import dev.towerscribe.layout.Span;
import dev.towerscribe.layout.StarterHole;
import dev.towerscribe.model.Mount;
import dev.towerscribe.quantity.LengthUnit;
import dev.towerscribe.quantity.Numbers;
import dev.towerscribe.quantity.Version;
import dev.towerscribe.store.PackDirectory;
import java.util.ArrayList;
import java.util.List;
import java.util.Locale;
import java.util.Optional;
import java.util.Set;

/**
 * A layout in words, for a screen or a file: per side the holes, the bearing, the cuts, notches and
 * spans, and every finding, gravest first. Lengths are in the job's unit; an inch job's findings
 * give millimetres too, since their limits come from standards in millimetres.
 */
final class TextReport {
  /** Hundredths of a millimetre, the finest that calipers in common use show. */
  private static final int MM_DECIMALS = 2;

  /** Thousandths of an inch, their counterpart. */
  private static final int INCH_DECIMALS = 3;

  private final TextLines text = new TextLines();
  private final LengthUnit unit;
  private final Set<String> accepted;

  private TextReport(LengthUnit unit, Set<String> accepted) {
    this.unit = unit;
    this.accepted = accepted;
  }

  /**
   * Writes a report.
   *
   * @param layout any layout
   * @param accepted ids of accepted stop findings
   * @param packMark the code on the sheets, if sheets are made
   * @param notice lines that a reader must see first, perhaps none
   * @return lines ended by line feeds
   */
  static String of(
      JobLayout layout, Set<String> accepted, Optional<String> packMark, List<String> notice) {
    TextReport report = new TextReport(layout.job().units(), accepted);
    report.head(layout, packMark, notice);
    layout.sides().values().forEach(report::side);
    return report.text.toString();
  }

  /**
   * How a job came out, in one line.
   *
   * @param layout any layout
   * @param accepted ids of accepted stop findings
   * @return for instance "2 stop findings: no sheets until they are put right or accepted"
   */
  static String verdict(JobLayout layout, Set<String> accepted) {
    long open = layout.stops().stream().filter(f -> !accepted.contains(f.id())).count();
    if (open > 0) {
      return count(open, "stop finding") + ": no sheets until put right or accepted by id";
    }
    return accepted.isEmpty()
        ? "no stop finding"
        : count(accepted.size(), "stop finding") + " accepted; every sheet says so";
  }

  private static String count(long n, String thing) {
    return n + " " + thing + (n == 1 ? "" : "s");
  }

  private void head(JobLayout layout, Optional<String> packMark, List<String> notice) {
    line(PackDirectory.REPORT_HEAD);
    line("");
    if (!notice.isEmpty()) {
      notice.forEach(n -> wrapped("", n));
      line("");
    }
    line("job        " + layout.job().title());
    layout.job().date().ifPresent(d -> line("date       " + d));
    packMark.ifPresent(m -> line("pack mark  " + m));
    line("program    Towerscribe " + Version.TEXT);
    line("result     " + verdict(layout, accepted));
    layout.stops().stream()
        .filter(f -> !accepted.contains(f.id()))
        .forEach(f -> wrapped("           ", f.id() + ": " + f.say()));
    line("");
    wrapped(
        "",
        "Lengths in "
            + (unit == LengthUnit.MM ? "mm" : "inches")
            + ", from the original strut-shaft centre in the plane of the tower top: fore is"
            + " forward, in is toward the car's centre line.");
  }

  private void side(SideLayout side) {
    line("");
    String title = side.side().word().toUpperCase(Locale.ROOT) + " TOWER";
    line(title);
    line("=".repeat(title.length()));
    Mount mount = side.job().mount();
    line(
        "mount      rotation "
            + Numbers.plain(mount.rotation().degrees(), 2)
            + " deg, rearward "
            + length(mount.rearwardMm())
            + ", inboard "
            + length(mount.inboardMm())
            + ", setting "
            + length(mount.settingMm()));
    line(
        "bearing    fore "
            + length(side.bearing().x())
            + ", in "
            + length(side.bearing().y())
            + ", height "
            + length(side.job().plate().bearingHeightMm()));
    holes(side);
    cuts(side);
    notches(side);
    spans(side);
    findings(side.findings());
  }

  private void holes(SideLayout side) {
    List<List<String>> rows = new ArrayList<>();
    rows.add(List.of("hole", "fore", "in", "diameter", "bolt", "drills in order"));
    for (PlacedHole hole : side.holes()) {
      rows.add(
          List.of(
              hole.name(),
              length(hole.at().x()),
              length(hole.at().y()),
              length(hole.diameterMm()),
              hole.bolt().thread().name(),
              String.join(", ", hole.drillsMm().stream().map(this::length).toList())));
    }
    table(rows);
  }

  private void cuts(SideLayout side) {
    List<List<String>> rows = new ArrayList<>();
    rows.add(List.of("cut", "area", "length", "shape"));
    rows.add(cut("rough", side.roughCut()));
    rows.add(cut("final", side.finalCut()));
    table(rows);
    for (StarterHole starter : side.starters()) {
      line(
          "  saw starter hole: fore "
              + length(starter.at().x())
              + ", in "
              + length(starter.at().y())
              + ", diameter "
              + length(starter.diameterMm()));
    }
  }

  private List<String> cut(String name, Region cut) {
    return List.of(name, area(cut.area()), length(cut.length()), shape(cut));
  }

  private String shape(Region cut) {
    if (cut.isEmpty()) {
      return "nothing to cut";
    }
    if (cut.contours().size() > 1) {
      return count(cut.contours().size(), "boundary line");
    }
    return cut.contours()
        .get(0)
        .asCircle()
        .map(
            c ->
                "circle, diameter "
                    + length(2 * c.radius())
                    + ", centre fore "
                    + length(c.centre().x())
                    + ", in "
                    + length(c.centre().y()))
        .orElse("outline");
  }

  private void notches(SideLayout side) {
    if (side.notches().isEmpty()) {
      return;
    }
    List<List<String>> rows = new ArrayList<>();
    rows.add(List.of("notch in", "area", "width left", "for bolt"));
    for (Notch notch : side.notches()) {
      rows.add(
          List.of(
              notch.bracket().name(),
              area(notch.removed().area()),
              length(notch.widthLeftMm()),
              String.join(", ", notch.bolts())));
    }
    table(rows);
  }

  private void spans(SideLayout side) {
    List<List<String>> rows = new ArrayList<>();
    rows.add(List.of("span", "centres", "inside", "outside", "may be off by"));
    for (Span span : side.spans()) {
      rows.add(
          List.of(
              span.from() + "-" + span.to(),
              length(span.centresMm()),
              length(span.insideMm()),
              length(span.outsideMm()),
              length(span.toleranceMm())));
    }
    table(rows);
  }

  private void findings(List<Finding> findings) {
    for (Severity severity : Severity.values()) {
      List<Finding> these = findings.stream().filter(f -> f.severity() == severity).toList();
      line("");
      line(severity.word() + " findings: " + (these.isEmpty() ? "none" : these.size()));
      these.forEach(this::finding);
    }
  }

  private void finding(Finding finding) {
    line("  " + finding.id() + (accepted.contains(finding.id()) ? "  ACCEPTED" : ""));
    String figures =
        finding.isMeasured()
            ? ": "
                + quantity(finding.figure(), finding.unit())
                + ", limit "
                + quantity(finding.limit(), finding.unit())
            : "";
    wrapped(
        "    ",
        finding.where()
            + figures
            + (finding.source().isEmpty() ? "" : " (" + finding.source() + ")"));
    wrapped("    ", finding.say());
  }

  private String quantity(double value, String given) {
    String plain = (Numbers.plain(value, MM_DECIMALS) + " " + given).strip();
    return given.equals("mm") && unit == LengthUnit.INCH
        ? length(value) + " in (" + plain + ")"
        : plain;
  }

  private String length(double mm) {
    return Numbers.fixed(unit.fromMm(mm), unit == LengthUnit.MM ? MM_DECIMALS : INCH_DECIMALS);
  }

  private String area(double mm2) {
    return Numbers.fixed(unit.fromMm(unit.fromMm(mm2)), unit == LengthUnit.MM ? 0 : INCH_DECIMALS);
  }

  private void table(List<List<String>> rows) {
    text.table(rows);
  }

  private void wrapped(String indent, String words) {
    text.wrapped(indent, words);
  }

  private void line(String words) {
    text.line(words);
  }
}
