package dev.towerscribe.report;

import dev.towerscribe.quantity.Angle;
import dev.towerscribe.quantity.Lengths;
import java.util.Optional;

/** One cell of a table: words to the left, figures to the right. */
public sealed interface Cell {
  /** A cell that says nothing. */
  Cell EMPTY = new Words("");

  /** A figure that is not known. */
  Cell NONE = new Words("-");

  /**
   * Words, or a figure's absence in words.
   *
   * @param words what they say, perhaps nothing
   */
  record Words(String words) implements Cell {
    @Override
    public String text(Lengths lengths) {
      return words;
    }
  }

  /**
   * A figure.
   *
   * @param amount what it measures
   * @param value the figure: mm, mm2, radians or a plain number; finite
   * @param likely how near the true one is two times in three: a figure, or words where there is
   *     none to give
   * @param mark a word that stands beside it, such as "SHORT"; mostly empty
   */
  record Figure(Amount amount, double value, Optional<Cell> likely, String mark) implements Cell {
    /** What a calculation leaves of a standard deviation of none, radians or mm. */
    private static final double ROUNDING = 1e-12;

    @Override
    public String text(Lengths lengths) {
      String joint = mark.length() > 1 ? " " : "";
      return mark + joint + amount.text(value, lengths);
    }

    /**
     * The same with how near it is.
     *
     * @param sd one standard deviation, in the figure's own measure
     * @return the cell
     */
    public Figure likely(double sd) {
      return likely(figure(amount, sd));
    }

    /**
     * The same with how near it is, for a figure that the job may state itself.
     *
     * @param sd one standard deviation, in the figure's own measure; where it is none but for
     *     rounding, the cell reads "as measured"
     * @return the cell
     */
    public Figure likelyOrMeasured(double sd) {
      return sd <= ROUNDING ? likely(words("as measured")) : likely(sd);
    }

    /**
     * The same with how near it is.
     *
     * @param how a figure, or words
     * @return the cell
     */
    public Figure likely(Cell how) {
      return new Figure(amount, value, Optional.of(how), mark);
    }

    /**
     * The same with a word beside it.
     *
     * @param word the word
     * @param when whether it is to stand there
     * @return the cell
     */
    public Figure marked(String word, boolean when) {
      return when ? new Figure(amount, value, likely, word) : this;
    }
  }

  /**
   * What it says, with its mark, without how near.
   *
   * @param lengths the unit of lengths
   * @return words or a number without its unit
   */
  String text(Lengths lengths);

  /**
   * Words.
   *
   * @param words what they say
   * @return the cell
   */
  static Cell words(String words) {
    return new Words(words);
  }

  /**
   * A figure.
   *
   * @param amount what it measures
   * @param value in the amount's measure
   * @return the cell
   */
  static Figure figure(Amount amount, double value) {
    return new Figure(amount, value, Optional.empty(), "");
  }

  /**
   * A length as calipers show it.
   *
   * @param mm millimetres
   * @return the cell
   */
  static Figure length(double mm) {
    return figure(Amount.LENGTH, mm);
  }

  /**
   * A length that may not be known.
   *
   * @param mm millimetres, if known
   * @return the cell, or a dash
   */
  static Cell length(Optional<Double> mm) {
    return mm.<Cell>map(Cell::length).orElse(NONE);
  }

  /**
   * An angle to a hundredth of a degree.
   *
   * @param radians the angle
   * @return the cell
   */
  static Figure angle(double radians) {
    return figure(Amount.ANGLE, radians);
  }

  /**
   * An angle that may not be known.
   *
   * @param angle the angle, if known
   * @return the cell, or a dash
   */
  static Cell angle(Optional<Angle> angle) {
    return angle.<Cell>map(Cell::angle).orElse(NONE);
  }

  /**
   * An angle to a hundredth of a degree.
   *
   * @param angle the angle
   * @return the cell
   */
  static Figure angle(Angle angle) {
    return angle(angle.radians());
  }
}
