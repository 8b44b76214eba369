package dev.towerscribe.cli;

import static org.assertj.core.api.Assertions.assertThat;

import java.awt.image.BufferedImage;
import java.io.IOException;
import java.nio.file.Files;
import java.nio.file.Path;
import java.security.MessageDigest;
import java.security.NoSuchAlgorithmException;
import java.util.HexFormat;
import java.util.List;
import java.util.Set;
import java.util.TreeSet;
import java.util.regex.Matcher;
import java.util.regex.Pattern;
import java.util.stream.Stream;
import javax.imageio.ImageIO;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.api.io.TempDir;

/**
 * The walk-through shows pages as they are made today, and tells of commands that the samples run.
 */
class WalkthroughTest {
  private static final Path TEXT = Path.of("docs/walkthrough.md");
  private static final Path PICTURES = Path.of("docs/figures/walkthrough");
  private static final Pattern PICTURE = Pattern.compile("\\(figures/walkthrough/([^)]+)\\)");

  private static final String COMMAND = "./towerscribe ";

  @TempDir private Path folder;

  /** One line of the list of pictures. */
  private record Source(String picture, Path sample, int page, String sha256) {}

  private static List<Source> sources() throws IOException {
    return Files.readAllLines(PICTURES.resolve("sources.txt")).stream()
        .filter(line -> !line.startsWith("#"))
        .map(line -> line.split(" "))
        .map(w -> new Source(w[0], Path.of(w[1]), Integer.parseInt(w[2]), w[3]))
        .toList();
  }

  @Test
  void everyPictureWasMadeFromASampleAsItIsNow() throws IOException, NoSuchAlgorithmException {
    assertThat(sources()).isNotEmpty();
    for (Source s : sources()) {
      byte[] sample = Files.readAllBytes(s.sample());
      String sha256 = HexFormat.of().formatHex(MessageDigest.getInstance("SHA-256").digest(sample));
      assertThat(sha256).as("%s: run .ci/make-pictures", s.picture()).isEqualTo(s.sha256());
      assertThat(s.page()).isPositive();
      BufferedImage image = ImageIO.read(PICTURES.resolve(s.picture()).toFile());
      assertThat(image.getWidth()).as(s.picture()).isGreaterThan(500);
    }
  }

  /**
   * Runs what stands in blocks of commands, in order, in one empty folder; every line shown in a
   * block of text must be a line of what the commands since the last such block said.
   */
  @Test
  void commandsRunAndSayWhatIsShown() throws IOException {
    CommandRuns runs = new CommandRuns(folder);
    StringBuilder said = new StringBuilder();
    String block = "";
    int commands = 0;
    int shown = 0;
    for (String line : Files.readAllLines(TEXT)) {
      if (line.startsWith("```")) {
        said.setLength(block.equals("text") ? 0 : said.length());
        block = block.isEmpty() ? line.substring(3) : "";
      } else if (block.equals("sh")) {
        assertThat(line).startsWith(COMMAND);
        said.append(runs.done(line.substring(COMMAND.length()).split(" "))).append(runs.err());
        commands++;
      } else if (block.equals("text") && !line.isBlank()) {
        assertThat(said.toString().lines().map(String::strip)).contains(line.strip());
        shown++;
      }
    }
    assertThat(commands).isGreaterThan(10);
    assertThat(shown).isGreaterThan(10);
  }

  @Test
  void picturesShownPicturesListedAndPicturesThereAreTheSame() throws IOException {
    Set<String> shown = new TreeSet<>();
    Matcher m = PICTURE.matcher(Files.readString(TEXT));
    while (m.find()) {
      shown.add(m.group(1));
    }
    Set<String> listed = new TreeSet<>(sources().stream().map(Source::picture).toList());
    Set<String> there = new TreeSet<>();
    try (Stream<Path> files = Files.list(PICTURES)) {
      files
          .map(f -> f.getFileName().toString())
          .filter(f -> !f.equals("sources.txt"))
          .forEach(there::add);
    }
    assertThat(shown).isEqualTo(listed).isEqualTo(there);
  }
}
