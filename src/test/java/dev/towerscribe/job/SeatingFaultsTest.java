package dev.towerscribe.job;

import static org.assertj.core.api.Assertions.assertThat;

import dev.towerscribe.finding.Fault;
import dev.towerscribe.model.Lip;
import dev.towerscribe.model.Packing;
import dev.towerscribe.model.Seat;
import dev.towerscribe.model.SecondSkin;
import dev.towerscribe.model.Side;
import dev.towerscribe.model.SideJob;
import java.util.List;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.CsvSource;

/** How a plate lies, a lip and a second skin: read as written, or refused in one line each. */
class SeatingFaultsTest {
  private static final String LIP =
      "lip = { turned = \"down\", height = 3.5, radius = 2.0, flat = { diameter = 80.0 } }\n";
  private static final String SKIN = "second_skin = { sheet = 1.1, apart = 2.5 }\n";

  private static String job(String tower, String mount) {
    return Jobs.with(Jobs.LEAST, "sheet = 1.4\n", "sheet = 1.4\n" + tower) + mount;
  }

  @Test
  void readAsWritten() throws Exception {
    SideJob side =
        Jobs.side(job(LIP + SKIN, "seat = \"under\"\npacking = \"formed seat\"\n"), Side.LEFT);
    assertThat(side.seating().stated()).contains(Seat.UNDERNEATH);
    assertThat(side.seating().packing()).contains(Packing.FORMED_SEAT);
    Lip lip = side.tower().lip().orElseThrow();
    assertThat(lip.turned()).isEqualTo(Lip.Turned.DOWN);
    assertThat(lip.heightMm()).isEqualTo(3.5);
    assertThat(lip.radiusMm()).isEqualTo(2.0);
    assertThat(lip.flat().asCircle().orElseThrow().radius()).isEqualTo(40.0);
    assertThat(side.tower().secondSkin()).contains(new SecondSkin(1.1, 2.5));
    assertThat(side.tower().throughMm()).isEqualTo(1.4 + 1.1 + 2.5);
  }

  @Test
  void theFaceOfTheLoadStandsInAndMayNotContradict() throws Exception {
    String load = "[load]\nspring = 25.0\nbump = 60.0\nstatic = 3200.0\nseat = \"under\"\n";
    assertThat(Jobs.side(job("", load), Side.RIGHT).seating().stated()).contains(Seat.UNDERNEATH);
    assertThat(Jobs.side(job("", ""), Side.RIGHT).seating().stated()).isEmpty();
    assertThat(Jobs.side(job("", "seat = \"under\"\n" + load), Side.LEFT).seating().stated())
        .contains(Seat.UNDERNEATH);
    List<Fault> both = Jobs.faults(job("", "seat = \"top\"\n" + load));
    assertThat(both).isNotEmpty().allMatch(f -> f.key().equals("mount.seat"));
    assertThat(both.get(0).limit()).contains("under");
  }

  @Test
  void oneSideMayLieOtherwise() throws Exception {
    String text = job("", "seat = \"top\"\n[right.mount]\nseat = \"under\"\npacking = \"shims\"\n");
    assertThat(Jobs.side(text, Side.LEFT).seating().seat()).isEqualTo(Seat.ON_TOP);
    assertThat(Jobs.side(text, Side.LEFT).seating().packing()).isEmpty();
    assertThat(Jobs.side(text, Side.RIGHT).seating().seat()).isEqualTo(Seat.UNDERNEATH);
    assertThat(Jobs.side(text, Side.RIGHT).seating().packing()).contains(Packing.SHIMS);
  }

  @ParameterizedTest
  @CsvSource(
      delimiter = '|',
      quoteCharacter = '`',
      value = {
        "turned = \"down\", | | tower.lip.turned | up, down",
        "\"down\" | \"in\" | tower.lip.turned | up, down",
        "\"down\" | 1 | tower.lip.turned | up, down",
        "height = 3.5, | | tower.lip.height | 0.2 to 40 mm",
        "height = 3.5 | height = -1 | tower.lip.height | 0.2 to 40 mm",
        "height = 3.5 | height = 1e9 | tower.lip.height | 0.2 to 40 mm",
        "height = 3.5 | height = nan | tower.lip.height | 0.2 to 40 mm",
        "height = 3.5 | height = true | tower.lip.height | 0.2 to 40 mm",
        "radius = 2.0, | | tower.lip.radius | 0.1 to 40 mm",
        "radius = 2.0 | radius = -2 | tower.lip.radius | 0.1 to 40 mm",
        "radius = 2.0 | radius = inf | tower.lip.radius | 0.1 to 40 mm",
        ", flat = { diameter = 80.0 } | | tower.lip.flat | a table",
        "{ diameter = 80.0 } | 80.0 | tower.lip.flat | a table",
        "{ diameter = 80.0 } | { diameter = 60.0 } | tower.lip.flat.diameter | round the opening",
        "{ diameter = 80.0 } | { diameter = 9000 } | tower.lip.flat.diameter | 20 to 400 mm",
        "sheet = 1.1, | | tower.second_skin.sheet | 0.3 to 10 mm",
        "sheet = 1.1 | sheet = -1 | tower.second_skin.sheet | 0.3 to 10 mm",
        "sheet = 1.1 | sheet = [1.1] | tower.second_skin.sheet | 0.3 to 10 mm",
        "apart = 2.5 | apart = -0.1 | tower.second_skin.apart | 0 to 60 mm",
        "apart = 2.5 | apart = nan | tower.second_skin.apart | 0 to 60 mm",
        "apart = 2.5 | apart = 1e9 | tower.second_skin.apart | 0 to 60 mm",
        "seat = \"under\" | seat = \"below\" | mount.seat | top, under",
        "seat = \"under\" | seat = -1 | mount.seat | top, under",
        "\"shims\" | \"paper\" | mount.packing | shims, formed seat",
        "\"shims\" | nan | mount.packing | shims, formed seat"
      })
  void oneMistakeIsOneLine(String old, String changed, String key, String limit) {
    String whole = job(LIP + SKIN, "seat = \"under\"\npacking = \"shims\"\n");
    assertThat(Jobs.faults(whole)).isEmpty();
    List<Fault> faults = Jobs.faults(Jobs.with(whole, old, changed == null ? "" : changed));
    assertThat(faults).isNotEmpty();
    assertThat(faults.get(0).key()).isEqualTo(key);
    assertThat(faults.get(0).limit()).contains(limit);
    assertThat(faults).extracting(Fault::line).doesNotHaveDuplicates().hasSize(1);
  }
}
