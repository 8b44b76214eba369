package dev.towerscribe.sheet.tower;

import static org.assertj.core.api.Assertions.assertThat;

import dev.towerscribe.drawing.Lettering;
import dev.towerscribe.drawing.Page;
import dev.towerscribe.job.JobReader;
import dev.towerscribe.layout.JobLayout;
import dev.towerscribe.layout.Layout;
import dev.towerscribe.layout.SideLayout;
import dev.towerscribe.sheet.SheetFixtures;
import dev.towerscribe.sheet.text.JobInfo;
import dev.towerscribe.writer.pdf.PdfProof;
import dev.towerscribe.writer.pdf.PdfWriter;
import java.nio.file.Files;
import java.nio.file.Path;
import java.util.ArrayList;
import java.util.List;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.ValueSource;

/** The starter jobs' sheets, whole way through, written to {@code target/sheets}. */
class TemplatePicturesTest {
  @ParameterizedTest
  @ValueSource(strings = {"wren", "siskin", "dunnock"})
  void everyStarterJobMakesSheetsThatProve(String name) throws Exception {
    JobLayout layout =
        Layout.of(new JobReader(Lettering::canWrite).read(Path.of("templates", name + ".toml")));
    JobInfo info =
        new JobInfo(
            layout.job().title(),
            layout.job().date(),
            layout.job().units(),
            "K7Q2",
            layout.stops());
    List<Page> pages = new ArrayList<>();
    for (SideLayout side : layout.sides().values()) {
      pages.addAll(SheetFixtures.fullScale(side, info));
    }
    byte[] pdf = PdfWriter.write(layout.job().title(), pages);
    Path folder = Path.of("target", "sheets");
    Files.createDirectories(folder);
    Files.write(folder.resolve(name + ".pdf"), pdf);
    assertThat(PdfProof.check(pdf, pages)).isEmpty();
  }
}
