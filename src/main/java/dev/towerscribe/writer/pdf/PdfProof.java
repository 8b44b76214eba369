package dev.towerscribe.writer.pdf;

import dev.towerscribe.drawing.Page;
import dev.towerscribe.drawing.Unreadable;
import dev.towerscribe.quantity.Numbers;
import dev.towerscribe.quantity.Tolerances;
import java.io.IOException;
import java.util.ArrayList;
import java.util.List;
import org.apache.pdfbox.Loader;
import org.apache.pdfbox.pdmodel.PDDocument;
import org.apache.pdfbox.pdmodel.PDPage;
import org.apache.pdfbox.pdmodel.common.PDRectangle;
import org.apache.pdfbox.pdmodel.interactive.viewerpreferences.PDViewerPreferences;

/** Opens a written PDF anew and compares what it finds with what the pages must show. */
public final class PdfProof {
  private static final double MM_PER_UNIT = 25.4 / 72.0;

  private PdfProof() {}

  /**
   * Proves a file against its pages: page count, paper, no scaling in print, and every proof of
   * every page to within {@link Tolerances#READ_BACK_MM}.
   *
   * @param pdf the file
   * @param pages what was to be written
   * @return one line for each mismatch; empty if the file is proved
   */
  public static List<String> check(byte[] pdf, List<Page> pages) {
    List<String> mismatches = new ArrayList<>();
    try (PDDocument document = Loader.loadPDF(pdf)) {
      int count = document.getNumberOfPages();
      if (count != pages.size()) {
        mismatches.add("the file has " + count + " pages, not " + pages.size());
        return mismatches;
      }
      PDViewerPreferences preferences = document.getDocumentCatalog().getViewerPreferences();
      if (preferences == null || !"None".equals(preferences.getPrintScaling())) {
        mismatches.add("the file does not ask to be printed without scaling");
      }
      for (int i = 0; i < count; i++) {
        PDPage written = document.getPage(i);
        Page page = pages.get(i);
        checkPaper(written, page, mismatches);
        try {
          mismatches.addAll(PdfReader.read(written).compare(page));
        } catch (IOException | Unreadable e) {
          mismatches.add("page " + page.label() + " cannot be read back: " + e.getMessage());
        }
      }
    } catch (IOException e) {
      mismatches.add("the file cannot be read back: " + e.getMessage());
    }
    return mismatches;
  }

  private static void checkPaper(PDPage written, Page page, List<String> mismatches) {
    checkBox("media box", written.getMediaBox(), page, mismatches);
    checkBox("crop box", written.getCropBox(), page, mismatches);
    if (written.getUserUnit() != 1f) {
      mismatches.add("page " + page.label() + ": the unit is not 1/72 inch");
    }
    if (written.getRotation() != 0) {
      mismatches.add("page " + page.label() + ": the page is turned");
    }
  }

  private static void checkBox(String name, PDRectangle box, Page page, List<String> mismatches) {
    double width = box.getWidth() * MM_PER_UNIT;
    double height = box.getHeight() * MM_PER_UNIT;
    double off =
        Math.max(
            Math.max(Math.abs(box.getLowerLeftX()), Math.abs(box.getLowerLeftY())) * MM_PER_UNIT,
            Math.max(Math.abs(width - page.widthMm()), Math.abs(height - page.heightMm())));
    if (!(off <= Tolerances.READ_BACK_MM)) {
      mismatches.add(
          "page %s: the %s is %s x %s mm, not %s x %s mm from the corner"
              .formatted(
                  page.label(),
                  name,
                  Numbers.fixed(width, 2),
                  Numbers.fixed(height, 2),
                  Numbers.fixed(page.widthMm(), 2),
                  Numbers.fixed(page.heightMm(), 2)));
    }
  }
}
