package dev.towerscribe.record;

import dev.towerscribe.model.Side;
import dev.towerscribe.quantity.Angle;
import dev.towerscribe.quantity.Worded;
import java.time.LocalDate;
import java.util.List;
import java.util.Map;
import java.util.Optional;

/**
 * An entry as read from a record.
 *
 * @param state whether it is as written
 * @param number its running number, if it can be read
 * @param date its day, if it can be read
 * @param firstLine where it begins in the file, counted from 1
 * @param lastLine where it ends
 * @param lines its lines, title and closing among them
 * @param visit what was given, if enough of it can be read to work with
 * @param figures every figure that can be read, in the record's order
 * @param words what it says in words, by key: job, pack mark, program, visit, bay
 * @param acceptedStops ids of stops that were accepted
 * @param troubles what in it cannot be read, each with its line
 * @param struck the striking that took it out, if one did: it then counts for nothing
 */
public record Entry(
    State state,
    Optional<Integer> number,
    Optional<LocalDate> date,
    int firstLine,
    int lastLine,
    List<String> lines,
    Optional<Visit> visit,
    List<Figure> figures,
    Map<String, String> words,
    List<String> acceptedStops,
    List<String> troubles,
    Optional<Strike> struck) {
  /** Whether an entry is as it was written. */
  public enum State implements Worded {
    /** Its checksum is right. */
    WHOLE,
    /** It has its closing line, but the checksum differs. */
    EDITED,
    /** It has no closing line. */
    CUT_SHORT
  }

  /**
   * One figure of it.
   *
   * @param side which wheel; empty for left minus right
   * @param stage when
   * @param figure which
   * @param measured what the bay read
   * @param predicted what was predicted at the time, to hundredths; absent where nothing was
   * @param within the verdict at the time, absent likewise
   */
  public record Figure(
      Optional<Side> side,
      ReadingStage stage,
      BayFigure figure,
      Angle measured,
      Optional<Angle> predicted,
      Optional<Boolean> within) {
    /**
     * Which figure this is, in words.
     *
     * @return for instance "left after caster"
     */
    public String name() {
      return figure.name(side, stage);
    }
  }

  /** Copies. */
  public Entry {
    lines = List.copyOf(lines);
    figures = List.copyOf(figures);
    words = Map.copyOf(words);
    acceptedStops = List.copyOf(acceptedStops);
    troubles = List.copyOf(troubles);
  }

  /** The same entry after a striking. */
  Entry after(Strike strike) {
    return new Entry(
        state,
        number,
        date,
        firstLine,
        lastLine,
        lines,
        visit,
        figures,
        words,
        acceptedStops,
        troubles,
        Optional.of(strike));
  }

  /**
   * One figure.
   *
   * @param side which wheel; empty for left minus right
   * @param stage when
   * @param figure which
   * @return it, if the entry has it
   */
  public Optional<Figure> of(Optional<Side> side, ReadingStage stage, BayFigure figure) {
    return figures.stream()
        .filter(f -> f.side().equals(side) && f.stage() == stage && f.figure() == figure)
        .findFirst();
  }
}
