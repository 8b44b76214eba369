package dev.towerscribe.model;

import dev.towerscribe.quantity.Require;
import java.util.Optional;

/**
 * What a machinist needs to know of a plate beside its outline, bolts and slot. Frames and faces
 * are those of {@link Plate}.
 *
 * @param material what it is made of
 * @param densityGPerCm3 density of that, for the mass alone
 * @param finish what is done to it after cutting
 * @param edgeBreakMm size of the broken edges
 * @param general class of the tolerances of sizes that have none of their own
 * @param slotWidthMm width of the slot; empty for the default, see {@link Plate#slotWidthMm()}
 * @param slotEnds how the slot ends
 * @param slotCornerMm inside corner radius of square slot ends
 * @param indexHoles holes for the pins that hold a setting, if there are any
 * @param bearingBore seat of the bearing, if the drawing has it
 * @param slider the moving part that carries the bearing, as far as the job says it
 * @param fastening what holds the bolts
 */
public record PlateMake(
    Stated<String> material,
    Stated<Double> densityGPerCm3,
    Stated<String> finish,
    Stated<Double> edgeBreakMm,
    Stated<GeneralTolerance> general,
    Optional<Double> slotWidthMm,
    Stated<SlotEnds> slotEnds,
    Stated<Double> slotCornerMm,
    Optional<IndexHoles> indexHoles,
    Optional<BearingBore> bearingBore,
    Optional<SliderSize> slider,
    Stated<Fastening> fastening) {
  /** Density of steel in g/cm3, to three digits: common practice, no source. */
  public static final double STEEL_G_PER_CM3 = 7.85;

  /** What holds where a job says nothing. All of it is our own choice, and marked assumed. */
  public static final PlateMake ASSUMED =
      new PlateMake(
          Stated.assumed("structural steel, 235 MPa or better"),
          Stated.assumed(STEEL_G_PER_CM3),
          Stated.assumed("deburr, degrease, paint"),
          Stated.assumed(0.5),
          Stated.assumed(GeneralTolerance.MEDIUM),
          Optional.empty(),
          Stated.assumed(SlotEnds.ROUND),
          Stated.assumed(3.0),
          Optional.empty(),
          Optional.empty(),
          Optional.empty(),
          Stated.assumed(Fastening.FLOATING));

  /** Checks the figures. */
  public PlateMake {
    Require.positive("density", densityGPerCm3.value());
    Require.notNegative("edge break", edgeBreakMm.value());
    Require.notNegative("slot corner", slotCornerMm.value());
    slotWidthMm.ifPresent(w -> Require.positive("slot width", w));
    if (slider.isPresent() && bearingBore.isEmpty()) {
      throw new IllegalArgumentException("a slider carries a bearing: it needs a bearing bore");
    }
  }

  /**
   * Pairs of round holes, one pair for each index of the slot, at (bearing x + index, +-offset).
   *
   * @param diameterMm their size
   * @param offsetMm distance of each from the slot's centre line, positive
   * @param fit their tolerance
   */
  public record IndexHoles(double diameterMm, double offsetMm, Stated<HoleFit> fit) {
    /** Checks the figures. */
    public IndexHoles {
      Require.positive("index hole", diameterMm);
      Require.positive("index hole offset", offsetMm);
    }
  }

  /**
   * The bearing's seat: in the plate where the slot has no length, else in the slider.
   *
   * @param diameterMm its size
   * @param fit its tolerance
   */
  public record BearingBore(double diameterMm, Stated<HoleFit> fit) {
    /** Checks the figure. */
    public BearingBore {
      Require.positive("bearing bore", diameterMm);
    }
  }

  /**
   * What a job says of the slider; what it leaves out is derived in {@link Slider}.
   *
   * @param lengthMm along the slot
   * @param widthMm across it
   * @param thicknessMm its thickness
   * @param cornerMm radius of its corners
   */
  public record SliderSize(
      Optional<Double> lengthMm,
      Optional<Double> widthMm,
      Optional<Double> thicknessMm,
      Optional<Double> cornerMm) {
    /** A slider of which nothing is said. */
    public static final SliderSize UNSAID =
        new SliderSize(Optional.empty(), Optional.empty(), Optional.empty(), Optional.empty());

    /** Checks the figures. */
    public SliderSize {
      lengthMm.ifPresent(mm -> Require.positive("slider length", mm));
      widthMm.ifPresent(mm -> Require.positive("slider width", mm));
      thicknessMm.ifPresent(mm -> Require.positive("slider thickness", mm));
      cornerMm.ifPresent(mm -> Require.notNegative("slider corner", mm));
    }
  }
}
