package dev.towerscribe.sheet;

import dev.towerscribe.alignment.JobAlignment;
import dev.towerscribe.alignment.SideAlignment;
import dev.towerscribe.drawing.Page;
import dev.towerscribe.layout.JobLayout;
import dev.towerscribe.layout.SideLayout;
import dev.towerscribe.model.Print;
import dev.towerscribe.sheet.report.AlignmentPage;
import dev.towerscribe.sheet.report.CaliperPage;
import dev.towerscribe.sheet.report.CautionPage;
import dev.towerscribe.sheet.report.FindingsPages;
import dev.towerscribe.sheet.report.StepsPage;
import dev.towerscribe.sheet.text.JobInfo;
import dev.towerscribe.sheet.tower.FullScaleSheets;
import dev.towerscribe.sheet.tower.RulerPage;
import java.util.ArrayList;
import java.util.List;
import java.util.Optional;

/**
 * All pages of a job in the order of use: what to watch for, a page to measure the printer by, and
 * then for each tower what was found, what a bay will read, what to do, what calipers must read,
 * and the sheets to cut by.
 */
public final class Pack {
  private Pack() {}

  /**
   * A job's pages. Whether its stops have been accepted is for the caller to have asked: this only
   * prints what it is told.
   *
   * @param layout the job, laid out, at least one side
   * @param alignment what a bay will read; sides without one have no page of it
   * @param info what every page says
   * @return pages, the caution page first; file stems differ
   * @throws IllegalStateException if a name that the work depends on finds no room on the paper
   */
  public static List<Page> pages(JobLayout layout, JobAlignment alignment, JobInfo info) {
    Print print = layout.sides().values().iterator().next().job().print();
    List<Page> pages = new ArrayList<>(CautionPage.pages(print, info));
    pages.add(RulerPage.page(print, Optional.of(info)));
    for (SideLayout side : layout.sides().values()) {
      pages.addAll(FindingsPages.pages(side, info));
      Optional<SideAlignment> aligned = Optional.ofNullable(alignment.sides().get(side.side()));
      aligned.ifPresent(a -> pages.addAll(AlignmentPage.pages(a, alignment, info)));
      pages.addAll(StepsPage.pages(side, aligned, info));
      pages.addAll(CaliperPage.pages(side, info));
      pages.addAll(FullScaleSheets.pages(side, aligned, info));
    }
    return pages;
  }
}
