package dev.towerscribe.writer.step;

import static org.assertj.core.api.Assertions.assertThat;

import dev.towerscribe.geometry.FlatSolid;
import dev.towerscribe.quantity.Numbers;
import java.nio.charset.StandardCharsets;
import java.util.ArrayList;
import java.util.List;
import java.util.SplittableRandom;
import java.util.regex.MatchResult;
import java.util.regex.Matcher;
import java.util.regex.Pattern;
import net.jqwik.api.ForAll;
import net.jqwik.api.Property;
import net.jqwik.api.Tag;
import net.jqwik.api.constraints.IntRange;

class StepWriterProperties {
  /** Changes of one place that leave another solid or none; what stands in group 1 is changed. */
  private static final List<Pattern> PLACES =
      List.of(
          Pattern.compile("CIRCLE\\('',#\\d+,([^)]+)\\)"),
          Pattern.compile("CYLINDRICAL_SURFACE\\('',#\\d+,([^)]+)\\)"),
          Pattern.compile("CONICAL_SURFACE\\('',#\\d+,([^,)]+),"),
          Pattern.compile("CONICAL_SURFACE\\('',#\\d+,[^,)]+,([^)]+)\\)"),
          Pattern.compile("ADVANCED_FACE\\('',\\([^)]*\\),#\\d+,(\\.[TF]\\.)"),
          Pattern.compile("ORIENTED_EDGE\\('',\\*,\\*,#\\d+,(\\.[TF]\\.)"),
          Pattern.compile("EDGE_CURVE\\('',#\\d+,#\\d+,#\\d+,(\\.[TF]\\.)"),
          Pattern.compile("FACE(?:_OUTER)?_BOUND\\('',#\\d+,(\\.[TF]\\.)"),
          Pattern.compile("CLOSED_SHELL\\('',\\((?:#\\d+,)*?(#\\d+,)"),
          Pattern.compile("EDGE_LOOP\\('',\\((?:#\\d+,)*?(#\\d+,)"));

  private static final Pattern VERTEX = Pattern.compile("VERTEX_POINT\\('',(#\\d+)\\)");

  private static byte[] bytes(CharSequence text) {
    return text.toString().getBytes(StandardCharsets.US_ASCII);
  }

  private static String file(FlatSolid solid) {
    return new String(StepWriter.write(solid, SampleSolids.NAME), StandardCharsets.US_ASCII);
  }

  private static List<String> check(CharSequence file, FlatSolid solid) {
    return StepProof.check(bytes(file), solid, SampleSolids.NAME);
  }

  @Tag("more-tries")
  @Property(seed = "8101")
  void provesEveryPart(@ForAll @IntRange(min = 0, max = 1_000_000) int seed) {
    FlatSolid solid = SampleSolids.random(seed);
    assertThat(check(file(solid), solid)).isEmpty();
  }

  @Tag("more-tries")
  @Property(seed = "8102")
  void tellsEveryChangedFigureOrSense(@ForAll @IntRange(min = 0, max = 1_000_000) int seed) {
    FlatSolid solid = SampleSolids.random(seed);
    String file = file(solid);
    SplittableRandom random = new SplittableRandom(seed);
    for (Pattern pattern : PLACES) {
      List<MatchResult> places = new ArrayList<>();
      Matcher matcher = pattern.matcher(file);
      while (matcher.find()) {
        places.add(matcher.toMatchResult());
      }
      if (places.isEmpty()) {
        continue; // no countersink in this part
      }
      MatchResult place = places.get(random.nextInt(places.size()));
      StringBuilder changed = new StringBuilder(file);
      changed.replace(place.start(1), place.end(1), changed(place.group(1)));
      assertThat(check(changed, solid)).as(place.group()).isNotEmpty();
    }
  }

  /** The other sense, no reference, or a figure more by twice what is let pass. */
  private static String changed(String value) {
    if (value.equals(".T.")) {
      return ".F.";
    }
    if (value.equals(".F.")) {
      return ".T.";
    }
    return value.startsWith("#") ? "" : Numbers.exact(Double.parseDouble(value) + 2e-9);
  }

  @Tag("more-tries")
  @Property(seed = "8103")
  void tellsAMovedCorner(
      @ForAll @IntRange(min = 0, max = 1_000_000) int seed,
      @ForAll @IntRange(max = 2) int coordinate) {
    FlatSolid solid = SampleSolids.random(seed);
    String file = file(solid);
    List<MatchResult> corners = VERTEX.matcher(file).results().toList();
    MatchResult corner = corners.get(new SplittableRandom(seed).nextInt(corners.size()));
    String start = "\n" + corner.group(1) + "=CARTESIAN_POINT('',(";
    int at = file.indexOf(start) + start.length();
    int end = file.indexOf(')', at);
    String[] triple = file.substring(at, end).split(",");
    // More than the micrometre's thousandth within which two points are one.
    triple[coordinate] = Numbers.exact(Double.parseDouble(triple[coordinate]) + 1e-5);
    StringBuilder changed = new StringBuilder(file).replace(at, end, String.join(",", triple));
    assertThat(check(changed, solid)).isNotEmpty();
  }

  @Property(seed = "8104", tries = 150)
  void survivesAnyByte(
      @ForAll @IntRange(min = 0, max = 20) int seed,
      @ForAll @IntRange(min = 0, max = 1_000_000_000) int where,
      @ForAll @IntRange(min = 0, max = 255) int what) {
    FlatSolid solid = SampleSolids.random(seed);
    byte[] file = bytes(file(solid));
    file[where % file.length] = (byte) what;
    // Whatever it says of it, it says it: a changed byte of a comment may leave the part as it was.
    assertThat(StepProof.check(file, solid, SampleSolids.NAME)).isNotNull();
  }
}
