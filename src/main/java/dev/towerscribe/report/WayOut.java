package dev.towerscribe.report;

import dev.towerscribe.finding.Finding;
import dev.towerscribe.finding.Spot;
import dev.towerscribe.geometry.Vec2;
import dev.towerscribe.model.Mount;
import dev.towerscribe.quantity.Lengths;
import dev.towerscribe.quantity.Lengths.Fineness;
import dev.towerscribe.quantity.Numbers;
import java.util.Optional;
import java.util.stream.Collectors;
import java.util.stream.Stream;

/** What would clear a finding, in words. Amounts are those of its {@link Spot}, digit for digit. */
public final class WayOut {
  /** Digits that a figure to be typed into a job may need: its own and those of the shift. */
  private static final int TYPED = 6;

  private WayOut() {}

  /**
   * What must move, and how far, in few words without a unit.
   *
   * @param spot the finding's place
   * @param lengths the unit
   * @return for instance "plate 3.9 rearward, 1.2 outboard"
   */
  public static String brief(Spot spot, Lengths lengths) {
    if (spot.move().isEmpty()) {
      return "no shift clears it";
    }
    Vec2 move = spot.move().get();
    String amount = lengths.figure(move.norm(), Fineness.PLACE);
    return switch (spot.mover()) {
      case PLATE -> "plate " + parts(move, lengths, "", ", ");
      case CUT -> "keep " + amount + " more";
      case HOLE -> "holes " + amount + " farther apart";
    };
  }

  /**
   * What clears a finding, as a sentence.
   *
   * @param finding any finding
   * @param mount where the plate goes
   * @param lengths the unit
   * @return empty for a finding without a place
   */
  public static Optional<String> sentence(Finding finding, Mount mount, Lengths lengths) {
    return finding.spot().map(spot -> sentence(spot, mount, lengths));
  }

  private static String sentence(Spot spot, Mount mount, Lengths lengths) {
    if (spot.move().isEmpty()) {
      return "No shift alone was found that clears it.";
    }
    Vec2 move = spot.move().get();
    String amount = lengths.with(move.norm(), Fineness.PLACE);
    return switch (spot.mover()) {
      case PLATE -> {
        Mount there = mount.shifted(move);
        yield "Clears with the plate %s: rearward = %s, inboard = %s."
            .formatted(
                parts(move, lengths, " " + lengths.unit().symbol(), " and "),
                typed(there.rearwardMm(), lengths),
                typed(there.inboardMm(), lengths));
      }
      case CUT -> "Clears with %s more kept inside the mark.".formatted(amount);
      case HOLE -> "Clears with the two holes %s farther apart.".formatted(amount);
    };
  }

  private static String typed(double mm, Lengths lengths) {
    return Numbers.pointed(lengths.unit().fromMm(mm), TYPED);
  }

  private static String parts(Vec2 move, Lengths lengths, String unit, String joint) {
    return Stream.of(
            part(move.x(), "forward", "rearward", unit, lengths),
            part(move.y(), "inboard", "outboard", unit, lengths))
        .filter(words -> !words.isEmpty())
        .collect(Collectors.joining(joint));
  }

  private static String part(double mm, String to, String back, String unit, Lengths lengths) {
    return mm == 0
        ? ""
        : lengths.figure(Math.abs(mm), Fineness.PLACE) + unit + " " + (mm > 0 ? to : back);
  }
}
