package dev.towerscribe.job;

import static org.assertj.core.api.Assertions.assertThat;

import dev.towerscribe.quantity.LengthUnit;
import java.io.IOException;
import java.nio.file.Files;
import java.nio.file.Path;
import java.util.List;
import java.util.Optional;
import java.util.Set;
import java.util.TreeSet;
import java.util.regex.Pattern;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.Arguments;
import org.junit.jupiter.params.provider.MethodSource;

/** The manual names every key, with the limits that the reader holds to. */
class JobFileDocsTest {
  private static final Path MANUAL = Path.of("docs", "job-file.md");

  @Test
  void everyKeyOfTheTemplatesIsInTheManual() throws IOException {
    String manual = Files.readString(MANUAL);
    Set<String> keys = new TreeSet<>();
    for (String name : Templates.names()) {
      Faults faults = new Faults();
      TomlText text = TomlText.parse(Templates.text(name), "", faults).orElseThrow();
      collect(text.table("", new SaidUnit("units", Optional.of(LengthUnit.MM)), faults), keys);
    }
    assertThat(keys).hasSizeGreaterThan(60);
    for (String key : keys) {
      assertThat(Pattern.compile("[`.\\[]" + key + "[`.\\]]").matcher(manual).find())
          .as("%s is in the manual", key)
          .isTrue();
    }
  }

  private static void collect(TomlNode node, Set<String> keys) {
    if (node instanceof TomlNode.Table table) {
      table
          .entries()
          .forEach(
              (key, inner) -> {
                keys.add(key);
                collect(inner, keys);
              });
    } else if (node instanceof TomlNode.Items list) {
      list.items().forEach(item -> collect(item, keys));
    }
  }

  static List<Arguments> rangesInTheManual() {
    return List.of(
        Arguments.of("`sheet`", Limits.SHEET),
        Arguments.of("`opening`", Limits.OPENING),
        Arguments.of("`mark`", Limits.MARK),
        Arguments.of("`lean.inboard`", Limits.LEAN),
        Arguments.of("`crown.across`", Limits.CROWN_ACROSS),
        Arguments.of("`crown.rise`", Limits.CROWN_RISE),
        Arguments.of("`pivot_height`", Limits.PIVOT_HEIGHT),
        Arguments.of("`bolting_face`", Limits.BOLTING_FACE),
        Arguments.of("`diameter`", Limits.LANDMARK),
        Arguments.of("`from`, `to`", Limits.STRAIGHTEDGE),
        Arguments.of("`at` and `diameter`, or `points`", Limits.KEEP_OUT),
        Arguments.of("`margin`", Limits.MARGIN),
        Arguments.of("`outline`", Limits.BRACKET),
        Arguments.of("`underside`", Limits.UNDERSIDE),
        Arguments.of("`least_width`", Limits.LEAST_WIDTH),
        Arguments.of("`fasteners`", Limits.BRACKET_FASTENER),
        Arguments.of("`thickness`", Limits.THICKNESS),
        Arguments.of("`outline`", Limits.PLATE),
        Arguments.of("`slot.from`, `slot.to`", Limits.SLOT),
        Arguments.of("`bearing.x`", Limits.BEARING_X),
        Arguments.of("`bearing.height`", Limits.BEARING_HEIGHT),
        Arguments.of("`moving.diameter`", Limits.MOVING),
        Arguments.of("`moving.clearance`", Limits.CLEARANCE),
        Arguments.of("`cover`", Limits.MARGIN),
        Arguments.of("`wall_gap`", Limits.MARGIN),
        Arguments.of("`flats`", Limits.FLATS),
        Arguments.of("`washer`", Limits.WASHER),
        Arguments.of("`corner`", Limits.PLATE_CORNER),
        Arguments.of("`hole`", Limits.HOLE),
        Arguments.of("`counterbore`", Limits.RECESS),
        Arguments.of("`counterbore`", Limits.RECESS_DEPTH),
        Arguments.of("`countersink`", Limits.RECESS),
        Arguments.of("`countersink`", Limits.CONE),
        Arguments.of("`density`", Limits.DENSITY),
        Arguments.of("`edge_break`", Limits.EDGE_BREAK),
        Arguments.of("`slot_width`", Limits.SLOT_WIDTH),
        Arguments.of("`slot_corner`", Limits.PLATE_CORNER),
        Arguments.of("`index_holes.diameter`", Limits.INDEX_HOLE),
        Arguments.of("`index_holes.offset`", Limits.INDEX_OFFSET),
        Arguments.of("`bearing_bore.diameter`", Limits.BEARING_BORE),
        Arguments.of("`slider.length`, `slider.width`", Limits.SLIDER),
        Arguments.of("`slider.thickness`", Limits.THICKNESS),
        Arguments.of("`slider.corner`", Limits.PLATE_CORNER),
        Arguments.of("`thickness`", Limits.JIG_THICKNESS),
        Arguments.of("`margin`", Limits.JIG_MARGIN),
        Arguments.of("`bushing.bore`", Limits.BUSHING_BORE),
        Arguments.of("`bushing.outside`", Limits.BUSHING),
        Arguments.of("`spring`", Limits.SPRING),
        Arguments.of("`static`", Limits.STATIC),
        Arguments.of("`factor`", Limits.FACTOR),
        Arguments.of("`friction`", Limits.FRICTION),
        Arguments.of("`rotation`", Limits.ROTATION),
        Arguments.of("`rearward`", Limits.OFFSET),
        Arguments.of("`keep`", Limits.KEEP),
        Arguments.of("`rough`", Limits.ROUGH),
        Arguments.of("`corner`", Limits.CORNER),
        Arguments.of("`starter`", Limits.STARTER),
        Arguments.of("`socket.diameter`", Limits.SOCKET),
        Arguments.of("`socket.depth`", Limits.SOCKET_DEPTH),
        Arguments.of("`room`", Limits.ROOM),
        Arguments.of("`scale.across`", Limits.PRINT_SCALE),
        Arguments.of("`skew`", Limits.PRINT_SKEW),
        Arguments.of("`tyre_radius`", Limits.TYRE_RADIUS),
        Arguments.of("`camber`", Limits.WHEEL_ANGLE),
        Arguments.of("`bump`, `droop`", Limits.WHEEL_TRAVEL),
        Arguments.of("`steer`", Limits.STEER),
        Arguments.of("`plus_minus`", Limits.PLUS_MINUS),
        Arguments.of("`caster`", Limits.CASTER),
        Arguments.of("`inclination`", Limits.INCLINATION),
        Arguments.of("`length`", Limits.AXIS_LENGTH));
  }

  @ParameterizedTest
  @MethodSource
  void rangesInTheManual(String key, AllowedRange range) throws IOException {
    String words = range.words(LengthUnit.MM);
    assertThat(Files.readAllLines(MANUAL))
        .anySatisfy(line -> assertThat(line).startsWith("| " + key + " |").contains(words));
  }
}
