package dev.towerscribe.finding;

import static org.assertj.core.api.Assertions.assertThat;

import dev.towerscribe.quantity.LengthUnit;
import dev.towerscribe.quantity.Lengths;
import java.util.List;
import org.junit.jupiter.api.Test;

/** Ids, judging and order of the one collector. Expected values: independent, by hand. */
class FindingsTest {
  private final Findings findings = new Findings("left", Lengths.in(LengthUnit.MM));

  private static About metal(double mm) {
    return About.mm("bolt B", mm, 10.0, Sources.PRACTICE);
  }

  @Test
  void anIdThatIsTakenGetsANumber() {
    findings.add("edge.B", Severity.NOTE, metal(12), "first");
    findings.add("edge.B", Severity.NOTE, metal(12), "second");
    findings.add("edge.B", Severity.NOTE, metal(12), "third");
    findings.add("right", "edge.B", Severity.NOTE, metal(12), "another side");

    assertThat(findings.gravestFirst())
        .extracting(Finding::id)
        .containsExactly("left.edge.B", "left.edge.B-2", "left.edge.B-3", "right.edge.B");
  }

  @Test
  void theGravestComeFirstAndTheRestKeepTheirOrder() {
    findings.add("a", Severity.NOTE, metal(12), "");
    findings.add("b", Severity.STOP, metal(12), "");
    findings.add("c", Severity.CAUTION, metal(12), "");
    findings.add("d", Severity.STOP, metal(12), "");

    assertThat(findings.gravestFirst())
        .extracting(Finding::id)
        .containsExactly("left.b", "left.d", "left.c", "left.a");
  }

  @Test
  void lessThanTheLeastFailsAndSaysWhatToDo() {
    findings.atLeast("edge", metal(9.99), Severity.STOP, "of metal", "Move it.");
    findings.atLeast("edge-passes", metal(10.0), Severity.STOP, "of metal", "Move it.");
    // Less by rounding alone.
    findings.atLeast("edge-just", metal(10.0 - 5e-10), Severity.STOP, "of metal", "Move it.");
    findings.atLeast("edge-not-quite", metal(10.0 - 5e-9), Severity.STOP, "of metal", "Move it.");

    assertThat(findings.gravestFirst())
        .extracting(f -> f.id() + ": " + f.severity().word() + ": " + f.say())
        .containsExactly(
            "left.edge: stop: 9.99 mm of metal; needs 10.00 mm. Move it.",
            "left.edge-not-quite: stop: 10.00 mm of metal; needs 10.00 mm. Move it.",
            "left.edge-passes: note: 10.00 mm of metal; at least 10.00 mm.",
            "left.edge-just: note: 10.00 mm of metal; at least 10.00 mm.");
  }

  @Test
  void moreThanTheMostFails() {
    findings.atMost("gap", metal(10.01), Severity.CAUTION, "of gap", "Pack it.");
    findings.atMost("gap-passes", metal(10.0), Severity.CAUTION, "of gap", "Pack it.");

    assertThat(findings.gravestFirst())
        .extracting(f -> f.severity().word() + ": " + f.say())
        .containsExactly(
            "caution: 10.01 mm of gap; at most 10.00 mm. Pack it.",
            "note: 10.00 mm of gap; at most 10.00 mm.");
  }

  @Test
  void ofSeveralEachFailingOneIsToldOrElseTheTightest() {
    Findings all = new Findings("right", Lengths.in(LengthUnit.INCH));
    all.eachFailingOrTightest(List.of(near("a", 12), near("b", 11), near("c", 13)), Severity.STOP);
    all.eachFailingOrTightest(List.of(near("d", 9), near("e", 11), near("f", 8)), Severity.STOP);
    all.eachFailingOrTightest(List.of(), Severity.STOP);

    assertThat(all.gravestFirst())
        .extracting(Finding::id)
        .containsExactly("right.d", "right.f", "right.b");
    // 9 mm is 0.354 in, 10 mm is 0.394 in.
    assertThat(all.gravestFirst().get(0).say()).isEqualTo("0.354 in away; needs 0.394 in. Move.");
  }

  private static Findings.Candidate near(String check, double mm) {
    return new Findings.Candidate(check, metal(mm), "away", "Move.");
  }

  @Test
  void slugsHoldOnlyWhatAnIdCan() {
    assertThat(Findings.slug("seam (front)")).isEqualTo("seam-front");
    assertThat(Findings.slug(" \u00fc ")).isEqualTo("unnamed");
    assertThat(Findings.slugs(List.of("seam", "seam!", "Seam", "seam-2")))
        .doesNotHaveDuplicates()
        .containsExactly("seam", "seam-2-again", "Seam", "seam-2");
  }

  @Test
  void anglesAreShownInDegrees() {
    findings.add(
        "cross", Severity.NOTE, About.degrees("caster", Math.PI / 2, Math.PI, "own"), "turned");

    Finding f = findings.gravestFirst().get(0);
    assertThat(f.figure()).isEqualTo(90.0);
    assertThat(f.limit()).isEqualTo(180.0);
    assertThat(f.unit()).isEqualTo("deg");
    assertThat(f.isMeasured()).isTrue();
  }

  @Test
  void wordsAloneAreNotMeasured() {
    findings.add("seat", Severity.CAUTION, About.words("plate", Sources.OWN_CHOICE), "say");

    assertThat(findings.gravestFirst().get(0).isMeasured()).isFalse();
  }
}
