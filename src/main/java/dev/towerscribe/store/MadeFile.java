package dev.towerscribe.store;

import dev.towerscribe.drawing.Page;
import dev.towerscribe.geometry.FlatSolid;
import dev.towerscribe.geometry.Vec2;
import dev.towerscribe.writer.dxf.DxfProof;
import dev.towerscribe.writer.dxf.DxfVersion;
import dev.towerscribe.writer.dxf.DxfWriter;
import dev.towerscribe.writer.pdf.PdfProof;
import dev.towerscribe.writer.pdf.PdfWriter;
import dev.towerscribe.writer.step.PartName;
import dev.towerscribe.writer.step.StepProof;
import dev.towerscribe.writer.step.StepWriter;
import dev.towerscribe.writer.svg.SvgProof;
import dev.towerscribe.writer.svg.SvgWriter;
import java.nio.charset.StandardCharsets;
import java.util.ArrayList;
import java.util.List;

/**
 * A file made in memory and read back. What does not show what it was made from has mismatches, and
 * nothing in this package writes such a file.
 */
public final class MadeFile {
  private final byte[] bytes;
  private final List<String> mismatches;

  private MadeFile(byte[] bytes, List<String> mismatches) {
    this.bytes = bytes;
    this.mismatches = List.copyOf(mismatches);
  }

  /**
   * A document.
   *
   * @param title its title
   * @param pages at least one
   * @return the PDF
   */
  public static MadeFile pdf(String title, List<Page> pages) {
    return pdf(new PdfWriter(), title, pages);
  }

  /**
   * A document by a writer that was opened beforehand, as opening its font takes a while.
   *
   * @param writer used once
   * @param title its title
   * @param pages at least one
   * @return the PDF
   */
  public static MadeFile pdf(PdfWriter writer, String title, List<Page> pages) {
    byte[] file = writer.finish(title, pages);
    return new MadeFile(file, PdfProof.check(file, pages));
  }

  /**
   * A page by itself.
   *
   * @param page any
   * @return the SVG
   */
  public static MadeFile svg(Page page) {
    byte[] file = SvgWriter.write(page);
    return new MadeFile(file, SvgProof.check(file, page));
  }

  /**
   * A page for machines.
   *
   * @param page any
   * @param version which release of the format
   * @param datum the point of the page that is the file's origin, mm
   * @return the DXF
   */
  public static MadeFile dxf(Page page, DxfVersion version, Vec2 datum) {
    byte[] file = DxfWriter.write(page, version, datum);
    return new MadeFile(file, DxfProof.check(file, page, version, datum));
  }

  /**
   * A solid.
   *
   * @param solid any
   * @param name what the file says of it
   * @return the STEP file
   */
  public static MadeFile step(FlatSolid solid, PartName name) {
    byte[] file = StepWriter.write(solid, name);
    return new MadeFile(file, StepProof.check(file, solid, name));
  }

  /**
   * Words or data, which have nothing to be compared with.
   *
   * @param text the content
   * @return its UTF-8
   */
  public static MadeFile text(String text) {
    return new MadeFile(text.getBytes(StandardCharsets.UTF_8), List.of());
  }

  /** What it fails to show; empty if it may be written. */
  List<String> mismatches() {
    return mismatches;
  }

  /** Its content, proved or not. */
  byte[] bytes() {
    return bytes;
  }

  /**
   * Its content, to be written.
   *
   * @return bytes
   * @throws Refused if it does not show what it was made from
   */
  byte[] proved() throws Refused {
    refuse(mismatches);
    return bytes;
  }

  /** A sheet that does not show what was laid out must not exist. */
  static void refuse(List<String> mismatches) throws Refused {
    if (!mismatches.isEmpty()) {
      List<String> lines = new ArrayList<>();
      lines.add("a finished sheet does not match the layout, so nothing was written");
      lines.addAll(mismatches);
      throw new Refused(Refused.Why.UNPROVED, lines);
    }
  }
}
