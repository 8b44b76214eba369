package dev.towerscribe.writer.dxf;

/** A file is no DXF, or uses a part of the format that the proof does not follow. */
final class DxfUnreadable extends Exception {
  private static final long serialVersionUID = 1L;

  DxfUnreadable(String message) {
    super(message);
  }
}
