package dev.towerscribe.sheet.report;

import static org.assertj.core.api.Assertions.assertThat;

import dev.towerscribe.SampleJobs;
import dev.towerscribe.adjust.Edges;
import dev.towerscribe.adjust.Repeated;
import dev.towerscribe.drawing.Item;
import dev.towerscribe.drawing.Page;
import dev.towerscribe.drilled.Drilled;
import dev.towerscribe.drilled.DrilledAngles;
import dev.towerscribe.drilled.DrilledSide;
import dev.towerscribe.drilled.Readings;
import dev.towerscribe.drilled.Readings.Uncertainty;
import dev.towerscribe.drilled.SideReadings;
import dev.towerscribe.drilled.SideReadings.EdgeGap;
import dev.towerscribe.drilled.SideReadings.HoleSize;
import dev.towerscribe.drilled.SpanReading;
import dev.towerscribe.finding.Finding;
import dev.towerscribe.finding.JobRejected;
import dev.towerscribe.geometry.Vec2;
import dev.towerscribe.layout.JobLayout;
import dev.towerscribe.layout.Layout;
import dev.towerscribe.layout.PlacedHole;
import dev.towerscribe.layout.SideLayout;
import dev.towerscribe.model.Landmark;
import dev.towerscribe.model.Paper;
import dev.towerscribe.model.Side;
import dev.towerscribe.quantity.LengthUnit;
import dev.towerscribe.sheet.PageRules;
import dev.towerscribe.sheet.TextPageSamples;
import dev.towerscribe.sheet.text.JobInfo;
import dev.towerscribe.writer.pdf.PdfProof;
import dev.towerscribe.writer.pdf.PdfWriter;
import java.io.IOException;
import java.nio.file.Files;
import java.nio.file.Path;
import java.util.ArrayList;
import java.util.List;
import java.util.Map;
import java.util.Optional;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.EnumSource;

/** The record of drilled holes: what stands on it, and that it stays on its page. */
class DrilledPageTest {
  /** Exact readings of holes that lie off by so much each, the first one by ten times as much. */
  private static DrilledSide drilled(SideLayout layout, Vec2 off, boolean tied) {
    List<HoleSize> sizes = new ArrayList<>();
    List<SpanReading> spans = new ArrayList<>();
    List<EdgeGap> edges = new ArrayList<>();
    List<PlacedHole> holes = layout.holes();
    List<Vec2> at = new ArrayList<>();
    for (int i = 0; i < holes.size(); i++) {
      at.add(holes.get(i).at().plus(off.times(i == 0 ? 10 : 1)));
    }
    for (int i = 0; i < holes.size(); i++) {
      PlacedHole a = holes.get(i);
      sizes.add(new HoleSize(a.name(), read(a.diameterMm())));
      edges.add(new EdgeGap(a.name(), read(i == 1 ? 1 : 20)));
      for (int j = i + 1; j < holes.size(); j++) {
        double centres = at.get(i).distanceTo(at.get(j));
        spans.add(new SpanReading(a.name(), holes.get(j).name(), Edges.CENTRES, read(centres)));
      }
      for (Landmark landmark : layout.job().tower().landmarks()) {
        double centres = at.get(i).distanceTo(landmark.at());
        if (tied) {
          spans.add(new SpanReading(a.name(), landmark.name(), Edges.CENTRES, read(centres)));
        }
      }
    }
    Side side = layout.side();
    Readings readings =
        new Readings(
            "test",
            Optional.empty(),
            LengthUnit.MM,
            Uncertainty.ASSUMED,
            Map.of(side, new SideReadings(side, sizes, spans, edges)));
    JobLayout planned = new JobLayout(SampleJobs.only(layout.job()), Map.of(side, layout));
    try {
      return Drilled.of(planned, readings, Layout::of).sides().get(side);
    } catch (JobRejected e) {
      throw new IllegalStateException(e);
    }
  }

  private static Repeated read(double mm) {
    return new Repeated(List.of(mm, mm), 0.05);
  }

  private static List<Page> pages(DrilledSide side, JobInfo info) {
    Optional<DrilledAngles> angles =
        side.asDrilled().map(as -> DrilledAngles.of(side.planned().job(), as.mount(), as.sure()));
    return DrilledPage.pages(side, angles, side.planned().job().print(), info);
  }

  private static JobInfo accepted(DrilledSide side, LengthUnit units) {
    return TextPageSamples.info(units, side.findings().stream().filter(Finding::isStop).toList());
  }

  @ParameterizedTest
  @EnumSource(Paper.class)
  void everythingStaysInsideTheMarginsAndApart(Paper paper) {
    for (Side which : Side.values()) {
      for (boolean tied : new boolean[] {true, false}) {
        SideLayout plain = TextPageSamples.plain(which, paper);
        DrilledSide good = drilled(plain, new Vec2(0.03, -0.04), tied);
        PageRules.check(pages(good, accepted(good, LengthUnit.MM)), 10);
        DrilledSide bad =
            drilled(TextPageSamples.full(which, paper, LengthUnit.INCH), new Vec2(0.3, 0.2), tied);
        PageRules.check(pages(bad, accepted(bad, LengthUnit.INCH)), 10);
      }
    }
    DrilledSide eight =
        drilled(TextPageSamples.eight(Side.LEFT, paper, true), new Vec2(0.1, 0.1), true);
    PageRules.check(pages(eight, accepted(eight, LengthUnit.MM)), 10);
  }

  @Test
  void saysWhatThereIsNow() {
    DrilledSide side =
        drilled(TextPageSamples.plain(Side.LEFT, Paper.A4), new Vec2(0.03, -0.04), true);
    List<Page> pages = pages(side, accepted(side, LengthUnit.MM));
    String words = PageRules.words(pages);
    assertThat(words)
        .contains("LEFT", "THE PLATE GOES ON", "Rotation, deg", "As drilled", "Caster", "Camber")
        .contains("Nearest to the planned angles")
        .contains("NOT TO SCALE", "TIMES full size")
        // Independent, by hand: hole A 0.3 forward and 0.4 outboard, so off by 0.5; the others by a
        // tenth.
        .contains("0.30", "-0.40", "0.50", "0.03", "-0.04", "0.05")
        .contains("SHORT", "stop (accepted) left.drilled-edge-read.B")
        .contains("PRINTED WITH");
  }

  @Test
  void aPlateThatDoesNotGoOnSaysSoFirst() {
    DrilledSide side =
        drilled(TextPageSamples.plain(Side.RIGHT, Paper.A4), new Vec2(0.4, 0.2), true);
    String words = PageRules.words(pages(side, accepted(side, LengthUnit.MM)));
    assertThat(words).contains("THE PLATE DOES NOT GO ON", "Least work: open hole");
  }

  @Test
  void withoutATieThePlaceIsNotClaimed() {
    DrilledSide side =
        drilled(TextPageSamples.plain(Side.LEFT, Paper.A4), new Vec2(0.03, -0.04), false);
    String words = PageRules.words(pages(side, accepted(side, LengthUnit.MM)));
    assertThat(words)
        .contains("rotation and offset are not known", "place is not known from these readings")
        .contains("errors within the pattern")
        .doesNotContain("Caster");
  }

  /** Arrows point where the holes went: forward is up, and inboard is right on the right tower. */
  @ParameterizedTest
  @EnumSource(Side.class)
  void arrowsPointWhereTheHolesWent(Side which) {
    SideLayout layout = TextPageSamples.plain(which, Paper.A4);
    Vec2 off = new Vec2(0.06, 0.08);
    // Independent: ten times that for the first hole: 1 mm, drawn five times its size, 5 mm long.
    Page page =
        pages(drilled(layout, off, true), TextPageSamples.info(LengthUnit.MM, List.of())).get(0);
    double right = which == Side.RIGHT ? 1 : -1;
    Vec2 way = new Vec2(right * 0.8, 0.6);
    List<Item.Line> arrows =
        page.items().stream()
            .filter(Item.Line.class::isInstance)
            .map(Item.Line.class::cast)
            .filter(l -> l.from().distanceTo(l.to()) > 0.01)
            .filter(l -> l.to().minus(l.from()).unit().distanceTo(way) < 0.02)
            .toList();
    assertThat(arrows).isNotEmpty();
    // Its head takes the last 3 mm or less; what is left of the shortest is 2 mm but for rounding.
    assertThat(arrows)
        .anySatisfy(l -> assertThat(l.from().distanceTo(l.to())).isBetween(2.0 - 1e-9, 9.0));
  }

  @Test
  void readsBackAsWritten() {
    for (Side which : Side.values()) {
      List<Page> pages =
          pages(
              drilled(TextPageSamples.plain(which, Paper.A4), new Vec2(0.03, -0.04), true),
              TextPageSamples.info(LengthUnit.MM, List.of()));
      byte[] pdf = PdfWriter.write("drilled", pages);
      assertThat(PdfProof.check(pdf, pages)).isEmpty();
    }
  }

  @Test
  void samePagesTwice() {
    SideLayout layout = TextPageSamples.full(Side.RIGHT, Paper.A4, LengthUnit.MM);
    DrilledSide side = drilled(layout, new Vec2(0.1, 0.1), true);
    JobInfo info = TextPageSamples.info(LengthUnit.MM, List.of());
    assertThat(pages(side, info)).isEqualTo(pages(drilled(layout, new Vec2(0.1, 0.1), true), info));
  }

  /** Writes pages to {@code target/sheets}, to be looked at by eye. */
  @Test
  void writesPagesToLookAt() throws IOException {
    for (Paper paper : List.of(Paper.A4, Paper.LETTER)) {
      List<Page> all = new ArrayList<>();
      DrilledSide full =
          drilled(
              TextPageSamples.full(Side.RIGHT, paper, LengthUnit.INCH), new Vec2(0.3, 0.2), true);
      all.addAll(pages(full, accepted(full, LengthUnit.INCH)));
      DrilledSide eight =
          drilled(TextPageSamples.eight(Side.LEFT, paper, true), new Vec2(0.1, 0.1), true);
      all.addAll(pages(eight, accepted(eight, LengthUnit.MM)));
      Path file = Path.of("target", "sheets", "drilled-" + paper.word() + ".pdf");
      Files.createDirectories(file.getParent());
      Files.write(file, PdfWriter.write("drilled", all));
      assertThat(Files.size(file)).isPositive();
    }
  }
}
