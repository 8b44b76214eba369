package dev.towerscribe.sheet.tower;

import dev.towerscribe.drawing.Ink;
import dev.towerscribe.drawing.Item;
import dev.towerscribe.drawing.LabelCandidates;
import dev.towerscribe.drawing.LabelPlacer;
import dev.towerscribe.drawing.Layer;
import dev.towerscribe.drawing.Pen;
import dev.towerscribe.drawing.TextBlock;
import dev.towerscribe.geometry.Box;
import dev.towerscribe.geometry.Vec2;
import java.util.List;

/** Crosses in diamonds, unlike any hole, that neighbouring tiles share. */
final class JoinCrosses {
  private static final double ARM_MM = 5;
  private static final double DIAMOND_MM = 3;
  private static final double CAP_MM = 3.5;

  private JoinCrosses() {}

  static void draw(
      List<FullScaleSheet.Join> joins,
      Vec2 origin,
      Box window,
      List<Item> items,
      LabelPlacer placer) {
    for (FullScaleSheet.Join join : joins) {
      Vec2 at = origin.plus(join.at());
      if (!window.contains(Box.around(at, ARM_MM))) {
        continue;
      }
      for (Vec2 arm : List.of(new Vec2(ARM_MM, 0), new Vec2(0, ARM_MM))) {
        items.add(new Item.Line(Layer.CENTRE_LINES, at.minus(arm), at.plus(arm), Pen.OUTLINE));
        placer.keepClear(List.of(at.minus(arm), at.plus(arm)), false);
      }
      List<Vec2> diamond =
          List.of(
              at.plus(new Vec2(DIAMOND_MM, 0)),
              at.plus(new Vec2(0, DIAMOND_MM)),
              at.minus(new Vec2(DIAMOND_MM, 0)),
              at.minus(new Vec2(0, DIAMOND_MM)));
      items.add(new Item.Polyline(Layer.CENTRE_LINES, diamond, true, Pen.OUTLINE, Ink.NONE));
      placer.keepClear(diamond, true);
      TextBlock block = TextBlock.of(CAP_MM, join.name());
      placer.place(LabelCandidates.around(block, at, DIAMOND_MM, Vec2.ZERO));
    }
  }
}
