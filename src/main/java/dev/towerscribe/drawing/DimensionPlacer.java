package dev.towerscribe.drawing;

import dev.towerscribe.geometry.Box;
import dev.towerscribe.geometry.Vec2;
import dev.towerscribe.quantity.Tolerances;
import java.util.ArrayList;
import java.util.Collections;
import java.util.Comparator;
import java.util.IdentityHashMap;
import java.util.LinkedHashMap;
import java.util.LinkedHashSet;
import java.util.List;
import java.util.Map;
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
    order.sort(
        Comparator.comparingInt(DimensionPlacer::rank)
            .thenComparingDouble(DimensionPlacer::lengthMm));
    Map<DimensionRequest, Item.Dimension> best = Map.of();
    int least = Integer.MAX_VALUE;
    for (int round = 0; round < ROUNDS && least > 0; round++) {
      Map<DimensionRequest, Item.Dimension> placed = inOrder(new Crowd(area, obstacles), order);
      List<DimensionRequest> left = new ArrayList<>(order);
      left.removeIf(placed::containsKey);
      if (left.size() < least) {
        least = left.size();
        best = placed;
      }
      if (left.isEmpty()) {
        break;
      }
      List<DimensionRequest> next = new ArrayList<>(left);
      order.stream().filter(request -> !left.contains(request)).forEach(next::add);
      if (round == 0) {
        // First before their own kind only, which keeps tiers tidy; then before all.
        next.sort(Comparator.comparingInt(DimensionPlacer::rank));
      }
      order = next;
    }
    return sorted(requests, best);
  }

  private static int rank(DimensionRequest request) {
    if (request instanceof DimensionRequest.Ordinate) {
      return 0;
    }
    if (request instanceof DimensionRequest.Linear) {
      return 1;
    }
    return request instanceof DimensionRequest.AngleBetween ? 2 : 3;
  }

  private static double lengthMm(DimensionRequest request) {
    return request instanceof DimensionRequest.Linear linear ? linear.lengthMm() : 0;
  }

  private Map<DimensionRequest, Item.Dimension> inOrder(Crowd crowd, List<DimensionRequest> order) {
    Map<DimensionRequest, Item.Dimension> placed = new LinkedHashMap<>();
    ordinates(crowd, order, placed);
    for (DimensionRequest request : order) {
      if (request instanceof DimensionRequest.Linear linear) {
        Ways.linear(linear, style, crowd).ifPresent(d -> placed.put(request, d));
      } else if (request instanceof DimensionRequest.AngleBetween angle) {
        Ways.angle(angle, style, crowd).ifPresent(d -> placed.put(request, d));
      } else if (request instanceof DimensionRequest.Diameter diameter) {
        Ways.diameter(diameter, style, crowd).ifPresent(d -> placed.put(request, d));
      } else if (request instanceof DimensionRequest.Radius radius) {
        Ways.radius(radius, style, crowd).ifPresent(d -> placed.put(request, d));
      }
    }
    return placed;
  }

  /** Rows of one side and datum; what finds no room there is tried on the other side. */
  private void ordinates(
      Crowd crowd, List<DimensionRequest> order, Map<DimensionRequest, Item.Dimension> placed) {
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
