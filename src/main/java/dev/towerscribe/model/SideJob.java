package dev.towerscribe.model;

import dev.towerscribe.geometry.Vec2;
import java.util.Optional;

/**
 * Everything about one side of the car, overrides applied.
 *
 * @param side which side
 * @param tower the tower as found
 * @param plate the new top mount
 * @param mount where it goes
 * @param seating how it lies against the tower
 * @param holes how holes are sized and judged
 * @param cut how the opening is cut
 * @param tools what tightens the fasteners
 * @param print how sheets are printed
 * @param strut the strut's points, if measured
 * @param axis the steering axis, if only that was measured
 * @param aims what the owner wants, if said
 */
public record SideJob(
    Side side,
    Tower tower,
    Plate plate,
    Mount mount,
    Seating seating,
    HoleRules holes,
    CutRules cut,
    Tools tools,
    Print print,
    Optional<StrutPoints> strut,
    Optional<MeasuredAxis> axis,
    Optional<Aims> aims) {
  /**
   * The same side on another tower.
   *
   * @param another the tower
   * @return the changed side
   */
  public SideJob with(Tower another) {
    return new SideJob(
        side, another, plate, mount, seating, holes, cut, tools, print, strut, axis, aims);
  }

  /**
   * The same side with another plate.
   *
   * @param another the new top mount
   * @return the changed side
   */
  public SideJob with(Plate another) {
    return new SideJob(
        side, tower, another, mount, seating, holes, cut, tools, print, strut, axis, aims);
  }

  /**
   * The same side with its plate elsewhere.
   *
   * @param elsewhere where it goes
   * @return the changed side
   */
  public SideJob with(Mount elsewhere) {
    return new SideJob(
        side, tower, plate, elsewhere, seating, holes, cut, tools, print, strut, axis, aims);
  }

  /**
   * The same side with its plate lying otherwise.
   *
   * @param otherwise how it lies against the tower
   * @return the changed side
   */
  public SideJob with(Seating otherwise) {
    return new SideJob(
        side, tower, plate, mount, otherwise, holes, cut, tools, print, strut, axis, aims);
  }

  /**
   * The same side with its opening cut otherwise.
   *
   * @param otherwise how it is cut
   * @return the changed side
   */
  public SideJob with(CutRules otherwise) {
    return new SideJob(
        side, tower, plate, mount, seating, holes, otherwise, tools, print, strut, axis, aims);
  }

  /**
   * The same side printed otherwise.
   *
   * @param otherwise how
   * @return the changed side
   */
  public SideJob with(Print otherwise) {
    return new SideJob(
        side, tower, plate, mount, seating, holes, cut, tools, otherwise, strut, axis, aims);
  }

  /**
   * The same side with another strut measured, or none.
   *
   * @param another the strut's points, if measured
   * @return the changed side
   */
  public SideJob withStrut(Optional<StrutPoints> another) {
    return new SideJob(
        side, tower, plate, mount, seating, holes, cut, tools, print, another, axis, aims);
  }

  /**
   * The same side with another steering axis measured, or none.
   *
   * @param another the axis, if only that was measured
   * @return the changed side
   */
  public SideJob withAxis(Optional<MeasuredAxis> another) {
    return new SideJob(
        side, tower, plate, mount, seating, holes, cut, tools, print, strut, another, aims);
  }

  /**
   * The same side wanted otherwise.
   *
   * @param wanted what the owner wants, if said
   * @return the changed side
   */
  public SideJob withAims(Optional<Aims> wanted) {
    return new SideJob(
        side, tower, plate, mount, seating, holes, cut, tools, print, strut, axis, wanted);
  }

  /**
   * The bearing's centre at a setting: the plate's centre and (s0 + setting) along the slot.
   *
   * @param settingMm where along the slot
   * @return plan point
   */
  public Vec2 bearing(double settingMm) {
    double along = plate.bearingXMm() + settingMm;
    return new Vec2(
        -mount.rearwardMm() - along * mount.rotation().sin(),
        mount.inboardMm() + along * mount.rotation().cos());
  }

  /**
   * How far the bearing's centre lies above the tower plane: the plate's own figure, and how far
   * the plate lies off a flat top.
   *
   * @return mm along the tower's normal
   */
  public double bearingHeightMm() {
    return plate.bearingHeightMm() + seating.restMm();
  }

  /**
   * How far the bearing's centre lies above the rim of the finished opening, where what moves with
   * it passes the metal.
   *
   * @return mm along the tower's normal
   */
  public double bearingOverRimMm() {
    return bearingHeightMm() - seating.rimMm();
  }
}
