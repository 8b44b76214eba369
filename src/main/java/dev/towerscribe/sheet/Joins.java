package dev.towerscribe.sheet;

import dev.towerscribe.drawing.Item;
import dev.towerscribe.drawing.Layer;
import dev.towerscribe.drawing.Pen;
import dev.towerscribe.geometry.Box;
import dev.towerscribe.geometry.Vec2;
import java.util.List;

/** Crosses that neighbouring tiles share. */
final class Joins {
  private static final double ARM_MM = 5;
  private static final double CAP_MM = 3.5;

  private Joins() {}

  static void draw(
      List<Sheet.Join> joins, Vec2 origin, Box window, List<Item> items, LabelPlacer placer) {
    for (Sheet.Join join : joins) {
      Vec2 at = origin.plus(join.at());
      if (!window.contains(Box.around(at, ARM_MM))) {
        continue;
      }
      for (Vec2 arm : List.of(new Vec2(ARM_MM, 0), new Vec2(0, ARM_MM))) {
        items.add(new Item.Line(Layer.CENTRE_LINES, at.minus(arm), at.plus(arm), Pen.OUTLINE));
        placer.keepClear(List.of(at.minus(arm), at.plus(arm)), false);
      }
      Block block = Block.of(CAP_MM, join.name());
      placer.place(Candidates.around(block, at, 1.5, Vec2.ZERO));
    }
  }
}
