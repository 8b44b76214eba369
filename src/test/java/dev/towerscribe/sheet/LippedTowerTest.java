package dev.towerscribe.sheet;

import static org.assertj.core.api.Assertions.assertThat;

import dev.towerscribe.SampleJobs;
import dev.towerscribe.drawing.Page;
import dev.towerscribe.geometry.Contour;
import dev.towerscribe.geometry.Vec2;
import dev.towerscribe.layout.SideLayout;
import dev.towerscribe.model.Lip;
import dev.towerscribe.model.Seat;
import dev.towerscribe.model.Seating;
import dev.towerscribe.model.SecondSkin;
import dev.towerscribe.model.Side;
import dev.towerscribe.model.SideJob;
import dev.towerscribe.model.TowerChange;
import dev.towerscribe.quantity.LengthUnit;
import dev.towerscribe.sheet.report.StepsPage;
import dev.towerscribe.writer.svg.SvgWriter;
import java.nio.charset.StandardCharsets;
import java.util.List;
import java.util.Optional;
import java.util.stream.Collectors;
import org.junit.jupiter.api.Test;

/** What a person is told who lays paper over a lip, or drills two sheets. */
class LippedTowerTest {
  private static SideLayout tower(Side side, Lip.Turned turned, Seat seat) {
    SideJob job =
        SampleJobs.side(
                side,
                TowerChange.of(SampleJobs.plainTower())
                    .withMetal(
                        Optional.of(new Lip(turned, 3, 2, Contour.circle(Vec2.ZERO, 53.25))),
                        Optional.of(new SecondSkin(1.1, 2.5)))
                    .tower(),
                SampleJobs.plate(true))
            .with(new Seating(Optional.of(seat), SampleJobs.SEATING.packing()));
    return TextPageSamples.laidOut(job, LengthUnit.MM);
  }

  /** The sheet of a face, in one piece or in tiles. */
  private static List<Page> sheet(SideLayout layout, String face) {
    return SheetFixtures.fullScale(layout, SheetFixtures.info()).stream()
        .filter(p -> p.fileStem().contains(face))
        .toList();
  }

  /** What stands in the files, words and lines. */
  private static String written(List<Page> pages) {
    return pages.stream()
        .map(p -> new String(SvgWriter.write(p), StandardCharsets.UTF_8).replace("&apos;", "'"))
        .collect(Collectors.joining());
  }

  @Test
  void thePaperIsCutOutOnTheFaceThatTheLipStandsOutFrom() {
    for (Side side : Side.values()) {
      for (Lip.Turned turned : Lip.Turned.values()) {
        SideLayout layout = tower(side, turned, Seat.ON_TOP);
        String over = turned == Lip.Turned.UP ? "topside" : "underside";
        String away = turned == Lip.Turned.UP ? "underside" : "topside";
        assertThat(written(sheet(layout, over)))
            .contains("lip: flat from here", "cut the paper out inside", "along the lip's line")
            .doesNotContain("fit this edge", "Fit the opening's edge");
        assertThat(written(sheet(layout, away)))
            .contains("fit this edge")
            .doesNotContain("cut the paper out inside", "along the lip's line");
      }
    }
  }

  @Test
  void theLineWhereTheFlatBeginsIsDrawnAtFullScale() {
    for (String face : List.of("topside", "underside")) {
      assertThat(written(sheet(tower(Side.RIGHT, Lip.Turned.UP, Seat.ON_TOP), face)))
          .contains("r=\"53.25\"");
    }
  }

  @Test
  void theStepsTellOfLipTwoSheetsSleevesAndFace() {
    String above = steps(tower(Side.LEFT, Lip.Turned.UP, Seat.ON_TOP));
    assertThat(above)
        .contains("Two sheets, 5.00 mm in all")
        .contains("a sleeve of 2.50 mm on every bolt")
        .contains("Make up the shims")
        .contains("Offer up the plate, on top of the tower.")
        .contains("cut the paper out along \"lip: flat from here\"");
    String below = steps(tower(Side.LEFT, Lip.Turned.UP, Seat.UNDERNEATH));
    assertThat(below)
        .contains("Offer up the plate, underneath the tower.")
        .doesNotContain("Make up the shims");
    String plain =
        steps(
            TextPageSamples.laidOut(
                SampleJobs.side(Side.LEFT, SampleJobs.plainTower(), SampleJobs.plate(true)),
                LengthUnit.MM));
    assertThat(plain).doesNotContain("Two sheets", "sleeve", "lip:", "shims");
  }

  private static String steps(SideLayout layout) {
    return PageRules.words(StepsPage.pages(layout, TextPageSamples.info(LengthUnit.MM, List.of())));
  }
}
