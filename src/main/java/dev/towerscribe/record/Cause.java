package dev.towerscribe.record;

import dev.towerscribe.quantity.Worded;
import java.util.List;

/**
 * What may lie behind a difference, each with one figure to fit. How far that figure may go and
 * still be believed is common practice, no source, except where it says otherwise.
 */
public enum Cause implements Worded {
  /** The car stood otherwise on the bay when it came. */
  RIDE_BEFORE(CauseParameter.RIDE, 25, "measure the ride height on the bay"),
  /** The car stood otherwise on the bay when it left. */
  RIDE_AFTER(CauseParameter.RIDE, 25, "measure the ride height on the bay"),
  /** The car stood otherwise both times. */
  RIDE(CauseParameter.RIDE, 25, "measure the ride height on the bay"),
  /** The bearing is not where the visit says; as far as the slot goes. */
  SETTING(CauseParameter.SETTING, Double.NaN, "look at which mark the bearing is pinned"),
  /** The tie rods were not set after the work. */
  TIE_RODS(CauseParameter.TIE_ROD, 10, "read the toe again and set it by the tie rods"),
  /** The plate is turned. */
  ROTATION(CauseParameter.ROTATION, Math.toRadians(5), "measure the drilled holes"),
  /** The plate is shifted along the car. */
  REARWARD(CauseParameter.REARWARD, 10, "measure the drilled holes"),
  /** The plate is shifted across the car. */
  INBOARD(CauseParameter.INBOARD, 10, "measure the drilled holes"),
  /** The axis was measured off along the car. */
  POINTS_ALONG(
      CauseParameter.TOP_FORWARD, 15, "measure the top pivot and the ball joint along the car"),
  /** The axis was measured off across the car. */
  POINTS_ACROSS(
      CauseParameter.TOP_INBOARD, 15, "measure the top pivot and the ball joint across the car"),
  /** The camber that the job gives is not the one the car had. */
  CAMBER_FOUND(CauseParameter.CAMBER_FOUND, Math.toRadians(1), "look at the job's camber"),
  /**
   * Caster read by a swing of other size or rule than the bay takes it for. Taken from 15 degrees
   * each way read as 20, sin 15 / sin 20 - 1 = -24 %, to 20 read as 15, +32 %; the usual rule
   * "times 1.5" reads 2.6 % high: 3 sin 20 - 1 (computed).
   */
  CASTER_SWING(CauseParameter.CASTER_SCALE, Double.NaN, "ask the bay how it reads caster"),
  /** Subframe not central, before the work and after it; both sides together only. */
  SUBFRAME(CauseParameter.SUBFRAME, 15, "measure the subframe to the body on both sides"),
  /** Subframe moved since the car came; both sides together only. */
  SUBFRAME_SINCE(CauseParameter.SUBFRAME, 15, "measure the subframe to the body on both sides");

  /** What its figure is. */
  public enum Kind {
    /** mm. */
    LENGTH,
    /** Radians. */
    ANGLE,
    /** A share: 0.1 is ten per cent. */
    RATIO
  }

  private static final double SHORT_SWING =
      Math.sin(Math.toRadians(15)) / Math.sin(Math.toRadians(20)) - 1;
  private static final double LONG_SWING =
      Math.sin(Math.toRadians(20)) / Math.sin(Math.toRadians(15)) - 1;

  private final CauseParameter knob;
  private final double most;
  private final String check;

  Cause(CauseParameter knob, double most, String check) {
    this.knob = knob;
    this.most = most;
    this.check = check;
  }

  CauseParameter knob() {
    return knob;
  }

  /**
   * What the cause's figure is.
   *
   * @return its kind
   */
  public Kind kind() {
    return switch (knob) {
      case ROTATION, CAMBER_FOUND -> Kind.ANGLE;
      case CASTER_SCALE -> Kind.RATIO;
      default -> Kind.LENGTH;
    };
  }

  /**
   * What to do to find out.
   *
   * @return a clause without a capital or a full stop
   */
  public String check() {
    return check;
  }

  /** When it is at work. */
  List<ReadingStage> stages() {
    return switch (this) {
      case RIDE_BEFORE -> List.of(ReadingStage.BEFORE);
      case RIDE_AFTER, SETTING, TIE_RODS, ROTATION, REARWARD, INBOARD, SUBFRAME_SINCE ->
          List.of(ReadingStage.AFTER);
      case RIDE, POINTS_ALONG, POINTS_ACROSS, CAMBER_FOUND, CASTER_SWING, SUBFRAME ->
          List.of(ReadingStage.BEFORE, ReadingStage.AFTER);
    };
  }

  /** Whether it acts on both sides at once and oppositely. */
  boolean isAcross() {
    return knob == CauseParameter.SUBFRAME;
  }

  /** Whether it belongs to the work rather than to the model or the reading. */
  boolean isOfTheWork() {
    return switch (this) {
      case SETTING, TIE_RODS, ROTATION, REARWARD, INBOARD -> true;
      default -> false;
    };
  }

  /**
   * The range its figure is plausible in.
   *
   * @param slotBackMm how far the slot goes on below the setting, not positive
   * @param slotOnMm how far above, not negative
   */
  double[] believed(double slotBackMm, double slotOnMm) {
    return switch (this) {
      case SETTING -> new double[] {slotBackMm - PIN_MM, slotOnMm + PIN_MM};
      case CASTER_SWING -> new double[] {SHORT_SWING, LONG_SWING};
      default -> new double[] {-most, most};
    };
  }

  /** A pinned bearing's play, mm; common practice, no source. */
  private static final double PIN_MM = 0.5;
}
