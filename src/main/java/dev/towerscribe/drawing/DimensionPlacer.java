package dev.towerscribe.drawing;

import dev.towerscribe.geometry.Box;
import dev.towerscribe.geometry.Vec2;
import dev.towerscribe.quantity.Tolerances;
import java.util.ArrayList;
import java.util.Collections;
import java.util.Comparator;
import java.util.HashMap;
import java.util.IdentityHashMap;
import java.util.LinkedHashMap;
import java.util.LinkedHashSet;
import java.util.List;
import java.util.Map;
import java.util.Optional;
import java.util.Set;

/**
 * Places dimensions on a page so that no words touch any line or other words, nothing leaves the
 * area, and no leader or dimension line crosses another. What cannot be placed so is given back,
 * never drawn over something. The same requests always give the same page.
 */
public final class DimensionPlacer {
  /** How often those left over may go before the others, in the hope that all find room. */
  private static final int ROUNDS = 4;

  private final DimensionStyle style;

  /**
   * A placer.
   *
   * @param style sizes on paper
   */
  public DimensionPlacer(DimensionStyle style) {
    this.style = style;
  }

  /**
   * What came of it.
   *
   * @param placed dimensions in the order of their requests; ordinates that say the same of the
   *     same distance share one
   * @param unplaced requests for which there was no room, in their order
   */
  public record Placement(List<Item.Dimension> placed, List<DimensionRequest> unplaced) {
    /** Copies the lists. */
    public Placement {
      placed = List.copyOf(placed);
      unplaced = List.copyOf(unplaced);
    }
  }

  /**
   * Places dimensions: ordinates first, then linear ones, the shorter nearer the part, then angles,
   * then those on leaders.
   *
   * @param area where they may be drawn, page mm
   * @param obstacles what is on the page already
   * @param requests what is wanted; of equal ones only one is drawn
   * @return what was placed, and what could not be
   */
  public Placement place(Box area, Obstacles obstacles, List<? extends DimensionRequest> requests) {
    List<DimensionRequest> order = new ArrayList<>(new LinkedHashSet<>(requests));
    DimensionCosts crowd = new DimensionCosts(area, obstacles);
    Map<DimensionRequest, Item.Dimension> ordinates = ordinates(crowd, order);
    order.removeIf(request -> request instanceof DimensionRequest.Ordinate);
    order.sort(
        Comparator.comparingInt(DimensionPlacer::rank)
            .thenComparingDouble(DimensionPlacer::lengthMm));
    Map<DimensionRequest, Item.Dimension> best = inOrder(crowd.copy(), order);
    Map<DimensionRequest, Item.Dimension> placed = best;
    for (int round = 1; round < ROUNDS && best.size() < order.size(); round++) {
      order = leftOverFirst(order, placed);
      if (round == 1) {
        // Before their own kind only, which keeps tiers tidy; in later rounds before all.
        order.sort(Comparator.comparingInt(DimensionPlacer::rank));
      }
      placed = inOrder(crowd.copy(), order);
      if (placed.size() > best.size()) {
        best = placed;
      }
    }
    Map<DimensionRequest, Item.Dimension> all = new HashMap<>(ordinates);
    all.putAll(best);
    return sorted(requests, all);
  }

  private static List<DimensionRequest> leftOverFirst(
      List<DimensionRequest> order, Map<DimensionRequest, Item.Dimension> placed) {
    List<DimensionRequest> next = new ArrayList<>(order);
    next.removeIf(placed::containsKey);
    order.stream().filter(placed::containsKey).forEach(next::add);
    return next;
  }

  private static int rank(DimensionRequest request) {
    if (request instanceof DimensionRequest.Linear) {
      return 0;
    }
    return request instanceof DimensionRequest.AngleBetween ? 1 : 2;
  }

  private static double lengthMm(DimensionRequest request) {
    return request instanceof DimensionRequest.Linear linear ? linear.lengthMm() : 0;
  }

  private Map<DimensionRequest, Item.Dimension> inOrder(
      DimensionCosts crowd, List<DimensionRequest> order) {
    Map<DimensionRequest, Item.Dimension> placed = new HashMap<>();
    for (DimensionRequest request : order) {
      draw(crowd, request).ifPresent(dimension -> placed.put(request, dimension));
    }
    return placed;
  }

  private Optional<Item.Dimension> draw(DimensionCosts crowd, DimensionRequest request) {
    if (request instanceof DimensionRequest.Linear linear) {
      return DimensionCandidates.linear(linear, style, crowd);
    }
    if (request instanceof DimensionRequest.AngleBetween angle) {
      return DimensionCandidates.angle(angle, style, crowd);
    }
    if (request instanceof DimensionRequest.Diameter diameter) {
      return DimensionCandidates.diameter(diameter, style, crowd);
    }
    if (request instanceof DimensionRequest.Radius radius) {
      return DimensionCandidates.radius(radius, style, crowd);
    }
    throw new IllegalStateException("no way to draw " + request);
  }

  /** Rows of one side and datum; what finds no room there is tried on the other side. */
  private Map<DimensionRequest, Item.Dimension> ordinates(
      DimensionCosts crowd, List<DimensionRequest> order) {
    Map<DimensionRequest, Item.Dimension> placed = new HashMap<>();
    Map<List<Object>, List<DimensionRequest.Ordinate>> rows = new LinkedHashMap<>();
    for (DimensionRequest request : order) {
      if (request instanceof DimensionRequest.Ordinate ordinate) {
        Vec2 across = ordinate.side().quarterTurn();
        List<Object> row =
            List.of(
                ordinate.side(),
                Math.round(ordinate.datum().dot(across) / Tolerances.SAME_POINT_MM));
        rows.computeIfAbsent(row, key -> new ArrayList<>()).add(ordinate);
      }
    }
    for (List<DimensionRequest.Ordinate> row : rows.values()) {
      Vec2 side = row.get(0).side();
      List<DimensionRequest.Ordinate> left = new OrdinateRow(crowd, style, side).place(row, placed);
      if (!left.isEmpty()) {
        new OrdinateRow(crowd, style, side.times(-1)).place(left, placed);
      }
    }
    return placed;
  }

  private static Placement sorted(
      List<? extends DimensionRequest> requests, Map<DimensionRequest, Item.Dimension> placed) {
    List<Item.Dimension> dimensions = new ArrayList<>();
    List<DimensionRequest> unplaced = new ArrayList<>();
    Set<Item.Dimension> given = Collections.newSetFromMap(new IdentityHashMap<>());
    for (DimensionRequest request : requests) {
      Item.Dimension dimension = placed.get(request);
      if (dimension == null) {
        unplaced.add(request);
      } else if (given.add(dimension)) {
        dimensions.add(dimension);
      }
    }
    return new Placement(dimensions, unplaced);
  }
}
