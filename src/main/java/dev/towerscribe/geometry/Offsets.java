package dev.towerscribe.geometry;

final class Offsets {
  private Offsets() {}

  static Region inset(Region region, double mm) {
    throw new UnsupportedOperationException();
  }

  static Region grown(Region region, double mm) {
    throw new UnsupportedOperationException();
  }
}
