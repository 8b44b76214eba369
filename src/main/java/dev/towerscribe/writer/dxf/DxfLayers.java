package dev.towerscribe.writer.dxf;

import dev.towerscribe.drawing.Layer;
import java.util.Locale;

/** Names and colours of layers. */
final class DxfLayers {
  private DxfLayers() {}

  /** A name that release 12 allows: capitals, digits and hyphens, at most 31 of them. */
  static String name(Layer layer) {
    return layer.id().toUpperCase(Locale.ROOT);
  }

  /**
   * A number of the format's fixed set of colours (from memory: 1 red, 2 yellow, 3 green, 4 cyan, 5
   * blue, 6 magenta, 7 black or white against the ground, 8 and 9 greys, then tens by hue). No two
   * layers share one, and all can be seen on a dark and on a light ground; the name carries the
   * meaning.
   */
  static int colour(Layer layer) {
    return switch (layer) {
      case WASTE -> 9;
      case PLATE -> 3;
      case LAND -> 94;
      case MARK -> 42;
      case OPENING -> 34;
      case KEEP_OUTS -> 240;
      case BRACKETS -> 190;
      case CENTRE_LINES -> 140;
      case LANDMARKS -> 130;
      case ROUGH_CUT -> 30;
      case FINAL_CUT -> 1;
      case STARTER_HOLES -> 5;
      case NOTCH -> 6;
      case HOLES -> 150;
      case CUTOUTS -> 4;
      case RECESSES -> 170;
      case HIDDEN -> 8;
      case OTHER_VIEWS -> 22;
      case DIMENSIONS -> 84;
      case FRAME -> 252;
      case CHECK_BARS -> 200;
      case NOTES -> 7;
    };
  }
}
