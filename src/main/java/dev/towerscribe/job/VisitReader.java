package dev.towerscribe.job;

import dev.towerscribe.finding.Fault;
import dev.towerscribe.finding.JobRejected;
import dev.towerscribe.model.Job;
import dev.towerscribe.model.Side;
import dev.towerscribe.model.SideJob;
import dev.towerscribe.model.StrutPoints;
import dev.towerscribe.quantity.Angle;
import dev.towerscribe.record.BayFigure;
import dev.towerscribe.record.BayReading;
import dev.towerscribe.record.BayUncertainty;
import dev.towerscribe.record.Visit;
import dev.towerscribe.record.WheelVisit;
import java.io.IOException;
import java.nio.file.Path;
import java.util.EnumMap;
import java.util.Map;
import java.util.Optional;
import java.util.function.Consumer;
import java.util.function.IntPredicate;

/**
 * Reads visit files: what an alignment bay read. The job they belong to decides which sides there
 * are, how far the slot goes and whether there is a knuckle bolt, so it is needed to judge them.
 *
 * @param printable whether the sheets can carry a character, by its Unicode code point
 * @param notes told what is no fault but should be changed in a file: keys in an old spelling
 */
public record VisitReader(IntPredicate printable, Consumer<String> notes) {
  private static final String SETTING = "setting";
  private static final String KNUCKLE = "knuckle";
  private static final String RIDE = "ride";

  /**
   * Reads a visit file.
   *
   * @param file the file
   * @param job the job that the car was worked on by
   * @return as {@link #parse}
   * @throws IOException if it cannot be read; the message says which and why
   * @throws JobRejected with every fault, if it has any
   */
  public Visit read(Path file, Job job) throws IOException, JobRejected {
    return parse(JobReader.bytes(file), job);
  }

  /**
   * Reads a visit.
   *
   * @param bytes the file's content
   * @param job the job that the car was worked on by
   * @return the visit; what it leaves out of setting and knuckle bolt is the job's
   * @throws JobRejected with every fault, if it has any
   */
  public Visit parse(byte[] bytes, Job job) throws JobRejected {
    return Faults.<Visit, JobRejected>of(faults -> parse(bytes, job, faults));
  }

  private Visit parse(byte[] bytes, Job job, Faults faults) throws JobRejected {
    TableReader top = FileHead.open(bytes, faults, printable, notes);
    faults.noteBlanks(top.all());
    FileHead.readUnits(top);
    var date = FileHead.neededDate(top);
    var words = top.label("visit", Limits.PHRASE, "");
    var bay = StatedValues.label(top, "bay", Limits.PHRASE);
    var uncertainty = top.tableOrEmpty(Respelling.UNCERTAINTY).flatMap(VisitReader::uncertainty);
    Map<Side, WheelVisit> wheels = new EnumMap<>(Side.class);
    for (Side side : Side.values()) {
      wheel(top, side, job).ifPresent(w -> wheels.put(side, w));
    }
    top.close();
    if (faults.isEmpty() && wheels.isEmpty()) {
      faults.add(
          new Fault(
              "",
              "no figure of any wheel",
              "at least one under [left.before], [left.after] or the right's",
              "Write down what the bay read."));
    }
    faults.throwIfAny();
    return new Visit(date.get(), words.get(), bay, uncertainty.get(), Map.copyOf(wheels));
  }

  private static Optional<BayUncertainty> uncertainty(TableReader d) {
    Map<BayFigure, Angle> figures = new EnumMap<>(BayFigure.class);
    for (BayFigure figure : BayFigure.values()) {
      d.angle(figure.word(), Limits.BAY_SD, BayUncertainty.USUAL.of(figure))
          .ifPresent(a -> figures.put(figure, a));
    }
    var ride = d.length(RIDE, Limits.PLUS_MINUS, BayUncertainty.USUAL.rideMm());
    return d.closed(() -> new BayUncertainty(figures, ride.get()));
  }

  private Optional<WheelVisit> wheel(TableReader top, Side side, Job job) {
    if (!top.has(side.word())) {
      return Optional.empty();
    }
    SideJob sideJob = job.sides().get(side);
    if (sideJob == null) {
      var known = job.sides().keySet().stream().map(Side::word).toList();
      return top.fault(
          side.word(),
          "the job's sides: " + String.join(", ", known),
          "The job has no such side: add it there, or leave it out here.");
    }
    return top.optionalTable(side.word()).flatMap(t -> wheel(t, sideJob));
  }

  private static Optional<WheelVisit> wheel(TableReader t, SideJob job) {
    var before = t.tableOrEmpty("before").flatMap(VisitReader::reading);
    var afterTable = t.tableOrEmpty("after");
    var setting = afterTable.flatMap(a -> setting(a, job));
    var knuckle = afterTable.flatMap(a -> knuckle(a, job));
    var after = afterTable.flatMap(VisitReader::reading);
    return t.closed(() -> new WheelVisit(before.get(), after.get(), setting.get(), knuckle.get()))
        .filter(WheelVisit::hasFigures);
  }

  private static Optional<BayReading> reading(TableReader t) {
    Map<BayFigure, Angle> figures = new EnumMap<>(BayFigure.class);
    for (BayFigure figure : BayFigure.values()) {
      t.optionalAngle(figure.word(), range(figure)).ifPresent(a -> figures.put(figure, a));
    }
    var ride = StatedValues.length(t, RIDE, Limits.RIDE);
    return t.closed(() -> new BayReading(figures, ride));
  }

  private static AllowedRange range(BayFigure figure) {
    return switch (figure) {
      case CASTER -> Limits.CASTER;
      case CAMBER, TOE -> Limits.WHEEL_ANGLE;
      case INCLINATION -> Limits.INCLINATION;
    };
  }

  private static Optional<Double> setting(TableReader a, SideJob job) {
    var setting = a.length(SETTING, Limits.SLOT, job.mount().settingMm());
    AllowedRange slot = AllowedRange.mm(job.plate().slot().fromMm(), job.plate().slot().toMm());
    if (setting.isPresent() && !slot.holds(setting.get())) {
      a.lengthFault(
          SETTING,
          "within the job's slot, " + slot.words(a.unit()),
          "The bearing can only be left within the slot.");
    }
    return setting;
  }

  private static Optional<Angle> knuckle(TableReader a, SideJob job) {
    var turn = a.angle(KNUCKLE, Limits.WHEEL_ANGLE, Angle.ZERO);
    if (turn.isEmpty() || turn.get().radians() == 0.0) {
      return turn;
    }
    var bolt = job.strut().flatMap(StrutPoints::knuckleBolt);
    if (bolt.isEmpty()) {
      return a.fault(
          KNUCKLE,
          "0: the job has no strut.knuckle_bolt",
          "Give the bolt's pivot and range in the job, or leave this out.");
    }
    AllowedRange range =
        AllowedRange.degrees(bolt.get().from().degrees(), bolt.get().to().degrees());
    return range.holds(turn.get().degrees())
        ? turn
        : a.fault(
            KNUCKLE,
            "within the job's knuckle bolt, " + range.words(a.unit()),
            "Check the figure, or the bolt's range in the job.");
  }
}
