package dev.towerscribe.sheet;

import dev.towerscribe.drawing.Page;
import dev.towerscribe.model.Paper;
import dev.towerscribe.model.Side;
import dev.towerscribe.quantity.LengthUnit;
import dev.towerscribe.writer.pdf.PdfWriter;
import java.nio.file.*;
import java.util.*;
import org.junit.jupiter.api.Test;

class RenderTest {
  @Test
  void render() throws Exception {
    for (Paper p : List.of(Paper.A4, Paper.LETTER)) {
      List<Page> all = new ArrayList<>();
      var l = TextPageSamples.full(Side.LEFT, p, LengthUnit.MM);
      var info = TextPageSamples.info(LengthUnit.MM, List.of());
      all.addAll(CautionPage.pages(l.job().print(), info));
      all.addAll(FindingsPages.pages(l, info));
      all.addAll(StepsPage.pages(l, info));
      all.addAll(CaliperPage.pages(l, info));
      var two = TextPageSamples.longInfo(TextPageSamples.stops(2));
      all.addAll(CautionPage.pages(l.job().print(), two));
      var e = TextPageSamples.eight(Side.RIGHT, p, true);
      all.addAll(CaliperPage.pages(e, two));
      all.addAll(StepsPage.pages(e, two));
      all.addAll(FindingsPages.pages(TextPageSamples.with(e, TextPageSamples.findings(12)), two));
      all.addAll(
          CautionPage.pages(l.job().print(), TextPageSamples.longInfo(TextPageSamples.stops(9))));
      Files.write(Path.of("target/" + p.word() + ".pdf"), PdfWriter.write("x", all));
      System.err.println(p + " " + all.stream().map(Page::fileStem).toList());
    }
  }
}
