package dev.towerscribe.survey;

import java.util.Optional;

/**
 * What came of one side beside its points.
 *
 * @param tyreRadius loaded radius
 * @param camber angle
 * @param toe angle
 * @param tower its tower, if anything was read on it
 */
public record SideResult(
    Optional<Figure> tyreRadius,
    Optional<Figure> camber,
    Optional<Figure> toe,
    Optional<TowerResult> tower) {}
