package dev.towerscribe.report;

import dev.towerscribe.model.Job;
import dev.towerscribe.model.Mount;
import dev.towerscribe.quantity.Lengths;
import dev.towerscribe.quantity.Version;
import java.time.LocalDate;
import java.util.ArrayList;
import java.util.List;
import java.util.Locale;
import java.util.Optional;

/** Words that several reports share. */
public final class Phrases {
  /** Stands on every sheet and drawing, in every format: nothing printed outranks these two. */
  public static final String LAW_FIRST = "Law and vehicle maker first.";

  /** What a limit of a caliper table means. */
  public static final String OFF_BY = "may be off by up to";

  /** Explains {@link Lengths#LIKELY}, once a report. */
  static final String LIKELY_MEANS =
      "Likely, 2 in 3: the true figure is this near two times in three (one standard deviation)";

  static final String SETTING_MEANS = "Setting: the slider's position along its slot.";

  private Phrases() {}

  /**
   * A count with its thing.
   *
   * @param n how many
   * @param thing the word for one, its plural ending in s
   * @return "no note", "1 note" or "2 notes"
   */
  static String count(long n, String thing) {
    return n == 0 ? "no " + thing : n == 1 ? "1 " + thing : n + " " + thing + "s";
  }

  /**
   * A word to begin a line with.
   *
   * @param word lower case
   * @return with a capital
   */
  public static String capital(String word) {
    return word.isEmpty() ? "" : word.substring(0, 1).toUpperCase(Locale.ROOT) + word.substring(1);
  }

  /** "mm" or "inches". */
  static String unit(Lengths lengths) {
    return lengths.metric() ? "mm" : "inches";
  }

  /**
   * Where a plate goes, without its setting.
   *
   * @param mount the place
   * @param lengths the unit
   * @return for instance "rotation 55 deg, rearward 8 mm, inboard -3 mm"
   */
  static String place(Mount mount, Lengths lengths) {
    return "rotation %s deg, rearward %s, inboard %s"
        .formatted(
            Lengths.plainDegrees(mount.rotation()),
            lengths.size(mount.rearwardMm()),
            lengths.size(mount.inboardMm()));
  }

  /** Where a plate goes, with its setting. */
  static String placeAndSetting(Mount mount, Lengths lengths) {
    return place(mount, lengths) + ", setting " + lengths.size(mount.settingMm());
  }

  static Block.Paragraph say(String words, Object... values) {
    return new Block.Paragraph(values.length == 0 ? words : words.formatted(values), false);
  }

  static Block.Paragraph explain(String words, Object... values) {
    return new Block.Paragraph(values.length == 0 ? words : words.formatted(values), true);
  }

  static Block.Fact fact(String name, String value) {
    return new Block.Fact(name, List.of(value));
  }

  /** What a report begins with: what it is of, and the day if that is known. */
  static List<Block.Fact> facts(String kind, String title, Optional<LocalDate> date) {
    List<Block.Fact> facts = new ArrayList<>();
    facts.add(fact(kind, title));
    date.ifPresent(d -> facts.add(fact("date", d.toString())));
    return facts;
  }

  static Block.Fact program() {
    return fact("program", "Towerscribe " + Version.TEXT);
  }

  /** What a job's report begins with. */
  static Block.Facts head(Job job) {
    List<Block.Fact> facts = facts("job", job.title(), job.date());
    facts.add(program());
    return new Block.Facts(facts);
  }
}
