package dev.towerscribe.writer.svg;

/** A file is no SVG, or uses a part of SVG that the proof does not follow. */
final class SvgUnreadable extends Exception {
  private static final long serialVersionUID = 1L;

  SvgUnreadable(String message) {
    super(message);
  }
}
