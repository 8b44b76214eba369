package dev.towerscribe.sheet.tower;

import dev.towerscribe.drawing.Ink;
import dev.towerscribe.drawing.Item;
import dev.towerscribe.drawing.Layer;
import dev.towerscribe.drawing.LayerPen;
import dev.towerscribe.drawing.Lettering;
import dev.towerscribe.drawing.Pen;
import dev.towerscribe.drawing.Proof;
import dev.towerscribe.drawing.TextBlock;
import dev.towerscribe.geometry.Vec2;
import dev.towerscribe.quantity.Angle;
import dev.towerscribe.quantity.LengthUnit;
import dev.towerscribe.quantity.Lengths;
import dev.towerscribe.quantity.Lengths.Fineness;
import dev.towerscribe.quantity.Numbers;
import java.util.ArrayList;
import java.util.List;

/**
 * Two bars to measure a print by, one across and one along, that share a corner. The way between
 * their far ends shows whether the print is square; over 100 mm bars it is 141.4 mm, within reach
 * of 150 mm calipers.
 *
 * @param corner where both begin, page mm
 * @param lengthMm their length
 * @param units names the length
 */
record CheckBars(Vec2 corner, double lengthMm, LengthUnit units) {
  static final double TICK_MM = 2.5;

  /** Bars of 100 mm, or of 4 in for a job in inches. */
  static CheckBars of(Vec2 corner, LengthUnit units) {
    return new CheckBars(corner, units == LengthUnit.INCH ? units.toMm(4) : 100.0, units);
  }

  Vec2 farAcross() {
    return corner.plus(new Vec2(lengthMm, 0));
  }

  Vec2 farAlong() {
    return corner.plus(new Vec2(0, lengthMm));
  }

  String name() {
    String mm = Numbers.plain(lengthMm, 1) + " mm";
    return units == LengthUnit.INCH
        ? "%s in (%s)".formatted(Numbers.plain(units.fromMm(lengthMm), 2), mm)
        : mm;
  }

  String label() {
    return name() + ": measure me before you tape this";
  }

  /** The length between the far ends, in words. */
  String diagonal() {
    return Lengths.in(units).withMm(lengthMm * Math.sqrt(2), Fineness.PLACE);
  }

  /** Bars, ticks and crosses. */
  void draw(List<Item> items) {
    LayerPen pen = new LayerPen(Layer.CHECK_BARS, items);
    for (Vec2 far : List.of(farAcross(), farAlong())) {
      pen.line(corner, far, Pen.OUTLINE);
      Vec2 tick = far.minus(corner).unit().quarterTurn().times(TICK_MM);
      pen.line(corner.minus(tick), corner.plus(tick), Pen.FINE);
    }
    pen.cross(farAcross(), TICK_MM, Pen.FINE);
    pen.cross(farAlong(), TICK_MM, Pen.FINE);
  }

  /** The bars and the arms of the crosses, which fix the diagonal. */
  List<Proof> proofs() {
    List<Proof> proofs = new ArrayList<>();
    proofs.add(new Proof.Bar("bar across", corner, farAcross()));
    proofs.add(new Proof.Bar("bar along", corner, farAlong()));
    for (Vec2 arm : List.of(new Vec2(TICK_MM, 0), new Vec2(0, TICK_MM))) {
      proofs.add(arm("across", farAcross(), arm));
      proofs.add(arm("along", farAlong(), arm));
    }
    return proofs;
  }

  /** An arm of a cross, from end to end. */
  static Proof arm(String which, Vec2 cross, Vec2 arm) {
    return new Proof.Bar("diagonal, cross " + which, cross.minus(arm), cross.plus(arm));
  }

  private TextBlock lettered() {
    return TextBlock.of(Lettering.capHeightToFit(label(), lengthMm - 4, 3.5), label());
  }

  /** The label of the upright bar, at its left. */
  List<Item> labelAlong() {
    TextBlock block = lettered();
    Vec2 at = corner.plus(new Vec2(-1.2 - block.heightMm() / 2, lengthMm / 2));
    return block.drawn(at, Angle.ofDegrees(90), false, Ink.BLACK);
  }

  /** The label of the level bar, below it; it may break a line that runs on beneath. */
  List<Item> labelAcross() {
    TextBlock block = lettered();
    Vec2 at = corner.plus(new Vec2(lengthMm / 2, -1.6 - block.heightMm() / 2));
    return block.drawn(at, Angle.ZERO, true, Ink.BLACK);
  }
}
