package dev.towerscribe.drawing;

import dev.towerscribe.geometry.Vec2;
import dev.towerscribe.quantity.Angle;
import java.util.ArrayList;
import java.util.List;
import java.util.stream.Stream;

/**
 * A few lines of lettering set one under the other, centred, as one piece that can be put anywhere.
 *
 * @param lines from the top
 * @param widthMm width of the widest line
 * @param heightMm from the top of the first line's capitals to below the last line's tails
 */
public record TextBlock(List<Row> lines, double widthMm, double heightMm) {
  /** White paper left round lettering, mm. */
  public static final double CLEARED_MM = 0.9;

  /** From one base line to the next, in heights of the lower line's capitals. */
  public static final double PITCH = 1.5;

  /** Room below a base line for tails, in heights of capitals. */
  public static final double TAIL = 0.31;

  /**
   * One line.
   *
   * @param words its text
   * @param capMm height of its capitals
   */
  public record Row(String words, double capMm) {
    double widthMm() {
      return Lettering.width(words, capMm);
    }
  }

  /**
   * A block of lines. It is measured once, as it is tried in thousands of places.
   *
   * @param lines from the top, at least one
   */
  public TextBlock(List<Row> lines) {
    this(List.copyOf(lines), widthOf(lines), heightOf(lines));
  }

  /**
   * Lines of one height.
   *
   * @param capMm height of capitals
   * @param lines from the top, at least one
   * @return the block
   */
  public static TextBlock of(double capMm, String... lines) {
    return new TextBlock(Stream.of(lines).map(line -> new Row(line, capMm)).toList());
  }

  /**
   * One line more, below.
   *
   * @param capMm height of its capitals
   * @param line its text
   * @return this block and it
   */
  public TextBlock then(double capMm, String line) {
    return new TextBlock(Stream.concat(lines.stream(), Stream.of(new Row(line, capMm))).toList());
  }

  /**
   * Text broken to a width.
   *
   * @param capMm height of capitals
   * @param widthMm room for a line
   * @param paragraphs each begins a line, at least one
   * @return the block
   */
  public static TextBlock wrapped(double capMm, double widthMm, String... paragraphs) {
    return of(
        capMm,
        Stream.of(paragraphs)
            .flatMap(paragraph -> Lettering.wrap(paragraph, capMm, widthMm).stream())
            .toArray(String[]::new));
  }

  /**
   * The same lines, made smaller where need be.
   *
   * @param capMm no capital is higher than this
   * @return the block
   */
  public TextBlock atMost(double capMm) {
    return new TextBlock(
        lines.stream().map(r -> new Row(r.words(), Math.min(r.capMm(), capMm))).toList());
  }

  private static double widthOf(List<Row> lines) {
    return lines.stream().mapToDouble(Row::widthMm).max().orElse(0);
  }

  private static double heightOf(List<Row> lines) {
    double height = lines.get(0).capMm();
    for (int i = 1; i < lines.size(); i++) {
      height += PITCH * lines.get(i).capMm();
    }
    return height + TAIL * lines.get(lines.size() - 1).capMm();
  }

  TurnedBox at(Vec2 centre, Angle turn) {
    return new TurnedBox(centre, widthMm / 2, heightMm / 2, turn);
  }

  /**
   * Its shapes.
   *
   * @param centre its middle
   * @param turn direction of reading
   * @param cleared whether to clear the paper beneath
   * @param ink black or white
   * @return shapes on the layer of notes
   */
  public List<Item> drawn(Vec2 centre, Angle turn, boolean cleared, Ink ink) {
    List<Item> items = new ArrayList<>();
    if (cleared) {
      items.add(
          new Item.Polyline(
              Layer.NOTES,
              at(centre, turn).grown(CLEARED_MM).corners(),
              true,
              Pen.NONE,
              Ink.WHITE));
    }
    Vec2 down = Vec2.polar(1.0, turn).quarterTurn().times(-1);
    double y = -heightMm() / 2;
    for (int i = 0; i < lines.size(); i++) {
      Row row = lines.get(i);
      y += (i == 0 ? 1 : PITCH) * row.capMm();
      items.add(
          new Item.Text(
              Layer.NOTES,
              centre.plus(down.times(y)),
              row.capMm(),
              Align.MIDDLE,
              turn,
              row.words(),
              ink));
    }
    return items;
  }
}
