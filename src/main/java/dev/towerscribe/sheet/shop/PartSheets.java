package dev.towerscribe.sheet.shop;

import dev.towerscribe.drawing.Page;
import dev.towerscribe.model.DrawingInfo;
import dev.towerscribe.model.Projection;
import dev.towerscribe.part.Hand;
import dev.towerscribe.part.Part;
import dev.towerscribe.part.PartKind;
import dev.towerscribe.quantity.Numbers;
import dev.towerscribe.sheet.text.Flow;
import dev.towerscribe.sheet.text.Fragment;
import dev.towerscribe.sheet.text.JobInfo;
import dev.towerscribe.sheet.text.NoRoomException;
import java.util.ArrayList;
import java.util.List;
import java.util.Locale;
import java.util.Optional;

/** Drawings of flat parts: a plate with its other hand, a slider, a drilling jig. */
public final class PartSheets {
  private PartSheets() {}

  /**
   * A part, and its other hand if it is one of a mirrored pair.
   *
   * @param stem file stem: "plate"
   * @param part what is drawn
   * @param mirrored the part of the other hand, if that is made too
   */
  public record Subject(String stem, Part part, Optional<Part> mirrored) {}

  /**
   * Sheets of paper, at the largest ISO 5455 scale that leaves room for dimensions.
   *
   * @param subject what is drawn
   * @param job title, date, mark, accepted stops
   * @param info title-block words of the job
   * @param style paper, projection, units
   * @return at least one page
   * @throws NoRoomException if words do not fit on the paper
   */
  public static List<Page> onPaper(
      Subject subject, JobInfo job, DrawingInfo info, DrawingStyle style) {
    return ShopSheets.onPaper(drawing(subject, job, info, style, true));
  }

  /**
   * The same drawing as one sheet at 1:1 without a frame, for files that machines read. The other
   * hand is said in words alone: its small picture would be cut like any other edge.
   *
   * @param subject what is drawn
   * @param job title, date, mark, accepted stops
   * @param info title-block words of the job
   * @param style units and projection; the paper does not matter
   * @return the sheet
   */
  public static MachineSheet fullSize(
      Subject subject, JobInfo job, DrawingInfo info, DrawingStyle style) {
    return ShopSheets.fullSize(drawing(subject, job, info, style, false));
  }

  private static ShopDrawing drawing(
      Subject subject, JobInfo job, DrawingInfo info, DrawingStyle style, boolean otherHandDrawn) {
    DrawingLengths sizes = new DrawingLengths(style);
    Part part = subject.part();
    DrawingView above = new PartViews.Above(part, sizes);
    DrawingView side = new PartViews.Side(part, sizes);
    return new ShopDrawing(
        subject.stem(),
        title(part),
        part.kind() == PartKind.JIG ? "Jig drawing" : "Part drawing",
        job,
        info,
        style,
        // Looked at from its -y side: first angle puts that view beyond, above; third angle below.
        style.projection() == Projection.FIRST ? List.of(side, above) : List.of(above, side),
        width -> tables(subject, job, sizes, otherHandDrawn, width),
        making(subject, sizes));
  }

  private static String title(Part part) {
    String hand =
        switch (part.hand()) {
          case LEFT -> ", left";
          case RIGHT -> ", right";
          case BOTH -> "";
        };
    String name = part.name();
    // As a word of its own only: a "bright plate" does not say which hand it is.
    if (List.of(name.toLowerCase(Locale.ROOT).split("[^\\p{L}]+")).contains(part.hand().word())) {
      hand = "";
    }
    return name.substring(0, 1).toUpperCase(Locale.ROOT) + name.substring(1) + hand;
  }

  private static List<Flow.Entry> tables(
      Subject subject, JobInfo job, DrawingLengths sizes, boolean otherHandDrawn, double widthMm) {
    Part part = subject.part();
    List<Flow.Entry> all = new ArrayList<>();
    ShopBlocks.accepted(all, job, widthMm);
    ShopBlocks.table(all, PartTables.holes(part, sizes, widthMm), 2);
    for (Fragment frame : PartTables.positions(part, sizes, widthMm)) {
      all.add(ShopBlocks.entry(frame, 2));
    }
    ShopBlocks.notes(all, PartTables.notes(part, sizes), widthMm);
    hands(all, subject, otherHandDrawn, widthMm);
    if (PartTables.hasOutlineTable(part)) {
      ShopBlocks.table(all, PartTables.outline(part, sizes, widthMm), 3);
    }
    return all;
  }

  private static void hands(
      List<Flow.Entry> all, Subject subject, boolean otherHandDrawn, double widthMm) {
    Part part = subject.part();
    if (subject.mirrored().isEmpty()) {
      String words =
          part.hand() == Hand.BOTH
              ? "ONE PART for both sides of the car, not mirrored. Make %s."
                  .formatted(part.quantity())
              : "For the %s tower only. Make %s."
                  .formatted(part.hand().word().toUpperCase(Locale.ROOT), part.quantity());
      all.add(ShopBlocks.entry(ShopBlocks.band(words, widthMm), 3));
      return;
    }
    Part other = subject.mirrored().get();
    String heading = other.hand().word().toUpperCase(Locale.ROOT) + "-HAND PART";
    String words =
        ("Mirror image of the one drawn: every Y changes its sign; upper and under face stay. Make"
                + " %s of each.")
            .formatted(part.quantity());
    if (otherHandDrawn) {
      all.add(ShopBlocks.entry(new OtherHand(other, List.of(heading, words), widthMm), 3));
    } else {
      all.add(ShopBlocks.entry(ShopBlocks.band(heading, widthMm), 3));
      ShopBlocks.notes(all, List.of(words), widthMm);
    }
  }

  private static List<FieldGrid.Row> making(Subject subject, DrawingLengths sizes) {
    Part part = subject.part();
    String general = "ISO 2768-" + part.general().value().word();
    return List.of(
        FieldGrid.row(
            FieldGrid.field(
                "Material", assumed(part.material().value(), part.material().assumed()), 90),
            FieldGrid.field("Finish", assumed(part.finish().value(), part.finish().assumed()), 90)),
        FieldGrid.row(
            FieldGrid.field("General tolerances", assumed(general, part.general().assumed()), 45),
            FieldGrid.field("Thickness", sizes.named(part.solid().thicknessMm()), 55),
            FieldGrid.field("Mass", Numbers.fixed(part.massKg(), 3) + " kg", 30),
            FieldGrid.field("Quantity", quantity(subject), 50)));
  }

  private static String assumed(String words, boolean assumed) {
    return assumed ? words + " (assumed)" : words;
  }

  private static String quantity(Subject subject) {
    Part part = subject.part();
    return subject
        .mirrored()
        .map(
            o ->
                "%s %s, %s %s"
                    .formatted(part.quantity(), part.hand().word(), o.quantity(), o.hand().word()))
        .orElse(Integer.toString(part.quantity()));
  }
}
