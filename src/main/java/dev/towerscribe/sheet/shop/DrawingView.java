package dev.towerscribe.sheet.shop;

import dev.towerscribe.drawing.DimensionRequest;
import dev.towerscribe.drawing.Item;
import dev.towerscribe.drawing.Proof;
import dev.towerscribe.geometry.Box;
import dev.towerscribe.geometry.Contour;
import java.util.List;

/** One view of what a drawing is about, before a place and a scale are chosen for it. */
interface DrawingView {
  /** Words written by it: "FROM ABOVE". */
  String caption();

  /** How its lengths are written. */
  DrawingLengths sizes();

  /** Whether its (0, 0) is what the part's X and Y are measured from. */
  default boolean hasDatum() {
    return true;
  }

  /** What it covers, true mm. */
  Box bounds();

  /** Room on paper that its dimensions want all round, mm. */
  default double dimensionRoomMm() {
    return sizes().roomMm();
  }

  /** Draws its edges and centre lines. */
  void draw(ViewPlacing at, List<Item> out);

  /** Its outer outlines on paper, which dimensions stand off. */
  default List<Contour> outlines(ViewPlacing at) {
    return List.of(at.contour(Contour.rectangle(bounds())));
  }

  /** Names written inside it; they keep clear of what is drawn already, dimensions too. */
  default void names(ViewPlacing at, List<Item> out) {}

  /** Dimensions that it wants. */
  List<DimensionRequest> wishes(ViewPlacing at);

  /** What must be found in the written file. */
  default List<Proof> proofs(ViewPlacing at) {
    return List.of();
  }
}
