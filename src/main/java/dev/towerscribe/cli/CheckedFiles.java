package dev.towerscribe.cli;

import dev.towerscribe.drawing.Page;
import dev.towerscribe.report.LayoutReport;
import dev.towerscribe.report.PlainText;
import dev.towerscribe.sheet.report.OverviewPage;
import dev.towerscribe.store.MadeFile;
import dev.towerscribe.store.MadeFiles;
import dev.towerscribe.store.PackDirectory;
import dev.towerscribe.writer.pdf.PdfWriter;
import java.io.IOException;
import java.util.List;
import java.util.Optional;

/**
 * What is written of a job without making its sheets: the report, and a picture of where its stops
 * are.
 *
 * @param job the job
 * @param writer used once
 */
record CheckedFiles(LoadedJob job, PdfWriter writer) {
  static final String OVERVIEW = "overview.pdf";

  /**
   * Writes them; sheets that lie there stay as they are.
   *
   * @return what must be said of such sheets, if they belong to another state of the job
   * @throws IOException if they cannot be written
   */
  Optional<String> write(PackDirectory directory) throws IOException {
    List<Page> pages = OverviewPage.pages(job.layout(), job.info());
    MadeFiles overview = new MadeFiles();
    overview.put(OVERVIEW, MadeFile.pdf(writer, job.job().title() + ", overview", pages));
    return directory
        .writeReport(
            job.packMark(),
            overview,
            older ->
                report(
                    job,
                    older.filter(this::isOfThisState),
                    older.flatMap(this::warning).stream().toList()))
        .flatMap(this::warning);
  }

  static String report(LoadedJob job, Optional<String> mark, List<String> notice) {
    return PlainText.of(LayoutReport.of(job.layout(), job.accepted().ids(), mark, notice));
  }

  private boolean stopped() {
    return !job.accepted().open().isEmpty();
  }

  private boolean isOfThisState(String mark) {
    return !stopped() && mark.equals(job.packMark());
  }

  private Optional<String> warning(String mark) {
    return isOfThisState(mark)
        ? Optional.empty()
        : Optional.of(
            "DO NOT WORK FROM THE SHEETS IN THIS DIRECTORY: they carry pack mark "
                + mark
                + ", belong to an earlier state of the job, and were left as they are. The state"
                + " checked now has "
                + (stopped() ? "a stop finding and no sheets." : "no sheets yet: pack it."));
  }
}
