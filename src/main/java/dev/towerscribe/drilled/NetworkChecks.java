package dev.towerscribe.drilled;

import dev.towerscribe.drilled.DrilledFindings.What;
import dev.towerscribe.drilled.Network.Contradiction;
import dev.towerscribe.drilled.Network.Found;
import dev.towerscribe.drilled.Network.Hanging;
import dev.towerscribe.drilled.Readings.Doubt;
import dev.towerscribe.finding.Severity;
import dev.towerscribe.geometry.Vec2;
import dev.towerscribe.model.Landmark;
import dev.towerscribe.quantity.Numbers;
import java.util.ArrayList;
import java.util.Comparator;
import java.util.List;
import java.util.Optional;
import java.util.stream.Stream;

/** What is to be said of the readings themselves, and of whether the pattern is the planned one. */
final class NetworkChecks {
  private static final String BAARDA =
      "3.29 standard deviations, one in a thousand; Baarda 1968, from memory";

  /**
   * A hole away from the pattern by less may be drilled badly; by more, the whole may be turned.
   */
  private static final double TURNED_MM = 2;

  /** Landmarks this near to one line leave the pattern's mirror image in it nearly as likely. */
  private static final double OFF_LINE_MM = 5;

  private final DrilledSide side;
  private final Network network;
  private final Doubt doubt;
  private final Optional<RigidFit> best;
  private final DrilledFindings findings;

  NetworkChecks(DrilledSide side, Doubt doubt, Optional<RigidFit> best, DrilledFindings findings) {
    this.side = side;
    this.network = side.network();
    this.doubt = doubt;
    this.best = best;
    this.findings = findings;
  }

  void run() {
    network.hanging().forEach(this::hanging);
    repeats();
    network.contradictions().forEach(this::contradiction);
    scatter();
    unchecked();
    tie();
    pattern();
    assumed();
    if (side.planned().job().tower().crown().isPresent()) {
      findings.add(
          What.words("dome", "all readings", DrilledFindings.PRACTICE),
          Severity.NOTE,
          "The tower is domed: the readings count as taken straight across, calipers level with the"
              + " plate, not along the skin.");
    }
  }

  private void hanging(Hanging h) {
    String name = h.planned().name();
    findings.add(
        new What(
            "few." + DrilledFindings.slug(name),
            "hole " + name,
            h.readings(),
            2,
            "",
            "two distances from places that do not lie in one line with it"),
        Severity.STOP,
        "Hole "
            + name
            + " is not fixed by its "
            + h.readings()
            + (h.readings() == 1 ? " reading" : " readings")
            + ": add distances from it to holes or landmarks that lie in different directions.");
  }

  // Readings against each other.

  private void repeats() {
    for (SideReadings.HoleSize size : side.readings().holes()) {
      repeat("diameter of " + size.name(), size.diameter());
    }
    for (SpanReading span : side.readings().spans()) {
      repeat(span.words(), span.length());
    }
    for (SideReadings.EdgeGap edge : side.readings().edges()) {
      repeat("edge of " + edge.hole(), edge.gap());
    }
  }

  /** The farthest of repeated readings from their mean, over the doubt of that difference. */
  private void repeat(String words, Repeated r) {
    int n = r.readingsMm().size();
    if (n < 2) {
      return;
    }
    double worst =
        r.readingsMm().stream().mapToDouble(mm -> Math.abs(mm - r.meanMm())).max().orElseThrow();
    double limit = NetworkSolver.OFF * r.doubtMm() * Math.sqrt(1 - 1.0 / n);
    if (worst > limit) {
      findings.add(
          What.length("repeat." + DrilledFindings.slug(words), words, worst, limit, BAARDA),
          Severity.STOP,
          "The repeated readings of the "
              + spoken(words)
              + " lie up to "
              + findings.length(r.spreadMm())
              + " apart, with a doubt of "
              + findings.length(r.doubtMm())
              + " each. Read it again.");
    }
  }

  private static String spoken(String words) {
    return words.contains(" to ") ? "span " + words : words;
  }

  private void contradiction(Contradiction c) {
    String first = c.readings().get(0);
    String by = findings.length(Math.abs(c.offMm()));
    if (c.leftOut()) {
      findings.add(
          new What(
              "off." + DrilledFindings.slug(first),
              first,
              c.deviations(),
              NetworkSolver.OFF,
              "",
              BAARDA),
          Severity.STOP,
          (first.startsWith(NetworkSolver.OF_JOB)
                  ? "T" + first.substring(1)
                  : "The reading " + first)
              + " is "
              + by
              + (c.offMm() > 0 ? " more" : " less")
              + " than the rest say. It was left out. Read it again.");
      return;
    }
    findings.add(
        new What(
            "disagree",
            String.join("; ", c.readings()),
            c.deviations(),
            NetworkSolver.OFF,
            "",
            BAARDA),
        Severity.STOP,
        "These do not agree, and which of them is off cannot be told (the first would be by "
            + by
            + "): "
            + String.join("; ", c.readings())
            + ". All were used. Read them again, and add readings that check them.");
  }

  private void scatter() {
    if (network.widened()) {
      findings.add(
          new What(
              "scatter",
              "all readings",
              network.scatter(),
              1,
              "",
              "chi-squared, one in a thousand"),
          Severity.CAUTION,
          "The readings lie "
              + Numbers.fixed(network.scatter(), 1)
              + " times as far from each other as their doubts say: every +/- was widened by that."
              + " Read again, or write larger doubts.");
    }
  }

  private void unchecked() {
    List<String> ofJob =
        network.unchecked().stream().filter(w -> w.startsWith(NetworkSolver.OF_JOB)).toList();
    List<String> read =
        network.unchecked().stream().filter(w -> !w.startsWith(NetworkSolver.OF_JOB)).toList();
    if (!read.isEmpty()) {
      findings.add(
          unchecked("unchecked", read),
          Severity.CAUTION,
          "Nothing checks these, so a slip in one of them would not be seen: "
              + String.join("; ", read)
              + ". Read them twice, or add readings.");
    }
    if (!ofJob.isEmpty() && network.tied()) {
      findings.add(
          unchecked("unchecked-landmarks", ofJob),
          Severity.NOTE,
          "Nothing checks these, so an error in one of them moves all holes alike, though it does"
              + " not change how the plate fits: "
              + String.join("; ", ofJob)
              + ". Readings to one more landmark would.");
    }
  }

  private static What unchecked(String check, List<String> all) {
    return new What(check, String.join("; ", all), all.size(), 0, "", DrilledFindings.PRACTICE);
  }

  private void assumed() {
    List<String> words = new ArrayList<>();
    if (doubt.caliperMm().assumed()) {
      words.add("calipers " + findings.length(doubt.caliperMm().value()));
    }
    if (doubt.landmarkMm().assumed()) {
      words.add("landmarks " + findings.length(doubt.landmarkMm().value()));
    }
    if (doubt.line().assumed()) {
      words.add("the fore-aft line " + Numbers.fixed(doubt.line().value().degrees(), 2) + " deg");
    }
    if (doubt.centreMm().assumed()) {
      words.add("the old shaft's centre " + findings.length(doubt.centreMm().value()));
    }
    if (!words.isEmpty()) {
      findings.add(
          What.words("doubt", "all readings", DrilledFindings.PRACTICE),
          Severity.NOTE,
          "Doubts that the readings file does not give were assumed: "
              + String.join(", ", words)
              + ".");
    }
  }

  // Tower and plan.

  private void tie() {
    if (network.holes().isEmpty()) {
      return;
    }
    if (!network.tied()) {
      boolean none = network.loose() == 3 || network.holes().size() == 1 && network.loose() == 2;
      findings.add(
          new What(
              "untied", "landmarks", network.loose(), 0, "", "two landmarks, each to two holes"),
          Severity.CAUTION,
          (none
                  ? "Nothing ties the holes to the tower: "
                  : "The holes are tied to the tower too loosely: as a whole they could still turn or"
                      + " move, so ")
              + "where they lie is not known, and rotation and offset are NOT assumed to be as"
              + " planned. The pattern's shape and the plate's fit are. Its mirror image would read"
              + " alike. "
              + (side.planned().job().tower().landmarks().size() < 2
                  ? "The job has one landmark only: measure a second one into it, and read to both."
                  : "Add readings from the holes to two landmarks."));
      return;
    }
    mirror();
  }

  /** Distances to points of one line are the same on both sides of it. */
  private void mirror() {
    List<Landmark> used =
        side.planned().job().tower().landmarks().stream().filter(this::isUsed).toList();
    if (used.size() < 2 || network.holes().isEmpty()) {
      return;
    }
    Landmark a = used.get(0);
    Landmark b = used.get(1);
    double longest = 0;
    for (Landmark p : used) {
      for (Landmark q : used) {
        if (p.at().distanceTo(q.at()) > longest) {
          longest = p.at().distanceTo(q.at());
          a = p;
          b = q;
        }
      }
    }
    if (longest == 0) {
      return;
    }
    Vec2 from = a.at();
    Vec2 along = b.at().minus(from).unit();
    if (used.stream().anyMatch(l -> Math.abs(along.cross(l.at().minus(from))) > OFF_LINE_MM)) {
      return;
    }
    Found far =
        network.holes().stream()
            .max(Comparator.comparingDouble(f -> Math.abs(along.cross(f.at().minus(from)))))
            .orElseThrow();
    // The way to the hole, square to the line.
    Vec2 way = along.quarterTurn().times(Math.signum(along.cross(far.at().minus(from))));
    String where =
        Math.abs(way.x()) > Math.abs(way.y())
            ? way.x() > 0 ? "forward" : "rearward"
            : way.y() > 0 ? "inboard" : "outboard";
    findings.add(
        What.words("mirror", "landmarks in one line", "distances alone"),
        Severity.NOTE,
        "Distances cannot tell the holes from their mirror image in the line from "
            + a.name()
            + " to "
            + b.name()
            + "; the plan was believed. Look: hole "
            + far.name()
            + " lies "
            + where
            + " of that line.");
  }

  private boolean isUsed(Landmark landmark) {
    return side.readings().spans().stream()
        .flatMap(s -> Stream.of(s.from(), s.to()))
        .anyMatch(landmark.name()::equals);
  }

  /** A pattern far from its place, or turned over, is not the one that was planned. */
  private void pattern() {
    double worst = 0;
    String name = "";
    double left = 0;
    for (DrilledSide.Hole h : side.holes()) {
      double off = h.error().or(h::left).map(Vec2::norm).orElse(0.0);
      if (off > worst) {
        worst = off;
        name = h.found().name();
      }
      left = Math.max(left, h.left().map(Vec2::norm).orElse(0.0));
    }
    double sure = network.holes().stream().mapToDouble(Found::worstSdMm).max().orElse(0.0);
    boolean turned = left > TURNED_MM && best.isPresent() && best.get().looksTurnedOver(sure);
    if (turned) {
      findings.add(
          What.length("turned-over", "all holes", left, TURNED_MM, DrilledFindings.OURS),
          Severity.STOP,
          "The holes fit the pattern turned over far better than the pattern itself: the sheet lay"
              + " with the wrong face up, it was the other tower's, or names are mixed up. Check the"
              + " names first.");
    }
    if (worst > NetworkSolver.FAR_MM) {
      findings.add(
          What.length(
              "off-plan." + DrilledFindings.slug(name),
              "hole " + name,
              worst,
              NetworkSolver.FAR_MM,
              DrilledFindings.OURS),
          Severity.STOP,
          "Hole "
              + name
              + " lies "
              + findings.length(worst)
              + " from its planned place"
              + (network.tied() ? "" : " in the pattern")
              + ", farther than anybody drills from a mark. Look for mixed-up names, a slipped digit,"
              + " or the wrong sheet.");
    }
  }
}
