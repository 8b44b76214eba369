package dev.towerscribe.record;

import dev.towerscribe.finding.Finding;
import dev.towerscribe.finding.Severity;
import dev.towerscribe.model.Mount;
import dev.towerscribe.model.Side;
import dev.towerscribe.quantity.Angle;
import dev.towerscribe.quantity.Lengths;
import dev.towerscribe.quantity.Numbers;
import java.util.ArrayList;
import java.util.List;
import java.util.Optional;
import java.util.function.Function;

/** Writes an entry: what was given, as given; what was predicted beside it; what it says. */
public final class EntryText {
  private static final String END = "\n";

  /**
   * What an entry says of the job beside the figures.
   *
   * @param title what the job is called
   * @param packMark the code of the job as it is
   * @param program the program and its version
   * @param acceptedStops ids of stops that were accepted
   */
  public record About(String title, String packMark, String program, List<String> acceptedStops) {
    /** Copies the list. */
    public About {
      acceptedStops = List.copyOf(acceptedStops);
    }
  }

  private final Function<Double, String> length;
  private final List<String> lines = new ArrayList<>();

  private EntryText(Function<Double, String> length) {
    this.length = length;
  }

  private String length(double mm) {
    return length.apply(mm);
  }

  /**
   * An entry.
   *
   * @param number its running number
   * @param evaluation the visit beside the job
   * @param about the job
   * @return lines ended by line feeds: title, keys, closing
   */
  public static String of(int number, Evaluation evaluation, About about) {
    EntryText text = new EntryText(mm -> RecordLines.length(mm, evaluation.job().units()));
    text.lines.add(RecordLines.title(number, evaluation.visit().date()));
    text.about(about);
    text.given(evaluation);
    evaluation.compared().stream()
        .filter(c -> c.stage() == ReadingStage.CHANGE || c.side().isEmpty())
        .forEach(c -> text.lines.add(c.name() + ": " + derived(c)));
    evaluation.explanations().forEach(x -> x.say().forEach(s -> text.lines.add("says: " + s)));
    evaluation.beyondFigures().stream()
        .filter(f -> f.severity() != Severity.NOTE)
        .forEach(text::finding);
    String body = String.join(END, text.lines);
    return body + END + RecordLines.closing(number, RecordLines.checksum(text.lines)) + END;
  }

  private void finding(Finding f) {
    lines.add(f.severity().word() + ": " + f.id() + ": " + f.say());
  }

  private void about(About about) {
    lines.add("job: " + about.title());
    lines.add("pack mark: " + about.packMark());
    lines.add("program: " + about.program());
    about.acceptedStops().forEach(id -> lines.add("accepted stop: " + id));
  }

  private void given(Evaluation e) {
    Visit visit = e.visit();
    if (!visit.words().isEmpty()) {
      lines.add("visit: " + visit.words());
    }
    visit.bay().ifPresent(b -> lines.add("bay: " + b));
    for (BayFigure figure : BayFigure.values()) {
      lines.add("doubt " + figure.word() + ": " + degrees(visit.uncertainty().of(figure)) + " deg");
    }
    lines.add("doubt ride: " + length(visit.uncertainty().rideMm()));
    visit
        .wheels()
        .forEach(
            (side, wheel) -> {
              plate(side, e.made().get(side));
              wheel(side, wheel, Optional.of(e));
            });
  }

  private void plate(Side side, MountAsMade made) {
    Mount mount = made.mount();
    lines.add(
        "%s plate: rotation %s deg, rearward %s, inboard %s, %s"
            .formatted(
                side.word(),
                degrees(mount.rotation()),
                length(mount.rearwardMm()),
                length(mount.inboardMm()),
                made.source()));
  }

  private void wheel(Side side, WheelVisit wheel, Optional<Evaluation> e) {
    lines.add(side.word() + " setting: " + length(wheel.settingMm()));
    lines.add(side.word() + " knuckle: " + degrees(wheel.knuckle()) + " deg");
    reading(side, ReadingStage.BEFORE, wheel.before(), e);
    reading(side, ReadingStage.AFTER, wheel.after(), e);
  }

  private void reading(Side side, ReadingStage stage, BayReading r, Optional<Evaluation> e) {
    String head = side.word() + " " + stage.word() + " ";
    r.rideMm().ifPresent(mm -> lines.add(head + "ride: " + length(mm)));
    r.figures()
        .forEach(
            (figure, angle) ->
                lines.add(
                    "%s%s: measured %s deg%s"
                        .formatted(
                            head,
                            figure.word(),
                            degrees(angle),
                            e.map(of -> beside(of, side, stage, figure)).orElse(""))));
  }

  private static String beside(Evaluation e, Side side, ReadingStage stage, BayFigure figure) {
    return " +/- %s; %s"
        .formatted(
            degrees(e.visit().uncertainty().of(figure)),
            e.of(Optional.of(side), stage, figure)
                .map(EntryText::predicted)
                .orElse("not predicted"));
  }

  private static String degrees(Angle angle) {
    return RecordLines.given(angle.degrees());
  }

  private static String derived(Compared c) {
    return "measured %s deg +/- %s; %s"
        .formatted(Lengths.degrees(c.measured()), Lengths.degrees(c.uncertainty()), predicted(c));
  }

  private static String predicted(Compared c) {
    return "predicted %s deg%s; difference %s deg, %s sd, %s"
        .formatted(
            Lengths.degrees(c.predicted()),
            c.plusMinus().map(p -> " +/- " + Lengths.degrees(p)).orElse(", an estimate"),
            Lengths.degrees(c.difference()),
            Numbers.fixed(c.sds(), 1),
            c.within() ? "within" : "outside");
  }

  /**
   * What makes two visits the same: day, words, place and every figure that was given.
   *
   * @param visit a visit
   * @return a text that is equal for equal visits
   */
  public static String identity(Visit visit) {
    // Coarser than what a record keeps, so that the way through the other unit makes no difference.
    EntryText text = new EntryText(RecordLines::given);
    text.lines.add(visit.date().toString());
    text.lines.add(visit.words());
    text.lines.add(visit.bay().orElse(""));
    visit.wheels().forEach((side, wheel) -> text.wheel(side, wheel, Optional.empty()));
    return String.join(END, text.lines);
  }
}
