package dev.towerscribe.geometry;

import java.util.List;

final class Overlay {
  private Overlay() {}

  static Region intersection(Region a, Region b) {
    throw new UnsupportedOperationException();
  }

  static Region union(Region a, Region b) {
    throw new UnsupportedOperationException();
  }

  static Region minus(Region a, Region b) {
    throw new UnsupportedOperationException();
  }

  static List<Region> parts(Region region) {
    throw new UnsupportedOperationException();
  }
}
