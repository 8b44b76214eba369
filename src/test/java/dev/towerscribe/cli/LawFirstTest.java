package dev.towerscribe.cli;

import static org.assertj.core.api.Assertions.assertThat;

import java.io.IOException;
import java.io.StringReader;
import java.nio.charset.StandardCharsets;
import java.nio.file.Path;
import java.util.ArrayList;
import java.util.HashMap;
import java.util.List;
import java.util.Map;
import java.util.SortedMap;
import javax.xml.parsers.DocumentBuilderFactory;
import org.apache.pdfbox.Loader;
import org.apache.pdfbox.pdmodel.PDDocument;
import org.apache.pdfbox.text.PDFTextStripper;
import org.apache.pdfbox.text.TextPosition;
import org.junit.jupiter.api.Test;
import org.w3c.dom.Document;
import org.w3c.dom.Element;
import org.w3c.dom.NodeList;
import org.xml.sax.InputSource;

/**
 * Whoever holds a sheet or opens a drawing, whichever one, reads that law and vehicle maker come
 * first. Read from the kept samples, of which {@link OutputSamplesTest} proves that the program
 * writes them today; the placement map, of which none is kept, has the same in its own test.
 */
class LawFirstTest {
  private static final Path SAMPLES = Path.of("").toAbsolutePath().resolve("output-samples");
  private static final String LAW = "Law and vehicle maker first.";

  /** The least that is read at arm's length, mm; a printed point is a 72nd of an inch. */
  private static final double LEAST_CAP_MM = 2.5;

  /** Height of a capital over the size of the lettering: 1409 of 2048 units of the sheet font. */
  private static final double CAPITAL = 1409.0 / 2048;

  private static final double ROUNDING_MM = 0.01;

  private final SortedMap<String, byte[]> files;

  LawFirstTest() throws IOException {
    files = CommandRuns.filesBelow(SAMPLES);
  }

  private List<String> ending(String end) {
    List<String> names = files.keySet().stream().filter(name -> name.endsWith(end)).toList();
    assertThat(names).as(end).isNotEmpty();
    return names;
  }

  /** One line that a page says, with the height of its first capital. */
  private record Line(String words, double capMm) {}

  private static List<Line> lines(PDDocument document, int page) throws IOException {
    List<Line> lines = new ArrayList<>();
    PDFTextStripper stripper =
        new PDFTextStripper() {
          @Override
          protected void writeString(String text, List<TextPosition> places) {
            double points = places.get(0).getYScale();
            lines.add(new Line(text, points * CAPITAL * 25.4 / 72));
          }
        };
    stripper.setStartPage(page);
    stripper.setEndPage(page);
    stripper.getText(document);
    return lines;
  }

  @Test
  void everyPrintedPageSaysIt() throws IOException {
    List<String> names = ending(".pdf");
    // Every kind of document: pack, alignment, parts, jig, towers, strength, survey, holes, record.
    assertThat(names)
        .anyMatch(n -> n.contains("pack"))
        .anyMatch(n -> n.contains("alignment"))
        .anyMatch(n -> n.contains("plate"))
        .anyMatch(n -> n.contains("slider"))
        .anyMatch(n -> n.contains("jig"))
        .anyMatch(n -> n.contains("tower-"))
        .anyMatch(n -> n.contains("strength"))
        .anyMatch(n -> n.contains("worksheet"))
        .anyMatch(n -> n.contains("drilled"))
        .anyMatch(n -> n.contains("record"))
        .anyMatch(n -> n.contains("print-check"));
    for (String name : names) {
      try (PDDocument document = Loader.loadPDF(files.get(name))) {
        for (int page = 1; page <= document.getNumberOfPages(); page++) {
          List<Line> said =
              lines(document, page).stream().filter(l -> l.words().contains(LAW)).toList();
          assertThat(said).as(name + ", page " + page).hasSize(1);
          assertThat(said.get(0).capMm())
              .as(name + ", page " + page)
              .isGreaterThan(LEAST_CAP_MM - ROUNDING_MM);
        }
      }
    }
  }

  @Test
  void everySvgSaysIt() throws Exception {
    for (String name : ending(".svg")) {
      String text = new String(files.get(name), StandardCharsets.UTF_8);
      Document svg =
          DocumentBuilderFactory.newDefaultInstance()
              .newDocumentBuilder()
              .parse(new InputSource(new StringReader(text)));
      NodeList texts = svg.getElementsByTagName("text");
      int said = 0;
      for (int i = 0; i < texts.getLength(); i++) {
        said += ((Element) texts.item(i)).getTextContent().contains(LAW) ? 1 : 0;
      }
      assertThat(said).as(name).isEqualTo(1);
    }
  }

  /** A DXF is pairs of lines: a group code, then its value; group 1 of a TEXT is what it says. */
  @Test
  void everyDxfSaysItInATextTallEnough() {
    for (String name : ending(".dxf")) {
      List<String> lines =
          new String(files.get(name), StandardCharsets.US_ASCII)
              .lines()
              .map(String::strip)
              .toList();
      List<Map<String, String>> texts = new ArrayList<>();
      for (int i = 0; i + 1 < lines.size(); i += 2) {
        if (lines.get(i).equals("0")) {
          texts.add(new HashMap<>());
        }
        texts.get(texts.size() - 1).putIfAbsent(lines.get(i), lines.get(i + 1));
      }
      List<Map<String, String>> said =
          texts.stream()
              .filter(t -> "TEXT".equals(t.get("0")) && t.getOrDefault("1", "").contains(LAW))
              .toList();
      assertThat(said).as(name).hasSize(1);
      assertThat(Double.parseDouble(said.get(0).get("40")))
          .as(name)
          .isGreaterThanOrEqualTo(LEAST_CAP_MM);
    }
  }
}
