package dev.towerscribe.drilled;

import dev.towerscribe.adjust.DataSnooping;
import dev.towerscribe.adjust.Repeated;
import dev.towerscribe.drilled.HoleNetwork.Contradiction;
import dev.towerscribe.drilled.HoleNetwork.Found;
import dev.towerscribe.drilled.HoleNetwork.Hanging;
import dev.towerscribe.drilled.Readings.Uncertainty;
import dev.towerscribe.finding.About;
import dev.towerscribe.finding.Findings;
import dev.towerscribe.finding.Severity;
import dev.towerscribe.finding.Sources;
import dev.towerscribe.geometry.Vec2;
import dev.towerscribe.model.Landmark;
import dev.towerscribe.model.Stated;
import dev.towerscribe.quantity.Lengths;
import dev.towerscribe.quantity.Numbers;
import java.util.Comparator;
import java.util.List;
import java.util.Map;
import java.util.Optional;
import java.util.function.Function;
import java.util.function.ToDoubleFunction;
import java.util.stream.Collectors;
import java.util.stream.Stream;

/** What is to be said of the readings themselves, and of whether the pattern is the planned one. */
final class ReadingChecks {
  private static final String BAARDA =
      "3.29 standard deviations or more, one in a thousand; Baarda 1968, from memory";

  /**
   * A hole away from the pattern by less may be drilled badly; by more, the whole may be flipped.
   */
  private static final double FLIPPED_MM = 2;

  /** Landmarks this near to one line leave the pattern's mirror image in it nearly as likely. */
  private static final double OFF_LINE_MM = 5;

  private final DrilledSide side;
  private final HoleNetwork network;
  private final Uncertainty uncertainty;
  private final Optional<RigidFit> best;
  private final Findings findings;
  private final Lengths lengths;

  ReadingChecks(
      DrilledSide side, Uncertainty uncertainty, Optional<RigidFit> best, Findings findings) {
    this.side = side;
    this.network = side.network();
    this.uncertainty = uncertainty;
    this.best = best;
    this.findings = findings;
    this.lengths = findings.lengths();
  }

  void run() {
    network.hanging().forEach(this::hanging);
    repeats();
    network.contradictions().forEach(this::contradiction);
    scatter();
    unchecked();
    if (!network.holes().isEmpty()) {
      tie();
    }
    pattern();
    assumed();
    if (side.planned().job().tower().crown().isPresent()) {
      findings.add(
          "drilled-dome",
          Severity.NOTE,
          About.words("all readings", Sources.PRACTICE),
          "The tower is domed: the readings count as taken straight across, calipers level with the"
              + " plate, not along the skin.");
    }
  }

  private void hanging(Hanging h) {
    String name = h.planned().name();
    findings.add(
        "drilled-few." + Findings.slug(name),
        Severity.STOP,
        new About(
            "hole " + name,
            h.readings(),
            2,
            "",
            "two distances from places that do not lie in one line with it"),
        ("Hole %s is not fixed by its %s %s: add distances from it to holes or landmarks that lie"
                + " in different directions.")
            .formatted(name, h.readings(), h.readings() == 1 ? "reading" : "readings"));
  }

  // Readings against each other.

  private void repeats() {
    SideReadings read = side.readings();
    read.holes().forEach(h -> repeat("diameter of " + h.name(), "", h.diameter()));
    read.spans().forEach(span -> repeat(span.words(), "span ", span.length()));
    read.edges().forEach(edge -> repeat("edge of " + edge.hole(), "", edge.gap()));
  }

  /** The farthest of repeated readings from their mean, over the sd of that difference. */
  private void repeat(String words, String spoken, Repeated r) {
    double worst =
        r.values().stream().mapToDouble(mm -> Math.abs(mm - r.mean())).max().orElseThrow();
    double limit = DataSnooping.LEAST_LIMIT * r.sd() * Math.sqrt(1 - 1.0 / r.count());
    if (worst > limit) {
      findings.add(
          "drilled-repeat." + Findings.slug(words),
          Severity.STOP,
          About.mm(words, worst, limit, BAARDA),
          ("The repeated readings of the %s lie up to %s apart, with an uncertainty of %s each."
                  + " Read it again.")
              .formatted(spoken + words, lengths.with(r.spread()), lengths.with(r.sd())));
    }
  }

  private void contradiction(Contradiction c) {
    String first = c.readings().get(0);
    String by = lengths.with(Math.abs(c.offMm()));
    if (c.leftOut()) {
      boolean ofJob = first.startsWith(HoleSolver.OF_JOB);
      findings.add(
          "drilled-off." + Findings.slug(first),
          Severity.STOP,
          new About(first, c.deviations(), c.limit(), "", BAARDA),
          "%s is %s %s than the rest say. It was left out. Read it again."
              .formatted(
                  ofJob ? "T" + first.substring(1) : "The reading " + first,
                  by,
                  c.offMm() > 0 ? "more" : "less"));
      return;
    }
    String all = String.join("; ", c.readings());
    findings.add(
        "drilled-disagree",
        Severity.STOP,
        new About(all, c.deviations(), c.limit(), "", BAARDA),
        ("These do not agree, and which of them is off cannot be told (the first would be by %s):"
                + " %s. All were used. Read them again, and add readings that check them.")
            .formatted(by, all));
  }

  private void scatter() {
    if (network.widened()) {
      findings.add(
          "drilled-scatter",
          Severity.CAUTION,
          new About("all readings", network.scatter(), 1, "", "chi-squared, one in a hundred"),
          ("The readings lie %s times as far from each other as their uncertainties say: each was"
                  + " widened by that. Read again, or write larger uncertainties.")
              .formatted(Numbers.fixed(network.scatter(), 1)));
    }
  }

  private void unchecked() {
    Map<Boolean, List<String>> ofJob =
        network.unchecked().stream()
            .collect(Collectors.partitioningBy(w -> w.startsWith(HoleSolver.OF_JOB)));
    unchecked(
        "unchecked",
        Severity.CAUTION,
        ofJob.get(false),
        "Nothing checks these, so a slip in one of them would not be seen: %s. Read them twice,"
            + " or add readings.");
    if (network.tied()) {
      unchecked(
          "unchecked-landmarks",
          Severity.NOTE,
          ofJob.get(true),
          "Nothing checks these, so an error in one of them moves all holes alike, though it does"
              + " not change how the plate fits: %s. Readings to one more landmark would.");
    }
  }

  private void unchecked(String check, Severity severity, List<String> all, String say) {
    String names = String.join("; ", all);
    if (!all.isEmpty()) {
      About about = new About(names, all.size(), 0, "", Sources.PRACTICE);
      findings.add("drilled-" + check, severity, about, say.formatted(names));
    }
  }

  private void assumed() {
    String words =
        Stream.of(
                assumed("calipers", uncertainty.caliperMm(), lengths::with),
                assumed("landmarks", uncertainty.landmarkMm(), lengths::with),
                assumed("the fore-aft line", uncertainty.line(), Lengths::withDegrees),
                assumed("the strut rod centre", uncertainty.centreMm(), lengths::with))
            .flatMap(Optional::stream)
            .collect(Collectors.joining(", "));
    if (!words.isEmpty()) {
      findings.add(
          "drilled-doubt",
          Severity.NOTE,
          About.words("all readings", Sources.PRACTICE),
          "Uncertainties that the readings file does not give were assumed: %s.".formatted(words));
    }
  }

  private static <T> Optional<String> assumed(
      String what, Stated<T> figure, Function<T, String> told) {
    return figure.assumed()
        ? Optional.of(what + " " + told.apply(figure.value()))
        : Optional.empty();
  }

  // Tower and plan.

  private void tie() {
    if (network.tied()) {
      mirror();
      return;
    }
    boolean none = network.loose() == 3 || network.holes().size() == 1 && network.loose() == 2;
    boolean oneLandmark = side.planned().job().tower().landmarks().size() < 2;
    findings.add(
        "drilled-untied",
        Severity.CAUTION,
        new About("landmarks", network.loose(), 0, "", "two landmarks, each to two holes"),
        ("%s where they lie is not known, and rotation and offset are NOT assumed to be as planned."
                + " The pattern's shape and the plate's fit are. Its mirror image would read alike."
                + " %s")
            .formatted(
                none
                    ? "Nothing ties the holes to the tower:"
                    : "The holes are tied to the tower too loosely: as a whole they could still"
                        + " turn or move, so",
                oneLandmark
                    ? "The job has one landmark only: measure a second one into it, and read to"
                        + " both."
                    : "Add readings from the holes to two landmarks."));
  }

  /** Distances to points of one line are the same on both sides of it. */
  private void mirror() {
    List<Landmark> used =
        side.planned().job().tower().landmarks().stream().filter(this::isUsed).toList();
    // The two farthest apart: the first such pair, as each is asked about all.
    Optional<List<Landmark>> ends =
        used.stream()
            .flatMap(p -> used.stream().map(q -> List.of(p, q)))
            .reduce((one, two) -> apart(two) > apart(one) ? two : one)
            .filter(pair -> apart(pair) > 0);
    if (ends.isEmpty()) {
      return;
    }
    Landmark a = ends.get().get(0);
    Landmark b = ends.get().get(1);
    Vec2 along = b.at().minus(a.at()).unit();
    ToDoubleFunction<Vec2> off = at -> along.cross(at.minus(a.at()));
    if (used.stream().anyMatch(l -> Math.abs(off.applyAsDouble(l.at())) > OFF_LINE_MM)) {
      return;
    }
    Found far =
        network.holes().stream()
            .max(Comparator.comparingDouble(f -> Math.abs(off.applyAsDouble(f.at()))))
            .orElseThrow();
    // The way to the hole, square to the line.
    Vec2 way = along.quarterTurn().times(Math.signum(off.applyAsDouble(far.at())));
    String where =
        Math.abs(way.x()) > Math.abs(way.y())
            ? way.x() > 0 ? "forward" : "rearward"
            : way.y() > 0 ? "inboard" : "outboard";
    findings.add(
        "drilled-mirror",
        Severity.NOTE,
        About.words("landmarks in one line", "distances alone"),
        ("Distances cannot tell the holes from their mirror image in the line from %s to %s; the"
                + " plan was taken as right. Look: hole %s lies %s of that line.")
            .formatted(a.name(), b.name(), far.name(), where));
  }

  private static double apart(List<Landmark> pair) {
    return pair.get(0).at().distanceTo(pair.get(1).at());
  }

  private boolean isUsed(Landmark landmark) {
    return side.readings().spans().stream()
        .flatMap(s -> Stream.of(s.from(), s.to()))
        .anyMatch(landmark.name()::equals);
  }

  /** A pattern far from its place, or flipped, is not the one that was planned. */
  private void pattern() {
    Function<DrilledSide.Hole, Double> off = h -> h.error().or(h::left).map(Vec2::norm).orElse(0.0);
    double left =
        side.holes().stream()
            .flatMap(h -> h.left().stream())
            .mapToDouble(Vec2::norm)
            .max()
            .orElse(0.0);
    double sure = network.holes().stream().mapToDouble(Found::worstSdMm).max().orElse(0.0);
    if (left > FLIPPED_MM && best.filter(b -> b.looksFlipped(sure)).isPresent()) {
      findings.add(
          "drilled-turned-over",
          Severity.STOP,
          About.mm("all holes", left, FLIPPED_MM, Sources.OWN_CHOICE),
          "The holes fit the pattern flipped far better than the pattern itself: the sheet lay with"
              + " the wrong face up, it was the other tower's, or names are mixed up. Check the"
              + " names first.");
    }
    side.holes().stream()
        .reduce((a, b) -> off.apply(b) > off.apply(a) ? b : a)
        .filter(worst -> off.apply(worst) > HoleSolver.FAR_MM)
        .ifPresent(worst -> offPlan(worst.found().name(), off.apply(worst)));
  }

  private void offPlan(String hole, double mm) {
    findings.add(
        "drilled-off-plan." + Findings.slug(hole),
        Severity.STOP,
        About.mm("hole " + hole, mm, HoleSolver.FAR_MM, Sources.OWN_CHOICE),
        ("Hole %s lies %s from its planned place%s, farther than a drill wanders from a mark."
                + " Look for mixed-up names, a slipped digit, or the wrong sheet.")
            .formatted(hole, lengths.with(mm), network.tied() ? "" : " in the pattern"));
  }
}
