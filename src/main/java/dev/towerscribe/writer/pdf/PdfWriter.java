package dev.towerscribe.writer.pdf;

import dev.towerscribe.drawing.Page;
import java.io.ByteArrayOutputStream;
import java.io.IOException;
import java.io.OutputStream;
import java.io.UncheckedIOException;
import java.nio.charset.StandardCharsets;
import java.util.List;
import org.apache.pdfbox.cos.COSName;
import org.apache.pdfbox.pdmodel.PDDocument;
import org.apache.pdfbox.pdmodel.PDPage;
import org.apache.pdfbox.pdmodel.PDResources;
import org.apache.pdfbox.pdmodel.common.PDPageLabelRange;
import org.apache.pdfbox.pdmodel.common.PDPageLabels;
import org.apache.pdfbox.pdmodel.common.PDRectangle;
import org.apache.pdfbox.pdmodel.common.PDStream;
import org.apache.pdfbox.pdmodel.interactive.documentnavigation.destination.PDPageFitDestination;
import org.apache.pdfbox.pdmodel.interactive.documentnavigation.outline.PDDocumentOutline;
import org.apache.pdfbox.pdmodel.interactive.documentnavigation.outline.PDOutlineItem;
import org.apache.pdfbox.pdmodel.interactive.viewerpreferences.PDViewerPreferences;

/** Writes pages as one PDF: vectors only, at full scale, the same bytes for the same pages. */
public final class PdfWriter {
  private static final String CREATOR = "Towerscribe";

  private final PDDocument document = new PDDocument();
  private final PdfFont font;

  /** Opens a document, still without pages, and its font. */
  public PdfWriter() {
    try {
      font = new PdfFont(document);
    } catch (IOException e) {
      // Nothing here leaves memory but the reading of the font, which is part of the program.
      throw new UncheckedIOException(e);
    }
  }

  /**
   * Writes a document in one go.
   *
   * @param title the document's title
   * @param pages at least one, in order
   * @return the file
   * @throws IllegalArgumentException as {@link #finish} does
   */
  public static byte[] write(String title, List<Page> pages) {
    return new PdfWriter().finish(title, pages);
  }

  /**
   * Writes the document; to be called once. It asks viewers not to scale when printing, to pick the
   * paper by its size and to print on one side. Carries no date and no random identity.
   *
   * @param title the document's title
   * @param pages at least one, in order
   * @return the file
   * @throws IllegalArgumentException if there is no page, or a text has a character that the sheet
   *     font cannot write
   */
  public byte[] finish(String title, List<Page> pages) {
    if (pages.isEmpty()) {
      throw new IllegalArgumentException("a document has at least one page");
    }
    try (document) {
      document.setVersion(1.7f);
      document.getDocumentInformation().setTitle(title);
      document.getDocumentInformation().setCreator(CREATOR);
      PDResources resources = new PDResources();
      resources.put(COSName.getPDFName(PdfFont.NAME), font.resource());
      long identity = hash(0, title);
      for (Page page : pages) {
        String content = PdfPainter.paint(page, font);
        identity = hash(identity, content);
        document.addPage(page(document, page, resources, content));
      }
      font.finish();
      addOutline(document, pages);
      addLabels(document, pages);
      document.getDocumentCatalog().setViewerPreferences(preferences());
      document.setDocumentId(identity);
      ByteArrayOutputStream bytes = new ByteArrayOutputStream(1 << 16);
      document.save(bytes);
      return bytes.toByteArray();
    } catch (IOException e) {
      // Nothing here leaves memory.
      throw new UncheckedIOException(e);
    }
  }

  private static PDPage page(PDDocument document, Page page, PDResources resources, String content)
      throws IOException {
    PDRectangle paper =
        new PDRectangle(
            (float) (page.widthMm() * PdfPainter.UNITS_PER_MM),
            (float) (page.heightMm() * PdfPainter.UNITS_PER_MM));
    PDPage written = new PDPage(paper);
    written.setCropBox(paper);
    written.setResources(resources);
    PDStream stream = new PDStream(document);
    try (OutputStream out = stream.createOutputStream(COSName.FLATE_DECODE)) {
      out.write(content.getBytes(StandardCharsets.US_ASCII));
    }
    written.setContents(stream);
    return written;
  }

  /** FNV-1a over UTF-16 units: only has to differ between documents, and not between runs. */
  private static long hash(long before, String text) {
    long hash = before ^ 0xcbf29ce484222325L;
    for (int i = 0; i < text.length(); i++) {
      hash = (hash ^ text.charAt(i)) * 0x100000001b3L;
    }
    return hash;
  }

  private static void addOutline(PDDocument document, List<Page> pages) {
    PDDocumentOutline outline = new PDDocumentOutline();
    for (int i = 0; i < pages.size(); i++) {
      PDPageFitDestination whole = new PDPageFitDestination();
      whole.setPage(document.getPage(i));
      PDOutlineItem entry = new PDOutlineItem();
      entry.setTitle(pages.get(i).title());
      entry.setDestination(whole);
      outline.addLast(entry);
    }
    document.getDocumentCatalog().setDocumentOutline(outline);
  }

  private static void addLabels(PDDocument document, List<Page> pages) throws IOException {
    PDPageLabels labels = new PDPageLabels(document);
    for (int i = 0; i < pages.size(); i++) {
      PDPageLabelRange label = new PDPageLabelRange();
      label.setPrefix(pages.get(i).label());
      labels.setLabelItem(i, label);
    }
    document.getDocumentCatalog().setPageLabels(labels);
  }

  private static PDViewerPreferences preferences() {
    PDViewerPreferences preferences = new PDViewerPreferences();
    preferences.setPrintScaling(PDViewerPreferences.PRINT_SCALING.None);
    preferences.setDuplex(PDViewerPreferences.DUPLEX.Simplex);
    preferences.setDisplayDocTitle(true);
    preferences.getCOSObject().setBoolean(COSName.getPDFName("PickTrayByPDFSize"), true);
    return preferences;
  }
}
