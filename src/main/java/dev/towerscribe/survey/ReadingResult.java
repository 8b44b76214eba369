package dev.towerscribe.survey;

/**
 * How an entry of readings came out.
 *
 * @param id names it among all of the survey
 * @param words what it is
 * @param count how many readings it has
 * @param readMm their mean, mm
 * @param computedMm what the result makes of it, mm
 * @param redundancy the share of a slip in it that the other readings would show, 0 to 1
 * @param checked whether that is enough to tell anything
 * @param deviations how far it lies from what all the others make of it, in standard deviations of
 *     that difference, positive when it is more; 0 if not checked
 * @param slipMm the smallest slip that would be found four times in five, mm; 0 if not checked
 */
public record ReadingResult(
    String id,
    String words,
    int count,
    double readMm,
    double computedMm,
    double redundancy,
    boolean checked,
    double deviations,
    double slipMm) {}
