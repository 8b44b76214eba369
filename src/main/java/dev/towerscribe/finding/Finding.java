package dev.towerscribe.finding;

import java.util.Objects;
import java.util.Optional;

/**
 * One check's result on one tower.
 *
 * @param id names this very finding: {@code side.check.thing}, for instance {@code
 *     left.edge-cut.B}; letters, digits, point and hyphen only, so that it can be typed after
 *     {@code --accept}
 * @param severity what it means for the work
 * @param where the things it is about, in words: "bolt B, final cut"
 * @param figure the value found, in {@code unit}
 * @param limit the least or greatest value allowed, in {@code unit}
 * @param unit "mm", "deg", "%" or "" for a count
 * @param source the standard, book or practice behind the limit, or the job key that set it
 * @param say one plain sentence: what is so, and what to do
 * @param acceptable whether a person may answer for it by its id; false for a stop that no switch
 *     lifts, because there is no metal where the work needs it. True for everything that is no stop
 * @param spot where it is on the tower, and what would have to go where; empty for what has no
 *     place, and for what passes
 */
public record Finding(
    String id,
    Severity severity,
    String where,
    double figure,
    double limit,
    String unit,
    String source,
    String say,
    boolean acceptable,
    Optional<Spot> spot) {
  /** Checks that nothing is missing. */
  public Finding {
    Objects.requireNonNull(severity);
    Objects.requireNonNull(where);
    Objects.requireNonNull(unit);
    Objects.requireNonNull(source);
    Objects.requireNonNull(say);
    Objects.requireNonNull(spot);
    if (!id.matches("[A-Za-z0-9.-]+")) {
      throw new IllegalArgumentException("not a finding id: " + id);
    }
    if (!Double.isFinite(figure) || !Double.isFinite(limit)) {
      throw new IllegalArgumentException(id + ": figure and limit must be finite");
    }
    if (!acceptable && severity != Severity.STOP) {
      throw new IllegalArgumentException(id + ": only a stop cannot be accepted");
    }
  }

  /**
   * A finding that a person may answer for.
   *
   * @param id names this very finding
   * @param severity what it means for the work
   * @param where the things it is about, in words
   * @param figure the value found, in {@code unit}
   * @param limit the least or greatest value allowed, in {@code unit}
   * @param unit "mm", "deg", "%" or "" for a count
   * @param source what the limit rests on
   * @param say one plain sentence: what is so, and what to do
   */
  public Finding(
      String id,
      Severity severity,
      String where,
      double figure,
      double limit,
      String unit,
      String source,
      String say) {
    this(id, severity, where, figure, limit, unit, source, say, true, Optional.empty());
  }

  /**
   * The same where nothing can move any more.
   *
   * @return its place without a way out
   */
  public Finding fixed() {
    return new Finding(
        id, severity, where, figure, limit, unit, source, say, acceptable, spot.map(Spot::fixed));
  }

  /** The same under another id and in other words. */
  Finding as(String otherId, String otherWords) {
    return new Finding(
        otherId, severity, where, figure, limit, unit, source, otherWords, acceptable, spot);
  }

  /**
   * Whether it is about one side.
   *
   * @param side "left", "right" or "both"
   * @return true if its id begins with that word
   */
  public boolean isOf(String side) {
    return id.startsWith(side + ".");
  }

  /**
   * Which check it comes from: the part of its id after the side.
   *
   * @return for instance "edge-cut" of "left.edge-cut.B"
   */
  public String check() {
    String[] parts = id.split("\\.");
    return parts.length > 1 ? parts[1] : "";
  }

  /**
   * Whether figure and limit say anything: a finding in words alone has neither unit nor limit.
   *
   * @return false where only the sentence counts
   */
  public boolean isMeasured() {
    return !unit.isEmpty() || limit != 0.0;
  }

  /**
   * Whether it blocks the cutting sheets.
   *
   * @return true for a stop
   */
  public boolean isStop() {
    return severity == Severity.STOP;
  }
}
