package dev.towerscribe.job;

import dev.towerscribe.model.Mount;
import dev.towerscribe.quantity.LengthUnit;
import dev.towerscribe.quantity.Numbers;
import java.util.ArrayList;
import java.util.LinkedHashMap;
import java.util.List;
import java.util.Map;
import java.util.Optional;
import java.util.regex.Matcher;
import java.util.regex.Pattern;
import java.util.stream.Stream;

/**
 * Puts another mount into the text of a job file and leaves every other character as it was:
 * comments, blank lines, line ends. Only the plain way of writing {@code [mount]} is understood, a
 * table with one key to a line; whoever uses this reads the text again and compares.
 */
public final class MountText {
  private static final Pattern KEY =
      Pattern.compile(
          "(\\s*(rotation|rearward|inboard|setting)\\s*=\\s*)(\"[^\"]*\"|[^\\s#]+)(.*)");

  /** Enough for a lattice of five thousandths of an inch and for any setting of a file. */
  private static final int DECIMALS = 9;

  private MountText() {}

  /**
   * Replaces the four values under {@code [mount]}.
   *
   * @param text text of a job file that has been read without fault
   * @param unit its unit
   * @param mount what to put there
   * @return the changed text; empty where the four keys do not stand one to a line under a plain
   *     {@code [mount]}, once each
   */
  public static Optional<String> with(String text, LengthUnit unit, Mount mount) {
    Map<String, String> values = new LinkedHashMap<>();
    values.put("rotation", Numbers.pointed(mount.rotation().degrees(), DECIMALS));
    values.put("rearward", Numbers.pointed(unit.fromMm(mount.rearwardMm()), DECIMALS));
    values.put("inboard", Numbers.pointed(unit.fromMm(mount.inboardMm()), DECIMALS));
    values.put("setting", Numbers.pointed(unit.fromMm(mount.settingMm()), DECIMALS));
    List<String> missing = new ArrayList<>(values.keySet());
    List<TableLines.Line> lines = new ArrayList<>();
    for (TableLines.Line line : TableLines.of(text, "mount")) {
      Matcher key = KEY.matcher(line.words());
      if (line.kind() != TableLines.Kind.INSIDE
          || !key.matches()
          || !values.containsKey(key.group(2))) {
        lines.add(line);
      } else if (missing.remove(key.group(2))) {
        lines.add(line.with(key.group(1) + values.get(key.group(2)) + key.group(4)));
      } else {
        return Optional.empty();
      }
    }
    return missing.isEmpty() ? Optional.of(TableLines.text(lines)) : Optional.empty();
  }

  /**
   * Whether a job file gives one side a place of its own, so that no one mount serves both.
   *
   * @param text text of a job file that has been read without fault
   * @return true if {@code left.mount} or {@code right.mount} has one of the four values
   */
  public static boolean differsBySide(String text) {
    Faults faults = new Faults();
    return TomlText.parse(text, "", faults)
        .map(
            t ->
                Stream.of("rotation", "rearward", "inboard", "setting")
                    .anyMatch(k -> t.has("left", "mount", k) || t.has("right", "mount", k)))
        .orElse(false);
  }
}
