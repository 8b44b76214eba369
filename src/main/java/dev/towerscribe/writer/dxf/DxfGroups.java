package dev.towerscribe.writer.dxf;

import dev.towerscribe.geometry.Vec2;
import dev.towerscribe.quantity.Numbers;

/** A DXF's text as it grows: pairs of lines, a group code and its value. */
final class DxfGroups {
  /**
   * Decimals of lengths in mm: two rounded ends of neighbouring edges lie within 1e-10 mm of each
   * other, a tenth of what geometry is computed to.
   */
  private static final int LENGTH_DECIMALS = 10;

  /** Decimals of degrees: 1e-12 degrees at a radius of 10 m are 2e-10 mm. */
  private static final int ANGLE_DECIMALS = 12;

  // Programs for shop machines are at home where lines end so; all others take it too.
  private static final String LINE_END = "\r\n";

  private final StringBuilder text = new StringBuilder(1 << 14);
  private final DxfVersion version;
  private Vec2 datum = Vec2.ZERO;

  DxfGroups(DxfVersion version) {
    this.version = version;
  }

  /** Points given from now on are written as seen from another origin. */
  DxfGroups from(Vec2 origin) {
    datum = origin;
    return this;
  }

  DxfGroups text(int code, String value) {
    String number = Integer.toString(code);
    // Codes stand in a column of three, as the format's own program writes them.
    for (int i = number.length(); i < 3; i++) {
      text.append(' ');
    }
    text.append(number).append(LINE_END).append(value).append(LINE_END);
    return this;
  }

  /** A group that release 12 does not know: written for release 2000 alone. */
  DxfGroups since2000(int code, String value) {
    return version == DxfVersion.R12 ? this : text(code, value);
  }

  DxfGroups whole(int code, int value) {
    return text(code, Integer.toString(value));
  }

  DxfGroups length(int code, double mm) {
    return text(code, withPoint(Numbers.plain(mm, LENGTH_DECIMALS)));
  }

  DxfGroups angle(int code, double radians) {
    return text(code, angleText(radians));
  }

  /** A point: x, y, and a height of zero. */
  DxfGroups point(int code, Vec2 p) {
    return point2(code, p).length(code + 20, 0);
  }

  /** A point of x and y alone. */
  DxfGroups point2(int code, Vec2 p) {
    return length(code, p.x() - datum.x()).length(code + 10, p.y() - datum.y());
  }

  DxfGroups beginSection(String name) {
    return text(0, "SECTION").text(2, name);
  }

  DxfGroups endSection() {
    return text(0, "ENDSEC");
  }

  /** A direction as it stands in the file, degrees from 0 up to but not 360. */
  static String angleText(double radians) {
    double degrees = Math.toDegrees(radians) % 360;
    String written = Numbers.plain(degrees < 0 ? degrees + 360 : degrees, ANGLE_DECIMALS);
    return withPoint(written.equals("360") ? "0" : written);
  }

  /** A number without a point would be whole to some readers. */
  private static String withPoint(String number) {
    return number.indexOf('.') < 0 ? number + ".0" : number;
  }

  @Override
  public String toString() {
    return text.toString();
  }
}
