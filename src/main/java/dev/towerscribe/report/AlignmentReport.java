package dev.towerscribe.report;

import static dev.towerscribe.report.Cell.angle;
import static dev.towerscribe.report.Cell.figure;
import static dev.towerscribe.report.Cell.length;
import static dev.towerscribe.report.Cell.words;

import dev.towerscribe.alignment.Curves;
import dev.towerscribe.alignment.JobAlignment;
import dev.towerscribe.alignment.Reading;
import dev.towerscribe.alignment.Sensitivity;
import dev.towerscribe.alignment.SideAlignment;
import dev.towerscribe.alignment.StrutFigures;
import dev.towerscribe.model.Job;
import dev.towerscribe.model.PlusMinus;
import dev.towerscribe.quantity.Angle;
import dev.towerscribe.quantity.Lengths;
import dev.towerscribe.quantity.Numbers;
import java.util.ArrayList;
import java.util.Collections;
import java.util.List;
import java.util.Optional;
import java.util.Set;
import java.util.function.Function;
import java.util.stream.Stream;

/** What an alignment bay will read. */
public final class AlignmentReport {
  private static final String BEFORE = "before the work";
  private static final String AT = "at the chosen setting";

  /** A tenth of an inch is near enough to what a slot or a tape can be set to. */
  private static final double INCH_STEP = 0.1;

  /** How bump steer is given in either unit. */
  private static final double MM_OF_TRAVEL = 10;

  private static final double INCHES_OF_TRAVEL = 1;

  private final Lengths lengths;

  /**
   * The parts of a report, each as it is needed.
   *
   * @param lengths the unit
   */
  public AlignmentReport(Lengths lengths) {
    this.lengths = lengths;
  }

  /**
   * The report of a whole job.
   *
   * @param job the job
   * @param alignment its alignment
   * @return the report
   */
  public static Report of(Job job, JobAlignment alignment) {
    Lengths lengths = Lengths.in(job.units());
    AlignmentReport words = new AlignmentReport(lengths);
    boolean points = alignment.sides().values().stream().anyMatch(s -> !s.estimate());
    Blocks blocks = new Blocks().add(Phrases.head(job)).say(words.signs(points));
    for (SideAlignment side : alignment.sides().values()) {
      String place = Phrases.placeAndSetting(side.job().mount(), lengths);
      blocks.section(side.side(), "wheel").say(Phrases.capital(place) + ".").say(basis(side));
      blocks.add(words.readings(side));
      blocks.add(side.strut().map(s -> new Block.Points(words.points(side))));
      blocks.add(words.changes(side)).add(FindingWords.lines(side.findings(), Set.of()));
    }
    if (alignment.crossAt().isPresent()) {
      blocks.section("Left against right");
      alignment.crossBefore().ifPresent(c -> blocks.say(cross(BEFORE, c)));
      cross(alignment).ifPresent(blocks::say);
      blocks.add(FindingWords.lines(alignment.findings(), Set.of()));
    }
    return blocks.report("Towerscribe alignment", lengths);
  }

  /**
   * What the figures rest on.
   *
   * @param side a wheel
   * @return sentences
   */
  public static String basis(SideAlignment side) {
    return side.estimate()
        ? "AN ESTIMATE from the measured steering axis alone, at ride height. What the arm and the"
            + " tie rod add is left out, and no uncertainty can be given."
        : "Predicted from the measured points at ride height, toe set by the tie rod. "
            + Phrases.LIKELY_MEANS
            + ", by the uncertainty of the points.";
  }

  /**
   * Units and signs.
   *
   * @param toe whether there is toe to be told of
   * @return sentences
   */
  public String signs(boolean toe) {
    return ("Degrees and %s. Positive: caster with the top rearward, camber with the wheel's top"
            + " outward, inclination with the top inboard%s. %s Measure on an alignment bay before"
            + " driving at speed.")
        .formatted(
            Phrases.unit(lengths), toe ? ", toe of one wheel inward" : "", Phrases.SETTING_MEANS);
  }

  /**
   * Before the work, at the chosen setting, and at every one that can be told apart.
   *
   * @param side a wheel
   * @return a table
   */
  public Block.Table readings(SideAlignment side) {
    double chosenMm = side.job().mount().settingMm();
    Optional<StrutFigures> strut = side.strut();
    return new Block.Table(heads(side), List.of())
        .plus(row(side, BEFORE, side.before(), strut.flatMap(StrutFigures::sureBefore)))
        .plus(
            row(
                side,
                "chosen " + setting(chosenMm),
                side.at(),
                strut.flatMap(StrutFigures::sureAt)))
        .each(
            side.settings().stream().filter(s -> s.settingMm() != chosenMm).toList(),
            s -> row(side, setting(s.settingMm()), s.reading(), Optional.empty()));
  }

  private static List<String> heads(SideAlignment side) {
    List<String> heads =
        List.of("", "caster", "camber", "inclination", "toe", "scrub", "trail", "damper");
    return side.estimate() ? heads.subList(0, heads.indexOf("toe")) : heads;
  }

  private String setting(double settingMm) {
    return "setting " + lengths.size(settingMm);
  }

  private static List<Cell> row(
      SideAlignment side,
      String name,
      Optional<Reading> reading,
      Optional<Sensitivity.Figures> sure) {
    List<Cell> row = new ArrayList<>(List.of(words(name)));
    if (reading.isEmpty()) {
      row.add(words("not reached"));
      row.addAll(Collections.nCopies(heads(side).size() - 2, Cell.EMPTY));
      return row;
    }
    PlusMinus points = side.strut().map(StrutFigures::plusMinus).orElse(PlusMinus.all(0));
    Reading r = reading.get();
    row.add(near(angle(r.caster()), sure.map(Sensitivity.Figures::caster), points));
    Cell.Figure camber = angle(r.camber());
    row.add(
        sure.<Cell>map(f -> camber.likelyOrMeasured(f.camber().plusMinus(points))).orElse(camber));
    row.add(near(angle(r.inclination()), sure.map(Sensitivity.Figures::inclination), points));
    r.linkage()
        .ifPresent(
            m -> {
              row.add(sure.isPresent() ? angle(m.toe()).likely(words("set")) : angle(m.toe()));
              row.add(near(length(m.scrubMm()), sure.map(Sensitivity.Figures::scrubMm), points));
              row.add(near(length(m.trailMm()), sure.map(Sensitivity.Figures::trailMm), points));
              row.add(near(length(m.damperMm()), sure.map(Sensitivity.Figures::damperMm), points));
            });
    return row;
  }

  private static Cell near(Cell.Figure cell, Optional<Sensitivity.Figure> sure, PlusMinus points) {
    return sure.map(f -> cell.likely(f.plusMinus(points))).orElse(cell);
  }

  /**
   * What the strut does at ride height and over its travel.
   *
   * @param side a wheel
   * @return sentences; none without strut points
   */
  public List<String> points(SideAlignment side) {
    Optional<String> damper =
        side.damperChangeMm()
            .map(
                mm ->
                    "Damper %s %s at ride height: that much more %s travel left."
                        .formatted(
                            lengths.with(Math.abs(mm)),
                            mm < 0 ? "shorter" : "longer",
                            mm < 0 ? "droop, less bump" : "bump, less droop"));
    Optional<String> track =
        side.trackChangeMm()
            .map(
                mm ->
                    "Tyre contact moves %s %s."
                        .formatted(lengths.with(Math.abs(mm)), mm < 0 ? "inward" : "outward"));
    return Stream.of(
            side.strut().flatMap(AlignmentReport::knuckle),
            side.strut().flatMap(this::bumpSteer),
            damper,
            track)
        .flatMap(Optional::stream)
        .toList();
  }

  private static Optional<String> knuckle(StrutFigures strut) {
    return both(
            strut.reachableAt(),
            strut.reachableBefore(),
            r -> "%s to %s".formatted(Lengths.degrees(r.from()), Lengths.degrees(r.to())))
        .map(range -> "Knuckle bolt: camber %s deg.".formatted(range));
  }

  private Optional<String> bumpSteer(StrutFigures strut) {
    Optional<Curves.BumpSteer> at = strut.at().map(Curves::bumpSteer);
    Optional<Curves.BumpSteer> before = strut.before().map(Curves::bumpSteer);
    return at.or(() -> before)
        .map(
            b ->
                ("Bump steer, deg toe-in for %s of bump: at ride height %s; steepest %s; most"
                        + " change from %s of droop to %s of bump, deg: %s.")
                    .formatted(
                        lengths.metric() ? "10 mm" : "1 in",
                        both(at, before, c -> slope(c.slopeRadPerMm())).orElseThrow(),
                        both(at, before, c -> at(slope(c.steepestRadPerMm()), c.steepestAtMm()))
                            .orElseThrow(),
                        lengths.size(b.droopMm()),
                        lengths.size(b.bumpMm()),
                        both(at, before, c -> at(Lengths.degrees(c.peakRad()), c.peakAtMm()))
                            .orElseThrow()));
  }

  private String at(String figure, double travelMm) {
    return "%s at %s".formatted(figure, lengths.size(travelMm));
  }

  /** At the chosen setting, with what was before the work in brackets. */
  private static <T> Optional<String> both(
      Optional<T> at, Optional<T> before, Function<T, String> words) {
    Optional<String> then = before.map(b -> "before the work " + words.apply(b));
    return at.map(a -> words.apply(a) + then.map(t -> " (" + t + ")").orElse("")).or(() -> then);
  }

  /** For 10 mm or 1 inch of travel, which is how bump steer is given in either unit. */
  private String slope(double radPerMm) {
    return Lengths.fineDegrees(
        radPerMm * lengths.unit().toMm(lengths.metric() ? MM_OF_TRAVEL : INCHES_OF_TRAVEL));
  }

  /**
   * What a small step of each choice changes.
   *
   * @param side a wheel
   * @return a table; empty without strut points or where the linkage does not get there
   */
  public Optional<Block.Table> changes(SideAlignment side) {
    return side.strut().flatMap(StrutFigures::sureAt).map(this::changes);
  }

  private Block.Table changes(Sensitivity.Figures f) {
    String step = lengths.metric() ? "1 mm " : "0.1 in ";
    double stepMm = lengths.unit().toMm(lengths.metric() ? 1.0 : INCH_STEP);
    return Block.Table.of(
            "change per", "caster", "camber", "inclination", "scrub", "trail", "damper")
        .each(
            List.of(Sensitivity.Choice.values()),
            choice ->
                switch (choice) {
                  case ROTATION -> changes("1 deg of rotation", Math.toRadians(1.0), choice, f);
                  case REARWARD -> changes(step + "rearward", stepMm, choice, f);
                  case INBOARD -> changes(step + "inboard", stepMm, choice, f);
                  case SETTING -> changes(step + "of setting", stepMm, choice, f);
                });
  }

  private static List<Cell> changes(
      String name, double by, Sensitivity.Choice choice, Sensitivity.Figures f) {
    List<Cell> row = new ArrayList<>(List.of(words(name)));
    for (Sensitivity.Figure angle : List.of(f.caster(), f.camber(), f.inclination())) {
      row.add(figure(Amount.FINE_ANGLE, by * angle.byChoice()[choice.ordinal()]));
    }
    for (Sensitivity.Figure length : List.of(f.scrubMm(), f.trailMm(), f.damperMm())) {
      row.add(length(by * length.byChoice()[choice.ordinal()]));
    }
    return row;
  }

  /**
   * Left against right at the chosen setting.
   *
   * @param alignment of both wheels
   * @return a sentence; empty where one of both is not known
   */
  public static Optional<String> cross(JobAlignment alignment) {
    return alignment.crossAt().map(c -> cross(AT, c));
  }

  private static String cross(String when, JobAlignment.Cross c) {
    return "Left minus right, %s: caster %s, camber %s deg."
        .formatted(when, Lengths.degrees(c.caster()), Lengths.degrees(c.camber()));
  }

  /**
   * What to expect at the chosen setting, for a step of the work.
   *
   * @param side a wheel
   * @return for instance "Expect caster 5.3 deg (likely, 2 in 3, within 0.3 deg), camber -1.5
   *     deg."; empty where the linkage gives no figures
   */
  public static Optional<String> expected(SideAlignment side) {
    return side.at()
        .map(
            r ->
                "Expect caster %s deg%s, camber %s deg%s."
                    .formatted(
                        tenth(r.caster()),
                        casterLikely(side),
                        tenth(r.camber()),
                        side.estimate() ? " (an estimate)" : ""));
  }

  /** Camber has next to none: it was measured itself, and only its change is worked out. */
  private static String casterLikely(SideAlignment side) {
    return side.strut()
        .flatMap(s -> s.sureAt().map(f -> f.caster().plusMinus(s.plusMinus())))
        .map(sd -> Lengths.likelyWithin(tenth(new Angle(sd)) + " deg"))
        .orElse("");
  }

  private static String tenth(Angle angle) {
    return Numbers.fixed(angle.degrees(), 1);
  }
}
