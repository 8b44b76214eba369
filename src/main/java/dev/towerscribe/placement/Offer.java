package dev.towerscribe.placement;

import dev.towerscribe.model.Mount;
import dev.towerscribe.quantity.Angle;
import java.util.Optional;

/**
 * A placement worth choosing, with what it gives. Every figure is that of the job with this mount,
 * laid out and aligned.
 *
 * @param name what it is best at
 * @param mount where the plates go
 * @param caster the lesser of both sides, at the setting
 * @param camber the more negative of both sides, at the setting, knuckle bolt as measured
 * @param bumpSteer the greater peak change of toe of both sides over the travel; absent for an
 *     estimate
 * @param metalRemovedMm2 metal taken from both openings and all brackets
 * @param edgeSlackMm what is left at the tightest place before a hole, washer or nut comes too near
 *     an edge, a landmark or a keep-out
 * @param heldBackBy what stands in the way of more caster, in words
 */
public record Offer(
    String name,
    Mount mount,
    Angle caster,
    Angle camber,
    Optional<Angle> bumpSteer,
    double metalRemovedMm2,
    double edgeSlackMm,
    String heldBackBy) {}
