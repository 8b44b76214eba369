package dev.towerscribe.part;

import dev.towerscribe.geometry.Bore;
import dev.towerscribe.geometry.Contour;
import dev.towerscribe.geometry.Frame2;
import dev.towerscribe.geometry.Recess;
import dev.towerscribe.geometry.Vec2;
import java.util.Optional;

/**
 * One cut-out of a part.
 *
 * @param kind what it is for
 * @param name "A" for a bolt, "1a" and "1b" for the index holes of the first setting, the
 *     landmark's name for a sight hole; names of one kind differ within a part
 * @param centre its middle, part frame; of a slot or a window the middle of the box round it
 * @param diameterMm diameter of a round hole; width of a slot; 0 for a window that is not round
 * @param recess its widening at a face, if it has one
 * @param edge its edge where it is not a round hole
 * @param size tolerance of that diameter or width
 * @param position tolerance of its place, where a bolt must go through
 * @param note a short remark for the hole table, perhaps empty
 * @param assumed true when its size or tolerance was not given by the job
 */
public record Feature(
    FeatureKind kind,
    String name,
    Vec2 centre,
    double diameterMm,
    Optional<Recess> recess,
    Optional<Contour> edge,
    SizeTolerance size,
    Optional<PositionTolerance> position,
    String note,
    boolean assumed) {
  /**
   * A round hole, the same from face to face, where no bolt must go through.
   *
   * @param kind what it is for
   * @param name see {@link #name}
   * @param bore where it is and how large
   * @param size tolerance of its diameter
   * @param note a short remark, perhaps empty
   * @param assumed true when its size or tolerance was not given by the job
   * @return the hole
   */
  static Feature round(
      FeatureKind kind, String name, Bore bore, SizeTolerance size, String note, boolean assumed) {
    return new Feature(
        kind,
        name,
        bore.centre(),
        bore.diameterMm(),
        Optional.empty(),
        Optional.empty(),
        size,
        Optional.empty(),
        note,
        assumed);
  }

  /**
   * The same cut-out of a part that was moved or mirrored; the faces stay what they are.
   *
   * @param frame rigid map of the plane, perhaps a reflection
   * @return mapped feature
   */
  public Feature mapped(Frame2 frame) {
    return new Feature(
        kind,
        name,
        frame.map(centre),
        diameterMm,
        recess,
        edge.map(e -> frame.reflects() ? e.mapped(frame).reversed() : e.mapped(frame)),
        size,
        position,
        note,
        assumed);
  }
}
