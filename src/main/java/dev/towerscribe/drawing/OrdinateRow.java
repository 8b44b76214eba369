package dev.towerscribe.drawing;

import dev.towerscribe.geometry.Vec2;
import java.util.ArrayList;
import java.util.Arrays;
import java.util.Comparator;
import java.util.LinkedHashMap;
import java.util.List;
import java.util.Map;
import java.util.stream.IntStream;

/**
 * Ordinate leaders of one datum on one side of the part. Their words stand in a row in the order of
 * the points, as near each its own point as the others allow; in that order leaders cannot cross.
 * The least sum of squared jogs is found by dynamic programming over places half a millimetre
 * apart, so what is in the way is stepped round and a leader that cannot be kept is left out alone.
 */
final class OrdinateRow {
  /** Places along the row lie this far apart, mm. */
  private static final double STEP_MM = 0.5;

  /** From the part to the jogs, mm. */
  private static final double TO_JOG_MM = 3;

  /** How far out jogs take, mm: the least that serves is used. */
  private static final double[] JOGS_MM = {4, 8, 13, 20};

  /** Sideways over outward, at most: a jog leans no more than 60 degrees. */
  private static final double LEAN = Math.tan(Math.toRadians(60));

  /** Further out, if the nearest row is not free, mm. */
  private static final double[] FURTHER_MM = {0, 8, 16, 24};

  /** What leaving one out costs, in mm squared: more than any row of jogs. */
  private static final double LEFT_OUT = 1e7;

  /** What any jog costs beside its square: straight leaders are liked. */
  private static final double JOG = 1;

  /** Points at the same distance as far as any figure on a drawing tells, mm. */
  private static final double SAME_MM = 0.01;

  private final DimensionCosts crowd;
  private final DimensionStyle style;
  private final Vec2 side;
  private final Vec2 across;
  private final double edge;

  OrdinateRow(DimensionCosts crowd, DimensionStyle style, Vec2 side) {
    this.crowd = crowd;
    this.style = style;
    this.side = side;
    this.across = side.quarterTurn();
    this.edge = crowd.reach(side);
  }

  private record Row(double bend, double jogMm, double[] at) {
    int leftOut() {
      return (int) Arrays.stream(at).filter(Double::isNaN).count();
    }
  }

  /**
   * Places as many as can be.
   *
   * @param requests of one datum and direction
   * @param placed gets each that was placed with its dimension, which several may share
   * @return those for which there is no room, in the order along the row
   */
  List<DimensionRequest.Ordinate> place(
      List<DimensionRequest.Ordinate> requests, Map<DimensionRequest, Item.Dimension> placed) {
    List<DimensionRequest.Ordinate> unplaced = new ArrayList<>();
    List<OrdinateShape> shapes = shapes(requests, unplaced);
    Row best = null;
    for (double further : FURTHER_MM) {
      double bend = bend(shapes) + further;
      boolean[] passable = passable(shapes, bend);
      for (double jog : JOGS_MM) {
        if (best == null || best.leftOut() > impassable(passable)) {
          Row row = row(shapes, passable, bend, jog);
          if (best == null || row.leftOut() < best.leftOut()) {
            best = row;
          }
        }
      }
    }
    for (int i = 0; i < shapes.size(); i++) {
      OrdinateShape shape = shapes.get(i);
      if (Double.isNaN(best.at()[i])) {
        unplaced.addAll(shape.shared());
      } else {
        Sketch sketch = shape.draw(best.bend(), best.jogMm(), best.at()[i]);
        crowd.take(sketch);
        Item.Dimension dimension = shape.finished(sketch);
        shape.shared().forEach(request -> placed.put(request, dimension));
      }
    }
    return unplaced;
  }

  /** Which leaders can come as far as the bend: their way there is the same wherever they end. */
  private boolean[] passable(List<OrdinateShape> shapes, double bend) {
    boolean[] passable = new boolean[shapes.size()];
    for (int i = 0; i < passable.length; i++) {
      passable[i] =
          crowd.cost(shapes.get(i).straight(bend), DimensionCosts.BARRED) < DimensionCosts.BARRED;
    }
    return passable;
  }

  private static int impassable(boolean[] passable) {
    return (int) IntStream.range(0, passable.length).filter(i -> !passable[i]).count();
  }

  private double bend(List<OrdinateShape> shapes) {
    return shapes.stream().mapToDouble(OrdinateShape::footMm).reduce(edge, Math::max) + TO_JOG_MM;
  }

  /**
   * One shape for each place and words. Of those that would print as one line the one nearest this
   * side stays: the others, sent to the other side, then start beyond it.
   */
  private List<OrdinateShape> shapes(
      List<DimensionRequest.Ordinate> requests, List<DimensionRequest.Ordinate> unplaced) {
    List<OrdinateShape> alike = new ArrayList<>();
    Map<List<Object>, List<DimensionRequest.Ordinate>> same = new LinkedHashMap<>();
    for (DimensionRequest.Ordinate request : requests) {
      long place = Math.round(request.point().dot(across) / SAME_MM);
      same.computeIfAbsent(List.of(place, request.words()), key -> new ArrayList<>()).add(request);
    }
    same.values().forEach(shared -> alike.add(new OrdinateShape(shared, side, style)));
    alike.sort(Comparator.comparingDouble(OrdinateShape::footMm).reversed());
    List<OrdinateShape> shapes = new ArrayList<>();
    for (OrdinateShape shape : alike) {
      boolean apart =
          shapes.stream()
              .allMatch(
                  other ->
                      Math.abs(other.position() - shape.position())
                          >= DimensionStyle.LEAST_APART_MM);
      if (apart) {
        shapes.add(shape);
      } else {
        unplaced.addAll(shape.shared());
      }
    }
    shapes.sort(Comparator.comparingDouble(OrdinateShape::position));
    return shapes;
  }

  private Row row(List<OrdinateShape> shapes, boolean[] passable, double bend, double jogMm) {
    double[] places = places(shapes);
    int n = shapes.size();
    int p = places.length;
    double spacing =
        shapes.stream().mapToDouble(OrdinateShape::heightMm).max().orElse(0)
            + 2 * DimensionStyle.CLEAR_MM;
    // least[i][k]: the first i leaders settled, the last one kept at place k - 1 or before.
    double[][] least = new double[n + 1][p + 1];
    boolean[][] kept = new boolean[n + 1][p + 1];
    for (int i = 1; i <= n; i++) {
      OrdinateShape shape = shapes.get(i - 1);
      least[i][0] = i * LEFT_OUT;
      int before = 0;
      for (int k = 1; k <= p; k++) {
        double place = places[k - 1];
        while (before < k - 1 && places[before] <= place - spacing) {
          before++;
        }
        least[i][k] = least[i - 1][k] + LEFT_OUT;
        double jog = Math.abs(place - shape.position());
        if (passable[i - 1] && jog <= LEAN * jogMm) {
          double cost = least[i - 1][before] + jog * jog + (jog > 0 ? JOG : 0);
          if (cost < least[i][k]
              && crowd.cost(shape.outer(bend, jogMm, place), DimensionCosts.BARRED)
                  < DimensionCosts.BARRED) {
            least[i][k] = cost;
            kept[i][k] = true;
          }
        }
        if (least[i][k - 1] <= least[i][k]) {
          least[i][k] = least[i][k - 1];
          kept[i][k] = false;
        }
      }
    }
    return new Row(bend, jogMm, trace(least, kept, places, spacing));
  }

  private static double[] trace(
      double[][] least, boolean[][] kept, double[] places, double spacing) {
    int i = least.length - 1;
    int k = places.length;
    double[] at = new double[i];
    Arrays.fill(at, Double.NaN);
    while (i > 0) {
      if (kept[i][k]) {
        at[i - 1] = places[k - 1];
        int before = k - 1;
        while (before > 0 && places[before - 1] > places[k - 1] - spacing) {
          before--;
        }
        k = before;
        i--;
      } else if (k > 0 && least[i][k] == least[i][k - 1]) {
        k--;
      } else {
        i--;
      }
    }
    return at;
  }

  /** Half millimetres along the row within the area, and the points' own places. */
  private double[] places(List<OrdinateShape> shapes) {
    List<Vec2> corners = crowd.area().corners();
    double low = corners.stream().mapToDouble(across::dot).min().orElseThrow();
    double high = corners.stream().mapToDouble(across::dot).max().orElseThrow();
    List<Double> places = new ArrayList<>();
    for (double place = low; place <= high; place += STEP_MM) {
      places.add(place);
    }
    shapes.forEach(shape -> places.add(shape.position()));
    return places.stream().mapToDouble(Double::doubleValue).sorted().distinct().toArray();
  }
}
