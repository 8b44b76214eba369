package dev.towerscribe.sheet.shop;

import dev.towerscribe.drawing.Item;
import dev.towerscribe.geometry.Box;
import dev.towerscribe.geometry.Vec2;
import dev.towerscribe.part.Part;
import dev.towerscribe.sheet.text.Fragment;
import dev.towerscribe.sheet.text.Fragments;
import dev.towerscribe.sheet.text.NoRoomException;
import dev.towerscribe.sheet.text.TextStyle;
import java.util.ArrayList;
import java.util.List;

/**
 * The part of the other hand, small, with the names of its holes, beside the words that say what it
 * is.
 *
 * @param part that part, already mirrored
 * @param words heading and remarks
 * @param widthMm room across
 */
record OtherHand(Part part, List<String> words, double widthMm) implements Fragment {
  private static final double PICTURE_MM = 48.0;

  OtherHand {
    words = List.copyOf(words);
  }

  @Override
  public double heightMm() {
    return PICTURE_MM + 4;
  }

  @Override
  public void draw(double leftMm, double topMm, List<Item> out) {
    Box b = part.solid().outline().bounds();
    double factor = PICTURE_MM / Math.max(b.width(), b.height());
    Vec2 middle = new Vec2(leftMm + PICTURE_MM / 2 + 6, topMm - PICTURE_MM / 2 - 2);
    ViewPlacing at = new ViewPlacing(middle.minus(b.centre().times(factor)), factor);
    List<Item> picture = new ArrayList<>();
    PartPlan.drawAside(part.solid(), at, picture);
    List<Item> named = new ArrayList<>(picture);
    try {
      HoleNames.add(part.features(), at, named);
      picture = named;
    } catch (NoRoomException e) {
      // Too many holes for a picture of this size: it still shows which hand is meant, and the
      // names stand in the view and the table.
    }
    out.addAll(picture);
    double x = leftMm + PICTURE_MM + 16;
    double y = topMm - 6;
    double cap = TextStyle.HEADING;
    for (String paragraph : words) {
      for (Fragment line : Fragments.lines(paragraph, cap, leftMm + widthMm - x, 0)) {
        line.draw(x, y, out);
        y -= line.heightMm();
      }
      y -= 1.5;
      cap = TextStyle.BODY;
    }
  }
}
