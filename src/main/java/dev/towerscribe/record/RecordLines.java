package dev.towerscribe.record;

import dev.towerscribe.quantity.LengthUnit;
import dev.towerscribe.quantity.Numbers;
import java.nio.charset.StandardCharsets;
import java.security.MessageDigest;
import java.security.NoSuchAlgorithmException;
import java.time.LocalDate;
import java.util.HexFormat;
import java.util.List;
import java.util.regex.Pattern;

/** The shapes of a record's lines. Titles begin with ==, closings and marks with --. */
final class RecordLines {
  /** What every title begins with, in this format and in later ones. */
  static final String TITLE_HEAD = "== Towerscribe record, visit ";

  /** Group 1 the running number, group 2 the date. */
  static final Pattern TITLE =
      Pattern.compile(
          Pattern.quote(TITLE_HEAD) + "([1-9][0-9]{0,8}), ([0-9]{4}-[0-9]{2}-[0-9]{2}) ==");

  /** A title of which at least the number is there for certain. */
  static final Pattern NUMBERED =
      Pattern.compile(Pattern.quote(TITLE_HEAD) + "([1-9][0-9]{0,8}),.*");

  /** Group 1 the running number, group 2 the checksum. */
  static final Pattern CLOSING =
      Pattern.compile("-- end of visit ([1-9][0-9]{0,8}), checksum ([0-9a-f]{16}) --");

  /** What the next append puts after an entry that was cut short. */
  static final String MARK = "-- the entry above was cut short --";

  /** What strikes an entry; group 1 its number, 2 the day, 3 the reason, 4 the checksum. */
  static final Pattern STRUCK =
      Pattern.compile(
          "-- visit ([1-9][0-9]{0,8}) struck on ([0-9]{4}-[0-9]{2}-[0-9]{2}): (.+), checksum"
              + " ([0-9a-f]{16}) --");

  /** No more digits than any of ours has, so that what is read is always a finite number. */
  private static final String NUMBER = "(-?[0-9]{1,6}(?:\\.[0-9]{1,12})?)";

  /**
   * A figure: side, stage, figure, measured, its uncertainty, predicted, its +/-, difference, its
   * standard deviations, verdict; the last five empty where nothing was predicted.
   */
  static final Pattern FIGURE =
      Pattern.compile(
          ("(left|right|left-right) (before|after|change) (caster|camber|toe|inclination): measured"
               + " # deg \\+/- #; (?:predicted # deg(?: \\+/- #|, an estimate); difference # deg, #"
               + " sd, (within|outside)|not predicted)")
              .replace("#", NUMBER));

  static final Pattern UNCERTAINTY =
      Pattern.compile("doubt (caster|camber|toe|inclination|ride): " + NUMBER + " (deg|mm|in)");

  /** Side, stage, figure, unit. */
  static final Pattern RIDE =
      Pattern.compile("(left|right) (before|after) ride: " + NUMBER + " (mm|in)");

  static final Pattern SETTING = Pattern.compile("(left|right) setting: " + NUMBER + " (mm|in)");

  static final Pattern KNUCKLE = Pattern.compile("(left|right) knuckle: " + NUMBER + " deg");

  static final Pattern WORDS =
      Pattern.compile("(job|pack mark|program|visit|bay|accepted stop): (.*)");

  /** Lines that repeat what others say in figures. */
  static final Pattern TOLD = Pattern.compile("(?:(?:left|right) plate|says|caution|note): .*");

  /** As a person gave it: enough digits to read back as the same figure. */
  private static final int GIVEN_DECIMALS = 6;

  /** A length may be given in the other unit than the job's: then it takes more digits. */
  private static final int LENGTH_DECIMALS = 9;

  private RecordLines() {}

  static String title(int number, LocalDate date) {
    return TITLE_HEAD + number + ", " + date + " ==";
  }

  static String closing(int number, String checksum) {
    return "-- end of visit " + number + ", checksum " + checksum + " --";
  }

  static String struck(int number, String how) {
    String words = "visit %s %s".formatted(number, how);
    return "-- " + words + ", checksum " + checksum(List.of(words)) + " --";
  }

  static String given(double value) {
    return Numbers.plain(value, GIVEN_DECIMALS);
  }

  static String length(double mm, LengthUnit unit) {
    return Numbers.plain(unit.fromMm(mm), LENGTH_DECIMALS) + " " + unit.symbol();
  }

  /**
   * The checksum of an entry's lines before the closing one, whatever ends the file's lines.
   *
   * @param lines without their ends
   * @return sixteen hexadecimal digits of SHA-256 (FIPS 180-4)
   */
  static String checksum(List<String> lines) {
    MessageDigest digest;
    try {
      digest = MessageDigest.getInstance("SHA-256");
    } catch (NoSuchAlgorithmException e) {
      // Every Java platform has it.
      throw new IllegalStateException(e);
    }
    for (String line : lines) {
      digest.update((line + "\n").getBytes(StandardCharsets.UTF_8));
    }
    return HexFormat.of().formatHex(digest.digest(), 0, 8);
  }
}
