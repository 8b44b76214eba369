package dev.towerscribe.writer.svg;

import dev.towerscribe.drawing.Page;
import dev.towerscribe.drawing.Unreadable;
import dev.towerscribe.quantity.Tolerances;
import java.util.ArrayList;
import java.util.List;

/** Reads a written SVG anew and compares what it finds with what the page must show. */
public final class SvgProof {
  private SvgProof() {}

  /**
   * Proves a file against its page: size in mm, one user unit to the mm, and every proof of the
   * page to within {@link Tolerances#READ_BACK_MM}.
   *
   * @param svg the file
   * @param page what was to be written
   * @return one line for each mismatch; empty if the file is proved
   */
  public static List<String> check(byte[] svg, Page page) {
    List<String> mismatches = new ArrayList<>();
    String where = "page " + page.label();
    try {
      SvgReader.Written reader = SvgReader.read(svg);
      double[] box = reader.viewBox();
      if (off(reader.widthMm(), page.widthMm()) || off(reader.heightMm(), page.heightMm())) {
        mismatches.add(where + ": the width or height is not the paper's");
      }
      if (off(box[0], 0)
          || off(box[1], 0)
          || off(box[2], page.widthMm())
          || off(box[3], page.heightMm())) {
        mismatches.add(where + ": the view box does not make a user unit one mm");
      }
      mismatches.addAll(reader.found().compare(page));
    } catch (Unreadable e) {
      mismatches.add(where + " cannot be read back: " + e.getMessage());
    }
    return mismatches;
  }

  private static boolean off(double found, double expected) {
    return !(Math.abs(found - expected) <= Tolerances.READ_BACK_MM);
  }
}
