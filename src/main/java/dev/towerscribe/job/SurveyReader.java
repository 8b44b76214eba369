package dev.towerscribe.job;

import dev.towerscribe.finding.Fault;
import dev.towerscribe.finding.JobRejected;
import dev.towerscribe.geometry.Vec3;
import dev.towerscribe.model.Side;
import dev.towerscribe.survey.Survey;
import dev.towerscribe.survey.SurveySide;
import dev.towerscribe.survey.SurveyTower;
import java.io.IOException;
import java.nio.charset.StandardCharsets;
import java.nio.file.Path;
import java.util.EnumMap;
import java.util.LinkedHashSet;
import java.util.List;
import java.util.Map;
import java.util.Optional;
import java.util.Set;
import java.util.function.Consumer;
import java.util.function.IntPredicate;
import java.util.stream.Stream;

/**
 * Reads survey files. Whatever a file holds, the answer is a survey or every fault found in it.
 *
 * @param printable whether the sheets can carry a character, by its Unicode code point
 * @param notes told what is no fault but should be changed in a file: keys in an old spelling
 */
public record SurveyReader(IntPredicate printable, Consumer<String> notes) {
  /**
   * Reads a survey file.
   *
   * @param file the file
   * @return the survey
   * @throws IOException if it cannot be read; the message says why
   * @throws JobRejected if it cannot be used, with every fault
   */
  public Survey read(Path file) throws IOException, JobRejected {
    return parse(JobReader.bytes(file));
  }

  /**
   * Reads a survey from its text.
   *
   * @param text TOML
   * @return the survey
   * @throws JobRejected if it cannot be used, with every fault
   */
  public Survey parse(String text) throws JobRejected {
    return parse(text.getBytes(StandardCharsets.UTF_8));
  }

  private Survey parse(byte[] bytes) throws JobRejected {
    return Faults.<Survey, JobRejected>of(faults -> parse(bytes, faults));
  }

  private Survey parse(byte[] bytes, Faults faults) throws JobRejected {
    TableReader top = FileHead.open(bytes, faults, printable, notes);
    var unit = FileHead.readUnits(top);
    var title = top.label("title", Limits.TITLE);
    var date = FileHead.date(top);
    var sides = FileHead.sides(top);
    faults.noteBlanks(
        top.all()
            .without(
                Stream.of(Side.values()).filter(s -> !sides.contains(s)).map(Side::word).toList()));
    SurveyUncertainty sds =
        top.tableOrEmpty(Respelling.UNCERTAINTY)
            .map(SurveyUncertainty::read)
            .orElse(SurveyUncertainty.USUAL);
    Set<String> names = new LinkedHashSet<>();
    var stations = top.each("station", 0, "stations", s -> station(s, names));
    Map<Side, SurveySide> read = new EnumMap<>(Side.class);
    SurveyNames points = new SurveyNames(names, sides);
    for (Side side : sides) {
      (FileHead.sidesAreWords(top) ? top.table(side.word()) : top.optionalTable(side.word()))
          .flatMap(t -> new SurveySideReader(side, sds, points).read(t))
          .ifPresent(s -> read.put(side, s));
    }
    top.leave("left", "right");
    top.close();
    faults.throwIfAny();
    if (read.values().stream().allMatch(SurveyReader::isEmpty)) {
      faults.add(
          new Fault(
              "",
              "no reading at all",
              "at least one reading",
              "Take the hashes off the lines that were read, and put the figures in."));
      faults.throwIfAny();
    }
    return new Survey(title.orElseThrow(), date, unit.orElseThrow(), stations, read);
  }

  private static boolean isEmpty(SurveySide s) {
    return Stream.of(s.plots(), s.heights(), s.tapes()).allMatch(List::isEmpty)
        && Stream.of(s.tyreRadius(), s.camber(), s.toe()).allMatch(Optional::isEmpty)
        && s.tower().map(SurveyReader::isEmpty).orElse(true);
  }

  private static boolean isEmpty(SurveyTower t) {
    return Stream.of(t.sheet(), t.opening(), t.mark(), t.pivotHeight(), t.crown())
            .allMatch(Optional::isEmpty)
        && Stream.of(t.leanInboard(), t.leanRearward()).allMatch(Optional::isEmpty)
        && Stream.of(t.landmarks(), t.lines()).allMatch(List::isEmpty);
  }

  private static Optional<Survey.Station> station(TableReader s, Set<String> names) {
    var name = s.uniqueName(names).filter(n -> SurveyNames.maySay(s, n));
    Optional<Vec3> at = s.has("at") ? s.point3("at", Limits.VEHICLE) : Optional.empty();
    var sd = StatedValues.length(s, Respelling.UNCERTAINTY, Limits.SURVEY_SD);
    if (sd.isPresent() && !s.has("at")) {
      s.fault(
          Respelling.UNCERTAINTY,
          "an uncertainty of the place in at",
          "Give at as well, or drop this key.");
    }
    return s.closed(() -> new Survey.Station(name.get(), at, sd));
  }
}
