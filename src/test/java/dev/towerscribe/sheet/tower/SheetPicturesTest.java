package dev.towerscribe.sheet.tower;

import static org.assertj.core.api.Assertions.assertThat;

import dev.towerscribe.drawing.Page;
import dev.towerscribe.geometry.Contour;
import dev.towerscribe.geometry.Vec2;
import dev.towerscribe.model.Crown;
import dev.towerscribe.model.KeepOut;
import dev.towerscribe.model.Landmark;
import dev.towerscribe.model.Paper;
import dev.towerscribe.model.Print;
import dev.towerscribe.model.Side;
import dev.towerscribe.quantity.Angle;
import dev.towerscribe.quantity.LengthUnit;
import dev.towerscribe.sheet.SheetFixtures;
import dev.towerscribe.sheet.text.JobInfo;
import dev.towerscribe.writer.pdf.PdfProof;
import dev.towerscribe.writer.pdf.PdfWriter;
import java.io.IOException;
import java.nio.file.Files;
import java.nio.file.Path;
import java.util.ArrayList;
import java.util.List;
import java.util.Optional;
import org.junit.jupiter.api.Test;

/** Writes every kind of sheet to {@code target/sheets}, to be looked at by eye. */
class SheetPicturesTest {
  @Test
  void writesSheetsToLookAt() throws IOException {
    write("a4", pages(Paper.A4));
    write("letter", pages(Paper.LETTER));
  }

  private static List<Page> pages(Paper paper) {
    Print print = SheetFixtures.print(paper);
    List<Page> pages = new ArrayList<>();
    for (Side side : Side.values()) {
      pages.addAll(
          SheetFixtures.fullScale(
              SheetFixtures.layout(SheetFixtures.plain(side).with(print)), SheetFixtures.info()));
    }
    pages.addAll(
        SheetFixtures.fullScale(
            SheetFixtures.layout(
                SheetFixtures.plain(Side.LEFT)
                    .with(print)
                    .slotted()
                    .with(new Crown(140, 3))
                    .withBolts(5)),
            SheetFixtures.accepted(1)));
    pages.addAll(
        SheetFixtures.fullScale(
            SheetFixtures.layout(
                SheetFixtures.plain(Side.RIGHT)
                    .with(new Print(paper, 10, 0.985, 1.0123))
                    .withLandmarks(
                        List.of(
                            new Landmark("brake pipe clip hole", new Vec2(120, -96), 9),
                            new Landmark("drain hole", new Vec2(38, -52), 9)))
                    .withKeepOuts(
                        List.of(
                            new KeepOut(
                                "seam",
                                Contour.polygon(
                                    List.of(
                                        new Vec2(-90, 60),
                                        new Vec2(-60, 88),
                                        new Vec2(-70, 95),
                                        new Vec2(-98, 70))),
                                3)))),
            new JobInfo(
                "Wren hatch, road and track days, second car of the same kind",
                Optional.of(java.time.LocalDate.of(2026, 4, 1)),
                LengthUnit.INCH,
                "K7Q2",
                SheetFixtures.accepted(3).acceptedStops())));
    pages.add(RulerPage.page(print, Optional.empty()));
    pages.add(
        RulerPage.page(new Print(paper, 10, 0.985, 1.0123), Optional.of(SheetFixtures.info())));
    for (double skew : new double[] {0.4, 2}) {
      Print leaning = new Print(paper, 10, 1.013, 0.994, Angle.ofDegrees(skew));
      pages.addAll(
          SheetFixtures.fullScale(
              SheetFixtures.layout(SheetFixtures.plain(Side.LEFT).with(leaning)),
              SheetFixtures.info()));
      pages.add(RulerPage.page(leaning, Optional.of(SheetFixtures.info())));
    }
    return pages;
  }

  private static void write(String name, List<Page> pages) throws IOException {
    Path folder = Path.of("target", "sheets");
    Files.createDirectories(folder);
    byte[] pdf = PdfWriter.write("sheets", pages);
    Files.write(folder.resolve(name + ".pdf"), pdf);
    assertThat(PdfProof.check(pdf, pages)).isEmpty();
  }
}
