package dev.towerscribe.writer.svg;

import dev.towerscribe.drawing.Page;
import dev.towerscribe.writer.WriterContract;
import java.util.List;

class SvgWriterProperties extends WriterContract {
  @Override
  protected byte[] write(Page page) {
    return SvgWriter.write(page);
  }

  @Override
  protected List<String> check(byte[] file, Page page) {
    return SvgProof.check(file, page);
  }
}
