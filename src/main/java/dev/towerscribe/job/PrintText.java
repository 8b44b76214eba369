package dev.towerscribe.job;

import dev.towerscribe.model.PrinterFigures;
import dev.towerscribe.model.Side;
import java.util.ArrayList;
import java.util.List;
import java.util.Optional;
import java.util.regex.Matcher;
import java.util.regex.Pattern;
import java.util.stream.Stream;

/**
 * Puts another scale and skew into the text of a job file and leaves every other character as it
 * was. Only the plain way of writing {@code [print]} is understood, {@code scale} in braces on one
 * line and {@code skew} on another; a key or a table that is not there is added. Whoever uses this
 * reads the text again and compares.
 */
public final class PrintText {
  private static final Pattern SCALE =
      Pattern.compile("(\\s*scale\\s*=\\s*)\\{[^{}#]*\\}(\\s*(?:#.*)?)");

  private static final Pattern SKEW =
      Pattern.compile("(\\s*skew\\s*=\\s*)(?:\"[^\"]*\"|[^\\s#]+)(\\s*(?:#.*)?)");

  private PrintText() {}

  /**
   * Replaces or adds the figures.
   *
   * @param text text of a job file that has been read without fault
   * @param figures what to put there
   * @return the changed text; empty where {@code print} is written in a way that is not understood
   */
  public static Optional<String> with(String text, PrinterFigures figures) {
    List<TableLines.Line> lines = TableLines.of(text, "print");
    if (lines.stream().noneMatch(l -> l.kind() == TableLines.Kind.HEADING)) {
      return has(text, "print") ? Optional.empty() : Optional.of(appended(text, figures));
    }
    boolean addScale = !has(text, "print", "scale");
    boolean addSkew = figures.skew().isPresent() && !has(text, "print", "skew");
    boolean scaleLeft = !addScale;
    boolean skewLeft = figures.skew().isPresent() && !addSkew;
    List<TableLines.Line> changed = new ArrayList<>();
    for (TableLines.Line line : lines) {
      boolean inside = line.kind() == TableLines.Kind.INSIDE;
      Matcher scale = SCALE.matcher(line.words());
      Matcher skew = SKEW.matcher(line.words());
      boolean afterThis = line.kind() == TableLines.Kind.HEADING && addScale;
      if (inside && scaleLeft && scale.matches()) {
        changed.add(line.with(scale.group(1) + figures.scaleWords() + scale.group(2)));
        scaleLeft = false;
        afterThis = addSkew;
      } else if (inside && skewLeft && skew.matches()) {
        changed.add(line.with(skew.group(1) + figures.skewWords() + skew.group(2)));
        skewLeft = false;
      } else {
        changed.add(line);
      }
      if (afterThis && addScale) {
        add(changed, figures.lines().get(0));
      }
      if (afterThis && addSkew) {
        add(changed, figures.lines().get(1));
      }
    }
    return scaleLeft || skewLeft ? Optional.empty() : Optional.of(TableLines.text(changed));
  }

  /** A line more, which ends as the line before it; a last line without an end gives it one. */
  private static void add(List<TableLines.Line> lines, String words) {
    TableLines.Line before = lines.get(lines.size() - 1);
    if (before.end().isEmpty()) {
      lines.set(
          lines.size() - 1, new TableLines.Line(before.words(), endOfLine(lines), before.kind()));
      lines.add(new TableLines.Line(words, "", TableLines.Kind.INSIDE));
    } else {
      lines.add(new TableLines.Line(words, before.end(), TableLines.Kind.INSIDE));
    }
  }

  private static String endOfLine(List<TableLines.Line> lines) {
    String first = lines.get(0).end();
    return first.isEmpty() ? "\n" : first;
  }

  private static String appended(String text, PrinterFigures figures) {
    String end = text.contains("\r\n") ? "\r\n" : "\n";
    String gap = text.isEmpty() || text.endsWith("\n") ? end : end + end;
    return text + gap + "[print]" + end + String.join(end, figures.lines()) + end;
  }

  /**
   * What a job file says of one side's printer alone, so that no one printer serves both.
   *
   * @param text text of a job file that has been read without fault
   * @return keys such as "right.print.scale"; empty if both sides share one printer
   */
  public static List<String> differsBySide(String text) {
    return Stream.of(Side.values())
        .flatMap(
            side ->
                Stream.of("scale", "skew")
                    .filter(key -> has(text, side.word(), "print", key))
                    .map(key -> side.word() + ".print." + key))
        .toList();
  }

  private static boolean has(String text, String... path) {
    return TomlText.parse(text, "", new Faults()).map(t -> t.has(path)).orElse(false);
  }
}
