package dev.towerscribe.sheet.tower;

import dev.towerscribe.drawing.Ink;
import dev.towerscribe.drawing.Item;
import dev.towerscribe.drawing.LabelCandidates;
import dev.towerscribe.drawing.LabelPlacer;
import dev.towerscribe.drawing.LabelPlacer.Candidate;
import dev.towerscribe.drawing.LabelPlacer.Further;
import dev.towerscribe.drawing.Layer;
import dev.towerscribe.drawing.LayerPen;
import dev.towerscribe.drawing.Pen;
import dev.towerscribe.drawing.Proof;
import dev.towerscribe.drawing.TextBlock;
import dev.towerscribe.geometry.Box;
import dev.towerscribe.geometry.Contour;
import dev.towerscribe.geometry.Region;
import dev.towerscribe.geometry.Vec2;
import java.util.ArrayList;
import java.util.List;

/**
 * One window of a 1:1 sheet: draws its lines, tells the placer of labels which ones no label may
 * cross and what it costs to cross the others, and keeps account of names that found no room. All
 * page mm.
 */
final class SheetCanvas {
  /** Sag of chords that stand for curves when labels are placed. */
  private static final double SAG_MM = 0.05;

  /** What a note that may be left out is worth; dearer places are not taken. */
  static final double WORTH = 45;

  /** How much less a smaller name is liked. */
  static final double SMALLER_COST = 4;

  private static final double JOIN_ARM_MM = 5;
  private static final double DIAMOND_MM = 3;
  private static final double JOIN_CAP_MM = 3.5;

  private final Box window;
  private final LabelPlacer placer;
  private final List<Item> items = new ArrayList<>();
  private final List<String> unplaced = new ArrayList<>();

  SheetCanvas(Box window) {
    this.window = window;
    this.placer = new LabelPlacer(window.grown(-TextBlock.CLEARED_MM));
  }

  /** What shows. */
  Box window() {
    return window;
  }

  /** Who places the labels. */
  LabelPlacer placer() {
    return placer;
  }

  /** A pen for lines that labels need not know of. */
  LayerPen on(Layer layer) {
    return new LayerPen(layer, items);
  }

  /** Boundaries that labels had better not cross. */
  void outline(Layer layer, Region region, Pen pen, double costPerMm) {
    on(layer).outline(region, pen);
    region.contours().forEach(c -> placer.avoid(c.flattened(SAG_MM), true, costPerMm));
  }

  /** Boundaries that labels may not cross; drawn by whoever calls this. */
  void bar(Region region) {
    region.contours().forEach(c -> placer.keepClear(c.flattened(SAG_MM), true));
  }

  /** A circle that labels had better not cross. */
  void ring(Layer layer, Vec2 at, double radiusMm, Pen pen, double costPerMm) {
    on(layer).circle(at, radiusMm, pen);
    placer.avoid(Contour.circle(at, radiusMm).flattened(SAG_MM), true, costPerMm);
  }

  /** A cross that labels may not cover. */
  void cross(Layer layer, Vec2 at, double reachMm, Pen pen) {
    on(layer).cross(at, reachMm, pen);
    for (Vec2 arm : List.of(new Vec2(reachMm, 0), new Vec2(0, reachMm))) {
      placer.keepClear(at.minus(arm), at.plus(arm));
    }
  }

  /** An open line that labels had better not cross. */
  void path(List<Vec2> path, Pen pen, double costPerMm) {
    on(Layer.CENTRE_LINES).path(path, pen);
    placer.avoid(path, false, costPerMm);
  }

  /** The line along the car, from end to end of the window, if it runs through that at all. */
  void foreAft(double x, double costPerMm) {
    if (x > window.minX() && x < window.maxX()) {
      Vec2 low = new Vec2(x, window.minY());
      Vec2 high = new Vec2(x, window.maxY());
      on(Layer.CENTRE_LINES).line(low, high, Pen.OUTLINE);
      placer.avoid(List.of(low, high), false, costPerMm);
    }
  }

  /** Crosses in diamonds, unlike any hole, that neighbouring tiles share, with their names. */
  void joins(List<FullScaleSheet.Join> joins, Vec2 origin) {
    for (FullScaleSheet.Join join : joins) {
      Vec2 at = origin.plus(join.at());
      if (!window.contains(Box.around(at, JOIN_ARM_MM))) {
        continue;
      }
      cross(Layer.CENTRE_LINES, at, JOIN_ARM_MM, Pen.OUTLINE);
      Vec2 aside = new Vec2(DIAMOND_MM, 0);
      Vec2 up = new Vec2(0, DIAMOND_MM);
      List<Vec2> diamond = List.of(at.plus(aside), at.plus(up), at.minus(aside), at.minus(up));
      on(Layer.CENTRE_LINES).polygon(diamond, Pen.OUTLINE, Ink.NONE);
      placer.keepClear(diamond, true);
      TextBlock block = TextBlock.of(JOIN_CAP_MM, join.name());
      placer.place(LabelCandidates.around(block, at, DIAMOND_MM, Vec2.ZERO));
    }
  }

  /** Places a note that may be left out; whether it found room. */
  boolean soft(List<Candidate> candidates) {
    return placer.place(candidates, WORTH).isPresent();
  }

  /** Places where liked, else anywhere with a leader to one of the points, smaller if need be. */
  void must(String what, List<Candidate> liked, List<TextBlock> blocks, List<Vec2> pointers) {
    must(what, liked, Further.NONE, blocks, pointers);
  }

  /** The same with places that are less liked than the liked ones, but more than any other. */
  void must(
      String what,
      List<Candidate> liked,
      Further lessLiked,
      List<TextBlock> blocks,
      List<Vec2> pointers) {
    if (placer.place(liked, WORTH, lessLiked).isPresent()) {
      return;
    }
    Further anywhere =
        new Further(
            Math.min(lessLiked.from(), LabelCandidates.ANYWHERE_COST),
            dearest -> {
              List<Candidate> all = new ArrayList<>(lessLiked.made().apply(dearest));
              for (int i = 0; i < blocks.size(); i++) {
                all.addAll(dearer(anywhere(blocks.get(i), pointers, dearest), SMALLER_COST * i));
              }
              return all;
            });
    must(what, liked, anywhere);
  }

  /** Places a label whatever the place costs; one that finds none at all is told of by its name. */
  void must(String what, List<Candidate> liked, Further further) {
    if (placer.place(liked, Double.POSITIVE_INFINITY, further).isEmpty()) {
      unplaced.add(what);
    }
  }

  /** Places all over the window with a leader to one of several points. */
  List<Candidate> anywhere(TextBlock block, List<Vec2> ends, double dearest) {
    return ends.stream()
        .flatMap(end -> LabelCandidates.anywhere(block, window, end, dearest).stream())
        .toList();
  }

  /** Places along a region's boundaries. */
  static List<Candidate> along(TextBlock block, Region region, boolean outside, double... gapsMm) {
    return region.contours().stream()
        .flatMap(c -> LabelCandidates.along(block, c, outside, gapsMm).stream())
        .toList();
  }

  static List<Candidate> dearer(List<Candidate> candidates, double more) {
    return candidates.stream().map(c -> c.dearerBy(more)).toList();
  }

  /** Points along a region's boundaries, so far apart. */
  static List<Vec2> along(Region region, double stepMm) {
    return region.contours().stream()
        .flatMap(c -> LabelCandidates.even(c.flattened(SAG_MM), true, stepMm).stream())
        .toList();
  }

  /** All that was drawn and named. */
  FullScaleSheet.Painted painted(List<Proof> proofs) {
    items.addAll(placer.items());
    return new FullScaleSheet.Painted(items, proofs, unplaced);
  }
}
