package dev.towerscribe.sheet.tower;

import dev.towerscribe.drawing.Ink;
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

  static void draw(List<FullScaleSheet.Join> joins, Vec2 origin, Box window, SheetLines lines) {
    LabelPlacer placer = lines.placer();
    for (FullScaleSheet.Join join : joins) {
      Vec2 at = origin.plus(join.at());
      if (!window.contains(Box.around(at, ARM_MM))) {
        continue;
      }
      Vec2 level = new Vec2(ARM_MM, 0);
      Vec2 upright = new Vec2(0, ARM_MM);
      lines.on(Layer.CENTRE_LINES).cross(at, ARM_MM, Pen.OUTLINE);
      placer.keepClear(at.minus(level), at.plus(level));
      placer.keepClear(at.minus(upright), at.plus(upright));
      Vec2 aside = new Vec2(DIAMOND_MM, 0);
      Vec2 up = new Vec2(0, DIAMOND_MM);
      List<Vec2> diamond = List.of(at.plus(aside), at.plus(up), at.minus(aside), at.minus(up));
      lines.on(Layer.CENTRE_LINES).polygon(diamond, Pen.OUTLINE, Ink.NONE);
      placer.keepClear(diamond, true);
      TextBlock block = TextBlock.of(CAP_MM, join.name());
      placer.place(LabelCandidates.around(block, at, DIAMOND_MM, Vec2.ZERO));
    }
  }
}
