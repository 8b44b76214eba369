package dev.towerscribe.record;

import dev.towerscribe.model.Side;
import dev.towerscribe.quantity.Angle;
import dev.towerscribe.quantity.LengthUnit;
import dev.towerscribe.quantity.Worded;
import java.time.DateTimeException;
import java.time.LocalDate;
import java.util.ArrayList;
import java.util.EnumMap;
import java.util.List;
import java.util.Map;
import java.util.Optional;
import java.util.TreeMap;
import java.util.regex.Matcher;
import java.util.stream.Collectors;

/** Reads one entry's lines. Nothing in them is refused: what cannot be read is said. */
final class EntryReader {
  private final int firstLine;
  private final List<String> lines;
  private final List<Entry.Figure> figures = new ArrayList<>();
  private final Map<String, String> words = new TreeMap<>();
  private final List<String> acceptedStops = new ArrayList<>();
  private final List<String> troubles = new ArrayList<>();
  private final Map<BayFigure, Angle> uncertainties = new EnumMap<>(BayUncertainty.USUAL.figures());
  private double rideUncertaintyMm = BayUncertainty.USUAL.rideMm();
  private final Map<Side, Double> settings = new EnumMap<>(Side.class);
  private final Map<Side, Angle> knuckles = new EnumMap<>(Side.class);
  private final Map<Side, Map<ReadingStage, Double>> rides = new EnumMap<>(Side.class);

  private EntryReader(int firstLine, List<String> lines) {
    this.firstLine = firstLine;
    this.lines = lines;
  }

  /**
   * Reads an entry.
   *
   * @param firstLine number of its first line in the file
   * @param lines from the title, whole or not, to the closing line if there is one
   * @param closed whether the last of them is a closing line
   * @return the entry
   */
  static Entry read(int firstLine, List<String> lines, boolean closed) {
    return new EntryReader(firstLine, lines).entry(closed);
  }

  private Entry entry(boolean closed) {
    Matcher title = RecordLines.TITLE.matcher(lines.get(0));
    Matcher numbered = RecordLines.NUMBERED.matcher(lines.get(0));
    Optional<Integer> number =
        numbered.matches() ? Optional.of(Integer.valueOf(numbered.group(1))) : Optional.empty();
    Optional<LocalDate> date = title.matches() ? date(title.group(2)) : Optional.empty();
    int last = closed ? lines.size() - 1 : lines.size();
    for (int i = 1; i < last; i++) {
      line(lines.get(i), firstLine + i);
    }
    Entry.State state = Entry.State.CUT_SHORT;
    if (closed) {
      Matcher closing = RecordLines.CLOSING.matcher(lines.get(last));
      boolean same =
          closing.matches()
              && number.filter(n -> n == Integer.parseInt(closing.group(1))).isPresent()
              && closing.group(2).equals(RecordLines.checksum(lines.subList(0, last)));
      state = same ? Entry.State.WHOLE : Entry.State.EDITED;
    }
    if (closed && !title.matches()) {
      troubles.add("line " + firstLine + ": the date of the visit cannot be read");
    }
    return new Entry(
        state,
        number,
        date,
        firstLine,
        firstLine + lines.size() - 1,
        lines,
        closed ? date.flatMap(this::visit) : Optional.empty(),
        figures,
        words,
        acceptedStops,
        troubles,
        Optional.empty());
  }

  private Optional<LocalDate> date(String text) {
    try {
      return Optional.of(LocalDate.parse(text));
    } catch (DateTimeException e) {
      troubles.add("line " + firstLine + ": no such day: " + text);
      return Optional.empty();
    }
  }

  private void line(String line, int at) {
    if (!(figure(line) || given(line) || inWords(line) || line.isBlank())
        && !RecordLines.TOLD.matcher(line).matches()) {
      troubles.add("line " + at + " cannot be read: " + line);
    }
  }

  private boolean figure(String line) {
    Matcher m = RecordLines.FIGURE.matcher(line);
    if (!m.matches()) {
      return false;
    }
    figures.add(
        new Entry.Figure(
            Worded.find(Side.values(), m.group(1)),
            stage(m.group(2)),
            named(m.group(3)),
            angle(m.group(4)),
            Optional.ofNullable(m.group(6)).map(EntryReader::angle),
            Optional.ofNullable(m.group(10)).map("within"::equals)));
    return true;
  }

  private static BayFigure named(String word) {
    return Worded.find(BayFigure.values(), word).orElseThrow();
  }

  private static ReadingStage stage(String word) {
    return Worded.find(ReadingStage.values(), word).orElseThrow();
  }

  private static Side side(String word) {
    return Worded.find(Side.values(), word).orElseThrow();
  }

  private static Angle angle(String degrees) {
    return Angle.ofDegrees(Double.parseDouble(degrees));
  }

  private static double mm(String value, String unit) {
    return (unit.equals(LengthUnit.MM.symbol()) ? LengthUnit.MM : LengthUnit.INCH)
        .toMm(Double.parseDouble(value));
  }

  private boolean given(String line) {
    Matcher m = RecordLines.UNCERTAINTY.matcher(line);
    if (m.matches()) {
      return uncertainty(m);
    }
    m = RecordLines.RIDE.matcher(line);
    if (m.matches()) {
      rides
          .computeIfAbsent(side(m.group(1)), s -> new EnumMap<>(ReadingStage.class))
          .put(stage(m.group(2)), mm(m.group(3), m.group(4)));
      return true;
    }
    m = RecordLines.SETTING.matcher(line);
    if (m.matches()) {
      settings.put(side(m.group(1)), mm(m.group(2), m.group(3)));
      return true;
    }
    m = RecordLines.KNUCKLE.matcher(line);
    if (m.matches()) {
      knuckles.put(side(m.group(1)), angle(m.group(2)));
      return true;
    }
    return false;
  }

  private boolean uncertainty(Matcher m) {
    boolean length = !m.group(3).equals("deg");
    boolean ride = m.group(1).equals("ride");
    double value = Double.parseDouble(m.group(2));
    if (length != ride || value < 0 || !ride && value == 0) {
      return false;
    }
    if (ride) {
      rideUncertaintyMm = mm(m.group(2), m.group(3));
    } else {
      uncertainties.put(named(m.group(1)), Angle.ofDegrees(value));
    }
    return true;
  }

  private boolean inWords(String line) {
    Matcher m = RecordLines.WORDS.matcher(line);
    if (!m.matches()) {
      return false;
    }
    if (m.group(1).equals("accepted stop")) {
      acceptedStops.add(m.group(2));
    } else {
      words.put(m.group(1), m.group(2));
    }
    return true;
  }

  private Optional<Visit> visit(LocalDate date) {
    Map<Side, WheelVisit> wheels = new EnumMap<>(Side.class);
    for (Side side : Side.values()) {
      BayReading before = reading(side, ReadingStage.BEFORE);
      BayReading after = reading(side, ReadingStage.AFTER);
      if (before.figures().isEmpty() && after.figures().isEmpty()) {
        continue;
      }
      if (!settings.containsKey(side)) {
        troubles.add(
            "lines %s to %s: no setting of the %s side, so that nothing can be calculated of it"
                .formatted(firstLine, firstLine + lines.size() - 1, side.word()));
        continue;
      }
      wheels.put(
          side,
          new WheelVisit(
              before, after, settings.get(side), knuckles.getOrDefault(side, Angle.ZERO)));
    }
    return wheels.isEmpty()
        ? Optional.empty()
        : Optional.of(
            new Visit(
                date,
                words.getOrDefault("visit", ""),
                Optional.ofNullable(words.get("bay")),
                new BayUncertainty(uncertainties, rideUncertaintyMm),
                wheels));
  }

  private BayReading reading(Side side, ReadingStage stage) {
    Map<BayFigure, Angle> read = new EnumMap<>(BayFigure.class);
    for (Entry.Figure f : figures) {
      if (f.side().equals(Optional.of(side)) && f.stage() == stage) {
        read.put(f.figure(), f.measured());
      }
    }
    return new BayReading(read, Optional.ofNullable(rides.getOrDefault(side, Map.of()).get(stage)));
  }

  /** The readings of an entry that was cut short, in one line. */
  static String readings(Entry entry) {
    String all =
        entry.figures().stream()
            .filter(f -> f.side().isPresent() && f.stage() != ReadingStage.CHANGE)
            .map(f -> "%s %s deg".formatted(f.name(), RecordLines.given(f.measured().degrees())))
            .collect(Collectors.joining(", "));
    return all.isEmpty() ? "none" : all;
  }
}
