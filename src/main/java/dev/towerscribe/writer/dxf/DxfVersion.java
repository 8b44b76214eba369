package dev.towerscribe.writer.dxf;

/**
 * The two forms in which a drawing is written. Source of names and groups: the DXF reference
 * published by the maker of the format, editions for release 12 and for 2000.
 */
public enum DxfVersion {
  /**
   * Release 12, which every program that cuts from a DXF reads. It cannot state its unit: the
   * drawing's own lettering has to say mm, and its bar shows it.
   */
  R12("AC1009"),
  /** Release 2000, which states the unit and the widths of lines. */
  R2000("AC1015");

  private final String acadVersion;

  DxfVersion(String acadVersion) {
    this.acadVersion = acadVersion;
  }

  /**
   * What the header variable $ACADVER says.
   *
   * @return for instance "AC1009"
   */
  public String acadVersion() {
    return acadVersion;
  }
}
