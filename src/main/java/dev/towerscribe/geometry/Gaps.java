package dev.towerscribe.geometry;

import java.util.List;

final class Gaps {
  private Gaps() {}

  static Gap between(List<Contour> a, List<Contour> b) {
    throw new UnsupportedOperationException();
  }

  static double marginAround(Region outer, Region inner) {
    throw new UnsupportedOperationException();
  }
}
