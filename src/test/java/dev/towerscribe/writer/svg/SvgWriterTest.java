package dev.towerscribe.writer.svg;

import static org.assertj.core.api.Assertions.assertThat;
import static org.assertj.core.api.Assertions.within;

import dev.towerscribe.drawing.Align;
import dev.towerscribe.drawing.Ink;
import dev.towerscribe.drawing.Item;
import dev.towerscribe.drawing.Layer;
import dev.towerscribe.drawing.Lettering;
import dev.towerscribe.drawing.Page;
import dev.towerscribe.drawing.TracedPath;
import dev.towerscribe.drawing.Unreadable;
import dev.towerscribe.geometry.PrintScale;
import dev.towerscribe.geometry.Vec2;
import dev.towerscribe.quantity.Angle;
import dev.towerscribe.writer.SamplePages;
import java.awt.geom.AffineTransform;
import java.io.ByteArrayInputStream;
import java.nio.charset.StandardCharsets;
import java.util.ArrayList;
import java.util.Arrays;
import java.util.List;
import java.util.Optional;
import javax.xml.parsers.DocumentBuilderFactory;
import org.junit.jupiter.api.Test;
import org.w3c.dom.Document;
import org.w3c.dom.Element;
import org.w3c.dom.NodeList;

class SvgWriterTest {
  private final Page plain = SamplePages.everything(PrintScale.TRUE);

  private static String write(Page page) {
    return new String(SvgWriter.write(page), StandardCharsets.UTF_8);
  }

  private static Document parse(String svg) {
    try {
      return DocumentBuilderFactory.newInstance()
          .newDocumentBuilder()
          .parse(new ByteArrayInputStream(svg.getBytes(StandardCharsets.UTF_8)));
    } catch (Exception e) {
      throw new AssertionError(e);
    }
  }

  private static List<Element> elements(Document document, String name) {
    NodeList nodes = document.getElementsByTagName(name);
    List<Element> found = new ArrayList<>();
    for (int i = 0; i < nodes.getLength(); i++) {
      found.add((Element) nodes.item(i));
    }
    return found;
  }

  @Test
  void oneUserUnitIsOneMillimetre() {
    assertThat(write(plain)).contains("width=\"210mm\" height=\"297mm\" viewBox=\"0 0 210 297\"");
    Page letter =
        new Page(
            "letter",
            "Letter",
            "l",
            215.9,
            279.4,
            true,
            PrintScale.TRUE,
            List.of(),
            Optional.empty(),
            List.of());
    assertThat(write(letter))
        .contains("width=\"215.9mm\" height=\"279.4mm\" viewBox=\"0 0 215.9 279.4\"");
  }

  @Test
  void layersAreGroupsInOrder() {
    List<String> groups =
        elements(parse(write(plain)), "g").stream()
            .map(g -> g.getAttribute("id"))
            .filter(id -> !id.isEmpty())
            .toList();
    List<String> inUse =
        Arrays.stream(Layer.values()).map(Layer::id).filter(groups::contains).toList();
    assertThat(groups).isEqualTo(inUse).hasSizeGreaterThan(8);
    assertThat(write(plain)).contains("<title>Final cut</title>");
  }

  @Test
  void circlesAreCirclesUnlessAPrintScaleMakesThemEllipses() {
    assertThat(write(plain))
        .contains("<circle cx=\"50\" cy=\"127\" r=\"4.5\"")
        .doesNotContain("<ellipse");
    assertThat(write(SamplePages.everything(new PrintScale(1.013, 0.994))))
        .contains("<ellipse")
        .doesNotContain("<circle");
  }

  @Test
  void circlesAreTurnedEllipsesWhereThePrinterSkews() {
    // Independent: numpy's singular values of (x, y) -> (x / 1.013 - y tan 2 / 1.013, y / cos 2 /
    // 0.994), times 4.5; the first axis lies below +x of a page whose y runs up.
    assertThat(write(SamplePages.everything(new PrintScale(1.013, 0.994, Angle.ofDegrees(2)))))
        .contains("A4.575851,4.397664 59.241471 0 0 ")
        .doesNotContain("<circle")
        .doesNotContain("<ellipse");
  }

  @Test
  void penWidthsAndDashesAreExact() {
    assertThat(write(plain))
        .contains("stroke-width:0.13;")
        .contains("stroke-width:0.35;")
        .contains("stroke-width:0.7;")
        .contains("stroke-width:1.4;")
        .contains("stroke-dasharray:12.0,2.0,1.0,2.0");
  }

  @Test
  void textIsThereAsWritten() {
    List<String> texts =
        elements(parse(write(plain)), "text").stream().map(Element::getTextContent).toList();
    assertThat(texts)
        .contains("LEFT UNDERSIDE")
        .contains("start <&'\"> &lt; 12 \u00B1 0.1\u00B0")
        .contains("middle \u00D89 \u2192 \u2265 \u20AC")
        .contains("end \u017Elu\u0165 \u0416\u03A9\u03B1");
  }

  @Test
  void titlesMayHoldAnything() {
    Page odd =
        new Page(
            "odd",
            "R&D <\u0007> 'it' \u4E2D \uD83D\uDE00 &lt;",
            "o",
            210,
            297,
            false,
            PrintScale.TRUE,
            List.of(),
            Optional.empty(),
            List.of());
    assertThat(elements(parse(write(odd)), "title").get(0).getTextContent())
        .isEqualTo("R&D <\uFFFD> 'it' \u4E2D \uD83D\uDE00 &lt;");
  }

  @Test
  void textStandsWhereItsAlignmentSaysAtItsExactSize() throws Unreadable {
    for (Align align : Align.values()) {
      Item text =
          new Item.Text(
              Layer.NOTES, new Vec2(105, 100), 2.47, align, Angle.ofDegrees(90), "HxH", Ink.BLACK);
      Element written =
          elements(parse(write(SamplePages.withItems(plain, List.of(text)))), "text").get(0);
      AffineTransform toPage =
          SvgScan.transform(((Element) written.getParentNode()).getAttribute("transform"));
      double length = SvgScan.parse(written.getAttribute("textLength"));
      Vec2 start = TracedPath.mapped(toPage, Vec2.ZERO);
      Vec2 end = TracedPath.mapped(toPage, new Vec2(length, 0));
      // Independent: reading upward, so the width lies along y, which runs down from 297 mm.
      double width = Lettering.width("HxH", 2.47);
      double below =
          switch (align) {
            case START -> 0;
            case MIDDLE -> width / 2;
            case END -> width;
          };
      assertThat(start.x()).isCloseTo(105, within(1e-6));
      assertThat(start.y()).isCloseTo(297 - (100 - below), within(1e-6));
      assertThat(end.y()).isCloseTo(297 - (100 - below + width), within(1e-5));
      // Published: a capital is 1409/2048 em (OS/2 table of Liberation Sans); size is in the style.
      assertThat(written.getAttribute("style")).contains("font-size: 100px");
      Vec2 capital = TracedPath.mapped(toPage, new Vec2(0, -100 * 1409.0 / 2048));
      assertThat(capital.distanceTo(start)).isCloseTo(2.47, within(1e-6));
      assertThat(capital.x()).isLessThan(start.x());
    }
  }

  @Test
  void hasNoClockInItsNamesAndUsesOnlyLineFeeds() {
    String svg = write(plain);
    assertThat(svg).contains("id=\"window\"").contains("url(#window)").doesNotContain("\r");
    assertThat(elements(parse(svg), "clipPath")).hasSize(1);
    assertThat(svg).startsWith("<?xml version=\"1.0\" encoding=\"UTF-8\"?>\n").endsWith("</svg>\n");
  }

  private List<String> afterTampering(String from, String to) {
    String svg = write(plain);
    assertThat(svg).contains(from);
    return SvgProof.check(svg.replace(from, to).getBytes(StandardCharsets.UTF_8), plain);
  }

  @Test
  void catchesATamperedFile() {
    assertThat(afterTampering("id=\"holes\"", "id=\"holes\" transform=\"scale(1.001)\""))
        .hasSize(2);
    assertThat(afterTampering("id=\"holes\"", "id=\"holes\" transform=\"translate(0.02)\""))
        .hasSize(2);
    assertThat(afterTampering("id=\"holes\"", "id=\"holes\" transform=\"rotate(0 5 5)\""))
        .isEmpty();
    assertThat(afterTampering("id=\"holes\"", "id=\"holes\" transform=\"rotate(1 105 148.5)\""))
        .hasSize(2);
    assertThat(afterTampering("id=\"holes\"", "id=\"holes\" style=\"display:none\"")).hasSize(2);
    assertThat(afterTampering("r=\"4.5\"", "r=\"4.52\"")).hasSize(1);
    assertThat(afterTampering("cx=\"50\"", "cx=\"50.02\"")).hasSize(1);
    assertThat(afterTampering("x2=\"170\"", "x2=\"170.02\"")).hasSize(1);
    assertThat(afterTampering("width=\"210mm\"", "width=\"210\"")).hasSize(1);
    assertThat(afterTampering("width=\"210mm\"", "width=\"215.9mm\"")).isNotEmpty();
    assertThat(afterTampering("viewBox=\"0 0 210 297\"", "viewBox=\"0 0 210.5 297\"")).isNotEmpty();
    assertThat(afterTampering("viewBox=\"0 0 210 297\"", "viewBox=\"1 0 210 297\"")).isNotEmpty();
    assertThat(afterTampering("</svg>", "<use href=\"#holes\"/></svg>")).hasSize(1);
    assertThat(afterTampering("</svg>", "")).hasSize(1);
  }

  @Test
  void readsNoOtherFile() {
    String svg = write(plain);
    String withEntity =
        svg.replace("<svg ", "<!DOCTYPE svg [<!ENTITY other SYSTEM \"file:///nowhere\">]>\n<svg ");
    assertThat(withEntity).contains("DOCTYPE");
    assertThat(
            SvgProof.check(
                withEntity
                    .replace("<title>Notes</title>", "<title>&other;</title>")
                    .getBytes(StandardCharsets.UTF_8),
                plain))
        .allSatisfy(line -> assertThat(line).doesNotContain("nowhere"));
  }

  @Test
  void readsPathsWrittenInOtherWays() throws Unreadable {
    // Independent: a circle of radius 5 about (10, 10) as two half arcs, steps and flags run
    // together; and a rectangle by steps.
    TracedPath path = SvgPathData.parse("m15 10a5 5 0 01-10 0 5,5,0,0,1,10,0z M1e1-2h3V4l-3,0z");
    assertThat(path.rounds()).hasSize(1);
    assertThat(path.rounds().get(0))
        .hasSizeGreaterThan(16)
        .allSatisfy(p -> assertThat(p.distanceTo(new Vec2(10, 10))).isCloseTo(5, within(1e-9)));
    assertThat(path.straights())
        .containsExactly(
            new Vec2(10, -2), new Vec2(13, -2),
            new Vec2(13, -2), new Vec2(13, 4),
            new Vec2(13, 4), new Vec2(10, 4),
            new Vec2(10, 4), new Vec2(10, -2));
  }
}
