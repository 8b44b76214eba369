package dev.towerscribe.store;

import static org.assertj.core.api.Assertions.assertThat;
import static org.assertj.core.api.Assertions.assertThatThrownBy;

import dev.towerscribe.geometry.Contour;
import dev.towerscribe.geometry.Edge.Arc;
import dev.towerscribe.geometry.Edge.Segment;
import dev.towerscribe.geometry.Recess;
import dev.towerscribe.geometry.Vec2;
import dev.towerscribe.job.JobReader;
import dev.towerscribe.job.Templates;
import dev.towerscribe.model.Job;
import dev.towerscribe.model.Stated;
import dev.towerscribe.quantity.Angle;
import java.time.LocalDate;
import java.util.List;
import java.util.Optional;
import org.junit.jupiter.api.Test;

class PackMarkTest {
  private static Job job(String text) throws Exception {
    return new JobReader(c -> true).parse(text, name -> Optional.of(Templates.text(name)));
  }

  @Test
  void theCodeIsTheHeadOfTheHashInBase32() {
    // independent: printf 'title=a job\nprogram=0.1.0\naccepted=left.a.B\n' | sha256sum starts with
    // the bits that python3 -c "h=int('HASH'[:8],16)>>2; print(''.join(
    // '0123456789ABCDEFGHJKMNPQRSTVWXYZ'[h>>s&31] for s in range(25,-1,-5)))" turns into this.
    assertThat(PackMark.code("title=a job\nprogram=0.1.0\naccepted=left.a.B\n"))
        .isEqualTo("M3V0EP");
  }

  @Test
  void theOrderOfAcceptedFindingsDoesNotCountAndEachOfThemDoes() throws Exception {
    Job job = job(Templates.text("wren.toml"));
    String mark = PackMark.of(job, List.of("left.a", "left.b"));
    assertThat(PackMark.of(job, List.of("left.b", "left.a", "left.b"))).isEqualTo(mark);
    assertThat(PackMark.of(job, List.of("left.a"))).isNotEqualTo(mark);
  }

  @Test
  void jobsThatSayTheSameHaveOneMark() throws Exception {
    String text = Templates.text("wren.toml");
    String mark = PackMark.of(job(text), List.of());
    assertThat(PackMark.of(job(text), List.of())).isEqualTo(mark);
    assertThat(PackMark.of(job(text.replaceAll("(?m) *#.*$", "")), List.of())).isEqualTo(mark);
    assertThat(PackMark.of(job(text.replaceFirst("(?m)^title.*$", "title = \"B\"")), List.of()))
        .isNotEqualTo(mark);
  }

  @Test
  void aFactIsALineOfItsOwn() {
    Facts facts =
        new Facts()
            .put("name", "two\nlines \\ and a stroke")
            .put("date", Optional.of(LocalDate.of(2026, 12, 3)))
            .put("none", Optional.empty())
            .put("length", 0.1)
            .put("angle", new Angle(-0.25))
            .put("at", new Vec2(1, -2.5))
            .put("stated", Stated.given(3.0))
            .put("assumed", Stated.assumed(true))
            .put("marks", List.of(-8.0, 4.0))
            .put("sunk", new Recess.Countersink(16, new Angle(1.5), true))
            .put("bored", new Recess.Counterbore(16, 2.5, false))
            .put(
                "outline",
                Contour.of(
                    List.of(
                        new Segment(new Vec2(-1, 0), new Vec2(1, 0)),
                        new Arc(Vec2.ZERO, 1, 0, Math.PI))));
    assertThat(facts.toString().split("\n"))
        .containsExactly(
            "name=two\\nlines \\\\ and a stroke",
            "date=2026-12-03",
            "length=0.1",
            "angle=-0.25",
            "at=1.0 -2.5",
            "stated=3.0",
            "stated.assumed=false",
            "assumed=true",
            "assumed.assumed=true",
            "marks.count=2",
            "marks.0=-8.0",
            "marks.1=4.0",
            "sunk=countersink 16.0 1.5 true",
            "bored=counterbore 16.0 2.5 false",
            "outline=line -1.0 0.0 1.0 0.0; arc 0.0 0.0 1.0 0.0 3.141592653589793");
  }

  @Test
  void whatHasNoTextOfItsOwnIsNoFact() {
    assertThatThrownBy(() -> new Facts().put("side", new Object()))
        .isInstanceOf(IllegalArgumentException.class);
  }
}
