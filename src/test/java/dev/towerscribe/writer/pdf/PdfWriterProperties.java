package dev.towerscribe.writer.pdf;

import dev.towerscribe.drawing.Page;
import dev.towerscribe.writer.WriterContract;
import java.util.List;

class PdfWriterProperties extends WriterContract {
  @Override
  protected byte[] write(Page page) {
    return PdfWriter.write("Sample", List.of(page));
  }

  @Override
  protected List<String> check(byte[] file, Page page) {
    return PdfProof.check(file, List.of(page));
  }
}
