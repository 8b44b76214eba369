package dev.towerscribe.layout;

/**
 * The distance between two holes as calipers take it.
 *
 * @param from one hole's name
 * @param to the other's
 * @param centresMm centre to centre, in plan
 * @param insideMm between the near edges
 * @param outsideMm across the far edges
 * @param toleranceMm by how much the centre distance may be off, either way, before the two bolts
 *     bind: the sum of both radial clearances
 */
public record Span(
    String from,
    String to,
    double centresMm,
    double insideMm,
    double outsideMm,
    double toleranceMm) {}
