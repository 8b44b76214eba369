package dev.towerscribe.job;

import dev.towerscribe.model.Paper;
import dev.towerscribe.quantity.LengthUnit;
import java.io.IOException;
import java.io.InputStream;
import java.io.UncheckedIOException;
import java.nio.charset.StandardCharsets;
import java.util.List;

/** The files that come with the program: demos of invented cars, and a job to fill in. */
public final class Templates {
  private static final List<String> NAMES =
      List.of(
          "wren.toml",
          "siskin.toml",
          "dunnock.toml",
          "plates/three-bolt.toml",
          "plates/four-bolt.toml");

  /** Files of readings, each of the car of the same name before the hyphen. */
  private static final List<String> READINGS =
      List.of("wren-survey.toml", "wren-drilled.toml", "wren-visit.toml");

  private static final String START = "start.toml";

  private Templates() {}

  /**
   * A job to fill in: blanks where a figure of the car or the plate belongs, choices as they are
   * usually made.
   *
   * @param units what its lengths are to be in
   * @param paper what it is to be printed on
   * @return a job file's text, refused by {@link JobReader} until every blank is filled
   */
  public static String start(LengthUnit units, Paper paper) {
    return read(START)
        .replace("units  = \"mm\"", "units  = \"%s\"".formatted(units.symbol()))
        .replace("paper = \"A4\"", "paper = \"%s\"".formatted(paper.word()));
  }

  /**
   * The files there are, job files first, then the plate files they name.
   *
   * @return paths beside one another, as job files name them
   */
  public static List<String> names() {
    return NAMES;
  }

  /**
   * Files of readings that go with the job files: a survey, drilled holes, a visit to the bay.
   *
   * @return paths beside the job files
   */
  public static List<String> readings() {
    return READINGS;
  }

  /**
   * A file's text.
   *
   * @param name one of {@link #names} or {@link #readings}
   * @return the text, as it is to be written
   * @throws IllegalArgumentException if there is no such file
   */
  public static String text(String name) {
    if (!NAMES.contains(name) && !READINGS.contains(name)) {
      throw new IllegalArgumentException("no template " + name);
    }
    return read(name);
  }

  private static String read(String name) {
    try (InputStream in = Templates.class.getResourceAsStream("/templates/" + name)) {
      if (in == null) {
        throw new IllegalStateException("template " + name + " is not in the program");
      }
      return new String(in.readAllBytes(), StandardCharsets.UTF_8);
    } catch (IOException e) {
      throw new UncheckedIOException(e);
    }
  }
}
