package dev.towerscribe.writer.pdf;

import static org.assertj.core.api.Assertions.assertThat;
import static org.assertj.core.api.Assertions.assertThatThrownBy;
import static org.assertj.core.api.Assertions.within;

import dev.towerscribe.drawing.Align;
import dev.towerscribe.drawing.Ink;
import dev.towerscribe.drawing.Item;
import dev.towerscribe.drawing.Layer;
import dev.towerscribe.drawing.Lettering;
import dev.towerscribe.drawing.Page;
import dev.towerscribe.geometry.PrintScale;
import dev.towerscribe.geometry.Vec2;
import dev.towerscribe.quantity.Angle;
import dev.towerscribe.writer.SamplePages;
import java.io.ByteArrayOutputStream;
import java.io.IOException;
import java.nio.charset.StandardCharsets;
import java.util.ArrayList;
import java.util.Arrays;
import java.util.List;
import java.util.function.Consumer;
import org.apache.pdfbox.Loader;
import org.apache.pdfbox.cos.COSName;
import org.apache.pdfbox.pdmodel.PDDocument;
import org.apache.pdfbox.pdmodel.PDPage;
import org.apache.pdfbox.pdmodel.PDPageContentStream;
import org.apache.pdfbox.pdmodel.common.PDRectangle;
import org.apache.pdfbox.pdmodel.interactive.documentnavigation.outline.PDOutlineItem;
import org.apache.pdfbox.pdmodel.interactive.viewerpreferences.PDViewerPreferences;
import org.apache.pdfbox.text.PDFTextStripper;
import org.apache.pdfbox.text.TextPosition;
import org.apache.pdfbox.util.Matrix;
import org.junit.jupiter.api.Test;

class PdfWriterTest {
  private static final double MM_PER_UNIT = 25.4 / 72;

  private final Page plain = SamplePages.everything(PrintScale.TRUE);

  private static byte[] write(Page... pages) {
    return PdfWriter.write("Wren hatch: templates", List.of(pages));
  }

  @Test
  void saysHowToPrintIt() throws IOException {
    try (PDDocument document = Loader.loadPDF(write(plain))) {
      PDViewerPreferences preferences = document.getDocumentCatalog().getViewerPreferences();
      assertThat(preferences.getPrintScaling()).isEqualTo("None");
      assertThat(preferences.getDuplex()).isEqualTo("Simplex");
      assertThat(preferences.displayDocTitle()).isTrue();
      assertThat(
              preferences.getCOSObject().getBoolean(COSName.getPDFName("PickTrayByPDFSize"), false))
          .isTrue();
      assertThat(document.getDocumentInformation().getTitle()).isEqualTo("Wren hatch: templates");
      assertThat(document.getDocumentInformation().getCreationDate()).isNull();
      assertThat(document.getDocumentInformation().getModificationDate()).isNull();
      PDPage page = document.getPage(0);
      assertThat(page.getCOSObject().containsKey(COSName.USER_UNIT)).isFalse();
      assertThat(page.getCropBox().toString()).isEqualTo(page.getMediaBox().toString());
    }
  }

  @Test
  void eachPageHasAnOutlineEntryAndALabel() throws IOException {
    Page other = SamplePages.random(5);
    try (PDDocument document = Loader.loadPDF(write(plain, other))) {
      List<String> titles = new ArrayList<>();
      List<Integer> pages = new ArrayList<>();
      for (PDOutlineItem item : document.getDocumentCatalog().getDocumentOutline().children()) {
        titles.add(item.getTitle());
        pages.add(document.getPages().indexOf(item.findDestinationPage(document)));
      }
      assertThat(titles).containsExactly(plain.title(), other.title());
      assertThat(pages).containsExactly(0, 1);
      assertThat(document.getDocumentCatalog().getPageLabels().getLabelsByPageIndices())
          .containsExactly(plain.label(), other.label());
    }
  }

  @Test
  void textCanBeTakenOut() throws IOException {
    try (PDDocument document = Loader.loadPDF(write(plain))) {
      String text = new PDFTextStripper().getText(document);
      assertThat(text)
          .contains("LEFT UNDERSIDE")
          .contains("start <&'\"> &lt; 12 \u00B1 0.1\u00B0")
          .contains("middle \u00D89 \u2192 \u2265 \u20AC")
          .contains("end \u017Elu\u0165 \u0416\u03A9\u03B1");
      assertThat(document.getPage(0).getResources().getFontNames()).hasSize(1);
    }
  }

  @Test
  void textStandsWhereItsAlignmentSays() throws IOException {
    for (Align align : Align.values()) {
      List<Item> items =
          List.of(
              new Item.Text(
                  Layer.NOTES, new Vec2(105, 100), 7, align, Angle.ZERO, "HxH", Ink.BLACK));
      double[] edges = new double[3];
      try (PDDocument document = Loader.loadPDF(write(SamplePages.withItems(plain, items)))) {
        PDFTextStripper stripper =
            new PDFTextStripper() {
              @Override
              protected void writeString(String text, List<TextPosition> at) {
                if (!text.equals("HxH")) {
                  return;
                }
                TextPosition last = at.get(at.size() - 1);
                // Adjusted positions are measured from the paper's upper left corner.
                edges[0] = at.get(0).getXDirAdj() * MM_PER_UNIT;
                edges[1] = (last.getXDirAdj() + last.getWidthDirAdj()) * MM_PER_UNIT;
                edges[2] = 297 - at.get(0).getYDirAdj() * MM_PER_UNIT;
              }
            };
        stripper.getText(document);
      }
      double stands =
          switch (align) {
            case START -> edges[0];
            case MIDDLE -> (edges[0] + edges[1]) / 2;
            case END -> edges[1];
          };
      // Widths in a PDF are whole thousandths of an em: three of them are off by 0.015 mm at most.
      assertThat(stands).isCloseTo(105, within(0.02));
      assertThat(edges[1] - edges[0]).isCloseTo(Lettering.width("HxH", 7), within(0.02));
      assertThat(edges[2]).isCloseTo(100, within(0.001));
    }
  }

  @Test
  void layersArePaintedInOrder() throws IOException {
    try (PDDocument document = Loader.loadPDF(write(plain))) {
      String content =
          new String(document.getPage(0).getContents().readAllBytes(), StandardCharsets.US_ASCII);
      List<String> marked =
          content
              .lines()
              .filter(line -> line.endsWith(" BMC"))
              .map(line -> line.substring(1, line.length() - 4))
              .toList();
      List<String> inUse =
          Arrays.stream(Layer.values()).map(Layer::id).filter(marked::contains).toList();
      assertThat(marked).isEqualTo(inUse).hasSizeGreaterThan(8);
    }
  }

  @Test
  void samePagesGiveTheSameBytesAndOthersAnotherIdentity() throws IOException {
    assertThat(write(plain, plain)).isEqualTo(write(plain, plain));
    try (PDDocument one = Loader.loadPDF(write(plain));
        PDDocument other = Loader.loadPDF(write(SamplePages.random(1)))) {
      assertThat(one.getDocument().getDocumentID().toString())
          .isNotEqualTo(other.getDocument().getDocumentID().toString());
    }
  }

  @Test
  void aDocumentNeedsAPage() {
    assertThatThrownBy(() -> PdfWriter.write("none", List.of()))
        .isInstanceOf(IllegalArgumentException.class);
  }

  private List<String> afterTampering(Consumer<PDDocument> tampering) throws IOException {
    try (PDDocument document = Loader.loadPDF(write(plain))) {
      tampering.accept(document);
      ByteArrayOutputStream bytes = new ByteArrayOutputStream();
      document.save(bytes);
      return PdfProof.check(bytes.toByteArray(), List.of(plain));
    }
  }

  private static void prepend(PDDocument document, Matrix matrix) {
    PDPage page = document.getPage(0);
    try (PDPageContentStream stream =
        new PDPageContentStream(
            document, page, PDPageContentStream.AppendMode.PREPEND, true, false)) {
      stream.transform(matrix);
    } catch (IOException e) {
      throw new AssertionError(e);
    }
  }

  @Test
  void followsTheFilesOwnTransforms() throws IOException {
    assertThat(afterTampering(document -> {})).isEmpty();
    assertThat(afterTampering(document -> prepend(document, new Matrix(1, 0, 0, 1, 0, 0))))
        .isEmpty();
    float hundredth = (float) (0.02 / MM_PER_UNIT);
    assertThat(afterTampering(document -> prepend(document, new Matrix(1, 0, 0, 1, hundredth, 0))))
        .hasSameSizeAs(plain.proofs());
    assertThat(
            afterTampering(document -> prepend(document, new Matrix(1.001f, 0, 0, 1.001f, 0, 0))))
        .hasSameSizeAs(plain.proofs());
    assertThat(afterTampering(document -> prepend(document, new Matrix(-1, 0, 0, 1, 595, 0))))
        .isNotEmpty();
  }

  @Test
  void catchesWhatWouldMakeAPrinterScale() throws IOException {
    assertThat(afterTampering(d -> d.getDocumentCatalog().setViewerPreferences(null)))
        .singleElement()
        .asString()
        .contains("without scaling");
    assertThat(
            afterTampering(
                d ->
                    d.getDocumentCatalog()
                        .getViewerPreferences()
                        .setPrintScaling(PDViewerPreferences.PRINT_SCALING.AppDefault)))
        .hasSize(1);
    assertThat(afterTampering(d -> d.getPage(0).setMediaBox(PDRectangle.LETTER))).isNotEmpty();
    assertThat(afterTampering(d -> d.getPage(0).setCropBox(new PDRectangle(10, 10, 500, 700))))
        .isNotEmpty();
    assertThat(afterTampering(d -> d.getPage(0).setRotation(90))).isNotEmpty();
    assertThat(afterTampering(d -> d.getPage(0).setUserUnit(1.01f))).isNotEmpty();
    assertThat(afterTampering(d -> d.addPage(new PDPage(PDRectangle.A4)))).hasSize(1);
  }
}
