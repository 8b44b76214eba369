package dev.towerscribe.placement;

import dev.towerscribe.alignment.NotReached;
import dev.towerscribe.layout.quick.Answer;
import java.util.ArrayList;
import java.util.Comparator;
import java.util.EnumMap;
import java.util.List;
import java.util.Map;
import java.util.Objects;

/**
 * Rotation against rearward offset, each cell at its best inboard offset and setting: where the
 * plates can go, and what stands in the way elsewhere.
 *
 * @param rotationsDeg rotations of the cells' middles, ascending, evenly spaced
 * @param rearwardsMm rearward offsets of the cells' middles, ascending, evenly spaced
 * @param casterDeg the lesser caster of both sides, by rotation and then rearward; NaN where no
 *     placement stands
 * @param barriers what stands in the way there; null where a placement stands
 */
public record FeasibleMap(
    List<Double> rotationsDeg,
    List<Double> rearwardsMm,
    List<List<Double>> casterDeg,
    List<List<Barrier>> barriers) {
  /** Why no placement stands in a cell: what gives way last as inboard offset and setting vary. */
  public enum Barrier {
    /** The strut rod meets the opening's edge. */
    STRUT_ROD("strut rod meets the opening"),
    /** The plate does not cover the opening or meets a wall. */
    PLATE("plate off the opening or at a wall"),
    /** A bolt is too near an edge. */
    BOLTS("a bolt too near an edge"),
    /** Too little of a bracket is left. */
    BRACKET("too little bracket left"),
    /** Camber, caster or droop past a limit, or the linkage does not get there. */
    LINKAGE("angles or droop past a limit, or linkage out of reach");

    private final String words;

    Barrier(String words) {
      this.words = words;
    }

    /**
     * The barrier in a few words.
     *
     * @return to be written where it holds
     */
    public String words() {
      return words;
    }
  }

  /** A degree of rotation and a millimetre of offset to a cell. */
  private static final double CELL = 1.0;

  /** Copies the lists, whose inner ones may hold nulls. */
  public FeasibleMap {
    rotationsDeg = List.copyOf(rotationsDeg);
    rearwardsMm = List.copyOf(rearwardsMm);
    casterDeg = List.copyOf(casterDeg);
    barriers = List.copyOf(barriers);
  }

  /**
   * What stands in the way, for a map on which nothing can be placed.
   *
   * @return barriers that hold in at least a tenth of the cells, the last to give way first: where
   *     it holds, the others had given way. The linkage counts wherever it is all that is left.
   */
  List<Barrier> mostly() {
    Map<Barrier, Integer> cells = new EnumMap<>(Barrier.class);
    for (List<Barrier> row : barriers) {
      row.stream().filter(Objects::nonNull).forEach(b -> cells.merge(b, 1, Integer::sum));
    }
    int all = cells.values().stream().mapToInt(n -> n).sum();
    return cells.keySet().stream()
        .filter(b -> b == Barrier.LINKAGE || cells.get(b) * 10 >= all)
        .sorted(Comparator.reverseOrder())
        .toList();
  }

  private record Cell(double caster, Barrier barrier) {}

  static FeasibleMap of(Workers workers, Lattice lattice, SearchRange range, double from)
      throws NotReached {
    List<Integer> rotations =
        steps(range.rotationFrom(), range.rotationTo(), lattice.anglesPerDegree(), 1.0);
    double perMm = lattice.places(100.0) / 100.0;
    List<Integer> rearwards = steps(range.rearwardFrom(), range.rearwardTo(), perMm, CELL);
    List<Integer> inboards = steps(range.inboardFrom(), range.inboardTo(), perMm, CELL);
    List<List<Cell>> rows =
        workers.share(
            rotations.size(),
            from,
            1.0,
            (index, score) ->
                rearwards.stream()
                    .map(a -> cell(rotations.get(index), a, inboards, lattice, score))
                    .toList());
    return new FeasibleMap(
        rotations.stream().map(lattice::degrees).toList(),
        rearwards.stream().map(lattice::mm).toList(),
        rows.stream().map(r -> r.stream().map(Cell::caster).toList()).toList(),
        rows.stream().map(r -> r.stream().map(Cell::barrier).toList()).toList());
  }

  private static List<Integer> steps(double from, double to, double perUnit, double step) {
    List<Integer> steps = new ArrayList<>();
    for (int i = 0; from + i * step <= to + step / 1e6; i++) {
      steps.add((int) Math.round((from + i * step) * perUnit));
    }
    return steps;
  }

  private static Cell cell(
      int rotation, int rearward, List<Integer> inboards, Lattice lattice, Score score) {
    double best = Double.NEGATIVE_INFINITY;
    double caster = Double.NaN;
    Barrier last = Barrier.STRUT_ROD;
    for (int inboard : inboards) {
      Answer answer = score.quick(rotation, rearward, inboard);
      if (answer == Answer.NO) {
        last = later(last, Barrier.valueOf(score.barrier().name()));
        continue;
      }
      for (int s = 0; s < lattice.settings().size(); s++) {
        if (!score.read(new Lattice.Place(rotation, rearward, inboard, s))) {
          last = Barrier.LINKAGE;
          continue;
        }
        if (score.aims() <= best || answer == Answer.NO) {
          continue;
        }
        if (answer == Answer.UNSURE) {
          // What the linkage was read to give stays read meanwhile.
          answer = score.allows(rotation, rearward, inboard) ? Answer.YES : Answer.NO;
          if (answer == Answer.NO) {
            last = later(last, Barrier.valueOf(score.barrier().name()));
            continue;
          }
        }
        best = score.aims();
        caster = score.caster();
      }
    }
    return new Cell(caster, Double.isNaN(caster) ? last : null);
  }

  private static Barrier later(Barrier a, Barrier b) {
    return a.compareTo(b) >= 0 ? a : b;
  }
}
